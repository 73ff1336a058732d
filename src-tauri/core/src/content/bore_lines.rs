//! What a bore's shape says, as sentences: sizes first, then each note.

use fluent_bundle::FluentValue;

use crate::model::bore::{BoreNote, BoreShape, FormUm, SizeMm};
use crate::words::Words;

/// The shape in sentences.
pub fn bore_lines(words: &Words, shape: &BoreShape) -> Vec<String> {
    let least = shape.sections.iter().any(|section| section.at_least);
    let mut lines = vec![match shape.mean_diameter {
        Some(size) => size_line(words, size),
        None => words.text("bore-line-size-unknown"),
    }];
    lines.extend(form_line(words, "bore-line-ovality", shape.greatest_ovality));
    let roundness = if least { "bore-line-roundness-least" } else { "bore-line-roundness" };
    lines.extend(form_line(words, roundness, shape.greatest_out_of_roundness));
    lines.extend(form_line(words, "bore-line-taper", shape.taper));
    lines.extend(shape.notes.iter().map(|note| note_line(words, note)));
    lines
}

/// The sentence of a note. Lengths are rounded to what a gauge can show.
pub fn note_line(words: &Words, note: &BoreNote) -> String {
    let shown = |name: &str, value: f64| match name {
        "depth" => words.measured(value),
        "floor" | "shift" => words.fine(value),
        _ => words.rounded(value, 3),
    };
    let args: Vec<(&str, FluentValue<'_>)> =
        note.args.iter().map(|(name, value)| (name.as_str(), shown(name, *value).into())).collect();
    words.with(&note.id, &args)
}

fn size_line(words: &Words, size: SizeMm) -> String {
    let args =
        [("size", words.measured(size.value_mm).into()), ("expanded", words.fine(size.expanded_um).into())];
    words.with("bore-line-size", &args)
}

fn form_line(words: &Words, id: &str, form: Option<FormUm>) -> Option<String> {
    let form = form?;
    let args =
        [("value", words.fine(form.value_um).into()), ("expanded", words.fine(form.expanded_um).into())];
    Some(words.with(id, &args))
}
