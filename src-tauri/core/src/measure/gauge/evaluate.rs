//! From an input to everything that is shown of it.

use super::budget::{AtWork, contributions, lines};
use super::combine::{Combined, combine};
use super::fault::GaugeFault;
use super::remedies::{Sought, remedies};
use super::{decide, likelihood, meaning, read, risk, student, trend};
use crate::model::gauge::{
    Bands, Earlier, GaugeBudgetLine, GaugeDecision, GaugeInput, GaugePosition, GaugeResult, Likelihood,
    OtherLever, ReadingStand, Remedy, Trend, TrendPoint, Uncertainty,
};
use crate::model::limits;
use crate::trade::bench::BenchTables;

/// Judges readings. Where either of two levers may be the right one, both are worked out, the graver is shown, and
/// nothing is proven that is not proven by both.
///
/// # Errors
/// What keeps them from being judged; nothing is dropped silently.
pub fn evaluate(input: &GaugeInput, tables: &BenchTables) -> Result<GaugeResult, GaugeFault> {
    let first = by_one_lever(input, tables)?;
    let Some(other) = by_other_lever(input) else { return Ok(first) };
    let second = by_one_lever(&other, tables)?;
    Ok(if first.ratio >= second.ratio { either(first, &second) } else { either(second, &first) })
}

/// The input with its other lever in the place of the first.
fn by_other_lever(input: &GaugeInput) -> Option<GaugeInput> {
    let GaugePosition::Shaft { gauge_mm, error_mm, or: Some(or), .. } = &input.place else { return None };
    let (pivot_mm, bearing_mm) = (or.pivot_mm.clone(), or.bearing_mm.clone());
    let place = GaugePosition::Shaft {
        pivot_mm,
        gauge_mm: gauge_mm.clone(),
        bearing_mm,
        or: None,
        error_mm: *error_mm,
    };
    Some(GaugeInput { place, ..input.clone() })
}

/// What stands whichever of two levers is the right one. Neither is the likelier: the likelihoods are their means.
fn either(graver: GaugeResult, milder: &GaugeResult) -> GaugeResult {
    let agree = graver.decision == milder.decision;
    let decision = if agree { graver.decision } else { GaugeDecision::NotDecided };
    let mean = |a: f64, b: f64| 0.5 * (a + b);
    let likelihood = graver.likelihood.zip(milder.likelihood).map(|(a, b)| Likelihood {
        if_movement: mean(a.if_movement, b.if_movement),
        if_none: mean(a.if_none, b.if_none),
    });
    let mut remedies = graver.remedies.clone();
    if !agree {
        remedies = vec![Remedy::FindLever, Remedy::AtBearing];
    }
    GaugeResult {
        other_lever: Some(OtherLever {
            ratio: milder.ratio,
            mean_mm: milder.mean_mm,
            decision: milder.decision,
        }),
        decision,
        meaning: meaning::meaning(graver.support, decision),
        remedies,
        likelihood,
        ..graver
    }
}

fn by_one_lever(input: &GaugeInput, tables: &BenchTables) -> Result<GaugeResult, GaugeFault> {
    let found = read::read(input, tables)?;
    let at = found.at;
    let settings = &tables.settings;
    let budget = lines(&at);
    let combined = combine(&contributions(&budget));
    let least = settings.guard_standard_uncertainties.value;
    let banded = |limit: f64| decide::bands(limit, decide::guard_of(&at, limit, (&combined, least)));
    let uncertainty = at.deviation.map(|_| uncertainty(at.movement(), &combined));
    let bands = uncertainty.and(found.limit.mm).map(banded);
    let decision = decision(&at, found.limit.mm, bands.as_ref());
    let sought = found.limit.mm.map(|limit| Sought {
        at,
        limit,
        guard_least: least,
        most_readings: settings.most_readings.value as u32,
        unit: input.unit,
        steps: settings.gauge_steps.of(input.unit),
    });
    let with_limit = |limit: f64| bands.map(|bands| (limit, bands));
    Ok(GaugeResult {
        station: input.station.clone(),
        direction: input.direction,
        support: input.support,
        unit: input.unit,
        readings: stands(&found.readings, &at, settings.doubtful_score.value),
        ratio: at.ratio(),
        other_lever: None,
        mean_mm: at.movement(),
        deviation_mm: at.deviation.map(|deviation| deviation * at.ratio()),
        uncertainty,
        budget: largest_first(budget),
        limit: found.limit,
        bands,
        decision,
        meaning: meaning::meaning(input.support, decision),
        remedies: sought_remedies(decision, sought.as_ref()),
        likelihood: found
            .limit
            .mm
            .and_then(with_limit)
            .map(|(limit, _)| likelihood::likelihood(at.movement(), &combined, limit)),
        chances: found
            .limit
            .mm
            .and_then(with_limit)
            .map(|(limit, bands)| risk::even_chances(limit, &bands, combined.standard)),
        trend: history(input, at.movement(), uncertainty)?,
    })
}

