//! Whose it is that a person takes in. A backup of this data folder, a ledger that was set aside in it, and whatever is
//! chosen where nothing is here yet are one's own: whom to trust and what was erased come along. Any other folder may be
//! a stranger's, and is believed no more than a file that somebody handed over.

use std::path::Path;

use super::fault::Fault;
use super::steady::Inner;
use crate::model::device::Devices;
use crate::model::time::Moment;
use crate::store::merge::Origin;
use crate::store::{data_id, names};

/// How far a folder or a database is believed.
#[derive(Debug)]
pub(super) struct Belief {
    /// It is this workshop's own.
    pub own: bool,
    devices: Devices,
    /// This device's ids, former ones too.
    ids: Vec<String>,
    latest: Moment,
}

impl Belief {
    /// In a backup of the data folder of this id.
    ///
    /// # Errors
    /// What storage says.
    pub fn in_backup(inner: &Inner, of: Option<&str>) -> Result<Self, Fault> {
        let here = data_id::known(inner.store.folder())?;
        Self::new(inner, of.is_some() && of == here.as_deref())
    }

    /// In a database.
    ///
    /// # Errors
    /// What storage says.
    pub fn in_database(inner: &Inner, database: &Path) -> Result<Self, Fault> {
        let inside = database.strip_prefix(inner.store.folder()).ok();
        let first = inside.and_then(|inside| inside.iter().next()).and_then(|name| name.to_str());
        Self::new(inner, first.is_some_and(names::is_aside))
    }

    fn new(inner: &Inner, is_known: bool) -> Result<Self, Fault> {
        let mut ids = inner.store.former_devices()?;
        ids.push(inner.writer.device.clone());
        let own = is_known || inner.store.visits()? == 0;
        Ok(Self { own, devices: inner.devices.clone(), ids, latest: inner.now().latest_believed() })
    }

    /// What is believed of its lines.
    pub fn origin(&self) -> Origin<'_> {
        match self.own {
            true => Origin::OwnFolder,
            false => Origin::File { own: &self.ids, devices: &self.devices, latest: self.latest },
        }
    }
}
