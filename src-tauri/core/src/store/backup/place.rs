//! The folder of a backup: whose it is, what lies in it, and the one store of files that its generations share.
//! Nothing is written or removed but under names of the forms here, and no link is followed.

use std::collections::{BTreeMap, BTreeSet};
use std::fs::{self, File, OpenOptions, TryLockError};
use std::io;
use std::path::{Path, PathBuf};

use serde::{Deserialize, Serialize};

use super::fault::BackupFault;
use super::found::entries;
use super::list::{List, Object, Piece, is_mirror_path, is_own_path, object_kind};
use super::lists::{Lists, lists};
use crate::model::limits;
use crate::store::fault::StoreFault;
use crate::store::folders;
use crate::store::open::DATABASE;
use crate::store::private;

/// The file that makes a folder a backup.
pub const MARKER: &str = "steady-backup.json";
pub const LISTS: &str = "generations";
/// The store, a folder for each first two digits of a hash.
pub const FILES: &str = "files";
/// What is being written and has no name yet.
const PASSING: &str = "unfinished";
/// Held while somebody writes here.
const LOCK: &str = "backup-lock";
/// The photo that was proven last, so that the next backup goes on behind it.
const PROVEN_TO: &str = "proven-to";
/// The folders of a backup of the earlier form.
const MIRRORED: [&str; 3] = ["photos", "layouts", "knowledge"];
/// The marker before it has its name.
const MARKER_PASSING: &str = "steady-backup.json.part";

/// What the marker says.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Marker {
    /// Form of the backup.
    steady_backup: u32,
    /// Id of the data folder.
    data: String,
    /// Files of an earlier form of backup that lay here, to be removed once a generation stands.
    #[serde(default, skip_serializing_if = "BTreeSet::is_empty")]
    mirror: BTreeSet<String>,
}

/// The form written today.
const FORM: u32 = 1;

/// The folder of a data folder's backup, looked at and not yet changed.
#[derive(Debug)]
pub struct Claim {
    root: PathBuf,
    marker: Marker,
    /// Whether the marker stands already.
    marked: bool,
}

/// A backup's folder, held for writing.
#[derive(Debug)]
pub struct BackupFolder {
    root: PathBuf,
    marker: Marker,
    present: BTreeMap<String, u64>,
    _lock: File,
}

impl Claim {
    /// Takes a folder for the backup of a data folder: its own backup, an empty folder or none yet, or a
    /// backup of the earlier form. Nothing is written.
    ///
    /// # Errors
    /// [`BackupFault`], or what the file system says.
    pub fn new(root: &Path, data: &Path, id: &str) -> Result<Self, StoreFault> {
        let fresh = |root: &Path, mirror| {
            let marker = Marker { steady_backup: FORM, data: id.to_owned(), mirror };
            Self { root: root.to_owned(), marker, marked: false }
        };
        let data = data.canonicalize().map_err(StoreFault::file)?;
        if !root.exists() {
            let above = root.ancestors().skip(1).find_map(|folder| folder.canonicalize().ok());
            let inside = above.is_some_and(|above| above.starts_with(&data));
            return if inside {
                Err(BackupFault::InsideData.into())
            } else {
                Ok(fresh(root, BTreeSet::new()))
            };
        }
        let root = root.canonicalize().map_err(StoreFault::file)?;
        if root.starts_with(&data) {
            return Err(BackupFault::InsideData.into());
        }
        match read_marker(&root)? {
            Some(marker) if marker.data == id => Ok(Self { root, marker, marked: true }),
            Some(_) => Err(BackupFault::OfAnother.into()),
            None => Ok(fresh(&root, mirror_files(&root)?)),
        }
    }

    /// Every generation's list, in order of their numbers.
    ///
    /// # Errors
    /// [`BackupFault::Damaged`] with the list's file, or what the file system says.
    pub fn lists(&self) -> Result<Lists, StoreFault> {
        lists(&self.root)
    }

    /// Where a file of the store stands.
    pub fn path(&self, name: &str) -> PathBuf {
        object_path(&self.root, name)
    }

    /// The database of a backup of the earlier form, while one is here.
    pub fn mirrored_database(&self) -> Option<PathBuf> {
        let path = self.root.join(DATABASE);
        (self.marker.mirror.contains(DATABASE) && path.is_file()).then_some(path)
    }

