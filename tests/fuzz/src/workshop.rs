//! A workshop in a scratch folder, with a fixed clock and a press that prints nothing.

use std::path::Path;
use std::sync::{Arc, OnceLock};

use steady_core::app::press::{Paper, Press, PressError, PrintRun};
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::app::{Setup, Steady};
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
