//! Bounds are checked before decoding; decoding runs in a thread of its own, so that a hostile file
//! cannot take the app down; only pixels and the capture time go on, so every private tag stays behind.

use std::panic::catch_unwind;
use std::thread;

use image::metadata::Orientation;
use image::{ImageFormat, RgbImage};
use sha2::{Digest, Sha256};

use super::code::Coded;
use super::decode::{self, Decoded};
use super::plan::Wanted;
use super::shrink;
use crate::model::limits;

/// Long side of a kept photo, pixels.
pub const LONG_SIDE: u32 = limits::PHOTO_SIDE;
/// Long side of a thumbnail, pixels.
pub const THUMB_SIDE: u32 = limits::THUMB_SIDE;
/// Greatest side of a photo as the camera gives it, pixels.
pub const MAX_SIDE: u32 = limits::CAMERA_SIDE;
/// Greatest length of a photo as the camera gives it, bytes.
pub const MAX_BYTES: usize = limits::CAMERA_BYTES as usize;
/// Greatest memory that decoding may take, bytes.
pub const MAX_DECODE_BYTES: u64 = limits::DECODE_BYTES;
const QUALITY: u8 = 85;
const THUMB_QUALITY: u8 = 75;

/// A photo ready to keep.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Taken {
    /// Upright JPEG, long side at most [`LONG_SIDE`].
    pub full: Vec<u8>,
    /// Upright JPEG, long side at most [`THUMB_SIDE`].
    pub thumb: Vec<u8>,
    /// Width of `full`, pixels.
    pub width: u32,
    /// Height of `full`, pixels.
    pub height: u32,
    /// SHA-256 of what the camera gave, raw.
    pub original_sha256: [u8; 32],
    /// Capture time as the camera wrote it, `2026-11-25 09:30:00`, local time without zone.
    pub taken: Option<String>,
}

/// Why a photo was not taken in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum PhotoFault {
    /// Not a picture, or a broken one.
    #[error("the file is not a readable picture")]
    NotAnImage,
    /// A picture whose file ends too early.
    #[error("the file ends before the picture does")]
    CutShort,
    /// A phone's HEIC, which the web view turns into a JPEG where its engine can.
    #[error("the picture is a HEIC")]
    Heic,
    /// A picture of another kind that is not taken.
    #[error("pictures of this kind are not taken")]
    Format,
    /// More bytes or pixels than allowed.
    #[error("the picture is too large")]
    TooLarge,
}

/// Takes a photo in.
///
/// # Errors
/// [`PhotoFault`]; nothing is kept then.
pub fn take_in(bytes: &[u8]) -> Result<Taken, PhotoFault> {
    let decode = decoder(bytes)?;
    thread::scope(|scope| {
        let apart = scope.spawn(|| decode(bytes).and_then(|picture| stood_upright(&picture)));
        let original_sha256 = Sha256::digest(bytes).into();
        let (full, thumb, taken) = apart.join().map_err(|_| PhotoFault::NotAnImage)??;
        Ok(Taken {
            full: full.jpeg,
            thumb: thumb.jpeg,
            width: full.width,
            height: full.height,
            original_sha256,
            taken,
        })
    })
}

/// The picture, upright, its long side at most this many pixels.
///
/// # Errors
/// [`PhotoFault`].
pub fn pixels(bytes: &[u8], side: u32) -> Result<RgbImage, PhotoFault> {
    let decode = decoder(bytes)?;
    let work = || {
        let picture = decode(bytes)?;
        shrink::pixels(&picture, Wanted { orientation: orientation(&picture), side, quality: QUALITY })
    };
    thread::scope(|scope| scope.spawn(work).join().map_err(|_| PhotoFault::NotAnImage)?)
}

type Decoder = fn(&[u8]) -> Result<Decoded, PhotoFault>;

fn decoder(bytes: &[u8]) -> Result<Decoder, PhotoFault> {
    if bytes.len() > MAX_BYTES {
        return Err(PhotoFault::TooLarge);
    }
    match image::guess_format(bytes) {
        Ok(ImageFormat::Jpeg) => Ok(decode::jpeg),
        Ok(ImageFormat::Png) => Ok(decode::png),
        Ok(_) => Err(PhotoFault::Format),
        Err(_) if is_heic(bytes) => Err(PhotoFault::Heic),
        Err(_) if is_base_media(bytes) => Err(PhotoFault::Format),
        Err(_) => Err(PhotoFault::NotAnImage),
    }
}

/// ISO base media files (ISO/IEC 14496-12) open with a box `ftyp` and their brand; AVIF and films are such too.
fn is_base_media(bytes: &[u8]) -> bool {
    bytes.get(4..8) == Some(b"ftyp")
}

/// Brands of pictures in HEVC, and the two that name no codec, under which phones write them: ISO/IEC
/// 23008-12, annex B and clause 10, from memory.
const HEIC_BRANDS: [&[u8]; 10] =
    [b"heic", b"heix", b"heim", b"heis", b"hevc", b"hevx", b"hevm", b"hevs", b"mif1", b"msf1"];

/// A HEIC by its major brand. AVIF may name `mif1` too, yet never with a brand of HEVC beside it; which of
/// the two it is makes no difference to what has to be done.
fn is_heic(bytes: &[u8]) -> bool {
    is_base_media(bytes) && bytes.get(8..12).is_some_and(|brand| HEIC_BRANDS.contains(&brand))
}

fn orientation(picture: &Decoded) -> Orientation {
    let tags = picture.tags.as_deref().unwrap_or_default();
    Orientation::from_exif_chunk(tags).unwrap_or(Orientation::NoTransforms)
}

/// The photo, its thumbnail and its capture time.
fn stood_upright(picture: &Decoded) -> Result<(Coded, Coded, Option<String>), PhotoFault> {
    let orientation = orientation(picture);
    let full = Wanted { orientation, side: LONG_SIDE, quality: QUALITY };
    let thumb = Wanted { orientation, side: THUMB_SIDE, quality: THUMB_QUALITY };
    let (full, thumb) = shrink::shrink(picture, full, thumb)?;
    // Tags that cannot be read take nothing away from the picture.
    let tags = picture.tags.as_deref().unwrap_or_default();
    Ok((full, thumb, catch_unwind(|| capture_time(tags)).unwrap_or_default()))
}

/// The one tag that goes on: EXIF DateTimeOriginal, whose colons in the date become hyphens.
fn capture_time(tags: &[u8]) -> Option<String> {
    let tags = exif::Reader::new().read_raw(tags.to_vec()).ok()?;
    let field = tags.get_field(exif::Tag::DateTimeOriginal, exif::In::PRIMARY)?;
    let exif::Value::Ascii(lines) = &field.value else { return None };
    let at = exif::DateTime::from_ascii(lines.first()?).ok()?;
    Some(format!(
        "{:04}-{:02}-{:02} {:02}:{:02}:{:02}",
        at.year, at.month, at.day, at.hour, at.minute, at.second
    ))
}
