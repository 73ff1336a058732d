//! Urgency: one rule a file, each with its id and signal word; the strongest wins and every reason is
//! kept. Sound and feel alone neither condemn nor clear: without the hands-on check there is no rating,
//! unless a DANGER reason already stands.

mod bearing_likely;
mod cause_likely;
mod cold_check_buzz;
mod coupling_failing;
mod far_end_play;
mod finding_unexplained;
mod housing_broken;
mod movement_at_support;
mod no_bearing_action;
mod play_unsure;
pub mod rating;
mod rubber_play;
pub mod rule;
mod running_stopped;
mod shaft_damaged;
mod shaft_fibre_damaged;
mod turns_badly;

use rule::Rule;

/// Every rule, strongest word first; reasons are shown in this order.
pub const RULES: [&Rule; 15] = [
    &movement_at_support::RULE,
    &housing_broken::RULE,
    &coupling_failing::RULE,
    &shaft_fibre_damaged::RULE,
    &running_stopped::RULE,
    &play_unsure::RULE,
    &rubber_play::RULE,
    &turns_badly::RULE,
    &shaft_damaged::RULE,
    &far_end_play::RULE,
    &bearing_likely::RULE,
    &cause_likely::RULE,
    &cold_check_buzz::RULE,
    &finding_unexplained::RULE,
    &no_bearing_action::RULE,
];
