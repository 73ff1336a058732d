//! Fills the owner's note from where a visit stands. The note as a message is in `short_text`.

use std::collections::BTreeSet;

use crate::model::device::{Trust, WriterStand};
use crate::model::entry::OwnerDecision;
use crate::model::ids::{self, answer, step};
use crate::model::rating::{Reason, Word};
use crate::model::rules::Tells;
use crate::model::standing::{CauseGroup, Standing, StepStand, Support};
use crate::model::workshop::Workshop;
use crate::words::Words;

use super::finding_lines::last_checked;
use super::found;
use super::note::{DecisionLine, Note, NoteSection};
use super::open_points::{OpenPoint, hands_on_missing, open_points};
use super::parts::{band, decision, field, labels, letterhead, photo, signed};
use super::reasons;
use super::said::{self, Reader};
use super::shared::Field;
use super::short_text::short_text;
use super::sorted_json::sha256;
use super::write_finding::NAMED_FROM;

/// Checks not done that the note names; it has one page.
const OTHERS_NAMED: usize = 6;
/// Reasons the note spells out; it has one page.
const REASONS_SHOWN: usize = 4;

/// What the note says. The same standing, workshop and words give the same note and hash, signed or not.
pub fn build_note(standing: &Standing, workshop: &Workshop, words: &Words) -> Note {
    let support = drawing(standing, words);
    let mut note = Note {
        locale: words.locale().to_owned(),
        title: words.text("note-title"),
        workshop: letterhead(workshop, words),
        band: band(standing, words),
        vehicle: vehicle(standing, words),
        sections: sections(standing, workshop, words),
        photo: worst_photo(standing).and_then(|step| photo(step, words)),
        drawing: support.clone(),
        drawing_words: words.text(&format!("drawing-{support}")),
        receipt_heading: words.text("note-receipt-heading"),
        receipt_from: receipt_from(workshop, words),
        receipt_text: words.text("note-receipt-text"),
        decisions: decisions(standing, words),
        signed: None,
        page_foot: page_foot(standing, words),
        labels: labels(words),
        short_text: short_text(standing, words),
        sha256: String::new(),
    };
    note.sha256 = content_hash(&note);
    note.signed = signed(standing, words);
    note
}

/// The sentences of what was found, strongest first and each once.
pub fn found(standing: &Standing, words: &Words) -> Vec<String> {
    let mut sentences = Vec::new();
    if standing.urgency.word.is_none() {
        sentences.push(words.text("note-found-unrated"));
    }
    let moved = standing.urgency.reasons.iter().any(|reason| reason.tells(Tells::Moved));
    for reason in &standing.urgency.reasons {
        if reason.tells(Tells::Cause) && is_no_news(standing, reason) {
            continue;
        }
        // Felt in one direction and unsure in the other would read as a contradiction without the directions.
        if moved && reason.tells(Tells::Unsure) {
            continue;
        }
        // Without a rating the sorting only raises suspicion: it must not name a part to the owner.
        let sentence = if standing.urgency.word.is_none() && reason.steps.is_empty() {
            words.text("note-found-suspicion")
        } else {
            reasons::reason_text(words, standing, reason, Reader::Owner)
        };
        if !sentences.contains(&sentence) {
            sentences.push(sentence);
        }
    }
    sentences
}

/// Whether a cause that a reason names is what was found, or stands beside what forbids to drive: an engine that idles
/// low is no news there.
fn is_no_news(standing: &Standing, reason: &Reason) -> bool {
    let grave = standing.urgency.word >= Some(Word::Warning) && !standing.found.is_empty();
    let mut causes = standing.sorting.causes.iter();
    let cause = causes.find(|cause| reason.cause.as_ref() == Some(&cause.id));
    grave || cause.is_some_and(|cause| cause.is_behind(&standing.found))
}

