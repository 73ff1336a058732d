//! Demo visits' papers in every language on two sheets, kept in `target/papers` and read back by qpdf and
//! poppler's tools: sound, fonts embedded, the language set, nothing off the page, every page drawn, names whole.
//!
//! The suite prints a sample; `cargo xtask papers` sets `STEADY_PAPERS=all` and prints every one.

use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::Arc;

use serde_json::{Value, json};
use steady_core::app::replay::replay;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::app::{Setup, Steady};
use steady_core::words::Words;

use crate::support::{MORNING, fetched};

const SHEETS: [(&str, [f64; 2]); 2] = [("a4", [595.276, 841.89]), ("us-letter", [612.0, 792.0])];
/// A car that must not be driven, with photos, and one not yet checked.
const SAMPLE: [&str; 2] = ["04", "06"];
/// The papers' side margin is 17 mm, 48 pt; a glyph may lean a little into it.
const MARGIN: f64 = 44.0;

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

fn printing(folder: &Path) -> Steady {
    let press = Arc::new(steady_papers::press().unwrap());
    let steady = Steady::open(Setup { data_dir: folder.to_owned(), press, clock: || MORNING }).unwrap();
    steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
    let workshop = std::fs::read_to_string(root().join("demo-data/workshop/particulars.json")).unwrap();
    steady.set_workshop_json(&workshop).unwrap();
    steady
}

fn asked(steady: &Steady, request: Value) -> Response {
    steady.handle(serde_json::from_value(request).unwrap()).unwrap()
}

fn paper(steady: &Steady, visit: &str, paper: &str, locale: &str, sheet: &str) -> Vec<u8> {
    let request = json!({ "ask": "paper", "visit": visit, "paper": paper, "locale": locale, "sheet": sheet });
    let Response::Paper(file) = asked(steady, request) else { panic!("no paper") };
    fetched(steady, &file.file)
}

fn tool(command: &mut Command) -> String {
    let out = command.output().unwrap_or_else(|error| {
        panic!("{command:?} does not start ({error}); install it: apt-get install qpdf poppler-utils")
    });
    assert!(out.status.success(), "{command:?}: {}", String::from_utf8_lossy(&out.stderr));
    String::from_utf8_lossy(&out.stdout).into_owned()
}

/// The paper's text in one line. Read from right to left it stands on the paper in the order it is drawn in, so that poppler
/// has to put it in order; then its signs may stand on the other side of a word.
fn flat(path: &Path, words: &Words) -> String {
    let order = if words.reads_from_right() { "-nopgbrk" } else { "-raw" };
    let text = unmarked(&tool(Command::new("pdftotext").arg(order).arg(path).arg("-")));
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Without the marks of direction that poppler and the texts set.
fn unmarked(text: &str) -> String {
    text.replace(['\u{200E}', '\u{202A}', '\u{202B}', '\u{202C}', '\u{2066}', '\u{2068}', '\u{2069}'], "")
}

/// The words alone.
fn letters(text: &str) -> String {
    let words = text.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty());
    words.collect::<Vec<_>>().join(" ")
}

/// Every word lies inside the margins of its page.
#[track_caller]
fn check_inside(path: &Path, [width, height]: [f64; 2]) {
    let boxes = tool(Command::new("pdftotext").arg("-bbox").arg(path).arg("-"));
    let mut words = 0;
    for line in boxes.lines().filter(|line| line.trim_start().starts_with("<word ")) {
        let side = |name: &str| -> f64 {
            let rest = line.split(&format!("{name}=\"")).nth(1).unwrap();
            rest.split('"').next().unwrap().parse().unwrap()
        };
        words += 1;
        let across = side("xMin") >= MARGIN && side("xMax") <= width - MARGIN;
        let down = side("yMin") >= 20.0 && side("yMax") <= height - 15.0;
        assert!(across && down, "{}: off the page: {line}", path.display());
    }
    assert!(words > 50, "{}: only {words} words", path.display());
}

#[track_caller]
fn check(path: &Path, kind: &str, locale: &str, size: [f64; 2]) {
    let name = path.display();
    tool(Command::new("qpdf").args(["--check", "--no-warn"]).arg(path));
    let fonts = tool(Command::new("pdffonts").arg(path));
    let rows: Vec<&str> = fonts.lines().skip(2).collect();
    assert!(!rows.is_empty(), "{name}: no font");
    for row in rows {
        assert!(row.contains("NotoSans") && row.contains(" yes yes yes "), "{name}: {row}");
    }
    let info = tool(Command::new("pdfinfo").arg(path));
    let words = Words::of(locale).unwrap();
    assert!(info.contains(&words.text(&format!("{kind}-title"))), "{name}: {info}");
    let pages: usize =
        info.lines().find_map(|line| line.strip_prefix("Pages:")).unwrap().trim().parse().unwrap();
    assert!(kind == "finding" || pages == 1, "{name}: a note is one page, not {pages}");
    let open = tool(Command::new("qpdf").args(["--qdf", "--object-streams=disable"]).arg(path).arg("-"));
    assert!(open.contains(&format!("/Lang ({locale})")), "{name}: the language is not set");
    check_inside(path, size);
    check_laid_out(path, &words.text(&format!("{kind}-title")));
    check_drawn(path, pages);
}

