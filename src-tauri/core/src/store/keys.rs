//! The seed of this device's own key, kept beside its id so that the two are copied or lost together.

use super::fault::StoreFault;
use super::open::Store;

/// Names of the settings that belong to this device alone and go into no backup.
pub const OWN: [&str; 2] = ["device", "key"];

impl Store {
    /// The seed as it was kept, or the one that `fresh` makes at first need.
    ///
    /// # Errors
    /// What SQLite says, or `fresh`.
    pub fn key_seed<E: From<StoreFault>>(
        &mut self,
        fresh: impl FnOnce() -> Result<String, E>,
    ) -> Result<String, E> {
        if let Some(seed) = self.settings()?.remove("key") {
            return Ok(seed);
        }
        let seed = fresh()?;
        self.set("key", &seed)?;
        Ok(seed)
    }
}
