//! The next check to do. A hands-on step that is still open always comes first; after that, the open
//! step that is expected to tell most about the causes per minute of work, its hazard counted as cost.

use crate::model::answer::AnswerValue;
use crate::model::case::{Case, CaseAnswer};
use crate::model::standing::NextCheck;
use crate::trade::Trade;
use crate::trade::rows::{Form, Reads, StepRow};

use super::evidence;
use super::network::Network;
use super::posterior::{Posterior, posterior};

/// A step that can still be done, and what doing it costs.
#[derive(Debug, Clone, Copy)]
pub struct OpenStep<'t> {
    /// Its row.
    pub row: &'t StepRow,
}

/// Below this expected gain, in bits, no check is worth a person's time under a car.
const WORTH_BITS: f64 = 0.01;

/// What an added hazard of one costs, in minutes: workshop judgement.
const HAZARD_MINUTES: f64 = 10.0;

/// The next check, if one is worth doing. `open` lists the steps that are allowed and not looked at,
/// in walk order.
pub fn next_check(
    trade: &Trade,
    network: &Network,
    case: &Case,
    now: &Posterior,
    open: &[OpenStep<'_>],
) -> Option<NextCheck> {
    if let Some(step) = open.iter().find(|step| step.row.hands_on) {
        return Some(NextCheck { step: step.row.id.clone(), why: "next-hands-on".to_owned() });
    }
    let mut best: Option<(f64, &StepRow)> = None;
    for step in open {
        let gain = expected_gain(trade, network, case, now, step.row);
        let rate = gain / (step.row.minutes + HAZARD_MINUTES * step.row.hazard);
        if gain >= WORTH_BITS && best.is_none_or(|(top, _)| rate > top) {
            best = Some((rate, step.row));
        }
    }
    best.map(|(_, row)| NextCheck { step: row.id.clone(), why: "next-informs".to_owned() })
}

/// Expected fall of the causes' summed uncertainty, in bits, if the step were answered; never below 0.
fn expected_gain(trade: &Trade, network: &Network, case: &Case, now: &Posterior, step: &StepRow) -> f64 {
    let mut total = 0.0;
    let mut expected = 0.0;
    for value in possible_answers(step) {
        let mut with = case.clone();
        let answer = CaseAnswer { value, temperature: None, found: false, open: false };
        with.answers.insert(step.id.clone(), answer);
        let then = posterior(network, &evidence::observations(trade, network, &with));
        let probability = (then.log_evidence - now.log_evidence).exp();
        total += probability;
        expected += probability * uncertainty(&then);
    }
    if total <= 0.0 { 0.0 } else { (uncertainty(now) - expected / total).max(0.0) }
}

/// The answers that decide something: each informative choice, or each single finding and none.
fn possible_answers(step: &StepRow) -> Vec<AnswerValue> {
    let informative =
        step.answers.iter().filter(|row| row.reads != Reads::Open && row.reads != Reads::Unsure);
    match step.form {
        Form::OneOf => informative.map(|row| AnswerValue::One(row.id.clone())).collect(),
        Form::AnyOf => informative.map(|row| AnswerValue::Any(vec![row.id.clone()])).collect(),
        Form::Reading => Vec::new(),
    }
}

/// Sum of the causes' binary entropies, bits.
fn uncertainty(posterior: &Posterior) -> f64 {
    posterior.causes.iter().map(|probability| entropy(*probability)).sum()
}

fn entropy(probability: f64) -> f64 {
    let part = |share: f64| if share <= 0.0 { 0.0 } else { -share * share.log2() };
    part(probability) + part(1.0 - probability)
}
