//! Something was found that no stronger rule covers, unexplained noise included.

use crate::model::rating::Word;

use super::rule::{Hit, Look, Rule};

/// Something was found that no stronger rule covers, unexplained noise included.
pub const RULE: Rule = Rule { id: "finding-unexplained", word: Word::Caution, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    let uncovered = |step: &&String| !look.covered.contains(*step);
    let found = look.case.answers.iter().filter(|(_, answer)| answer.found).map(|(step, _)| step);
    let steps: Vec<String> = found.filter(uncovered).cloned().collect();
    if steps.is_empty() { Vec::new() } else { vec![Hit { steps, cause: None }] }
}
