//! Gauges at the play steps: what they say, and the answer that counts with them. A gauge never clears what a
//! hand felt; see `measure::gauge::meaning`.

use crate::measure::gauge::evaluate::evaluate;
use crate::measure::gauge::meaning::counts;
use crate::model::answer::AnswerValue;
use crate::model::bench::{GaugeGiven, GaugeStand};
use crate::model::case::{Case, CaseAnswer};
use crate::model::gauge::{Direction, GaugeInput, GaugeMeaning};
use crate::model::ids::{self, answer, step};
use crate::model::standing::{Elsewhere, Support};
use crate::model::typed::{LengthUnit, Typed};
use crate::trade::Trade;
use crate::trade::bench::BenchTables;
use crate::trade::rows::Layout;
use crate::walk::applies;
use crate::walk::bench::{BenchRecord, Recorded, StandingReadings};
use crate::walk::record::Record;

use super::fault::{Fault, Refusal};
use super::gauge;

/// The direction a gauge reads at a step; none where no gauge belongs.
pub(super) fn direction(step: &str) -> Option<Direction> {
    match ids::base(step) {
        step::PLAY_VERTICAL => Some(Direction::Vertical),
        step::PLAY_LATERAL => Some(Direction::Lateral),
        _ => None,
    }
}

/// What the gauges say, by step. Readings that no longer can be judged were judged when they were recorded;
/// they are left out and the hand's answer stands. They are judged by the maker's figure as it is written down now.
pub(super) fn stands(bench: &BenchRecord, maker_mm: Option<f64>, tables: &BenchTables) -> Vec<GaugeStand> {
    let stand = |step: &String, recorded: &Recorded<GaugeInput>| {
        let maker_limit = limit(recorded.what.unit, maker_mm);
        let what = GaugeInput { maker_limit, ..recorded.what.clone() };
        let result = evaluate(&what, tables).ok()?;
        Some(GaugeStand {
            step: step.clone(),
            lines: gauge::lines(&result, tables),
            result,
            by: recorded.by.clone(),
            at: recorded.at,
        })
    };
    let worst = |(step, all): (&String, &Vec<StandingReadings>)| {
        let stands = all.iter().filter_map(|readings| stand(step, &readings.read));
        stands.max_by(|one, other| {
            let badness = |stand: &GaugeStand| severity(stand.result.meaning);
            badness(one).cmp(&badness(other)).then(one.at.cmp(&other.at))
        })
    };
    bench.gauges.iter().filter_map(worst).collect()
}

/// How bad a meaning is; of readings that mean the same the latest stands.
fn severity(meaning: GaugeMeaning) -> u8 {
    match meaning {
        GaugeMeaning::ReplacesUnsure => 0,
        GaugeMeaning::Silent => 1,
        GaugeMeaning::Unsure => 2,
        GaugeMeaning::BeyondFigure => 3,
        GaugeMeaning::Felt => 4,
    }
}

/// The maker's figure in the unit of the readings.
fn limit(unit: LengthUnit, maker_mm: Option<f64>) -> Option<Typed> {
    maker_mm.map(|mm| Typed::Number(LengthUnit::of_mm(unit, mm)))
}

/// Takes out of the bench what was read at another kind of support, or at a step that the car as it is now written down
/// has not got; gives it back as what counts for nothing, where it said more than that nothing moved.
pub(super) fn set_apart(
    trade: &Trade,
    layout: &Layout,
    record: &Record,
    bench: &mut BenchRecord,
) -> Vec<Elsewhere> {
    if bench.gauges.is_empty() {
        return Vec::new();
    }
    let rows = applies::steps(trade, layout, record.intake.vehicle.gearbox);
    let mut apart = Vec::new();
    for (step, all) in &mut bench.gauges {
        let here = rows.iter().any(|row| row.id == *step);
        let fits = |readings: &mut StandingReadings| here && readings.read.what.support == layout.support;
        apart.extend(all.extract_if(.., |readings| !fits(readings)).map(|readings| (step.clone(), readings)));
    }
    bench.gauges.retain(|_, all| !all.is_empty());
    let Ok(tables) = BenchTables::shipped() else { return Vec::new() };
    let said = |(step, readings): (String, StandingReadings)| {
        let meaning = evaluate(&readings.read.what, tables).ok()?.meaning;
        let value = AnswerValue::One(answer::BY_GAUGE.to_owned());
        let Recorded { by, at, .. } = readings.read;
        (severity(meaning) >= severity(GaugeMeaning::Unsure)).then_some(Elsewhere {
            step,
            value,
            by,
            at,
            entry: readings.entry,
        })
    };
    apart.into_iter().filter_map(said).collect()
}

/// Lets the gauges settle what hands left unsure, and raise what they missed. Where a gauge made the answer, or
/// hands were unsure too, its likelihood goes along; see `sorting::gauge_evidence` for what it weighs.
pub(super) fn count_in(case: &mut Case, gauges: &[GaugeStand]) {
    for gauge in gauges {
        let hand = case.answer(&gauge.step).and_then(|given| given.value.choices().first().copied());
        let hand = hand.unwrap_or(answer::NOT_DONE).to_owned();
        let now = counts(&hand, gauge.result.meaning);
        if now == hand && hand != answer::UNSURE {
            continue;
        }
        let temperature = case.answer(&gauge.step).and_then(|given| given.temperature);
        let found = [answer::FELT, answer::BEYOND_FIGURE, answer::KNOCKS].contains(&now);
        let value = AnswerValue::One(now.to_owned());
        let measured = gauge.result.likelihood;
        let answer = CaseAnswer { value, temperature, found, open: false, limited: false, measured };
        case.answers.insert(gauge.step.clone(), answer);
    }
}

/// The readings as they are judged and recorded, with what the visit knows already.
///
/// # Errors
/// [`Refusal::GaugeNotHere`] where no gauge belongs; why the readings cannot be judged.
pub(super) fn input(
    step: &str,
    given: GaugeGiven,
    support: Support,
    maker_play_mm: Option<f64>,
    tables: &BenchTables,
) -> Result<GaugeInput, Fault> {
    let direction = direction(step).ok_or(Refusal::GaugeNotHere)?;
    let GaugeGiven { unit, readings, instrument, place, bearing } = given;
    let input = GaugeInput {
        unit,
        station: "support".to_owned(),
        direction,
        support,
        readings,
        instrument,
        place,
        maker_limit: limit(unit, maker_play_mm),
        bearing,
        earlier: Vec::new(),
    };
    evaluate(&input, tables)?;
    Ok(input)
}
