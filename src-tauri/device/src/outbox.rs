//! Files on their way to the share sheet: pieces of base64, gathered under a plain name in the cache.

use std::fs::{self, OpenOptions};
use std::io::Write as _;
use std::path::{Path, PathBuf};

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;

/// Greatest size of one piece, bytes: what crosses to Rust at once stays small on a phone's heap.
pub const MAX_PIECE_BYTES: usize = 512 * 1024;

/// Greatest size of a shared file, bytes.
pub const MAX_FILE_BYTES: u64 = 1024 * 1024 * 1024;

/// Longest file name, bytes.
const MAX_NAME: usize = 120;

/// Why a file was not gathered.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum OutboxFault {
    /// Not a plain file name.
    #[error("name")]
    Name,
    /// Not base64, or more than a piece may hold.
    #[error("piece")]
    Piece,
    /// A piece that does not follow the one before.
    #[error("order")]
    Order,
    /// More than a file may hold.
    #[error("too-large")]
    TooLarge,
    /// No file of that name has come in.
    #[error("unknown")]
    Unknown,
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

    /// Adds a piece; piece 0 begins the file anew. Gives the bytes so far.
    ///
    /// # Errors
    /// [`OutboxFault`]; the file is then as it was.
    pub fn add(&self, name: &str, index: u32, base64: &str) -> Result<u64, OutboxFault> {
        let path = self.path(name)?;
        if base64.len() > MAX_PIECE_BYTES.div_ceil(3) * 4 {
            return Err(OutboxFault::Piece);
        }
        let piece = STANDARD.decode(base64).map_err(|_| OutboxFault::Piece)?;
        if piece.len() > MAX_PIECE_BYTES {
            return Err(OutboxFault::Piece);
        }
        let count = self.folder.join(format!(".{name}.count"));
        let next = if index == 0 { 0 } else { Self::next(&count) };
        let length = if index == 0 { 0 } else { path.metadata().map_or(0, |file| file.len()) };
        if index != next {
            return Err(OutboxFault::Order);
        }
        if length + piece.len() as u64 > MAX_FILE_BYTES {
            return Err(OutboxFault::TooLarge);
        }
        self.write(&path, index == 0, &piece)?;
        fs::write(count, (index + 1).to_string()).map_err(|_| OutboxFault::Storage)?;
        Ok(length + piece.len() as u64)
    }

    /// Where a file that has come in lies.
    ///
    /// # Errors
    /// [`OutboxFault::Name`] or [`OutboxFault::Unknown`].
    pub fn file(&self, name: &str) -> Result<PathBuf, OutboxFault> {
        let path = self.path(name)?;
        if path.is_file() { Ok(path) } else { Err(OutboxFault::Unknown) }
    }

    fn next(count: &Path) -> u32 {
        fs::read_to_string(count).ok().and_then(|text| text.parse().ok()).unwrap_or(0)
    }

    fn write(&self, path: &Path, anew: bool, piece: &[u8]) -> Result<(), OutboxFault> {
        fs::create_dir_all(&self.folder).map_err(|_| OutboxFault::Storage)?;
        let mut options = OpenOptions::new();
        let options =
            if anew { options.write(true).create(true).truncate(true) } else { options.append(true) };
        let mut file = options.open(path).map_err(|_| OutboxFault::Storage)?;
        file.write_all(piece).map_err(|_| OutboxFault::Storage)
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
    use base64::Engine as _;
    use base64::engine::general_purpose::STANDARD;

    use super::{MAX_PIECE_BYTES, Outbox, OutboxFault};

    fn outbox() -> (tempfile::TempDir, Outbox) {
        let folder = tempfile::tempdir().unwrap_or_else(|error| panic!("{error}"));
        let outbox = Outbox::new(folder.path().join("outbox"));
        (folder, outbox)
    }

    fn text(bytes: &[u8]) -> String {
        STANDARD.encode(bytes)
    }

    #[test]
    fn pieces_become_the_file() {
        let (_folder, outbox) = outbox();
        assert_eq!(outbox.add("note.pdf", 0, &text(b"one ")), Ok(4));
        assert_eq!(outbox.add("note.pdf", 1, &text(b"two")), Ok(7));
        let file = outbox.file("note.pdf").map(std::fs::read);
        assert!(matches!(file, Ok(Ok(bytes)) if bytes == b"one two"));
        assert_eq!(outbox.add("note.pdf", 0, &text(b"anew")), Ok(4));
        outbox.clear();
        assert_eq!(outbox.file("note.pdf"), Err(OutboxFault::Unknown));
    }

    #[test]
    fn a_piece_out_of_order_changes_nothing() {
        let (_folder, outbox) = outbox();
        assert_eq!(outbox.add("a.pdf", 1, &text(b"x")), Err(OutboxFault::Order));
        assert_eq!(outbox.add("a.pdf", 0, &text(b"x")), Ok(1));
        for index in [0, 2, 3] {
            let refused = outbox.add("a.pdf", index, &text(b"y"));
            assert_eq!(refused, if index == 0 { Ok(1) } else { Err(OutboxFault::Order) }, "{index}");
        }
    }

    #[test]
    fn only_plain_names_and_bounded_pieces_are_taken() {
        let (_folder, outbox) = outbox();
        let long = "a".repeat(121);
        for name in ["", "../a", "a/b", "/etc/passwd", ".hidden", "-a", "a b", "a\0", "é.pdf", &long] {
            assert_eq!(outbox.add(name, 0, &text(b"x")), Err(OutboxFault::Name), "{name:?}");
            assert_eq!(outbox.file(name), Err(OutboxFault::Name), "{name:?}");
        }
        let full = vec![7; MAX_PIECE_BYTES];
        assert_eq!(outbox.add("full.zip", 0, &text(&full)), Ok(MAX_PIECE_BYTES as u64));
        let over = vec![7; MAX_PIECE_BYTES + 1];
        assert_eq!(outbox.add("over.zip", 0, &text(&over)), Err(OutboxFault::Piece));
        assert_eq!(outbox.add("odd.zip", 0, "not base64!"), Err(OutboxFault::Piece));
    }
}
