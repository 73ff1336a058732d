//! The list of a generation: every file it is made of, by hash. The list is the generation; the files stand in
//! one store that all generations share.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};

use super::fault::BackupFault;
use crate::model::hex;
use crate::model::limits;
use crate::model::time::Moment;
use crate::store::open::{DATABASE, OWN_FOLDERS};

/// What a list begins with; behind it the SHA-256 of the rest, and a line's end.
const HEAD: &str = "steady backup list 1 ";

/// Longest photo that is backed up and taken over, bytes.
pub const MOST_BYTES: u64 = limits::PHOTO_BYTES;

/// A generation of a backup.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct List {
    /// Counts up from 1, so that a wrong clock changes no order.
    pub number: u64,
    /// When it was made.
    pub made_at: Moment,
    /// Version of the program that made it.
    pub made_by: String,
    /// Id of the data folder.
    pub data: String,
    /// Visits, each with its number of lines.
    pub visits: BTreeMap<String, u64>,
    /// Photos that lines name and that were neither here nor in the backup.
    pub missing: Vec<String>,
    /// By hash and length.
    pub database: Piece,
    /// Photos, by their hash.
    pub photos: Vec<Piece>,
    /// The workshop's own files by their path in the data folder.
    pub own: BTreeMap<String, Piece>,
}

/// A file by its content.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Piece {
    /// SHA-256, hex.
    pub sha256: String,
    /// Length.
    pub bytes: u64,
}

/// A file of the store: its name, made of hash and kind, and its length.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Object {
    /// Name in the store.
    pub name: String,
    /// Length.
    pub bytes: u64,
}

impl Piece {
    /// What names these bytes.
    pub fn of(bytes: &[u8]) -> Self {
        Self { sha256: hex::encode(&Sha256::digest(bytes)), bytes: bytes.len() as u64 }
    }

    /// The file in the store that holds it.
    pub fn object(&self, kind: &str) -> Object {
        Object { name: format!("{}.{kind}", self.sha256), bytes: self.bytes }
    }
}

impl List {
    /// Every file of the store that the generation is made of.
    pub fn objects(&self) -> impl Iterator<Item = Object> + '_ {
        let database = std::iter::once(self.database.object("db"));
        let photos = self.photos.iter().map(|photo| photo.object("jpg"));
        database.chain(photos).chain(self.own.values().map(|own| own.object("toml")))
    }

    /// The list's file name: number and time. Nothing a person typed is in it.
    pub fn file_name(&self) -> String {
        format!("{:06}_{}.list", self.number, stamp(self.made_at))
    }

    /// The list as it is written.
    pub fn text(&self) -> Result<String, BackupFault> {
        let json = serde_json::to_string(self).map_err(|_| BackupFault::Damaged(self.file_name()))?;
        Ok(format!("{HEAD}{}\n{json}", hex::encode(&Sha256::digest(json.as_bytes()))))
    }

    /// Reads what [`List::text`] wrote.
    ///
    /// # Errors
    /// [`BackupFault::Newer`], or [`BackupFault::Damaged`] with `name` for whatever else is not such a list.
    pub fn read(name: &str, text: &[u8]) -> Result<Self, BackupFault> {
        let damaged = || BackupFault::Damaged(name.to_owned());
        let text = std::str::from_utf8(text).map_err(|_| damaged())?;
        let Some(rest) = text.strip_prefix(HEAD) else {
            let newer = text.starts_with("steady backup list ");
            return Err(if newer { BackupFault::Newer } else { damaged() });
        };
        let (sha256, json) = rest.split_once('\n').ok_or_else(damaged)?;
        if hex::encode(&Sha256::digest(json.as_bytes())) != sha256 {
            return Err(damaged());
        }
        let list: Self = serde_json::from_str(json).map_err(|_| damaged())?;
        if list.is_sound() { Ok(list) } else { Err(damaged()) }
    }

    /// Whether every name in it stays where it belongs, and every file can be held whole where it is read.
    fn is_sound(&self) -> bool {
        let within = |most: u64| move |piece: &Piece| is_hash(&piece.sha256) && piece.bytes <= most;
        within(limits::DATABASE_BYTES)(&self.database)
            && self.photos.iter().all(within(MOST_BYTES))
            && self.own.values().all(within(limits::OWN_FILE_BYTES))
            && self.own.len() <= OWN_FOLDERS.len() * limits::OWN_FILES
            && self.own.keys().all(|path| is_own_path(path))
            && uuid::Uuid::try_parse(&self.data).is_ok()
    }
}

