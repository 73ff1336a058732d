//! Fills the service writer's finding from where a visit stands. Its tables are in `finding_lines`.

use crate::model::rating::Word;
use crate::model::rules::LIKELY;
use crate::model::standing::{CauseGroup, Standing};
use crate::model::verdict::BenchVerdict;
use crate::model::workshop::Workshop;
use crate::words::Words;

use super::finding::{Finding, FindingHeadings};
use super::finding_lines::{
    beside_the_sorting, causes, complaint, foot, not_checked, reasons, steps, vehicle,
};
use super::gauge_table::gauge_table;
use super::open_points::{OpenPoint, hands_on_missing, open_points};
use super::parts::{band, labels, letterhead, signed};
use super::said::{self, Reader};
use super::scope::scope;

/// Probability from which a cause is named in the ten-second answer.
pub const NAMED_FROM: f64 = LIKELY;

/// What the finding says; `bench` is its verdict once it recorded anything. The same arguments give the same
/// finding.
pub fn build_finding(
    standing: &Standing,
    bench: Option<&BenchVerdict>,
    workshop: &Workshop,
    words: &Words,
) -> Finding {
    Finding {
        locale: words.locale().to_owned(),
        title: words.text("finding-title"),
        workshop: letterhead(workshop, words),
        band: band(standing, words),
        answer: answer(standing, words),
        next: next(standing, words),
        vehicle: vehicle(standing, words),
        complaint: complaint(standing, words),
        reasons: reasons(standing, words),
        scope: scope(standing, bench, workshop, words),
        steps: steps(standing, words),
        not_checked: not_checked(standing, words),
        gauges: gauge_table(standing, words),
        causes: causes(standing, words),
        said: beside_the_sorting(standing, words),
        unknown: open_points(standing).iter().map(|point| unknown(standing, point, words)).collect(),
        road: road(standing, words),
        cautions: ["scope", "sorting", "maker", "quote"]
            .map(|id| words.text(&format!("caution-{id}")))
            .into(),
        signed: signed(standing, words),
        foot: foot(standing, words),
        page_foot: words.with("finding-foot", &[("visit", standing.visit.as_str().into())]),
        headings: headings(standing, words),
        labels: labels(words),
    }
}

/// The answer in ten seconds: rating, strongest reason, causes, and what is still open.
fn answer(standing: &Standing, words: &Words) -> Vec<String> {
    let urgency = &standing.urgency;
    let mut sentences = vec![words.text(&format!("finding-sum-{}", urgency.headline()))];
    if standing.older_than_repair() {
        sentences.push(words.text("finding-sum-repaired"));
    }
    if let Some(reason) = urgency.reasons.first() {
        let reason = said::reason_text(words, standing, reason, Reader::Trade);
        sentences.push(match urgency.word {
            Some(_) => reason,
            None => words.with("finding-sum-suspicion", &[("reason", reason.into())]),
        });
    }
    sentences.extend(said::closed_tube(words, standing, Reader::Trade));
    sentences.push(sorted(standing, words));
    // Which steps those are stands beside it, under what to do next.
    if urgency.word.is_some() && !hands_on_missing(standing).is_empty() {
        sentences.push(words.text("finding-sum-still"));
    }
    sentences
}

/// The likely causes in one sentence. Without a rating nothing is said to be absent: that would read as cleared.
fn sorted(standing: &Standing, words: &Words) -> String {
    if standing.steps.iter().all(|step| step.answered.is_none()) {
        return words.text("finding-sum-nothing-yet");
    }
    let likely: Vec<String> = standing
        .sorting
        .causes
        .iter()
        .filter(|cause| cause.probability >= NAMED_FROM)
        .filter(|cause| standing.urgency.word.is_some() || cause.group != CauseGroup::Normal)
        .map(|cause| {
            let percent = words.percent(cause.probability);
            let args =
                [("cause", said::cause(words, standing, &cause.id).into()), ("percent", percent.into())];
            words.with("finding-cause-share", &args)
        })
        .collect();
    let id = if likely.is_empty() { "finding-sum-no-cause" } else { "finding-sum-likely" };
    let bearing = words.percent(standing.sorting.bearing_probability);
    words.with(id, &[("causes", words.list(&likely).into()), ("bearing", bearing.into())])
}

