//! Bore files: what is read, what is refused with which line, what is flagged, and that each has its texts.

use std::path::Path;

use steady_core::app::bore::{plan_of, sentence, shape_of};
use steady_core::measure::bore::csv::read;
use steady_core::measure::bore::fault::BoreRefusal;
use steady_core::measure::bore::notes::IDS;
use steady_core::measure::bore::shape::shape;
use steady_core::model::bore::{BoreKind, BoreNote, BoreReading, BoreShape, SkimAsk, SkimAxis, SkimVerdict};
use steady_core::words::Words;

use crate::bore_sets::{coordinates, dial, diameters, readings};

fn words() -> &'static Words {
    Words::of("en").unwrap()
}

const HEAD: &str = "bore,kind=two-point,unit=mm,resolution=0.001,mpe=0.003\n";
const COLUMNS: &str = "depth_mm,angle_deg,diameter\n";

/// Refused with this code at this line (0 for none), in sentences, with nothing of the file in them.
#[track_caller]
fn refused(text: &str, why: BoreRefusal, line: usize) {
    let fault = read(text).unwrap_err();
    assert_eq!((fault.why, fault.line.unwrap_or_default()), (why, line), "{text}");
    let failure = shape_of(text, words()).unwrap_err();
    assert_eq!(failure.code, why.code());
    assert!(failure.help.ends_with('.') && !failure.message.starts_with("error-"), "{failure:?}");
    assert_eq!(failure.message.contains(&format!("(line {line})")), line > 0, "{failure:?}");
}

#[track_caller]
fn rows_refused(rows: &str, why: BoreRefusal, line: usize) {
    refused(&format!("{HEAD}{COLUMNS}{rows}"), why, line);
}

#[test]
fn files_without_readings_are_refused() {
    refused("", BoreRefusal::Empty, 0);
    refused("\n# nothing yet\n,,,\n", BoreRefusal::Empty, 0);
    refused(HEAD, BoreRefusal::Empty, 0);
    refused(&format!("{HEAD}{COLUMNS}"), BoreRefusal::Empty, 0);
}

#[test]
fn headers_say_everything_or_are_refused() {
    let header = |words: &str, why| refused(&format!("# seat\n{words}\n{COLUMNS}0,0,72\n"), why, 2);
    header("depth_mm,angle_deg,diameter", BoreRefusal::NoHeader);
    header("bore,kind=two-point,unit=mm,resolution=0.001", BoreRefusal::HeaderMissing);
    header("bore,unit=mm,resolution=0.001,mpe=0.003", BoreRefusal::HeaderMissing);
    header("bore,kind=plug,unit=mm,resolution=0.001,mpe=0.003", BoreRefusal::KindUnknown);
    header("bore,kind=two-point,unit=cm,resolution=0.001,mpe=0.003", BoreRefusal::UnitUnknown);
    header("bore,kind=two-point,unit=mm,resolution=0,001,mpe=0,003", BoreRefusal::DecimalComma);
    header("bore,kind=two-point,unit=mm,resolution=0.001,mpe=0.003,colour=red", BoreRefusal::HeaderWord);
    header("bore,kind=two-point,kind=dial,unit=mm,resolution=0.001,mpe=0.003", BoreRefusal::HeaderWord);
    header("bore,kind=two-point,unit=mm,resolution=0.001,mpe=0.003,higher=wider", BoreRefusal::HeaderWord);
    header("bore,kind=dial,unit=mm,resolution=0.001,mpe=0.003", BoreRefusal::HeaderMissing);
    let columns = |names: &str| refused(&format!("{HEAD}{names}\n0,0,72\n"), BoreRefusal::Columns, 2);
    columns("depth,angle,diameter");
    columns("depth_mm,depth_in,angle_deg,diameter");
    columns("depth_mm,x,y");
    let instrument = |words: &str| {
        let rows = "0,0,72\n0,60,72\n0,120,72\n";
        let head = format!("bore,kind=two-point,unit=mm,{words}");
        refused(&format!("{head}\n{COLUMNS}{rows}"), BoreRefusal::Instrument, 0);
    };
    instrument("resolution=0,mpe=0.003");
    instrument("resolution=0.001,mpe=-0.003");
    instrument("resolution=0.001,mpe=3");
}

