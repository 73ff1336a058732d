//! From answers to evidence: what each answer says of each sign, as a pair of likelihoods. An answer
//! that decides nothing is left out.

use crate::model::answer::{AnswerValue, Temperature};
use crate::model::case::{Case, CaseAnswer};
use crate::model::ids;
use crate::trade::Trade;
use crate::trade::load::IDLE_SPREAD;
use crate::trade::rows::{ReadingSign, SignRow, SoftAnswer, StepRow};

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
    let spread = trade.number(IDLE_SPREAD);
    let observe = |(index, row): (usize, &SignRow)| observe(row, index, spread, case);
    rows(trade, network).filter_map(observe).collect()
}

/// The signs that a step speaks of.
pub fn concerned<'t>(trade: &'t Trade, network: &'t Network, step: &StepRow) -> Vec<(usize, &'t SignRow)> {
    let base = ids::base(&step.id);
    rows(trade, network).filter(|(_, row)| row.steps.iter().any(|step| step == base)).collect()
}

/// The observations with those of the concerned signs made anew, in sign order.
pub fn again(
    trade: &Trade,
    observed: &[Observation],
    concerned: &[(usize, &SignRow)],
    with: &Case,
) -> Vec<Observation> {
    let spread = trade.number(IDLE_SPREAD);
    let others = observed.iter().filter(|one| concerned.iter().all(|(sign, _)| *sign != one.sign)).copied();
    let anew = concerned.iter().filter_map(|(sign, row)| observe(row, *sign, spread, with));
    let mut all: Vec<Observation> = Vec::with_capacity(observed.len() + concerned.len());
    all.extend(others.chain(anew));
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

/// `spread` is how far around the edge of its range a reading is in doubt.
fn observe(row: &SignRow, sign: usize, spread: f64, case: &Case) -> Option<Observation> {
    if let Some(reading) = row.reading {
        return reading_observation((reading, spread), row, sign, case);
    }
    let (mut steps, mut answers): (usize, Vec<&CaseAnswer>) = (0, Vec::new());
    for (number, step) in row.asked_at(case.supports) {
        steps += 1;
        answers.extend(case.answer(&ids::numbered(step, number)));
    }
    if answers.iter().any(|answer| answer.measured.is_some()) {
        return gauge_evidence::observe(row, sign, case);
    }
    if answers.iter().any(|answer| shows(row, answer)) {
        return Some(Observation::present(sign));
    }
    let all = answers.len() == steps
        && answers.iter().all(|answer| says_absent(row, answer) || softly(row, answer).is_some());
    if !all {
        return None;
    }
    if let Some(soft) = answers.iter().find_map(|answer| softly(row, answer)) {
        return Some(Observation { sign, if_present: soft.present, if_absent: soft.absent });
    }
    let warm = |read: &Temperature| read.is_warm(case.rules.warm_from_c);
    let felt_cold = answers.iter().any(|answer| answer.temperature.is_some_and(|read| !warm(&read)));
    Some(match row.cold.as_ref().filter(|_| felt_cold) {
        Some(cold) => Observation { sign, if_present: cold.present, if_absent: cold.absent },
        None => Observation::absent(sign),
    })
}

/// Whether an answer says that the sign is not there.
fn says_absent(row: &SignRow, answer: &CaseAnswer) -> bool {
    match &answer.value {
        _ if answer.limited || answer.open || row.absent_is_silent => false,
        AnswerValue::Any(_) => true,
        value => row.absent.iter().any(|choice| value.has(choice)),
    }
}

/// What an answer says of the sign without deciding it.
fn softly<'r>(row: &'r SignRow, answer: &CaseAnswer) -> Option<&'r SoftAnswer> {
    row.soft.iter().find(|soft| !answer.limited && answer.value.has(&soft.answer))
}

/// Whether an answer shows the sign. Where something stood in its way only what was found counts.
fn shows(row: &SignRow, answer: &CaseAnswer) -> bool {
    (answer.found || !answer.limited) && row.present.iter().any(|choice| answer.value.has(choice))
}

/// The steps whose answers show the sign; none where a gauge decides it.
pub fn showing(row: &SignRow, case: &Case) -> Vec<String> {
    if gauge_evidence::is_measured(row, case) {
        return Vec::new();
    }
    let steps = row.steps_at(case.supports).into_iter();
    steps.filter(|step| case.answer(step).is_some_and(|answer| shows(row, answer))).collect()
}

/// The steps whose answers made the observation of this sign: where two directions are one sign and only
/// one of them was felt, that one alone.
pub fn speakers(row: &SignRow, case: &Case) -> Vec<String> {
    if gauge_evidence::is_measured(row, case) {
        return gauge_evidence::speakers(row, case);
    }
    let answered = |says: &dyn Fn(&CaseAnswer) -> bool| -> Vec<String> {
        let steps = row.steps_at(case.supports).into_iter();
        steps.filter(|step| case.answer(step).is_some_and(says)).collect()
    };
    let present = showing(row, case);
    if !present.is_empty() {
        return present;
    }
    let soft = answered(&|answer| softly(row, answer).is_some());
    if soft.is_empty() { answered(&|_| true) } else { soft }
}

/// A reading speaks by how far it is from the edge of the range, not by a cut-off: the log-odds of
/// "below range" grow with the distance below its edge, and those of "above range" with the distance above. Without a range it says nothing.
fn reading_observation(
    (reading, spread): (ReadingSign, f64),
    row: &SignRow,
    sign: usize,
    case: &Case,
) -> Option<Observation> {
    let answer = row.steps.iter().find_map(|step| case.answer(step))?;
    let rpm = answer.value.reading().filter(|_| !answer.limited)?;
    let [low, high] = case.idle_rpm?.map(f64::from);
    let beyond = match reading {
        ReadingSign::BelowRange => low - rpm,
        ReadingSign::AboveRange => rpm - high,
    };
    let if_present = 1.0 / (1.0 + (-beyond / spread).exp());
    Some(Observation {
        sign,
        if_present: if_present.clamp(1e-4, 1.0 - 1e-4),
        if_absent: (1.0 - if_present).clamp(1e-4, 1.0 - 1e-4),
    })
}
