//! The sleeves of a workshop's stock in the housing at hand: which would do, and what the housing is bored to for each. The grip
//! is that of the new sleeve's design, worked out anew at each sleeve's own diameter and material.

use super::calculate::calculate;
use super::fault::FitFault;
use crate::model::fit::{FitInput, FitResult, Measured, SeatId, Sleeve, StockSays};
use crate::model::typed::Typed;
use crate::model::workshop::StockSleeve;
use crate::trade::bench::BenchTables;

/// Interference that the design is worked out about, mm: its limits do not depend on it.
const ABOUT_MM: f64 = 0.05;

/// Whether a sleeve of the stock would do, and what the housing's bore may be for it, mm.
pub fn stock(input: &FitInput, own: &StockSleeve, tables: &BenchTables) -> (StockSays, Option<[f64; 2]>) {
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
    let now = given.and_then(|sleeve| sleeve.housing_bore.size.number("mm").ok());
    let says = match now {
        Some(now) if now > bore[1] => StockSays::BoreTooWide,
        Some(now) if now >= bore[0] => StockSays::Fits,
        _ => StockSays::BoreTo,
    };
    (says, Some(bore))
}

/// The least that the sleeve's own bore is cut to, mm: before it is pressed in where that can be said, else after.
fn bored_to(fit: &FitResult) -> f64 {
    let before = fit.sleeve.as_ref().and_then(|design| design.bored_before_mm);
    let seat = fit.seats.iter().find(|seat| seat.seat == SeatId::BearingInSleeve);
    before.map(|[least, _]| least).or_else(|| seat.map(|seat| seat.hole.least_mm)).unwrap_or_default()
}
