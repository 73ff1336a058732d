//! Lobes: a sum of sines of whole numbers of waves round the bore, fitted by least squares, so that angles
//! need not be equal.
//!
//! With equal angles this is the discrete Fourier transform. A wave number is fitted only while there are two
//! readings for it and the angles hold it well: its variance may be at most 25 times that of equal angles.

use super::solve::{dot, inverse};

/// A profile as a constant and a sum of waves, fitted by least squares.
#[derive(Debug, Clone, PartialEq)]
pub struct Waves {
    /// Constant, then cosine and sine of each wave number, in order.
    pub terms: Vec<f64>,
    /// Wave number of the first pair; the others are its multiples. 1, or 2 and 3 for gauges that see no others.
    pub fold: usize,
    /// Inverse normal matrix: times the variance of one reading it is the terms' covariance.
    pub spread: Vec<Vec<f64>>,
}

/// One wave of a profile.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wave {
    /// How often it goes up and down in one turn.
    pub number: usize,
    /// Half of peak to valley, in the unit of the readings.
    pub amplitude: f64,
    /// Variance of the amplitude for readings of variance 1.
    pub variance: f64,
    /// Direction of its first crest, rad from 0 to one wave's length.
    pub crest: f64,
}

/// Most pairs of cosine and sine that are fitted.
pub const MOST: usize = 15;
const WORST_VARIANCE: f64 = 25.0;

/// Fits as many waves as the angles allow, up to `most` pairs. None for no readings.
///
/// `angles` are in rad; `values` are in the same order.
pub fn fit(angles: &[f64], values: &[f64], fold: usize, most: usize) -> Option<Waves> {
    let room = (values.len().checked_sub(1)? / 2).min(most);
    (0..=room).rev().find_map(|pairs| fit_pairs(angles, values, fold, pairs))
}

fn fit_pairs(angles: &[f64], values: &[f64], fold: usize, pairs: usize) -> Option<Waves> {
    let size = 2 * pairs + 1;
    let mut rows = vec![vec![0.0; size]; size];
    let mut right = vec![0.0; size];
    for (angle, value) in angles.iter().zip(values) {
        let terms = terms_at(*angle, fold, pairs);
        for ((row, right), term) in rows.iter_mut().zip(&mut right).zip(&terms) {
            for (cell, other) in row.iter_mut().zip(&terms) {
                *cell += term * other;
            }
            *right += term * value;
        }
    }
    let spread = inverse(&rows)?;
    let allowed = WORST_VARIANCE * 2.0 / values.len() as f64;
    let held =
        spread.iter().enumerate().all(|(at, row)| row.get(at).is_some_and(|v| *v > 0.0 && *v <= allowed));
    if pairs > 0 && !held {
        return None;
    }
    let terms = spread.iter().map(|row| dot(row, &right)).collect();
    Some(Waves { terms, fold, spread })
}

/// The terms at an angle: 1, then cosine and sine of each wave number.
pub fn terms_at(angle: f64, fold: usize, pairs: usize) -> Vec<f64> {
    let (sin, cos) = (fold as f64 * angle).sin_cos();
    let mut wave = [1.0, 0.0];
    let mut terms = Vec::with_capacity(2 * pairs + 1);
    terms.push(1.0);
    for _ in 0..pairs {
        wave = [wave[0] * cos - wave[1] * sin, wave[1] * cos + wave[0] * sin];
        terms.extend(wave);
    }
    terms
}

impl Waves {
    /// How many pairs of cosine and sine the angles allowed.
    pub fn pairs(&self) -> usize {
        self.terms.len() / 2
    }

    /// The fitted value at an angle.
    pub fn at(&self, angle: f64) -> f64 {
        dot(&self.terms, &terms_at(angle, self.fold, self.pairs()))
    }

    /// Every wave that was fitted, the longest first.
    pub fn waves(&self) -> Vec<Wave> {
        (1..=self.pairs()).filter_map(|pair| self.wave(pair)).collect()
    }

    /// The wave with this number, if it was fitted.
    pub fn numbered(&self, number: usize) -> Option<Wave> {
        number.is_multiple_of(self.fold).then(|| self.wave(number / self.fold)).flatten()
    }

    fn wave(&self, pair: usize) -> Option<Wave> {
        let (cos, sin) = (*self.terms.get(2 * pair - 1)?, *self.terms.get(2 * pair)?);
        let amplitude = cos.hypot(sin);
        // Along the wave; for no amplitude any direction will do.
        let (c, s) = if amplitude > 0.0 { (cos / amplitude, sin / amplitude) } else { (1.0, 0.0) };
        let cell = |row: usize, column: usize| self.spread.get(row)?.get(column).copied();
        let (k, l) = (2 * pair - 1, 2 * pair);
        let variance = c * c * cell(k, k)? + s * s * cell(l, l)? + 2.0 * c * s * cell(k, l)?;
        let number = pair * self.fold;
        let crest = sin.atan2(cos).rem_euclid(std::f64::consts::TAU) / number as f64;
        Some(Wave { number, amplitude, variance, crest })
    }
}
