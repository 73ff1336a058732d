//! A visit's entries, all devices together, against the bounds of a whole visit.

use std::collections::{BTreeMap, HashSet};

use super::super::bench::BenchBody;
use super::super::entry::EntryBody;
use super::check::{Checked, ensure};

/// Checks the entries of one visit, each with its hash.
///
/// # Errors
/// More entries, photos, notes of the bench, or answers that stand side by side than any visit has.
pub fn check(entries: &[(&str, &EntryBody)]) -> Checked {
    ensure("entries", entries.len() <= super::ENTRIES)?;
    let photos = entries.iter().filter(|(_, body)| body.photo().is_some()).count();
    ensure("photos", photos <= super::PHOTOS)?;
    let is_note = |(_, body): &&(&str, &EntryBody)| {
        matches!(body, EntryBody::Bench { bench: BenchBody::Noted { .. }, .. })
    };
    ensure("notes", entries.iter().filter(is_note).count() <= super::NOTES)?;
    let mut gone: HashSet<&str> = HashSet::new();
    for (_, body) in entries {
        match body {
            EntryBody::Answered { supersedes: more, .. } | EntryBody::Amended { takes_back: more, .. } => {
                gone.extend(more.iter().map(String::as_str));
            }
            EntryBody::Withdrawn { entry, .. } => {
                gone.insert(entry);
            }
            _ => {}
        }
    }
    let mut standing: BTreeMap<&str, usize> = BTreeMap::new();
    for (hash, body) in entries {
        if let EntryBody::Answered { step, .. } = body
            && !gone.contains(hash)
        {
            *standing.entry(step).or_default() += 1;
        }
    }
    ensure("answers", standing.values().all(|answers| *answers <= super::STANDING_ANSWERS))
}
