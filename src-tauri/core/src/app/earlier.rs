//! What gauges read on earlier visits of the same car, at the same step.

use crate::model::bench::GaugeStand;
use crate::model::gauge::Earlier;
use crate::model::limits;
use crate::model::standing::Support;
use crate::model::time::Moment;
use crate::trade::bench::BenchTables;
use crate::walk::bench as walk_bench;
use crate::walk::record;

use super::fault::Fault;
use super::play_gauge;
use super::steady::Inner;

/// Readings less than a day apart are of one look at the car, not of its history.
const DAY_MS: f64 = 86_400_000.0;

/// Movement at a step on earlier visits of a visit's car, oldest first. What was read before a repair is left
/// out: once a ring was turned after assembly, another bearing or seat is read. So is a broken chain.
pub(super) fn earlier(
    inner: &mut Inner,
    visit: &str,
    step: &str,
    tables: &BenchTables,
) -> Result<Vec<Earlier>, Fault> {
    let standing = inner.standing(visit)?;
    let now = inner.now();
    let vehicle = &standing.intake.vehicle;
    let mut known: Vec<Earlier> = Vec::new();
    for other in inner.store.visits_of_car(&vehicle.plate, &vehicle.vin)? {
        let chain = inner.store.chain(&other)?;
        if chain.broken_at.is_some() {
            continue;
        }
        let record = record::read(&chain.entries);
        let bench = walk_bench::read(&chain.entries, &record);
        if other != visit {
            let maker_mm = record.intake.vehicle.maker_play_mm;
            let mut stands = play_gauge::stands(&bench, maker_mm, tables).into_iter();
            let stand = stands.find(|gauge| gauge.step == step);
            known.extend(stand.and_then(|gauge| as_earlier(&gauge, standing.support, now)));
        }
        if bench.ring.is_some() {
            known.clear();
        }
    }
    known.sort_by(|a, b| b.days_ago.total_cmp(&a.days_ago));
    Ok(known.split_off(known.len().saturating_sub(limits::EARLIER)))
}

/// A result as a later visit counts it, if it is one: at the same kind of support, at least a day ago, with an
/// uncertainty.
fn as_earlier(gauge: &GaugeStand, support: Support, now: Moment) -> Option<Earlier> {
    let uncertainty = gauge.result.uncertainty?;
    let days_ago = (now.0 - gauge.at.0) as f64 / DAY_MS;
    let counts = gauge.result.support == support && days_ago >= 1.0 && uncertainty.standard_mm > 0.0;
    counts.then_some(Earlier {
        days_ago,
        movement_mm: gauge.result.mean_mm,
        standard_mm: uncertainty.standard_mm,
    })
}
