//! What a bore's shape says, as sentences: sizes first, then each note.

use fluent_bundle::FluentValue;

use crate::model::bore::{BoreNote, BoreShape, FormUm, SizeMm};
use crate::words::Words;

/// The shape in sentences, with the limit for its form, micrometres, where one is known.
pub fn bore_lines(words: &Words, shape: &BoreShape, limit_um: Option<f64>) -> Vec<String> {
    let least = shape.sections.iter().any(|section| section.at_least);
    let whole = shape.is_read_round();
    let mut lines = vec![match shape.mean_diameter {
        Some(size) if whole => size_line(words, "bore-line-size", size),
        Some(size) => size_line(words, "bore-line-size-part", size),
        None => words.text("bore-line-size-unknown"),
    }];
    lines.extend(form_line(words, "bore-line-ovality", shape.greatest_ovality));
    let roundness = match (whole, least) {
        (false, _) => "bore-line-roundness-part",
        (true, true) => "bore-line-roundness-least",
        (true, false) => "bore-line-roundness",
    };
    lines.extend(form_line(words, roundness, shape.greatest_out_of_roundness));
    lines.push(match limit_um {
        Some(limit) => words.with("bore-line-limit", &[("limit", words.fine(limit).into())]),
        None => words.text("bore-line-limit-unknown"),
    });
    lines.extend(taper_line(words, shape.taper));
    lines.extend(shape.notes.iter().map(|note| note_line(words, note)));
    lines
}

/// The sentence of a note. Lengths are rounded to what a gauge can show.
pub fn note_line(words: &Words, note: &BoreNote) -> String {
    let shown = |name: &str, value: f64| match name {
        "depth" | "from" | "to" | "bore" | "cut" | "wall" => words.measured(value),
        "floor" | "shift" => words.fine(value),
        // A file may count an angle on past a turn, or back.
        "angle" => words.angle(value, 3),
        _ => words.rounded(value, 3),
    };
    let args: Vec<(&str, FluentValue<'_>)> =
        note.args.iter().map(|(name, value)| (name.as_str(), shown(name, *value).into())).collect();
    words.with(&note.id, &args)
}

fn size_line(words: &Words, id: &str, size: SizeMm) -> String {
    let args =
        [("size", words.measured(size.value_mm).into()), ("expanded", words.fine(size.expanded_um).into())];
    words.with(id, &args)
}

/// Which way it widens, where that is told from the uncertainty.
fn taper_line(words: &Words, taper: Option<FormUm>) -> Option<String> {
    let taper = taper?;
    let id = match taper.value_um {
        value if value.abs() <= taper.expanded_um => "bore-line-taper-none",
        value if value > 0.0 => "bore-line-taper-wider",
        _ => "bore-line-taper-narrower",
    };
    form_line(words, id, Some(FormUm { value_um: taper.value_um.abs(), ..taper }))
}

fn form_line(words: &Words, id: &str, form: Option<FormUm>) -> Option<String> {
    let form = form?;
    let args =
        [("value", words.fine(form.value_um).into()), ("expanded", words.fine(form.expanded_um).into())];
    Some(words.with(id, &args))
}
