//! An entry of the bench against its bounds. Every field is named.

use super::super::bench::{BenchBody, HousingLook, InstrumentUsed};
use super::super::bore::{BoreInstrument, BoreLevel, BoreReading, BoreReadings};
use super::super::fit::{FitInput, Measured, Sleeve};
use super::super::gauge::{BearingMark, Earlier, GaugeInput, GaugePosition, Instrument, Lever};
use super::super::typed::Typed;
use super::check::{Checked, count, ensure, hash, id, maybe_number, maybe_text, number, text};

pub(super) fn check(body: &BenchBody) -> Checked {
    match body {
        BenchBody::Gauged { step, gauge: input, reason, supersedes } => {
            count("supersedes", supersedes, super::SUPERSEDED)?;
            supersedes.iter().try_for_each(|read| hash("supersedes", read))?;
            maybe_text("reason", reason.as_ref(), super::REASON)?;
            id("step", step)?;
            gauge(input)
        }
        BenchBody::GateConfirmed { gate } => id("gate", gate),
        BenchBody::BoreRead { stage: _, bore: read, instrument } => {
            instrument.as_ref().map_or(Ok(()), used)?;
            bore(read)
        }
        BenchBody::Looked { look } => {
            let HousingLook { cracked: _, ring_turned: _, wall_least_mm, dyed: _, sleeved: _ } = look;
            maybe_number("wall_least_mm", *wall_least_mm, &super::WALL_MM)
        }
        BenchBody::SleeveOut { way: _, outside_mm } => {
            maybe_number("outside_mm", *outside_mm, &super::DIAMETER_MM)
        }
        BenchBody::PassCut { number: pass, contact: _, diameter_mm } => {
            number("number", *pass, &(1..=super::PASSES))?;
            maybe_number("diameter_mm", *diameter_mm, &super::LENGTH_MM)
        }
        BenchBody::FitGiven { fit: input } => fit(input),
        BenchBody::RingTurned { turns: _, bearing: _, cold: _, clearance_mm } => {
            maybe_number("clearance_mm", *clearance_mm, &super::CLEARANCE_MM)
        }
        BenchBody::RunOutRead { run_out_mm } => number("run_out_mm", *run_out_mm, &super::RUN_OUT_MM),
        BenchBody::Noted { text: note } => text("text", note, super::NOTE),
    }
}

fn used(InstrumentUsed { name, calibrated, due }: &InstrumentUsed) -> Checked {
    text("name", name, super::INSTRUMENT_NAME)?;
    maybe_text("calibrated", calibrated.as_ref(), super::CAPTURED)?;
    maybe_text("due", due.as_ref(), super::CAPTURED)
}

/// A number as typed, in whatever unit its field has.
fn typed(field: &'static str, value: &Typed) -> Checked {
    match value {
        Typed::Number(value) => number(field, *value, &super::LENGTH_MM),
        Typed::Text(value) => text(field, value, super::TYPED),
    }
}

fn maybe_typed(field: &'static str, value: Option<&Typed>) -> Checked {
    value.map_or(Ok(()), |value| typed(field, value))
}

fn gauge(input: &GaugeInput) -> Checked {
    let GaugeInput {
        unit: _,
        station,
        direction: _,
        support: _,
        readings,
        instrument: Instrument { resolution, mpe },
        place,
        maker_limit,
        bearing,
        earlier,
    } = input;
    id("station", station)?;
    count("readings", readings, super::GAUGE_READINGS)?;
    readings.iter().try_for_each(|reading| typed("readings", reading))?;
    typed("resolution", resolution)?;
    typed("mpe", mpe)?;
    match place {
        GaugePosition::Bearing => {}
        GaugePosition::Shaft { pivot_mm, gauge_mm, bearing_mm, or, error_mm } => {
            typed("pivot_mm", pivot_mm)?;
            typed("gauge_mm", gauge_mm)?;
            typed("bearing_mm", bearing_mm)?;
            if let Some(Lever { pivot_mm, bearing_mm }) = or {
                typed("pivot_mm", pivot_mm)?;
                typed("bearing_mm", bearing_mm)?;
            }
            maybe_number("error_mm", *error_mm, &super::LENGTH_MM)?;
        }
    }
    maybe_typed("maker_limit", maker_limit.as_ref())?;
    if let Some(BearingMark { bore_mm, group: _ }) = bearing {
        typed("bore_mm", bore_mm)?;
    }
    count("earlier", earlier, super::EARLIER)?;
    earlier.iter().try_for_each(|Earlier { days_ago, movement_mm, standard_mm }| {
        number("days_ago", *days_ago, &super::DAYS)?;
        number("movement_mm", *movement_mm, &super::LENGTH_MM)?;
        number("standard_mm", *standard_mm, &super::LENGTH_MM)
    })
}

