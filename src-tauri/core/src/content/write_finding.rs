//! Fills the service writer's finding from where a visit stands. Its tables are in `finding_lines`.

use crate::model::device::DeviceStand;
use crate::model::occasion::Occasion;
use crate::model::rating::Word;
use crate::model::rules::{LIKELY, Tells};
use crate::model::standing::{CauseGroup, CauseStand, Elsewhere, Standing, Support};
use crate::model::verdict::BenchVerdict;
use crate::model::workshop::Workshop;
use crate::words::Words;

use super::finding::{Finding, FindingHeadings};
use super::finding_lines::{
    beside_the_sorting, causes, complaint, foot, not_checked, reasons, steps, vehicle,
};
use super::found;
use super::gauge_table::gauge_table;
use super::open_points::{OpenPoint, hands_on_missing, open_points};
use super::parts::{band, labels, letterhead, signed};
use super::reasons;
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

/// What was answered by another layout: it counts for nothing, and nobody is to look for it in vain.
fn elsewhere(standing: &Standing, words: &Words) -> Option<String> {
    let said = |each: &Elsewhere| said::answer_at(words, standing, &each.step, &each.value);
    let all: Vec<String> = standing.elsewhere.iter().map(said).collect();
    (!all.is_empty()).then(|| words.with("finding-elsewhere", &[("answers", words.list(&all).into())]))
}

/// The answer in ten seconds: rating, strongest reason, causes, and what is still open.
fn answer(standing: &Standing, words: &Words) -> Vec<String> {
    let urgency = &standing.urgency;
    let mut sentences = vec![words.text(&format!("finding-sum-{}", standing.headline))];
    sentences.extend(found::still_open(standing, words, Reader::Trade));
    sentences.extend(found::made_milder(standing, words));
    sentences.extend(elsewhere(standing, words));
    // Names in what follows are those that were written, whoever wrote them.
    let doubtful = standing.entries_by(DeviceStand::is_doubtful);
    if doubtful > 0 {
        sentences.push(words.with("unknown-device", &[("entries", doubtful.into())]));
    }
    if standing.older_than_repair() {
        sentences.push(words.text("finding-sum-repaired"));
    }
    if let Some(reason) = urgency.reasons.first() {
        let reason = reasons::reason_text(words, standing, reason, Reader::Trade);
        sentences.push(match urgency.word {
            Some(_) => reason,
            None if !standing.found.is_empty() => reason,
            None => words.with("finding-sum-suspicion", &[("reason", reason.into())]),
        });
    }
    sentences.extend(found::sentence(standing, words));
    sentences.extend(reasons::closed_tube(words, standing, Reader::Trade));
    sentences.push(sorted(standing, words));
    // Which steps those are stands beside it, under what to do next.
    if urgency.word.is_some() && !hands_on_missing(standing).is_empty() {
        sentences.push(words.text("finding-sum-still"));
    }
    sentences
}

/// The likely causes, those behind what was found first. Without a rating nothing is said to be absent: that would read
/// as cleared.
fn sorted(standing: &Standing, words: &Words) -> String {
    if standing.steps.iter().all(|step| step.answered.is_none()) {
        return words.text("finding-sum-nothing-yet");
    }
    // Nor that nothing is wrong beside what was found, or what forbids to drive.
    let found = !standing.found.is_empty() || standing.urgency.word >= Some(Word::Warning);
    let told =
        |cause: &&CauseStand| standing.urgency.word.is_some() && !found || cause.group != CauseGroup::Normal;
    let likely = standing.sorting.causes.iter().filter(|cause| cause.probability >= NAMED_FROM).filter(told);
    let (behind, beside): (Vec<&CauseStand>, Vec<&CauseStand>) =
        likely.partition(|cause| cause.is_behind(&standing.found));
    let listed = |id: &str, causes: &[&CauseStand]| {
        let shares: Vec<String> = causes.iter().map(|cause| share(standing, cause, words)).collect();
        (!causes.is_empty()).then(|| words.with(id, &[("causes", words.list(&shares).into())]))
    };
    let mut sentences: Vec<String> = listed("finding-sum-behind", &behind).into_iter().collect();
    sentences.extend(listed(if found { "finding-sum-beside" } else { "finding-sum-likely" }, &beside));
    if sentences.is_empty() {
        sentences.push(words.text(if found { "finding-sum-else-none" } else { "finding-sum-no-cause" }));
    }
    if standing.support != Support::Absent {
        let bearing = words.percent(standing.sorting.bearing_probability);
        sentences.push(words.with("finding-sum-bearing", &[("bearing", bearing.into())]));
    }
    sentences.join(" ")
}

