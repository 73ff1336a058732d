//! Cases at the bench in which the obvious answer is wrong, as a machinist would put them.

use std::path::Path;

use serde_json::{Value, json};
use steady_core::app::Steady;
use steady_core::app::replay::replay;
use steady_core::trade::bench::BenchTables;

use crate::support::{case, scratch};

/// A dial sweep of a 72 mm seat in um: every depth at the same angles.
struct Sweep {
    depths: &'static [f64],
    from: u32,
    to: u32,
    step: u32,
    /// Words that follow in the header.
    header: &'static str,
}

const SWEEP: Sweep =
    Sweep { depths: &[3.0, 9.0, 15.0], from: 0, to: 345, step: 15, header: "wall=6.4mm,seat=17mm" };

/// The file of a sweep over a wall that lies `deviation` um out, by angle and depth.
fn swept(sweep: &Sweep, deviation: impl Fn(f64, f64) -> f64) -> String {
    let mut file = format!(
        "bore,kind=dial,unit=um,resolution=1,mpe=2,repeatability=0.5,zero-diameter=72mm,zero=set,higher=wider,{}\n\
         depth_mm,angle_deg,reading\n",
        sweep.header
    );
    for depth in sweep.depths {
        for angle in (sweep.from..=sweep.to).step_by(sweep.step as usize) {
            let reading = deviation(f64::from(angle), *depth).round();
            file.push_str(&format!("{depth},{angle},{reading}\n"));
        }
    }
    file
}

/// Round within a micrometre, and so tight that a ring in A356 holds to 40 C.
fn sound(_: f64, _: f64) -> f64 {
    -25.0
}

/// The same with a pocket of 120 um in the second half.
fn pocket(angle: f64, depth: f64) -> f64 {
    sound(angle, depth) + if (200.0..=300.0).contains(&angle) { 120.0 } else { 0.0 }
}

const TIGHT: &str = "bearing-od=72 bearing-width=17 bore=measured housing=A356 housing-od=96 temp=20..40";

fn fit(values: &str) -> Value {
    let pairs = values.split(' ').map(|pair| pair.split_once('=').unwrap());
    json!({ "fit": pairs.map(|(name, value)| (name.to_owned(), json!(value))).collect::<serde_json::Map<_, _>>() })
}

fn look(ring_turned: bool, wall_least: f64) -> Value {
    json!({ "look": { "cracked": false, "ring_turned": ring_turned, "wall_least_mm": wall_least } })
}

/// The bench's part of the report of a visit with these rows, the bore as found first.
fn bench_of(steady: &Steady, folder: &Path, bore: &str, rows: &[Value]) -> Value {
    std::fs::write(folder.join("bore.csv"), bore).unwrap();
    let mut bench = vec![json!({ "gates": "teardown" }), json!({ "bore": "found", "file": "bore.csv" })];
    bench.extend(rows.iter().cloned());
    let mut case = case("rigid-engine-speed", "play-vertical=felt");
    case["bench"] = json!(bench);
    replay(steady, &case.to_string(), folder).unwrap().report["bench"].clone()
}

fn benched(bore: &str, rows: &[Value]) -> Value {
    let (folder, steady) = scratch();
    bench_of(&steady, folder.path(), bore, rows)
}

/// The verdict, or `open`, and what is missing.
#[track_caller]
fn verdict(bore: &str, rows: &[Value]) -> (String, Vec<String>) {
    let verdict = benched(bore, rows)["verdict"].clone();
    let missing = verdict["missing"].as_array().unwrap().iter().map(|gap| gap.as_str().unwrap().to_owned());
    (verdict["verdict"].as_str().unwrap_or("open").to_owned(), missing.collect())
}

#[track_caller]
fn open(bore: &str, rows: &[Value], gap: &str) {
    let (said, missing) = verdict(bore, rows);
    assert_eq!(said, "open", "{missing:?}");
    assert!(missing.iter().any(|missing| missing == gap), "{gap} is not among {missing:?}");
}

