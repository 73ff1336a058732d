//! What the command line writes, and where it refuses to: nothing is overwritten unasked, nothing half-written is left.

use std::fs;
use std::path::Path;

use serde_json::Value;

use super::support::{STEADY, answered, refused};

const CASE: &str = r#"{"vehicle":{"layout":"torque-tube"},"answers":[]}"#;

/// A data folder with one visit, a case file beside it, and a place for outputs.
struct Folders {
    folder: tempfile::TempDir,
}

impl Folders {
    fn new() -> Self {
        let folders = Self { folder: tempfile::tempdir().expect("a temporary folder") };
        fs::write(folders.path("case.json"), CASE).expect("the case is written");
        fs::create_dir(folders.path("out")).expect("a folder");
        answered(&["replay", &folders.path("case.json"), "--data", &folders.path("data"), "--new"]);
        folders
    }

    fn path(&self, name: &str) -> String {
        self.folder.path().join(name).display().to_string()
    }

    fn visits(&self) -> usize {
        let out = self.path("count.steady");
        answered(&["export", "--out", &out, "--replace", "--data", &self.path("data")]);
        let told: Value = serde_json::from_str(&answered(&["verify", &out, "--json"])).expect("JSON");
        told["visits"].as_array().map_or(0, Vec::len)
    }

    /// Names in the folder for outputs, hidden ones too.
    fn outputs(&self) -> Vec<String> {
        let files = fs::read_dir(self.path("out")).expect("the folder").flatten();
        files.map(|file| file.file_name().to_string_lossy().into_owned()).collect()
    }
}

#[test]
fn a_file_that_is_there_is_replaced_only_where_that_is_asked_for() {
    let folders = Folders::new();
    let (out, data) = (folders.path("out/letter.pdf"), folders.path("data"));
    fs::write(&out, "mine").expect("a file of somebody's");
    refused(&["export", "--out", &out, "--data", &data], "out-exists");
    assert_eq!(fs::read(&out).expect("the file"), b"mine");
    answered(&["export", "--out", &out, "--replace", "--data", &data]);
    assert!(fs::read(&out).expect("the file").starts_with(b"PK"));
    assert_eq!(folders.outputs(), ["letter.pdf"]);
}

#[test]
fn files_of_the_data_folder_are_never_an_output() {
    let folders = Folders::new();
    let data = folders.path("data");
    fs::create_dir(folders.path("data/knowledge")).expect("a folder");
    std::os::unix::fs::symlink(&data, folders.path("link")).expect("a link");
    std::os::unix::fs::symlink(folders.path("data/steady.db"), folders.path("out/db")).expect("a link");
    let before = fs::read(folders.path("data/steady.db")).expect("the database");
    for out in
        ["data/steady.db", "data/new.steady", "link/steady.db", "data/knowledge/../steady.db", "out/db"]
    {
        refused(&["export", "--out", &folders.path(out), "--replace", "--data", &data], "out-in-data-folder");
    }
    let case = folders.path("case.json");
    refused(&["replay", &case, "--out", &data, "--data", &data, "--replace"], "out-in-data-folder");
    assert_eq!(fs::read(folders.path("data/steady.db")).expect("the database"), before);
    assert_eq!(folders.visits(), 1, "nothing was recorded either");
}

#[test]
fn a_replay_that_cannot_write_its_papers_records_nothing() {
    let folders = Folders::new();
    let (case, data) = (folders.path("case.json"), folders.path("data"));
    fs::write(folders.path("file"), "").expect("a file");
    fs::write(folders.path("out/note.pdf"), "mine").expect("a file");
    for (out, code) in [("file", "out-unwritable"), ("file/below", "out-unwritable"), ("out", "out-exists")] {
        refused(&["replay", &case, "--out", &folders.path(out), "--data", &data], code);
        assert_eq!(folders.visits(), 1, "{out}");
    }
    assert_eq!(folders.outputs(), ["note.pdf"], "nothing half-written is left");
    answered(&["replay", &case, "--out", &folders.path("out"), "--replace", "--data", &data]);
    assert_eq!((folders.visits(), folders.outputs().len()), (2, 3));
}

#[test]
fn a_mistyped_data_folder_is_not_begun() {
    let folders = Folders::new();
    let (case, wrong, out) = (folders.path("case.json"), folders.path("dta"), folders.path("out/a.steady"));
    refused(&["replay", &case, "--data", &wrong], "no-data-here");
    refused(&["serve", "--no-open", "--data", &wrong], "no-data-here");
    refused(&["export", "--out", &out, "--data", &wrong], "no-data-here");
    refused(&["backup", &folders.path("safe"), "--data", &folders.path("out")], "no-data-here");
    assert!(!Path::new(&wrong).exists() && !Path::new(&out).exists());
    answered(&["replay", &case, "--data", &wrong, "--new"]);
    assert!(Path::new(&wrong).join("steady.db").exists());
}

