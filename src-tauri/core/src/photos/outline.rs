//! What a camera's JPEG says of itself, read from its markers before any of it is decoded: whether it is whole,
//! how large it is, and what decoding it would cost.
//!
//! Markers: ITU-T T.81 (JPEG), table B.1; frame and scan headers: B.2.2 and B.2.3.

use super::intake::PhotoFault;

const START: u8 = 0xd8;
const END: u8 = 0xd9;
const SCAN: u8 = 0xda;
/// Markers that stand alone: a stuffed byte, TEM, restarts, start of image.
const ALONE: [u8; 11] = [0x00, 0x01, 0xd0, 0xd1, 0xd2, 0xd3, 0xd4, 0xd5, 0xd6, 0xd7, START];
/// Most scans. An encoder makes about ten; each costs a walk over the whole picture, so that a short file of
/// thousands would keep a phone busy for hours.
const MAX_SCANS: u32 = 100;

/// A JPEG's frame header, and how many scans follow it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Outline {
    /// Width, pixels.
    pub width: u32,
    /// Height, pixels.
    pub height: u32,
    /// What decoding takes, bytes.
    pub memory: u64,
    /// The file is too short for the picture, however well it is coded.
    pub short: bool,
}

#[derive(Debug, Clone, Copy)]
struct Frame {
    width: u32,
    height: u32,
    /// Blocks of 8 by 8 coefficients, all components together.
    blocks: u64,
    progressive: bool,
}

/// Walks the markers up to the first end of image; what stands behind it, such as a film, is not looked at.
///
/// # Errors
/// [`PhotoFault::CutShort`] where the file ends first, [`PhotoFault::Format`] for ways of coding that are not read,
/// [`PhotoFault::NotAnImage`] for anything else that is no picture.
pub fn outline(jpeg: &[u8]) -> Result<Outline, PhotoFault> {
    let mut rest = jpeg.strip_prefix(&[0xff, START]).ok_or(PhotoFault::NotAnImage)?;
    let mut frame: Option<Frame> = None;
    let mut scans = 0;
    loop {
        let (marker, after) = next_marker(rest).ok_or(PhotoFault::CutShort)?;
        rest = after;
        match marker {
            END => break,
            _ if ALONE.contains(&marker) => continue,
            _ => {}
        }
        let (segment, after) = segment(rest)?;
        rest = after;
        match marker {
            0xc0..=0xc2 if frame.is_some() => return Err(PhotoFault::NotAnImage),
            0xc0..=0xc2 => frame = Some(read_frame(marker, segment)?),
            // Lossless, hierarchical and arithmetic coding.
            0xc3 | 0xc5..=0xc7 | 0xc9..=0xcb | 0xcd..=0xcf => return Err(PhotoFault::Format),
            SCAN => scans += 1,
            _ => {}
        }
        if scans > MAX_SCANS {
            return Err(PhotoFault::NotAnImage);
        }
    }
    let frame = frame.filter(|_| scans > 0).ok_or(PhotoFault::NotAnImage)?;
    let bits = 8 * ((jpeg.len() - rest.len()) as u64);
    Ok(Outline {
        width: frame.width,
        height: frame.height,
        memory: memory(frame, scans),
        short: bits < fewest_bits(frame),
    })
}

/// The next marker, over stuffed bytes and restarts within a scan, and what follows it.
fn next_marker(bytes: &[u8]) -> Option<(u8, &[u8])> {
    let marks = |pair: &[u8]| matches!(pair, [0xff, marker] if !matches!(marker, 0 | 0xff | 0xd0..=0xd7));
    let at = bytes.windows(2).position(marks)?;
    Some((*bytes.get(at + 1)?, bytes.get(at + 2..)?))
}

/// A segment's content and what follows it.
fn segment(bytes: &[u8]) -> Result<(&[u8], &[u8]), PhotoFault> {
    let [high, low, ..] = bytes else { return Err(PhotoFault::CutShort) };
    match usize::from(u16::from_be_bytes([*high, *low])) {
        0 | 1 => Err(PhotoFault::NotAnImage),
        length => bytes.split_at_checked(length).ok_or(PhotoFault::CutShort),
    }
    .map(|(segment, after)| (segment.get(2..).unwrap_or_default(), after))
}

fn read_frame(marker: u8, frame: &[u8]) -> Result<Frame, PhotoFault> {
    let [bits, h0, h1, w0, w1, count, components @ ..] = frame else { return Err(PhotoFault::NotAnImage) };
    if *bits != 8 {
        return Err(PhotoFault::Format);
    }
    let [height, width] = [[*h0, *h1], [*w0, *w1]].map(u16::from_be_bytes).map(u32::from);
    let sampling: Vec<(u64, u64)> = components
        .chunks_exact(3)
        .filter_map(|component| component.get(1))
        .map(|factors| (u64::from(factors >> 4), u64::from(factors & 15)))
        .collect();
    let most = |one: fn(&(u64, u64)) -> u64| sampling.iter().map(one).max().unwrap_or(0);
    let (widest, highest) = (most(|sampled| sampled.0), most(|sampled| sampled.1));
    if [u64::from(width), u64::from(height), widest, highest].contains(&0)
        || sampling.len() != usize::from(*count)
    {
        return Err(PhotoFault::NotAnImage);
    }
    let across = |factor: u64, most: u64| (u64::from(width) * factor).div_ceil(8 * most);
    let down = |factor: u64, most: u64| (u64::from(height) * factor).div_ceil(8 * most);
    let blocks = sampling.iter().map(|(h, v)| across(*h, widest) * down(*v, highest)).sum();
    Ok(Frame { width, height, blocks, progressive: marker == 0xc2 })
}

/// The picture as RGB. Where its parts come scan by scan, every coefficient of two bytes waits for the last one.
fn memory(frame: Frame, scans: u32) -> u64 {
    let waiting = if frame.progressive || scans > 1 { frame.blocks * 64 * 2 } else { 0 };
    u64::from(frame.width) * u64::from(frame.height) * 3 + waiting
}

/// No code is shorter than a bit. A block is coded by two at least, its mean and its end; in a progressive picture
/// many ends share one. A short file that claims a vast picture goes no further.
fn fewest_bits(frame: Frame) -> u64 {
    if frame.progressive { frame.blocks } else { 2 * frame.blocks }
}