#[test]
fn rows_that_are_no_readings_are_refused_with_their_line() {
    rows_refused("0,0,72.01\n0,60,NaN\n0,120,72.0\n", BoreRefusal::NotANumber, 4);
    rows_refused("0,0,72.01\n0,60,\n0,120,72.0\n", BoreRefusal::CellCount, 4);
    rows_refused("0,0,72.01\n0,60,inf\n", BoreRefusal::NotANumber, 4);
    rows_refused("0,0,72,013\n", BoreRefusal::DecimalComma, 3);
    rows_refused("0,0,72.01,good\n", BoreRefusal::CellCount, 3);
    rows_refused("0,0,72.01\n0,60,2.835in\n0,120,72.0\n", BoreRefusal::MixedUnits, 4);
    rows_refused("0,0,72.01\n0,60,2.835\n0,120,72.0\n", BoreRefusal::MixedUnits, 4);
    rows_refused("0,0,7201\n0,60,7202\n0,120,7200\n", BoreRefusal::SizeImplausible, 3);
    rows_refused("0,0,-72\n0,60,-72\n0,120,-72\n", BoreRefusal::SizeImplausible, 3);
}

/// Twelve diameters under a header, as a spreadsheet of another language writes them.
fn commas(header: &str, mark: &str, value: impl Fn(u32) -> String) -> String {
    let rows: String = (0..12).map(|at| format!("3{mark}{}{mark}{}\n", at * 15, value(at))).collect();
    format!("{}\n{}\n{rows}", header.replace(';', mark), "depth_mm;angle_deg;diameter".replace(';', mark))
}

#[test]
fn decimal_commas_are_read_where_they_can_be_nothing_else() {
    let head = "bore;kind=two-point;unit=mm;resolution=0,001;mpe=0.003;wall=6,4";
    let point = |at: u32| format!("72.0{:02}", at + 10);
    let expected = read(&commas(&head.replace(',', "."), ";", point)).unwrap();
    for mark in [";", "\t"] {
        let found = read(&commas(head, mark, |at| point(at).replace('.', ","))).unwrap();
        assert_eq!(found, expected, "{mark:?}");
        // In mm 72,013 is no 72013: that is no seat.
        let bare = head.replace("0,001", "0.001").replace("6,4", "6.4");
        assert_eq!(read(&commas(&bare, mark, |at| point(at).replace('.', ","))).unwrap(), expected);
    }
}

#[test]
fn file_that_can_be_read_two_ways_is_refused_with_both_readings() {
    let refused = |text: &str, why: BoreRefusal, line: usize, both: [&str; 2]| {
        let fault = read(text).unwrap_err();
        assert_eq!((fault.why, fault.line), (why, Some(line)), "{text}");
        assert_eq!(fault.readings, Some(both.map(str::to_owned)));
        let message = shape_of(text, words()).unwrap_err().message;
        assert!(both.iter().all(|one| message.contains(one)), "{message}");
    };
    // 72,013 um is a seat where the comma parts thousands, and is 0.072 mm where it is a decimal comma.
    let head = "bore;kind=two-point;unit=um;resolution=1;mpe=3";
    let text = commas(head, ";", |at| format!("72,0{:02}", at + 10));
    refused(&text, BoreRefusal::TwoReadings, 3, ["72.010", "72010"]);
    // Deviations of 1.234 um and of 1.234 mm are both to be had.
    let dial = "bore;kind=dial;unit=um;resolution=0.1;mpe=1;zero-diameter=72mm;zero=set;higher=wider\nangle_deg;reading\n";
    let rows: String = (0..12).map(|at| format!("{};1,{:03}\n", at * 30, 200 + at)).collect();
    refused(&format!("{dial}{rows}"), BoreRefusal::TwoReadings, 3, ["1.200", "1200"]);
    // A unit behind a number proves nothing of its comma.
    let walled = dial.replace(";zero-diameter", ";wall=6mm;wall-error=1,000um;zero-diameter");
    refused(&format!("{walled}{rows}"), BoreRefusal::TwoReadings, 1, ["1.000um", "1000um"]);
    // One that can be nothing else settles the file.
    let readable = format!("{dial}{}", rows.replace("1,211", "1,21"));
    assert!(read(&readable).is_ok(), "{:?}", read(&readable));
    // Where commas part cells too, the row can be read either way.
    let rows = format!("{HEAD}{COLUMNS}0,0,72,013\n");
    refused(&rows, BoreRefusal::DecimalComma, 3, ["0 | 0 | 72.013", "0.0 | 72 | 013"]);
    refused_number("1.234,5");
}

