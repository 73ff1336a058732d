//! The sorting of one case: probabilities, how sure they are, what speaks for and against, the decisions
//! that rest on them, and the next check.

use std::borrow::Cow;
use std::collections::BTreeSet;

use crate::model::case::Case;
use crate::model::certainty::Interval;
use crate::model::ids;
use crate::model::standing::{CauseGroup, CauseStand, Sorting};
use crate::trade::Trade;
use crate::trade::rows::SignRow;

use super::act_or_wait;
use super::draws::Draws;
use super::evidence;
use super::explain::{self, Account};
use super::foresee::foreseen;
use super::likelihood;
use super::network::{self, Network};
use super::next::{self, OpenStep, Outlook};
use super::posterior::Posterior;
use super::ready::Ready;
use super::surprise::surprise;

/// Id under which "none of the causes is present" is shown.
pub const NORMAL: &str = "normal-character";

/// Sorts a case. `open` lists the steps that are allowed and not looked at, in walk order; `draws` are
/// those of this kind of car, without which no interval is given.
pub fn sort(trade: &Trade, case: &Case, open: &[OpenStep<'_>], draws: Option<&Draws>) -> Sorting {
    let ready = draws.map_or_else(|| Cow::Owned(Ready::of(trade, case)), |draws| Cow::Borrowed(&draws.ready));
    let asked = &ready.taught;
    let network = &asked.network;
    let observed = evidence::observations(trade, network, case);
    let all = asked.posterior(&observed);
    let left_out = explain::left_out(trade, asked, case, &observed);
    let accounts = explain::accounts(asked, case, &all, &left_out);
    let intervals = draws.map(|draws| draws.intervals(&observed, &all));
    let mut with = case.clone();
    let outlook: Vec<Outlook<'_>> = open
        .iter()
        .map(|step| Outlook {
            row: step.row,
            off_topic: step.off_topic,
            foreseen: foreseen(trade, asked, &mut with, (&observed, &all), step.row),
        })
        .collect();
    let choices = act_or_wait::choices(trade, network);
    let next = next::next_check(&outlook, &choices, &all, trade.losses.hazard());
    let taught = trade.learned.layouts.get(&case.layout);
    let suspicion = ready.suspicion(&observed);
    Sorting {
        causes: named(trade, case, causes(network, &all, accounts, intervals)),
        bearing_probability: all.bearing(),
        bearing_unexcused: suspicion,
        no_check: next.as_ref().err().map(|why| (*why).to_owned()),
        next_check: next.ok(),
        surprise: surprise(trade, network, &observed, &all, &left_out),
        turn: next::turn(&outlook, network, &all),
        judgements: act_or_wait::judgements(&choices, network, &all, suspicion),
        outcomes: taught.map_or(0, |taught| taught.outcomes),
    }
}

/// The probabilities alone, by the numbers as judged: what ratings rest on, whatever outcomes have taught.
pub fn sort_untaught(trade: &Trade, case: &Case) -> Sorting {
    untaught(trade, case, &Ready::untaught(trade, case), false)
}

/// The same with the networks of this kind of car at hand.
pub fn sort_judged(trade: &Trade, case: &Case, draws: &Draws) -> Sorting {
    untaught(trade, case, &draws.ready, false)
}

/// The same with what each answer weighs.
pub fn explain_judged(trade: &Trade, case: &Case, draws: &Draws) -> Sorting {
    untaught(trade, case, &draws.ready, true)
}

fn untaught(trade: &Trade, case: &Case, ready: &Ready, explained: bool) -> Sorting {
    let asked = ready.judged();
    let network = &asked.network;
    let observed = evidence::observations(trade, network, case);
    let all = asked.posterior(&observed);
    let left_out = if explained { explain::left_out(trade, asked, case, &observed) } else { Vec::new() };
    let accounts = explain::accounts(asked, case, &all, &left_out);
    Sorting {
        causes: causes(network, &all, accounts, None),
        bearing_probability: all.bearing(),
        bearing_unexcused: ready.suspicion(&observed),
        no_check: None,
        next_check: None,
        surprise: None,
        turn: None,
        judgements: Vec::new(),
        outcomes: 0,
    }
}

fn causes(
    network: &Network,
    all: &Posterior,
    accounts: Vec<Account>,
    intervals: Option<Vec<Interval>>,
) -> Vec<CauseStand> {
    let normal = (NORMAL.to_owned(), CauseGroup::Normal, all.none);
    let named = network.causes.iter().zip(&all.causes);
    let named = named.map(|(cause, probability)| (cause.id.clone(), cause.group, *probability));
    let interval = |place: usize| intervals.as_ref().and_then(|intervals| intervals.get(place)).copied();
    let mut causes: Vec<CauseStand> = named
        .chain(std::iter::once(normal))
        .zip(accounts)
        .enumerate()
        .map(|(place, (named, account))| stand(named, interval(place), account))
        .collect();
    causes.sort_by(|a, b| b.probability.total_cmp(&a.probability));
    causes
}

/// The causes with the names that a workshop gave its own, and with where their numbers come from.
fn named(trade: &Trade, case: &Case, mut causes: Vec<CauseStand>) -> Vec<CauseStand> {
    for cause in &mut causes {
        let Some(row) = trade.causes.iter().find(|row| row.id == cause.id) else { continue };
        cause.own_name.clone_from(&row.name);
        let shifts = network::shifts(row, case).map(|shift| shift.basis.clone());
        cause.basis = std::iter::once(row.basis.clone()).chain(shifts).collect();
        for weight in cause.speaks_for.iter_mut().chain(&mut cause.against) {
            weight.basis = between(trade, &weight.step, &cause.id);
        }
    }
    causes
}

/// Where the numbers between a step's signs and a cause come from. Of a sign that is not linked to the cause it is
/// what the sign says of itself: it explains away.
fn between(trade: &Trade, step: &str, cause: &str) -> Vec<String> {
    let asks = |sign: &&SignRow| sign.steps.iter().any(|id| id == ids::base(step));
    let says = |sign: &SignRow| {
        let link = sign.links.iter().find(|link| link.cause == cause);
        link.and_then(|link| link.basis.clone()).unwrap_or_else(|| sign.basis.clone())
    };
    let said: BTreeSet<String> = trade.signs.iter().filter(asks).map(says).collect();
    said.into_iter().collect()
}

fn stand(
    (id, group, probability): (String, CauseGroup, f64),
    interval: Option<Interval>,
    account: Account,
) -> CauseStand {
    let Account { before, weights, together } = account;
    let (speaks_for, against) = weights.into_iter().partition(|weight| weight.decibans > 0.0);
    let likelihood = likelihood::word(probability).to_owned();
    CauseStand {
        id,
        own_name: None,
        group,
        probability,
        interval,
        before,
        basis: Vec::new(),
        together,
        likelihood,
        speaks_for,
        against,
    }
}
