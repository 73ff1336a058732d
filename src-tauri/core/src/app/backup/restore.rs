//! Takes a generation in: visits by union, photos where none is whole, and what belongs to all of them. One
//! transaction keeps it all, after every file is in its place.

use super::super::fault::{Fault, Refusal};
use super::super::handover::SetApart;
use super::super::handover::import::{Receiver, merged, named};
use super::super::handover::seen::photo_of;
use super::super::knowledge;
use super::super::list::setting_fits;
use super::super::origin::Belief;
use super::super::steady::{Inner, shown};
use super::super::workshop;
use super::{Progress, Restored};
use crate::app::drawn::DrawnFor;
use crate::model::workshop::Workshop;
use crate::photos::validate;
use crate::store::backup::read::Generation;
use crate::store::ledger::check_lines;
use crate::store::merge::{Import, MergeFault, Merging};
use crate::store::open::OWN_LAYOUTS;
use crate::store::photo_files::PhotoSize;
use crate::store::staging::Staging;
use crate::trade::Trade;

pub fn taken(
    inner: &mut Inner,
    generation: &Generation,
    progress: &mut dyn FnMut(Progress),
) -> Result<Restored, Fault> {
    let visits = generation.visits()?;
    if visits.is_empty() && generation.erased()?.is_empty() {
        return Err(Refusal::NothingToSalvage.into());
    }
    let mut staging = inner.store.staging()?;
    let (own, mut files_damaged) = own_files(generation);
    files_damaged.extend(generation.damaged_lists().iter().cloned());
    // Visits may need the layouts that come with them.
    let (trade, drawn) = (with_own(inner, &own)?, DrawnFor::default());
    own.iter().try_for_each(|(path, bytes)| staging.add_own(path, bytes))?;
    let now = inner.now();
    let receiver =
        Receiver { trade: &trade, drawn: &drawn, device: &inner.writer.device, devices: &inner.devices };
    let belief = Belief::in_backup(inner, generation.data.as_deref())?;
    let work = Work { generation, receiver, belief: &belief, locale: &inner.locale() };
    let set_workshop = inner.workshop == Workshop::default();
    let done = inner.store.merging(|merging| {
        let import = merging.begin(now, None)?;
        let mut restored = Restored {
            generation: generation.made_at.map(|at| at.rfc3339()),
            files_damaged,
            of_another: !belief.own,
            ..Restored::default()
        };
        if belief.own {
            for (visit, at) in generation.erased()? {
                merging.write_erased(&visit, at)?;
            }
        }
        for (done, visit) in (1..).zip(&visits) {
            work.visit((merging, &import), visit, (&mut staging, &mut restored))?;
            progress(Progress { done, of: visits.len() as u64 });
        }
        for (version, texts) in generation.knowledge()? {
            if knowledge::is_true(&version, &texts) {
                merging.write_knowledge(&version, now, &texts)?;
            }
        }
        for (name, value) in generation.settings()?.iter().filter(|(name, value)| setting_fits(name, value)) {
            merging.write_setting(name, value)?;
        }
        if belief.own {
            restored.devices = merging.write_decisions(&generation.decisions()?, &inner.writer.device)?;
        }
        if set_workshop {
            let theirs = Some(generation.workshop()?).filter(workshop::is_sound);
            theirs.map_or(Ok(()), |theirs| merging.write_workshop(&theirs))?;
        }
        restored.photos_healed = staging.healing();
        Ok::<_, Fault>((restored, staging.place(merging)?))
    });
    let done = done.and_then(|(restored, placed)| Ok(placed.confirm().map(|()| restored)?));
    inner.ledger_changed()?;
    let restored = done?;
    inner.devices_changed()?;
    inner.workshop = inner.store.workshop()?;
    let (trade, _) = knowledge::current(&mut inner.store, now)?;
    inner.trade = trade;
    inner.drawn = DrawnFor::default();
    inner.ledger_changed()?;
    Ok(restored)
}

