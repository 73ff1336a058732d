//! A workshop in a scratch folder, with a fixed clock and a press that prints nothing.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::{Arc, OnceLock};

use sha2::{Digest, Sha256};
use steady_core::app::press::{Paper, Press, PressError, PrintRun};
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::app::{Setup, Steady};
use steady_core::model::hex;
use steady_core::model::time::Moment;

struct NoPress;

impl Press for NoPress {
    fn print(&self, _paper: Paper<'_>, _run: &PrintRun<'_>) -> Result<Vec<u8>, PressError> {
        Ok(Vec::new())
    }
}

/// The workshop and where its data lies.
pub struct Workshop {
    /// The way in.
    pub steady: Steady,
    folder: tempfile::TempDir,
}

impl Workshop {
    /// A new one, with a technician at work.
    pub fn open() -> Self {
        let folder = tempfile::tempdir().expect("a scratch folder can be made");
        let data_dir = folder.path().join("data");
        let clock = || Moment(1_795_599_000_000);
        let steady = Steady::open(Setup { data_dir, press: Arc::new(NoPress), clock });
        let steady = steady.unwrap_or_else(|failure| panic!("{failure:?}"));
        let name = "Kim Demo".to_owned();
        steady.handle(Request::SetTechnician { name }).unwrap_or_else(|failure| panic!("{failure:?}"));
        Self { steady, folder }
    }

    /// The folder around the data folder.
    #[allow(dead_code, reason = "each target uses its share")]
    pub fn folder(&self) -> &Path {
        self.folder.path()
    }

    /// Every file of the data folder but the database and its log, by its path there, with its SHA-256.
    #[allow(dead_code, reason = "each target uses its share")]
    pub fn files(&self) -> BTreeMap<PathBuf, String> {
        let data = self.folder.path().join("data");
        let (mut found, mut folders) = (BTreeMap::new(), vec![data.clone()]);
        while let Some(folder) = folders.pop() {
            for file in fs::read_dir(folder).expect("the data folder can be read").flatten() {
                let (path, name) = (file.path(), file.file_name());
                if path.is_dir() {
                    folders.push(path);
                } else if !name.to_string_lossy().starts_with("steady.db") {
                    let sha256 = hex::encode(&Sha256::digest(fs::read(&path).expect("a file can be read")));
                    found.insert(path.strip_prefix(&data).unwrap_or(&path).to_owned(), sha256);
                }
            }
        }
        found
    }

    /// How many visits there are.
    #[allow(dead_code, reason = "each target uses its share")]
    pub fn visits(&self) -> u64 {
        match self.steady.handle(Request::Home) {
            Ok(Response::Home(home)) => home.visits,
            other => panic!("no home but {other:?}"),
        }
    }
}

/// One for the whole run: opening one takes longer than asking it.
#[allow(dead_code, reason = "each target uses its share")]
pub fn shared() -> &'static Workshop {
    static SHARED: OnceLock<Workshop> = OnceLock::new();
    SHARED.get_or_init(Workshop::open)
}