/// Time as a file name can hold it.
pub fn stamp(at: Moment) -> String {
    at.rfc3339().replace([':', '.'], "-")
}

/// A SHA-256 in lower-case hexadecimal.
pub fn is_hash(text: &str) -> bool {
    text.len() == 64 && text.bytes().all(|byte| matches!(byte, b'0'..=b'9' | b'a'..=b'f'))
}

/// `layouts/NAME.toml` or `knowledge/NAME.toml`, and no folder between.
pub fn is_own_path(path: &str) -> bool {
    let Some((folder, name)) = path.split_once('/') else { return false };
    let plain = |letter: char| !matches!(letter, '/' | '\\' | ':') && !letter.is_control();
    OWN_FOLDERS.contains(&folder)
        && name.len() <= 255
        && name.strip_suffix(".toml").is_some_and(|stem| !stem.is_empty() && !stem.starts_with('.'))
        && name.chars().all(plain)
}

/// The kind of a store's file by its name, if it is one: a hash and `db`, `jpg` or `toml`.
pub fn object_kind(name: &str) -> Option<&str> {
    let (sha256, kind) = name.split_once('.')?;
    (is_hash(sha256) && matches!(kind, "db" | "jpg" | "toml")).then_some(kind)
}

/// Names of an earlier form of backup, a bare copy: `steady.db`, photos, own files.
pub fn is_mirror_path(path: &str) -> bool {
    let photo = |name: &str| {
        let stem = name.strip_suffix(".jpg").or_else(|| name.strip_suffix(".part"));
        stem.is_some_and(|stem| is_hash(stem.strip_suffix(".thumb").unwrap_or(stem)))
    };
    [DATABASE, "steady.db-wal", "steady.db-shm", "steady.db.part"].contains(&path)
        || is_own_path(path)
        || path.strip_prefix("photos/").is_some_and(photo)
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use super::{List, MOST_BYTES, Piece, is_mirror_path, is_own_path};
    use crate::model::limits;
    use crate::model::time::Moment;

    fn piece(bytes: u64) -> Piece {
        Piece { sha256: "a1".repeat(32), bytes }
    }

    fn list() -> List {
        List {
            number: 1,
            made_at: Moment(0),
            made_by: String::new(),
            data: "0191d2f0-0000-7000-8000-000000000001".to_owned(),
            visits: BTreeMap::new(),
            missing: Vec::new(),
            database: piece(limits::DATABASE_BYTES),
            photos: vec![piece(MOST_BYTES)],
            own: BTreeMap::from([("layouts/own.toml".to_owned(), piece(limits::OWN_FILE_BYTES))]),
        }
    }

    #[test]
    fn list_of_a_file_too_long_to_hold_whole_is_not_read() {
        let read = |list: &List| List::read("", list.text().expect("json").as_bytes());
        assert!(read(&list()).is_ok());
        let mut rows = [list(), list(), list(), list()];
        rows[0].database.bytes += 1;
        rows[1].photos[0].bytes += 1;
        rows[2].own.values_mut().for_each(|own| own.bytes += 1);
        for number in 0..=2 * limits::OWN_FILES {
            rows[3].own.insert(format!("layouts/{number}.toml"), piece(1));
        }
        for (at, list) in rows.iter().enumerate() {
            assert!(read(list).is_err(), "{at}");
        }
    }

    #[test]
    fn own_files_stay_in_their_folders() {
        for right in ["layouts/own.toml", "knowledge/más años.toml"] {
            assert!(is_own_path(right), "{right}");
        }
        for wrong in [
            "layouts/../a.toml",
            "layouts/a/b.toml",
            "layouts/.toml",
            "layouts/..toml",
            "layouts/a.txt",
            "other/a.toml",
            "a.toml",
            "knowledge/c:a.toml",
            "layouts/a\\b.toml",
            "layouts/",
        ] {
            assert!(!is_own_path(wrong), "{wrong}");
        }
    }

    #[test]
    fn earlier_backups_hold_only_what_they_wrote() {
        let photo = format!("photos/{}", "a1".repeat(32));
        for right in ["steady.db", "layouts/a.toml", &format!("{photo}.jpg"), &format!("{photo}.thumb.jpg")] {
            assert!(is_mirror_path(right), "{right}");
        }
        for wrong in ["photos/holiday.jpg", "notes.txt", "photos/x/y.jpg", &format!("{photo}.png")] {
            assert!(!is_mirror_path(wrong), "{wrong}");
        }
    }
}
