//! The bench verdict: bearings only, skim and sleeve, or replace the housing.
//!
//! What is missing never makes it milder: a verdict stands only when nothing that is still to be measured
//! could change it, and until then it names what is missing and what is already ruled out.

use crate::model::fit::{FitResult, SeatId};
use crate::model::verdict::{
    BenchFindings, BenchGap, BenchVerdict, ClosingCheck, SleeveFound, Verdict, VerdictReason, WithUncertainty,
};
use crate::trade::bench::BenchTables;

/// The verdict on what was found. Numbers that cannot be count as not measured.
pub fn verdict(found: &BenchFindings, tables: &BenchTables) -> BenchVerdict {
    if found.cracked == Some(true) {
        return decided(Verdict::ReplaceHousing, vec![VerdictReason::Cracked]);
    }
    let (mut reasons, seat_gaps) = seat(found, tables);
    let skim = reasons.iter().any(|reason| *reason != VerdictReason::RoundnessNotDecided);
    if !skim {
        if seat_gaps.is_empty() {
            return decided(Verdict::BearingsOnly, vec![VerdictReason::SeatSound]);
        }
        return open(Verdict::BearingsOnly, reasons, seat_gaps);
    }
    let wall = wall(found, tables);
    if wall == Wall::TooThin {
        reasons.insert(0, VerdictReason::WallTooThin);
        return decided(Verdict::ReplaceHousing, reasons);
    }
    let (of_sleeve, mut gaps) = sleeve(found, tables);
    reasons.extend(present([(wall == Wall::NotDecided, VerdictReason::WallNotDecided)]));
    reasons.extend(of_sleeve);
    gaps.extend(present([
        (found.cracked.is_none(), BenchGap::Cracks),
        (clean_diameter(found).is_none() && !found.clean_all_round, BenchGap::CleanUp),
        (clean_diameter(found).is_none() && found.clean_all_round, BenchGap::CleanDiameter),
        (!found.read_through, BenchGap::Depths),
        (found.wall_mm.filter(sound).is_none() || wall == Wall::NotDecided, BenchGap::WallLeft),
        (least(found).is_none(), BenchGap::WallLeast),
        (found.old_sleeve.is_none(), BenchGap::OldSleeve),
        (behind_unknown(found), BenchGap::BehindSleeve),
    ]));
    gaps.sort_unstable();
    if gaps.is_empty() {
        decided(Verdict::SkimAndSleeve, reasons)
    } else {
        open(Verdict::SkimAndSleeve, reasons, gaps)
    }
}

/// An old sleeve hides the bore that would be cut: it has to come out, and the bore behind it be read.
fn behind_unknown(found: &BenchFindings) -> bool {
    found.old_sleeve == Some(true) && (!found.old_sleeve_out || found.touch_mm.is_none())
}

/// How the wall stands once the sleeve has its room.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Wall {
    /// Something of it is not known.
    Unknown,
    /// Surely enough.
    Enough,
    /// Within its uncertainty of the least.
    NotDecided,
    /// Surely too thin.
    TooThin,
}

/// The wall found, less the whole cut for the sleeve: to its bore, and no less than what cleans up. Without a sleeve
/// the thinnest that is made tells whether any would do; that one does is not said before it is known which.
fn wall(found: &BenchFindings, tables: &BenchTables) -> Wall {
    let (Some(wall), Some(least)) = (found.wall_mm.filter(sound), least(found)) else { return Wall::Unknown };
    let touch = finite(found.touch_mm);
    let chosen = found.sleeve.map(|sleeve| touch.map(|touch| (sleeve.bore_mm - touch) / 2.0));
    let for_sleeve = match chosen {
        Some(cut) => cut,
        None => Some(thinnest_cut(found, tables)),
    };
    let cut = for_sleeve.into_iter().chain(clean_up(found).map(|um| um / 2000.0)).reduce(f64::max);
    let left = wall.value - cut.unwrap_or_default();
    let guard = tables.verdict.guard_standard_uncertainties.value * wall.expanded / 2.0;
    if left < least - guard {
        Wall::TooThin
    } else if for_sleeve.is_none() || found.sleeve.is_none() {
        Wall::Unknown
    } else if left < least + guard {
        Wall::NotDecided
    } else {
        Wall::Enough
    }
}

/// Cut on the radius for the thinnest sleeve that is made about the bearing; what has worn away need not be cut.
fn thinnest_cut(found: &BenchFindings, tables: &BenchTables) -> f64 {
    let worn =
        finite(found.touch_mm).zip(finite(found.diameter_mm)).map(|(touch, bearing)| (touch - bearing) / 2.0);
    tables.settings.sleeve_wall_least_mm.value - worn.unwrap_or_default()
}

/// What speaks against the sleeve as it is planned, and what is not known of it.
fn sleeve(found: &BenchFindings, tables: &BenchTables) -> (Vec<VerdictReason>, Vec<BenchGap>) {
    let Some(sleeve) = found.sleeve.filter(|sleeve| sleeve.bore_mm.is_finite()) else {
        return (Vec::new(), vec![BenchGap::Sleeve]);
    };
    let settings = &tables.verdict;
    let small = clean_diameter(found).is_some_and(|cleaned| sleeve.bore_mm < cleaned);
    let hot = finite(sleeve.hot_interference_um);
    let loose = hot.is_some_and(|hot| hot <= settings.least_interference_um.value);
    let stress = finite(sleeve.yield_share).filter(|share| *share >= 0.0);
    let tight = stress.is_some_and(|share| share > settings.most_yield_share.value);
    let reasons = present([
        (small, VerdictReason::SleeveTooSmall),
        (loose, VerdictReason::SleeveLooseHot),
        (tight, VerdictReason::SleeveTooTight),
    ]);
    let gaps = present([
        (small || found.touch_mm.is_none(), BenchGap::Sleeve),
        (loose || hot.is_none(), BenchGap::SleeveHotFit),
        (tight || stress.is_none(), BenchGap::SleeveStress),
    ]);
    (reasons, gaps)
}

