//! A photo is proven by its hash wherever it is read: another picture under its name is no evidence anywhere, and
//! gives way to a good copy.

use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex};

use serde_json::json;
use steady_core::app::backup::check;
use steady_core::app::handover::Wanted;
use steady_core::app::press::{Paper, PhotoFound, Press, PressError, PrintRun};
use steady_core::app::request::Request;
use steady_core::app::{PhotoSize, Setup, Steady};

use crate::backup_generations::{back_up, files, of_kind, photo_of, restore};
use crate::handover::exported;
use crate::handover_files::{jpeg, keep_photo, small_visit};
use crate::support::{MORNING, ask, code, open, scratch};

fn path(data: &Path, sha256: &str, ending: &str) -> PathBuf {
    data.join(format!("photos/{sha256}{ending}"))
}

/// How a photo's file is spoiled.
type Spoil = fn(&Path, &[u8]);

/// Another whole JPEG, a flipped bit, a cut.
const SPOILT: [Spoil; 3] = [
    |path, other| std::fs::write(path, other).unwrap(),
    |path, _| {
        let mut bytes = std::fs::read(path).unwrap();
        let middle = bytes.len() / 2;
        bytes[middle] ^= 1;
        std::fs::write(path, bytes).unwrap();
    },
    |path, _| {
        let bytes = std::fs::read(path).unwrap();
        std::fs::write(path, &bytes[..bytes.len() / 2]).unwrap();
    },
];

#[test]
fn spoilt_photo_is_shown_to_nobody_and_healed_by_a_good_copy() {
    let (data, steady) = scratch();
    let (visit, other) = (small_visit(&steady, "TR 0001"), small_visit(&steady, "TR 0002"));
    keep_photo(&steady, &other, 90);
    let (sha256, strange) = (photo_of(&steady, &visit), photo_of(&steady, &other));
    let strange = steady.photo(&strange, PhotoSize::Full).unwrap();
    let good = steady.photo(&sha256, PhotoSize::Full).unwrap();
    let whole = exported(&steady, &[]);
    for spoil in SPOILT {
        spoil(&path(data.path(), &sha256, ".jpg"), &strange);
        assert_eq!(steady.photo(&sha256, PhotoSize::Full).unwrap_err().code, "photo-damaged");
        let mut file = Vec::new();
        let wanted = Wanted { visits: &[], papers: false, locale: None, sheet: None };
        let made = steady.export(wanted, &mut file).unwrap();
        assert_eq!((made.visits, made.photos, made.photos_damaged), (2, 1, vec![sha256.clone()]));
        let (_there, there) = scratch();
        assert_eq!(there.import(&mut &*file).unwrap().photos, 1, "the rest goes on");
        assert_eq!(steady.import(&mut &*file).unwrap().unchanged, 2, "a file without it heals nothing");
        assert_eq!(steady.photo(&sha256, PhotoSize::Full).unwrap_err().code, "photo-damaged");
        steady.import(&mut &*whole).unwrap();
        assert_eq!(steady.photo(&sha256, PhotoSize::Full).unwrap(), good);
    }
}

/// A thumbnail is bound to its photo: any other is made anew, and a spoilt photo has none.
#[test]
fn thumbnail_of_another_photo_is_made_anew() {
    let (data, steady) = scratch();
    let (visit, other) = (small_visit(&steady, "TR 0001"), small_visit(&steady, "TR 0002"));
    keep_photo(&steady, &other, 90);
    let sha256 = photo_of(&steady, &visit);
    let strange = steady.photo(&photo_of(&steady, &other), PhotoSize::Thumb).unwrap();
    for spoil in SPOILT {
        spoil(&path(data.path(), &sha256, ".thumb.jpg"), &strange);
        let anew = steady.photo(&sha256, PhotoSize::Thumb).unwrap();
        assert_ne!(anew, strange);
        assert_eq!(std::fs::read(path(data.path(), &sha256, ".thumb.jpg")).unwrap(), anew, "and kept");
    }
    std::fs::write(path(data.path(), &sha256, ".jpg"), &strange).unwrap();
    std::fs::remove_file(path(data.path(), &sha256, ".thumb.jpg")).unwrap();
    assert_eq!(steady.photo(&sha256, PhotoSize::Thumb).unwrap_err().code, "photo-damaged");
}

/// What a press was given.
struct Asking {
    sha256: String,
    given: Mutex<Vec<PhotoFound>>,
}

impl Press for Asking {
    fn print(&self, _paper: Paper<'_>, run: &PrintRun<'_>) -> Result<Vec<u8>, PressError> {
        self.given.lock().unwrap().push((run.photo)(&self.sha256));
        Ok(Vec::new())
    }
}

