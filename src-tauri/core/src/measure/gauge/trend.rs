//! A straight line through the movements of several visits, weighted by their uncertainty.
//!
//! The slope's uncertainty is what the visits' own uncertainties give, made larger by the Birge ratio where
//! the points scatter more about the line than those uncertainties explain; two-sided 95 %, normal.
//! What is common to all visits, such as the same gauge reading long, cancels in a slope and is counted
//! all the same: the interval is wide rather than narrow.

use super::student;
use crate::model::gauge::{Trend, TrendPoint, TrendShows};

const DAYS_A_YEAR: f64 = 365.25;

/// A straight line fitted with weights of one over the variance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FittedLine {
    /// Value at x = 0.
    pub intercept: f64,
    /// Growth for each unit of x.
    pub slope: f64,
    /// Standard uncertainty of the slope from the points' own uncertainties.
    pub slope_stated: f64,
    /// Standard uncertainty of the slope from the scatter about the line; `None` for two points.
    pub slope_scatter: Option<f64>,
}

/// Fits points (x, y, standard uncertainty of y); `None` with fewer than two different x.
pub fn fit(points: &[[f64; 3]]) -> Option<FittedLine> {
    let weight = |point: &[f64; 3]| point[2].powi(-2);
    let sum =
        |of: &dyn Fn(&[f64; 3]) -> f64| points.iter().map(|point| weight(point) * of(point)).sum::<f64>();
    let total = sum(&|_| 1.0);
    let (mean_x, mean_y) = (sum(&|point| point[0]) / total, sum(&|point| point[1]) / total);
    let spread = sum(&|point| (point[0] - mean_x).powi(2));
    if spread.is_nan() || spread <= 0.0 {
        return None;
    }
    let slope = sum(&|point| (point[0] - mean_x) * (point[1] - mean_y)) / spread;
    let intercept = mean_y - slope * mean_x;
    let chi_squared = sum(&|point| (point[1] - intercept - slope * point[0]).powi(2));
    let dof = points.len() as f64 - 2.0;
    let slope_stated = spread.sqrt().recip();
    let slope_scatter = (dof > 0.0).then(|| (chi_squared / dof / spread).sqrt());
    Some(FittedLine { intercept, slope, slope_stated, slope_scatter })
}

/// The trend of points in order of time; `None` with fewer than two different days.
pub fn trend(points: Vec<TrendPoint>) -> Option<Trend> {
    let rows: Vec<[f64; 3]> =
        points.iter().map(|point| [point.day, point.movement_mm, point.standard_mm]).collect();
    let line = fit(&rows)?;
    let expanded = expanded_slope(&line);
    let shows = if line.slope > expanded {
        TrendShows::Growing
    } else if line.slope < -expanded {
        TrendShows::Shrinking
    } else {
        TrendShows::NoChangeShown
    };
    let at = |day: f64| line.intercept + line.slope * day;
    let line_mm =
        [points.first().map_or(0.0, |point| at(point.day)), points.last().map_or(0.0, |point| at(point.day))];
    let intervals_mm = points.iter().map(interval).collect();
    Some(Trend {
        points,
        intervals_mm,
        slope_mm_per_year: line.slope * DAYS_A_YEAR,
        expanded_mm_per_year: expanded * DAYS_A_YEAR,
        line_mm,
        shows,
    })
}

/// Two-sided 95 %, normal: how many readings an earlier visit took is not kept.
fn interval(point: &TrendPoint) -> [f64; 2] {
    let expanded = point.standard_mm * student::factor_95(None);
    [point.movement_mm - expanded, point.movement_mm + expanded]
}

fn expanded_slope(line: &FittedLine) -> f64 {
    line.slope_stated.max(line.slope_scatter.unwrap_or_default()) * student::factor_95(None)
}
