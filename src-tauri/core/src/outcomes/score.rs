//! How well past sortings did: every probability that was given for a cause before its outcome was known,
//! against what was there.
//!
//! Sources, from memory: Brier, Monthly Weather Review 78 (1950) 1; DeGroot & Fienberg, The Statistician
//! 32 (1983) 12 (calibration and refinement).

use std::collections::{BTreeMap, BTreeSet};

use crate::model::calibration::{Calibration, LayoutOutcomes, ReliabilityGroup, Scores};
use crate::model::outcome::Outcome;
use crate::trade::Trade;

use super::weak::weak_signs;

/// One probability and the truth.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Forecast {
    /// Probability given, 0 to 1.
    pub probability: f64,
    /// The cause was there.
    pub there: bool,
    /// How often that cause was there among all the workshop's cars that could have it.
    pub base: f64,
}

/// The calibration page.
pub fn calibration(trade: &Trade, outcomes: &[Outcome]) -> Calibration {
    let forecasts = forecasts(outcomes);
    let layouts = layouts(trade, outcomes);
    Calibration {
        outcomes: count(outcomes.len()),
        enough: trade.enough,
        on_judgement_alone: layouts.iter().all(|layout| !layout.taught),
        layouts,
        scores: (!forecasts.is_empty()).then(|| scores(&forecasts)),
        weak_signs: weak_signs(trade, outcomes),
    }
}

fn layouts(trade: &Trade, outcomes: &[Outcome]) -> Vec<LayoutOutcomes> {
    let ids: BTreeSet<&String> = outcomes.iter().map(|outcome| &outcome.layout).collect();
    let of = |id: &String| count(outcomes.iter().filter(|outcome| &outcome.layout == id).count());
    let row =
        |id: &String| LayoutOutcomes { layout: id.clone(), outcomes: of(id), taught: of(id) >= trade.enough };
    ids.into_iter().map(row).collect()
}

/// Every probability that was given for a cause. "None of the causes" follows from the others and is not
/// scored again.
fn forecasts(outcomes: &[Outcome]) -> Vec<Forecast> {
    let mut counts: BTreeMap<&String, (f64, f64)> = BTreeMap::new();
    for outcome in outcomes {
        for (id, _) in named(outcome) {
            let (there, all) = counts.entry(id).or_default();
            *all += 1.0;
            *there += f64::from(u8::from(outcome.causes.contains(id)));
        }
    }
    // Half a car each way keeps a cause that was always or never there off certainty.
    let base = |id: &String| counts.get(id).map_or(0.5, |(there, all)| (there + 0.5) / (all + 1.0));
    outcomes
        .iter()
        .flat_map(|outcome| named(outcome).map(move |(id, p)| (outcome, id, *p)))
        .map(|(outcome, id, probability)| Forecast {
            probability,
            there: outcome.causes.contains(id),
            base: base(id),
        })
        .collect()
}

fn named(outcome: &Outcome) -> impl Iterator<Item = (&String, &f64)> {
    outcome.sorted.iter().filter(|(id, _)| *id != NORMAL)
}

/// Groups of the reliability diagram, of equal width.
const GROUPS: usize = 10;

/// Nearest to certainty that the logarithmic score takes a probability.
const EDGE: f64 = 1e-12;

/// The scores of some forecasts; call it with at least one.
pub fn scores(forecasts: &[Forecast]) -> Scores {
    let total = forecasts.len() as f64;
    let mean = |value: &dyn Fn(&Forecast) -> f64| forecasts.iter().map(value).sum::<f64>() / total;
    let groups: Vec<ReliabilityGroup> =
        (0..GROUPS).filter_map(|group| self::group(forecasts, group)).collect();
    let over = |part: &dyn Fn(&ReliabilityGroup) -> f64| {
        groups.iter().map(|group| f64::from(group.count) * part(group)).sum::<f64>() / total
    };
    let brier = mean(&|one| (one.probability - truth(one)).powi(2));
    let calibration = over(&|group| (group.mean - group.frequency).powi(2));
    let refinement = over(&|group| group.frequency * (1.0 - group.frequency));
    Scores {
        forecasts: count(forecasts.len()),
        brier,
        calibration,
        refinement,
        grouping: brier - calibration - refinement,
        log_score: mean(&|one| log_loss(one.probability, one.there)),
        log_score_base: mean(&|one| log_loss(one.base, one.there)),
        groups,
    }
}

fn group(forecasts: &[Forecast], group: usize) -> Option<ReliabilityGroup> {
    let inside: Vec<&Forecast> = forecasts.iter().filter(|one| place(one.probability) == group).collect();
    if inside.is_empty() {
        return None;
    }
    let mean = |value: &dyn Fn(&Forecast) -> f64| {
        inside.iter().map(|one| value(one)).sum::<f64>() / inside.len() as f64
    };
    Some(ReliabilityGroup {
        low: group as f64 / GROUPS as f64,
        high: (group + 1) as f64 / GROUPS as f64,
        count: count(inside.len()),
        mean: mean(&|one| one.probability),
        frequency: mean(&truth),
    })
}

/// A probability on the border belongs to the upper group; one belongs to the last.
fn place(probability: f64) -> usize {
    (0..GROUPS).rev().find(|group| probability >= *group as f64 / GROUPS as f64).unwrap_or(0)
}

fn truth(forecast: &Forecast) -> f64 {
    if forecast.there { 1.0 } else { 0.0 }
}

fn log_loss(probability: f64, there: bool) -> f64 {
    let given = if there { probability } else { 1.0 - probability };
    -given.clamp(EDGE, 1.0).ln()
}

fn count(number: usize) -> u32 {
    u32::try_from(number).unwrap_or(u32::MAX)
}

/// The id of "none of the causes", which is no cause of its own.
const NORMAL: &str = "normal-character";
