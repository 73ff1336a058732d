//! The folder that Android's camera writes into, and photos found there: taken over as uploads without crossing
//! the webview, and removed once a photo is kept.
//!
//! The camera app can end this one while it is open. Its file is written all the same, so the next start finds it.
//! A file stays where it is until the core has the photo in the ledger: ending at any point loses nothing.
//! iOS and desktops have no such folder; the screens then send the file itself, in pieces.

use std::fs;
use std::path::{Path, PathBuf};
use std::time::{Duration, SystemTime, UNIX_EPOCH};

use serde::Serialize;
use steady_core::app::Steady;
use steady_core::app::failure::Failure;
use steady_core::app::request::{Piece, Request};
use tauri::{AppHandle, Manager as _, Runtime};

use crate::house;

/// An empty file may be one the camera is about to fill; after this it was given up.
const EMPTY_FOR: Duration = Duration::from_secs(10 * 60);
/// A photo that nobody asked for by then is not wanted.
const KEPT_FOR: Duration = Duration::from_secs(7 * 24 * 3600);
/// Where a visit is erased, a photo so young may still be wanted by another.
const WANTED_FOR: Duration = Duration::from_secs(3600);
/// What is handed to the core at once, bytes.
const PIECE: usize = 256 * 1024;
/// Longest file that the core takes in.
const MAX_BYTES: u64 = steady_core::photos::intake::MAX_BYTES as u64;

/// A photo in the folder.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Shot {
    /// File name.
    pub name: String,
    /// Length, bytes.
    pub bytes: u64,
    /// When it was written, milliseconds since 1970.
    pub at: u64,
}

/// Where wry lets Android's camera write; nothing else is read there.
#[derive(Debug)]
pub struct CameraFolder(PathBuf);

impl CameraFolder {
    /// The photos there, latest first. Files that were given up are removed on the way.
    pub fn tidy(&self, now: SystemTime) -> Vec<Shot> {
        let Ok(files) = fs::read_dir(&self.0) else { return Vec::new() };
        let found = files.flatten().filter_map(|file| shot(&file.path()));
        let (mut shots, given_up): (Vec<Shot>, Vec<Shot>) = found.partition(|shot| !is_given_up(shot, now));
        given_up.iter().for_each(|shot| self.remove(&shot.name));
        shots.retain(|shot| shot.bytes > 0);
        shots.sort_by(|one, other| (other.at, &other.name).cmp(&(one.at, &one.name)));
        shots
    }

    /// Removes every photo that nobody waits for any more.
    pub fn forget_old(&self, now: SystemTime) {
        let old = |shot: &Shot| {
            let age = now.duration_since(UNIX_EPOCH + Duration::from_millis(shot.at)).unwrap_or_default();
            age > WANTED_FOR
        };
        self.tidy(now).iter().filter(|shot| old(shot)).for_each(|shot| self.remove(&shot.name));
    }

    /// The bytes of a photo; none if it is not there, or no photo by its name or size.
    pub fn read(&self, name: &str) -> Option<Vec<u8>> {
        let path = self.path(name)?;
        let length = path.metadata().ok().filter(fs::Metadata::is_file)?.len();
        if length == 0 || length > MAX_BYTES { None } else { fs::read(path).ok() }
    }

    /// Removes a photo that was kept or is not wanted.
    pub fn remove(&self, name: &str) {
        if let Some(path) = self.path(name) {
            // What cannot be removed goes with its age.
            let _ = fs::remove_file(path);
        }
    }

    /// The names wry gives: `JPEG_DATE_CHANCE.jpg`.
    fn path(&self, name: &str) -> Option<PathBuf> {
        let plain = name.chars().all(|letter| letter.is_ascii_alphanumeric() || "_-.".contains(letter));
        let ours = name.starts_with("JPEG_") && name.ends_with(".jpg");
        (plain && ours).then(|| self.0.join(name))
    }
}

fn shot(path: &Path) -> Option<Shot> {
    let name = path.file_name()?.to_str()?.to_owned();
    let file = path.metadata().ok().filter(fs::Metadata::is_file)?;
    let at = file.modified().ok()?.duration_since(UNIX_EPOCH).ok()?;
    let at = u64::try_from(at.as_millis()).ok()?;
    (name.starts_with("JPEG_") && name.ends_with(".jpg")).then_some(Shot { name, bytes: file.len(), at })
}

