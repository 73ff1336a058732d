//! Lines from another device's copy of a visit become part of this one's: the union of both, in one
//! transaction. Nothing that stands here is changed; what differs is refused.

use std::collections::BTreeMap;

use rusqlite::{Transaction, TransactionBehavior, params};

use super::cards::{self, CardRow};
use super::fault::StoreFault;
use super::ledger::{self, Chain, LineFault};
use super::open::Store;
use crate::model::limits;
use crate::model::line::Line;
use crate::model::time::Moment;

/// A transaction into which visits are merged; nothing of it stands before the last is.
#[derive(Debug)]
pub struct Merging<'a> {
    transaction: Transaction<'a>,
}

/// Where lines come from, and so what is believed of them beyond their proofs.
#[derive(Debug, Clone, Copy)]
pub enum Origin<'a> {
    /// A file that anybody may have made.
    File {
        /// The receiver's own ids, former ones too: nobody brings it its own words.
        own: &'a [String],
    },
    /// A backup or a database that a person chose as their own: what was written before signatures counts.
    OwnFolder,
}

impl Origin<'_> {
    /// Whether a line that is not here yet may come in, its proof apart.
    fn admits(&self, line: &Line) -> Result<(), MergeFault> {
        match self {
            Self::OwnFolder => Ok(()),
            Self::File { own } if own.contains(&line.device) => Err(MergeFault::OwnName),
            Self::File { .. } if line.signature.is_none() => Err(MergeFault::Unsigned),
            Self::File { .. } => Ok(()),
        }
    }
}

/// A visit as it would be after merging.
#[derive(Debug)]
pub struct Plan {
    /// Its entries, those of both copies.
    pub chain: Chain,
    added: Vec<Line>,
}

impl Plan {
    /// How many lines are not here yet.
    pub fn added(&self) -> usize {
        self.added.len()
    }
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
    /// Lines in the receiver's own name that it does not hold.
    #[error("lines in the receiver's own name")]
    OwnName,
    /// Lines from before there were signatures that are not here.
    #[error("lines from before there were signatures")]
    Unsigned,
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

    /// What a visit would be with the lines that are not here yet; they come by device and place, each chain from
    /// its start. Nothing is written.
    ///
    /// # Errors
    /// [`MergeFault`]; see there.
    pub fn plan(&self, visit: &str, lines: &[Line], origin: Origin<'_>) -> Result<Plan, MergeFault> {
        ledger::check_lines(visit, lines).map_err(MergeFault::Lines)?;
        let read = ledger::read(&self.transaction, visit);
        let mut union = read.map_err(StoreFault::sql("merge a visit"))?;
        let here: BTreeMap<(&str, u64), &str> =
            union.iter().map(|line| ((line.device.as_str(), line.seq), line.hash.as_str())).collect();
        let mut added = Vec::new();
        for line in lines {
            match here.get(&(line.device.as_str(), line.seq)) {
                Some(hash) if *hash == line.hash => {}
                Some(_) => return Err(MergeFault::Forked),
                None => added.push(line.clone()),
            }
        }
        added.iter().try_for_each(|line| origin.admits(line))?;
        ledger::prove_each(&added).map_err(MergeFault::Lines)?;
        union.extend(added.iter().cloned());
        let chain = ledger::checked(union);
        let entries: Vec<_> = chain.entries.iter().map(|entry| (entry.hash.as_str(), &entry.body)).collect();
        limits::visit::check(&entries).map_err(|beyond| MergeFault::Lines(LineFault::Beyond(beyond)))?;
        Ok(Plan { chain, added })
    }

    /// Writes the lines of a plan.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn keep(&self, plan: &Plan) -> Result<(), StoreFault> {
        let kept = plan.added.iter().try_for_each(|line| ledger::insert(&self.transaction, line));
        kept.map_err(StoreFault::sql("merge a visit"))
    }

    /// Writes a visit's card.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn write_card(&self, card: &CardRow) -> Result<(), StoreFault> {
        cards::write(&self.transaction, card).map_err(StoreFault::sql("write a card"))
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
