//! Lines from another device's copy of a visit become part of this one's: the union of both, in one
//! transaction. Nothing that stands here is changed; what differs is refused.

use std::collections::BTreeMap;

use rusqlite::{OptionalExtension, Transaction, TransactionBehavior, params};

use super::cards::{self, CardRow};
use super::fault::StoreFault;
use super::ledger::{self, Chain, LineFault};
use super::open::Store;
use crate::model::line::Line;
use crate::model::time::Moment;

/// A transaction into which visits are merged; nothing of it stands before the last is.
#[derive(Debug)]
pub struct Merging<'a> {
    transaction: Transaction<'a>,
}

/// A visit after merging.
#[derive(Debug)]
pub struct Merged {
    /// Its entries, those of both copies.
    pub chain: Chain,
    /// Lines that were not here before.
    pub added: usize,
}

/// Why a visit was not merged.
#[derive(Debug, thiserror::Error)]
pub enum MergeFault {
    /// The lines are no ledger.
    #[error("the lines are no ledger: {0:?}")]
    Lines(LineFault),
    /// A device's chain goes on differently here.
    #[error("a device's chain goes on differently here")]
    Forked,
    /// Storage failed.
    #[error(transparent)]
    Store(#[from] StoreFault),
}

impl Store {
    /// Runs `work` in one transaction, synced before this returns; on a fault nothing of it stands.
    ///
    /// # Errors
    /// What `work` says, or SQLite.
    pub fn merging<T, E: From<StoreFault>>(
        &mut self,
        work: impl FnOnce(&Merging<'_>) -> Result<T, E>,
    ) -> Result<T, E> {
        let begun = self.connection.transaction_with_behavior(TransactionBehavior::Immediate);
        let merging = Merging { transaction: begun.map_err(StoreFault::sql("begin an import"))? };
        let done = work(&merging)?;
        merging.transaction.commit().map_err(StoreFault::sql("keep an import"))?;
        Ok(done)
    }
}

impl Merging<'_> {
    /// Whether the visit was erased here.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn is_erased(&self, visit: &str) -> Result<bool, StoreFault> {
        let found = || -> Result<bool, rusqlite::Error> {
            let sql = "SELECT count(*) AS erased FROM erased WHERE visit = ?1";
            let erased: i64 =
                self.transaction.prepare_cached(sql)?.query_row([visit], |row| row.get("erased"))?;
            Ok(erased > 0)
        };
        found().map_err(StoreFault::sql("look for a tombstone"))
    }

    /// Adds the lines that are not here yet; they come by device and place, each chain from its start.
    ///
    /// # Errors
    /// [`MergeFault`]; see there.
    pub fn merge(&self, visit: &str, lines: &[Line]) -> Result<Merged, MergeFault> {
        ledger::check_lines(visit, lines).map_err(MergeFault::Lines)?;
        let sql = |fault| MergeFault::Store(StoreFault::sql("merge a visit")(fault));
        let here = ledger::read(&self.transaction, visit).map_err(sql)?;
        let here: BTreeMap<(&str, u64), &str> =
            here.iter().map(|line| ((line.device.as_str(), line.seq), line.hash.as_str())).collect();
        let mut added = 0;
        for line in lines {
            match here.get(&(line.device.as_str(), line.seq)) {
                Some(hash) if *hash == line.hash => {}
                Some(_) => return Err(MergeFault::Forked),
                None => {
                    ledger::insert(&self.transaction, line).map_err(sql)?;
                    added += 1;
                }
            }
        }
        let merged = ledger::read(&self.transaction, visit).map_err(sql)?;
        Ok(Merged { chain: ledger::checked(merged), added })
    }

    /// Writes a visit's card.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn write_card(&self, card: &CardRow) -> Result<(), StoreFault> {
        cards::write(&self.transaction, card).map_err(StoreFault::sql("write a card"))
    }

    /// The key a device is known by.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn known_key(&self, device: &str) -> Result<Option<String>, StoreFault> {
        let sql = "SELECT key FROM known_key WHERE device = ?1";
        let found = self.transaction.query_row(sql, [device], |row| row.get("key")).optional();
        found.map_err(StoreFault::sql("look for a key"))
    }

    /// Remembers the key of a device.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn learn_key(&self, device: &str, key: &str, now: Moment) -> Result<(), StoreFault> {
        let sql = "INSERT INTO known_key (device, key, at) VALUES (?1, ?2, ?3)";
        let done = self.transaction.execute(sql, params![device, key, now.0]);
        done.map(|_| ()).map_err(StoreFault::sql("remember a key"))
    }

    /// Sets a tombstone that came with a backup, unless the visit is here.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn keep_erased(&self, visit: &str, at: Moment) -> Result<(), StoreFault> {
        let sql = "INSERT INTO erased (visit, at, swept)
                   SELECT ?1, ?2, 1 WHERE NOT EXISTS (SELECT 1 FROM entry WHERE visit = ?1)
                   ON CONFLICT (visit) DO NOTHING";
        let done = self.transaction.execute(sql, params![visit, at.0]);
        done.map(|_| ()).map_err(StoreFault::sql("keep a tombstone"))
    }
}
