//! Takes a whole import back: its lines stay on disk and are read by nothing, until another import brings them again.

use serde::Serialize;

use super::super::derive;
use super::super::fault::{Fault, Refusal};
use super::super::list;
use super::super::response::Response;
use super::super::steady::Inner;
use crate::model::entry::EntryBody;
use crate::store::ledger::Chain;
use crate::walk::{former, record};

/// What taking an import back did.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct TakenBack {
    /// Visits that read again as they did before it.
    pub restored: Vec<String>,
    /// Visits that it had brought and that are in no list any more.
    pub gone: Vec<String>,
    /// Visits that stay as they are, because this device went on with them: without the import its own entries
    /// would stand without a beginning.
    pub stayed: Vec<String>,
}

/// Takes an import back.
///
/// # Errors
/// [`Refusal::UnknownImport`] for one that is not known or was taken back, or what storage says.
pub fn take_back(inner: &mut Inner, import: i64) -> Result<Response, Fault> {
    let now = inner.now();
    let (trade, drawn, device, devices) = (&inner.trade, &inner.drawn, &inner.writer.device, &inner.devices);
    let taken = inner.store.merging(|merging| {
        let visits = merging.close(import, now)?.ok_or(Refusal::UnknownImport)?;
        let mut taken = TakenBack::default();
        for visit in visits {
            let Chain { entries, broken_at } = merging.without(&visit, import)?;
            if entries.is_empty() {
                merging.take_back(import, (&visit, None), now)?;
                taken.gone.push(visit);
            } else if !entries.iter().any(|entry| matches!(entry.body, EntryBody::Opened { .. })) {
                taken.stayed.push(visit);
            } else {
                let (id, entries, record) =
                    (visit.as_str(), entries.as_slice(), &former::named(trade, record::read(&entries)));
                let stands = derive::Visit { id, entries, record, broken_at, device, devices };
                let card = list::card(&derive::standing(trade, stands, drawn)?);
                merging.take_back(import, (&visit, Some(&card)), now)?;
                taken.restored.push(visit);
            }
        }
        Ok::<_, Fault>(taken)
    });
    inner.ledger_changed()?;
    Ok(Response::TakenBack(taken?))
}
