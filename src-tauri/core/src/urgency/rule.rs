//! What a rule is, and the helpers that most rules need.

use crate::model::case::{Case, CaseAnswer};
use crate::model::rating::{Reason, Word};
use crate::model::rules::Facts;
use crate::model::standing::Sorting;

/// One rule: what is known of it, and the function that looks.
pub struct Rule {
    /// Its id, its word, what it speaks of.
    pub facts: &'static Facts,
    /// Looks at a case. `covered` lists the steps that rules before it rest on.
    pub look: fn(&Look<'_>) -> Vec<Hit>,
}

/// What a rule may look at.
pub struct Look<'a> {
    /// The answers that count.
    pub case: &'a Case,
    /// The sorting; `None` when a single step is rated.
    pub sorting: Option<&'a Sorting>,
    /// Steps that a rule before it rests on, of the same word or a stronger one.
    pub covered: &'a [String],
    /// A stronger rule fired.
    pub stronger: bool,
}

/// One firing of a rule.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Hit {
    /// The steps it rests on.
    pub steps: Vec<String>,
    /// The cause it names.
    pub cause: Option<String>,
    /// A milder word than the rule's own.
    pub milder: Option<Word>,
}

impl Hit {
    /// Rests on these steps; nothing where there are none.
    pub fn on(steps: Vec<String>) -> Vec<Self> {
        if steps.is_empty() { Vec::new() } else { vec![Self { steps, ..Self::default() }] }
    }
}

impl Rule {
    /// Runs the rule and names its reasons.
    pub fn reasons(&self, look: &Look<'_>) -> Vec<Reason> {
        let reason = |hit: Hit| Reason {
            rule: self.facts.id.to_owned(),
            word: hit.milder.unwrap_or(self.facts.word),
            steps: hit.steps,
            cause: hit.cause,
            basis: Vec::new(),
            says: Vec::new(),
        };
        (self.look)(look).into_iter().map(reason).collect()
    }
}

/// One hit for those of the given steps, at any support, whose answer holds one of these choices.
pub fn hit_if_any(case: &Case, steps: &[&str], choices: &[&str]) -> Vec<Hit> {
    hit_where(case, steps, |answer| holds(answer, choices))
}

/// One hit for those of the given steps, at any support, whose answer is one that is wanted.
pub fn hit_where(case: &Case, steps: &[&str], wanted: impl Fn(&CaseAnswer) -> bool) -> Vec<Hit> {
    let found = steps.iter().flat_map(|step| case.at(step)).filter(|(_, answer)| wanted(answer));
    Hit::on(found.map(|(step, _)| step.to_owned()).collect())
}

/// Whether an answer holds one of these choices.
pub fn holds(answer: &CaseAnswer, choices: &[&str]) -> bool {
    choices.iter().any(|choice| answer.value.has(choice))
}
