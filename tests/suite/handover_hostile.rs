//! Handover files that somebody made to do harm, or that a cable cut: every one is refused under a named
//! code, leaves the ledger as it was, and takes no more memory than an honest one.

use std::process::Command;

use serde_json::json;
use steady_core::app::handover::verify;

use crate::handover_corpus::{VISIT, corpus, honest, strangers_parts};
use crate::handover_files::{entries, key, sealed, small_visit, stranger, zip};
use crate::support::{ask, code, scratch};

/// The code a file is refused under; `ok` if it is not.
fn verdict(file: &[u8]) -> String {
    match verify(&mut &*file) {
        Ok(_) => "ok".to_owned(),
        Err(failure) => {
            assert!(failure.message.len() > 10 && !failure.message.starts_with("error-"), "{failure:?}");
            assert!(failure.help.ends_with('.') && failure.help.len() > 20, "{failure:?}");
            failure.code
        }
    }
}

const CHANGED: [&str; 8] = [
    "handover-unknown",
    "handover-changed",
    "handover-signature",
    "handover-cut-short",
    "handover-too-large",
    "handover-part-missing",
    "handover-part-extra",
    "handover-newer",
];

#[test]
fn every_single_changed_byte_is_noticed() {
    let file = honest();
    assert_eq!(verdict(&file), "ok");
    for at in 0..file.len() {
        for change in [0x01, 0x80] {
            let mut changed = file.clone();
            changed[at] ^= change;
            let code = verdict(&changed);
            assert!(CHANGED.contains(&code.as_str()), "byte {at} of {}: {code}", file.len());
        }
    }
    println!("{} changed files, each refused", file.len() * 2);
}

#[test]
fn every_place_to_cut_is_noticed() {
    let file = honest();
    for length in 0..file.len() {
        let code = verdict(&file[..length]);
        let expected = if length < 43 { "handover-unknown" } else { "handover-cut-short" };
        assert_eq!(code, expected, "cut at {length}");
    }
    for more in [&b"\0"[..], b"PK\x05\x06", b"#!/bin/sh\n"] {
        assert_eq!(verdict(&[&file, more].concat()), "handover-part-extra");
        assert_eq!(verdict(&[more, &file].concat()), "handover-unknown");
    }
    assert_eq!(verdict(&[&file[..], &file].concat()), "handover-part-extra");
}

/// Several changes at once, bytes taken out, put in and moved: whatever is not the file itself is refused.
#[test]
fn mixtures_of_changes_are_noticed() {
    let file = honest();
    let mut seed = 20_261_125_u64;
    let mut draw = |below: usize| {
        seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        usize::try_from(seed >> 33).unwrap() % below
    };
    let mut refused = 0;
    for _ in 0..2_000 {
        let mut changed = file.clone();
        for _ in 0..=draw(4) {
            let (at, length) = (draw(changed.len() - 64), draw(63) + 1);
            let piece: Vec<u8> = changed[at..at + length].to_vec();
            match draw(4) {
                0 => changed[at] = u8::try_from(draw(256)).unwrap(),
                1 => drop(changed.drain(at..at + length)),
                2 => drop(changed.splice(at..at, piece)),
                _ => {
                    let to = draw(changed.len() - 64);
                    changed.splice(to..to + length, piece);
                }
            }
        }
        if changed != file {
            assert_ne!(verdict(&changed), "ok");
            refused += 1;
        }
    }
    assert!(refused > 1_900, "{refused}");
}

/// The changed part is named, wherever it is.
#[test]
fn changed_part_is_named() {
    let file = honest();
    for (index, entry) in entries(&file).iter().enumerate() {
        let mut parts = entries(&file);
        parts[index].data[0] ^= 1;
        let failure = verify(&mut &*zip(&parts)).unwrap_err();
        let name = String::from_utf8(entry.name.clone()).unwrap();
        match name.as_str() {
            "manifest.json" => assert_eq!(failure.code, "handover-unknown"),
            "manifest.sig" => assert_eq!(failure.code, "handover-signature"),
            _ => {
                assert!(failure.code == "handover-changed" && failure.message.contains(&name), "{failure:?}")
            }
        }
    }
}

#[test]
fn hostile_files_are_refused_and_the_ledger_is_as_it_was() {
    let (folder, steady) = scratch();
    let visit = small_visit(&steady, "TR 4417");
    let before = ask(&steady, json!({ "ask": "look", "visit": visit }));
    let listing = || {
        let photos = std::fs::read_dir(folder.path().join("photos")).unwrap().flatten();
        photos.map(|file| file.file_name()).collect::<std::collections::BTreeSet<_>>()
    };
    let photos = listing();
    let corpus = corpus();
    for (what, file, expected) in &corpus {
        assert_eq!(verdict(file), *expected, "{what}, verified");
        let failure = steady.import(&mut &file[..]).unwrap_err();
        assert_eq!(failure.code, *expected, "{what}, taken in");
        assert!(failure.message.len() < 300, "{what}: {}", failure.message);
    }
    assert_eq!(ask(&steady, json!({ "ask": "look", "visit": visit })), before);
    assert_eq!(code(&steady, json!({ "ask": "look", "visit": VISIT })), "unknown-visit");
    assert_eq!(listing(), photos);
    assert!(!folder.path().join("incoming/steady-handover").exists());
    // The stranger's files were refused for what was in them, not for who they came from.
    steady.import(&mut &zip(&sealed(&strangers_parts(), |_| {}))[..]).unwrap();
    assert!(corpus.len() >= 100, "{}", corpus.len());
    println!("{} hostile files, each refused", corpus.len());
}

/// All of the corpus in one process of its own, whose peak memory is then read.
#[test]
fn hostile_files_take_little_memory() {
    let folder = tempfile::tempdir().unwrap();
    let corpus = corpus();
    for (index, (_, file, _)) in corpus.iter().enumerate() {
        std::fs::write(folder.path().join(format!("{index:03}.steady")), file).unwrap();
    }
    let data = tempfile::tempdir().unwrap();
    let mut child = Command::new(env!("CARGO_BIN_EXE_importer"));
    let output = child.arg(data.path()).arg(folder.path()).output().unwrap();
    let said = String::from_utf8(output.stdout).unwrap();
    let mut lines = said.lines().rev();
    let peak: u64 = lines.next().unwrap().strip_prefix("peak kB ").unwrap().parse().unwrap();
    println!("peak memory over {} hostile files: {} MB", corpus.len(), peak / 1_000);
    assert_eq!(lines.filter(|line| line.starts_with("handover-")).count(), corpus.len());
    assert!(peak < 150_000, "{peak} kB");
}

#[test]
fn strangers_file_is_read_as_written_down_here() {
    let (_folder, steady) = scratch();
    let file = zip(&sealed(&strangers_parts(), |_| {}));
    let told = verify(&mut &*file).unwrap();
    assert_eq!((told.device, told.code, told.entries), (stranger(), key().public().code(), 1));
    assert_eq!(steady.import(&mut &*file).unwrap().taken, [VISIT]);
    assert_eq!(zip(&entries(&file)), file);
}
