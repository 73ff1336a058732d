//! The network of one car: its causes with priors, its signs with leak and links, as plain numbers.

use crate::model::case::Case;
use crate::model::learned::{Beta, Taught};
use crate::model::standing::CauseGroup;
use crate::trade::Trade;
use crate::trade::rows::{CauseRow, Link, PriorShift, SignRow, Speed};

use super::number::Number;

/// A two-layer noisy-OR network. Causes are independent beforehand; each sign is absent with
/// probability `(1 - leak) * product over present causes of miss`.
#[derive(Debug, Clone, PartialEq)]
pub struct Network<N = f64> {
    /// Causes, in data order.
    pub causes: Vec<Cause<N>>,
    /// Signs, in data order.
    pub signs: Vec<Sign<N>>,
}

/// What may be wrong; present or not.
#[derive(Debug, Clone, PartialEq)]
pub struct Cause<N = f64> {
    /// Id in `causes.toml`.
    pub id: String,
    /// Bearing, other or normal.
    pub group: CauseGroup,
    /// Probability beforehand.
    pub prior: N,
}

/// What a step can show; present, absent or unknown.
#[derive(Debug, Clone, PartialEq)]
pub struct Sign<N = f64> {
    /// Index of its row in the trade's signs.
    pub row: usize,
    /// Probability without any linked cause.
    pub leak: N,
    /// For each cause of the network: the probability that it, present, does not bring the sign about.
    /// One for a cause that is not linked.
    pub miss: Vec<N>,
}

impl<N: Number> Sign<N> {
    /// Whether a cause is linked to it.
    pub fn links(&self, cause: usize) -> bool {
        self.miss.get(cause).is_some_and(|miss| miss.below(1.0))
    }

    /// P(this cause, present, does not bring the sign about).
    pub fn miss_of(&self, cause: usize) -> N {
        self.miss.get(cause).copied().unwrap_or(N::all(1.0))
    }
}

impl Sign {
    /// P(sign absent | these causes present).
    pub fn absent(&self, present: impl Fn(usize) -> bool) -> f64 {
        let misses = self.miss.iter().enumerate().filter(|(cause, _)| present(*cause)).map(|(_, miss)| miss);
        (1.0 - self.leak) * misses.product::<f64>()
    }
}

impl Network {
    /// The network of one car, with what outcomes have taught of its layout.
    pub fn of(trade: &Trade, case: &Case) -> Self {
        Self::at_the_means(&Numbers::of(trade, case))
    }

    /// The same as judged, with nothing taught: what ratings rest on.
    pub fn untaught(trade: &Trade, case: &Case) -> Self {
        Self::at_the_means(&Numbers::untaught(trade, case))
    }

    fn at_the_means(numbers: &Numbers<'_>) -> Self {
        numbers.network(Beta::mean)
    }
}

/// The numbers of one car's network, each with how much stands behind it.
#[derive(Debug, Clone)]
pub struct Numbers<'t> {
    causes: Vec<(&'t CauseRow, Beta)>,
    signs: Vec<SignNumbers>,
}

#[derive(Debug, Clone)]
struct SignNumbers {
    row: usize,
    leak: Beta,
    /// None for a cause that is not linked.
    links: Vec<Option<Beta>>,
}

impl<'t> Numbers<'t> {
    /// As taught, or as judged where nothing was.
    pub fn of(trade: &'t Trade, case: &Case) -> Self {
        Self::with(trade, case, trade.learned.layouts.get(&case.layout))
    }

    /// By the numbers of the data, whatever outcomes taught.
    pub fn untaught(trade: &'t Trade, case: &Case) -> Self {
        Self::with(trade, case, None)
    }

    fn with(trade: &'t Trade, case: &Case, taught: Option<&Taught>) -> Self {
        let prior = |row: &CauseRow| {
            let taught = taught.and_then(|taught| taught.priors.get(&row.id)).copied();
            shifted(taught.unwrap_or(Beta::prior(row.prior, row.weight)), row, case)
        };
        let engine_speed = case.engine_speed;
        let causes: Vec<(&CauseRow, Beta)> =
            causes(trade, case).into_iter().map(|row| (row, prior(row))).collect();
        let applies = |row: &SignRow| row.supports.is_empty() || row.supports.contains(&case.support);
        let signs = trade.signs.iter().enumerate().filter(|(_, row)| applies(row));
        let signs = signs.map(|(index, row)| sign(index, row, (&causes, engine_speed), taught)).collect();
        Self { causes, signs }
    }

