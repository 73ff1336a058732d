//! Urgency: one rule a file, each with its facts in `model/rules.rs`; the strongest wins and every reason is kept.
//! Sound and feel alone neither condemn nor clear: without the hands-on check there is no rating, unless a DANGER
//! reason already stands; a tube that is still closed is rated by what can be heard and seen from outside.

mod bearing_likely;
mod boot_torn;
mod cause_likely;
mod cold_check;
mod coupling_bolts;
mod coupling_failing;
mod coupling_worn;
mod drag_unchecked;
mod far_end_play;
mod far_end_unsure;
mod finding_unexplained;
mod first;
mod housing_broken;
mod mount_broken;
mod movement_at_support;
mod no_bearing_action;
mod play_unsure;
pub mod rating;
mod rubber_play;
pub mod rule;
mod running_stopped;
mod sagging_touches;
mod second;
mod set_apart;
mod shaft_damaged;
mod shaft_fibre_damaged;
mod stiff_with_wheels;
mod support_ageing;
mod support_broken;
mod support_torn;
mod touches_fibre;
mod turns_badly;

use rule::Rule;

/// Every rule, strongest word first; reasons are shown in this order.
pub const RULES: [&Rule; 28] = [
    &movement_at_support::RULE,
    &housing_broken::RULE,
    &support_broken::RULE,
    &coupling_failing::RULE,
    &coupling_bolts::RULE,
    &shaft_fibre_damaged::RULE,
    &running_stopped::RULE,
    &set_apart::RULE,
    &play_unsure::RULE,
    &rubber_play::RULE,
    &support_torn::RULE,
    &sagging_touches::RULE,
    &turns_badly::RULE,
    &shaft_damaged::RULE,
    &far_end_play::RULE,
    &mount_broken::RULE,
    &touches_fibre::RULE,
    &bearing_likely::RULE,
    &cause_likely::RULE,
    &coupling_worn::RULE,
    &boot_torn::RULE,
    &support_ageing::RULE,
    &far_end_unsure::RULE,
    &drag_unchecked::RULE,
    &stiff_with_wheels::RULE,
    &cold_check::RULE,
    &finding_unexplained::RULE,
    &no_bearing_action::RULE,
];
