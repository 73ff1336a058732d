-- Photos that are being taken: written down before the camera opens, gone once the photo is kept or no longer
-- wanted. At most one a step. No part of the ledger and of no other device's concern.
CREATE TABLE pending_capture (
    id    TEXT    NOT NULL PRIMARY KEY,
    visit TEXT    NOT NULL,
    step  TEXT    NOT NULL,
    at    INTEGER NOT NULL,
    UNIQUE (visit, step)
) STRICT;
