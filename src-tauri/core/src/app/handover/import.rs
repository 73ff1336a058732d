//! Takes a handover file in: every ledger by union, every photo before the entries that name it, all in one
//! transaction that is kept only after the last byte of the file was right. A visit that is not proven or does not
//! fit is set apart and named; the others come in.

use std::collections::BTreeSet;
use std::io::{self, Read};

use super::super::derive;
use super::super::devices;
use super::super::drawn::DrawnFor;
use super::super::fault::{Fault, Refusal};
use super::super::list;
use super::super::steady::{Inner, shown};
use super::seen::{Seen, lines, photo_of};
use super::{Imported, SetApart};
use crate::handover::fault::HandoverFault;
use crate::handover::manifest::{PartKind, photo_names};
use crate::handover::read::Reader;
use crate::model::device::Devices;
use crate::model::entry::Entry;
use crate::model::limits::{self, Beyond};
use crate::model::line::Line;
use crate::model::rating::Word;
use crate::model::standing::{Standing, StepStand};
use crate::model::time::Moment;
use crate::store::ledger::{Chain, LineFault, check_lines};
use crate::store::merge::{Import, MergeFault, Merging, Origin, Plan};
use crate::store::photo_files::PhotoSize;
use crate::store::staging::{Placed, Staging};
use crate::trade::Trade;
use crate::walk::{former, record};

/// Takes a file in.
pub fn import(inner: &mut Inner, source: &mut dyn Read) -> Result<Imported, Fault> {
    let staging = inner.store.staging()?;
    let walked = walk(inner, source, Some(staging)).and_then(|walked| {
        walked.placed.map(Placed::confirm).transpose()?;
        Ok(walked.imported)
    });
    inner.ledger_changed()?;
    walked
}

/// What a file holds, and what was or would be changed by it.
pub struct Walked {
    /// Its maker's id.
    pub device: String,
    /// When it was made, by the maker's clock.
    pub made: Moment,
    pub imported: Imported,
    /// Each visit that is new here or grows.
    pub changes: Vec<Change>,
    /// The photos, where they are kept.
    pub placed: Option<Placed>,
}

/// A visit that is new here or grows.
pub struct Change {
    /// Where it stands afterwards.
    pub standing: Standing,
    /// Its rating's id before; the outer none for a visit that was not here.
    pub before: Option<Option<String>>,
    /// Entries that were not here.
    pub entries: u64,
    /// Entries that are damaged here and whole in the file.
    pub mended: u64,
}

/// Reads a file from front to back; with a staging folder what is in it is kept, without one it is only looked at.
pub fn walk(inner: &mut Inner, source: &mut dyn Read, staging: Option<Staging>) -> Result<Walked, Fault> {
    let mut reader = Reader::open(source)?;
    let (device, made) = (reader.manifest().device.clone(), reader.manifest().at);
    let mut own = inner.store.former_devices()?;
    own.push(inner.writer.device.clone());
    let (now, locale) = (inner.now(), inner.locale());
    let receiver = Receiver {
        trade: &inner.trade,
        drawn: &inner.drawn,
        device: &inner.writer.device,
        devices: &inner.devices,
    };
    let origin = Origin::File { own: &own, devices: &inner.devices, latest: now.latest_believed() };
    inner.store.merging(|merging| {
        let keeping =
            staging.map(|staging| Keeping { staging, import: None, from: (device.clone(), made), now });
        let mut work = Work {
            merging,
            origin,
            receiver,
            keeping,
            seen: Seen::default(),
            wanted: BTreeSet::new(),
            held: BTreeSet::new(),
            imported: Imported::default(),
            changes: Vec::new(),
            writers: BTreeSet::new(),
            apart: Vec::new(),
        };
        while let Some(part) = reader.upcoming().map(|part| part.name.clone()) {
            work.part(&mut reader, &part)?;
        }
        let missing = reader.manifest().missing.clone();
        reader.finish()?;
        work.seen.complete(&missing)?;
        work.end(&locale).map(|(imported, changes, placed)| Walked {
            device,
            made,
            imported,
            changes,
            placed,
        })
    })
}

/// Where visits are taken in: what their cards are derived with.
#[derive(Clone, Copy)]
pub struct Receiver<'a> {
    /// The drawn networks.
    pub drawn: &'a DrawnFor,
    /// The trade's knowledge.
    pub trade: &'a Trade,
    pub device: &'a str,
    /// What was decided about the others.
    pub devices: &'a Devices,
}

/// What makes the difference between taking a file in and looking at it.
struct Keeping<'a> {
    staging: Staging,
    /// Begun with the first visit that is taken.
    import: Option<Import<'a>>,
    from: (String, Moment),
    now: Moment,
}