/// Both signs in one number are neither.
fn refused_number(cell: &str) {
    let head = "bore;kind=two-point;unit=um;resolution=1;mpe=3";
    let fault = read(&commas(head, ";", |_| cell.to_owned())).unwrap_err();
    assert_eq!((fault.line, fault.readings), (Some(3), None));
}

#[test]
fn angles_are_enough_and_each_stands_once() {
    rows_refused("0,0,72.01\n0,60,72.02\n", BoreRefusal::TooFewAngles, 4);
    rows_refused("0,0,72\n5,0,72\n0,60,72\n0,120,72\n5,60,72\n", BoreRefusal::TooFewAngles, 7);
    rows_refused("0,0,72.01\n0,60,72.02\n0,180,72.0\n", BoreRefusal::AngleRepeated, 5);
    rows_refused("0,359.999,72.01\n0,60,72.02\n0,0,72.0\n", BoreRefusal::AngleRepeated, 5);
    let dial = "bore,kind=dial,unit=um,resolution=1,mpe=2,zero-diameter=72mm,zero=set,higher=wider\n\
                angle_deg,reading\n";
    refused(&format!("{dial}0,1\n90,2\n180,3\n270,1\n"), BoreRefusal::TooFewAngles, 6);
    refused(&format!("{dial}0,1\n90,2\n180,3\n270,1\n360,1\n"), BoreRefusal::AngleRepeated, 7);
    refused(&format!("{dial}0,1\n90,2\n180,9000\n270,1\n300,1\n"), BoreRefusal::MixedUnits, 5);
    let points = "bore,kind=coordinates,unit=mm,resolution=0.001,mpe=0.003\nx,y\n";
    refused(&format!("{points}36,0\n0,36\n-36,0\n0,-36\n0,36\n"), BoreRefusal::AngleRepeated, 7);
    refused(
        &format!(
            "{points}36,0
0,36
-1.4,0
0,-36
20,30
"
        ),
        BoreRefusal::MixedUnits,
        5,
    );
    refused(
        &format!(
            "{points}36,0
0,36
-914,0
0,-36
20,30
"
        ),
        BoreRefusal::MixedUnits,
        5,
    );
    let line = format!(
        "{points}1,1
2,2
3,3
4,4
5,5
"
    );
    assert_eq!(shape_of(&line, words()).unwrap_err().code, "bore-not-round");
}

fn ask() -> SkimAsk {
    SkimAsk { pass_diameter_mm: 0.0254, ..SkimAsk::default() }
}

const THREE: &str = "0,0,72.01\n0,60,72.02\n0,120,72.0\n";

