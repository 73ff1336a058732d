//! The polar plot: where each point is drawn, with the deviation magnified.

use crate::model::bore::{PlotPoint, PolarPlot};

use super::circle::{Point, direction, distance};
use super::coverage::is_gap;
use super::profile::{Profile, angle_from};

/// The greatest deviation is drawn at most this part of the radius.
const ROOM: f64 = 0.25;
/// A perfectly round bore is not magnified for ever.
const MOST: f64 = 100_000.0;
/// Directions in which the zone's circles are drawn.
const DRAWN: usize = 120;

/// The circle that is drawn as the unit circle, and the zone's two radii about their own centre.
#[derive(Debug, Clone, Copy)]
pub struct Circles {
    /// Centre of the unit circle.
    pub centre: Point,
    /// Its radius in mm.
    pub radius: f64,
    /// Common centre of the zone's circles.
    pub zone_centre: Point,
    /// Their radii, outer and inner.
    pub zone: [f64; 2],
}

/// Draws a cross-section; `flagged` goes by reading. Angles counted clockwise are drawn clockwise.
pub fn plot(profile: &Profile, circles: &Circles, flagged: &[bool], clockwise: bool) -> PolarPlot {
    let deviation = |point: Point| distance(circles.centre, point) - circles.radius;
    let most = profile.points.iter().map(|point| deviation(point.at).abs()).fold(0.0, f64::max);
    let magnification = round_down((ROOM * circles.radius / most).min(MOST));
    let draw = |[cos, sin]: [f64; 2], deviation: f64| {
        let radius = 1.0 + magnification * deviation / circles.radius;
        [radius * cos, if clockwise { -radius * sin } else { radius * sin }]
    };
    let mut points: Vec<PlotPoint> = profile
        .points
        .iter()
        .map(|point| PlotPoint {
            angle_deg: angle_from(circles.centre, point.at).to_degrees(),
            deviation_um: deviation(point.at) * 1000.0,
            at: draw(direction(circles.centre, point.at), deviation(point.at)),
            flagged: flagged.get(point.reading).copied().unwrap_or_default(),
            mirrored: point.mirrored,
            gap_follows: false,
        })
        .collect();
    points.sort_by(|a, b| a.angle_deg.total_cmp(&b.angle_deg));
    let next: Vec<f64> = points.iter().map(|point| point.angle_deg).collect();
    let next = next.iter().skip(1).copied().chain(next.first().map(|first| first + 360.0));
    for (point, next) in points.iter_mut().zip(next) {
        point.gap_follows = is_gap(next - point.angle_deg);
    }
    if points.iter().any(|point| point.gap_follows) {
        return PolarPlot { magnification, points, zone_outer: Vec::new(), zone_inner: Vec::new() };
    }
    let ring = |radius: f64| {
        let toward = (0..DRAWN).map(|at| (std::f64::consts::TAU * at as f64 / DRAWN as f64).sin_cos());
        let at = |(sin, cos): (f64, f64)| {
            let off =
                [circles.zone_centre[0] - circles.centre[0], circles.zone_centre[1] - circles.centre[1]];
            let (along, across) = (off[0] * cos + off[1] * sin, off[0] * sin - off[1] * cos);
            let reach = along + (radius * radius - across * across).max(0.0).sqrt();
            draw([cos, sin], reach - circles.radius)
        };
        toward.map(at).collect()
    };
    let [outer, inner] = circles.zone;
    PolarPlot { magnification, points, zone_outer: ring(outer), zone_inner: ring(inner) }
}

/// The next lower 1, 2 or 5 times a power of ten, so that the scale can be read off.
fn round_down(value: f64) -> f64 {
    let power = 10.0_f64.powf(value.log10().floor());
    let digit = value / power;
    let round = [5.0, 2.0].into_iter().find(|round| digit >= *round).unwrap_or(1.0);
    round * power
}

#[cfg(test)]
mod tests {
    use super::round_down;

    #[test]
    fn magnification_is_a_round_number() {
        for (value, round) in [(1.0, 1.0), (9.99, 5.0), (250.0, 200.0), (4999.0, 2000.0), (0.3, 0.2)] {
            assert!((round_down(value) - round).abs() < 1e-9 * round, "{value}");
        }
    }
}
