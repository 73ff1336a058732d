//! What was released stays readable: a database of each schema, with rows as its program wrote them, walks to today and
//! through a backup; and a line of every kind of entry ever written, with every field, still reads as it is spelled.
//!
//! `schemas/NNNN.sql` is such a database as SQL. A new step needs one: `STEADY_WRITE_SCHEMA=1 cargo test -p suite schemas`
//! writes that of the latest step from what this program writes today, before anything is built on it; those that are
//! there are never written anew. `schemas/entries.jsonl` holds a body a line; a new kind or field is added at its end.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write;
use std::fs;
use std::path::{Path, PathBuf};

use rusqlite::Connection;
use rusqlite::types::ValueRef;
use serde_json::{Value, json};
use steady_core::app::Steady;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::model::entry::EntryBody;
use steady_core::model::hex;
use steady_core::model::limits;

use crate::backup_generations::{back_up, restore};
use crate::handover::exported;
use crate::handover_files::{keep_photo, small_visit};
use crate::set_aside::{filled, home};
use crate::support::{ask, code, open, scratch};

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("suite/schemas")
}

fn steps() -> usize {
    fs::read_dir(Path::new(env!("CARGO_MANIFEST_DIR")).join("../src-tauri/core/sql")).unwrap().count()
}

fn dump_of(step: usize) -> PathBuf {
    folder().join(format!("{step:04}.sql"))
}

/// Everything that makes up a schema, as text, without the tables that SQLite keeps for itself.
fn schema(database: &Connection) -> Vec<String> {
    let mut statement = database
        .prepare("SELECT type, name, tbl_name, sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite_%' ORDER BY type, name")
        .unwrap();
    let row = |row: &rusqlite::Row<'_>| {
        let sql: String = row.get("sql")?;
        // How a statement is laid out says nothing.
        let sql = sql.split_whitespace().collect::<Vec<_>>().join(" ").replace(" ,", ",").replace("( ", "(");
        Ok(format!(
            "{} {} {} {sql}",
            row.get::<_, String>("type")?,
            row.get::<_, String>("name")?,
            row.get::<_, String>("tbl_name")?
        ))
    };
    statement.query_map([], row).unwrap().map(Result::unwrap).collect()
}

/// A database as SQL: its schema, its rows, its number.
fn dumped(database: &Connection) -> String {
    let mut text = String::new();
    let all = |kind: &str| -> Vec<(String, String)> {
        let sql = "SELECT name, sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite_%' AND (type = 'table') = (?1 = 'table') ORDER BY rowid";
        let mut statement = database.prepare(sql).unwrap();
        let rows = statement.query_map([kind], |row| Ok((row.get(0)?, row.get(1)?))).unwrap();
        rows.map(Result::unwrap).collect()
    };
    let tables = all("table");
    for (_, sql) in &tables {
        writeln!(text, "{sql};").unwrap();
    }
    for (table, _) in &tables {
        let mut statement = database.prepare(&format!("SELECT * FROM \"{table}\" ORDER BY rowid")).unwrap();
        let names: Vec<String> = statement.column_names().map(str::to_owned).collect();
        let mut rows = statement.query([]).unwrap();
        while let Some(row) = rows.next().unwrap() {
            let values: Vec<String> =
                (0..names.len()).map(|column| quoted(row.get_ref(column).unwrap())).collect();
            writeln!(text, "INSERT INTO \"{table}\" ({}) VALUES ({});", names.join(", "), values.join(", "))
                .unwrap();
        }
    }
    for (_, sql) in all("other") {
        writeln!(text, "{sql};").unwrap();
    }
    let number: i64 = database.query_row("PRAGMA user_version", [], |row| row.get(0)).unwrap();
    writeln!(text, "PRAGMA user_version = {number};").unwrap();
    text
}

fn quoted(value: ValueRef<'_>) -> String {
    match value {
        ValueRef::Null => "NULL".to_owned(),
        ValueRef::Integer(number) => number.to_string(),
        ValueRef::Real(number) => format!("{number:?}"),
        ValueRef::Text(text) => format!("'{}'", String::from_utf8_lossy(text).replace('\'', "''")),
        ValueRef::Blob(bytes) => format!("x'{}'", hex::encode(bytes)),
    }
}

