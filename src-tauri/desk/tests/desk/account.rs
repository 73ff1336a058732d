//! Another account on the same computer: it reads neither the key nor a byte of the data.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::Duration;

use tempfile::TempDir;

use super::support::{Desk, STEADY, refused};

/// What is given to a browser's opener, in its place, and how long the test waits for it.
const OPENER: &str = "#!/bin/sh\nprintf '%s\\n' \"$@\" > \"$STEADY_OPENED.part\"\nmv \"$STEADY_OPENED.part\" \"$STEADY_OPENED\"\n";

/// Everything in a folder, the folder too.
fn everything(folder: &Path) -> Vec<PathBuf> {
    let mut found = vec![folder.to_owned()];
    for entry in fs::read_dir(folder).expect("a folder").flatten() {
        if entry.path().is_dir() { found.extend(everything(&entry.path())) } else { found.push(entry.path()) }
    }
    found
}

fn mode(path: &Path) -> u32 {
    use std::os::unix::fs::PermissionsExt as _;
    fs::metadata(path).expect("a file").permissions().mode() & 0o777
}

fn set_mode(path: &Path, mode: u32) {
    use std::os::unix::fs::PermissionsExt as _;
    fs::set_permissions(path, fs::Permissions::from_mode(mode)).expect("its mode is set");
}

/// Whether an account without rights gets at a file; none where this one cannot become it.
fn another_reads(path: &Path) -> Option<bool> {
    let other = |words: &[&str]| {
        let mut command = Command::new("setpriv");
        command.args(["--reuid=65534", "--regid=65534", "--clear-groups"]).args(words);
        command.stdout(Stdio::null()).stderr(Stdio::null()).status().ok()
    };
    other(&["true"])?
        .success()
        .then(|| other(&["cat", path.to_str().expect("a plain path")]).is_some_and(|done| done.success()))
}

/// A folder that other accounts may look into, as most are that lie above a data folder.
fn open_folder() -> TempDir {
    let folder = tempfile::tempdir().expect("a temporary folder");
    set_mode(folder.path(), 0o755);
    folder
}

#[test]
fn data_folder_is_closed_and_one_that_stood_open_is_mended() {
    let around = open_folder();
    let data = around.path().join("data");
    let case = around.path().join("case.json");
    let text = r#"{"vehicle":{"layout":"torque-tube","plate":"TR 4417"},"answers":[]}"#;
    fs::write(&case, text).expect("the case is written");
    for turn in ["new", "stood open"] {
        let replayed = Command::new(STEADY)
            .args(["replay", case.to_str().unwrap(), "--data", data.to_str().unwrap(), "--new"])
            // A rehearsal has no other place than the data folder.
            .env("TMPDIR", around.path().join("nowhere"))
            .stdout(Stdio::null())
            .status();
        assert!(replayed.expect("it starts").success(), "{turn}");
        let database = data.join("steady.db");
        for path in everything(&data) {
            let expected = if path.is_dir() { 0o700 } else { 0o600 };
            assert_eq!(mode(&path), expected, "{turn}: {}", path.display());
            // As root the test sees it done; elsewhere the modes say so.
            assert_ne!(another_reads(&path), Some(true), "{turn}: {}", path.display());
        }
        assert!(database.exists() && !data.join("rehearsals").exists(), "{turn}");
        for path in everything(&data) {
            set_mode(&path, if path.is_dir() { 0o755 } else { 0o644 });
        }
        assert_ne!(another_reads(&database), Some(false), "the other account reads what stands open");
    }
}

#[cfg(target_os = "linux")]
#[test]
fn key_is_on_no_command_line_and_in_no_file_that_others_read() {
    let around = open_folder();
    let (tools, opened) = (around.path().join("tools"), around.path().join("opened"));
    fs::create_dir(&tools).expect("a folder");
    fs::write(tools.join("xdg-open"), OPENER).expect("an opener");
    set_mode(&tools.join("xdg-open"), 0o755);
    let path = format!("{}:{}", tools.display(), std::env::var("PATH").expect("a path"));
    let desk = Desk::start_with(&[], &[("PATH", &path), ("STEADY_OPENED", opened.to_str().unwrap())]);
    for _ in 0..6_000 {
        if opened.exists() {
            break;
        }
        std::thread::sleep(Duration::from_millis(10));
    }
    let words = fs::read_to_string(&opened).expect("what the opener was given");
    assert!(!words.contains(&desk.key), "the key is on the opener's command line");
    let page = PathBuf::from(words.trim());
    assert!(page.is_absolute(), "{words}");
    let html = fs::read_to_string(&page).expect("the page");
    assert!(html.contains(&format!("url=http://{}/#key={}", desk.host, desk.key)), "{html}");
    assert_eq!((mode(&page), mode(page.parent().expect("its folder"))), (0o600, 0o700));
    assert_ne!(another_reads(&page), Some(true));
    let line = fs::read(format!("/proc/{}/cmdline", desk.id())).expect("its own command line");
    assert!(!String::from_utf8_lossy(&line).contains(&desk.key));
}

#[test]
fn rehearsal_that_a_kill_left_behind_is_cleared() {
    let folder = tempfile::tempdir().expect("a temporary folder");
    let left = folder.path().join("rehearsals/0191d2f0000070008000000000000009/photos");
    fs::create_dir_all(&left).expect("a folder");
    fs::write(left.join("a.jpg"), "owner's car").expect("a file");
    let told =
        Command::new(STEADY).args(["workshop", "--data", folder.path().to_str().unwrap(), "--new"]).output();
    assert!(told.expect("it starts").status.success());
    assert!(!folder.path().join("rehearsals").exists());
}

#[test]
fn desk_comes_back_at_its_port() {
    let around = tempfile::tempdir().expect("a temporary folder");
    let data = around.path().join("data");
    let words = ["--no-open", "--data", data.to_str().unwrap(), "--new"];
    let first = Desk::start_with(&words, &[]).port();
    assert_eq!(Desk::start_with(&words, &[]).port(), first);
}

#[test]
fn many_connections_that_send_nothing_keep_nobody_out() {
    let desk = Desk::start();
    let idle: Vec<_> = (0..200).map(|_| std::net::TcpStream::connect(&desk.host)).collect();
    assert!(idle.iter().any(Result::is_ok));
    let reply = desk.post(&desk.key, r#"{"ask":"home"}"#);
    assert_eq!(reply.status, 200, "{}", reply.body);
}

/// A mistyped `--data`: a folder with names that any folder may have is no data folder.
#[test]
fn folder_of_something_else_is_refused_and_left_alone() {
    let folder = open_folder();
    let tool = folder.path().join("tool");
    fs::create_dir_all(folder.path().join("photos/holiday")).expect("a folder");
    for path in [folder.path().join("photos/holiday/a.jpg"), folder.path().join("lock"), tool.clone()] {
        fs::write(&path, b"mine").expect("a file");
        set_mode(&path, 0o755);
    }
    let before: Vec<_> = everything(folder.path()).into_iter().map(|path| (mode(&path), path)).collect();
    let named = folder.path().to_str().expect("a plain path");
    refused(&["workshop", "--data", named], "no-data-here");
    refused(&["erase", "v", "--confirm", "x", "--data", named], "no-data-here");
    let after: Vec<_> = everything(folder.path()).into_iter().map(|path| (mode(&path), path)).collect();
    assert_eq!(after, before);
}
