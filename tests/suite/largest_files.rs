//! The largest file of each kind that is still accepted: taken in, shown and printed, each in a process of its
//! own whose peak memory is then read, and whose processor time is bounded. What is accepted may be large; it may not be
//! more than a phone has.
//!
//! A row starts its own test again with a folder in the environment: the second process does the work.

#![expect(
    clippy::print_stdout,
    reason = "the second process tells the first, and both tell who reads the figures"
)]

use std::fmt::Write as _;
use std::path::Path;
use std::process::Command;
use std::sync::Arc;

use image::{Rgb, RgbImage};
use serde_json::{Value, json};
use steady_core::app::backup::generations;
use steady_core::app::replay::replay;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::app::{Setup, Steady};
use steady_core::model::entry::EntryBody;
use steady_core::model::limits;
use steady_core::photos::intake::take_in;
use steady_core::store::backup::list::List;
use steady_core::words::Words;

use crate::backup_generations::{back_up, restore};
use crate::handover_corpus::VISIT;
use crate::handover_files::{ledger, line, sealed, sha256, stranger, zip};
use crate::support::MORNING;

/// Where the second process finds its folder.
const FOLDER: &str = "STEADY_LARGEST";

/// Processor time after which a process is ended, seconds: a build that is not optimised takes a tenth of it. What other
/// work leaves of the processors does not count.
const LONGEST: u32 = 300;

/// Does `work` in a process of its own and gives back the most memory it held, bytes; nothing in that process.
fn apart(row: &str, prepare: impl FnOnce(&Path), work: impl FnOnce(&Path)) -> Option<u64> {
    if let Some(folder) = std::env::var_os(FOLDER) {
        work(Path::new(&folder));
        let status = std::fs::read_to_string("/proc/self/status").unwrap();
        let peak = status.lines().find_map(|line| line.strip_prefix("VmHWM:")).unwrap();
        println!("\npeak kB {}", peak.trim().trim_end_matches(" kB"));
        return None;
    }
    let folder = tempfile::tempdir().unwrap();
    prepare(folder.path());
    let mut again = Command::new("prlimit");
    again.arg(format!("--cpu={LONGEST}")).arg("--").arg(std::env::current_exe().unwrap());
    again.args([&format!("largest_files::{row}"), "--exact", "--nocapture"]).env(FOLDER, folder.path());
    let output = again.output().unwrap();
    let said = String::from_utf8_lossy(&output.stdout).into_owned();
    assert!(output.status.success(), "{said}\n{}", String::from_utf8_lossy(&output.stderr));
    let peak: u64 = said.lines().find_map(|line| line.strip_prefix("peak kB ")).unwrap().parse().unwrap();
    println!("{row}: {} MB", peak / 1_000);
    Some(peak * 1_000)
}

fn printing(folder: &Path) -> Steady {
    let press = Arc::new(steady_papers::press().unwrap());
    let steady = Steady::open(Setup { data_dir: folder.to_owned(), press, clock: || MORNING }).unwrap();
    steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
    steady
}

fn asked(steady: &Steady, request: Value) -> Response {
    let request: Request = serde_json::from_value(request).unwrap();
    steady.handle(request).unwrap_or_else(|failure| panic!("{failure:?}"))
}

/// A picture of noise of the greatest kept size, which no coder makes small, and its thumbnail.
fn noise(seed: u32) -> [Vec<u8>; 2] {
    let mut state = seed;
    let mut next = move || {
        state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        (state >> 24) as u8
    };
    let side = limits::PHOTO_SIDE;
    let picture = RgbImage::from_fn(side, side, |_, _| Rgb([next(), next(), next()]));
    let mut png = Vec::new();
    picture.write_to(&mut std::io::Cursor::new(&mut png), image::ImageFormat::Png).unwrap();
    let taken = take_in(&png).unwrap();
    [taken.full, taken.thumb]
}

/// A signature of as many strokes and points as are taken.
fn signature() -> Value {
    let point = |at: usize| [at as f32 / limits::POINTS as f32, (at % 97) as f32 / 97.0];
    let each = limits::POINTS / limits::STROKES;
    let stroke = |number: usize| (0..each).map(|at| point(number * each + at)).collect::<Vec<_>>();
    json!((0..limits::STROKES).map(stroke).collect::<Vec<_>>())
}