fn bore(bore: &BoreReadings) -> Checked {
    let BoreReadings {
        kind: _,
        instrument: BoreInstrument { resolution_mm, mpe_mm, repeatability_mm },
        zero_diameter_mm,
        zero_was_set: _,
        clockwise: _,
        wall_mm,
        wall_error_mm,
        seat_width_mm,
        levels,
    } = bore;
    number("resolution_mm", *resolution_mm, &super::LENGTH_MM)?;
    number("mpe_mm", *mpe_mm, &super::LENGTH_MM)?;
    number("repeatability_mm", *repeatability_mm, &super::LENGTH_MM)?;
    maybe_number("zero_diameter_mm", *zero_diameter_mm, &super::LENGTH_MM)?;
    maybe_number("wall_mm", *wall_mm, &super::LENGTH_MM)?;
    maybe_number("wall_error_mm", *wall_error_mm, &super::LENGTH_MM)?;
    maybe_number("seat_width_mm", *seat_width_mm, &super::LENGTH_MM)?;
    count("levels", levels, super::BORE_DEPTHS)?;
    let readings: usize = levels.iter().map(|level| level.readings.len()).sum();
    ensure("readings", readings <= super::BORE_READINGS)?;
    levels.iter().try_for_each(|BoreLevel { depth_mm, readings }| {
        number("depth_mm", *depth_mm, &super::LENGTH_MM)?;
        count("readings", readings, super::BORE_AT_A_DEPTH)?;
        readings.iter().try_for_each(reading)
    })
}

fn reading(reading: &BoreReading) -> Checked {
    match reading {
        BoreReading::At { angle_deg, value_mm } => {
            number("angle_deg", *angle_deg, &super::ANGLE_DEG)?;
            number("value_mm", *value_mm, &super::LENGTH_MM)
        }
        BoreReading::Point { x_mm, y_mm } => {
            number("x_mm", *x_mm, &super::LENGTH_MM)?;
            number("y_mm", *y_mm, &super::LENGTH_MM)
        }
    }
}

fn fit(input: &FitInput) -> Checked {
    let FitInput {
        bearing_outside,
        measured_outside,
        bearing_bore,
        bearing_width,
        group: _,
        class,
        measured_bore,
        housing,
        housing_outside,
        sleeve,
        temperature,
    } = input;
    maybe_typed("bearing_outside", bearing_outside.as_ref())?;
    maybe_measured("measured_outside", measured_outside.as_ref())?;
    maybe_typed("bearing_bore", bearing_bore.as_ref())?;
    maybe_typed("bearing_width", bearing_width.as_ref())?;
    maybe_text("class", class.as_ref(), super::TYPED)?;
    maybe_measured("measured_bore", measured_bore.as_ref())?;
    text("housing", housing, super::ID)?;
    maybe_typed("housing_outside", housing_outside.as_ref())?;
    if let Some(Sleeve { material, outside, housing_bore }) = sleeve {
        text("material", material, super::ID)?;
        measured("outside", outside)?;
        measured("housing_bore", housing_bore)?;
    }
    let [low, high] = temperature.as_ref().map_or([None, None], |[low, high]| [Some(low), Some(high)]);
    maybe_typed("temperature", low)?;
    maybe_typed("temperature", high)
}

fn measured(field: &'static str, Measured { size, expanded_um }: &Measured) -> Checked {
    typed(field, size)?;
    maybe_typed(field, expanded_um.as_ref())
}

fn maybe_measured(field: &'static str, value: Option<&Measured>) -> Checked {
    value.map_or(Ok(()), |value| measured(field, value))
}
