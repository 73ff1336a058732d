//! A data folder read beside whoever has it open: a copy of its database in memory, from one snapshot. Only what
//! changes nothing can be asked of it.

use std::io::Write;
use std::sync::Arc;

use super::failure::Failure;
use super::fault::Fault;
use super::handover::{Exported, Wanted, export};
use super::request::Request;
use super::response::Response;
use super::steady::{Inner, Setup, Steady, shown};
use crate::store::backup::fault::BackupFault;
use crate::store::fault::StoreFault;
use crate::store::keys::OWN;
use crate::store::open::{Store, open_copy};

/// A data folder, as it stood when this was opened.
pub struct ReadCopy(Steady);

impl ReadCopy {
    /// Copies the database of a data folder into memory; no file of it is changed, and no lock is asked for.
    ///
    /// # Errors
    /// A [`Failure`] that says what to do.
    pub fn open(setup: Setup) -> Result<Self, Failure> {
        let copied = || open_copy(&setup.data_dir);
        let told = |fault: StoreFault| shown(&fault.into(), "en");
        let store = match copied() {
            Ok(store) if has_key(&store) => store,
            // What opening mends is mended first: damage is set aside, a folder of an earlier program gets its key.
            Ok(_) | Err(StoreFault::Backup(BackupFault::DataDamaged)) => {
                let Setup { data_dir, press, clock } = &setup;
                let (data_dir, press, clock) = (data_dir.clone(), Arc::clone(press), *clock);
                drop(Steady::open(Setup { data_dir, press, clock })?);
                copied().map_err(told)?
            }
            Err(fault) => return Err(told(fault)),
        };
        let on = || -> Result<Inner, Fault> {
            let asides = store.asides()?;
            let mut inner = Inner::on(store, setup)?;
            inner.asides = asides;
            Ok(inner)
        };
        on().map(Steady::of).map(Self).map_err(|fault| shown(&fault, "en"))
    }

    /// Writes visits into a handover file; as [`Steady::export`].
    ///
    /// # Errors
    /// A [`Failure`] that says what to do; what was written so far is then no handover file.
    pub fn export(&self, wanted: Wanted<'_>, sink: &mut dyn Write) -> Result<Exported, Failure> {
        self.0.with(|inner| export(inner, wanted, sink))
    }

    /// Where a visit stands by the knowledge of a version, or by that which it recorded.
    ///
    /// # Errors
    /// A [`Failure`] that says what to do.
    pub fn as_sorted(&self, visit: String, knowledge: Option<String>) -> Result<Response, Failure> {
        self.0.handle(Request::LookAsSorted { visit, knowledge })
    }
}

/// Whether the device has its key; one made in a copy would be lost.
fn has_key(store: &Store) -> bool {
    store.settings().is_ok_and(|settings| OWN.iter().all(|own| settings.contains_key(*own)))
}
