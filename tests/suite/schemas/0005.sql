CREATE TABLE entry (
    id     INTEGER PRIMARY KEY AUTOINCREMENT,
    visit  TEXT    NOT NULL,
    device TEXT    NOT NULL,
    seq    INTEGER NOT NULL CHECK (seq >= 1),
    at     INTEGER NOT NULL,
    prev   TEXT    NOT NULL CHECK (length(prev) = 64),
    hash   TEXT    NOT NULL CHECK (length(hash) = 64) UNIQUE,
    body   TEXT    NOT NULL,
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
) STRICT;
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
CREATE TABLE known_key (
    device TEXT    NOT NULL PRIMARY KEY,
    key    TEXT    NOT NULL CHECK (length(key) = 64),
    at     INTEGER NOT NULL
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
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (1, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 1, 1795599000000, '0000000000000000000000000000000000000000000000000000000000000000', '7483b5cb4d530dccf7aac4346cefe41084cf8b5fb79998315a8e8ffb90d8d0d9', '{"kind":"opened","intake":{"vehicle":{"layout":"rigid-engine-speed","label":"demo tourer","plate":"TR 4417","vin":"","seat":"bare","cylinders":6,"gearbox":"automated-clutch","idle_rpm":[700,800],"odometer":{"value":148200,"unit":"km"},"maker_play_mm":null},"complaint":"It rattles at the lights. It goes away when I touch the throttle.","complaint_sounds":["rattle"],"when":"Standing still with the engine warm","owner":{"name":"Åsa Lindqvist-Demo","contact":"demo telephone 1"}},"knowledge":"5604638637ce","by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (2, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 2, 1795599001000, '7483b5cb4d530dccf7aac4346cefe41084cf8b5fb79998315a8e8ffb90d8d0d9', '9bef7581429941bdad0ea6d934603f3f332ad058aab3628a1a4293bb38f97643', '{"kind":"amended","intake":{"vehicle":{"layout":"rigid-engine-speed","label":"demo tourer","plate":"TR 4417","vin":"","seat":"bare","cylinders":6,"gearbox":"automated-clutch","idle_rpm":[700,800],"odometer":{"value":148200,"unit":"km"},"maker_play_mm":null},"complaint":"It rattles at the lights. It goes away when I touch the throttle.","complaint_sounds":["rattle"],"when":"Standing still with the engine warm","owner":{"name":"Åsa Lindqvist-Demo","contact":"demo telephone 1"}},"by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (3, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 3, 1795599002000, '9bef7581429941bdad0ea6d934603f3f332ad058aab3628a1a4293bb38f97643', '4c3ead6135281d31be669d05003156cf310e37da3f7b9cdaa2a9c680cbed2040', '{"kind":"order-chosen","order":"under-car-first","by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (4, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 4, 1795599003000, '4c3ead6135281d31be669d05003156cf310e37da3f7b9cdaa2a9c680cbed2040', 'ff7ccb8c430055ea8cebe23c5cebb1c3645fd6821e85472643e283553255406b', '{"kind":"gate-confirmed","set":"running","gate":"wheels-on-floor","by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (5, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 5, 1795599004000, 'ff7ccb8c430055ea8cebe23c5cebb1c3645fd6821e85472643e283553255406b', 'cd4c98ce20df01a1adcaccd61ec3485acaa6fff87674fc40cf064ad153987477', '{"kind":"part-left","set":"running","by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (6, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 6, 1795599005000, 'cd4c98ce20df01a1adcaccd61ec3485acaa6fff87674fc40cf064ad153987477', 'd74da87c4056b326054e3e287dc71ed8c34052f7d6847468d4aa614ea73b3cc7', '{"kind":"answered","step":"road-speed-vibration","value":"none","by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (7, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 7, 1795599006000, 'd74da87c4056b326054e3e287dc71ed8c34052f7d6847468d4aa614ea73b3cc7', 'b186748f8fb7ca8098738e1a914886a5fe1e355fddc232d733ef2e553de2a9c9', '{"kind":"answered","step":"idle-noise","value":["rattle"],"by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (8, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 8, 1795599007000, 'b186748f8fb7ca8098738e1a914886a5fe1e355fddc232d733ef2e553de2a9c9', 'd03b1f993099e1099cf4ea65c64c9d90bedbe2f5d1ced7da0be880ae5d0f3e96', '{"kind":"answered","step":"idle-speed","value":560.0,"by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (9, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 9, 1795599008000, 'd03b1f993099e1099cf4ea65c64c9d90bedbe2f5d1ced7da0be880ae5d0f3e96', 'd7ab62f04d6c803698e32497e35b130f2fbfc34f7610f42149f34afc2339075c', '{"kind":"answered","step":"play-vertical","value":"none","temperature":"warm","by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (10, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 10, 1795599009000, 'd7ab62f04d6c803698e32497e35b130f2fbfc34f7610f42149f34afc2339075c', 'cf90d88d319dab9008bf77fd8d9a30d9a24a7619fc4f16df8d80c888b9338439', '{"kind":"answered","step":"play-vertical","value":"none","temperature":"warm","reason":"felt again with the lever","supersedes":["4444444444444444444444444444444444444444444444444444444444444444"],"by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (11, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 11, 1795599010000, 'cf90d88d319dab9008bf77fd8d9a30d9a24a7619fc4f16df8d80c888b9338439', '3f42674f3bb62c9029764d62f26c614e5911f1cbc8ee3fff63012d6f147f0c3e', '{"kind":"photo-kept","step":"idle-speed","photo":{"sha256":"9425c7f73b46a9bea3cc10d2b4a585f803e7a75bc717db304be927738996f153","original_sha256":"91be5c0f171169b3df73f776a3548d3a6608728330f170a9ff44da1d2446d341","width":1280,"height":960,"taken":null},"by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (12, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 12, 1795599011000, '3f42674f3bb62c9029764d62f26c614e5911f1cbc8ee3fff63012d6f147f0c3e', '7d8b05f5835886c1a919f373e060b24e67255b099b26b4dbf3e7321d3443dec5', '{"kind":"photo-waived","step":"road-speed-vibration","reason":"not-in-case","by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (13, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 13, 1795599012000, '7d8b05f5835886c1a919f373e060b24e67255b099b26b4dbf3e7321d3443dec5', '12a1221d6931813efd66c98cf9b884c06234f82528287285ca4c48a5fc5f4018', '{"kind":"withdrawn","entry":"3333333333333333333333333333333333333333333333333333333333333333","by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (14, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 14, 1795599013000, '12a1221d6931813efd66c98cf9b884c06234f82528287285ca4c48a5fc5f4018', '0b06115b1550076cd26c8436f39eeea6e02ae03e036dcb6b2c6f0dceff1a6327', '{"kind":"withdrawn","entry":"4444444444444444444444444444444444444444444444444444444444444444","reason":"wrong car","by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (15, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 15, 1795599014000, '0b06115b1550076cd26c8436f39eeea6e02ae03e036dcb6b2c6f0dceff1a6327', '0f20eed3fafbc054d1548b008ccc16ea9569bbe5861857227de19ae3015eff64', '{"kind":"arranged","what":"times-set-back","by":"case file"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (16, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 16, 1795599015000, '0f20eed3fafbc054d1548b008ccc16ea9569bbe5861857227de19ae3015eff64', '12978e00044d3f86fe84e1dc3908a404d71ee2a015a6860aaf5aa22fe69cdc4c', '{"kind":"opinion-given","cause":"loose-seat","reason":"the ring shines","by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (17, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 17, 1795599016000, '12978e00044d3f86fe84e1dc3908a404d71ee2a015a6860aaf5aa22fe69cdc4c', '9561d874770190f38be6a73b009f01f0448ad56b2de9d092c436f6ff6fd3393b', '{"kind":"outcome-confirmed","outcome":{"causes":["loose-seat"],"layout":"rigid-engine-speed","signs":{"buzz-at-2500":true,"far-end-play":false,"grease-or-dust-out":false,"housing-cracked":false,"housing-fastener-loose":false,"housing-marks":true,"idle-hiss":false,"idle-knock":false,"idle-pops":false,"idle-rattle":true,"idle-whine":false,"turns-rough":false,"turns-stiff":false},"sorted":{"air-leak":0.016015911232073698,"coupling-or-joint":0.01587889693227323,"early-engagement":0.19094905795694733,"housing-damage":0.005616079164025104,"loose-seat":0.996999386889378,"loose-shield-or-mount":0.23104375288437423,"low-idle":0.12217926301562256,"misfire":0.05373147628037498,"normal-character":4.110425438552005e-6,"shaft-damage":0.02879180880580618,"squeezed-bearing":0.0006675952559527243,"worn-bearing":0.002891578343425103},"knowledge":"5604638637ce"},"by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (18, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 18, 1795599017000, '9561d874770190f38be6a73b009f01f0448ad56b2de9d092c436f6ff6fd3393b', 'd49931d079461786761f69ac3a93489fbe055ff3447edbad15a1c9e7887eb93c', '{"kind":"bench","bench":{"bench":"gauged","step":"play-vertical","gauge":{"unit":"mm","station":"support","direction":"vertical","support":"rigid","readings":["0.02","0.03","0.02","0.02","0.03"],"instrument":{"resolution":"0.01","mpe":"0.02"},"place":{"at":"shaft","pivot_mm":0.0,"gauge_mm":610.0,"bearing_mm":560.0,"error_mm":5.0},"maker_limit":null,"bearing":{"bore_mm":35.0,"group":"C3"},"earlier":[]}},"by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (19, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 19, 1795599018000, 'd49931d079461786761f69ac3a93489fbe055ff3447edbad15a1c9e7887eb93c', 'd3de5feab405dff9b3b9ac9ffd015d12998f34ae4587a754311bf11f8eedbfe4', '{"kind":"bench","bench":{"bench":"gate-confirmed","gate":"teardown-lift-gates-hold"},"by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (20, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 20, 1795599019000, 'd3de5feab405dff9b3b9ac9ffd015d12998f34ae4587a754311bf11f8eedbfe4', '174068d57cc516128a0243c1d4596cfaa2e27f98cb2002fe8fd097bd9d4176ef', '{"kind":"bench","bench":{"bench":"looked","look":{"cracked":false,"ring_turned":true,"wall_least_mm":4.0}},"by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (21, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 21, 1795599020000, '174068d57cc516128a0243c1d4596cfaa2e27f98cb2002fe8fd097bd9d4176ef', '794cded6f1e054160c5af61a935f14ceaec5fb84515ae56845ae7a7047212b80', '{"kind":"bench","bench":{"bench":"bore-read","stage":"found","bore":{"kind":"dial","instrument":{"resolution_mm":0.001,"mpe_mm":0.002,"repeatability_mm":0.0005},"zero_diameter_mm":72.0,"zero_was_set":true,"clockwise":true,"wall_mm":6.4,"levels":[{"depth_mm":3.0,"readings":[{"angle_deg":0.0,"value_mm":0.038},{"angle_deg":15.0,"value_mm":0.039},{"angle_deg":30.0,"value_mm":0.035},{"angle_deg":45.0,"value_mm":0.028},{"angle_deg":60.0,"value_mm":0.019},{"angle_deg":75.0,"value_mm":0.012},{"angle_deg":90.0,"value_mm":0.009},{"angle_deg":105.0,"value_mm":0.007},{"angle_deg":120.0,"value_mm":0.009},{"angle_deg":135.0,"value_mm":0.013},{"angle_deg":150.0,"value_mm":0.019},{"angle_deg":165.0,"value_mm":0.026},{"angle_deg":180.0,"value_mm":0.031},{"angle_deg":195.0,"value_mm":0.037},{"angle_deg":210.0,"value_mm":0.038},{"angle_deg":225.0,"value_mm":0.034},{"angle_deg":240.0,"value_mm":0.024},{"angle_deg":255.0,"value_mm":0.014},{"angle_deg":270.0,"value_mm":0.005},{"angle_deg":285.0,"value_mm":0.001},{"angle_deg":300.0,"value_mm":0.003},{"angle_deg":315.0,"value_mm":0.01},{"angle_deg":330.0,"value_mm":0.021},{"angle_deg":345.0,"value_mm":0.031}]},{"depth_mm":9.0,"readings":[{"angle_deg":0.0,"value_mm":0.039},{"angle_deg":15.0,"value_mm":0.04},{"angle_deg":30.0,"value_mm":0.036},{"angle_deg":45.0,"value_mm":0.03},{"angle_deg":60.0,"value_mm":0.021},{"angle_deg":75.0,"value_mm":0.014},{"angle_deg":90.0,"value_mm":0.009},{"angle_deg":105.0,"value_mm":0.007},{"angle_deg":120.0,"value_mm":0.009},{"angle_deg":135.0,"value_mm":0.013},{"angle_deg":150.0,"value_mm":0.02},{"angle_deg":165.0,"value_mm":0.027},{"angle_deg":180.0,"value_mm":0.033},{"angle_deg":195.0,"value_mm":0.037},{"angle_deg":210.0,"value_mm":0.038},{"angle_deg":225.0,"value_mm":0.035},{"angle_deg":240.0,"value_mm":0.026},{"angle_deg":255.0,"value_mm":0.016},{"angle_deg":270.0,"value_mm":0.007},{"angle_deg":285.0,"value_mm":0.002},{"angle_deg":300.0,"value_mm":0.004},{"angle_deg":315.0,"value_mm":0.012},{"angle_deg":330.0,"value_mm":0.021},{"angle_deg":345.0,"value_mm":0.032}]},{"depth_mm":15.0,"readings":[{"angle_deg":0.0,"value_mm":0.04},{"angle_deg":15.0,"value_mm":0.041},{"angle_deg":30.0,"value_mm":0.037},{"angle_deg":45.0,"value_mm":0.03},{"angle_deg":60.0,"value_mm":0.021},{"angle_deg":75.0,"value_mm":0.015},{"angle_deg":90.0,"value_mm":0.01},{"angle_deg":105.0,"value_mm":0.009},{"angle_deg":120.0,"value_mm":0.011},{"angle_deg":135.0,"value_mm":0.015},{"angle_deg":150.0,"value_mm":0.021},{"angle_deg":165.0,"value_mm":0.027},{"angle_deg":180.0,"value_mm":0.035},{"angle_deg":195.0,"value_mm":0.039},{"angle_deg":210.0,"value_mm":0.039},{"angle_deg":225.0,"value_mm":0.035},{"angle_deg":240.0,"value_mm":0.027},{"angle_deg":255.0,"value_mm":0.017},{"angle_deg":270.0,"value_mm":0.008},{"angle_deg":285.0,"value_mm":0.002},{"angle_deg":300.0,"value_mm":0.004},{"angle_deg":315.0,"value_mm":0.012},{"angle_deg":330.0,"value_mm":0.024},{"angle_deg":345.0,"value_mm":0.033}]}]}},"by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (22, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 22, 1795599021000, '794cded6f1e054160c5af61a935f14ceaec5fb84515ae56845ae7a7047212b80', 'cd55984403c6c31f3df05ff6ce891dbc39e471c61d39224e7698286d4906bf7b', '{"kind":"bench","bench":{"bench":"pass-cut","number":1,"contact":"partly","diameter_mm":72.08},"by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (23, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 23, 1795599022000, 'cd55984403c6c31f3df05ff6ce891dbc39e471c61d39224e7698286d4906bf7b', '4e929cc878690614fc74dc83b7625045122e29c21daa1ec0271905ce46157595', '{"kind":"bench","bench":{"bench":"fit-given","fit":{"bearing_outside":"72","measured_outside":null,"bearing_bore":"35","bearing_width":"17","group":"C4","class":null,"measured_bore":{"size":"71.9640","expanded_um":"4.6"},"housing":"A356","housing_outside":"87","sleeve":{"material":"ductile-iron","outside":{"size":"75.060","expanded_um":"3"},"housing_bore":{"size":"75.000","expanded_um":"4.6"}},"temperature":["20","60"]}},"by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (24, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 24, 1795599023000, '4e929cc878690614fc74dc83b7625045122e29c21daa1ec0271905ce46157595', '9a77844456ce6a2da66698351ae8c262b27fde10b09455d26bd50f7cfbecd2d0', '{"kind":"bench","bench":{"bench":"ring-turned","turns":"free"},"by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (25, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 25, 1795599024000, '9a77844456ce6a2da66698351ae8c262b27fde10b09455d26bd50f7cfbecd2d0', '6b85cda7ec911f5ae5df2b5fdb380945a9158657bdb079b7fdedde9b8d2ee611', '{"kind":"bench","bench":{"bench":"noted","text":"Invented: four new bolts, 45 Nm in two steps, read off the maker''s sheet; marks on flange and shaft lined up."},"by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (26, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 26, 1795599025000, '6b85cda7ec911f5ae5df2b5fdb380945a9158657bdb079b7fdedde9b8d2ee611', 'e395926b0ee1d7cb957c7d1fd95004f96480e827d7bae5ef9ef702eaa47224b9', '{"kind":"photo-marked","step":"play-vertical","photo":"9425c7f73b46a9bea3cc10d2b4a585f803e7a75bc717db304be927738996f153","marks":[{"shape":"arrow","from":[0.125,0.25],"to":[0.5,0.5]},{"shape":"ring","corners":[[0.25,0.25],[0.75,0.5]]},{"shape":"freehand","points":[[0.125,0.125],[0.25,0.5]]},{"shape":"label","at":[0.5,0.75],"text":"worn here"}],"by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (27, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 27, 1795599026000, 'e395926b0ee1d7cb957c7d1fd95004f96480e827d7bae5ef9ef702eaa47224b9', 'ea34ff4bd8b7c1b66d104f4487129a79e8a6e5f7c3a30962cbddaff76345032a', '{"kind":"photo-marked","step":"play-vertical","photo":"9425c7f73b46a9bea3cc10d2b4a585f803e7a75bc717db304be927738996f153","marks":[],"by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (28, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 28, 1795599027000, 'ea34ff4bd8b7c1b66d104f4487129a79e8a6e5f7c3a30962cbddaff76345032a', '303e13714aa425432d3cd6100d408fb31ff4d879bcfe8a231a992ae73504d0ea', '{"kind":"photos-paired","step":"play-vertical","before":"9425c7f73b46a9bea3cc10d2b4a585f803e7a75bc717db304be927738996f153","after":"9425c7f73b46a9bea3cc10d2b4a585f803e7a75bc717db304be927738996f153","by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (29, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 29, 1795599028000, '303e13714aa425432d3cd6100d408fb31ff4d879bcfe8a231a992ae73504d0ea', 'd882322d67f4059be61e8fa46ba218558bf8384b56abf6ff0d19d233fbdcc279', '{"kind":"photos-paired","step":"play-vertical","after":"9425c7f73b46a9bea3cc10d2b4a585f803e7a75bc717db304be927738996f153","by":"Kim Marsh"}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (30, '0191d2f0-0000-7000-8000-000000000001', '0191d2f0-0000-7000-8000-00000000000d', 30, 1795599029000, 'd882322d67f4059be61e8fa46ba218558bf8384b56abf6ff0d19d233fbdcc279', 'd9eb22a74d45220886088580502fce4a6e6ea2875dda5e41301d9b7ee4b5f4c9', '{"kind":"received","receipt":{"decision":"decide-later","name":"Alex Example","note_sha256":"5555555555555555555555555555555555555555555555555555555555555555","locale":"en","strokes":[[[0.125,0.5],[0.25,0.375],[0.5,0.625]],[[0.75,0.5]]]}}');
INSERT INTO "entry" (id, visit, device, seq, at, prev, hash, body) VALUES (31, '0191d2f0-0000-7000-8000-000000000002', '0191d2f0-0000-7000-8000-00000000000d', 1, 1795602600000, '0000000000000000000000000000000000000000000000000000000000000000', '755585b916ce379a31ef87dd61d9a8d745730d75333fb0ff6bfe440fd24d4d7b', '{"kind":"opened","intake":{"vehicle":{"layout":"rigid-engine-speed","label":"demo tourer","plate":"TR 4417","vin":"","seat":"bare","cylinders":6,"gearbox":"automated-clutch","idle_rpm":[700,800],"odometer":{"value":148200,"unit":"km"},"maker_play_mm":null},"complaint":"It rattles at the lights. It goes away when I touch the throttle.","complaint_sounds":["rattle"],"when":"Standing still with the engine warm","owner":{"name":"Åsa Lindqvist-Demo","contact":"demo telephone 1"}},"knowledge":"5604638637ce","by":"Kim Marsh"}');
INSERT INTO "card" (visit, label, plate, vin, owner, opened_at, updated_at, word, answered, steps, receipt, haystack) VALUES ('0191d2f0-0000-7000-8000-000000000001', 'demo tourer', 'TR 4417', '', 'Alex Example', 1795599000000, 1795599029000, 'caution', 4, 18, 'decide-later', '2026-11-25
demo tourer');
INSERT INTO "card" (visit, label, plate, vin, owner, opened_at, updated_at, word, answered, steps, receipt, haystack) VALUES ('0191d2f0-0000-7000-8000-000000000002', 'demo tourer', 'TR 4417', '', 'Alex Example', 1795602600000, 1795602600000, NULL, 0, 18, NULL, '2026-11-25
demo tourer');
INSERT INTO "setting" (name, value) VALUES ('device', '0191d2f0-0000-7000-8000-00000000000d');
INSERT INTO "setting" (name, value) VALUES ('technician', 'Kim Marsh');
INSERT INTO "setting" (name, value) VALUES ('pref.locale', 'de');
INSERT INTO "setting" (name, value) VALUES ('pref.theme', 'dark');
INSERT INTO "setting" (name, value) VALUES ('key', '0707070707070707070707070707070707070707070707070707070707070707');
INSERT INTO "erased" (visit, at, photos, swept) VALUES ('0191d2f0-0000-7000-8000-0000000000ee', 1795599000000, '', 1);
INSERT INTO "known_key" (device, key, at) VALUES ('0191d2f0-0000-7000-8000-00000000000e', 'abababababababababababababababababababababababababababababababab', 1795599000000);
INSERT INTO "pending_capture" (id, visit, step, at) VALUES ('0191d2f0-0000-7000-8000-0000000000aa', '0191d2f0-0000-7000-8000-000000000002', 'play-vertical', 1795599000000);
INSERT INTO "workshop" (line, name, address, phone, length, distance, rate, currency) VALUES (1, 'Brackenfold Motor Works', '3 Old Tannery Yard
Brackenfold', '01632 960417', '', '', 86.5, 'GBP');
INSERT INTO "workshop_hours" (tier, hours_from, hours_to) VALUES ('bearings-only', 3.0, 4.5);
INSERT INTO "workshop_hours" (tier, hours_from, hours_to) VALUES ('skim-and-sleeve', 6.0, 9.0);
INSERT INTO "workshop_hours" (tier, hours_from, hours_to) VALUES ('replace-housing', 5.0, 7.5);
INSERT INTO "paper_made" (visit, paper, locale, sheet) VALUES ('0191d2f0-0000-7000-8000-000000000001', 'note', 'de', 'a4');
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
PRAGMA user_version = 5;
