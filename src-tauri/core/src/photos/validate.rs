//! Whether bytes are a photo as intake writes them, without decoding a pixel: a baseline JPEG of three colours in
//! one scan, within the kept size, with no private tag in front, between or behind its picture. Anything more
//! could cost a reader hours, such as a picture of 200,000 scans, or tell what its owner did not want told.
//!
//! Markers: ITU-T T.81 (JPEG), table B.1; frame and scan headers: B.2.2 and B.2.3. JFIF: ITU-T T.871, 10.1.

use super::intake::{LONG_SIDE, PhotoFault};
use crate::model::limits;

const START: [u8; 2] = [0xff, 0xd8];
const END: [u8; 2] = [0xff, 0xd9];
/// JFIF's own segment, without a thumbnail in it; other application segments and comments may say something
/// private.
const JFIF: u8 = 0xe0;
const BASELINE: u8 = 0xc0;
const HUFFMAN: u8 = 0xc4;
const QUANTIZATION: u8 = 0xdb;
const SCAN: u8 = 0xda;
/// Most tables of each kind: four can be named.
const MOST_TABLES: u32 = 4;
/// Longest Huffman table: its class, 16 counts, 256 values.
const LONGEST_HUFFMAN: usize = 1 + 16 + 256;
/// A quantization table of one byte a value.
const QUANTIZATION_BYTES: usize = 1 + 64;
const COLOURS: u8 = 3;

/// Checks a kept photo or its thumbnail.
///
/// # Errors
/// [`PhotoFault::NotAnImage`], [`PhotoFault::Format`] for a JPEG that carries more than a picture or is coded
/// otherwise, [`PhotoFault::TooLarge`] beyond [`LONG_SIDE`] or the longest kept photo.
pub fn check(bytes: &[u8]) -> Result<(), PhotoFault> {
    if bytes.len() as u64 > limits::PHOTO_BYTES {
        return Err(PhotoFault::TooLarge);
    }
    let (jfif, mut rest) = bytes.strip_prefix(&START).and_then(segment).ok_or(PhotoFault::NotAnImage)?;
    if jfif.marker != JFIF || jfif.content.len() != 14 || !jfif.content.starts_with(b"JFIF\0") {
        return Err(PhotoFault::Format);
    }
    let (mut sized, mut tables, mut weights) = (false, 0, 0);
    loop {
        let (found, after) = segment(rest).ok_or(PhotoFault::NotAnImage)?;
        match found.marker {
            BASELINE if !sized => sized = size(found.content).map(|()| true)?,
            HUFFMAN if found.content.len() <= LONGEST_HUFFMAN && tables < MOST_TABLES => tables += 1,
            QUANTIZATION if found.content.len() == QUANTIZATION_BYTES && weights < MOST_TABLES => {
                weights += 1
            }
            SCAN if sized => return scan(found.content, after),
            _ => return Err(PhotoFault::Format),
        }
        rest = after;
    }
}

struct Segment<'b> {
    marker: u8,
    content: &'b [u8],
}

/// The segment that comes next and what follows it.
fn segment(bytes: &[u8]) -> Option<(Segment<'_>, &[u8])> {
    let [0xff, marker, after @ ..] = bytes else { return None };
    let [high, low, ..] = after else { return None };
    let length = usize::from(u16::from_be_bytes([*high, *low]));
    Some((Segment { marker: *marker, content: after.get(2..length)? }, after.get(length..)?))
}

fn size(frame: &[u8]) -> Result<(), PhotoFault> {
    let [bits, h0, h1, w0, w1, colours, components @ ..] = frame else { return Err(PhotoFault::NotAnImage) };
    let sides = [u16::from_be_bytes([*h0, *h1]), u16::from_be_bytes([*w0, *w1])].map(u32::from);
    if sides.contains(&0) {
        return Err(PhotoFault::NotAnImage);
    }
    if sides.iter().any(|side| *side > LONG_SIDE) {
        return Err(PhotoFault::TooLarge);
    }
    // Colour is kept for each pixel or for two by two.
    let sampled = |component: &[u8]| component.get(1).is_some_and(|it| [0x11, 0x21, 0x12, 0x22].contains(it));
    let plain = *bits == 8 && *colours == COLOURS && components.len() == 3 * usize::from(COLOURS);
    if plain && components.chunks_exact(3).all(sampled) { Ok(()) } else { Err(PhotoFault::Format) }
}

/// One scan of all colours and all coefficients, coded data without a marker, and the end.
fn scan(header: &[u8], coded: &[u8]) -> Result<(), PhotoFault> {
    let [COLOURS, _, _, _, _, _, _, 0, 63, 0] = header else { return Err(PhotoFault::Format) };
    let data = coded.strip_suffix(&END).ok_or(PhotoFault::NotAnImage)?;
    let marks = |pair: &[u8]| matches!(pair, [0xff, after] if *after != 0);
    if data.windows(2).any(marks) || data.ends_with(&[0xff]) { Err(PhotoFault::Format) } else { Ok(()) }
}
