//! The sorting by a second way of working it out, and what must hold of its account, its gains and its
//! intervals whatever is answered.

use std::collections::BTreeMap;

use serde_json::{Value, json};
use steady_core::model::case::{Case, CaseAnswer};
use steady_core::model::standing::{CauseGroup, Support};
use steady_core::model::visit::Gearbox;
use steady_core::sorting::act_or_wait::choices;
use steady_core::sorting::chance::Chance;
use steady_core::sorting::draws::Draws;
use steady_core::sorting::evidence::{Observation, observations};
use steady_core::sorting::explain::decibans;
use steady_core::sorting::foresee::{OpenStep, foresee, possible_answers};
use steady_core::sorting::likelihood;
use steady_core::sorting::network::{Cause, Network, Sign};
use steady_core::sorting::next::expected_gain;
use steady_core::sorting::posterior::posterior;
use steady_core::sorting::sort::sort;
use steady_core::trade::{Trade, load};

use crate::support::{case, report};

const RIGID: &str = "rigid-engine-speed";

/// Cases of every flavour, by their answers.
const CASES: [&str; 9] = [
    "",
    "idle-speed=560 idle-noise=rattle idle-raise-effect=gone play-vertical=none play-lateral=none turn-by-hand=smooth",
    "creep-noise=rattle engagement-setting=raised engagement-reset-effect=gone play-vertical=none play-lateral=none turn-by-hand=smooth",
    "idle-noise=pops misfire-evidence=counts play-vertical=none play-lateral=none turn-by-hand=smooth",
    "neutral-2500-buzz=felt play-vertical=felt",
    "idle-noise=hiss play-vertical=none play-lateral=none turn-by-hand=resists air-leak-test=none",
    "idle-noise=pops misfire-evidence=counts play-lateral=felt",
    "neutral-2500-buzz=felt play-vertical=felt play-lateral=felt turn-by-hand=rough housing-look=marks+grease-or-dust",
    "idle-noise=rattle+pops+knock+hiss+whine idle-raise-effect=less road-speed-vibration=grows-with-speed shaft-look=dented",
];

fn random_network(chance: &mut Chance) -> Network {
    let causes = 1 + (chance.uniform() * 8.0) as usize;
    let signs = 1 + (chance.uniform() * 12.0) as usize;
    let cause = |index: usize, chance: &mut Chance| Cause {
        id: format!("cause-{index}"),
        group: if chance.happens(0.4) { CauseGroup::Bearing } else { CauseGroup::Other },
        prior: 0.01 + 0.5 * chance.uniform(),
    };
    let sign = |chance: &mut Chance| Sign {
        row: 0,
        leak: 0.001 + 0.2 * chance.uniform(),
        miss: (0..causes).map(|_| if chance.happens(0.5) { chance.uniform() } else { 1.0 }).collect(),
    };
    let causes_of = (0..causes).map(|index| cause(index, chance)).collect();
    Network { causes: causes_of, signs: (0..signs).map(|_| sign(chance)).collect() }
}

fn random_evidence(network: &Network, chance: &mut Chance) -> Vec<Observation> {
    let mut observed = Vec::new();
    for sign in 0..network.signs.len() {
        match (chance.uniform() * 4.0) as usize {
            0 => observed.push(Observation::present(sign)),
            1 => observed.push(Observation::absent(sign)),
            2 => observed.push(Observation { sign, if_present: 0.4, if_absent: 0.2 }),
            _ => {}
        }
    }
    observed
}

/// Every combination of causes, one after the other, in logarithms: slow, plain, and not our way. Gives the
/// causes, then none, then no bearing cause, then the logarithm of the evidence.
fn plainly(network: &Network, observed: &[Observation]) -> Vec<f64> {
    let causes = network.causes.len();
    let log_weight = |mask: usize| -> f64 {
        let there = |cause: usize| mask >> cause & 1 == 1;
        let prior =
            |(index, cause): (usize, &Cause)| if there(index) { cause.prior } else { 1.0 - cause.prior };
        let priors: f64 = network.causes.iter().enumerate().map(prior).map(f64::ln).sum();
        let likelihood = |one: &Observation| {
            let absent = network.signs[one.sign].absent(there);
            (one.if_present * (1.0 - absent) + one.if_absent * absent).ln()
        };
        priors + observed.iter().map(likelihood).sum::<f64>()
    };
    let logs: Vec<f64> = (0..1 << causes).map(log_weight).collect();
    let top = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let sum = |keep: &dyn Fn(usize) -> bool| -> f64 {
        logs.iter().enumerate().filter(|(mask, _)| keep(*mask)).map(|(_, log)| (log - top).exp()).sum()
    };
    let total = sum(&|_| true);
    let bearing: usize = (0..causes)
        .filter(|cause| network.causes[*cause].group == CauseGroup::Bearing)
        .map(|cause| 1 << cause)
        .sum();
    let mut all: Vec<f64> = (0..causes).map(|cause| sum(&|mask| mask >> cause & 1 == 1) / total).collect();
    all.extend([sum(&|mask| mask == 0) / total, sum(&|mask| mask & bearing == 0) / total, top + total.ln()]);
    all
}