/// How many rows each table of a database has.
fn rows(database: &Connection) -> BTreeMap<String, i64> {
    let mut statement = database
        .prepare("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'")
        .unwrap();
    let names: Vec<String> = statement.query_map([], |row| row.get(0)).unwrap().map(Result::unwrap).collect();
    let count = |name: &String| {
        let sql = format!("SELECT count(*) FROM \"{name}\"");
        (name.clone(), database.query_row(&sql, [], |row| row.get(0)).unwrap())
    };
    names.iter().map(count).collect()
}

/// A closed data folder with a row in every table: two visits of its own, one of another device that was confirmed,
/// one that was erased, an import that was taken back.
fn lived_in() -> tempfile::TempDir {
    let (folder, visits) = filled();
    let (_other, other) = scratch();
    let steady = open(folder.path()).unwrap();
    let brought = small_visit(&other, "QX 2290");
    steady.import(&mut &exported(&other, &[&brought])[..]).unwrap();
    keep_photo(&other, &brought, 90);
    steady.import(&mut &exported(&other, &[&brought])[..]).unwrap();
    let Response::Devices(own) = other.handle(Request::Devices).unwrap() else { panic!("no list") };
    let erased = small_visit(&steady, "QX 1");
    for request in [
        json!({ "ask": "take-back-import", "import": 2 }),
        json!({ "ask": "confirm-device", "device": own.own.device, "code": own.own.code }),
        json!({ "ask": "erase", "visit": erased, "word": "QX 1" }),
        json!({ "ask": "paper", "visit": visits[0], "paper": "note", "locale": "de" }),
    ] {
        assert_eq!(code(&steady, request.clone()), "ok", "{request}");
    }
    drop(steady);
    let database = Connection::open(folder.path().join("steady.db")).unwrap();
    // What takes a screen, a phone or a program of before to write.
    let rows = "INSERT INTO workshop (line, name) VALUES (1, 'Brackenfold Motor Works');
         INSERT INTO workshop_hours (tier, hours_from, hours_to) VALUES ('bearings-only', 3.0, 4.5);
         INSERT INTO workshop_sleeve (place, material, outside_mm, bore_mm) VALUES (1, 'mild-steel', 76.0, 70.0);
         INSERT INTO workshop_instrument (place, name, resolution_mm, mpe_mm, repeatability_mm, calibrated, due)
         VALUES (1, 'Bore gauge 4', 0.001, 0.002, 0.0005, '2026-03-02', '2027-03-01');
         INSERT INTO former_device (id, until) VALUES ('0191d2f0-0000-7000-8000-00000000000d', 1795598999999);";
    database.execute_batch(rows).unwrap();
    let wish = "INSERT INTO pending_capture (id, visit, step, at)
         VALUES ('0191d2f0-0000-7000-8000-0000000000aa', ?1, 'play-vertical', 1795599000000)";
    database.execute(wish, [&visits[0]]).unwrap();
    folder
}

/// The lines that count, as they are on disk.
fn counting(folder: &Path) -> Vec<String> {
    let database = Connection::open(folder.join("steady.db")).unwrap();
    let sql = "SELECT visit || ' ' || device || ' ' || seq || ' ' || hash || ' ' || coalesce(signature, '') || ' ' || body
         FROM counting ORDER BY visit, device, seq";
    let mut statement = database.prepare(sql).unwrap();
    let lines = statement.query_map([], |row| row.get(0)).unwrap();
    lines.map(Result::unwrap).collect()
}

/// What counts in a folder comes back whole from its backup, in a folder where nothing is yet.
#[track_caller]
fn comes_back_from_a_backup(steady: &Steady, folder: &Path) {
    let (backup, new) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    back_up(steady, backup.path());
    let restored = open(new.path()).unwrap();
    let done = restore(&restored, backup.path());
    assert_eq!((done.lost.as_slice(), done.visits_damaged.as_slice()), (&[][..], &[][..]));
    drop(restored);
    assert_eq!(counting(new.path()), counting(folder));
}

