-- The knowledge that sorted a visit, whole, under its version: an old finding can be derived again.
CREATE TABLE knowledge (
    version TEXT    NOT NULL PRIMARY KEY,
    at      INTEGER NOT NULL,
    texts   TEXT    NOT NULL
) STRICT;

CREATE TRIGGER knowledge_is_never_changed BEFORE UPDATE ON knowledge
BEGIN
    SELECT RAISE(ABORT, 'knowledge that sorted a visit is kept as it was');
END;

CREATE TRIGGER knowledge_is_never_removed BEFORE DELETE ON knowledge
BEGIN
    SELECT RAISE(ABORT, 'knowledge that sorted a visit is kept as it was');
END;
