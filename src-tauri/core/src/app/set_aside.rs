//! What was set aside because it could not be used: what can be read from it, taking that back, and putting the
//! notice away. All a phone has: nobody reaches its data folder from outside.

use serde::Serialize;

use crate::model::aside::{Readable, Why};
use crate::store::aside::Aside;
use crate::store::fault::StoreFault;
use crate::store::ledger::check_lines;
use crate::store::photo_files::PhotoSize;

use super::fault::{Fault, Refusal};
use super::handover::{self, photo_of};
use super::list;
use super::response::Response;
use super::steady::Inner;

/// A folder that was set aside, as a screen shows it.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct SetAside {
    /// What to ask about it by: its name in the data folder.
    pub name: String,
    /// Where it is.
    pub folder: String,
    /// Why it was set aside: the text `set-aside-WHY`.
    pub why: Why,
    /// What can be read from it; none where that could not be counted yet.
    pub readable: Option<Readable>,
    /// The notice was put away.
    pub dismissed: bool,
}

/// Every folder that was set aside, oldest first; what can be read from a new one is counted once.
pub(super) fn counted(inner: &Inner) -> Result<Vec<Aside>, Fault> {
    let mut asides = inner.store.asides()?;
    for aside in asides.iter_mut().filter(|aside| aside.readable.is_none()) {
        aside.readable = readable(inner, aside);
        if let Some(readable) = aside.readable {
            // Where the disk takes nothing now, the next start counts once more.
            let _ = inner.store.note_readable(aside, readable);
        }
    }
    Ok(asides)
}

fn readable(inner: &Inner, aside: &Aside) -> Option<Readable> {
    let foreign = match inner.store.foreign(&aside.database()) {
        Ok(foreign) => foreign,
        Err(fault) if fault.is_of_the_file() => return Some(Readable::default()),
        Err(_) => return None,
    };
    let mut readable = Readable::default();
    for visit in foreign.visits().into_iter().filter(|visit| !foreign.is_taken_back(visit)) {
        match foreign.lines(&visit).filter(|lines| check_lines(&visit, lines).is_ok()) {
            Some(lines) => {
                readable.visits += 1;
                let photos = lines.iter().filter_map(photo_of);
                readable.photos +=
                    photos.filter(|sha256| foreign.has_photo(sha256, PhotoSize::Full)).count() as u64;
            }
            None => readable.lost += 1,
        }
    }
    Some(readable)
}

/// As the first screen shows them.
pub(super) fn shown(inner: &Inner) -> Vec<SetAside> {
    let shown = |aside: &Aside| SetAside {
        name: aside.name.clone(),
        folder: aside.folder.display().to_string(),
        why: aside.why,
        readable: aside.readable,
        dismissed: aside.dismissed,
    };
    inner.asides.iter().map(shown).collect()
}

/// Takes in every visit of it that still verifies.
pub(super) fn take_back(inner: &mut Inner, name: &str) -> Result<Response, Fault> {
    let database = named(inner, name)?.database();
    Ok(Response::Salvaged(handover::salvage(inner, &database)?))
}

/// Puts its notice away for good; the folder stays where it is.
pub(super) fn dismiss(inner: &mut Inner, name: &str) -> Result<Response, Fault> {
    let aside = named(inner, name)?;
    inner.store.dismiss(&aside)?;
    inner.asides = inner.store.asides()?;
    list::home(inner)
}

fn named(inner: &Inner, name: &str) -> Result<Aside, Fault> {
    let found = inner.asides.iter().find(|aside| aside.name == name).cloned();
    found.ok_or_else(|| Refusal::UnknownSetAside.into())
}

impl StoreFault {
    /// Whether a file that was given is the reason, and not the place it is read from.
    pub(super) fn is_of_the_file(&self) -> bool {
        matches!(
            self,
            Self::NoSuchDatabase
                | Self::EmptyDatabase
                | Self::NoDatabase
                | Self::Foreign
                | Self::Newer { .. }
        )
    }
}