#[test]
fn skims_that_cannot_be_planned_are_refused() {
    let refused = |kind: &str, ask: SkimAsk, why: BoreRefusal| {
        let text = format!("bore,kind={kind},unit=mm,resolution=0.001,mpe=0.003\n{COLUMNS}{THREE}");
        let text = if kind == "three-point" {
            text.replace("120,72", "20,72").replace("60,72", "40,72")
        } else {
            text
        };
        let failure = plan_of(&text, &ask, words()).unwrap_err();
        assert_eq!(failure.code, why.code());
    };
    let wall = |now: Option<f64>, least: Option<f64>| SkimAsk { wall_mm: now, wall_min_mm: least, ..ask() };
    refused("three-point", ask(), BoreRefusal::CannotSeeOval);
    refused("two-point", SkimAsk { axis: Some(SkimAxis::Datum), ..ask() }, BoreRefusal::NoDatum);
    refused("two-point", wall(Some(-1.0), None), BoreRefusal::WallNegative);
    refused("two-point", wall(Some(5.0), Some(-0.5)), BoreRefusal::WallNegative);
    refused("two-point", wall(Some(f64::NAN), None), BoreRefusal::WallNegative);
    refused("two-point", wall(None, Some(4.0)), BoreRefusal::WallMissing);
    refused("two-point", SkimAsk { pass_diameter_mm: 0.0, ..ask() }, BoreRefusal::PassDepth);
    refused("two-point", SkimAsk { pass_diameter_mm: f64::NAN, ..ask() }, BoreRefusal::PassDepth);
    refused("two-point", SkimAsk { pass_diameter_mm: 2.5, ..ask() }, BoreRefusal::PassDepth);
    refused("two-point", SkimAsk { pass_diameter_mm: 0.00001, ..ask() }, BoreRefusal::TooManyPasses);
    let far = |places: u32| {
        let point = |at: u32| {
            let angle = f64::from(at * 30).to_radians();
            format!("{:.4},{:.4}\n", 100.0 + 36.0 * angle.cos(), 36.0 * angle.sin())
        };
        let head = "bore,kind=coordinates,unit=mm,resolution=0.001,mpe=0.003\nx,y\n";
        format!("{head}{}", (0..places).map(point).collect::<String>())
    };
    let free = SkimAsk { axis: Some(SkimAxis::Free), ..ask() };
    assert_eq!(plan_of(&far(12), &ask(), words()).unwrap_err().code, "bore-no-datum");
    assert!(plan_of(&far(12), &free, words()).is_ok());
    assert_eq!(plan_of(&far(7), &free, words()).unwrap_err().code, "bore-read-in-part");
}

