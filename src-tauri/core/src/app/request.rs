//! Everything that can be asked of the core.

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use serde::de::Error as _;
use serde::{Deserialize, Deserializer};

use crate::model::answer::{AnswerValue, EngineWarmth, HeardAt, Temperature};
use crate::model::bench::GaugeGiven;
use crate::model::bench_act::BenchAct;
use crate::model::entry::{Order, OwnerDecision};
use crate::model::gates::LiftKind;
use crate::model::mark::Mark;
use crate::model::visit::Intake;
use crate::model::workshop::WorkshopGiven;

/// One request. A shell reads it, hands it to [`handle`](super::Steady::handle) and sends back the answer.
///
/// Ids are texts. `visit` and `entry` (a hash, 64 hex digits) are those of a `Standing`; `step` is the id of a
/// `StepStand`, `play-vertical:2` at a second support; `set` and `gate` are those of a `GateSetStand`; `upload`, `wish`
/// and `backup` are UUIDs that the screen makes up; `device` is a public key, 64 hex digits; `import` a number of
/// `DeviceList`; `locale` a tag (RFC 5646) of a language there is. One that is not known is refused.
#[derive(Debug, Clone, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(tag = "ask", rename_all = "kebab-case", deny_unknown_fields)]
#[expect(missing_docs, reason = "ids are named once, at the head; other fields say what they are")]
pub enum Request {
    /// What the first screen needs.
    Home,
    /// Sets the technician's name, written into every entry from here on.
    SetTechnician { name: String },
    /// Remembers a choice of the screens (theme, language ...) by name.
    SetPreference {
        /// The preference's name.
        name: String,
        value: String,
    },
    /// Opens a visit to practise on, apart from every real one and in place of any before.
    StartPractice {
        /// What is written down.
        intake: Intake,
    },
    /// A request about the practice visit.
    Practise { request: Box<Request> },
    /// Throws the practice visit away.
    EndPractice,
    /// The workshop's own particulars.
    Workshop,
    /// Writes the workshop's particulars anew, all of them.
    SetWorkshop {
        /// As typed.
        workshop: WorkshopGiven,
    },
    /// A page of visits, latest first.
    Visits {
        /// Words to find in plate, VIN, owner, label or date; empty finds all.
        #[serde(default)]
        search: String,
        /// `next` of the page before.
        #[serde(default)]
        after: Option<String>,
    },
    /// Visits of a car that was here before, by its VIN or plate.
    VisitsBefore {
        /// Registration plate.
        plate: String,
        /// Vehicle identification number.
        vin: String,
        /// The visit that asks, if there is one yet.
        #[serde(default)]
        visit: Option<String>,
    },
    /// Opens a visit.
    Open {
        /// What is written down.
        intake: Intake,
    },
    /// Which answers a change of intake would take back.
    AmendTakesBack {
        visit: String,
        /// The whole intake as it would be.
        intake: Intake,
    },
    /// Writes intake anew.
    Amend {
        visit: String,
        intake: Intake,
        /// Hash of the entry by which the intake stood that was changed.
        #[serde(default)]
        from: Option<String>,
        /// The steps whose answers its layout takes back, as they were shown.
        #[serde(default)]
        takes_back: Vec<String>,
        /// Why, where one of them was grave.
        #[serde(default)]
        reason: Option<String>,
    },
    /// Takes back the answers that count for nothing because another layout asked for them.
    TakeBackElsewhere {
        visit: String,
        /// Hashes of their entries, as they were shown.
        entries: Vec<String>,
        /// Why, where one of them found something.
        #[serde(default)]
        reason: Option<String>,
    },
    /// Where a visit stands.
    Look { visit: String },
    /// Where a visit stood by the knowledge of another version, shipped or own.
    LookAsSorted {
        visit: String,
        /// The version; that which the visit recorded last, if not given.
        knowledge: Option<String>,
    },
    /// Chooses which part comes first.
    ChooseOrder { visit: String, order: Order },
    /// Confirms one gate; its set's part is entered by the last of them.
    ConfirmGate {
        visit: String,
        set: String,
        gate: String,
        /// What holds the car up; its gates are fewer once it is said.
        #[serde(default)]
        lift: Option<LiftKind>,
    },
    /// Says anew what holds the car up, with the part entered; gates that hold of both kinds stand.
    SayLift { visit: String, set: String, lift: LiftKind },
    /// Leaves the part that is entered; its gates close.
    LeavePart { visit: String },
    /// Answers a step.
    Answer {
        visit: String,
        step: String,
        value: AnswerValue,
        /// How warm the housing was, where the step asks.
        #[serde(default)]
        temperature: Option<Temperature>,
        /// Whether the shaft was free of the engine, where the step asks.
        #[serde(default)]
        free: Option<bool>,
        /// How warm the engine was, where the step asks.
        #[serde(default)]
        engine: Option<EngineWarmth>,
        /// Where a noise was loudest, where the step asks.
        #[serde(default)]
        heard_at: Option<HeardAt>,
        /// Why a DANGER answer is made milder.
        #[serde(default)]
        reason: Option<String>,
    },
    /// Says of several looks at once that they are sound; each becomes an answer of its own.
    AllSound {
        visit: String,
        /// The layout by which the screen listed them.
        layout: String,
        /// The looks that the screen listed: all that are open, in walk order.
        steps: Vec<String>,
    },
    /// One piece of an upload; pieces arrive in order.
    Upload {
        /// A name the screen makes up (UUID).
        upload: String,
        /// Index of the piece, from 0.
        index: u32,
        /// At most 512 KiB.
        #[serde(rename = "base64")]
        #[cfg_attr(feature = "bindings", ts(type = "string"))]
        piece: Piece,
    },
    /// Makes a finished upload the photo of a step.
    KeepPhoto { visit: String, step: String, upload: String },
    /// Reads a VIN from a finished upload, a photo of its barcode; the photo is not kept.
    ReadVin { upload: String },
    /// Finds the visit whose code is on a paper, in a finished upload; the photo is not kept.
    ScanVisit { upload: String },
    /// A photo is about to be taken: asked before the camera opens, which may end the app.
    WantPhoto {
        visit: String,
        step: String,
        /// The wish's name, which the screen makes up (UUID).
        wish: String,
    },
    /// Photos that were being taken and have not arrived.
    WantedPhotos { visit: String },
    /// A photo that was being taken is no longer wanted.
    DropWanted { visit: String, step: String },
    /// Makes a finished upload the photo that a wish was written down for; visit and step are the wish's.
    KeepWanted { wish: String, upload: String },
    /// Draws marks over a photo of a step, in place of those that were there.
    MarkPhoto {
        visit: String,
        step: String,
        /// SHA-256 of the photo, hex.
        photo: String,
        /// The marks; none takes them away.
        marks: Vec<Mark>,
    },
    /// Shows a step's latest photo beside an earlier one, or alone.
    PairPhotos {
        visit: String,
        step: String,
        /// SHA-256 of the earlier photo, hex; none for the latest alone.
        #[serde(default)]
        before: Option<String>,
    },
    /// A step goes without a photo.
    WaivePhoto {
        visit: String,
        step: String,
        /// Why: an id of `data/waivers.toml` or own words.
        reason: String,
    },
    /// Takes back the entry that the standing offers to undo.
    Undo {
        visit: String,
        entry: String,
        /// Why, where one is needed.
        #[serde(default)]
        reason: Option<String>,
    },
    /// What the finding says.
    Finding {
        visit: String,
        /// Language, such as `en`.
        locale: String,
    },
    /// What the owner's note says.
    Note { visit: String, locale: String },
    /// A paper to print or send, to be fetched or shared by the id in the answer.
    Paper {
        visit: String,
        paper: PaperKind,
        locale: String,
        #[serde(default)]
        sheet: Sheet,
    },
    /// The short text as a QR code, for a phone that has no other way to it.
    QrCode { visit: String, locale: String },
    /// The owner signs that the note was received.
    Sign {
        visit: String,
        /// What they decided.
        decision: OwnerDecision,
        /// Their name, may be empty.
        #[serde(default)]
        name: String,
        /// Hash of the note they saw, as [`Note`](Request::Note) gave it.
        note_sha256: String,
        /// Language they saw it in.
        locale: String,
        /// Strokes, coordinates 0 to 1.
        strokes: Vec<Vec<[f32; 2]>>,
    },
    /// The technician says what they think it is; recorded beside the sorting, never part of it.
    GiveOpinion {
        visit: String,
        /// A cause of the sorting, or `normal-character`.
        cause: String,
        /// Why, in their words.
        reason: String,
    },
    /// It was seen at teardown or after the repair what was really there.
    ConfirmOutcome {
        visit: String,
        /// The causes of the sorting that were there, `something-else` for another, or `normal-character` alone.
        causes: Vec<String>,
        /// Who says so; the technician if not given.
        #[serde(default)]
        by: Option<String>,
    },
    /// How well past sortings did.
    Calibration,
    /// Readings of a gauge at a play step.
    RecordGauge {
        visit: String,
        step: String,
        /// What was read.
        gauge: GaugeGiven,
        /// Why it is milder than what was read before.
        #[serde(default)]
        reason: Option<String>,
    },
    /// Where the bench stands.
    LookAtBench { visit: String },
    /// Something done at the bench.
    Bench { visit: String, act: BenchAct },
    /// The visit's ledger, oldest first.
    History { visit: String },
    /// Makes a handover file, to be fetched or shared by the id in the answer.
    Export {
        /// The visits; none means all of them.
        #[serde(default)]
        visits: Vec<String>,
        /// Their papers too.
        #[serde(default)]
        papers: bool,
        /// Language of the papers; if not given, the one each was last made in.
        #[serde(default)]
        locale: Option<String>,
        /// Their sheet; if not given, the one each was last made on.
        #[serde(default)]
        sheet: Option<Sheet>,
    },
    /// One piece of a handover file on its way in; pieces arrive in order.
    ImportPiece {
        /// A name the screen makes up (UUID).
        upload: String,
        /// Index of the piece, from 0.
        index: u32,
        /// At most 512 KiB.
        #[serde(rename = "base64")]
        #[cfg_attr(feature = "bindings", ts(type = "string"))]
        piece: Piece,
    },
    /// Says what a handover file that was sent in pieces would change; it stays for `import`. Answered with `preview`.
    PreviewImport { upload: String },
    /// Drops a handover file that was looked at and is not to be taken in.
    LeaveImport { upload: String },
    /// Takes in a handover file that was sent with `import-piece`.
    Import { upload: String },
    /// Takes a whole import back. Answered with `taken-back`.
    TakeBackImport {
        #[cfg_attr(feature = "bindings", ts(type = "number"))]
        import: i64,
    },
    /// Every device that was met, this one's code, and what was taken in. Answered with `devices`, as are the next.
    Devices,
    /// Two people compared the code of a device.
    ConfirmDevice {
        device: String,
        /// The code that they read.
        code: String,
    },
    /// The key of this device as a QR code, for another device to scan. Answered with `qr-code`.
    DeviceQr,
    /// The code of a device was scanned from its screen: a photo, as finished upload, shows that QR code.
    ConfirmDeviceByPhoto {
        device: String,
        /// The upload; the photo is not kept.
        upload: String,
    },
    /// This device took the place of that one: what it wrote counts as confirmed, and nothing new comes in from it.
    TakeOverDevice { device: String },
    /// A device is given a name here; an empty one takes it away.
    NameDevice { device: String, name: String },
    /// A device was lost or replaced: nothing new comes in from it.
    RetireDevice { device: String },
    /// What was decided about a device counts no more.
    ResetDevice { device: String },
    /// Begins a backup of everything as one file, or goes on with it; asked again until it is ready, then
    /// fetched by the shell like any file on its way out.
    PrepareBackup {
        /// A name the screen makes up (UUID).
        backup: String,
    },
    /// One piece of a backup file on its way in; pieces arrive in order.
    RestorePiece {
        /// A name the screen makes up (UUID).
        upload: String,
        /// Index of the piece, from 0.
        index: u32,
        /// At most 512 KiB.
        #[serde(rename = "base64")]
        #[cfg_attr(feature = "bindings", ts(type = "string"))]
        piece: Piece,
    },
    /// Takes in a backup file that was sent with `restore-piece`, or what can be read of a damaged database.
    Restore { upload: String },
    /// Erases a visit at the owner's wish. It cannot be taken back.
    Erase {
        visit: String,
        /// Its plate, or the last block of its id: typed by whoever erases it.
        word: String,
    },
    /// Takes in every visit of a folder that was set aside that still verifies.
    TakeBack {
        /// The folder's name, as `home` gives it.
        name: String,
    },
    /// Puts the notice of a folder that was set aside away for good; the folder stays.
    DismissSetAside {
        /// The folder's name, as `home` gives it.
        name: String,
    },
}

