//! A finding with 12 photos to PDF, beside Debian's weasyprint setting the same words and photos on about as many
//! pages. Ours keeps its press warm, as the app does; the peer is a process each time, so its start is told apart.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::Arc;
use std::thread;
use std::time::Duration;

use serde_json::json;
use steady_core::app::replay::replay;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::app::{Setup, Steady};
use steady_core::model::time::Moment;

use crate::handover::camera_picture;
use crate::{answer, intake, report, standing, timed};

const PHOTOS: usize = 12;
const ROUNDS: usize = 5;

/// Prints the measurements.
pub fn measure(folder: &Path) {
    let data_dir = folder.join("papers");
    let press = Arc::new(steady_papers::press().unwrap());
    let steady = Steady::open(Setup { data_dir: data_dir.clone(), press, clock: Moment::now }).unwrap();
    steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
    let demo = Path::new(env!("CARGO_MANIFEST_DIR")).join("../demo-data/07-nothing-found.json");
    let mut case: serde_json::Value = serde_json::from_str(&fs::read_to_string(demo).unwrap()).unwrap();
    for (place, answer) in case["answers"].as_array_mut().unwrap().iter_mut().enumerate() {
        answer.as_object_mut().unwrap().remove("photo");
        if place < PHOTOS {
            let photo = folder.join(format!("paper-photo-{place}.jpg"));
            fs::write(&photo, camera_picture(1 + place as u32, 4_000, 3_000)).unwrap();
            answer["photo"] = json!(photo);
        }
    }
    let visit = replay(&steady, &case.to_string(), folder).unwrap().report["visit"].clone();
    let ask = json!({ "ask": "paper", "visit": visit, "paper": "finding", "locale": "en" });
    let (mut ours, mut theirs, mut bare) = (Vec::new(), Vec::new(), Vec::new());
    let pdf = folder.join("finding.pdf");
    for _ in 0..ROUNDS {
        let request = serde_json::from_value(ask.clone()).unwrap();
        let reply = timed(&mut ours, || steady.handle(request).unwrap());
        let Response::Paper(paper) = reply else { panic!("no paper") };
        std::io::copy(&mut steady.outgoing(&paper.file).unwrap(), &mut fs::File::create(&pdf).unwrap())
            .unwrap();
    }
    report("finding with 12 photos to PDF/UA-1 and PDF/A-3a", ours);
    report("  an answer to its synced reply while it prints", answers_while_printing(&steady, &ask));
    println!("{:<58} {:>8.2} MB, {} pages", "  its size", megabytes(&pdf), pages(&pdf));
    let kept = fs::read_dir(data_dir.join("photos")).unwrap().flatten().map(|file| file.path());
    let full: Vec<PathBuf> = kept.filter(|path| !path.to_string_lossy().contains("thumb")).collect();
    assert_eq!(full.len(), PHOTOS);
    let (page, empty) = (folder.join("finding.html"), folder.join("empty.html"));
    fs::write(&page, html(&pdf, &full)).unwrap();
    fs::write(&empty, "<p>x</p>").unwrap();
    let peer = folder.join("peer.pdf");
    for _ in 0..ROUNDS {
        if !timed(&mut theirs, || weasyprint(&page, &peer)) {
            println!("no peer: weasyprint is not installed, or another version than 57");
            return;
        }
        timed(&mut bare, || weasyprint(&empty, &folder.join("empty.pdf")));
    }
    report("  peer: weasyprint, the same words and photos, untagged", theirs);
    report("  peer: weasyprint with an empty page, its start", bare);
    println!("{:<58} {:>8.2} MB, {} pages", "  peer's size", megabytes(&peer), pages(&peer));
}

/// Answers in another visit until the paper is there, three times.
fn answers_while_printing(steady: &Steady, paper: &serde_json::Value) -> Vec<Duration> {
    let visit = standing(steady.handle(Request::Open { intake: intake(0) }).unwrap()).visit;
    let mut times = Vec::new();
    for _ in 0..3 {
        let request = serde_json::from_value(paper.clone()).unwrap();
        thread::scope(|scope| {
            let printing = scope.spawn(|| steady.handle(request).unwrap());
            while !printing.is_finished() {
                let turn = times.len();
                timed(&mut times, || steady.handle(answer(&visit, turn)).unwrap());
                // A quick hand's pause; without one the ledger would be all that the disk does.
                thread::sleep(Duration::from_millis(10));
            }
        });
    }
    times
}

/// The words of our own paper, and its photos as large as they stand there.
fn html(pdf: &Path, photos: &[PathBuf]) -> String {
    let words = Command::new("pdftotext").arg("-raw").arg(pdf).arg("-").output().unwrap().stdout;
    let words = String::from_utf8_lossy(&words).replace('&', "&amp;").replace('<', "&lt;");
    let lines: String = words.lines().map(|line| format!("<p>{line}</p>")).collect();
    let photos =
        photos.iter().map(|photo| format!("<img style=\"width: 60mm\" src=\"{}\">", photo.display()));
    let photos: String = photos.collect();
    format!(
        "<!doctype html><html lang=en><style>p {{ margin: 0; font: 10pt Noto Sans }}</style>{lines}{photos}"
    )
}

fn weasyprint(from: &Path, to: &Path) -> bool {
    let mut command = Command::new("weasyprint");
    command.args(["-O", "images"]).arg(from).arg(to).stdout(Stdio::null()).stderr(Stdio::null());
    command.status().is_ok_and(|status| status.success())
}

fn megabytes(file: &Path) -> f64 {
    fs::metadata(file).map_or(0.0, |file| file.len() as f64 / 1e6)
}

fn pages(pdf: &Path) -> String {
    let told = Command::new("pdfinfo").arg(pdf).output().map_or_else(|_| Vec::new(), |output| output.stdout);
    let told = String::from_utf8_lossy(&told).into_owned();
    told.lines().find_map(|line| line.strip_prefix("Pages:")).unwrap_or("?").trim().to_owned()
}
