//! Text files named on the command line: ordinary files up to a size. A pipe or a device may never end, so it is not
//! even opened.

use std::fs::{self, File};
use std::io::Read;
use std::path::Path;

use crate::fault;

/// The text of an ordinary file of at most `most` bytes; else why not, as a part of a sentence.
pub fn text(path: &Path, most: u64) -> Result<String, String> {
    let cause = |error: std::io::Error| fault::cause(&error);
    if !fs::metadata(path).map_err(cause)?.is_file() {
        return Err("it is a folder, a pipe or a device, not a file".to_owned());
    }
    let mut text = String::new();
    // One byte more, so that a file that grew since is noticed too.
    File::open(path).map_err(cause)?.take(most + 1).read_to_string(&mut text).map_err(cause)?;
    if text.len() as u64 > most {
        return Err(format!("larger than {most} bytes, which no such file is"));
    }
    Ok(text)
}

#[cfg(test)]
mod tests {
    use super::text;

    #[test]
    fn only_ordinary_files_of_a_size_are_read() {
        let folder = tempfile::tempdir().unwrap();
        let file = folder.path().join("bore.csv");
        std::fs::write(&file, "12345").unwrap();
        assert_eq!(text(&file, 5).as_deref(), Ok("12345"));
        assert!(text(&file, 4).unwrap_err().contains("larger"));
        assert!(text(folder.path(), 9).unwrap_err().contains("not a file"));
        assert!(text(&folder.path().join("none"), 9).unwrap_err().contains("no such file"));
        #[cfg(unix)]
        for endless in ["/dev/zero", "/dev/urandom", "/dev/full"] {
            assert!(text(std::path::Path::new(endless), 9).unwrap_err().contains("not a file"), "{endless}");
        }
    }
}