/// The cut on the diameter that cleans up, micrometres: as it was cut, else as it was planned.
fn clean_up(found: &BenchFindings) -> Option<f64> {
    let cut = finite(found.touch_mm).zip(cut_clean(found)).map(|(touch, clean)| (clean - touch) * 1000.0);
    cut.or(finite(found.clean_up_um)).filter(|cut| *cut >= 0.0)
}

/// The diameter at which it is clean all round, mm: as it was measured after the pass, else as it was planned.
pub fn clean_diameter(found: &BenchFindings) -> Option<f64> {
    let planned = || Some(finite(found.touch_mm)? + clean_up(found)? / 1000.0);
    cut_clean(found).or_else(planned)
}

/// The diameter after the pass that touched all round, mm.
fn cut_clean(found: &BenchFindings) -> Option<f64> {
    finite(found.clean_diameter_mm).filter(|_| found.clean_all_round)
}

fn least(found: &BenchFindings) -> Option<f64> {
    finite(found.wall_least_mm).filter(|least| *least > 0.0)
}

/// The findings with what a fit says: the bearing's diameter, the loosest pair over the temperature range, and the
/// largest share of a yield. A fit without a range, or with a part whose stress or yield is not known, leaves that
/// value missing. A fit with a sleeve is one of the sleeve that will be fitted, and says of the seat as it is only
/// where the sleeve is in its place: `sleeve_in`.
pub fn with_fit(found: &BenchFindings, fit: &FitResult, sleeve_in: bool) -> BenchFindings {
    let loosest = |fits: bool| {
        let over = fit.seats.iter().filter(|seat| fits && seat.over_temperature.len() > 1);
        over.flat_map(|seat| seat.over_temperature.iter().map(|at| at.interference_um.least)).reduce(f64::min)
    };
    let shares: Option<Vec<f64>> =
        fit.seats.iter().flat_map(|seat| &seat.stress).map(|stress| stress.used).collect();
    let share = shares.and_then(|shares| shares.into_iter().reduce(f64::max));
    let in_housing = fit.seats.iter().find(|seat| seat.seat == SeatId::SleeveInHousing);
    let of_seat = in_housing.is_none() || sleeve_in;
    BenchFindings {
        diameter_mm: fit.seats.first().map(|seat| seat.diameter_mm),
        hot_interference_um: loosest(of_seat),
        yield_share: share.filter(|_| of_seat),
        sleeve: in_housing.map(|seat| SleeveFound {
            bore_mm: seat.hole.mean_mm,
            hot_interference_um: loosest(true),
            yield_share: share,
        }),
        ..found.clone()
    }
}

/// What speaks against the seat as it is, and what is not known of it.
fn seat(found: &BenchFindings, tables: &BenchTables) -> (Vec<VerdictReason>, Vec<BenchGap>) {
    let settings = &tables.verdict;
    let form = finite(found.diameter_mm).and_then(|diameter| tables.form_limit_um(diameter));
    let measured = found.roundness_um.filter(sound);
    let roundness = measured.zip(form).map(|(measured, limit)| {
        let guard = settings.guard_standard_uncertainties.value * measured.expanded / 2.0;
        roundness(measured.value, limit, guard)
    });
    // What is out of round where it was read is out of round; what is round there may not be elsewhere.
    let in_part = found.roundness_at_least && roundness != Some(Roundness::Beyond);
    let not_decided = roundness == Some(Roundness::NotDecided) && !in_part;
    let hot = finite(found.hot_interference_um);
    let stress = finite(found.yield_share).filter(|share| *share >= 0.0);
    let reasons = present([
        (roundness == Some(Roundness::Beyond), VerdictReason::OutOfRound),
        (not_decided, VerdictReason::RoundnessNotDecided),
        (found.ring_turned == Some(true), VerdictReason::RingTurned),
        (found.old_sleeve_out, VerdictReason::OldSleeveOut),
        (hot.is_some_and(|hot| hot <= settings.least_interference_um.value), VerdictReason::LooseHot),
        (stress.is_some_and(|share| share > settings.most_yield_share.value), VerdictReason::TooTight),
    ]);
    let gaps = present([
        (found.cracked.is_none(), BenchGap::Cracks),
        (found.ring_turned.is_none(), BenchGap::RingMarks),
        (form.is_none(), BenchGap::Diameter),
        (measured.is_none() || not_decided || in_part, BenchGap::Roundness),
        (!found.read_through, BenchGap::Depths),
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

fn decided(verdict: Verdict, reasons: Vec<VerdictReason>) -> BenchVerdict {
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
        Verdict::SkimAndSleeve => &["machining", "heat", "press", "refit"],
        Verdict::BearingsOnly | Verdict::ReplaceHousing => &["heat", "press", "refit"],
    }
}
