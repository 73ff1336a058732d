//! The demo's papers as a reader meets them: printed by the real press, read back as text by `pdftotext`
//! and as pictures by `pdftoppm` (Debian's poppler-utils).

use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::Arc;

use image::RgbImage;
use serde_json::{Value, json};
use steady_core::app::replay::replay;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::app::{Setup, Steady};
use steady_core::model::entry::OwnerDecision;
use tempfile::TempDir;

use crate::support::{MORNING, fetched};

fn demo() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../demo-data")
}

/// A demo visit replayed into a folder that prints for real.
fn replayed(number: &str) -> (TempDir, Steady, String) {
    let folder = tempfile::tempdir().unwrap();
    let press = Arc::new(steady_papers::press().unwrap());
    let steady =
        Steady::open(Setup { data_dir: folder.path().join("data"), press, clock: || MORNING }).unwrap();
    steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
    let case = std::fs::read_dir(demo()).unwrap().flatten().map(|file| file.path());
    let case = case
        .into_iter()
        .find(|path| path.file_name().unwrap().to_string_lossy().starts_with(number) && path.is_file());
    let text = std::fs::read_to_string(case.unwrap()).unwrap();
    let report = replay(&steady, &text, &demo()).unwrap().report;
    let visit = report["visit"].as_str().unwrap().to_owned();
    (folder, steady, visit)
}

struct Printed {
    text: String,
    pages: usize,
    page_one: RgbImage,
}

fn printed(folder: &TempDir, steady: &Steady, visit: &str, paper: &str) -> Printed {
    let request = json!({ "ask": "paper", "visit": visit, "paper": paper, "locale": "en" });
    let response = steady.handle(serde_json::from_value(request).unwrap()).unwrap();
    let Response::Paper(file) = response else { panic!("no paper but {response:?}") };
    let pdf = folder.path().join(format!("{paper}.pdf"));
    std::fs::write(&pdf, fetched(steady, &file.file)).unwrap();
    let text = String::from_utf8(run(Command::new("pdftotext").arg("-raw").arg(&pdf).arg("-"))).unwrap();
    let info = String::from_utf8(run(Command::new("pdfinfo").arg(&pdf))).unwrap();
    let pages = info.lines().find_map(|line| line.strip_prefix("Pages:")).unwrap().trim().parse().unwrap();
    let stem = folder.path().join(paper);
    run(Command::new("pdftoppm").args(["-png", "-r", "60", "-f", "1", "-singlefile"]).arg(&pdf).arg(&stem));
    let page_one = image::open(stem.with_extension("png")).unwrap().into_rgb8();
    Printed { text: text.split_whitespace().collect::<Vec<_>>().join(" "), pages, page_one }
}

fn run(command: &mut Command) -> Vec<u8> {
    let out = command.output().unwrap_or_else(|error| {
        panic!("{command:?} does not start ({error}); install it: apt-get install poppler-utils")
    });
    assert!(out.status.success(), "{command:?}: {}", String::from_utf8_lossy(&out.stderr));
    out.stdout
}

/// Share of the page's first third that has nearly this colour.
fn share_in_first_third(page: &RgbImage, colour: [u8; 3]) -> f64 {
    let third = page.height() / 3;
    let near = |pixel: &image::Rgb<u8>| pixel.0.iter().zip(colour).all(|(a, b)| a.abs_diff(b) <= 6);
    let inside = page.enumerate_pixels().filter(|(_, y, pixel)| *y < third && near(pixel)).count();
    inside as f64 / f64::from(page.width() * third)
}

/// What a demo visit's paper must say, and the colour of its band, which must fill a good part of the
/// first third of page one.
#[track_caller]
fn check(number: &str, paper: &str, band: [u8; 3], says: &[&str], never: &[&str]) {
    let (folder, steady, visit) = replayed(number);
    let printed = printed(&folder, &steady, &visit, paper);
    for sentence in says {
        assert!(printed.text.contains(sentence), "{number} {paper}: no {sentence:?} in {}", printed.text);
    }
    for sentence in never {
        assert!(!printed.text.contains(sentence), "{number} {paper}: {sentence:?} in {}", printed.text);
    }
    let share = share_in_first_third(&printed.page_one, band);
    assert!(share > 0.08, "{number} {paper}: the band's colour fills {share} of the first third");
    if paper == "note" {
        assert_eq!(printed.pages, 1, "{number}: a note is one page");
    }
}

