-- A visit that was opened on this device with the key of this ledger is in no folder that was set aside before: `here`
-- keeps its erasure from clearing such a folder of what cannot be read in it.
ALTER TABLE erased ADD COLUMN here INTEGER NOT NULL DEFAULT 0 CHECK (here IN (0, 1));
