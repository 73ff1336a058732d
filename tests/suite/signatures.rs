//! Who wrote a line: what no key proves does not come in, whoever carries it, and nobody brings a device its own words.

use std::path::Path;

use rusqlite::Connection;
use serde_json::{Value, json};
use steady_core::app::Steady;
use steady_core::app::handover::verify;
use steady_core::model::rating::Word;
use steady_core::model::standing::Standing;
use tempfile::TempDir;

use crate::backup_generations::{back_up, restore};
use crate::handover::{exported, rigid};
use crate::handover_corpus::{VISIT, spelled, strangers_parts};
use crate::handover_files::{entries, ledger, line, sealed, sha256, signed, stranger, zip};
use crate::proven::says_of_its_proof;
use crate::support::{ask, open, scratch};

/// An id as devices had it before ids were keys.
const OLD_DEVICE: &str = "0191d2f0-0000-7000-8000-00000000000b";

fn felt() -> Value {
    json!({ "kind": "answered", "step": "play-vertical", "value": "felt", "by": "Kim Demo" })
}

fn look(steady: &Steady, visit: &str) -> Standing {
    ask(steady, json!({ "ask": "look", "visit": visit }))
}

/// The code under which a file is refused; `ok` if it is taken in.
fn taken(steady: &Steady, file: &[u8]) -> String {
    steady.import(&mut &*file).err().map_or_else(|| "ok".to_owned(), |failure| failure.code)
}

/// The lines of the one visit of a file.
pub fn lines_of(file: &[u8]) -> Vec<Value> {
    let parts = entries(file);
    let part = parts.iter().find(|part| part.name.starts_with(b"visits/")).unwrap();
    std::str::from_utf8(&part.data).unwrap().lines().map(|line| serde_json::from_str(line).unwrap()).collect()
}

/// A stranger's file of these lines.
pub fn carried(visit: &str, lines: &[Value]) -> Vec<u8> {
    let mut lines = lines.to_vec();
    lines.sort_by_key(|line| (line["device"].to_string(), line["seq"].as_u64()));
    zip(&sealed(&[ledger(visit, &lines)], |_| {}))
}

/// Lines that go on after the last of a device, made by the stranger.
pub fn forged(visit: &str, lines: &[Value], device: &str, bodies: &[Value]) -> Vec<Value> {
    let last = lines.iter().filter(|line| line["device"] == device).max_by_key(|line| line["seq"].as_u64());
    let mut prev = last.map_or_else(|| "0".repeat(64), |line| line["hash"].as_str().unwrap().to_owned());
    let next = last.map_or(1, |line| line["seq"].as_u64().unwrap() + 1);
    let forged = (next..).zip(bodies).map(|(seq, body)| line(visit, device, seq, &mut prev, &spelled(body)));
    lines.iter().cloned().chain(forged.collect::<Vec<_>>()).collect()
}

/// What makes a DANGER read as not yet checked: taken back, and left.
fn taken_back(danger: &str) -> Vec<Value> {
    vec![
        json!({ "kind": "withdrawn", "entry": danger, "reason": "a slip", "by": "Kim Demo" }),
        json!({ "kind": "part-left", "set": "lift", "by": "Kim Demo" }),
        json!({ "kind": "order-chosen", "order": "running-first", "by": "Kim Demo" }),
        json!({ "kind": "part-left", "set": "lift", "by": "Kim Demo" }),
    ]
}

/// The receiver's own chain, of which a stranger holds a copy, goes on in the technician's name.
#[test]
fn strangers_lines_in_the_receivers_own_name_stay_outside() {
    let (_folder, here) = scratch();
    let visit = rigid(&here, "TR 4417");
    ask(&here, json!({ "ask": "answer", "visit": visit, "step": "play-vertical", "value": "felt" }));
    let before = look(&here, &visit);
    let lines = lines_of(&exported(&here, &[&visit]));
    let (own, danger) = (lines[0]["device"].as_str().unwrap(), before.ledger.head.as_str());
    let bad = forged(&visit, &lines, own, &taken_back(danger));
    assert_eq!(taken(&here, &carried(&visit, &bad)), "handover-unproven");
    // Without a signature, and with an earlier line's.
    let unsigned = bad.iter().cloned().map(|mut line| {
        line["seq"]
            .as_u64()
            .filter(|seq| *seq > before.ledger.entries)
            .and(line.as_object_mut())
            .map(|line| line.remove("signature"));
        line
    });
    assert_eq!(taken(&here, &carried(&visit, &unsigned.collect::<Vec<_>>())), "handover-unproven");
    let copied = bad.iter().cloned().map(|mut line| {
        line["signature"] = lines[0]["signature"].clone();
        line
    });
    assert_eq!(taken(&here, &carried(&visit, &copied.collect::<Vec<_>>())), "handover-unproven");
    assert_eq!(look(&here, &visit), before);
    assert_eq!(before.urgency.word, Some(Word::Danger));
}