    /// Marks the folder and holds it for writing.
    ///
    /// # Errors
    /// [`BackupFault::Busy`], [`BackupFault::Link`], or what the file system says.
    pub fn begin(self) -> Result<BackupFolder, StoreFault> {
        let Self { root, marker, marked } = self;
        private::folder(&root).map_err(StoreFault::file)?;
        if !marker.mirror.is_empty() {
            no_link_among(&root)?;
        }
        let lock = lock(&root)?;
        let mut place = BackupFolder { root, marker, present: BTreeMap::new(), _lock: lock };
        if !marked {
            place.mark()?;
        }
        for folder in [LISTS, FILES, PASSING] {
            make_folder(&place.root.join(folder))?;
        }
        place.clear_passing()?;
        place.present = present(&place.root)?;
        Ok(place)
    }
}

impl BackupFolder {
    fn mark(&self) -> Result<(), StoreFault> {
        let json = serde_json::to_string(&self.marker).unwrap_or_default();
        let passing = self.root.join(MARKER_PASSING);
        folders::write_by(&self.root.join(MARKER), &passing, json.as_bytes()).map_err(StoreFault::file)
    }

    /// Every generation's list, in order of their numbers.
    ///
    /// # Errors
    /// [`BackupFault::Damaged`] with the list's file, or what the file system says.
    pub fn lists(&self) -> Result<Lists, StoreFault> {
        lists(&self.root)
    }

    /// Whether a file of the store is there at its length, whatever its content.
    pub fn has(&self, object: &Object) -> bool {
        self.present.get(&object.name) == Some(&object.bytes)
    }

    /// Whether a file of the store is there and is what its name says, read from front to back.
    ///
    /// # Errors
    /// [`BackupFault::Unread`].
    pub fn proves(&self, object: &Object) -> Result<bool, StoreFault> {
        if self.has(object) { is_what_it_says(&self.path(&object.name), &object.name) } else { Ok(false) }
    }

    /// A photo of the backup of an earlier form that lay here, while it does.
    pub fn mirrored_photo(&self, sha256: &str) -> Option<PathBuf> {
        let name = format!("photos/{sha256}.jpg");
        self.marker.mirror.contains(&name).then(|| self.root.join(name))
    }

    /// From where on photos are to be proven next, as it was left.
    pub fn proven_to(&self) -> Option<String> {
        let path = self.root.join(PROVEN_TO);
        let kind = fs::symlink_metadata(&path).ok()?;
        let text =
            if kind.is_file() && kind.len() < 100 { fs::read_to_string(path).ok()? } else { return None };
        Some(text.trim().to_owned())
    }

    /// Leaves from where on photos are to be proven next.
    ///
    /// # Errors
    /// What the file system says.
    pub fn set_proven_to(&self, sha256: &str) -> Result<(), StoreFault> {
        prove_from(&self.root, sha256)
    }

    /// Length of a file of the store, whatever its content.
    pub fn length_of(&self, name: &str) -> Option<u64> {
        self.present.get(name).copied()
    }

    /// Where a file of the store stands.
    pub fn path(&self, name: &str) -> PathBuf {
        object_path(&self.root, name)
    }

    /// Where something is written before it gets its name.
    pub fn passing(&self, name: &str) -> PathBuf {
        self.root.join(PASSING).join(name)
    }

    /// Gives what was written under a passing name its name in the store, after it was synced and read back.
    ///
    /// # Errors
    /// [`BackupFault::NotAsWritten`], or what the file system says.
    pub fn commit(&mut self, passing: &Path, object: &Object) -> Result<(), StoreFault> {
        let (sha256, bytes) = folders::hash_of(passing).map_err(StoreFault::file)?;
        if bytes != object.bytes || !object.name.starts_with(&sha256) {
            return Err(BackupFault::NotAsWritten(object.name.clone()).into());
        }
        let path = self.path(&object.name);
        if let Some(shard) = path.parent() {
            make_folder(shard)?;
        }
        fs::rename(passing, &path).map_err(StoreFault::file)?;
        self.present.insert(object.name.clone(), bytes);
        Ok(())
    }

