//! Prepares what Tauri compiles in: the configuration, what the window may do, and the UI's files.
//!
//! Without `ui/dist` the folder is made empty, so that lints and tests of the shell need no Node.

fn main() -> std::io::Result<()> {
    std::fs::create_dir_all("../ui/dist")?;
    tauri_build::build();
    Ok(())
}
