//! The ids that code names: step, answer and gate-set ids whose meaning a rule depends on.
//!
//! Not a catalogue: the full lists live in `data/`. An id stands here only because a rule reads it.

/// Steps of the hands-on check and the looks beside it.
pub mod step {
    /// Movement up and down at the support.
    pub const PLAY_VERTICAL: &str = "play-vertical";
    /// Movement from side to side at the support.
    pub const PLAY_LATERAL: &str = "play-lateral";
    /// Movement at the far end of the shaft.
    pub const PLAY_FAR_END: &str = "play-far-end";
    /// The maker's procedure that opens a torque tube; stands in for the play steps.
    pub const TUBE_OPEN_CHECK: &str = "tube-open-check";
    /// Turning the shaft by hand.
    pub const TURN_BY_HAND: &str = "turn-by-hand";
    /// The look at the housing.
    pub const HOUSING_LOOK: &str = "housing-look";
    /// The look at the couplings.
    pub const COUPLING_LOOK: &str = "coupling-look";
    /// The look at the shaft.
    pub const SHAFT_LOOK: &str = "shaft-look";
    /// The buzz through the floor at about 2,500 rpm.
    pub const NEUTRAL_2500_BUZZ: &str = "neutral-2500-buzz";
    /// Why a running check was broken off.
    pub const RUNNING_STOP: &str = "running-stop";
    /// The idle speed reading.
    pub const IDLE_SPEED: &str = "idle-speed";
}

/// Answers a rule depends on.
pub mod answer {
    /// Nothing there.
    pub const NONE: &str = "none";
    /// Felt by hand or through the floor.
    pub const FELT: &str = "felt";
    /// Looked for and not decided.
    pub const UNSURE: &str = "unsure";
    /// Not done.
    pub const NOT_DONE: &str = "not-done";
    /// Rubber support: within the maker's figure.
    pub const WITHIN_FIGURE: &str = "within-figure";
    /// Rubber support: beyond the maker's figure.
    pub const BEYOND_FIGURE: &str = "beyond-figure";
    /// Turns roughly.
    pub const ROUGH: &str = "rough";
    /// Resists turning.
    pub const RESISTS: &str = "resists";
}
