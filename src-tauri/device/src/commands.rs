//! The commands: unpack, one call, hand back a code where it came to nothing.

use std::sync::Arc;

use tauri::ipc::Invoke;
use tauri::{Runtime, State};

use crate::phone::{Feel, Insets, Phone};

type Device<'a> = State<'a, Arc<dyn Phone>>;

/// Every command of the plugin.
pub fn handler<R: Runtime>() -> impl Fn(Invoke<R>) -> bool + Send + Sync + 'static {
    tauri::generate_handler![feel, stay_awake, insets, leave]
}

#[tauri::command(async)]
fn feel(phone: Device<'_>, feel: Feel) -> Result<(), String> {
    phone.feel(feel).map_err(|fault| fault.to_string())
}

#[tauri::command(async)]
fn stay_awake(phone: Device<'_>, on: bool) -> Result<(), String> {
    phone.stay_awake(on).map_err(|fault| fault.to_string())
}

#[tauri::command(async)]
fn insets(phone: Device<'_>) -> Result<Insets, String> {
    phone.insets().map_err(|fault| fault.to_string())
}

#[tauri::command(async)]
fn leave(phone: Device<'_>) -> Result<(), String> {
    phone.leave().map_err(|fault| fault.to_string())
}
