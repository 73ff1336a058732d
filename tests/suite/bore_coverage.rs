//! What was not read of a bore: circles fitted to arcs hold the truth as often as they say, and taking readings away
//! makes no verdict milder and nothing better known.

use std::f64::consts::TAU;

use proptest::prelude::{ProptestConfig, prop_assert, proptest};
use steady_core::measure::bore::shape::shape;
use steady_core::measure::bore::skim::skim;
use steady_core::measure::verdict::verdict;
use steady_core::model::bore::{
    BoreInstrument, BoreKind, BoreReading, BoreReadings, BoreShape, SkimAsk, SkimAxis, SkimVerdict,
};
use steady_core::model::verdict::{BenchFindings, SleeveFound, Verdict, WithUncertainty};
use steady_core::trade::bench::BenchTables;

use crate::bore_sets::{Chance, coordinates, readings};

const DRAWS: usize = 1000;
/// 95 % within 2 %: three times what 1,000 draws leave uncertain.
const HELD: std::ops::RangeInclusive<usize> = 930..=970;
/// The scatter of the hand outweighs step and permissible error, so that what is read is nearly normal.
const HAND: BoreInstrument =
    BoreInstrument { resolution_mm: 0.0002, mpe_mm: 0.0002, repeatability_mm: 0.003 };

/// A circle of radius 36 about (0.4, -0.3), read at 36 even places of an arc that starts at 20 degrees.
fn arc_read(chance: &mut Chance, arc_deg: f64) -> BoreReadings {
    let last = if arc_deg < 360.0 { 35.0 } else { 36.0 };
    let points: Vec<[f64; 2]> = (0..36)
        .map(|at| {
            let angle = (20.0 + arc_deg * f64::from(at) / last).to_radians();
            let even = |chance: &mut Chance, half: f64| half * (2.0 * chance.unit() - 1.0);
            let error = even(chance, HAND.mpe_mm) + even(chance, 0.5 * HAND.resolution_mm);
            let reach = 36.0 + error + HAND.repeatability_mm * chance.normal();
            [0.4 + reach * angle.cos(), -0.3 + reach * angle.sin()]
        })
        .collect();
    BoreReadings { instrument: HAND, ..readings(BoreKind::Coordinates, vec![(4.0, coordinates(&points))]) }
}

#[test]
fn circles_of_arcs_hold_the_truth_as_often_as_they_say() {
    let mut before = [0.0; 2];
    let mut compared = 0;
    for arc in [360.0, 300.0, 240.0, 200.0, 150.0, 120.0, 90.0, 60.0] {
        let mut chance = Chance::new(arc as u64 + 19);
        let mut held = [0_usize; 3];
        let mut stated = [0.0; 2];
        for _ in 0..DRAWS {
            let found = shape(&arc_read(&mut chance, arc)).unwrap();
            let section = &found.sections[0];
            let circle = section.circles.as_ref().unwrap();
            let size = section.mean_diameter.unwrap();
            let [across, up] = circle.centre_expanded_um;
            let off = [
                (1000.0 * (size.value_mm - 72.0), size.expanded_um),
                (1000.0 * (circle.least_squares.x_mm - 0.4), across),
                (1000.0 * (circle.least_squares.y_mm + 0.3), up),
            ];
            for (held, (off, expanded)) in held.iter_mut().zip(off) {
                *held += usize::from(off.abs() <= expanded);
                compared += 1;
            }
            stated = [size.expanded_um, across.hypot(up)];
            assert_eq!(section.unread_deg.is_empty(), arc >= 325.0, "{arc}");
            assert_eq!(section.out_of_roundness_minimum_zone.is_none(), arc <= 180.0, "{arc}");
            assert_eq!(section.at_least, arc < 325.0, "{arc}");
        }
        assert!(held.iter().all(|held| HELD.contains(held)), "{arc} degrees: {held:?} of {DRAWS} held");
        assert!(before.iter().zip(stated).all(|(before, now)| *before < now), "{arc}: {stated:?} um");
        before = stated;
    }
    assert_eq!(compared, 8 * DRAWS * 3);
    assert!(before[0] > 40.0, "the uncertainty of a short arc is great: {before:?}");
}

/// A bore of three depths with an oval, three lobes and a pocket wider than any gap that passes for read.
fn worn(seed: u64) -> BoreReadings {
    let mut chance = Chance::new(seed);
    let oval = 0.012 * chance.unit() * chance.unit();
    let lobes = 0.006 * chance.unit() * chance.unit();
    let pocket = if chance.unit() < 0.5 { 0.1 * chance.unit() } else { 0.0 };
    let (turn, at) = (TAU * chance.unit(), 360.0 * chance.unit());
    let level = |depth: f64| {
        let reading = |step: u32| {
            let degrees = f64::from(step) * 15.0;
            let angle = degrees.to_radians();
            let mut deviation = oval * (2.0 * angle + turn).cos() + lobes * (3.0 * angle).cos();
            if (degrees - at).rem_euclid(360.0) < 100.0 {
                deviation += pocket;
            }
            BoreReading::At { angle_deg: degrees, value_mm: deviation - 0.02 }
        };
        (depth, (0..24).map(reading).collect::<Vec<_>>())
    };
    let mut it = readings(BoreKind::Dial, vec![level(3.0), level(9.0), level(15.0)]);
    it.seat_width_mm = Some(17.0);
    it
}