#[test]
fn forged_lines_of_a_third_device_stay_outside() {
    let ((_a, writer), (_b, here)) = (scratch(), scratch());
    let visit = rigid(&writer, "TR 4417");
    let honest = exported(&writer, &[&visit]);
    let lines = lines_of(&honest);
    let third = lines[0]["device"].as_str().unwrap();
    let bad = carried(&visit, &forged(&visit, &lines, third, &[felt()]));
    assert_eq!(taken(&here, &bad), "handover-unproven", "at first contact");
    assert_eq!(verify(&mut &*bad).unwrap_err().code, "handover-unproven");
    assert_eq!(taken(&here, &honest), "ok");
    assert_eq!(taken(&here, &bad), "handover-unproven", "and once it is known");
    assert_eq!(look(&here, &visit).urgency.word, None);
    let old =
        forged(VISIT, &[], OLD_DEVICE, &[serde_json::from_str(lines[0]["body"].as_str().unwrap()).unwrap()]);
    assert_eq!(taken(&here, &carried(VISIT, &old)), "handover-unsigned", "in a name from before signatures");
}

/// Whatever a stranger says first under another's name, the genuine device is heard.
#[test]
fn nobody_comes_first_under_anothers_name() {
    let ((_a, writer), (_b, here)) = (scratch(), scratch());
    let visit = rigid(&writer, "TR 4417");
    let honest = exported(&writer, &[&visit]);
    let device = lines_of(&honest)[0]["device"].clone();
    let squatter = zip(&sealed(&strangers_parts(), |manifest| manifest["device"] = device.clone()));
    assert_eq!(taken(&here, &squatter), "handover-signature");
    let place = forged(&visit, &[], device.as_str().unwrap(), &[felt()]);
    assert_eq!(taken(&here, &carried(&visit, &place)), "handover-unproven");
    assert_eq!(taken(&here, &honest), "ok");
}

/// What a device carries for another is proven by its writer.
#[test]
fn relayed_lines_are_proven_by_their_writer() {
    let ((_a, writer), (_b, carrier), (_c, here)) = (scratch(), scratch(), scratch());
    let visit = rigid(&writer, "TR 4417");
    assert_eq!(taken(&carrier, &exported(&writer, &[&visit])), "ok");
    ask(&carrier, json!({ "ask": "leave-part", "visit": visit }));
    let relayed = exported(&carrier, &[&visit]);
    let lines = lines_of(&relayed);
    assert_eq!(taken(&here, &relayed), "ok");
    assert_eq!(look(&here, &visit).ledger, look(&carrier, &visit).ledger);
    // Nor does a carrier that is a stranger take anything from them.
    let (_d, other) = scratch();
    assert_eq!(taken(&other, &carried(&visit, &lines)), "ok");
    // Each line is proven for itself: any beginning of a chain can be handed on.
    let opener = lines_of(&exported(&writer, &[&visit]));
    for count in 1..=opener.len() {
        let (_folder, other) = scratch();
        assert_eq!(taken(&other, &carried(&visit, &opener[..count])), "ok", "the first {count}");
    }
}

/// Every field of every line, changed after it was signed, and hashed anew by who changed it.
#[test]
fn no_field_of_a_signed_line_can_be_changed() {
    let ((_a, writer), (_b, here)) = (scratch(), scratch());
    let visit = rigid(&writer, "TR 4417");
    let lines = lines_of(&exported(&writer, &[&visit]));
    let other = json!({ "visit": VISIT, "device": stranger(), "at": 1, "prev": "0".repeat(64), "body": spelled(&felt()) });
    let mut refused = 0;
    for place in 0..lines.len() {
        for (field, value) in other.as_object().unwrap() {
            let mut changed = lines.clone();
            if changed[place][field] == *value {
                continue;
            }
            changed[place][field] = value.clone();
            let text = |name: &str| changed[place][name].as_str().unwrap().to_owned();
            let (seq, at) = (&changed[place]["seq"], &changed[place]["at"]);
            let hashed = format!(
                "steady entry 1\n{}\n{}\n{seq}\n{at}\n{}\n{}",
                text("visit"),
                text("device"),
                text("prev"),
                text("body")
            );
            changed[place]["hash"] = json!(sha256(hashed.as_bytes()));
            let code = taken(&here, &carried(&visit, &changed));
            assert!(
                ["handover-chain", "handover-unproven", "handover-spelling"].contains(&code.as_str()),
                "{field} of {place}: {code}"
            );
            refused += 1;
        }
    }
    assert!(refused > 20, "{refused}");
    assert_eq!(taken(&here, &carried(&visit, &lines)), "ok");
}

