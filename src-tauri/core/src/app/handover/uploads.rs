//! Handover files that a screen sends piece by piece: looked at, then taken in or left.

use std::io;

use super::super::fault::{Fault, Refusal};
use super::super::response::Response;
use super::super::steady::Inner;
use super::{import, preview};
use crate::handover::fault::HandoverFault;
use crate::handover::manifest::MANIFEST;
use crate::model::limits;
use crate::store::fault::StoreFault;
use crate::store::uploads::MAX_PIECE_BYTES;

/// One piece of a handover file that a screen sends.
pub fn take_piece(inner: &Inner, upload: &str, index: u32, piece: &[u8]) -> Result<Response, Fault> {
    if piece.len() as u64 > MAX_PIECE_BYTES {
        return Err(Refusal::UploadTooLarge.into());
    }
    let added = inner.store.add_piece_up_to(limits::HANDOVER_BYTES, upload, index, piece);
    let bytes = added.map_err(|fault| match fault {
        StoreFault::UploadTooLarge => HandoverFault::TooLarge { part: MANIFEST.to_owned() }.into(),
        fault => Fault::Store(fault),
    })?;
    Ok(Response::Uploaded { bytes })
}

/// The file that a screen has sent.
pub fn import_upload(inner: &mut Inner, upload: &str) -> Result<Response, Fault> {
    let file = inner.store.upload_file(upload)?;
    let imported = import::import(inner, &mut io::BufReader::new(file));
    inner.store.drop_upload(upload);
    Ok(Response::Imported(imported?))
}

/// What the file that a screen has sent would change; the file stays for [`import_upload`].
pub fn preview_upload(inner: &mut Inner, upload: &str) -> Result<Response, Fault> {
    let file = inner.store.upload_file(upload)?;
    let preview = preview::preview(inner, &mut io::BufReader::new(file));
    if preview.is_err() {
        inner.store.drop_upload(upload);
    }
    Ok(Response::Preview(Box::new(preview?)))
}

/// The file that a screen has sent is not wanted.
pub fn leave_upload(inner: &Inner, upload: &str) -> Response {
    inner.store.drop_upload(upload);
    Response::Uploaded { bytes: 0 }
}
