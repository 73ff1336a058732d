//! What people decided about other devices: a log that only grows, read as far as it still counts.

use std::collections::BTreeSet;

use rusqlite::{Connection, params};

use super::fault::StoreFault;
use super::ledger;
use super::open::Store;
use crate::model::device::{DeviceDecision, Devices, Known, Trust};
use crate::model::limits;
use crate::model::time::Moment;

/// A decision about a device.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Decided<'a> {
    /// Its code was compared.
    Confirmed,
    /// It was given a name.
    Named(&'a str),
    /// It was lost or replaced.
    Retired,
    /// Everything decided about it counts no more; it is as if just met.
    Reset,
}

impl Decided<'_> {
    /// What stands in the log: the word, and the name.
    fn written(&self) -> (&'static str, &str) {
        match self {
            Self::Confirmed => ("confirmed", ""),
            Self::Named(name) => ("named", name),
            Self::Retired => ("retired", ""),
            Self::Reset => ("reset", ""),
        }
    }
}

impl Store {
    /// Every device that was met, as it stands.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn devices(&self) -> Result<Devices, StoreFault> {
        read(&self.connection).map_err(StoreFault::sql("read the devices"))
    }

    /// Everything that was decided about devices, the first first.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn decisions(&self) -> Result<Vec<DeviceDecision>, StoreFault> {
        decisions(&self.connection).map_err(StoreFault::sql("read what was decided"))
    }

    /// Takes over what was decided in another folder of one's own about devices of which nothing was decided here:
    /// a lost device stays retired on the device that takes the place of a broken one. `own` is the device at hand.
    /// Says about how many devices something was taken over.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn take_over_decisions(&mut self, theirs: &[DeviceDecision], own: &str) -> Result<u64, StoreFault> {
        let mut written = || -> Result<u64, rusqlite::Error> {
            let transaction = self.connection.transaction()?;
            let devices = take_over(&transaction, theirs, own)?;
            transaction.commit()?;
            Ok(devices)
        };
        written().map_err(StoreFault::sql("take over what was decided"))
    }

    /// The devices that wrote what counts of a visit.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn writers(&self, visit: &str) -> Result<Vec<String>, StoreFault> {
        let read = || -> Result<Vec<String>, rusqlite::Error> {
            let sql = "SELECT DISTINCT device FROM counting WHERE visit = ?1";
            self.connection
                .prepare_cached(sql)?
                .query_map([visit], |row| ledger::text(row, "device"))?
                .collect()
        };
        read().map_err(StoreFault::sql("read who wrote"))
    }

    /// Writes decisions about a device down, all of them or none.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn decide(
        &mut self,
        device: &str,
        decided: &[Decided<'_>],
        (by, now): (&str, Moment),
    ) -> Result<(), StoreFault> {
        let mut written = || -> Result<(), rusqlite::Error> {
            let transaction = self.connection.transaction()?;
            for one in decided {
                let (what, name) = one.written();
                let sql = "INSERT INTO trust (device, at, what, name, by) VALUES (?1, ?2, ?3, ?4, ?5)";
                transaction.execute(sql, params![device, now.0, what, name, by])?;
            }
            transaction.commit()
        };
        written().map_err(StoreFault::sql("write down a decision"))
    }
}

/// Adds decisions of another folder of one's own, about devices of which nothing was decided here; says about how
/// many.
pub(super) fn take_over(
    connection: &Connection,
    theirs: &[DeviceDecision],
    own: &str,
) -> Result<u64, rusqlite::Error> {
    let here: BTreeSet<String> = decisions(connection)?.into_iter().map(|one| one.device).collect();
    let fits = |one: &&DeviceDecision| {
        one.device != own
            && !here.contains(&one.device)
            && one.name.chars().count() <= limits::DEVICE_NAME
            && one.by.chars().count() <= limits::LINE
    };
    let mut devices = BTreeSet::new();
    for DeviceDecision { device, at, what, name, by } in theirs.iter().filter(fits) {
        // What no version of Steady writes fails the table's checks and stays outside.
        let sql = "INSERT OR IGNORE INTO trust (device, at, what, name, by) VALUES (?1, ?2, ?3, ?4, ?5)";
        if connection.execute(sql, params![device, at.0, what, name, by])? > 0 {
            devices.insert(device);
        }
    }
    Ok(devices.len() as u64)
}

/// Every decision of a database, the first first.
pub(in crate::store) fn decisions(connection: &Connection) -> Result<Vec<DeviceDecision>, rusqlite::Error> {
    let sql = "SELECT device, at, what, name, by FROM trust WHERE what <> 'met' ORDER BY id";
    let mut statement = connection.prepare_cached(sql)?;
    let rows = statement.query_map([], |row| {
        Ok(DeviceDecision {
            device: row.get("device")?,
            at: Moment(row.get("at")?),
            what: row.get("what")?,
            name: row.get("name")?,
            by: row.get("by")?,
        })
    })?;
    rows.collect()
}

/// Notes that a device was met, unless it was before.
pub(super) fn meet(connection: &Connection, device: &str, now: Moment) -> Result<(), rusqlite::Error> {
    let sql = "INSERT INTO trust (device, at, what)
               SELECT ?1, ?2, 'met' WHERE NOT EXISTS (SELECT 1 FROM trust WHERE device = ?1)";
    connection.prepare_cached(sql)?.execute(params![device, now.0]).map(|_| ())
}

/// Reads the log from front to back.
pub(super) fn read(connection: &Connection) -> Result<Devices, rusqlite::Error> {
    let mut statement = connection.prepare_cached("SELECT device, at, what, name FROM trust ORDER BY id")?;
    let mut rows = statement.query([])?;
    let mut devices = Devices::new();
    while let Some(row) = rows.next()? {
        let (what, at): (String, i64) = (row.get("what")?, row.get("at")?);
        let new =
            || Known { name: String::new(), trust: Trust::NotConfirmed, confirmed: false, met: Moment(at) };
        let known = devices.entry(row.get("device")?).or_insert_with(new);
        known.confirmed = what == "confirmed" || (known.confirmed && what != "reset");
        match what.as_str() {
            "confirmed" => known.trust = Trust::Confirmed,
            "named" => known.name = row.get("name")?,
            "retired" => known.trust = Trust::Retired,
            "reset" => known.trust = Trust::NotConfirmed,
            _ => {}
        }
    }
    Ok(devices)
}