/// A line whose own signature is damaged, proven by none but one that is held back.
#[test]
fn line_that_only_what_is_held_back_proves_stays_outside() {
    let (own, left) = (stranger(), json!({ "kind": "part-left", "set": "lift", "by": "Kim Demo" }));
    let mut lines = forged(VISIT, &[], &own, &[opened(), left.clone(), left]);
    let at = lines[2]["at"].as_i64().unwrap() + 400 * 86_400_000;
    let (prev, body) = (lines[2]["prev"].as_str().unwrap(), lines[2]["body"].as_str().unwrap());
    let hash = sha256(format!("steady entry 1\n{VISIT}\n{own}\n3\n{at}\n{prev}\n{body}").as_bytes());
    (lines[2]["at"], lines[2]["hash"]) = (json!(at), json!(hash));
    lines[2] = signed(lines[2].clone());
    let mut damaged = lines.clone();
    damaged[1]["signature"] = lines[0]["signature"].clone();
    for (lines, expected) in [(&damaged, "handover-unproven"), (&lines, "ok")] {
        let (_folder, here) = scratch();
        assert_eq!(taken(&here, &carried(VISIT, lines)), expected);
    }
}

/// A signature that no Steady wrote, between others that prove what it says: it is told before anything is written, and
/// what else the file brings comes in.
#[test]
fn visit_with_a_signature_of_no_form_is_set_apart_and_the_others_come_in() {
    const OTHER: &str = "0191d2f0-0000-7000-8000-0000000000fe";
    let (own, left) = (stranger(), json!({ "kind": "part-left", "set": "lift", "by": "Kim Demo" }));
    let lines = |visit: &str| forged(visit, &[], &own, &[opened(), left.clone(), left.clone()]);
    let whole = lines(VISIT)[1]["signature"].as_str().unwrap().to_owned();
    for signature in ["zz", "", &whole[1..], &whole.replace(|digit: char| digit.is_ascii_digit(), "A")] {
        let mut bad = lines(VISIT);
        bad[1]["signature"] = json!(signature);
        assert_eq!(verify(&mut &carried(VISIT, &bad)[..]).unwrap_err().code, "handover-unproven");
        let file = zip(&sealed(&[ledger(OTHER, &lines(OTHER)), ledger(VISIT, &bad)], |_| {}));
        let (_folder, here) = scratch();
        let apart = here.preview(&mut &file[..]).unwrap().imported.set_apart;
        assert_eq!(apart.iter().map(|apart| apart.visit.as_str()).collect::<Vec<_>>(), [VISIT]);
        let taken = here.import(&mut &file[..]).unwrap();
        assert_eq!((taken.taken, taken.set_apart), (vec![OTHER.to_owned()], apart), "{signature}");
    }
}

/// A data folder of the schema before signatures, with one visit of one device's lines.
pub fn before_signatures(bodies: &[Value]) -> TempDir {
    let folder = tempfile::tempdir().unwrap();
    std::fs::create_dir(folder.path().join("photos")).unwrap();
    let database = Connection::open(folder.path().join("steady.db")).unwrap();
    let sql = Path::new(env!("CARGO_MANIFEST_DIR")).join("../src-tauri/core/sql");
    let mut steps: Vec<_> = std::fs::read_dir(sql).unwrap().map(|file| file.unwrap().path()).collect();
    steps.sort();
    for step in &steps[..7] {
        database.execute_batch(&std::fs::read_to_string(step).unwrap()).unwrap();
    }
    database.pragma_update(None, "user_version", 7).unwrap();
    database
        .execute(
            "INSERT INTO setting (name, value) VALUES ('device', ?1), ('technician', 'Kim Demo')",
            [OLD_DEVICE],
        )
        .unwrap();
    for line in forged(VISIT, &[], OLD_DEVICE, bodies) {
        database
            .execute(
                "INSERT INTO entry (visit, device, seq, at, prev, hash, body) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)",
                rusqlite::params![
                    line["visit"].as_str(), line["device"].as_str(), line["seq"].as_i64(), line["at"].as_i64(),
                    line["prev"].as_str(), line["hash"].as_str(), line["body"].as_str()
                ],
            )
            .unwrap();
    }
    folder
}

