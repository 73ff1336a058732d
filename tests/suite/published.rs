//! Checks against things outside the project; each value stands with its source in `tests/published/`.

use serde::Deserialize;
use steady_core::model::standing::CauseGroup;
use steady_core::model::vin::VinHint;
use steady_core::sorting::evidence::Observation;
use steady_core::sorting::network::{Cause, Network, Sign};
use steady_core::sorting::next::saved;
use steady_core::sorting::posterior::posterior;
use steady_core::trade::load;
use steady_core::walk::vin;
use steady_core::words::Words;

#[derive(Deserialize)]
struct Sorting {
    fever_inhibition: [f64; 3],
    fever: [f64; 8],
    leak: f64,
    leak_strengths: [f64; 2],
    leak_effect: [f64; 4],
    flu_prior: f64,
    cold_prior: f64,
    finding_none: f64,
    finding_cold: f64,
    finding_flu: f64,
    finding_both: f64,
    flu_given_finding: f64,
    flu_given_finding_printed: f64,
    oil_prior: [f64; 3],
    pay_drill: [f64; 3],
    seismic: [[f64; 3]; 3],
    oil_without_test: f64,
    test_worth: f64,
}

fn sorting() -> Sorting {
    toml::from_str(include_str!("../published/sorting.toml")).unwrap()
}

/// A network of causes known to be present or absent (priors next to 1 and 0) and one sign.
fn one_sign(leak: f64, miss: &[f64], present: &[bool]) -> Network {
    let causes = present.iter().enumerate().map(|(index, present)| Cause {
        id: format!("cause-{index}"),
        group: CauseGroup::Other,
        prior: if *present { 1.0 - 1e-15 } else { 1e-15 },
    });
    Network { causes: causes.collect(), signs: vec![Sign { row: 0, leak, miss: miss.to_vec() }] }
}

/// P(sign present) as the inference has it: the probability of the evidence.
fn effect(leak: f64, miss: &[f64], present: &[bool]) -> f64 {
    posterior(&one_sign(leak, miss, present), &[Observation::present(0)]).log_evidence.exp()
}

#[track_caller]
fn near(found: f64, published: f64, tolerance: f64) {
    assert!((found - published).abs() <= tolerance, "{found} against {published}");
}

#[test]
fn noisy_or_gives_the_published_fever_table() {
    let published = sorting();
    for (index, expected) in published.fever.iter().enumerate() {
        let present = [index & 4 != 0, index & 2 != 0, index & 1 != 0];
        near(effect(1e-15, &published.fever_inhibition, &present), *expected, 1e-12);
    }
}

#[test]
fn leak_gives_the_published_effects() {
    let published = sorting();
    let miss = published.leak_strengths.map(|strength| 1.0 - strength);
    for (index, expected) in published.leak_effect.iter().enumerate() {
        near(effect(published.leak, &miss, &[index & 1 != 0, index & 2 != 0]), *expected, 1e-12);
    }
}

/// Explaining away in a plain table of two causes. Not a noisy-OR, so it is enumerated here; what it
/// checks of ours is Bayes' rule as the reference script and the inference use it.
#[test]
fn two_cause_table_agrees_with_its_exact_value_and_the_rounded_print() {
    let it = sorting();
    let joint = |flu: bool, cold: bool| {
        let prior = |present: bool, p: f64| if present { p } else { 1.0 - p };
        let finding = match (flu, cold) {
            (false, false) => it.finding_none,
            (false, true) => it.finding_cold,
            (true, false) => it.finding_flu,
            (true, true) => it.finding_both,
        };
        prior(flu, it.flu_prior) * prior(cold, it.cold_prior) * finding
    };
    let flu = joint(true, false) + joint(true, true);
    let all = flu + joint(false, false) + joint(false, true);
    near(flu / all, it.flu_given_finding, 5e-8);
    near(flu / all, it.flu_given_finding_printed, 1e-3);
}

