//! Where things lie: the repository's folders and the programs that cargo builds.

use std::env;
use std::path::{Path, PathBuf};

use crate::Outcome;

/// The repository's top folder. Cargo says where it runs xtask from; a clone that was moved, or that
/// shares its target folder with another, finds itself all the same.
pub fn top() -> PathBuf {
    let here =
        env::var_os("CARGO_MANIFEST_DIR").map_or_else(|| env!("CARGO_MANIFEST_DIR").into(), PathBuf::from);
    here.ancestors().nth(2).map_or(here.clone(), Path::to_owned)
}

/// The demo workshop's data folder.
pub fn demo() -> PathBuf {
    top().join("target/demo")
}

/// A program of this workspace. Cargo puts it beside this one, whatever the target folder is.
pub fn program(name: &str) -> Outcome<PathBuf> {
    let own = env::current_exe().map_err(|error| format!("xtask does not know where it is: {error}"))?;
    Ok(own.with_file_name(format!("{name}{}", env::consts::EXE_SUFFIX)))
}
