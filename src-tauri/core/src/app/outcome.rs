//! What it turned out to be, once the repair has shown it.

use crate::model::entry::EntryBody;
use crate::model::outcome::{Outcome, OutcomeStand};
use crate::sorting::evidence;
use crate::sorting::network::Network;
use crate::sorting::sort::NORMAL;
use crate::walk::case;
use crate::walk::record::Record;

use super::decide::{Scene, line_fits};
use super::fault::Refusal;
use super::opinion::known_cause;

/// An outcome that no cause of the list names. It teaches what it says: that none of the listed ones was there.
const SOMETHING_ELSE: &str = "something-else";

/// A confirmed outcome as shown.
pub fn confirmed(record: &Record) -> Option<OutcomeStand> {
    let (outcome, by, at) = record.outcome.as_ref()?;
    Some(OutcomeStand { causes: shown_causes(outcome), by: by.clone(), at: *at })
}

/// The causes of an outcome, or `normal-character` where there was none.
pub fn shown_causes(outcome: &Outcome) -> Vec<String> {
    if outcome.causes.is_empty() { vec![NORMAL.to_owned()] } else { outcome.causes.clone() }
}

/// A confirmed outcome as an entry, with what was known before; nothing if it stands confirmed as it is.
///
/// # Errors
/// [`Refusal::UnknownCause`]; [`Refusal::NameTooLong`]; [`Refusal::OutcomeContradicts`] for no cause at all, one
/// named twice, or `normal-character` beside another.
pub fn confirm(scene: Scene<'_>, causes: &[String]) -> Result<Option<EntryBody>, Refusal> {
    for cause in causes.iter().filter(|cause| *cause != SOMETHING_ELSE) {
        known_cause(scene.standing, cause)?;
    }
    let twice = |cause: &String| causes.iter().filter(|other| *other == cause).count() > 1;
    let normal = causes.iter().any(|cause| cause == NORMAL);
    if causes.is_empty() || causes.iter().any(twice) || normal && causes.len() > 1 {
        return Err(Refusal::OutcomeContradicts);
    }
    let by = scene.by;
    if !line_fits(by) {
        return Err(Refusal::NameTooLong);
    }
    let mut causes: Vec<String> = causes.iter().filter(|cause| *cause != NORMAL).cloned().collect();
    causes.sort();
    let outcome = witnessed(scene, causes)?;
    let stands = scene.standing.outcome.as_ref();
    let same = |stands: &OutcomeStand| stands.causes == shown_causes(&outcome) && stands.by == by;
    if stands.is_some_and(same) {
        return Ok(None);
    }
    Ok(Some(EntryBody::OutcomeConfirmed { outcome, by: by.to_owned() }))
}

/// The outcome with the signs that were decided and what the sorting said.
fn witnessed(scene: Scene<'_>, causes: Vec<String>) -> Result<Outcome, Refusal> {
    let layout = scene.trade.layout(&scene.record.intake.vehicle.layout).ok_or(Refusal::UnknownLayout)?;
    let case = case::case(scene.trade, layout, scene.record);
    let network = Network::of(scene.trade, &case);
    let id = |sign: usize| {
        let row = network.signs.get(sign).and_then(|sign| scene.trade.signs.get(sign.row));
        row.map(|row| row.id.clone())
    };
    let observed = evidence::observations(scene.trade, &network, &case);
    let signs = observed.iter().filter_map(|one| Some((id(one.sign)?, one.decided()?))).collect();
    let sorted = scene.standing.sorting.causes.iter().map(|cause| (cause.id.clone(), cause.probability));
    Ok(Outcome {
        causes,
        layout: case.layout,
        signs,
        sorted: sorted.collect(),
        knowledge: scene.standing.knowledge.clone(),
    })
}
