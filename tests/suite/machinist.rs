//! The machinist's sheet: one page on both sheets and in every language, the sizes of the fit on it, a place to stop, and a
//! code that a photo of the paper brings the visit up by. Read back by poppler's tools.

use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::Arc;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use serde_json::{Value, json};
use steady_core::app::replay::replay;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::app::{Setup, Steady};
use steady_core::words::Words;

use crate::support::{MORNING, fetched};

const UPLOAD: &str = "00000000-0000-7000-8000-000000000041";
/// The finished bore is left out: the sheet is made before the work.
const DEMO: &str = "13-measured-to-the-repair.json";

fn demo() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../demo-data")
}

fn press() -> Arc<steady_papers::TypstPress> {
    Arc::new(steady_papers::press().unwrap())
}

/// The demo visit whose bench is measured from bore to fit, its rows of the bench changed by `change`.
fn replayed(folder: &Path, change: impl Fn(&mut Vec<Value>)) -> (Steady, String) {
    let data_dir = folder.join("data");
    let steady = Steady::open(Setup { data_dir, press: press(), clock: || MORNING }).unwrap();
    steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
    let text = std::fs::read_to_string(demo().join(DEMO)).unwrap();
    let mut case: Value = serde_json::from_str(&text).unwrap();
    change(case["bench"].as_array_mut().unwrap());
    let visit = replay(&steady, &case.to_string(), &demo()).unwrap().report["visit"].clone();
    (steady, visit.as_str().unwrap().to_owned())
}

fn ask(steady: &Steady, request: Value) -> Result<Response, String> {
    let request: Request = serde_json::from_value(request).unwrap();
    steady.handle(request).map_err(|failure| failure.code)
}

fn printed(folder: &Path, steady: &Steady, visit: &str, (locale, sheet): (&str, &str)) -> PathBuf {
    let wanted =
        json!({ "ask": "paper", "visit": visit, "paper": "machinist", "locale": locale, "sheet": sheet });
    let Ok(Response::Paper(file)) = ask(steady, wanted) else { panic!("no paper") };
    let pdf = folder.join(format!("machinist-{locale}-{sheet}.pdf"));
    std::fs::write(&pdf, fetched(steady, &file.file)).unwrap();
    pdf
}

fn run(command: &mut Command) -> Vec<u8> {
    let out = command.output().unwrap_or_else(|error| panic!("{command:?}: {error}; install poppler-utils"));
    assert!(out.status.success(), "{command:?}: {}", String::from_utf8_lossy(&out.stderr));
    out.stdout
}