/// The sentences of what is not known.
pub fn not_known(standing: &Standing, words: &Words) -> Vec<String> {
    let points = open_points(standing);
    let sentence = |point: &OpenPoint<'_>| open_sentence(standing, point, words);
    let sentences = points.iter().filter(|point| matters(point, standing)).map(sentence);
    // What is open at both of two supports is said once.
    let mut said = BTreeSet::new();
    sentences.filter(|sentence| said.insert(sentence.clone())).collect()
}

fn sections(standing: &Standing, workshop: &Workshop, words: &Words) -> Vec<NoteSection> {
    let now = if standing.older_than_repair() { "repaired".to_owned() } else { said::owner_now(standing) };
    let mut parts = [
        ("found", found_on_page(standing, words)),
        ("means", means(standing, words)),
        ("could-happen", vec![reasons::could_happen(words, standing)]),
        ("do-now", vec![words.text(&format!("note-now-{now}"))]),
        ("not-known", not_known_on_page(standing, words)),
        ("ask", ask(standing, workshop, words)),
    ];
    // Whoever must not drive reads that before anything else.
    if standing.urgency.do_not_drive == Some(true) || standing.still_open.is_some() {
        parts[..4].rotate_right(1);
    }
    parts
        .into_iter()
        .map(|(id, text)| NoteSection {
            id: id.to_owned(),
            heading: words.text(&format!("note-heading-{id}")),
            text,
        })
        .collect()
}

/// That the hands-on check is not finished, where there is a rating all the same.
pub fn rest_open(standing: &Standing, words: &Words) -> Option<String> {
    let open = standing.urgency.word.is_some() && !hands_on_missing(standing).is_empty();
    open.then(|| words.text("note-found-rest-open"))
}

/// That the bearing was repaired after the check: what the note says to do is older than that.
pub fn repaired(standing: &Standing, words: &Words) -> Option<String> {
    standing.older_than_repair().then(|| words.text("note-found-repaired"))
}

fn found_on_page(standing: &Standing, words: &Words) -> Vec<String> {
    let mut sentences = found(standing, words);
    let more = sentences.len().saturating_sub(REASONS_SHOWN);
    sentences.truncate(REASONS_SHOWN);
    if more > 0 {
        sentences.push(words.with("note-found-more", &[("count", more.into())]));
    }
    sentences
        .extend(reasons::closed_tube(words, standing, Reader::Owner).or_else(|| rest_open(standing, words)));
    sentences.splice(0..0, found::still_open(standing, words, Reader::Owner));
    sentences.splice(0..0, repaired(standing, words));
    let changed = standing.milder.iter().any(|made| !made.stands_again(standing));
    sentences.extend(changed.then(|| words.text("note-changed")));
    sentences
}

fn means(standing: &Standing, words: &Words) -> Vec<String> {
    let word = said::urgency_id(standing.urgency.word);
    let shaft =
        if standing.support == Support::Absent { "note-means-shaft-ends" } else { "note-means-shaft" };
    let mut sentences = vec![words.text(shaft)];
    let clears = standing.urgency.word == Some(Word::Notice) && standing.still_open.is_some();
    sentences.extend((!clears).then(|| words.text(&format!("note-means-{word}"))));
    sentences.extend(in_order(standing, words));
    sentences.extend(likely_cause(standing, words));
    sentences
}

/// The likeliest cause in plain words, where the rating stands and no reason names it already.
fn likely_cause(standing: &Standing, words: &Words) -> Option<String> {
    standing.urgency.word.filter(|word| *word < Word::Warning)?;
    let by_hand = !found::by_hand(standing).is_empty();
    let mut causes = standing.sorting.causes.iter();
    let top = causes.find(|cause| !by_hand || cause.group != CauseGroup::Normal)?;
    let named = standing.urgency.reasons.iter().any(|reason| reason.cause.as_ref() == Some(&top.id));
    if named
        || top.group == CauseGroup::Normal
        || top.probability < NAMED_FROM
        || top.is_behind(&standing.found)
    {
        return None;
    }
    let about = words.text(&format!("cause-{}-about", top.id));
    let id = if by_hand { "note-likely-else" } else { "note-likely" };
    Some(words.with(id, &[("about", about.into())]))
}

