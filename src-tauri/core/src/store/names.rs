//! What a data folder holds, by name, so that nothing else in it is ever taken for Steady's own.

/// How something of Steady's own lies in a data folder.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lies {
    /// A file.
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
        _ if name.starts_with("set-aside-") => Some(Lies::Tree),
        _ => None,
    }
}

/// Whether a file in `photos` is one that Steady put there, whole or cut off.
pub fn is_of_photos(name: &str) -> bool {
    let hash = name.split('.').next().unwrap_or_default();
    hash.len() == 64 && hash.bytes().all(|byte| matches!(byte, b'0'..=b'9' | b'a'..=b'f'))
}