impl<'a> Keeping<'a> {
    /// The import that this is, begun at first need.
    fn import(&mut self, merging: &'a Merging<'a>) -> Result<&Import<'a>, Fault> {
        let import = match self.import.take() {
            Some(import) => import,
            None => merging.begin(self.now, Some((&self.from.0, self.from.1)))?,
        };
        Ok(self.import.insert(import))
    }
}

/// What becomes of a visit of a file.
enum Fate {
    /// It is new here or grows.
    Taken,
    /// Everything of it is here.
    Held,
    /// It was erased here.
    Erased,
}

struct Work<'a> {
    merging: &'a Merging<'a>,
    origin: Origin<'a>,
    receiver: Receiver<'a>,
    keeping: Option<Keeping<'a>>,
    seen: Seen,
    /// Photos of the visits that are taken.
    wanted: BTreeSet<String>,
    /// Photos of visits of which everything is here: a good copy makes a damaged one whole.
    held: BTreeSet<String>,
    imported: Imported,
    changes: Vec<Change>,
    /// Devices that nothing was heard of before this file.
    writers: BTreeSet<String>,
    /// Visits that are set apart, and why.
    apart: Vec<(String, Fault)>,
}

impl<'a> Work<'a> {
    fn part<R: Read>(&mut self, reader: &mut Reader<R>, name: &str) -> Result<(), Fault> {
        match PartKind::of(name) {
            Some(PartKind::Ledger(visit)) => self.ledger(&visit, name, &reader.whole()?),
            Some(PartKind::Photo(sha256)) => {
                self.imported.photos += u64::from(self.photo(reader, name, &sha256)?);
                Ok(())
            }
            Some(PartKind::Thumb(sha256)) => self.photo(reader, name, &sha256).map(|_| ()),
            Some(PartKind::Paper) | None => Ok(reader.pass_on(&mut io::sink())?),
        }
    }

    /// One visit: taken, or set apart with the reason. Only a fault of storage ends the whole.
    fn ledger(&mut self, visit: &str, part: &str, bytes: &[u8]) -> Result<(), Fault> {
        let taken = lines(bytes, part).map_err(Fault::from).and_then(|lines| {
            let fate = self.visit(visit, part, &lines)?;
            self.seen.require(&lines);
            let photos = lines.iter().filter_map(photo_of);
            match fate {
                Fate::Taken => self.wanted.extend(photos),
                Fate::Held => self.held.extend(photos),
                Fate::Erased => {}
            }
            Ok(())
        });
        match taken {
            Err(fault) if is_of_the_visit(&fault) => {
                self.seen.allow(bytes);
                self.apart.push((visit.to_owned(), fault));
                Ok(())
            }
            other => other,
        }
    }

    /// Takes what is new of a visit.
    fn visit(&mut self, visit: &str, part: &str, lines: &[Line]) -> Result<Fate, Fault> {
        if self.merging.is_erased(visit)? {
            check_lines(visit, lines).map_err(|fault| line_fault(fault, part))?;
            self.imported.erased += 1;
            return Ok(Fate::Erased);
        }
        let mut plan = self.merging.plan(visit, lines, self.origin).map_err(|fault| named(fault, part))?;
        if !plan.changes() {
            self.imported.unchanged += 1;
            self.hold(visit, &plan)?;
            return Ok(Fate::Held);
        }
        let before = self.merging.rated(visit)?;
        let mut standing = standing_of(self.receiver, visit, &plan)?;
        if is_milder_by_stranger(self.merging, self.receiver, (&plan, &standing))? {
            let refused = || HandoverFault::MilderByStranger { part: part.to_owned() };
            // What those say that are known comes in all the same.
            plan = self.of_known(visit, lines).ok_or_else(refused)?;
            standing = standing_of(self.receiver, visit, &plan)?;
            self.apart.push((visit.to_owned(), refused().into()));
        }
        self.no_crowd(&plan, &standing, part)?;
        if let Some(keeping) = &mut self.keeping {
            keeping.import(self.merging)?.write(&plan, self.receiver.device)?;
            self.merging.write_card(&list::card(&standing))?;
        }
        if plan.held_back.take().is_some() {
            self.apart.push((visit.to_owned(), HandoverFault::HeldBack { part: part.to_owned() }.into()));
        }
        self.imported.took(visit, &plan);
        self.changes.push(Change { standing, before, entries: plan.news, mended: plan.mended() });
        Ok(Fate::Taken)
    }

    /// What a visit would be with the lines of known devices alone; none where they bring nothing new.
    fn of_known(&self, visit: &str, lines: &[Line]) -> Option<Plan> {
        let Receiver { device, devices, .. } = self.receiver;
        let known = |line: &&Line| !devices::is_doubtful(&line.device, device, devices);
        let lines: Vec<Line> = lines.iter().filter(known).cloned().collect();
        self.merging.plan(visit, &lines, self.origin).ok().filter(Plan::changes)
    }

