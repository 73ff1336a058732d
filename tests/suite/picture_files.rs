//! Pictures written by hand, right and wrong: JPEG segments and PNG chunks that can say anything, and EXIF blocks.
//!
//! Markers: ITU-T T.81, table B.1. Chunks: W3C PNG, third edition, section 5. EXIF: TIFF 6.0, section 2.

use std::io::Write;

use jpeg_encoder::{ColorType, Encoder, SamplingFactor};

/// How a JPEG is coded.
#[derive(Debug, Clone, Copy)]
pub struct Coding {
    pub color: ColorType,
    pub sampling: SamplingFactor,
    /// Scans of a progressive one.
    pub scans: Option<u8>,
    /// Blocks between restart marks.
    pub restart: u16,
}

/// As cameras write it.
pub const PLAIN: Coding =
    Coding { color: ColorType::Rgb, sampling: SamplingFactor::F_2_2, scans: None, restart: 0 };

/// A JPEG of a mottled slope.
pub fn jpeg(width: u16, height: u16, coding: Coding) -> Vec<u8> {
    let samples = match coding.color {
        ColorType::Luma => 1,
        ColorType::Cmyk | ColorType::CmykAsYcck => 4,
        _ => 3,
    };
    let length = usize::from(width) * usize::from(height) * samples;
    let pixels: Vec<u8> = (0..length).map(|at| u8::try_from((at / 3 + at * at / 7) % 251).unwrap()).collect();
    let mut bytes = Vec::new();
    let mut encoder = Encoder::new(&mut bytes, 80);
    encoder.set_sampling_factor(coding.sampling);
    encoder.set_progressive(coding.scans.is_some());
    if let Some(scans) = coding.scans {
        encoder.set_progressive_scans(scans);
    }
    encoder.set_restart_interval(coding.restart);
    encoder.encode(&pixels, width, height, coding.color).unwrap();
    bytes
}

/// A small JPEG that is sound: 24 by 16 pixels.
pub fn small() -> Vec<u8> {
    jpeg(24, 16, PLAIN)
}

/// Where each marker with this code starts, scans' data left out.
pub fn markers(jpeg: &[u8]) -> Vec<(usize, u8)> {
    let mut found = vec![(0, 0xd8)];
    let mut at = 2;
    while at + 4 <= jpeg.len() {
        let marker = jpeg[at + 1];
        if jpeg[at] != 0xff || matches!(marker, 0 | 0xd0..=0xd7) {
            at += 1;
            continue;
        }
        found.push((at, marker));
        at += 2 + usize::from(u16::from_be_bytes([jpeg[at + 2], jpeg[at + 3]]));
    }
    found.push((jpeg.len() - 2, 0xd9));
    found
}

/// Where the first marker with this code starts.
pub fn first(jpeg: &[u8], code: u8) -> usize {
    markers(jpeg).iter().find(|(_, marker)| *marker == code).unwrap().0
}

/// A segment with its length.
pub fn segment(marker: u8, content: &[u8]) -> Vec<u8> {
    let length = u16::try_from(content.len() + 2).unwrap().to_be_bytes();
    [&[0xff, marker], &length[..], content].concat()
}

/// The JPEG with bytes put in at a place.
pub fn with(jpeg: &[u8], at: usize, more: &[u8]) -> Vec<u8> {
    [&jpeg[..at], more, &jpeg[at..]].concat()
}

/// The JPEG with bytes changed at a place.
pub fn changed(jpeg: &[u8], at: usize, bytes: &[u8]) -> Vec<u8> {
    let mut jpeg = jpeg.to_vec();
    jpeg[at..at + bytes.len()].copy_from_slice(bytes);
    jpeg
}

/// The JPEG whose frame header claims this size.
pub fn claiming(jpeg: &[u8], height: u16, width: u16) -> Vec<u8> {
    let frame = markers(jpeg).into_iter().find(|(_, marker)| (0xc0..=0xc2).contains(marker)).unwrap().0;
    changed(jpeg, frame + 5, &[height.to_be_bytes(), width.to_be_bytes()].concat())
}

