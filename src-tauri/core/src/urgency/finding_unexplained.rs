//! Something was found that no stronger rule covers, unexplained noise included.

use crate::model::rules;

use super::rule::{Hit, Look, Rule};

/// See [`rules::FINDING_UNEXPLAINED`].
pub const RULE: Rule = Rule { facts: &rules::FINDING_UNEXPLAINED, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    let uncovered = |step: &&String| !look.covered.contains(*step);
    let found = look.case.answers.iter().filter(|(_, answer)| answer.found).map(|(step, _)| step);
    Hit::on(found.filter(uncovered).cloned().collect())
}
