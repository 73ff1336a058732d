//! Invented bores for the bore tests. The seeded ones are made the same way by `tests/reference/bore.py`.

use std::f64::consts::TAU;

use steady_core::measure::bore::circle::Point;
use steady_core::model::bore::{BoreInstrument, BoreKind, BoreLevel, BoreReading, BoreReadings};

/// A linear congruential generator: small, seeded, and the same in the reference script.
pub struct Chance(u64);

impl Chance {
    pub fn new(seed: u64) -> Self {
        Self(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15).wrapping_add(1))
    }

    /// From 0 up to 1.
    pub fn unit(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// Normal, mean 0 and standard deviation 1, after Box and Muller.
    pub fn normal(&mut self) -> f64 {
        let (a, b) = (1.0 - self.unit(), self.unit());
        (-2.0 * a.ln()).sqrt() * (TAU * b).cos()
    }
}

/// The reference script's `points_of`. Every tenth seed is far from any circle.
pub fn points_of(seed: u64) -> Vec<Point> {
    let mut chance = Chance::new(seed);
    let count = 5 + (chance.unit() * 36.0) as usize;
    let (x, y) = (2.0 * chance.unit() - 1.0, 2.0 * chance.unit() - 1.0);
    let radius = 20.0 + 30.0 * chance.unit();
    let (lobes, amplitude) = (2.0 + (chance.unit() * 6.0).floor(), 0.02 * chance.unit());
    let phase = TAU * chance.unit();
    let scatter = if seed.is_multiple_of(10) { 0.4 * radius } else { 0.02 * chance.unit() };
    let mut points = Vec::new();
    for at in 0..count {
        let angle = TAU * (at as f64 + 0.8 * (chance.unit() - 0.5)) / count as f64;
        let reach = radius + amplitude * (lobes * angle + phase).cos() + scatter * (chance.unit() - 0.5);
        points.push([x + reach * angle.cos(), y + reach * angle.sin()]);
    }
    points
}

/// The reference script's `even_profile`: radii at equal angles.
pub fn even_profile(seed: u64, count: usize) -> Vec<f64> {
    let mut chance = Chance::new(seed + 5_000_011);
    (0..count).map(|_| 36.0 + 0.02 * (chance.unit() - 0.5)).collect()
}

/// Equal angles from 0, in rad.
pub fn even_angles(count: usize) -> Vec<f64> {
    (0..count).map(|at| TAU * at as f64 / count as f64).collect()
}

pub const INSTRUMENT: BoreInstrument =
    BoreInstrument { resolution_mm: 0.001, mpe_mm: 0.002, repeatability_mm: 0.0005 };

/// Readings of one kind, level by level.
pub fn readings(kind: BoreKind, levels: Vec<(f64, Vec<BoreReading>)>) -> BoreReadings {
    let level = |(depth_mm, readings)| BoreLevel { depth_mm, readings };
    BoreReadings {
        kind,
        instrument: INSTRUMENT,
        zero_diameter_mm: (kind == BoreKind::Dial).then_some(72.0),
        zero_was_set: kind == BoreKind::Dial,
        clockwise: false,
        wall_mm: None,
        wall_error_mm: None,
        seat_width_mm: None,
        levels: levels.into_iter().map(level).collect(),
    }
}

/// Coordinates at one depth.
pub fn coordinates(points: &[Point]) -> Vec<BoreReading> {
    points.iter().map(|[x, y]| BoreReading::Point { x_mm: *x, y_mm: *y }).collect()
}

/// Diameters of a profile of radii r(a), by contacts that see `fold` directions: twice their mean.
pub fn diameters(count: usize, fold: usize, radius: impl Fn(f64) -> f64) -> Vec<BoreReading> {
    let turn = TAU / fold as f64;
    let diameter = |at: usize| {
        let angle = turn * at as f64 / count as f64;
        let sum: f64 = (0..fold).map(|contact| radius(angle + turn * contact as f64)).sum();
        BoreReading::At { angle_deg: angle.to_degrees(), value_mm: 2.0 * sum / fold as f64 }
    };
    (0..count).map(diameter).collect()
}

/// A dial's readings of a profile about a radius of 36 mm.
pub fn dial(count: usize, radius: impl Fn(f64) -> f64) -> Vec<BoreReading> {
    let reading =
        |angle: f64| BoreReading::At { angle_deg: angle.to_degrees(), value_mm: radius(angle) - 36.0 };
    even_angles(count).into_iter().map(reading).collect()
}
