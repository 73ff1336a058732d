//! Opens the core for a command: which folder, which press, which clock.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use steady_core::app::failure::Failure;
use steady_core::app::{Setup, Steady};
use steady_core::model::time::Moment;
use steady_papers::press;

use crate::fault;

/// The phone app's identifier, so that desk and app on one computer share their visits.
const APP_FOLDER: &str = "app.steady.bay";

/// Opens the core on a data folder.
pub fn open(data_dir: &Path) -> Result<Steady, Failure> {
    let press = Arc::new(press().map_err(|_| fault::internal())?);
    Steady::open(Setup { data_dir: data_dir.to_owned(), press, clock: Moment::now })
}

/// The folder given with `--data`, or the platform's.
pub fn data_dir(given: Option<&Path>) -> Result<PathBuf, Failure> {
    given.map(Path::to_owned).or_else(|| dirs::data_dir().map(|data| data.join(APP_FOLDER))).ok_or_else(
        || {
            fault::failure(
                "no-data-folder",
                "this account has no folder for data",
                "Name a folder with --data DIR.",
            )
        },
    )
}
