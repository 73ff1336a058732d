//! The bench verdict: bearings only, skim and sleeve, or replace the housing.
//!
//! What is missing never makes it milder: a verdict stands only when nothing that is still to be measured
//! could change it, and until then it names what is missing and what is already ruled out.

use crate::model::fit::FitResult;
use crate::model::verdict::{
    BenchFindings, BenchGap, BenchVerdict, ClosingCheck, Verdict, VerdictReason, WithUncertainty,
};
use crate::trade::bench::BenchTables;

/// The verdict on what was found. Numbers that cannot be count as not measured.
pub fn verdict(found: &BenchFindings, tables: &BenchTables) -> BenchVerdict {
    if found.cracked == Some(true) {
        return settled(Verdict::ReplaceHousing, vec![VerdictReason::Cracked]);
    }
    let (mut reasons, seat_gaps) = seat(found, tables);
    let skim = reasons.iter().any(|reason| *reason != VerdictReason::RoundnessNotDecided);
    if !skim {
        if seat_gaps.is_empty() {
            return settled(Verdict::BearingsOnly, vec![VerdictReason::SeatSound]);
        }
        return open(Verdict::BearingsOnly, reasons, seat_gaps);
    }
    let (left, least) =
        (finite(found.wall_left_mm), finite(found.wall_least_mm).filter(|least| *least > 0.0));
    if left.zip(least).is_some_and(|(left, least)| left < least) {
        reasons.insert(0, VerdictReason::WallTooThin);
        return settled(Verdict::ReplaceHousing, reasons);
    }
    let gaps = present([
        (found.cracked.is_none(), BenchGap::Cracks),
        (finite(found.clean_up_um).is_none_or(|cut| cut < 0.0), BenchGap::CleanUp),
        (left.is_none(), BenchGap::WallLeft),
        (least.is_none(), BenchGap::WallLeast),
    ]);
    if gaps.is_empty() {
        settled(Verdict::SkimAndSleeve, reasons)
    } else {
        open(Verdict::SkimAndSleeve, reasons, gaps)
    }
}

/// The findings with what a fit says of the new bearing in the seat: its diameter, the loosest pair over the
/// temperature range, and the largest share of a yield. A fit without a range, or with a part whose stress
/// or yield is not known, leaves that value missing.
pub fn with_fit(found: &BenchFindings, fit: &FitResult) -> BenchFindings {
    let loosest = fit
        .seats
        .iter()
        .filter(|seat| seat.over_temperature.len() > 1)
        .flat_map(|seat| seat.over_temperature.iter().map(|at| at.interference_um.least))
        .reduce(f64::min);
    let shares: Option<Vec<f64>> =
        fit.seats.iter().flat_map(|seat| &seat.stress).map(|stress| stress.used).collect();
    BenchFindings {
        diameter_mm: fit.seats.first().map(|seat| seat.diameter_mm),
        hot_interference_um: loosest,
        yield_share: shares.and_then(|shares| shares.into_iter().reduce(f64::max)),
        ..found.clone()
    }
}

/// What speaks against the seat as it is, and what is not known of it.
fn seat(found: &BenchFindings, tables: &BenchTables) -> (Vec<VerdictReason>, Vec<BenchGap>) {
    let settings = &tables.verdict;
    let form = finite(found.diameter_mm)
        .and_then(|diameter| tables.it5_um(diameter))
        .map(|it5| it5 * tables.settings.roundness_share_of_it5.value);
    let measured = found.roundness_um.filter(sound);
    let roundness = measured.zip(form).map(|(measured, limit)| {
        let guard = settings.guard_standard_uncertainties.value * measured.expanded / 2.0;
        roundness(measured.value, limit, guard)
    });
    let hot = finite(found.hot_interference_um);
    let stress = finite(found.yield_share).filter(|share| *share >= 0.0);
    let reasons = present([
        (roundness == Some(Roundness::Beyond), VerdictReason::OutOfRound),
        (roundness == Some(Roundness::NotDecided), VerdictReason::RoundnessNotDecided),
        (found.ring_turned == Some(true), VerdictReason::RingTurned),
        (hot.is_some_and(|hot| hot <= settings.least_interference_um.value), VerdictReason::LooseHot),
        (stress.is_some_and(|share| share > settings.most_yield_share.value), VerdictReason::TooTight),
    ]);
    let gaps = present([
        (found.cracked.is_none(), BenchGap::Cracks),
        (found.ring_turned.is_none(), BenchGap::RingMarks),
        (form.is_none(), BenchGap::Diameter),
        (measured.is_none() || roundness == Some(Roundness::NotDecided), BenchGap::Roundness),
        (hot.is_none(), BenchGap::HotFit),
        (stress.is_none(), BenchGap::Stress),
    ]);
    (reasons, gaps)
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Roundness {
    Within,
    NotDecided,
    Beyond,
}

fn roundness(value: f64, limit: f64, guard: f64) -> Roundness {
    if value > limit + guard {
        Roundness::Beyond
    } else if value > limit - guard {
        Roundness::NotDecided
    } else {
        Roundness::Within
    }
}

fn sound(measured: &WithUncertainty) -> bool {
    let fine = |value: f64| value.is_finite() && value >= 0.0;
    fine(measured.value) && fine(measured.expanded)
}

fn finite(value: Option<f64>) -> Option<f64> {
    value.filter(|value| value.is_finite())
}

fn present<T, const N: usize>(all: [(bool, T); N]) -> Vec<T> {
    all.into_iter().filter_map(|(holds, one)| holds.then_some(one)).collect()
}

fn settled(verdict: Verdict, reasons: Vec<VerdictReason>) -> BenchVerdict {
    let gates = gates(verdict).iter().map(|set| (*set).to_owned()).collect();
    BenchVerdict { verdict: Some(verdict), gates, ..open(verdict, reasons, Vec::new()) }
}

fn open(at_least: Verdict, reasons: Vec<VerdictReason>, missing: Vec<BenchGap>) -> BenchVerdict {
    BenchVerdict {
        verdict: None,
        at_least,
        reasons,
        missing,
        gates: Vec::new(),
        closing_checks: vec![ClosingCheck::TurnsFreely],
    }
}

/// Any of them presses or shrinks a ring in and puts parts back; only a skim cuts.
fn gates(verdict: Verdict) -> &'static [&'static str] {
    match verdict {
        Verdict::SkimAndSleeve => &["machining", "heat", "refit"],
        Verdict::BearingsOnly | Verdict::ReplaceHousing => &["heat", "refit"],
    }
}