/// Causes that have nothing to do with the shaft.
const ELSEWHERE: [&str; 6] =
    ["air-leak", "misfire", "low-idle", "torsional-rattle", "early-engagement", "wheel-or-tyre"];

/// That the shaft was found in order, where the likeliest cause lies elsewhere and every hand that decides was laid on.
fn in_order(standing: &Standing, words: &Words) -> Option<String> {
    let top = standing.sorting.causes.first()?;
    let urgency = &standing.urgency;
    let elsewhere = ELSEWHERE.contains(&top.id.as_str()) && top.probability >= NAMED_FROM;
    let doubt = |reason: &Reason| reason.tells(Tells::Cold) || reason.tells(Tells::Unsure);
    let unsure =
        |step: &StepStand| step.answered.as_ref().is_some_and(|given| given.value.has(answer::UNSURE));
    let turn = |step: &String| ids::base(step) == step::TURN_BY_HAND;
    let all_seen = urgency.unlooked.is_empty() && urgency.limits.iter().all(turn);
    let sure = urgency.complete
        && all_seen
        && !standing.steps.iter().any(unsure)
        && !urgency.reasons.iter().any(doubt);
    let id = if standing.support == Support::Absent { "note-in-order-ends" } else { "note-in-order" };
    (elsewhere && sure && found::by_hand(standing).is_empty()).then(|| words.text(id))
}

fn not_known_on_page(standing: &Standing, words: &Words) -> Vec<String> {
    let sentences = not_known(standing, words);
    if sentences.is_empty() { vec![words.text("note-open-none")] } else { sentences }
}

fn ask(standing: &Standing, workshop: &Workshop, words: &Words) -> Vec<String> {
    let technician = standing.technician.trim();
    let id = match (workshop.name.is_empty(), technician.is_empty()) {
        (true, true) => "note-ask-workshop",
        (true, false) => "note-ask-technician",
        (false, true) => "note-ask-named",
        (false, false) => "note-ask-named-technician",
    };
    let args = [("technician", technician.into()), ("workshop", workshop.name.as_str().into())];
    let phone = (!workshop.phone.is_empty())
        .then(|| words.with("note-ask-phone", &[("phone", workshop.phone.as_str().into())]));
    let who = std::iter::once(words.with(id, &args));
    who.chain(phone).chain([words.text("note-ask-second")]).collect()
}

fn receipt_from(workshop: &Workshop, words: &Words) -> String {
    if workshop.name.is_empty() {
        return String::new();
    }
    let lines = std::iter::once(&workshop.name).chain(&workshop.address).cloned().collect::<Vec<_>>();
    words.with("note-receipt-from", &[("workshop", words.list(&lines).into())])
}

/// What the note is, and that all of its record is proven, where it is; what is not proven stands among what is not
/// known.
fn page_foot(standing: &Standing, words: &Words) -> String {
    let foot = words.text("note-foot");
    let ours =
        |writer: &WriterStand| writer.device.trust != Trust::BeforeSignatures && !writer.device.is_doubtful();
    let writers = &standing.writers;
    let proven = standing.ledger.broken_at.is_none() && !writers.is_empty() && writers.iter().all(ours);
    if proven { format!("{foot} {}", words.text("note-proven")) } else { foot }
}

/// Whether the owner needs to read of this point. That nothing was listened for matters only where the
/// noise is still the question and no reason says so already.
fn matters(point: &OpenPoint<'_>, standing: &Standing) -> bool {
    match point {
        OpenPoint::NotReproduced | OpenPoint::NotDriven | OpenPoint::NotListened => {
            matches!(standing.urgency.word, None | Some(Word::Caution))
        }
        _ => true,
    }
}