fn ours(network: &Network, observed: &[Observation]) -> Vec<f64> {
    let found = posterior(network, observed);
    let mut all = found.causes;
    all.extend([found.none, found.no_bearing, found.log_evidence]);
    all
}

#[track_caller]
fn same(found: &[f64], expected: &[f64], tolerance: f64) {
    assert_eq!(found.len(), expected.len());
    for (found, expected) in found.iter().zip(expected) {
        assert!((found - expected).abs() <= tolerance, "{found} against {expected}");
    }
}

#[test]
fn inference_agrees_with_plain_enumeration() {
    let mut chance = Chance::seeded(1);
    let mut compared = 0;
    for _ in 0..300 {
        let network = random_network(&mut chance);
        let observed = random_evidence(&network, &mut chance);
        let expected = plainly(&network, &observed);
        same(&ours(&network, &observed), &expected, 1e-11);
        compared += expected.len();
    }
    assert!(compared > 1_500, "only {compared} values compared");
}

#[test]
fn order_of_the_evidence_changes_nothing() {
    let mut chance = Chance::seeded(2);
    for _ in 0..100 {
        let network = random_network(&mut chance);
        let observed = random_evidence(&network, &mut chance);
        let mut turned = observed.clone();
        turned.reverse();
        turned.rotate_left(observed.len() / 2);
        same(&ours(&network, &turned), &ours(&network, &observed), 1e-12);
    }
}

/// The plain product of these would be below the least number there is.
#[test]
fn forty_improbable_signs_do_not_underflow() {
    let cause = |index: usize| Cause { id: index.to_string(), group: CauseGroup::Other, prior: 1e-6 };
    let sign = |index: usize| Sign {
        row: 0,
        leak: 1e-12,
        miss: (0..4).map(|cause| if (index + cause).is_multiple_of(3) { 1.0 - 1e-9 } else { 1.0 }).collect(),
    };
    let network = Network { causes: (0..4).map(cause).collect(), signs: (0..40).map(sign).collect() };
    for seen in [0, 20, 40] {
        let observed: Vec<Observation> = (0..40)
            .map(|sign| if sign < seen { Observation::present(sign) } else { Observation::absent(sign) })
            .collect();
        let expected = plainly(&network, &observed);
        let found = ours(&network, &observed);
        same(&found[..6], &expected[..6], 1e-3);
        assert!(found[6].is_finite() && (found[6] - expected[6]).abs() <= 1e-3 * expected[6].abs());
        if seen == 40 {
            assert!(found[6] < -745.0, "{} would not have underflowed", found[6]);
        }
    }
}

#[test]
fn every_account_adds_up() {
    let mut added = 0;
    for answers in CASES {
        let report = report(&case(RIGID, answers));
        for cause in report["causes"].as_array().unwrap() {
            let number = |key: &str| cause[key].as_f64().unwrap();
            let weights = |key: &str| -> f64 {
                let list = cause[key].as_array().unwrap();
                list.iter().map(|weight| weight["decibans"].as_f64().unwrap()).sum()
            };
            let sum = decibans(number("before")) + weights("for") + weights("against") + number("together");
            let shown = decibans(number("probability"));
            assert!((sum - shown).abs() < 1e-9, "{answers}: {}: {sum} against {shown}", cause["id"]);
            added += 1;
        }
    }
    // Fifteen causes of this layout, and that there is none.
    assert_eq!(added, CASES.len() * 16);
}

/// Two directions felt are one sign: each carries half of its weight, not the whole twice.
#[test]
fn steps_of_one_sign_share_its_weight() {
    let weight = |answers: &str| {
        let report = report(&case(RIGID, answers));
        let seat = report["causes"]
            .as_array()
            .unwrap()
            .iter()
            .find(|row| row["id"] == "loose-seat")
            .unwrap()
            .clone();
        seat["for"].as_array().unwrap().iter().map(|one| one["decibans"].as_f64().unwrap()).sum::<f64>()
    };
    assert!((weight("play-vertical=felt play-lateral=felt") - weight("play-vertical=felt")).abs() < 1e-9);
}

