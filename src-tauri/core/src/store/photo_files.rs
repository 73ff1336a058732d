//! Photo files, named by the SHA-256 of their bytes. A file is whole and synced under its name before
//! any entry names it.

use std::path::PathBuf;

use rusqlite::OptionalExtension;
use sha2::{Digest, Sha256};

use super::fault::StoreFault;
use super::folders;
use super::open::Store;
use super::private;
use super::uploads::INCOMING;
use crate::model::hex;

/// Which of a photo's two files.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PhotoSize {
    /// For lists and papers' margins.
    Thumb,
    /// For reading.
    Full,
}

impl PhotoSize {
    /// Name of the file of the photo with this SHA-256.
    pub fn file_name(self, sha256: &str) -> String {
        match self {
            Self::Thumb => format!("{sha256}.thumb.jpg"),
            Self::Full => format!("{sha256}.jpg"),
        }
    }
}

/// Reads a photo's address, `SHA256/SIZE` with `thumb` or `full`, as every shell gives it out; nothing
/// else is an address, so there is no folder to escape from.
pub fn photo_address(address: &str) -> Option<(&str, PhotoSize)> {
    let (sha256, size) = address.split_once('/')?;
    let size = match size {
        "thumb" => PhotoSize::Thumb,
        "full" => PhotoSize::Full,
        _ => return None,
    };
    is_hash(sha256).then_some((sha256, size))
}

fn is_hash(text: &str) -> bool {
    text.len() == 64 && text.bytes().all(|byte| matches!(byte, b'0'..=b'9' | b'a'..=b'f'))
}

impl Store {
    /// Keeps a photo and the thumbnail made from it; gives back the photo's SHA-256 in hex.
    ///
    /// # Errors
    /// [`StoreFault::Full`] or what the file system says.
    pub fn keep_photo(&self, full: &[u8], thumb: &[u8]) -> Result<String, StoreFault> {
        let sha256 = hex::encode(&Sha256::digest(full));
        self.keep_thumb(&sha256, thumb)?;
        self.write_synced(&sha256, PhotoSize::Full, full)?;
        Ok(sha256)
    }

    /// Keeps a thumbnail made from its photo, and remembers its hash: the two stay bound. A store that
    /// only reads keeps none.
    ///
    /// # Errors
    /// [`StoreFault::Full`] or what the file system or SQLite says.
    pub fn keep_thumb(&self, sha256: &str, thumb: &[u8]) -> Result<(), StoreFault> {
        if self.only_reads() {
            return Ok(());
        }
        // The row comes first: a file that is here without a line is found by it.
        let sql = "INSERT INTO photo (sha256, thumb) VALUES (?1, ?2)
                   ON CONFLICT (sha256) DO UPDATE SET thumb = excluded.thumb";
        let done = self.connection.execute(sql, [sha256, &hex::encode(&Sha256::digest(thumb))]);
        done.map_err(StoreFault::sql("remember a thumbnail"))?;
        self.write_synced(sha256, PhotoSize::Thumb, thumb)
    }

    /// A photo's JPEG bytes, proven by its hash; of a thumbnail by the hash it had when it was made.
    ///
    /// # Errors
    /// [`StoreFault::PhotoMissing`] if there is no such file, [`StoreFault::PhotoDamaged`] if it is not the one
    /// that was kept.
    pub fn photo(&self, sha256: &str, size: PhotoSize) -> Result<Vec<u8>, StoreFault> {
        if !is_hash(sha256) {
            return Err(StoreFault::PhotoMissing);
        }
        let bytes =
            folders::bytes_of(&self.photo_path(sha256, size)).map_err(|_| StoreFault::PhotoMissing)?;
        let wanted = match size {
            PhotoSize::Full => Some(sha256.to_owned()),
            PhotoSize::Thumb => self.thumb_hash(sha256)?,
        };
        if wanted == Some(hex::encode(&Sha256::digest(&bytes))) {
            Ok(bytes)
        } else {
            Err(StoreFault::PhotoDamaged)
        }
    }

    fn thumb_hash(&self, sha256: &str) -> Result<Option<String>, StoreFault> {
        let sql = "SELECT thumb FROM photo WHERE sha256 = ?1";
        let found = self.connection.query_row(sql, [sha256], |row| row.get("thumb")).optional();
        found.map(Option::flatten).map_err(StoreFault::sql("look for a thumbnail"))
    }

    /// Writes a file whole, beside the photos first: what is left of one that was cut off is cleared at the
    /// next start.
    fn write_synced(&self, sha256: &str, size: PhotoSize, bytes: &[u8]) -> Result<(), StoreFault> {
        let incoming = self.folder.join(INCOMING);
        private::folder(&incoming).map_err(StoreFault::file)?;
        let (path, passing) = (self.photo_path(sha256, size), incoming.join(size.file_name(sha256)));
        folders::write_by(&path, &passing, bytes).map_err(StoreFault::file)
    }

    pub(super) fn photo_path(&self, sha256: &str, size: PhotoSize) -> PathBuf {
        self.folder.join("photos").join(size.file_name(sha256))
    }
}

#[cfg(test)]
mod tests {
    use super::photo_address;

    #[test]
    fn a_photo_is_named_by_hash_and_size() {
        let hash = "0123456789abcdef".repeat(4);
        assert!(photo_address(&format!("{hash}/thumb")).is_some());
        assert!(photo_address(&format!("{hash}/full")).is_some());
        for wrong in [
            hash.clone(),
            format!("{hash}/huge"),
            format!("{hash}/full/"),
            format!("/{hash}/full"),
            format!("{}/full", hash.trim_end_matches('f')),
            format!("{}/full", hash.replace('f', "g")),
            format!("{}/full", hash.to_uppercase()),
            "../ledger.sqlite/full".to_owned(),
            String::new(),
        ] {
            assert!(photo_address(&wrong).is_none(), "{wrong}");
        }
    }
}
