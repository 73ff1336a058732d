-- The workshop's own particulars, as they stand on its papers; one line. Nothing of an owner is here, and no
-- handover file carries it.
CREATE TABLE workshop (
    line     INTEGER NOT NULL PRIMARY KEY CHECK (line = 1),
    name     TEXT    NOT NULL DEFAULT '',
    address  TEXT    NOT NULL DEFAULT '',
    phone    TEXT    NOT NULL DEFAULT '',
    length   TEXT    NOT NULL DEFAULT '' CHECK (length IN ('', 'mm', 'thou')),
    distance TEXT    NOT NULL DEFAULT '' CHECK (distance IN ('', 'km', 'miles')),
    rate     REAL    CHECK (rate > 0),
    currency TEXT    NOT NULL DEFAULT ''
) STRICT;

-- Hours the workshop needs for each of the bench's outcomes.
CREATE TABLE workshop_hours (
    tier       TEXT NOT NULL PRIMARY KEY CHECK (tier IN ('bearings-only', 'skim-and-sleeve', 'replace-housing')),
    hours_from REAL NOT NULL CHECK (hours_from > 0),
    hours_to   REAL NOT NULL CHECK (hours_to >= hours_from)
) STRICT;

-- The language and sheet a visit's paper was last made in: what a handover file's papers are printed in.
CREATE TABLE paper_made (
    visit  TEXT NOT NULL,
    paper  TEXT NOT NULL,
    locale TEXT NOT NULL,
    sheet  TEXT NOT NULL,
    PRIMARY KEY (visit, paper)
) STRICT;
