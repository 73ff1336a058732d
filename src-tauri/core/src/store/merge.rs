//! Lines from another device's copy of a visit become part of this one's: the union of both, in one
//! transaction. Nothing that stands whole here is changed; what differs is refused. What is no longer as it was written, or
//! no longer proven, is mended by the line of the same hash.

use std::collections::{BTreeMap, BTreeSet};

use rusqlite::{OptionalExtension, Transaction, TransactionBehavior, params};

use super::cards::{self, CardRow};
use super::fault::StoreFault;
use super::ledger::{self, Chain, LineFault};
use super::open::Store;
use super::{devices, imports, mend};
use crate::model::device::{DeviceDecision, Devices, Trust};
use crate::model::entry::{Entry, EntryBody};
use crate::model::limits;
use crate::model::line::Line;
use crate::model::time::Moment;
use crate::model::workshop::Workshop;
use crate::signing::line::signs;

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
        /// What was decided about devices: nothing new comes from one that was retired.
        devices: &'a Devices,
        /// Lines dated later are not believed.
        latest: Moment,
    },
    /// A backup or a database that a person chose as their own: what was written before signatures counts.
    OwnFolder,
}

impl Origin<'_> {
    /// Whether a line that does not count yet may come in, its proof apart.
    fn admits(&self, line: &Line) -> Result<(), MergeFault> {
        let Self::File { own, devices, latest } = self else { return Ok(()) };
        if own.contains(&line.device) {
            return Err(MergeFault::OwnName);
        }
        if line.signature.is_none() {
            return Err(MergeFault::Unsigned);
        }
        if devices.get(&line.device).is_some_and(|known| known.trust == Trust::Retired) {
            return Err(MergeFault::Retired);
        }
        if line.at > *latest { Err(MergeFault::Ahead) } else { Ok(()) }
    }
}

/// A visit as it would be after merging.
#[derive(Debug)]
pub struct Plan {
    /// Its entries, those of both copies.
    pub chain: Chain,
    /// Lines that did not count before and would.
    pub news: u64,
    /// Why lines at the end of a chain were left out, while the rest comes in: their device was retired, or they are
    /// dated far ahead.
    pub held_back: Option<MergeFault>,
    visit: String,
    added: Vec<Line>,
    /// Lines that stand here damaged, as they were written.
    mended: Vec<Line>,
    /// How far each chain of the file goes, and how far the same counted before.
    reached: Vec<(String, u64, u64)>,
}

impl Plan {
    /// Whether anything would be written: lines that did not count, or damaged ones as they were.
    pub fn changes(&self) -> bool {
        self.news > 0 || !self.mended.is_empty()
    }

    /// How many lines that stand here damaged would be whole again.
    pub fn mended(&self) -> u64 {
        self.mended.len() as u64
    }

    /// What counted of the visit before; none where nothing did.
    pub fn before(&self) -> Option<Chain> {
        let counted = |entry: &&Entry| {
            let reached = self.reached.iter().find(|(device, ..)| *device == entry.device);
            reached.is_none_or(|(.., before)| entry.seq <= *before)
        };
        let entries: Vec<Entry> = self.chain.entries.iter().filter(counted).cloned().collect();
        (!entries.is_empty()).then_some(Chain { entries, broken_at: self.chain.broken_at })
    }

    /// The devices of whose chains more would count than did.
    pub fn writers_of_news(&self) -> impl Iterator<Item = &str> {
        let grows = self.reached.iter().filter(|(_, lines, before)| lines > before);
        grows.map(|(device, ..)| device.as_str())
    }
}

/// Lines that come, beside what is held of their visit.
struct Sifted<'l> {
    /// Those of which nothing is held.
    added: Vec<Line>,
    /// Those that are held damaged, as they were written.
    mended: Vec<Line>,
    /// Those that would count, or do.
    kept: Vec<&'l Line>,
    /// How many did not count.
    news: u64,
    held_back: Option<MergeFault>,
}

