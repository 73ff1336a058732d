//! The ids that code names: step, answer and gate-set ids whose meaning a rule depends on.
//!
//! Not a catalogue: the full lists live in `data/`. An id stands here only because a rule reads it.

use std::borrow::Cow;

/// What stands between a step and the number of the support it is done at, from the second support on.
const AT_SUPPORT: char = ':';

/// The step whatever support it is done at: `play-vertical` of `play-vertical:2`.
pub fn base(step: &str) -> &str {
    step.split_once(AT_SUPPORT).map_or(step, |(base, _)| base)
}

/// The number of the support a step is done at, from 1.
pub fn support_number(step: &str) -> u8 {
    step.split_once(AT_SUPPORT).and_then(|(_, number)| number.parse().ok()).unwrap_or(1)
}

/// A step at a support, counted from 1.
pub fn at_support(step: &str, number: u8) -> String {
    numbered(step, number).into_owned()
}

/// The same, without a copy where the step is its own name.
pub fn numbered(step: &str, number: u8) -> Cow<'_, str> {
    if number <= 1 { Cow::Borrowed(step) } else { Cow::Owned(format!("{step}{AT_SUPPORT}{number}")) }
}

/// The stations in the order they are shown: along the shaft from its support, then the seat and the owner's account.
/// Each step's `station` is one of them.
pub const STATIONS: [&str; 6] = ["support", "shaft", "far-end", "around", "seat", "account"];

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
    /// Cracks and fasteners of what holds the bearing rigidly.
    pub const HOUSING_LOOK: &str = "housing-look";
    /// The look at a rubber support.
    pub const SUPPORT_LOOK: &str = "support-look";
    /// The look at what is around the shaft.
    pub const SHIELD_AND_MOUNTS: &str = "shield-and-mounts";
    /// What is heard at idle.
    pub const IDLE_NOISE: &str = "idle-noise";
    /// What the owner says of a vibration on the road.
    pub const ROAD_SPEED_VIBRATION: &str = "road-speed-vibration";
    /// The look at the couplings.
    pub const COUPLING_LOOK: &str = "coupling-look";
    /// Dents, rust, lost balance weights; behind a closed tube nothing.
    pub const SHAFT_LOOK: &str = "shaft-look";
    /// The buzz through the floor at about 2,500 rpm.
    pub const NEUTRAL_2500_BUZZ: &str = "neutral-2500-buzz";
    /// Why a running check was broken off.
    pub const RUNNING_STOP: &str = "running-stop";
    /// The idle speed reading.
    pub const IDLE_SPEED: &str = "idle-speed";
    /// Whether raising the idle takes the noise away.
    pub const IDLE_RAISE_EFFECT: &str = "idle-raise-effect";
    /// Where somebody listens or feels for a noise.
    pub const LISTENING: [&str; 7] = [
        IDLE_NOISE,
        NEUTRAL_2500_BUZZ,
        "creep-noise",
        "road-drive",
        "road-coast",
        "road-neutral",
        "road-bend",
    ];
}

/// Why a step where nothing was found goes without a photo, where nobody gave a reason: going on notes it. No row of
/// `data/waivers.toml`, which people choose from.
pub const NOTHING_TO_SHOW: &str = "nothing-to-show";

/// The reason of `data/waivers.toml` that is not true of every answer.
pub const NOTHING_TO_SEE: &str = "nothing-to-see";

/// Answers a rule depends on.
pub mod answer {
    /// Nothing there.
    pub const NONE: &str = "none";
    /// Felt by hand or through the floor.
    pub const FELT: &str = "felt";
    /// Looked for and not decided.
    pub const UNSURE: &str = "unsure";
    /// Nobody looked: proves nothing.
    pub const NOT_DONE: &str = "not-done";
    /// Rubber support: within the maker's figure.
    pub const WITHIN_FIGURE: &str = "within-figure";
    /// Rubber support: gives evenly and springs back; no figure is known.
    pub const SPRINGY: &str = "springy";
    /// Rubber support: moves until it reaches a stop.
    pub const KNOCKS: &str = "knocks";
    /// An answer that others name and nobody has: told of what was taken back, and no answer of a step.
    pub const NOT_HERE: &str = "not-here";
    /// A movement that a gauge proved: told of what was taken back, and no answer of a step.
    pub const BY_GAUGE: &str = "by-gauge";
    /// Rubber support: beyond the maker's figure.
    pub const BEYOND_FIGURE: &str = "beyond-figure";
    /// A part that could not be seen.
    pub const NOT_SEEN: &str = "not-seen";
    /// Turns smoothly.
    pub const SMOOTH: &str = "smooth";
    /// Turns roughly.
    pub const ROUGH: &str = "rough";
    /// Resists turning.
    pub const RESISTS: &str = "resists";
}
