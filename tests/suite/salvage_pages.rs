//! Of 500 visits, what is whole on disk comes back from any of 200 damages: blocks zeroed or overwritten, files cut
//! short. What is whole is worked out here from the bytes of the undamaged files, apart from the reader.

use std::collections::{BTreeMap, HashMap};
use std::fs;
use std::path::Path;

use steady_core::model::answer::AnswerValue;
use steady_core::model::entry::{Entry, EntryBody, OwnerDecision, Receipt};
use steady_core::model::line::Line;
use steady_core::model::time::Moment;
use steady_core::model::visit::{Intake, Vehicle};
use steady_core::signing::key::DeviceKey;
use steady_core::signing::line::Writer;
use steady_core::store::cards::CardRow;
use steady_core::store::ledger::next_entry;
use steady_core::store::open::{Store, open};

use crate::support::{MORNING, scratch};

const VISITS: usize = 500;
const DAMAGES: u64 = 200;
/// Share of the visits whole on disk that has to come back, in hundredths.
const SHARE: usize = 95;
const BLOCK: usize = 512;
const PAGE: usize = 4096;

/// A well-mixed sequence from a seed (SplitMix64, published by Steele, Lea and Flood, 2014).
struct Chance(u64);

impl Chance {
    fn below(&mut self, bound: usize) -> usize {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        usize::try_from((mixed ^ (mixed >> 31)) % bound as u64).unwrap()
    }
}

fn visit(number: usize) -> String {
    format!("0191d2f0-{:04x}-7000-8000-{:012x}", number / 64, number * 77_777)
}

/// What is written at a place in a visit's chain; the last, a signature, is longer than a page.
fn body(number: usize, place: usize) -> EntryBody {
    let by = "Kim Demo".to_owned();
    let coordinate = |point: usize| ((number * 31 + point * 17) % 997) as f32 / 1000.0;
    match place {
        0 => {
            let plate = format!("TR {number:04}");
            let vehicle = Vehicle { layout: "torque-tube".to_owned(), plate, ..Vehicle::default() };
            EntryBody::Opened {
                intake: Intake { vehicle, ..Intake::default() },
                knowledge: "k".repeat(16),
                rules: 2,
                by,
            }
        }
        11 if number.is_multiple_of(3) => EntryBody::Received {
            receipt: Receipt {
                decision: OwnerDecision::Repair,
                name: String::new(),
                note_sha256: format!("{number:064x}"),
                locale: "en".to_owned(),
                rating: None,
                lines: None,
                strokes: vec![(0..400).map(|point| [coordinate(point), coordinate(point + 1)]).collect()],
            },
        },
        _ => EntryBody::Answered {
            step: "road-speed-vibration".to_owned(),
            value: AnswerValue::One("none".to_owned()),
            temperature: None,
            free: None,
            engine: None,
            heard_at: None,
            layout: None,
            figure_mm: None,
            clock: None,
            reason: place.is_multiple_of(4).then(|| "looked at again ".repeat(number % 20)),
            supersedes: vec![format!("{:064x}", number * 100 + place)],
            by,
        },
    }
}

/// The ledger as it is, and the files it stands in.
struct Model {
    lines: BTreeMap<String, Vec<Line>>,
    /// `steady.db` and its log.
    files: [Vec<u8>; 2],
}

/// Ten cars at a time are worked on in turn; each visit is written in four goes.
fn model() -> Model {
    let folder = tempfile::tempdir().unwrap();
    let mut store = open(folder.path(), MORNING).unwrap();
    let mut entries: BTreeMap<String, Vec<Entry>> = BTreeMap::new();
    let writer = Writer::of(DeviceKey::from_seed(&[9; 32]));
    let mut now = MORNING.0;
    for day in 0..VISITS / 10 {
        for go in 0..4 {
            for number in day * 10..day * 10 + 10 {
                let id = visit(number);
                let so_far = entries.entry(id.clone()).or_default();
                let mut new = Vec::new();
                for place in go * 3..go * 3 + 3 {
                    now += 1_000;
                    let (entry, line) = next_entry(so_far, &id, &writer, Moment(now), body(number, place));
                    so_far.push(entry);
                    new.push(line);
                }
                let card = CardRow { visit: id, updated_at: now, opened_at: MORNING.0, ..CardRow::default() };
                store.append(&new, &card).unwrap();
            }
        }
    }
    let lines: BTreeMap<String, Vec<Line>> =
        entries.keys().map(|id| (id.clone(), store.lines(id).unwrap())).collect();
    let files = ["steady.db", "steady.db-wal"].map(|name| fs::read(folder.path().join(name)).unwrap());
    assert!(files.iter().all(|file| file.len() > 100_000), "both files hold something");
    Model { lines, files }
}

