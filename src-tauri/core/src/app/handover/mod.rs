//! Handing visits over: files for another device, erasing, salvage. The file's form is the room
//! [`handover`](crate::handover)'s, union and tombstones are the store's; here the two meet.

mod agreed;
mod erase;
mod export;
mod fault;
pub(super) mod import;
mod preview;
mod salvage;
pub(super) mod seen;
mod take_back;
mod uploads;
mod verify;

use std::io::{Read, Write};
use std::path::Path;

use serde::Serialize;

use super::failure::Failure;
use super::request::Sheet;
use super::steady::Steady;

pub use agreed::AsShown;
pub(super) use erase::erase;
pub(super) use export::{export, prepare};
pub(super) use fault::code;
pub use preview::{Preview, PreviewVisit};
pub(super) use salvage::salvage;
pub(super) use seen::photo_of;
pub use take_back::TakenBack;
pub(super) use take_back::take_back;
pub(super) use uploads::{import_upload, leave_upload, preview_upload, take_piece};
pub use verify::{Verified, Wrote, verify};

/// What an export holds.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Exported {
    /// Visits whose ledger is in the file.
    pub visits: u64,
    /// Photos in the file, each once however many visits name it.
    pub photos: u64,
    /// Length of the file, bytes.
    pub bytes: u64,
    /// Visits that were left out because their chain is broken.
    pub left_out: Vec<String>,
    /// Photos that were left out because their file is not the one that was kept.
    pub photos_damaged: Vec<String>,
}

/// What an import changed.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Imported {
    /// Visits that are new here, have grown or are whole again.
    pub taken: Vec<String>,
    /// Visits of which everything was here.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub unchanged: u64,
    /// Visits that were erased here and stay erased.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub erased: u64,
    /// Entries that were not here.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub entries: u64,
    /// Entries that were damaged here and are whole again.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub mended: u64,
    /// Photos that the visits taken name.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub photos: u64,
    /// Visits that were left outside, each with the reason.
    pub set_apart: Vec<SetApart>,
}

/// A visit of a file that was not taken in.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct SetApart {
    /// Id of the visit, as the file names it.
    pub visit: String,
    /// Why, and what to do.
    pub why: Failure,
}

/// What was read out of another database.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Salvaged {
    /// What changed here.
    #[serde(flatten)]
    pub imported: Imported,
    /// It may be another's database, and visits were here: whom that one trusts and what was erased there did not come
    /// along.
    pub of_another: bool,
    /// Visits that were found and whose ledger is no longer whole, or goes on differently here.
    pub lost: Vec<String>,
    /// Devices about which what was decided there came along.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub devices: u64,
    /// Photos that are named and were not found whole.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub photos_missing: u64,
}

/// Which visits go into a file, and whether their papers do.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Wanted<'a> {
    /// The visits; none means all of them.
    pub visits: &'a [String],
    /// Finding and note as PDF too, for a reader without Steady.
    pub papers: bool,
    /// Language of the papers; none: the one each was last made in, else the screens'.
    pub locale: Option<&'a str>,
    /// Their sheet; none: the one each was last made on, else A4.
    pub sheet: Option<Sheet>,
}

impl Steady {
    /// Writes visits into a handover file.
    ///
    /// # Errors
    /// A [`Failure`] that says what to do; what was written so far is then no handover file.
    pub fn export(&self, wanted: Wanted<'_>, sink: &mut dyn Write) -> Result<Exported, Failure> {
        self.on_snapshot(|copy| export(copy, wanted, sink), |_, made| Ok(made))
    }

    /// Says what taking in a handover file would change; nothing is written.
    ///
    /// # Errors
    /// What taking it in would be refused for.
    pub fn preview(&self, source: &mut dyn Read) -> Result<Preview, Failure> {
        self.with(|inner| preview::preview(inner, source))
    }

    /// Takes in a handover file: every visit of it that is proven and fits, the others are named. A damaged file is
    /// refused as a whole.
    ///
    /// # Errors
    /// A [`Failure`] that says what to do; the ledger is then as it was.
    pub fn import(&self, source: &mut dyn Read) -> Result<Imported, Failure> {
        self.with(|inner| import::import(inner, source))
    }

    /// Erases a visit at the owner's wish. `word` is its plate, or the last block of its id.
    ///
    /// # Errors
    /// A [`Failure`] that says what to do.
    pub fn erase(&self, visit: &str, word: &str) -> Result<(), Failure> {
        let _alone = self.alone();
        self.drop_prepared();
        self.with(|inner| erase(inner, visit, word).map(|_| ()))
    }

    /// Takes in every visit of a database that still verifies; its photos are looked for beside it.
    ///
    /// # Errors
    /// A [`Failure`] that says what to do; the ledger is then as it was.
    pub fn salvage(&self, database: &Path) -> Result<Salvaged, Failure> {
        self.with(|inner| salvage::salvage(inner, database))
    }
}
