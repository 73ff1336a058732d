//! A photo by its hash, for whoever shows it. A thumbnail that is not here, or is not the one that was made from
//! its photo, is made anew.

use super::fault::Fault;
use super::steady::Inner;
use crate::photos::intake::take_in;
use crate::store::fault::StoreFault;
use crate::store::photo_files::PhotoSize;

/// A photo's JPEG bytes.
///
/// # Errors
/// `photo-missing`, `photo-damaged`.
pub(super) fn read(inner: &Inner, sha256: &str, size: PhotoSize) -> Result<Vec<u8>, Fault> {
    match inner.store.photo(sha256, size) {
        Err(StoreFault::PhotoMissing | StoreFault::PhotoDamaged) if size == PhotoSize::Thumb => {
            let thumb = take_in(&inner.store.photo(sha256, PhotoSize::Full)?)?.thumb;
            // Shown even where the disk has no room to keep it.
            let _ = inner.store.keep_thumb(sha256, &thumb);
            Ok(thumb)
        }
        read => Ok(read?),
    }
}
