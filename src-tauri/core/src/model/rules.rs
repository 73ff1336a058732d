//! What is known of each urgency rule beside the function that looks: papers, bench and screens read it here.
//!
//! A test runs over this list, the rules themselves and every language: a rule without its texts or its place in
//! the scope of work cannot pass.

use super::rating::Word;

/// The version of the rules that this program rates by.
///
/// 1: the first. 2, of 2026-11-29: play alone can clear, noise alone stops at CAUTION, words of their own for
/// rubber, what was not looked at is named. 3, of the same day: a shaft turned with the wheels says nothing of drag,
/// nor does an idle read cold of the idle; WARNING is not to be driven; what of the driveline was not looked at is named.
/// 4, of 2026-11-30: a cold check clears no complaint that nobody named, nor a tube; a support that sags, and dust beside
/// rub marks at a seat in metal, confirm a suspicion; what was found while the car was written down otherwise is a WARNING.
pub const VERSION: u32 = 4;

/// From this probability on a cause is called likely: as likely as not. Held to `data/rules.toml` by a test.
pub const LIKELY: f64 = 0.5;

/// What is known of a rule.
#[derive(Debug, PartialEq, Eq)]
pub struct Facts {
    /// Stable id; its sentence is the text `rule-ID`.
    pub id: &'static str,
    /// The strongest word it asks for.
    pub word: Word,
    /// It rates the bearing, its seat or its housing: a repair there belongs to the scope of work.
    pub on_bearing: bool,
    /// What its sentence hangs on, or how it stands beside others.
    pub tells: Tells,
}

/// What makes a rule special to those that word it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Tells {
    /// Nothing.
    Plain,
    /// Movement was felt where none is allowed; an `unsure` beside it need not be told.
    Moved,
    /// Movement could not be ruled out.
    Unsure,
    /// It names a cause other than the bearing.
    Cause,
    /// The sorting suspects the bearing; without a hand's finding its sentence is another.
    Suspicion,
    /// It is about the far end; where no support holds the shaft it speaks of its ends.
    FarEnd,
    /// Felt cold, where only warm would clear.
    Cold,
    /// Nothing found; its sentence hangs on what was listened for and what was not looked at.
    NoAction,
}

impl Tells {
    /// What its sentence is also worded as: each is a text `rule-ID-VARIANT`, and one for the owner. `content/reasons.rs`
    /// chooses among them and makes no other.
    pub const fn variants(self) -> &'static [&'static str] {
        match self {
            Self::Plain | Self::Moved | Self::Unsure => &[],
            Self::Cause => &["misfire"],
            Self::Suspicion => &["suspected", "suspected-closed"],
            Self::FarEnd => &["ends"],
            Self::Cold => &["repaired"],
            Self::NoAction => &[
                "after-repair",
                "not-reproduced",
                "not-listened",
                "play",
                "play-not-driven",
                "play-not-reproduced",
                "play-not-listened",
                "ends",
                "ends-not-driven",
                "ends-not-reproduced",
                "ends-not-listened",
            ],
        }
    }
}

const fn plain(id: &'static str, word: Word, on_bearing: bool) -> Facts {
    Facts { id, word, on_bearing, tells: Tells::Plain }
}

/// Something was found while the car was written down otherwise, and nobody has answered it anew or taken it back.
pub const SET_APART: Facts = plain("set-apart", Word::Warning, false);
/// Movement felt at a rigidly held bearing or in an opened tube: the shaft can flail.
pub const MOVEMENT_AT_SUPPORT: Facts =
    Facts { id: "movement-at-support", word: Word::Danger, on_bearing: true, tells: Tells::Moved };
/// The housing is cracked or one of its fasteners is loose.
pub const HOUSING_BROKEN: Facts = plain("housing-broken", Word::Danger, true);
/// A rubber support is torn through, or what holds it is cracked or loose.
pub const SUPPORT_BROKEN: Facts = plain("support-broken", Word::Danger, true);
/// A coupling is about to fail.
pub const COUPLING_FAILING: Facts = plain("coupling-failing", Word::Danger, false);
/// A bolt of a coupling is loose or missing.
pub const COUPLING_BOLTS: Facts = plain("coupling-bolts", Word::Danger, false);
/// A fibre shaft is damaged: it can burst without further warning.
pub const SHAFT_FIBRE_DAMAGED: Facts = plain("shaft-fibre-damaged", Word::Danger, false);
/// A running check was broken off for a heavy knock or a strong vibration.
pub const RUNNING_STOPPED: Facts = plain("running-stopped", Word::Danger, false);
/// Movement at the support could not be decided.
pub const PLAY_UNSURE: Facts =
    Facts { id: "play-unsure", word: Word::Warning, on_bearing: false, tells: Tells::Unsure };
