//! Files for the share sheet: copied under a plain name into a folder of the cache, the only one that other apps are
//! let into. Who was chosen there may read a file long after the sheet has closed, so it stays until the app starts
//! anew or is told to forget it.

use std::fs::{self, File};
use std::io::{self, Read};
use std::path::PathBuf;

/// Longest file name, bytes.
const MAX_NAME: usize = 120;

/// Why a file was not put out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum OutboxFault {
    /// Not a plain file name.
    #[error("name")]
    Name,
    /// The file system refused.
    #[error("storage")]
    Storage,
}

/// The folder of files to be shared. Cleared when the app starts; the system may empty a cache at any time.
#[derive(Debug)]
pub struct Outbox {
    folder: PathBuf,
}

impl Outbox {
    /// An outbox in this folder, which is made when it is needed.
    pub fn new(folder: PathBuf) -> Self {
        Self { folder }
    }

    /// Forgets every file.
    pub fn clear(&self) {
        // What cannot be removed is in the way of nothing.
        let _ = fs::remove_dir_all(&self.folder);
    }

    /// Puts a file out, in place of any of this name, and says where it lies.
    ///
    /// # Errors
    /// [`OutboxFault`]; what was out before is out still.
    pub fn put(&self, name: &str, bytes: &mut dyn Read) -> Result<PathBuf, OutboxFault> {
        let path = self.path(name)?;
        let part = self.folder.join(format!(".{name}"));
        let copied = fs::create_dir_all(&self.folder)
            .and_then(|()| File::create(&part))
            .and_then(|mut file| io::copy(bytes, &mut file))
            .and_then(|_| fs::rename(&part, &path));
        copied.map(|()| path).map_err(|_| {
            // Left behind, it would be in the way of nothing either.
            let _ = fs::remove_file(&part);
            OutboxFault::Storage
        })
    }

    /// A name may hold letters, digits, dots, dashes and underscores, and begins with none of the signs.
    fn path(&self, name: &str) -> Result<PathBuf, OutboxFault> {
        let plain = |letter: char| letter.is_ascii_alphanumeric() || "._-".contains(letter);
        let begins = name.starts_with(|letter: char| letter.is_ascii_alphanumeric());
        if begins && name.len() <= MAX_NAME && name.chars().all(plain) {
            Ok(self.folder.join(name))
        } else {
            Err(OutboxFault::Name)
        }
    }
}

#[cfg(test)]
mod tests {
    use std::fs;
    use std::io::{self, Read};

    use super::{Outbox, OutboxFault};

    fn outbox() -> (tempfile::TempDir, Outbox) {
        let folder = tempfile::tempdir().unwrap_or_else(|error| panic!("{error}"));
        let outbox = Outbox::new(folder.path().join("outbox"));
        (folder, outbox)
    }

    fn files(outbox: &Outbox) -> usize {
        fs::read_dir(&outbox.folder).map_or(0, Iterator::count)
    }

    #[test]
    fn file_is_put_out_whole_in_place_of_one_of_its_name() {
        let (_folder, outbox) = outbox();
        for (name, bytes) in [("note.pdf", &b"one"[..]), ("visit-1.steady", b"two"), ("visit-1.steady", b"")]
        {
            let path = outbox.put(name, &mut &*bytes).unwrap_or_else(|fault| panic!("{fault}"));
            assert_eq!(fs::read(&path).ok().as_deref(), Some(bytes), "{name}");
            assert_eq!(path.file_name().and_then(|name| name.to_str()), Some(name));
        }
        assert_eq!(files(&outbox), 2, "what another app may still be reading stays");
        outbox.clear();
        assert_eq!(files(&outbox), 0);
    }

    #[test]
    fn only_plain_names_are_taken() {
        let (_folder, outbox) = outbox();
        let long = "a".repeat(121);
        for name in ["", "../a", "a/b", "/etc/passwd", ".hidden", "-a", "a b", "a\0", "é.pdf", &long] {
            assert_eq!(outbox.put(name, &mut &b"x"[..]), Err(OutboxFault::Name), "{name:?}");
        }
        assert_eq!(files(&outbox), 0);
    }

    /// A source that breaks off.
    struct Broken;

    impl Read for Broken {
        fn read(&mut self, _: &mut [u8]) -> io::Result<usize> {
            Err(io::Error::other("broken"))
        }
    }

    #[test]
    fn file_that_breaks_off_is_not_out() {
        let (_folder, outbox) = outbox();
        let source = &mut (&b"half"[..]).chain(Broken);
        assert_eq!(outbox.put("a.pdf", source), Err(OutboxFault::Storage));
        assert_eq!(files(&outbox), 0, "nothing half done is left");
    }
}