#[test]
fn every_step_has_its_dump() {
    if std::env::var_os("STEADY_WRITE_SCHEMA").is_some() && !dump_of(steps()).exists() {
        let folder = lived_in();
        let database = Connection::open(folder.path().join("steady.db")).unwrap();
        // Knowledge is long and says nothing of the schema.
        database
            .execute_batch("DROP TRIGGER knowledge_is_never_changed; UPDATE knowledge SET texts = '{}';")
            .unwrap();
        let made = include_str!("../../src-tauri/core/sql/0006_knowledge.sql");
        let trigger = made.split("CREATE TRIGGER").nth(1).unwrap();
        database.execute_batch(&format!("CREATE TRIGGER{trigger}")).unwrap();
        fs::write(dump_of(steps()), dumped(&database)).unwrap();
    }
    let lacking: Vec<usize> = (1..=steps()).filter(|step| !dump_of(*step).exists()).collect();
    assert!(
        lacking.is_empty(),
        "steps {lacking:?} lack their dump in tests/suite/schemas: run STEADY_WRITE_SCHEMA=1 cargo test -p suite schemas \
         on the program that first has the step, and commit what it writes"
    );
    assert_eq!(fs::read_dir(folder()).unwrap().count(), steps() + 1, "a dump a step, and the entries");
}

#[test]
fn every_released_schema_walks_to_today() {
    let fresh = tempfile::tempdir().unwrap();
    drop(open(fresh.path()).unwrap());
    let today = schema(&Connection::open(fresh.path().join("steady.db")).unwrap());
    let mut walked = 0;
    for step in 1..=steps() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("steady.db");
        let database = Connection::open(&path).unwrap();
        database
            .execute_batch(&fs::read_to_string(dump_of(step)).unwrap())
            .unwrap_or_else(|fault| panic!("{step}: {fault}"));
        let number: usize = database
            .query_row("PRAGMA user_version", [], |row| row.get::<_, i64>(0))
            .unwrap()
            .try_into()
            .unwrap();
        assert_eq!(number, step, "the dump's own number");
        let before = rows(&database);
        assert!(before.values().all(|count| *count > 0), "a table without a row in {step}: {before:?}");
        drop(database);
        let steady = open(folder.path()).unwrap_or_else(|failure| panic!("{step}: {failure:?}"));
        assert!(home(&steady).set_aside.is_empty(), "{step}");
        let database = Connection::open(&path).unwrap();
        assert_eq!(schema(&database), today, "{step}");
        let after = rows(&database);
        assert!(
            before.iter().all(|(table, count)| after.get(table).is_none_or(|now| now >= count)),
            "{step}: {before:?} became {after:?}"
        );
        let mut visits = database.prepare("SELECT DISTINCT visit FROM entry ORDER BY visit").unwrap();
        let visits: Vec<String> =
            visits.query_map([], |row| row.get(0)).unwrap().map(Result::unwrap).collect();
        for visit in visits {
            let standing = ask(&steady, json!({ "ask": "look", "visit": visit }));
            // The dumps' own lines name some that never were, as no program writes them: those are missed.
            let made_up = "SELECT min(seq) FROM entry WHERE visit = ?1 AND (body LIKE '%\"entry\":\"3333%' OR
                 body LIKE '%\"entry\":\"4444%' OR body LIKE '%\"supersedes\":[\"4444%' OR body LIKE '%\"takes_back\":[\"4444%')";
            let missed: Option<i64> = database.query_row(made_up, [&visit], |row| row.get(0)).unwrap();
            assert_eq!(standing.ledger.broken_at, missed.map(|seq| u64::try_from(seq).unwrap()), "{step}");
            walked += 1;
        }
        comes_back_from_a_backup(&steady, folder.path());
    }
    println!("{walked} visits of {} schemas", steps());
    assert!(walked >= steps());
}

/// What serde would have taken in place of `?`, which it does not know.
fn known_beside(fault: &str, expected: &str) -> Option<BTreeSet<String>> {
    let known = fault.strip_prefix(expected)?;
    Some(known.split('`').skip(1).step_by(2).map(str::to_owned).collect())
}