/// Posterior odds are prior odds times the likelihood ratio.
#[test]
fn one_link_is_bayes_by_likelihood_ratio() {
    for (prior, leak, strength) in [(0.1_f64, 0.05_f64, 0.8_f64), (0.5, 0.01, 0.3), (0.02, 0.2, 0.95)] {
        let mut network = one_sign(leak, &[1.0 - strength], &[false]);
        network.causes[0].prior = prior;
        let present = 1.0 - (1.0 - leak) * (1.0 - strength);
        let odds = prior / (1.0 - prior) * present / leak;
        near(posterior(&network, &[Observation::present(0)]).causes[0], odds / (1.0 + odds), 1e-12);
        let odds = prior / (1.0 - prior) * (1.0 - present) / (1.0 - leak);
        near(posterior(&network, &[Observation::absent(0)]).causes[0], odds / (1.0 + odds), 1e-12);
    }
}

#[test]
fn value_of_information_is_that_of_the_published_example() {
    let it = sorting();
    let worth = |state: &dyn Fn(usize) -> f64| (0..3).map(|at| state(at) * it.pay_drill[at]).sum::<f64>();
    near(worth(&|at| it.oil_prior[at]), it.oil_without_test, 1e-12);
    let answers = (0..3).map(|reading| {
        let joint = |at: usize| it.oil_prior[at] * it.seismic[at][reading];
        let reads: f64 = (0..3).map(joint).sum();
        // Losses are worth with its sign turned; drilling is the best course without a test.
        reads * saved(&[-worth(&|at| joint(at) / reads), 0.0], 0)
    });
    near(answers.sum(), it.test_worth, 1e-12);
}

#[derive(Deserialize)]
struct Vins {
    vin: Vec<VinRow>,
}

#[derive(Deserialize)]
struct VinRow {
    vin: String,
    check: String,
}

#[test]
fn published_vins_carry_their_check_digit() {
    let rows: Vins = toml::from_str(include_str!("../published/vin.toml")).unwrap();
    assert_eq!(rows.vin.len(), 5);
    for row in rows.vin {
        assert_eq!(vin::check_digit(&row.vin).map(String::from), Some(row.check.clone()), "{}", row.vin);
        assert_eq!(vin::hint(&row.vin.to_lowercase()), Some(VinHint::Fits));
        let other = if row.check == "3" { "4" } else { "3" };
        let wrong = format!("{}{other}{}", &row.vin[..8], &row.vin[9..]);
        assert_eq!(vin::hint(&wrong), Some(VinHint::Differs), "{wrong}");
    }
    for (text, hint) in [
        ("", None),
        ("  ", None),
        ("ABC", Some(VinHint::NotAVin)),
        ("IIIIIIIIIIIIIIIII", Some(VinHint::NotAVin)),
        ("ÄÖÜÄÖÜÄÖÜÄÖÜÄÖÜÄÖ", Some(VinHint::NotAVin)),
    ] {
        assert_eq!(vin::hint(text), hint, "{text}");
    }
}

#[derive(Deserialize)]
struct Road {
    uk: Vec<RoadRow>,
    eu: Vec<RoadRow>,
}

#[derive(Deserialize)]
struct RoadRow {
    item: String,
    row: String,
    class: String,
}

/// Every row shown names a row of the law and both of its outcomes, by the classes the law gives it.
#[test]
fn road_rows_name_the_outcomes_of_the_law() {
    let published: Road = toml::from_str(include_str!("../published/road.toml")).unwrap();
    let words = Words::of("en").unwrap();
    let (trade, _) = load(&[]).unwrap();
    assert_eq!(trade.road.len(), 8);
    for row in &trade.road {
        let text = words.text(&format!("road-{}", row.id)).to_lowercase();
        for (shown, law) in [(&row.uk, &published.uk), (&row.eu, &published.eu)] {
            let Some((item, letter)) = shown
                .split_once(" (")
                .map(|(item, rest)| (item, rest.trim_end_matches(')')))
                .or((!shown.is_empty()).then_some((shown.as_str(), "")))
            else {
                continue;
            };
            let classes: Vec<&str> = law
                .iter()
                .filter(|known| known.item == item && known.row.starts_with(letter))
                .map(|known| known.class.as_str())
                .collect();
            assert!(!classes.is_empty(), "{}: no row {shown} in the law", row.id);
            for class in classes {
                assert!(text.contains(class), "road-{} does not name {class}: {text}", row.id);
            }
        }
    }
}
