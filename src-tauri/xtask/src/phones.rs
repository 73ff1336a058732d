//! `cargo xtask phones`: as much of the phones' builds as a Debian machine can do.
//!
//! Neither an Android nor an Apple toolchain can be had there, and rustup has no target for either. Debian's own
//! newest compiler comes with the source of the standard library, though, and with it every line of Rust can be
//! type-checked: the whole app for Android, the core for iOS, where Tauri wants Apple's tools. Nothing is linked.
//! The projects' other halves, manifests and keys and icons, are held to the code by the suite's `phone_project`.

use std::path::Path;
use std::process::Command;

use crate::tally::Tally;
use crate::{Outcome, debian, rooms, start};

/// Where Debian puts them; the machine's own compiler may be an older one.
const CARGO: &str = "/usr/bin/cargo";
const RUSTC: &str = "/usr/bin/rustc";
const LIBRARY: &str = "/usr/lib/rustlib/src/rust/library/std";

/// Runs the command.
pub fn run() -> Outcome<()> {
    packages()?;
    let tests = ["test", "--workspace", "--test", "suite", "phone_project"];
    start::counted(&mut start::cargo(&tests), &mut Tally::default())?;
    start::to_the_end(&mut android())?;
    start::to_the_end(&mut ios())
}

/// Sees to it that the compiler, its library's source and a C compiler for another machine are there.
pub fn packages() -> Outcome<()> {
    debian::ensure(debian::PHONES)?;
    let missing: Vec<&str> =
        [CARGO, RUSTC, LIBRARY].into_iter().filter(|path| !Path::new(path).exists()).collect();
    if missing.is_empty() {
        Ok(())
    } else {
        Err(format!(
            "the phones' type check needs {}, of Debian's {}",
            missing.join(" and "),
            debian::PHONES.join(", ")
        ))
    }
}

/// The whole app, as it is built for an Android phone.
pub fn android() -> Command {
    let mut check = checker("aarch64-linux-android", "steady-app");
    // Where Tauri's Kotlin lies in the app; its build would say so.
    check.env("WRY_ANDROID_PACKAGE", "app.steady.bay").env("WRY_ANDROID_LIBRARY", "steady_app");
    // The typesetter's stack switching is a page of assembler; 26 is the oldest Android that Steady runs on.
    check
        .env("CC_aarch64_linux_android", "clang")
        .env("AR_aarch64_linux_android", "llvm-ar")
        .env("CFLAGS_aarch64_linux_android", "--target=aarch64-linux-android26");
    check
}

/// The core, as it is built for an iPhone.
pub fn ios() -> Command {
    checker("aarch64-apple-ios", "steady-core")
}

/// A type check with a target folder of its own: another compiler than the workspace's made it. SQLite's C part is
/// left out, since no C library of a phone is at hand.
fn checker(target: &str, package: &str) -> Command {
    let words =
        ["check", "--locked", "-Zbuild-std=std,panic_abort", "--target", target, "--package", package];
    let lean = ["--lib", "--no-default-features", "--features", "modern-sqlite"];
    // At the lowest priority: journeys may run meanwhile, and they measure time.
    let mut check = start::program("nice", &[&["-n", "19", CARGO], &words[..], &lean].concat());
    check
        .env("RUSTC", RUSTC)
        // The standard library's source can be built by a stable compiler that is told so.
        .env("RUSTC_BOOTSTRAP", "1")
        .env("CARGO_TARGET_DIR", rooms::top().join("target/phones"));
    // What the cargo that runs xtask left for its children is not for this one.
    for name in ["CARGO", "RUSTUP_TOOLCHAIN", "RUSTFLAGS", "CARGO_ENCODED_RUSTFLAGS", "RUSTDOC"] {
        check.env_remove(name);
    }
    check
}