#[test]
fn intervals_hold_their_probability_and_stay_put() {
    for answers in CASES {
        let first = report(&case(RIGID, answers));
        for cause in first["causes"].as_array().unwrap() {
            let at = |key: &str| cause["interval"][key].as_f64().unwrap();
            let probability = cause["probability"].as_f64().unwrap();
            let held = at("low") <= probability && probability <= at("high");
            assert!(0.0 <= at("low") && held && at("high") <= 1.0, "{answers}: {cause}");
            assert!(at("high") > at("low"), "{answers}: {cause}");
        }
        assert_eq!(first["causes"], report(&case(RIGID, answers))["causes"]);
    }
}

/// The more cars stand behind the numbers, the narrower the interval.
#[test]
fn more_experience_narrows_the_interval() {
    let width = |times: f64| {
        let mut trade = trade();
        trade.causes.iter_mut().for_each(|cause| cause.weight *= times);
        trade.signs.iter_mut().for_each(|sign| sign.weight *= times);
        let case = answered(&[("neutral-2500-buzz", "felt")]);
        let draws = Draws::of(&trade, &case, 1);
        let sorting = sort(&trade, &case, &[], Some(&draws));
        sorting.causes.iter().filter_map(|cause| cause.interval).map(|one| one.high - one.low).sum::<f64>()
    };
    let (few, more) = (width(1.0), width(25.0));
    assert!(more < 0.5 * few, "{more} against {few}");
}

fn trade() -> Trade {
    load(&[]).unwrap().0
}

fn answered(answers: &[(&str, &str)]) -> Case {
    let value = |value: &str| serde_json::from_value(json!(value)).unwrap();
    let answer = |text: &str| CaseAnswer {
        value: value(text),
        temperature: None,
        found: false,
        open: false,
        limited: false,
        measured: None,
    };
    Case {
        gearbox: Some(Gearbox::AutomatedClutch),
        idle_rpm: Some([700, 800]),
        answers: answers
            .iter()
            .map(|(step, text)| ((*step).to_owned(), answer(text)))
            .collect::<BTreeMap<_, _>>(),
        ..Case::unanswered(RIGID, Support::Rigid, trade().rules_for(None))
    }
}

/// Over random answers: a gain is never negative, and zero exactly where no answer changes a decision.
#[test]
fn gain_is_never_negative_and_zero_where_nothing_changes() {
    let trade = trade();
    let mut chance = Chance::seeded(3);
    let (mut nothing, mut something) = (0, 0);
    for _ in 0..60 {
        let mut case = answered(&[]);
        let mut open = Vec::new();
        for row in
            trade.steps.iter().filter(|row| row.supports.is_empty() || row.supports.contains(&Support::Rigid))
        {
            let possible = possible_answers(row, &case);
            let pick = (chance.uniform() * 2.0 * possible.len() as f64) as usize;
            match possible.get(pick) {
                Some(value) => {
                    let answer = CaseAnswer {
                        value: value.clone(),
                        temperature: None,
                        found: false,
                        open: false,
                        limited: false,
                        measured: None,
                    };
                    case.answers.insert(row.id.clone(), answer);
                }
                None => open.push(row),
            }
        }
        let network = Network::of(&trade, &case);
        let observed = observations(&trade, &network, &case);
        let now = posterior(&network, &observed);
        let decisions = choices(&trade, &network);
        for row in open {
            let foreseen = foresee(&trade, &network, &case, (&observed, &now), row);
            let gain = expected_gain(&foreseen, &decisions, &now);
            let changes = foreseen.iter().any(|one| {
                decisions
                    .iter()
                    .any(|it| it.acts(it.probability(&one.posterior)) != it.acts(it.probability(&now)))
            });
            assert!(gain >= 0.0, "{gain} at {}", row.id);
            assert_eq!(gain > 1e-12, changes, "{gain} at {}", row.id);
            if changes { something += 1 } else { nothing += 1 }
        }
    }
    assert!(nothing > 50 && something > 50, "{nothing} and {something}");
}

#[test]
fn dear_checks_are_not_worth_their_hazard() {
    let mut trade = trade();
    let case = answered(&[("idle-noise", "pops")]);
    let row = trade.steps.iter().find(|row| row.id == "misfire-evidence").unwrap().clone();
    let open = [OpenStep { row: &row, off_topic: false }];
    for (minutes, step, why) in [(1e-3, Some("misfire-evidence"), None), (1e6, None, Some("stop-not-worth"))]
    {
        trade
            .losses
            .losses
            .iter_mut()
            .filter(|loss| loss.id == "hazard")
            .for_each(|loss| loss.minutes = minutes);
        let sorting = sort(&trade, &case, &open, None);
        let next = sorting.next_check.as_ref().map(|next| next.step.as_str());
        assert_eq!((next, sorting.no_check.as_deref()), (step, why));
    }
    assert_eq!(sort(&trade, &case, &[], None).no_check.as_deref(), Some("stop-all-done"));
}

