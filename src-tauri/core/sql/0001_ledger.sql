-- The ledger: lines that are only ever added.
CREATE TABLE entry (
    id     INTEGER PRIMARY KEY AUTOINCREMENT,
    visit  TEXT    NOT NULL,
    device TEXT    NOT NULL,
    seq    INTEGER NOT NULL CHECK (seq >= 1),
    at     INTEGER NOT NULL,
    prev   TEXT    NOT NULL CHECK (length(prev) = 64),
    hash   TEXT    NOT NULL CHECK (length(hash) = 64) UNIQUE,
    body   TEXT    NOT NULL,
    UNIQUE (visit, device, seq)
) STRICT;

CREATE TRIGGER entry_is_never_changed BEFORE UPDATE ON entry
BEGIN
    SELECT RAISE(ABORT, 'the ledger only grows');
END;

CREATE TRIGGER entry_is_never_removed BEFORE DELETE ON entry
BEGIN
    SELECT RAISE(ABORT, 'the ledger only grows');
END;

-- One card a visit for the list and its search: derived from the ledger, written in the same transaction.
CREATE TABLE card (
    visit      TEXT    NOT NULL PRIMARY KEY,
    label      TEXT    NOT NULL DEFAULT '',
    plate      TEXT    NOT NULL DEFAULT '',
    vin        TEXT    NOT NULL DEFAULT '',
    owner      TEXT    NOT NULL DEFAULT '',
    opened_at  INTEGER NOT NULL,
    updated_at INTEGER NOT NULL,
    word       TEXT,
    answered   INTEGER NOT NULL DEFAULT 0,
    steps      INTEGER NOT NULL DEFAULT 0,
    receipt    TEXT,
    haystack   TEXT    NOT NULL DEFAULT ''
) STRICT;

CREATE INDEX card_by_opened ON card (opened_at DESC, visit DESC);

-- What belongs to this device and not to a visit: its id, the technician's name, choices of the screens.
CREATE TABLE setting (
    name  TEXT NOT NULL PRIMARY KEY,
    value TEXT NOT NULL
) STRICT;
