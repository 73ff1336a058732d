//! A gauge in the sorting: its readings are a likelihood there, monotone in what was read and in what was felt,
//! and never a way to clear what a hand felt. And the history of a car's gauges over its visits.

use std::path::Path;
use std::sync::Arc;
use std::sync::atomic::{AtomicI64, Ordering};

use proptest::prelude::{ProptestConfig, prop_assert, proptest};
use serde_json::{Value, json};
use steady_core::app::gauge::gauge as judged;
use steady_core::app::replay::replay;
use steady_core::app::{Setup, Steady};
use steady_core::model::answer::AnswerValue;
use steady_core::model::case::{Case, CaseAnswer};
use steady_core::model::gauge::{GaugeDecision, GaugeMeaning, Likelihood, Remedy};
use steady_core::model::rating::Word;
use steady_core::model::standing::{Standing, Support};
use steady_core::sorting::sort::sort_untaught;
use steady_core::trade::load;
use steady_core::urgency::rating::rate;

use crate::support::{MORNING, PlainPress, ask, case, scratch};

/// Five readings about a mean, mm, of a gauge at the bearing with a limit of 0.033 mm.
fn gauge(mean: f64) -> Value {
    let readings: Vec<String> = [0.0, 0.002, -0.002, 0.001, -0.001]
        .iter()
        .map(|off| format!("{:.3}", (mean + off).max(0.0)))
        .collect();
    json!({ "unit": "mm", "readings": readings, "instrument": { "resolution": "0.001", "mpe": "0.008" },
        "place": { "at": "bearing" }, "bearing": { "bore_mm": 35.0, "group": "C3" } })
}

/// Replays a visit with what a hand felt up and down, what a gauge read there, and what was felt sideways.
fn sorted(hand: &str, mean: Option<f64>, lateral: &str) -> Standing {
    let (_folder, steady) = scratch();
    let answers =
        format!("neutral-2500-buzz=felt play-vertical={hand} play-lateral={lateral} turn-by-hand=smooth");
    let mut case = case("rigid-engine-speed", &answers);
    if let Some(mean) = mean {
        case["answers"][1]["gauge"] = gauge(mean);
    }
    let visit = replay(&steady, &case.to_string(), Path::new(".")).unwrap().visit;
    ask(&steady, json!({ "ask": "look", "visit": visit }))
}

fn loose_seat(standing: &Standing) -> f64 {
    standing.sorting.causes.iter().find(|cause| cause.id == "loose-seat").unwrap().probability
}

const MEANS: [f64; 5] = [0.004, 0.026, 0.033, 0.040, 0.10];

#[test]
fn gauge_that_reads_more_never_lowers_sorting_or_rating() {
    for (hand, lateral) in [("unsure", "none"), ("none", "unsure"), ("felt", "none")] {
        let read: Vec<Standing> = MEANS.iter().map(|mean| sorted(hand, Some(*mean), lateral)).collect();
        for pair in read.windows(2) {
            assert!(loose_seat(&pair[0]) <= loose_seat(&pair[1]) + 1e-12, "{hand} {lateral}");
            assert!(pair[0].sorting.bearing_unexcused <= pair[1].sorting.bearing_unexcused + 1e-12);
            assert!(pair[0].urgency.word <= pair[1].urgency.word, "{hand} {lateral}");
        }
        assert_eq!(read[4].urgency.word, Some(Word::Danger), "{hand}: movement proven at a rigid support");
        let by_hand = sorted(hand, None, lateral);
        for (mean, standing) in MEANS.iter().zip(&read).skip(1).take(3) {
            assert!(
                loose_seat(&by_hand) <= loose_seat(standing) + 1e-12,
                "{hand} {mean}: not decided weighs less"
            );
        }
    }
}

#[test]
fn gauge_never_clears_what_a_hand_felt() {
    let by_hand = sorted("felt", None, "none");
    let gauged = sorted("felt", Some(0.004), "none");
    assert_eq!(by_hand.sorting.causes, gauged.sorting.causes);
    assert_eq!(gauged.urgency.word, Some(Word::Danger));
}