/// Depths and angles of the largest bore: each depth with as many readings as are taken.
fn bore_rows() -> impl Iterator<Item = (usize, f64, f64)> {
    let depths = limits::BORE_READINGS / limits::BORE_AT_A_DEPTH;
    let turn = 360.0 / limits::BORE_AT_A_DEPTH as f64;
    (0..depths).flat_map(move |depth| {
        (0..limits::BORE_AT_A_DEPTH).map(move |at| {
            let angle = at as f64 * turn;
            (depth + 1, angle, 0.008 * (2.0 * angle.to_radians()).cos() + ((at * 31) % 17) as f64 * 1e-4)
        })
    })
}

fn bore() -> Value {
    let mut levels: Vec<Value> = Vec::new();
    for (depth, angle_deg, value_mm) in bore_rows() {
        if levels.len() < depth {
            levels.push(json!({ "depth_mm": depth as f64, "readings": [] }));
        }
        let readings = levels[depth - 1]["readings"].as_array_mut().unwrap();
        readings.push(json!({ "angle_deg": (angle_deg * 1e3).round() / 1e3, "value_mm": (value_mm * 1e4).round() / 1e4 }));
    }
    json!({ "kind": "dial", "instrument": { "resolution_mm": 0.001, "mpe_mm": 0.004, "repeatability_mm": 0.0 },
        "zero_diameter_mm": 72.0, "zero_was_set": true, "clockwise": false, "wall_mm": 9.0, "levels": levels })
}

/// The bodies of a visit that is at every bound at once.
fn bodies(photos: &[String]) -> Vec<Value> {
    let (line, by) = ("W".repeat(limits::LINE), "Robin Demo");
    let vehicle = json!({ "layout": "rigid-engine-speed", "label": line, "plate": line, "vin": line,
        "seat": "bare", "cylinders": 6, "gearbox": "automated-clutch", "idle_rpm": [700, 800],
        "odometer": { "value": 99_999_999, "unit": "km" }, "maker_play_mm": null });
    let complaint = "It rattles. ".repeat(limits::TEXT / 12);
    let intake = json!({ "vehicle": vehicle, "complaint": complaint, "complaint_sounds": ["rattle"],
        "when": complaint, "owner": { "name": line, "contact": line } });
    let bench = |bench: Value| json!({ "kind": "bench", "bench": bench, "by": by });
    let mut bodies = vec![json!({ "kind": "opened", "intake": intake, "knowledge": "1", "by": line })];
    for gate in
        ["lift-gates-hold", "stands-and-straps", "engine-and-gearbox-held", "shaft-marked", "maker-procedure"]
    {
        bodies.push(bench(json!({ "bench": "gate-confirmed", "gate": format!("teardown-{gate}") })));
    }
    for stage in ["found", "finished"] {
        bodies.push(bench(json!({ "bench": "bore-read", "stage": stage, "bore": bore() })));
    }
    for number in 1..=limits::PASSES {
        bodies.push(bench(
            json!({ "bench": "pass-cut", "number": number, "contact": "partly", "diameter_mm": 72.5 }),
        ));
    }
    let note = "Torque noted once more. ".repeat(limits::NOTE / 24);
    bodies.extend((0..limits::NOTES).map(|_| bench(json!({ "bench": "noted", "text": note }))));
    let steps =
        ["housing-look", "shaft-look", "coupling-look", "shield-and-mounts", "bench-found", "bench-pass-1"];
    let spots: Vec<[f64; 2]> = (0..limits::SPOTS).map(|at| [at as f64 / 256.0, 0.5]).collect();
    for number in 0..limits::PHOTOS {
        let (step, sha256) = (steps[number % steps.len()], &photos[number % photos.len()]);
        let photo = json!({ "sha256": sha256, "original_sha256": sha256, "width": limits::PHOTO_SIDE,
            "height": limits::PHOTO_SIDE, "taken": "2026-11-25 09:30:00" });
        bodies.push(json!({ "kind": "photo-kept", "step": step, "photo": photo, "by": by }));
        let marks = vec![json!({ "shape": "freehand", "points": spots }); limits::MARKS];
        if number + 12 > limits::PHOTOS {
            bodies.push(
                json!({ "kind": "photo-marked", "step": step, "photo": sha256, "marks": marks, "by": by }),
            );
        }
    }
    let reason = "Looked at again by two. ".repeat(limits::REASON / 24);
    for step in ["play-vertical", "play-lateral", "turn-by-hand"] {
        for _ in 0..limits::STANDING_ANSWERS {
            bodies.push(
                json!({ "kind": "answered", "step": step, "value": "none", "reason": reason, "by": line }),
            );
        }
    }
    let receipt = json!({ "decision": "repair", "name": line, "note_sha256": "0".repeat(64), "locale": "en",
        "rating": "danger", "strokes": signature() });
    bodies.push(json!({ "kind": "received", "receipt": receipt }));
    while bodies.len() < limits::ENTRIES {
        bodies.push(json!({ "kind": "part-left", "set": "lift", "by": by }));
    }
    bodies
}

