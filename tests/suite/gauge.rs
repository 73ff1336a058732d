//! The gauge on the shaft: published statistics and decision rules, the shipped measurements beside a
//! Monte Carlo run, and what it must refuse.

use serde_json::{Value, json};
use steady_core::app::gauge::{GaugeReport, gauge};
use steady_core::measure::gauge::combine::{Combined, Contribution, combine};
use steady_core::measure::gauge::decide::{bands, guard};
use steady_core::measure::gauge::{meaning, risk, student, trend};
use steady_core::model::gauge::{GaugeDecision, GaugeMeaning, Remedy};
use steady_core::model::standing::Support;
use steady_core::model::typed::LengthUnit;
use toml::Table;

pub fn demo_files() -> Vec<(String, String)> {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../demo-data/bench");
    let mut files: Vec<(String, String)> = std::fs::read_dir(folder)
        .unwrap()
        .flatten()
        .map(|file| (file.file_name().to_string_lossy().into_owned(), file.path()))
        .filter(|(name, _)| name.starts_with("gauge-"))
        .map(|(name, path)| (name, std::fs::read_to_string(path).unwrap()))
        .collect();
    files.sort();
    assert_eq!(files.len(), 5);
    files
}

fn published(table: &str) -> Table {
    let all: Table = toml::from_str(include_str!("../published/gauge.toml")).unwrap();
    all[table].as_table().unwrap().clone()
}

fn number(table: &Table, key: &str) -> f64 {
    let value = &table[key];
    value.as_float().unwrap_or_else(|| value.as_integer().unwrap() as f64)
}

fn numbers(table: &Table, key: &str) -> Vec<f64> {
    table[key].as_array().unwrap().iter().map(|value| value.as_float().unwrap()).collect()
}

#[track_caller]
fn near(found: f64, expected: f64, tolerance: f64) {
    assert!((found - expected).abs() <= tolerance, "{found} against {expected}");
}

#[test]
fn end_gauge_of_the_gum_comes_out() {
    let it = published("end_gauge");
    near(number(&it, "ls_mm") + number(&it, "d_nm") * 1e-6, number(&it, "length_mm"), 5.1e-7);
    let parts: Vec<Contribution> = numbers(&it, "contributions_nm")
        .into_iter()
        .zip(numbers(&it, "dof"))
        .map(|(size, dof)| Contribution { size, dof: Some(dof) })
        .collect();
    let combined = combine(&parts);
    near(combined.standard, number(&it, "standard_nm"), 0.5);
    near(combined.standard, number(&it, "standard_unrounded_nm"), 0.05);
    near(combined.dof.unwrap(), number(&it, "dof_effective"), 0.1);
    near(combined.whole_dof().unwrap(), number(&it, "dof_used"), 0.0);
    near(student::quantile(0.995, combined.whole_dof()), number(&it, "t99"), 0.005);
    near(combined.expanded(0.99), number(&it, "u99_nm"), 0.6);
    near(combined.expanded(0.95), number(&it, "u95_nm"), 1.0);
}

#[test]
fn budget_lines_follow_the_published_shapes() {
    let it = published("type_b");
    let mut looked_at = 0;
    for (half, expected) in numbers(&it, "half_width").iter().zip(numbers(&it, "rectangular")) {
        let lines = budget_of(1.0, *half);
        near(line(&lines, "mpe")["standard"].as_f64().unwrap(), expected, expected * 0.04);
        looked_at += 1;
    }
    for (step, expected) in numbers(&it, "step_mm").iter().zip(numbers(&it, "step_um")) {
        let lines = budget_of(*step, 0.001);
        let both_ends = expected / 1000.0 * 2.0_f64.sqrt();
        near(line(&lines, "resolution")["standard"].as_f64().unwrap(), both_ends, 5e-7);
        looked_at += 1;
    }
    assert_eq!(looked_at, 5);
}

fn budget_of(resolution: f64, mpe: f64) -> Vec<Value> {
    let mut input = sound();
    input["instrument"] = json!({"resolution": resolution, "mpe": mpe});
    input["maker_limit"] = json!(20.0);
    shown(&report(&input))["budget"].as_array().unwrap().clone()
}

fn line<'a>(lines: &'a [Value], source: &str) -> &'a Value {
    lines.iter().find(|line| line["source"] == source).unwrap()
}