#[track_caller]
fn expect_verdict(bore: &str, rows: &[Value], expected: &str) {
    let (said, missing) = verdict(bore, rows);
    assert_eq!((said.as_str(), missing.len()), (expected, 0), "{missing:?}");
}

#[test]
fn seat_read_all_round_and_to_its_ends_is_sound() {
    expect_verdict(&swept(&SWEEP, sound), &[look(false, 4.0), fit(TIGHT)], "bearings-only");
    expect_verdict(&swept(&SWEEP, pocket), &[look(false, 4.0), fit(&sleeved(1.5))], "skim-and-sleeve");
}

/// The unread half may hold a pocket of 120 um.
#[test]
fn half_a_bore_is_not_called_round() {
    let size = TIGHT.replace("bore=measured", "bore=71.950 bore-u=5");
    let rows = [look(false, 4.0), fit(&size)];
    for (to, step) in [(165, 15), (90, 5), (120, 10), (300, 15)] {
        let half = Sweep { to, step, ..SWEEP };
        open(&swept(&half, pocket_from(f64::from(to))), &rows, "roundness");
    }
    let few = Sweep { to: 288, step: 72, ..SWEEP };
    open(&swept(&few, sound), &rows, "roundness");
    let one_depth = Sweep { depths: &[9.0], to: 180, ..SWEEP };
    open(&swept(&one_depth, sound), &rows, "roundness");
}

/// A pocket that begins where the reading ends.
fn pocket_from(last: f64) -> impl Fn(f64, f64) -> f64 {
    move |angle, depth| sound(angle, depth) + if angle > last { 120.0 } else { 0.0 }
}

/// Rings read all round tell nothing of the part of the seat in which none was read.
#[test]
fn depths_that_were_not_read_are_missing() {
    let rows = [look(false, 4.0), fit(TIGHT)];
    for depths in [&[9.0][..], &[3.0, 5.0], &[3.0, 4.0, 5.0], &[10.0, 12.0, 15.0]] {
        open(&swept(&Sweep { depths, ..SWEEP }, sound), &rows, "depths");
    }
    expect_verdict(&swept(&Sweep { depths: &[4.25, 12.75], ..SWEEP }, sound), &rows, "bearings-only");
    let unsaid = Sweep { header: "wall=6.4mm", ..SWEEP };
    let rows = [look(false, 4.0), fit(&TIGHT.replace("bearing-width=17 ", ""))];
    open(&swept(&unsaid, sound), &rows, "depths");
}

/// Values of a fit with a sleeve of this wall, mm, pressed in 60 um tight.
fn sleeved(wall: f64) -> String {
    let bore = 72.0 + 2.0 * wall;
    format!(
        "bearing-od=72 bearing-bore=35 bearing-width=17 bore=71.955 bore-u=2 housing=A356 housing-od=96 sleeve=ductile-iron \
         sleeve-od={:.3} sleeve-od-u=2 housing-bore={bore:.3} housing-bore-u=2 temp=20..60",
        bore + 0.06
    )
}

/// The sleeve needs room of its own: what is left is the wall after its cut, not after the clean-up.
#[test]
fn wall_is_what_the_sleeve_leaves() {
    let wall = |wall: &'static str| {
        swept(&Sweep { header: wall, ..SWEEP }, |angle, _| if angle < 90.0 { 0.0 } else { -25.0 })
    };
    let thin = wall("wall=5.2mm,seat=17mm");
    expect_verdict(&thin, &[look(true, 4.0), fit(&sleeved(1.5))], "replace-housing");
    expect_verdict(&thin, &[look(true, 3.0), fit(&sleeved(1.5))], "skim-and-sleeve");
    // Without a sleeve only the thinnest one that is made is known of.
    open(&thin, &[look(true, 4.0)], "sleeve");
    expect_verdict(&wall("wall=4.5mm,seat=17mm"), &[look(true, 4.0)], "replace-housing");
    // 3.70 mm left for 3.68 asked for is within what a calliper errs by.
    open(&thin, &[look(true, 3.68), fit(&sleeved(1.5))], "wall-left");
}