fn share(standing: &Standing, cause: &CauseStand, words: &Words) -> String {
    let name = said::cause(words, standing, &cause.id);
    let percent = words.percent(cause.probability);
    words.with("finding-cause-share", &[("cause", name.into()), ("percent", percent.into())])
}

/// What to do next, first thing first: with a rating what it asks for, without one the check itself; after a
/// repair the check that it took.
fn next(standing: &Standing, words: &Words) -> Vec<String> {
    if standing.older_than_repair() {
        return vec![words.text("finding-next-repaired")];
    }
    let word = said::urgency_id(standing.urgency.word);
    let rule = words.text(&format!("finding-next-{}", standing.asks));
    // Beside what an earlier visit forbids nothing of this one clears the car.
    let held = standing.still_open.is_some() && standing.urgency.do_not_drive != Some(true);
    let clears = held && standing.urgency.word == Some(Word::Notice);
    let rated = standing.urgency.word.is_some();
    let mut lines = Vec::new();
    lines.extend(standing.still_open.iter().map(|_| words.text("finding-next-still-open")));
    let again = rated && feel_again(standing);
    if again {
        lines.extend(next_check(standing, words));
    } else if rated && !clears {
        lines.push(rule.clone());
    }
    lines.extend(reasons::left_out(words, standing));
    let missing = hands_on_missing(standing);
    if !missing.is_empty() {
        let missing = said::steps(words, standing, &missing);
        lines.push(words.with("finding-next-finish", &[("steps", missing.into())]));
        if rated && standing.urgency.do_not_drive.is_none() {
            lines.push(words.text("finding-next-drive-open"));
        }
    }
    if !again {
        lines.extend(next_check(standing, words));
    }
    if standing.intake.occasion == Occasion::AfterRepair
        && road_test_open(standing)
        && standing.still_open.is_none()
    {
        lines.push(words.text("finding-next-after-repair"));
    }
    lines.extend(cause_next(standing, words));
    lines.extend((again || !rated).then_some(rule));
    let owner =
        if again { "finding-next-again-owner".to_owned() } else { format!("finding-next-{word}-owner") };
    lines.extend((!held).then(|| words.text(&owner)));
    if repair_ahead(standing) {
        lines.push(words.text("finding-next-maker"));
    }
    lines
}

fn next_check(standing: &Standing, words: &Words) -> Option<String> {
    let check = standing.sorting.next_check.as_ref()?;
    let args =
        [("step", said::step(words, standing, &check.step).into()), ("why", words.text(&check.why).into())];
    Some(words.with("finding-next-check", &args))
}

/// Whether all that holds the car back is a movement left unsure: it is felt again, while the car is on the lift,
/// before anything else is arranged.
fn feel_again(standing: &Standing) -> bool {
    let word = standing.urgency.word;
    let mut strongest = standing.urgency.reasons.iter().filter(|reason| Some(reason.word) == word);
    word == Some(Word::Warning)
        && standing.sorting.next_check.is_some()
        && strongest.all(|reason| reason.tells(Tells::Unsure))
}

/// Whether the road test can be done and was not.
fn road_test_open(standing: &Standing) -> bool {
    standing.steps.iter().any(|step| step.set.as_deref() == Some("road") && step.answered.is_none())
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
    let found = !found::by_hand(standing).is_empty();
    let mut causes =
        standing.sorting.causes.iter().filter(|cause| !found || cause.group != CauseGroup::Normal);
    let top = causes.next().filter(|cause| cause.probability >= NAMED_FROM)?;
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
            let lack = reasons::limit(words, standing, step, Reader::Trade);
            words.with(
                "unknown-limit",
                &[("step", said::step(words, standing, step).into()), ("lack", lack.into())],
            )
        }
        OpenPoint::Unsure(step) => at("unknown-unsure", step),
        OpenPoint::Disputed(step) => at("unknown-disputed", step),
        OpenPoint::Unlooked => reasons::unlooked(words, standing, Reader::Trade).unwrap_or_default(),
        OpenPoint::Others(steps) => words.with("unknown-open", &[("count", steps.len().into())]),
        OpenPoint::FigureMissing => words.text("unknown-figure"),
        OpenPoint::ColdCheck => words.text(&said::by_support(standing, words, "unknown-cold")),
        OpenPoint::NotDriven => words.text("unknown-not-driven"),
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
        causes: heading(if standing.found.is_empty() { "causes" } else { "causes-found" }),
        unknown: heading("unknown"),
        road: heading("road"),
        cautions: heading("cautions"),
        signed: heading("signed"),
    }
}