#[test]
fn next_check_says_why_and_what_it_gains() {
    let first = report(&case(RIGID, "neutral-2500-buzz=felt"));
    assert_eq!(first["next_check"]["why"], "next-hands-on");
    let then = report(&case(
        RIGID,
        "neutral-2500-buzz=felt play-vertical=none play-lateral=none turn-by-hand=smooth",
    ));
    assert!(then["next_check"]["gain"].as_f64().unwrap() >= 0.0, "{then:#}");
    assert!(then["no_check"].is_null());
    assert_ne!(then["next_check"]["why"], "next-hands-on");
}

/// The rating of a bearing suspicion turns at one half by rule; the losses in the data say the same.
#[test]
fn losses_agree_with_the_rules() {
    let trade = trade();
    let case = answered(&[]);
    let network = Network::of(&trade, &case);
    let sorting = sort(&trade, &case, &[], None);
    for id in ["warning-or-caution", "repair-now-or-watch"] {
        let judgement = sorting.judgements.iter().find(|one| one.id == id).unwrap();
        assert!((judgement.turns_at - 0.5).abs() < 1e-12);
    }
    for judgement in &sorting.judgements {
        let acts = judgement.act.expected <= judgement.wait.expected;
        assert_eq!(acts, judgement.acts, "{judgement:?}");
    }
    assert_eq!(
        choices(&trade, &network).len(),
        2 + network.causes.iter().filter(|one| one.group == CauseGroup::Other).count()
    );
}

#[test]
fn surprise_is_named_where_the_list_does_not_fit() {
    let why = |answers: &str| report(&case(RIGID, answers))["surprise"]["why"].clone();
    let others = "idle-speed=750 idle-raise-effect=same misfire-evidence=none engagement-setting=standard creep-noise=none \
                  housing-look=sound play-vertical=none play-lateral=none play-far-end=none turn-by-hand=smooth \
                  coupling-look=sound shaft-look=sound shield-and-mounts=sound neutral-2500-buzz=none air-leak-test=none";
    assert_eq!(why(&format!("idle-noise=rattle {others}")), "surprise-not-listed");
    for answers in CASES.iter().take(7) {
        assert_eq!(why(answers), Value::Null, "{answers}");
    }
}

/// Felt play, a dent and a misfire, each seldom, and none of the noises that any of them brings about.
#[test]
fn signs_that_no_cause_brings_about_together_are_said_to_disagree() {
    let answers = "idle-noise=none misfire-evidence=counts neutral-2500-buzz=none play-vertical=felt shaft-look=dented \
                   shield-and-mounts=loose";
    let report = report(&case(RIGID, answers));
    assert_eq!(report["surprise"]["why"], "surprise-signs-disagree", "{:#}", report["surprise"]);
    let steps: Vec<&str> =
        report["surprise"]["steps"].as_array().unwrap().iter().filter_map(Value::as_str).collect();
    assert!(steps.contains(&"idle-noise") && steps.contains(&"neutral-2500-buzz"), "{steps:?}");
}

#[test]
fn a_turn_names_an_open_answer_that_changes_the_order() {
    let report = report(&case(RIGID, "idle-noise=rattle"));
    let turn = &report["turn"];
    assert_ne!(turn["cause"], report["causes"][0]["id"], "{report:#}");
    assert!(turn["probability"].as_f64().unwrap() > 0.0);
}

/// The scale's own boundaries: IPCC guidance note of 2010, table 1, from memory.
#[test]
fn words_change_at_the_published_boundaries() {
    for (probability, word) in [
        (0.0099, "exceptionally-unlikely"),
        (0.01, "very-unlikely"),
        (0.0999, "very-unlikely"),
        (0.10, "unlikely"),
        (0.3299, "unlikely"),
        (0.33, "about-as-likely-as-not"),
        (0.6599, "about-as-likely-as-not"),
        (0.66, "likely"),
        (0.8999, "likely"),
        (0.90, "very-likely"),
        (0.9899, "very-likely"),
        (0.99, "virtually-certain"),
    ] {
        assert_eq!(likelihood::word(probability), word, "{probability}");
    }
}