#[test]
fn student_agrees_with_the_printed_table() {
    let all: Table = toml::from_str(include_str!("../published/gauge.toml")).unwrap();
    let it = all["student"].as_array().unwrap()[0].as_table().unwrap();
    let rows = numbers(it, "dof").into_iter().zip(numbers(it, "t95")).zip(numbers(it, "t99"));
    let mut looked_at = 0;
    for ((dof, t95), t99) in rows {
        near(student::quantile(0.975, Some(dof)), t95, 0.0051);
        near(student::quantile(0.995, Some(dof)), t99, 0.0051);
        near(student::cumulative(-student::quantile(0.975, Some(dof)), Some(dof)), 0.025, 1e-12);
        looked_at += 1;
    }
    assert_eq!(looked_at, 15);
}

#[test]
fn normal_tails_agree_with_the_rules_of_thumb() {
    let it = published("normal");
    near(student::quantile(0.95, None), number(&it, "one_sided_95"), 5.1e-7);
    near(student::quantile(0.975, None), number(&it, "two_sided_95"), 5.1e-7);
    for (guard, percent) in numbers(&it, "guard_in_expanded").iter().zip(numbers(&it, "risk_percent")) {
        near(100.0 * student::cumulative(-2.0 * guard, None), percent, 5.1e-4);
    }
    near(student::cumulative(0.0, None), 0.5, 0.0);
    near(student::cumulative(40.0, None), 1.0, 0.0);
    near(student::cumulative(-40.0, None), 0.0, 1e-15);
}

#[test]
fn bearing_example_of_jcgm_106_comes_out() {
    let it = published("bearings");
    let limit = number(&it, "limit_um");
    let standard = number(&it, "standard_um");
    let gamma = |x: f64| 4.0_f64.powi(4) / 6.0 * x.powi(3) * (-4.0 * x).exp();
    let run = |limits: f64| {
        let bands = steady_core::model::gauge::Bands {
            guard_mm: 0.0,
            none_up_to_mm: limits,
            proven_above_mm: limits,
        };
        risk::risks(&gamma, 14.0, limit, &bands, standard)
    };
    // A test that passes everything misses all that is out.
    near(run(1e6).missed, number(&it, "out_without_test"), 5.1e-6);
    near(100.0 * run(1e6).missed, number(&it, "printed_out_percent"), 0.0051);
    let simple = run(limit);
    near(simple.missed, number(&it, "simple_missed"), 5.1e-7);
    near(100.0 * simple.missed, number(&it, "printed_missed_percent"), 0.0051);
    near(simple.false_alarm, number(&it, "simple_false_alarm"), 5.1e-6);
    near(simple.undecided, 0.0, 1e-12);
    let guarded = run(number(&it, "guarded_up_to_um"));
    near(guarded.missed, number(&it, "guarded_missed"), 5.1e-7);
    near(guarded.false_alarm, number(&it, "guarded_false_alarm"), 5.1e-5);
}

#[test]
fn bands_of_iso_14253_come_out() {
    let it = published("band");
    let combined = Combined { standard: number(&it, "expanded_um") / 2.0, dof: None };
    let bands = bands(number(&it, "limit_um"), guard(&combined, 1.66));
    near(bands.none_up_to_mm, number(&it, "accept_to_um"), 1e-9);
    near(bands.proven_above_mm, number(&it, "reject_above_um"), 1e-9);
    let few = Combined { standard: 3.0, dof: Some(3.0) };
    near(guard(&few, 1.66), 3.0 * student::quantile(0.95, Some(3.0)), 1e-12);
}

#[test]
fn thermometer_line_of_the_gum_comes_out() {
    let it = published("thermometer");
    let from = number(&it, "from_celsius");
    let points: Vec<[f64; 3]> = numbers(&it, "celsius")
        .iter()
        .zip(numbers(&it, "correction"))
        .map(|(celsius, correction)| [celsius - from, correction, 1.0])
        .collect();
    assert_eq!(points.len(), 11);
    let line = trend::fit(&points).unwrap();
    near(line.intercept, number(&it, "intercept"), 5.1e-5);
    near(line.slope, number(&it, "slope"), 5.1e-6);
    near(line.slope_scatter.unwrap(), number(&it, "slope_standard"), 5.1e-6);
    assert!(trend::fit(&points[..1]).is_none());
}

