CREATE TABLE entry (
    id     INTEGER PRIMARY KEY AUTOINCREMENT,
    visit  TEXT    NOT NULL,
    device TEXT    NOT NULL,
    seq    INTEGER NOT NULL CHECK (seq >= 1),
    at     INTEGER NOT NULL,
    prev   TEXT    NOT NULL CHECK (length(prev) = 64),
    hash   TEXT    NOT NULL CHECK (length(hash) = 64) UNIQUE,
    body   TEXT    NOT NULL, signature TEXT CHECK (length(signature) = 128),
    UNIQUE (visit, device, seq)
) STRICT;
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
, settled INTEGER CHECK (settled >= 0), repair TEXT, confirmed INTEGER NOT NULL DEFAULT 0 CHECK (confirmed IN (0, 1))) STRICT;
CREATE TABLE setting (
    name  TEXT NOT NULL PRIMARY KEY,
    value TEXT NOT NULL
) STRICT;
CREATE TABLE erased (
    visit  TEXT    NOT NULL PRIMARY KEY,
    at     INTEGER NOT NULL,
    photos TEXT    NOT NULL DEFAULT '',
    swept  INTEGER NOT NULL DEFAULT 0 CHECK (swept IN (0, 1))
) STRICT;
CREATE TABLE pending_capture (
    id    TEXT    NOT NULL PRIMARY KEY,
    visit TEXT    NOT NULL,
    step  TEXT    NOT NULL,
    at    INTEGER NOT NULL,
    UNIQUE (visit, step)
) STRICT;
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
CREATE TABLE workshop_hours (
    tier       TEXT NOT NULL PRIMARY KEY CHECK (tier IN ('bearings-only', 'skim-and-sleeve', 'replace-housing')),
    hours_from REAL NOT NULL CHECK (hours_from > 0),
    hours_to   REAL NOT NULL CHECK (hours_to >= hours_from)
) STRICT;
CREATE TABLE paper_made (
    visit  TEXT NOT NULL,
    paper  TEXT NOT NULL,
    locale TEXT NOT NULL,
    sheet  TEXT NOT NULL,
    PRIMARY KEY (visit, paper)
) STRICT;
CREATE TABLE knowledge (
    version TEXT    NOT NULL PRIMARY KEY,
    at      INTEGER NOT NULL,
    texts   TEXT    NOT NULL
) STRICT;
CREATE TABLE former_device (
    id    TEXT    NOT NULL PRIMARY KEY,
    until INTEGER NOT NULL
) STRICT;
CREATE TABLE trust (
    id     INTEGER PRIMARY KEY AUTOINCREMENT,
    device TEXT    NOT NULL CHECK (length(device) = 64),
    at     INTEGER NOT NULL,
    what   TEXT    NOT NULL CHECK (what IN ('met', 'confirmed', 'named', 'retired', 'reset')),
    name   TEXT    NOT NULL DEFAULT '',
    by     TEXT    NOT NULL DEFAULT ''
) STRICT;
CREATE TABLE import (
    id         INTEGER PRIMARY KEY AUTOINCREMENT,
    at         INTEGER NOT NULL,
    device     TEXT    NOT NULL DEFAULT '',
    made       INTEGER NOT NULL DEFAULT 0,
    taken_back INTEGER
) STRICT;
CREATE TABLE brought (
    visit      TEXT    NOT NULL,
    device     TEXT    NOT NULL,
    import     INTEGER NOT NULL,
    lines      INTEGER NOT NULL CHECK (lines >= 1),
    taken_back INTEGER,
    PRIMARY KEY (visit, device, import)
) STRICT;
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (1, '01a22815-cd97-74a4-862a-0c35dbeb2e64', '596d19000c34112f4b64c05fa94f466959f1e0bff0f03f5483a41b65ff2c2db4', 1, 1795599000000, '0000000000000000000000000000000000000000000000000000000000000000', 'ec765e1282ce1f36e50bfaed019f08feab0f2e7b79765cfd445b43bd04b47260', '{"kind":"opened","intake":{"vehicle":{"layout":"torque-tube","label":"","plate":"TR 4417","vin":"","seat":null,"cylinders":null,"gearbox":null,"idle_rpm":null,"odometer":null,"maker_play_mm":null},"complaint":"","complaint_sounds":[],"when":"","owner":{"name":"Åsa O''Brien","contact":""}},"knowledge":"51f2a550716a","rules":2,"by":"Kim Marsh"}', '9db207eecd0620c0fa87d45df36fc0189f6d1058f8e91fbda1eadaeadd1f94b0a6b3cc6f13c89093edb77867eb5561d8af0b316b838e539361eb64fa43dd7b00');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (2, '01a22815-cd97-74a4-862a-0c35dbeb2e64', '596d19000c34112f4b64c05fa94f466959f1e0bff0f03f5483a41b65ff2c2db4', 2, 1795599000000, 'ec765e1282ce1f36e50bfaed019f08feab0f2e7b79765cfd445b43bd04b47260', '85d85689fc82d70cadc6168030a025cb121cdd274d7c0d48f2acda23d142372c', '{"kind":"photo-kept","step":"shield-and-mounts","photo":{"sha256":"0e5349a5f310db93d7f0a72753742d373aea1d55ee2dde5dca7afa0ec9abec68","original_sha256":"9c1232b8a5a4b4d0f85a7b19cafd72af50aad547cf8762b92bffb73b6d40f2a6","width":24,"height":16,"taken":null},"by":"Kim Marsh"}', '0e18c598a72c015acf0971c7546dc89a3c6bd25a198f0ab98dbbaf2a8c95c60d655950c977cf9ec72b834490a1ac9bc474a87879bc919c87b869b5c624327b0a');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (3, '01a22815-cdaa-7350-99f3-ea428034e4d3', '596d19000c34112f4b64c05fa94f466959f1e0bff0f03f5483a41b65ff2c2db4', 1, 1795599000000, '0000000000000000000000000000000000000000000000000000000000000000', '0f337cb62db8442d825a696bb845db606a47c109a5417a63f55b49287b8e8ed8', '{"kind":"opened","intake":{"vehicle":{"layout":"torque-tube","label":"","plate":"TR 4418","vin":"","seat":null,"cylinders":null,"gearbox":null,"idle_rpm":null,"odometer":null,"maker_play_mm":null},"complaint":"","complaint_sounds":[],"when":"","owner":{"name":"Åsa O''Brien","contact":""}},"knowledge":"51f2a550716a","rules":2,"by":"Kim Marsh"}', '764d48d7ee634f1597c667ce12f907bbccf3f59e7518d763fa6ae2137b9e744274ec8785f11ee6d6061f2907983307684b76dba45c2e700de6c676648b588b09');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (4, '01a22815-cdaa-7350-99f3-ea428034e4d3', '596d19000c34112f4b64c05fa94f466959f1e0bff0f03f5483a41b65ff2c2db4', 2, 1795599000000, '0f337cb62db8442d825a696bb845db606a47c109a5417a63f55b49287b8e8ed8', 'f7640ad84ff303dd361074fca6608b2f6f079f3b05baeccf24abc7302d2557ea', '{"kind":"photo-kept","step":"shield-and-mounts","photo":{"sha256":"0e5349a5f310db93d7f0a72753742d373aea1d55ee2dde5dca7afa0ec9abec68","original_sha256":"9c1232b8a5a4b4d0f85a7b19cafd72af50aad547cf8762b92bffb73b6d40f2a6","width":24,"height":16,"taken":null},"by":"Kim Marsh"}', 'b0a8f74f17670737156308bd18ce1b44a51fb57ceddf941b31b4680525fc53963e23c67cb1fac69807ed81f38ec8aa1ea5565116c22f97fd49f93e5f086bd103');
INSERT INTO "card" (visit, label, plate, vin, owner, opened_at, updated_at, word, answered, steps, receipt, haystack, settled, repair, confirmed) VALUES ('01a22815-cd97-74a4-862a-0c35dbeb2e64', '', 'TR 4417', '', 'Åsa O''Brien', 1795599000000, 1795599000000, NULL, 0, 19, NULL, '2026-11-25
25.11.2026
25/11/2026
11/25/2026


tr 4417
tr4417


asa o''brien
asaobrien', 0, NULL, 0);
INSERT INTO "card" (visit, label, plate, vin, owner, opened_at, updated_at, word, answered, steps, receipt, haystack, settled, repair, confirmed) VALUES ('01a22815-cdaa-7350-99f3-ea428034e4d3', '', 'TR 4418', '', 'Åsa O''Brien', 1795599000000, 1795599000000, NULL, 0, 19, NULL, '2026-11-25
25.11.2026
25/11/2026
11/25/2026


tr 4418
tr4418


asa o''brien
asaobrien', 0, NULL, 0);
INSERT INTO "setting" (name, value) VALUES ('key', '30e9c84ab041520967d5731a4bd321e376e35098e07fe2f1313431c4b75b656b');
INSERT INTO "setting" (name, value) VALUES ('device', '596d19000c34112f4b64c05fa94f466959f1e0bff0f03f5483a41b65ff2c2db4');
INSERT INTO "setting" (name, value) VALUES ('technician', 'Kim Marsh');
INSERT INTO "knowledge" (version, at, texts) VALUES ('51f2a550716a', 1795599000000, '{}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (5, '01a22815-cd97-74a4-862a-0000000000b2', 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1, 1795599000001, '0000000000000000000000000000000000000000000000000000000000000000', 'dac8b5c4a28cbe24d5f89ce5c154a7bd62b7e5c42a2c4517a82e9b63b63ec7fc', '{"kind":"opened","intake":{"vehicle":{"layout":"torque-tube","label":"","plate":"QX 2290","vin":"","seat":null,"cylinders":null,"gearbox":null,"idle_rpm":null,"odometer":null,"maker_play_mm":null},"complaint":"","complaint_sounds":[],"when":"","owner":{"name":"Åsa O''Brien","contact":""}},"knowledge":"51f2a550716a","rules":2,"by":"Robin Vale"}', 'fda559d6adca0c2e90f1ced27c9f7cb7caebf2b2eb677a4fb66a0274460c008643ab4c6f34607d043db182cddb01b287fb8047cc9a36b2444025fa23db0ffd04');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (6, '01a22815-cd97-74a4-862a-0000000000b2', 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 2, 1795599000002, 'dac8b5c4a28cbe24d5f89ce5c154a7bd62b7e5c42a2c4517a82e9b63b63ec7fc', 'b39e0ebae25ca8170669db3b8c3c657f3363f62d75c61175ee5d327c4824b1c5', '{"kind":"order-chosen","order":"running-first","by":"Robin Vale"}', 'a5c25bcd3b7819b57911e4a283292c5a4961133d3dc58edb397a2966da5e5ac0526d4eb35e7c532af0b6bd0efd56c9c9e468d693a4f25456cbc8e3ca4d69080c');
INSERT INTO "card" (visit, label, plate, vin, owner, opened_at, updated_at, word, answered, steps, receipt, haystack, settled, repair, confirmed) VALUES ('01a22815-cd97-74a4-862a-0000000000b2', '', 'QX 2290', '', 'Åsa O''Brien', 1795599000000, 1795599000000, NULL, 0, 19, NULL, '2026-11-25
25.11.2026
25/11/2026
11/25/2026


qx 2290
qx2290


asa o''brien
asaobrien', 0, NULL, 0);
INSERT INTO "erased" (visit, at, photos, swept) VALUES ('01a22815-cd97-74a4-862a-0000000000ee', 1795599000000, '', 1);
INSERT INTO "pending_capture" (id, visit, step, at) VALUES ('0191d2f0-0000-7000-8000-0000000000aa', '01a22815-cd97-74a4-862a-0c35dbeb2e64', 'play-vertical', 1795599000000);
INSERT INTO "workshop" (line, name, address, phone, length, distance, rate, currency) VALUES (1, 'Brackenfold Motor Works', '3 Old Tannery Yard
Brackenfold', '01632 960417', '', '', 86.5, 'GBP');
INSERT INTO "workshop_hours" (tier, hours_from, hours_to) VALUES ('bearings-only', 3.0, 4.5);
INSERT INTO "workshop_hours" (tier, hours_from, hours_to) VALUES ('skim-and-sleeve', 6.0, 9.0);
INSERT INTO "workshop_hours" (tier, hours_from, hours_to) VALUES ('replace-housing', 5.0, 7.5);
INSERT INTO "paper_made" (visit, paper, locale, sheet) VALUES ('01a22815-cd97-74a4-862a-0c35dbeb2e64', 'note', 'de', 'a4');
INSERT INTO "former_device" (id, until) VALUES ('0191d2f0-0000-7000-8000-00000000000d', 1795598999999);
INSERT INTO "trust" (id, device, at, what, name, by) VALUES (1, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000001, 'met', '', '');
INSERT INTO "trust" (id, device, at, what, name, by) VALUES (2, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000002, 'confirmed', '', 'Kim Marsh');
INSERT INTO "trust" (id, device, at, what, name, by) VALUES (3, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000003, 'named', 'Bay 2', 'Kim Marsh');
INSERT INTO "trust" (id, device, at, what, name, by) VALUES (4, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000004, 'retired', '', 'Kim Marsh');
INSERT INTO "import" (id, at, device, made, taken_back) VALUES (1, 1795599000001, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000001, NULL);
INSERT INTO "import" (id, at, device, made, taken_back) VALUES (2, 1795599000003, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000002, 1795599000004);
INSERT INTO "brought" (visit, device, import, lines, taken_back) VALUES ('01a22815-cd97-74a4-862a-0000000000b2', 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1, 1, NULL);
INSERT INTO "brought" (visit, device, import, lines, taken_back) VALUES ('01a22815-cd97-74a4-862a-0000000000b2', 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 2, 2, 1795599000004);
CREATE TRIGGER entry_is_never_changed BEFORE UPDATE ON entry
BEGIN
    SELECT RAISE(ABORT, 'the ledger only grows');
END;
CREATE INDEX card_by_opened ON card (opened_at DESC, visit DESC);
CREATE INDEX entry_teaches ON entry (visit)
WHERE substr(body, 1, 27) = '{"kind":"outcome-confirmed"' OR substr(body, 1, 19) = '{"kind":"withdrawn"';
CREATE TRIGGER erased_stays_erased BEFORE DELETE ON erased
BEGIN
    SELECT RAISE(ABORT, 'what was erased stays erased');
END;
CREATE TRIGGER erased_is_only_swept BEFORE UPDATE ON erased
WHEN NEW.visit <> OLD.visit OR NEW.at <> OLD.at OR NEW.photos <> '' OR NEW.swept < OLD.swept
BEGIN
    SELECT RAISE(ABORT, 'what was erased stays erased');
END;
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
CREATE TRIGGER knowledge_is_never_removed BEFORE DELETE ON knowledge
BEGIN
    SELECT RAISE(ABORT, 'knowledge that sorted a visit is kept as it was');
END;
CREATE TRIGGER entry_is_signed_by_its_device BEFORE INSERT ON entry
WHEN (length(NEW.device) = 64) <> (NEW.signature IS NOT NULL)
BEGIN
    SELECT RAISE(ABORT, 'a line is signed by the device that wrote it');
END;
CREATE TRIGGER trust_is_never_changed BEFORE UPDATE ON trust
BEGIN
    SELECT RAISE(ABORT, 'a decision stays written down');
END;
CREATE TRIGGER trust_is_never_removed BEFORE DELETE ON trust
BEGIN
    SELECT RAISE(ABORT, 'a decision stays written down');
END;
CREATE INDEX brought_and_taken_back ON brought (visit, device) WHERE taken_back IS NOT NULL;
CREATE INDEX brought_by_import ON brought (import);
CREATE TRIGGER import_is_only_taken_back BEFORE UPDATE ON import
WHEN NEW.id <> OLD.id OR NEW.at <> OLD.at OR NEW.device <> OLD.device OR NEW.made <> OLD.made
    OR OLD.taken_back IS NOT NULL
BEGIN
    SELECT RAISE(ABORT, 'an import is taken back and in no other way changed');
END;
CREATE TRIGGER brought_is_only_taken_back BEFORE UPDATE ON brought
WHEN NEW.visit <> OLD.visit OR NEW.device <> OLD.device OR NEW.import <> OLD.import OR NEW.lines <> OLD.lines
    OR OLD.taken_back IS NOT NULL
BEGIN
    SELECT RAISE(ABORT, 'an import is taken back and in no other way changed');
END;
CREATE TRIGGER brought_is_removed_with_its_visit_alone BEFORE DELETE ON brought
WHEN NOT EXISTS (SELECT 1 FROM erased WHERE visit = OLD.visit)
BEGIN
    SELECT RAISE(ABORT, 'an import is taken back and in no other way changed');
END;
CREATE VIEW counting AS
SELECT id, visit, device, seq, at, prev, hash, signature, body FROM entry
WHERE NOT EXISTS (
        SELECT 1 FROM brought
        WHERE brought.visit = entry.visit AND brought.device = entry.device AND brought.taken_back IS NOT NULL
    )
    OR seq <= (
        SELECT max(lines) FROM brought
        WHERE brought.visit = entry.visit AND brought.device = entry.device AND brought.taken_back IS NULL
    );
CREATE TRIGGER knowledge_is_never_changed BEFORE UPDATE ON knowledge
BEGIN
    SELECT RAISE(ABORT, 'knowledge that sorted a visit is kept as it was');
END;
PRAGMA user_version = 9;
