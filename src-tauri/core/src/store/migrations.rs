//! Numbered steps from an empty file to the current schema. A released step never changes; a new one is
//! added at the end. A newer file is refused untouched.

use rusqlite::{Connection, TransactionBehavior};

use super::fault::StoreFault;

/// Every step in order; the file's `user_version` counts those it has.
const STEPS: &[&str] = &[
    include_str!("../../sql/0001_ledger.sql"),
    include_str!("../../sql/0002_outcomes.sql"),
    include_str!("../../sql/0003_handover.sql"),
    include_str!("../../sql/0004_pending_capture.sql"),
    include_str!("../../sql/0005_workshop.sql"),
    include_str!("../../sql/0006_knowledge.sql"),
    include_str!("../../sql/0007_card_stands.sql"),
    include_str!("../../sql/0008_signatures.sql"),
    include_str!("../../sql/0009_devices.sql"),
    include_str!("../../sql/0010_photo.sql"),
    include_str!("../../sql/0011_trust_index.sql"),
    include_str!("../../sql/0012_erased_here.sql"),
    include_str!("../../sql/0013_stock.sql"),
    include_str!("../../sql/0014_corrected.sql"),
];

/// Brings a database to the current schema, all missing steps in one transaction.
///
/// # Errors
/// [`StoreFault::Newer`] for a file of a later program, or what SQLite says.
pub fn migrate(connection: &mut Connection) -> Result<(), StoreFault> {
    let (found, known) = check_known(connection)?;
    if found == known {
        return Ok(());
    }
    apply(connection, usize::try_from(found).unwrap_or(0), known).map_err(StoreFault::sql("migrate"))
}

/// The schema's number in a file and the greatest this program knows.
///
/// # Errors
/// [`StoreFault::Newer`] for a file of a later program, or what SQLite says.
pub fn check_known(connection: &Connection) -> Result<(i64, i64), StoreFault> {
    let sql = StoreFault::sql("read the schema's number");
    let found: i64 = connection.query_row("PRAGMA user_version", [], |row| row.get(0)).map_err(sql)?;
    let known = i64::try_from(STEPS.len()).unwrap_or(i64::MAX);
    if found > known { Err(StoreFault::Newer { found, known }) } else { Ok((found, known)) }
}

/// What `look` finds in the schema of each version there was, oldest first.
///
/// # Errors
/// What SQLite says.
pub fn schemas<T>(
    look: impl Fn(&Connection) -> Result<T, rusqlite::Error>,
) -> Result<Vec<T>, rusqlite::Error> {
    let connection = Connection::open_in_memory()?;
    let after = |step: &&str| connection.execute_batch(step).and_then(|()| look(&connection));
    STEPS.iter().map(after).collect()
}

fn apply(connection: &mut Connection, done: usize, known: i64) -> Result<(), rusqlite::Error> {
    let transaction = connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
    for step in STEPS.iter().skip(done) {
        transaction.execute_batch(step)?;
    }
    transaction.pragma_update(None, "user_version", known)?;
    transaction.commit()
}
