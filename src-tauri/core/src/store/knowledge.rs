//! Every version of the knowledge that sorted visits in this data folder.

use rusqlite::{Connection, OptionalExtension, params};

use super::fault::StoreFault;
use super::open::Store;
use crate::model::time::Moment;

impl Store {
    /// Keeps the texts of a version, unless they are kept already.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn keep_knowledge(&mut self, version: &str, now: Moment, texts: &str) -> Result<(), StoreFault> {
        keep(&self.connection, version, now, texts)
    }

    /// Whether a version is kept.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn has_knowledge(&self, version: &str) -> Result<bool, StoreFault> {
        let sql = "SELECT count(*) AS kept FROM knowledge WHERE version = ?1";
        let found: Result<i64, _> = self.connection.query_row(sql, [version], |row| row.get("kept"));
        found.map(|kept| kept > 0).map_err(StoreFault::sql("look for knowledge"))
    }

    /// The texts of a version, if it ever sorted here.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn knowledge(&self, version: &str) -> Result<Option<String>, StoreFault> {
        let sql = "SELECT texts FROM knowledge WHERE version = ?1";
        let found = self.connection.query_row(sql, [version], |row| row.get("texts")).optional();
        found.map_err(StoreFault::sql("read knowledge"))
    }
}

pub(super) fn keep(
    connection: &Connection,
    version: &str,
    now: Moment,
    texts: &str,
) -> Result<(), StoreFault> {
    let sql =
        "INSERT INTO knowledge (version, at, texts) VALUES (?1, ?2, ?3) ON CONFLICT (version) DO NOTHING";
    let done = connection.execute(sql, params![version, now.0, texts]);
    done.map(|_| ()).map_err(StoreFault::sql("keep knowledge"))
}
