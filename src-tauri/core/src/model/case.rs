//! The answers that count, laid out for the rules: what `walk` hands to `sorting` and `urgency`.

use std::collections::BTreeMap;

use super::answer::{AnswerValue, Temperature};
use super::gauge::Likelihood;
use super::ids;
use super::occasion::Occasion;
use super::standing::Support;
use super::visit::{Gearbox, Seat};

/// What was answered on this car. Steps that do not apply, are hidden or withdrawn are not in it.
#[derive(Debug, Clone, PartialEq)]
pub struct Case {
    /// What holds the bearing.
    pub support: Support,
    /// The layout's id.
    pub layout: String,
    /// How many supports the shaft has; each has its own steps.
    pub supports: u8,
    /// The shaft turns with the engine even while the car stands.
    pub engine_speed: bool,
    /// The rules that rate it.
    pub rules: Rules,
    /// How the bearing sits, if known.
    pub seat: Option<Seat>,
    /// What the car has run, kilometres, if known.
    pub odometer_km: Option<f64>,
    /// The gearbox, if known.
    pub gearbox: Option<Gearbox>,
    /// The maker's idle range, rpm, if known.
    pub idle_rpm: Option<[u32; 2]>,
    /// Sounds the owner complains of.
    pub complaint_sounds: Vec<String>,
    /// What brings the car in.
    pub occasion: Occasion,
    /// Hands-on steps that a rating needs, in walk order.
    pub hands_on: Vec<String>,
    /// The support's other steps, in walk order: a rating names those that say nothing.
    pub limits: Vec<String>,
    /// Steps of the driveline beyond the support, in walk order: a rating names those that nobody looked at.
    pub driveline: Vec<String>,
    /// The answers, by step.
    pub answers: BTreeMap<String, CaseAnswer>,
    /// Something was found while the car was written down otherwise, and is neither felt again nor taken back.
    pub apart: bool,
}

/// One answer that counts.
#[derive(Debug, Clone, PartialEq)]
pub struct CaseAnswer {
    /// That of the worst standing answer, or what a gauge made of it.
    pub value: AnswerValue,
    /// How warm the housing was, if recorded.
    pub temperature: Option<Temperature>,
    /// Something was found.
    pub found: bool,
    /// Not looked (`not-done`, `not-tried`, `not-read`, `unknown`).
    pub open: bool,
    /// Looked, but where nothing was found nothing is proven: turned together with the engine or the wheels, read
    /// cold, or only seen in part.
    pub limited: bool,
    /// What a gauge's readings weigh, where they and not the hand made this the answer that counts.
    pub measured: Option<Likelihood>,
}

/// The rules that a visit is rated by, and the numbers they turn on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rules {
    /// As in `data/rules.toml`; a visit keeps that of its opening.
    pub version: u32,
    /// A housing is warm from here on, degrees Celsius.
    pub warm_from_c: f64,
    /// A cause is likely from this probability on.
    pub likely: f64,
}

impl Case {
    /// A case of a rigid support, or another, with one bearing and no answer yet.
    pub fn unanswered(layout: &str, support: Support, rules: Rules) -> Self {
        Self {
            support,
            layout: layout.to_owned(),
            supports: 1,
            engine_speed: support != Support::Rubber,
            rules,
            seat: None,
            odometer_km: None,
            gearbox: None,
            idle_rpm: None,
            complaint_sounds: Vec::new(),
            occasion: Occasion::default(),
            hands_on: Vec::new(),
            limits: Vec::new(),
            driveline: Vec::new(),
            answers: BTreeMap::new(),
            apart: false,
        }
    }

    /// The answers to a step at each support, with their steps.
    pub fn at<'a>(&'a self, step: &'a str) -> impl Iterator<Item = (&'a str, &'a CaseAnswer)> {
        let here = move |(id, answer): (&'a String, &'a CaseAnswer)| {
            (ids::base(id) == step).then_some((id.as_str(), answer))
        };
        self.answers.iter().filter_map(here)
    }

    /// Whether a step was looked at and nothing was in the way; an `unsure` says all that it can too, though it is not
    /// conclusive.
    pub fn says_all(&self, step: &str) -> bool {
        self.answer(step).is_some_and(|answer| !answer.open && !answer.limited)
    }

    /// The one that counts; none where nobody answered.
    pub fn answer(&self, step: &str) -> Option<&CaseAnswer> {
        self.answers.get(step)
    }

    /// Whether the answer to a step holds a choice.
    pub fn has(&self, step: &str, choice: &str) -> bool {
        self.answer(step).is_some_and(|answer| answer.value.has(choice))
    }

    /// Whether the answer to a step holds one of these choices.
    pub fn has_any(&self, step: &str, choices: &[&str]) -> bool {
        choices.iter().any(|choice| self.has(step, choice))
    }

    /// Whether a step was looked at: answered, and not with "not done".
    pub fn looked(&self, step: &str) -> bool {
        self.answer(step).is_some_and(|answer| !answer.open)
    }
}
