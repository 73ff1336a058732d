//! The owner's note on paper.

use steady_core::app::press::Paper;
use steady_core::app::request::Sheet;
use steady_core::content::note::Note;

use crate::sample::{self, BANDS, HOSTILE};
use crate::tools::{check_form, flat_text, keep, no_photos, print_with, room_above};

const DRAWINGS: [&str; 3] = ["rigid", "rubber", "tube"];

#[test]
fn every_rating_is_one_page_on_both_sheets() {
    #[track_caller]
    fn check(name: &str, note: &Note, sheet: Sheet) {
        let path = keep(name, Paper::Note(note), sheet, &sample::jpeg);
        assert_eq!(check_form(&path, sheet), 1, "{name}");
        let text = flat_text(&path);
        let mut expected: Vec<&str> =
            vec![&note.band.label, &note.band.headline, &note.receipt_heading, "TR 4417"];
        expected.extend(note.sections.iter().map(|section| section.heading.as_str()));
        expected.extend(note.decisions.iter().map(|decision| decision.label.as_str()));
        for part in expected {
            assert!(text.contains(part), "{name}: {part} is not on the paper");
        }
    }
    for (index, (word, ..)) in BANDS.into_iter().enumerate() {
        let note = sample::note(word, DRAWINGS[index % DRAWINGS.len()]);
        check(&format!("note-{word}-a4"), &note, Sheet::A4);
        check(&format!("note-{word}-letter"), &note, Sheet::UsLetter);
    }
}

#[test]
fn long_text_still_fits_one_page() {
    let mut note = sample::note("danger", "rubber");
    for section in &mut note.sections {
        section.text.push("It can grow worse without a sound, and nobody can tell from the seat.".repeat(3));
    }
    // However full the page, what stands above the receipt's frame does not touch it: 3 mm of it are inside.
    note.receipt_heading = "RECEIPT".to_owned();
    for more in 0..4 {
        let path = keep("note-long", Paper::Note(&note), Sheet::A4, &sample::jpeg);
        assert_eq!(check_form(&path, Sheet::A4), 1);
        let room = room_above(&path, "RECEIPT");
        assert!(room > 10.0, "{more}: {room} points");
        note.sections[0].text.push("One more sentence for the page, of some length.".to_owned());
    }
}

#[test]
fn text_beyond_one_page_runs_on_and_loses_nothing() {
    let mut note = sample::note("danger", "tube");
    note.sections[0].text = vec![HOSTILE.to_owned(), "W".repeat(10_000)];
    note.sections[1].heading = HOSTILE.to_owned();
    note.vehicle[0].value = HOSTILE.to_owned();
    let path = keep("note-hostile", Paper::Note(&note), Sheet::A4, &sample::jpeg);
    let pages = check_form(&path, Sheet::A4);
    let text = flat_text(&path);
    assert!((2..12).contains(&pages), "{pages} pages");
    let long_run = text.chars().filter(|c| *c == 'W').count();
    assert!(long_run >= 10_000, "only {long_run} of 10,000 letters are on the paper");
    assert!(text.contains("#panic(\"x\") $a_1^2$ *bold*"), "markup was not printed as text");
    assert!(text.contains("I was told the risk"), "the receipt is missing");
}

#[test]
fn a_signed_note_shows_the_decision_and_no_empty_boxes() {
    let mut note = sample::note("danger", "rigid");
    note.signed = Some(sample::signed());
    let path = keep("note-signed", Paper::Note(&note), Sheet::A4, &sample::jpeg);
    assert_eq!(check_form(&path, Sheet::A4), 1);
    let text = flat_text(&path);
    assert!(text.contains("Note received on 25 November 2026"), "{text}");
    assert!(!text.contains("I was told the risk"), "a signed note still asks");
}

#[test]
fn a_note_without_photo_or_with_a_lost_one_prints() {
    let mut note = sample::note("unrated", "rigid");
    let lost = keep("note-photo-lost", Paper::Note(&note), Sheet::A4, &no_photos);
    assert!(flat_text(&lost).contains("its file could not be read"));
    note.photo = None;
    note.drawing = "no-such-drawing".into();
    let plain = keep("note-plain", Paper::Note(&note), Sheet::A4, &no_photos);
    assert_eq!(check_form(&plain, Sheet::A4), 1);
    assert!(!flat_text(&plain).contains("its file could not be read"));
}

#[test]
fn the_same_note_gives_the_same_bytes() {
    let note = sample::note("notice", "tube");
    let print = || print_with(Paper::Note(&note), Sheet::UsLetter, &sample::jpeg).expect("it prints");
    assert!(print() == print(), "two prints differ");
}
