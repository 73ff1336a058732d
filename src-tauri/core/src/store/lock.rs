//! The lock file of a data folder: one process at a time.

use std::fs::{File, TryLockError};
use std::path::Path;

use super::fault::StoreFault;
use super::private;

/// A data folder that this process alone holds.
#[derive(Debug)]
pub(super) struct FolderLock(File);

impl FolderLock {
    /// Takes the folder's lock, without waiting for it.
    ///
    /// # Errors
    /// [`StoreFault::InUse`] where another process holds it, [`StoreFault::Unwritable`].
    pub(super) fn take(folder: &Path) -> Result<Self, StoreFault> {
        let file = private::held(&folder.join("lock")).map_err(StoreFault::Unwritable)?;
        match file.try_lock() {
            Ok(()) => Ok(Self(file)),
            Err(TryLockError::WouldBlock) => Err(StoreFault::InUse),
            Err(TryLockError::Error(fault)) => Err(StoreFault::Unwritable(fault)),
        }
    }
}

/// Closing would not be enough: a child that another thread has just started holds a copy of the file until it
/// runs its own program, and a lock lasts until its last copy is closed.
impl Drop for FolderLock {
    fn drop(&mut self) {
        // Where it cannot be unlocked, it goes with its last copy.
        let _ = self.0.unlock();
    }
}

#[cfg(test)]
mod tests {
    use super::FolderLock;

    #[test]
    fn lock_is_free_once_dropped_though_a_copy_of_the_file_lives_on() {
        let folder = tempfile::tempdir().unwrap();
        let held = FolderLock::take(folder.path()).unwrap();
        let copy = held.0.try_clone().unwrap();
        assert!(FolderLock::take(folder.path()).is_err(), "one at a time");
        drop(held);
        FolderLock::take(folder.path()).expect("free, though a child may hold a copy");
        drop(copy);
    }
}
