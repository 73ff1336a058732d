//! What the pages of a database say beside its lines: which imports were taken back, and what was decided about
//! devices. Both only ever grew, so whatever any version of a page says stands.

use std::collections::BTreeMap;

use super::pages::SqliteRecord;
use crate::model::device::DeviceDecision;
use crate::model::time::Moment;

/// A row of `brought` or of `trust`.
#[derive(Debug)]
pub enum Row {
    /// How far an import brought a chain.
    Brought {
        /// Visit, device, and the import's number.
        chain: (String, String, i64),
        /// Lines of the chain.
        lines: u64,
        /// The import was taken back.
        taken_back: bool,
    },
    /// A decision about a device.
    Decided(DeviceDecision),
}

/// All such rows of a database.
#[derive(Debug, Default)]
pub struct MinedRows {
    brought: BTreeMap<(String, String, i64), (u64, bool)>,
    decided: Vec<DeviceDecision>,
}

impl MinedRows {
    /// Adds a row; one of which an older version of its page told before counts once.
    pub fn add(&mut self, row: Row) {
        match row {
            Row::Brought { chain, lines, taken_back } => {
                let known = self.brought.entry(chain).or_insert((lines, false));
                known.1 |= taken_back;
            }
            Row::Decided(decision) => {
                if !self.decided.contains(&decision) {
                    self.decided.push(decision);
                }
            }
        }
    }

    /// How far the chains of a visit count that imports brought.
    pub fn reaches(&self, visit: &str) -> BTreeMap<String, u64> {
        let mut reaches = BTreeMap::new();
        for ((of, device, _), (lines, taken_back)) in &self.brought {
            if of == visit {
                let far: &mut u64 = reaches.entry(device.clone()).or_default();
                *far = if *taken_back { *far } else { (*far).max(*lines) };
            }
        }
        reaches
    }

    /// What was decided about devices, the first first.
    pub fn decisions(&self) -> Vec<DeviceDecision> {
        let mut decided = self.decided.clone();
        decided.sort_by_key(|decision| (decision.at, rank(&decision.what)));
        decided
    }
}

/// Of decisions of one moment, a device is confirmed before it is retired.
fn rank(what: &str) -> usize {
    ["confirmed", "named", "retired", "reset"].iter().position(|known| *known == what).unwrap_or(usize::MAX)
}

/// A row of the table `brought`: visit, device, import, lines, and when it was taken back.
pub fn brought(record: &SqliteRecord, visit: String, device: String) -> Option<Row> {
    let taken_back = record.int(4).is_some();
    let lines = u64::try_from(record.int(3)?).ok().filter(|lines| *lines >= 1)?;
    (taken_back || record.is_null(4)).then_some(())?;
    Some(Row::Brought { chain: (visit, device, record.int(2)?), lines, taken_back })
}

/// A row of the table `trust`: its number, the device, when, what, the name, and by whom. That a device was met is
/// no decision.
pub fn decided(record: &SqliteRecord, device: String) -> Option<Row> {
    let text = |column: usize| record.text(column).map(str::to_owned);
    let (what, name, by) = (text(3)?, text(4)?, text(5)?);
    let is_one = device.len() == 64 && rank(&what) != usize::MAX;
    let at = Moment(record.int(2)?);
    is_one.then_some(Row::Decided(DeviceDecision { device, at, what, name, by }))
}
