//! Why a backup was not made, or not read.

/// A refusal of a backup's folder or of what is in it. Nothing was changed then but what the sentence of its
/// code says.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum BackupFault {
    /// The folder holds something else.
    #[error("the folder is no backup")]
    NotABackup,
    /// The file is something else.
    #[error("the file is no backup")]
    NotABackupFile,
    /// The folder is the backup of another data folder.
    #[error("the folder is the backup of another data folder")]
    OfAnother,
    /// The folder lies in the data folder, or is it.
    #[error("the folder lies in the data folder")]
    InsideData,
    /// Something in the folder leads elsewhere.
    #[error("a link lies in the backup")]
    Link,
    /// The place takes no files.
    #[error("the backup's place cannot be written")]
    Unwritable,
    /// Another process works on the same backup.
    #[error("another Steady is at work on this backup")]
    Busy,
    /// The backup was made by a later program.
    #[error("the backup was made by a newer Steady")]
    Newer,
    /// What is here holds less than the last backup, and nobody erased the difference.
    #[error("{visits} visits of the last backup are no longer here")]
    WouldLose {
        /// Visits that are gone, or have fewer lines than they had.
        visits: usize,
        /// Id of the first of them, to be looked for.
        first: String,
    },
    /// A file of the backup is not what its list says.
    #[error("a file of the backup is missing or damaged: {0}")]
    Damaged(String),
    /// A file of the backup is there and could not be read.
    #[error("a file of the backup could not be read: {0}")]
    Unread(String),
    /// The ledger here and that of the last backup went on differently from one beginning.
    #[error("{visits} visits went on differently in the last backup")]
    Forked {
        /// Visits that did.
        visits: usize,
        /// Id of the first of them, to be looked for.
        first: String,
    },
    /// Files of the backup are damaged, found when all of it was read.
    #[error("files of the backup are damaged")]
    Checked,
    /// What was written does not read back as it was written.
    #[error("what was written does not read back: {0}")]
    NotAsWritten(String),
    /// No generation of that time is there.
    #[error("the backup has no such generation")]
    NoGeneration,
    /// The database that is to be backed up is damaged.
    #[error("the database is damaged")]
    DataDamaged,
    /// There is no data folder to back up.
    #[error("there is no data folder")]
    NoData,
}

impl BackupFault {
    /// The code; its sentences are the texts `error-CODE` and `error-CODE-help`.
    pub fn code(&self) -> &'static str {
        match self {
            Self::NotABackup => "backup-folder",
            Self::NotABackupFile => "backup-file",
            Self::OfAnother => "backup-of-another",
            Self::InsideData => "backup-inside-data",
            Self::Link => "backup-link",
            Self::Unwritable => "backup-unwritable",
            Self::Busy => "backup-busy",
            Self::Newer => "backup-newer",
            Self::WouldLose { .. } => "backup-would-lose",
            Self::Damaged(_) => "backup-damaged",
            Self::Unread(_) => "backup-unread",
            Self::Forked { .. } => "backup-forked",
            Self::Checked => "backup-checked",
            Self::NotAsWritten(_) => "backup-not-verified",
            Self::NoGeneration => "backup-no-generation",
            Self::DataDamaged => "backup-data-damaged",
            Self::NoData => "no-data",
        }
    }

    /// What it is about, as a person can look it up: a file of the backup or a visit's id.
    pub fn about(&self) -> Option<String> {
        match self {
            Self::WouldLose { visits, first } | Self::Forked { visits, first } => match *visits {
                0 | 1 => Some(first.clone()),
                more => Some(format!("{first}, + {}", more - 1)),
            },
            Self::Damaged(file) | Self::Unread(file) | Self::NotAsWritten(file) => Some(file.clone()),
            _ => None,
        }
    }
}