/// A JPEG with these tags in front: a TIFF structure, or what passes for one.
pub fn tagged(tiff: &[u8]) -> Vec<u8> {
    with(&small(), 2, &segment(0xe1, &[b"Exif\0\0", tiff].concat()))
}

/// An entry of a tag directory, big-endian.
pub fn entry(tag: u16, kind: u16, count: u32, value: u32) -> Vec<u8> {
    [&tag.to_be_bytes()[..], &kind.to_be_bytes(), &count.to_be_bytes(), &value.to_be_bytes()].concat()
}

/// A TIFF structure of one directory of these entries, the next directory at `next`, and more behind it.
pub fn tiff(entries: &[Vec<u8>], next: u32, more: &[u8]) -> Vec<u8> {
    let count = u16::try_from(entries.len()).unwrap().to_be_bytes();
    [&b"MM\0\x2a\0\0\0\x08"[..], &count, &entries.concat(), &next.to_be_bytes(), more].concat()
}

/// What a PNG's header says: size, bits of a sample, colour type, interlacing.
#[derive(Debug, Clone, Copy)]
pub struct Header {
    pub width: u32,
    pub height: u32,
    pub bits: u8,
    pub color: u8,
    pub interlaced: u8,
}

/// A small true-colour one.
pub const TRUE_COLOUR: Header = Header { width: 24, height: 16, bits: 8, color: 2, interlaced: 0 };

pub const SIGNATURE: [u8; 8] = *b"\x89PNG\r\n\x1a\n";

/// A chunk with its length and sum.
pub fn chunk(kind: &[u8; 4], content: &[u8]) -> Vec<u8> {
    let body = [&kind[..], content].concat();
    let sum = crc32fast::hash(&body).to_be_bytes();
    [&u32::try_from(content.len()).unwrap().to_be_bytes()[..], &body, &sum].concat()
}

/// The header's chunk.
pub fn head(header: Header) -> Vec<u8> {
    let Header { width, height, bits, color, interlaced } = header;
    let sides = [width.to_be_bytes(), height.to_be_bytes()].concat();
    chunk(b"IHDR", &[&sides[..], &[bits, color, 0, 0, interlaced]].concat())
}

/// Bytes packed as a PNG wants them.
pub fn packed(bytes: &[u8]) -> Vec<u8> {
    let mut packer = flate2::write::ZlibEncoder::new(Vec::new(), flate2::Compression::best());
    packer.write_all(bytes).unwrap();
    packer.finish().unwrap()
}

/// Rows of zeros as the header wants them, with their filter bytes.
pub fn rows(header: Header) -> Vec<u8> {
    let samples = [1, 0, 3, 1, 2, 0, 4][usize::from(header.color)];
    let row = |width: usize| 1 + (width * samples * usize::from(header.bits)).div_ceil(8);
    let (width, height) = (header.width as usize, header.height as usize);
    if header.interlaced == 0 {
        return vec![0; row(width) * height];
    }
    // First column, first row, and steps of the seven passes: section 8.1.
    let passes =
        [(0, 0, 8, 8), (4, 0, 8, 8), (0, 4, 4, 8), (2, 0, 4, 4), (0, 2, 2, 4), (1, 0, 2, 2), (0, 1, 1, 2)];
    let pass = |(x, y, across, down): (usize, usize, usize, usize)| {
        let (wide, high) =
            (width.saturating_sub(x).div_ceil(across), height.saturating_sub(y).div_ceil(down));
        if wide == 0 { 0 } else { row(wide) * high }
    };
    vec![0; passes.into_iter().map(pass).sum()]
}

/// A PNG of these chunks.
pub fn png(chunks: &[Vec<u8>]) -> Vec<u8> {
    [SIGNATURE.to_vec(), chunks.concat()].concat()
}

/// A whole PNG of zeros under this header; colour type 3 gets its table.
pub fn plain_png(header: Header) -> Vec<u8> {
    let table = if header.color == 3 { chunk(b"PLTE", &[40; 6]) } else { Vec::new() };
    png(&[head(header), table, chunk(b"IDAT", &packed(&rows(header))), chunk(b"IEND", b"")])
}