    /// Makes the names of these files of the store last.
    ///
    /// # Errors
    /// What the file system says.
    pub fn sync<'a>(&self, names: impl Iterator<Item = &'a str>) -> Result<(), StoreFault> {
        let shards: BTreeSet<PathBuf> =
            names.filter_map(|name| self.path(name).parent().map(Path::to_owned)).collect();
        if shards.is_empty() {
            return Ok(());
        }
        shards.iter().try_for_each(|shard| folders::sync(shard)).map_err(StoreFault::file)?;
        folders::sync(&self.root.join(FILES)).map_err(StoreFault::file)
    }

    /// Writes a list: from here on its generation stands. Read back before it is named.
    ///
    /// # Errors
    /// [`BackupFault::NotAsWritten`], or what the file system says; the earlier list then stands.
    pub fn write_list(&self, list: &List) -> Result<(), StoreFault> {
        let (text, passing) = (list.text()?, self.passing("list"));
        private::write(&passing, text.as_bytes()).map_err(StoreFault::file)?;
        sync_file(&passing)?;
        if fs::read(&passing).map_err(StoreFault::file)? != text.as_bytes() {
            return Err(BackupFault::NotAsWritten(list.file_name()).into());
        }
        let folder = self.root.join(LISTS);
        fs::rename(&passing, folder.join(list.file_name())).map_err(StoreFault::file)?;
        folders::sync(&folder).map_err(StoreFault::file)
    }

    /// Removes a generation's list. Its files go with [`BackupFolder::clear_unlisted`].
    ///
    /// # Errors
    /// What the file system says.
    pub fn drop_list(&self, list: &List) -> Result<(), StoreFault> {
        folders::remove_if_there(&self.root.join(LISTS).join(list.file_name())).map_err(StoreFault::file)
    }

    /// Removes files of the store that no list names: those that `dropped` lists named, and those that a
    /// backup which was cut off left behind, which are what their names say. Whatever else lies there stays.
    ///
    /// While a list is damaged nobody knows what it named: then only what `hiding` says of a file that no other list
    /// names lets that file go.
    ///
    /// # Errors
    /// What the file system says.
    pub fn clear_unlisted(
        &mut self,
        lists: &Lists,
        dropped: &[List],
        hiding: &dyn Fn(&Path) -> BTreeSet<String>,
    ) -> Result<(), StoreFault> {
        let listed: BTreeSet<String> =
            lists.sound.iter().flat_map(List::objects).map(|object| object.name).collect();
        let mut ours: BTreeSet<String> =
            dropped.iter().flat_map(List::objects).map(|object| object.name).collect();
        let unlisted: Vec<String> =
            self.present.keys().filter(|name| !listed.contains(*name)).cloned().collect();
        let all_known = lists.damaged.is_empty();
        for name in unlisted.iter().filter(|name| !all_known && object_kind(name) == Some("db")) {
            let path = self.path(name);
            if is_what_it_says(&path, name)? {
                ours.extend(hiding(&path));
            }
        }
        for name in unlisted {
            let path = self.path(&name);
            if ours.contains(&name) || all_known && is_what_it_says(&path, &name)? {
                folders::remove_if_there(&path).map_err(StoreFault::file)?;
                self.present.remove(&name);
            }
        }
        Ok(())
    }

    /// Removes what is left of a backup of the earlier form, after a generation with these own files of the workshop
    /// stands in its place. Own files that only the earlier form holds stay where they lie.
    ///
    /// # Errors
    /// What the file system says.
    pub fn clear_mirror(&mut self, own: &BTreeMap<String, Piece>) -> Result<(), StoreFault> {
        if self.marker.mirror.is_empty() {
            return Ok(());
        }
        no_link_among(&self.root)?;
        if self.marker.mirror.contains(DATABASE) {
            // Made by reading it.
            for log in ["steady.db-wal", "steady.db-shm"] {
                folders::remove_if_there(&self.root.join(log)).map_err(StoreFault::file)?;
            }
        }
        for path in &self.marker.mirror {
            let is_held = |piece: &Piece| {
                folders::hash_of(&self.root.join(path)).is_ok_and(|(sha256, _)| sha256 == piece.sha256)
            };
            if is_own_path(path) && !own.get(path).is_some_and(is_held) {
                continue;
            }
            folders::remove_if_there(&self.root.join(path)).map_err(StoreFault::file)?;
        }
        for folder in MIRRORED {
            // One that is not empty holds something of somebody else.
            let _ = fs::remove_dir(self.root.join(folder));
        }
        self.marker.mirror.clear();
        self.mark()
    }

    /// Removes what a backup that was cut off was writing.
    fn clear_passing(&self) -> Result<(), StoreFault> {
        for file in entries(&self.root.join(PASSING))? {
            if file.is_file && is_passing(&file.name) {
                fs::remove_file(self.passing(&file.name)).map_err(StoreFault::file)?;
            }
        }
        Ok(())
    }
}

