//! The scope of work in three tiers, which the bench decides between; only where a bearing is concerned.

use crate::model::rating::Word;
use crate::model::standing::{CauseGroup, Standing, Support};
use crate::model::verdict::{BenchVerdict, Verdict};
use crate::model::workshop::{TierHours, Workshop};
use crate::words::Words;

use super::finding::{Scope, ScopeTier};
use super::verdict_lines::verdict_lines;
use super::write_finding::NAMED_FROM;

/// The scope; `bench` is its verdict once it recorded anything. Without a rating nothing is proposed: the
/// hands-on check comes first.
pub fn scope(
    standing: &Standing,
    bench: Option<&BenchVerdict>,
    workshop: &Workshop,
    words: &Words,
) -> Option<Scope> {
    if bench.is_none() && !bearing_concerned(standing) {
        return None;
    }
    let lead = match bench {
        None => vec![words.text("scope-before-teardown")],
        Some(found) => decided(found, words),
    };
    let tiers = Verdict::ALL.map(|tier| tier_line(tier, bench, workshop, words)).into();
    Some(Scope { lead, tiers, terms: terms(workshop, words) })
}

/// Whether the bearing is what is rated, in a seat that the bench can judge: rubber is replaced, not bored.
fn bearing_concerned(standing: &Standing) -> bool {
    let bored = ![Support::Rubber, Support::Absent].contains(&standing.support);
    let rated = standing.urgency.word >= Some(Word::Caution) && bored;
    let is_bearing = |id: &String| {
        standing.sorting.causes.iter().any(|cause| cause.id == *id && cause.group == CauseGroup::Bearing)
    };
    let by_rule = standing.urgency.reasons.iter().any(|reason| {
        reason.facts().is_some_and(|facts| facts.on_bearing) || reason.cause.as_ref().is_some_and(is_bearing)
    });
    rated && (by_rule || standing.sorting.bearing_probability >= NAMED_FROM)
}

/// The verdict and why, or what keeps it open. Gates and what has to be checked after the repair are the bench's
/// and the repair record's.
fn decided(found: &BenchVerdict, words: &Words) -> Vec<String> {
    let said = BenchVerdict { closing_checks: Vec::new(), gates: Vec::new(), ..found.clone() };
    let mut lines = verdict_lines(words, &said);
    if let Some(first) = lines.first_mut() {
        *first = words.with("scope-bench", &[("verdict", first.as_str().into())]);
    }
    lines
}

fn tier_line(tier: Verdict, bench: Option<&BenchVerdict>, workshop: &Workshop, words: &Words) -> ScopeTier {
    let state = match bench {
        Some(found) if found.verdict == Some(tier) => "chosen",
        Some(found) if found.verdict.is_some() || tier < found.at_least => "ruled-out",
        _ => "open",
    };
    let hours = workshop.hours.iter().find(|hours| hours.tier == tier);
    ScopeTier {
        tier: tier.id().to_owned(),
        name: words.text(&format!("scope-{}", tier.id())),
        about: words.text(&format!("scope-{}-about", tier.id())),
        hours: hours.map(|hours| hours_line(hours, words)).unwrap_or_default(),
        state: state.to_owned(),
        state_label: words.text(&format!("scope-{state}")),
    }
}

fn hours_line(hours: &TierHours, words: &Words) -> String {
    let (from, to) = (words.number(hours.from), words.number(hours.to));
    if hours.from == hours.to {
        return words.with("scope-hours-exact", &[("hours", to.into())]);
    }
    words.with("scope-hours", &[("from", from.into()), ("to", to.into())])
}

/// What the hours and the rate are, and what none of it is.
fn terms(workshop: &Workshop, words: &Words) -> Vec<String> {
    let mut lines = Vec::new();
    if !workshop.hours.is_empty() {
        lines.push(words.text("scope-hours-are"));
    }
    if let Some(rate) = workshop.rate {
        let money = format!("{} {}", words.money(rate), workshop.currency);
        lines.push(words.with("scope-rate", &[("rate", money.trim().into())]));
    }
    lines.push(words.text("scope-no-quote"));
    lines
}