/// Stretches of bytes, each in one of the two files, that make up one copy of a line.
type Copy = Vec<(usize, std::ops::Range<usize>)>;

/// Every copy of every line, by its hash. Both hashes stand side by side in a row and nowhere else.
fn copies(model: &Model) -> HashMap<&str, Vec<Copy>> {
    let lines: Vec<&Line> = model.lines.values().flatten().collect();
    let by_hashes: HashMap<String, &Line> =
        lines.iter().map(|line| (format!("{}{}", line.prev, line.hash), *line)).collect();
    let mut further: HashMap<&[u8], Vec<(usize, usize)>> = HashMap::new();
    for (which, file) in model.files.iter().enumerate() {
        for at in pages(which, file).into_iter().filter(|at| stands(which, file, *at)) {
            further.entry(&file[at + 4..at + 68]).or_default().push((which, at));
        }
    }
    let mut found: HashMap<&str, Vec<Copy>> = HashMap::new();
    for (which, file) in model.files.iter().enumerate() {
        let mut run = 0;
        for (at, byte) in file.iter().enumerate() {
            let is_hex = matches!(byte, b'0'..=b'9' | b'a'..=b'f');
            if !is_hex && run >= 128 && stands(which, file, at) {
                let key = std::str::from_utf8(&file[at - 128..at]).unwrap();
                if let Some(line) = by_hashes.get(key) {
                    found.entry(&line.hash).or_default().extend(copy(model, &further, line, (which, at)));
                }
            }
            run = if is_hex { run + 1 } else { 0 };
        }
    }
    found
}

/// Where each page begins.
fn pages(which: usize, file: &[u8]) -> Vec<usize> {
    let (head, frame) = if which == 0 { (0, 0) } else { (32, 24) };
    (0..(file.len() - head) / (frame + PAGE)).map(|page| head + page * (frame + PAGE) + frame).collect()
}

/// Whether a place belongs to the ledger as it stands: in the log, frames that carry its salts. What an earlier round
/// left behind there was written back since.
fn stands(which: usize, file: &[u8], at: usize) -> bool {
    let frame = 32 + (at.max(32) - 32) / (24 + PAGE) * (24 + PAGE);
    which == 0 || file.get(frame + 8..frame + 16) == file.get(16..24)
}

/// The copy whose body begins at a place.
fn copy(
    model: &Model,
    further: &HashMap<&[u8], Vec<(usize, usize)>>,
    line: &Line,
    (which, at): (usize, usize),
) -> Option<Copy> {
    // The signature's column came last.
    let body = [line.body.as_str(), line.signature.as_deref().unwrap_or_default()].concat();
    let body = body.as_bytes();
    // Row number and length of the row before it, its header, two ids, place, time and two hashes.
    let before = 4 + 16 + 36 + line.device.len() + usize::from(line.seq > 1) + 6 + 128;
    let same = |file: &[u8], from: usize, text: &[u8]| {
        file[from..].iter().zip(text).take_while(|(a, b)| a == b).count()
    };
    let mut written = same(&model.files[which], at, body);
    let mut parts = vec![(which, at - before..at + written)];
    while written < body.len() {
        let rest = &body[written..];
        let take = rest.len().min(PAGE - 4);
        let starts = further.get(rest.get(..64)?)?;
        let (which, page) =
            *starts.iter().find(|(which, page)| same(&model.files[*which], page + 4, rest) >= take)?;
        parts.push((which, page..page + 4 + take));
        written += take;
    }
    Some(parts)
}