/// Sifts lines, which come by device and place.
fn sifted<'l>(
    held: &[Line],
    counts: impl Fn(&Line) -> bool,
    (lines, origin): (&'l [Line], Origin<'_>),
) -> Result<Sifted<'l>, MergeFault> {
    let here: BTreeMap<(&str, u64), &Line> =
        held.iter().map(|line| ((line.device.as_str(), line.seq), line)).collect();
    let (mut added, mut mended, mut kept) = (Vec::new(), Vec::new(), Vec::new());
    let (mut news, mut held_back, mut ended) = (0, None, BTreeSet::new());
    for line in lines {
        let held = here.get(&(line.device.as_str(), line.seq)).copied();
        match held {
            Some(held) if held.hash != line.hash => return Err(MergeFault::Forked),
            Some(held) if counts(held) => {
                mended.extend(mend::mended(held, line));
                kept.push(line);
                continue;
            }
            _ if ended.contains(line.device.as_str()) => continue,
            _ => {}
        }
        match origin.admits(line) {
            Ok(()) => {}
            // What others say of the visit comes in all the same: it may be the graver word.
            Err(fault @ (MergeFault::Retired | MergeFault::Ahead)) => {
                ended.insert(line.device.as_str());
                held_back.get_or_insert(fault);
                continue;
            }
            Err(fault) => return Err(fault),
        }
        match held {
            Some(held) => mended.extend(mend::mended(held, line)),
            None => added.push(line.clone()),
        }
        kept.push(line);
        news += 1;
    }
    if let Some(fault) = held_back.take_if(|_| news == 0 && mended.is_empty()) {
        return Err(fault);
    }
    if let Origin::File { .. } = origin {
        // What was held back behind them proves these no more.
        ledger::prove_ends(&added).map_err(MergeFault::Lines)?;
    }
    Ok(Sifted { added, mended, kept, news, held_back })
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
    /// Lines of a device that was retired here.
    #[error("lines of a retired device")]
    Retired,
    /// Lines dated far ahead of the receiver's clock.
    #[error("lines dated far ahead")]
    Ahead,
    /// The visit would have been opened twice.
    #[error("the visit would be opened twice")]
    OpenedTwice,
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

    /// What a visit would be with the lines that do not count here yet; they come by device and place, each chain
    /// from its start. Nothing is written.
    ///
    /// # Errors
    /// [`MergeFault`]; see there.
    pub fn plan(&self, visit: &str, lines: &[Line], origin: Origin<'_>) -> Result<Plan, MergeFault> {
        ledger::check_lines(visit, lines).map_err(MergeFault::Lines)?;
        let sql = || StoreFault::sql("merge a visit");
        let mut union = ledger::read_all(&self.transaction, visit).map_err(sql())?;
        let reaches = imports::reaches(&self.transaction, visit, None).map_err(sql())?;
        let counts = |line: &Line| reaches.get(&line.device).is_none_or(|lines| line.seq <= *lines);
        let Sifted { added, mended, kept, news, held_back } = sifted(&union, counts, (lines, origin))?;
        if self.stand_elsewhere(&added).map_err(sql())? {
            return Err(MergeFault::Forked);
        }
        let before = imports::lengths(union.iter().filter(|line| counts(line)));
        let reach = |(device, lines): (&str, u64)| {
            (device.to_owned(), lines, before.get(device).copied().unwrap_or_default())
        };
        let reached: Vec<_> = imports::lengths(kept).into_iter().map(reach).collect();
        let far: BTreeMap<&str, u64> =
            reached.iter().map(|(device, lines, before)| (device.as_str(), *lines.max(before))).collect();
        mend::put(&mut union, &mended);
        union.extend(added.iter().cloned());
        union
            .retain(|line| counts(line) || far.get(line.device.as_str()).is_some_and(|far| line.seq <= *far));
        let chain = ledger::checked(union);
        let writes = news > 0 || !mended.is_empty();
        if writes && chain.broken_at.is_some() && !self.is_broken(visit).map_err(sql())? {
            // What stands here of lines that did not count proves nothing, and would break what is whole.
            return Err(MergeFault::Lines(LineFault::Unproven));
        }
        let opened = chain.entries.iter().filter(|entry| matches!(entry.body, EntryBody::Opened { .. }));
        if news > 0 && opened.count() > 1 {
            return Err(MergeFault::OpenedTwice);
        }
        let entries: Vec<_> = chain.entries.iter().map(|entry| (entry.hash.as_str(), &entry.body)).collect();
        limits::visit::check(&entries).map_err(|beyond| MergeFault::Lines(LineFault::Beyond(beyond)))?;
        Ok(Plan { chain, news, held_back, visit: visit.to_owned(), added, mended, reached })
    }

    /// Whether a line with one of these lines' hashes stands in another place: what rotted is where it is from.
    fn stand_elsewhere(&self, lines: &[Line]) -> Result<bool, rusqlite::Error> {
        let sql = "SELECT count(*) AS found FROM entry WHERE hash = ?1";
        let mut statement = self.transaction.prepare_cached(sql)?;
        for line in lines {
            if statement.query_row([&line.hash], |row| row.get::<_, i64>("found"))? > 0 {
                return Ok(true);
            }
        }
        Ok(false)
    }

    /// Whether what counts of a visit is broken as it stands.
    fn is_broken(&self, visit: &str) -> Result<bool, rusqlite::Error> {
        Ok(ledger::checked(ledger::read(&self.transaction, visit)?).broken_at.is_some())
    }

    /// Writes that something is taken in now: a file's maker and when it made it, nothing of a folder of one's own.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn begin(&self, now: Moment, file: Option<(&str, Moment)>) -> Result<Import<'_>, StoreFault> {
        let begun = imports::begin(&self.transaction, now, file.unwrap_or(("", Moment(0))));
        let id = begun.map_err(StoreFault::sql("begin an import"))?;
        Ok(Import { merging: self, id, now })
    }

    /// What would be left of a visit without an import, and how many of its entries this device wrote.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn without(&self, visit: &str, import: i64) -> Result<Chain, StoreFault> {
        let left = || -> Result<Chain, rusqlite::Error> {
            let limits = imports::reaches(&self.transaction, visit, Some(import))?;
            let mut lines = ledger::read_all(&self.transaction, visit)?;
            lines.retain(|line| limits.get(&line.device).is_none_or(|lines| line.seq <= *lines));
            Ok(ledger::checked(lines))
        };
        left().map_err(StoreFault::sql("read a visit"))
    }

    /// Visits that an import brought lines of; nothing for one that is not known or was taken back.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn close(&self, import: i64, now: Moment) -> Result<Option<Vec<String>>, StoreFault> {
        let close = || -> Result<Option<Vec<String>>, rusqlite::Error> {
            let closed = imports::close(&self.transaction, import, now)?;
            if closed { imports::visits(&self.transaction, import).map(Some) } else { Ok(None) }
        };
        close().map_err(StoreFault::sql("take an import back"))
    }

    /// Takes back what an import brought of one visit. `card` is what is left of it, if anything is.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn take_back(
        &self,
        import: i64,
        (visit, card): (&str, Option<&CardRow>),
        now: Moment,
    ) -> Result<(), StoreFault> {
        let done = imports::take_back(&self.transaction, import, visit, now).and_then(|()| match card {
            Some(card) => cards::write(&self.transaction, card),
            None => self.transaction.execute("DELETE FROM card WHERE visit = ?1", [visit]).map(|_| ()),
        });
        done.map_err(StoreFault::sql("take an import back"))
    }

    /// Plate and VIN on a visit's card, if it has a card.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn car(&self, visit: &str) -> Result<Option<[String; 2]>, StoreFault> {
        let sql = "SELECT plate, vin FROM card WHERE visit = ?1";
        let read = |row: &rusqlite::Row<'_>| Ok([row.get("plate")?, row.get("vin")?]);
        let found = self.transaction.query_row(sql, [visit], read).optional();
        found.map_err(StoreFault::sql("read a card"))
    }

    /// Whether what counts of a visit rests on other files alone than one that this device made at this time.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn rests_on_others(&self, visit: &str, file: (&str, Moment)) -> Result<bool, StoreFault> {
        let found = imports::rests_on_others(&self.transaction, visit, file);
        found.map_err(StoreFault::sql("look for imports"))
    }

    /// The rating on a visit's card, if it has a card: the rating's id, or none while it is not yet checked.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn rated(&self, visit: &str) -> Result<Option<Option<String>>, StoreFault> {
        let sql = "SELECT word FROM card WHERE visit = ?1";
        let found = self.transaction.query_row(sql, [visit], |row| row.get("word")).optional();
        found.map_err(StoreFault::sql("read a card"))
    }

    /// Writes a visit's card.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn write_card(&self, card: &CardRow) -> Result<(), StoreFault> {
        cards::write(&self.transaction, card).map_err(StoreFault::sql("write a card"))
    }

    /// Keeps a setting that came with a backup, unless one of that name is here.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn write_setting(&self, name: &str, value: &str) -> Result<(), StoreFault> {
        let sql = "INSERT INTO setting (name, value) VALUES (?1, ?2) ON CONFLICT (name) DO NOTHING";
        let done = self.transaction.execute(sql, [name, value]);
        done.map(|_| ()).map_err(StoreFault::sql("keep a setting"))
    }

    /// Keeps what was decided in another folder of one's own about devices of which nothing was decided here; says
    /// about how many.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn write_decisions(&self, theirs: &[DeviceDecision], own: &str) -> Result<u64, StoreFault> {
        let kept = devices::take_over(&self.transaction, theirs, own);
        kept.map_err(StoreFault::sql("keep what was decided"))
    }

    /// Notes that the files of this placing belong to what is kept.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn placed(&self, id: &str) -> Result<(), StoreFault> {
        let sql = "INSERT INTO setting (name, value) VALUES (?1, ?2)
                   ON CONFLICT (name) DO UPDATE SET value = excluded.value";
        let done = self.transaction.execute(sql, [super::staging::PLACED, id]);
        done.map(|_| ()).map_err(StoreFault::sql("note what was placed"))
    }

    /// Keeps a version of the knowledge, unless it is kept already.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn write_knowledge(&self, version: &str, now: Moment, texts: &str) -> Result<(), StoreFault> {
        super::knowledge::keep(&self.transaction, version, now, texts)
    }

    /// Writes the workshop's particulars.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn write_workshop(&self, workshop: &Workshop) -> Result<(), StoreFault> {
        super::workshop::write(&self.transaction, workshop).map_err(StoreFault::sql("keep the workshop"))
    }

    /// Sets a tombstone that came with a backup, unless the visit is here.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn write_erased(&self, visit: &str, at: Moment) -> Result<(), StoreFault> {
        let sql = "INSERT INTO erased (visit, at, swept)
                   SELECT ?1, ?2, 1 WHERE NOT EXISTS (SELECT 1 FROM entry WHERE visit = ?1)
                   ON CONFLICT (visit) DO NOTHING";
        let done = self.transaction.execute(sql, params![visit, at.0]);
        done.map(|_| ()).map_err(StoreFault::sql("keep a tombstone"))
    }
}

