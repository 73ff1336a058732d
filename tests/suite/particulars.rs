//! The workshop's own particulars: kept, bounded, on its papers, and nobody else's to change; and the language
//! and sheet that papers in a handover file are printed in.

use std::path::Path;
use std::sync::{Arc, Mutex};

use serde_json::{Value, json};
use steady_core::app::handover::Wanted;
use steady_core::app::press::{Paper, Press, PressError, PrintRun};
use steady_core::app::request::{Request, Sheet};
use steady_core::app::response::Response;
use steady_core::app::{Setup, Steady};
use steady_core::content::finding::Finding;
use steady_core::content::note::Note;
use steady_core::model::typed::LengthUnit;
use steady_core::model::workshop::Workshop;

use crate::backup_generations::{back_up, restore};
use crate::handover::{demo_visit, exported};
use crate::support::{MORNING, code, open, scratch};

fn handled(steady: &Steady, request: Value) -> Response {
    steady.handle(serde_json::from_value(request).unwrap()).unwrap()
}

fn set(steady: &Steady, workshop: Value) -> Workshop {
    match handled(steady, json!({ "ask": "set-workshop", "workshop": workshop })) {
        Response::Workshop(workshop) => *workshop,
        other => panic!("no workshop but {other:?}"),
    }
}

fn kept(steady: &Steady) -> Workshop {
    match steady.handle(Request::Workshop).unwrap() {
        Response::Workshop(workshop) => *workshop,
        other => panic!("no workshop but {other:?}"),
    }
}

fn finding(steady: &Steady, visit: &str) -> Finding {
    match handled(steady, json!({ "ask": "finding", "visit": visit, "locale": "en" })) {
        Response::Finding(finding) => *finding,
        other => panic!("no finding but {other:?}"),
    }
}

fn note(steady: &Steady, visit: &str) -> Note {
    match handled(steady, json!({ "ask": "note", "visit": visit, "locale": "en" })) {
        Response::Note(note) => *note,
        other => panic!("no note but {other:?}"),
    }
}

fn demo() -> Value {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../demo-data/workshop");
    serde_json::from_str(&std::fs::read_to_string(folder.join("particulars.json")).unwrap()).unwrap()
}

#[test]
fn particulars_are_on_disk_before_the_reply() {
    let (folder, steady) = scratch();
    assert_eq!(kept(&steady), Workshop::default());
    let mut given = demo();
    given["units"] = json!({ "length": "thou", "distance": "miles" });
    let said = set(&steady, given);
    assert_eq!((said.name.as_str(), said.address.len(), said.hours.len()), ("Brackenfold Motor Works", 2, 3));
    assert_eq!((said.rate, said.units.length), (Some(86.5), Some(LengthUnit::Thou)));
    drop(steady);
    let again = open(folder.path()).unwrap();
    assert_eq!(kept(&again), said);
    assert_eq!(set(&again, json!({})), Workshop::default(), "what is left out is emptied");
}

#[test]
fn what_does_not_fit_a_paper_is_refused_and_changes_nothing() {
    let (_folder, steady) = scratch();
    let before = set(&steady, demo());
    for (workshop, expected) in [
        (json!({ "name": "n".repeat(101) }), "workshop-too-long"),
        (json!({ "address": ["1", "2", "3", "4", "5"] }), "workshop-too-long"),
        (json!({ "phone": "1\n2" }), "workshop-too-long"),
        (json!({ "currency": "thirteen chars" }), "workshop-too-long"),
        (json!({ "rate": "1,000" }), "workshop-number"),
        (json!({ "hours": [{ "tier": "bearings-only", "from": "4", "to": "3" }] }), "workshop-number"),
        (json!({ "hours": [{ "tier": "no-such-tier", "from": "4", "to": "5" }] }), "unknown-request"),
        (json!({ "owner": "somebody" }), "unknown-request"),
        (json!({ "sleeves": [sleeve("76", "")] }), "workshop-sleeve"),
        (json!({ "sleeves": [sleeve("70", "76")] }), "workshop-sleeve"),
        (json!({ "sleeves": [sleeve("1,250,5", "70")] }), "workshop-sleeve"),
        (json!({ "sleeves": [{ "material": "cheese", "outside": "76", "bore": "70" }] }), "workshop-sleeve"),
        (json!({ "sleeves": vec![sleeve("76", "70"); 41] }), "workshop-sleeve"),
        (json!({ "instruments": [gauge("", "0.001", "")] }), "workshop-instrument"),
        (json!({ "instruments": [gauge("4", "0", "")] }), "workshop-instrument"),
        (json!({ "instruments": [gauge("4", "2", "")] }), "workshop-instrument"),
        (json!({ "instruments": [gauge("4", "1e-300", "")] }), "workshop-instrument"),
        (json!({ "instruments": [gauge("4\u{202e}5", "0.001", "")] }), "workshop-instrument"),
        (
            json!({ "instruments": [gauge("Dial 4", "0.001", ""), gauge("dial  4", "0.01", "")] }),
            "workshop-instrument",
        ),
        (json!({ "name": "Works\u{202e}" }), "workshop-too-long"),
        (json!({ "instruments": [gauge("4", "0.001", "2026-02-30")] }), "workshop-instrument"),
        (json!({ "instruments": [gauge("4", "0.001", "2025-01-01")] }), "workshop-instrument"),
        (json!({ "instruments": [gauge("4", "0.001", ""), gauge("4", "0.01", "")] }), "workshop-instrument"),
    ] {
        let request = json!({ "ask": "set-workshop", "workshop": workshop });
        assert_eq!(refusal(&steady, &request), expected, "{request}");
        assert_eq!(kept(&steady), before);
    }
}

