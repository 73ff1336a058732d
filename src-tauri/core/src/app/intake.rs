//! Photos from a screen to the ledger: pieces of an upload, the photo taken in, the entry that names it.

use crate::model::entry::{EntryBody, PhotoRef};
use crate::model::photo_of::PhotoOf;
use crate::model::{hex, limits};
use crate::photos::intake::take_in;
use crate::store::uploads::MAX_PIECE_BYTES;

use super::decide;
use super::fault::{Fault, Refusal};
use super::response::Response;
use super::steady::Inner;

pub(super) fn upload(inner: &Inner, upload: &str, index: u32, piece: &[u8]) -> Result<Response, Fault> {
    if piece.len() as u64 > MAX_PIECE_BYTES {
        return Err(Refusal::UploadTooLarge.into());
    }
    Ok(Response::Uploaded { bytes: inner.store.add_piece(upload, index, piece)? })
}

impl Inner {
    /// Makes a finished upload the photo of a step.
    pub(super) fn keep_photo(
        &mut self,
        visit: &str,
        step: &str,
        upload: &str,
        by: Option<&str>,
    ) -> Result<Response, Fault> {
        let bytes = self.store.upload(upload)?;
        let response = self.keep_bytes(visit, step, &bytes, by)?;
        self.store.drop_upload(upload);
        // The photo itself shows that the wish was met.
        let _ = self.store.forget_wish(visit, step);
        Ok(response)
    }

    /// Who acts, where a photo of this step can be kept.
    pub(super) fn checked_step(
        &mut self,
        visit: &str,
        by: Option<&str>,
        step: &str,
    ) -> Result<String, Fault> {
        let by = self.technician(by)?;
        self.decided(visit, &by, |scene| decide::check_step(scene, step))?;
        Ok(by)
    }

    /// Makes a file's bytes the photo of a step.
    pub(super) fn keep_bytes(
        &mut self,
        visit: &str,
        step: &str,
        bytes: &[u8],
        by: Option<&str>,
    ) -> Result<Response, Fault> {
        let by = self.checked_step(visit, by, step)?;
        let photo = self.taken_in(bytes)?;
        self.write(visit, EntryBody::PhotoKept { of: PhotoOf::Step(step.to_owned()), photo, by })
    }

    /// A photo taken in, on disk under its hash before any entry names it.
    pub(super) fn taken_in(&self, bytes: &[u8]) -> Result<PhotoRef, Fault> {
        let taken = take_in(bytes)?;
        if taken.width.min(taken.height) < limits::LEAST_PHOTO_SIDE {
            return Err(Refusal::PhotoTooSmall.into());
        }
        let sha256 = self.store.keep_photo(&taken.full, &taken.thumb)?;
        Ok(PhotoRef {
            sha256,
            original_sha256: hex::encode(&taken.original_sha256),
            width: taken.width,
            height: taken.height,
            taken: taken.taken,
        })
    }
}
