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
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (1, '01a2283e-de98-776c-8215-641f8a292f1c', 'ba09aa9325f55dd39a5d56246ede732e16abd47c9244477fad80c6452a37d78f', 1, 1795599000000, '0000000000000000000000000000000000000000000000000000000000000000', 'c0292189283cae06731502958c0e61aab77dce1768f2cc030d9d0330f4b53cae', '{"kind":"opened","intake":{"vehicle":{"layout":"torque-tube","label":"","plate":"TR 4417","vin":"","seat":null,"cylinders":null,"gearbox":null,"idle_rpm":null,"odometer":null,"maker_play_mm":null},"complaint":"","complaint_sounds":[],"when":"","owner":{"name":"Åsa O''Brien","contact":""}},"knowledge":"51f2a550716a","rules":2,"by":"Kim Marsh"}', '29ef0417509ad8e43ace6b786d79912d1090e75f81c5bb83b14b79ed678048484597439b09d697d9e780e9ced997761e9b4072dfdb2c382c1cc7fbabb91e2d08');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (2, '01a2283e-de98-776c-8215-641f8a292f1c', 'ba09aa9325f55dd39a5d56246ede732e16abd47c9244477fad80c6452a37d78f', 2, 1795599000000, 'c0292189283cae06731502958c0e61aab77dce1768f2cc030d9d0330f4b53cae', 'c8cdcc09d7925475bd6c3a0bc2db8bec7f6a4e634d4ca49630bbf5314f2551f9', '{"kind":"photo-kept","step":"shield-and-mounts","photo":{"sha256":"0e5349a5f310db93d7f0a72753742d373aea1d55ee2dde5dca7afa0ec9abec68","original_sha256":"9c1232b8a5a4b4d0f85a7b19cafd72af50aad547cf8762b92bffb73b6d40f2a6","width":24,"height":16,"taken":null},"by":"Kim Marsh"}', 'd8eebdb64e079e35db13fdf97dbad0426f05e5172ffa3f449762b75d0db46e568a28c5b792149061d3717fa4d907f2a021be51fcbd910804a77cf04f52ad050b');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (3, '01a2283e-deb0-738a-aae3-48ea2e3d65d0', 'ba09aa9325f55dd39a5d56246ede732e16abd47c9244477fad80c6452a37d78f', 1, 1795599000000, '0000000000000000000000000000000000000000000000000000000000000000', 'd2665d5ebc70d85b097bdc6f592d51399c3959483c666ca7e0169f54f288507d', '{"kind":"opened","intake":{"vehicle":{"layout":"torque-tube","label":"","plate":"TR 4418","vin":"","seat":null,"cylinders":null,"gearbox":null,"idle_rpm":null,"odometer":null,"maker_play_mm":null},"complaint":"","complaint_sounds":[],"when":"","owner":{"name":"Åsa O''Brien","contact":""}},"knowledge":"51f2a550716a","rules":2,"by":"Kim Marsh"}', '39c9fc60ed52c9c3b2747879a19fbf8d1f4a8dc4703d2c8e07b37ec3f25e4c7ce37d5a7b69ce60d50bc2797e88d1ebc8675b76a170406da9737fb9cbfa97f00b');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (4, '01a2283e-deb0-738a-aae3-48ea2e3d65d0', 'ba09aa9325f55dd39a5d56246ede732e16abd47c9244477fad80c6452a37d78f', 2, 1795599000000, 'd2665d5ebc70d85b097bdc6f592d51399c3959483c666ca7e0169f54f288507d', '947e4f2c7929bde94cffd07f10656db05d78593feae13d0b06ddc71abac8cfff', '{"kind":"photo-kept","step":"shield-and-mounts","photo":{"sha256":"0e5349a5f310db93d7f0a72753742d373aea1d55ee2dde5dca7afa0ec9abec68","original_sha256":"9c1232b8a5a4b4d0f85a7b19cafd72af50aad547cf8762b92bffb73b6d40f2a6","width":24,"height":16,"taken":null},"by":"Kim Marsh"}', 'a45715cf7b31eac483bed65459ac7b8c86f398a2596d73a84eda8794c45a0e45af8c5dbe94bfbbef68500df62ea1d562b2ae8dfe0d554df25d06937c39aac705');
INSERT INTO "card" (visit, label, plate, vin, owner, opened_at, updated_at, word, answered, steps, receipt, haystack, settled, repair, confirmed) VALUES ('01a2283e-de98-776c-8215-641f8a292f1c', '', 'TR 4417', '', 'Åsa O''Brien', 1795599000000, 1795599000000, NULL, 0, 19, NULL, '2026-11-25
25.11.2026
25/11/2026
11/25/2026


tr 4417
tr4417


asa o''brien
asaobrien', 0, NULL, 0);
INSERT INTO "card" (visit, label, plate, vin, owner, opened_at, updated_at, word, answered, steps, receipt, haystack, settled, repair, confirmed) VALUES ('01a2283e-deb0-738a-aae3-48ea2e3d65d0', '', 'TR 4418', '', 'Åsa O''Brien', 1795599000000, 1795599000000, NULL, 0, 19, NULL, '2026-11-25
25.11.2026
25/11/2026
11/25/2026


tr 4418
tr4418


asa o''brien
asaobrien', 0, NULL, 0);
INSERT INTO "setting" (name, value) VALUES ('key', 'eaa99b65cad4a28fced1836343b3746fee1f63e1cb81a709a9aaac58ca5a9d4c');
INSERT INTO "setting" (name, value) VALUES ('device', 'ba09aa9325f55dd39a5d56246ede732e16abd47c9244477fad80c6452a37d78f');
INSERT INTO "setting" (name, value) VALUES ('technician', 'Kim Marsh');
INSERT INTO "knowledge" (version, at, texts) VALUES ('51f2a550716a', 1795599000000, '{}');
INSERT INTO "photo" (sha256, thumb, named) VALUES ('0e5349a5f310db93d7f0a72753742d373aea1d55ee2dde5dca7afa0ec9abec68', 'cc983c98521b582caeac76740fe8488cff1517c2fd569b395424191e2268a493', 1);
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (5, '01a2283e-de98-776c-8215-0000000000b2', 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1, 1795599000001, '0000000000000000000000000000000000000000000000000000000000000000', '6bafb91cd1c197d41f29c6293162a7df7276577fcc4b3c92b336227602e68bc4', '{"kind":"opened","intake":{"vehicle":{"layout":"torque-tube","label":"","plate":"QX 2290","vin":"","seat":null,"cylinders":null,"gearbox":null,"idle_rpm":null,"odometer":null,"maker_play_mm":null},"complaint":"","complaint_sounds":[],"when":"","owner":{"name":"Åsa O''Brien","contact":""}},"knowledge":"51f2a550716a","rules":2,"by":"Robin Vale"}', '46930c8d22a1c57260c7c4d64b3073becba4dca780ca8a215c226e58a2582a9fe387d67568f5f64f02734e5e34ded109cb8bf915a817ca19ea53c9cd67148706');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (6, '01a2283e-de98-776c-8215-0000000000b2', 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 2, 1795599000002, '6bafb91cd1c197d41f29c6293162a7df7276577fcc4b3c92b336227602e68bc4', '39a05b95bdc2a5cffcd26974713d9e4c0d0b0cc832e1c6698337b38aa8b1c52d', '{"kind":"order-chosen","order":"running-first","by":"Robin Vale"}', 'cf7ab8fbd595ce3c5a659db440f34df70a12c2bdb1d6fa9c50c3194b2d92f8507a596b7876570eaf123c765789e91a3ce11e7175698deaf90631d9aa6a9ed708');
INSERT INTO "card" (visit, label, plate, vin, owner, opened_at, updated_at, word, answered, steps, receipt, haystack, settled, repair, confirmed) VALUES ('01a2283e-de98-776c-8215-0000000000b2', '', 'QX 2290', '', 'Åsa O''Brien', 1795599000000, 1795599000000, NULL, 0, 19, NULL, '2026-11-25
25.11.2026
25/11/2026
11/25/2026


qx 2290
qx2290


asa o''brien
asaobrien', 0, NULL, 0);
INSERT INTO "erased" (visit, at, photos, swept) VALUES ('01a2283e-de98-776c-8215-0000000000ee', 1795599000000, '', 1);
INSERT INTO "pending_capture" (id, visit, step, at) VALUES ('0191d2f0-0000-7000-8000-0000000000aa', '01a2283e-de98-776c-8215-641f8a292f1c', 'play-vertical', 1795599000000);
INSERT INTO "workshop" (line, name, address, phone, length, distance, rate, currency) VALUES (1, 'Brackenfold Motor Works', '3 Old Tannery Yard
Brackenfold', '01632 960417', '', '', 86.5, 'GBP');
INSERT INTO "workshop_hours" (tier, hours_from, hours_to) VALUES ('bearings-only', 3.0, 4.5);
INSERT INTO "workshop_hours" (tier, hours_from, hours_to) VALUES ('skim-and-sleeve', 6.0, 9.0);
INSERT INTO "workshop_hours" (tier, hours_from, hours_to) VALUES ('replace-housing', 5.0, 7.5);
INSERT INTO "paper_made" (visit, paper, locale, sheet) VALUES ('01a2283e-de98-776c-8215-641f8a292f1c', 'note', 'de', 'a4');
INSERT INTO "former_device" (id, until) VALUES ('0191d2f0-0000-7000-8000-00000000000d', 1795598999999);
INSERT INTO "trust" (id, device, at, what, name, by) VALUES (1, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000001, 'met', '', '');
INSERT INTO "trust" (id, device, at, what, name, by) VALUES (2, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000002, 'confirmed', '', 'Kim Marsh');
INSERT INTO "trust" (id, device, at, what, name, by) VALUES (3, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000003, 'named', 'Bay 2', 'Kim Marsh');
INSERT INTO "trust" (id, device, at, what, name, by) VALUES (4, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000004, 'retired', '', 'Kim Marsh');
INSERT INTO "import" (id, at, device, made, taken_back) VALUES (1, 1795599000001, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000001, NULL);
INSERT INTO "import" (id, at, device, made, taken_back) VALUES (2, 1795599000003, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000002, 1795599000004);
INSERT INTO "brought" (visit, device, import, lines, taken_back) VALUES ('01a2283e-de98-776c-8215-0000000000b2', 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1, 1, NULL);
INSERT INTO "brought" (visit, device, import, lines, taken_back) VALUES ('01a2283e-de98-776c-8215-0000000000b2', 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 2, 2, 1795599000004);
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
CREATE TRIGGER knowledge_is_never_changed BEFORE UPDATE ON knowledge
BEGIN
    SELECT RAISE(ABORT, 'knowledge that sorted a visit is kept as it was');
END;
PRAGMA user_version = 10;
