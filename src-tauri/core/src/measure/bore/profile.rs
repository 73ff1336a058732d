//! Readings turned into points of one cross-section, as far as the method knows where they are.
//!
//! A two-point diameter D at an angle stands for two points D / 2 from the gauge's own middle; one by three
//! points for three. Where the axis lies such a gauge does not know.

use crate::model::bore::{BoreKind, BoreLevel, BoreReading, BoreReadings};

use super::circle::{Point, direction, distance};

/// The points of the wall at one depth.
#[derive(Debug, Clone, PartialEq)]
pub struct Profile {
    /// Depth of the section from the face.
    pub depth_mm: f64,
    /// How often one reading shows round the bore: 1, 2 or 3. Waves of other multiples are not seen.
    pub fold: usize,
    /// The points, in order of the readings; those drawn from them behind each.
    pub points: Vec<ProfilePoint>,
}

/// A point of the wall, and the reading that puts it there.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ProfilePoint {
    /// Where it is; about the gauge's own middle where the axis is not seen.
    pub at: Point,
    /// Place of that reading in its level, from 0.
    pub reading: usize,
    /// It stands for the reading but was not touched at this angle by the first contact.
    pub mirrored: bool,
}

/// How often one reading shows round the bore.
pub fn fold(kind: BoreKind) -> usize {
    match kind {
        BoreKind::TwoPoint => 2,
        BoreKind::ThreePoint => 3,
        BoreKind::Dial | BoreKind::Coordinates => 1,
    }
}

/// What one unit of a reading is on the radius.
pub fn radius_share(kind: BoreKind) -> f64 {
    match kind {
        BoreKind::TwoPoint | BoreKind::ThreePoint => 0.5,
        BoreKind::Dial | BoreKind::Coordinates => 1.0,
    }
}

/// Turns the readings of one depth into points: as many for each reading as its contacts stand for.
pub fn profile(readings: &BoreReadings, level: &BoreLevel) -> Profile {
    let fold = fold(readings.kind);
    let zero = readings.zero_diameter_mm.unwrap_or_default() / 2.0;
    let mut points = Vec::with_capacity(level.readings.len() * fold);
    for (reading, it) in level.readings.iter().enumerate() {
        match it {
            BoreReading::Point { x_mm, y_mm } => {
                points.push(ProfilePoint { at: [*x_mm, *y_mm], reading, mirrored: false });
            }
            BoreReading::At { angle_deg, value_mm } => {
                let radius = if readings.kind == BoreKind::Dial { zero + value_mm } else { value_mm / 2.0 };
                for turn in 0..fold {
                    let angle = (angle_deg + 360.0 * turn as f64 / fold as f64).to_radians();
                    let at = [radius * angle.cos(), radius * angle.sin()];
                    points.push(ProfilePoint { at, reading, mirrored: turn > 0 });
                }
            }
        }
    }
    Profile { depth_mm: level.depth_mm, fold, points }
}

/// The points of a level of coordinates.
pub fn coordinates(level: &BoreLevel) -> Vec<Point> {
    let points = level.readings.iter().filter_map(|reading| match reading {
        BoreReading::Point { x_mm, y_mm } => Some([*x_mm, *y_mm]),
        BoreReading::At { .. } => None,
    });
    points.collect()
}

impl Profile {
    /// The method sees where the centre is.
    pub fn sees_centre(&self) -> bool {
        self.fold == 1
    }

    /// The points without what is known beside them, mm.
    pub fn bare(&self) -> Vec<Point> {
        self.points.iter().map(|point| point.at).collect()
    }

    /// Direction (rad) and distance from `centre` of what was really read, in order of the readings.
    pub fn polar(&self, centre: Point) -> (Vec<f64>, Vec<f64>) {
        self.points
            .iter()
            .filter(|point| !point.mirrored)
            .map(|point| (angle_from(centre, point.at), distance(centre, point.at)))
            .unzip()
    }
}

/// Direction of a point from a centre, rad from 0 to a whole turn.
pub fn angle_from(centre: Point, point: Point) -> f64 {
    let [cos, sin] = direction(centre, point);
    sin.atan2(cos).rem_euclid(std::f64::consts::TAU)
}
