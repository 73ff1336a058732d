//! A camera's photo of 12 megapixels to 2,560 pixels and a thumbnail, as whole processes, taking turns with
//! Debian's vipsthumbnail (libvips-tools) making the same two files at the same sizes and qualities.

use std::fs;
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

use crate::handover::camera_picture;
use crate::report;

const ROUNDS: usize = 15;

/// Prints the measurements.
pub fn measure(folder: &Path) {
    let given = folder.join("camera");
    fs::create_dir_all(&given).unwrap();
    let photo = given.join("photo.jpg");
    fs::write(&photo, camera_picture()).unwrap();
    let out = folder.join("taken");
    fs::create_dir_all(&out).unwrap();
    let (mut ours, mut theirs) = (Vec::new(), Vec::new());
    let (mut our_peak, mut their_peak) = (0, 0);
    for _ in 0..ROUNDS {
        let (time, peak) = run(Command::new(env!("CARGO_BIN_EXE_taker")).arg(&given).arg(&out)).unwrap();
        ours.push(time);
        our_peak = our_peak.max(peak);
        let mut both = Duration::ZERO;
        for (side, name) in [("2560x2560", "full.jpg[Q=85,strip]"), ("480x480", "thumb.jpg[Q=75,strip]")] {
            let mut peer = Command::new("vipsthumbnail");
            let Some((time, peak)) = run(peer.arg(&photo).args(["--size", side, "-o"]).arg(out.join(name)))
            else {
                println!("no peer: vipsthumbnail is not installed");
                return;
            };
            both += time;
            their_peak = their_peak.max(peak);
        }
        theirs.push(both);
    }
    report("photo of 12 megapixels to 2,560 and thumbnail, process", ours);
    report("  peer: vipsthumbnail, the same two files, two processes", theirs);
    println!("{:<58} {:>8.1} MB, vipsthumbnail {:.1} MB", "  peak memory", mb(our_peak), mb(their_peak));
}

fn mb(kilobytes: u64) -> f64 {
    kilobytes as f64 * 1_024.0 / 1e6
}

/// Time to the end, and the most memory seen while it ran, kB; none if it cannot be started.
fn run(command: &mut Command) -> Option<(Duration, u64)> {
    let begun = Instant::now();
    let mut child = command.stdout(Stdio::null()).spawn().ok()?;
    let status = format!("/proc/{}/status", child.id());
    let mut peak = 0;
    while child.try_wait().unwrap().is_none() {
        let text = fs::read_to_string(&status).unwrap_or_default();
        let held = text.lines().find_map(|line| line.strip_prefix("VmHWM:")).unwrap_or_default();
        peak = peak.max(held.trim().trim_end_matches(" kB").parse().unwrap_or(0));
        std::thread::sleep(Duration::from_millis(1));
    }
    Some((begun.elapsed(), peak))
}
