-- Learning reads the confirmed outcomes of every visit, and what was taken back, out of a ledger of much else.
CREATE INDEX entry_teaches ON entry (visit)
WHERE substr(body, 1, 27) = '{"kind":"outcome-confirmed"' OR substr(body, 1, 19) = '{"kind":"withdrawn"';