#[test]
fn inches_are_exact() {
    let it = published("inch");
    near(LengthUnit::Thou.to_mm(1000.0), number(&it, "inch_mm"), 0.0);
    near(LengthUnit::Thou.to_mm(0.5) * 1000.0, number(&it, "half_thou_um"), 1e-12);
    near(LengthUnit::Thou.of_mm(0.1), number(&it, "tenth_mm_in_thou"), 5.1e-7);
}

fn sound() -> Value {
    json!({
        "unit": "mm", "station": "support", "direction": "vertical", "support": "rigid",
        "readings": [0.10, 0.12, 0.11], "instrument": {"resolution": 0.01, "mpe": 0.01},
        "place": {"at": "bearing"}, "maker_limit": 0.05,
    })
}

#[track_caller]
fn report(input: &Value) -> GaugeReport {
    gauge(&input.to_string(), "en").unwrap()
}

fn shown(report: &GaugeReport) -> Value {
    serde_json::to_value(&report.result).unwrap()
}

/// GaugeDecision and meaning of every shipped measurement.
#[test]
fn every_shipped_measurement_is_decided_as_told() {
    use {GaugeDecision as D, GaugeMeaning as M};
    let expected = [
        ("gauge-rigid-none-proven.json", D::NoneProven, M::ReplacesUnsure),
        ("gauge-rigid-not-decided.json", D::NotDecided, M::Unsure),
        ("gauge-rigid-proven.json", D::Proven, M::Felt),
        ("gauge-rubber-figure.json", D::NotDecided, M::Unsure),
        ("gauge-rubber-thou.json", D::Compare, M::Silent),
    ];
    for ((name, text), (expected_name, decision, meaning)) in demo_files().into_iter().zip(expected) {
        assert_eq!(name, expected_name);
        let report = gauge(&text, "en").unwrap();
        assert_eq!((report.result.decision, report.result.meaning), (decision, meaning), "{name}");
        assert!(report.lines.len() > 8, "{name}: {:#?}", report.lines);
        let shares: f64 = report.result.budget.iter().map(|line| line.share).sum();
        near(shares, 1.0, 1e-12);
    }
}

#[test]
fn lever_turns_movement_at_the_gauge_into_movement_at_the_bearing() {
    let mut input = sound();
    for (pivot, gauge_at, bearing, ratio) in [
        (0.0, 400.0, 300.0, 0.75),
        (100.0, 300.0, 700.0, 3.0),
        (1000.0, 800.0, 400.0, 3.0),
        (0.0, -200.0, 300.0, 1.5),
    ] {
        input["place"] =
            json!({"at": "shaft", "pivot_mm": pivot, "gauge_mm": gauge_at, "bearing_mm": bearing});
        let result = report(&input).result;
        near(result.ratio, ratio, 1e-12);
        near(result.mean_mm, 0.11 * ratio, 1e-12);
        near(result.limit.at_gauge_mm.unwrap(), 0.05 / ratio, 1e-12);
        assert_eq!(result.budget.len(), 6);
    }
}