/// A rubber support moves to a stop or beyond its figure.
pub const RUBBER_PLAY: Facts = plain("rubber-play", Word::Warning, true);
/// The rubber of a support is torn.
pub const SUPPORT_TORN: Facts = plain("support-torn", Word::Warning, true);
/// A support sags and something touches: most likely the shaft.
pub const SAGGING_TOUCHES: Facts = plain("sagging-touches", Word::Warning, true);
/// The bearing turns roughly or resists.
pub const TURNS_BADLY: Facts = plain("turns-badly", Word::Warning, true);
/// The shaft is dented or has lost a balance weight.
pub const SHAFT_DAMAGED: Facts = plain("shaft-damaged", Word::Warning, false);
/// Movement across, or a clunk, at the far end.
pub const FAR_END_PLAY: Facts =
    Facts { id: "far-end-play", word: Word::Warning, on_bearing: false, tells: Tells::FarEnd };
/// A mount of engine or gearbox is broken.
pub const MOUNT_BROKEN: Facts = plain("mount-broken", Word::Warning, false);
/// Something touches a fibre shaft.
pub const TOUCHES_FIBRE: Facts = plain("touches-fibre", Word::Warning, false);
/// The bearing is as likely as not or more.
pub const BEARING_LIKELY: Facts =
    Facts { id: "bearing-likely", word: Word::Warning, on_bearing: true, tells: Tells::Suspicion };
/// Another cause is as likely as not or more.
pub const CAUSE_LIKELY: Facts =
    Facts { id: "cause-likely", word: Word::Caution, on_bearing: false, tells: Tells::Cause };
/// A coupling or joint was seen worn, or is stiff.
pub const COUPLING_WORN: Facts = plain("coupling-worn", Word::Caution, false);
/// The boot of a joint is torn.
pub const BOOT_TORN: Facts = plain("boot-torn", Word::Caution, false);
/// A rubber support sits off centre, is soaked in oil or crazed.
pub const SUPPORT_AGEING: Facts = plain("support-ageing", Word::Caution, true);
/// Movement at the far end could not be decided.
pub const FAR_END_UNSURE: Facts =
    Facts { id: "far-end-unsure", word: Word::Caution, on_bearing: false, tells: Tells::FarEnd };
/// A hiss or whirr, and the shaft was not turned free.
pub const DRAG_UNCHECKED: Facts = plain("drag-unchecked", Word::Caution, false);
/// The shaft resists, turned together with wheels and final drive.
pub const STIFF_WITH_WHEELS: Facts = plain("stiff-with-wheels", Word::Caution, false);
/// Buzz, knock, rattle, whine or vibration, and no movement felt on a housing that was not warm. The id is older than
/// its reach.
pub const COLD_CHECK: Facts =
    Facts { id: "cold-check-buzz", word: Word::Caution, on_bearing: false, tells: Tells::Cold };
/// Something was found that no stronger rule covers.
pub const FINDING_UNEXPLAINED: Facts = plain("finding-unexplained", Word::Caution, false);
/// No play, and nothing found.
pub const NO_BEARING_ACTION: Facts =
    Facts { id: "no-bearing-action", word: Word::Notice, on_bearing: false, tells: Tells::NoAction };

/// Every rule, strongest word first; reasons are shown in this order.
pub const ALL: [&Facts; 28] = [
    &MOVEMENT_AT_SUPPORT,
    &HOUSING_BROKEN,
    &SUPPORT_BROKEN,
    &COUPLING_FAILING,
    &COUPLING_BOLTS,
    &SHAFT_FIBRE_DAMAGED,
    &RUNNING_STOPPED,
    &SET_APART,
    &PLAY_UNSURE,
    &RUBBER_PLAY,
    &SUPPORT_TORN,
    &SAGGING_TOUCHES,
    &TURNS_BADLY,
    &SHAFT_DAMAGED,
    &FAR_END_PLAY,
    &MOUNT_BROKEN,
    &TOUCHES_FIBRE,
    &BEARING_LIKELY,
    &CAUSE_LIKELY,
    &COUPLING_WORN,
    &BOOT_TORN,
    &SUPPORT_AGEING,
    &FAR_END_UNSURE,
    &DRAG_UNCHECKED,
    &STIFF_WITH_WHEELS,
    &COLD_CHECK,
    &FINDING_UNEXPLAINED,
    &NO_BEARING_ACTION,
];

/// The facts of a rule by its id.
pub fn of(id: &str) -> Option<&'static Facts> {
    ALL.into_iter().find(|facts| facts.id == id)
}
