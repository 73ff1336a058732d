//! The write-ahead log ("WAL File Format"): a header of 32 bytes, then frames of 24 bytes and a page each.
//!
//! A frame counts if a frame that ends its transaction stands at or behind it with the same two salts. SQLite ends at
//! the first frame whose sum is wrong; here the frames behind a damaged one are read too, and those that an earlier
//! round of the log left behind under other salts, since every line in them proves itself. Frames of a transaction
//! that never ended are left alone: nobody was told that what they hold was kept.

use std::collections::BTreeSet;
use std::fs::File;
use std::io::{Read, Seek, SeekFrom};

use super::is_page_size;

const HEADER: u64 = 32;
const FRAME: u64 = 24;

/// One page in the log.
#[derive(Debug, Clone, Copy)]
pub struct Frame {
    /// The page's number.
    pub page: u32,
    /// Where its bytes begin.
    pub offset: u64,
}

/// The frames that count, in order.
#[derive(Debug, Default)]
pub struct Log {
    /// Those of the log as it stands.
    pub committed: Vec<Frame>,
    /// Those that an earlier round left behind; what they hold was written back into the database since.
    pub left: Vec<Frame>,
    /// Those whose head is damaged: what they hold may be the latest of its page.
    pub unsure: Vec<Frame>,
}

/// The size of a page as the log's header has it.
pub fn page_size(log: &mut File) -> Option<usize> {
    let header: [u8; 32] = read(log, 0)?;
    let magic = number(&header, 0)?;
    let size = usize::try_from(number(&header, 8)?).ok()?;
    (matches!(magic, 0x377f_0682 | 0x377f_0683) && is_page_size(size)).then_some(size)
}

impl Log {
    /// Reads the frames' heads.
    pub fn read(log: &mut File, size: usize) -> Self {
        let Ok(bytes) = log.metadata().map(|file| file.len()) else { return Self::default() };
        let step = FRAME + size as u64;
        let heads = (0..bytes.saturating_sub(HEADER) / step).map(|index| HEADER + index * step);
        let header_is_sound = page_size(log).is_some();
        let salts = salts(log, header_is_sound);
        let mut frames = Self::default();
        let rounds = rounds(log, heads.clone());
        let (mut open, mut round) = (Vec::new(), None);
        for at in heads {
            let Some(head) = read::<24>(log, at) else { break };
            let (Some(page), Some(ends)) = (number(&head, 0), number(&head, 4)) else { break };
            let salt = head.get(8..16).map(<[u8]>::to_vec);
            let known = salt
                .as_ref()
                .is_some_and(|salt| salts.is_some_and(|own| *salt == own) || rounds.contains(salt));
            if page == 0 || !known {
                frames.unsure.push(Frame { page, offset: at + FRAME });
                continue;
            }
            if salt != round {
                open.clear();
                round = salt;
            }
            open.push(Frame { page, offset: at + FRAME });
            if ends != 0 {
                let stands = salts.is_some_and(|salts| round.as_deref() == Some(salts.as_slice()));
                if stands { frames.committed.append(&mut open) } else { frames.left.append(&mut open) }
            }
        }
        frames
    }
}

/// Salts that more than one frame carries; a damaged head's own are its alone.
fn rounds(log: &mut File, heads: impl Iterator<Item = u64>) -> BTreeSet<Vec<u8>> {
    let (mut seen, mut rounds) = (BTreeSet::new(), BTreeSet::new());
    for salt in heads.filter_map(|at| read::<8>(log, at + 8)).filter(|salt| *salt != [0; 8]) {
        if !seen.insert(salt) {
            rounds.insert(salt.to_vec());
        }
    }
    rounds
}

/// The salts of the header, or of the first frame where the header is damaged.
fn salts(log: &mut File, header_is_sound: bool) -> Option<[u8; 8]> {
    let at = if header_is_sound { 16 } else { HEADER + 8 };
    read(log, at)
}

fn read<const N: usize>(file: &mut File, at: u64) -> Option<[u8; N]> {
    let mut bytes = [0; N];
    file.seek(SeekFrom::Start(at)).ok()?;
    file.read_exact(&mut bytes).ok()?;
    Some(bytes)
}

fn number(bytes: &[u8], at: usize) -> Option<u32> {
    Some(u32::from_be_bytes(bytes.get(at..at + 4)?.try_into().ok()?))
}
