//! Papers and handover files on their way out, by the id that the core gave them. On a phone a file goes to the
//! system's sheet without crossing the page; a desktop's window is given the bytes as they are, to save them.

use std::io::Read as _;

use steady_core::app::failure::Failure;
use tauri::ipc::Response;
use tauri::{AppHandle, Runtime};

use crate::house;

/// The bytes of a file, for a window that saves it.
#[tauri::command]
pub async fn file_bytes<R: Runtime>(app: AppHandle<R>, file: String) -> Result<Response, Failure> {
    house::waiting(move || {
        let mut bytes = Vec::new();
        let mut source = house::steady(&app)?.outgoing(&file)?;
        source.read_to_end(&mut bytes).map_err(|_| house::internal())?;
        Ok(Response::new(bytes))
    })
    .await
}

/// Opens the phone's sheet for a file, under this name.
#[tauri::command]
pub async fn share_file<R: Runtime>(
    app: AppHandle<R>,
    file: String,
    name: String,
    mime: String,
) -> Result<(), Failure> {
    house::waiting(move || {
        let mut source = house::steady(&app)?.outgoing(&file)?;
        tauri_plugin_device::share(&app, &mut source, &name, &mime).map_err(|_| house::internal())
    })
    .await
}
