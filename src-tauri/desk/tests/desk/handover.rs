//! Visits from one data folder to another by the command line, as a person would do it.

use std::fs;
use std::path::Path;
use std::process::{Command, Stdio};

use serde_json::Value;

use super::support::{Desk, STEADY, refused};

/// Runs a command that has to succeed; gives back what it printed.
#[track_caller]
fn done(words: &[&str]) -> String {
    let output = Command::new(STEADY).args(words).output().expect("the command starts");
    let said = String::from_utf8_lossy(&output.stdout).into_owned();
    assert!(output.status.success(), "{words:?}: {said}{}", String::from_utf8_lossy(&output.stderr));
    said
}

#[track_caller]
fn json(words: &[&str]) -> Value {
    serde_json::from_str(&done(words)).expect("one JSON object")
}

/// A folder of scratch paths, each as text.
struct Bench(tempfile::TempDir);

impl Bench {
    fn new() -> Self {
        Self(tempfile::tempdir().expect("a temporary folder"))
    }

    fn path(&self, name: &str) -> String {
        self.0.path().join(name).display().to_string()
    }
}

/// A demo case replayed into a data folder; gives back its visit.
fn demo(data: &str) -> String {
    let case = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../demo-data/03-pops-and-play.json");
    let report = json(&["replay", &case.display().to_string(), "--data", data, "--new", "--json"]);
    report["visit"].as_str().expect("a visit").to_owned()
}

#[test]
fn visit_goes_from_one_folder_to_another_and_stays_erased() {
    let bench = Bench::new();
    let (here, there, file) = (bench.path("here"), bench.path("there"), bench.path("a.steady"));
    let visit = demo(&here);
    let said = done(&["export", &visit, "--out", &file, "--papers", "--data", &here]);
    assert!(said.contains("1 visit, "), "{said}");
    assert!(!Path::new(&format!("{file}.part")).exists());
    let said = done(&["verify", &file]);
    assert!(said.contains("Whole and unchanged") && said.contains(&visit), "{said}");
    assert_eq!(json(&["verify", &file, "--json"])["papers"], 2);
    let said = done(&["import", &file, "--look", "--data", &there, "--new"]);
    assert!(said.contains("not yet confirmed") && said.contains(&format!("{visit} ")), "{said}");
    assert!(said.contains("new here, ") && said.contains("Nothing was taken in"), "{said}");
    assert_eq!(json(&["import", &file, "--look", "--data", &there, "--json"])["visits"][0]["is_new"], true);
    let taken = json(&["import", &file, "--yes", "--data", &there, "--new", "--json"]);
    assert_eq!(taken["taken"][0], visit.as_str());
    assert!(taken["photos"].as_u64() > Some(0));
    assert_eq!(json(&["import", &file, "--yes", "--data", &there, "--json"])["unchanged"], 1);
    for asked in ["--look", "--yes"] {
        let said = done(&["import", &file, asked, "--data", &there]);
        assert!(said.contains("Here already: 1 visit"), "{asked}: {said}");
    }
    refused(&["erase", &visit, "--confirm", "wrong", "--data", &there], "erase-word-differs");
    let word = visit.rsplit('-').next().expect("a last block");
    assert_eq!(done(&["erase", &visit, "--confirm", word, "--data", &there]), "Erased for good.\n");
    refused(&["import", &file, "--yes", "--data", &there], "visit-erased");
    refused(&["export", &visit, "--out", &file, "--data", &there], "out-exists");
    refused(&["export", &visit, "--out", &file, "--replace", "--data", &there], "visit-erased");
    assert!(
        json(&["verify", &file, "--json"])["visits"][0] == visit.as_str(),
        "a refused export keeps the old file"
    );
}

/// Where nobody can be asked, nobody agreed: what it would change is shown, and that is all.
#[test]
fn file_is_shown_before_it_is_taken_in() {
    let bench = Bench::new();
    let (here, there, file) = (bench.path("here"), bench.path("there"), bench.path("a.steady"));
    let visit = demo(&here);
    done(&["export", "--out", &file, "--data", &here]);
    for json in [&["--json"][..], &[]] {
        let words = [&["import", &file, "--data", &there, "--new"][..], json].concat();
        let output = Command::new(STEADY).args(&words).stdin(Stdio::null()).output().expect("it starts");
        let said = String::from_utf8_lossy(&output.stderr);
        assert_eq!((output.status.code(), output.stdout.len()), (Some(2), 0), "{said}");
        assert!(said.contains("Sent by the device") && said.contains(&format!("{visit} ")), "{said}");
        assert!(said.contains("\nimport-not-agreed: ") && said.contains("--yes"), "{said}");
        assert!(!Path::new(&there).exists(), "nothing is begun for it either");
    }
    assert_eq!(json(&["import", &file, "--yes", "--data", &there, "--new", "--json"])["taken"][0], visit);
}

