-- Visits erased at the owner's wish. A tombstone holds no more than the visit's id, made of time and chance;
-- `photos` names the files still to be removed and is emptied with them.
CREATE TABLE erased (
    visit  TEXT    NOT NULL PRIMARY KEY,
    at     INTEGER NOT NULL,
    photos TEXT    NOT NULL DEFAULT '',
    swept  INTEGER NOT NULL DEFAULT 0 CHECK (swept IN (0, 1))
) STRICT;

CREATE TRIGGER erased_stays_erased BEFORE DELETE ON erased
BEGIN
    SELECT RAISE(ABORT, 'what was erased stays erased');
END;

CREATE TRIGGER erased_is_only_swept BEFORE UPDATE ON erased
WHEN NEW.visit <> OLD.visit OR NEW.at <> OLD.at OR NEW.photos <> '' OR NEW.swept < OLD.swept
BEGIN
    SELECT RAISE(ABORT, 'what was erased stays erased');
END;

-- A line goes with its whole visit, after the tombstone is set, and in no other way.
DROP TRIGGER entry_is_never_removed;

CREATE TRIGGER entry_is_removed_with_its_visit_alone BEFORE DELETE ON entry
WHEN NOT EXISTS (SELECT 1 FROM erased WHERE visit = OLD.visit)
BEGIN
    SELECT RAISE(ABORT, 'the ledger only grows');
END;

CREATE TRIGGER entry_of_an_erased_visit_is_refused BEFORE INSERT ON entry
WHEN EXISTS (SELECT 1 FROM erased WHERE visit = NEW.visit)
BEGIN
    SELECT RAISE(ABORT, 'the visit was erased');
END;

-- The key each device signed its first file with.
CREATE TABLE known_key (
    device TEXT    NOT NULL PRIMARY KEY,
    key    TEXT    NOT NULL CHECK (length(key) = 64),
    at     INTEGER NOT NULL
) STRICT;
