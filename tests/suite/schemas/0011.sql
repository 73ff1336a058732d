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
CREATE TABLE photo (
    sha256 TEXT    NOT NULL PRIMARY KEY CHECK (length(sha256) = 64),
    thumb  TEXT    CHECK (thumb IS NULL OR length(thumb) = 64),
    named  INTEGER NOT NULL DEFAULT 0 CHECK (named IN (0, 1))
) STRICT;
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (1, '01a22901-39ac-74b8-b1a0-b0136c7a8032', '3f82506e4ad430b42d826e8bd76d563bd192833ad9103e8a8826177eb14f6bbe', 1, 1795599000000, '0000000000000000000000000000000000000000000000000000000000000000', '3fa8e583c474807a3258a1806b9e78c46c66a4fde81c3bcd439ba54a294ffeab', '{"kind":"opened","intake":{"vehicle":{"layout":"torque-tube","label":"","plate":"TR 4417","vin":"","seat":null,"cylinders":null,"gearbox":null,"idle_rpm":null,"odometer":null,"maker_play_mm":null},"complaint":"","complaint_sounds":[],"when":"","owner":{"name":"Åsa O''Brien","contact":""}},"knowledge":"71f83c7bb1da","rules":2,"by":"Kim Marsh"}', '52311dd4e77285cc3940331367154176b863846bf1765defbb6a7e8f9a397620c937e6c80dae2139f1450bfa3d83c2c61aa827c4f148c6ab5d1a43b12b5e3003');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (2, '01a22901-39ac-74b8-b1a0-b0136c7a8032', '3f82506e4ad430b42d826e8bd76d563bd192833ad9103e8a8826177eb14f6bbe', 2, 1795599000000, '3fa8e583c474807a3258a1806b9e78c46c66a4fde81c3bcd439ba54a294ffeab', 'b3b8f187639711d776f211ee97ea436f4dd0da2a90b82d2ac42e40b13ca90873', '{"kind":"photo-kept","step":"shield-and-mounts","photo":{"sha256":"0e5349a5f310db93d7f0a72753742d373aea1d55ee2dde5dca7afa0ec9abec68","original_sha256":"9c1232b8a5a4b4d0f85a7b19cafd72af50aad547cf8762b92bffb73b6d40f2a6","width":24,"height":16,"taken":null},"by":"Kim Marsh"}', 'a187c6999429d74e9668939e4cda3b8f97eb517a264813bb57ae39f22cbf55f214cbb500c6a7adb6f0860f2791752f9fb4d3e2b8c458dd4aa19cac0b9c541800');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (3, '01a22901-39dc-751e-99d2-c30ae0f9afe6', '3f82506e4ad430b42d826e8bd76d563bd192833ad9103e8a8826177eb14f6bbe', 1, 1795599000000, '0000000000000000000000000000000000000000000000000000000000000000', 'a1815480bf79d5213cc800b29917cbc24cc396cdf395dbdca3f874cb2d270ebb', '{"kind":"opened","intake":{"vehicle":{"layout":"torque-tube","label":"","plate":"TR 4418","vin":"","seat":null,"cylinders":null,"gearbox":null,"idle_rpm":null,"odometer":null,"maker_play_mm":null},"complaint":"","complaint_sounds":[],"when":"","owner":{"name":"Åsa O''Brien","contact":""}},"knowledge":"71f83c7bb1da","rules":2,"by":"Kim Marsh"}', 'b2c0464e4f9bece64f285a9bab07add52f9684c40f5fd66c42942496919b9f35a47804aad12cdb6c3a827c6e2c8403e3ad1424b6ee0f7d112ca1a8e715353a03');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (4, '01a22901-39dc-751e-99d2-c30ae0f9afe6', '3f82506e4ad430b42d826e8bd76d563bd192833ad9103e8a8826177eb14f6bbe', 2, 1795599000000, 'a1815480bf79d5213cc800b29917cbc24cc396cdf395dbdca3f874cb2d270ebb', '5729300fc764b6a78a8d4725532c7dcb929513f17f933f4e71bfd4cde7dfad47', '{"kind":"photo-kept","step":"shield-and-mounts","photo":{"sha256":"0e5349a5f310db93d7f0a72753742d373aea1d55ee2dde5dca7afa0ec9abec68","original_sha256":"9c1232b8a5a4b4d0f85a7b19cafd72af50aad547cf8762b92bffb73b6d40f2a6","width":24,"height":16,"taken":null},"by":"Kim Marsh"}', 'ddd733869617443288aee1726c9be6c67e37648f2036efe83e1d77c021c8a8123e7289b2ae1b047ff99a85fd356b6e0eda916472d997368932f1c19b4462ec04');
INSERT INTO "card" (visit, label, plate, vin, owner, opened_at, updated_at, word, answered, steps, receipt, haystack, settled, repair, confirmed) VALUES ('01a22901-39ac-74b8-b1a0-b0136c7a8032', '', 'TR 4417', '', 'Åsa O''Brien', 1795599000000, 1795599000000, NULL, 0, 19, NULL, '2026-11-25
25.11.2026
25/11/2026
11/25/2026


tr 4417
tr4417


asa o''brien
asaobrien', 0, NULL, 0);
INSERT INTO "card" (visit, label, plate, vin, owner, opened_at, updated_at, word, answered, steps, receipt, haystack, settled, repair, confirmed) VALUES ('01a22901-39dc-751e-99d2-c30ae0f9afe6', '', 'TR 4418', '', 'Åsa O''Brien', 1795599000000, 1795599000000, NULL, 0, 19, NULL, '2026-11-25
25.11.2026
25/11/2026
11/25/2026


tr 4418
tr4418


asa o''brien
asaobrien', 0, NULL, 0);
INSERT INTO "setting" (name, value) VALUES ('key', '9fba719c7f2244c5b90b31cad718fd3c7962f50f2c00d228efa4d2b5d5a9a918');
INSERT INTO "setting" (name, value) VALUES ('device', '3f82506e4ad430b42d826e8bd76d563bd192833ad9103e8a8826177eb14f6bbe');
INSERT INTO "setting" (name, value) VALUES ('technician', 'Kim Marsh');
INSERT INTO "knowledge" (version, at, texts) VALUES ('71f83c7bb1da', 1795599000000, '{}');
INSERT INTO "photo" (sha256, thumb, named) VALUES ('0e5349a5f310db93d7f0a72753742d373aea1d55ee2dde5dca7afa0ec9abec68', 'cc983c98521b582caeac76740fe8488cff1517c2fd569b395424191e2268a493', 1);
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (5, '01a22901-39ac-74b8-b1a0-0000000000b2', 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1, 1795599000001, '0000000000000000000000000000000000000000000000000000000000000000', '4741b7914c0fb247d9ee9da4a9776ca75024d7a6921e49b03d58df4823472eb1', '{"kind":"opened","intake":{"vehicle":{"layout":"torque-tube","label":"","plate":"QX 2290","vin":"","seat":null,"cylinders":null,"gearbox":null,"idle_rpm":null,"odometer":null,"maker_play_mm":null},"complaint":"","complaint_sounds":[],"when":"","owner":{"name":"Åsa O''Brien","contact":""}},"knowledge":"71f83c7bb1da","rules":2,"by":"Robin Vale"}', '2c2722f517ca5d06b8f8c15d8c1d2773c02f16a547bc981dfa7d8eed01ca98719f4394f3a9621850e131bc6c0cddf5d162c9be0bff38f687f2175d88838be603');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (6, '01a22901-39ac-74b8-b1a0-0000000000b2', 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 2, 1795599000002, '4741b7914c0fb247d9ee9da4a9776ca75024d7a6921e49b03d58df4823472eb1', 'dc5d179b896c2a5b60c90131167d93b74f17f525bb32208735693c0fb404c21b', '{"kind":"order-chosen","order":"running-first","by":"Robin Vale"}', '54044808b1928536ddc4b818103c8626d83828a732f84b561664d2507d7e64d88e157621d04602441ddcb93616beff7b433207bdcc4baa94da7a1c1bb50cea0e');
INSERT INTO "card" (visit, label, plate, vin, owner, opened_at, updated_at, word, answered, steps, receipt, haystack, settled, repair, confirmed) VALUES ('01a22901-39ac-74b8-b1a0-0000000000b2', '', 'QX 2290', '', 'Åsa O''Brien', 1795599000000, 1795599000000, NULL, 0, 19, NULL, '2026-11-25
25.11.2026
25/11/2026
11/25/2026


qx 2290
qx2290


asa o''brien
asaobrien', 0, NULL, 0);
INSERT INTO "erased" (visit, at, photos, swept) VALUES ('01a22901-39ac-74b8-b1a0-0000000000ee', 1795599000000, '', 1);
INSERT INTO "pending_capture" (id, visit, step, at) VALUES ('0191d2f0-0000-7000-8000-0000000000aa', '01a22901-39ac-74b8-b1a0-b0136c7a8032', 'play-vertical', 1795599000000);
INSERT INTO "workshop" (line, name, address, phone, length, distance, rate, currency) VALUES (1, 'Brackenfold Motor Works', '3 Old Tannery Yard
Brackenfold', '01632 960417', '', '', 86.5, 'GBP');
INSERT INTO "workshop_hours" (tier, hours_from, hours_to) VALUES ('bearings-only', 3.0, 4.5);
INSERT INTO "workshop_hours" (tier, hours_from, hours_to) VALUES ('skim-and-sleeve', 6.0, 9.0);
INSERT INTO "workshop_hours" (tier, hours_from, hours_to) VALUES ('replace-housing', 5.0, 7.5);
INSERT INTO "paper_made" (visit, paper, locale, sheet) VALUES ('01a22901-39ac-74b8-b1a0-b0136c7a8032', 'note', 'de', 'a4');
INSERT INTO "former_device" (id, until) VALUES ('0191d2f0-0000-7000-8000-00000000000d', 1795598999999);
INSERT INTO "trust" (id, device, at, what, name, by) VALUES (1, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000001, 'met', '', '');
INSERT INTO "trust" (id, device, at, what, name, by) VALUES (2, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000002, 'confirmed', '', 'Kim Marsh');
INSERT INTO "trust" (id, device, at, what, name, by) VALUES (3, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000003, 'named', 'Bay 2', 'Kim Marsh');
INSERT INTO "trust" (id, device, at, what, name, by) VALUES (4, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000004, 'retired', '', 'Kim Marsh');
INSERT INTO "import" (id, at, device, made, taken_back) VALUES (1, 1795599000001, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000001, NULL);
INSERT INTO "import" (id, at, device, made, taken_back) VALUES (2, 1795599000003, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000002, 1795599000004);
INSERT INTO "brought" (visit, device, import, lines, taken_back) VALUES ('01a22901-39ac-74b8-b1a0-0000000000b2', 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1, 1, NULL);
INSERT INTO "brought" (visit, device, import, lines, taken_back) VALUES ('01a22901-39ac-74b8-b1a0-0000000000b2', 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 2, 2, 1795599000004);
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
CREATE TRIGGER entry_names_its_photo AFTER INSERT ON entry
WHEN instr(NEW.body, '"photo"') > 0
BEGIN
    INSERT INTO photo (sha256, named)
    SELECT sha256, 1
    FROM (
        SELECT CASE WHEN json_valid(NEW.body) THEN json_extract(NEW.body, '$.photo.sha256') END AS sha256
    )
    WHERE length(sha256) = 64
    ON CONFLICT (sha256) DO UPDATE SET named = 1;
END;
CREATE INDEX trust_of_device ON trust (device);
CREATE TRIGGER knowledge_is_never_changed BEFORE UPDATE ON knowledge
BEGIN
    SELECT RAISE(ABORT, 'knowledge that sorted a visit is kept as it was');
END;
PRAGMA user_version = 11;
