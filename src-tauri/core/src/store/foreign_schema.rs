//! A database from outside is asked only once its schema is known to be one that Steady wrote, and only for as
//! long as a file of its size can take. A view in place of a table would run whatever it was written to run; a
//! column that is worked out could fill the memory.

use std::collections::BTreeSet;
use std::sync::OnceLock;

use rusqlite::Connection;
use rusqlite::limits::Limit;

use super::fault::StoreFault;
use super::migrations;
use crate::model::limits;

/// Steps of SQLite's machine between two looks at the budget.
const LOOK_EVERY: i32 = 10_000;
/// Steps that any file may take, however small.
const LEAST_STEPS: i64 = 50_000_000;
/// Steps for each byte of a file: finding a line takes about 50, and no line has fewer than 200 bytes; ten
/// times as many may be looked for as can be there.
const STEPS_A_BYTE: i64 = 16;

/// Kind, name and text of each table, index, trigger and view.
type Objects = BTreeSet<(String, String, Option<String>)>;

/// Makes a connection to a file of this length, bytes, safe to ask. Once the work that such a file can need is
/// done, SQLite answers nothing more.
///
/// # Errors
/// [`StoreFault::Foreign`] for a schema that Steady did not write, or what SQLite says.
pub fn guard(connection: &mut Connection, bytes: u64) -> Result<(), StoreFault> {
    let sql = |fault| StoreFault::sql("look at a database")(fault);
    let mut left = steps_for(bytes);
    let spent = move || {
        left -= i64::from(LOOK_EVERY);
        left <= 0
    };
    connection.progress_handler(LOOK_EVERY, Some(spent)).map_err(sql)?;
    let longest = i32::try_from(limits::LEDGER_BYTES).unwrap_or(i32::MAX);
    connection.set_limit(Limit::SQLITE_LIMIT_LENGTH, longest).map_err(sql)?;
    connection.pragma_update(None, "trusted_schema", false).map_err(sql)?;
    connection.pragma_update(None, "cell_size_check", true).map_err(sql)?;
    connection.pragma_update(None, "query_only", true).map_err(sql)?;
    check(connection)
}

fn steps_for(bytes: u64) -> i64 {
    let bytes = i64::try_from(bytes).unwrap_or(i64::MAX);
    LEAST_STEPS.saturating_add(bytes.saturating_mul(STEPS_A_BYTE))
}

/// Refuses a schema that holds anything but what the steps of some version of Steady made.
fn check(connection: &Connection) -> Result<(), StoreFault> {
    let sql = |fault| StoreFault::sql("read a schema")(fault);
    let found = objects(connection).map_err(sql)?;
    let known = known().map_err(sql)?;
    if found.is_subset(&known.iter().flatten().cloned().collect()) {
        Ok(())
    } else {
        Err(StoreFault::Foreign)
    }
}

/// Whether a schema is, to the letter, the one that its number stands for: today's steps lead on from it.
///
/// # Errors
/// What SQLite says.
pub fn is_whole(connection: &Connection) -> Result<bool, StoreFault> {
    let sql = |fault| StoreFault::sql("read a schema")(fault);
    let (number, _) = migrations::check_known(connection)?;
    let known = known().map_err(sql)?;
    let wanted = usize::try_from(number - 1).ok().and_then(|step| known.get(step));
    Ok(wanted == Some(&objects(connection).map_err(sql)?))
}

/// What the schema of each version there was holds, oldest first: made once.
fn known() -> Result<&'static [Objects], rusqlite::Error> {
    static KNOWN: OnceLock<Vec<Objects>> = OnceLock::new();
    if let Some(known) = KNOWN.get() {
        return Ok(known);
    }
    let made = migrations::schemas(objects)?;
    Ok(KNOWN.get_or_init(|| made))
}

/// What a schema holds: kind, name and text of each table, index, trigger and view.
fn objects(connection: &Connection) -> Result<Objects, rusqlite::Error> {
    let mut statement = connection.prepare("SELECT type, name, sql FROM sqlite_schema")?;
    statement.query_map([], |row| Ok((row.get("type")?, row.get("name")?, row.get("sql")?)))?.collect()
}

#[cfg(test)]
mod tests {
    use rusqlite::Connection;

    use super::guard;
    use crate::store::fault::StoreFault;
    use crate::store::migrations;

    /// A database of today's schema and then some.
    fn guarded(more: &str) -> Result<(), StoreFault> {
        let mut connection = Connection::open_in_memory().expect("a database");
        migrations::migrate(&mut connection).expect("today's schema");
        connection.execute_batch(more).expect("readable SQL");
        guard(&mut connection, 0)
    }

    #[test]
    fn schema_is_what_steady_writes_and_nothing_beside() {
        assert!(guarded("").is_ok());
        assert!(guarded("INSERT INTO setting (name, value) VALUES ('pref.hand', 'left')").is_ok());
        for more in [
            "CREATE VIEW seen AS SELECT 1 AS id",
            "CREATE TABLE more (id INTEGER)",
            "CREATE INDEX of_names ON setting (value)",
            "CREATE TRIGGER told AFTER INSERT ON setting BEGIN SELECT 1; END",
            "ALTER TABLE setting ADD COLUMN vast TEXT AS (hex(zeroblob(100000000)))",
            "DROP TABLE setting; CREATE VIEW setting AS WITH RECURSIVE n (x) AS \
             (SELECT 1 UNION ALL SELECT x + 1 FROM n) SELECT x AS name, x AS value FROM n",
        ] {
            assert!(matches!(guarded(more), Err(StoreFault::Foreign)), "{more}");
        }
    }

    #[test]
    fn work_has_an_end() {
        let mut connection = Connection::open_in_memory().expect("a database");
        guard(&mut connection, 0).expect("an empty schema");
        let counted = |limit: &str| {
            let sql = format!(
                "WITH RECURSIVE n (x) AS (SELECT 1 UNION ALL SELECT x + 1 FROM n {limit}) SELECT max(x) FROM n"
            );
            connection.query_row(&sql, [], |row| row.get::<_, i64>(0)).ok()
        };
        assert_eq!(counted("LIMIT 100000"), Some(100_000));
        assert_eq!(counted(""), None);
        assert_eq!(counted("LIMIT 100000"), None);
    }
}
