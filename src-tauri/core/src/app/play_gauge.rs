//! Gauges at the play steps: what they say, and the answer that counts with them. A gauge never clears what a
//! hand felt; see `measure::gauge::meaning`.

use crate::measure::gauge::evaluate::evaluate;
use crate::measure::gauge::meaning::counts;
use crate::model::answer::AnswerValue;
use crate::model::bench::{GaugeGiven, GaugeStand};
use crate::model::case::{Case, CaseAnswer};
use crate::model::gauge::{Direction, GaugeInput};
use crate::model::ids::{self, answer, step};
use crate::model::standing::Support;
use crate::model::typed::{LengthUnit, Typed};
use crate::trade::bench::BenchTables;
use crate::walk::bench::BenchRecord;

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
/// they are left out and the hand's answer stands.
pub(super) fn stands(bench: &BenchRecord, tables: &BenchTables) -> Vec<GaugeStand> {
    let stand = |(step, recorded): (&String, &crate::walk::bench::Recorded<GaugeInput>)| {
        let result = evaluate(&recorded.what, tables).ok()?;
        Some(GaugeStand {
            step: step.clone(),
            lines: gauge::lines(&result, tables),
            result,
            by: recorded.by.clone(),
            at: recorded.at,
        })
    };
    bench.gauges.iter().filter_map(stand).collect()
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
        maker_limit: maker_play_mm.map(|mm| Typed::Number(LengthUnit::of_mm(unit, mm))),
        bearing,
        earlier: Vec::new(),
    };
    evaluate(&input, tables)?;
    Ok(input)
}
