//! What a data folder holds, by name, so that nothing else in it is ever taken for Steady's own.

/// How the names of folders begin in which a ledger was set aside.
pub const ASIDE: &str = "set-aside-";
/// Where a handover file's parts wait in the folder of what comes in.
pub const HANDOVER: &str = "steady-handover";
/// Where a backup's database is read in the same folder.
pub const RESTORE: &str = "steady-restore";
/// Where a copy of a database that is salvaged lies in it.
pub const SALVAGE: &str = "steady-salvage";

/// How something of Steady's own lies in a data folder.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lies {
    /// One file, nothing below it.
    File,
    /// A folder of files. Folders in it are not ours.
    Folder,
    /// A folder that is ours whole.
    Tree,
}

/// How what has this name lies in a data folder; nothing for what Steady does not keep there.
pub fn lies_in(name: &str) -> Option<Lies> {
    match name {
        "lock" | "suspect" | "placing.json" => Some(Lies::File),
        "photos" | "layouts" | "knowledge" => Some(Lies::Folder),
        // The last is what the desk keeps: where it was served, and the page that opens it.
        "incoming" | "outgoing" | "practice" | "rehearsals" | "desk" => Some(Lies::Tree),
        _ if name.starts_with("steady.db") || name.starts_with("data-id") => Some(Lies::File),
        _ if is_aside(name) => Some(Lies::Tree),
        _ => None,
    }
}

/// Whether a name is that of a folder in which a ledger was set aside: the day and the time follow its beginning.
pub fn is_aside(name: &str) -> bool {
    let form = |at: usize, byte: u8| match at {
        4 | 7 => byte == b'-',
        10 => byte == b'T',
        _ => byte.is_ascii_digit(),
    };
    name.strip_prefix(ASIDE)
        .and_then(|stamp| stamp.as_bytes().get(..11))
        .is_some_and(|stamp| stamp.iter().enumerate().all(|(at, byte)| form(at, *byte)))
}

/// Whether a name was made of a fresh id, with an ending or without.
pub fn is_of_id(name: &str) -> bool {
    let stem = name.split('.').next().unwrap_or_default();
    stem.len() == 32 && stem.bytes().all(|byte| matches!(byte, b'0'..=b'9' | b'a'..=b'f'))
}

/// Whether a file in `photos` is one that Steady put there, whole or cut off.
pub fn is_of_photos(name: &str) -> bool {
    let hash = name.split('.').next().unwrap_or_default();
    hash.len() == 64 && hash.bytes().all(|byte| matches!(byte, b'0'..=b'9' | b'a'..=b'f'))
}
