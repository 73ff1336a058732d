//! Gauge and fit beside libraries that are not ours: `tests/reference/gauge_fit.json`, written by the
//! script of the same name. Every comparison counts what it compared.

use serde_json::Value;
use steady_core::app::gauge::gauge;
use steady_core::measure::fit::lame::Ring;
use steady_core::measure::fit::stack::{Interference, Stack};
use steady_core::measure::gauge::{student, trend};
use steady_core::trade::bench::BenchTables;

use crate::gauge::demo_files;

fn rows(name: &str) -> Vec<Value> {
    let all: Value = serde_json::from_str(include_str!("../reference/gauge_fit.json")).unwrap();
    assert_eq!(all["versions"]["GTC"], "1.5.1");
    all[name].as_array().unwrap().clone()
}

fn get(row: &Value, key: &str) -> f64 {
    row[key].as_f64().unwrap_or_else(|| panic!("{key} of {row}"))
}

fn list(row: &Value, key: &str) -> Vec<f64> {
    row[key].as_array().unwrap().iter().map(|value| value.as_f64().unwrap()).collect()
}

#[track_caller]
fn near(found: f64, expected: f64, relative: f64) {
    let off = (found - expected).abs();
    assert!(off <= relative * expected.abs().max(1e-9), "{found} against {expected}");
}

#[test]
fn student_agrees_with_scipy() {
    let rows = rows("student");
    for row in &rows {
        near(student::quantile(get(row, "p"), row["dof"].as_f64()), get(row, "t"), 1e-9);
    }
    assert_eq!(rows.len(), 78);
}

#[test]
fn shipped_budgets_agree_with_gtc() {
    let files = demo_files();
    let rows = rows("budgets");
    assert_eq!(rows.len(), files.len());
    for (row, (name, text)) in rows.iter().zip(files) {
        assert_eq!(row["file"], name.as_str());
        let result = gauge(&text, "en").unwrap().result;
        let ours = result.uncertainty.unwrap();
        near(result.mean_mm, get(row, "mean_mm"), 1e-12);
        near(ours.standard_mm, get(row, "standard_mm"), 1e-9);
        near(ours.dof.unwrap(), get(row, "dof"), 1e-9);
        near(ours.factor, get(row, "factor"), 1e-6);
    }
}

#[test]
fn trends_agree_with_numpy() {
    let rows = rows("trends");
    for row in &rows {
        let points: Vec<[f64; 3]> = row["points"]
            .as_array()
            .unwrap()
            .iter()
            .map(|point| [0, 1, 2].map(|at: usize| point[at].as_f64().unwrap()))
            .collect();
        let line = trend::fit(&points).unwrap();
        near(line.slope, get(row, "slope"), 1e-9);
        near(line.intercept, get(row, "intercept"), 1e-9);
        near(line.slope_stated, get(row, "slope_standard"), 1e-9);
    }
    assert_eq!(rows.len(), 4);
}

/// 18 classes at 12 diameters; where the standard's range is split, on both sides of the split.
#[test]
fn hole_limits_agree_with_isofits_and_pressfit() {
    let tables = BenchTables::shipped().unwrap();
    let rows = rows("holes");
    for row in &rows {
        let found = tables.hole(row["class"].as_str().unwrap(), get(row, "mm")).unwrap();
        assert_eq!(found.upper_um, get(row, "upper_um"), "{row}");
        assert_eq!(found.lower_um, get(row, "lower_um"), "{row}");
    }
    assert_eq!(rows.len(), 216);
}

#[test]
fn pressed_rings_agree_with_a_linear_solve() {
    let rows = rows("stacks");
    let mut compared = 0;
    for row in &rows {
        let radii = list(row, "radii_mm");
        let overlaps = list(row, "interference_mm");
        let expected = list(row, "pressures_mpa");
        let ring = |at: usize| {
            let material = &row["materials"][at];
            let constant = |which: usize| material[which].as_f64().unwrap();
            Ring { inner: radii[at], outer: radii[at + 1], modulus: constant(0), poisson: constant(1) }
        };
        let sleeved = overlaps.len() == 2;
        let stack =
            Stack { bearing: ring(0), sleeve: sleeved.then(|| ring(1)), housing: ring(overlaps.len()) };
        let sleeve = if sleeved { overlaps[1] } else { 0.0 };
        let found = stack.pressures(Interference { bearing: overlaps[0], sleeve });
        near(found.bearing, expected[0], 1e-9);
        compared += 1;
        if sleeved {
            near(found.sleeve, expected[1], 1e-9);
            compared += 1;
        }
    }
    assert_eq!(compared, 8);
}