pub fn opened() -> Value {
    let intake = json!({ "vehicle": { "layout": "torque-tube" } });
    json!({ "kind": "opened", "intake": intake, "knowledge": "1", "by": "Kim Demo" })
}

#[test]
fn chain_from_before_signatures_stays_and_never_grows() {
    let folder = before_signatures(&[opened()]);
    let here = open(folder.path()).unwrap();
    assert_eq!(look(&here, VISIT).ledger.broken_at, None);
    let answer = json!({ "ask": "answer", "visit": VISIT, "step": "road-speed-vibration", "value": "none" });
    let after = ask(&here, answer);
    assert_eq!((after.ledger.entries, after.ledger.broken_at), (2, None));
    let lines = lines_of(&exported(&here, &[VISIT]));
    let by =
        |line: &Value| (line["device"] == OLD_DEVICE, line["seq"].as_u64(), line.get("signature").is_some());
    let mut written: Vec<_> = lines.iter().map(by).collect();
    written.sort();
    assert_eq!(written, [(false, Some(1), true), (true, Some(1), false)], "a chain of its own, signed");
    // Nobody goes on with it from outside, the device itself least of all.
    let more = forged(VISIT, &lines, OLD_DEVICE, &[opened()]);
    assert_eq!(taken(&here, &carried(VISIT, &more)), "handover-own-name");
    assert_eq!(taken(&here, &exported(&here, &[VISIT])), "ok", "what is held already is no news");
    drop(here);
    let here = open(folder.path()).unwrap();
    assert_eq!(look(&here, VISIT), after);
}

#[test]
fn chain_from_before_signatures_comes_in_from_a_backup_of_ones_own_alone() {
    let folder = before_signatures(&[opened()]);
    let here = open(folder.path()).unwrap();
    let before = look(&here, VISIT);
    let (_b, there) = scratch();
    assert_eq!(taken(&there, &exported(&here, &[VISIT])), "handover-unsigned");
    let backup = tempfile::tempdir().unwrap();
    back_up(&here, backup.path());
    assert_eq!(restore(&there, backup.path()).imported.taken, [VISIT]);
    assert_eq!(look(&there, VISIT).ledger, before.ledger);
    // Once they are held, a file that carries them too is welcome, with what is new and signed.
    ask(&here, json!({ "ask": "answer", "visit": VISIT, "step": "road-speed-vibration", "value": "none" }));
    assert_eq!(taken(&there, &exported(&here, &[VISIT])), "ok");
    assert_eq!(look(&there, VISIT).ledger, look(&here, VISIT).ledger);
}

/// The disk is not believed either: a signature that does not fit breaks its chain.
#[test]
fn line_whose_signature_does_not_fit_is_shown_as_broken() {
    let (folder, steady) = scratch();
    let visit = rigid(&steady, "TR 4417");
    drop(steady);
    let database = Connection::open(folder.path().join("steady.db")).unwrap();
    let unsigned = database.execute("INSERT INTO entry (visit, device, seq, at, prev, hash, body) SELECT visit, device, 99, at, prev, replace(hash, '0', '1'), body FROM entry LIMIT 1", []);
    assert!(unsigned.unwrap_err().to_string().contains("signed by the device"));
    database.execute_batch("DROP TRIGGER entry_is_never_changed").unwrap();
    let last: i64 = database.query_row("SELECT max(seq) FROM entry", [], |row| row.get(0)).unwrap();
    let sql = "UPDATE entry SET signature = (SELECT signature FROM entry WHERE seq = 1) WHERE seq = ?1";
    assert_eq!(database.execute(sql, [last]).unwrap(), 1);
    drop(database);
    let steady = open(folder.path()).unwrap();
    assert_eq!(look(&steady, &visit).ledger.broken_at, u64::try_from(last).ok());
    says_of_its_proof(&steady, &visit, None, &[]);
}
