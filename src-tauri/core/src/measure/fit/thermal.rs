//! A fit over temperature. Each part grows by its own expansion, all at one temperature; a sleeve that the
//! housing lets go of opens its bore again.

use super::stack::{Interference, Stack};
use crate::model::fit::{FitState, Spread};

/// Temperature that sizes are given at, Celsius (ISO 1, from memory).
pub const ROOM_C: f64 = 20.0;
/// Above this no fit is followed, Celsius.
const HOTTEST_C: f64 = 250.0;

/// The fits of one bearing with what they need to be followed over temperature. Millimetres on the diameter.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fits {
    /// The rings about the bearing.
    pub stack: Stack,
    /// Diameter of the bearing's seat.
    pub bearing_mm: f64,
    /// Interference of the bearing at 20 C, a sleeve in its place.
    pub bearing: Spread,
    /// Growth of the bearing against what surrounds it, 1e-6 per kelvin; below zero where it loosens.
    pub bearing_growth: f64,
    /// Diameter of the sleeve's seat.
    pub sleeve_mm: f64,
    /// Interference of the sleeve at 20 C; all zero without one.
    pub sleeve: Spread,
    /// Growth of the sleeve against the housing, 1e-6 per kelvin.
    pub sleeve_growth: f64,
}

/// The interferences of one bearing and one sleeve at 20 C, millimetres on the diameter.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pair {
    /// That of the bearing, the sleeve in its place.
    pub bearing: f64,
    /// That of the sleeve in the housing.
    pub sleeve: f64,
}

impl Fits {
    /// The outermost pairs: every least and most of one with every least and most of the other.
    pub fn corners(&self) -> [Pair; 4] {
        let pair = |bearing: f64, sleeve: f64| Pair { bearing, sleeve };
        [
            pair(self.bearing.least, self.sleeve.least),
            pair(self.bearing.least, self.sleeve.most),
            pair(self.bearing.most, self.sleeve.least),
            pair(self.bearing.most, self.sleeve.most),
        ]
    }

    /// The pair in the middle: both means.
    pub fn middle(&self) -> Pair {
        Pair { bearing: self.bearing.mean, sleeve: self.sleeve.mean }
    }

    /// What a pair's parts, free of one another, would overlap by at a temperature.
    pub fn free(&self, pair: Pair, celsius: f64) -> Interference {
        let rise = (celsius - ROOM_C) * 1e-6;
        Interference {
            bearing: pair.bearing - self.stack.closing(pair.sleeve)
                + self.bearing_growth * self.bearing_mm * rise,
            sleeve: self.sleeve_at(pair.sleeve, celsius),
        }
    }

    /// Interference of the bearing at a temperature, the sleeve in its place.
    pub fn bearing_at(&self, pair: Pair, celsius: f64) -> f64 {
        let free = self.free(pair, celsius);
        free.bearing + self.stack.closing(free.sleeve)
    }

    /// Interference of the sleeve in the housing at a temperature.
    pub fn sleeve_at(&self, interference: f64, celsius: f64) -> f64 {
        interference + self.sleeve_growth * self.sleeve_mm * (celsius - ROOM_C) * 1e-6
    }

    /// Interference of the bearing at a temperature over all pairs.
    pub fn bearing_spread(&self, celsius: f64) -> Spread {
        let at = self.corners().map(|pair| self.bearing_at(pair, celsius));
        Spread {
            least: at.into_iter().fold(f64::INFINITY, f64::min),
            mean: self.bearing_at(self.middle(), celsius),
            most: at.into_iter().fold(f64::NEG_INFINITY, f64::max),
        }
    }

    /// Interference of the sleeve at a temperature.
    pub fn sleeve_spread(&self, celsius: f64) -> Spread {
        let at = |interference: f64| self.sleeve_at(interference, celsius);
        Spread { least: at(self.sleeve.least), mean: at(self.sleeve.mean), most: at(self.sleeve.most) }
    }
}

/// How a spread of interferences stands.
pub fn state(interference: &Spread) -> FitState {
    if interference.least > 0.0 {
        FitState::Tight
    } else if interference.most > 0.0 {
        FitState::MayBeLoose
    } else {
        FitState::Loose
    }
}

/// The first temperature from 20 C up at which an interference is gone; none up to 250 C.
pub fn loose_from(interference: &dyn Fn(f64) -> f64) -> Option<f64> {
    if interference(ROOM_C) <= 0.0 {
        return Some(ROOM_C);
    }
    let mut tight = ROOM_C;
    while tight < HOTTEST_C {
        let next = tight + 1.0;
        if interference(next) <= 0.0 {
            return Some(between(interference, tight, next));
        }
        tight = next;
    }
    None
}

fn between(interference: &dyn Fn(f64) -> f64, mut tight: f64, mut loose: f64) -> f64 {
    for _ in 0..50 {
        let middle = 0.5 * (tight + loose);
        if interference(middle) > 0.0 { tight = middle } else { loose = middle }
    }
    loose
}

/// Temperatures to show: an even walk through the range, with 20 C where it lies inside.
pub fn temperatures(range: Option<[f64; 2]>) -> Vec<f64> {
    const PARTS: u8 = 8;
    let Some([low, high]) = range else { return vec![ROOM_C] };
    let at = |part: u8| low + (high - low) * f64::from(part) / f64::from(PARTS);
    let mut all: Vec<f64> = (0..=PARTS).map(at).collect();
    if low < ROOM_C && ROOM_C < high {
        all.push(ROOM_C);
    }
    all.sort_by(f64::total_cmp);
    all.dedup();
    all
}