/// The title's words stand at the head, as a reader of the laid-out text meets them.
#[track_caller]
fn check_laid_out(path: &Path, title: &str) {
    let text = unmarked(&tool(Command::new("pdftotext").arg("-layout").arg(path).arg("-")));
    let head: Vec<String> = text.lines().take(8).map(letters).collect();
    for word in letters(title).split(' ') {
        let found = head.iter().any(|line| line.split(' ').any(|one| one == word));
        assert!(found, "{}: {word} is not in {head:?}", path.display());
    }
}

/// Each page as a picture beside the paper; none is blank, and none runs to its edge.
#[track_caller]
fn check_drawn(path: &Path, pages: usize) {
    let stem = path.with_extension("");
    tool(Command::new("pdftoppm").args(["-png", "-r", "50"]).arg(path).arg(&stem));
    let digits = pages.to_string().len();
    for page in 1..=pages {
        let picture = PathBuf::from(format!("{}-{page:0digits$}.png", stem.display()));
        let drawn = image::open(&picture).unwrap().into_luma8();
        let dark = |x: u32, y: u32| drawn.get_pixel(x, y).0[0] < 200;
        let (width, height) = drawn.dimensions();
        let ink = (0..height).flat_map(|y| (0..width).map(move |x| (x, y))).filter(|(x, y)| dark(*x, *y));
        let share = ink.count() as f64 / f64::from(width * height);
        assert!(share > 0.002, "{}: page {page} is blank ({share})", path.display());
        let edge = (0..height).any(|y| dark(2, y) || dark(width - 3, y));
        assert!(!edge, "{}: page {page} runs to its edge", path.display());
    }
}

/// The word and headline of a visit stand on its paper, in the paper's language.
#[track_caller]
fn check_says(path: &Path, locale: &str, word: &str) {
    let words = Words::of(locale).unwrap();
    let text = flat(path, words);
    for id in [format!("word-{word}"), format!("headline-{word}")] {
        let wanted = letters(&words.text(&id));
        assert!(letters(&text).contains(&wanted), "{}: no {wanted:?} in {text}", path.display());
    }
    assert!(!text.contains('\u{fffd}'), "{}: a letter is lost", path.display());
}

fn cases() -> Vec<PathBuf> {
    let files = std::fs::read_dir(root().join("demo-data")).unwrap().flatten().map(|file| file.path());
    let mut cases: Vec<PathBuf> =
        files.filter(|path| path.extension().is_some_and(|ending| ending == "json")).collect();
    cases.sort();
    cases
}

fn is(case: &Path, number: &str) -> bool {
    case.file_name().unwrap().to_string_lossy().starts_with(number)
}

#[test]
fn demo_papers_are_sound_in_every_language() {
    let all = std::env::var("STEADY_PAPERS").is_ok_and(|which| which == "all");
    let out = root().join("target/papers");
    std::fs::create_dir_all(&out).unwrap();
    let chosen: Vec<PathBuf> =
        cases().into_iter().filter(|case| all || SAMPLE.iter().any(|number| is(case, number))).collect();
    let next = std::sync::Mutex::new(chosen.iter());
    // A visit at a time for each processor; each prints from a data folder of its own.
    let print_rest = || {
        let mut papers = 0;
        loop {
            let Some(case) = next.lock().unwrap().next() else { return papers };
            papers += print_visit(case, &out, all);
        }
    };
    let hands = std::thread::available_parallelism().map_or(1, std::num::NonZero::get);
    let papers: usize = std::thread::scope(|scope| {
        let printing: Vec<_> = (0..hands).map(|_| scope.spawn(print_rest)).collect();
        printing.into_iter().map(|hand| hand.join().unwrap()).sum()
    });
    let languages = Words::locales().len();
    assert_eq!(papers, if all { cases().len() * languages * 2 * 2 } else { 2 * languages * 2 });
}

