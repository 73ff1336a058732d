//! Reads a generation of a backup, or the bare copy that an earlier program made: only what its hash proves.

use std::collections::BTreeMap;
use std::fs;
use std::io::{self, Read as _};
use std::path::{Path, PathBuf};
use std::time::SystemTime;

use rusqlite::Connection;
use sha2::{Digest, Sha256};

use super::fault::BackupFault;
use super::list::{List, MOST_BYTES, Piece, is_own_path, stamp};
use super::lists::{self, Lists};
use super::packed::Packed;
use super::{place, source, tar};
use crate::model::device::DeviceDecision;
use crate::model::hex;
use crate::model::line::Line;
use crate::model::time::Moment;
use crate::model::workshop::Workshop;
use crate::store::fault::StoreFault;
use crate::store::folders::{CopyFault, with_ending};
use crate::store::ledger;
use crate::store::open::{DATABASE, OWN_FOLDERS, Store};
use crate::store::uploads::INCOMING;
use crate::store::{devices, folders, foreign_schema, keys, migrations, names, private, staging, workshop};

/// A generation to be read. Its files stay where they are; the database is read in a copy.
#[derive(Debug)]
pub struct Generation {
    /// Its time; none of a bare copy.
    pub made_at: Option<Moment>,
    /// The data folder it is of; none of a bare copy.
    pub data: Option<String>,
    connection: Option<Connection>,
    copy: Scratch,
    from: Origin,
    /// The workshop's own files: path in the data folder, and what proves it; nothing in a bare copy.
    own: Vec<(String, Option<Piece>)>,
    damaged: Vec<String>,
}

/// A folder that goes with whoever holds it.
#[derive(Debug)]
struct Scratch(PathBuf);

impl Scratch {
    fn new(data: &Path) -> Result<Self, StoreFault> {
        let folder = data.join(INCOMING).join(names::RESTORE);
        private::folder(&folder).map_err(StoreFault::file)?;
        Ok(Self(folder))
    }

    fn database(&self) -> PathBuf {
        self.0.join(DATABASE)
    }
}

impl Drop for Scratch {
    fn drop(&mut self) {
        // Cleared at the next start if it cannot be now.
        let _ = fs::remove_dir_all(&self.0);
        let _ = self.0.parent().map(fs::remove_dir);
    }
}

/// Where photos and own files stand.
#[derive(Debug)]
enum Origin {
    /// In the store of a backup's folder.
    Store(PathBuf),
    /// In a bare copy, as a data folder has them.
    Bare(PathBuf),
    /// In a backup that is one file.
    Packed(Packed),
}

/// The generations of a backup, the latest last.
///
/// # Errors
/// [`BackupFault::NotABackup`], [`BackupFault::Damaged`], or what the file system says.
pub fn generations(root: &Path) -> Result<Lists, StoreFault> {
    if place::is_marked(root)? { lists::lists(root) } else { Err(BackupFault::NotABackup.into()) }
}

/// The generation of a time, given as RFC 3339 or the beginning of it; the latest that fits. Without a time,
/// the latest of all. With it, the lists that are damaged.
fn chosen(root: &Path, when: Option<&str>) -> Result<(List, Vec<String>), StoreFault> {
    let wanted = when.map(|when| when.trim().replace([':', '.'], "-").replace(' ', "T"));
    let fits = |list: &List| wanted.as_ref().is_none_or(|when| stamp(list.made_at).starts_with(when));
    let Lists { sound, damaged } = generations(root)?;
    let found = sound.into_iter().rfind(fits).map(|list| (list, damaged));
    found.ok_or_else(|| BackupFault::NoGeneration.into())
}