#[test]
fn changed_file_is_refused_with_the_part_named() {
    let bench = Bench::new();
    let (here, file) = (bench.path("here"), bench.path("a.steady"));
    let visit = demo(&here);
    done(&["export", "--out", &file, "--data", &here]);
    let mut bytes = fs::read(&file).expect("the file");
    let middle = bytes.len() / 2;
    bytes[middle] ^= 1;
    fs::write(&file, &bytes).expect("the file is changed");
    refused(&["verify", &file], "handover-changed");
    refused(&["import", &file, "--data", &bench.path("there"), "--new"], "handover-changed");
    refused(&["import", &file, "--yes", "--data", &bench.path("there"), "--new"], "handover-changed");
    assert!(!Path::new(&bench.path("there")).exists(), "a folder that was begun for it goes again");
    fs::write(&file, b"no zip").expect("the file is changed");
    refused(&["verify", &file], "handover-unknown");
    refused(&["verify", &bench.path("nothing.steady")], "handover-unreadable");
    refused(
        &["export", &visit, "--out", &bench.path("no/such/folder/a.steady"), "--data", &here],
        "out-unwritable",
    );
}

#[test]
fn backup_is_restored_and_a_database_salvaged() {
    let bench = Bench::new();
    let (here, safe) = (bench.path("here"), bench.path("safe"));
    let visit = demo(&here);
    let made = done(&["backup", &safe, "--data", &here]);
    assert!(made.starts_with("Backed up as 20") && made.contains(": 1 visit, "), "{made}");
    let again = done(&["backup", &safe, "--data", &here]);
    assert!(again.starts_with("Nothing new since 20"), "{again}");
    let listed = json(&["backup", &safe, "--list", "--json"]);
    let generation = listed["generations"][0]["generation"].as_str().unwrap();
    assert!(done(&["backup", &safe, "--list"]).starts_with(generation));
    let day = &generation[..10];
    for (number, words) in [
        vec!["restore", &safe],
        vec!["restore", &safe, "--generation", day],
        vec!["salvage", &format!("{here}/steady.db")],
    ]
    .into_iter()
    .enumerate()
    {
        let there = bench.path(&format!("there-{number}"));
        let taken = json(&[&words[..], &["--data", &there, "--new", "--json"]].concat());
        assert_eq!(
            (&taken["taken"][0], &taken["photos_missing"]),
            (&Value::from(visit.clone()), &Value::from(0))
        );
    }
    refused(&["restore", &bench.path("nowhere"), "--data", &here], "backup-folder");
    refused(&["restore", &safe, "--generation", "1999", "--data", &here], "backup-no-generation");
    refused(&["backup", &bench.path("new"), "--data", &bench.path("mistyped")], "no-data-here");
    let other = bench.path("other");
    demo(&other);
    refused(&["backup", &safe, "--data", &other], "backup-of-another");
    refused(&["backup", &here, "--data", &other], "backup-folder");
}

#[test]
fn workshop_is_taken_from_a_file_and_stands_on_papers_in_the_language_asked_for() {
    let bench = Bench::new();
    let (here, out) = (bench.path("here"), bench.path("papers"));
    let top = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let from_top = |name: &str| top.join(name).display().to_string();
    assert!(done(&["workshop", "--data", &here, "--new"]).starts_with("No particulars"));
    let said = done(&["workshop", &from_top("demo-data/workshop/particulars.json"), "--data", &here]);
    assert!(said.contains("Brackenfold Motor Works") && said.contains("86.5 GBP an hour"), "{said}");
    assert_eq!(json(&["workshop", "--data", &here, "--json"])["phone"], "01632 960417");
    refused(&["workshop", &from_top("README.md"), "--data", &here], "workshop-unreadable");
    refused(&["workshop", &bench.path("none.json"), "--data", &here], "workshop-unreadable");
    #[cfg(unix)]
    {
        refused(&["workshop", "/dev/zero", "--data", &here], "workshop-unreadable");
        refused(&["replay", "/dev/zero"], "case-unreadable");
    }
    let case = from_top("demo-data/10-just-arrived.json");
    let asked = ["--lang", "de", "--sheet", "us-letter", "--out", &out, "--data", &here, "--json"];
    json(&[&["replay", case.as_str()], asked.as_slice()].concat());
    let text = fs::read_to_string(format!("{out}/note.txt")).expect("the short text");
    assert!(text.contains("NOCH NICHT GEPRÜFT"), "{text}");
    let finding = fs::read(format!("{out}/finding.pdf")).expect("the finding");
    let holds = |what: &[u8]| finding.windows(what.len()).any(|at| at == what);
    assert!(holds(b"/MediaBox[0 0 612 792]") && holds(b"/Lang(de)"), "another sheet or language");
}