#[test]
fn likelihood_speaks_between_unsure_and_felt() {
    let unsure = loose_seat(&sorted("unsure", None, "none"));
    let leaning = loose_seat(&sorted("unsure", Some(0.040), "none"));
    let felt = loose_seat(&sorted("felt", None, "none"));
    assert!(unsure < leaning && leaning < felt, "{unsure} {leaning} {felt}");
    let settled = sorted("unsure", Some(0.004), "none");
    let clear = loose_seat(&sorted("none", None, "none"));
    assert!(clear <= loose_seat(&settled) && loose_seat(&settled) < unsure, "{clear} {:?}", settled.sorting);
}

#[test]
fn account_says_what_the_gauge_weighs() {
    let standing = sorted("unsure", Some(0.10), "none");
    let read = standing.gauges[0].result.likelihood.unwrap();
    let seat = standing.sorting.causes.iter().find(|cause| cause.id == "loose-seat").unwrap();
    let line = seat.speaks_for.iter().find(|weight| weight.step == "play-vertical").unwrap();
    assert_eq!(line.gauge, Some(read.if_movement / read.if_none));
    assert!(
        seat.speaks_for
            .iter()
            .filter(|weight| weight.step != "play-vertical")
            .all(|weight| weight.gauge.is_none())
    );
    let weights: f64 = seat.speaks_for.iter().chain(&seat.against).map(|weight| weight.decibans).sum();
    let decibans = |p: f64| 10.0 * (p / (1.0 - p)).log10();
    let whole = decibans(seat.before) + weights + seat.together;
    assert!((whole - decibans(seat.probability)).abs() < 1e-6, "the account still adds up");
}

/// A rigid support with both directions answered, the first of them by a gauge with these odds for movement.
fn measured(up: (&str, Option<f64>), side: &str, buzz: bool) -> Case {
    let answer = |value: &str, odds: Option<f64>| CaseAnswer {
        value: AnswerValue::One(value.to_owned()),
        temperature: None,
        found: value == "felt",
        open: false,
        limited: false,
        measured: odds
            .map(|odds| Likelihood { if_movement: odds / (1.0 + odds), if_none: 1.0 / (1.0 + odds) }),
    };
    let mut answers = std::collections::BTreeMap::from([
        ("play-vertical".to_owned(), answer(up.0, up.1)),
        ("play-lateral".to_owned(), answer(side, None)),
    ]);
    if buzz {
        answers.insert("neutral-2500-buzz".to_owned(), answer("felt", None));
    }
    let rules = load(&[]).unwrap().0.rules_for(None);
    Case {
        hands_on: vec!["play-vertical".to_owned(), "play-lateral".to_owned()],
        answers,
        ..Case::unanswered("rigid-engine-speed", Support::Rigid, rules)
    }
}

/// The answer that counts for odds: proven, not decided or proven none, by a guard band at 19 to 1.
fn counts(odds: f64) -> &'static str {
    if odds >= 19.0 {
        "felt"
    } else if odds <= 1.0 / 19.0 {
        "none"
    } else {
        "unsure"
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, ..ProptestConfig::default() })]

    #[test]
    fn higher_odds_never_lower_suspicion(
        low in -4.0_f64..4.0, more in 0.0_f64..4.0, side in 0_usize..3, buzz in proptest::bool::ANY
    ) {
        let trade = load(&[]).unwrap().0;
        let side = ["none", "unsure", "felt"][side];
        let sorted_at = |power: f64| {
            let odds = 10_f64.powf(power.min(4.0));
            let case = measured((counts(odds), Some(odds)), side, buzz);
            let sorting = sort_untaught(&trade, &case);
            (rate(&case, &sorting).word, sorting.bearing_unexcused)
        };
        let (less, greater) = (sorted_at(low), sorted_at(low + more));
        prop_assert!(less.0 <= greater.0 && less.1 <= greater.1 + 1e-12, "{less:?} {greater:?}");
    }
}

static DAYS: AtomicI64 = AtomicI64::new(0);