/// A sleeve that lets go hot, or that splits the housing, is no repair.
#[test]
fn sleeve_has_to_hold_and_the_housing_to_bear_it() {
    let worn = swept(&SWEEP, |_, _| 40.0);
    let rows = |values: &str| [look(true, 3.0), fit(values)];
    open(&worn, &rows(&sleeved(1.5).replace("20..60", "20..140")), "sleeve-hot-fit");
    open(&worn, &rows(&sleeved(1.5).replace("75.060", "75.400")), "sleeve-stress");
    open(&worn, &rows(&sleeved(1.5).replace(" housing-od=96", "")), "sleeve-stress");
    expect_verdict(&worn, &rows(&sleeved(1.5)), "skim-and-sleeve");
}

/// What a sleeve to come would hold says nothing of the bare seat.
#[test]
fn fit_of_a_sleeve_to_come_is_no_fit_of_the_bare_seat() {
    open(&swept(&SWEEP, sound), &[look(false, 4.0), fit(&sleeved(1.5))], "hot-fit");
}

/// One limit for the form, with its basis, wherever it is named; and wear makes none milder.
#[test]
fn limit_of_the_form_is_one() {
    let bench = benched(&swept(&SWEEP, pocket), &[look(false, 4.0), fit(TIGHT)]);
    let text = bench.to_string();
    assert!(!text.contains("knows no limit"), "{text}");
    assert!(text.matches("6.5 µm").count() >= 2, "{text}");
    let limit = |diameter: f64| BenchTables::shipped().unwrap().form_limit_um(diameter);
    for (diameter, expected) in
        [(80.0, Some(6.5)), (80.03, Some(6.5)), (81.0, Some(7.5)), (120.3, Some(7.5)), (18.0, None)]
    {
        assert_eq!(limit(diameter), expected, "{diameter}");
    }
}

/// Three diameters at 0, 60 and 120 degrees show an oval of 40 um as one of 30 or as none.
#[test]
fn three_diameters_do_not_make_a_seat_round() {
    let mut file = "bore,kind=two-point,unit=mm,resolution=0.001,mpe=0.003,wall=6.4,seat=17\n\
                    depth_mm,angle_deg,diameter\n"
        .to_owned();
    for depth in [3, 9, 15] {
        for angle in [0, 60, 120] {
            file.push_str(&format!("{depth},{angle},71.950\n"));
        }
    }
    let rows = [look(false, 4.0), fit(&TIGHT.replace("bore=measured", "bore=71.950 bore-u=5"))];
    open(&file, &rows, "roundness");
    let (folder, steady) = scratch();
    std::fs::write(folder.path().join("bore.csv"), &file).unwrap();
    let mut case = case("rigid-engine-speed", "play-vertical=felt");
    case["bench"] = json!([{ "gates": "teardown" }, { "bore": "found", "file": "bore.csv" }, fit(TIGHT)]);
    let refused = replay(&steady, &case.to_string(), folder.path()).unwrap_err();
    assert_eq!(refused.code, "bore-size-in-part", "the size of three places is not the bore's");
}

/// A finished bore of which half was read is no proof of what the cutter did to the other half.
#[test]
fn half_of_a_finished_bore_proves_no_repair() {
    let (folder, steady) = scratch();
    let half = Sweep { to: 165, ..SWEEP };
    std::fs::write(folder.path().join("half.csv"), swept(&half, sound)).unwrap();
    let finished = json!({ "bore": "finished", "file": "half.csv" });
    let size = TIGHT.replace("bore=measured", "bore=71.950 bore-u=5");
    let rows = [look(false, 4.0), finished, fit(&size)];
    let bench = bench_of(&steady, folder.path(), &swept(&SWEEP, pocket), &rows);
    assert_eq!(bench["verdict"]["verdict"], Value::Null, "{}", bench["verdict"]);
    assert!(bench["verdict"]["missing"].to_string().contains("roundness"));
}
