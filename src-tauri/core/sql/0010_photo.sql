-- Photos by their hash. `named` says that a line names it; a file of a photo that none names is a leftover.
-- `thumb` is the hash of the thumbnail made from it, none where it has to be made anew.
CREATE TABLE photo (
    sha256 TEXT    NOT NULL PRIMARY KEY CHECK (length(sha256) = 64),
    thumb  TEXT    CHECK (thumb IS NULL OR length(thumb) = 64),
    named  INTEGER NOT NULL DEFAULT 0 CHECK (named IN (0, 1))
) STRICT;

CREATE TRIGGER entry_names_its_photo AFTER INSERT ON entry
WHEN instr(NEW.body, '"photo"') > 0
BEGIN
    INSERT INTO photo (sha256, named)
    SELECT sha256, 1
    FROM (
        SELECT CASE WHEN json_valid(NEW.body) THEN json_extract(NEW.body, '$.photo.sha256') END AS sha256
    )
    WHERE length(sha256) = 64
    ON CONFLICT (sha256) DO UPDATE SET named = 1;
END;

INSERT INTO photo (sha256, named)
SELECT DISTINCT sha256, 1
FROM (
    SELECT CASE WHEN json_valid(body) THEN json_extract(body, '$.photo.sha256') END AS sha256
    FROM entry WHERE instr(body, '"photo"') > 0
)
WHERE length(sha256) = 64;