/// The workshop's own files that are whole, and the names of those that are not.
fn own_files(generation: &Generation) -> (Vec<(String, Vec<u8>)>, Vec<String>) {
    let (mut whole, mut damaged) = (Vec::new(), Vec::new());
    for (path, bytes) in generation.own_files() {
        match bytes {
            Some(bytes) => whole.push((path, bytes)),
            None => damaged.push(path),
        }
    }
    (whole, damaged)
}

/// The trade's knowledge with the workshop's own: what is here, and what comes and is not here yet.
fn with_own(inner: &Inner, coming: &[(String, Vec<u8>)]) -> Result<Trade, Fault> {
    let [mut layouts, mut rows] = [inner.store.own_layouts(), inner.store.own_knowledge()];
    for (path, bytes) in coming {
        let Some((folder, name)) = path.split_once('/') else { continue };
        let files = if folder == OWN_LAYOUTS { &mut layouts } else { &mut rows };
        if files.iter().all(|(here, _)| here != name) {
            files.push((name.to_owned(), String::from_utf8_lossy(bytes).into_owned()));
        }
    }
    layouts.sort();
    rows.sort();
    let (mut trade, _) = knowledge::texts(layouts, rows).read().map_err(Fault::Internal)?;
    trade.learned = inner.trade.learned.clone();
    Ok(trade)
}

struct Work<'a> {
    generation: &'a Generation,
    receiver: Receiver<'a>,
    belief: &'a Belief,
    locale: &'a str,
}

impl Work<'_> {
    fn visit(
        &self,
        (merging, import): (&Merging<'_>, &Import<'_>),
        visit: &str,
        (staging, restored): (&mut Staging, &mut Restored),
    ) -> Result<(), Fault> {
        if merging.is_erased(visit)? {
            restored.imported.erased += 1;
            return Ok(());
        }
        let lines = self.generation.lines(visit)?;
        if lines.is_empty() {
            // All of it was taken back there, or its id is none any more.
            let rotted = visit.contains(char::REPLACEMENT_CHARACTER).then(|| visit.to_owned());
            restored.visits_damaged.extend(rotted);
            return Ok(());
        }
        if check_lines(visit, &lines).is_err() {
            restored.visits_damaged.push(visit.to_owned());
            return Ok(());
        }
        let own = self.belief.own;
        let plan = match merging.plan(visit, &lines, self.belief.origin()) {
            Ok(plan) => plan,
            Err(MergeFault::Store(fault)) => return Err(fault.into()),
            // Its lines verified; they go on differently here.
            Err(_) if own => {
                restored.lost.push(visit.to_owned());
                return Ok(());
            }
            Err(fault) => {
                restored.imported.set_apart.push(self.apart(visit, named(fault, visit)));
                return Ok(());
            }
        };
        let imported = &mut restored.imported;
        if !plan.changes() {
            imported.unchanged += 1;
        } else {
            match merged((merging, import), (self.receiver, own), visit, &plan)? {
                None => imported.took(visit, &plan),
                Some(why) => {
                    imported.set_apart.push(self.apart(visit, why));
                    return Ok(());
                }
            }
        }
        lines.iter().filter_map(photo_of).try_for_each(|sha256| self.photo(&sha256, staging, restored))
    }

    fn apart(&self, visit: &str, why: Fault) -> SetApart {
        SetApart { visit: visit.to_owned(), why: shown(&why, self.locale) }
    }

    /// A photo of the backup, where it is whole; the one that is here stands where it is.
    fn photo(&self, sha256: &str, staging: &mut Staging, restored: &mut Restored) -> Result<(), Fault> {
        let whole = self.generation.photo(sha256).filter(|bytes| validate::check(bytes).is_ok());
        match whole {
            Some(bytes) => {
                staging.add(&PhotoSize::Full.file_name(sha256), &bytes)?;
                restored.imported.photos += 1;
            }
            None if staging.stands(sha256) => restored.imported.photos += 1,
            None => restored.photos_missing += 1,
        }
        Ok(())
    }
}
