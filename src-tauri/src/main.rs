//! The app on a desktop. A phone starts the library instead.
#![cfg_attr(not(debug_assertions), windows_subsystem = "windows")]

fn main() {
    steady_app::run();
}