    /// Notes that this file too holds what other files brought.
    fn hold(&mut self, visit: &str, plan: &Plan) -> Result<(), Fault> {
        let Some(keeping) = &mut self.keeping else { return Ok(()) };
        if self.merging.rests_on_others(visit, (&keeping.from.0, keeping.from.1))? {
            keeping.import(self.merging)?.hold(plan, self.receiver.device)?;
        }
        Ok(())
    }

    /// Refuses a crowd of devices.
    fn no_crowd(&mut self, plan: &Plan, standing: &Standing, part: &str) -> Result<(), HandoverFault> {
        let devices = self.receiver.devices;
        self.writers.extend(
            plan.writers_of_news().filter(|device| !devices.contains_key(*device)).map(str::to_owned),
        );
        let fits =
            standing.writers.len() <= limits::VISIT_WRITERS && self.writers.len() <= limits::NEW_WRITERS;
        if fits { Ok(()) } else { Err(HandoverFault::TooManyWriters { part: part.to_owned() }) }
    }

    /// Whether the photo belongs to a visit that is taken.
    fn photo<R: Read>(&mut self, reader: &mut Reader<R>, name: &str, sha256: &str) -> Result<bool, Fault> {
        let bytes = self.seen.photo(reader, name)?;
        let wanted = self.wanted.contains(sha256);
        // A thumbnail is made anew from its photo: nothing in a file binds the one to the other.
        let is_kept = (wanted || self.held.contains(sha256)) && name == photo_names(sha256)[0];
        if let Some(keeping) = self.keeping.as_mut().filter(|_| is_kept) {
            keeping.staging.add(&PhotoSize::Full.file_name(sha256), &bytes)?;
        }
        Ok(wanted)
    }

    /// A file of which nothing could be taken or was here already is refused for the first reason there is.
    fn end(mut self, locale: &str) -> Result<(Imported, Vec<Change>, Option<Placed>), Fault> {
        let nothing = self.imported.taken.is_empty() && self.imported.unchanged == 0;
        // Whoever only looks is shown who sends it: its code may be compared, and the file taken in then.
        let may_be_confirmed = self.keeping.is_none()
            && self
                .apart
                .iter()
                .any(|(_, fault)| matches!(fault, Fault::Handover(HandoverFault::MilderByStranger { .. })));
        if nothing && self.imported.erased > 0 {
            return Err(Refusal::VisitErased.into());
        }
        if nothing && !self.apart.is_empty() && !may_be_confirmed {
            return Err(self.apart.swap_remove(0).1);
        }
        let apart = |(visit, fault): (String, Fault)| SetApart { visit, why: shown(&fault, locale) };
        self.imported.set_apart = self.apart.into_iter().map(apart).collect();
        let placed = self.keeping.map(|keeping| keeping.staging.place(self.merging)).transpose()?;
        Ok((self.imported, self.changes, placed))
    }
}

/// Whether a fault speaks of one visit: the others of its file are none the worse for it.
fn is_of_the_visit(fault: &Fault) -> bool {
    matches!(
        fault,
        Fault::Refused(_)
            | Fault::Handover(
                HandoverFault::Newer
                    | HandoverFault::TooLarge { .. }
                    | HandoverFault::Chain { .. }
                    | HandoverFault::Forked { .. }
                    | HandoverFault::Unproven { .. }
                    | HandoverFault::Unsigned { .. }
                    | HandoverFault::OwnName { .. }
                    | HandoverFault::Spelling { .. }
                    | HandoverFault::Beyond { .. }
                    | HandoverFault::Retired { .. }
                    | HandoverFault::Ahead { .. }
                    | HandoverFault::OpenedTwice { .. }
                    | HandoverFault::MilderByStranger { .. }
                    | HandoverFault::TooManyWriters { .. }
                    | HandoverFault::HeldBack { .. }
            )
    )
}

