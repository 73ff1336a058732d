//! What confirmed outcomes have taught: the numbers of the network, per layout, each with how much stands
//! behind it. Worked out in `outcomes`, read by `sorting`; never stored.

use std::collections::BTreeMap;

/// A probability with how much experience stands behind it: a Beta distribution, as if `a` cars had shown
/// the thing and `b` had not.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Beta {
    /// Cars with.
    pub a: f64,
    /// Cars without.
    pub b: f64,
}

impl Beta {
    /// A judged probability that stands for `weight` cars.
    pub fn prior(probability: f64, weight: f64) -> Self {
        Self { a: probability * weight, b: (1.0 - probability) * weight }
    }

    /// a / (a + b): the probability as used.
    pub fn mean(self) -> f64 {
        self.a / (self.a + self.b)
    }

    /// The same with more cars behind it.
    pub fn and(self, with: f64, without: f64) -> Self {
        Self { a: self.a + with, b: self.b + without }
    }
}

/// What was taught, by layout id. A layout with too few outcomes is not in it.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Learned {
    /// By layout id; without those that have too few outcomes.
    pub layouts: BTreeMap<String, Taught>,
}

/// What was taught of one layout.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Taught {
    /// Outcomes behind it.
    pub outcomes: u32,
    /// Probability beforehand, by cause.
    pub priors: BTreeMap<String, Beta>,
    /// Signs, by id.
    pub signs: BTreeMap<String, TaughtSign>,
}

/// What was taught of one sign.
#[derive(Debug, Clone, PartialEq)]
pub struct TaughtSign {
    /// Probability without any linked cause.
    pub leak: Beta,
    /// Link strength, by cause.
    pub links: BTreeMap<String, Beta>,
}
