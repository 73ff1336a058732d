//! Which kind of answer each request gets, by the names that cross the boundary. The screens' types are made of it;
//! the suite holds it to the requests and responses there are, and a debug build to each answer that it gives.

use serde::Deserialize;

/// Name of the request, name of the response.
pub const REPLIES: &[(&str, &str)] = &[
    ("home", "home"),
    ("set-technician", "home"),
    ("set-preference", "home"),
    ("start-practice", "visit"),
    // Of what is practised, the answer is that of the request inside; the screens practise a visit.
    ("practise", "visit"),
    ("end-practice", "home"),
    ("workshop", "workshop"),
    ("set-workshop", "workshop"),
    ("visits", "visits"),
    ("visits-before", "visits-before"),
    ("open", "visit"),
    ("amend-takes-back", "takes-back"),
    ("take-back-elsewhere", "visit"),
    ("amend", "visit"),
    ("look", "visit"),
    ("look-as-sorted", "visit"),
    ("choose-order", "visit"),
    ("confirm-gate", "visit"),
    ("say-lift", "visit"),
    ("leave-part", "visit"),
    ("answer", "visit"),
    ("all-sound", "visit"),
    ("upload", "uploaded"),
    ("keep-photo", "visit"),
    ("read-vin", "vin"),
    ("scan-visit", "visits"),
    ("want-photo", "wanted"),
    ("wanted-photos", "wanted"),
    ("drop-wanted", "wanted"),
    ("keep-wanted", "visit"),
    ("mark-photo", "visit"),
    ("pair-photos", "visit"),
    ("waive-photo", "visit"),
    ("undo", "visit"),
    ("finding", "finding"),
    ("note", "note"),
    ("paper", "paper"),
    ("qr-code", "qr-code"),
    ("sign", "visit"),
    ("give-opinion", "visit"),
    ("confirm-outcome", "visit"),
    ("calibration", "calibration"),
    ("record-gauge", "visit"),
    ("look-at-bench", "bench"),
    ("bench", "bench"),
    ("history", "history"),
    ("export", "handover"),
    ("import-piece", "uploaded"),
    ("preview-import", "preview"),
    ("leave-import", "uploaded"),
    ("import", "imported"),
    ("take-back-import", "taken-back"),
    ("devices", "devices"),
    ("confirm-device", "devices"),
    ("device-qr", "qr-code"),
    ("confirm-device-by-photo", "devices"),
    ("take-over-device", "devices"),
    ("name-device", "devices"),
    ("retire-device", "devices"),
    ("reset-device", "devices"),
    ("prepare-backup", "backup-ready"),
    ("restore-piece", "uploaded"),
    ("restore", "restored"),
    ("erase", "erased"),
    ("take-back", "salvaged"),
    ("dismiss-set-aside", "home"),
];

#[derive(Deserialize)]
struct Asked {
    ask: String,
    /// What is practised.
    #[serde(default)]
    request: Option<Box<Asked>>,
}

#[derive(Deserialize)]
struct Answered {
    is: String,
}

/// Whether an answer is of the kind that is listed for its request, both as JSON; a request spelled as no screen
/// spells it is not looked at.
pub(super) fn is_listed(request: &str, response: &str) -> bool {
    let asked = serde_json::from_str::<Asked>(request);
    let (Ok(asked), Ok(Answered { is })) = (asked, serde_json::from_str(response)) else { return true };
    let asked = asked.request.map_or(asked.ask, |inside| inside.ask);
    REPLIES.iter().any(|(ask, answer)| *ask == asked && *answer == is)
}