/// A clock that was put back makes a file look as if it came from later; it is then young.
fn is_given_up(shot: &Shot, now: SystemTime) -> bool {
    let age = now.duration_since(UNIX_EPOCH + Duration::from_millis(shot.at)).unwrap_or_default();
    age > if shot.bytes == 0 { EMPTY_FOR } else { KEPT_FOR }
}

/// Hands the bytes to the core the way the screens would, piece by piece.
fn adopt(steady: &Steady, upload: &str, bytes: &[u8]) -> Result<bool, Failure> {
    for (index, piece) in (0..).zip(bytes.chunks(PIECE)) {
        let piece = Piece(piece.to_vec());
        steady.handle(Request::Upload { upload: upload.to_owned(), index, piece })?;
    }
    Ok(true)
}

/// `picture_dir` is the folder that wry makes its files in; elsewhere it is the person's own, and left alone.
fn folder<R: Runtime>(app: &AppHandle<R>) -> Option<CameraFolder> {
    if cfg!(target_os = "android") { app.path().picture_dir().ok().map(CameraFolder) } else { None }
}

/// Removes the camera's own copies that nobody waits for: one of them may show a visit that was erased.
pub fn forget_old<R: Runtime>(app: &AppHandle<R>) {
    if let Some(folder) = folder(app) {
        folder.forget_old(SystemTime::now());
    }
}

/// The photos there, for the screens.
#[tauri::command]
pub async fn shots<R: Runtime>(app: AppHandle<R>) -> Vec<Shot> {
    let found = move || folder(&app).map_or_else(Vec::new, |folder| folder.tidy(SystemTime::now()));
    tauri::async_runtime::spawn_blocking(found).await.unwrap_or_default()
}

/// Makes a photo of the folder an upload, as if the screens had sent it; false if there is none of that name.
#[tauri::command]
pub async fn adopt_shot<R: Runtime>(
    app: AppHandle<R>,
    name: String,
    upload: String,
) -> Result<bool, Failure> {
    house::waiting(move || match folder(&app).and_then(|folder| folder.read(&name)) {
        Some(bytes) => house::steady(&app).and_then(|steady| adopt(&steady, &upload, &bytes)),
        None => Ok(false),
    })
    .await
}

/// Removes a photo of the folder: the core has it, or nobody wants it.
#[tauri::command]
pub async fn forget_shot<R: Runtime>(app: AppHandle<R>, name: String) {
    let forgotten = move || folder(&app).into_iter().for_each(|folder| folder.remove(&name));
    let _ = tauri::async_runtime::spawn_blocking(forgotten).await;
}

#[cfg(test)]
mod tests {
    use std::fs;
    use std::sync::Arc;
    use std::time::{Duration, SystemTime};

    use steady_core::app::response::Response;
    use steady_core::app::{Setup, Steady};
    use steady_core::model::time::Moment;

    use super::{CameraFolder, MAX_BYTES, PIECE, adopt};

    const MINUTE: Duration = Duration::from_secs(60);
    const DAY: Duration = Duration::from_secs(24 * 3600);

    /// A folder with files of these lengths and ages.
    fn folder(files: &[(&str, usize, Duration)]) -> (tempfile::TempDir, CameraFolder, SystemTime) {
        let (folder, now) = (tempfile::tempdir().expect("a folder"), SystemTime::now());
        for (name, length, age) in files {
            let path = folder.path().join(name);
            fs::write(&path, vec![7; *length]).expect("written");
            let file = fs::File::options().append(true).open(&path).expect("open");
            file.set_modified(now - *age).expect("dated");
        }
        let camera = CameraFolder(folder.path().to_owned());
        (folder, camera, now)
    }

    #[track_caller]
    fn check(files: &[(&str, usize, Duration)], shown: &[&str], left: &[&str]) {
        let (folder, camera, now) = folder(files);
        let names: Vec<String> = camera.tidy(now).into_iter().map(|shot| shot.name).collect();
        assert_eq!(names, shown);
        let there = fs::read_dir(folder.path()).expect("a folder").flatten();
        let mut there: Vec<String> = there.filter_map(|file| file.file_name().into_string().ok()).collect();
        there.sort();
        assert_eq!(there, left);
    }

