//! Photos on their way in: pieces gathered in a file until a step takes them. What is left from an
//! earlier run is cleared at the start; the camera's own copy is still on the phone.

use std::fs::{self, OpenOptions};
use std::io::Write;
use std::path::PathBuf;

use super::fault::StoreFault;
use super::open::Store;
use super::{folders, names, private};
use crate::model::limits;

/// Greatest size of one photo as the camera gives it, bytes.
pub const MAX_PHOTO_BYTES: u64 = limits::CAMERA_BYTES;

/// Folder of what is on its way in; nothing in it is named by an entry.
pub(super) const INCOMING: &str = "incoming";

/// Greatest size of one piece, bytes.
pub const MAX_PIECE_BYTES: u64 = limits::PIECE_BYTES;

impl Store {
    /// Adds a piece; piece 0 starts the upload anew. Gives back the bytes received so far.
    ///
    /// # Errors
    /// [`StoreFault::UploadOrder`], [`StoreFault::UploadTooLarge`], or what the file system says.
    pub fn add_piece(&self, upload: &str, index: u32, piece: &[u8]) -> Result<u64, StoreFault> {
        self.add_piece_up_to(MAX_PHOTO_BYTES, upload, index, piece)
    }

    /// As [`Store::add_piece`], with a limit of its own for the whole, bytes.
    ///
    /// # Errors
    /// As [`Store::add_piece`].
    pub fn add_piece_up_to(
        &self,
        limit: u64,
        upload: &str,
        index: u32,
        piece: &[u8],
    ) -> Result<u64, StoreFault> {
        let path = self.upload_path(upload)?;
        private::folder(&self.folder.join(INCOMING)).map_err(StoreFault::file)?;
        let count = path.with_extension("count");
        let expected: u32 = fs::read_to_string(&count).ok().and_then(|text| text.parse().ok()).unwrap_or(0);
        if index != 0 && index != expected {
            return Err(StoreFault::UploadOrder);
        }
        let file =
            if index == 0 { private::create(&path) } else { OpenOptions::new().append(true).open(&path) };
        let mut file = file.map_err(StoreFault::file)?;
        file.write_all(piece).map_err(StoreFault::file)?;
        let bytes = file.metadata().map_err(StoreFault::file)?.len();
        if bytes > limit {
            self.drop_upload(upload);
            return Err(StoreFault::UploadTooLarge);
        }
        private::write(&count, (index + 1).to_string().as_bytes()).map_err(StoreFault::file)?;
        Ok(bytes)
    }

    /// The bytes of an upload.
    ///
    /// # Errors
    /// [`StoreFault::UploadUnknown`] if nothing came under that name.
    pub fn upload(&self, upload: &str) -> Result<Vec<u8>, StoreFault> {
        fs::read(self.upload_path(upload)?).map_err(|_| StoreFault::UploadUnknown)
    }

    /// An upload's file, for reading piece by piece.
    ///
    /// # Errors
    /// [`StoreFault::UploadUnknown`] if nothing came under that name.
    pub fn upload_file(&self, upload: &str) -> Result<fs::File, StoreFault> {
        fs::File::open(self.upload_path(upload)?).map_err(|_| StoreFault::UploadUnknown)
    }

    /// Forgets an upload.
    pub fn drop_upload(&self, upload: &str) {
        if let Ok(path) = self.upload_path(upload) {
            // Left-overs are cleared at the next start.
            let _ = fs::remove_file(path.with_extension("count"));
            let _ = fs::remove_file(&path);
            // Gone where nothing else is on its way.
            let _ = path.parent().map(fs::remove_dir);
        }
    }

    pub(super) fn clear_uploads(&self) {
        // Nothing of ours in there is named by an entry.
        let is_ours = |name: &str| {
            let passing = [names::HANDOVER, names::RESTORE, names::SALVAGE];
            names::is_of_id(name) || names::is_of_photos(name) || passing.contains(&name)
        };
        folders::clear(&self.folder.join(INCOMING), is_ours);
    }

    /// Where a finished upload lies.
    ///
    /// # Errors
    /// [`StoreFault::UploadUnknown`] for a name that no upload has.
    pub fn upload_path(&self, upload: &str) -> Result<PathBuf, StoreFault> {
        let id = uuid::Uuid::try_parse(upload).map_err(|_| StoreFault::UploadUnknown)?;
        Ok(self.folder.join(INCOMING).join(id.simple().to_string()))
    }
}
