//! From a camera's file to pixels, within stated memory: the picture once as RGB, and little beside it.
//!
//! Decoders are asked to be strict, and a scan too short for the blocks its frame claims is refused before decoding:
//! decoders fill what is missing with grey, and grey proves nothing. What is left: a scan cut in its middle with an end
//! of image put behind it is kept with a grey rest. Only a second decoder of our own would tell.
//!
//! A photo is decoded whole. Shrinking while decoding goes on would save most, but zune-jpeg gives a picture only when
//! it is finished, and a decoder of our own would read hostile files. Cost: two cores wait for one. To change when
//! zune-jpeg 0.5.16 is out: it gives the planes as they were coded, row by row. Its release candidate decodes the
//! bench's photo in 43 ms where 0.5.15 takes 66, in half the memory, and planes need no colour changed twice; but a
//! candidate does not answer to the `^0.5` that `image` and typst ask for, and Cargo holds one 0.5 at a time.

use std::io::{Cursor, ErrorKind};

use png::{BitDepth, DecodingError, Transformations};
use zune_core::bytestream::ZCursor;
use zune_core::colorspace::ColorSpace;
use zune_core::options::DecoderOptions;
use zune_jpeg::JpegDecoder;

use super::intake::{MAX_DECODE_BYTES, MAX_SIDE, PhotoFault};
use super::outline::outline;

/// A decoded picture, as it lies in the file.
pub struct Decoded {
    /// Width, pixels.
    pub width: u32,
    /// Height, pixels.
    pub height: u32,
    /// Three bytes a pixel, row by row.
    pub rgb: Vec<u8>,
    /// The file's EXIF block, a TIFF structure, if it has one.
    pub tags: Option<Vec<u8>>,
}

/// Decodes a JPEG.
///
/// # Errors
/// [`PhotoFault`]. A scan that does not decode to its end is refused: decoders fill the rest with grey, and grey
/// proves nothing.
pub fn jpeg(bytes: &[u8]) -> Result<Decoded, PhotoFault> {
    let told = outline(bytes)?;
    check_size(told.width, told.height, told.memory)?;
    if told.short {
        return Err(PhotoFault::CutShort);
    }
    let side = usize::try_from(MAX_SIDE).unwrap_or(usize::MAX);
    let options = DecoderOptions::default()
        .set_strict_mode(true)
        .set_max_width(side)
        .set_max_height(side)
        .jpeg_set_out_colorspace(ColorSpace::RGB);
    let mut decoder = JpegDecoder::new_with_options(ZCursor::new(bytes), options);
    decoder.decode_headers().map_err(|_| PhotoFault::NotAnImage)?;
    let (width, height) = decoder.dimensions().ok_or(PhotoFault::NotAnImage)?;
    let found = [width, height].map(|side| u32::try_from(side).unwrap_or(u32::MAX));
    if found != [told.width, told.height] {
        return Err(PhotoFault::NotAnImage);
    }
    let tags = decoder.exif().cloned();
    let rgb = decoder.decode().map_err(|_| PhotoFault::NotAnImage)?;
    Ok(Decoded { width: told.width, height: told.height, rgb, tags })
}

/// Decodes a PNG; transparency is left out.
///
/// # Errors
/// [`PhotoFault`].
pub fn png(bytes: &[u8]) -> Result<Decoded, PhotoFault> {
    let mut decoder = png::Decoder::new(Cursor::new(bytes));
    decoder.set_transformations(Transformations::EXPAND | Transformations::STRIP_16);
    // Neither is looked at, and either may unpack to tens of megabytes.
    decoder.set_ignore_text_chunk(true);
    decoder.set_ignore_iccp_chunk(true);
    let mut reader = decoder.read_info().map_err(|fault| png_fault(&fault))?;
    let (width, height, interlaced) = {
        let info = reader.info();
        (info.width, info.height, info.interlaced)
    };
    let (color, depth) = reader.output_color_type();
    let pixels = u64::from(width) * u64::from(height);
    // An interlaced picture comes in seven passes over all of it.
    let whole = if interlaced { pixels * color.samples() as u64 } else { 0 };
    check_size(width, height, pixels * 3 + whole)?;
    if depth != BitDepth::Eight {
        return Err(PhotoFault::NotAnImage);
    }
    let mut rgb = Vec::new();
    rgb.reserve_exact(usize::try_from(pixels * 3).map_err(|_| PhotoFault::TooLarge)?);
    if interlaced {
        let mut passes = vec![0; reader.output_buffer_size().ok_or(PhotoFault::TooLarge)?];
        reader.next_frame(&mut passes).map_err(|fault| png_fault(&fault))?;
        extend(&mut rgb, &passes, color.samples());
    } else {
        while let Some(row) = reader.next_row().map_err(|fault| png_fault(&fault))? {
            extend(&mut rgb, row.data(), color.samples());
        }
    }
    if rgb.len() as u64 != pixels * 3 {
        return Err(PhotoFault::CutShort);
    }
    let tags = reader.info().exif_metadata.as_deref().map(<[u8]>::to_vec);
    Ok(Decoded { width, height, rgb, tags })
}

fn check_size(width: u32, height: u32, memory: u64) -> Result<(), PhotoFault> {
    let fits = width <= MAX_SIDE && height <= MAX_SIDE && memory <= MAX_DECODE_BYTES;
    if fits { Ok(()) } else { Err(PhotoFault::TooLarge) }
}

/// Appends pixels of this many samples: grey, grey and transparency, colour, colour and transparency.
fn extend(rgb: &mut Vec<u8>, row: &[u8], samples: usize) {
    match samples {
        3 => rgb.extend_from_slice(row),
        4 => rgb.extend(row.chunks_exact(4).filter_map(<[u8]>::first_chunk::<3>).flatten()),
        _ => rgb.extend(row.chunks_exact(samples).filter_map(<[u8]>::first).flat_map(|grey| [*grey; 3])),
    }
}

fn png_fault(fault: &DecodingError) -> PhotoFault {
    match fault {
        DecodingError::IoError(fault) if fault.kind() == ErrorKind::UnexpectedEof => PhotoFault::CutShort,
        DecodingError::LimitsExceeded => PhotoFault::TooLarge,
        _ => PhotoFault::NotAnImage,
    }
}