fn open_sentence(standing: &Standing, point: &OpenPoint<'_>, words: &Words) -> String {
    match point {
        OpenPoint::HandsOn(step) => at_which(standing, step, "note-open", words),
        OpenPoint::Limit(step) => reasons::limit(words, standing, step, Reader::Owner),
        OpenPoint::Unsure(step) => at_which(standing, step, "note-unsure", words),
        OpenPoint::Disputed(_) => words.text("note-disputed"),
        OpenPoint::Unlooked => reasons::unlooked(words, standing, Reader::Owner).unwrap_or_default(),
        OpenPoint::Others(steps) => others(standing, steps, words),
        OpenPoint::FigureMissing => words.text("note-figure"),
        OpenPoint::ColdCheck => words.text(&said::by_support(standing, words, "note-cold")),
        OpenPoint::NotDriven => words.text("note-not-driven"),
        OpenPoint::NotReproduced => words.text("note-not-reproduced"),
        OpenPoint::NotListened => words.text("note-not-listened"),
        OpenPoint::LedgerBroken(_) => words.text("note-ledger"),
        OpenPoint::DeviceNotConfirmed(_) => words.text("note-device"),
        OpenPoint::BeforeSignatures(_) => words.text("note-unsigned"),
    }
}

/// What is open at a step; of a shaft with several bearings, at which.
fn at_which(standing: &Standing, id: &str, about: &str, words: &Words) -> String {
    let open = words.text(&format!("{about}-{}", ids::base(id)));
    let step = standing.steps.iter().find(|step| step.id == id);
    match step.and_then(|step| step.at_support) {
        Some(number) => format!("{open} {}", words.text(&format!("reason-at-support-{number}-owner"))),
        None => open,
    }
}

/// The other checks that were not done, by name as far as the page has room for them.
fn others(standing: &Standing, steps: &[&str], words: &Words) -> String {
    let count = words.with("note-open-others", &[("count", steps.len().into())]);
    if steps.len() > OTHERS_NAMED {
        return count;
    }
    let args = [("count", steps.len().into()), ("steps", said::steps(words, standing, steps).into())];
    let named = words.with("note-open-which", &args);
    format!("{count} {named}")
}

fn vehicle(standing: &Standing, words: &Words) -> Vec<Field> {
    let car = &standing.intake.vehicle;
    let vin = if car.plate.trim().is_empty() { car.vin.as_str() } else { "" };
    let nameless = [&car.label, &car.plate, &car.vin].iter().all(|text| text.trim().is_empty());
    let visit = if nameless { standing.visit.as_str() } else { "" };
    let fields = [
        field(words, "vehicle", car.label.as_str()),
        field(words, "plate", car.plate.as_str()),
        field(words, "vin", vin),
        field(words, "owner", standing.intake.owner.name.as_str()),
        field(words, "visit", visit),
        field(words, "date", words.date(last_checked(standing))),
    ];
    fields.into_iter().flatten().collect()
}

/// The photographed step with the worst rating; the first of equals.
fn worst_photo(standing: &Standing) -> Option<&StepStand> {
    let mut pictured = standing.steps.iter().filter(|step| step.photo.is_some());
    let first = pictured.next()?;
    Some(pictured.fold(first, |worst, step| if step.word > worst.word { step } else { worst }))
}

/// The picture of where the bearing sits: that of the layout, where it has its own; else that of its support.
fn drawing(standing: &Standing, words: &Words) -> String {
    let layout = standing.intake.vehicle.layout.as_str();
    let own = words.find(&format!("drawing-{layout}")).map(|_| layout);
    own.unwrap_or(standing.support.id()).to_owned()
}

fn decisions(standing: &Standing, words: &Words) -> Vec<DecisionLine> {
    let rating = said::urgency_id(standing.urgency.word);
    [OwnerDecision::Repair, OwnerDecision::DecideLater, OwnerDecision::Decline]
        .map(|each| DecisionLine { id: each.id().to_owned(), label: decision(words, each, rating) })
        .into()
}

/// Hash over everything the owner reads before signing.
fn content_hash(note: &Note) -> String {
    let mut value = serde_json::to_value(note).unwrap_or_default();
    if let Some(fields) = value.as_object_mut() {
        fields.remove("signed");
        fields.remove("sha256");
    }
    sha256(&value)
}
