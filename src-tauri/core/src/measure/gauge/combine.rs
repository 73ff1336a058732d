//! Contributions to one standard uncertainty (JCGM 100:2008, clause 5.1.2 and annex G.4).

use super::student;

/// One contribution: its part of the standard uncertainty, and its degrees of freedom (`None`: unlimited).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Contribution {
    /// Sensitivity times standard uncertainty of the source; the sign is of no account.
    pub size: f64,
    /// Degrees of freedom; `None` is unlimited.
    pub dof: Option<f64>,
}

/// A standard uncertainty and how well it is known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Combined {
    /// Root of the sum of the contributions' squares, in their unit.
    pub standard: f64,
    /// Effective degrees of freedom by Welch-Satterthwaite; `None` is unlimited.
    pub dof: Option<f64>,
}

/// Combines contributions that are independent of each other.
pub fn combine(contributions: &[Contribution]) -> Combined {
    let variance: f64 = contributions.iter().map(|one| one.size.powi(2)).sum();
    let spent: f64 = contributions.iter().filter_map(|one| one.dof.map(|dof| one.size.powi(4) / dof)).sum();
    let dof = (spent > 0.0).then(|| variance.powi(2) / spent);
    Combined { standard: variance.sqrt(), dof }
}

impl Combined {
    /// Degrees of freedom cut to the whole number below, as annex G.4.1 allows; never under 1.
    pub fn whole_dof(&self) -> Option<f64> {
        self.dof.map(|dof| dof.floor().max(1.0))
    }

    /// Expanded uncertainty that spans `share` (such as 0.95) on both sides.
    pub fn expanded(&self, share: f64) -> f64 {
        student::quantile(0.5 + share / 2.0, self.whole_dof()) * self.standard
    }
}
