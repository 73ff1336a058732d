//! Uncertainty of one reading and of what is made from many.
//!
//! Source: JCGM 100:2008 (GUM), cl. 5.1.2 (law of propagation), F.2.2.1 (resolution), 4.3.7 (limits without
//! a distribution: rectangular), G.6.6 (k = 2 for about 95 %); clause numbers from memory.
//! A maximum permissible error may be shared by all readings, which shifts the size and leaves the form, or be
//! each reading's own, which is the other way round. Nobody at the bench knows which, so it counts in full for
//! the size (shared) and in full for the form (each its own): never too small, in both.

use std::f64::consts::FRAC_1_SQRT_2;

use crate::model::bore::{BoreInstrument, BudgetLine, FormUm, SizeMm};

/// Standard uncertainties of one reading, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Doubt {
    /// Resolution r: r / sqrt(12).
    pub resolution: f64,
    /// Maximum permissible error m: m / sqrt(3).
    pub mpe: f64,
    /// Repeated readings of one spot: their standard deviation.
    pub repeatability: f64,
}

/// Coverage factor: two standard uncertainties span about 95 %.
pub const COVERAGE: f64 = 2.0;

impl Doubt {
    /// The standard uncertainties that an instrument's description stands for.
    pub fn of(it: &BoreInstrument) -> Self {
        Self {
            resolution: it.resolution_mm / 12.0_f64.sqrt(),
            mpe: it.mpe_mm / 3.0_f64.sqrt(),
            repeatability: it.repeatability_mm,
        }
    }

    /// Resolution and repeatability together, mm: what differs from reading to reading even where the instrument
    /// errs by the same amount each time.
    pub fn scatter(&self) -> f64 {
        self.resolution.hypot(self.repeatability)
    }

    /// Standard uncertainty of one reading, mm: scatter and permissible error together.
    pub fn reading(&self) -> f64 {
        self.scatter().hypot(self.mpe)
    }

    /// Standard uncertainty of a mean, mm. `variance` is that of the mean where one reading scatters with variance
    /// 1; the permissible error does not average out, since all readings may share it.
    pub fn mean(&self, variance: f64) -> f64 {
        (self.mpe * self.mpe + self.scatter().powi(2) * variance).sqrt()
    }

    /// Standard uncertainty of a size that is fitted to readings, mm; `variance` as for [`Doubt::mean`]. Over an
    /// arc the error counts for more as each reading's own than as one that all share; the greater counts.
    pub fn fitted(&self, variance: f64) -> f64 {
        (self.mpe * self.mpe * variance.max(1.0) + self.scatter().powi(2) * variance).sqrt()
    }

    /// Standard uncertainty of a form, mm: a sum of readings with weights whose squares add up to `squares`, each
    /// reading erring by itself.
    pub fn form(&self, squares: f64) -> f64 {
        self.reading() * squares.max(0.0).sqrt()
    }

    /// The budget of one reading, a line for each source and one for all together.
    pub fn lines(&self) -> Vec<BudgetLine> {
        let line = |id: &str, mm: f64| BudgetLine { id: id.to_owned(), standard_um: mm * 1000.0 };
        vec![
            line("bore-budget-resolution", self.resolution),
            line("bore-budget-mpe", self.mpe),
            line("bore-budget-repeatability", self.repeatability),
            line("bore-budget-reading", self.reading()),
        ]
    }
}

/// A size with the expanded uncertainty for a standard one, both given in mm.
pub fn size(value: f64, standard: f64) -> SizeMm {
    SizeMm { value_mm: value, expanded_um: COVERAGE * standard * 1000.0 }
}

/// A small value with the expanded uncertainty for a standard one, both given in mm.
pub fn form(value: f64, standard: f64) -> FormUm {
    FormUm { value_um: value * 1000.0, expanded_um: COVERAGE * standard * 1000.0 }
}

/// Mean range of `count` readings of the same thing, in standard deviations: the integral of
/// 1 - F^n - (1 - F)^n, with F the normal distribution. Both halves are the same; so wide a step is exact to the
/// last digits printed, since every derivative vanishes at both ends.
///
/// Source: L. H. C. Tippett, Biometrika 17 (1925) 364; the constant d2 of control charts (from memory).
pub fn mean_range(count: usize) -> f64 {
    const STEP: f64 = 0.125;
    let count = count.min(i32::MAX as usize) as i32;
    let cell = |at: i32| {
        let below = libm::erfc((f64::from(at) + 0.5) * STEP * FRAC_1_SQRT_2) / 2.0;
        1.0 - below.powi(count) - (1.0 - below).powi(count)
    };
    2.0 * STEP * (0..72).map(cell).sum::<f64>()
}

#[cfg(test)]
mod tests {
    use super::mean_range;

    /// d2 as the tables of control charts print it, from memory.
    #[test]
    fn mean_range_is_that_of_the_control_chart_tables() {
        for (count, printed) in [(1, 0.0), (2, 1.128), (5, 2.326), (10, 3.078), (25, 3.931), (100, 5.015)] {
            assert!((mean_range(count) - printed).abs() < 6e-4, "{count}: {}", mean_range(count));
        }
    }
}
