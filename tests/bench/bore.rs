//! The bore's fits, beside scipy on the same points in the same run.
//!
//! scipy is asked through `tests/reference/bore.py time` where STEADY_PYTHON names an interpreter that has it.

use std::f64::consts::TAU;
use std::path::Path;
use std::process::Command;
use std::time::Instant;

use serde::Deserialize;
use steady_core::measure::bore::circle::{Point, least_squares, spread_about};
use steady_core::measure::bore::shape::shape;
use steady_core::measure::bore::skim::skim;
use steady_core::measure::bore::zone::minimum;
use steady_core::model::bore::{BoreInstrument, BoreKind, BoreLevel, BoreReading, BoreReadings, SkimAsk};

use crate::alone;

/// What the script prints.
#[derive(Deserialize)]
struct Peer {
    scipy: String,
    imported_kb: u64,
    peak_kb: u64,
    zone_slsqp_ms: f64,
    zone_slsqp_mm: f64,
    zone_linprog_ms: f64,
    zone_linprog_mm: f64,
    page_ms: f64,
    page_mm: Vec<f64>,
}

/// Prints the rows.
pub fn rows() {
    let points = bench_points(3600, 0);
    let (zone_ms, width) = median_ms(51, || {
        let start = least_squares(&points).unwrap();
        minimum(&points, start.centre).unwrap().width()
    });
    row("bore: minimum zone of 3,600 points, proven", zone_ms);
    let page = page();
    let (form_ms, widths) = median_ms(51, || {
        let sections = shape(&page).unwrap().sections;
        sections
            .iter()
            .map(|it| it.out_of_roundness_minimum_zone.unwrap().value_um / 1000.0)
            .collect::<Vec<_>>()
    });
    row("bore: page of 36 angles by 5 depths, shape", form_ms);
    let ask = SkimAsk {
        pass_diameter_mm: 0.0254,
        wall_mm: Some(6.0),
        wall_min_mm: Some(5.0),
        ..SkimAsk::default()
    };
    let (skim_ms, passes) = median_ms(51, || skim(&page, &ask).unwrap().passes_needed);
    row(&format!("bore: page of 36 angles by 5 depths, skim plan ({passes} passes)"), skim_ms);
    memory();
    let Some(peer) = peer() else {
        println!("  peer scipy: not asked; set STEADY_PYTHON to an interpreter that has it");
        return;
    };
    let slsqp = format!("  peer: scipy {} SLSQP", peer.scipy);
    against(&slsqp, peer.zone_slsqp_ms, zone_ms, (peer.zone_slsqp_mm - width) * 1e6);
    let programs = format!("  peer: scipy {} linear programs (HiGHS)", peer.scipy);
    against(&programs, peer.zone_linprog_ms, zone_ms, (peer.zone_linprog_mm - width) * 1e6);
    let apart = peer.page_mm.iter().zip(&widths).map(|(theirs, ours)| (theirs - ours) * 1e6);
    let apart = apart.fold(0.0, |most: f64, it| if it.abs() > most.abs() { it } else { most });
    against("  peer: scipy and numpy, the page's circles, zones, waves", peer.page_ms, form_ms, apart);
    let mb = |kb: u64| kb as f64 / 1024.0;
    println!(
        "  peer: peak memory {:.1} MB, {:.1} of it once imported",
        mb(peer.peak_kb),
        mb(peer.imported_kb)
    );
}

/// Shapes the page and plans its skim, in a process of its own.
pub fn page_alone() {
    let page = page();
    std::hint::black_box(shape(&page).unwrap());
    let ask = SkimAsk {
        pass_diameter_mm: 0.0254,
        wall_mm: Some(6.0),
        wall_min_mm: Some(5.0),
        ..SkimAsk::default()
    };
    std::hint::black_box(skim(&page, &ask).unwrap());
}

/// The minimum zone of 3,600 points, in a process of its own.
pub fn zone_alone() {
    let points = bench_points(3600, 0);
    let start = least_squares(&points).unwrap();
    std::hint::black_box(minimum(&points, start.centre).unwrap().width());
}

/// Prints the peak memory of each work in a process of its own, beside one that does nothing.
fn memory() {
    alone::report("bore: peak memory of a process that does nothing", &["nothing"]);
    alone::report("bore: peak memory, minimum zone of 3,600 points", &["zone"]);
    alone::report("bore: peak memory, page of 36 by 5, shape and skim plan", &["page"]);
}

fn row(what: &str, ms: f64) {
    println!("{what:<58} p50 {ms:>8.3} ms");
}

fn against(what: &str, ms: f64, ours: f64, apart_nm: f64) {
    println!("{what:<58} p50 {ms:>8.3} ms   {:>6.0} times ours, {apart_nm:+.4} nm", ms / ours);
}

fn median_ms<T>(turns: usize, work: impl Fn() -> T) -> (f64, T) {
    let last = work();
    let mut times: Vec<f64> = (0..turns)
        .map(|_| {
            let start = Instant::now();
            std::hint::black_box(work());
            start.elapsed().as_secs_f64() * 1e3
        })
        .collect();
    times.sort_by(f64::total_cmp);
    (times[times.len() / 2], last)
}

fn peer() -> Option<Peer> {
    let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("reference/bore.py");
    let output = Command::new(std::env::var_os("STEADY_PYTHON")?).arg(script).arg("time").output().ok()?;
    serde_json::from_slice(&output.stdout).ok()
}

/// The script's `bench_points`: an oval with three lobes and scatter.
fn bench_points(count: usize, depth: u64) -> Vec<Point> {
    let mut state = (77 + depth).wrapping_mul(0x9E37_79B9_7F4A_7C15).wrapping_add(1);
    let mut unit = || {
        state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (state >> 11) as f64 / (1_u64 << 53) as f64
    };
    let mut point = |at: usize| {
        let angle = TAU * at as f64 / count as f64;
        let lobes = 0.006 * (2.0 * angle + 0.4).cos() + 0.004 * (3.0 * angle).cos();
        let reach = 36.0 + lobes + 0.003 * (unit() - 0.5);
        [0.05 + reach * angle.cos(), -0.03 + reach * angle.sin()]
    };
    let points: Vec<Point> = (0..count).map(&mut point).collect();
    assert!(spread_about([0.05, -0.03], &points) < 0.03);
    points
}

fn page() -> BoreReadings {
    let level = |depth: u64| BoreLevel {
        depth_mm: depth as f64 * 4.0,
        readings: bench_points(36, depth)
            .into_iter()
            .map(|[x_mm, y_mm]| BoreReading::Point { x_mm, y_mm })
            .collect(),
    };
    BoreReadings {
        kind: BoreKind::Coordinates,
        instrument: BoreInstrument { resolution_mm: 0.001, mpe_mm: 0.002, repeatability_mm: 0.0 },
        zero_diameter_mm: None,
        zero_was_set: false,
        clockwise: false,
        wall_mm: None,
        wall_error_mm: None,
        seat_width_mm: Some(18.0),
        levels: (0..5).map(level).collect(),
    }
}