fn sleeve(outside: &str, bore: &str) -> Value {
    json!({ "material": "mild-steel", "outside": outside, "bore": bore })
}

/// An instrument that was calibrated on a day of 2026, valid until `due`.
fn gauge(name: &str, resolution: &str, due: &str) -> Value {
    json!({ "name": name, "resolution": resolution, "mpe": "0.002", "calibrated": "2026-01-05", "due": due })
}

/// Sleeves and instruments are kept in their order; what is overdue is said as of the day it is asked.
#[test]
fn sleeves_and_instruments_of_the_workshop_are_kept() {
    let (folder, steady) = scratch();
    let mut given = demo();
    given["sleeves"] = json!([sleeve("76,05", "70"), sleeve("", ""), sleeve("80", "71.5 mm")]);
    let mut never = gauge("Bore gauge 5", "0,001", "");
    never["calibrated"] = json!("");
    let mut ahead = gauge("Bore gauge 6", "0.001", "9999-12-31");
    ahead["calibrated"] = json!("9999-12-31");
    given["instruments"] = json!([
        gauge("Bore gauge 4", "0,001", "2027-01-04"),
        gauge("Bore gauge 3", "0.001", "2026-01-06"),
        gauge("Bore gauge 2", "0.001", ""),
        never,
        ahead,
    ]);
    let said = set(&steady, given);
    let sizes: Vec<[f64; 2]> = said.sleeves.iter().map(|it| [it.outside_mm, it.bore_mm]).collect();
    assert_eq!(sizes, [[76.05, 70.0], [80.0, 71.5]], "an empty row is left out");
    let overdue: Vec<bool> = said.instruments.iter().map(|it| it.overdue).collect();
    assert_eq!(
        overdue,
        [false, true, true, true, true],
        "what is not known, or is still to come, is not valid"
    );
    drop(steady);
    assert_eq!(kept(&open(folder.path()).unwrap()), said);
}

/// As a shell asks it, so that a request that cannot be read is a refusal too.
fn refusal(steady: &Steady, request: &Value) -> String {
    let failure: Value =
        serde_json::from_str(&steady.handle_json(&request.to_string()).unwrap_err()).unwrap();
    failure["code"].as_str().unwrap().to_owned()
}

#[test]
fn papers_read_as_before_until_particulars_are_entered() {
    let (_folder, steady) = scratch();
    let visit = demo_visit(&steady);
    let (bare, bare_note) = (finding(&steady, &visit), note(&steady, &visit));
    assert_eq!((&bare.workshop, &bare_note.workshop), (&None, &None));
    set(&steady, demo());
    let (named, named_note) = (finding(&steady, &visit), note(&steady, &visit));
    assert_eq!(named.workshop.as_ref().unwrap().name, "Brackenfold Motor Works");
    assert!(
        named_note.sections.iter().any(|section| section.text.iter().any(|it| it.contains("01632 960417")))
    );
    assert_ne!(named_note.sha256, bare_note.sha256, "what the owner signs names the workshop");
    set(&steady, json!({}));
    assert_eq!((finding(&steady, &visit), note(&steady, &visit)), (bare, bare_note));
}

