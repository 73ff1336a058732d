//! Everything the core can answer.

use std::collections::BTreeMap;
use std::sync::Arc;

use serde::{Serialize, Serializer};

use crate::content::{finding::Finding, note::Note};
use crate::model::bench::BenchStand;
use crate::model::calibration::Calibration;
use crate::model::device::{DeviceStand, Trust};
use crate::model::entry::OwnerDecision;
use crate::model::rating::Word;
use crate::model::standing::{RepairStage, Standing};
use crate::model::still_open::StillOpen;
use crate::model::time::Moment;
use crate::model::vin::VinHint;
use crate::model::wish::PhotoWish;
use crate::model::workshop::{Units, Workshop};

use super::history_change::HistoryChange;

/// The answer to a request; which request gets which stands in [`REPLIES`](super::replies::REPLIES).
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "kebab-case")]
#[expect(missing_docs, reason = "which request gets which is listed once, in app/replies.rs")]
pub enum Response {
    Home(Home),
    Workshop(Box<Workshop>),
    Visits(VisitPage),
    VisitsBefore {
        /// Newest first.
        visits: Vec<super::known_car::VisitBefore>,
        /// What they left open: the latest DANGER or WARNING that nothing lifted.
        still_open: Option<StillOpen>,
        /// What the check digit says of the VIN that was asked for; none where it was empty.
        vin_hint: Option<VinHint>,
    },
    TakesBack {
        /// The steps whose answers are taken back, in walk order.
        steps: Vec<String>,
        /// Whether that takes a reason.
        needs_reason: bool,
    },
    Visit(#[serde(serialize_with = "shared")] Arc<Standing>),
    Uploaded {
        /// Bytes received so far.
        #[cfg_attr(feature = "bindings", ts(type = "number"))]
        bytes: u64,
    },
    Vin(VinRead),
    /// Photos of the visit that were being taken and have not arrived, oldest first.
    Wanted {
        wishes: Vec<PhotoWish>,
    },
    QrCode(QrCode),
    Finding(Box<Finding>),
    Note(Box<Note>),
    Paper(PaperFile),
    Bench(Box<BenchShown>),
    Calibration(Box<Calibration>),
    History(History),
    Handover(HandoverFile),
    Preview(Box<super::handover::Preview>),
    TakenBack(super::handover::TakenBack),
    Devices(Box<super::devices::DeviceList>),
    Imported(super::handover::Imported),
    Salvaged(super::handover::Salvaged),
    BackupReady(super::backup::BackupReady),
    Restored(super::backup::Restored),
    Erased {
        /// The visit that is no more.
        visit: String,
    },
}

/// Written as what it is: that it is shared inside is nobody else's business.
fn shared<S: Serializer>(standing: &Arc<Standing>, to: S) -> Result<S::Ok, S::Error> {
    standing.as_ref().serialize(to)
}

/// The bench, and the visit it belongs to: what is done at the bench changes what the visit says of a receipt, of
/// the repair and of its ledger.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct BenchShown {
    /// Where the bench stands.
    pub bench: BenchStand,
    /// Where the visit stands.
    #[serde(serialize_with = "shared")]
    pub standing: Arc<Standing>,
}

/// What the first screen needs.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Home {
    /// The technician's name; empty until set.
    pub technician: String,
    /// Remembered choices of the screens.
    pub preferences: BTreeMap<String, String>,
    /// Version of the app.
    pub version: String,
    /// Version of the trade knowledge.
    pub knowledge: String,
    /// Number of visits.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub visits: u64,
    /// Units the workshop works in.
    pub units: Units,
    /// Layouts to choose from at intake.
    pub layouts: Vec<LayoutChoice>,
    /// Complaint sounds to choose from, ids of `data/complaints.toml`.
    pub complaint_sounds: Vec<String>,
    /// Reasons for no photo, ids of `data/waivers.toml`.
    pub waivers: Vec<String>,
    /// Things a person should know, as text ids (`layout-file-refused` ...), each with its file or line.
    pub notices: Vec<HomeNotice>,
    /// What was set aside because it could not be used, oldest first.
    pub set_aside: Vec<super::set_aside::SetAside>,
}

/// A layout to choose at intake.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct LayoutChoice {
    /// Stands in ledgers; shipped ones are named by the text `layout-ID`.
    pub id: String,
    /// What holds the bearing.
    pub support: crate::model::standing::Support,
    /// Name in the workshop's own layout file; shipped layouts are named by the text `layout-ID`.
    pub own_name: Option<String>,
    /// Whether `seat` can be given.
    pub has_seat: bool,
    /// Whether the maker's movement figure can be given.
    pub has_maker_figure: bool,
}

