//! What was seen of the torn-down housing, and of the old sleeve that came out, as sentences.

use crate::model::bench::{HousingLook, SleeveWay};
use crate::words::Words;

/// The look in sentences; what was not looked at says so.
pub fn look_lines(words: &Words, look: &HousingLook) -> Vec<String> {
    if *look == HousingLook::default() {
        return Vec::new();
    }
    let cracks = match (look.cracked, look.dyed) {
        (Some(true), _) => "look-line-cracked",
        (Some(false), Some(true)) => "look-line-no-crack-dye",
        // By eye, or nobody said how: a fine crack is not ruled out.
        (Some(false), Some(false) | None) => "look-line-no-crack-eye",
        (None, _) => "look-line-cracks-open",
    };
    let ring = match look.ring_turned {
        Some(true) => "look-line-ring-turned",
        Some(false) => "look-line-ring-still",
        None => "look-line-ring-open",
    };
    let mut lines = vec![words.text(cracks), words.text(ring)];
    lines.extend(
        look.sleeved.map(|sleeved| words.text(if sleeved { "look-line-sleeved" } else { "look-line-bare" })),
    );
    lines.extend(
        look.wall_least_mm.map(|wall| words.with("look-line-wall", &[("wall", words.measured(wall).into())])),
    );
    lines
}

/// How the old sleeve came out and what its outside says beside the bore behind it, both in mm; `None` was not measured.
pub fn sleeve_out_lines(
    words: &Words,
    way: SleeveWay,
    outside_mm: Option<f64>,
    behind_mm: Option<f64>,
) -> Vec<String> {
    let mut lines = vec![words.text(&format!("sleeve-out-{}", way.id()))];
    lines.extend(
        outside_mm.map(|outside| words.with("sleeve-out-size", &[("size", words.measured(outside).into())])),
    );
    lines.extend(outside_mm.zip(behind_mm).map(|(outside, behind)| {
        let grip = 1000.0 * (outside - behind);
        let id = if grip > 0.0 { "sleeve-out-grip" } else { "sleeve-out-loose" };
        words.with(id, &[("grip", words.fine(grip.abs()).into())])
    }));
    lines.push(words.text("sleeve-out-look-again"));
    lines
}