/// Bytes on their way in. In JSON they are text, base64: a phone's page hands nothing else to Rust.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Piece(pub Vec<u8>);

impl<'de> Deserialize<'de> for Piece {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        let text = String::deserialize(from)?;
        STANDARD.decode(text).map(Self).map_err(|_| D::Error::custom("not base64"))
    }
}

/// What can be printed or sent of a visit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum PaperKind {
    /// The finding, PDF.
    Finding,
    /// The owner's note, PDF.
    Note,
    /// The note as a short text.
    ShortText,
    /// The repair record of the bench, PDF.
    Repair,
    /// The page that the machinist works by, PDF.
    Machinist,
    /// The bore before and after for the customer, PDF.
    BeforeAfter,
}

/// Sheet sizes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum Sheet {
    /// 210 by 297 mm.
    #[default]
    A4,
    /// 8.5 by 11 inches.
    UsLetter,
}

impl PaperKind {
    /// Id of the paper in file names and on disk.
    pub fn id(self) -> &'static str {
        match self {
            Self::Finding => "finding",
            Self::Note | Self::ShortText => "note",
            Self::Repair => "repair",
            Self::Machinist => "machinist",
            Self::BeforeAfter => "before-after",
        }
    }
}

impl Sheet {
    /// Id of the sheet, as a screen and the command line name it.
    pub fn id(self) -> &'static str {
        match self {
            Self::A4 => "a4",
            Self::UsLetter => "us-letter",
        }
    }

    /// The sheet with this id.
    pub fn from_id(id: &str) -> Option<Self> {
        [Self::A4, Self::UsLetter].into_iter().find(|sheet| sheet.id() == id)
    }
}
