-- What people decided about devices, and when one was first met: one line a decision, only ever added.
CREATE TABLE trust (
    id     INTEGER PRIMARY KEY AUTOINCREMENT,
    device TEXT    NOT NULL CHECK (length(device) = 64),
    at     INTEGER NOT NULL,
    what   TEXT    NOT NULL CHECK (what IN ('met', 'confirmed', 'named', 'retired', 'reset')),
    name   TEXT    NOT NULL DEFAULT '',
    by     TEXT    NOT NULL DEFAULT ''
) STRICT;

CREATE TRIGGER trust_is_never_changed BEFORE UPDATE ON trust
BEGIN
    SELECT RAISE(ABORT, 'a decision stays written down');
END;

CREATE TRIGGER trust_is_never_removed BEFORE DELETE ON trust
BEGIN
    SELECT RAISE(ABORT, 'a decision stays written down');
END;

-- Each taking in: of a file, by the device that made it and when by its clock; of a folder of one's own, with neither.
CREATE TABLE import (
    id         INTEGER PRIMARY KEY AUTOINCREMENT,
    at         INTEGER NOT NULL,
    device     TEXT    NOT NULL DEFAULT '',
    made       INTEGER NOT NULL DEFAULT 0,
    taken_back INTEGER
) STRICT;

-- How far each chain of another device reached in what was taken in; import 0 stands for what was here before imports
-- were written down. Lines count as far as the furthest import that was not taken back; those beyond are kept and read
-- by nothing.
CREATE TABLE brought (
    visit      TEXT    NOT NULL,
    device     TEXT    NOT NULL,
    import     INTEGER NOT NULL,
    lines      INTEGER NOT NULL CHECK (lines >= 1),
    taken_back INTEGER,
    PRIMARY KEY (visit, device, import)
) STRICT;

CREATE INDEX brought_and_taken_back ON brought (visit, device) WHERE taken_back IS NOT NULL;
CREATE INDEX brought_by_import ON brought (import);

CREATE TRIGGER import_is_only_taken_back BEFORE UPDATE ON import
WHEN NEW.id <> OLD.id OR NEW.at <> OLD.at OR NEW.device <> OLD.device OR NEW.made <> OLD.made
    OR OLD.taken_back IS NOT NULL
BEGIN
    SELECT RAISE(ABORT, 'an import is taken back and in no other way changed');
END;

CREATE TRIGGER brought_is_only_taken_back BEFORE UPDATE ON brought
WHEN NEW.visit <> OLD.visit OR NEW.device <> OLD.device OR NEW.import <> OLD.import OR NEW.lines <> OLD.lines
    OR OLD.taken_back IS NOT NULL
BEGIN
    SELECT RAISE(ABORT, 'an import is taken back and in no other way changed');
END;

CREATE TRIGGER brought_is_removed_with_its_visit_alone BEFORE DELETE ON brought
WHEN NOT EXISTS (SELECT 1 FROM erased WHERE visit = OLD.visit)
BEGIN
    SELECT RAISE(ABORT, 'an import is taken back and in no other way changed');
END;

-- The lines that count.
CREATE VIEW counting AS
SELECT id, visit, device, seq, at, prev, hash, signature, body FROM entry
WHERE NOT EXISTS (
        SELECT 1 FROM brought
        WHERE brought.visit = entry.visit AND brought.device = entry.device AND brought.taken_back IS NOT NULL
    )
    OR seq <= (
        SELECT max(lines) FROM brought
        WHERE brought.visit = entry.visit AND brought.device = entry.device AND brought.taken_back IS NULL
    );
