//! Takes in every handover file of a folder, prints each outcome's code once the reply is there, and at the
//! end the most memory it ever held. The tests start it, and kill it. Arguments: data folder, folder of files.

#![expect(clippy::unwrap_used, clippy::print_stdout, reason = "a test tool may fail loudly")]

mod quiet;

use std::fs::File;
use std::io::{BufReader, Write};
use std::path::PathBuf;

fn main() {
    let mut folders = std::env::args_os().skip(1).map(PathBuf::from);
    let data_dir = folders.next().unwrap();
    let steady = quiet::open(data_dir);
    let mut files: Vec<PathBuf> =
        std::fs::read_dir(folders.next().unwrap()).unwrap().flatten().map(|file| file.path()).collect();
    files.sort();
    println!("ready");
    for path in files {
        let done = steady.import(&mut BufReader::new(File::open(path).unwrap()));
        println!("{}", done.err().map_or_else(|| "ok".to_owned(), |failure| failure.code));
        std::io::stdout().flush().unwrap();
    }
    // Linux: the high-water mark of resident memory.
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let peak = status.lines().find_map(|line| line.strip_prefix("VmHWM:")).unwrap_or("0 kB");
    println!("peak kB {}", peak.trim().trim_end_matches(" kB"));
}
