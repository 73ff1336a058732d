//! Marks over photos and pairs of photos on paper.

use steady_core::app::press::Paper;
use steady_core::app::request::Sheet;
use steady_core::content::shared::PhotoLine;
use steady_core::model::mark::Mark;

use crate::sample::{self, HOSTILE};
use crate::tools::{check_form, flat_text, keep, no_photos, pixels, structure};

/// The light line's colour, as the templates and the screens have it.
const LIGHT: [u8; 3] = [0x3d, 0xf0, 0xff];

fn label(at: [f32; 2], text: &str) -> Mark {
    Mark::Label { at, text: text.to_owned() }
}

fn every_shape() -> Vec<Mark> {
    vec![
        Mark::Arrow { from: [0.1, 0.9], to: [0.45, 0.55] },
        Mark::Ring { corners: [[0.35, 0.3], [0.7, 0.75]] },
        Mark::Freehand {
            points: (0..40).map(|i| [0.6 + i as f32 / 110.0, 0.2 + (i % 5) as f32 / 50.0]).collect(),
        },
        label([0.2, 0.08], "bright ring, Åström"),
    ]
}

fn marked(marks: Vec<Mark>) -> PhotoLine {
    PhotoLine { marks, alt: "Photo. Marked on it: bright ring.".into(), ..sample::photo(1) }
}

/// How many dots of a page's picture are in the marks' colour, give or take what smoothing does.
fn light_dots(path: &std::path::Path) -> usize {
    let near = |dot: &[u8]| dot.iter().zip(LIGHT).all(|(part, want)| part.abs_diff(want) < 40);
    pixels(path).chunks_exact(3).filter(|dot| near(dot)).count()
}

#[test]
fn marks_are_drawn_over_the_photo_on_both_papers() {
    #[track_caller]
    fn check(name: &str, marks: Vec<Mark>, drawn: bool) {
        let mut finding = sample::finding("danger", 0);
        finding.reasons.clear();
        finding.causes.clear();
        finding.steps.truncate(1);
        finding.steps[0].photo = Some(marked(marks.clone()));
        finding.steps[0].waiver = None;
        let path = keep(&format!("finding-marks-{name}"), Paper::Finding(&finding), Sheet::A4, &sample::jpeg);
        check_form(&path, Sheet::A4);
        assert_eq!(light_dots(&path) > 50, drawn, "{name} in the finding: {} dots", light_dots(&path));
        let mut note = sample::note("danger", "rigid");
        note.photo = Some(marked(marks));
        let path = keep(&format!("note-marks-{name}"), Paper::Note(&note), Sheet::A4, &sample::jpeg);
        check_form(&path, Sheet::A4);
        assert_eq!(light_dots(&path) > 50, drawn, "{name} in the note: {} dots", light_dots(&path));
    }
    for mark in every_shape() {
        let name = match &mark {
            Mark::Arrow { .. } => "arrow",
            Mark::Ring { .. } => "ring",
            Mark::Freehand { .. } => "freehand",
            Mark::Label { .. } => "label",
        };
        check(name, vec![mark], true);
    }
    check("all", every_shape(), true);
    check("none", Vec::new(), false);
}

#[test]
fn words_on_a_photo_print_as_text_and_its_figure_has_its_own() {
    let mut finding = sample::finding("danger", 0);
    finding.steps[0].photo = Some(marked(every_shape()));
    let path = keep("finding-marks-words", Paper::Finding(&finding), Sheet::A4, &sample::jpeg);
    assert!(flat_text(&path).contains("bright ring, Åström"), "the label is not on the paper");
    assert!(structure(&path).contains("Figure"), "the marked photo is no figure");
    let lost = keep("finding-marks-lost", Paper::Finding(&finding), Sheet::A4, &no_photos);
    assert!(!flat_text(&lost).contains("Åström"), "marks without their photo");
}

#[test]
fn hostile_marks_break_no_paper() {
    let forty: String = HOSTILE.chars().take(40).collect();
    let mut finding = sample::finding("danger", 0);
    let odd = vec![
        label([0.0, 0.0], &forty),
        label([1.0, 1.0], &"W".repeat(40)),
        label([0.5, 0.5], "\u{1F697}\u{1F3FD}\u{200D}\u{1F527} \u{5E9}\u{5DC}\u{5D5}\u{5DD} <b>&amp;"),
        label([f32::NAN, f32::INFINITY], HOSTILE),
        label([-4.0, 9.0], &"M".repeat(10_000)),
        Mark::Arrow { from: [0.5, 0.5], to: [0.5, 0.5] },
        Mark::Arrow { from: [f32::NAN, 0.1], to: [7.0, -7.0] },
        Mark::Ring { corners: [[0.9, 0.9], [0.1, 0.1]] },
        Mark::Ring { corners: [[f32::INFINITY, 0.0], [0.0, f32::NAN]] },
        Mark::Freehand { points: Vec::new() },
        Mark::Freehand { points: vec![[0.3, 0.3]] },
    ];
    finding.steps[0].photo = Some(marked(odd.clone()));
    let path = keep("finding-marks-hostile", Paper::Finding(&finding), Sheet::A4, &sample::jpeg);
    let pages = check_form(&path, Sheet::A4);
    assert!(pages <= 4, "{pages} pages");
    let mut note = sample::note("danger", "rigid");
    note.photo = Some(marked(odd));
    check_form(&keep("note-marks-hostile", Paper::Note(&note), Sheet::A4, &sample::jpeg), Sheet::A4);
}

#[test]
fn a_pair_stands_side_by_side_with_both_captions() {
    let mut finding = sample::finding("danger", 0);
    let line = |number: usize, caption: &str| PhotoLine { caption: caption.into(), ..sample::photo(number) };
    finding.steps[0].before = Some(line(1, "Before, 25 November"));
    finding.steps[0].photo = Some(line(2, "After, 26 November"));
    let path = keep("finding-pair", Paper::Finding(&finding), Sheet::A4, &sample::jpeg);
    check_form(&path, Sheet::A4);
    let text = flat_text(&path);
    assert!(text.contains("Before, 25 November") && text.contains("After, 26 November"), "{text}");
    assert_eq!(structure(&path).matches("Figure").count(), 2, "two photos, two figures");
}
