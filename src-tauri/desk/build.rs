//! Writes the table of UI files that `serve::files` compiles in.
//!
//! The UI is built by npm, not from here. Without `ui/dist` the folder is made empty, so that the
//! core and the command line build with no Node; `steady serve` then says how to build the UI.

use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::{env, fs, io};

fn main() -> io::Result<()> {
    let dist = PathBuf::from(env::var_os("CARGO_MANIFEST_DIR").unwrap_or_default()).join("../../ui/dist");
    fs::create_dir_all(&dist)?;
    let dist = dist.canonicalize()?;
    let mut files = Vec::new();
    collect(&dist, &mut files)?;
    files.sort();

    let mut table = String::from("&[\n");
    for file in &files {
        let name = file.strip_prefix(&dist).unwrap_or(file).to_string_lossy().replace('\\', "/");
        let _ = writeln!(table, "    ({:?}, include_bytes!({:?}).as_slice()),", format!("/{name}"), file);
    }
    table.push(']');

    let out = PathBuf::from(env::var_os("OUT_DIR").unwrap_or_default());
    fs::write(out.join("ui_files.rs"), table)?;
    // A folder is watched with everything in it.
    println!("cargo::rerun-if-changed={}", dist.display());
    Ok(())
}

fn collect(folder: &Path, files: &mut Vec<PathBuf>) -> io::Result<()> {
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        if path.is_dir() {
            collect(&path, files)?;
        } else {
            files.push(path);
        }
    }
    Ok(())
}