    #[test]
    fn photos_are_found_latest_first_and_empty_files_given_up() {
        check(&[], &[], &[]);
        check(
            &[("JPEG_1_a.jpg", 9, 3 * MINUTE), ("JPEG_2_b.jpg", 9, MINUTE)],
            &["JPEG_2_b.jpg", "JPEG_1_a.jpg"],
            &["JPEG_1_a.jpg", "JPEG_2_b.jpg"],
        );
        // The camera may be about to fill the first; the second was cancelled long ago.
        check(&[("JPEG_1_a.jpg", 0, 9 * MINUTE), ("JPEG_2_b.jpg", 0, 11 * MINUTE)], &[], &["JPEG_1_a.jpg"]);
        check(
            &[("JPEG_1_a.jpg", 9, 6 * DAY), ("JPEG_2_b.jpg", 9, 8 * DAY)],
            &["JPEG_1_a.jpg"],
            &["JPEG_1_a.jpg"],
        );
    }

    #[test]
    fn erasing_leaves_no_copy_but_the_youngest() {
        let (folder, camera, now) = folder(&[
            ("JPEG_1_a.jpg", 9, 61 * MINUTE),
            ("JPEG_2_b.jpg", 9, 59 * MINUTE),
            ("note.txt", 9, DAY),
        ]);
        camera.forget_old(now);
        let mut left: Vec<_> =
            fs::read_dir(folder.path()).expect("a folder").flatten().map(|file| file.file_name()).collect();
        left.sort();
        assert_eq!(left, ["JPEG_2_b.jpg", "note.txt"]);
    }

    #[test]
    fn files_of_others_are_left_alone() {
        let others = ["holiday.jpg", "JPEG_1.png", "note.txt"];
        check(&others.map(|name| (name, 0, 30 * DAY)), &[], &["JPEG_1.png", "holiday.jpg", "note.txt"]);
        let (_folder, camera, _) = folder(&[("holiday.jpg", 9, MINUTE)]);
        camera.remove("holiday.jpg");
        for name in ["holiday.jpg", "../JPEG_1.jpg", "/JPEG_1.jpg", "JPEG_/../a.jpg", ""] {
            assert_eq!(camera.read(name), None, "{name}");
        }
        assert!(camera.0.join("holiday.jpg").exists());
    }

    #[test]
    fn a_file_too_large_for_a_photo_is_not_read() {
        let (folder, camera, _) = folder(&[("JPEG_1_a.jpg", 1, MINUTE)]);
        let file = fs::File::options().append(true).open(folder.path().join("JPEG_1_a.jpg")).expect("open");
        file.set_len(MAX_BYTES + 1).expect("sparse");
        assert_eq!(camera.read("JPEG_1_a.jpg"), None);
    }

    /// Killed after the shot, before the screens heard of it: the next start finds the file, the core gets the
    /// same bytes, and only then does the file go.
    #[test]
    fn shot_left_by_a_killed_app_becomes_an_upload_and_stays_until_it_is_kept() {
        let length = 2 * PIECE + 5;
        let (_folder, camera, now) = folder(&[("JPEG_1_a.jpg", length, MINUTE)]);
        let data = tempfile::tempdir().expect("a folder");
        let press = Arc::new(steady_papers::press().expect("fonts"));
        let setup = Setup { data_dir: data.path().to_owned(), press, clock: Moment::now };
        let steady = Steady::open(setup).expect("opens");
        let shots = camera.tidy(now);
        assert_eq!(shots.iter().map(|shot| shot.bytes).collect::<Vec<_>>(), [length as u64]);
        let bytes = camera.read(&shots[0].name).expect("readable");
        let upload = "00000000-0000-7000-8000-000000000001";
        assert_eq!(adopt(&steady, upload, &bytes), Ok(true));
        assert_eq!(camera.tidy(now).len(), 1, "not removed before it is kept");
        let more = serde_json::json!({ "ask": "upload", "upload": upload, "index": 3, "base64": "Bw==" });
        let answer = steady.handle(serde_json::from_value(more).expect("a request"));
        assert!(
            matches!(answer, Ok(Response::Uploaded { bytes }) if bytes == length as u64 + 1),
            "{answer:?}"
        );
        camera.remove("JPEG_1_a.jpg");
        assert_eq!(camera.tidy(now), []);
    }
}
