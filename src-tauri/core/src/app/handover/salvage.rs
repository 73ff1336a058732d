//! Takes visits out of another Steady's database, such as one that was set aside as damaged. Each
//! visit counts for itself; those that no longer verify are named and left where they are.

use std::path::Path;

use super::super::fault::{Fault, Refusal};
use super::super::knowledge;
use super::super::origin::Belief;
use super::super::steady::{Inner, shown};
use super::super::workshop;
use super::import::{Receiver, merged, named};
use super::seen::photo_of;
use super::{Salvaged, SetApart};
use crate::model::workshop::Workshop;
use crate::photos::validate;
use crate::store::ledger::check_lines;
use crate::store::merge::{Import, MergeFault, Merging};
use crate::store::photo_files::PhotoSize;
use crate::store::salvage::Foreign;
use crate::store::staging::Staging;

pub(in super::super) fn salvage(inner: &mut Inner, database: &Path) -> Result<Salvaged, Fault> {
    let foreign = inner.store.foreign(database)?;
    let belief = Belief::in_database(inner, database)?;
    taken(inner, &foreign, &belief)
}

/// The visits with what belongs to all of them: the knowledge that sorted them, and the workshop's particulars
/// where none are entered here.
fn taken(inner: &mut Inner, foreign: &Foreign, belief: &Belief) -> Result<Salvaged, Fault> {
    if foreign.visits().is_empty() && foreign.erased().is_empty() {
        return Err(Refusal::NothingToSalvage.into());
    }
    let mut staging = inner.store.staging()?;
    let (now, locale) = (inner.now(), inner.locale());
    let receiver = Receiver {
        trade: &inner.trade,
        drawn: &inner.drawn,
        device: &inner.writer.device,
        devices: &inner.devices,
    };
    let done = inner.store.merging(|merging| {
        let import = merging.begin(now, None)?;
        let mut salvaged = Salvaged { of_another: !belief.own, ..Salvaged::default() };
        if belief.own {
            for (visit, at) in foreign.erased() {
                merging.write_erased(&visit, at)?;
            }
        }
        for visit in foreign.visits() {
            let from = (foreign, visit.as_str(), belief);
            if let Some(why) = one((merging, &import), receiver, from, (&mut staging, &mut salvaged))? {
                let why = shown(&why, &locale);
                salvaged.imported.set_apart.push(SetApart { visit, why });
            }
        }
        Ok::<_, Fault>((salvaged, staging.place(merging)?))
    });
    let done = done.and_then(|(salvaged, placed)| Ok(placed.confirm().map(|()| salvaged)?));
    inner.ledger_changed()?;
    let mut done = done?;
    if belief.own {
        done.devices = inner.store.take_over_decisions(&foreign.decisions(), &inner.writer.device)?;
    }
    inner.devices_changed()?;
    knowledge::take_over(&mut inner.store, foreign.knowledge(), now)?;
    let theirs = foreign.workshop();
    if inner.workshop == Workshop::default() && workshop::is_sound(&theirs) {
        inner.store.set_workshop(&theirs)?;
        inner.workshop = inner.store.workshop()?;
    }
    Ok(done)
}

/// One visit; why it is set apart, if it is.
fn one(
    (merging, import): (&Merging<'_>, &Import<'_>),
    receiver: Receiver<'_>,
    (foreign, visit, belief): (&Foreign, &str, &Belief),
    (staging, salvaged): (&mut Staging, &mut Salvaged),
) -> Result<Option<Fault>, Fault> {
    if merging.is_erased(visit)? {
        salvaged.imported.erased += 1;
        return Ok(None);
    }
    if foreign.is_taken_back(visit) {
        return Ok(None);
    }
    let lines = foreign.lines(visit).filter(|lines| check_lines(visit, lines).is_ok());
    let Some(mut lines) = lines else {
        salvaged.lost.push(visit.to_owned());
        return Ok(None);
    };
    foreign.only_counting(visit, &mut lines);
    if lines.is_empty() {
        return Ok(None);
    }
    let plan = match merging.plan(visit, &lines, belief.origin()) {
        Ok(plan) => plan,
        Err(MergeFault::Store(fault)) => return Err(fault.into()),
        // Its lines verified; they go on differently here.
        Err(_) if belief.own => {
            salvaged.lost.push(visit.to_owned());
            return Ok(None);
        }
        Err(fault) => return Ok(Some(named(fault, visit))),
    };
    let imported = &mut salvaged.imported;
    if !plan.changes() {
        imported.unchanged += 1;
    } else if let Some(why) = merged((merging, import), (receiver, belief.own), visit, &plan)? {
        return Ok(Some(why));
    } else {
        imported.took(visit, &plan);
    }
    for sha256 in lines.iter().filter_map(photo_of) {
        // Its thumbnail is made anew: nothing binds the one that is there to it.
        match foreign.photo(&sha256).filter(|bytes| validate::check(bytes).is_ok()) {
            Some(full) => {
                staging.add(&PhotoSize::Full.file_name(&sha256), &full)?;
                imported.photos += 1;
            }
            None if staging.stands(&sha256) => imported.photos += 1,
            None => salvaged.photos_missing += 1,
        }
    }
    Ok(None)
}