/// Two bearings 80 mm apart, read 150 mm outboard of the nearer: where that one moves the shaft tilts about the other,
/// and it moves 80 / 230 of what the gauge reads; where the farther one moves, 80 / 150.
#[test]
fn bearing_of_a_pair_tilts_the_shaft_about_the_other_one() {
    let place = |pivot: f64, bearing: f64| json!({"at": "shaft", "pivot_mm": pivot, "gauge_mm": 150, "bearing_mm": bearing, "error_mm": 1});
    let by = |place: Value, readings: [f64; 5]| {
        let mut input = json!({
            "unit": "mm", "station": "support", "direction": "vertical", "support": "rigid",
            "readings": readings, "instrument": {"resolution": 0.001, "mpe": 0.002},
            "bearing": {"bore_mm": 35, "group": "C3"},
        });
        input["place"] = place;
        report(&input).result
    };
    let about = |mm: f64| [mm, mm + 0.001, mm - 0.001, mm, mm];
    let either = || {
        let mut place = place(-80.0, 0.0);
        place["or"] = json!({"pivot_mm": 0, "bearing_mm": -80});
        place
    };
    // 0.03 mm at the bearing, for which C3 of a 35 mm bore allows 0.033: no proof of movement by any lever of the pair.
    let (near, far) = (by(place(-80.0, 0.0), about(0.086)), by(place(0.0, -80.0), about(0.056)));
    near_by(near.ratio, 80.0 / 230.0);
    near_by(far.ratio, 80.0 / 150.0);
    assert!((near.mean_mm - 0.03).abs() < 2e-4 && (far.mean_mm - 0.03).abs() < 2e-4);
    // About a joint 1,250 mm away the same reading would pass for 0.1 mm and for a danger.
    let wrong = json!({"at": "shaft", "pivot_mm": -1250, "gauge_mm": 150, "bearing_mm": 0, "error_mm": 1});
    assert_eq!(by(wrong, about(0.086)).decision, GaugeDecision::Proven);
    for (mm, near_says, far_says, either_says) in [
        (0.04, GaugeDecision::NoneProven, GaugeDecision::NoneProven, GaugeDecision::NoneProven),
        (0.08, GaugeDecision::NoneProven, GaugeDecision::Proven, GaugeDecision::NotDecided),
        (0.15, GaugeDecision::Proven, GaugeDecision::Proven, GaugeDecision::Proven),
    ] {
        let (one, two) = (by(place(-80.0, 0.0), about(mm)), by(place(0.0, -80.0), about(mm)));
        let both = by(either(), about(mm));
        assert_eq!((one.decision, two.decision, both.decision), (near_says, far_says, either_says), "{mm}");
        // The graver of the two is shown, and the other is told.
        near_by(both.ratio, 80.0 / 150.0);
        let other = both.other_lever.unwrap();
        near_by(other.ratio, 80.0 / 230.0);
        assert_eq!(other.decision, near_says);
        let (a, b, c) = (one.likelihood.unwrap(), two.likelihood.unwrap(), both.likelihood.unwrap());
        near_by(c.if_movement, 0.5 * (a.if_movement + b.if_movement));
        if one.decision != two.decision {
            assert_eq!(both.meaning, GaugeMeaning::Unsure);
            assert_eq!(both.remedies, [Remedy::FindLever, Remedy::AtBearing]);
        }
    }
    let mut turned = place(0.0, -80.0);
    turned["or"] = json!({"pivot_mm": -80, "bearing_mm": 0});
    assert_eq!(by(turned, about(0.08)), by(either(), about(0.08)), "whichever is named first");
}

#[track_caller]
fn near_by(found: f64, expected: f64) {
    near(found, expected, 1e-12);
}

/// A remedy is done again as told, and then it decides.
#[test]
fn what_would_decide_decides() {
    let base = json!({
        "unit": "mm", "station": "support", "direction": "vertical", "support": "rigid",
        "readings": [0.054, 0.064], "instrument": {"resolution": 0.001, "mpe": 0.001},
        "place": {"at": "bearing"}, "maker_limit": 0.05,
    });
    let remedies = report(&base).result.remedies;
    let Some(Remedy::MoreReadings { readings }) = remedies.first() else { panic!("{remedies:?}") };
    // The same mean and scatter with as many readings: pairs about the mean, deviation kept.
    let deviation = 0.005 * 2.0_f64.sqrt();
    let half = deviation * (f64::from(readings - 1) / f64::from(*readings)).sqrt();
    let mut values: Vec<f64> = (0..readings / 2).flat_map(|_| [0.059 - half, 0.059 + half]).collect();
    if readings % 2 == 1 {
        values.push(0.059);
    }
    let mut more = base.clone();
    more["readings"] = json!(values);
    assert_eq!(report(&more).result.decision, GaugeDecision::Proven, "{readings}");

    let coarse = json!({
        "unit": "mm", "station": "support", "direction": "vertical", "support": "rigid",
        "readings": [0.06, 0.06, 0.06, 0.06], "instrument": {"resolution": 0.01, "mpe": 0.02},
        "place": {"at": "bearing"}, "maker_limit": 0.05,
    });
    let remedies = report(&coarse).result.remedies;
    let Some(Remedy::FinerGauge { resolution_mm, mpe_mm }) = remedies.first() else { panic!("{remedies:?}") };
    let mut finer = coarse.clone();
    finer["instrument"] = json!({"resolution": resolution_mm, "mpe": mpe_mm});
    assert_eq!(report(&finer).result.decision, GaugeDecision::Proven);

    let mut far = coarse;
    far["place"] = json!({"at": "shaft", "pivot_mm": 0, "gauge_mm": 200, "bearing_mm": 600, "error_mm": 5});
    far["maker_limit"] = json!(0.14);
    far["instrument"] = json!({"resolution": 0.01, "mpe": 0.012});
    let remedies = report(&far).result.remedies;
    assert!(remedies.contains(&Remedy::AtBearing), "{remedies:?}");
    far["place"] = json!({"at": "bearing"});
    far["readings"] = json!([0.18, 0.18, 0.18, 0.18]);
    assert_eq!(report(&far).result.decision, GaugeDecision::Proven);
}

