//! The sleeves of a workshop's stock in the housing at hand: which would do, and what the housing is bored to for each. The grip
//! is that of the new sleeve's design, worked out anew at each sleeve's own diameter and material.

use super::calculate::calculate;
use super::fault::FitFault;
use crate::measure::verdict::{clean_diameter, verdict};
use crate::model::fit::{FitInput, FitResult, Measured, SeatId, Sleeve, StockSays};
use crate::model::typed::Typed;
use crate::model::verdict::{BenchFindings, SleeveFound, Verdict};
use crate::model::workshop::StockSleeve;
use crate::trade::bench::BenchTables;

/// Interference that the design is worked out about, mm: its limits do not depend on it.
const ABOUT_MM: f64 = 0.05;

/// What the bench knows of the housing beside the fit.
#[derive(Debug, Clone, Default)]
pub struct Housing {
    /// What was found: its cracks and its wall say whether it may be bored for a sleeve at all.
    pub found: BenchFindings,
    /// Diameters that its bore was read or cut to, mm: nothing makes it narrower again.
    pub bores_mm: Vec<f64>,
}

/// Whether a sleeve of the stock would do, and what the housing's bore may be for it, mm: where it is to be bored, no less
/// than what it is already or has to be to be clean.
pub fn stock(
    input: &FitInput,
    own: &StockSleeve,
    housing: &Housing,
    tables: &BenchTables,
) -> (StockSays, Option<[f64; 2]>) {
    if is_replaced(&housing.found, None, tables) {
        return (StockSays::HousingReplaced, None);
    }
    let about = own.outside_mm - ABOUT_MM;
    let measured = |size: f64, like: Option<&Measured>| Measured {
        size: Typed::Number(size),
        expanded_um: like.and_then(|like| like.expanded_um.clone()),
    };
    let given = input.sleeve.as_ref();
    let sleeve = Sleeve {
        material: own.material.clone(),
        outside: measured(own.outside_mm, given.map(|sleeve| &sleeve.outside)),
        housing_bore: measured(about, given.map(|sleeve| &sleeve.housing_bore)),
    };
    let with = FitInput { sleeve: Some(sleeve), ..input.clone() };
    let fit = match calculate(&with, tables) {
        Ok(fit) => fit,
        Err(FitFault::SleeveTooThin) => return (StockSays::TooThin, None),
        Err(FitFault::NegativeWall) => return (StockSays::NoWall, None),
        Err(_) => return (StockSays::Open, None),
    };
    if own.bore_mm > bored_to(&fit) {
        return (StockSays::OwnBoreTooWide, None);
    }
    let Some(design) = fit.sleeve else { return (StockSays::Open, None) };
    if design.holds == Some(false) {
        return (StockSays::NoneHolds, None);
    }
    let Some((least, most)) = design.outside_least_mm.zip(design.outside_most_mm) else {
        return (StockSays::Open, None);
    };
    // What the sleeve is larger by, taken off its own diameter.
    let bore = [own.outside_mm - (most - about), own.outside_mm - (least - about)];
    let is = widest(input, housing);
    let clean = clean_diameter(&housing.found);
    let to = [is, clean].into_iter().flatten().fold(bore[0], f64::max);
    if to > bore[1] {
        return (StockSays::BoreTooWide, Some(bore));
    }
    if is_replaced(&housing.found, Some(to), tables) {
        return (StockSays::WallTooThin, None);
    }
    if is.is_some_and(|is| is >= to) {
        return (StockSays::Fits, Some(bore));
    }
    (StockSays::BoreTo, Some([to, bore[1]]))
}

/// Whether the housing is scrap once it is bored for a sleeve: to this diameter, mm, or for the thinnest that is made.
fn is_replaced(found: &BenchFindings, bore_mm: Option<f64>, tables: &BenchTables) -> bool {
    let bored = BenchFindings {
        // Whoever asks for a sleeve wants the cut, whatever the seat itself would need.
        ring_turned: Some(true),
        sleeve: bore_mm.map(|bore_mm| SleeveFound { bore_mm, ..SleeveFound::default() }),
        ..found.clone()
    };
    verdict(&bored, tables).verdict == Some(Verdict::ReplaceHousing)
}

/// The widest that the housing's bore is known to be, mm: as it was given for the fit, read or cut. The seat of a sleeve in
/// it is no wider than what it sits in.
fn widest(input: &FitInput, housing: &Housing) -> Option<f64> {
    let given = input.sleeve.as_ref().map(|sleeve| &sleeve.housing_bore);
    let sizes = given.into_iter().chain(&input.measured_bore);
    let sizes = sizes.filter_map(|measured| measured.size.number("mm").ok());
    sizes.chain(housing.bores_mm.iter().copied()).filter(|mm| mm.is_finite()).reduce(f64::max)
}

/// The least that the sleeve's own bore is cut to, mm: before it is pressed in where that can be said, else after.
fn bored_to(fit: &FitResult) -> f64 {
    let before = fit.sleeve.as_ref().and_then(|design| design.bored_before_mm);
    let seat = fit.seats.iter().find(|seat| seat.seat == SeatId::BearingInSleeve);
    before.map(|[least, _]| least).or_else(|| seat.map(|seat| seat.hole.least_mm)).unwrap_or_default()
}
