//! The knowledge that sorts: read when the data folder is opened, kept under its version, and read again
//! where an old visit is to be derived as it was sorted.

use std::sync::Arc;

use crate::model::entry::{Entry, EntryBody};
use crate::model::time::Moment;
use crate::outcomes::learn::learn;
use crate::store::open::Store;
use crate::trade::texts::Texts;
use crate::trade::{Refused, Trade};

use super::at_hand::AtHand;
use super::drawn::DrawnFor;
use super::fault::{Fault, Refusal};
use super::learning;
use super::response::{HomeNotice, Response};
use super::steady::Inner;

/// The shipped knowledge with the workshop's own, kept under its version, and a notice for each file or row
/// that was refused.
pub(super) fn current(store: &mut Store, now: Moment) -> Result<(Trade, Vec<HomeNotice>), Fault> {
    let texts = texts(store.own_layouts(), store.own_knowledge());
    let (trade, [layouts, rows]) = texts.read().map_err(Fault::Internal)?;
    if !store.has_knowledge(&trade.version)? {
        let json = serde_json::to_string(&texts).map_err(|fault| Fault::Internal(fault.to_string()))?;
        // Where the disk has no room for it now, the next start tries again.
        let _ = store.keep_knowledge(&trade.version, now, &json);
    }
    let layouts = layouts.iter().map(|refused| notice("layout-file-refused", refused));
    let rows = rows.iter().map(|refused| notice("knowledge-row-refused", refused));
    Ok((trade, layouts.chain(rows).collect()))
}

/// The shipped texts with these of the workshop's own, each a file name and its text.
pub(super) fn texts(layouts: Vec<(String, String)>, rows: Vec<(String, String)>) -> Texts {
    Texts { layouts, rows, ..Texts::shipped() }
}

fn notice(id: &str, refused: &Refused) -> HomeNotice {
    HomeNotice { id: id.to_owned(), detail: format!("{}: {}", refused.file, refused.reason) }
}

/// Keeps the versions that another Steady kept, where their texts are what their name says.
pub(super) fn take_over(store: &mut Store, kept: Vec<(String, String)>, now: Moment) -> Result<(), Fault> {
    for (version, texts) in kept {
        if !store.has_knowledge(&version)? && is_true(&version, &texts) {
            store.keep_knowledge(&version, now, &texts)?;
        }
    }
    Ok(())
}

/// Whether texts are what their version says.
pub(super) fn is_true(version: &str, texts: &str) -> bool {
    let read = serde_json::from_str::<Texts>(texts).ok().and_then(|texts| texts.read().ok());
    read.is_some_and(|(trade, _)| trade.version == version)
}

/// Where a visit stands by the knowledge of a version, or by that which it recorded last: its outcome's,
/// else that under which it was opened.
///
/// # Errors
/// [`Refusal::KnowledgeNotKept`] for a version that never sorted here.
pub(super) fn as_sorted(inner: &mut Inner, visit: &str, version: Option<&str>) -> Result<Response, Fault> {
    let AtHand { chain, record, .. } = inner.read(visit)?;
    let version = version.map(str::to_owned).or_else(|| recorded(&chain.entries));
    let version = version.ok_or(Refusal::UnknownVisit)?;
    let layout = record.intake.vehicle.layout.clone();
    let trade = of_version(inner, &version, &layout)?;
    let (device, devices) = (inner.writer.device.clone(), inner.devices.clone());
    let chain = inner.read(visit)?.chain.clone();
    let other = AtHand::of(&trade, visit, chain);
    let standing = other.derived(&trade, (&device, &devices), &DrawnFor::default())?;
    if standing.knowledge == version { Ok(Response::Visit(Arc::new(standing))) } else { Err(not_kept()) }
}

/// The version that a visit recorded last.
fn recorded(entries: &[Entry]) -> Option<String> {
    let version = |entry: &Entry| match &entry.body {
        EntryBody::Opened { knowledge, .. } => Some(knowledge.clone()),
        EntryBody::OutcomeConfirmed { outcome, .. } => Some(outcome.knowledge.clone()),
        _ => None,
    };
    entries.iter().rev().find_map(version)
}

/// Knowledge by its full version: the texts, taught by as many of the layout's outcomes as stand behind the
/// `/`, in the order of their confirmation.
fn of_version(inner: &Inner, version: &str, layout: &str) -> Result<Trade, Fault> {
    let (texts, outcomes) = version.split_once('/').unwrap_or((version, "0"));
    let mut trade = match inner.store.knowledge(texts)? {
        Some(kept) => {
            let kept: Texts =
                serde_json::from_str(&kept).map_err(|fault| Fault::Internal(fault.to_string()))?;
            kept.read().map_err(Fault::Internal)?.0
        }
        None => earlier(texts).ok_or_else(not_kept)?,
    };
    let count: usize = outcomes.parse().map_err(|_| not_kept())?;
    let taught = inner
        .store
        .outcomes_by_time(|device| learning::teaches_here(inner, device))?
        .into_iter()
        .filter(|outcome| outcome.layout == layout);
    trade.learned = learn(&trade, &taught.take(count).collect::<Vec<_>>());
    Ok(trade)
}

/// Knowledge that was shipped with earlier rules, which a device may never have sorted by.
fn earlier(version: &str) -> Option<Trade> {
    let read = Texts::earlier().into_iter().filter_map(|texts| texts.read().ok());
    read.map(|(trade, _)| trade).find(|trade| trade.version == version)
}

fn not_kept() -> Fault {
    Refusal::KnowledgeNotKept.into()
}
