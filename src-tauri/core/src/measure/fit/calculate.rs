//! From an input to everything that is shown of a fit.

use super::assembly::{TightestPair, assembly};
use super::clearance::clearance;
use super::fault::FitFault;
use super::holding::holding;
use super::lame::Ring;
use super::read::{Checked, read};
use super::sizes::interference;
use super::sleeve::design;
use super::stack::{Interference, Pressures, Stack};
use super::thermal::{Fits, Pair, ROOM_C, loose_from, state, temperatures};
use crate::model::fit::{
    Advice, AtTemperature, FitInput, FitResult, NotCounted, PartId, SeatFit, SeatId, SizeFrom, SizeStand,
    Spread, StressStand,
};
use crate::trade::bench::BenchTables;
use crate::trade::bench::rows::{Family, Material};

/// Works a fit out.
///
/// # Errors
/// What keeps it from being worked out.
pub fn calculate(input: &FitInput, tables: &BenchTables) -> Result<FitResult, FitFault> {
    let checked = read(input, tables)?;
    let fits = fits(&checked, tables);
    let shown = temperatures(checked.temperature);
    let form_um = tables.form_limit_um(checked.nominal).ok_or(FitFault::DiameterNotTabled)?;
    let row = checked.bore.and_then(|bore| tables.clearance(bore));
    let least = tables.settings.operating_clearance_least_um.value;
    let mut seats = vec![bearing_seat(&checked, &fits, &shown, tables)];
    seats.extend(sleeve_seat(&checked, &fits, &shown, tables));
    Ok(FitResult {
        seats,
        sleeve: design(&checked, &fits, &shown, tables),
        clearance: row.map(|row| clearance(&fits, &shown, row, input.group, least)),
        not_counted: not_counted(input, &checked),
        form_um,
        holding: holding(&checked, tables)?,
        light_alloy: checked.housing.family == Family::LightAlloy,
        advice: tables
            .advice
            .iter()
            .map(|row| Advice { condition: row.id.clone(), classes: row.classes.clone() })
            .collect(),
    })
}

pub(super) fn ring(inner_mm: f64, outer_mm: f64, material: &Material) -> Ring {
    Ring {
        inner: inner_mm / 2.0,
        outer: outer_mm / 2.0,
        modulus: material.modulus_gpa * 1000.0,
        poisson: material.poisson,
    }
}

fn fits(checked: &Checked<'_>, tables: &BenchTables) -> Fits {
    let nominal = checked.nominal;
    // Raceway of a ball bearing: (4 D + d) / 5, makers' catalogues, from memory.
    let raceway = checked
        .bore
        .map_or(nominal * tables.settings.raceway_ratio.value, |bore| (4.0 * nominal + bore) / 5.0);
    let (seat, housing) = (checked.sleeve.as_ref(), checked.housing);
    let housing_bore = seat.map_or(nominal, |sleeve| sleeve.outside.mean_mm);
    let stack = Stack {
        bearing: ring(raceway, nominal, checked.bearing),
        sleeve: seat.map(|sleeve| ring(nominal, sleeve.outside.mean_mm, sleeve.material)),
        housing: ring(housing_bore, checked.housing_outside.unwrap_or(f64::INFINITY), housing),
    };
    let around = seat.map_or(housing, |sleeve| sleeve.material);
    let none = Spread { least: 0.0, mean: 0.0, most: 0.0 };
    Fits {
        stack,
        bearing_mm: nominal,
        bearing: interference(&checked.outside, &checked.seat),
        bearing_growth: checked.bearing.expansion_per_million_k - around.expansion_per_million_k,
        sleeve_mm: housing_bore,
        sleeve: seat.map_or(none, |sleeve| interference(&sleeve.outside, &sleeve.housing_bore)),
        sleeve_growth: around.expansion_per_million_k - housing.expansion_per_million_k,
    }
}