/// A stranger's file with that visit and its photos.
fn largest_handover() -> Vec<u8> {
    let pictures = [noise(1), noise(2)];
    let names: Vec<String> = pictures.iter().map(|[full, _]| sha256(full)).collect();
    let mut prev = "0".repeat(64);
    let spelled = |body: &Value| {
        let body: EntryBody = serde_json::from_value(body.clone()).unwrap();
        serde_json::to_string(&body).unwrap()
    };
    let lines: Vec<Value> = (1..)
        .zip(&bodies(&names))
        .map(|(seq, body)| line(VISIT, &stranger(), seq, &mut prev, &spelled(body)))
        .collect();
    let mut parts = vec![ledger(VISIT, &lines)];
    let longest = pictures.iter().map(|[full, _]| full.len()).max().unwrap();
    println!("a ledger of {} bytes, photos of {longest}", parts[0].1.len());
    assert!(parts[0].1.len() as u64 <= limits::LEDGER_BYTES, "{}", parts[0].1.len());
    assert!(longest as u64 <= limits::PHOTO_BYTES);
    let mut photos: Vec<(String, Vec<u8>)> = names
        .iter()
        .zip(pictures)
        .flat_map(|(name, [full, thumb])| {
            [(format!("photos/{name}.jpg"), full), (format!("photos/{name}.thumb.jpg"), thumb)]
        })
        .collect();
    photos.sort();
    parts.extend(photos);
    zip(&sealed(&parts, |_| {}))
}

#[test]
fn largest_visit_is_taken_in_printed_backed_up_restored_and_salvaged() {
    let prepare = |folder: &Path| std::fs::write(folder.join("large.steady"), largest_handover()).unwrap();
    let peak =
        apart("largest_visit_is_taken_in_printed_backed_up_restored_and_salvaged", prepare, |folder| {
            let steady = printing(&folder.join("data"));
            let mut file = std::io::BufReader::new(std::fs::File::open(folder.join("large.steady")).unwrap());
            assert_eq!(steady.import(&mut file).unwrap().taken, [VISIT]);
            for paper in ["finding", "note", "repair", "machinist", "before-after"] {
                let made =
                    asked(&steady, json!({ "ask": "paper", "visit": VISIT, "paper": paper, "locale": "en" }));
                let Response::Paper(paper) = made else { panic!("no paper") };
                assert!(paper.bytes <= limits::PAPER_BYTES, "{}: {} bytes", paper.name, paper.bytes);
            }
            asked(&steady, json!({ "ask": "history", "visit": VISIT }));
            let full = json!({ "ask": "leave-part", "visit": VISIT });
            let request: Request = serde_json::from_value(full).unwrap();
            assert!(["part-not-entered", "visit-full"].contains(&&*steady.handle(request).unwrap_err().code));
            back_up(&steady, &folder.join("backup"));
            drop(steady);
            let other = printing(&folder.join("other"));
            assert_eq!(restore(&other, &folder.join("backup")).imported.taken, [VISIT]);
            drop(other);
            let third = printing(&folder.join("third"));
            let salvaged = third.salvage(&folder.join("data/steady.db")).unwrap();
            assert_eq!((salvaged.imported.taken.len(), salvaged.lost.len()), (1, 0));
        });
    assert!(peak.is_none_or(|peak| peak < 600_000_000), "{peak:?}");
}

#[test]
fn largest_bore_file_is_measured_and_planned() {
    let prepare = |folder: &Path| {
        let mut text = "bore,kind=dial,unit=mm,resolution=0.001,mpe=0.004,zero-diameter=72,zero=set,higher=wider,wall=9\n\
                        depth_mm,angle_deg,reading\n"
            .to_owned();
        for (depth, angle, value) in bore_rows() {
            writeln!(text, "{depth},{angle:.3},{value:.4}").unwrap();
        }
        assert!(text.len() as u64 <= limits::BORE_FILE_BYTES);
        std::fs::write(folder.join("bore.csv"), text).unwrap();
    };
    let peak = apart("largest_bore_file_is_measured_and_planned", prepare, |folder| {
        let text = std::fs::read_to_string(folder.join("bore.csv")).unwrap();
        let words = Words::of("en").unwrap();
        let shape = steady_core::app::bore::shape_of(&text, words).unwrap();
        assert_eq!(shape.sections.len(), limits::BORE_READINGS / limits::BORE_AT_A_DEPTH);
    });
    assert!(peak.is_none_or(|peak| peak < 200_000_000), "{peak:?}");
}