#[test]
fn devices_are_decided_about_and_an_import_is_taken_back() {
    let bench = Bench::new();
    let (here, there, file) = (bench.path("here"), bench.path("there"), bench.path("a.steady"));
    let visit = demo(&here);
    done(&["export", &visit, "--out", &file, "--data", &here]);
    done(&["import", &file, "--yes", "--data", &there, "--new"]);
    let own = json(&["devices", "--data", &here, "--json"]);
    let (id, code) =
        (own["own"]["device"].as_str().expect("an id"), own["own"]["code"].as_str().expect("a code"));
    let said = done(&["devices", "--data", &there]);
    assert!(
        said.contains("not yet confirmed") && said.contains(code) && said.contains("Import 1 "),
        "{said}"
    );
    let refused_with = |words: &[&str], code: &str| refused(&[words, &["--data", &there]].concat(), code);
    refused_with(&["device", "retire", &id[..8]], "technician-missing");
    refused_with(&["device", "confirm", &id[..8], "1234", "5678", "--by", "Kim Demo"], "code-differs");
    refused_with(&["device", "retire", "zz"], "unknown-device");
    let digits: Vec<&str> = code.split(' ').collect();
    let said = done(
        &[&["device", "confirm", &id[..8]][..], &digits[..], &["--by", "Kim Demo", "--data", &there]]
            .concat(),
    );
    assert!(said.contains(", confirmed, "), "{said}");
    done(&["device", "name", &id[..8], "Bay 2", "--by", "Kim Demo", "--data", &there]);
    let said = done(&["device", "take-over", &id[..8], "--by", "Kim Demo", "--data", &there]);
    assert!(said.contains("Bay 2, confirmed, then retired"), "{said}");
    let list = json(&["device", "start-over", &id[..8], "--by", "Sam Roe", "--data", &there, "--json"]);
    assert_eq!(list["devices"][0]["trust"], "not-confirmed");
    assert_eq!(list["decided"][4]["by"], "Sam Roe");
    let back = json(&["take-back", "1", "--data", &there, "--json"]);
    assert_eq!(back["gone"][0], visit.as_str());
    refused_with(&["take-back", "1"], "unknown-import");
}

#[test]
fn damage_in_a_backup_is_named_and_is_a_refusal() {
    let bench = Bench::new();
    let (here, backup) = (bench.path("here"), bench.path("backup"));
    demo(&here);
    done(&["backup", &backup, "--data", &here]);
    assert!(done(&["backup", &backup, "--check"]).contains("All of them are whole."));
    let shards = fs::read_dir(bench.0.path().join("backup/files")).expect("a store").flatten();
    let object = shards.flat_map(|shard| fs::read_dir(shard.path()).expect("a shard").flatten()).next();
    let object = object.expect("a file").path();
    fs::write(&object, b"rotten").expect("it rots");
    let output = Command::new(STEADY).args(["backup", &backup, "--check"]).output().expect("it starts");
    let said = String::from_utf8_lossy(&output.stdout).into_owned();
    assert_eq!(output.status.code(), Some(2), "{said}");
    assert!(said.contains(object.file_name().expect("a name").to_str().expect("plain")), "{said}");
    assert!(String::from_utf8_lossy(&output.stderr).starts_with("backup-checked: "));
}

/// Nobody looks at a screen: the command itself says what it set aside, once.
#[test]
fn what_a_command_sets_aside_is_said() {
    let bench = Bench::new();
    let here = bench.path("here");
    demo(&here);
    fs::write(bench.0.path().join("here/steady.db"), [7; 8192]).expect("it is damaged");
    let said = |words: &[&str]| {
        let output = Command::new(STEADY).args(words).output().expect("it starts");
        assert!(output.status.success());
        String::from_utf8_lossy(&output.stderr).into_owned()
    };
    let first = said(&["workshop", "--data", &here]);
    assert!(first.contains("set aside") && first.contains("steady salvage "), "{first}");
    assert_eq!(said(&["workshop", "--data", &here]), "");
}

/// The nightly backup and whoever exports need not wait for the desk to be closed.
#[test]
fn export_sorting_and_backup_work_beside_a_desk_that_serves() {
    let (desk, bench) = (Desk::start(), Bench::new());
    let asked = |request: &str| -> Value {
        let reply = desk.post(&desk.key, request);
        assert_eq!(reply.status, 200, "{}", reply.body);
        serde_json::from_str(&reply.body).expect("JSON")
    };
    asked(r#"{"ask":"set-technician","name":"Kim Demo"}"#);
    let opened = asked(r#"{"ask":"open","intake":{"vehicle":{"layout":"torque-tube","plate":"TR 1"}}}"#);
    let visit = opened["visit"].as_str().expect("a visit").to_owned();
    let (file, safe, data) = (bench.path("a.steady"), bench.path("safe"), desk.folder());
    assert!(done(&["export", &visit, "--out", &file, "--data", data]).contains("1 visit, "));
    assert_eq!(json(&["verify", &file, "--json"])["visits"][0], visit.as_str());
    assert!(done(&["sorted", &visit, "--data", data]).starts_with("Knowledge   "));
    assert!(json(&["sorted", &visit, "--data", data, "--json"])["sorting"]["causes"].is_array());
    assert_eq!(json(&["backup", &safe, "--data", data, "--json"])["visits"], 1);
    // What takes the folder for itself is refused meanwhile.
    refused(&["import", &file, "--yes", "--data", data], "in-use");
    asked(&format!(r#"{{"ask":"answer","visit":"{visit}","step":"road-speed-vibration","value":"none"}}"#));
    assert_eq!(json(&["backup", &safe, "--data", data, "--json"])["new"], true, "what came since");
}
