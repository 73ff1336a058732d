-- Each line is signed by the device that wrote it: Ed25519 over its hash, in hex. A line without a signature was
-- written before there were any.
ALTER TABLE entry ADD COLUMN signature TEXT CHECK (length(signature) = 128);

-- A device's id is its public key, 64 digits. Lines under such an id are signed, and no others: ids from before were
-- UUIDs.
CREATE TRIGGER entry_is_signed_by_its_device BEFORE INSERT ON entry
WHEN (length(NEW.device) = 64) <> (NEW.signature IS NOT NULL)
BEGIN
    SELECT RAISE(ABORT, 'a line is signed by the device that wrote it');
END;

-- Ids that this data folder wrote under before its id was a key: their lines stay, and no more are written.
CREATE TABLE former_device (
    id    TEXT    NOT NULL PRIMARY KEY,
    until INTEGER NOT NULL
) STRICT;

-- Keys by ids that anybody could take.
DROP TABLE known_key;
