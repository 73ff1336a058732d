//! Debian packages: what is missing is installed where it may be, and named where it may not.

use std::process::Stdio;

use crate::{Outcome, say, start};

/// To build and open the app's window.
pub const WINDOW: &[&str] = &["libwebkit2gtk-4.1-dev", "librsvg2-dev", "pkg-config"];

/// For the tests, beside the window's: browsers and their drivers, a display, readers of PDF, letters, and what ends a
/// process between two file operations.
pub const TESTS: &[&str] =
    &["chromium", "webkit2gtk-driver", "xvfb", "xauth", "poppler-utils", "qpdf", "fonts-noto-core", "strace"];

/// Readers of PDF alone.
pub const PAPERS: &[&str] = &["poppler-utils", "qpdf"];
/// To type-check for phones: a compiler with its library's source, and a C compiler for other machines.
pub const PHONES: &[&str] = &["rustc-web", "cargo-web", "rust-web-src", "clang", "llvm"];

/// To draw the icons.
pub const ICONS: &[&str] = &["librsvg2-bin", "optipng"];

/// Sees to it that the packages are there.
pub fn ensure(packages: &[&str]) -> Outcome<()> {
    if start::asked("dpkg-query", &["--version"]).is_none() {
        say::line(&format!("Not a Debian system. Needed are its counterparts of: {}", packages.join(" ")));
        return Ok(());
    }
    let missing: Vec<&str> = packages.iter().copied().filter(|package| !is_installed(package)).collect();
    if missing.is_empty() {
        return Ok(());
    }
    let list = missing.join(" ");
    if start::asked("id", &["-u"]).as_deref() != Some("0") {
        return Err(format!(
            "these Debian packages are missing: {list}\ninstall them with: sudo apt-get install {list}"
        ));
    }
    start::to_the_end(start::program("apt-get", &["update", "-qq"]).stdin(Stdio::null()))?;
    let words = [&["install", "-y", "-qq", "--no-install-recommends"], missing.as_slice()].concat();
    let mut install = start::program("apt-get", &words);
    install.env("DEBIAN_FRONTEND", "noninteractive").stdin(Stdio::null());
    start::to_the_end(&mut install)
        .map_err(|reason| format!("{reason}\ntry yourself: apt-get update && apt-get install {list}"))
}

fn is_installed(package: &str) -> bool {
    start::asked("dpkg-query", &["--show", "--showformat=${db:Status-Status}", package])
        .is_some_and(|status| status == "installed")
}