/// Damages copies of the files; gives back where, and how long each file is left.
fn damaged(model: &Model, chance: &mut Chance) -> ([Vec<u8>; 2], Vec<(usize, usize)>) {
    let mut files = model.files.clone();
    let mut hit = Vec::new();
    if chance.below(4) == 0 {
        let which = chance.below(4) / 3;
        let keep = files[which].len() / 8 + chance.below(files[which].len() * 7 / 8);
        files[which].truncate(keep);
    }
    if chance.below(5) > 0 || files == model.files {
        let all = files[0].len() + files[1].len();
        for _ in 0..=chance.below(60) {
            let place = chance.below(all);
            let (which, at) = if place < files[0].len() { (0, place) } else { (1, place - files[0].len()) };
            let at = at / BLOCK * BLOCK;
            let noise = chance.below(3) > 0;
            let end = files[which].len().min(at + BLOCK);
            for byte in &mut files[which][at..end] {
                *byte = if noise { u8::try_from(chance.below(256)).unwrap() } else { 0 };
            }
            hit.push((which, at));
        }
    }
    (files, hit)
}

fn survives(copy: &Copy, files: &[Vec<u8>; 2], hit: &[(usize, usize)]) -> bool {
    copy.iter().all(|(which, range)| {
        let is_hit =
            |(file, at): &(usize, usize)| file == which && *at < range.end && at + BLOCK > range.start;
        range.end <= files[*which].len() && !hit.iter().any(is_hit)
    })
}

fn written(folder: &Path, files: &[Vec<u8>; 2]) -> std::path::PathBuf {
    let database = folder.join("damaged.db");
    fs::write(&database, &files[0]).unwrap();
    fs::write(folder.join("damaged.db-wal"), &files[1]).unwrap();
    database
}

#[test]
fn whole_visits_come_back_from_any_of_two_hundred_damages() {
    let model = model();
    let copies = copies(&model);
    assert!(
        model.lines.values().flatten().all(|line| copies.contains_key(line.hash.as_str())),
        "each line is found"
    );
    let (folder, elsewhere) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let store: Store = open(elsewhere.path(), MORNING).unwrap();
    let (mut compared, mut whole_in_all, mut back_in_all, mut least) = (0, 0, 0, 100.0_f64);
    for seed in 0..DAMAGES {
        let (files, hit) = damaged(&model, &mut Chance(seed));
        let foreign = match store.foreign(&written(folder.path(), &files)) {
            Ok(foreign) => foreign,
            Err(fault) => panic!("seed {seed}: {fault}"),
        };
        let (mut whole, mut back) = (0, 0);
        for (visit, lines) in &model.lines {
            let is_whole = lines
                .iter()
                .all(|line| copies[line.hash.as_str()].iter().any(|copy| survives(copy, &files, &hit)));
            let found = foreign.lines(visit);
            if let Some(found) = &found {
                // What stood in a log behind a cut is nowhere told of: the visit reads as it was before.
                let as_before = files[1].len() < model.files[1].len() && lines.starts_with(found);
                assert!(
                    found == lines || as_before,
                    "seed {seed}: what comes back of {visit} is what was written, to the last line"
                );
            }
            whole += usize::from(is_whole);
            back += usize::from(is_whole && found.is_some());
        }
        let share = if whole == 0 { 100.0 } else { 100.0 * back as f64 / whole as f64 };
        assert!(back * 100 >= whole * SHARE, "seed {seed}: {back} of {whole} whole visits came back");
        (compared, whole_in_all, back_in_all) = (compared + 1, whole_in_all + whole, back_in_all + back);
        least = least.min(share);
    }
    println!(
        "{compared} damages: {back_in_all} of {whole_in_all} whole visits came back, at the least {least:.1} %"
    );
    assert_eq!(compared, DAMAGES);
    assert!(whole_in_all > 40_000, "{whole_in_all} whole visits say little");
}

/// The whole way, through the request that a person makes.
#[test]
fn damaged_visits_are_taken_in_or_named() {
    let model = model();
    let folder = tempfile::tempdir().unwrap();
    let (files, _) = damaged(&model, &mut Chance(7));
    let database = written(folder.path(), &files);
    let (_new, steady) = scratch();
    let salvaged = steady.salvage(&database).unwrap();
    let (taken, lost) = (salvaged.imported.taken.len(), salvaged.lost.len());
    println!("{taken} taken in, {lost} named");
    assert_eq!(taken + lost, VISITS);
    assert!(taken > VISITS / 2);
}
