//! The uncertainty budget of a mean movement, line by line (JCGM 100:2008).
//!
//! Model: movement at the bearing = (mean of the readings + resolution + permissible error) x
//! (1 + alignment) x distance of the bearing from the pivot / distance of the gauge from the pivot.
//!
//! Expanded uncertainties are stated for one digit, a second is a guard: where a rectangular part dominates, this formula
//! and a Monte Carlo run differ in the second digit, and the formula is the wider one.

use super::combine::Contribution;
use crate::model::gauge::{BudgetSource, Evaluation, GaugeBudgetLine, Shape};

/// A gauge at work: what its budget depends on. Lengths in millimetres, at the gauge.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AtWork {
    /// Mean of the readings.
    pub mean: f64,
    /// Standard deviation of the readings; `None` for one reading.
    pub deviation: Option<f64>,
    /// Number of readings.
    pub readings: u32,
    /// Smallest step that the gauge shows.
    pub resolution: f64,
    /// How far it may read off, either way.
    pub mpe: f64,
    /// How far the gauge may stand out of line with the movement, degrees.
    pub tilt_deg: f64,
    /// Distances from the pivot; `None` when the gauge is at the bearing.
    pub arms: Option<Arms>,
}

/// Distances from the pivot, millimetres, all above zero.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Arms {
    /// From the pivot to where the gauge touches.
    pub gauge: f64,
    /// From the pivot to the bearing.
    pub bearing: f64,
    /// How far each may be off, either way.
    pub error: f64,
}

impl AtWork {
    /// Movement at the bearing for each unit of movement at the gauge.
    pub fn ratio(&self) -> f64 {
        self.arms.map_or(1.0, |arms| arms.bearing / arms.gauge)
    }

    /// Mean movement at the bearing.
    pub fn movement(&self) -> f64 {
        self.mean * self.ratio()
    }
}

/// The budget, in the order of the model.
pub fn lines(at: &AtWork) -> Vec<GaugeBudgetLine> {
    let mut lines = Vec::new();
    let ratio = at.ratio();
    if let Some(deviation) = at.deviation {
        let mut line = type_b(BudgetSource::Scatter, Shape::Student, deviation, ratio);
        line.evaluation = Evaluation::A;
        line.standard /= f64::from(at.readings).sqrt();
        line.dof = Some(f64::from(at.readings.saturating_sub(1)));
        lines.push(line);
    }
    // A movement is the difference of two indications, each rounded to a step: r / sqrt(12), twice.
    lines.push(type_b(BudgetSource::Resolution, Shape::Triangular, at.resolution, ratio));
    lines.push(type_b(BudgetSource::Mpe, Shape::Rectangular, at.mpe, ratio));
    let tilt = 1.0 - at.tilt_deg.to_radians().cos();
    lines.push(type_b(BudgetSource::Alignment, Shape::Rectangular, tilt, at.movement()));
    if let Some(arms) = at.arms {
        let by_gauge = -at.movement() / arms.gauge;
        lines.push(type_b(BudgetSource::GaugePlace, Shape::Rectangular, arms.error, by_gauge));
        let by_bearing = at.mean / arms.gauge;
        lines.push(type_b(BudgetSource::BearingPlace, Shape::Rectangular, arms.error, by_bearing));
    }
    finish(lines)
}

/// A line from the half width of its distribution; for Student's t from the deviation itself.
fn type_b(source: BudgetSource, shape: Shape, half_width: f64, sensitivity: f64) -> GaugeBudgetLine {
    let standard = match shape {
        Shape::Student => half_width,
        Shape::Rectangular => half_width / 3.0_f64.sqrt(),
        Shape::Triangular => half_width / 6.0_f64.sqrt(),
    };
    GaugeBudgetLine {
        source,
        evaluation: Evaluation::B,
        shape,
        standard,
        sensitivity,
        contribution_mm: 0.0,
        dof: None,
        share: 0.0,
    }
}

fn finish(mut lines: Vec<GaugeBudgetLine>) -> Vec<GaugeBudgetLine> {
    for line in &mut lines {
        line.contribution_mm = (line.standard * line.sensitivity).abs();
    }
    let variance: f64 = lines.iter().map(|line| line.contribution_mm.powi(2)).sum();
    for line in &mut lines {
        line.share = line.contribution_mm.powi(2) / variance;
    }
    lines
}

/// The lines as contributions to combine.
pub fn contributions(lines: &[GaugeBudgetLine]) -> Vec<Contribution> {
    lines.iter().map(|line| Contribution { size: line.contribution_mm, dof: line.dof }).collect()
}
