//! What belongs to this device and not to a visit, by name.

use std::collections::BTreeMap;

use rusqlite::{OptionalExtension, params};

use super::fault::StoreFault;
use super::open::Store;

impl Store {
    /// All rows of table `setting`, by name.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn settings(&self) -> Result<BTreeMap<String, String>, StoreFault> {
        let read = || -> Result<BTreeMap<String, String>, rusqlite::Error> {
            let mut statement = self.connection.prepare_cached("SELECT name, value FROM setting")?;
            let rows = statement.query_map([], |row| Ok((row.get("name")?, row.get("value")?)))?;
            rows.collect()
        };
        read().map_err(StoreFault::sql("read settings"))
    }

    /// One of them.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn setting(&self, name: &str) -> Result<Option<String>, StoreFault> {
        let read = || {
            let mut statement =
                self.connection.prepare_cached("SELECT value FROM setting WHERE name = ?1")?;
            statement.query_row([name], |row| row.get(0)).optional()
        };
        read().map_err(StoreFault::sql("read a setting"))
    }

    /// Writes one setting.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn set(&mut self, name: &str, value: &str) -> Result<(), StoreFault> {
        let sql = "INSERT INTO setting (name, value) VALUES (?1, ?2) ON CONFLICT (name) DO UPDATE SET value = excluded.value";
        let done = self.connection.execute(sql, params![name, value]);
        done.map(|_| ()).map_err(StoreFault::sql("write a setting"))
    }
}
