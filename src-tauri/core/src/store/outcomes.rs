//! The confirmed outcomes of every visit, read out of the ledger: nothing is stored beside it, so what
//! came from another device counts like what was written here, and once.

use std::collections::{BTreeMap, BTreeSet};

use rusqlite::Connection;

use super::fault::StoreFault;
use super::ledger::{is_whole, line};
use super::open::Store;
use crate::model::entry::EntryBody;
use crate::model::line::Line;
use crate::model::outcome::Outcome;
use crate::model::time::Moment;

impl Store {
    /// The outcome that stands of each visit that has one, in the order of the visits' ids, by devices that count. A
    /// line that does not fit its own hash teaches nothing.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn outcomes(&self, counts: impl Fn(&str) -> bool) -> Result<Vec<Outcome>, StoreFault> {
        Ok(self.confirmed(counts)?.into_iter().map(|(_, outcome)| outcome).collect())
    }

    /// The same in the order of their confirmation.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn outcomes_by_time(&self, counts: impl Fn(&str) -> bool) -> Result<Vec<Outcome>, StoreFault> {
        let mut confirmed = self.confirmed(counts)?;
        confirmed.sort_by_key(|(at, _)| *at);
        Ok(confirmed.into_iter().map(|(_, outcome)| outcome).collect())
    }

    fn confirmed(&self, counts: impl Fn(&str) -> bool) -> Result<Vec<(Moment, Outcome)>, StoreFault> {
        let mut rows = read(&self.connection).map_err(StoreFault::sql("read outcomes"))?;
        rows.retain(|row| counts(&row.device));
        Ok(standing(rows))
    }
}

fn read(connection: &Connection) -> Result<Vec<Line>, rusqlite::Error> {
    // The condition is that of the index, word for word.
    let mut statement = connection.prepare_cached(
        "SELECT visit, device, seq, at, prev, hash, signature, body FROM counting
         WHERE substr(body, 1, 27) = '{\"kind\":\"outcome-confirmed\"' OR substr(body, 1, 19) = '{\"kind\":\"withdrawn\"'",
    )?;
    let rows = statement.query_map([], line)?;
    rows.collect()
}

/// The outcome that stands of each visit, with the time of its confirmation.
fn standing(mut rows: Vec<Line>) -> Vec<(Moment, Outcome)> {
    rows.retain(is_whole);
    rows.sort_by(|a, b| (&a.visit, a.at, &a.device, a.seq).cmp(&(&b.visit, b.at, &b.device, b.seq)));
    let mut withdrawn: BTreeSet<String> = BTreeSet::new();
    let mut confirmed: Vec<(Line, Outcome)> = Vec::new();
    for row in rows {
        match serde_json::from_str(&row.body) {
            Ok(EntryBody::Withdrawn { entry, .. }) => {
                withdrawn.insert(entry);
            }
            Ok(EntryBody::OutcomeConfirmed { outcome, .. }) => confirmed.push((row, outcome)),
            _ => {}
        }
    }
    confirmed.retain(|(row, _)| !withdrawn.contains(&row.hash));
    let latest: BTreeMap<String, (Moment, Outcome)> =
        confirmed.into_iter().map(|(row, outcome)| (row.visit, (row.at, outcome))).collect();
    latest.into_values().collect()
}