fn bearing_seat(checked: &Checked<'_>, fits: &Fits, shown: &[f64], tables: &BenchTables) -> SeatFit {
    let around = checked.sleeve.as_ref().map_or(checked.housing, |sleeve| sleeve.material);
    let pressure = pressures(fits, |pressures| pressures.bearing);
    let least = |celsius: f64| fits.bearing_spread(celsius).least;
    let most = |celsius: f64| fits.bearing_spread(celsius).most;
    let spread = |celsius: f64| in_um(&fits.bearing_spread(celsius));
    let seat = if checked.sleeve.is_some() { SeatId::BearingInSleeve } else { SeatId::BearingInHousing };
    let about = SeatParts {
        seat,
        diameter: checked.nominal,
        hole: checked.seat,
        part: checked.outside,
        outer: around,
        inner: checked.bearing,
        heat_limit: around.heat_limit_c.min(checked.housing.heat_limit_c),
    };
    let mut fit = seat_fit(&about, checked, pressure, &spread, shown, tables);
    fit.hole_in_class = checked.seat_in_class;
    fit.may_loosen_above_c = loose_from(&least);
    fit.loose_above_c = loose_from(&most);
    fit.stress = stress(checked, fits, shown);
    fit
}

fn sleeve_seat(checked: &Checked<'_>, fits: &Fits, shown: &[f64], tables: &BenchTables) -> Option<SeatFit> {
    let sleeve = checked.sleeve.as_ref()?;
    let pressure = pressures(fits, |pressures| pressures.sleeve);
    let spread = |celsius: f64| in_um(&fits.sleeve_spread(celsius));
    let about = SeatParts {
        seat: SeatId::SleeveInHousing,
        diameter: sleeve.outside.mean_mm,
        hole: sleeve.housing_bore,
        part: sleeve.outside,
        outer: checked.housing,
        inner: sleeve.material,
        heat_limit: checked.housing.heat_limit_c,
    };
    let mut fit = seat_fit(&about, checked, pressure, &spread, shown, tables);
    fit.may_loosen_above_c = loose_from(&|celsius| fits.sleeve_spread(celsius).least);
    fit.loose_above_c = loose_from(&|celsius| fits.sleeve_spread(celsius).most);
    Some(fit)
}

/// What one seat is made of.
struct SeatParts<'t> {
    seat: SeatId,
    diameter: f64,
    hole: SizeStand,
    part: SizeStand,
    outer: &'t Material,
    inner: &'t Material,
    heat_limit: f64,
}

fn seat_fit(
    about: &SeatParts<'_>,
    checked: &Checked<'_>,
    pressure_mpa: Spread,
    spread: &dyn Fn(f64) -> Spread,
    shown: &[f64],
    tables: &BenchTables,
) -> SeatFit {
    let room = spread(ROOM_C);
    let hottest = shown.last().copied().unwrap_or(ROOM_C);
    let at = |celsius: &f64| {
        let interference_um = spread(*celsius);
        AtTemperature { celsius: *celsius, interference_um, state: state(&interference_um) }
    };
    let tightest = TightestPair {
        diameter: about.diameter,
        width: checked.width,
        interference: room.most / 1000.0,
        pressure: pressure_mpa.most,
        outer: about.outer,
        inner: about.inner,
        heat_limit: about.heat_limit,
    };
    SeatFit {
        seat: about.seat,
        diameter_mm: about.diameter,
        hole: about.hole,
        part: about.part,
        hole_in_class: None,
        interference_um: room,
        state: state(&room),
        over_temperature: shown.iter().map(at).collect(),
        change_hot_um: spread(hottest).mean - room.mean,
        may_loosen_above_c: None,
        loose_above_c: None,
        pressure_mpa,
        stress: Vec::new(),
        assembly: assembly(&tightest, &tables.settings),
    }
}

/// Pressures at 20 C over all pairs.
fn pressures(fits: &Fits, which: impl Fn(Pressures) -> f64) -> Spread {
    let at = |pair: Pair| which(fits.stack.pressures(fits.free(pair, ROOM_C)));
    let corners = fits.corners().map(at);
    Spread {
        least: corners.into_iter().fold(f64::INFINITY, f64::min),
        mean: at(fits.middle()),
        most: corners.into_iter().fold(0.0, f64::max),
    }
}

