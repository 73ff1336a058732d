//! What a request is refused for, each with its code: the sentences are the texts `error-CODE` and
//! `error-CODE-help`.

/// The refusals and their codes, as one list.
macro_rules! refusals {
    ($($(#[$doc:meta])* $name:ident $(($field:ty))? = $code:literal,)*) => {
        /// What was wrong with a request.
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        #[expect(missing_docs, reason = "each is explained by the text of its code")]
        pub enum Refusal {
            $($(#[$doc])* $name $(($field))?,)*
        }

        impl Refusal {
            /// What a text is asked for.
            #[cfg(test)]
            const CODES: &[&str] = &[$($code,)*];

            /// Its code, which never changes: screens, scripts and texts know it by this.
            pub fn code(self) -> &'static str {
                match self {
                    $(Self::$name { .. } => $code,)*
                }
            }

            /// The field of the request that it is about, where there is one.
            pub fn field(self) -> Option<&'static str> {
                match self {
                    Self::IntakeRefused(field) | Self::IntakeTooLong(field) => Some(field),
                    Self::WarmFromRefused => Some("warm_from_c"),
                    Self::WallRefused => Some("wall"),
                    Self::PassDiameterRefused => Some("diameter"),
                    Self::RunOutRefused => Some("run_out"),
                    Self::SleeveSizeRefused => Some("outside"),
                    Self::ClearanceRefused => Some("clearance"),
                    _ => None,
                }
            }
        }
    };
}

refusals! {
    UnknownRequest = "unknown-request",
    UnknownVisit = "unknown-visit",
    UnknownStep = "unknown-step",
    UnknownAnswer = "unknown-answer",
    WrongKindOfAnswer = "wrong-kind-of-answer",
    AnswersContradict = "answers-contradict",
    StepDoesNotApply = "step-does-not-apply",
    StepHidden = "step-hidden",
    ReadingOutOfRange = "reading-out-of-range",
    TemperatureOutOfRange = "temperature-out-of-range",
    FigureMissing = "figure-missing",
    /// What "all sound" was said of is not what is open now.
    LooksChanged = "looks-changed",
    GateClosed = "gate-closed",
    GatesOfAnother = "gates-of-another",
    GatesTooOld = "gates-too-old",
    /// A road test of a car that may not be driven.
    NotDriven = "not-driven",
    /// Running the engine before what another layout found is answered anew or taken back.
    SetApart = "set-apart",
    /// Running the engine before the hands-on check, where an earlier DANGER stands.
    EarlierDanger = "earlier-danger",
    UnknownGate = "unknown-gate",
    PartEntered = "part-entered",
    PartNotEntered = "part-not-entered",
    DangerLocksRunning = "danger-locks-running",
    ReasonNeeded = "reason-needed",
    NothingToUndo = "nothing-to-undo",
    UndoOutOfDate = "undo-out-of-date",
    UnknownLayout = "unknown-layout",
    /// A field that the car cannot have so, by its name in the intake.
    IntakeRefused(&'static str) = "intake-refused",
    /// The device's clock says a date that cannot be today's.
    ClockWrong = "clock-wrong",
    TechnicianMissing = "technician-missing",
    UploadTooLarge = "upload-too-large",
    WaiverEmpty = "waiver-empty",
    /// The run-out is below nought, or more than any dial shows.
    RunOutRefused = "run-out-refused",
    /// The outside diameter of an old sleeve that no seat has.
    SleeveSizeRefused = "sleeve-size-refused",
    /// An internal clearance below nought, or more than a bearing of a shaft has.
    ClearanceRefused = "clearance-refused",
    /// An instrument that the workshop did not enter.
    UnknownInstrument = "unknown-instrument",
    /// The bore behind an old sleeve, before that came out.
    SleeveStillIn = "sleeve-still-in",
    WaiverTooLong = "waiver-too-long",
    ReasonTooLong = "reason-too-long",
    ReasonTooShort = "reason-too-short",
    NameTooLong = "name-too-long",
    PhotoNotOfStep = "photo-not-of-step",
    PhotoNotWanted = "photo-not-wanted",
    MarksTooMany = "marks-too-many",
    MarkRefused = "mark-refused",
    MarkLabelRefused = "mark-label-refused",
    NoteChanged = "note-changed",
    SignatureEmpty = "signature-empty",
    CaseUnreadable = "case-unreadable",
    BenchRowUnreadable = "bench-row-unreadable",
    BenchFileUnreadable = "bench-file-unreadable",
    UnknownCause = "unknown-cause",
    OpinionWithoutReason = "opinion-without-reason",
    OutcomeContradicts = "outcome-contradicts",
    UnknownDevice = "unknown-device",
    CodeDiffers = "code-differs",
    DeviceNameTooLong = "device-name-too-long",
    UnknownImport = "unknown-import",
    VisitErased = "visit-erased",
    EraseWordDiffers = "erase-word-differs",
    ChainBroken = "chain-broken",
    NothingToExport = "nothing-to-export",
    NothingToExportSetAside = "nothing-to-export-set-aside",
    NothingToSalvage = "nothing-to-salvage",
    UnknownSetAside = "unknown-set-aside",
    NotInPractice = "not-in-practice",
    NoPractice = "no-practice",
    KnowledgeNotKept = "knowledge-not-kept",
    WorkshopTooLong = "workshop-too-long",
    WorkshopNumber = "workshop-number",
    WorkshopUnreadable = "workshop-unreadable",
    /// A sleeve of the stock without its material or sizes, or too many of them.
    WorkshopSleeve = "workshop-sleeve",
    /// An instrument without its name, step or error, one called as another, or a day that is none.
    WorkshopInstrument = "workshop-instrument",
    PhotoTooSmall = "photo-too-small",
    NoVinInPhoto = "no-vin-in-photo",
    NoDeviceInPhoto = "no-device-in-photo",
    NoVisitInPhoto = "no-visit-in-photo",
    /// A text that no screen and no paper can show, by its name in the intake.
    IntakeTooLong(&'static str) = "intake-too-long",
    LayoutFixed = "layout-fixed",
    /// A housing that would be called warm while it is cold.
    WarmFromRefused = "warm-from-refused",
    /// The car was written down anew since the form was opened.
    IntakeChanged = "intake-changed",
    /// One more plate or VIN would put one out of sight that something was found under.
    CarCorrectedTooOften = "car-corrected-too-often",
    /// The change takes away a part that somebody is in.
    PartStillEntered = "part-still-entered",
    /// Another layout takes back answers that whoever chose it was not told of.
    LayoutTakesBack = "layout-takes-back",
    SignatureRefused = "signature-refused",
    BenchNoteEmpty = "bench-note-empty",
    BenchNoteTooLong = "bench-note-too-long",
    WallRefused = "wall-refused",
    PassNumberRefused = "pass-number-refused",
    PassWithoutBore = "pass-without-bore",
    PassDiameterRefused = "pass-diameter-refused",
    GaugeNotHere = "gauge-not-here",
    EntryBeyond = "entry-beyond",
    /// No room to make a file that goes out.
    FileDiskFull = "file-disk-full",
    VisitFull = "visit-full",
    VisitPhotosFull = "visit-photos-full",
    BenchNotesFull = "bench-notes-full",
    CasePhotoUnreadable = "case-photo-unreadable",
    CaseTooLong = "case-too-long",
}

#[cfg(test)]
mod tests {
    use super::Refusal;
    use crate::words::Words;

    #[test]
    fn every_refusal_says_what_it_is_and_what_to_do() {
        let english = Words::of("en").expect("English is shipped");
        for code in Refusal::CODES {
            for id in [format!("error-{code}"), format!("error-{code}-help")] {
                assert!(english.find(&id).is_some(), "the text {id} is missing");
            }
        }
    }
}
