//! Takes in every picture of a folder, prints what became of each, and at the end the most memory it ever held.
//! Arguments: folder of files; where to write what is kept, for the bench.

#![expect(clippy::unwrap_used, clippy::print_stdout, reason = "a test tool may fail loudly")]

use std::path::PathBuf;

use steady_core::photos::intake::{PhotoFault, take_in};

fn main() {
    let mut folders = std::env::args_os().skip(1).map(PathBuf::from);
    let mut files: Vec<PathBuf> =
        std::fs::read_dir(folders.next().unwrap()).unwrap().flatten().map(|file| file.path()).collect();
    files.sort();
    let into = folders.next();
    // What panics in a decoder is contained, and its message would only fill the log.
    std::panic::set_hook(Box::new(|_| {}));
    for path in files {
        let verdict = match take_in(&std::fs::read(path).unwrap()) {
            Ok(taken) => {
                if let Some(folder) = &into {
                    std::fs::write(folder.join("full.jpg"), &taken.full).unwrap();
                    std::fs::write(folder.join("thumb.jpg"), &taken.thumb).unwrap();
                }
                format!("{}x{}", taken.width, taken.height)
            }
            Err(PhotoFault::NotAnImage) => "photo-not-an-image".to_owned(),
            Err(PhotoFault::CutShort) => "photo-cut-short".to_owned(),
            Err(PhotoFault::Heic) => "photo-heic".to_owned(),
            Err(PhotoFault::Format) => "photo-format".to_owned(),
            Err(PhotoFault::TooLarge) => "photo-too-large".to_owned(),
        };
        println!("{verdict}");
    }
    // Linux: the high-water mark of resident memory.
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let peak = status.lines().find_map(|line| line.strip_prefix("VmHWM:")).unwrap_or("0 kB");
    println!("peak kB {}", peak.trim().trim_end_matches(" kB"));
}