/// Stress of every part in the tightest pairs, at the temperature at which it is greatest: a light alloy shrinks more
/// than what sits in it, so that its hardest day is the coldest. Before the bearing is in, a sleeve is pressed by the
/// housing alone, which can be worse for it.
pub(super) fn stress(checked: &Checked<'_>, fits: &Fits, shown: &[f64]) -> Vec<StressStand> {
    let pairs = || {
        let tightest = Pair { bearing: fits.bearing.most, sleeve: fits.sleeve.most };
        let everywhere = shown.iter().copied().chain([ROOM_C]);
        everywhere.flat_map(move |celsius| {
            let free = fits.free(tightest, celsius);
            let without_bearing = Interference { bearing: f64::NEG_INFINITY, ..free };
            [free, without_bearing].map(|free| fits.stack.pressures(free))
        })
    };
    let stand = |part: PartId, material: &Material, ring: Option<Ring>, on: fn(Pressures) -> [f64; 2]| {
        let worst = ring.and_then(|ring| {
            let loads = pairs().map(on).map(|[within, without]| {
                (ring.largest_hoop(within, without), ring.equivalent(within, without))
            });
            loads.max_by(|a, b| a.1.tresca.total_cmp(&b.1.tresca))
        });
        StressStand {
            part,
            material: material.id.clone(),
            hoop_mpa: worst.map(|(hoop, _)| hoop),
            tresca_mpa: worst.map(|(_, stress)| stress.tresca),
            mises_mpa: worst.map(|(_, stress)| stress.mises),
            yield_mpa: material.yield_mpa,
            used: worst.zip(material.yield_mpa).map(|((_, stress), limit)| stress.tresca / limit),
        }
    };
    let bearing = fits.stack.bearing;
    let mut parts = vec![stand(PartId::OuterRing, checked.bearing, Some(bearing), |at| [0.0, at.bearing])];
    let housing = checked.housing_outside.map(|_| fits.stack.housing);
    match (fits.stack.sleeve, &checked.sleeve) {
        (Some(ring), Some(given)) => {
            parts.push(stand(PartId::Sleeve, given.material, Some(ring), |at| [at.bearing, at.sleeve]));
            parts.push(stand(PartId::Housing, checked.housing, housing, |at| [at.sleeve, 0.0]));
        }
        _ => parts.push(stand(PartId::Housing, checked.housing, housing, |at| [at.bearing, 0.0])),
    }
    parts
}

fn in_um(mm: &Spread) -> Spread {
    Spread { least: mm.least * 1000.0, mean: mm.mean * 1000.0, most: mm.most * 1000.0 }
}

fn not_counted(input: &FitInput, checked: &Checked<'_>) -> Vec<NotCounted> {
    let sizes = [&checked.outside, &checked.seat].into_iter();
    let of_sleeve = checked.sleeve.iter().flat_map(|sleeve| [&sleeve.outside, &sleeve.housing_bore]);
    let exact = |size: &SizeStand| size.from == SizeFrom::Measured && size.least_mm >= size.most_mm;
    let missing = [
        (true, NotCounted::ShaftFit),
        (true, NotCounted::RingsApart),
        (true, NotCounted::HousingApart),
        (true, NotCounted::Form),
        (checked.housing_outside.is_none(), NotCounted::HousingWall),
        (checked.bore.is_none(), NotCounted::BearingBore),
        (input.group.is_none(), NotCounted::Group),
        (checked.width.is_none(), NotCounted::Width),
        (checked.temperature.is_none(), NotCounted::Temperature),
        (sizes.chain(of_sleeve).any(exact), NotCounted::SizeUncertainty),
    ];
    missing.into_iter().filter(|(missing, _)| *missing).map(|(_, what)| what).collect()
}
