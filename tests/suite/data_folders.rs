//! What a data folder is taken for: a failed look at it sets nothing aside, and what a person keeps beside Steady's own
//! files stays as it is.

use std::fs;
use std::os::unix::fs::PermissionsExt as _;
use std::path::Path;
use std::process::{Command, Stdio};

use serde_json::json;
use steady_core::store::open::holds_ledger;

use crate::backup_generations::photo_of;
use crate::handover::exported;
use crate::handover_files::small_visit;
use crate::set_aside::{filled, home};
use crate::support::{code, open, scratch};

#[test]
fn names_that_any_folder_may_have_make_no_ledger() {
    let folder = tempfile::tempdir().unwrap();
    fs::create_dir_all(folder.path().join("photos/holiday")).unwrap();
    fs::write(folder.path().join("photos/beach.jpg"), b"x").unwrap();
    fs::write(folder.path().join("lock"), b"").unwrap();
    assert!(!holds_ledger(folder.path()));
    let (data, _) = filled();
    assert!(holds_ledger(data.path()));
    for name in ["steady.db", "steady.db-wal", "steady.db-shm"] {
        let _ = fs::remove_file(data.path().join(name));
    }
    assert!(holds_ledger(data.path()), "its photos are left");
}

/// Told to begin in a folder that holds something else, Steady touches nothing of it.
#[test]
fn what_lies_beside_a_ledger_stays_as_it_is() {
    let folder = tempfile::tempdir().unwrap();
    let beside = ["photos/holiday/a.jpg", "photos/beach.jpg", "bin/tool", "notes.txt"];
    for path in beside {
        let path = folder.path().join(path);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(&path, b"mine").unwrap();
        fs::set_permissions(&path, fs::Permissions::from_mode(0o755)).unwrap();
    }
    drop(open(folder.path()).unwrap());
    assert!(home(&open(folder.path()).unwrap()).set_aside.is_empty());
    let mode = |path: &str| fs::metadata(folder.path().join(path)).unwrap().permissions().mode() & 0o777;
    for path in beside {
        assert_eq!(fs::read(folder.path().join(path)).unwrap(), b"mine", "{path}");
    }
    assert_eq!(["photos/holiday/a.jpg", "bin/tool", "notes.txt"].map(mode), [0o755; 3]);
    assert_eq!(["steady.db", "lock"].map(mode), [0o600; 2]);
}

/// Opens a folder while one call on its database fails.
fn opened_with(fault: &str, folder: &Path) -> bool {
    let (call, nth) = fault.split_once(' ').unwrap();
    let status = Command::new("strace")
        .args(["-f", "-qq", "-o", "/dev/null", "-P"])
        .arg(folder.join("steady.db"))
        .args(["-e", &format!("trace={call}"), "-e", &format!("inject={call}:error=EIO:when={nth}")])
        .arg(env!("CARGO_BIN_EXE_opener"))
        .arg(folder)
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .status();
    status.unwrap_or_else(|fault| panic!("strace is needed, apt-get install strace: {fault}")).success()
}

#[test]
fn look_that_fails_once_sets_nothing_aside() {
    for fault in ["read 1", "statx 1", "statx 2", "openat 1", "pread64 1", "pread64 2"] {
        let (folder, _) = filled();
        let stood = fs::read(folder.path().join("steady.db")).unwrap();
        opened_with(fault, folder.path());
        assert_eq!(fs::read(folder.path().join("steady.db")).unwrap(), stood, "{fault}");
        let steady = open(folder.path()).unwrap();
        assert_eq!((home(&steady).visits, home(&steady).set_aside.len()), (2, 0), "{fault}");
    }
}

/// An import whose healing failed is kept, and no later one that is cut off takes it back.
#[test]
fn import_that_healed_nothing_leaves_no_note_behind() {
    let ((_a, here), (folder, there)) = (scratch(), scratch());
    let visit = small_visit(&here, "TR 0001");
    let photo = photo_of(&here, &visit);
    let in_the_way = folder.path().join(format!("photos/{photo}.jpg"));
    fs::create_dir_all(in_the_way.join("x")).unwrap();
    let refused = there.import(&mut &*exported(&here, &[])).unwrap_err();
    assert_eq!(refused.code, "photos-unhealed");
    assert!(!folder.path().join("placing.json").exists());
    assert_eq!(code(&there, json!({ "ask": "look", "visit": visit })), "ok", "its lines are kept");
    fs::remove_dir_all(in_the_way).unwrap();
    assert_eq!(there.import(&mut &*exported(&here, &[])).unwrap().unchanged, 1);
    drop(there);
    let there = open(folder.path()).unwrap();
    assert!(there.photo(&photo, steady_core::app::PhotoSize::Full).is_ok());
}
