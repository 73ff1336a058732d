//! What the bench's verdict rests on, as it was recorded: bores with the width of their seat, the plan to skim with the
//! room for the sleeve, and what they say of the housing.

use crate::measure::bore::doubt::COVERAGE;
use crate::measure::bore::skim::{WALL_ERROR_MM, skim};
use crate::measure::fit::sizes;
use crate::measure::verdict::with_fit;
use crate::model::bench::{Contact, HousingLook, PassStand};
use crate::model::bore::{BoreReadings, BoreShape, SkimAsk, SkimPlan};
use crate::model::fit::{FitInput, FitResult, SeatId};
use crate::model::verdict::{BenchFindings, WithUncertainty};
use crate::walk::bench::Recorded;

/// Depth of a pass where nobody says another: 0.001 inch on the diameter, exactly. Common practice, no source.
const PASS_DIAMETER_MM: f64 = 0.0254;

/// A bore with the width of its seat; where it was not noted with the readings the new bearing's counts.
pub(super) fn with_width(read: &Recorded<BoreReadings>, fit: Option<&FitInput>) -> Recorded<BoreReadings> {
    let of_bearing = || sizes::mm(fit?.bearing_width.as_ref()?).ok();
    let mut read = read.clone();
    read.what.seat_width_mm = read.what.seat_width_mm.or_else(of_bearing);
    read
}

/// The plan to skim a bore, on to the bore of the fit's sleeve.
pub(super) fn plan(
    bore: &BoreReadings,
    wall_min_mm: Option<f64>,
    fit: Option<&FitResult>,
) -> Option<SkimPlan> {
    let ask = SkimAsk {
        pass_diameter_mm: PASS_DIAMETER_MM,
        axis: None,
        wall_mm: None,
        wall_min_mm: wall_min_mm.filter(|_| bore.wall_mm.is_some()),
        wall_error_mm: None,
        sleeve_bore_mm: fit.and_then(sleeve_bore),
    };
    skim(bore, &ask).ok()
}

/// Bore of the housing that a fit's sleeve is pressed into, mm.
fn sleeve_bore(fit: &FitResult) -> Option<f64> {
    let in_housing = fit.seats.iter().find(|seat| seat.seat == SeatId::SleeveInHousing);
    in_housing.map(|seat| seat.hole.mean_mm)
}

/// What the verdict rests on, as the bench recorded it; `None` was not measured.
pub(super) struct Found<'a> {
    pub(super) look: HousingLook,
    /// The seat as it is now.
    pub(super) seat: Option<&'a BoreShape>,
    /// The bore of the housing as it was before the cut: behind an old sleeve, where there is one.
    pub(super) to_cut: Option<&'a BoreReadings>,
    pub(super) plan: Option<&'a SkimPlan>,
    /// The last pass that was cut.
    pub(super) pass: Option<&'a PassStand>,
    pub(super) fit: Option<&'a FitResult>,
    /// The sleeve that the fit describes is in its place.
    pub(super) sleeve_in: bool,
    /// An old sleeve is, or was, in the bore.
    pub(super) old_sleeve: Option<bool>,
    /// It is out.
    pub(super) sleeve_out: bool,
}

impl Found<'_> {
    /// A bore that was read only in part, or by a method that is blind to some shapes, has no roundness but at
    /// least what was seen: what was not seen could be there.
    pub(super) fn findings(&self) -> BenchFindings {
        let seat = self.seat;
        let clean = self.pass.filter(|pass| pass.contact == Contact::AllRound);
        let blind = |shape: &BoreShape| shape.sections.iter().any(|section| section.at_least);
        let roundness = seat.and_then(|shape| shape.greatest_out_of_roundness);
        let expanded = |error: f64| COVERAGE * error / 3.0_f64.sqrt();
        let wall = self.to_cut.and_then(|bore| Some((bore.wall_mm?, bore.wall_error_mm)));
        let found = BenchFindings {
            cracked: self.look.cracked,
            ring_turned: self.look.ring_turned,
            diameter_mm: seat.and_then(|shape| shape.mean_diameter).map(|size| size.value_mm),
            roundness_um: roundness
                .map(|form| WithUncertainty { value: form.value_um, expanded: form.expanded_um }),
            roundness_at_least: seat.is_none_or(blind),
            read_through: seat.is_some_and(BoreShape::is_read_through),
            touch_mm: self.plan.and_then(|plan| plan.touch_diameter_mm),
            clean_up_um: self.plan.filter(|plan| !plan.at_least).map(|plan| 2.0 * plan.cut.value_um),
            clean_all_round: clean.is_some(),
            clean_diameter_mm: clean.and_then(|pass| pass.diameter_mm),
            wall_mm: wall.map(|(value, error)| WithUncertainty {
                value,
                expanded: expanded(error.unwrap_or(WALL_ERROR_MM)),
            }),
            wall_least_mm: self.look.wall_least_mm,
            old_sleeve: self.old_sleeve,
            old_sleeve_out: self.sleeve_out,
            ..BenchFindings::default()
        };
        self.fit.map_or_else(|| found.clone(), |fit| with_fit(&found, fit, self.sleeve_in))
    }
}
