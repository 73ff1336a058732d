//! The parts of a ring that a cutter touches when it reaches a radius. Between two readings the wall is taken
//! as straight in angle and radius, unless they are so far apart that nothing is known of it: there only the
//! readings themselves are touched.

use super::coverage::is_gap;

/// A point of a ring: its direction in degrees and its distance from the cutter's axis in mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RingPoint {
    /// Direction.
    pub angle_deg: f64,
    /// From the cutter's axis, mm.
    pub distance: f64,
}

/// A cutter touches what is nearer than its reach by less than this, in mm: a picometre.
pub const TOUCH: f64 = 1e-9;

/// The arcs a cutter of this reach touches, each from and to in degrees; `to` may pass 360. The whole ring is
/// `[0, 360]`. The points stand in order of angle.
pub fn touched(ring: &[RingPoint], reach: f64) -> Vec<[f64; 2]> {
    let within = |point: &RingPoint| point.distance <= reach + TOUCH;
    let after_gap = gaps(ring).first().map(|(_, next)| *next);
    let Some(start) = after_gap.or_else(|| ring.iter().position(|point| !within(point))) else {
        return if ring.is_empty() { Vec::new() } else { vec![[0.0, 360.0]] };
    };
    let turned = || ring.iter().cycle().skip(start).take(ring.len());
    let next = turned().skip(1).chain(turned().take(1));
    let touched_at = |point: &RingPoint| within(point).then_some([point.angle_deg; 2]);
    let mut arcs: Vec<[f64; 2]> = turned().take(1).filter_map(touched_at).collect();
    for (at, (here, next)) in turned().zip(next).enumerate() {
        let wide = apart(here, next);
        if is_gap(wide) {
            arcs.extend(touched_at(next).filter(|_| at + 1 < ring.len()));
            continue;
        }
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

/// Degrees from one point up to the next.
fn apart(here: &RingPoint, next: &RingPoint) -> f64 {
    (next.angle_deg - here.angle_deg).rem_euclid(360.0)
}

/// Neighbours with nothing known between them: the place of each and of the next.
fn gaps(ring: &[RingPoint]) -> Vec<(usize, usize)> {
    if ring.len() == 1 {
        return vec![(0, 0)];
    }
    let next = |at: usize| if at + 1 < ring.len() { at + 1 } else { 0 };
    let pairs = ring.iter().enumerate().zip(ring.iter().cycle().skip(1));
    pairs.filter(|((_, here), after)| is_gap(apart(here, after))).map(|((at, _), _)| (at, next(at))).collect()
}

/// Arcs of the ring of which nothing is known, each from and to in degrees; `to` may pass 360.
pub fn unread(ring: &[RingPoint]) -> Vec<[f64; 2]> {
    if let [alone] = ring {
        return vec![[alone.angle_deg, alone.angle_deg + 360.0]];
    }
    let arc = |(at, next): (usize, usize)| {
        let (here, after) = (ring.get(at)?, ring.get(next)?);
        Some([here.angle_deg, here.angle_deg + apart(here, after)])
    };
    gaps(ring).into_iter().filter_map(arc).collect()
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
    use super::{RingPoint, share, touched, unread};

    /// Near at 0 and 180 degrees, far at 90 and 270, straight between.
    fn oval() -> Vec<RingPoint> {
        let point = |at: u32| {
            let off = f64::from(at % 6).min(6.0 - f64::from(at % 6));
            RingPoint { angle_deg: f64::from(at) * 30.0, distance: 36.0 + 0.1 * off / 3.0 }
        };
        (0..12).map(point).collect()
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

    /// However deep the cut, of what was not read nothing is known to be touched.
    #[test]
    fn what_was_not_read_is_not_touched() {
        let half: Vec<RingPoint> = oval().into_iter().take(7).collect();
        assert_eq!(unread(&half), [[180.0, 360.0]]);
        assert!(unread(&oval()).is_empty());
        assert_eq!(touched(&half, 50.0), [[0.0, 180.0]]);
        assert_eq!(touched(&half, 36.05).len(), 2);
        let cross: Vec<RingPoint> = oval().into_iter().step_by(3).collect();
        assert!(share(&touched(&cross, 50.0)) < 1e-9 && unread(&cross).len() == 4);
        let alone: Vec<RingPoint> = oval().into_iter().take(1).collect();
        assert!(share(&touched(&alone, 50.0)) < 1e-9);
        assert_eq!(unread(&alone), [[0.0, 360.0]]);
    }
}