#[test]
fn a_note_signed_under_other_particulars_is_refused() {
    let (_folder, steady) = scratch();
    let visit = demo_visit(&steady);
    let seen = note(&steady, &visit).sha256;
    set(&steady, demo());
    let sign = json!({
        "ask": "sign", "visit": visit, "decision": "decline", "name": "", "locale": "en", "note_sha256": seen,
        "strokes": [[[0.1, 0.5], [0.5, 0.2]]]
    });
    assert_eq!(code(&steady, sign), "note-changed");
}

#[test]
fn a_handover_neither_carries_nor_changes_particulars() {
    let ((_a, here), (_b, there)) = (scratch(), scratch());
    set(&here, demo());
    let visit = demo_visit(&here);
    let theirs = set(&there, json!({ "name": "Another Works" }));
    let file = exported(&here, &[&visit]);
    assert!(!String::from_utf8_lossy(&file).contains("Brackenfold"), "the file is nobody's letterhead");
    there.import(&mut &*file).unwrap();
    assert_eq!(kept(&there), theirs);
    assert_eq!(finding(&there, &visit).workshop.unwrap().name, "Another Works");
}

#[test]
fn a_backup_brings_particulars_back_where_there_are_none() {
    let ((_a, here), (_b, fresh), (_c, named)) = (scratch(), scratch(), scratch());
    let theirs = set(&here, demo());
    demo_visit(&here);
    let safe = tempfile::tempdir().unwrap();
    back_up(&here, safe.path());
    restore(&fresh, safe.path());
    assert_eq!(kept(&fresh), theirs);
    let own = set(&named, json!({ "name": "Another Works" }));
    restore(&named, safe.path());
    assert_eq!(kept(&named), own);
}

/// Notes the language and sheet of everything it prints.
#[derive(Default)]
struct NotingPress(Mutex<Vec<String>>);

impl Press for NotingPress {
    fn print(&self, paper: Paper<'_>, run: &PrintRun<'_>) -> Result<Vec<u8>, PressError> {
        let (kind, locale) = match paper {
            Paper::Finding(finding) => ("finding", &finding.locale),
            Paper::Note(note) => ("note", &note.locale),
            Paper::Repair(record) => ("repair", &record.locale),
            Paper::Machinist(page) => ("machinist", &page.locale),
            Paper::BeforeAfter(page) => ("before-after", &page.locale),
        };
        let line = format!("{kind} {locale} {}", run.sheet.id());
        self.0.lock().unwrap().push(line.clone());
        Ok(line.into_bytes())
    }
}

/// What an export prints, each once.
fn papers(steady: &Steady, press: &NotingPress, locale: Option<&str>, sheet: Option<Sheet>) -> Vec<String> {
    press.0.lock().unwrap().clear();
    let wanted = Wanted { visits: &[], papers: true, locale, sheet };
    steady.export(wanted, &mut Vec::new()).unwrap();
    let mut printed = press.0.lock().unwrap().clone();
    printed.sort();
    printed.dedup();
    printed
}

#[test]
fn papers_of_a_handover_are_as_each_was_last_made_or_as_chosen() {
    let folder = tempfile::tempdir().unwrap();
    let press = Arc::new(NotingPress::default());
    let setup = Setup { data_dir: folder.path().to_owned(), press: press.clone(), clock: || MORNING };
    let steady = Steady::open(setup).unwrap();
    steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
    let visit = demo_visit(&steady);
    assert_eq!(papers(&steady, &press, None, None), ["finding en a4", "note en a4"]);
    handled(&steady, json!({ "ask": "set-preference", "name": "locale", "value": "de" }));
    assert_eq!(papers(&steady, &press, None, None), ["finding de a4", "note de a4"], "the screens' language");
    let made = json!({
        "ask": "paper", "visit": visit, "paper": "note", "locale": "es", "sheet": "us-letter"
    });
    handled(&steady, made);
    assert_eq!(papers(&steady, &press, None, None), ["finding de a4", "note es us-letter"]);
    let chosen = papers(&steady, &press, Some("en"), Some(Sheet::UsLetter));
    assert_eq!(chosen, ["finding en us-letter", "note en us-letter"]);
    assert_eq!(
        papers(&steady, &press, None, None),
        ["finding de a4", "note es us-letter"],
        "for that file alone"
    );
    let wanted = Wanted { visits: &[], papers: true, locale: Some("xx"), sheet: None };
    assert_eq!(steady.export(wanted, &mut Vec::new()).unwrap_err().code, "unknown-locale");
}
