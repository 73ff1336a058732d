//! What was found while the car was written down otherwise: taken back with a reason, by whoever saw the list.

use crate::model::entry::EntryBody;
use crate::model::standing::Elsewhere;
use crate::walk::relayout;

use super::decide::Scene;
use super::fault::Refusal;
use super::reason;

/// Takes back every answer that counts for nothing because another layout asked for it, each by an entry of its own.
///
/// # Errors
/// [`Refusal::NothingToUndo`] where there is none, [`Refusal::LayoutTakesBack`] where others were seen, and the refusals of a reason where one of them found something.
pub fn take_back(
    scene: Scene<'_>,
    seen: &[String],
    reason: Option<String>,
) -> Result<Vec<EntryBody>, Refusal> {
    let all = &scene.standing.elsewhere;
    if all.is_empty() {
        return Err(Refusal::NothingToUndo);
    }
    if !all.iter().map(|each| &each.entry).eq(seen) {
        return Err(Refusal::LayoutTakesBack);
    }
    let reason = reason::given(reason)?;
    let found = all.iter().any(|each| relayout::found(scene.trade, &each.step, &each.value));
    reason::needed(reason.as_deref(), found)?;
    let withdrawn = |each: &Elsewhere| EntryBody::Withdrawn {
        entry: each.entry.clone(),
        reason: reason.clone(),
        by: scene.by.to_owned(),
    };
    Ok(all.iter().map(withdrawn).collect())
}