/// The same with some readings, and perhaps a whole depth, taken away.
fn fewer(it: &BoreReadings, seed: u64) -> BoreReadings {
    let mut chance = Chance::new(seed);
    let mut it = it.clone();
    if chance.unit() < 0.3 {
        it.levels.remove((chance.unit() * it.levels.len() as f64) as usize);
    }
    for level in &mut it.levels {
        if chance.unit() < 0.3 {
            let (from, arc) = (360.0 * chance.unit(), 300.0 * chance.unit());
            level.readings.retain(|reading| {
                let BoreReading::At { angle_deg, .. } = reading else { return true };
                (angle_deg - from).rem_euclid(360.0) > arc
            });
        }
        let away = 0.9 * chance.unit();
        while level.readings.len() > 5 && chance.unit() < away {
            level.readings.remove((chance.unit() * level.readings.len() as f64) as usize);
        }
    }
    it.levels.retain(|level| level.readings.len() >= 5);
    it
}

/// What the bench makes of a bore beside everything else being sound.
fn verdict_on(it: &BoreReadings, shape: &BoreShape) -> Option<Verdict> {
    let plan = skim(it, &SkimAsk { pass_diameter_mm: 0.0254, ..SkimAsk::default() }).unwrap();
    let found = BenchFindings {
        cracked: Some(false),
        ring_turned: Some(false),
        diameter_mm: Some(72.0),
        roundness_um: shape
            .greatest_out_of_roundness
            .map(|form| WithUncertainty { value: form.value_um, expanded: form.expanded_um }),
        roundness_at_least: shape.sections.iter().any(|section| section.at_least),
        read_through: shape.is_read_through(),
        hot_interference_um: Some(4.0),
        yield_share: Some(0.3),
        clean_all_round: false,
        clean_diameter_mm: None,
        touch_mm: plan.touch_diameter_mm,
        clean_up_um: (!plan.at_least).then_some(2.0 * plan.cut.value_um),
        wall_mm: Some(WithUncertainty { value: 6.0, expanded: 0.1 }),
        wall_least_mm: Some(4.0),
        sleeve: Some(SleeveFound { bore_mm: 75.0, hot_interference_um: Some(5.0), yield_share: Some(0.4) }),
        old_sleeve: Some(false),
        old_sleeve_out: false,
    };
    verdict(&found, BenchTables::shipped().unwrap()).verdict
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    #[test]
    fn taking_readings_away_makes_nothing_milder_or_better_known(seed in 1_u64..1_000_000, away in 1_u64..1_000_000) {
        let all = worn(seed);
        let some = fewer(&all, away);
        if !some.levels.is_empty() {
            let (whole, less) = (shape(&all).unwrap(), shape(&some).unwrap());
            let (a, b) = (whole.mean_diameter.unwrap(), less.mean_diameter.unwrap());
            prop_assert!(b.expanded_um >= a.expanded_um - 1e-9, "{:?} from {:?}", b, a);
            for section in &less.sections {
                let before = whole.sections.iter().find(|it| it.depth_mm == section.depth_mm).unwrap();
                let size = |it: &steady_core::model::bore::BoreSection| it.mean_diameter.unwrap().expanded_um;
                prop_assert!(size(section) >= size(before) - 1e-9);
                // Nothing is said of roundness beyond what was read.
                prop_assert!(section.at_least || section.unread_deg.is_empty());
            }
            let (before, after) = (verdict_on(&all, &whole), verdict_on(&some, &less));
            if let (Some(before), Some(after)) = (before, after) {
                prop_assert!(after >= before, "{:?} from {:?}: {:?}", after, before, less.greatest_out_of_roundness);
            }
        }
    }
}

/// What the property compares is no empty set: many bores keep a verdict, many lose it, both ways of ending are there.
#[test]
fn readings_taken_away_leave_verdicts_to_compare() {
    let (mut kept, mut lost, mut sound) = (0, 0, 0);
    for seed in 1..400 {
        let all = worn(seed);
        let some = fewer(&all, seed + 7);
        if some.levels.is_empty() {
            continue;
        }
        let before = verdict_on(&all, &shape(&all).unwrap());
        let after = verdict_on(&some, &shape(&some).unwrap());
        kept += usize::from(before.is_some() && after.is_some());
        lost += usize::from(before.is_some() && after.is_none());
        sound += usize::from(before == Some(Verdict::BearingsOnly));
    }
    assert!(kept > 20 && lost > 50 && sound > 20, "{kept} kept, {lost} lost, {sound} sound");
}

/// A plan over half a bore touches half of it at the most, and says so.
#[test]
fn plan_over_half_a_bore_touches_no_more_than_was_read() {
    let mut half = worn(3);
    for level in &mut half.levels {
        level.readings.truncate(13);
    }
    let ask = |wall: Option<f64>| SkimAsk {
        pass_diameter_mm: 0.0254,
        wall_mm: Some(6.0),
        wall_min_mm: wall,
        ..SkimAsk::default()
    };
    let plan = skim(&half, &ask(Some(4.0))).unwrap();
    assert_eq!((plan.verdict, plan.at_least), (SkimVerdict::ReadInPart, true));
    assert!(plan.passes.iter().all(|pass| !pass.clean && pass.touched_share <= 0.5 + 1e-9));
    assert!(plan.passes.iter().flat_map(|pass| &pass.touched).all(|it| it.unread_deg.len() == 1));
    assert_eq!(skim(&half, &ask(Some(6.5))).unwrap().verdict, SkimVerdict::Scrap);
    let free = SkimAsk { axis: Some(SkimAxis::Free), ..ask(None) };
    assert_eq!(skim(&half, &free).unwrap_err().why.code(), "bore-read-in-part");
    let section = &shape(&half).unwrap().sections[0];
    assert!(section.plot.zone_outer.is_empty() && section.plot.pieces().len() == 1);
    assert_eq!(section.plot.points.iter().filter(|point| point.gap_follows).count(), 1);
    assert!(section.ovality.is_none() && section.lobes.is_empty());
}
