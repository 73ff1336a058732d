//! Bounds are checked before decoding; decoding runs in a thread of its own, so that a hostile file
//! cannot take the app down; only pixels and the capture time go on, so every private tag stays behind.

use std::io::Cursor;
use std::thread;

use fast_image_resize::images::Image;
use fast_image_resize::{FilterType, PixelType, ResizeAlg, ResizeOptions, Resizer};
use image::codecs::jpeg::JpegEncoder;
use image::{ColorType, DynamicImage, ImageDecoder, ImageFormat, ImageReader, Limits, RgbImage};
use sha2::{Digest, Sha256};

/// Long side of a kept photo, pixels.
pub const LONG_SIDE: u32 = 2_560;
/// Long side of a thumbnail, pixels.
pub const THUMB_SIDE: u32 = 480;
/// Greatest side of a photo as the camera gives it, pixels.
pub const MAX_SIDE: u32 = 12_000;
/// Greatest length of a photo as the camera gives it, bytes.
pub const MAX_BYTES: usize = 60 * 1024 * 1024;
/// Greatest memory the decoder may ask for, bytes: 12,000 by 12,000 pixels of RGB and some more.
const MAX_DECODE_BYTES: u64 = 512 * 1024 * 1024;
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
    let full = pixels(bytes, LONG_SIDE)?;
    let thumb = shrink(&full, THUMB_SIDE)?;
    Ok(Taken {
        width: full.width(),
        height: full.height(),
        full: encode(&full, QUALITY)?,
        thumb: encode(&thumb, THUMB_QUALITY)?,
        original_sha256: Sha256::digest(bytes).into(),
        taken: capture_time(bytes),
    })
}

/// The picture, upright, its long side at most this many pixels.
///
/// # Errors
/// [`PhotoFault`].
pub fn pixels(bytes: &[u8], side: u32) -> Result<RgbImage, PhotoFault> {
    check_bounds(bytes)?;
    let owned = bytes.to_vec();
    let pixels = thread::spawn(move || decode(&owned)).join().map_err(|_| PhotoFault::NotAnImage)??;
    shrink(&pixels, side)
}

fn check_bounds(bytes: &[u8]) -> Result<(), PhotoFault> {
    if bytes.len() > MAX_BYTES {
        return Err(PhotoFault::TooLarge);
    }
    match image::guess_format(bytes) {
        Ok(ImageFormat::Jpeg) if cut_short(bytes) => return Err(PhotoFault::CutShort),
        Ok(ImageFormat::Jpeg | ImageFormat::Png) => {}
        Ok(_) => return Err(PhotoFault::Format),
        Err(_) if is_heic(bytes) => return Err(PhotoFault::Heic),
        Err(_) if is_base_media(bytes) => return Err(PhotoFault::Format),
        Err(_) => return Err(PhotoFault::NotAnImage),
    }
    let owned = bytes.to_vec();
    let size = thread::spawn(move || reader(&owned).map(|reader| reader.into_dimensions()));
    let (width, height) =
        size.join().map_err(|_| PhotoFault::NotAnImage)??.map_err(|_| PhotoFault::NotAnImage)?;
    if width > MAX_SIDE || height > MAX_SIDE { Err(PhotoFault::TooLarge) } else { Ok(()) }
}

/// A JPEG ends with the marker FF D9 behind its last scan, which starts with FF DA; neither can stand within
/// a scan's data (ITU-T T.81, B.1.1.5). Decoders fill what is missing with grey, and grey proves nothing.
fn cut_short(jpeg: &[u8]) -> bool {
    let last = |marker: u8| jpeg.windows(2).rposition(|pair| pair == [0xff, marker]);
    last(0xd9) <= last(0xda)
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

fn reader(bytes: &[u8]) -> Result<ImageReader<Cursor<&[u8]>>, PhotoFault> {
    ImageReader::new(Cursor::new(bytes)).with_guessed_format().map_err(|_| PhotoFault::NotAnImage)
}

/// Decodes and stands the picture upright, as its EXIF orientation says.
fn decode(bytes: &[u8]) -> Result<RgbImage, PhotoFault> {
    let mut reader = reader(bytes)?;
    let mut limits = Limits::default();
    limits.max_image_width = Some(MAX_SIDE);
    limits.max_image_height = Some(MAX_SIDE);
    limits.max_alloc = Some(MAX_DECODE_BYTES);
    reader.limits(limits);
    let mut decoder = reader.into_decoder().map_err(|_| PhotoFault::NotAnImage)?;
    let orientation = decoder.orientation().map_err(|_| PhotoFault::NotAnImage)?;
    let mut picture = DynamicImage::from_decoder(decoder).map_err(|_| PhotoFault::NotAnImage)?;
    picture.apply_orientation(orientation);
    Ok(picture.into_rgb8())
}

fn shrink(picture: &RgbImage, side: u32) -> Result<RgbImage, PhotoFault> {
    let (width, height) = picture.dimensions();
    let longest = width.max(height);
    if longest <= side {
        return Ok(picture.clone());
    }
    let scaled = |length: u32| {
        u32::try_from(u64::from(length) * u64::from(side) / u64::from(longest)).unwrap_or(side).max(1)
    };
    let from = Image::from_vec_u8(width, height, picture.as_raw().clone(), PixelType::U8x3)
        .map_err(|_| PhotoFault::NotAnImage)?;
    let mut to = Image::new(scaled(width), scaled(height), PixelType::U8x3);
    let options = ResizeOptions::new().resize_alg(ResizeAlg::Convolution(FilterType::Lanczos3));
    Resizer::new().resize(&from, &mut to, &options).map_err(|_| PhotoFault::NotAnImage)?;
    RgbImage::from_raw(to.width(), to.height(), to.into_vec()).ok_or(PhotoFault::NotAnImage)
}

fn encode(picture: &RgbImage, quality: u8) -> Result<Vec<u8>, PhotoFault> {
    let mut bytes = Vec::new();
    JpegEncoder::new_with_quality(&mut bytes, quality)
        .encode(picture.as_raw(), picture.width(), picture.height(), ColorType::Rgb8.into())
        .map_err(|_| PhotoFault::NotAnImage)?;
    Ok(bytes)
}

/// The one tag that goes on: EXIF DateTimeOriginal, whose colons in the date become hyphens.
fn capture_time(bytes: &[u8]) -> Option<String> {
    let owned = bytes.to_vec();
    let read = move || exif::Reader::new().read_from_container(&mut Cursor::new(&owned)).ok();
    let tags = thread::spawn(read).join().ok()??;
    let field = tags.get_field(exif::Tag::DateTimeOriginal, exif::In::PRIMARY)?;
    let exif::Value::Ascii(lines) = &field.value else { return None };
    let at = exif::DateTime::from_ascii(lines.first()?).ok()?;
    Some(format!(
        "{:04}-{:02}-{:02} {:02}:{:02}:{:02}",
        at.year, at.month, at.day, at.hour, at.minute, at.second
    ))
}