/// What to do next, first thing first: with a rating what it asks for, without one the check itself; after a
/// repair the check that it took.
fn next(standing: &Standing, words: &Words) -> Vec<String> {
    if standing.older_than_repair() {
        return vec![words.text("finding-next-repaired")];
    }
    let word = said::urgency_id(standing.urgency.word);
    let rule = words.text(&format!("finding-next-{word}"));
    let rated = standing.urgency.word.is_some();
    let mut lines = Vec::new();
    lines.extend(rated.then(|| rule.clone()));
    lines.extend(said::left_out(words, standing));
    let missing = hands_on_missing(standing);
    if !missing.is_empty() {
        let missing = said::steps(words, standing, &missing);
        lines.push(words.with("finding-next-finish", &[("steps", missing.into())]));
    }
    if let Some(check) = &standing.sorting.next_check {
        let args = [
            ("step", said::step(words, standing, &check.step).into()),
            ("why", words.text(&check.why).into()),
        ];
        lines.push(words.with("finding-next-check", &args));
    }
    lines.extend(cause_next(standing, words));
    lines.extend((!rated).then_some(rule));
    lines.push(words.text(&format!("finding-next-{word}-owner")));
    if repair_ahead(standing) {
        lines.push(words.text("finding-next-maker"));
    }
    lines
}

/// The rows of roadworthiness law, and behind them where their wording is from.
fn road(standing: &Standing, words: &Words) -> Vec<String> {
    let rows: Vec<String> =
        standing.road_rows.iter().map(|row| words.text(&format!("road-{}", row.id))).collect();
    let source = (!rows.is_empty()).then(|| words.text("road-source"));
    rows.into_iter().chain(source).collect()
}

/// What a trade does next about the likeliest cause, where it is likely and the trade knows.
fn cause_next(standing: &Standing, words: &Words) -> Option<String> {
    let top = standing.sorting.causes.first().filter(|cause| cause.probability >= NAMED_FROM)?;
    words.find(&format!("cause-{}-next", top.id))
}

/// Whether a repair is likely to follow.
fn repair_ahead(standing: &Standing) -> bool {
    let likely =
        |group: CauseGroup, probability: f64| group != CauseGroup::Normal && probability >= NAMED_FROM;
    standing.urgency.word >= Some(Word::Caution)
        || standing.sorting.causes.iter().any(|cause| likely(cause.group, cause.probability))
}

fn unknown(standing: &Standing, point: &OpenPoint<'_>, words: &Words) -> String {
    let at = |id: &str, step: &str| words.with(id, &[("step", said::step(words, standing, step).into())]);
    match point {
        OpenPoint::HandsOn(step) => at("unknown-hands-on", step),
        OpenPoint::Limit(step) => {
            let lack = said::limit(words, standing, step, Reader::Trade);
            words.with(
                "unknown-limit",
                &[("step", said::step(words, standing, step).into()), ("lack", lack.into())],
            )
        }
        OpenPoint::Unsure(step) => at("unknown-unsure", step),
        OpenPoint::Disputed(step) => at("unknown-disputed", step),
        OpenPoint::Unlooked => said::unlooked(words, standing, Reader::Trade).unwrap_or_default(),
        OpenPoint::Others(steps) => words.with("unknown-open", &[("count", steps.len().into())]),
        OpenPoint::FigureMissing => words.text("unknown-figure"),
        OpenPoint::ColdCheck => words.text("unknown-cold"),
        OpenPoint::NotReproduced => words.text("unknown-not-reproduced"),
        OpenPoint::NotListened => words.text("unknown-not-listened"),
        OpenPoint::LedgerBroken(at) => words.with("unknown-ledger", &[("at", (*at).into())]),
        OpenPoint::DeviceNotConfirmed(entries) => {
            words.with("unknown-device", &[("entries", (*entries).into())])
        }
        OpenPoint::BeforeSignatures(entries) => {
            words.with("unknown-unsigned", &[("entries", (*entries).into())])
        }
    }
}

fn headings(standing: &Standing, words: &Words) -> FindingHeadings {
    let heading = |part: &str| words.text(&format!("finding-heading-{part}"));
    FindingHeadings {
        next: heading("next"),
        vehicle: heading("vehicle"),
        complaint: heading("complaint"),
        reasons: heading(if standing.urgency.word.is_some() { "reasons" } else { "suspicion" }),
        scope: heading("scope"),
        steps: heading("steps"),
        gauges: heading("gauges"),
        causes: heading("causes"),
        unknown: heading("unknown"),
        road: heading("road"),
        cautions: heading("cautions"),
        signed: heading("signed"),
    }
}