impl Store {
    /// Opens a generation of a backup, or the bare copy in a folder that an earlier program made.
    ///
    /// # Errors
    /// [`BackupFault`], [`StoreFault::Newer`], or what the file system says.
    pub fn generation(&self, root: &Path, when: Option<&str>) -> Result<Generation, StoreFault> {
        let copy = Scratch::new(&self.folder)?;
        let marked = place::is_marked(root).map_err(as_missing)?;
        let is_bare = when.is_none() && root.join(DATABASE).is_file();
        let mut generation = match marked.then(|| chosen(root, when)) {
            None if is_bare => bare(root, copy)?,
            None => return Err(BackupFault::NotABackup.into()),
            // The first backup in a bare copy's place was cut off: the copy still stands.
            Some(Err(StoreFault::Backup(BackupFault::NoGeneration))) if is_bare => bare(root, copy)?,
            Some(found) => {
                let (list, damaged) = found?;
                of_list(root, copy, (&list, damaged))?
            }
        };
        generation.open()?;
        Ok(generation)
    }

    /// Opens a backup that is one file and was sent in pieces.
    ///
    /// # Errors
    /// [`StoreFault::UploadUnknown`], or as [`Store::packed_generation`].
    pub fn packed_upload(&self, upload: &str) -> Result<Generation, StoreFault> {
        self.upload_file(upload)?;
        self.packed_generation(&self.upload_path(upload)?)
    }

    /// Whether an upload is a packed file, of whatever kind and in whatever state.
    ///
    /// # Errors
    /// [`StoreFault::UploadUnknown`], or what the file system says.
    pub fn is_packed(&self, upload: &str) -> Result<bool, StoreFault> {
        let mut head = Vec::new();
        self.upload_file(upload)?.take(tar::BLOCK).read_to_end(&mut head).map_err(StoreFault::file)?;
        Ok(tar::is_one(&head))
    }

    /// Opens a backup that is one file.
    ///
    /// # Errors
    /// [`BackupFault`], [`StoreFault::Newer`], or what the file system says.
    pub fn packed_generation(&self, file: &Path) -> Result<Generation, StoreFault> {
        let packed = Packed::open(file)?;
        let copy = Scratch::new(&self.folder)?;
        packed.copy_database(&copy.database())?;
        let own = packed.list.own.iter().map(|(path, piece)| (path.clone(), Some(piece.clone()))).collect();
        let (made_at, data) = (Some(packed.list.made_at), Some(packed.list.data.clone()));
        let mut generation = Generation {
            made_at,
            data,
            connection: None,
            copy,
            from: Origin::Packed(packed),
            own,
            damaged: Vec::new(),
        };
        generation.open()?;
        Ok(generation)
    }
}

fn as_missing(fault: StoreFault) -> StoreFault {
    match fault {
        StoreFault::File(error) if error.kind() == io::ErrorKind::NotFound => BackupFault::NotABackup.into(),
        fault => fault,
    }
}

fn of_list(
    root: &Path,
    copy: Scratch,
    (list, damaged_lists): (&List, Vec<String>),
) -> Result<Generation, StoreFault> {
    let object = list.database.object("db");
    let damaged = || BackupFault::Damaged(object.name.clone());
    let from = place::object_path(root, &object.name);
    let copied = folders::copy_hashed(&from, &copy.database()).map_err(|fault| match fault {
        CopyFault::Read(fault) if fault.kind() == io::ErrorKind::NotFound => damaged().into(),
        CopyFault::Read(_) => BackupFault::Unread(object.name.clone()).into(),
        CopyFault::Write(fault) => StoreFault::file(fault),
    })?;
    let own = list.own.iter().map(|(path, piece)| (path.clone(), Some(piece.clone()))).collect();
    let (made_at, from) = (Some(list.made_at), Origin::Store(root.to_owned()));
    let data = Some(list.data.clone());
    let generation = Generation { made_at, data, connection: None, copy, from, own, damaged: damaged_lists };
    if copied == (list.database.sha256.clone(), list.database.bytes) {
        Ok(generation)
    } else {
        Err(damaged().into())
    }
}

