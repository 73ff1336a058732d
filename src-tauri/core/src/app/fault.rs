//! Why a request was refused or failed, inside; [`Failure`] is what leaves. One exhaustive match turns
//! the one into the other: the sentences are the texts `error-CODE` and `error-CODE-help`.

use crate::app::failure::Failure;
use crate::app::handover;
use crate::app::press::PressError;
use crate::handover::fault::HandoverFault;
use crate::measure::bore::fault::BoreFault;
use crate::measure::fit::fault::FitFault;
use crate::measure::gauge::fault::GaugeFault;
use crate::photos::intake::PhotoFault;
use crate::store::fault::StoreFault;
use crate::words::{Words, WordsError};

pub use super::refusal::Refusal;

/// A refusal or failure.
#[derive(Debug, thiserror::Error)]
pub enum Fault {
    /// The request itself was wrong.
    #[error("refused: {0:?}")]
    Refused(Refusal),
    /// Storage failed.
    #[error(transparent)]
    Store(#[from] StoreFault),
    /// A photo was not taken in.
    #[error(transparent)]
    Photo(#[from] PhotoFault),
    /// Readings of a gauge were not taken.
    #[error("gauge: {0:?}")]
    Gauge(GaugeFault),
    /// A fit was not worked out.
    #[error("fit: {0:?}")]
    Fit(FitFault),
    /// A handover file was refused.
    #[error(transparent)]
    Handover(HandoverFault),
    /// A paper was not printed.
    #[error(transparent)]
    Press(#[from] PressError),
    /// A bore's readings, or what was asked of them.
    #[error(transparent)]
    Bore(#[from] BoreFault),
    /// No texts in the language asked for.
    #[error(transparent)]
    Words(#[from] WordsError),
    /// Something that cannot happen did.
    #[error("internal: {0}")]
    Internal(String),
}

impl From<Refusal> for Fault {
    fn from(refusal: Refusal) -> Self {
        Self::Refused(refusal)
    }
}

impl Fault {
    fn code(&self) -> &'static str {
        match self {
            Self::Refused(refusal) => refusal.code(),
            Self::Store(fault) => store_code(fault),
            Self::Photo(PhotoFault::NotAnImage) => "photo-not-an-image",
            Self::Photo(PhotoFault::CutShort) => "photo-cut-short",
            Self::Photo(PhotoFault::Heic) => "photo-heic",
            Self::Photo(PhotoFault::Format) => "photo-format",
            Self::Photo(PhotoFault::TooLarge) => "photo-too-large",
            Self::Gauge(fault) => fault.code(),
            Self::Fit(fault) => fault.code(),
            Self::Handover(fault) => handover::code(fault),
            Self::Press(_) => "paper-failed",
            Self::Bore(fault) => fault.why.code(),
            Self::Words(WordsError::UnknownLocale) => "unknown-locale",
            Self::Words(WordsError::Faulty(_) | WordsError::Missing(_) | WordsError::Unfilled(_))
            | Self::Internal(_) => "internal",
        }
    }

    /// What a shell sees, in the language of `words`.
    pub fn shown(&self, words: &Words) -> Failure {
        let code = self.code();
        let message = words.text(&format!("error-{code}"));
        if let Self::Bore(fault) = self {
            let message = bore_message(fault, message, words);
            return Failure {
                message,
                code: code.to_owned(),
                help: words.text(&format!("error-{code}-help")),
                field: None,
            };
        }
        let about = match self {
            Self::Handover(fault) => fault.part(),
            Self::Store(StoreFault::Backup(fault)) => fault.about(),
            Self::Store(StoreFault::Aside { folder, why }) => {
                Some(format!("{folder}: {}", reason(why, words)))
            }
            Self::Store(StoreFault::Unswept(why) | StoreFault::Unhealed(why)) => Some(reason(why, words)),
            _ => None,
        };
        Failure {
            code: code.to_owned(),
            message: about.map_or(message.clone(), |about| format!("{message} ({about})")),
            help: words.text(&format!("error-{code}-help")),
            field: self.field(),
        }
    }

    /// The field that it is about, where one is known.
    fn field(&self) -> Option<String> {
        match self {
            Self::Refused(refusal) => refusal.field().map(str::to_owned),
            Self::Fit(fault) => fault.field().map(str::to_owned),
            Self::Gauge(fault) => fault.field(),
            _ => None,
        }
    }
}

impl Fault {
    /// As met while a file that goes out was made: a full disk says what to free, since no other way out is left.
    pub(super) fn of_a_file(self) -> Self {
        match self {
            Self::Store(StoreFault::Full) => Refusal::FileDiskFull.into(),
            other => other,
        }
    }
}

/// What stood in the way, in a few words.
fn reason(why: &StoreFault, words: &Words) -> String {
    words.text(&format!("error-{}", store_code(why)))
}

/// What was refused of a bore, with both readings where there are two, and its line where there is one.
fn bore_message(fault: &BoreFault, phrase: String, words: &Words) -> String {
    let phrase = match &fault.readings {
        Some([one, other]) => {
            let args =
                [("phrase", phrase.into()), ("one", one.clone().into()), ("other", other.clone().into())];
            words.with("bore-read-two-ways", &args)
        }
        None => phrase,
    };
    let Some(line) = fault.line else { return phrase };
    let args = [("phrase", phrase.into()), ("line", words.number(line as f64).into())];
    words.with("bore-at-line", &args)
}

fn store_code(fault: &StoreFault) -> &'static str {
    match fault {
        StoreFault::Unwritable(_) => "data-folder-unwritable",
        StoreFault::Full => "disk-full",
        StoreFault::TwoDisks => "data-on-two-disks",
        StoreFault::InUse => "in-use",
        StoreFault::Newer { .. } => "newer-data",
        StoreFault::Damaged => "database-damaged",
        StoreFault::Foreign => "database-foreign",
        StoreFault::NoSuchDatabase => "salvage-missing",
        StoreFault::EmptyDatabase => "salvage-empty",
        StoreFault::NoDatabase => "salvage-no-database",
        StoreFault::Aside { .. } => "erase-set-aside",
        StoreFault::Unswept(_) => "erase-unswept",
        StoreFault::Unhealed(_) => "photos-unhealed",
        StoreFault::ReadWhileWritten => "read-while-written",
        StoreFault::PhotoMissing => "photo-missing",
        StoreFault::PhotoDamaged => "photo-damaged",
        StoreFault::UploadOrder => "upload-out-of-order",
        StoreFault::UploadUnknown => "upload-unknown",
        StoreFault::UploadTooLarge => "photo-too-large",
        StoreFault::KeyUnreadable => "key-unreadable",
        StoreFault::Backup(fault) => fault.code(),
        StoreFault::File(_) | StoreFault::Sql { .. } => "storage-failed",
    }
}
