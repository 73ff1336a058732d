//! Marks over photos and pairs of photos: entries over an untouched photo, bounded, taken back by undo,
//! carried by a handover, and in every paper.

use base64::Engine;
use image::{ExtendedColorType, ImageEncoder, Rgb, RgbImage};
use serde_json::{Value, json};
use steady_core::app::request::Request;
use steady_core::app::response::{History, Response};
use steady_core::app::{PhotoSize, Steady};
use steady_core::content::finding::Finding;
use steady_core::content::shared::PhotoLine;
use steady_core::model::mark::Mark;
use steady_core::model::standing::{Standing, StepStand};

use crate::handover::exported;
use crate::support::{ask, code, scratch};

const STEP: &str = "housing-look";

/// A small JPEG of one colour.
pub fn jpeg(shade: u8) -> Vec<u8> {
    let picture = RgbImage::from_pixel(320, 240, Rgb([shade, shade / 2, 90]));
    let mut bytes = Vec::new();
    image::codecs::jpeg::JpegEncoder::new_with_quality(&mut bytes, 90)
        .write_image(picture.as_raw(), 320, 240, ExtendedColorType::Rgb8)
        .unwrap();
    bytes
}

/// Sends bytes as an upload; gives back its name.
pub fn upload(steady: &Steady, bytes: &[u8]) -> String {
    let upload = uuid(bytes);
    let base64 = base64::engine::general_purpose::STANDARD.encode(bytes);
    assert_eq!(
        code(steady, json!({ "ask": "upload", "upload": upload, "index": 0, "base64": base64 })),
        "ok"
    );
    upload
}

/// A name made from the bytes: a test has no chance in it.
fn uuid(bytes: &[u8]) -> String {
    let sum = bytes.iter().fold(7_u64, |sum, byte| sum.wrapping_mul(31).wrapping_add(u64::from(*byte)));
    format!("0191d2f0-0000-7000-8000-{:012x}", sum & 0xffff_ffff_ffff)
}

pub fn visit(steady: &Steady) -> String {
    ask(steady, json!({ "ask": "open", "intake": { "vehicle": { "layout": "rigid-engine-speed" } } })).visit
}

fn keep(steady: &Steady, visit: &str, shade: u8) -> String {
    let upload = upload(steady, &jpeg(shade));
    let request = json!({ "ask": "keep-photo", "visit": visit, "step": STEP, "upload": upload });
    step(&ask(steady, request)).photo.as_ref().unwrap().photo.sha256.clone()
}

fn step(standing: &Standing) -> &StepStand {
    standing.steps.iter().find(|step| step.id == STEP).unwrap()
}

fn mark(visit: &str, photo: &str, marks: Value) -> Value {
    json!({ "ask": "mark-photo", "visit": visit, "step": STEP, "photo": photo, "marks": marks })
}

fn look(steady: &Steady, visit: &str) -> Standing {
    ask(steady, json!({ "ask": "look", "visit": visit }))
}

fn undo(steady: &Steady, standing: &Standing) -> Standing {
    let entry = &standing.undo.as_ref().unwrap().entry;
    ask(steady, json!({ "ask": "undo", "visit": standing.visit, "entry": entry }))
}

fn arrow() -> Value {
    json!({ "shape": "arrow", "from": [0.1, 0.9], "to": [0.5, 0.5] })
}

fn label(text: &str) -> Value {
    json!({ "shape": "label", "at": [0.5, 0.1], "text": text })
}

fn finding(steady: &Steady, visit: &str) -> Finding {
    let request = Request::Finding { visit: visit.to_owned(), locale: "en".to_owned() };
    let Response::Finding(finding) = steady.handle(request).unwrap() else { panic!("no finding") };
    *finding
}

fn note_photo(steady: &Steady, visit: &str) -> (PhotoLine, String) {
    let request = Request::Note { visit: visit.to_owned(), locale: "en".to_owned() };
    let Response::Note(note) = steady.handle(request).unwrap() else { panic!("no note") };
    (note.photo.unwrap(), note.sha256)
}

fn said(steady: &Steady, visit: &str) -> Vec<String> {
    let Response::History(History { entries, .. }) =
        steady.handle(Request::History { visit: visit.to_owned() }).unwrap()
    else {
        panic!("no history")
    };
    entries.into_iter().map(|entry| entry.what).collect()
}

#[test]
fn marks_lie_over_an_untouched_photo_and_undo_takes_the_last_set_back() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady);
    let photo = keep(&steady, &visit, 200);
    let before = steady.photo(&photo, PhotoSize::Full).unwrap();
    let first = ask(&steady, mark(&visit, &photo, json!([arrow()])));
    assert_eq!(step(&first).photo.as_ref().unwrap().marks.len(), 1);
    let second = ask(&steady, mark(&visit, &photo, json!([arrow(), label(" crack ")])));
    let marks = &step(&second).photo.as_ref().unwrap().marks;
    assert_eq!(marks.get(1).and_then(Mark::words), Some("crack"), "spaces around words are no words");
    assert_eq!(steady.photo(&photo, PhotoSize::Full).unwrap(), before);
    assert_eq!(second.undo.as_ref().map(|offer| offer.what.as_str()), Some("photo-marked"));
    let back = undo(&steady, &second);
    assert_eq!(step(&back).photo.as_ref().unwrap().marks, step(&first).photo.as_ref().unwrap().marks);
    let bare = undo(&steady, &back);
    assert!(step(&bare).photo.as_ref().unwrap().marks.is_empty());
    assert_eq!(said(&steady, &visit)[2..], ["photo-marked", "photo-marked", "withdrawn", "withdrawn"]);
}