/// Two diameters of 72.000 and 72.040: 0.02 mm on the radius, two passes of 0.0254 mm on the diameter.
#[test]
fn walls_decide_between_skim_and_scrap() {
    let rows = "0,0,72.000\n0,30,72.010\n0,60,72.030\n0,90,72.040\n0,120,72.030\n0,150,72.010\n";
    let text = format!("{HEAD}{COLUMNS}{rows}");
    let plan = |now: Option<f64>, least: Option<f64>| {
        let ask = SkimAsk { wall_mm: now, wall_min_mm: least, wall_error_mm: Some(0.0), ..ask() };
        plan_of(&text, &ask, words()).unwrap()
    };
    let unknown = plan(None, None);
    assert_eq!((unknown.passes_needed, unknown.verdict), (2, SkimVerdict::WallUnknown));
    assert!((unknown.cut.value_um - 20.0).abs() < 1e-9 && unknown.at_least);
    assert!((unknown.clean_diameter.unwrap().value_mm - 72.04).abs() < 1e-12);
    assert!((unknown.passes[1].diameter_mm.unwrap() - 72.0508).abs() < 1e-12);
    assert_eq!(unknown.passes[0].touched[0].arcs_deg.len(), 2);
    let enough = plan(Some(6.0), Some(5.0));
    assert_eq!(enough.verdict, SkimVerdict::Skim);
    assert_eq!(enough.passes[1].wall_left_mm, Some(6.0 - 0.0254));
    // 1 mm less the doubt of the cut, in passes of 0.0127 mm on the radius.
    let room = (1.0 - enough.cut.expanded_um / 1000.0) / 0.0127;
    assert_eq!(enough.last_safe_pass, Some(room as usize));
    assert!(sentence(&enough.notes[0], words()).ends_with("measure again before you cut on."));
    let short = plan(Some(5.06), Some(5.0));
    assert_eq!((short.verdict, short.last_safe_pass), (SkimVerdict::Skim, Some(4)));
    assert!(sentence(&short.notes[0], words()).contains("stop at pass 4 "));
    // Without a sleeve the wall is enough for the cut alone, and no more is said; with one that leaves enough it is.
    for alone in [&enough, &short] {
        let said = sentence(&alone.notes[0], words());
        assert!(said.contains("for that cut alone") && said.contains("is not known"), "{said}");
    }
    for (now, sleeve, verdict, id) in [
        (6.0, 72.1, SkimVerdict::Skim, "skim-verdict-skim-ample"),
        (5.13, 72.1, SkimVerdict::Skim, "skim-verdict-skim"),
        (6.0, 75.0, SkimVerdict::Scrap, "skim-verdict-scrap"),
    ] {
        let wall = Some(0.0);
        let ask = SkimAsk { wall_mm: Some(now), wall_min_mm: Some(5.0), wall_error_mm: wall, ..ask() };
        let ask = SkimAsk { sleeve_bore_mm: Some(sleeve), ..ask };
        let plan = plan_of(&text, &ask, words()).unwrap();
        assert_eq!((plan.verdict, plan.notes[0].id.as_str()), (verdict, id), "{now} {sleeve}");
    }
    // Three times one pass is no ample wall.
    let rows = "0,0,72.000\n0,30,72.001\n0,60,72.003\n0,90,72.004\n0,120,72.003\n0,150,72.001\n";
    let ask = SkimAsk { wall_mm: Some(5.05), wall_min_mm: Some(5.0), wall_error_mm: Some(0.0), ..ask() };
    let round = plan_of(&format!("{HEAD}{COLUMNS}{rows}"), &ask, words()).unwrap();
    assert_eq!((round.passes_to_allow, round.last_safe_pass), (1, Some(3)));
    assert!(sentence(&round.notes[0], words()).contains("stop at pass 3 "));
    assert_eq!(plan(Some(5.026), Some(5.0)).verdict, SkimVerdict::WallUndecided);
    assert_eq!(plan(Some(5.01), Some(5.0)).verdict, SkimVerdict::Scrap);
    assert_eq!(plan(Some(0.02), None).verdict, SkimVerdict::Scrap);
    assert_eq!(plan(Some(6.0), None).verdict, SkimVerdict::WallUnknown);
    let stop = plan(Some(5.01), Some(5.0));
    assert_eq!((stop.last_safe_pass, stop.passes[1].wall_enough), (Some(0), Some(false)));
    assert!(sentence(&stop.notes[0], words()).starts_with("Stop and scrap"));
}

/// The same bore written in four units and with three marks is the same bore.
#[test]
fn units_and_marks_change_nothing() {
    let rows = [(0.0, 72.0009), (60.0, 72.0136), (120.0, 72.0263)];
    let file = |unit: &str, per_mm: f64, mark: &str| {
        let head =
            format!("bore,kind=two-point,unit={unit},resolution=0.001mm,mpe=0.003mm\nangle_deg,diameter\n");
        let rows: String = rows.iter().map(|(angle, mm)| format!("{angle},{}\r\n", mm * per_mm)).collect();
        format!("\u{feff}{head}{rows}").replace(',', mark)
    };
    let expected = read(&file("mm", 1.0, ",")).unwrap();
    let mut compared = 0;
    for (unit, per_mm) in [("mm", 1.0), ("um", 1000.0), ("in", 1.0 / 25.4), ("thou", 1000.0 / 25.4)] {
        for mark in [",", ";", "\t"] {
            let found = read(&file(unit, per_mm, mark)).unwrap();
            for (found, expected) in found.levels[0].readings.iter().zip(&expected.levels[0].readings) {
                let (BoreReading::At { value_mm: a, .. }, BoreReading::At { value_mm: b, .. }) =
                    (found, expected)
                else {
                    panic!("no diameters")
                };
                assert!((a - b).abs() < 1e-12, "{unit}: {a} for {b}");
                compared += 1;
            }
        }
    }
    assert_eq!(compared, 36);
}