/// The kinds of entry that the program knows, and those of the bench.
fn kinds() -> BTreeSet<String> {
    let known = |body: Value| {
        let fault = serde_json::from_value::<EntryBody>(body).unwrap_err().to_string();
        known_beside(&fault, "unknown variant `?`, expected ").unwrap_or_else(|| panic!("{fault}"))
    };
    let of_bench = known(json!({ "kind": "bench", "bench": { "bench": "?" }, "by": "" }));
    let kinds = known(json!({ "kind": "?" })).into_iter();
    kinds.chain(of_bench.iter().map(|kind| format!("bench {kind}"))).collect()
}

fn kind(body: &Value) -> Vec<String> {
    let kind = body["kind"].as_str().unwrap().to_owned();
    let of_bench = body["bench"]["bench"].as_str().map(|kind| format!("bench {kind}"));
    [kind].into_iter().chain(of_bench).collect()
}

/// Where the objects of a body stand in it, as JSON pointers.
fn objects(value: &Value, at: &str, found: &mut Vec<String>) {
    let inside: Vec<(String, &Value)> = match value {
        Value::Object(fields) => {
            found.push(at.to_owned());
            fields.iter().map(|(name, value)| (name.clone(), value)).collect()
        }
        Value::Array(rows) => rows.iter().enumerate().map(|(row, value)| (row.to_string(), value)).collect(),
        _ => Vec::new(),
    };
    for (name, value) in inside {
        objects(value, &format!("{at}/{name}"), found);
    }
}

/// The fields that an object of a body may have; none where any name will do.
fn fields_at(body: &Value, at: &str) -> Option<BTreeSet<String>> {
    let mut changed = body.clone();
    changed.pointer_mut(at)?.as_object_mut()?.insert("?".to_owned(), Value::Null);
    let fault = serde_json::from_value::<EntryBody>(changed).err()?.to_string();
    known_beside(&fault, "unknown field `?`, expected ")
}

/// Import, export, backup and restore take a line only as this program spells it, so that a field which moved, or an
/// empty one that is spelled otherwise, would make every earlier visit one that nobody can take in.
#[test]
fn a_line_of_every_kind_of_entry_is_read_for_ever() {
    let text = fs::read_to_string(folder().join("entries.jsonl")).unwrap();
    let mut seen = BTreeSet::new();
    // Of each kind of object, told by the fields it may have, those that stand in some line.
    let mut filled: BTreeMap<BTreeSet<String>, BTreeSet<String>> = BTreeMap::new();
    for line in text.lines() {
        let body: EntryBody = serde_json::from_str(line).unwrap_or_else(|fault| panic!("{fault}: {line}"));
        assert_eq!(serde_json::to_string(&body).unwrap(), line, "it is spelled as it was");
        limits::entry::check(&body).unwrap_or_else(|beyond| panic!("{beyond:?}: {line}"));
        let value: Value = serde_json::from_str(line).unwrap();
        seen.extend(kind(&value));
        let mut places = Vec::new();
        objects(&value, "", &mut places);
        for at in places {
            let Some(fields) = fields_at(&value, &at) else { continue };
            let given = value.pointer(&at).unwrap().as_object().unwrap().iter();
            let given = given.filter(|(_, value)| !value.is_null()).map(|(name, _)| name.clone());
            filled.entry(fields).or_default().extend(given);
        }
    }
    let lacking: Vec<String> = kinds().difference(&seen).cloned().collect();
    assert!(
        lacking.is_empty(),
        "tests/suite/schemas/entries.jsonl lacks a line of the kinds {lacking:?}: add one at its end"
    );
    assert!(seen.len() >= 25, "{seen:?}");
    let lacking: Vec<String> = filled
        .iter()
        .map(|(fields, filled)| (fields.difference(filled).cloned().collect::<Vec<_>>(), filled))
        .filter(|(lacking, _)| !lacking.is_empty())
        .map(|(lacking, filled)| format!("{lacking:?} beside {filled:?}"))
        .collect();
    assert!(
        lacking.is_empty(),
        "tests/suite/schemas/entries.jsonl lacks a line with {}: add one at its end",
        lacking.join(", and with ")
    );
    assert!(filled.len() >= 30, "{} kinds of object", filled.len());
}
