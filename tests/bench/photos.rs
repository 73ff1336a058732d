//! A camera's photo of 12 megapixels to 2,560 pixels and a thumbnail, as whole processes, taking turns with
//! Debian's vipsthumbnail (libvips-tools) making the same two files at the same sizes and qualities.

use std::fs;
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

use jpeg_encoder::{ColorType, Encoder, SamplingFactor};

use crate::report;

const ROUNDS: usize = 15;
/// What /proc counts processor time in.
const TICK: Duration = Duration::from_millis(10);

/// Prints the measurements.
pub fn measure(folder: &Path) {
    let given = folder.join("camera");
    fs::create_dir_all(&given).unwrap();
    let photo = given.join("photo.jpg");
    fs::write(&photo, camera_photo()).unwrap();
    let out = folder.join("taken");
    fs::create_dir_all(&out).unwrap();
    let (mut ours, mut theirs) = (Runs::default(), Runs::default());
    for _ in 0..ROUNDS {
        let run = run(Command::new(env!("CARGO_BIN_EXE_taker")).arg(&given).arg(&out)).unwrap();
        ours.add(run);
        let Some(run) = vips(&photo, &out) else {
            println!("no peer: vipsthumbnail is not installed");
            return;
        };
        theirs.add(run);
    }
    ours.print("photo of 12 megapixels to 2,560 and thumbnail, process");
    theirs.print("  peer: vipsthumbnail, the same two files, two processes");
}

/// One process a file, as it works.
fn vips(photo: &Path, out: &Path) -> Option<Run> {
    let one = |side: &str, name: &str| {
        run(Command::new("vipsthumbnail").arg(photo).args(["--size", side, "-o"]).arg(out.join(name)))
    };
    let full = one("2560x2560", "peer-full.jpg[Q=85,strip]")?;
    let thumb = one("480x480", "peer-thumb.jpg[Q=75,strip]")?;
    let (time, processor) = (full.time + thumb.time, full.processor + thumb.processor);
    Some(Run { time, processor, peak: full.peak.max(thumb.peak) })
}

/// A surface with the grain of a sensor, coded as cameras do: colour at half its size, 3 MB.
fn camera_photo() -> Vec<u8> {
    let mut seed = 1_u32;
    let pixel = |at: u32| {
        seed = seed.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        let (x, y, grain) = (at % 4_000, at / 4_000, (seed >> 28) as u8);
        [(x / 20) as u8 / 2 + grain, (y / 15) as u8 / 2 + grain, 90 + grain]
    };
    let rgb: Vec<u8> = (0..4_000 * 3_000).flat_map(pixel).collect();
    let mut jpeg = Vec::new();
    let mut encoder = Encoder::new(&mut jpeg, 92);
    encoder.set_sampling_factor(SamplingFactor::F_2_2);
    encoder.encode(&rgb, 4_000, 3_000, ColorType::Rgb).unwrap();
    jpeg
}

/// What one run took; memory in kB.
struct Run {
    time: Duration,
    processor: Duration,
    peak: u64,
}

#[derive(Default)]
struct Runs {
    times: Vec<Duration>,
    processor: Duration,
    peak: u64,
}

impl Runs {
    fn add(&mut self, run: Run) {
        self.times.push(run.time);
        self.processor += run.processor;
        self.peak = self.peak.max(run.peak);
    }

    fn print(self, what: &str) {
        let processor = self.processor.as_secs_f64() * 1e3 / self.times.len() as f64;
        report(what, self.times);
        println!("{:<58} {processor:>8.0} ms on average", "    processor time");
        println!("{:<58} {:>8.1} MB", "    peak memory", self.peak as f64 * 1_024.0 / 1e6);
    }
}

/// Runs a process to its end; none if it cannot be started.
fn run(command: &mut Command) -> Option<Run> {
    let (begun, before) = (Instant::now(), processor());
    let mut child = command.stdout(Stdio::null()).spawn().ok()?;
    let status = format!("/proc/{}/status", child.id());
    let mut peak = 0;
    while child.try_wait().unwrap().is_none() {
        let text = fs::read_to_string(&status).unwrap_or_default();
        let held = text.lines().find_map(|line| line.strip_prefix("VmHWM:")).unwrap_or_default();
        peak = peak.max(held.trim().trim_end_matches(" kB").parse().unwrap_or(0));
        std::thread::sleep(Duration::from_millis(1));
    }
    Some(Run { time: begun.elapsed(), processor: processor() - before, peak })
}

/// What processes that have ended took, by proc(5): cutime and cstime, the 14th and 15th after the name.
fn processor() -> Duration {
    let stat = fs::read_to_string("/proc/self/stat").unwrap();
    let after = stat.rsplit(')').next().unwrap();
    let ticks = after.split_whitespace().skip(13).take(2).map(|ticks| ticks.parse::<u32>().unwrap());
    TICK * ticks.sum::<u32>()
}
