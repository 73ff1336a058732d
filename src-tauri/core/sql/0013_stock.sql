-- Sizes of sleeve that the workshop has, in its order.
CREATE TABLE workshop_sleeve (
    place      INTEGER NOT NULL PRIMARY KEY,
    material   TEXT NOT NULL,
    outside_mm REAL NOT NULL CHECK (outside_mm > bore_mm),
    bore_mm    REAL NOT NULL CHECK (bore_mm > 0)
) STRICT;

-- Instruments that the workshop measures with, in its order; days as 2026-11-25, empty where nobody knows.
CREATE TABLE workshop_instrument (
    place            INTEGER NOT NULL PRIMARY KEY,
    name             TEXT NOT NULL UNIQUE,
    resolution_mm    REAL NOT NULL CHECK (resolution_mm > 0),
    mpe_mm           REAL NOT NULL CHECK (mpe_mm > 0),
    repeatability_mm REAL CHECK (repeatability_mm > 0),
    calibrated       TEXT NOT NULL DEFAULT '',
    due              TEXT NOT NULL DEFAULT ''
) STRICT;
