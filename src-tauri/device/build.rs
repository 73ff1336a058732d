//! Tells Tauri which commands this plugin has and where its Kotlin and Swift lie.

const COMMANDS: &[&str] = &["feel", "stay_awake", "insets", "leave"];

fn main() {
    tauri_plugin::Builder::new(COMMANDS).android_path("android").ios_path("ios").build();
}