/// Something a person should know.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct HomeNotice {
    /// Text id.
    pub id: String,
    /// File, folder or line it is about.
    pub detail: String,
}

/// So many visits as a screen shows at once (`store::cards::PAGE`).
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct VisitPage {
    /// Latest first.
    pub visits: Vec<VisitCard>,
    /// How many match in all.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub total: u64,
    /// Give this as `after` for the next page.
    pub next: Option<String>,
}

/// A visit in the list.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct VisitCard {
    /// Id to open it by.
    pub visit: String,
    /// Make and model as written.
    pub label: String,
    /// As typed; empty where none was.
    pub plate: String,
    /// As typed; empty where none was.
    pub vin: String,
    /// Owner's name.
    pub owner: String,
    /// When it was opened.
    pub opened_at: Moment,
    /// Latest entry.
    pub updated_at: Moment,
    /// Its rating; none reads NOT YET CHECKED.
    pub word: Option<Word>,
    /// Steps answered.
    pub answered: u32,
    /// Those of them whose answer decides something.
    pub conclusive: u32,
    /// Steps that apply.
    pub steps: u32,
    /// What the owner decided when they signed, if they did.
    pub receipt: Option<OwnerDecision>,
    /// How far the repair has come; none before the teardown.
    pub repair: Option<RepairStage>,
    /// It is confirmed what it turned out to be.
    pub confirmed: bool,
    /// The least of the trust in the other devices that wrote it, where one is not confirmed or was retired.
    pub from: Option<Trust>,
    /// DANGER or WARNING of an earlier visit of the car that nothing has lifted, where it is graver than the rating.
    pub still_open: Option<Word>,
}

/// A paper that waits to be fetched or shared.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct PaperFile {
    /// What to fetch or share it by.
    pub file: String,
    /// File name without anything a person typed.
    pub name: String,
    /// `application/pdf` or `text/plain`.
    pub mime: String,
    /// Its length, bytes.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub bytes: u64,
    /// The text itself, for `text/plain`.
    pub text: Option<String>,
}

/// A handover file that waits to be fetched or shared.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct HandoverFile {
    /// What to fetch or share it by.
    pub file: String,
    /// File name without anything a person typed.
    pub name: String,
    /// Its length, bytes.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub bytes: u64,
    /// Visits that were left out because their chain is broken.
    pub left_out: Vec<String>,
    /// Photos that were left out because their file is not the one that was kept.
    pub photos_damaged: Vec<String>,
}

/// A visit's ledger for reading.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct History {
    /// Whose ledger it is.
    pub visit: String,
    /// Oldest first.
    pub entries: Vec<HistoryLine>,
}

/// One entry for reading.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct HistoryLine {
    /// Its place in its chain.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub seq: u64,
    /// Date of its entry, by the clock of the device that wrote it.
    pub at: Moment,
    /// SHA-256 of its line, 64 hex digits: what superseding and undo name it by.
    pub hash: String,
    /// Kind: the text is `entry-KIND`.
    pub what: String,
    /// Step, gate, part, order or kind of lift that it is about.
    pub about: Option<String>,
    /// Kind of the entry that it took back; what it is about and its answer are that entry's.
    pub took_back: Option<String>,
    /// What of the intake, or of what holds the car up, it changed.
    pub changes: Vec<HistoryChange>,
    /// Answer, if it is one.
    pub value: Option<crate::model::answer::AnswerValue>,
    /// Causes it names, for an opinion or an outcome.
    pub causes: Vec<String>,
    /// Reason or waiver, if it has one.
    pub reason: Option<String>,
    /// Name as typed; of a receipt that of who signed.
    pub by: String,
    /// The device that wrote it, and how far it is trusted here.
    pub device: DeviceStand,
    /// A later entry superseded or withdrew it.
    pub superseded: bool,
}

/// A VIN read from a barcode.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct VinRead {
    /// Seventeen signs, as the barcode has them.
    pub vin: String,
    /// What its check digit says, as a hint.
    pub hint: Option<VinHint>,
}

/// A QR code (ISO/IEC 18004) to draw dark on light.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct QrCode {
    /// Side of the square, modules, with the quiet zone of four modules all round.
    pub side: u32,
    /// Its dark modules as an SVG path, one unit a module.
    pub path: String,
    /// What it says.
    pub text: String,
}
