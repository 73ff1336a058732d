//! The little of the tar form that a backup as one file needs: plain files, one after the other.
//!
//! Form: IEEE Std 1003.1 (POSIX), utility `pax`, "ustar Interchange Format". Every field but name and size is
//! the same for each file, so that a header is compared and never interpreted.

/// Headers and files are padded to this, bytes.
pub const BLOCK: u64 = 512;
/// Two empty blocks end the file.
pub const END: u64 = 2 * BLOCK;
/// Greatest size of one file: eleven octal digits.
const MOST_BYTES: u64 = 0o77_777_777_777;

/// Whether a file that begins so is in this form: by the magic number of its first header.
pub fn is_one(head: &[u8]) -> bool {
    head.get(257..262) == Some(&b"ustar"[..])
}

/// The header of a file; nothing where name or size do not fit.
pub fn header(name: &str, bytes: u64) -> Option<[u8; BLOCK as usize]> {
    if name.len() > 100 || bytes > MOST_BYTES {
        return None;
    }
    let mut block = [0; BLOCK as usize];
    let mut put = |at: usize, field: &[u8]| {
        if let Some(room) = block.get_mut(at..at + field.len()) {
            room.copy_from_slice(field);
        }
    };
    put(0, name.as_bytes());
    put(100, b"0000600\0");
    put(108, b"0000000\0");
    put(116, b"0000000\0");
    put(124, format!("{bytes:011o}\0").as_bytes());
    put(136, b"00000000000\0");
    // The sum is taken with blanks in its place.
    put(148, b"        ");
    put(156, b"0");
    put(257, b"ustar\x0000");
    put(329, b"0000000\0");
    put(337, b"0000000\0");
    let sum: u32 = block.iter().map(|byte| u32::from(*byte)).sum();
    let mut put = |at: usize, field: &[u8]| {
        if let Some(room) = block.get_mut(at..at + field.len()) {
            room.copy_from_slice(field);
        }
    };
    put(148, format!("{sum:06o}\0 ").as_bytes());
    Some(block)
}

/// Length of a file with its header and what pads it.
pub fn length(bytes: u64) -> u64 {
    BLOCK + bytes.div_ceil(BLOCK) * BLOCK
}
