//! What is left of a visit that no list shows any more: lines of an import that was taken back, and what lies in
//! folders that were set aside. Its owner may wish that erased too.

use std::collections::BTreeSet;

use super::fault::StoreFault;
use super::ledger;
use super::open::Store;
use crate::model::entry::EntryBody;
use crate::model::line::Line;

impl Store {
    /// The plates under which something of a visit is left; none at all where nothing is.
    ///
    /// # Errors
    /// What SQLite or the file system says.
    pub fn left_of(&self, visit: &str) -> Result<Option<BTreeSet<String>>, StoreFault> {
        let mut lines = ledger::read_all(&self.connection, visit).map_err(StoreFault::sql("read a visit"))?;
        let mut known = !lines.is_empty();
        for aside in self.asides()? {
            if let Some(foreign) = self.searched(&aside)? {
                known |= foreign.visits().iter().any(|found| found == visit);
                lines.extend(foreign.readable_lines(visit));
            }
        }
        Ok(known.then(|| lines.iter().filter_map(plate).collect()))
    }
}

/// The plate that a line gives.
fn plate(line: &Line) -> Option<String> {
    match serde_json::from_str(&line.body).ok()? {
        EntryBody::Opened { intake, .. } | EntryBody::Amended { intake, .. } => Some(intake.vehicle.plate),
        _ => None,
    }
}
