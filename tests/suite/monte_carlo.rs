//! The uncertainty of every shipped gauge measurement beside a Monte Carlo run of the same model
//! (JCGM 101:2008, GUM supplement 1), seeded.
//!
//! An expanded uncertainty is stated for its first significant digit; the second is printed as a guard.
//! So the tolerance is half a unit of the first digit (clause 8.1, one significant digit). With
//! five readings the formula is at most one part in twenty narrower; with three it can be a fifth narrower,
//! which is why a first measurement is asked for five.

use steady_core::app::gauge::gauge;
use steady_core::model::gauge::{BudgetSource, GaugeBudgetLine, GaugeResult};

use crate::gauge::demo_files;

const TRIALS: usize = 200_000;

/// xorshift64*, by Vigna (2016), from memory; good enough for a histogram.
struct Chance(u64);

impl Chance {
    fn even(&mut self) -> f64 {
        self.0 ^= self.0 >> 12;
        self.0 ^= self.0 << 25;
        self.0 ^= self.0 >> 27;
        (self.0.wrapping_mul(0x2545_F491_4F6C_DD1D) >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// Even between -1 and 1.
    fn about(&mut self) -> f64 {
        2.0 * self.even() - 1.0
    }

    fn normal(&mut self) -> f64 {
        let radius = (-2.0 * (1.0 - self.even()).ln()).sqrt();
        radius * (std::f64::consts::TAU * self.even()).cos()
    }

    /// Student's t with a whole number of degrees of freedom.
    fn student(&mut self, dof: u32) -> f64 {
        let squares: f64 = (0..dof).map(|_| self.normal().powi(2)).sum();
        self.normal() / (squares / f64::from(dof)).sqrt()
    }
}

fn line(result: &GaugeResult, source: BudgetSource) -> Option<&GaugeBudgetLine> {
    result.budget.iter().find(|line| line.source == source)
}

/// Movements at the bearing, drawn through the model itself, not through its sensitivities.
fn draw(result: &GaugeResult, chance: &mut Chance) -> Vec<f64> {
    let standard = |source| line(result, source).map_or(0.0, |line| line.standard);
    let at_gauge = result.mean_mm / result.ratio;
    let dof = line(result, BudgetSource::Scatter).unwrap().dof.unwrap() as u32;
    let half = |source| standard(source) * 3.0_f64.sqrt();
    // Both ends of a movement are rounded: two even errors of half a step.
    let half_step = standard(BudgetSource::Resolution) * 6.0_f64.sqrt() / 2.0;
    let place = half(BudgetSource::GaugePlace);
    // Lengths enter by their ratio alone, so the longer one may be read back from the sensitivity.
    let gauge_arm =
        line(result, BudgetSource::GaugePlace).map_or(1.0, |line| result.mean_mm / line.sensitivity.abs());
    let bearing_arm = gauge_arm * result.ratio;
    (0..TRIALS)
        .map(|_| {
            let reading = at_gauge
                + standard(BudgetSource::Scatter) * chance.student(dof)
                + half_step * (chance.about() + chance.about())
                + half(BudgetSource::Mpe) * chance.about();
            let bearing = bearing_arm + place * chance.about();
            let gauge = gauge_arm + place * chance.about();
            reading * (1.0 + half(BudgetSource::Alignment) * chance.about()) * bearing / gauge
        })
        .collect()
}

#[test]
fn every_shipped_budget_agrees_with_monte_carlo_in_its_stated_digit() {
    let mut compared = 0;
    for (name, text) in demo_files() {
        let result = gauge(&text, "en").unwrap().result;
        let ours = result.uncertainty.unwrap();
        let mut drawn = draw(&result, &mut Chance(0x5EED_0001));
        drawn.sort_by(f64::total_cmp);
        let mean = drawn.iter().sum::<f64>() / drawn.len() as f64;
        let (low, high) = (drawn[TRIALS / 40], drawn[TRIALS - TRIALS / 40]);
        let tolerance = 0.5 * 10_f64.powf(ours.expanded_mm.log10().floor());
        for (what, formula, monte_carlo) in
            [("mean", result.mean_mm, mean), ("low", ours.low_mm, low), ("high", ours.high_mm, high)]
        {
            let off = (formula - monte_carlo).abs();
            assert!(off <= tolerance, "{name}: {what} {formula} against {monte_carlo}, {tolerance} allowed");
            compared += 1;
        }
        // Never narrower by more than one part in twenty.
        assert!(ours.expanded_mm > 0.95 * (high - low) / 2.0, "{name}");
    }
    assert_eq!(compared, 15);
}
