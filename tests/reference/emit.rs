//! Prints our numbers as JSON for `sorting.py`, which asks general-purpose libraries for the same.

#![expect(clippy::unwrap_used, clippy::print_stdout, reason = "a reference run may fail loudly")]

use std::time::Instant;

use serde_json::{Value, json};
use steady_core::model::case::Case;
use steady_core::model::standing::{CauseGroup, Support};
use steady_core::model::visit::Gearbox;
use steady_core::outcomes::score::{Forecast, scores};
use steady_core::sorting::chance::Chance;
use steady_core::sorting::evidence::Observation;
use steady_core::sorting::network::{Cause, Network, Sign};
use steady_core::sorting::posterior::posterior;
use steady_core::trade::load;

const RANDOM_NETWORKS: usize = 200;
const EVIDENCE_ON_SHIPPED: usize = 20;
const FORECASTS: usize = 5_000;

fn main() {
    let mut chance = Chance::seeded(20_261_125);
    let shipped = shipped();
    let all_seen: Vec<Observation> = (0..shipped.signs.len()).map(Observation::present).collect();
    let mut on_shipped: Vec<Vec<Observation>> =
        (0..EVIDENCE_ON_SHIPPED).map(|_| evidence(&shipped, &mut chance)).collect();
    on_shipped.push(all_seen.clone());
    let random = (0..RANDOM_NETWORKS).map(|_| {
        let network = random_network(&mut chance);
        let observed = evidence(&network, &mut chance);
        compared(&network, &[observed])
    });
    let random: Vec<Value> = random.collect();
    println!(
        "{}",
        json!({
            "shipped": compared(&shipped, &on_shipped),
            "random": random,
            "scores": scored(&mut chance),
            "seconds": { "all_signs_seen": seconds(&shipped, &all_seen) },
        })
    );
}

fn shipped() -> Network {
    let (trade, _) = load(&[]).unwrap();
    let case = Case {
        gearbox: Some(Gearbox::AutomatedClutch),
        ..Case::unanswered("rigid-engine-speed", Support::Rigid, trade.rules_for(None))
    };
    Network::of(&trade, &case)
}

fn random_network(chance: &mut Chance) -> Network {
    let causes = 2 + (chance.uniform() * 9.0) as usize;
    let signs = 2 + (chance.uniform() * 18.0) as usize;
    let all = (0..causes).map(|index| Cause {
        id: format!("cause-{index}"),
        group: CauseGroup::Other,
        prior: 0.01 + 0.4 * chance.uniform(),
    });
    let causes_of = all.collect();
    let sign = |chance: &mut Chance| Sign {
        row: 0,
        leak: 0.001 + 0.1 * chance.uniform(),
        miss: (0..causes)
            .map(|_| if chance.happens(0.35) { 0.02 + 0.95 * chance.uniform() } else { 1.0 })
            .collect(),
    };
    Network { causes: causes_of, signs: (0..signs).map(|_| sign(chance)).collect() }
}

fn evidence(network: &Network, chance: &mut Chance) -> Vec<Observation> {
    let mut observed = Vec::new();
    for sign in 0..network.signs.len() {
        match (chance.uniform() * 4.0) as usize {
            0 => observed.push(Observation::present(sign)),
            1 => observed.push(Observation::absent(sign)),
            2 if chance.happens(0.3) => observed.push(Observation { sign, if_present: 0.4, if_absent: 0.2 }),
            _ => {}
        }
    }
    observed
}

/// A network with evidence and what we make of it.
fn compared(network: &Network, evidence: &[Vec<Observation>]) -> Value {
    let set = |observed: &Vec<Observation>| {
        let found = posterior(network, observed);
        let signs = observed.iter().map(|one| json!([one.sign, one.if_absent, one.if_present]));
        json!({
            "signs": signs.collect::<Vec<_>>(),
            "posterior": found.causes,
            "log_evidence": found.log_evidence,
        })
    };
    let sign = |sign: &Sign| {
        let links: Vec<Value> = (0..network.causes.len())
            .filter(|cause| sign.links(*cause))
            .map(|cause| json!([cause, 1.0 - sign.miss_of(cause)]))
            .collect();
        json!({ "leak": sign.leak, "links": links })
    };
    json!({
        "priors": network.causes.iter().map(|cause| cause.prior).collect::<Vec<_>>(),
        "signs": network.signs.iter().map(sign).collect::<Vec<_>>(),
        "evidence": evidence.iter().map(set).collect::<Vec<_>>(),
    })
}

/// Forecasts that are off on purpose, and our scores of them.
fn scored(chance: &mut Chance) -> Value {
    let forecasts: Vec<Forecast> = (0..FORECASTS)
        .map(|_| {
            let probability = chance.uniform();
            let there = chance.happens(0.15 + 0.6 * probability * probability);
            Forecast { probability, there, base: 0.35 }
        })
        .collect();
    json!({
        "probability": forecasts.iter().map(|one| one.probability).collect::<Vec<_>>(),
        "there": forecasts.iter().map(|one| one.there).collect::<Vec<_>>(),
        "ours": scores(&forecasts),
    })
}

/// Median time of one full posterior.
fn seconds(network: &Network, observed: &[Observation]) -> f64 {
    let mut times: Vec<f64> = (0..501)
        .map(|_| {
            let start = Instant::now();
            std::hint::black_box(posterior(network, std::hint::black_box(observed)));
            start.elapsed().as_secs_f64()
        })
        .collect();
    times.sort_by(f64::total_cmp);
    times.get(times.len() / 2).copied().unwrap()
}
