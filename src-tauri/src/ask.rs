//! The one command: a request of the screens in, the core's response or failure out.

use serde::Deserialize as _;
use serde_json::Value;
use steady_core::app::Steady;
use steady_core::app::failure::Failure;
use steady_core::app::request::Request;
use tauri::ipc::Response;
use tauri::{AppHandle, Runtime};

use crate::{camera, house};

/// Hands one request to the core, on a thread that may wait for the disk.
#[tauri::command]
pub async fn ask<R: Runtime>(app: AppHandle<R>, request: Value) -> Result<Response, Failure> {
    house::waiting(move || {
        let steady = house::steady(&app)?;
        let request = Request::deserialize(request).map_err(|_| Steady::unreadable())?;
        let erases = matches!(request, Request::Erase { .. });
        let reply = steady.handle(request)?;
        if erases {
            // Outside the data folder, what was erased may wait to be shared, and the camera may have a copy of its own.
            // Not before the core agreed: a wrong word erases nothing, and a photo there may be the only one.
            tauri_plugin_device::forget_shared(&app);
            camera::forget_old(&app);
        }
        // Written as JSON here, and passed on as it is.
        serde_json::to_string(&reply).map(Response::new).map_err(|_| house::internal())
    })
    .await
}
