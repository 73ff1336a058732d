//! Writes the corpus that each target starts from, anew at each run: `seeds FOLDER`, run in the repository's top
//! folder. Made from the demo data and from pictures written by hand, so that no foreign file is kept here.

#[allow(dead_code, reason = "bombs only slow the mutations down")]
#[path = "../suite/picture_corpus.rs"]
mod picture_corpus;
#[path = "../suite/picture_files.rs"]
mod picture_files;
#[path = "src/stranger.rs"]
mod stranger;
#[path = "src/workshop.rs"]
mod workshop;

use std::collections::HashSet;
use std::fs;
use std::io::Read as _;
use std::path::{Path, PathBuf};

use steady_core::app::Steady;
use steady_core::app::handover::Wanted;
use steady_core::app::replay::replay;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::photos::intake::take_in;

/// Longer files only slow the mutations down.
const LONGEST: usize = 20_000;
/// Entries that agree for so many characters are of one kind, and one of them is enough.
const KIND: usize = 48;

fn main() {
    let folder = PathBuf::from(std::env::args_os().nth(1).expect("name the folder to write into"));
    let keep = |target: &str, number: usize, bytes: &[u8]| {
        let folder = folder.join(target);
        fs::create_dir_all(&folder).expect("the folder can be made");
        fs::write(folder.join(format!("{number:04}")), bytes).expect("a seed can be written");
    };
    let all = |target: &str, seeds: Vec<Vec<u8>>| {
        assert!(!seeds.is_empty(), "no seeds for {target}");
        seeds.iter().enumerate().for_each(|(number, seed)| keep(target, number, seed));
    };
    let pictures: Vec<Vec<u8>> = picture_corpus::corpus()
        .into_iter()
        .map(|row| row.1)
        .filter(|bytes| bytes.len() <= LONGEST)
        .collect();
    let kept = pictures.iter().filter_map(|bytes| take_in(bytes).ok()).map(|taken| taken.thumb);
    all("kept_photo", kept.chain(pictures.iter().cloned()).collect());
    all("photo_tags", pictures.iter().filter_map(|jpeg| tags(jpeg)).collect());
    all("photo", pictures);

    let files = |folder: &str, ending: &str| -> Vec<Vec<u8>> { texts(Path::new(folder), ending) };
    all("bore", files("demo-data/bench", "csv"));
    all("gauge", files("demo-data/bench", "json"));
    all("case", cases().iter().map(|case| beginning(case)).collect());
    all("fit", vec![FIT.into(), SLEEVED.into()]);
    all(
        "knowledge",
        files("src-tauri/core/data/layouts", "toml").into_iter().chain([KNOWLEDGE.into()]).collect(),
    );
    all("typed", vec![b"1M8GDM9AXKP042788".to_vec(), format!("{}/thumb", "0".repeat(64)).into_bytes()]);
    all("request", vec![REQUESTS.into()]);

    let workshop = workshop::Workshop::open();
    let mut bodies = Vec::new();
    for case in cases() {
        let text = String::from_utf8(case).expect("a case is text");
        replay(&workshop.steady, &text, Path::new("demo-data"))
            .unwrap_or_else(|failure| panic!("{failure:?}"));
    }
    let mut file = Vec::new();
    let wanted = Wanted { visits: &[], papers: false, locale: None, sheet: None };
    workshop.steady.export(wanted, &mut file).unwrap_or_else(|failure| panic!("{failure:?}"));
    for line in String::from_utf8_lossy(&file).lines().filter(|line| line.contains("\"body\":")) {
        let from = line.find('{').unwrap_or(0);
        if let Ok(line) = serde_json::from_str::<serde_json::Value>(&line[from..]) {
            bodies.push(line["body"].as_str().unwrap_or_default().to_owned());
        }
    }
    let opened = bodies.first().expect("an exported visit has lines").clone();
    let mut seen = HashSet::new();
    let ledgers: Vec<Vec<u8>> = bodies
        .iter()
        .filter(|body| seen.insert(body.chars().take(KIND).collect::<String>()))
        .map(|body| [&opened, "\n", body.as_str()].concat().into_bytes())
        .collect();
    let lines: Vec<&str> = bodies.iter().map(String::as_str).take(20).collect();
    let visit = stranger::visit(255);
    all(
        "handover",
        vec![
            stranger::file(&visit, &lines),
            stranger::file(&visit, &lines[..1]),
            stranger::file(&visit, &[]),
        ],
    );
    all("handover_entries", ledgers);
    let changes = (0..14).flat_map(|what| [vec![what, 1, 2], vec![what, 5, 0, 6, 5, 0, 7, 5, 0]]);
    all("signed_chain", changes.chain([Vec::new()]).collect());
    let database = workshop.folder().join("data/steady.db");
    let file = backup_file(&workshop.steady);
    drop(workshop.steady);
    let database = fs::read(database).expect("the workshop has a database");
    all("restore", vec![[b"f", &file[..]].concat(), [b"d", &database[..]].concat()]);
    all("salvage", vec![database]);
}

