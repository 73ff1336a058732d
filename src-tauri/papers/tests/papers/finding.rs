//! The service writer's finding on paper.

use steady_core::app::press::Paper;
use steady_core::app::request::Sheet;

use crate::sample::{self, BANDS, HOSTILE};
use crate::tools::{
    attachment, check_form, flat_text, keep, keep_with_damaged_photos, no_photos, print_with, structure,
};

#[test]
fn every_rating_prints_on_both_sheets() {
    #[track_caller]
    fn check(word: &str, sheet: Sheet, label: &str, headline: &str) {
        let finding = sample::finding(word, 2);
        let path = keep(&format!("finding-{word}-{sheet:?}"), Paper::Finding(&finding), sheet, &sample::jpeg);
        let pages = check_form(&path, sheet);
        let text = flat_text(&path);
        for expected in [label, headline, "97%", "extremely likely", "Movement felt", "Page 1 of", "TR 4417"]
        {
            assert!(text.contains(expected), "{word}: {expected} is not on the paper");
        }
        assert!(text.contains(&format!("Page {pages} of {pages}")), "{word}: no last page");
    }
    for (word, label, headline) in BANDS {
        check(word, Sheet::A4, label, headline);
        check(word, Sheet::UsLetter, label, headline);
    }
}

#[test]
fn every_part_is_on_the_paper_in_its_order() {
    let finding = sample::finding("danger", 1);
    let path = keep("finding-order", Paper::Finding(&finding), Sheet::A4, &sample::jpeg);
    let text = flat_text(&path);
    let parts = [
        "DO NOT DRIVE this car",
        "Movement was felt up and down",
        "Vehicle and visit",
        "Complaint",
        "Why this rating",
        "Scope of work",
        "The bench came to this",
        "never a quote",
        "Likely causes",
        "What was checked",
        "Not checked: Misfire counts",
        "Gauge readings",
        "What is not known",
        "Roadworthiness rules",
        "Cautions",
        "31 entries",
    ];
    let places: Vec<usize> =
        parts.iter().map(|part| text.find(part).unwrap_or_else(|| panic!("{part} is missing"))).collect();
    assert!(places.is_sorted(), "{places:?}");
    assert!(text.contains("What to do next"), "no next steps");
}

#[test]
fn pictures_have_words_for_those_who_cannot_see_them() {
    let finding = sample::finding("danger", 1);
    let path = keep("finding-words", Paper::Finding(&finding), Sheet::A4, &sample::jpeg);
    assert!(structure(&path).contains("Figure"), "the photo is no figure");
    let raw = std::fs::read(&path).expect("the paper was kept");
    assert!(raw.windows(8).any(|at| at == b"pdfuaid:"), "the paper does not claim PDF/UA");
}

#[test]
fn hostile_text_prints_as_text() {
    let mut finding = sample::finding("danger", 1);
    let long = format!("{HOSTILE} {}", "W".repeat(10_000));
    finding.complaint = vec![sample::field("In the owner's words", &long)];
    finding.answer = vec![HOSTILE.to_owned()];
    finding.vehicle = vec![sample::field(HOSTILE, HOSTILE), sample::field("Make", &"M".repeat(300))];
    for step in &mut finding.steps {
        step.answer = HOSTILE.to_owned();
        step.details = vec![HOSTILE.to_owned(), "word ".repeat(2_000)];
    }
    finding.page_foot = HOSTILE.to_owned();
    finding.title = HOSTILE.to_owned();
    let path = keep("finding-hostile", Paper::Finding(&finding), Sheet::A4, &sample::jpeg);
    let pages = check_form(&path, Sheet::A4);
    let text = flat_text(&path);
    for expected in [
        "#panic(\"x\") $a_1^2$ *bold*",
        "#set page(width: 1pt) &amp; %00",
        "evil",
        "[…]",
        "stands for letters",
    ] {
        assert!(text.contains(expected), "{expected} is not on the paper");
    }
    let long_run = text.chars().filter(|c| *c == 'W').count();
    assert!(long_run >= 10_000, "only {long_run} of 10,000 letters are on the paper");
    assert!((2..60).contains(&pages), "{pages} pages");
}

#[test]
fn odd_numbers_and_empty_parts_print() {
    let mut finding = sample::finding("unrated", 0);
    finding.band.word = "no-such-word".into();
    for (cause, odd) in finding.causes.iter_mut().zip([f64::NAN, f64::INFINITY, -3.0]) {
        cause.probability = odd;
    }
    finding.signed = Some(sample::signed());
    if let Some(signed) = &mut finding.signed {
        signed.strokes = vec![vec![], vec![[f32::NAN, 0.5]], vec![[-9.0, 9.0], [2.0, f32::INFINITY]]];
        signed.alt.clear();
    }
    let path = keep("finding-odd", Paper::Finding(&finding), Sheet::A4, &no_photos);
    check_form(&path, Sheet::A4);

    let mut bare = sample::finding("unrated", 0);
    bare.answer.clear();
    bare.next.clear();
    bare.vehicle.clear();
    bare.complaint.clear();
    bare.reasons.clear();
    bare.steps.clear();
    bare.causes.clear();
    bare.workshop = None;
    bare.scope = None;
    bare.not_checked = None;
    bare.gauges = None;
    bare.unknown.clear();
    bare.road.clear();
    bare.cautions.clear();
    bare.foot.clear();
    let path = keep("finding-bare", Paper::Finding(&bare), Sheet::A4, &no_photos);
    assert_eq!(check_form(&path, Sheet::A4), 1);
    assert!(!flat_text(&path).contains("Likely causes"), "an empty part has a heading");
}

