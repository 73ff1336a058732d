//! The narrowest ring round points whose distances are taken as linear in the centre: a linear program in the
//! centre's step and the two radii, solved in its dual by exchanging one point for another.
//!
//! Dual: choose weights of outer points (sum 1) and inner points (sum 1) whose directions balance, so that
//! the weighted outer distance less the weighted inner distance is greatest. Four equations, so four points
//! carry weight; each exchange widens the ring they ask for until no other point asks for more.
//! Source: the simplex method, G. B. Dantzig, Linear Programming and Extensions (1963), from memory.

use super::circle::{Point, distance, toward};
use super::solve::solve;

/// A point that holds the ring open, and how much of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Contact {
    /// Its place among the points, from 0.
    pub point: usize,
    /// It touches the outer circle; else the inner one.
    pub outer: bool,
    /// Its share, 0 to 1. A change of its distance changes the width by this share, the other way for an
    /// inner one.
    pub weight: f64,
}

/// The narrowest ring for distances that are linear in the centre's step.
#[derive(Debug, Clone, PartialEq)]
pub struct Ring {
    /// Step from the centre that the distances were taken about.
    pub step: [f64; 2],
    /// Its width: what the step would make of the ring if distances were linear.
    pub width: f64,
    /// The four points that keep it from being narrower.
    pub contacts: [Contact; 4],
}

/// Exchanges of the most offending point; after these the first offender is taken, which cannot go round
/// in circles (Bland's rule).
const STEEPEST: usize = 300;
/// More exchanges than any set needs.
const MOST: usize = 20_000;
/// A weight further below zero than this pulls the wrong way.
const UNBALANCED: f64 = 1e-9;

struct Seen {
    distance: f64,
    toward: [f64; 2],
}

/// The narrowest ring, linear about `centre`. None where all points lie in one direction.
///
/// `known` are the contacts about a centre close by, with which less is left to exchange.
pub fn narrowest(points: &[Point], centre: Point, known: Option<[Contact; 4]>) -> Option<Ring> {
    let (seen, mean) = look(points, centre);
    let tolerance = 16.0 * f64::EPSILON * mean;
    known
        .and_then(|base| exchanged(&seen, base, tolerance))
        .or_else(|| exchanged(&seen, first_base(&seen)?, tolerance))
}

/// The points as they look from the centre, and their mean distance. Distances less their mean keep their
/// last digits.
fn look(points: &[Point], centre: Point) -> (Vec<Seen>, f64) {
    let look = |point: &Point| {
        let distance = distance(centre, *point);
        Seen { distance, toward: toward(centre, *point, distance) }
    };
    let mut seen: Vec<Seen> = points.iter().map(look).collect();
    let mean = seen.iter().map(|it| it.distance).sum::<f64>() / points.len() as f64;
    for it in &mut seen {
        it.distance -= mean;
    }
    (seen, mean)
}

/// Exchanges contacts until no point asks for more. None where the contacts do not balance to begin with.
fn exchanged(seen: &[Seen], mut base: [Contact; 4], tolerance: f64) -> Option<Ring> {
    for turn in 0..MOST {
        let [a, b, c, d] = base.map(|contact| column(seen, contact));
        let columns = [a?, b?, c?, d?];
        let rows = columns.map(|(column, _)| column);
        let turned = transposed(rows);
        let weights = solve(turned, [0.0, 0.0, 1.0, 1.0])?;
        if turn == 0 && weights.iter().any(|weight| *weight < -UNBALANCED) {
            return None;
        }
        for (contact, weight) in base.iter_mut().zip(weights) {
            contact.weight = weight;
        }
        let prices = solve(rows, columns.map(|(_, height)| height))?;
        let Some(offender) = offender(seen, prices, tolerance, turn >= STEEPEST) else {
            let [x, y, outer, inner] = prices;
            return Some(Ring { step: [x, y], width: outer + inner, contacts: base });
        };
        exchange(&mut base, turned, column(seen, offender)?.0, offender)?;
    }
    None
}

