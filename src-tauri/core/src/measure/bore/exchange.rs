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
    /// Which point.
    pub point: usize,
    /// It touches the outer circle; else the inner one.
    pub outer: bool,
    /// Its share, 0 to 1. A change of its distance changes the width by this share, the other way for an
    /// inner one.
    pub weight: f64,
}

/// The linear ring.
#[derive(Debug, Clone, PartialEq)]
pub struct Ring {
    /// Step from the centre that the distances were taken about.
    pub step: [f64; 2],
    /// The four contacts.
    pub contacts: [Contact; 4],
}

/// Exchanges of the most offending point; after these the first offender is taken, which cannot go round
/// in circles (Bland's rule).
const STEEPEST: usize = 300;
/// More exchanges than any set needs.
const MOST: usize = 20_000;

struct Seen {
    distance: f64,
    toward: [f64; 2],
}

/// The narrowest ring, linear about `centre`. None where all points lie in one direction.
pub fn narrowest(points: &[Point], centre: Point) -> Option<Ring> {
    let far: Vec<f64> = points.iter().map(|point| distance(centre, *point)).collect();
    let mean = far.iter().sum::<f64>() / points.len() as f64;
    // Distances less their mean keep their last digits.
    let seen: Vec<Seen> = points
        .iter()
        .zip(&far)
        .map(|(point, far)| Seen { distance: far - mean, toward: toward(centre, *point, *far) })
        .collect();
    let tolerance = 16.0 * f64::EPSILON * mean;
    let mut base = first_base(&seen)?;
    for turn in 0..MOST {
        let columns = base.iter().map(|contact| column(&seen, contact)).collect::<Option<Vec<_>>>()?;
        let heights: Vec<f64> = columns.iter().map(|(_, height)| *height).collect();
        let rows: Vec<Vec<f64>> = columns.iter().map(|(column, _)| column.to_vec()).collect();
        let prices = <[f64; 4]>::try_from(solve(&rows, &heights)?).ok()?;
        let turned = transposed(&rows);
        for (contact, weight) in base.iter_mut().zip(solve(&turned, &[0.0, 0.0, 1.0, 1.0])?) {
            contact.weight = weight;
        }
        let Some(offender) = offender(&seen, &prices, tolerance, turn >= STEEPEST) else {
            return Some(Ring { step: [prices[0], prices[1]], contacts: base });
        };
        exchange(&mut base, &turned, column(&seen, &offender)?.0, offender)?;
    }
    None
}

/// A point's column of the dual and its height. The centre's step enters as the direction, since a step
/// towards a point shortens its distance.
fn column(seen: &[Seen], contact: &Contact) -> Option<([f64; 4], f64)> {
    let it = seen.get(contact.point)?;
    let [x, y] = it.toward;
    Some(if contact.outer { ([x, y, 1.0, 0.0], it.distance) } else { ([-x, -y, 0.0, 1.0], -it.distance) })
}

/// Three outer points in different directions and one of them inside as well: a ring of no width, from
/// which every exchange is allowed.
fn first_base(seen: &[Seen]) -> Option<[Contact; 4]> {
    let first = seen.first()?;
    let away = |it: &Seen| (it.toward[0] - first.toward[0]).hypot(it.toward[1] - first.toward[1]);
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
fn offender(seen: &[Seen], prices: &[f64; 4], tolerance: f64, first: bool) -> Option<Contact> {
    let (mut worst, mut found) = (tolerance, None);
    for (point, it) in seen.iter().enumerate() {
        let moved = it.distance - prices[0] * it.toward[0] - prices[1] * it.toward[1];
        for (outer, excess) in [(true, moved - prices[2]), (false, -moved - prices[3])] {
            if excess > worst {
                found = Some(Contact { point, outer, weight: 0.0 });
                worst = excess;
                if first {
                    return found;
                }
            }
        }
    }
    found
}

/// Takes the offender in for the contact whose weight runs out first.
fn exchange(base: &mut [Contact; 4], turned: &[Vec<f64>], column: [f64; 4], offender: Contact) -> Option<()> {
    let shares = solve(turned, &column)?;
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

fn transposed(rows: &[Vec<f64>]) -> Vec<Vec<f64>> {
    (0..rows.len()).map(|at| rows.iter().filter_map(|row| row.get(at).copied()).collect()).collect()
}
