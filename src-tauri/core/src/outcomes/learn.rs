//! From confirmed outcomes to better numbers, per layout: the judged numbers are Beta distributions worth
//! a few cars, and each outcome adds one car to those it speaks of. Nothing is forgotten or overwritten:
//! the same outcomes in any order give the same numbers.

use std::collections::BTreeMap;

use crate::model::learned::{Beta, Learned, Taught, TaughtSign};
use crate::model::outcome::Outcome;
use crate::trade::Trade;
use crate::trade::rows::SignRow;

/// What the outcomes teach. A layout with too few of them is left as judged.
pub fn learn(trade: &Trade, outcomes: &[Outcome]) -> Learned {
    let mut by_layout: BTreeMap<&str, Vec<&Outcome>> = BTreeMap::new();
    for outcome in outcomes {
        by_layout.entry(&outcome.layout).or_default().push(outcome);
    }
    let enough = |outcomes: &Vec<&Outcome>| outcomes.len() >= trade.enough as usize;
    let layouts = by_layout.into_iter().filter(|(_, outcomes)| enough(outcomes));
    Learned {
        layouts: layouts.map(|(layout, outcomes)| (layout.to_owned(), taught(trade, &outcomes))).collect(),
    }
}

fn taught(trade: &Trade, outcomes: &[&Outcome]) -> Taught {
    let prior = |id: &String| {
        // Only cars on which the cause could be there at all say anything of it.
        let possible = || outcomes.iter().filter(|outcome| outcome.sorted.contains_key(id));
        let with = possible().filter(|outcome| outcome.causes.contains(id)).count();
        (with as f64, (possible().count() - with) as f64)
    };
    let priors = trade.causes.iter().map(|row| {
        let (with, without) = prior(&row.id);
        (row.id.clone(), Beta::prior(row.prior, row.weight).and(with, without))
    });
    Taught {
        outcomes: u32::try_from(outcomes.len()).unwrap_or(u32::MAX),
        priors: priors.collect(),
        signs: trade.signs.iter().map(|row| (row.id.clone(), sign(row, outcomes))).collect(),
    }
}

/// How often each combination of a sign's causes was there, with the sign seen and not seen.
type Patterns = BTreeMap<(Vec<bool>, bool), f64>;

fn sign(row: &SignRow, outcomes: &[&Outcome]) -> TaughtSign {
    let mut patterns = Patterns::new();
    for outcome in outcomes {
        let Some(seen) = outcome.signs.get(&row.id) else { continue };
        let there = row.links.iter().map(|link| outcome.causes.contains(&link.cause)).collect();
        *patterns.entry((there, *seen)).or_default() += 1.0;
    }
    let judged = Strengths {
        leak: Beta::prior(row.leak, row.weight),
        links: row.links.iter().map(|link| Beta::prior(link.p, row.weight)).collect(),
    };
    let converged = maximise(&judged, &patterns);
    let links = row.links.iter().zip(converged.links).map(|(link, beta)| (link.cause.clone(), beta));
    TaughtSign { leak: converged.leak, links: links.collect() }
}

#[derive(Debug, Clone)]
struct Strengths {
    leak: Beta,
    links: Vec<Beta>,
}

/// Rounds of sharing out the credit; a round changes the numbers less than the one before.
const ROUNDS: u32 = 100;
/// A change of every mean below this ends it.
const CONVERGED: f64 = 1e-10;

/// Where several causes were there, which of them brought the sign about is not seen; the credit is shared
/// out by how strong each is thought to be, and again with the strengths that follow (expectation and
/// maximisation; Dempster, Laird & Rubin, J. Royal Statistical Society B 39 (1977) 1, from memory).
fn maximise(judged: &Strengths, patterns: &Patterns) -> Strengths {
    let mut now = judged.clone();
    for _ in 0..ROUNDS {
        let next = round(judged, &now, patterns);
        let moved = |(a, b): (&Beta, &Beta)| (a.mean() - b.mean()).abs();
        let most =
            now.links.iter().zip(&next.links).map(moved).fold(moved((&now.leak, &next.leak)), f64::max);
        now = next;
        if most < CONVERGED {
            break;
        }
    }
    now
}

fn round(judged: &Strengths, now: &Strengths, patterns: &Patterns) -> Strengths {
    let mut next = judged.clone();
    for ((there, seen), count) in patterns {
        let misses =
            now.links.iter().zip(there).filter(|(_, there)| **there).map(|(link, _)| 1.0 - link.mean());
        let seen_probability = 1.0 - (1.0 - now.leak.mean()) * misses.product::<f64>();
        let share = |strength: Beta| if *seen { count * (strength.mean() / seen_probability) } else { 0.0 };
        let credit = |to: Beta, strength: Beta| to.and(share(strength), count - share(strength));
        next.leak = credit(next.leak, now.leak);
        for ((link, strength), _) in
            next.links.iter_mut().zip(&now.links).zip(there).filter(|(_, there)| **there)
        {
            *link = credit(*link, *strength);
        }
    }
    next
}
