//! What has to be said along with the numbers: above all, what the way of measuring cannot see.
//!
//! Two opposite contacts see a radius r(a) as r(a) + r(a + 180), in which odd waves cancel. Three contacts at 120
//! degrees see r(a) + r(a + 120) + r(a + 240), in which only multiples of three are left. Both are exact to
//! first order; ISO 4292:1985 treats them (from memory).

use std::collections::BTreeMap;

use crate::model::bore::{BoreKind, BoreNote, BoreReadings, BoreSection};

use super::coverage::{span, widest};
use super::outliers::FEWEST;

/// Every note this module and [`skim`](super::skim) can make, for the test that each has its text.
pub const IDS: [&str; 34] = [
    "bore-two-point-blind",
    "bore-three-point-blind",
    "bore-no-centre",
    "bore-size-unknown",
    "bore-one-depth",
    "bore-one-angle",
    "bore-lobes-beyond",
    "bore-gap",
    "bore-part",
    "bore-depths-unread",
    "bore-seat-width-unknown",
    "bore-flagged",
    "bore-few-for-flagging",
    "bore-below-floor",
    "bore-repeatability-untried",
    "skim-verdict-skim",
    "skim-verdict-before-sleeve",
    "skim-verdict-before-sleeve-ample",
    "skim-verdict-skim-ample",
    "skim-verdict-wall-unknown",
    "skim-verdict-wall-undecided",
    "skim-verdict-scrap",
    "skim-verdict-read-in-part",
    "skim-sleeve-unknown",
    "skim-sleeve-too-small",
    "skim-sleeve-wall",
    "skim-sleeve-cut",
    "skim-at-least",
    "skim-between",
    "skim-flagged",
    "skim-size-unknown",
    "skim-axis-moves",
    "skim-axis-unseen",
    "skim-caution",
];

/// A note with its numbers.
pub fn note(id: &str, args: &[(&str, f64)]) -> BoreNote {
    let args: BTreeMap<String, f64> = args.iter().map(|(name, value)| ((*name).to_owned(), *value)).collect();
    BoreNote { id: id.to_owned(), args }
}

/// To the tenth: angles and micrometres are read no finer, and a dial's angle is a hair off about the fitted centre.
pub fn tenth(value: f64) -> f64 {
    (value * 10.0).round() / 10.0
}

/// The notes of a bore's shape, what was not read and the blind spots first.
pub fn notes(
    readings: &BoreReadings,
    sections: &[BoreSection],
    unread_mm: Option<&[[f64; 2]]>,
) -> Vec<BoreNote> {
    let mut notes: Vec<BoreNote> = sections.iter().filter_map(part).collect();
    match readings.kind {
        BoreKind::TwoPoint => notes.push(note("bore-two-point-blind", &[])),
        BoreKind::ThreePoint => notes.push(note("bore-three-point-blind", &[])),
        BoreKind::Dial | BoreKind::Coordinates => {}
    }
    if matches!(readings.kind, BoreKind::TwoPoint | BoreKind::ThreePoint) {
        notes.push(note("bore-no-centre", &[]));
    }
    if readings.kind == BoreKind::Dial && !readings.zero_was_set {
        notes.push(note("bore-size-unknown", &[]));
    }
    notes.extend(depths(unread_mm));
    notes.extend(angles(sections));
    if sections.len() == 1 {
        notes.push(note("bore-one-depth", &[]));
    }
    for section in sections {
        notes.extend(of_section(section));
    }
    if readings.instrument.repeatability_mm == 0.0 {
        notes.push(note("bore-repeatability-untried", &[]));
    }
    notes
}

/// How much of a section was read, where a part was not.
fn part(section: &BoreSection) -> Option<BoreNote> {
    let args = [
        ("depth", section.depth_mm),
        ("read", (360.0 - span(&section.unread_deg)).max(0.0).round()),
        ("gap", widest(&section.unread_deg).round()),
    ];
    (!section.unread_deg.is_empty()).then(|| note("bore-part", &args))
}

/// Where along the seat no ring was read all round.
fn depths(unread_mm: Option<&[[f64; 2]]>) -> Vec<BoreNote> {
    let Some(unread) = unread_mm else { return vec![note("bore-seat-width-unknown", &[])] };
    let stretch = |[from, to]: &[f64; 2]| note("bore-depths-unread", &[("from", *from), ("to", *to)]);
    unread.iter().map(stretch).collect()
}

/// What the number of angles leaves out, by the depth that has it worst.
fn angles(sections: &[BoreSection]) -> Vec<BoreNote> {
    let mut notes = Vec::new();
    let least = |a: &&BoreSection, b: &&BoreSection| a.most_lobes.cmp(&b.most_lobes);
    if let Some(worst) = sections.iter().min_by(least) {
        let args = [("angles", worst.readings as f64), ("lobes", worst.most_lobes as f64)];
        let id = if worst.most_lobes == 0 { "bore-one-angle" } else { "bore-lobes-beyond" };
        notes.push(note(id, &args));
    }
    if sections.iter().any(|section| section.readings > 1 && section.readings < FEWEST) {
        notes.push(note("bore-few-for-flagging", &[("fewest", FEWEST as f64)]));
    }
    let whole = sections.iter().filter(|section| section.unread_deg.is_empty());
    let gap = whole.map(|section| (gap_deg(section), section.depth_mm));
    if let Some((gap, depth)) = gap.max_by(|a, b| a.0.total_cmp(&b.0)) {
        notes.push(note("bore-gap", &[("gap", gap.round()), ("depth", depth)]));
    }
    notes
}

/// Widest angle between two neighbouring points.
fn gap_deg(section: &BoreSection) -> f64 {
    let angles = || section.plot.points.iter().map(|point| point.angle_deg);
    let next = angles().skip(1).chain(angles().take(1).map(|first| first + 360.0));
    angles().zip(next).map(|(here, next)| next - here).fold(0.0, f64::max)
}

fn of_section(section: &BoreSection) -> Vec<BoreNote> {
    let depth = ("depth", section.depth_mm);
    let flagged = section.plot.points.iter().filter(|point| point.flagged && !point.mirrored);
    let mut notes: Vec<BoreNote> =
        flagged.map(|point| note("bore-flagged", &[depth, ("angle", tenth(point.angle_deg))])).collect();
    let found = section.out_of_roundness_minimum_zone;
    if section.unread_deg.is_empty() && found.is_some_and(|found| found.value_um <= section.floor_um) {
        notes.push(note("bore-below-floor", &[depth, ("floor", tenth(section.floor_um))]));
    }
    notes
}
