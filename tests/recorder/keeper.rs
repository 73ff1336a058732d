//! Backs up, restores or erases, and prints `done`. The tests start it and kill it between two file operations.
//! Arguments: `backup DATA FOLDER MILLISECONDS`, `restore DATA FOLDER` or `erase DATA VISIT WORD`.

#![expect(clippy::unwrap_used, clippy::print_stdout, reason = "a test tool may fail loudly")]

mod quiet;

use std::path::Path;

use steady_core::app::backup::back_up;
use steady_core::model::time::Moment;

fn main() {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    match words[..] {
        ["backup", data, folder, at] => {
            let at = Moment(at.parse().unwrap());
            back_up(Path::new(data), Path::new(folder), at, &mut |_| {}).unwrap();
        }
        ["restore", data, folder] => {
            quiet::open(data.into()).restore(Path::new(folder), None, &mut |_| {}).unwrap();
        }
        ["erase", data, visit, word] => quiet::open(data.into()).erase(visit, word).unwrap(),
        _ => panic!("unknown words"),
    }
    println!("done");
}
