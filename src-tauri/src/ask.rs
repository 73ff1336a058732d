//! The one command: a request of the screens in, the core's response or failure out.

use serde_json::Value;
use tauri::ipc::Response;
use tauri::{AppHandle, Runtime};

use crate::house::{self, failure};

/// Hands one request to the core, on a thread that may wait for the disk.
#[tauri::command]
pub async fn ask<R: Runtime>(app: AppHandle<R>, request: Value) -> Result<Response, Value> {
    let asked = move || match house::steady(&app) {
        Ok(steady) => steady.handle_json(&request.to_string()),
        Err(failure) => Err(serde_json::to_string(&failure).unwrap_or_default()),
    };
    let internal = || serde_json::to_value(failure("internal", "something went wrong inside Steady"));
    match tauri::async_runtime::spawn_blocking(asked).await {
        // Already written as JSON, and passed on as it is.
        Ok(Ok(response)) => Ok(Response::new(response)),
        Ok(Err(failure)) => Err(serde_json::from_str(&failure).unwrap_or_default()),
        Err(_) => Err(internal().unwrap_or_default()),
    }
}