fn bare(root: &Path, copy: Scratch) -> Result<Generation, StoreFault> {
    let stood = || ["", "-wal"].map(|end| state(&with_ending(&root.join(DATABASE), end)));
    let before = stood();
    for end in ["", "-wal"] {
        // What was written last stands in the log alone until it is closed.
        let (from, to) = (with_ending(&root.join(DATABASE), end), with_ending(&copy.database(), end));
        match folders::copy_hashed(&from, &to) {
            Ok(_) => {}
            Err(CopyFault::Read(fault)) if fault.kind() == io::ErrorKind::NotFound && !end.is_empty() => {}
            Err(CopyFault::Read(fault) | CopyFault::Write(fault)) => return Err(StoreFault::file(fault)),
        }
    }
    if stood() != before {
        return Err(StoreFault::ReadWhileWritten);
    }
    let mut own = Vec::new();
    for folder in OWN_FOLDERS {
        let Ok(files) = fs::read_dir(root.join(folder)) else { continue };
        for file in files.flatten() {
            let path = format!("{folder}/{}", file.file_name().to_string_lossy());
            let plain = file.metadata().is_ok_and(|kind| kind.is_file());
            if plain && is_own_path(&path) {
                own.push((path, None));
            }
        }
    }
    let (from, damaged) = (Origin::Bare(root.to_owned()), Vec::new());
    Ok(Generation { made_at: None, data: None, connection: None, copy, from, own, damaged })
}

/// By what it shows that a file was written to.
fn state(path: &Path) -> Option<(u64, SystemTime)> {
    let file = fs::metadata(path).ok()?;
    Some((file.len(), file.modified().ok()?))
}

impl Generation {
    fn open(&mut self) -> Result<(), StoreFault> {
        let path = self.copy.database();
        source::check(&path).map_err(damaged)?;
        let bytes = fs::metadata(&path).map_err(StoreFault::file)?.len();
        let mut connection = Connection::open(&path).map_err(StoreFault::sql("open a backup"))?;
        migrations::check_known(&connection).map_err(damaged)?;
        foreign_schema::guard(&mut connection, bytes).map_err(damaged)?;
        if !foreign_schema::is_whole(&connection).map_err(damaged)? {
            return Err(StoreFault::Foreign);
        }
        // Known to be ours; today's steps have to write.
        connection.pragma_update(None, "query_only", false).map_err(StoreFault::sql("open a backup"))?;
        migrations::migrate(&mut connection).map_err(damaged)?;
        self.connection = Some(connection);
        Ok(())
    }

    fn read<T>(
        &self,
        doing: &'static str,
        read: impl FnOnce(&Connection) -> Result<T, rusqlite::Error>,
    ) -> Result<T, StoreFault> {
        let connection = self.connection.as_ref().ok_or(StoreFault::Damaged)?;
        read(connection).map_err(|fault| damaged(StoreFault::sql(doing)(fault)))
    }

    /// Every visit in it, in the order in which they were first written: which came before which is kept, whatever the
    /// clocks said. One whose id rotted is among them, and has no lines.
    ///
    /// # Errors
    /// [`BackupFault::Damaged`], or what SQLite says.
    pub fn visits(&self) -> Result<Vec<String>, StoreFault> {
        self.read("read a backup's visits", |connection| {
            let mut statement =
                connection.prepare("SELECT visit FROM entry GROUP BY visit ORDER BY min(id)")?;
            statement.query_map([], |row| ledger::text(row, "visit"))?.collect()
        })
    }

    /// A visit's lines, by device and place.
    ///
    /// # Errors
    /// [`BackupFault::Damaged`], or what SQLite says.
    pub fn lines(&self, visit: &str) -> Result<Vec<Line>, StoreFault> {
        let mut lines = self.read("read a backup's visit", |connection| ledger::read(connection, visit))?;
        lines.sort_by(|a, b| (&a.device, a.seq).cmp(&(&b.device, b.seq)));
        Ok(lines)
    }

    /// Visits that were erased there, and when.
    ///
    /// # Errors
    /// [`BackupFault::Damaged`], or what SQLite says.
    pub fn erased(&self) -> Result<Vec<(String, Moment)>, StoreFault> {
        self.read("read a backup's tombstones", |connection| {
            let mut statement = connection.prepare("SELECT visit, at FROM erased ORDER BY visit")?;
            statement.query_map([], |row| Ok((row.get("visit")?, Moment(row.get("at")?))))?.collect()
        })
    }

