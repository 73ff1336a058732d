//! How the bearings turned by hand after assembly, as sentences.

use crate::model::bench::{BearingPlace, RingStand, RingTurn};
use crate::words::Words;

/// Each bearing that was turned, and of two the one that was not.
pub fn ring_lines(words: &Words, rings: &[RingStand]) -> Vec<String> {
    let mut lines: Vec<String> = rings.iter().flat_map(|ring| one(words, ring)).collect();
    if let [RingStand { bearing: Some(turned), .. }] = rings {
        lines.push(words.text(match turned {
            BearingPlace::Front => "repair-ring-rear-open",
            BearingPlace::Rear => "repair-ring-front-open",
        }));
    }
    lines
}

fn one(words: &Words, ring: &RingStand) -> Vec<String> {
    let id = match ring.turns {
        RingTurn::Free => "repair-ring-free",
        RingTurn::Stiff => "repair-ring-stiff",
        RingTurn::Rough => "repair-ring-rough",
    };
    let said = words.with(id, &[("by", ring.by.as_str().into()), ("at", words.time(ring.at).into())]);
    let mut lines = vec![match ring.bearing {
        None => said,
        Some(BearingPlace::Front) => words.with("repair-ring-front", &[("line", said.into())]),
        Some(BearingPlace::Rear) => words.with("repair-ring-rear", &[("line", said.into())]),
    }];
    if ring.cold == Some(false) {
        lines.push(words.text("repair-ring-warm"));
    }
    lines.extend(ring.clearance_mm.map(|clearance| {
        let id = if clearance > 0.0 { "repair-ring-clearance" } else { "repair-ring-clearance-gone" };
        words.with(id, &[("clearance", words.measured(clearance).into())])
    }));
    lines
}