/// A backup's folder, held while it is only read: nobody removes what is about to be looked at.
#[derive(Debug)]
pub struct Held {
    root: PathBuf,
    /// None where the disk takes no file, and so no backup either.
    lock: Option<File>,
}

impl Held {
    /// Holds the folder of a backup, in which nothing of its own leads elsewhere.
    ///
    /// # Errors
    /// [`BackupFault::Busy`], [`BackupFault::Link`].
    pub fn new(root: &Path) -> Result<Self, StoreFault> {
        no_link_of([MARKER, LISTS, FILES, PASSING, LOCK].iter(), root)?;
        match lock(root) {
            Ok(lock) => Ok(Self { root: root.to_owned(), lock: Some(lock) }),
            Err(fault @ StoreFault::Backup(_)) => Err(fault),
            Err(_) => Ok(Self { root: root.to_owned(), lock: None }),
        }
    }

    /// Leaves behind which photo the next one is to be proven, where the disk takes it.
    pub fn doubt(&self, proven_to: &str) {
        if self.lock.is_some() {
            // On a full disk only what stands in turn is proven.
            let _ = prove_from(&self.root, proven_to);
        }
    }
}

fn prove_from(root: &Path, proven_to: &str) -> Result<(), StoreFault> {
    let passing = root.join(PASSING).join(PROVEN_TO);
    folders::write_by(&root.join(PROVEN_TO), &passing, proven_to.as_bytes()).map_err(StoreFault::file)
}

/// Where a file of the store stands in a backup.
pub fn object_path(root: &Path, name: &str) -> PathBuf {
    root.join(object_name(name))
}

/// A file of the store by its name within the backup.
pub fn object_name(name: &str) -> String {
    format!("{FILES}/{}/{name}", name.get(..2).unwrap_or("00"))
}

/// The marker of a backup of this data folder.
pub fn marker(data: &str) -> String {
    let marker = Marker { steady_backup: FORM, data: data.to_owned(), mirror: BTreeSet::new() };
    serde_json::to_string(&marker).unwrap_or_default()
}

/// The data folder that a marker names.
///
/// # Errors
/// [`BackupFault::Newer`], [`BackupFault::Damaged`].
pub fn data_of(marker: &[u8]) -> Result<String, BackupFault> {
    Ok(read_text(marker)?.data)
}

/// Whether a folder is marked as a backup, of whichever data folder.
///
/// # Errors
/// [`BackupFault`], or what the file system says.
pub fn is_marked(root: &Path) -> Result<bool, StoreFault> {
    Ok(read_marker(root)?.is_some())
}

fn read_marker(root: &Path) -> Result<Option<Marker>, StoreFault> {
    let path = root.join(MARKER);
    match fs::symlink_metadata(&path) {
        Err(error) if error.kind() == io::ErrorKind::NotFound => return Ok(None),
        Err(error) => return Err(StoreFault::file(error)),
        Ok(found) if !found.is_file() => return Err(BackupFault::Link.into()),
        Ok(found) if found.len() > limits::BACKUP_LIST_BYTES => {
            return Err(BackupFault::Damaged(MARKER.to_owned()).into());
        }
        Ok(_) => {}
    }
    Ok(Some(read_text(&fs::read(path).map_err(StoreFault::file)?)?))
}

fn read_text(text: &[u8]) -> Result<Marker, BackupFault> {
    let damaged = || BackupFault::Damaged(MARKER.to_owned());
    let form = |text: &[u8]| {
        let value: serde_json::Value = serde_json::from_slice(text).ok()?;
        value.get("steady_backup")?.as_u64()
    };
    if form(text).is_some_and(|form| form > u64::from(FORM)) {
        return Err(BackupFault::Newer);
    }
    let marker: Marker = serde_json::from_slice(text).map_err(|_| damaged())?;
    if marker.mirror.iter().all(|path| is_mirror_path(path)) { Ok(marker) } else { Err(damaged()) }
}

