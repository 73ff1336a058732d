//! This device's own key, which is also its id, and the ids under which this data folder wrote before.

use std::collections::BTreeMap;

use rusqlite::{Connection, TransactionBehavior, params};

use super::fault::StoreFault;
use super::open::Store;
use crate::model::time::Moment;
use crate::signing::key::DeviceKey;
use crate::signing::line::Writer;

/// Names of the settings that belong to this device alone and go into no backup.
pub const OWN: [&str; 2] = ["device", "key"];

impl Store {
    /// The device that writes here, with the key as it was kept, or the one that `fresh` makes at first need.
    ///
    /// An id from before ids were keys is put down as a former one: its lines stay, and it writes no more.
    ///
    /// # Errors
    /// [`StoreFault::KeyUnreadable`], what SQLite says, or `fresh`.
    pub fn writer<E: From<StoreFault>>(
        &mut self,
        now: Moment,
        fresh: impl FnOnce() -> Result<DeviceKey, E>,
    ) -> Result<Writer, E> {
        let settings = self.settings()?;
        let key = match settings.get("key") {
            Some(seed) => DeviceKey::from_hex(seed).ok_or(StoreFault::KeyUnreadable)?,
            None => fresh()?,
        };
        let writer = Writer::of(key);
        if settings.get("device") != Some(&writer.device) {
            let written = write(&mut self.connection, &settings, &writer, now);
            written.map_err(StoreFault::sql("keep this device's key"))?;
        }
        Ok(writer)
    }

    /// Ids that this data folder wrote under before.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn former_devices(&self) -> Result<Vec<String>, StoreFault> {
        let read = || -> Result<Vec<String>, rusqlite::Error> {
            let mut statement = self.connection.prepare_cached("SELECT id FROM former_device ORDER BY id")?;
            statement.query_map([], |row| row.get("id"))?.collect()
        };
        read().map_err(StoreFault::sql("read former ids"))
    }
}

fn write(
    connection: &mut Connection,
    settings: &BTreeMap<String, String>,
    writer: &Writer,
    now: Moment,
) -> Result<(), rusqlite::Error> {
    let transaction = connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
    if let Some(former) = settings.get("device") {
        let sql = "INSERT INTO former_device (id, until) VALUES (?1, ?2) ON CONFLICT (id) DO NOTHING";
        transaction.execute(sql, params![former, now.0])?;
    }
    let sql = "INSERT INTO setting (name, value) VALUES (?1, ?2) ON CONFLICT (name) DO UPDATE SET value = excluded.value";
    transaction.execute(sql, params!["key", writer.key().seed_hex()])?;
    transaction.execute(sql, params!["device", writer.device])?;
    transaction.commit()
}
