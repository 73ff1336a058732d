//! Why storage failed, sorted once by what a person would do differently.

use rusqlite::ErrorCode;
use rusqlite::ffi::SQLITE_IOERR_SHMSIZE;

use super::backup::fault::BackupFault;

/// A storage fault. Its text names no value, only the operation.
#[derive(Debug, thiserror::Error)]
pub enum StoreFault {
    /// The data folder cannot be made or written.
    #[error("the data folder cannot be written")]
    Unwritable(#[source] std::io::Error),
    /// What has to be moved from one place of the data folder to another lies on another disk.
    #[error("the data folder lies on two disks")]
    TwoDisks,
    /// No room left.
    #[error("the disk is full")]
    Full,
    /// Another process works on the same data.
    #[error("another Steady is using this data folder")]
    InUse,
    /// The file was written by a newer Steady.
    #[error("the data is of version {found}, this Steady knows version {known}")]
    Newer {
        /// Version of the file.
        found: i64,
        /// Greatest version this program knows.
        known: i64,
    },
    /// The database does not read as one.
    #[error("the database is damaged")]
    Damaged,
    /// A database that Steady did not write.
    #[error("the database holds what Steady never writes")]
    Foreign,
    /// A database that was named is not there.
    #[error("there is no such database")]
    NoSuchDatabase,
    /// A database that was named holds no byte.
    #[error("the database is empty")]
    EmptyDatabase,
    /// A file that was named is no database, and nothing in it reads as a part of one.
    #[error("the file is no database")]
    NoDatabase,
    /// A folder that was set aside could not be searched for a visit that is to be erased; nothing was erased.
    #[error("a folder that was set aside cannot be searched: {folder}")]
    Aside {
        /// Its name in the data folder.
        folder: String,
        /// What kept it from being done.
        #[source]
        why: Box<StoreFault>,
    },
    /// A visit is erased, and something that could hold a part of it is not yet cleared.
    #[error("the visit is erased and not yet swept up")]
    Unswept(#[source] Box<StoreFault>),
    /// What came is kept, and photos that were damaged here are still.
    #[error("damaged photos were not made whole")]
    Unhealed(#[source] Box<StoreFault>),
    /// Two files that belong together were being written while they were copied.
    #[error("the files were changed while they were read")]
    ReadWhileWritten,
    /// A photo file is not there.
    #[error("the photo's file is missing")]
    PhotoMissing,
    /// A photo's file is not what its name says.
    #[error("the photo's file is not the one that was kept")]
    PhotoDamaged,
    /// Pieces of an upload came out of order.
    #[error("a piece of the upload is missing or came twice")]
    UploadOrder,
    /// An upload that nobody started.
    #[error("the upload is not known")]
    UploadUnknown,
    /// An upload beyond the greatest size.
    #[error("the upload is too large")]
    UploadTooLarge,
    /// This device's own key is there and is none.
    #[error("this device's key cannot be read")]
    KeyUnreadable,
    /// A backup was not made, or not read.
    #[error(transparent)]
    Backup(BackupFault),
    /// Reading or writing a file failed.
    #[error("a file could not be read or written")]
    File(#[source] std::io::Error),
    /// SQLite refused a statement.
    #[error("the database refused to {doing}")]
    Sql {
        /// What was being done.
        doing: &'static str,
        /// SQLite's own account.
        #[source]
        source: rusqlite::Error,
    },
}

impl StoreFault {
    /// Sorts an SQLite error, saying what was being done.
    pub fn sql(doing: &'static str) -> impl FnOnce(rusqlite::Error) -> Self {
        move |source| match source.sqlite_error_code() {
            Some(ErrorCode::DiskFull) => Self::Full,
            // The file beside the log could not be made longer, of which SQLite tells no more than that.
            _ if source.sqlite_error().is_some_and(|error| error.extended_code == SQLITE_IOERR_SHMSIZE) => {
                Self::Full
            }
            Some(ErrorCode::DatabaseCorrupt | ErrorCode::NotADatabase) => Self::Damaged,
            Some(ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked) => Self::InUse,
            Some(ErrorCode::ReadOnly | ErrorCode::CannotOpen | ErrorCode::PermissionDenied) => {
                Self::Unwritable(std::io::Error::other("SQLite cannot write"))
            }
            _ => Self::Sql { doing, source },
        }
    }

    /// Sorts a file error.
    pub fn file(source: std::io::Error) -> Self {
        match source.kind() {
            std::io::ErrorKind::StorageFull | std::io::ErrorKind::QuotaExceeded => Self::Full,
            std::io::ErrorKind::CrossesDevices => Self::TwoDisks,
            std::io::ErrorKind::PermissionDenied | std::io::ErrorKind::ReadOnlyFilesystem => {
                Self::Unwritable(source)
            }
            _ => Self::File(source),
        }
    }
}