#[test]
fn a_slip_is_flagged_and_kept() {
    let oval = |angle: f64| 36.0 + 0.01 * (2.0 * angle).cos();
    let mut level = dial(24, oval);
    level[7] = BoreReading::At { angle_deg: 105.0, value_mm: 0.15 };
    let it = shape(&readings(BoreKind::Dial, vec![(4.0, level)])).unwrap();
    let flagged: Vec<_> = it.sections[0].plot.points.iter().filter(|point| point.flagged).collect();
    assert_eq!(flagged.len(), 1);
    assert!((flagged[0].angle_deg - 105.0).abs() < 0.2, "{}", flagged[0].angle_deg);
    assert_eq!(it.sections[0].readings, 24);
    assert!(it.sections[0].out_of_roundness_minimum_zone.unwrap().value_um > 100.0, "it was dropped");
    let said: Vec<_> = it.notes.iter().filter(|note| note.id == "bore-flagged").collect();
    assert_eq!(said.len(), 1);
    assert!(sentence(said[0], words()).starts_with("The reading at 105 degrees, depth 4 mm,"));
    let clean = shape(&readings(BoreKind::Dial, vec![(4.0, dial(24, oval))])).unwrap();
    assert!(clean.notes.iter().all(|note| note.id != "bore-flagged"));
}

/// A set of few points, of which one stands near the middle of the coordinates, is no mixture of units.
#[test]
fn few_points_are_taken_as_they_are() {
    let few = coordinates(&crate::bore_sets::points_of(43_317));
    assert_eq!(few.len(), 6);
    assert!(shape(&readings(BoreKind::Coordinates, vec![(4.0, few)])).is_ok());
}

#[test]
fn plots_are_ready_to_draw() {
    let off = |angle: f64| [0.5 + 36.0 * angle.cos() + 0.01 * (3.0 * angle).cos(), 36.0 * angle.sin()];
    let points: Vec<[f64; 2]> = crate::bore_sets::even_angles(36).into_iter().map(off).collect();
    let it = shape(&readings(BoreKind::Coordinates, vec![(4.0, coordinates(&points))])).unwrap();
    let plot = &it.sections[0].plot;
    assert_eq!((plot.points.len(), plot.zone_outer.len(), plot.zone_inner.len()), (36, 120, 120));
    let reach = |at: [f64; 2]| at[0].hypot(at[1]);
    for point in &plot.points {
        let drawn = 1.0 + plot.magnification * point.deviation_um / 1000.0 / 36.0;
        assert!((reach(point.at) - drawn).abs() < 1e-3 && (0.74..1.26).contains(&reach(point.at)));
    }
    let widest = plot.zone_outer.iter().map(|at| reach(*at)).fold(0.0, f64::max);
    let deepest = plot.points.iter().map(|point| reach(point.at)).fold(0.0, f64::max);
    assert!(widest >= deepest - 1e-3, "a point lies outside the outer circle: {deepest} past {widest}");
    let mirrored = shape(&readings(BoreKind::TwoPoint, vec![(4.0, diameters(6, 2, |_| 36.0))])).unwrap();
    let points = &mirrored.sections[0].plot.points;
    assert_eq!((points.len(), points.iter().filter(|point| point.mirrored).count()), (12, 6));
}

fn demo(name: &str) -> String {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../demo-data/bench");
    std::fs::read_to_string(folder.join(name)).unwrap()
}

fn measured(name: &str) -> BoreShape {
    shape_of(&demo(name), words()).unwrap()
}

