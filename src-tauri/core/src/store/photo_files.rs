//! Photo files, named by the SHA-256 of their bytes. A file is whole and synced under its name before
//! any entry names it.

use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};

use sha2::{Digest, Sha256};

use super::fault::StoreFault;
use super::folders::sync;
use super::open::Store;
use super::private;
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
    /// Keeps a photo and its thumbnail; gives back the photo's SHA-256 in hex.
    ///
    /// # Errors
    /// [`StoreFault::Full`] or what the file system says.
    pub fn keep_photo(&self, full: &[u8], thumb: &[u8]) -> Result<String, StoreFault> {
        let sha256 = hex::encode(&Sha256::digest(full));
        write_synced(&self.photo_path(&sha256, PhotoSize::Thumb), thumb)?;
        write_synced(&self.photo_path(&sha256, PhotoSize::Full), full)?;
        Ok(sha256)
    }

    /// A photo's JPEG bytes.
    ///
    /// # Errors
    /// [`StoreFault::PhotoMissing`] if there is no such file.
    pub fn photo(&self, sha256: &str, size: PhotoSize) -> Result<Vec<u8>, StoreFault> {
        if !is_hash(sha256) {
            return Err(StoreFault::PhotoMissing);
        }
        fs::read(self.photo_path(sha256, size)).map_err(|_| StoreFault::PhotoMissing)
    }

    pub(super) fn photo_path(&self, sha256: &str, size: PhotoSize) -> PathBuf {
        self.folder.join("photos").join(size.file_name(sha256))
    }
}

/// Writes under a temporary name, syncs, renames, and syncs the folder.
fn write_synced(path: &Path, bytes: &[u8]) -> Result<(), StoreFault> {
    let part = path.with_extension("part");
    let write = || {
        let mut file = private::create(&part)?;
        file.write_all(bytes)?;
        file.sync_all()?;
        fs::rename(&part, path)?;
        path.parent().map_or(Ok(()), sync)
    };
    write().map_err(StoreFault::file)
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
