//! The least-squares circle: the centre and radius with the smallest sum of squared distances of the points
//! from the circle, measured along the radius.
//!
//! Start: the algebraic fit of Kasa, IEEE Trans. Instrum. Meas. 25 (1976) 8 (from memory), a linear system.
//! Then Gauss-Newton steps with Levenberg's damping on the distances themselves, as in Gander, Golub and
//! Strebel, BIT 34 (1994) 558.

use super::solve::{inverse, solve};

/// A point of the plane, in mm.
pub type Point = [f64; 2];

/// A fitted circle.
#[derive(Debug, Clone, PartialEq)]
pub struct Fit {
    /// mm, in the frame of the readings.
    pub centre: Point,
    /// mm.
    pub radius: f64,
    /// Inverse of the normal matrix of (x, y, radius): times the variance of one distance it is their covariance.
    pub spread: Vec<Vec<f64>>,
}

/// More steps than any set with a circle in it needs.
const MOST_STEPS: usize = 1000;

/// Distance between two points.
pub fn distance(a: Point, b: Point) -> f64 {
    // Not `hypot`: bores are no 1e150 mm wide, and its care for that took a third of a minimum zone.
    let (x, y) = (a[0] - b[0], a[1] - b[1]);
    (x * x + y * y).sqrt()
}

/// Direction from a centre to a point whose distance is known: the cosine, the sine.
pub fn toward(centre: Point, point: Point, far: f64) -> [f64; 2] {
    let scale = 1.0 / far;
    if far > 0.0 { [(point[0] - centre[0]) * scale, (point[1] - centre[1]) * scale] } else { [1.0, 0.0] }
}

/// Direction from a centre to a point: the cosine, the sine.
pub fn direction(centre: Point, point: Point) -> [f64; 2] {
    toward(centre, point, distance(centre, point))
}

/// Greatest less smallest distance of the points from a centre.
pub fn spread_about(centre: Point, points: &[Point]) -> f64 {
    let [least, most] = ends_about(centre, points);
    if most > 0.0 { most - least } else { 0.0 }
}

/// Smallest and greatest distance of the points from a centre.
pub fn ends_about(centre: Point, points: &[Point]) -> [f64; 2] {
    let (mut least, mut most) = (f64::INFINITY, 0.0_f64);
    for point in points {
        let (x, y) = (point[0] - centre[0], point[1] - centre[1]);
        let squared = x * x + y * y;
        // Not `min` and `max`: their care for what is no number keeps the loop from running two at a time.
        least = if squared < least { squared } else { least };
        most = if squared > most { squared } else { most };
    }
    [least.sqrt(), most.sqrt()]
}

/// Kasa's algebraic circle: centre and radius. None where the points lie on a line.
pub fn algebraic(points: &[Point]) -> Option<(Point, f64)> {
    let count = points.len() as f64;
    let middle = points.iter().fold([0.0, 0.0], |sum, point| [sum[0] + point[0], sum[1] + point[1]]);
    let middle = [middle[0] / count, middle[1] / count];
    let (mut xx, mut xy, mut yy, mut xz, mut yz, mut zz) = (0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
    for point in points {
        let (x, y) = (point[0] - middle[0], point[1] - middle[1]);
        let z = x * x + y * y;
        (xx, xy, yy) = (xx + x * x, xy + x * y, yy + y * y);
        (xz, yz, zz) = (xz + x * z, yz + y * z, zz + z);
    }
    let [x, y] = solve([[xx, xy], [xy, yy]], [xz / 2.0, yz / 2.0])?;
    Some(([middle[0] + x, middle[1] + y], (x * x + y * y + zz / count).sqrt()))
}

/// The least-squares circle. None for fewer than three points, or points that no circle passes near.
pub fn least_squares(points: &[Point]) -> Option<Fit> {
    let (mut centre, mut radius) = algebraic(points)?;
    let mut normal = normal_equations(points, centre, radius);
    let mut damping = 1e-4;
    for _ in 0..MOST_STEPS {
        let [x, y, r] = solve(damped(normal.rows, damping), normal.right)?;
        let (next, wider) = ([centre[0] + x, centre[1] + y], radius + r);
        let trial = normal_equations(points, next, wider);
        if trial.squares <= normal.squares {
            (centre, radius, normal) = (next, wider, trial);
            damping *= 0.1;
        } else {
            damping *= 10.0;
        }
        let step = x.hypot(y).hypot(r);
        if step <= 1e-15 * radius.abs().max(1e-3) || damping > 1e12 {
            break;
        }
    }
    let spread = inverse(&normal.rows.map(|row| row.to_vec()))?;
    (radius.is_finite() && radius > 0.0).then_some(Fit { centre, radius, spread })
}

struct Normal {
    rows: [[f64; 3]; 3],
    right: [f64; 3],
    squares: f64,
}

/// Normal equations of the distances' residuals in (x, y, radius).
fn normal_equations(points: &[Point], centre: Point, radius: f64) -> Normal {
    let (mut cc, mut cs, mut ss, mut c, mut s) = (0.0, 0.0, 0.0, 0.0, 0.0);
    let (mut right, mut squares) = ([0.0; 3], 0.0);
    for point in points {
        let far = distance(centre, *point);
        let [cos, sin] = toward(centre, *point, far);
        let residual = far - radius;
        (cc, cs, ss) = (cc + cos * cos, cs + cos * sin, ss + sin * sin);
        (c, s) = (c + cos, s + sin);
        right = [right[0] + cos * residual, right[1] + sin * residual, right[2] + residual];
        squares += residual * residual;
    }
    let count = points.len() as f64;
    Normal { rows: [[cc, cs, c], [cs, ss, s], [c, s, count]], right, squares }
}

fn damped(mut rows: [[f64; 3]; 3], damping: f64) -> [[f64; 3]; 3] {
    for (at, row) in rows.iter_mut().enumerate() {
        if let Some(value) = row.get_mut(at) {
            *value *= 1.0 + damping;
        }
    }
    rows
}
