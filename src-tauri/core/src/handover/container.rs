//! The zip around the parts, to the byte: entries stored without compression, no dates, no comments, no
//! extra fields, the directory at the end. Source: PKWARE APPNOTE.TXT 6.3.10, sections 4.3.7, 4.3.12 and
//! 4.3.16. The importer compares with these bytes instead of interpreting what a stranger wrote.

use crate::model::limits;

/// Longest file, bytes: what a zip without the 64-bit extension can say.
pub const MAX_FILE: u64 = limits::HANDOVER_BYTES;
/// Bytes of a local header before its name.
pub const LOCAL_BYTES: usize = 30;
/// How a local header begins.
pub const LOCAL_MARK: [u8; 4] = *b"PK\x03\x04";
/// How a line of the directory begins.
pub const CENTRAL_MARK: [u8; 4] = *b"PK\x01\x02";

/// Version needed to extract: 1.0, the plainest.
const NEEDED: u16 = 10;
/// Made by a Unix program of version 2.0, so that the mode below is understood.
const MADE_BY: u16 = (3 << 8) | 20;
/// A regular file that its owner may write and all may read.
const MODE: u32 = 0o100_644 << 16;
/// 1 January 1980, the earliest date a zip can say. When a visit took place stands in its ledger.
const DATE: u16 = 0x21;

/// An entry of the zip.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ZipEntry {
    /// CRC-32 of its bytes.
    pub crc: u32,
    /// Its length, bytes.
    pub bytes: u32,
    /// Where its local header begins.
    pub offset: u32,
}

/// The header before an entry's bytes.
pub fn local(name: &str, crc: u32, bytes: u32) -> Vec<u8> {
    let mut header = LOCAL_MARK.to_vec();
    shared(&mut header, name, crc, bytes);
    header.extend(name.as_bytes());
    header
}

/// The entry's line in the directory.
pub fn central(name: &str, entry: ZipEntry) -> Vec<u8> {
    let mut line = CENTRAL_MARK.to_vec();
    line.extend(MADE_BY.to_le_bytes());
    shared(&mut line, name, entry.crc, entry.bytes);
    // Length of the comment, number of the disk, internal attributes.
    line.extend([0; 6]);
    line.extend(MODE.to_le_bytes());
    line.extend(entry.offset.to_le_bytes());
    line.extend(name.as_bytes());
    line
}

/// The 22 bytes that end a zip (APPNOTE 4.3.16), without a comment.
pub fn end(entries: usize, directory_bytes: u64, directory_offset: u64) -> Vec<u8> {
    let entries = u16::try_from(entries).unwrap_or(u16::MAX).to_le_bytes();
    let mut end = b"PK\x05\x06".to_vec();
    // Number of this disk and of the directory's.
    end.extend([0; 4]);
    end.extend(entries);
    end.extend(entries);
    end.extend(short(directory_bytes).to_le_bytes());
    end.extend(short(directory_offset).to_le_bytes());
    // Length of the comment.
    end.extend([0; 2]);
    end
}

/// A length or place as a zip says it; [`MAX_FILE`] keeps it in range.
pub fn short(length: u64) -> u32 {
    u32::try_from(length).unwrap_or(u32::MAX)
}

fn shared(header: &mut Vec<u8>, name: &str, crc: u32, bytes: u32) {
    header.extend(NEEDED.to_le_bytes());
    // Flags, method (stored), time of day.
    header.extend([0; 6]);
    header.extend(DATE.to_le_bytes());
    header.extend(crc.to_le_bytes());
    header.extend(bytes.to_le_bytes());
    header.extend(bytes.to_le_bytes());
    header.extend(u16::try_from(name.len()).unwrap_or(u16::MAX).to_le_bytes());
    header.extend([0; 2]);
}
