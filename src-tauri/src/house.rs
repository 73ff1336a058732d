//! Opens the core for the window: which folder, which press, which clock.

use std::path::PathBuf;
use std::sync::{Arc, OnceLock};

use steady_core::app::failure::Failure;
use steady_core::app::{Setup, Steady};
use steady_core::model::time::Moment;
use tauri::Runtime;
use tauri::path::PathResolver;

/// The core, or why it could not be opened; every request is then answered with that.
pub type House = Result<Arc<Steady>, Failure>;

/// Outlives the window: on Android the entry point may run again in the same process, and the data
/// folder would be found in use by ourselves.
static OPENED: OnceLock<Arc<Steady>> = OnceLock::new();

/// Opens the core, or hands out the one that is open.
pub fn open<R: Runtime>(paths: &PathResolver<R>) -> House {
    if let Some(steady) = OPENED.get() {
        return Ok(Arc::clone(steady));
    }
    let press =
        steady_papers::press().map_err(|_| failure("internal", "the papers' fonts cannot be read"))?;
    let setup = Setup { data_dir: data_dir(paths)?, press: Arc::new(press), clock: Moment::now };
    let steady = Arc::new(Steady::open(setup)?);
    Ok(Arc::clone(OPENED.get_or_init(|| steady)))
}

/// The platform's folder for this app; a debug build may be sent elsewhere, to the demo for one.
fn data_dir<R: Runtime>(paths: &PathResolver<R>) -> Result<PathBuf, Failure> {
    let elsewhere = std::env::var_os("STEADY_DATA").filter(|_| cfg!(debug_assertions));
    if let Some(folder) = elsewhere {
        return Ok(folder.into());
    }
    paths.app_data_dir().map_err(|_| failure("no-data-folder", "this account has no folder for data"))
}

/// A failure of the shell itself.
pub fn failure(code: &str, message: &str) -> Failure {
    Failure {
        code: code.to_owned(),
        message: message.to_owned(),
        help: "Close Steady and start it again; if that does not help, install it anew. Visits stay."
            .to_owned(),
    }
}
