//! Export and import of 100 visits with 12 photos each, taking turns with Debian's zip and unzip on the
//! same parts, and what a visit takes on disk.

use std::fs::{self, File};
use std::io::{BufReader, BufWriter, Cursor, Write};
use std::ops::Range;
use std::path::Path;
use std::process::{Command, Stdio};

use image::{ImageFormat, Rgb, RgbImage};
use steady_core::app::handover::Wanted;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::model::entry::{Entry, EntryBody, PhotoRef};
use steady_core::model::line::Line;
use steady_core::model::photo_of::PhotoOf;
use steady_core::model::time::Moment;
use steady_core::photos::intake::{Taken, take_in};
use steady_core::signing::key::DeviceKey;
use steady_core::signing::line::Writer;
use steady_core::store::cards::CardRow;
use steady_core::store::ledger::next_entry;
use steady_core::store::open::Store;

use crate::{alone, intake, open, report, timed};

const VISITS: usize = 100;
const PHOTOS: usize = 12;
const ROUNDS: usize = 3;

/// Prints the measurements.
pub fn measure(folder: &Path) {
    let data = folder.join("workshop");
    fill(&data, 0..VISITS, &take_in(&camera_picture(1, 4_000, 3_000)).unwrap());
    let steady = open(&data);
    let (file, parts, peer) = (folder.join("all.steady"), folder.join("parts"), folder.join("peer.zip"));
    let [mut export, mut zip, mut import, mut unzip] = [const { Vec::new() }; 4];
    for round in 0..ROUNDS {
        timed(&mut export, || {
            let mut sink = BufWriter::with_capacity(1 << 20, File::create(&file).unwrap());
            steady
                .export(Wanted { visits: &[], papers: false, locale: None, sheet: None }, &mut sink)
                .unwrap();
            sink.flush().unwrap();
            sink.get_ref().sync_all().unwrap();
        });
        let new = folder.join(format!("new-{round}"));
        let there = open(&new);
        let done =
            timed(&mut import, || there.import(&mut BufReader::new(File::open(&file).unwrap())).unwrap());
        assert_eq!(done.taken.len(), VISITS);
        drop(there);
        fs::remove_dir_all(new).unwrap();
        fs::remove_dir_all(&parts).ok();
        fs::remove_file(&peer).ok();
        if !timed(&mut unzip, || ran(Command::new("unzip").arg("-qq").arg(&file).arg("-d").arg(&parts))) {
            println!("no peer: zip and unzip are not installed");
            break;
        }
        timed(&mut zip, || ran(Command::new("zip").args(["-qr"]).arg(&peer).arg(".").current_dir(&parts)));
    }
    report("export of 100 visits with 12 photos each, signed, synced", export);
    report("  peer: zip -r of the same parts, not synced", zip);
    report("import of the same, verified, merged, every photo synced", import);
    report("  peer: unzip of the same file, not synced", unzip);
    drop(steady);
    // The file that is handed on lies in the data folder too, until the next start.
    let on_disk = bytes_in(&data);
    let words =
        [&*data.to_string_lossy(), &*folder.join("shared.steady").to_string_lossy()].map(str::to_owned);
    alone::report("peak memory of handing all of it on, as a phone does", &["share", &words[0], &words[1]]);
    let size = |path: &Path| fs::metadata(path).map_or(0, |file| file.len());
    println!("{:<58} {:>8.2} MB", "handover file, a visit", size(&file) as f64 / VISITS as f64 / 1e6);
    println!("{:<58} {:>8.2} MB", "  peer: zip's file, a visit", size(&peer) as f64 / VISITS as f64 / 1e6);
    println!(
        "{:<58} {:>8.2} MB",
        "on disk in the data folder, a visit",
        on_disk as f64 / VISITS as f64 / 1e6
    );
}

/// Makes the handover file and passes it on by its id, piece by piece, as a phone's share sheet is given it.
pub fn share_alone(data: &Path, to: &Path) {
    let steady = open(data);
    let all = Request::Export { visits: Vec::new(), papers: false, locale: None, sheet: None };
    let Response::Handover(made) = steady.handle(all).unwrap() else { panic!("no handover file") };
    std::io::copy(&mut steady.outgoing(&made.file).unwrap(), &mut File::create(to).unwrap()).unwrap();
}

fn ran(command: &mut Command) -> bool {
    command.stdout(Stdio::null()).status().is_ok_and(|status| status.success())
}

fn bytes_in(folder: &Path) -> u64 {
    let files = fs::read_dir(folder).unwrap().flatten();
    files
        .map(
            |file| if file.path().is_dir() { bytes_in(&file.path()) } else { file.metadata().unwrap().len() },
        )
        .sum()
}

/// Visits whose photos all differ, written straight into the store: one photo is taken in as from a
/// camera, and in each copy one coded byte is another.
pub fn fill(data: &Path, numbers: Range<usize>, photo: &Taken) {
    let mut store: Store = steady_core::store::open::open(data, Moment(0)).unwrap();
    let coded = photo.full.len() * 4 / 5;
    let writer = Writer::of(DeviceKey::from_seed(&[7; 32]));
    for number in numbers {
        let visit = format!("0191d2f0-0000-7000-8000-{number:012}");
        let by = || "Kim Demo".to_owned();
        let (mut entries, mut lines): (Vec<Entry>, Vec<Line>) = (Vec::new(), Vec::new());
        let mut add = |body: EntryBody| {
            let (entry, line) = next_entry(&entries, &visit, &writer, Moment(1), body);
            entries.push(entry);
            lines.push(line);
        };
        add(EntryBody::Opened { intake: intake(number), knowledge: "1".to_owned(), rules: 1, by: by() });
        for shot in 0..PHOTOS {
            let mut full = photo.full.clone();
            for (place, digit) in format!("{:06}", number * PHOTOS + shot).bytes().enumerate() {
                let at = coded + place * 7;
                // The byte after 0xff says that it is no mark of a segment, and has to stay.
                let after_mark = usize::from(full[at - 1] == 0xff);
                full[at + after_mark] = digit;
            }
            let sha256 = store.keep_photo(&full, &photo.thumb).unwrap();
            let (width, height) = (photo.width, photo.height);
            let photo = PhotoRef { original_sha256: sha256.clone(), sha256, width, height, taken: None };
            add(EntryBody::PhotoKept { of: PhotoOf::Step("housing-look".to_owned()), photo, by: by() });
        }
        let card = CardRow { visit: visit.clone(), opened_at: 1, updated_at: 1, ..CardRow::default() };
        store.append(&lines, &card).unwrap();
    }
}

/// A mottled surface, another for each seed; of 12 megapixels 290 KB are kept.
pub fn camera_picture(mut seed: u32, width: u32, height: u32) -> Vec<u8> {
    let picture = RgbImage::from_fn(width, height, |x, y| {
        seed = seed.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        let grain = (seed >> 29) as u8;
        Rgb([(x / 20) as u8 / 2 + grain, (y / 15) as u8 / 2 + grain, 90 + grain])
    });
    let mut bytes = Cursor::new(Vec::new());
    picture.write_to(&mut bytes, ImageFormat::Jpeg).unwrap();
    bytes.into_inner()
}
