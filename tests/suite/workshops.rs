//! Three hundred synthetic workshops whose truth is known: each learns from its own outcomes, and then says
//! probabilities that come true as often as they say.

use steady_core::model::case::Case;
use steady_core::model::outcome::Outcome;
use steady_core::model::standing::Support;
use steady_core::model::visit::Gearbox;
use steady_core::outcomes::learn::learn;
use steady_core::outcomes::score::{Forecast, scores};
use steady_core::sorting::chance::Chance;
use steady_core::sorting::evidence::Observation;
use steady_core::sorting::network::{Network, Numbers};
use steady_core::sorting::posterior::posterior;
use steady_core::trade::{Trade, load};

const WORKSHOPS: usize = 300;
/// Cars a workshop learns from, and cars it is then asked about.
const TAUGHT: usize = 120;
const ASKED: usize = 12;

fn kind() -> Case {
    let rules = load(&[]).unwrap().0.rules_for(None);
    Case {
        gearbox: Some(Gearbox::AutomatedClutch),
        ..Case::unanswered("rigid-engine-speed", Support::Rigid, rules)
    }
}

/// One car: what is there, and what was seen of the signs that were looked for.
struct Car {
    there: Vec<bool>,
    seen: Vec<Option<bool>>,
}

fn car(truth: &Network, chance: &mut Chance) -> Car {
    let there: Vec<bool> = truth.causes.iter().map(|cause| chance.happens(cause.prior)).collect();
    let look = |sign: &steady_core::sorting::network::Sign, chance: &mut Chance| {
        let seen = !chance.happens(sign.absent(|cause| there[cause]));
        chance.happens(0.6).then_some(seen)
    };
    let seen = truth.signs.iter().map(|sign| look(sign, chance)).collect();
    Car { there, seen }
}

fn sorted(network: &Network, car: &Car) -> Vec<f64> {
    let observe = |(sign, seen): (usize, &Option<bool>)| {
        seen.map(|seen| if seen { Observation::present(sign) } else { Observation::absent(sign) })
    };
    posterior(network, &car.seen.iter().enumerate().filter_map(observe).collect::<Vec<_>>()).causes
}

fn outcome(trade: &Trade, network: &Network, car: &Car) -> Outcome {
    let ids = || network.causes.iter().map(|cause| cause.id.clone());
    let sign = |index: usize| trade.signs[network.signs[index].row].id.clone();
    Outcome {
        causes: ids().zip(&car.there).filter(|(_, there)| **there).map(|(id, _)| id).collect(),
        layout: kind().layout,
        signs: car
            .seen
            .iter()
            .enumerate()
            .filter_map(|(index, seen)| seen.map(|seen| (sign(index), seen)))
            .collect(),
        sorted: ids().map(|id| (id, 0.0)).collect(),
        knowledge: String::new(),
    }
}

#[test]
fn taught_workshops_are_calibrated() {
    let (judged, _) = load(&[]).unwrap();
    let mut chance = Chance::seeded(20_261_125);
    let (mut taught_forecasts, mut judged_forecasts) = (Vec::new(), Vec::new());
    for _ in 0..WORKSHOPS {
        let truth = Numbers::of(&judged, &kind()).network(|beta| chance.beta(beta).clamp(1e-6, 1.0 - 1e-6));
        let as_judged = Network::of(&judged, &kind());
        let outcomes: Vec<Outcome> =
            (0..TAUGHT).map(|_| outcome(&judged, &as_judged, &car(&truth, &mut chance))).collect();
        let mut trade = judged.clone();
        trade.learned = learn(&judged, &outcomes);
        let taught = Network::of(&trade, &kind());
        for _ in 0..ASKED {
            let car = car(&truth, &mut chance);
            let forecasts = |network: &Network| -> Vec<Forecast> {
                let sorted = sorted(network, &car);
                sorted
                    .into_iter()
                    .zip(&car.there)
                    .map(|(probability, there)| Forecast { probability, there: *there, base: 0.5 })
                    .collect()
            };
            taught_forecasts.extend(forecasts(&taught));
            judged_forecasts.extend(forecasts(&as_judged));
        }
    }
    let (taught, judged) = (scores(&taught_forecasts), scores(&judged_forecasts));
    let asked_for = car(&Network::of(&load(&[]).unwrap().0, &kind()), &mut Chance::seeded(1)).there.len();
    assert!(asked_for > 10, "only {asked_for} causes");
    assert_eq!(taught.forecasts as usize, WORKSHOPS * ASKED * asked_for);
    let mut looked_at = 0;
    for group in taught.groups.iter().filter(|group| group.count >= 50) {
        let spread = (group.mean * (1.0 - group.mean) / f64::from(group.count)).sqrt();
        let off = (group.frequency - group.mean).abs() / spread;
        assert!(off < 3.3, "{off:.2} standard errors in {group:?}");
        looked_at += 1;
    }
    assert!(looked_at >= 8, "only {looked_at} groups");
    assert!(taught.log_score < judged.log_score, "{} against {}", taught.log_score, judged.log_score);
    assert!(taught.brier < judged.brier);
}
