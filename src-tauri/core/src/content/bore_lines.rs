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
    let args: Vec<(&str, FluentValue<'_>)> =
        note.args.iter().map(|(name, value)| (name.as_str(), words.rounded(*value, 3).into())).collect();
    words.with(&note.id, &args)
}

fn size_line(words: &Words, size: SizeMm) -> String {
    let args = [
        ("size", words.rounded(size.value_mm, 4).into()),
        ("expanded", words.rounded(size.expanded_um, 1).into()),
    ];
    words.with("bore-line-size", &args)
}

fn form_line(words: &Words, id: &str, form: Option<FormUm>) -> Option<String> {
    let form = form?;
    let args = [
        ("value", words.rounded(form.value_um, 1).into()),
        ("expanded", words.rounded(form.expanded_um, 1).into()),
    ];
    Some(words.with(id, &args))
}