/// A taking in that is being written down.
#[derive(Debug)]
pub struct Import<'a> {
    merging: &'a Merging<'a>,
    id: i64,
    now: Moment,
}

impl Import<'_> {
    /// Writes that this file holds what is here already, so that it still counts when the file that brought it first is
    /// taken back.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn hold(&self, plan: &Plan, own: &str) -> Result<(), StoreFault> {
        let connection = &self.merging.transaction;
        let others = plan.reached.iter().filter(|(device, ..)| device != own);
        let noted = others.into_iter().try_for_each(|(device, lines, before)| {
            imports::note(connection, self.id, &plan.visit, (device, *lines, *before))
        });
        noted.map_err(StoreFault::sql("note an import"))
    }

    /// Writes the lines of a plan, those that it mends too, how far they brought each chain of another device than `own`, and that its
    /// device was met.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn write(&self, plan: &Plan, own: &str) -> Result<(), StoreFault> {
        let connection = &self.merging.transaction;
        let written = || -> Result<(), rusqlite::Error> {
            mend::write(connection, &plan.mended)?;
            plan.added.iter().try_for_each(|line| ledger::insert(connection, line))?;
            for (device, lines, before) in plan.reached.iter().filter(|(device, ..)| device != own) {
                imports::note(connection, self.id, &plan.visit, (device, *lines, *before))?;
                if signs(device) {
                    devices::meet(connection, device, self.now)?;
                }
            }
            Ok(())
        };
        written().map_err(StoreFault::sql("merge a visit"))
    }
}
