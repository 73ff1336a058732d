//! What a gauge adds to what hands felt, for the urgency rules.

use crate::model::gauge::{GaugeDecision, GaugeMeaning};
use crate::model::ids::answer;
use crate::model::standing::Support;

/// What a decision means at a support.
pub fn meaning(support: Support, decision: GaugeDecision) -> GaugeMeaning {
    match (support, decision) {
        (Support::Rubber, GaugeDecision::Proven) => GaugeMeaning::BeyondFigure,
        (Support::Rigid | Support::Tube | Support::Absent, GaugeDecision::Proven) => GaugeMeaning::Felt,
        (_, GaugeDecision::NoneProven) => GaugeMeaning::ReplacesUnsure,
        (_, GaugeDecision::NotDecided)
        | (Support::Rigid | Support::Tube | Support::Absent, GaugeDecision::Compare) => GaugeMeaning::Unsure,
        (Support::Rubber, GaugeDecision::Compare) => GaugeMeaning::Silent,
    }
}

/// The answer that counts at a play step once a gauge has been used: the worse of the two, except that a
/// proof of none replaces an `unsure`. A hand-felt movement stands whatever the gauge says, and a check that hands have
/// not done stays open unless the gauge proves movement.
pub fn counts(hand: &str, gauge: GaugeMeaning) -> &str {
    if [answer::FELT, answer::KNOCKS].contains(&hand) {
        return hand;
    }
    match gauge {
        GaugeMeaning::Felt => answer::FELT,
        GaugeMeaning::BeyondFigure => answer::BEYOND_FIGURE,
        GaugeMeaning::Unsure if ![answer::BEYOND_FIGURE, answer::NOT_DONE].contains(&hand) => answer::UNSURE,
        GaugeMeaning::ReplacesUnsure if hand == answer::UNSURE => answer::NONE,
        GaugeMeaning::Unsure | GaugeMeaning::ReplacesUnsure | GaugeMeaning::Silent => hand,
    }
}
