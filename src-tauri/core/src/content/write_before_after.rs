//! Fills the sheet for the customer from where a visit and its bench stand.

use crate::model::bench::{BenchPartId, BenchStand, BoreStand, Contact, RingTurn};
use crate::model::bore::{BoreSection, FormUm};
use crate::model::fit::SeatId;
use crate::model::standing::Standing;
use crate::model::verdict::Verdict;
use crate::model::workshop::Workshop;
use crate::words::Words;

use super::before_after::{BeforeAfter, BoreSide};
use super::finding_lines::{foot, vehicle};
use super::parts::{labels, letterhead};
use super::write_repair::worst;

/// What the sheet says. The same ledger, workshop and words give the same sheet.
pub fn build_before_after(
    standing: &Standing,
    bench: &BenchStand,
    workshop: &Workshop,
    words: &Words,
) -> BeforeAfter {
    let say = |id: &str| words.text(&format!("owner-bore-{id}"));
    let sides = [("before", &bench.found), ("after", &bench.finished)];
    let magnification =
        sides.iter().filter_map(|(_, bore)| Some(worst(bore.as_ref()?)?.plot.magnification)).reduce(f64::min);
    let scale = magnification
        .map(|times| words.with("owner-bore-scale", &[("times", words.number(times.round()).into())]));
    BeforeAfter {
        locale: words.locale().to_owned(),
        title: say("title"),
        workshop: letterhead(workshop, words),
        vehicle: vehicle(standing, words),
        about: say("about"),
        bores: sides
            .map(|(id, bore)| side(id, bore.as_ref(), (bench.form_limit_um, magnification), words))
            .into(),
        scale: scale.unwrap_or_default(),
        done_heading: say("heading-done"),
        done: done(bench, words),
        cautions_heading: words.text("finding-heading-cautions"),
        cautions: ["check", "limit", "record"].map(|id| say(&format!("caution-{id}"))).into(),
        foot: foot(standing, words),
        page_foot: words.with("owner-bore-foot", &[("visit", standing.visit.as_str().into())]),
        labels: labels(words),
    }
}

/// One side of the sheet; what was not measured says so, and has no drawing.
fn side(
    id: &str,
    bore: Option<&BoreStand>,
    (limit_um, magnification): (Option<f64>, Option<f64>),
    words: &Words,
) -> BoreSide {
    let heading = words.text(&format!("owner-bore-{id}"));
    let section = bore.and_then(worst);
    let form = bore.and_then(|bore| bore.shape.greatest_out_of_roundness);
    let (Some(bore), Some(section), Some(form), Some(times)) = (bore, section, form, magnification) else {
        let says = words.text("owner-bore-not-measured");
        return BoreSide {
            alt: says.clone(),
            heading,
            says,
            compared: String::new(),
            wall: Vec::new(),
            whole: false,
        };
    };
    let plot = section.plot.magnified(times);
    BoreSide {
        alt: words.with("owner-bore-alt", &[("side", heading.clone().into())]),
        says: says(form, at_least(bore), limit_um, words),
        compared: compared(form, at_least(bore), limit_um, words),
        heading,
        wall: plot.pieces(),
        whole: section.unread_deg.is_empty(),
    }
}

/// What was read in part, or by a method that is blind to some shapes, is out of round by at least what was seen.
fn at_least(bore: &BoreStand) -> bool {
    let blind = |section: &BoreSection| section.at_least;
    !bore.shape.is_read_round() || bore.shape.sections.iter().any(blind)
}

fn says(form: FormUm, at_least: bool, limit_um: Option<f64>, words: &Words) -> String {
    let id = match (at_least, limit_um) {
        (false, Some(_)) => "owner-bore-out",
        (true, Some(_)) => "owner-bore-out-least",
        (false, None) => "owner-bore-out-no-limit",
        (true, None) => "owner-bore-out-least-no-limit",
    };
    // An owner knows millimetres.
    let shown = |um: f64| words.measured(um / 1000.0);
    let limit = limit_um.map(shown).unwrap_or_default();
    words.with(id, &[("value", shown(form.value_um).into()), ("limit", limit.into())])
}

/// Within the limit is only what is so with its whole uncertainty, and was read all round.
fn compared(form: FormUm, at_least: bool, limit_um: Option<f64>, words: &Words) -> String {
    let Some(limit) = limit_um else { return String::new() };
    words.text(if form.value_um - form.expanded_um > limit {
        "owner-bore-beyond"
    } else if !at_least && form.value_um + form.expanded_um <= limit {
        "owner-bore-within"
    } else {
        "owner-bore-unsure"
    })
}

/// What was done, as far as it is recorded.
fn done(bench: &BenchStand, words: &Words) -> Vec<String> {
    let say = |id: &str| words.text(&format!("owner-bore-done-{id}"));
    let mut lines = Vec::new();
    if bench.verdict.verdict == Some(Verdict::ReplaceHousing) {
        lines.push(say("replace"));
    }
    lines.extend(bench.sleeve_out.as_ref().map(|_| say("sleeve-out")));
    lines.extend(bench.passes.last().map(|last| {
        let id = if last.contact == Contact::AllRound { "cut" } else { "cut-partly" };
        words.with(&format!("owner-bore-done-{id}"), &[("passes", bench.passes.len().into())])
    }));
    let sleeve = bench
        .fit
        .as_ref()
        .is_some_and(|fit| fit.seats.iter().any(|seat| seat.seat == SeatId::SleeveInHousing));
    if sleeve && bench.finished.is_some() {
        lines.push(say("sleeve"));
    }
    let turned = bench.parts.iter().any(|part| part.id == BenchPartId::Ring && part.done);
    let bad = bench.rings.iter().any(|ring| ring.turns != RingTurn::Free);
    lines.push(say(match (turned, bad) {
        (true, _) => "turns",
        (false, true) => "does-not-turn",
        (false, false) => "not-turned",
    }));
    lines
}
