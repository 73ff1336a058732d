//! Which photos of a backup are read back when it is made anew. All of them would take as long as copying them; a share
//! each time, in turn, finds what has rotted within a few backups.

use std::collections::BTreeMap;

/// Bytes that are read back each time: a disk at the end of a slow cable needs about a second for them.
const SHARE: u64 = 32 * 1024 * 1024;
/// What stands for the photo proven last where all of them are in doubt.
pub const ALL: &str = "all";

/// The photos to prove now, by hash and length: those behind the one that was proven last, and round to the first.
/// At least one of them, however long.
pub fn share<'a>(photos: &'a BTreeMap<String, u64>, proven_to: Option<&str>) -> Vec<&'a str> {
    let after = proven_to.filter(|last| *last != ALL).unwrap_or_default();
    let (before, behind): (Vec<_>, Vec<_>) = photos.iter().partition(|(sha256, _)| sha256.as_str() <= after);
    let mut left = if proven_to == Some(ALL) { u64::MAX } else { SHARE };
    let mut share = Vec::new();
    for (sha256, bytes) in behind.into_iter().chain(before) {
        if left == 0 {
            break;
        }
        left = left.saturating_sub(*bytes);
        share.push(sha256.as_str());
    }
    share
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use super::{ALL, SHARE, share};

    #[track_caller]
    fn check(bytes: u64, proven_to: Option<&str>, expected: &str) {
        let photos: BTreeMap<String, u64> = ["a", "b", "c", "d"].map(|name| (name.to_owned(), bytes)).into();
        assert_eq!(share(&photos, proven_to).concat(), expected, "{bytes} {proven_to:?}");
    }

    #[test]
    fn each_photo_has_its_turn() {
        check(1, None, "abcd");
        check(1, Some("b"), "cdab");
        check(SHARE / 2, None, "ab");
        check(SHARE / 2, Some("b"), "cd");
        check(SHARE / 2, Some("c"), "da");
        check(SHARE / 2, Some("gone"), "ab");
        check(2 * SHARE, Some("d"), "a");
        check(2 * SHARE, Some(ALL), "abcd");
    }
}
