//! Photos that are being taken: the wish is on disk before the camera opens, and what arrives after the
//! app was ended in between finds its visit and step by it.

use uuid::Uuid;

use crate::model::standing::Standing;
use crate::model::wish::PhotoWish;

use super::decide;
use super::fault::{Fault, Refusal};
use super::response::Response;
use super::steady::Inner;

/// Writes the wish down; an earlier one of the step goes.
pub(super) fn want(
    inner: &mut Inner,
    visit: &str,
    by: Option<&str>,
    step: &str,
    wish: &str,
) -> Result<Response, Fault> {
    let id = Uuid::try_parse(wish).map_err(|_| Refusal::UnknownRequest)?.to_string();
    inner.checked_step(visit, by, step)?;
    let now = inner.now();
    let device = inner.writer.device.clone();
    let at = decide::dated(&inner.read(visit)?.chain.entries, &device, now);
    inner.store.wish(&PhotoWish { id, visit: visit.to_owned(), step: step.to_owned(), at })?;
    wanted(inner, visit)
}

/// Wishes whose photo has not arrived.
pub(super) fn wanted(inner: &mut Inner, visit: &str) -> Result<Response, Fault> {
    let standing = inner.standing(visit)?;
    let mut wishes = inner.store.wishes(visit)?;
    wishes.retain(|wish| is_open(wish, &standing));
    Ok(Response::Wanted { wishes })
}

/// Forgets the wish for a photo of a step.
pub(super) fn drop(inner: &mut Inner, visit: &str, step: &str) -> Result<Response, Fault> {
    inner.store.forget_wish(visit, step)?;
    wanted(inner, visit)
}

/// Keeps an upload where the wish wanted it.
pub(super) fn keep(inner: &mut Inner, wish: &str, upload: &str, by: Option<&str>) -> Result<Response, Fault> {
    let wish = inner.store.wish_by_id(wish)?.ok_or(Refusal::PhotoNotWanted)?;
    inner.keep_photo(&wish.visit, &wish.step, upload, by)
}

/// The wish is forgotten after its photo is kept; ended in between, the photo shows that it was met.
fn is_open(wish: &PhotoWish, standing: &Standing) -> bool {
    let step = standing.steps.iter().find(|step| step.id == wish.step);
    step.and_then(|step| step.photo.as_ref()).is_none_or(|kept| kept.at <= wish.at)
}
