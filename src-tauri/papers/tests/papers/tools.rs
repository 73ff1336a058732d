//! Prints a paper and reads it back: qpdf and poppler's tools, from Debian.

use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::LazyLock;

use steady_core::app::press::{Paper, PhotoFound, Press, PressError, PrintRun};
use steady_core::app::request::Sheet;
use steady_core::model::time::Moment;
use steady_papers::{TypstPress, press};

/// 25 November 2026, 09:30 UTC.
pub const AT: Moment = Moment(1_795_599_000_000);

static PRESS: LazyLock<TypstPress> = LazyLock::new(|| press().expect("the press starts"));

/// Every photo missing.
pub fn no_photos(_: &str) -> Option<Vec<u8>> {
    None
}

pub fn print_with(
    paper: Paper<'_>,
    sheet: Sheet,
    photo: &dyn Fn(&str) -> Option<Vec<u8>>,
) -> Result<Vec<u8>, PressError> {
    let photo = |sha256: &str| photo(sha256).map_or(PhotoFound::Missing, PhotoFound::Whole);
    PRESS.print(paper, &PrintRun { sheet, at: AT, photo: &photo })
}

/// Prints with every photo's file damaged, keeps the paper under `name` and returns its path.
pub fn keep_with_damaged_photos(name: &str, paper: Paper<'_>) -> PathBuf {
    let run = PrintRun { sheet: Sheet::A4, at: AT, photo: &|_| PhotoFound::Damaged };
    kept(name, &PRESS.print(paper, &run).unwrap_or_else(|error| panic!("{name}: {error}")))
}

/// Prints, keeps the file under `name` and returns its path.
#[track_caller]
pub fn keep(name: &str, paper: Paper<'_>, sheet: Sheet, photo: &dyn Fn(&str) -> Option<Vec<u8>>) -> PathBuf {
    let pdf = print_with(paper, sheet, photo).unwrap_or_else(|error| panic!("{name}: {error}"));
    kept(name, &pdf)
}

fn kept(name: &str, pdf: &[u8]) -> PathBuf {
    let path = Path::new(env!("CARGO_TARGET_TMPDIR")).join(format!("{name}.pdf"));
    std::fs::write(&path, pdf).expect("the test folder can be written");
    path
}

/// Sound by qpdf, fonts embedded, the expected sheet; returns the number of pages.
#[track_caller]
pub fn check_form(path: &Path, sheet: Sheet) -> usize {
    tool("qpdf", &["--check", "--no-warn"], path);
    let info = tool("pdfinfo", &[], path);
    let size = match sheet {
        Sheet::A4 => "595.276 x 841.89 pts (A4)",
        Sheet::UsLetter => "612 x 792 pts (letter)",
    };
    let value = |name: &str| {
        let line = info.lines().find_map(|line| line.strip_prefix(name));
        line.unwrap_or_else(|| panic!("pdfinfo names no {name} {info}")).trim().to_owned()
    };
    assert_eq!(value("Page size:"), size);
    assert_eq!(value("Tagged:"), "yes");
    assert_ne!(value("Title:"), "");
    assert!(value("CreationDate:").contains("2026"), "{info}");
    let fonts = tool("pdffonts", &[], path);
    let rows: Vec<&str> = fonts.lines().skip(2).collect();
    assert!(!rows.is_empty(), "no font at all: {fonts}");
    for row in rows {
        assert!(row.contains("NotoSans") || row.contains("NotoEmoji"), "a foreign font: {row}");
        assert!(row.contains(" yes yes yes "), "a font that is not embedded: {row}");
    }
    value("Pages:").parse().expect("a number of pages")
}

/// The text with every run of white space made one space, for sentences that wrap.
#[track_caller]
pub fn flat_text(path: &Path) -> String {
    let raw = tool("pdftotext", &["-raw"], path);
    raw.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Room between a word and the text above it, points: from the bottom of the letters there to the top of its own.
#[track_caller]
pub fn room_above(path: &Path, word: &str) -> f64 {
    let told = tool("pdftotext", &["-bbox"], path);
    let rows: Vec<&str> = told.lines().filter(|line| line.trim_start().starts_with("<word")).collect();
    let number = |row: &str, name: &str| -> f64 {
        let (_, rest) = row.split_once(&format!("{name}=\"")).expect("a box has its sides");
        rest.split('"').next().unwrap_or_default().parse().expect("a number")
    };
    let end = format!(">{word}</word>");
    let own =
        rows.iter().rfind(|row| row.ends_with(&end)).unwrap_or_else(|| panic!("{word} is not on the paper"));
    let top = number(own, "yMin");
    let above = rows.iter().map(|row| number(row, "yMax")).filter(|bottom| *bottom < top + 3.0);
    top - above.fold(0.0, f64::max)
}

/// What the document says of itself to a screen reader.
#[track_caller]
pub fn structure(path: &Path) -> String {
    tool("pdfinfo", &["-struct-text"], path)
}

/// The bytes of an attached file.
#[track_caller]
pub fn attachment(path: &Path, name: &str) -> Vec<u8> {
    run(Command::new("qpdf").arg(path).arg(format!("--show-attachment={name}")))
}

/// Every page drawn at 100 dots an inch: red, green and blue of one dot after the other.
#[track_caller]
pub fn pixels(path: &Path) -> Vec<u8> {
    let drawn = run(Command::new("pdftoppm").args(["-r", "100"]).arg(path));
    let (mut rest, mut dots) = (drawn.as_slice(), Vec::new());
    // A page is `P6`, width and height, 255, one line each, then its dots (netpbm's PPM).
    while !rest.is_empty() {
        let mut lines = rest.splitn(4, |byte| *byte == b'\n');
        assert_eq!(lines.next(), Some(&b"P6"[..]), "pdftoppm wrote no PPM");
        let sides = lines.next().and_then(|line| std::str::from_utf8(line).ok()).expect("a size");
        let bytes =
            sides.split(' ').map(|side| side.parse::<usize>().expect("a side")).product::<usize>() * 3;
        let body = lines.nth(1).expect("dots");
        dots.extend(&body[..bytes]);
        rest = &body[bytes..];
    }
    dots
}

#[track_caller]
fn tool(name: &str, options: &[&str], path: &Path) -> String {
    let mut command = Command::new(name);
    command.args(options).arg(path);
    if name == "pdftotext" {
        command.arg("-");
    }
    String::from_utf8(run(&mut command)).expect("the tool answers in UTF-8")
}

#[track_caller]
fn run(command: &mut Command) -> Vec<u8> {
    let name = command.get_program().to_string_lossy().into_owned();
    let out = command.output().unwrap_or_else(|error| {
        panic!("{name} does not start ({error}); install it: apt-get install qpdf poppler-utils")
    });
    let said = String::from_utf8_lossy(&out.stderr);
    assert!(out.status.success(), "{name}: {said} {}", String::from_utf8_lossy(&out.stdout));
    out.stdout
}
