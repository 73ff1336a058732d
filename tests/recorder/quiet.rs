//! A data folder opened with a press that prints nothing: what the programs here start from.

use std::path::PathBuf;
use std::sync::Arc;

use steady_core::app::failure::Failure;
use steady_core::app::press::{Paper, Press, PressError, PrintRun};
use steady_core::app::{Setup, Steady};
use steady_core::model::time::Moment;

struct NoPress;

impl Press for NoPress {
    fn print(&self, _paper: Paper<'_>, _run: &PrintRun<'_>) -> Result<Vec<u8>, PressError> {
        Ok(Vec::new())
    }
}

/// Opens the folder, or stops the program.
#[allow(dead_code, reason = "each program uses its share")]
pub fn open(data_dir: PathBuf) -> Steady {
    opened(data_dir).unwrap()
}

/// Opens the folder, or says why not.
#[allow(dead_code, reason = "each program uses its share")]
pub fn opened(data_dir: PathBuf) -> Result<Steady, Failure> {
    Steady::open(Setup { data_dir, press: Arc::new(NoPress), clock: Moment::now })
}
