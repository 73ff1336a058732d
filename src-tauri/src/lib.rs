//! The phone app's shell: a window, one command and one protocol. Knows nothing of the trade.
//!
//! [`house`] opens the core, [`ask`] hands it the window's requests, [`photo`] shows it kept photos, [`outgoing`]
//! hands out papers and files, [`camera`] finds what Android's camera left behind, [`stay`] keeps the window on the app's own pages; what else only a
//! phone can do is the plugin `device`. The same screens reach the same core through a browser by way of the
//! crate `steady` (`desk`).

#![cfg_attr(mobile, expect(unsafe_code, reason = "Tauri's entry point for phones is an exported symbol"))]

mod ask;
mod camera;
mod house;
mod outgoing;
mod photo;
mod stay;

use std::io::Write as _;

use tauri::{Builder, Runtime};

/// Opens the window and runs until it is closed.
#[cfg_attr(mobile, tauri::mobile_entry_point)]
pub fn run() {
    if !has_display() {
        return refuse("no-display: there is no display for a window");
    }
    if shell(tauri::Builder::default()).run(tauri::generate_context!()).is_err() {
        refuse("no-window: the window cannot be opened");
    }
}

/// Everything but the window itself.
fn shell<R: Runtime>(builder: Builder<R>) -> Builder<R> {
    builder
        .plugin(tauri_plugin_device::init())
        .plugin(stay::init())
        .register_asynchronous_uri_scheme_protocol(photo::SCHEME, photo::answer)
        .invoke_handler(tauri::generate_handler![
            ask::ask,
            outgoing::file_bytes,
            outgoing::share_file,
            camera::shots,
            camera::adopt_shot,
            camera::forget_shot
        ])
}

/// GTK ends the process with a panic where it finds no display.
fn has_display() -> bool {
    !cfg!(target_os = "linux")
        || ["DISPLAY", "WAYLAND_DISPLAY"].iter().any(|name| std::env::var_os(name).is_some())
}

/// Says on standard error, the only place there is without a window, why there is none.
fn refuse(why: &str) {
    let _ = writeln!(
        std::io::stderr(),
        "{why}\nStart Steady from a desktop, or use `steady serve` and a browser."
    );
    std::process::exit(2);
}
