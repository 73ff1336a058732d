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
    opened_once(|| open(app))
}

fn opened_once(open: impl FnOnce() -> Result<Steady, Failure>) -> Result<Arc<Steady>, Failure> {
    let mut opened = OPENED.lock().unwrap_or_else(PoisonError::into_inner);
    if let Some(steady) = opened.as_ref() {
        return Ok(Arc::clone(steady));
    }
    let steady = Arc::new(open()?);
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

/// Does something on a thread that may wait for the disk.
pub async fn waiting<T: Send + 'static>(
    work: impl FnOnce() -> Result<T, Failure> + Send + 'static,
) -> Result<T, Failure> {
    tauri::async_runtime::spawn_blocking(work).await.unwrap_or_else(|_| Err(internal()))
}

/// A fault of ours.
pub fn internal() -> Failure {
    failure("internal", "something went wrong inside Steady")
}

/// A failure of the shell itself.
pub fn failure(code: &str, message: &str) -> Failure {
    Failure {
        code: code.to_owned(),
        message: message.to_owned(),
        help: "Close Steady and start it again; if that does not help, install it anew. Visits stay."
            .to_owned(),
        field: None,
    }
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use steady_core::app::{Setup, Steady};
    use steady_core::model::time::Moment;

    use super::opened_once;

    /// As Android does when the activity is destroyed and made again in the same process.
    #[test]
    fn entry_point_may_run_twice_in_one_process() {
        let data = tempfile::tempdir().expect("a folder");
        let open = || {
            let press = Arc::new(steady_papers::press().expect("fonts"));
            Steady::open(Setup { data_dir: data.path().to_owned(), press, clock: Moment::now })
        };
        let started = || {
            let mut context = tauri::test::mock_context(tauri::test::noop_assets());
            context.config_mut().identifier = "app.steady.test".to_owned();
            let app = crate::shell(tauri::test::mock_builder()).build(context).expect("built");
            (app, opened_once(open).expect("the core"))
        };
        let (first_app, first) = started();
        assert_eq!(open().map(|_| ()).map_err(|failure| failure.code), Err("in-use".to_owned()));
        let (_second_app, second) = started();
        assert!(Arc::ptr_eq(&first, &second));
        drop(first_app);
        assert!(second.handle(steady_core::app::request::Request::Home).is_ok());
    }
}