/// Prints a demo visit's papers and checks each; how many there were.
fn print_visit(case: &Path, out: &Path, all: bool) -> usize {
    let data = tempfile::tempdir().unwrap();
    let steady = printing(data.path());
    let text = std::fs::read_to_string(case).unwrap();
    let replayed = replay(&steady, &text, &root().join("demo-data")).unwrap();
    let word = replayed.report["urgency"]["word"].as_str().unwrap_or("unrated").to_ascii_lowercase();
    let stem = case.file_stem().unwrap().to_string_lossy().into_owned();
    let mut papers = 0;
    for (at, locale) in Words::locales().into_iter().enumerate() {
        // The sample prints each language on one of the sheets.
        let sheets = SHEETS.iter().enumerate().filter(|(sheet, _)| all || *sheet == at % SHEETS.len());
        let sheets = sheets.map(|(_, sheet)| sheet);
        for (sheet, size) in sheets {
            for kind in ["finding", "note"] {
                let path = out.join(format!("{stem}-{kind}-{locale}-{sheet}.pdf"));
                std::fs::write(&path, paper(&steady, &replayed.visit, kind, locale, sheet)).unwrap();
                check(&path, kind, locale, *size);
                check_says(&path, locale, &word);
                papers += 1;
            }
        }
    }
    papers
}

#[test]
fn names_keep_their_letters_in_every_language() {
    let data = tempfile::tempdir().unwrap();
    let steady = printing(data.path());
    let names = [
        "Åström",
        "Łukasz",
        "O'Brien",
        "Nguyễn",
        "Müßig",
        "Peña",
        "Lœuf",
        "Dvořák",
        "Žižić",
        "İpek",
        "\u{5E9}\u{5DC}\u{5D5}\u{5DD}",
        "\u{645}\u{631}\u{64A}\u{645}",
    ];
    // Letters that no font here has print as a sign that the paper explains.
    let owner = format!("{} \u{592A}\u{90CE}", names.join(" "));
    steady.handle(Request::SetTechnician { name: owner.clone() }).unwrap();
    let intake = json!({
        "vehicle": { "layout": "rigid-engine-speed", "label": owner, "plate": "ÅŁ 4417", "vin": "" },
        "owner": { "name": owner, "contact": "" }, "complaint": owner, "complaint_sounds": [], "when": "",
    });
    let Response::Visit(standing) = asked(&steady, json!({ "ask": "open", "intake": intake })) else {
        panic!("no visit")
    };
    for locale in Words::locales() {
        for kind in ["finding", "note"] {
            let path = data.path().join(format!("{kind}-{locale}.pdf"));
            std::fs::write(&path, paper(&steady, &standing.visit, kind, locale, "a4")).unwrap();
            let words = Words::of(locale).unwrap();
            let text = flat(&path, words);
            for name in names {
                assert!(text.contains(name), "{kind} in {locale}: no {name} in {text}");
            }
            let said = letters(&words.text("paper-label-unprintable"));
            assert!(text.contains("[…]") && letters(&text).contains(&said), "{kind} in {locale}: {text}");
            assert!(!text.contains('\u{fffd}'), "{kind} in {locale}: {text}");
        }
    }
}

#[test]
fn a_receipt_records_the_language_that_was_signed() {
    let data = tempfile::tempdir().unwrap();
    let steady = printing(data.path());
    let case = std::fs::read_to_string(cases().remove(3)).unwrap();
    let visit = replay(&steady, &case, &root().join("demo-data")).unwrap().visit;
    let note = |locale: &str| {
        let Response::Note(note) = asked(&steady, json!({ "ask": "note", "visit": visit, "locale": locale }))
        else {
            panic!("no note")
        };
        note
    };
    let (german, spanish) = (note("de"), note("es"));
    assert_ne!(german.sha256, spanish.sha256);
    let sign = |sha256: &str| {
        json!({
            "ask": "sign", "visit": visit, "decision": "repair", "name": "R. Example", "locale": "es",
            "note_sha256": sha256, "strokes": [[[0.1, 0.5], [0.5, 0.2], [0.9, 0.5]]]
        })
    };
    let refused = steady.handle(serde_json::from_value(sign(&german.sha256)).unwrap()).unwrap_err();
    assert_eq!(refused.code, "note-changed");
    asked(&steady, sign(&spanish.sha256));
    let kept = rusqlite::Connection::open(data.path().join("steady.db")).unwrap();
    let bodies: String =
        kept.query_row("SELECT body FROM entry ORDER BY id DESC LIMIT 1", [], |row| row.get(0)).unwrap();
    assert!(bodies.contains("\"locale\":\"es\""), "{bodies}");
    assert!(note("de").signed.unwrap().note_line.contains(&spanish.sha256));
    // A note in another language says which one carries the signature.
    for (locale, name, said) in [("es", "Español", false), ("de", "Sprache: Español", true)] {
        let signed = note(locale).signed.unwrap().text;
        assert_eq!(signed.contains(name), said, "{signed}");
    }
}
