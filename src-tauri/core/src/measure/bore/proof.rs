//! Shows that a minimum zone is the narrowest anywhere in the points' box, or finds a narrower one.
//!
//! Near the zone's centre: an outer contact's distance is at least its tangent, an inner contact's at most its
//! tangent plus t^2 / (2 (r - t)) at a distance t, because distance is convex and its curvature is at most
//! 1 / (r - t). The tangents of the contacts rise by at least `slope` in every direction, so nothing is
//! narrower within t = 2 s r / (1 + 2 s), with s the slope and r the inner radius.
//!
//! Far from it ([`horizon`]): with a point in every octant, a centre moved by t has a point within 45 degrees
//! ahead, which it comes nearer to, and one within 45 degrees behind, which it leaves. With c = cos 45, inner
//! radius r, outer radius R and w = R - r, the squares of the greatest and smallest distance then differ by at
//! least min(4 t c r, (r + R) (2 t c - w)), and the distances add up to at most r + R + 2 t. Their quotient
//! grows with t, and reaches w at the greater of w (r + R) / (4 c r - 2 w) and w (r + R) / (c (r + R) - w).
//!
//! Between: the box is cut in four again and again; a part is done with when the width at its middle, less what
//! it can lose on the way to the part's corners, is not smaller. Most bores leave nothing between. The bounds
//! are our own derivation from the convexity of distance and the triangle's inequality.

use std::f64::consts::FRAC_1_SQRT_2;

use super::circle::{Point, direction, distance, toward};
use super::zone::Zone;

/// Whether a zone is the narrowest there is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Narrowest {
    /// No centre in the box is better by more than this, in mm.
    Proven(f64),
    /// A ring about this centre is narrower.
    Narrower(Point),
}

/// A width smaller by less than this, in mm, is the same width: a picometre is far below any reading.
const SAME: f64 = 1e-9;
/// Parts looked at before the search gives up and says how far it got.
const MOST_PARTS: usize = 20_000;

/// Contacts of one circle that the slope is taken from.
const MOST_TOUCHING: usize = 8;

#[derive(Clone, Copy)]
struct Part {
    middle: Point,
    half: f64,
}

/// Searches the box of the points.
pub fn search(points: &[Point], zone: &Zone) -> Narrowest {
    let width = zone.width();
    if width <= SAME {
        return Narrowest::Proven(width.max(0.0));
    }
    let slope = slope(points, zone).max(0.0);
    let safe = 2.0 * slope * zone.inner / (1.0 + 2.0 * slope);
    let mut parts = vec![first_part(points, zone)];
    let (mut looked_at, mut gap) = (0, SAME);
    while let Some(part) = parts.pop() {
        if distance(part.middle, zone.centre) + part.half * std::f64::consts::SQRT_2 <= safe {
            continue;
        }
        let (here, least) = width_in(points, part);
        if here < width - SAME {
            return Narrowest::Narrower(part.middle);
        }
        looked_at += 1;
        if least >= width - SAME {
            continue;
        }
        if looked_at >= MOST_PARTS {
            gap = gap.max(width - least.max(0.0));
        } else {
            parts.extend(quarters(part));
        }
    }
    Narrowest::Proven(gap)
}

/// The part outside which nothing is narrower, or the whole box.
fn first_part(points: &[Point], zone: &Zone) -> Part {
    let whole = whole(points);
    match horizon(points, zone) {
        Some(half) if half < whole.half => Part { middle: zone.centre, half },
        _ => whole,
    }
}

/// How far from the zone's centre no centre is narrower any more. None where an octant has no point, or the
/// ring is too wide to say.
fn horizon(points: &[Point], zone: &Zone) -> Option<f64> {
    let octants = points.iter().fold(0_u8, |seen, point| seen | (1 << octant(zone.centre, *point)));
    let (both, width) = (zone.inner + zone.outer, zone.width());
    let rises = (4.0 * FRAC_1_SQRT_2 * zone.inner - 2.0 * width).min(FRAC_1_SQRT_2 * both - width);
    (octants == u8::MAX && rises > 0.0).then(|| width * both / rises)
}

