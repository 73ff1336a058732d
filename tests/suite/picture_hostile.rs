//! Pictures that somebody made to do harm, that a cable cut, or that are merely odd: each is refused under a named
//! code with the ledger as it was, or kept at the size that it has; and all of them within stated memory.

use std::path::Path;
use std::process::Command;

use base64::Engine;
use serde_json::{Value, json};

use steady_core::model::limits;
use steady_core::photos::intake::take_in;

use crate::picture_corpus::{Corpus, bombs, corpus};
use crate::support::{ask, code, scratch};

/// The most memory for a picture whose file and whose pixels are few, bytes: that of the process and its threads.
const SMALL_PEAK: u64 = 64_000_000;
/// The most for any picture there can be: `MAX_DECODE_BYTES`, the file, and bands.
const LARGEST_PEAK: u64 = 512 * 1024 * 1024 + 2 * 60 * 1024 * 1024 + SMALL_PEAK;

#[test]
fn hostile_pictures_are_refused_by_name_or_kept_upright() {
    let corpus = corpus();
    let (_folder, steady) = scratch();
    let visit =
        ask(&steady, json!({ "ask": "open", "intake": { "vehicle": { "layout": "rigid-engine-speed" } } }))
            .visit;
    let upload = "0191d2f0-0000-7000-8000-000000000001";
    let (mut wrong, mut refused) = (Vec::new(), 0);
    for (what, bytes, expected) in &corpus {
        let before = ask(&steady, json!({ "ask": "look", "visit": visit })).ledger;
        let pieces = if bytes.is_empty() { vec![&bytes[..]] } else { bytes.chunks(300_000).collect() };
        for (index, piece) in pieces.into_iter().enumerate() {
            let base64 = base64::engine::general_purpose::STANDARD.encode(piece);
            let sent = json!({ "ask": "upload", "upload": upload, "index": index, "base64": base64 });
            assert_eq!(code(&steady, sent), "ok", "{what}");
        }
        let keep = json!({ "ask": "keep-photo", "visit": visit, "step": "housing-look", "upload": upload });
        let reply = match steady.handle_json(&keep.to_string()) {
            Ok(_) => size_kept(&steady, &visit),
            Err(failure) => {
                refused += 1;
                assert_eq!(ask(&steady, json!({ "ask": "look", "visit": visit })).ledger, before, "{what}");
                let failure: Value = serde_json::from_str(&failure).unwrap();
                assert!(failure["help"].as_str().unwrap().len() > 20, "{what}: {failure}");
                match failure["code"].as_str().unwrap() {
                    // Sound, and too small to show anything: what became of it is asked of the taker itself.
                    "photo-too-small" => {
                        let taken = take_in(bytes).unwrap();
                        assert!(taken.width.min(taken.height) < limits::LEAST_PHOTO_SIDE, "{what}");
                        format!("{}x{}", taken.width, taken.height)
                    }
                    code => code.to_owned(),
                }
            }
        };
        if reply != *expected {
            wrong.push(format!("{what}: {reply}, not {expected}"));
        }
    }
    assert_eq!(wrong, Vec::<String>::new());
    assert!(corpus.len() >= 200 && refused >= 150, "{} pictures, {refused} refused", corpus.len());
    println!("{} pictures, {refused} of them refused", corpus.len());
}

fn size_kept(steady: &steady_core::app::Steady, visit: &str) -> String {
    let standing = ask(steady, json!({ "ask": "look", "visit": visit }));
    let step = standing.steps.iter().find(|step| step.id == "housing-look").unwrap();
    let photo = &step.photo.as_ref().unwrap().photo;
    format!("{}x{}", photo.width, photo.height)
}

/// Each corpus in a process of its own, which must come to its end, and whose peak memory is then read.
#[test]
fn hostile_pictures_take_bounded_memory() {
    for (name, corpus, most) in [("small", corpus(), SMALL_PEAK), ("bombs", bombs(), LARGEST_PEAK)] {
        let (verdicts, peak) = taken_apart(&corpus);
        println!("peak memory over {} {name} pictures: {} MB", corpus.len(), peak / 1_000_000);
        let wrong: Vec<String> = corpus
            .iter()
            .zip(&verdicts)
            .filter(|((_, _, expected), verdict)| verdict != expected)
            .map(|((what, _, expected), verdict)| format!("{what}: {verdict}, not {expected}"))
            .collect();
        assert_eq!(wrong, Vec::<String>::new());
        assert_eq!(verdicts.len(), corpus.len());
        assert!(peak < most, "{name}: {peak} bytes, {most} allowed");
    }
}

/// Each file's verdict in order, and the most memory that was ever held, bytes.
fn taken_apart(corpus: &Corpus) -> (Vec<String>, u64) {
    let folder = tempfile::tempdir().unwrap();
    for (index, (_, file, _)) in corpus.iter().enumerate() {
        std::fs::write(folder.path().join(format!("{index:04}")), file).unwrap();
    }
    take_in_apart(folder.path())
}

fn take_in_apart(folder: &Path) -> (Vec<String>, u64) {
    let output = Command::new(env!("CARGO_BIN_EXE_taker")).arg(folder).output().unwrap();
    assert!(output.status.success(), "the process did not come to its end: {}", output.status);
    let said = String::from_utf8(output.stdout).unwrap();
    let (verdicts, peak) = said.trim_end().rsplit_once('\n').unwrap();
    let peak: u64 = peak.strip_prefix("peak kB ").unwrap().parse().unwrap();
    (verdicts.lines().map(str::to_owned).collect(), peak * 1_024)
}