    /// The technician's name and the choices of the screens.
    ///
    /// # Errors
    /// [`BackupFault::Damaged`], or what SQLite says.
    pub fn settings(&self) -> Result<BTreeMap<String, String>, StoreFault> {
        let mut settings: BTreeMap<String, String> = self.read("read a backup's settings", |connection| {
            let mut statement = connection.prepare("SELECT name, value FROM setting")?;
            statement.query_map([], |row| Ok((row.get("name")?, row.get("value")?)))?.collect()
        })?;
        settings.retain(|name, _| !keys::OWN.contains(&name.as_str()) && name != staging::PLACED);
        Ok(settings)
    }

    /// What was decided there about devices, the first first.
    ///
    /// # Errors
    /// [`BackupFault::Damaged`], or what SQLite says.
    pub fn decisions(&self) -> Result<Vec<DeviceDecision>, StoreFault> {
        self.read("read what was decided in a backup", devices::decisions)
    }

    /// Every version of the knowledge that is kept there, with its texts.
    ///
    /// # Errors
    /// [`BackupFault::Damaged`], or what SQLite says.
    pub fn knowledge(&self) -> Result<Vec<(String, String)>, StoreFault> {
        self.read("read a backup's knowledge", |connection| {
            let mut statement =
                connection.prepare("SELECT version, texts FROM knowledge ORDER BY version")?;
            statement.query_map([], |row| Ok((row.get("version")?, row.get("texts")?)))?.collect()
        })
    }

    /// The workshop's particulars.
    ///
    /// # Errors
    /// [`BackupFault::Damaged`], or what SQLite says.
    pub fn workshop(&self) -> Result<Workshop, StoreFault> {
        self.read("read a backup's workshop", workshop::read)
    }

    /// The workshop's own files: path in the data folder and bytes; nothing where one is missing or damaged. Of a
    /// generation each is proven.
    pub fn own_files(&self) -> Vec<(String, Option<Vec<u8>>)> {
        let read = |(path, piece): &(String, Option<Piece>)| {
            let bytes = match (piece, &self.from) {
                (Some(piece), from) => from.object(&piece.object("toml").name),
                (None, Origin::Bare(root)) => bounded(&root.join(path)),
                (None, _) => None,
            };
            (path.clone(), bytes)
        };
        self.own.iter().map(read).collect()
    }

    /// Lists of the same backup that are damaged: there may be a later generation.
    pub fn damaged_lists(&self) -> &[String] {
        &self.damaged
    }

    /// A photo, if it is there and is what its name says.
    pub fn photo(&self, sha256: &str) -> Option<Vec<u8>> {
        self.from.object(&format!("{sha256}.jpg"))
    }
}

impl Origin {
    /// A file by its hash and kind, proven.
    fn object(&self, name: &str) -> Option<Vec<u8>> {
        let proven = |bytes: &Vec<u8>| name.starts_with(&hex::encode(&Sha256::digest(bytes)));
        match self {
            Self::Store(root) => bounded(&place::object_path(root, name)).filter(proven),
            Self::Bare(root) => bounded(&root.join("photos").join(name)).filter(proven),
            Self::Packed(packed) => packed.object(name),
        }
    }
}

/// Damage in a backup's database is the backup's, not that of the data here, and so is its version.
fn damaged(fault: StoreFault) -> StoreFault {
    match fault {
        StoreFault::Damaged => BackupFault::Damaged(DATABASE.to_owned()).into(),
        StoreFault::Newer { .. } => BackupFault::Newer.into(),
        fault => fault,
    }
}

/// A file of no more than the greatest length; no link is followed.
fn bounded(path: &Path) -> Option<Vec<u8>> {
    let kind = fs::symlink_metadata(path).ok()?;
    if kind.is_file() && kind.len() <= MOST_BYTES { fs::read(path).ok() } else { None }
}
