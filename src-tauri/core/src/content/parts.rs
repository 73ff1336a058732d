//! Parts that both papers fill in the same way: the band, a photo, a signed receipt.

use crate::model::entry::OwnerDecision;
use crate::model::mark::Mark;
use crate::model::standing::{PhotoStand, ReceiptStand, Standing, StepStand};
use crate::model::workshop::Workshop;
use crate::words::Words;

use super::said;
use super::shared::{Band, Field, Labels, Letterhead, PhotoLine, Signed};

/// The urgency band.
pub fn band(standing: &Standing, words: &Words) -> Band {
    let word = said::urgency_id(standing.urgency.word);
    Band {
        word: word.to_owned(),
        label: words.text(&format!("word-{word}")),
        headline: words.text(&format!("headline-{}", standing.headline)),
    }
}

/// The workshop at the head of a paper; none where it gave neither name, address nor phone.
pub fn letterhead(workshop: &Workshop, words: &Words) -> Option<Letterhead> {
    let Workshop { name, address, phone, .. } = workshop;
    let phone_line = words.with("letterhead-phone", &[("phone", phone.as_str().into())]);
    let head = Letterhead {
        name: name.clone(),
        address: address.clone(),
        phone: if phone.is_empty() { String::new() } else { phone_line },
    };
    let empty = name.is_empty() && address.is_empty() && phone.is_empty();
    (!empty).then_some(head)
}

/// A decision in the owner's words, as it suits a rating (`danger` ... `unrated`): where there is nothing to
/// repair, none of the three speaks of a repair.
pub fn decision(words: &Words, decision: OwnerDecision, rating: &str) -> String {
    let id = format!("decision-{}", decision.id());
    words.find(&format!("{id}-{rating}")).unwrap_or_else(|| words.text(&id))
}

/// A field under the text `field-NAME`, unless its value is empty.
pub fn field(words: &Words, name: &str, value: impl Into<String>) -> Option<Field> {
    let value = value.into();
    (!value.trim().is_empty()).then(|| Field { label: words.text(&format!("field-{name}")), value })
}

/// The labels of a paper's printing.
pub fn labels(words: &Words) -> Labels {
    let label = |part: &str| words.text(&format!("paper-label-{part}"));
    Labels {
        speaks_for: label("for"),
        against: label("against"),
        photo_missing: label("photo-missing"),
        photo_damaged: label("photo-damaged"),
        name: label("name"),
        date: label("date"),
        signature: label("signature"),
        unprintable: label("unprintable"),
        page: label("page"),
    }
}

/// A step's photo, if one was kept.
pub fn photo(step: &StepStand, words: &Words) -> Option<PhotoLine> {
    step.photo.as_ref().map(|kept| photo_line(step, kept, words))
}

/// A photo of a step, with its marks and what they say.
pub fn photo_line(step: &StepStand, kept: &PhotoStand, words: &Words) -> PhotoLine {
    let args = [("step", said::title(words, step).into()), ("answer", answer_of(step, words).into())];
    let (caption, alt) = (words.with("photo-caption", &args), words.with("photo-alt", &args));
    marked((&kept.photo.sha256, &kept.marks), caption, alt, words)
}

/// A photo with its marks, which caption and alternative text say.
pub fn marked(
    (sha256, marks): (&str, &[Mark]),
    mut caption: String,
    mut alt: String,
    words: &Words,
) -> PhotoLine {
    let labels: Vec<String> = marks.iter().filter_map(Mark::words).map(str::to_owned).collect();
    if !labels.is_empty() {
        let labels = words.list(&labels);
        caption = words
            .with("photo-caption-marked", &[("caption", caption.into()), ("labels", labels.clone().into())]);
        alt = words.with("photo-alt-labelled", &[("alt", alt.into()), ("labels", labels.into())]);
    } else if !marks.is_empty() {
        alt = words.with("photo-alt-marked", &[("alt", alt.into())]);
    }
    PhotoLine { sha256: sha256.to_owned(), caption, alt, marks: marks.to_vec() }
}

/// The two photos of a step that are shown side by side, the earlier first; each says when it was kept.
pub fn pair(step: &StepStand, words: &Words) -> Option<(PhotoLine, PhotoLine)> {
    let (before, after) = (step.before.as_ref()?, step.photo.as_ref()?);
    let line = |kept: &PhotoStand, id: &str| {
        let mut line = photo_line(step, kept, words);
        let kept_at = words.time(kept.at);
        let args = |said: String| [("said", said.into()), ("at", kept_at.clone().into())];
        line.caption = words.with(&format!("photo-caption-{id}"), &args(line.caption));
        line.alt = words.with(&format!("photo-alt-{id}"), &args(line.alt));
        line
    };
    Some((line(before, "before"), line(after, "after")))
}

/// What was recorded at a step, or that nothing was.
pub fn answer_of(step: &StepStand, words: &Words) -> String {
    match &step.answered {
        Some(given) => said::answer(words, &step.id, &given.value),
        None => words.text("answer-missing"),
    }
}

/// The receipt, if the note was signed.
pub fn signed(standing: &Standing, words: &Words) -> Option<Signed> {
    let receipt = standing.receipt.as_ref()?;
    let now = said::urgency_id(standing.urgency.word);
    let mut text = signed_text(receipt, now, words);
    if receipt.outdated {
        text = format!("{text} {}", words.text("signed-outdated"));
    }
    if let Some(signed_in) = Words::of(&receipt.locale).ok().filter(|own| own.locale() != words.locale()) {
        let language = signed_in.text("language-name");
        text = format!("{text} {}", words.with("signed-language", &[("language", language.into())]));
    }
    Some(Signed {
        text,
        note_line: words.with("signed-note", &[("hash", receipt.note_sha256.as_str().into())]),
        strokes: receipt.strokes.clone(),
        alt: words.text("signed-alt"),
    })
}

/// The decision as it read when it was signed: another rating since must not put words into a mouth.
fn signed_text(receipt: &ReceiptStand, now: &str, words: &Words) -> String {
    let decision = decision(words, receipt.decision, receipt.rating.as_deref().unwrap_or(now));
    let name = receipt.name.trim();
    let id = if name.is_empty() { "signed-text-nameless" } else { "signed-text" };
    words.with(
        id,
        &[("decision", decision.into()), ("at", words.time(receipt.at).into()), ("name", name.into())],
    )
}