fn uncertainty(mean: f64, combined: &Combined) -> Uncertainty {
    let dof_used = combined.whole_dof();
    let factor = student::factor_95(dof_used);
    let expanded = factor * combined.standard;
    Uncertainty {
        standard_mm: combined.standard,
        dof: combined.dof,
        dof_used: dof_used.map(|dof| dof as u32),
        factor,
        expanded_mm: expanded,
        low_mm: mean - expanded,
        high_mm: mean + expanded,
    }
}

fn decision(at: &AtWork, limit: Option<f64>, bands: Option<&Bands>) -> GaugeDecision {
    match (limit, bands) {
        (None, _) => GaugeDecision::Compare,
        (Some(_), None) => GaugeDecision::NotDecided,
        (Some(_), Some(bands)) => decide::decide(at.movement(), bands),
    }
}

fn sought_remedies(decision: GaugeDecision, sought: Option<&Sought<'_>>) -> Vec<Remedy> {
    match (decision, sought) {
        (GaugeDecision::NotDecided, Some(sought)) => remedies(sought),
        (GaugeDecision::Compare, _) => vec![Remedy::FindLimit],
        _ => Vec::new(),
    }
}

/// Every reading, marked where its modified z-score is beyond `score` (median and median deviation, the
/// latter never below a quarter of a step, so that rounding alone marks nothing).
fn stands(readings: &[f64], at: &AtWork, score: f64) -> Vec<ReadingStand> {
    let middle = median(readings.to_vec());
    let off = |reading: &f64| (reading - middle).abs();
    let usual = median(readings.iter().map(off).collect()).max(at.resolution / 4.0);
    readings
        .iter()
        .map(|reading| ReadingStand {
            at_gauge_mm: *reading,
            at_bearing_mm: reading * at.ratio(),
            doubtful: readings.len() > 2 && 0.6745 * off(reading) / usual > score,
        })
        .collect()
}

fn median(mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    let half = values.len() / 2;
    let upper = values.get(half).copied().unwrap_or_default();
    let lower = values.get(half.saturating_sub(1)).copied().unwrap_or(upper);
    if values.len().is_multiple_of(2) { 0.5 * (lower + upper) } else { upper }
}

fn largest_first(mut budget: Vec<GaugeBudgetLine>) -> Vec<GaugeBudgetLine> {
    budget.sort_by(|one, other| other.contribution_mm.total_cmp(&one.contribution_mm));
    budget
}

fn history(
    input: &GaugeInput,
    mean: f64,
    uncertainty: Option<Uncertainty>,
) -> Result<Option<Trend>, GaugeFault> {
    let sound = |past: &Earlier| {
        past.days_ago > 0.0
            && limits::EARLIER_DAYS.contains(&past.days_ago)
            && limits::EARLIER_MM.contains(&past.movement_mm)
            && limits::EARLIER_STANDARD_MM.contains(&past.standard_mm)
    };
    if !input.earlier.iter().all(sound) {
        return Err(GaugeFault::EarlierRefused);
    }
    let Some(now) = uncertainty.filter(|_| !input.earlier.is_empty()) else { return Ok(None) };
    let point = |past: &Earlier| TrendPoint {
        day: -past.days_ago,
        movement_mm: past.movement_mm,
        standard_mm: past.standard_mm,
    };
    let mut points: Vec<TrendPoint> = input.earlier.iter().map(point).collect();
    points.push(TrendPoint { day: 0.0, movement_mm: mean, standard_mm: now.standard_mm });
    points.sort_by(|one, other| one.day.total_cmp(&other.day));
    Ok(trend::trend(points))
}
