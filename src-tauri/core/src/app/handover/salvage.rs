//! Takes visits out of another Steady's database, such as one that was set aside as damaged. Each
//! visit counts for itself; those that no longer verify are named and left where they are.

use std::path::Path;

use super::super::fault::{Fault, Refusal};
use super::super::knowledge;
use super::super::list;
use super::super::steady::Inner;
use super::import::{Place, standing_of};
use super::seen::photo_of;
use super::{Imported, Salvaged};
use crate::model::workshop::Workshop;
use crate::photos::validate;
use crate::store::ledger::check_lines;
use crate::store::merge::{Import, MergeFault, Merging, Origin};
use crate::store::photo_files::PhotoSize;
use crate::store::salvage::Foreign;
use crate::store::staging::Staging;

pub(in super::super) fn salvage(inner: &mut Inner, database: &Path) -> Result<Salvaged, Fault> {
    let foreign = inner.store.foreign(database)?;
    taken(inner, &foreign)
}

/// The visits with what belongs to all of them: the knowledge that sorted them, and the workshop's particulars
/// where none are entered here.
fn taken(inner: &mut Inner, foreign: &Foreign) -> Result<Salvaged, Fault> {
    if foreign.visits().is_empty() && foreign.erased().is_empty() {
        return Err(Refusal::NothingToSalvage.into());
    }
    let mut staging = inner.store.staging()?;
    let now = inner.now();
    let place = Place {
        trade: &inner.trade,
        drawn: &inner.drawn,
        device: &inner.writer.device,
        devices: &inner.devices,
    };
    let done = inner.store.merging(|merging| {
        let import = merging.begin(now, None)?;
        let mut salvaged = Salvaged::default();
        for (visit, at) in foreign.erased() {
            merging.keep_erased(&visit, at)?;
        }
        for visit in foreign.visits() {
            one((merging, &import), place, (foreign, &visit), (&mut staging, &mut salvaged))?;
        }
        Ok::<_, Fault>((salvaged, staging.place(merging)?))
    });
    let done = done.and_then(|(salvaged, placed)| Ok(placed.confirm().map(|()| salvaged)?));
    inner.ledger_changed()?;
    let mut done = done?;
    done.devices = inner.store.take_over_decisions(&foreign.decisions(), &inner.writer.device)?;
    inner.devices_changed()?;
    knowledge::take_over(&mut inner.store, foreign.knowledge(), now)?;
    if inner.workshop == Workshop::default() {
        inner.store.set_workshop(&foreign.workshop())?;
        inner.workshop = inner.store.workshop()?;
    }
    Ok(done)
}

fn one(
    (merging, import): (&Merging<'_>, &Import<'_>),
    place: Place<'_>,
    (foreign, visit): (&Foreign, &str),
    (staging, salvaged): (&mut Staging, &mut Salvaged),
) -> Result<(), Fault> {
    let Imported { taken, unchanged, erased, entries, photos, .. } = &mut salvaged.imported;
    if merging.is_erased(visit)? {
        *erased += 1;
        return Ok(());
    }
    if foreign.is_taken_back(visit) {
        return Ok(());
    }
    let lines = foreign.lines(visit).filter(|lines| check_lines(visit, lines).is_ok());
    let Some(mut lines) = lines else {
        salvaged.lost.push(visit.to_owned());
        return Ok(());
    };
    foreign.only_counting(visit, &mut lines);
    if lines.is_empty() {
        return Ok(());
    }
    let plan = match merging.plan(visit, &lines, Origin::OwnFolder) {
        Ok(plan) => plan,
        Err(MergeFault::Store(fault)) => return Err(fault.into()),
        // Its lines verified; they go on differently here.
        Err(_) => {
            salvaged.lost.push(visit.to_owned());
            return Ok(());
        }
    };
    if plan.news == 0 {
        *unchanged += 1;
    } else {
        let standing = standing_of(place, visit, &plan)?;
        import.keep(&plan, place.device)?;
        merging.write_card(&list::card(&standing))?;
        *entries += plan.news;
        taken.push(visit.to_owned());
    }
    for sha256 in lines.iter().filter_map(photo_of) {
        // Its thumbnail is made anew: nothing binds the one that is there to it.
        match foreign.photo(&sha256).filter(|bytes| validate::check(bytes).is_ok()) {
            Some(full) => {
                staging.add(&PhotoSize::Full.file_name(&sha256), &full)?;
                *photos += 1;
            }
            None if staging.stands(&sha256) => *photos += 1,
            None => salvaged.photos_missing += 1,
        }
    }
    Ok(())
}
