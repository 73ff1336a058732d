//! Marks drawn over a photo to point at what it shows. The photo's file is never touched: marks lie over
//! it, in shares of the picture, on every screen and in every paper.

use serde::{Deserialize, Serialize};

use super::limits::{LABEL, LEAST_EXTENT, MARKS, SPOTS};

/// A spot on a picture: shares of its width and height from the upper left corner, each 0 to 1.
pub type Spot = [f32; 2];

/// Drawn over a photo, never into it; spots are shares of its width and height, 0 to 1.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(tag = "shape", rename_all = "kebab-case", deny_unknown_fields)]
pub enum Mark {
    /// An arrow that points at something.
    Arrow {
        /// Where it starts.
        from: [f32; 2],
        /// What it points at.
        to: [f32; 2],
    },
    /// A ring round something.
    Ring {
        /// Two opposite corners of the rectangle that the ring fills.
        corners: [[f32; 2]; 2],
    },
    /// A line drawn freely.
    Freehand {
        /// The spots it passes.
        points: Vec<[f32; 2]>,
    },
    /// A few words.
    Label {
        /// Where their middle stands.
        at: [f32; 2],
        /// The words, on one line.
        text: String,
    },
}

/// Why a set of marks is not taken.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum MarkFault {
    /// More than [`MARKS`] marks.
    TooMany,
    /// Off the picture, too small to be seen, or a line of more than [`SPOTS`] spots.
    Shape,
    /// No words, more than [`LABEL`] characters, or characters that steer how others are shown.
    Label,
}

/// Checks a set of marks; an empty one is fine and takes earlier marks away.
///
/// # Errors
/// The first [`MarkFault`] found.
pub fn check(marks: &[Mark]) -> Result<(), MarkFault> {
    if marks.len() > MARKS {
        return Err(MarkFault::TooMany);
    }
    marks.iter().try_for_each(Mark::check)
}

impl Mark {
    /// The words of a label.
    pub fn words(&self) -> Option<&str> {
        if let Self::Label { text, .. } = self { Some(text) } else { None }
    }

    fn check(&self) -> Result<(), MarkFault> {
        let fits = match self {
            Self::Arrow { from, to } => on_picture([from, to]) && extent(*from, *to) >= LEAST_EXTENT,
            Self::Ring { corners: [one, other] } => {
                let wide = |axis: fn(&Spot) -> f32| (axis(one) - axis(other)).abs() >= LEAST_EXTENT;
                on_picture([one, other]) && wide(|spot| spot[0]) && wide(|spot| spot[1])
            }
            Self::Freehand { points } => (2..=SPOTS).contains(&points.len()) && on_picture(points),
            Self::Label { at, text } => {
                if !readable(text) {
                    return Err(MarkFault::Label);
                }
                on_picture([at])
            }
        };
        if fits { Ok(()) } else { Err(MarkFault::Shape) }
    }
}

fn on_picture<'a>(spots: impl IntoIterator<Item = &'a Spot>) -> bool {
    spots.into_iter().flatten().all(|share| (0.0..=1.0).contains(share))
}

fn extent(from: Spot, to: Spot) -> f32 {
    (from[0] - to[0]).hypot(from[1] - to[1])
}

fn readable(text: &str) -> bool {
    let length = text.chars().count();
    (1..=LABEL).contains(&length) && text.trim() == text && !text.chars().any(steers)
}

/// Controls, line breaks and the marks that turn the reading direction: with them a label on the photo
/// could read differently from the label in the ledger.
fn steers(letter: char) -> bool {
    letter.is_control()
        || matches!(letter, '\u{61C}' | '\u{200E}' | '\u{200F}' | '\u{2028}'..='\u{202E}' | '\u{2066}'..='\u{2069}')
}
