//! The short text as a QR code, read back from its drawing by a second library.

use serde_json::json;
use steady_core::app::Steady;
use steady_core::app::request::Request;
use steady_core::app::response::{QrCode, Response};
use steady_core::words::Words;

use crate::support::{ask, code, scratch};

/// Light modules round a code, ISO/IEC 18004, 9.1.
const QUIET_ZONE: usize = 4;
/// Dots a module is drawn with.
const DOTS: usize = 3;

fn qr_code(steady: &Steady, visit: &str, locale: &str) -> QrCode {
    let request = Request::QrCode { visit: visit.to_owned(), locale: locale.to_owned() };
    let Response::QrCode(qr_code) = steady.handle(request).unwrap() else { panic!("no code") };
    qr_code
}

fn short_text(steady: &Steady, visit: &str, locale: &str) -> String {
    let Response::Note(note) =
        steady.handle(Request::Note { visit: visit.to_owned(), locale: locale.to_owned() }).unwrap()
    else {
        panic!("no note")
    };
    note.short_text
}

/// Which modules the path makes dark, row by row. It knows only what the path is made of: `Mx,yhNv1h-Nz`.
pub fn modules(qr_code: &QrCode) -> Vec<Vec<bool>> {
    let side = qr_code.side as usize;
    let mut dark = vec![vec![false; side]; side];
    for run in qr_code.path.split('M').skip(1) {
        let (corner, rest) = run.split_once('h').unwrap();
        let (x, y) = corner.split_once(',').unwrap();
        let (length, rest) = rest.split_once("v1h-").unwrap();
        assert_eq!(rest, format!("{length}z"));
        let (x, y, length): (usize, usize, usize) =
            (x.parse().unwrap(), y.parse().unwrap(), length.parse().unwrap());
        dark[y][x..x + length].fill(true);
    }
    dark
}

pub fn read_back(dark: &[Vec<bool>]) -> String {
    let side = dark.len() * DOTS;
    let shade = |x: usize, y: usize| if dark[y / DOTS][x / DOTS] { 0 } else { 255 };
    let mut picture = rqrr::PreparedImage::prepare_from_greyscale(side, side, shade);
    let grids = picture.detect_grids();
    assert_eq!(grids.len(), 1, "{} codes found", grids.len());
    grids[0].decode().unwrap().1
}

/// Names that only come through where bytes are read as UTF-8, and those that need no more than ASCII.
#[test]
fn a_second_library_reads_the_short_text_back_in_every_language() {
    for label in ["Åström", "Łukasz", "O'Brien", "Nguyễn", "plain", "\u{65E5}\u{672C}", ""] {
        let (_folder, steady) = scratch();
        let intake = json!({ "vehicle": { "layout": "rigid-engine-speed", "label": label } });
        let visit = ask(&steady, json!({ "ask": "open", "intake": intake })).visit;
        for locale in Words::locales() {
            let qr_code = qr_code(&steady, &visit, locale);
            assert_eq!(qr_code.text, short_text(&steady, &visit, locale), "{label} in {locale}");
            assert_eq!(read_back(&modules(&qr_code)), qr_code.text, "{label} in {locale}");
            assert!(qr_code.text.contains(label), "{label} in {locale}");
        }
    }
}

#[test]
fn the_code_has_its_quiet_zone_and_fits_a_phone() {
    let (_folder, steady) = scratch();
    let visit =
        ask(&steady, json!({ "ask": "open", "intake": { "vehicle": { "layout": "rubber-centre" } } })).visit;
    for locale in Words::locales() {
        let qr_code = qr_code(&steady, &visit, locale);
        let (dark, side) = (modules(&qr_code), qr_code.side as usize);
        for (y, row) in dark.iter().enumerate() {
            for (x, module) in row.iter().enumerate() {
                let within = |at: usize| (QUIET_ZONE..side - QUIET_ZONE).contains(&at);
                assert!(!module || within(x) && within(y), "dark at {x}, {y} of {side}");
            }
        }
        assert!(dark[QUIET_ZONE][QUIET_ZONE], "the first finder starts at the quiet zone");
        // 320 of a phone's 360 dots across: a module keeps three.
        assert!(side <= 106, "{side} modules in {locale}");
    }
}

#[test]
fn a_code_needs_a_visit_and_a_language() {
    let (_folder, steady) = scratch();
    assert_eq!(
        code(&steady, json!({ "ask": "qr-code", "visit": "nobody", "locale": "en" })),
        "unknown-visit"
    );
    let visit =
        ask(&steady, json!({ "ask": "open", "intake": { "vehicle": { "layout": "rubber-centre" } } })).visit;
    assert_eq!(code(&steady, json!({ "ask": "qr-code", "visit": visit, "locale": "tlh" })), "unknown-locale");
}