/// A backup of everything as one file.
fn backup_file(steady: &Steady) -> Vec<u8> {
    let backup = "0191d2f0-0000-7000-8000-0000000000aa".to_owned();
    let ask = |request: Request| steady.handle(request).unwrap_or_else(|failure| panic!("{failure:?}"));
    let ready = loop {
        match ask(Request::PrepareBackup { backup: backup.clone() }) {
            Response::BackupReady(ready) if ready.ready => break ready,
            Response::BackupReady(_) => {}
            other => panic!("no backup but {other:?}"),
        }
    };
    let mut file = Vec::new();
    let mut source = steady.outgoing(&ready.file).unwrap_or_else(|failure| panic!("{failure:?}"));
    source.read_to_end(&mut file).expect("a backup can be read");
    file
}

/// The EXIF block of a JPEG that has one in front.
fn tags(jpeg: &[u8]) -> Option<Vec<u8>> {
    let at = jpeg.windows(6).position(|head| head == b"Exif\0\0")?;
    let length = usize::from(u16::from_be_bytes([*jpeg.get(at - 2)?, *jpeg.get(at - 1)?]));
    jpeg.get(at + 6..at - 2 + length).map(<[u8]>::to_vec)
}

/// The demo visits, without the photos that lie beside them.
fn cases() -> Vec<Vec<u8>> {
    let without = |case: Vec<u8>| {
        let mut case: serde_json::Value = serde_json::from_slice(&case).expect("a demo case is JSON");
        for answer in case["answers"].as_array_mut().into_iter().flatten() {
            answer.as_object_mut().map(|answer| answer.remove("photo"));
        }
        case.to_string().into_bytes()
    };
    texts(Path::new("demo-data"), "json").into_iter().map(without).collect()
}

/// A case with its first answers alone: driving a whole one through takes a second.
fn beginning(case: &[u8]) -> Vec<u8> {
    let mut case: serde_json::Value = serde_json::from_slice(case).expect("a demo case is JSON");
    if let Some(answers) = case["answers"].as_array_mut() {
        answers.truncate(3);
    }
    case.to_string().into_bytes()
}

fn texts(folder: &Path, ending: &str) -> Vec<Vec<u8>> {
    let files = fs::read_dir(folder).unwrap_or_else(|fault| panic!("{}: {fault}", folder.display()));
    let mut paths: Vec<PathBuf> = files.flatten().map(|file| file.path()).collect();
    paths.sort();
    paths.retain(|path| path.extension().is_some_and(|found| found == ending));
    paths.iter().map(|path| fs::read(path).expect("a demo file can be read")).collect()
}

const FIT: &str = "bearing-od=72\nclass=N7\nhousing=A356\ntemp=20..100";
const SLEEVED: &str = "bearing-od=72\nbore=71.98\nbore-u=4\nhousing=A356\nhousing-od=90\nsleeve=steel\nsleeve-od=76\n\
                       housing-bore=75.96\ntemp=-20..120";
const KNOWLEDGE: &str = "[[cause]]\nid = \"own-cause\"\nname = \"Loose bracket\"\nlayouts = [\"torque-tube\"]\n\
                         prior = 0.05\nweight = 20\nbasis = \"common practice, no source\"\n";
const REQUESTS: &str = "{\"ask\":\"home\"}\n{\"ask\":\"visits\",\"search\":\"TR\"}\n\
                        {\"ask\":\"open\",\"intake\":{\"vehicle\":{\"layout\":\"torque-tube\"}}}\n\
                        {\"ask\":\"look\",\"visit\":\"0191d2f0-0000-7000-8000-000000000001\"}\n\
                        {\"ask\":\"upload\",\"upload\":\"0191d2f0-0000-7000-8000-000000000001\",\"index\":0,\
                        \"base64\":\"aGVsbG8=\"}";