/// The files of a backup of the earlier form, if the folder holds nothing else; none if it is empty.
fn mirror_files(root: &Path) -> Result<BTreeSet<String>, StoreFault> {
    let mut files = BTreeSet::new();
    no_link_among(root)?;
    let something_else = |fault| match fault {
        StoreFault::Backup(BackupFault::Link) => BackupFault::NotABackup.into(),
        fault => fault,
    };
    for entry in entries(root).map_err(something_else)? {
        let inside = MIRRORED.contains(&entry.name.as_str());
        if entry.is_file {
            files.insert(entry.name);
        } else if inside {
            for file in entries(&root.join(&entry.name))? {
                if !file.is_file {
                    return Err(BackupFault::NotABackup.into());
                }
                files.insert(format!("{}/{}", entry.name, file.name));
            }
        } else {
            return Err(BackupFault::NotABackup.into());
        }
    }
    // What a first backup that was cut off left before it could mark the folder.
    files.remove(MARKER_PASSING);
    files.remove(LOCK);
    let whole = files.is_empty() || files.contains(DATABASE);
    if whole && files.iter().all(|path| is_mirror_path(path)) {
        Ok(files)
    } else {
        Err(BackupFault::NotABackup.into())
    }
}

/// Names under which files are written before they get their own.
fn is_passing(name: &str) -> bool {
    let of_sqlite = ["", "-journal", "-wal", "-shm"];
    let database = |start: &str| of_sqlite.iter().any(|end| name == format!("{start}{end}"));
    object_kind(name).is_some()
        || name == "list"
        || name == PROVEN_TO
        || database("steady.db")
        || database("erasing.db")
}

/// The files of the store, each with its length.
fn present(root: &Path) -> Result<BTreeMap<String, u64>, StoreFault> {
    let mut present = BTreeMap::new();
    let store = root.join(FILES);
    for shard in entries(&store)?.iter().filter(|shard| !shard.is_file) {
        for file in entries(&store.join(&shard.name))? {
            if file.is_file && object_kind(&file.name).is_some() && file.name.starts_with(&shard.name) {
                present.insert(file.name, file.bytes);
            }
        }
    }
    Ok(present)
}

fn is_what_it_says(path: &Path, name: &str) -> Result<bool, StoreFault> {
    match folders::hash_of(path) {
        Ok((sha256, _)) => Ok(name.starts_with(&sha256)),
        Err(error) if error.kind() == io::ErrorKind::NotFound => Ok(false),
        Err(_) => Err(BackupFault::Unread(name.to_owned()).into()),
    }
}

/// Refuses a folder in which what an earlier form of backup had leads elsewhere: what lies there is not ours.
fn no_link_among(root: &Path) -> Result<(), StoreFault> {
    no_link_of([DATABASE, MARKER, LISTS, FILES, PASSING, LOCK].iter().chain(&MIRRORED), root)
}

fn no_link_of<'a>(mut names: impl Iterator<Item = &'a &'a str>, root: &Path) -> Result<(), StoreFault> {
    let is_link = |name: &&str| fs::symlink_metadata(root.join(name)).is_ok_and(|found| found.is_symlink());
    if names.any(is_link) { Err(BackupFault::Link.into()) } else { Ok(()) }
}

fn make_folder(folder: &Path) -> Result<(), StoreFault> {
    match fs::symlink_metadata(folder) {
        Ok(kind) if kind.is_dir() => Ok(()),
        Ok(_) => Err(BackupFault::Link.into()),
        Err(_) => private::folder(folder).map_err(StoreFault::file),
    }
}

fn sync_file(path: &Path) -> Result<(), StoreFault> {
    OpenOptions::new().write(true).open(path).and_then(|file| file.sync_all()).map_err(StoreFault::file)
}

fn lock(root: &Path) -> Result<File, StoreFault> {
    let path = root.join(LOCK);
    if fs::symlink_metadata(&path).is_ok_and(|found| !found.is_file()) {
        return Err(BackupFault::Link.into());
    }
    let file = private::held(&path).map_err(StoreFault::file)?;
    match file.try_lock() {
        Err(TryLockError::WouldBlock) => Err(BackupFault::Busy.into()),
        // A disk of the network may know no locks; then nobody can be kept out.
        Ok(()) | Err(TryLockError::Error(_)) => Ok(file),
    }
}