/// Writes what a plan brings from a folder, or says why the visit is set apart: its layout is not here, or nobody's
/// word is enough for what would change.
///
/// # Errors
/// What storage says.
pub fn merged(
    (merging, import): (&Merging<'_>, &Import<'_>),
    (receiver, own): (Receiver<'_>, bool),
    visit: &str,
    plan: &Plan,
) -> Result<Option<Fault>, Fault> {
    let standing = match standing_of(receiver, visit, plan) {
        Ok(standing) => standing,
        Err(why @ Fault::Refused(_)) => return Ok(Some(why)),
        Err(fault) => return Err(fault),
    };
    if !own && is_milder_by_stranger(merging, receiver, (plan, &standing))? {
        return Ok(Some(HandoverFault::MilderByStranger { part: visit.to_owned() }.into()));
    }
    import.write(plan, receiver.device)?;
    merging.write_card(&list::card(&standing))?;
    Ok(None)
}

impl Imported {
    /// Counts a visit that was taken in.
    pub fn took(&mut self, visit: &str, plan: &Plan) {
        self.entries += plan.news;
        self.mended += plan.mended();
        self.taken.push(visit.to_owned());
    }
}

/// Whether nobody's word is enough for what a plan would do, whoever carries it: a device that nobody confirmed would
/// make a rating milder, or take a DANGER or WARNING away from its car by naming another.
pub fn is_milder_by_stranger(
    merging: &Merging<'_>,
    receiver: Receiver<'_>,
    (plan, standing): (&Plan, &Standing),
) -> Result<bool, Fault> {
    let doubtful = |device: &str| devices::is_doubtful(device, receiver.device, receiver.devices);
    if !plan.writers_of_news().any(doubtful) {
        return Ok(false);
    }
    let before = merging.rated(&standing.visit)?;
    let vehicle = &standing.intake.vehicle;
    let grave =
        before.as_ref().and_then(|before| before.as_deref()).and_then(Word::from_id) >= Some(Word::Warning);
    let moved =
        merging.car(&standing.visit)?.is_some_and(|car| car != [vehicle.plate.clone(), vehicle.vin.clone()]);
    Ok(is_milder(before.as_ref(), standing) || grave && moved || takes_a_step_back(receiver, plan, standing)?)
}

/// Whether a step at which something was found would ask for less, though the visit reads the same by another; or
/// whether a visit that somebody known wrote would be cleared, repaired, received or written down anew by nobody known.
fn takes_a_step_back(receiver: Receiver<'_>, plan: &Plan, after: &Standing) -> Result<bool, Fault> {
    let Some(chain) = plan.before() else { return Ok(false) };
    let before = standing_of_chain(receiver, &after.visit, &chain)?;
    let doubtful = |entry: &Entry| devices::is_doubtful(&entry.device, receiver.device, receiver.devices);
    let known = !chain.entries.iter().all(doubtful);
    let rated = after.urgency.word.is_some_and(|word| word < Word::Warning);
    let cleared = before.urgency.word.is_none() && rated || before.urgency.in_part && !after.urgency.in_part;
    let told =
        before.repair != after.repair || before.receipt != after.receipt || before.intake != after.intake;
    if known && (cleared || told) {
        return Ok(true);
    }
    let word = |id: &str| after.steps.iter().find(|step| step.id == id).and_then(|step| step.word);
    let grave = |step: &&StepStand| step.word > Some(Word::Notice);
    Ok(before.steps.iter().filter(grave).any(|step| word(&step.id) < step.word))
}

/// Whether a visit's rating would read milder than it does.
pub fn is_milder(before: Option<&Option<String>>, standing: &Standing) -> bool {
    before.and_then(|before| before.as_deref()).and_then(Word::from_id) > standing.urgency.word
}

/// Where a visit would stand.
pub fn standing_of(receiver: Receiver<'_>, visit: &str, plan: &Plan) -> Result<Standing, Fault> {
    standing_of_chain(receiver, visit, &plan.chain)
}

fn standing_of_chain(receiver: Receiver<'_>, visit: &str, chain: &Chain) -> Result<Standing, Fault> {
    let Receiver { trade, drawn, device, devices } = receiver;
    let (entries, broken_at) = (&chain.entries, chain.broken_at);
    let record = &former::named(trade, record::read(entries));
    let visit = derive::Visit { id: visit, entries, record, broken_at, device, devices };
    Ok(derive::standing(trade, visit, drawn)?)
}

/// What a fault of merging means for the file or folder that brings the visit.
pub fn named(fault: MergeFault, part: &str) -> Fault {
    let part = part.to_owned();
    let fault = match fault {
        MergeFault::Store(fault) => return fault.into(),
        MergeFault::Lines(fault) => line_fault(fault, &part),
        MergeFault::Forked => HandoverFault::Forked { part },
        MergeFault::OwnName => HandoverFault::OwnName { part },
        MergeFault::Unsigned => HandoverFault::Unsigned { part },
        MergeFault::Retired => HandoverFault::Retired { part },
        MergeFault::Ahead => HandoverFault::Ahead { part },
        MergeFault::OpenedTwice => HandoverFault::OpenedTwice { part },
    };
    fault.into()
}

/// What a fault of lines means for the file that carries them.
pub fn line_fault(fault: LineFault, part: &str) -> HandoverFault {
    match fault {
        LineFault::Broken => HandoverFault::Chain { part: part.to_owned() },
        LineFault::Newer => HandoverFault::Newer,
        LineFault::Unproven => HandoverFault::Unproven { part: part.to_owned() },
        LineFault::Spelling => HandoverFault::Spelling { part: part.to_owned() },
        LineFault::Beyond(Beyond(field)) => HandoverFault::Beyond { part: format!("{part}, {field}") },
    }
}
