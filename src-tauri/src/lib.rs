//! The phone app's shell: a window, one command and one protocol. Knows nothing of the trade.
//!
//! [`house`] opens the core, [`ask`] hands it the window's requests, [`photo`] shows it kept photos.
//! The same screens reach the same core through a browser by way of the crate `steady` (`desk`).

mod ask;
mod house;
mod photo;

use std::io::Write as _;

/// Opens the window and runs until it is closed.
#[cfg_attr(mobile, tauri::mobile_entry_point)]
pub fn run() {
    if !has_display() {
        return refuse("no-display: there is no display for a window");
    }
    let app = tauri::Builder::default()
        .plugin(tauri_plugin_device::init())
        .register_asynchronous_uri_scheme_protocol(photo::SCHEME, photo::answer)
        .invoke_handler(tauri::generate_handler![ask::ask]);
    if app.run(tauri::generate_context!()).is_err() {
        refuse("no-window: the window cannot be opened");
    }
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
