//! Rings pressed into one another: the pressures between bearing ring, sleeve and housing.

use super::lame::Ring;

/// The rings about a bearing, innermost first.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stack {
    /// Outer ring of the bearing.
    pub bearing: Ring,
    /// The sleeve, if there is one.
    pub sleeve: Option<Ring>,
    /// The housing's wall about the seat.
    pub housing: Ring,
}

/// Interference on the diameter, millimetres, of parts that are free of one another.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Interference {
    /// By how much the bearing is larger than the seat that takes it, sleeve or housing.
    pub bearing: f64,
    /// By how much the sleeve is larger than the housing's bore; without a sleeve it is not read.
    pub sleeve: f64,
}

/// Pressures, MPa, never below zero: loose parts do not pull.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pressures {
    /// Between the bearing and what is about it.
    pub bearing: f64,
    /// Between sleeve and housing; 0 without a sleeve.
    pub sleeve: f64,
}

impl Stack {
    /// The pressures that parts of this interference press each other with.
    pub fn pressures(&self, free: Interference) -> Pressures {
        let Some(sleeve) = self.sleeve else {
            let give = self.housing.bore_by_inner() + self.bearing.rim_by_outer();
            return Pressures { bearing: (free.bearing / 2.0 / give).max(0.0), sleeve: 0.0 };
        };
        let inner_give = sleeve.bore_by_inner() + self.bearing.rim_by_outer();
        let outer_give = self.housing.bore_by_inner() + sleeve.rim_by_outer();
        let (closes, opens) = (sleeve.bore_by_outer(), sleeve.rim_by_inner());
        let (inner, outer) = (free.bearing / 2.0, free.sleeve / 2.0);
        // One seat alone, if the other stays loose with it; both only where neither does.
        let sleeve_alone = (outer / outer_give).max(0.0);
        if inner + sleeve_alone * closes <= 0.0 {
            return Pressures { bearing: 0.0, sleeve: sleeve_alone };
        }
        let bearing_alone = (inner / inner_give).max(0.0);
        if outer + bearing_alone * opens <= 0.0 {
            return Pressures { bearing: bearing_alone, sleeve: 0.0 };
        }
        let whole = inner_give * outer_give - closes * opens;
        Pressures {
            bearing: (inner * outer_give + outer * closes) / whole,
            sleeve: (outer * inner_give + inner * opens) / whole,
        }
    }

    /// How far pressing the sleeve into the housing closes its bore, millimetres on the diameter.
    pub fn closing(&self, sleeve_interference: f64) -> f64 {
        let Some(sleeve) = self.sleeve else { return 0.0 };
        let give = self.housing.bore_by_inner() + sleeve.rim_by_outer();
        let pressure = (sleeve_interference / 2.0 / give).max(0.0);
        2.0 * pressure * sleeve.bore_by_outer()
    }

    /// How far a pressure about the bearing shrinks its raceway, millimetres on the diameter.
    pub fn raceway_loss(&self, about_bearing: f64) -> f64 {
        2.0 * about_bearing * self.bearing.bore_by_outer()
    }
}
