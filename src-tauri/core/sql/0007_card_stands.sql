-- What tells cards of one car apart: how many answers decide something, how far the repair has come, and whether
-- its outcome is confirmed. A card from before knows none of it until it is derived anew.
ALTER TABLE card ADD COLUMN settled INTEGER CHECK (settled >= 0);
ALTER TABLE card ADD COLUMN repair TEXT;
ALTER TABLE card ADD COLUMN confirmed INTEGER NOT NULL DEFAULT 0 CHECK (confirmed IN (0, 1));
