//! Signs that turned out to tell little: seen about as often without any of their causes as with one.

use crate::model::calibration::WeakSign;
use crate::model::outcome::Outcome;
use crate::trade::Trade;
use crate::trade::rows::SignRow;

/// Cars needed on either side before a sign is judged. Workshop judgement.
const CARS: u32 = 8;
/// A sign is weak if it was seen less than this many times as often with a cause as without.
/// Workshop judgement.
const TIMES: f64 = 2.0;

/// The weak signs, weakest first.
pub fn weak_signs(trade: &Trade, outcomes: &[Outcome]) -> Vec<WeakSign> {
    let mut weak: Vec<(f64, WeakSign)> = trade
        .signs
        .iter()
        .map(|row| tallied(row, outcomes))
        .filter(|sign| sign.with_cause >= CARS && sign.without_cause >= CARS)
        .map(|sign| (ratio(&sign), sign))
        .filter(|(ratio, _)| *ratio < TIMES)
        .collect();
    weak.sort_by(|a, b| a.0.total_cmp(&b.0));
    weak.into_iter().map(|(_, sign)| sign).collect()
}

fn tallied(row: &SignRow, outcomes: &[Outcome]) -> WeakSign {
    let mut sign = WeakSign {
        sign: row.id.clone(),
        step: row.steps.first().cloned().unwrap_or_default(),
        answers: row.present.clone(),
        with_cause: 0,
        seen_with_cause: 0,
        without_cause: 0,
        seen_without_cause: 0,
    };
    for outcome in outcomes {
        let Some(seen) = outcome.signs.get(&row.id) else { continue };
        let caused = row.links.iter().any(|link| outcome.causes.contains(&link.cause));
        let (cars, seen_in) = if caused {
            (&mut sign.with_cause, &mut sign.seen_with_cause)
        } else {
            (&mut sign.without_cause, &mut sign.seen_without_cause)
        };
        *cars += 1;
        *seen_in += u32::from(*seen);
    }
    sign
}

/// How many times as often it was seen with a cause; half a car keeps it finite.
fn ratio(sign: &WeakSign) -> f64 {
    let share = |seen: u32, cars: u32| (f64::from(seen) + 0.5) / (f64::from(cars) + 1.0);
    share(sign.seen_with_cause, sign.with_cause) / share(sign.seen_without_cause, sign.without_cause)
}
