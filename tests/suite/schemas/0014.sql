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
, here INTEGER NOT NULL DEFAULT 0 CHECK (here IN (0, 1))) STRICT;
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
CREATE TABLE workshop_sleeve (
    place      INTEGER NOT NULL PRIMARY KEY,
    material   TEXT NOT NULL,
    outside_mm REAL NOT NULL CHECK (outside_mm > bore_mm),
    bore_mm    REAL NOT NULL CHECK (bore_mm > 0)
) STRICT;
CREATE TABLE workshop_instrument (
    place            INTEGER NOT NULL PRIMARY KEY,
    name             TEXT NOT NULL UNIQUE,
    resolution_mm    REAL NOT NULL CHECK (resolution_mm > 0),
    mpe_mm           REAL NOT NULL CHECK (mpe_mm > 0),
    repeatability_mm REAL CHECK (repeatability_mm > 0),
    calibrated       TEXT NOT NULL DEFAULT '',
    due              TEXT NOT NULL DEFAULT ''
) STRICT;
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (1, '01a22acb-6505-73d3-85b0-d9f83a9a0368', '1e62df861083f8af60186bb9f70460080ede8de55a2c92dc7ed79fb3c2381ef1', 1, 1795599000000, '0000000000000000000000000000000000000000000000000000000000000000', '2f697ad54f6168ce719918654fef8a484650c5dd7b8f7e0cc4f38a39293fd8a6', '{"kind":"opened","intake":{"vehicle":{"layout":"torque-tube","label":"","plate":"TR 4417","vin":"","seat":null,"cylinders":null,"gearbox":null,"idle_rpm":null,"odometer":null,"maker_play_mm":null},"complaint":"","complaint_sounds":[],"when":"","owner":{"name":"Åsa O''Brien","contact":""}},"knowledge":"4f5b0a84ca22","rules":3,"by":"Kim Marsh"}', '6c1dcc1db20f316896c287997dff6d0e6d9f272b473b59f5e9d911ce788823641ca06ada3c361e7f96d60f3021655ed6af583eb55f070b42aa9122ec80a8d00a');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (2, '01a22acb-6505-73d3-85b0-d9f83a9a0368', '1e62df861083f8af60186bb9f70460080ede8de55a2c92dc7ed79fb3c2381ef1', 2, 1795599000000, '2f697ad54f6168ce719918654fef8a484650c5dd7b8f7e0cc4f38a39293fd8a6', '1275540b168f9236c582d320c6faa490808dbb054c0411beccb89792cc4e32d2', '{"kind":"photo-kept","step":"shield-and-mounts","photo":{"sha256":"0e5349a5f310db93d7f0a72753742d373aea1d55ee2dde5dca7afa0ec9abec68","original_sha256":"9c1232b8a5a4b4d0f85a7b19cafd72af50aad547cf8762b92bffb73b6d40f2a6","width":24,"height":16,"taken":null},"by":"Kim Marsh"}', '110783a7f81ffde750333695a6cfd141b6877ec2e80407cf0cc3dd64b6188fd863b9a0102e40f5b9fe2210b178d6037ced3975bb9373d8872b377dbcfab17b05');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (3, '01a22acb-6519-7425-9c73-553ceb959eea', '1e62df861083f8af60186bb9f70460080ede8de55a2c92dc7ed79fb3c2381ef1', 1, 1795599000000, '0000000000000000000000000000000000000000000000000000000000000000', '4707bd7a7b7018eae8f03c0d634e6ee6425fe5a3f54922dfd58655bd73598ac7', '{"kind":"opened","intake":{"vehicle":{"layout":"torque-tube","label":"","plate":"TR 4418","vin":"","seat":null,"cylinders":null,"gearbox":null,"idle_rpm":null,"odometer":null,"maker_play_mm":null},"complaint":"","complaint_sounds":[],"when":"","owner":{"name":"Åsa O''Brien","contact":""}},"knowledge":"4f5b0a84ca22","rules":3,"by":"Kim Marsh"}', '01c3c11b7b8666c4503ae025b4910261edafba452a27346e049e1d6358a9f3937ec655d8dc915c15e887a75f7c425318fe6827ce079baff60e310f091651e003');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (4, '01a22acb-6519-7425-9c73-553ceb959eea', '1e62df861083f8af60186bb9f70460080ede8de55a2c92dc7ed79fb3c2381ef1', 2, 1795599000000, '4707bd7a7b7018eae8f03c0d634e6ee6425fe5a3f54922dfd58655bd73598ac7', '12cdc6ca050d19cc85ec8691cd6311dc58ea946bc5ab017f206037c00b9cdb62', '{"kind":"photo-kept","step":"shield-and-mounts","photo":{"sha256":"0e5349a5f310db93d7f0a72753742d373aea1d55ee2dde5dca7afa0ec9abec68","original_sha256":"9c1232b8a5a4b4d0f85a7b19cafd72af50aad547cf8762b92bffb73b6d40f2a6","width":24,"height":16,"taken":null},"by":"Kim Marsh"}', 'eb0289b55ce279d2b011779d161da7b5a1e0335ffdb4c90803884a1d12fdbb4f9e8d3508b0c6eb0985194edc3caafd9e4668a3aad051a44612b53bfe10a63303');
INSERT INTO "card" (visit, label, plate, vin, owner, opened_at, updated_at, word, answered, steps, receipt, haystack, settled, repair, confirmed) VALUES ('01a22acb-6505-73d3-85b0-d9f83a9a0368', '', 'TR 4417', '', 'Åsa O''Brien', 1795599000000, 1795599000000, NULL, 0, 19, NULL, '2026-11-25
25.11.2026
25/11/2026
11/25/2026


tr 4417
tr4417


asa o''brien
asaobrien', 0, NULL, 0);
INSERT INTO "card" (visit, label, plate, vin, owner, opened_at, updated_at, word, answered, steps, receipt, haystack, settled, repair, confirmed) VALUES ('01a22acb-6519-7425-9c73-553ceb959eea', '', 'TR 4418', '', 'Åsa O''Brien', 1795599000000, 1795599000000, NULL, 0, 19, NULL, '2026-11-25
25.11.2026
25/11/2026
11/25/2026


tr 4418
tr4418


asa o''brien
asaobrien', 0, NULL, 0);
INSERT INTO "setting" (name, value) VALUES ('key', '0d0dcb7ffd4379ff363cc8da9639202739ea3c533321d33056cea429fa654877');
INSERT INTO "setting" (name, value) VALUES ('device', '1e62df861083f8af60186bb9f70460080ede8de55a2c92dc7ed79fb3c2381ef1');
INSERT INTO "setting" (name, value) VALUES ('technician', 'Kim Marsh');
INSERT INTO "knowledge" (version, at, texts) VALUES ('4f5b0a84ca22', 1795599000000, '{}');
INSERT INTO "photo" (sha256, thumb, named) VALUES ('0e5349a5f310db93d7f0a72753742d373aea1d55ee2dde5dca7afa0ec9abec68', 'cc983c98521b582caeac76740fe8488cff1517c2fd569b395424191e2268a493', 1);
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (5, '01a22acb-6505-73d3-85b0-0000000000b2', 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1, 1795599000001, '0000000000000000000000000000000000000000000000000000000000000000', '98e7b9c49108f518088587be0dff7bca46c97df7d294d7f29b9033b0bd9f679a', '{"kind":"opened","intake":{"vehicle":{"layout":"torque-tube","label":"","plate":"QX 2290","vin":"","seat":null,"cylinders":null,"gearbox":null,"idle_rpm":null,"odometer":null,"maker_play_mm":null},"complaint":"","complaint_sounds":[],"when":"","owner":{"name":"Åsa O''Brien","contact":""}},"knowledge":"4f5b0a84ca22","rules":3,"by":"Robin Vale"}', '15235d2040cf85acca27bf54f054881444bc5aab4332145b1905dd8fd832161bdef1bbcf8984d81576f4f2072b99f37aa5788bd226da0793b321e3a8e20b020a');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body, signature) VALUES (6, '01a22acb-6505-73d3-85b0-0000000000b2', 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 2, 1795599000002, '98e7b9c49108f518088587be0dff7bca46c97df7d294d7f29b9033b0bd9f679a', '0f46c54a8afdf1d353f7261d3e5ded686bc9a3335df59082dcb4b133a308c0a6', '{"kind":"order-chosen","order":"running-first","by":"Robin Vale"}', '831e7e83796f9c7fe13f7bc0cff999fcd77e57dedc4fa7572965136d1a5543d2135185babbc7e7f844fa5f41273c37bd5c56a8024655890de8ee70298aed0309');
INSERT INTO "card" (visit, label, plate, vin, owner, opened_at, updated_at, word, answered, steps, receipt, haystack, settled, repair, confirmed) VALUES ('01a22acb-6505-73d3-85b0-0000000000b2', '', 'QX 2290', '', 'Åsa O''Brien', 1795599000000, 1795599000000, NULL, 0, 19, NULL, '2026-11-25
25.11.2026
25/11/2026
11/25/2026


qx 2290
qx2290


asa o''brien
asaobrien', 0, NULL, 0);
INSERT INTO "erased" (visit, at, photos, swept, here) VALUES ('01a22acb-6505-73d3-85b0-0000000000ee', 1795599000000, '', 1, 1);
INSERT INTO "pending_capture" (id, visit, step, at) VALUES ('0191d2f0-0000-7000-8000-0000000000aa', '01a22acb-6505-73d3-85b0-d9f83a9a0368', 'play-vertical', 1795599000000);
INSERT INTO "workshop" (line, name, address, phone, length, distance, rate, currency) VALUES (1, 'Brackenfold Motor Works', '3 Old Tannery Yard
Brackenfold', '01632 960417', '', '', 86.5, 'GBP');
INSERT INTO "workshop_hours" (tier, hours_from, hours_to) VALUES ('bearings-only', 3.0, 4.5);
INSERT INTO "workshop_hours" (tier, hours_from, hours_to) VALUES ('skim-and-sleeve', 6.0, 9.0);
INSERT INTO "workshop_hours" (tier, hours_from, hours_to) VALUES ('replace-housing', 5.0, 7.5);
INSERT INTO "paper_made" (visit, paper, locale, sheet) VALUES ('01a22acb-6505-73d3-85b0-d9f83a9a0368', 'note', 'de', 'a4');
INSERT INTO "former_device" (id, until) VALUES ('0191d2f0-0000-7000-8000-00000000000d', 1795598999999);
INSERT INTO "trust" (id, device, at, what, name, by) VALUES (1, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000001, 'met', '', '');
INSERT INTO "trust" (id, device, at, what, name, by) VALUES (2, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000002, 'confirmed', '', 'Kim Marsh');
INSERT INTO "trust" (id, device, at, what, name, by) VALUES (3, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000003, 'named', 'Bay 2', 'Kim Marsh');
INSERT INTO "trust" (id, device, at, what, name, by) VALUES (4, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000004, 'retired', '', 'Kim Marsh');
INSERT INTO "import" (id, at, device, made, taken_back) VALUES (1, 1795599000001, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000001, NULL);
INSERT INTO "import" (id, at, device, made, taken_back) VALUES (2, 1795599000003, 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1795599000002, 1795599000004);
INSERT INTO "brought" (visit, device, import, lines, taken_back) VALUES ('01a22acb-6505-73d3-85b0-0000000000b2', 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 1, 1, NULL);
INSERT INTO "brought" (visit, device, import, lines, taken_back) VALUES ('01a22acb-6505-73d3-85b0-0000000000b2', 'fd1724385aa0c75b64fb78cd602fa1d991fdebf76b13c58ed702eac835e9f618', 2, 2, 1795599000004);
INSERT INTO "workshop_sleeve" (place, material, outside_mm, bore_mm) VALUES (1, 'mild-steel', 76.0, 70.0);
INSERT INTO "workshop_instrument" (place, name, resolution_mm, mpe_mm, repeatability_mm, calibrated, due) VALUES (1, 'Bore gauge 4', 0.001, 0.002, 0.0005, '2026-03-02', '2027-03-01');
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
PRAGMA user_version = 14;
