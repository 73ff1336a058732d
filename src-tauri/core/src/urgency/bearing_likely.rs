//! The bearing group is as likely as not or more; where something was felt or seen there, or left unsure, with no
//! other finding allowed to talk it down.
//!
//! Sound and feel raise suspicion, only the hands-on check decides: where nothing was felt or seen at the bearing,
//! the suspicion asks for CAUTION and for the check that would confirm it.

use crate::model::case::{Case, CaseAnswer};
use crate::model::ids::{answer, step};
use crate::model::rating::Word;
use crate::model::rules;
use crate::model::standing::Support;

use super::rule::{Hit, Look, Rule};

/// See [`rules::BEARING_LIKELY`].
pub const RULE: Rule = Rule { facts: &rules::BEARING_LIKELY, look };

/// Where hands and eyes are at the bearing.
const AT_THE_BEARING: [&str; 6] = [
    step::PLAY_VERTICAL,
    step::PLAY_LATERAL,
    step::TUBE_OPEN_CHECK,
    step::TURN_BY_HAND,
    step::HOUSING_LOOK,
    step::SUPPORT_LOOK,
];

fn look(look: &Look<'_>) -> Vec<Hit> {
    let Some(sorting) = look.sorting else { return Vec::new() };
    let from = look.case.rules.likely;
    let confirmed = felt_or_seen(look.case);
    // What explains a noise may explain it away; what was felt or seen it may not.
    let unexcused = confirmed && sorting.bearing_unexcused >= from;
    let milder = (!confirmed).then_some(Word::Caution);
    if unexcused || sorting.bearing_probability >= from {
        vec![Hit { milder, ..Hit::default() }]
    } else {
        Vec::new()
    }
}

/// What is seen on many sound supports: dust and rub marks, and rubber that ages. By itself it confirms no suspicion.
const SLIGHT: [&str; 4] = ["marks", "grease-or-dust", "crazed", "oil-soaked"];
/// A support that sags; slight before the fourth rules.
const SAGS: &str = "off-centre";
/// Rub marks and dust together, where the bearing sits in metal: what a ring leaves that turns in its seat.
const FRETTING: [&str; 2] = ["marks", "grease-or-dust"];

fn felt_or_seen(case: &Case) -> bool {
    let third = case.rules.version <= 3;
    let slight = |answer: &CaseAnswer| {
        let choices = answer.value.choices();
        let frets =
            !third && case.support == Support::Rigid && FRETTING.iter().all(|sign| choices.contains(sign));
        let is_slight = |choice: &&str| SLIGHT.contains(choice) || third && *choice == SAGS;
        !choices.is_empty() && !frets && choices.iter().all(is_slight)
    };
    let says = |answer: &CaseAnswer| answer.found && !slight(answer) || answer.value.has(answer::UNSURE);
    AT_THE_BEARING.iter().flat_map(|step| case.at(step)).any(|(_, answer)| says(answer))
}
