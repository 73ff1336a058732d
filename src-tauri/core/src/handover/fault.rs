//! Why a handover file was refused, sorted by what a person would do differently.

/// A refusal. `part` is a name the manifest may hold, or one of ours; never what a stranger made up.
#[derive(Debug, thiserror::Error)]
pub enum HandoverFault {
    /// No handover file, or one that was unpacked and packed again.
    #[error("not a handover file")]
    Unknown,
    /// It ends before its end.
    #[error("the file is cut short")]
    CutShort,
    /// Written by a later program.
    #[error("made by a newer Steady")]
    Newer,
    /// A byte differs from what was written.
    #[error("changed: {part}")]
    Changed {
        /// Name of the part at which it was seen.
        part: String,
    },
    /// It holds other bytes than when somebody was shown what it would change.
    #[error("changed since it was shown")]
    FileChanged,
    /// The signature does not belong to the manifest.
    #[error("the signature does not fit")]
    Signature,
    /// Made when lines were not signed yet.
    #[error("made before lines were signed")]
    BeforeSignatures,
    /// A part that the manifest lists, or should list, is not there.
    #[error("missing: {part}")]
    Missing {
        /// Name of the part that is not there.
        part: String,
    },
    /// A part that does not belong there.
    #[error("extra: {part}")]
    Extra {
        /// Which, or after which.
        part: String,
    },
    /// A part's name that no handover file has; given by its place in the manifest, from 1.
    #[error("the name of part {place} is refused")]
    Name {
        /// Place in the manifest, from 1.
        place: usize,
    },
    /// More parts or bytes than allowed.
    #[error("too large: {part}")]
    TooLarge {
        /// Name of the part, or what of the file as a whole.
        part: String,
    },
    /// A ledger that does not fit its chain.
    #[error("the chain is broken: {part}")]
    Chain {
        /// Which ledger.
        part: String,
    },
    /// A device's ledger goes on differently here and there.
    #[error("two ledgers of one device differ: {part}")]
    Forked {
        /// Which ledger.
        part: String,
    },
    /// A line that is not proven to be its device's.
    #[error("a line is not proven: {part}")]
    Unproven {
        /// Which ledger.
        part: String,
    },
    /// Lines from before there were signatures that are not here.
    #[error("lines from before signatures: {part}")]
    Unsigned {
        /// Which ledger.
        part: String,
    },
    /// Lines under this device's own name that it does not hold.
    #[error("lines in this device's own name: {part}")]
    OwnName {
        /// Which ledger.
        part: String,
    },
    /// An entry that no Steady spells so.
    #[error("spelled otherwise: {part}")]
    Spelling {
        /// In which ledger.
        part: String,
    },
    /// An entry, or a visit, beyond what is recorded.
    #[error("beyond what is recorded: {part}")]
    Beyond {
        /// In which ledger, and which field.
        part: String,
    },
    /// Lines of a device that was retired.
    #[error("lines of a retired device: {part}")]
    Retired {
        /// Which ledger.
        part: String,
    },
    /// Lines dated far ahead of the receiver's clock.
    #[error("lines dated far ahead: {part}")]
    Ahead {
        /// Which ledger.
        part: String,
    },
    /// A visit that would be opened twice.
    #[error("a visit opened twice: {part}")]
    OpenedTwice {
        /// Which ledger.
        part: String,
    },
    /// Lines of a device that nobody has confirmed, which would make a rating milder.
    #[error("a rating would become milder by a device not confirmed: {part}")]
    MilderByStranger {
        /// Which ledger.
        part: String,
    },
    /// The end of a chain that was left out, while the rest of the visit came in.
    #[error("the end of a chain was left out: {part}")]
    HeldBack {
        /// Which ledger.
        part: String,
    },
    /// More devices than any workshop has.
    #[error("too many devices: {part}")]
    TooManyWriters {
        /// Which ledger.
        part: String,
    },
    /// Not a photo as Steady keeps them.
    #[error("not a kept photo: {part}")]
    Photo {
        /// Name of the part, which has the SHA-256 in it.
        part: String,
    },
    /// The file could not be read.
    #[error("the file could not be read")]
    Read(#[source] std::io::Error),
    /// What was read could not be passed on.
    #[error("what was read could not be written")]
    Write(#[source] std::io::Error),
}

impl HandoverFault {
    /// What it is about, if it is about one place.
    pub fn part(&self) -> Option<String> {
        match self {
            Self::Changed { part }
            | Self::Missing { part }
            | Self::Extra { part }
            | Self::TooLarge { part }
            | Self::Chain { part }
            | Self::Forked { part }
            | Self::Unproven { part }
            | Self::Unsigned { part }
            | Self::OwnName { part }
            | Self::Spelling { part }
            | Self::Beyond { part }
            | Self::Retired { part }
            | Self::Ahead { part }
            | Self::OpenedTwice { part }
            | Self::MilderByStranger { part }
            | Self::HeldBack { part }
            | Self::TooManyWriters { part }
            | Self::Photo { part } => Some(part.clone()),
            Self::Name { place } => Some(place.to_string()),
            Self::Unknown
            | Self::CutShort
            | Self::Newer
            | Self::Signature
            | Self::BeforeSignatures
            | Self::Read(_)
            | Self::FileChanged
            | Self::Write(_) => None,
        }
    }
}
