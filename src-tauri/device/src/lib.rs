//! What only the phone itself can do: its share sheet, its motor, a screen that stays lit, safe areas, and
//! going to the background. Knows nothing of visits; `ui/src/device.ts` is the one that asks.
//!
//! [`Phone`] is the whole face of the device. On Android and iOS it is Kotlin or Swift (`native`), on a desktop
//! a device that has none of this (`absent`).

#[cfg(desktop)]
mod absent;
mod commands;
#[cfg(mobile)]
mod native;
mod outbox;
mod phone;

use std::io::Read;
use std::path::Path;
use std::sync::Arc;

use tauri::plugin::{Builder, TauriPlugin};
use tauri::{AppHandle, Manager as _, Runtime};

pub use outbox::{Outbox, OutboxFault};
pub use phone::{Feel, Insets, Phone, PhoneFault};

/// The plugin's name, before the bar in a command's name.
pub const NAME: &str = "device";

/// The folder within the app's cache that files wait in to be shared. The app's `FileProvider` opens it and no
/// other of the cache.
pub const OUTBOX: &str = "outbox";

/// The plugin on this platform's own device.
pub fn init<R: Runtime>() -> TauriPlugin<R> {
    Builder::new(NAME)
        .invoke_handler(commands::handler())
        .setup(|app, api| {
            #[cfg(mobile)]
            let phone = native::phone(api)?;
            #[cfg(desktop)]
            let phone = {
                let _ = api;
                absent::phone()
            };
            app.manage(outbox(&app.path().app_cache_dir()?));
            app.manage(phone);
            Ok(())
        })
        .build()
}

/// Opens the phone's sheet for a file of this plain name, with these bytes.
///
/// # Errors
/// [`ShareFault`].
pub fn share<R: Runtime>(
    app: &AppHandle<R>,
    bytes: &mut dyn Read,
    name: &str,
    mime: &str,
) -> Result<(), ShareFault> {
    let file = app.state::<Outbox>().put(name, bytes)?;
    Ok(app.state::<Arc<dyn Phone>>().share(&file, mime)?)
}

/// Forgets every file that waits to be shared or was.
pub fn forget_shared<R: Runtime>(app: &AppHandle<R>) {
    app.state::<Outbox>().clear();
}

/// Why a file did not get as far as the sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum ShareFault {
    /// It was not put where the sheet finds it.
    #[error("outbox: {0}")]
    Outbox(#[from] OutboxFault),
    /// The sheet did not open.
    #[error("phone: {0}")]
    Phone(#[from] PhoneFault),
}

fn outbox(cache: &Path) -> Outbox {
    let outbox = Outbox::new(cache.join(OUTBOX));
    outbox.clear();
    outbox
}
