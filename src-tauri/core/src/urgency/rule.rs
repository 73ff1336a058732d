//! What a rule is, and the helpers that most rules need.

use crate::model::case::Case;
use crate::model::rating::{Reason, Word};
use crate::model::standing::Sorting;

/// One rule: a stable id, the signal word it asks for, and the function that looks.
pub struct Rule {
    /// Stable id; its sentence is the text `rule-ID`.
    pub id: &'static str,
    /// The word it asks for.
    pub word: Word,
    /// Looks at a case. `covered` lists the steps that stronger rules rest on.
    pub look: fn(&Look<'_>) -> Vec<Hit>,
}

/// What a rule may look at.
pub struct Look<'a> {
    /// The answers that count.
    pub case: &'a Case,
    /// The sorting; `None` when a single step is rated.
    pub sorting: Option<&'a Sorting>,
    /// Steps that a stronger rule rests on.
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
}

impl Rule {
    /// Runs the rule and names its reasons.
    pub fn reasons(&self, look: &Look<'_>) -> Vec<Reason> {
        let reason = |hit: Hit| Reason {
            rule: self.id.to_owned(),
            word: self.word,
            steps: hit.steps,
            cause: hit.cause,
        };
        (self.look)(look).into_iter().map(reason).collect()
    }
}

/// One hit for those of the given steps whose answer holds one of these choices; none if no step does.
pub fn hit_if_any(case: &Case, steps: &[&str], choices: &[&str]) -> Vec<Hit> {
    let found: Vec<String> =
        steps.iter().filter(|step| case.has_any(step, choices)).map(|step| (*step).to_owned()).collect();
    if found.is_empty() { Vec::new() } else { vec![Hit { steps: found, cause: None }] }
}