/// A point's column of the dual and its height. The centre's step enters as the direction, since a step
/// towards a point shortens its distance.
fn column(seen: &[Seen], contact: Contact) -> Option<([f64; 4], f64)> {
    let it = seen.get(contact.point)?;
    let [x, y] = it.toward;
    Some(if contact.outer { ([x, y, 1.0, 0.0], it.distance) } else { ([-x, -y, 0.0, 1.0], -it.distance) })
}

/// Three outer points in different directions and one of them inside as well: a ring of no width, from
/// which every exchange is allowed.
fn first_base(seen: &[Seen]) -> Option<[Contact; 4]> {
    let first = seen.first()?;
    // The least cosine is the widest angle.
    let away = |it: &Seen| -(it.toward[0] * first.toward[0] + it.toward[1] * first.toward[1]);
    let second = most_by(seen, away)?;
    let chord =
        seen.get(second).map(|it| [it.toward[0] - first.toward[0], it.toward[1] - first.toward[1]])?;
    let across = |it: &Seen| {
        (chord[0] * (it.toward[1] - first.toward[1]) - chord[1] * (it.toward[0] - first.toward[0])).abs()
    };
    let third = most_by(seen, across)?;
    let contact = |point: usize, outer: bool, weight: f64| Contact { point, outer, weight };
    Some([
        contact(0, true, 1.0),
        contact(0, false, 1.0),
        contact(second, true, 0.0),
        contact(third, true, 0.0),
    ])
}

fn most_by(seen: &[Seen], measure: impl Fn(&Seen) -> f64) -> Option<usize> {
    seen.iter().enumerate().max_by(|a, b| measure(a.1).total_cmp(&measure(b.1))).map(|(at, _)| at)
}

/// The point that sticks out of the ring furthest, or the first that does.
fn offender(seen: &[Seen], prices: [f64; 4], tolerance: f64, first: bool) -> Option<Contact> {
    let [x, y, outer, inner] = prices;
    let moved = |it: &Seen| it.distance - x * it.toward[0] - y * it.toward[1];
    let (mut far, mut near) = ((f64::NEG_INFINITY, 0), (f64::INFINITY, 0));
    for (point, it) in seen.iter().enumerate() {
        let moved = moved(it);
        if moved > far.0 {
            far = (moved, point);
        }
        if moved < near.0 {
            near = (moved, point);
        }
        let out = far.0 - outer > tolerance || -near.0 - inner > tolerance;
        if first && out {
            break;
        }
    }
    let (out, inward) = (far.0 - outer, -near.0 - inner);
    let contact = |point: usize, outer: bool| Contact { point, outer, weight: 0.0 };
    if out.max(inward) <= tolerance {
        None
    } else if out >= inward {
        Some(contact(far.1, true))
    } else {
        Some(contact(near.1, false))
    }
}

/// Takes the offender in for the contact whose weight runs out first.
fn exchange(
    base: &mut [Contact; 4],
    turned: [[f64; 4]; 4],
    column: [f64; 4],
    offender: Contact,
) -> Option<()> {
    let shares = solve(turned, column)?;
    let leaving = base
        .iter()
        .zip(&shares)
        .enumerate()
        .filter(|(_, (_, share))| **share > 1e-12)
        .map(|(at, (contact, share))| (at, contact.weight.max(0.0) / share, contact.point))
        .min_by(|a, b| a.1.total_cmp(&b.1).then(a.2.cmp(&b.2)))
        .map(|(at, ..)| at)?;
    *base.get_mut(leaving)? = offender;
    Some(())
}

fn transposed([a, b, c, d]: [[f64; 4]; 4]) -> [[f64; 4]; 4] {
    let row = |at: fn([f64; 4]) -> f64| [at(a), at(b), at(c), at(d)];
    [row(|it| it[0]), row(|it| it[1]), row(|it| it[2]), row(|it| it[3])]
}
