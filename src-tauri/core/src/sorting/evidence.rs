//! From answers to evidence: what each answer says of each sign, as a pair of likelihoods. An answer
//! that decides nothing is left out.

use crate::model::answer::AnswerValue;
use crate::model::case::Case;
use crate::trade::Trade;
use crate::trade::rows::{ReadingSign, SignRow, StepRow};

use super::gauge_evidence;
use super::network::Network;
use super::number::Number;

/// From this share of its likelihoods on, an answer decides its sign.
const DECIDED: f64 = 0.99;

/// What was observed of one sign: P(answer | sign present) and P(answer | sign absent).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Observation {
    /// Index of the sign in the network.
    pub sign: usize,
    /// P(answer | sign present).
    pub if_present: f64,
    /// P(answer | sign absent).
    pub if_absent: f64,
}

impl Observation {
    /// The sign was seen.
    pub fn present(sign: usize) -> Self {
        Self { sign, if_present: 1.0, if_absent: 0.0 }
    }

    /// The sign was looked for and not there.
    pub fn absent(sign: usize) -> Self {
        Self { sign, if_present: 0.0, if_absent: 1.0 }
    }

    /// Whether the sign was seen, where the answer as good as decides it.
    pub fn decided(&self) -> Option<bool> {
        let seen = self.if_present / (self.if_present + self.if_absent);
        if seen >= DECIDED { Some(true) } else { (seen <= 1.0 - DECIDED).then_some(false) }
    }

    /// P(answer), where the sign is absent with this probability.
    pub fn factor<N: Number>(&self, absent: N) -> N {
        N::all(self.if_present) + N::all(self.if_absent - self.if_present) * absent
    }
}

/// The observations in a case, in sign order whatever the order of the answers.
pub fn observations(trade: &Trade, network: &Network, case: &Case) -> Vec<Observation> {
    let observe = |(index, row): (usize, &SignRow)| observe(row, index, case);
    rows(trade, network).filter_map(observe).collect()
}

/// The signs that a step speaks of.
pub fn concerned<'t>(trade: &'t Trade, network: &'t Network, step: &StepRow) -> Vec<(usize, &'t SignRow)> {
    rows(trade, network).filter(|(_, row)| row.steps.contains(&step.id)).collect()
}

/// The observations with those of the concerned signs made anew, in sign order.
pub fn again(observed: &[Observation], concerned: &[(usize, &SignRow)], with: &Case) -> Vec<Observation> {
    let others = observed.iter().filter(|one| concerned.iter().all(|(sign, _)| *sign != one.sign)).copied();
    let anew = concerned.iter().filter_map(|(sign, row)| observe(row, *sign, with));
    let mut all: Vec<Observation> = others.chain(anew).collect();
    all.sort_by_key(|one| one.sign);
    all
}

/// The signs of a network with their data rows.
pub fn rows<'t>(trade: &'t Trade, network: &'t Network) -> impl Iterator<Item = (usize, &'t SignRow)> {
    network
        .signs
        .iter()
        .enumerate()
        .filter_map(|(index, sign)| trade.signs.get(sign.row).map(|row| (index, row)))
}

fn observe(row: &SignRow, sign: usize, case: &Case) -> Option<Observation> {
    if let Some(reading) = row.reading {
        return reading_observation(reading, row, sign, case);
    }
    if gauge_evidence::is_measured(row, case) {
        return gauge_evidence::observe(row, sign, case);
    }
    let answers: Vec<&AnswerValue> =
        row.steps.iter().filter_map(|step| case.answer(step)).map(|answer| &answer.value).collect();
    let holds =
        |choices: &[String]| answers.iter().any(|value| choices.iter().any(|choice| value.has(choice)));
    if holds(&row.present) {
        return Some(Observation::present(sign));
    }
    if let Some(soft) = row.soft.iter().find(|soft| answers.iter().any(|value| value.has(&soft.answer))) {
        return Some(Observation { sign, if_present: soft.present, if_absent: soft.absent });
    }
    let says_absent = |value: &&AnswerValue| match value {
        AnswerValue::Any(_) => true,
        value => row.absent.iter().any(|choice| value.has(choice)),
    };
    let all = answers.len() == row.steps.len() && answers.iter().all(says_absent);
    all.then(|| Observation::absent(sign))
}

/// The steps whose answers made the observation of this sign: where two directions are one sign and only
/// one of them was felt, that one alone.
pub fn speakers<'r>(row: &'r SignRow, case: &Case) -> Vec<&'r str> {
    if gauge_evidence::is_measured(row, case) {
        return gauge_evidence::speakers(row, case);
    }
    let saying = |choices: &[&String]| -> Vec<&'r str> {
        let says = |step: &&String| {
            let answer = case.answer(step);
            answer.is_some_and(|answer| choices.iter().any(|choice| answer.value.has(choice)))
        };
        row.steps.iter().filter(says).map(String::as_str).collect()
    };
    let present = saying(&row.present.iter().collect::<Vec<_>>());
    if !present.is_empty() {
        return present;
    }
    let soft = saying(&row.soft.iter().map(|soft| &soft.answer).collect::<Vec<_>>());
    if !soft.is_empty() {
        return soft;
    }
    row.steps.iter().filter(|step| case.answer(step).is_some()).map(String::as_str).collect()
}

/// Spread of an idle reading around the edge of the maker's range, rpm: workshop judgement.
const IDLE_SPREAD_RPM: f64 = 25.0;

/// A reading speaks by how far it is from the edge of the range, not by a cut-off: the log-odds of
/// "below range" grow with the distance below the edge. Without a range it says nothing.
fn reading_observation(reading: ReadingSign, row: &SignRow, sign: usize, case: &Case) -> Option<Observation> {
    let ReadingSign::BelowRange = reading;
    let rpm =
        row.steps.iter().find_map(|step| case.answer(step)).and_then(|answer| answer.value.reading())?;
    let [low, _] = case.idle_rpm?;
    let below = (f64::from(low) - rpm) / IDLE_SPREAD_RPM;
    let if_present = 1.0 / (1.0 + (-below).exp());
    Some(Observation {
        sign,
        if_present: if_present.clamp(1e-4, 1.0 - 1e-4),
        if_absent: (1.0 - if_present).clamp(1e-4, 1.0 - 1e-4),
    })
}