/// From mildest to worst.
fn rank(decision: GaugeDecision) -> u8 {
    match decision {
        GaugeDecision::NoneProven => 0,
        GaugeDecision::NotDecided | GaugeDecision::Compare => 1,
        GaugeDecision::Proven => 2,
    }
}

#[test]
fn more_movement_never_reads_milder() {
    let mut seen = std::collections::BTreeSet::new();
    for ratio in [0.5, 1.0, 3.0] {
        let mut before = 0;
        for step in 0..120 {
            let more = f64::from(step) * 0.001;
            let mut input = sound();
            input["readings"] = json!([more, more + 0.004, more + 0.002]);
            input["place"] =
                json!({"at": "shaft", "pivot_mm": 0, "gauge_mm": 300, "bearing_mm": 300.0 * ratio});
            let result = report(&input).result;
            let now = rank(result.decision);
            assert!(now >= before, "{ratio} {step}: {:?}", result.decision);
            before = now;
            seen.insert(now);
        }
    }
    assert_eq!(seen.len(), 3, "the sweep passes through every decision");
}

/// Extreme but allowed readings give numbers, every one; JSON has no word for one that is none.
#[test]
fn every_number_of_a_result_is_one() {
    let mut looked_at = 0;
    for readings in
        [json!([0, 0]), json!([0, 0, 0]), json!([25, 25, 25]), json!([0, 25]), json!([1e-12, 3e-12])]
    {
        for earlier in [json!([]), json!([{"days_ago": 1e-3, "movement_mm": 0, "standard_mm": 1e-6}])] {
            let mut input = sound();
            input["readings"] = readings.clone();
            input["earlier"] = earlier;
            let text = serde_json::to_string(&report(&input).result).unwrap();
            let nulls = text.matches("null").count();
            let allowed = text.matches(r#""dof":null"#).count()
                + text.matches(r#""other_lever":null"#).count()
                + text.matches(r#""dof_used":null"#).count()
                + text.matches(r#""trend":null"#).count();
            assert_eq!(nulls, allowed, "{text}");
            looked_at += 1;
        }
    }
    assert_eq!(looked_at, 10);
}

#[test]
fn one_reading_decides_nothing() {
    let mut input = sound();
    input["readings"] = json!([0.5]);
    let result = report(&input).result;
    assert_eq!(result.decision, GaugeDecision::NotDecided);
    assert_eq!(result.meaning, GaugeMeaning::Unsure);
    assert_eq!(result.remedies, [Remedy::ReadAgain { readings: 5 }]);
    assert!(result.uncertainty.is_none() && result.likelihood.is_none() && result.bands.is_none());
}

#[test]
fn a_reading_far_from_the_others_is_marked_and_counted() {
    let mut input = sound();
    input["readings"] = json!([0.10, 0.11, 0.10, 0.11, 0.30]);
    let result = report(&input).result;
    let marked: Vec<bool> = result.readings.iter().map(|reading| reading.doubtful).collect();
    assert_eq!(marked, [false, false, false, false, true]);
    near(result.mean_mm, 0.144, 1e-12);
}

/// Whatever a gauge says, a hand that felt movement stands, and nothing unjudged becomes milder.
#[test]
fn a_gauge_never_clears_what_a_hand_felt() {
    let all =
        [GaugeDecision::Proven, GaugeDecision::NoneProven, GaugeDecision::NotDecided, GaugeDecision::Compare];
    for support in [Support::Rigid, Support::Rubber, Support::Tube] {
        for decision in all {
            let gauge = meaning::meaning(support, decision);
            assert_eq!(meaning::counts("felt", gauge), "felt");
            if gauge != GaugeMeaning::ReplacesUnsure {
                assert_ne!(meaning::counts("unsure", gauge), "none", "{support:?} {decision:?}");
            }
            if ![GaugeMeaning::Felt, GaugeMeaning::BeyondFigure].contains(&gauge) {
                assert_eq!(meaning::counts("not-done", gauge), "not-done");
                assert_eq!(meaning::counts("beyond-figure", gauge), "beyond-figure");
            }
        }
    }
    assert_eq!(meaning::counts("none", meaning::meaning(Support::Rigid, GaugeDecision::Proven)), "felt");
    assert_eq!(
        meaning::counts("none", meaning::meaning(Support::Rigid, GaugeDecision::NotDecided)),
        "unsure"
    );
    assert_eq!(meaning::counts("none", meaning::meaning(Support::Rigid, GaugeDecision::Compare)), "unsure");
    assert_eq!(meaning::counts("unsure", meaning::meaning(Support::Tube, GaugeDecision::NoneProven)), "none");
}

#[test]
fn likelihoods_cross_at_the_limit_and_grow_with_movement() {
    let at = |mean: f64| {
        let mut input = sound();
        input["readings"] = json!([mean - 0.002, mean, mean + 0.002]);
        report(&input).result.likelihood.unwrap()
    };
    near(at(0.05).if_movement, 0.5, 1e-9);
    let mut before = 0.0;
    for step in 1..20 {
        let now = at(0.005 * f64::from(step) + 0.002);
        near(now.if_movement + now.if_none, 1.0, 1e-12);
        assert!(now.if_movement >= before, "{step}");
        before = now.if_movement;
    }
}

#[test]
fn growth_over_visits_is_shown_with_its_uncertainty() {
    let with = |earlier: Value| {
        let mut input = sound();
        input["earlier"] = earlier;
        shown(&report(&input))["trend"].clone()
    };
    assert_eq!(with(json!([])), Value::Null);
    let old =
        |days: u32, movement: f64| json!({"days_ago": days, "movement_mm": movement, "standard_mm": 0.006});
    assert_eq!(with(json!([old(400, 0.02)]))["shows"], "growing");
    assert_eq!(with(json!([old(400, 0.10)]))["shows"], "no-change-shown");
    assert_eq!(with(json!([old(400, 0.20), old(800, 0.30)]))["shows"], "shrinking");
    assert_eq!(with(json!([old(30, 0.11), old(800, 0.11)]))["points"].as_array().unwrap().len(), 3);
}

#[track_caller]
fn refused(change: impl Fn(&mut Value), code: &str) {
    let mut input = sound();
    change(&mut input);
    let failure = gauge(&input.to_string(), "en").unwrap_err();
    assert_eq!(failure.code, code, "{input}");
    assert!(failure.message != format!("error-{code}") && failure.help.len() > 20, "{failure:?}");
}

#[test]
fn a_comma_reads_as_a_point_where_it_can_be_nothing_else() {
    let mut input = sound();
    let with_points = gauge(&input.to_string(), "en").unwrap();
    input["readings"] = comma(&input["readings"]);
    for field in ["resolution", "mpe"] {
        input["instrument"][field] = comma(&input["instrument"][field]);
    }
    assert!(input["readings"].to_string().contains("0,"), "{input}");
    assert_eq!(gauge(&input.to_string(), "en").unwrap(), with_points);
}

/// A number or a list of them as text with a decimal comma.
fn comma(numbers: &Value) -> Value {
    match numbers {
        Value::Array(all) => all.iter().map(comma).collect(),
        Value::String(text) => json!(text.replace('.', ",")),
        other => json!(other.to_string().replace('.', ",")),
    }
}

/// Of ten fields, the one that has to be mended.
#[test]
fn a_refused_measurement_names_its_field() {
    let field = |change: &dyn Fn(&mut Value)| {
        let mut input = sound();
        change(&mut input);
        gauge(&input.to_string(), "en").unwrap_err().field
    };
    assert_eq!(field(&|input| input["readings"] = json!(["0.1", "three"])).as_deref(), Some("reading-1"));
    assert_eq!(field(&|input| input["readings"] = json!([0.1, 0.1, -1])).as_deref(), Some("reading-2"));
    assert_eq!(field(&|input| input["instrument"]["mpe"] = json!("")).as_deref(), Some("mpe"));
    assert_eq!(field(&|input| input["instrument"]["resolution"] = json!(0)).as_deref(), Some("resolution"));
    assert_eq!(field(&|input| input["unit"] = json!("furlong")), None, "a file that is none has no field");
}

#[test]
fn bad_readings_are_refused_by_name() {
    refused(|input| input["readings"] = json!([]), "no-readings");
    refused(|input| input["readings"] = json!(["1,250"]), "decimal-comma");
    refused(|input| input["readings"] = json!([0.08, "3 thou"]), "mixed-units");
    refused(|input| input["readings"] = json!(["NaN"]), "not-a-number");
    refused(|input| input["readings"] = json!([-0.01]), "negative-reading");
    refused(|input| input["readings"] = json!([118]), "reading-too-large");
    refused(|input| input["unit"] = json!("furlong"), "gauge-file-unreadable");
    refused(|input| input["colour"] = json!("red"), "gauge-file-unreadable");
    refused(|input| input["instrument"]["mpe"] = json!(0), "instrument-refused");
    refused(|input| input["instrument"]["resolution"] = json!("0,0,1 mm"), "decimal-comma");
    refused(|input| input["maker_limit"] = json!(-1), "limit-refused");
    refused(|input| input["maker_limit"] = json!(0), "limit-refused");
    refused(
        |input| input["earlier"] = json!([{"days_ago": 0, "movement_mm": 1, "standard_mm": 1}]),
        "earlier-refused",
    );
    // An endless movement once made a slope that was no number, and "no change" of it.
    for (field, value) in [("movement_mm", 3.1e306), ("standard_mm", 1e-200), ("days_ago", 1e300)] {
        let mut earlier = json!({"days_ago": 365, "movement_mm": 0.06, "standard_mm": 0.008});
        earlier[field] = json!(value);
        let older = json!({"days_ago": 730, "movement_mm": 0.031, "standard_mm": 0.008});
        refused(|input| input["earlier"] = json!([older, earlier]), "earlier-refused");
    }
    let place = |pivot: f64, gauge: f64, bearing: f64, error: f64| {
        let mut place = json!({"at": "shaft", "pivot_mm": pivot, "gauge_mm": gauge});
        place["bearing_mm"] = json!(bearing);
        place["error_mm"] = json!(error);
        place
    };
    refused(|input| input["place"] = place(10.0, 10.0, 500.0, 0.0), "gauge-at-pivot");
    refused(|input| input["place"] = place(0.0, 15.0, 500.0, 5.0), "gauge-at-pivot");
    refused(|input| input["place"] = place(0.0, 100.0, 3.0, 5.0), "bearing-at-pivot");
    refused(|input| input["place"] = place(0.0, 100.0, 300.0, -5.0), "place-refused");
    refused(|input| input["place"] = place(0.0, 6e60, 300.0, 5.0), "place-refused");
    refused(|input| input["place"] = place(0.0, 100.0, 20_000.0, 5.0), "place-refused");
    for (field, text, code) in [
        ("pivot_mm", "1,250", "decimal-comma"),
        ("bearing_mm", "1.250", "decimal-comma"),
        ("gauge_mm", "", "not-a-number"),
        ("bearing_mm", "400 thou", "mixed-units"),
    ] {
        let mut typed = place(0.0, 100.0, 300.0, 5.0);
        typed[field] = json!(text);
        refused(|input| input["place"] = typed.clone(), code);
    }
    let no_maker = |input: &mut Value, bore: f64| {
        input["maker_limit"] = Value::Null;
        input["bearing"] = json!({"bore_mm": bore, "group": "CN"});
    };
    refused(|input| no_maker(input, 10.0), "bore-not-tabled");
    refused(|input| no_maker(input, 140.1), "bore-not-tabled");
    refused(
        |input| {
            no_maker(input, 35.0);
            input["bearing"]["bore_mm"] = json!("35,0,0");
        },
        "decimal-comma",
    );
    for text in ["", "{", "[]", "{\"readings\": [0,08]}"] {
        assert_eq!(gauge(text, "en").unwrap_err().code, "gauge-file-unreadable");
    }
    assert_eq!(gauge("{}", "xx").unwrap_err().code, "unknown-locale");
}