#[test]
fn the_same_marks_again_write_nothing_and_none_take_all_away() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady);
    let photo = keep(&steady, &visit, 200);
    let marked = ask(&steady, mark(&visit, &photo, json!([arrow()])));
    let again = ask(&steady, mark(&visit, &photo, json!([arrow()])));
    assert_eq!(again.ledger, marked.ledger);
    let bare = ask(&steady, mark(&visit, &photo, json!([])));
    assert!(step(&bare).photo.as_ref().unwrap().marks.is_empty());
    assert_eq!(bare.ledger.entries, marked.ledger.entries + 1);
}

#[test]
fn marks_have_bounds_on_both_sides() {
    let line = |spots: usize| {
        let points: Vec<[f64; 2]> = (0..spots).map(|at| [at as f64 / 400.0, 0.5]).collect();
        json!({ "shape": "freehand", "points": points })
    };
    let ring =
        |wide: f64, high: f64| json!({ "shape": "ring", "corners": [[0.5, 0.5], [0.5 + wide, 0.5 + high]] });
    let shaft = |x: f64| json!({ "shape": "arrow", "from": [0.5, 0.5], "to": [x, 0.5] });
    let many = |count: usize| Value::Array(vec![arrow(); count]);
    let (_folder, steady) = scratch();
    let visit = visit(&steady);
    let photo = keep(&steady, &visit, 200);
    for (marks, verdict) in [
        (many(12), "ok"),
        (many(13), "marks-too-many"),
        (json!([line(2)]), "ok"),
        (json!([line(1)]), "mark-refused"),
        (json!([line(0)]), "mark-refused"),
        (json!([line(200)]), "ok"),
        (json!([line(201)]), "mark-refused"),
        (json!([shaft(1.0)]), "ok"),
        (json!([shaft(1.001)]), "mark-refused"),
        (json!([shaft(-0.001)]), "mark-refused"),
        (json!([shaft(0.5)]), "mark-refused"),
        (json!([shaft(1e300)]), "mark-refused"),
        (json!([ring(0.02, 0.02)]), "ok"),
        (json!([ring(0.5, 0.0)]), "mark-refused"),
        (json!([ring(0.0, 0.5)]), "mark-refused"),
        (json!([label("x")]), "ok"),
        (json!([label(&"x".repeat(40))]), "ok"),
        (json!([label(&"x".repeat(41))]), "mark-label-refused"),
        (json!([label("  ")]), "mark-label-refused"),
        (json!([label("two\nlines")]), "mark-label-refused"),
        (json!([label("a\u{202E}b")]), "mark-label-refused"),
        (json!([label("a\u{0}b")]), "mark-label-refused"),
        (json!([label("<b>&amp;#panic(\"x\") \u{1F697}")]), "ok"),
    ] {
        let entries = look(&steady, &visit).ledger.entries;
        assert_eq!(code(&steady, mark(&visit, &photo, marks.clone())), verdict, "{marks}");
        let written = look(&steady, &visit).ledger.entries - entries;
        assert_eq!(written, u64::from(verdict == "ok"), "{marks}");
    }
}

#[test]
fn only_a_photo_of_the_step_is_marked_or_paired() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady);
    let nothing = "0".repeat(64);
    assert_eq!(code(&steady, mark(&visit, &nothing, json!([arrow()]))), "photo-not-of-step");
    let pair =
        |before: Value| json!({ "ask": "pair-photos", "visit": visit, "step": STEP, "before": before });
    assert_eq!(code(&steady, pair(json!(nothing))), "photo-not-of-step");
    let photo = keep(&steady, &visit, 200);
    assert_eq!(code(&steady, pair(json!(photo))), "photo-not-of-step", "beside itself");
    let elsewhere =
        json!({ "ask": "mark-photo", "visit": visit, "step": "shaft-look", "photo": photo, "marks": [] });
    assert_eq!(code(&steady, elsewhere), "photo-not-of-step");
    let nowhere =
        json!({ "ask": "mark-photo", "visit": visit, "step": "no-step", "photo": photo, "marks": [] });
    assert_eq!(code(&steady, nowhere), "unknown-step");
}

