//! Holds a file to what somebody was shown of it: while a person reads what it would change, another may write to it.

use std::io::{ErrorKind, Read, Seek};

use sha2::{Digest, Sha256};

use super::super::failure::Failure;
use super::super::fault::Fault;
use super::super::steady::shown;
use crate::handover::fault::HandoverFault;

/// Bytes read at once.
const CHUNK: usize = 64 * 1024;

/// The bytes of a file that somebody is shown, by their SHA-256.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct AsShown(Vec<u8>);

impl AsShown {
    /// Reads a file from its beginning to its end; it stands at its beginning again afterwards.
    ///
    /// # Errors
    /// `handover-unreadable`.
    pub fn of(source: &mut (impl Read + Seek)) -> Result<Self, Failure> {
        digest(source).map(Self).map_err(in_english)
    }

    /// Whether a file still holds the same bytes; it stands at its beginning again afterwards.
    ///
    /// # Errors
    /// `file-changed` where it does not, `handover-unreadable`.
    pub fn still_is(&self, source: &mut (impl Read + Seek)) -> Result<(), Failure> {
        if Self::of(source)? == *self { Ok(()) } else { Err(in_english(HandoverFault::FileChanged)) }
    }
}

fn digest(source: &mut (impl Read + Seek)) -> Result<Vec<u8>, HandoverFault> {
    source.rewind().map_err(HandoverFault::Read)?;
    let (mut digest, mut piece) = (Sha256::new(), vec![0; CHUNK]);
    loop {
        match source.read(&mut piece) {
            Ok(0) => break,
            Ok(read) => digest.update(piece.get(..read).unwrap_or_default()),
            Err(error) if error.kind() == ErrorKind::Interrupted => {}
            Err(error) => return Err(HandoverFault::Read(error)),
        }
    }
    source.rewind().map_err(HandoverFault::Read)?;
    Ok(digest.finalize().to_vec())
}

/// The terminal asks, and speaks English.
fn in_english(fault: HandoverFault) -> Failure {
    shown(&Fault::from(fault), "en")
}

#[cfg(test)]
mod tests {
    use std::io::{Cursor, Read as _};

    use super::AsShown;

    #[test]
    fn file_that_changes_after_it_was_shown_is_refused() {
        let mut file = Cursor::new(b"as it was shown".to_vec());
        let seen = AsShown::of(&mut file).expect("it is read");
        let mut read = Vec::new();
        file.read_to_end(&mut read).expect("it is read from its beginning");
        assert_eq!(read, b"as it was shown");
        assert_eq!(seen.still_is(&mut file), Ok(()), "wherever it stands");
        for other in [&b"as it was showm"[..], b"as it was", b"as it was shown and more"] {
            let failure = seen.still_is(&mut Cursor::new(other.to_vec())).expect_err("it is another");
            assert_eq!(failure.code, "file-changed");
            assert!(failure.help.contains("Nothing was taken in"), "{failure:?}");
        }
    }
}
