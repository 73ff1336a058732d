//! The note as a message: at most 480 characters, no links, and it ends on a whole sentence.
//!
//! It leaves sentences out rather than cutting one, says when it did, and says none twice.

use crate::model::standing::Standing;
use crate::words::Words;

use super::finding_lines::last_checked;
use super::found;
use super::parts::band;
use super::reasons;
use super::said::{self, Reader};
use super::write_note::{found, not_known, repaired, rest_open};

/// Longest message, characters.
const LONGEST: usize = 480;
/// Longest plate or name of a car that the message repeats, characters.
const LONGEST_NAME: usize = 24;

/// The message: rating, what to do and what an earlier visit left open always, then the other sentences as far as they fit.
pub fn short_text(standing: &Standing, words: &Words) -> String {
    let mut text = format!("{} {}", head(standing, words), now(standing, words));
    if let Some(open) = found::still_open(standing, words, Reader::Owner) {
        text = format!("{text} {open}");
    }
    let more = words.text("short-more");
    for sentence in by_weight(standing, words) {
        if text.contains(&sentence) {
            continue;
        }
        if length(&text) + length(&sentence) + length(&more) + 2 > LONGEST {
            return format!("{text} {more}");
        }
        text = format!("{text} {sentence}");
    }
    text
}

/// What to do; after a repair, that what was found is older, and to ask.
fn now(standing: &Standing, words: &Words) -> String {
    match repaired(standing, words) {
        Some(repaired) => format!("{repaired} {}", words.text("note-now-repaired")),
        None => words.text(&format!("short-now-{}", said::owner_now(standing))),
    }
}

/// Everything else the note says, weightiest first: with a rating the strongest reason and what it can lead
/// to, without one what is still to be checked.
fn by_weight(standing: &Standing, words: &Words) -> Vec<String> {
    let could = reasons::could_happen(words, standing);
    let mut sentences = found(standing, words);
    if standing.urgency.word.is_none() {
        sentences.extend(not_known(standing, words));
        sentences.push(could);
        return sentences;
    }
    sentences.insert(sentences.len().min(1), could);
    sentences.splice(0..0, rest_open(standing, words));
    sentences
        .splice(0..0, reasons::unlooked(words, standing, Reader::Owner).filter(|_| standing.urgency.in_part));
    sentences.extend(not_known(standing, words));
    sentences
}

fn head(standing: &Standing, words: &Words) -> String {
    let band = band(standing, words);
    let name = car_name(standing);
    let id = if name.is_some() { "short-head" } else { "short-head-nameless" };
    words.with(
        id,
        &[
            ("vehicle", name.unwrap_or_default().into()),
            ("date", words.date(last_checked(standing)).into()),
            ("label", band.label.into()),
            ("headline", band.headline.into()),
        ],
    )
}

/// Plate, or make and model, where it is short and cannot turn into a link in the reader's phone.
fn car_name(standing: &Standing) -> Option<&str> {
    let car = &standing.intake.vehicle;
    let plain = |name: &&str| {
        !name.is_empty()
            && length(name) <= LONGEST_NAME
            && name
                .chars()
                .all(|sign| sign.is_alphanumeric() || matches!(sign, ' ' | '-' | '\'' | '\u{2019}'))
    };
    [car.plate.trim(), car.label.trim()].into_iter().find(plain)
}

fn length(text: &str) -> usize {
    text.chars().count()
}