fn text(pdf: &Path) -> String {
    let text = String::from_utf8(run(Command::new("pdftotext").arg("-raw").arg(pdf).arg("-"))).unwrap();
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn pages(pdf: &Path) -> usize {
    let info = String::from_utf8(run(Command::new("pdfinfo").arg(pdf))).unwrap();
    info.lines().find_map(|line| line.strip_prefix("Pages:")).unwrap().trim().parse().unwrap()
}

#[test]
fn sheet_is_one_page_in_every_language_on_both_sheets() {
    let folder = tempfile::tempdir().unwrap();
    let (steady, visit) = replayed(folder.path(), |_| {});
    let mut made = 0;
    for locale in Words::locales() {
        for sheet in ["a4", "us-letter"] {
            let pdf = printed(folder.path(), &steady, &visit, (locale, sheet));
            assert_eq!(pages(&pdf), 1, "{locale} {sheet}");
            if let Some(kept) = std::env::var_os("CARGO_TARGET_TMPDIR") {
                let _ = std::fs::copy(&pdf, Path::new(&kept).join(pdf.file_name().unwrap()));
            }
            made += 1;
        }
    }
    assert_eq!(made, 2 * Words::locales().len());
}

#[test]
fn sheet_gives_sizes_where_to_stop_and_how_the_parts_go_together() {
    let folder = tempfile::tempdir().unwrap();
    let (steady, visit) = replayed(folder.path(), |_| {});
    let said = text(&printed(folder.path(), &steady, &visit, ("en", "a4")));
    for sentence in [
        "DEMO 11",
        "Housing bore for the sleeve",
        "Sleeve, outside",
        "Seat for the bearing, finished",
        "Thinnest wall",
        "When to stop",
        "Putting together",
        "Sleeve in housing",
        "Measured",
        "no further",
    ] {
        assert!(said.contains(sentence), "no {sentence:?} in {said}");
    }
}

/// What nobody gave is asked for in words, and no pass is offered as safe without the wall that has to stay.
#[test]
fn sheet_without_a_wall_or_a_bore_says_not_to_cut() {
    let said = |change: fn(&mut Vec<Value>)| {
        let folder = tempfile::tempdir().unwrap();
        let (steady, visit) = replayed(folder.path(), change);
        text(&printed(folder.path(), &steady, &visit, ("en", "a4")))
    };
    let no_wall = said(|rows| {
        for row in rows.iter_mut().filter(|row| row.get("look").is_some()) {
            row["look"]["wall_least_mm"] = Value::Null;
            row.as_object_mut().unwrap().remove("wall");
        }
    });
    assert!(no_wall.contains("DO NOT CUT before the wall is measured"), "{no_wall}");
    let cracked = said(|rows| {
        for row in rows.iter_mut().filter(|row| row.get("look").is_some()) {
            row["look"]["cracked"] = json!(true);
        }
    });
    assert!(cracked.contains("DO NOT CUT: this housing is to be replaced"), "{cracked}");
    assert!(!cracked.contains("Cut so far"), "passes are offered for scrap: {cracked}");
    let nothing = said(|rows| rows.retain(|row| row.get("gates").is_some()));
    assert!(nothing.contains("DO NOT CUT BY THIS SHEET"), "{nothing}");
    assert!(nothing.matches("Not given. Find out before the first cut.").count() >= 4, "{nothing}");
}

/// A photo of the printed page brings the visit up; so does a scanner that types, and nothing else does.
#[test]
fn code_on_the_sheet_brings_the_visit_up() {
    let folder = tempfile::tempdir().unwrap();
    let (steady, visit) = replayed(folder.path(), |_| {});
    let pdf = printed(folder.path(), &steady, &visit, ("en", "a4"));
    let stem = folder.path().join("page");
    run(Command::new("pdftoppm").args(["-png", "-r", "150", "-singlefile"]).arg(&pdf).arg(&stem));
    let scan = |picture: &[u8]| {
        for (index, piece) in picture.chunks(256 * 1024).enumerate() {
            let base64 = STANDARD.encode(piece);
            ask(&steady, json!({ "ask": "upload", "upload": UPLOAD, "index": index, "base64": base64 }))
                .unwrap();
        }
        let found = ask(&steady, json!({ "ask": "scan-visit", "upload": UPLOAD }));
        let again = ask(&steady, json!({ "ask": "scan-visit", "upload": UPLOAD }));
        assert_eq!(again.err().as_deref(), Some("upload-unknown"), "the photo was kept");
        found
    };
    let Ok(Response::Visits(found)) = scan(&std::fs::read(stem.with_extension("png")).unwrap()) else {
        panic!("not found")
    };
    assert_eq!(found.visits.iter().map(|card| card.visit.as_str()).collect::<Vec<_>>(), [visit.as_str()]);
    let seat = std::fs::read(demo().join("photos/seat.jpg")).unwrap();
    assert_eq!(scan(&seat).err().as_deref(), Some("no-visit-in-photo"));
    let typed = |search: String| match ask(&steady, json!({ "ask": "visits", "search": search })) {
        Ok(Response::Visits(page)) => page.total,
        other => panic!("{other:?}"),
    };
    assert_eq!(typed(format!("STEADY VISIT 1 {}", visit.to_ascii_uppercase())), 1);
    assert_eq!(typed("STEADY VISIT 1 00000000-0000-7000-8000-000000000000".to_owned()), 0);
}

/// The customer's sheet holds before against after at one scale in an owner's words, on one page, and claims nothing that was not
/// measured.
#[test]
fn customers_sheet_says_what_was_out_of_round_what_is_now_and_what_was_done() {
    let folder = tempfile::tempdir().unwrap();
    let (steady, visit) = replayed(folder.path(), |_| {});
    let made = |steady: &Steady, visit: &str, locale: &str, sheet: &str| {
        let wanted = json!({ "ask": "paper", "visit": visit, "paper": "before-after", "locale": locale, "sheet": sheet });
        let Ok(Response::Paper(file)) = ask(steady, wanted) else { panic!("no paper") };
        let pdf = folder.path().join(format!("before-after-{locale}-{sheet}.pdf"));
        std::fs::write(&pdf, fetched(steady, &file.file)).unwrap();
        pdf
    };
    for locale in Words::locales() {
        for sheet in ["a4", "us-letter"] {
            let pdf = made(&steady, &visit, locale, sheet);
            assert_eq!(pages(&pdf), 1, "{locale} {sheet}");
            if let Some(kept) = std::env::var_os("CARGO_TARGET_TMPDIR") {
                let _ = std::fs::copy(&pdf, Path::new(&kept).join(pdf.file_name().unwrap()));
            }
        }
    }
    let said = text(&made(&steady, &visit, "en", "a4"));
    for sentence in [
        "Before the work",
        "After the work",
        "Out of round by",
        "Limit: 0.0065 mm",
        "THAT IS BEYOND THE LIMIT",
        "cut round again, in 3 passes",
        "A new sleeve was fitted",
        "turns freely",
        "does not say that the car is safe",
    ] {
        assert!(said.contains(sentence), "no {sentence:?} in {said}");
    }
    let other = tempfile::tempdir().unwrap();
    let (steady, visit) = replayed(other.path(), |rows| {
        rows.retain(|row| row["bore"] != "finished" && row.get("ring").is_none() && row.get("fit").is_none())
    });
    let open = text(&made(&steady, &visit, "en", "a4"));
    for sentence in ["NOT MEASURED", "It is not recorded that the bearing turns freely"] {
        assert!(open.contains(sentence), "no {sentence:?} in {open}");
    }
    assert!(!open.contains("within the limit") && !open.contains("new sleeve"), "{open}");
}

/// The repair record says where the drawing begins, which way it counts and at what scale; its fit stands cold beside hot,
/// and its materials have names.
#[test]
fn repair_record_can_be_read_without_the_machine() {
    let folder = tempfile::tempdir().unwrap();
    let (steady, visit) = replayed(folder.path(), |_| {});
    let wanted = json!({ "ask": "paper", "visit": visit, "paper": "repair", "locale": "en" });
    let Ok(Response::Paper(file)) = ask(&steady, wanted) else { panic!("no paper") };
    let pdf = folder.path().join("repair.pdf");
    std::fs::write(&pdf, fetched(&steady, &file.file)).unwrap();
    if let Some(kept) = std::env::var_os("CARGO_TARGET_TMPDIR") {
        let _ = std::fs::copy(&pdf, Path::new(&kept).join("repair.pdf"));
    }
    let said = text(&pdf);
    for sentence in
        ["0°", "Angles count clockwise from 0°", "Farthest out", "Farthest in", "Depth of one pass"]
    {
        assert!(said.contains(sentence), "no {sentence:?} in {said}");
    }
    for sentence in ["Tight by (below zero: loose)", "All pairs", "A356 cast aluminium", "(ductile iron)"] {
        assert!(said.contains(sentence), "no {sentence:?} in {said}");
    }
    assert!(!said.contains("ductile-iron"), "{said}");
    // Passes come between the bore as found and the bore as finished, as the work went.
    let captions =
        ["Bore as found", "After pass 1", "After pass 3", "Bore as finished", "Ring turned by hand"];
    let photos = said.rfind("After pass 1").unwrap();
    let places: Vec<usize> =
        captions[1..].iter().map(|caption| said[photos..].find(caption).unwrap_or(usize::MAX)).collect();
    assert!(places.is_sorted(), "{places:?}");
}
