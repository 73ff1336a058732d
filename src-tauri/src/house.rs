//! Opens the core for the window: which folder, which press, which clock.

use std::path::PathBuf;
use std::sync::{Arc, Mutex, PoisonError};

use steady_core::app::failure::Failure;
use steady_core::app::{Setup, Steady};
use steady_core::model::time::Moment;
use tauri::{AppHandle, Manager as _, Runtime};

/// Outlives the window: on Android the entry point may run again in the same process, and the data
/// folder would be found in use by ourselves.
static OPENED: Mutex<Option<Arc<Steady>>> = Mutex::new(None);

/// The open core. One that could not be opened is tried again, so that the screen's "try again" does so.
pub fn steady<R: Runtime>(app: &AppHandle<R>) -> Result<Arc<Steady>, Failure> {
    let mut opened = OPENED.lock().unwrap_or_else(PoisonError::into_inner);
    if let Some(steady) = opened.as_ref() {
        return Ok(Arc::clone(steady));
    }
    let steady = Arc::new(open(app)?);
    *opened = Some(Arc::clone(&steady));
    Ok(steady)
}

fn open<R: Runtime>(app: &AppHandle<R>) -> Result<Steady, Failure> {
    let press =
        steady_papers::press().map_err(|_| failure("internal", "the papers' fonts cannot be read"))?;
    Steady::open(Setup { data_dir: data_dir(app)?, press: Arc::new(press), clock: Moment::now })
}

/// The platform's folder for this app; a debug build may be sent elsewhere, to the demo for one.
fn data_dir<R: Runtime>(app: &AppHandle<R>) -> Result<PathBuf, Failure> {
    let elsewhere = std::env::var_os("STEADY_DATA").filter(|_| cfg!(debug_assertions));
    if let Some(folder) = elsewhere {
        return Ok(folder.into());
    }
    app.path().app_data_dir().map_err(|_| failure("no-data-folder", "this account has no folder for data"))
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