/// Which eighth of the turn about the centre a point lies in.
fn octant(centre: Point, point: Point) -> u8 {
    let (x, y) = (point[0] - centre[0], point[1] - centre[1]);
    u8::from(x < 0.0) | (u8::from(y < 0.0) << 1) | (u8::from(x.abs() < y.abs()) << 2)
}

fn whole(points: &[Point]) -> Part {
    let (mut low, mut high) = ([f64::INFINITY; 2], [f64::NEG_INFINITY; 2]);
    for point in points {
        low = [low[0].min(point[0]), low[1].min(point[1])];
        high = [high[0].max(point[0]), high[1].max(point[1])];
    }
    let half = (high[0] - low[0]).max(high[1] - low[1]) / 2.0;
    Part { middle: [(low[0] + high[0]) / 2.0, (low[1] + high[1]) / 2.0], half }
}

fn quarters(part: Part) -> [Part; 4] {
    let half = part.half / 2.0;
    [(-half, -half), (half, -half), (-half, half), (half, half)]
        .map(|(x, y)| Part { middle: [part.middle[0] + x, part.middle[1] + y], half })
}

/// The width at a part's middle, and a bound that it nowhere in the part goes below.
fn width_in(points: &[Point], part: Part) -> (f64, f64) {
    let (mut near, mut far) = (None, None);
    let (mut least, mut most) = (f64::INFINITY, -1.0);
    for point in points {
        let (x, y) = (point[0] - part.middle[0], point[1] - part.middle[1]);
        let squared = x * x + y * y;
        if squared < least {
            (least, near) = (squared, Some(*point));
        }
        if squared > most {
            (most, far) = (squared, Some(*point));
        }
    }
    let (Some(near), Some(far)) = (near, far) else { return (0.0, 0.0) };
    let (least, here) = (least.sqrt(), most.sqrt() - least.sqrt());
    let reach = part.half * std::f64::consts::SQRT_2;
    let plain = here - 2.0 * reach;
    if least <= reach {
        return (here, plain);
    }
    let (out, inward) = (direction(part.middle, far), direction(part.middle, near));
    let tilt = (out[0] - inward[0]).abs() + (out[1] - inward[1]).abs();
    (here, plain.max(here - part.half * tilt - reach * reach / (2.0 * (least - reach))))
}

/// How fast the width rises at least on leaving the zone's centre: the distance from the origin to the edge
/// of the hull of all differences between an inner and an outer contact's direction.
fn slope(points: &[Point], zone: &Zone) -> f64 {
    let (mut outer, mut inner) = (Vec::new(), Vec::new());
    for point in points {
        let far = distance(zone.centre, *point);
        for (touching, radius) in [(&mut outer, zone.outer), (&mut inner, zone.inner)] {
            if (far - radius).abs() <= SAME / 4.0 && touching.len() < MOST_TOUCHING {
                touching.push(toward(zone.centre, *point, far));
            }
        }
    }
    let rise = |out: &[f64; 2], inward: &[f64; 2]| [inward[0] - out[0], inward[1] - out[1]];
    let rises: Vec<[f64; 2]> =
        outer.iter().flat_map(|out| inner.iter().map(move |inward| rise(out, inward))).collect();
    let mut slope = f64::INFINITY;
    for (at, a) in rises.iter().enumerate() {
        for b in rises.iter().skip(at + 1) {
            let edge = [b[0] - a[0], b[1] - a[1]];
            let length = edge[0].hypot(edge[1]);
            if length > 1e-12 {
                let across = [edge[1] / length, -edge[0] / length];
                for way in [across, [-across[0], -across[1]]] {
                    let rise = rises.iter().map(|v| v[0] * way[0] + v[1] * way[1]).fold(-2.0, f64::max);
                    slope = slope.min(rise);
                }
            }
        }
    }
    if slope.is_finite() { slope } else { 0.0 }
}