/// Hebrew and Arabic have fonts; other scripts are named as missing, once, and only where they are.
#[test]
fn letters_without_a_font_are_said_to_be_missing() {
    #[track_caller]
    fn check(name: &str, owner: &str, printed: &str, missing: bool) {
        let mut finding = sample::finding("danger", 0);
        finding.vehicle = vec![sample::field("Owner", owner)];
        let path = keep(&format!("finding-letters-{name}"), Paper::Finding(&finding), Sheet::A4, &no_photos);
        check_form(&path, Sheet::A4);
        let text = flat_text(&path);
        assert!(text.contains(printed), "{name}: {printed} is not in {text}");
        assert_eq!(text.contains("stands for letters"), missing, "{name}");
        assert!(!text.contains('\u{FFFD}'), "{name}: {text}");
    }
    check("latin", "Åström, Łukasz, O'Brien, Nguyễn", "Åström, Łukasz, O'Brien, Nguyễn", false);
    check("hebrew", "\u{5E9}\u{5DC}\u{5D5}\u{5DD}", "\u{5E9}\u{5DC}\u{5D5}\u{5DD}", false);
    check("arabic", "\u{645}\u{631}\u{62D}\u{628}\u{627}", "\u{645}\u{631}\u{62D}\u{628}\u{627}", false);
    check("japanese", "\u{592A}\u{90CE} T.", "[…] T.", true);
    check("emoji", "car \u{1F697}", "car \u{1F697}", false);
    check("mixed-marks", "\u{5D0}\u{306}\u{5D1}\u{64F} a\u{5B8}", "\u{5D0}\u{5D1}", false);
}

#[test]
fn the_workshop_stands_at_the_head_or_nowhere() {
    let mut finding = sample::finding("danger", 0);
    let named = keep("finding-workshop", Paper::Finding(&finding), Sheet::A4, &no_photos);
    let text = flat_text(&named);
    let places: Vec<Option<usize>> =
        ["Example Motor Works", "01632 960417", "DO NOT DRIVE"].iter().map(|part| text.find(part)).collect();
    assert!(places.is_sorted() && places.iter().all(Option::is_some), "{places:?}");
    finding.workshop = None;
    let nameless = keep("finding-no-workshop", Paper::Finding(&finding), Sheet::A4, &no_photos);
    assert!(!flat_text(&nameless).contains("Example Motor Works"));
}

#[test]
fn the_same_finding_gives_the_same_bytes() {
    let finding = sample::finding("warning", 2);
    let print = || print_with(Paper::Finding(&finding), Sheet::A4, &sample::jpeg).expect("it prints");
    let first = print();
    assert!(first == print(), "two prints differ");
    let mut other = finding.clone();
    other.answer.push("One more sentence.".into());
    let second = print_with(Paper::Finding(&other), Sheet::A4, &sample::jpeg).expect("it prints");
    assert!(first != second, "another finding gives the same bytes");
}

#[test]
fn a_missing_photo_is_said() {
    let finding = sample::finding("danger", 1);
    let said = "The photo is recorded, but its file could not be read";
    let without = keep("finding-photo-missing", Paper::Finding(&finding), Sheet::A4, &no_photos);
    assert!(flat_text(&without).contains(said));
    let broken = |_: &str| Some(b"no picture".to_vec());
    let broken = keep("finding-photo-broken", Paper::Finding(&finding), Sheet::A4, &broken);
    assert!(flat_text(&broken).contains(said));
    let with = keep("finding-photo-there", Paper::Finding(&finding), Sheet::A4, &sample::jpeg);
    assert!(!flat_text(&with).contains(said));
    let damaged = flat_text(&keep_with_damaged_photos("finding-photo-damaged", Paper::Finding(&finding)));
    assert!(damaged.contains("not the one that was kept") && !damaged.contains(said));
}

#[test]
fn twelve_photos_stay_under_two_megabytes() {
    let mut finding = sample::finding("danger", 12);
    finding.signed = Some(sample::signed());
    let path = keep("finding-twelve", Paper::Finding(&finding), Sheet::A4, &sample::jpeg);
    check_form(&path, Sheet::A4);
    let bytes = std::fs::metadata(&path).expect("the paper was kept").len();
    assert!((100_000..2_000_000).contains(&bytes), "{bytes} bytes");
}

#[test]
fn the_record_is_attached_as_it_was_typed() {
    let mut finding = sample::finding("caution", 0);
    finding.answer = vec![HOSTILE.to_owned()];
    let path = keep("finding-attached", Paper::Finding(&finding), Sheet::A4, &no_photos);
    let record: serde_json::Value =
        serde_json::from_slice(&attachment(&path, "finding.json")).expect("the attachment is JSON");
    assert_eq!(record, serde_json::to_value(&finding).expect("content is data"));
}

#[test]
fn a_signature_prints_where_there_is_one() {
    let mut finding = sample::finding("danger", 0);
    let heading = finding.headings.signed.clone();
    let unsigned = keep("finding-unsigned", Paper::Finding(&finding), Sheet::A4, &no_photos);
    assert!(!flat_text(&unsigned).contains(&heading));
    finding.signed = Some(sample::signed());
    let signed = keep("finding-signed", Paper::Finding(&finding), Sheet::A4, &no_photos);
    let text = flat_text(&signed);
    assert!(text.contains(&heading) && text.contains("R. Example"), "{text}");
}
