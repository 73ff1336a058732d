//! A database that somebody made to look like a workshop's: it is refused by name, at once, and nothing comes in.

use rusqlite::Connection;
use steady_core::app::Steady;

use crate::handover_files::small_visit;
use crate::support::{open, scratch};

/// A workshop's database with one visit, changed.
fn changed(change: &str) -> (tempfile::TempDir, std::path::PathBuf) {
    let (folder, steady) = scratch();
    small_visit(&steady, "TR 4417");
    drop(steady);
    let database = folder.path().join("steady.db");
    Connection::open(&database).unwrap().execute_batch(change).unwrap();
    (folder, database)
}

/// What reading it comes to, by both ways in.
fn verdicts(folder: &std::path::Path) -> [String; 2] {
    let here = tempfile::tempdir().unwrap();
    let steady: Steady = open(here.path()).unwrap();
    let code = |failure: steady_core::app::failure::Failure| {
        assert!(!failure.message.starts_with("error-") && failure.help.len() > 20, "{failure:?}");
        failure.code
    };
    let ok = |taken: usize| format!("ok {taken}");
    let salvaged = steady.salvage(&folder.join("steady.db"));
    let salvaged = salvaged.map_or_else(code, |done| ok(done.imported.taken.len()));
    let restored = steady.restore(folder, None, &mut |_| {});
    let restored = restored.map_or_else(code, |done| ok(done.imported.taken.len()));
    assert!(!here.path().join("incoming").join("salvage").exists(), "a copy was left behind");
    [salvaged, restored]
}

#[track_caller]
fn check(change: &str, expected: [&str; 2]) {
    let (folder, _database) = changed(change);
    assert_eq!(verdicts(folder.path()), expected, "{change}");
}

/// Every view that never ends, whatever table it stands in for.
#[test]
fn view_without_end_is_refused() {
    let endless = "WITH RECURSIVE n (x) AS (SELECT 1 UNION ALL SELECT x + 1 FROM n) SELECT";
    for (table, columns) in [
        ("entry", "x AS id, x AS visit, x AS device, x AS seq, x AS at, x AS prev, x AS hash, x AS body"),
        ("card", "x AS visit, x AS updated_at"),
        ("setting", "x AS name, x AS value"),
        ("knowledge", "x AS version, x AS texts"),
        ("erased", "x AS visit, x AS at"),
        ("workshop", "x AS name"),
    ] {
        let change = format!("DROP TABLE {table}; CREATE VIEW {table} AS {endless} {columns} FROM n");
        check(&change, ["database-foreign"; 2]);
    }
}

#[test]
fn what_steady_never_writes_is_refused() {
    check("CREATE TABLE more (id INTEGER)", ["database-foreign"; 2]);
    check("CREATE TRIGGER told AFTER INSERT ON setting BEGIN SELECT 1; END", ["database-foreign"; 2]);
    check("ALTER TABLE setting ADD COLUMN vast TEXT AS (hex(zeroblob(100000000)))", ["database-foreign"; 2]);
}

#[test]
fn honest_database_is_read_as_before() {
    check("PRAGMA user_version", ["ok 1", "ok 0"]);
    check("PRAGMA user_version = 99", ["newer-data", "backup-newer"]);
}