#[test]
fn papers_carry_marks_and_their_alt_text_says_them() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady);
    let photo = keep(&steady, &visit, 200);
    let (plain, unmarked) = note_photo(&steady, &visit);
    assert!(plain.marks.is_empty() && !plain.alt.contains("marked"));
    ask(&steady, mark(&visit, &photo, json!([arrow()])));
    assert!(note_photo(&steady, &visit).0.alt.ends_with("The photo is marked."));
    ask(&steady, mark(&visit, &photo, json!([arrow(), label("crack"), label("<b>bright</b>")])));
    let (in_note, marked) = note_photo(&steady, &visit);
    let in_finding = finding(&steady, &visit).steps.into_iter().find_map(|line| line.photo).unwrap();
    for line in [in_note, in_finding] {
        assert_eq!(line.marks.len(), 3);
        assert!(line.alt.contains("Marked on it: crack, <b>bright</b>."), "{}", line.alt);
        assert!(line.caption.contains("Marked: crack, <b>bright</b>"), "{}", line.caption);
    }
    assert_ne!(unmarked, marked, "the owner signs for what the photo shows");
}

#[test]
fn a_marked_photo_outdates_the_receipt() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady);
    let photo = keep(&steady, &visit, 200);
    let (_, sha256) = note_photo(&steady, &visit);
    let sign = json!({ "ask": "sign", "visit": visit, "decision": "repair", "note_sha256": sha256, "locale": "en",
        "strokes": [[[0.1, 0.1], [0.5, 0.6]]] });
    assert!(!ask(&steady, sign).receipt.unwrap().outdated);
    assert!(ask(&steady, mark(&visit, &photo, json!([arrow()]))).receipt.unwrap().outdated);
}

#[test]
fn a_pair_is_chosen_shown_in_the_finding_and_ended_by_a_newer_photo() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady);
    let before = keep(&steady, &visit, 40);
    let after = keep(&steady, &visit, 200);
    assert!(finding(&steady, &visit).steps.iter().all(|line| line.before.is_none()), "paired unasked");
    let pair =
        |before: Value| json!({ "ask": "pair-photos", "visit": visit, "step": STEP, "before": before });
    let paired = ask(&steady, pair(json!(before)));
    assert_eq!(step(&paired).before.as_ref().unwrap().photo.sha256, before);
    assert_eq!(paired.undo.as_ref().map(|offer| offer.what.as_str()), Some("photos-paired"));
    let line = finding(&steady, &visit).steps.into_iter().find(|line| line.step == STEP).unwrap();
    let [first, second] = [line.before.unwrap(), line.photo.unwrap()];
    assert_eq!((&first.sha256, &second.sha256), (&before, &after));
    assert!(first.caption.starts_with("Before, ") && second.caption.starts_with("After, "));
    assert_eq!(ask(&steady, pair(json!(before))).ledger, paired.ledger, "the same pair again");
    assert!(step(&ask(&steady, pair(Value::Null))).before.is_none());
    ask(&steady, pair(json!(before)));
    keep(&steady, &visit, 120);
    let newer = look(&steady, &visit);
    assert!(step(&newer).before.is_none(), "a newer photo stands alone");
    assert_eq!(step(&newer).earlier.len(), 2, "earlier photos stay");
    assert!(step(&undo(&steady, &newer)).before.is_some(), "the pair stands again without it");
}

#[test]
fn a_handover_carries_marks_and_pairs() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady);
    let before = keep(&steady, &visit, 40);
    let after = keep(&steady, &visit, 200);
    ask(&steady, mark(&visit, &after, json!([arrow(), label("Łukasz: crack")])));
    let here = ask(&steady, json!({ "ask": "pair-photos", "visit": visit, "step": STEP, "before": before }));
    let file = exported(&steady, &[&visit]);
    let (_other, other) = scratch();
    other.import(&mut &*file).unwrap();
    let there = look(&other, &visit);
    assert_eq!(step(&there).photo, step(&here).photo);
    assert_eq!(step(&there).before, step(&here).before);
    assert_eq!(there.ledger.broken_at, None);
    assert_eq!(
        other.photo(&before, PhotoSize::Full).unwrap(),
        steady.photo(&before, PhotoSize::Full).unwrap()
    );
}

/// A waiver is chosen from the list or typed; both are in the finding, and neither is endless.
#[test]
fn a_waived_photo_says_why_in_the_finding() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady);
    let waive =
        |reason: &str| json!({ "ask": "waive-photo", "visit": visit, "step": STEP, "reason": reason });
    for (reason, shown) in [
        ("too-dark", "No photo: Too dark"),
        ("oil over <b>everything</b>", "No photo: oil over <b>everything</b>"),
    ] {
        ask(&steady, waive(reason));
        let line = finding(&steady, &visit).steps.into_iter().find(|line| line.step == STEP).unwrap();
        assert!(
            line.waiver.as_deref().is_some_and(|why| why.starts_with(shown)),
            "{reason}: {:?}",
            line.waiver
        );
    }
    assert_eq!(code(&steady, waive(&"x".repeat(200))), "ok");
    assert_eq!(code(&steady, waive(&"x".repeat(201))), "waiver-too-long");
    keep(&steady, &visit, 200);
    let line = finding(&steady, &visit).steps.into_iter().find(|line| line.step == STEP).unwrap();
    assert_eq!(line.waiver, None, "a photo that came after all says more");
}