#[test]
fn largest_case_is_replayed() {
    let prepare = |folder: &Path| {
        let answer = json!({ "step": "road-speed-vibration", "value": "none" });
        let text = "x".repeat(limits::TEXT);
        let vehicle = json!({ "layout": "rigid-engine-speed", "seat": "bare" });
        let case = json!({ "vehicle": vehicle, "complaint": text, "when": text,
            "answers": vec![answer; limits::CASE_ROWS] });
        std::fs::write(folder.join("case.json"), case.to_string()).unwrap();
    };
    let peak = apart("largest_case_is_replayed", prepare, |folder| {
        let steady = printing(&folder.join("data"));
        let text = std::fs::read_to_string(folder.join("case.json")).unwrap();
        let report = replay(&steady, &text, folder).unwrap().report;
        // Of what the owner tells there is no photo, and so no word on why there is none.
        assert_eq!(report["ledger"]["entries"], json!(limits::CASE_ROWS + 1));
    });
    assert!(peak.is_none_or(|peak| peak < 200_000_000), "{peak:?}");
}

/// A workshop's own file as long as one may be: read at each start, backed up and taken back.
#[test]
fn largest_own_file_is_read_backed_up_and_restored() {
    let prepare = |folder: &Path| {
        let layout = "id = \"twin-rubber\"\nname = \"Twin rubber\"\nsupport = \"rubber\"\nspeed = \"output\"\n\
                      allowed_movement = \"maker-figure\"\ncauses = [\"worn-bearing\", \"torn-support-rubber\"]\n\
                      basis = \"common practice, no source\"\n#";
        let longest = usize::try_from(limits::OWN_FILE_BYTES).unwrap();
        let text = format!("{layout}{}", "x".repeat(longest - layout.len()));
        std::fs::create_dir_all(folder.join("data/layouts")).unwrap();
        std::fs::write(folder.join("data/layouts/own.toml"), text).unwrap();
    };
    let peak = apart("largest_own_file_is_read_backed_up_and_restored", prepare, |folder| {
        let steady = printing(&folder.join("data"));
        asked(&steady, json!({ "ask": "open", "intake": { "vehicle": { "layout": "twin-rubber" } } }));
        assert!(back_up(&steady, &folder.join("backup")).own_left_out.is_empty());
        let other = printing(&folder.join("other"));
        assert_eq!(restore(&other, &folder.join("backup")).imported.taken.len(), 1);
    });
    assert!(peak.is_none_or(|peak| peak < 200_000_000), "{peak:?}");
}

/// A backup whose list names as many photos as fit into one.
#[test]
fn largest_list_of_a_backup_is_read() {
    let prepare = |folder: &Path| {
        let steady = printing(&folder.join("data"));
        asked(&steady, json!({ "ask": "open", "intake": { "vehicle": { "layout": "rigid-engine-speed" } } }));
        back_up(&steady, &folder.join("backup"));
        let lists = folder.join("backup/generations");
        let path = std::fs::read_dir(&lists).unwrap().next().unwrap().unwrap().path();
        let mut list = List::read("list", &std::fs::read(&path).unwrap()).unwrap();
        // Each stands in quotes, with a comma behind it.
        let room = limits::BACKUP_LIST_BYTES - list.text().unwrap().len() as u64;
        list.missing = (0..room / 67).map(|number| format!("{number:064x}")).collect();
        let text = list.text().unwrap();
        assert!(text.len() as u64 <= limits::BACKUP_LIST_BYTES);
        std::fs::write(&path, text).unwrap();
    };
    let peak = apart("largest_list_of_a_backup_is_read", prepare, |folder| {
        assert_eq!(generations(&folder.join("backup")).unwrap().len(), 1);
        let other = printing(&folder.join("other"));
        assert_eq!(restore(&other, &folder.join("backup")).imported.taken.len(), 1);
    });
    assert!(peak.is_none_or(|peak| peak < 600_000_000), "{peak:?}");
}