const DANGER: [u8; 3] = [0x9b, 0x24, 0x23];
const UNRATED: [u8; 3] = [0xe4, 0xe8, 0xea];
const NOTICE: [u8; 3] = [0x00, 0x53, 0x87];

#[test]
fn danger_papers_say_do_not_drive() {
    check("04", "note", DANGER, &["DANGER", "DO NOT DRIVE", "DEMO 04"], &["NOT YET CHECKED"]);
    check("04", "finding", DANGER, &["DANGER", "DO NOT DRIVE", "Kim Demo", "Page 1 of"], &[]);
}

#[test]
fn unrated_papers_say_not_yet_checked() {
    check("06", "note", UNRATED, &["NOT YET CHECKED"], &["DANGER", "NOTICE"]);
    check("06", "finding", UNRATED, &["NOT YET CHECKED"], &["DANGER"]);
}

#[test]
fn notice_papers_say_what_was_not_reproduced() {
    check("07", "note", NOTICE, &["NOTICE"], &["DO NOT DRIVE", "NOT YET CHECKED"]);
    check("07", "finding", NOTICE, &["NOTICE", "Not reproduced"], &["DO NOT DRIVE"]);
}

#[test]
fn repair_record_tells_the_work_from_bore_to_torque() {
    let (folder, steady, visit) = replayed("13");
    let printed = printed(&folder, &steady, &visit, "repair");
    for sentence in [
        "Skim the seat and press in a sleeve",
        "DEMO 11",
        "Sleeve in housing",
        "45 Nm in two steps",
        "Kim Demo",
    ] {
        assert!(printed.text.contains(sentence), "no {sentence:?} in {}", printed.text);
    }
    // Before and after can be held side by side.
    let times: Vec<&str> = printed
        .text
        .split("Deviation drawn ")
        .skip(1)
        .filter_map(|rest| rest.split_whitespace().next())
        .collect();
    assert!(times.len() == 2 && times[0] == times[1], "{times:?}");
}

#[test]
fn note_after_the_repair_says_what_it_is_and_keeps_its_rating() {
    check("13", "note", DANGER, &["DO NOT DRIVE", "before the repair", "until we say so"], &["price"]);
}

#[test]
fn signed_note_shows_the_decision_and_the_hash_that_was_seen() {
    for decision in [OwnerDecision::Repair, OwnerDecision::DecideLater, OwnerDecision::Decline] {
        let (folder, steady, visit) = replayed("04");
        let note = json!({ "ask": "note", "visit": visit, "locale": "en" });
        let Response::Note(note) = steady.handle(serde_json::from_value(note).unwrap()).unwrap() else {
            panic!("no note")
        };
        let sign: Value = json!({
            "ask": "sign", "visit": visit, "decision": decision, "name": "R. Example", "locale": "en",
            "note_sha256": note.sha256, "strokes": [[[0.1, 0.5], [0.5, 0.2], [0.9, 0.5]]]
        });
        let mut endless = sign.clone();
        endless["name"] = json!("x".repeat(201));
        let refused = steady.handle(serde_json::from_value(endless).unwrap()).unwrap_err();
        assert_eq!(refused.code, "name-too-long");
        steady.handle(serde_json::from_value(sign).unwrap()).unwrap();
        let printed = printed(&folder, &steady, &visit, "note");
        assert!(printed.text.replace(' ', "").contains(&note.sha256), "{}", printed.text);
        assert!(printed.text.contains("R. Example"), "{}", printed.text);
        for line in &note.decisions {
            let taken = line.id == decision.id();
            assert_eq!(printed.text.contains(&line.label), taken, "{}: {}", line.label, printed.text);
        }
        assert_eq!(printed.pages, 1);
    }
}
