//! No movement felt on a housing that was not warm, on a car that is here for anything but a noise known to come from
//! elsewhere, or that was repaired: a seat can open when hot and rubber softens, so cold clears nothing. Without a
//! temperature it is taken as cold, and a complaint that nobody named as one that matters.

use super::rule::{Hit, Look, Rule, holds};
use crate::model::case::{Case, CaseAnswer};
use crate::model::ids::{answer, step};
use crate::model::rules;

/// See [`rules::COLD_CHECK`].
pub const RULE: Rule = Rule { facts: &rules::COLD_CHECK, look };

/// What no cold check clears, as an owner notices it.
const SOUNDS: [&str; 5] = ["buzz", "knock", "rattle", "whine", "vibration"];
/// The same in the second rules.
const SECOND_SOUNDS: [&str; 3] = ["buzz", "knock", "vibration"];
/// The same as it is noticed at a step.
const FELT: [(&str, &str); 4] = [
    (step::NEUTRAL_2500_BUZZ, answer::FELT),
    (step::IDLE_NOISE, "knock"),
    (step::ROAD_SPEED_VIBRATION, "grows-with-speed"),
    (step::RUNNING_STOP, "heavy-knock"),
];
/// What a shaft that turns with the engine may be behind while the car stands.
const AT_IDLE: [(&str, &str); 2] = [(step::IDLE_NOISE, "rattle"), (step::IDLE_NOISE, "whine")];
/// The steps that are felt cold or warm; the last since the fourth rules.
const SUPPORT: [&str; 3] = [step::PLAY_VERTICAL, step::PLAY_LATERAL, step::TUBE_OPEN_CHECK];

fn look(look: &Look<'_>) -> Vec<Hit> {
    let case = look.case;
    let heard = |list: &[(&str, &str)]| list.iter().any(|(step, choice)| case.has(step, choice));
    let (second, third) = (case.rules.version <= 2, case.rules.version <= 3);
    let sounds: &[&str] = if second { &SECOND_SOUNDS } else { &SOUNDS };
    let noticed = heard(&FELT)
        || !second && case.engine_speed && heard(&AT_IDLE)
        || !second && !case.occasion.is_complaint()
        || !third && case.complaint_sounds.is_empty()
        || case.complaint_sounds.iter().any(|sound| sounds.contains(&sound.as_str()));
    let support = if third { &SUPPORT[..2] } else { &SUPPORT[..] };
    let felt = || support.iter().flat_map(|step| case.at(step));
    let moved = felt().any(|(_, answer)| answer.found);
    let cold: Vec<String> = felt()
        .filter(|(_, answer)| clear_but_not_warm(case, answer))
        .map(|(step, _)| step.to_owned())
        .collect();
    if noticed && !moved { Hit::on(cold) } else { Vec::new() }
}

fn clear_but_not_warm(case: &Case, felt: &CaseAnswer) -> bool {
    let clear = holds(felt, &[answer::NONE, answer::WITHIN_FIGURE, answer::SPRINGY]);
    clear && !felt.temperature.is_some_and(|read| read.is_warm(case.rules.warm_from_c))
}