#[test]
fn demo_bores_show_what_they_were_made_with() {
    let roundness = |it: &BoreShape| it.greatest_out_of_roundness.unwrap().value_um;
    let oval = measured("oval-two-point.csv");
    assert!((oval.greatest_ovality.unwrap().value_um - 26.0).abs() < 2.0, "{:?}", oval.greatest_ovality);
    let lobes = measured("three-lobes-dial.csv");
    assert!((roundness(&lobes) - 17.0).abs() < 3.0, "{}", roundness(&lobes));
    let blind = measured("three-lobes-two-point.csv");
    assert!(roundness(&blind) < 3.0 && blind.notes[0].id == "bore-two-point-blind");
    let three = measured("three-lobes-three-point.csv");
    assert!(roundness(&three) > 13.0 && three.greatest_ovality.is_none());
    let tapered = measured("tapered-coordinates.csv");
    assert!((tapered.taper.unwrap().value_um + 55.9).abs() < 3.0, "{:?}", tapered.taper);
    assert!((tapered.mean_diameter.unwrap().value_mm - 72.017).abs() < 0.005, "{:?}", tapered.mean_diameter);
    let slip = measured("slip-dial.csv");
    assert!(slip.mean_diameter.is_none() && slip.notes.iter().any(|note| note.id == "bore-flagged"));
    let worn = measured("worn-seat-dial.csv");
    assert!((worn.mean_diameter.unwrap().value_mm - 72.044).abs() < 0.001, "{:?}", worn.mean_diameter);
    assert!((worn.greatest_ovality.unwrap().value_um - 68.0).abs() < 3.0, "{:?}", worn.greatest_ovality);
    let behind = measured("behind-sleeve-dial.csv");
    assert!((behind.mean_diameter.unwrap().value_mm - 75.044).abs() < 0.001, "{:?}", behind.mean_diameter);
    assert!((behind.greatest_ovality.unwrap().value_um - 68.0).abs() < 3.0, "{:?}", behind.greatest_ovality);
    let sleeved = measured("sleeved-seat-dial.csv");
    assert!((sleeved.mean_diameter.unwrap().value_mm - 71.964).abs() < 0.001 && roundness(&sleeved) < 4.0);
    let files = std::fs::read_dir(Path::new(env!("CARGO_MANIFEST_DIR")).join("../demo-data/bench")).unwrap();
    let bores = files.flatten().filter(|file| file.path().extension().is_some_and(|ending| ending == "csv"));
    assert_eq!(bores.count(), 9, "a demo bore is not looked at here");
}

#[test]
fn every_note_and_refusal_has_its_sentences() {
    for why in BoreRefusal::ALL {
        for id in [format!("error-{}", why.code()), format!("error-{}-help", why.code())] {
            assert!(words().find(&id).is_some(), "{id}");
        }
    }
    let names = [
        "angles", "lobes", "gap", "depth", "angle", "fewest", "floor", "passes", "allow", "safe", "shift",
        "read", "from", "to", "bore", "cut", "wall",
    ];
    for id in IDS {
        let args = names.iter().map(|name| ((*name).to_owned(), 2.0)).collect();
        let text = sentence(&BoreNote { id: id.to_owned(), args }, words());
        assert!(text.ends_with('.') && text.len() > 30, "{id}: {text}");
    }
    let mut said = 0;
    for name in ["oval-two-point.csv", "three-lobes-dial.csv", "three-lobes-three-point.csv", "slip-dial.csv"]
    {
        let shape = measured(name);
        let mut notes = shape.notes;
        if shape.kind != BoreKind::ThreePoint {
            notes.extend(plan_of(&demo(name), &ask(), words()).unwrap().notes);
        }
        for note in &notes {
            assert!(IDS.contains(&note.id.as_str()), "{}", note.id);
            assert_ne!(sentence(note, words()), note.id, "{name}: a number is missing");
            said += 1;
        }
        for line in &shape.budget {
            assert!(words().find(&line.id).is_some(), "{}", line.id);
        }
    }
    assert!(said > 20, "only {said} notes");
}
