//! The sorting: what a screen needs after an answer, at its worst, and learning from many outcomes.

use steady_core::model::answer::AnswerValue;
use steady_core::model::case::{Case, CaseAnswer};
use steady_core::model::outcome::Outcome;
use steady_core::model::standing::Support;
use steady_core::model::visit::Gearbox;
use steady_core::outcomes::learn::learn;
use steady_core::sorting::chance::Chance;
use steady_core::sorting::draws::Draws;
use steady_core::sorting::evidence::Observation;
use steady_core::sorting::foresee::OpenStep;
use steady_core::sorting::network::Network;
use steady_core::sorting::posterior::posterior;
use steady_core::sorting::sort::sort;
use steady_core::trade::rows::{Form, Reads, StepRow};
use steady_core::trade::{Trade, load};

use super::{report, timed};

pub fn measure() {
    let (trade, _) = load(&[]).unwrap();
    let mut case = unanswered(&trade);
    let steps: Vec<&StepRow> = trade
        .steps
        .iter()
        .filter(|row| row.supports.is_empty() || row.supports.contains(&Support::Rigid))
        .collect();
    let draws = Draws::of(&trade, &case, 1);
    let mut times = Vec::new();
    for _ in 0..20 {
        timed(&mut times, || Draws::of(&trade, &case, 1));
    }
    report("drawing the networks of one kind of car, once a start", times);
    let network = Network::of(&trade, &case);
    let seen: Vec<Observation> = (0..network.signs.len()).map(Observation::present).collect();
    let mut times = Vec::new();
    for _ in 0..500 {
        timed(&mut times, || posterior(&network, &seen));
    }
    report("full posterior, every sign seen", times);
    let mut times = Vec::new();
    let mut worst = Vec::new();
    for upto in 0..=steps.len() {
        let (answered, open) = steps.split_at(upto);
        case.answers = answered.iter().map(|row| (row.id.clone(), found(row))).collect();
        let open: Vec<OpenStep<'_>> =
            open.iter().filter(|row| row.recommended).map(|row| OpenStep { row, off_topic: false }).collect();
        let mut here = Vec::new();
        for _ in 0..20 {
            timed(&mut here, || sort(&trade, &case, &open, Some(&draws)));
        }
        if here.iter().min() > worst.iter().min() {
            worst.clone_from(&here);
        }
        times.extend(here);
    }
    report("sorting, account, interval, next check; everything found", times);
    report("  of which: at the answer where it takes longest", worst);
    let outcomes = outcomes(&trade, &network);
    let mut times = Vec::new();
    for _ in 0..10 {
        timed(&mut times, || learn(&trade, &outcomes));
    }
    report("learning from 10,000 outcomes", times);
}

fn unanswered(trade: &Trade) -> Case {
    Case {
        gearbox: Some(Gearbox::AutomatedClutch),
        idle_rpm: Some([700, 800]),
        ..Case::unanswered("rigid-engine-speed", Support::Rigid, trade.rules_for(None))
    }
}

/// The answer of a step that finds most.
fn found(row: &StepRow) -> CaseAnswer {
    let mut all =
        row.answers.iter().filter(|answer| answer.reads == Reads::Found).map(|answer| answer.id.clone());
    let value = match row.form {
        Form::Reading => AnswerValue::Reading(560.0),
        Form::AnyOf => AnswerValue::Any(all.collect()),
        Form::OneOf => AnswerValue::One(all.next_back().unwrap_or_else(|| row.answers[0].id.clone())),
    };
    CaseAnswer { value, temperature: None, found: true, open: false, limited: false, measured: None }
}

fn outcomes(trade: &Trade, network: &Network) -> Vec<Outcome> {
    let mut chance = Chance::seeded(1);
    (0..10_000)
        .map(|_| {
            let there: Vec<bool> = network.causes.iter().map(|cause| chance.happens(cause.prior)).collect();
            let signs = network.signs.iter().map(|sign| {
                let seen = !chance.happens(sign.absent(|cause| there[cause]));
                (trade.signs[sign.row].id.clone(), seen)
            });
            let signs = signs.collect();
            let ids = || network.causes.iter().map(|cause| cause.id.clone());
            Outcome {
                causes: ids().zip(&there).filter(|(_, there)| **there).map(|(id, _)| id).collect(),
                layout: "rigid-engine-speed".to_owned(),
                signs,
                sorted: ids().map(|id| (id, 0.1)).collect(),
                knowledge: String::new(),
            }
        })
        .collect()
}
