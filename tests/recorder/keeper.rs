//! Backs up, restores, erases, imports or takes an import back, and prints `done`. The tests start it and kill it
//! between two file operations. Arguments: `backup DATA FOLDER MILLISECONDS`, `restore DATA FOLDER`,
//! `erase DATA VISIT WORD`, `import DATA FOLDER NAME` or `take-back DATA IMPORT`. A full disk is its exit status 3.

#![expect(clippy::unwrap_used, reason = "a test tool may fail loudly")]

mod quiet;

use std::fs::File;
use std::io::{BufReader, Write as _};
use std::path::Path;

use steady_core::app::backup::back_up;
use steady_core::app::failure::Failure;
use steady_core::app::request::Request;
use steady_core::model::time::Moment;

/// Ends the program with a status of its own where the disk is full.
fn told<T>(done: Result<T, Failure>) -> T {
    done.unwrap_or_else(|failure| std::process::exit(if failure.code.ends_with("disk-full") { 3 } else { 1 }))
}

fn main() {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    match words[..] {
        ["backup", data, folder, at] => {
            let at = Moment(at.parse().unwrap());
            told(back_up(Path::new(data), Path::new(folder), at, &mut |_| {}));
        }
        ["restore", data, folder] => {
            told(told(quiet::opened(data.into())).restore(Path::new(folder), None, &mut |_| {}));
        }
        ["import", data, folder, name] => {
            let file = File::open(Path::new(folder).join(name)).unwrap();
            told(told(quiet::opened(data.into())).import(&mut BufReader::new(file)));
        }
        ["take-back", data, import] => {
            let import = import.parse().unwrap();
            told(quiet::open(data.into()).handle(Request::TakeBackImport { import }));
        }
        ["erase", data, visit, word] => quiet::open(data.into()).erase(visit, word).unwrap(),
        _ => panic!("unknown words"),
    }
    // Where the disk is full, so is this.
    let _ = writeln!(std::io::stdout(), "done");
}
