//! Whether bytes from another device are a photo as intake writes them, without decoding a pixel: a JPEG
//! within the kept size, with no private tag in front, between or behind its picture.
//!
//! Markers: ITU-T T.81 (JPEG), table B.1.

use super::intake::{LONG_SIDE, PhotoFault};

const START: u8 = 0xd8;
const END: u8 = 0xd9;
const SCAN: u8 = 0xda;
/// JFIF's own segment; every other application segment and comments may say something private.
const JFIF: u8 = 0xe0;
const HUFFMAN: u8 = 0xc4;
const QUANTIZATION: u8 = 0xdb;
const RESTART_INTERVAL: u8 = 0xdd;

/// Checks a kept photo or its thumbnail.
///
/// # Errors
/// [`PhotoFault::NotAnImage`], [`PhotoFault::Format`] for a JPEG that carries more than a picture,
/// [`PhotoFault::TooLarge`] beyond [`LONG_SIDE`].
pub fn check(bytes: &[u8]) -> Result<(), PhotoFault> {
    let mut rest = bytes.strip_prefix(&[0xff, START]).ok_or(PhotoFault::NotAnImage)?;
    let mut sized = false;
    loop {
        let (marker, after) = marker(rest).ok_or(PhotoFault::NotAnImage)?;
        if marker == END {
            return if after.is_empty() && sized { Ok(()) } else { Err(PhotoFault::Format) };
        }
        let (segment, after) = segment(after).ok_or(PhotoFault::NotAnImage)?;
        match marker {
            // Baseline, extended and progressive.
            0xc0..=0xc2 => sized = size(segment).map(|()| true)?,
            SCAN if sized => {}
            JFIF | HUFFMAN | QUANTIZATION | RESTART_INTERVAL => {}
            _ => return Err(PhotoFault::Format),
        }
        rest = if marker == SCAN { after_scan(after) } else { after };
    }
}

fn marker(bytes: &[u8]) -> Option<(u8, &[u8])> {
    match bytes {
        [0xff, marker, after @ ..] => Some((*marker, after)),
        _ => None,
    }
}

/// A segment's content and what follows it.
fn segment(bytes: &[u8]) -> Option<(&[u8], &[u8])> {
    let [high, low, ..] = bytes else { return None };
    let length = usize::from(u16::from_be_bytes([*high, *low]));
    Some((bytes.get(2..length)?, bytes.get(length..)?))
}

fn size(frame: &[u8]) -> Result<(), PhotoFault> {
    let [_, h0, h1, w0, w1, ..] = frame else { return Err(PhotoFault::NotAnImage) };
    let sides = [u16::from_be_bytes([*h0, *h1]), u16::from_be_bytes([*w0, *w1])].map(u32::from);
    if sides.contains(&0) {
        return Err(PhotoFault::NotAnImage);
    }
    if sides.iter().all(|side| *side <= LONG_SIDE) { Ok(()) } else { Err(PhotoFault::TooLarge) }
}

/// What follows the coded data: the next marker that is neither a stuffed byte nor a restart.
fn after_scan(bytes: &[u8]) -> &[u8] {
    let ends = |pair: &[u8]| matches!(pair, [0xff, marker] if !matches!(marker, 0 | 0xd0..=0xd7));
    let at = bytes.windows(2).position(ends).unwrap_or(bytes.len());
    bytes.get(at..).unwrap_or_default()
}