    /// A network with one value of each number, in data order: priors, then each sign's leak and links.
    pub fn network<N: Number>(&self, mut value: impl FnMut(Beta) -> N) -> Network<N> {
        let causes = self.causes.iter().map(|(row, prior)| Cause {
            id: row.id.clone(),
            group: row.group,
            prior: value(*prior),
        });
        let causes = causes.collect();
        let signs = self.signs.iter().map(|sign| Sign {
            row: sign.row,
            leak: value(sign.leak),
            miss: sign
                .links
                .iter()
                .map(|link| link.map_or(N::all(1.0), |link| N::all(1.0) - value(link)))
                .collect(),
        });
        Network { causes, signs: signs.collect() }
    }
}

/// The causes that exist on this car, in data order.
fn causes<'t>(trade: &'t Trade, case: &Case) -> Vec<&'t CauseRow> {
    let listed = trade.layout(&case.layout).map(|layout| layout.causes.as_slice()).unwrap_or_default();
    let exists = |row: &&CauseRow| {
        listed.contains(&row.id)
            && (row.gearboxes.is_empty()
                || case.gearbox.is_none_or(|gearbox| row.gearboxes.contains(&gearbox)))
    };
    trade.causes.iter().filter(exists).collect()
}

/// By how much the odds of each cause are shifted on this car, in data order: with its layout and its gearbox all that
/// makes its network another than that of the next car.
pub fn odds(trade: &Trade, case: &Case) -> Vec<f64> {
    causes(trade, case).into_iter().map(|row| odds_of(row, case)).collect()
}

fn odds_of(row: &CauseRow, case: &Case) -> f64 {
    shifts(row, case).map(|shift| shift.odds).product()
}

/// A prior with its odds as they are on this car.
fn shifted(prior: Beta, row: &CauseRow, case: &Case) -> Beta {
    let odds = odds_of(row, case);
    if odds == 1.0 {
        return prior;
    }
    let now = odds * prior.a / prior.b;
    Beta::prior(now / (1.0 + now), prior.a + prior.b)
}

/// What shifts a cause on this car: how its bearing sits, what it has run, what is complained of, whether it comes back.
pub fn shifts<'r>(row: &'r CauseRow, case: &Case) -> impl Iterator<Item = &'r PriorShift> {
    let holds = |shift: &&PriorShift| {
        (shift.layouts.is_empty() || shift.layouts.contains(&case.layout))
            && (shift.seats.is_empty() || case.seat.is_some_and(|seat| shift.seats.contains(&seat)))
            && shift.from_km.is_none_or(|from| case.odometer_km.is_some_and(|km| km >= from))
            && (shift.sounds.is_empty()
                || case.complaint_sounds.iter().any(|sound| shift.sounds.contains(sound)))
            && (shift.occasions.is_empty() || shift.occasions.contains(&case.occasion))
    };
    row.shifts.iter().filter(holds).collect::<Vec<_>>().into_iter()
}

/// `engine_speed`: the shaft turns while the car stands.
fn sign(
    index: usize,
    row: &SignRow,
    (causes, engine_speed): (&[(&CauseRow, Beta)], bool),
    taught: Option<&Taught>,
) -> SignNumbers {
    let taught = taught.and_then(|taught| taught.signs.get(&row.id));
    let turns = |link: &&Link| link.speed.is_none_or(|speed| (speed == Speed::Engine) == engine_speed);
    let link = |cause: &CauseRow| {
        let judged = row.links.iter().find(|link| link.cause == cause.id && turns(link))?;
        let taught = taught.and_then(|sign| sign.links.get(&cause.id)).copied();
        Some(taught.unwrap_or(Beta::prior(judged.p, row.weight)))
    };
    SignNumbers {
        row: index,
        leak: taught.map_or(Beta::prior(row.leak, row.weight), |sign| sign.leak),
        links: causes.iter().map(|(cause, _)| link(cause)).collect(),
    }
}