/// A folder whose clock stands on the day in `DAYS`.
fn dated(folder: &Path) -> Steady {
    let clock = || steady_core::model::time::Moment(MORNING.0 + 86_400_000 * DAYS.load(Ordering::Relaxed));
    Steady::open(Setup { data_dir: folder.to_owned(), press: Arc::new(PlainPress), clock }).unwrap()
}

/// A visit of a car on a day, with a gauge at up and down; gives back how many visits its trend has.
fn visit_on(steady: &Steady, day: i64, (plate, vin): (&str, &str), mean: f64, repaired: bool) -> Standing {
    DAYS.store(day, Ordering::Relaxed);
    let mut case = case("rigid-engine-speed", "play-vertical=unsure");
    case["vehicle"]["plate"] = json!(plate);
    case["vehicle"]["vin"] = json!(vin);
    case["answers"][0]["gauge"] = gauge(mean);
    if repaired {
        case["bench"] = json!([{ "gates": "teardown" }, { "ring": "free" }]);
    }
    let visit = replay(steady, &case.to_string(), Path::new(".")).unwrap().visit;
    ask(steady, json!({ "ask": "look", "visit": visit }))
}

fn points(standing: &Standing) -> usize {
    standing.gauges[0].result.trend.as_ref().map_or(0, |trend| trend.points.len())
}

#[test]
fn earlier_visits_of_the_same_car_make_a_trend() {
    let folder = tempfile::tempdir().unwrap();
    let steady = dated(folder.path());
    let vin = "ZZZDEMO0000000001";
    for (day, car, mean, repaired, expected) in [
        (0, ("QT 7318", ""), 0.010, false, 0),
        (0, ("QT 7318", ""), 0.011, false, 0),
        (200, ("qt-7318", ""), 0.014, false, 3),
        (300, ("ZZ 1", ""), 0.014, false, 0),
        (400, ("QT 7318", vin), 0.020, true, 4),
        (500, ("AB 1234", vin), 0.010, false, 0),
        (600, ("AB 1234", vin), 0.016, false, 2),
        (700, ("AB 1234", "ZZZDEMO0000000002"), 0.012, false, 0),
        (800, ("", ""), 0.012, false, 0),
        (900, ("", ""), 0.012, false, 0),
    ] {
        let standing = visit_on(&steady, day, car, mean, repaired);
        assert_eq!(points(&standing), expected, "day {day} {car:?}");
        if day == 400 {
            let trend = standing.gauges[0].result.trend.clone().unwrap();
            assert_eq!(
                trend.points.iter().map(|point| point.day.round()).collect::<Vec<_>>(),
                [-400.0, -400.0, -200.0, 0.0]
            );
            assert!(trend.slope_mm_per_year > 0.0 && trend.expanded_mm_per_year > 0.0, "{trend:?}");
        }
    }
}

/// The gauge that every workshop has may be as wrong as a small clearance is wide. It still proves a bearing that knocks,
/// never a sound one, and what it cannot decide names the gauge that would.
#[test]
fn the_usual_gauge_beside_a_small_clearance_proves_movement_and_never_none() {
    let read = |readings: [f64; 5], mpe: f64| {
        let input = json!({
            "unit": "mm", "station": "support", "direction": "vertical", "support": "rigid",
            "readings": readings, "instrument": {"resolution": 0.01, "mpe": mpe},
            "place": {"at": "bearing"}, "bearing": {"bore_mm": 35, "group": "CN"},
        });
        judged(&input.to_string(), "en").unwrap().result
    };
    for mpe in [0.02, 0.0205, 0.05] {
        assert_eq!(read([0.3, 0.31, 0.3, 0.3, 0.31], mpe).decision, GaugeDecision::Proven, "{mpe}");
        let still = read([0.0; 5], mpe);
        assert_eq!(still.decision, GaugeDecision::NotDecided, "{mpe}");
        assert_eq!(still.meaning, GaugeMeaning::Unsure, "{mpe}");
        assert!(matches!(still.remedies[..], [Remedy::FinerGauge { .. }, ..]), "{:?}", still.remedies);
    }
}