#[test]
fn spoilt_photo_is_printed_as_damaged() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "TR 0001");
    let sha256 = photo_of(&steady, &visit);
    drop(steady);
    let press = Arc::new(Asking { sha256: sha256.clone(), given: Mutex::default() });
    let setup = Setup { data_dir: data.path().to_owned(), press: press.clone(), clock: || MORNING };
    let steady = Steady::open(setup).unwrap();
    let printed = || {
        let asked =
            json!({ "ask": "paper", "visit": visit, "paper": "finding", "locale": "en", "sheet": "a4" });
        assert_eq!(code(&steady, asked), "ok");
        press.given.lock().unwrap().pop().unwrap()
    };
    let file = path(data.path(), &sha256, ".jpg");
    let good = std::fs::read(&file).unwrap();
    let no_picture: Spoil = |path, _| std::fs::write(path, b"no picture").unwrap();
    for spoil in SPOILT.into_iter().chain([no_picture]) {
        assert_eq!(printed(), PhotoFound::Whole(good.clone()));
        spoil(&file, &jpeg(90));
        assert_eq!(printed(), PhotoFound::Damaged);
        std::fs::write(&file, &good).unwrap();
    }
    std::fs::remove_file(&file).unwrap();
    assert_eq!(printed(), PhotoFound::Missing);
}

/// Here, a restore puts the good copy in its place; in the backup, the check names it and a restore leaves it out.
#[test]
fn spoilt_photo_is_healed_from_a_backup_and_a_spoilt_copy_heals_nothing() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "TR 0001");
    let sha256 = photo_of(&steady, &visit);
    let backup = tempfile::tempdir().unwrap();
    back_up(&steady, backup.path());
    let (here, kept) = (path(data.path(), &sha256, ".jpg"), of_kind(backup.path(), "jpg").remove(0));
    let good = std::fs::read(&here).unwrap();
    for spoil in SPOILT {
        spoil(&here, &jpeg(90));
        assert_eq!(restore(&steady, backup.path()).photos_healed, 1);
        assert_eq!(std::fs::read(&here).unwrap(), good);
        spoil(&kept, &jpeg(90));
        let named = check(backup.path(), &mut |_| {}).unwrap().damaged;
        assert_eq!(named.len(), 1, "{named:?}");
        assert!(named[0].file.contains(&sha256), "{named:?}");
        let (_new, new) = scratch();
        assert_eq!(restore(&new, backup.path()).photos_missing, 1);
        assert_eq!(new.photo(&sha256, PhotoSize::Full).unwrap_err().code, "photo-missing");
        // The next backup proves what is in doubt, and writes it anew.
        back_up(&steady, backup.path());
        assert_eq!(std::fs::read(&kept).unwrap(), good);
    }
}

/// A photo that was kept for a request that was then refused, or whose process was killed, is gone at the next
/// start; one that a line names is not.
#[test]
fn photo_that_no_line_names_is_cleared() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "TR 0001");
    let kept = photo_of(&steady, &visit);
    drop(steady);
    let before: Vec<PathBuf> = files(&data.path().join("photos")).into_keys().collect();
    let database = rusqlite::Connection::open(data.path().join("steady.db")).unwrap();
    let left = "ab".repeat(32);
    database.execute("INSERT INTO photo (sha256, thumb) VALUES (?1, ?1)", [&left]).unwrap();
    drop(database);
    for ending in [".jpg", ".thumb.jpg"] {
        std::fs::write(path(data.path(), &left, ending), b"left").unwrap();
    }
    let steady = open(data.path()).unwrap();
    let after: Vec<PathBuf> = files(&data.path().join("photos")).into_keys().collect();
    assert_eq!(after, before);
    assert!(steady.photo(&kept, PhotoSize::Full).is_ok());
}

/// A data folder of an earlier schema: its photos are known, its thumbnails made anew once.
#[test]
fn photos_of_an_earlier_schema_are_known() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "TR 0001");
    let sha256 = photo_of(&steady, &visit);
    drop(steady);
    let database = rusqlite::Connection::open(data.path().join("steady.db")).unwrap();
    let known = "SELECT named, thumb IS NOT NULL FROM photo WHERE sha256 = ?1";
    let row = |database: &rusqlite::Connection| -> (i64, bool) {
        database.query_row(known, [&sha256], |row| Ok((row.get(0)?, row.get(1)?))).unwrap()
    };
    assert_eq!(row(&database), (1, true));
    database.execute("UPDATE photo SET thumb = NULL", []).unwrap();
    drop(database);
    let steady = open(data.path()).unwrap();
    steady.handle(Request::Home).unwrap();
    assert!(steady.photo(&sha256, PhotoSize::Thumb).is_ok());
    assert!(
        ask(&steady, json!({ "ask": "look", "visit": visit })).steps.iter().any(|step| step.photo.is_some())
    );
    drop(steady);
    let database = rusqlite::Connection::open(data.path().join("steady.db")).unwrap();
    assert_eq!(row(&database), (1, true));
}
