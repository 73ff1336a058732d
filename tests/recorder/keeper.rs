//! Opens a data folder, keeps a photo, backs up, restores, salvages, erases, imports or takes an import back, and prints
//! `done`. The tests start it and kill it between two file operations. Arguments: `open DATA`,
//! `keep-photo DATA FOLDER VISIT`, `backup DATA FOLDER MILLISECONDS`, `restore DATA FOLDER`, `salvage DATA FOLDER`,
//! `erase DATA VISIT WORD`, `import DATA FOLDER NAME`, `take-back DATA IMPORT`, `prepare-export DATA VISIT` or
//! `prepare-backup DATA`. A full disk is its exit status 3.

#![expect(clippy::unwrap_used, reason = "a test tool may fail loudly")]

mod quiet;

use std::fs::File;
use std::io::{BufReader, Write as _};
use std::path::Path;

use steady_core::app::backup::back_up;
use steady_core::app::failure::Failure;
use steady_core::app::request::{Piece, Request};
use steady_core::model::time::Moment;

/// Ends the program with the failure's code on standard error, and a status of its own where the disk is full.
fn told<T>(done: Result<T, Failure>) -> T {
    done.unwrap_or_else(|failure| {
        let _ = writeln!(std::io::stderr(), "{}", failure.code);
        std::process::exit(if failure.code.ends_with("disk-full") { 3 } else { 1 })
    })
}

/// Sends the folder's photo and keeps it.
fn keep_photo(data: &Path, folder: &Path, visit: &str) {
    let steady = told(quiet::opened(data.into()));
    let upload = "0191d2f0-0000-7000-8000-000000000004".to_owned();
    let piece = Piece(std::fs::read(folder.join("photo.jpg")).unwrap());
    told(steady.handle(Request::Upload { upload: upload.clone(), index: 0, piece }));
    let (visit, step) = (visit.to_owned(), "shield-and-mounts".to_owned());
    told(steady.handle(Request::KeepPhoto { visit, step, upload }));
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
        ["salvage", data, folder] => {
            told(told(quiet::opened(data.into())).salvage(&Path::new(folder).join("steady.db")));
        }
        ["erase", data, visit, word] => told(told(quiet::opened(data.into())).erase(visit, word)),
        ["prepare-export", data, visit] => {
            let visits = vec![visit.to_owned()];
            let wanted = Request::Export { visits, papers: false, locale: None, sheet: None };
            told(told(quiet::opened(data.into())).handle(wanted));
        }
        ["prepare-backup", data] => {
            let backup = "0191d2f0-0000-7000-8000-000000000005".to_owned();
            told(told(quiet::opened(data.into())).handle(Request::PrepareBackup { backup }));
        }
        ["open", data] => drop(told(quiet::opened(data.into()))),
        ["keep-photo", data, folder, visit] => keep_photo(Path::new(data), Path::new(folder), visit),
        _ => panic!("unknown words"),
    }
    // Where the disk is full, so is this.
    let _ = writeln!(std::io::stdout(), "done");
}
