//! The minimum zone: the narrowest ring between two circles about one centre that holds every point.
//!
//! Reference: ISO 12181-1:2011 and ISO 4291:1985 name it MZC (from memory). Method: from a first centre the
//! distances are taken as linear, the narrowest linear ring is found exactly ([`exchange`](super::exchange)),
//! the centre goes there, and so on; at a corner of the ring's width this doubles the correct digits with each
//! step. That is a valley; [`proof`](super::proof) shows that there is no deeper one, or finds it.

use super::circle::{Point, ends_about, spread_about};
use super::exchange::{Contact, narrowest};
use super::proof::{self, Narrowest};

/// A minimum zone.
#[derive(Debug, Clone, PartialEq)]
pub struct Zone {
    /// Common centre of the two circles.
    pub centre: Point,
    /// Radius of the outer circle.
    pub outer: f64,
    /// Radius of the inner circle.
    pub inner: f64,
    /// The points that fix it.
    pub contacts: Vec<Contact>,
    /// No centre inside the points' box gives a width smaller by more than this, in mm.
    pub proven_within: f64,
}

impl Zone {
    /// Width of the ring, mm: the out-of-roundness.
    pub fn width(&self) -> f64 {
        self.outer - self.inner
    }
}

/// Linear steps in one valley; three are usual.
const MOST_STEPS: usize = 200;
/// A linear ring that is narrower by less than this share of the radius is no narrower.
const NO_GAIN: f64 = 64.0 * f64::EPSILON;
/// Deeper valleys in a row; one or two are usual for points that are far from any circle.
const MOST_VALLEYS: usize = 100;

/// The minimum zone of at least three points, searched from `start`, such as the least-squares centre.
/// None where the points lie in one direction from it.
pub fn minimum(points: &[Point], start: Point) -> Option<Zone> {
    let mut zone = valley(points, start)?;
    for _ in 0..MOST_VALLEYS {
        match proof::search(points, &zone) {
            Narrowest::Proven(within) => {
                zone.proven_within = within;
                return Some(zone);
            }
            Narrowest::Narrower(centre) => zone = valley(points, centre)?,
        }
    }
    zone.proven_within = f64::INFINITY;
    Some(zone)
}

/// Goes down to the bottom of the valley that `start` lies in.
fn valley(points: &[Point], start: Point) -> Option<Zone> {
    let mut centre = start;
    let mut ring = narrowest(points, centre, None)?;
    for _ in 0..MOST_STEPS {
        let [inner, outer] = ends_about(centre, points);
        let width = outer - inner;
        if width - ring.width <= NO_GAIN * outer {
            break;
        }
        let Some(next) = shortened(points, centre, ring.step, width) else { break };
        centre = next;
        ring = narrowest(points, centre, Some(ring.contacts))?;
    }
    let [inner, outer] = ends_about(centre, points);
    let contacts = ring.contacts.into_iter().filter(|contact| contact.weight > 1e-9).collect();
    Some(Zone { centre, outer, inner, contacts, proven_within: f64::INFINITY })
}

/// The step, halved until the width is smaller; none where no part of it helps.
fn shortened(points: &[Point], centre: Point, step: [f64; 2], width: f64) -> Option<Point> {
    let mut part = 1.0;
    for _ in 0..40 {
        let next = [centre[0] + part * step[0], centre[1] + part * step[1]];
        if spread_about(next, points) < width {
            return Some(next);
        }
        part /= 2.0;
    }
    None
}
