//! Opens a data folder, which sets aside what cannot be used, and says so. The tests kill it at each call to the file
//! system. Argument: data folder.

#![expect(clippy::unwrap_used, clippy::print_stdout, reason = "a test tool may fail loudly")]

mod quiet;

use steady_core::app::request::Request;

fn main() {
    let steady = quiet::open(std::env::args_os().nth(1).unwrap().into());
    steady.handle(Request::Home).unwrap();
    println!("open");
}
