//! The smallest circle that holds every point: what a cutter has to reach to touch everywhere.
//!
//! Method: points are taken in one by one; one that lies outside must lie on the new circle. In a shuffled
//! order this takes a time in proportion to the number of points: E. Welzl, New Results and New Trends in
//! Computer Science, LNCS 555 (1991) 359 (from memory). The shuffle is always the same.

use super::circle::{Point, distance};

/// Centre and radius of the smallest circle round the points; none for no points.
pub fn smallest(points: &[Point]) -> Option<(Point, f64)> {
    let points = shuffled(points);
    let mut circle = (*points.first()?, 0.0);
    for (at, point) in points.iter().enumerate() {
        if outside(circle, *point) {
            circle = through_one(points.iter().take(at), *point);
        }
    }
    let radius = points.iter().map(|point| distance(circle.0, *point)).fold(0.0, f64::max);
    Some((circle.0, radius))
}

type Circle = (Point, f64);

fn outside(circle: Circle, point: Point) -> bool {
    distance(circle.0, point) > circle.1 * (1.0 + 1e-14)
}

fn through_one<'p>(before: impl Iterator<Item = &'p Point> + Clone, one: Point) -> Circle {
    let mut circle = (one, 0.0);
    for (at, point) in before.clone().enumerate() {
        if outside(circle, *point) {
            circle = through_two(before.clone().take(at), one, *point);
        }
    }
    circle
}

fn through_two<'p>(before: impl Iterator<Item = &'p Point>, one: Point, two: Point) -> Circle {
    let middle = [f64::midpoint(one[0], two[0]), f64::midpoint(one[1], two[1])];
    let mut circle = (middle, distance(one, two) / 2.0);
    for point in before {
        if outside(circle, *point) {
            circle = through_three(one, two, *point).unwrap_or(circle);
        }
    }
    circle
}

/// The circle through three points; none on a line.
fn through_three(a: Point, b: Point, c: Point) -> Option<Circle> {
    let (bx, by) = (b[0] - a[0], b[1] - a[1]);
    let (cx, cy) = (c[0] - a[0], c[1] - a[1]);
    let twice = 2.0 * (bx * cy - by * cx);
    if twice == 0.0 {
        return None;
    }
    let (bb, cc) = (bx * bx + by * by, cx * cx + cy * cy);
    let (x, y) = ((cy * bb - by * cc) / twice, (bx * cc - cx * bb) / twice);
    let centre = [a[0] + x, a[1] + y];
    Some((centre, distance(centre, a)))
}

fn shuffled(points: &[Point]) -> Vec<Point> {
    let mut points = points.to_vec();
    let mut state: u64 = 0x9E37_79B9_7F4A_7C15;
    for at in (1..points.len()).rev() {
        state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        points.swap(at, ((state >> 33) as usize) % (at + 1));
    }
    points
}
