//! The parts of a ring that a cutter touches when it reaches a radius. Between two readings the wall is taken
//! as straight in angle and radius.

/// A point of a ring: its direction in degrees and its distance from the cutter's axis in mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RingPoint {
    /// Direction.
    pub angle_deg: f64,
    /// Distance.
    pub distance: f64,
}

/// A cutter touches what is nearer than its reach by less than this, in mm: a picometre.
pub const TOUCH: f64 = 1e-9;

/// The arcs a cutter of this reach touches, each from and to in degrees; `to` may pass 360. The whole ring is
/// `[0, 360]`. The points stand in order of angle.
pub fn touched(ring: &[RingPoint], reach: f64) -> Vec<[f64; 2]> {
    let within = |point: &RingPoint| point.distance <= reach + TOUCH;
    let Some(start) = ring.iter().position(|point| !within(point)) else {
        return if ring.is_empty() { Vec::new() } else { vec![[0.0, 360.0]] };
    };
    let turned = || ring.iter().cycle().skip(start).take(ring.len());
    let next = turned().skip(1).chain(turned().take(1));
    let mut arcs: Vec<[f64; 2]> = Vec::new();
    for (here, next) in turned().zip(next) {
        let wide = (next.angle_deg - here.angle_deg).rem_euclid(360.0);
        let crossing = here.angle_deg
            + wide * ((reach - here.distance) / (next.distance - here.distance)).clamp(0.0, 1.0);
        let end = here.angle_deg + wide;
        match (within(here), within(next)) {
            (false, true) => arcs.push([crossing, end]),
            (true, true) => lengthen(&mut arcs, wide),
            (true, false) => lengthen(&mut arcs, crossing - here.angle_deg),
            (false, false) => {}
        }
    }
    arcs.into_iter().map(from_zero).collect()
}

fn lengthen(arcs: &mut [[f64; 2]], by: f64) {
    if let Some([_, to]) = arcs.last_mut() {
        *to += by;
    }
}

fn from_zero([from, to]: [f64; 2]) -> [f64; 2] {
    let start = from.rem_euclid(360.0);
    [start, start + (to - from)]
}

/// Share of the ring that arcs cover, 0 to 1.
pub fn share(arcs: &[[f64; 2]]) -> f64 {
    arcs.iter().map(|[from, to]| to - from).sum::<f64>() / 360.0
}

#[cfg(test)]
mod tests {
    use super::{RingPoint, share, touched};

    /// An oval: near at 0 and 180 degrees.
    fn oval() -> Vec<RingPoint> {
        let point = |at: u32| {
            let distance = if at.is_multiple_of(2) { 36.0 } else { 36.1 };
            RingPoint { angle_deg: f64::from(at) * 90.0, distance }
        };
        (0..4).map(point).collect()
    }

    #[track_caller]
    fn check(reach: f64, expected: &[[f64; 2]]) {
        let found = touched(&oval(), reach);
        assert_eq!(found.len(), expected.len(), "{found:?}");
        for (found, expected) in found.iter().flatten().zip(expected.iter().flatten()) {
            assert!((found - expected).abs() < 1e-6, "{found} for {expected}");
        }
    }

    #[test]
    fn arcs_grow_from_the_narrow_places_until_the_ring_is_whole() {
        check(35.9, &[]);
        check(36.05, &[[135.0, 225.0], [315.0, 405.0]]);
        check(36.075, &[[112.5, 247.5], [292.5, 427.5]]);
        check(36.1, &[[0.0, 360.0]]);
        assert!((share(&touched(&oval(), 36.05)) - 0.5).abs() < 1e-9);
    }
}