#[test]
fn what_cannot_be_salvaged_is_named() {
    let folders = Folders::new();
    let data = folders.path("data");
    for (name, bytes, code) in [
        ("none.db", None, "salvage-missing"),
        ("empty.db", Some(&b""[..]), "salvage-empty"),
        ("text.db", Some(b"a letter"), "salvage-no-database"),
    ] {
        let path = folders.path(name);
        bytes.into_iter().for_each(|bytes| fs::write(&path, bytes).expect("a file"));
        refused(&["salvage", &path, "--data", &data], code);
    }
    fs::write(folders.path("data/steady.db"), "").expect("the database is emptied");
    refused(
        &["export", "--out", &folders.path("out/a.steady"), "--data", &data],
        "nothing-to-export-set-aside",
    );
    assert!(folders.outputs().is_empty());
}

/// Another data folder, or a backup, is as little a place for outputs as one's own.
#[test]
fn files_of_another_data_folder_or_of_a_backup_are_never_an_output() {
    let (folders, other) = (Folders::new(), Folders::new());
    let (data, backup) = (folders.path("data"), folders.path("backup"));
    answered(&["backup", &backup, "--data", &data]);
    for out in
        [other.path("data/steady.db"), folders.path("backup/steady-backup.json"), other.path("data/photos/a")]
    {
        let before = fs::read(&out).ok();
        refused(&["export", "--out", &out, "--replace", "--data", &data], "out-in-data-folder");
        assert_eq!(fs::read(&out).ok(), before, "{out}");
    }
    refused(&["manual", &backup], "out-in-data-folder");
    assert_eq!(other.visits(), 1);
}

#[test]
fn data_folder_that_a_refused_command_began_goes_again() {
    let folders = Folders::new();
    let new = folders.path("new");
    refused(&["restore", &folders.path("out"), "--data", &new, "--new"], "backup-folder");
    assert!(!Path::new(&new).exists());
    refused(&["salvage", &folders.path("case.json"), "--data", &new, "--new"], "salvage-no-database");
    assert!(!Path::new(&new).exists());
}

/// What is on a disk without room comes off it all the same, and reading leaves nothing there.
#[cfg(target_os = "linux")]
#[test]
fn data_on_a_full_disk_is_exported_and_backed_up_to_another() {
    let folders = Folders::new();
    for folder in ["full", "copy"] {
        fs::create_dir(folders.path(folder)).expect("a folder");
    }
    // A disk of its own, which only this shell and what it starts can see.
    let script = r#"set -e
        mount -t tmpfs -o size=4m none "$1/full"
        cp -a "$1/data/." "$1/full/"
        dd if=/dev/zero of="$1/full/fill" bs=4k status=none 2>/dev/null || true
        ls -A "$1/full" > "$1/before"
        "$2" export --out "$1/out/all.steady" --data "$1/full"
        "$2" backup "$1/copy" --data "$1/full"
        ls -A "$1/full" > "$1/after""#;
    let folder = folders.path("");
    let words = ["--user", "--map-root-user", "--mount", "sh", "-c", script, "sh", &folder, STEADY];
    let done = std::process::Command::new("unshare").args(words).output().expect("unshare of util-linux");
    assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
    let names = |name: &str| fs::read_to_string(folders.path(name)).expect("a list of names");
    assert!(names("before").contains("fill") && names("after") == names("before"), "{}", names("after"));
    let told: Value = serde_json::from_str(&answered(&["verify", &folders.path("out/all.steady"), "--json"]))
        .expect("JSON");
    assert_eq!(told["visits"].as_array().map_or(0, Vec::len), 1);
}

/// They come with the screens; a program that was built without them says so.
#[test]
fn notices_are_printed() {
    let page = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../ui/dist/notices.txt");
    let Ok(notices) = fs::read_to_string(page) else { return refused(&["notices"], "no-notices") };
    let said = answered(&["notices"]);
    assert_eq!(said.trim_end(), notices.trim_end());
    assert!(said.starts_with("@fluent/bundle ") && said.contains("\nrusqlite "), "crates and the page's own");
}

/// The disk that the output goes to fills: no half file stays, and nothing of the data folder changes.
#[cfg(target_os = "linux")]
#[test]
fn full_disk_is_told_where_the_output_goes() {
    let folders = Folders::new();
    let (out, data) = (folders.path("out/a.steady"), folders.path("data"));
    let full = ["-f", "-qq", "-o", "/dev/null", "-e", "trace=fsync", "-e", "inject=fsync:error=ENOSPC"];
    let mut strace = std::process::Command::new("strace");
    let output = strace.args(full).arg(STEADY).args(["export", "--out", &out, "--data", &data]).output();
    let output = output.expect("strace is needed, apt-get install strace");
    let said = String::from_utf8_lossy(&output.stderr);
    assert_eq!(output.status.code(), Some(2), "{said}");
    assert!(said.starts_with("out-disk-full: "), "{said}");
    assert!(folders.outputs().is_empty(), "{:?}", folders.outputs());
    assert_eq!(folders.visits(), 1);
}
