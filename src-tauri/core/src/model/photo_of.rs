//! What a photo shows: a step of the walk, or a place of the bench's work. In the ledger and on the screens it is
//! one short text; it is read once, here.

use std::fmt;

use serde::{Deserialize, Serialize};

use super::limits::PASSES;

/// What a photo shows.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(from = "String", into = "String")]
pub enum PhotoOf {
    /// A step of the walk. A place that no bench has is a step that no walk has.
    Step(String),
    /// The bench's work.
    Work(WorkPlace),
}

/// A place of the bench's work: `bench-found`, `bench-behind`, `bench-finished`, `bench-ring` or `bench-pass-1` and so on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[cfg_attr(
    feature = "bindings",
    ts(type = "'bench-found' | 'bench-behind' | 'bench-finished' | 'bench-ring' | `bench-pass-${number}`")
)]
#[serde(try_from = "String", into = "String")]
pub enum WorkPlace {
    /// The bore as found.
    Found,
    /// The old sleeve out, and the bore behind it.
    Behind,
    /// The bore as finished.
    Finished,
    /// The ring after assembly.
    Ring,
    /// The bore after the pass of this number, from 1 to [`PASSES`].
    Pass(u32),
}

impl PhotoOf {
    /// The step, if it is one.
    pub fn step(&self) -> Option<&str> {
        if let Self::Step(step) = self { Some(step) } else { None }
    }

    /// The place of the bench's work, if it is one.
    pub fn work(&self) -> Option<WorkPlace> {
        if let Self::Work(place) = self { Some(*place) } else { None }
    }
}

impl WorkPlace {
    /// Only the spelling that is written is read: an entry has to read back as the bytes it is chained by.
    fn named(text: &str) -> Option<Self> {
        let pass = |number: &str| number.parse().ok().filter(|number| (1..=PASSES).contains(number));
        let place = match text {
            "bench-found" => Self::Found,
            "bench-behind" => Self::Behind,
            "bench-finished" => Self::Finished,
            "bench-ring" => Self::Ring,
            _ => Self::Pass(text.strip_prefix("bench-pass-").and_then(pass)?),
        };
        (place.to_string() == text).then_some(place)
    }
}

impl fmt::Display for WorkPlace {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Found => to.write_str("bench-found"),
            Self::Behind => to.write_str("bench-behind"),
            Self::Finished => to.write_str("bench-finished"),
            Self::Ring => to.write_str("bench-ring"),
            Self::Pass(number) => write!(to, "bench-pass-{number}"),
        }
    }
}

impl From<String> for PhotoOf {
    fn from(text: String) -> Self {
        WorkPlace::named(&text).map_or(Self::Step(text), Self::Work)
    }
}

impl From<PhotoOf> for String {
    fn from(of: PhotoOf) -> Self {
        match of {
            PhotoOf::Step(step) => step,
            PhotoOf::Work(place) => place.to_string(),
        }
    }
}

impl TryFrom<String> for WorkPlace {
    type Error = &'static str;

    fn try_from(text: String) -> Result<Self, Self::Error> {
        Self::named(&text).ok_or("no place of the bench's work")
    }
}

impl From<WorkPlace> for String {
    fn from(place: WorkPlace) -> Self {
        place.to_string()
    }
}

#[cfg(test)]
mod tests {
    use super::{PhotoOf, WorkPlace};

    #[test]
    fn every_spelling_reads_back_as_it_was_written() {
        for (text, place) in [
            ("bench-found", Some(WorkPlace::Found)),
            ("bench-behind", Some(WorkPlace::Behind)),
            ("bench-finished", Some(WorkPlace::Finished)),
            ("bench-ring", Some(WorkPlace::Ring)),
            ("bench-pass-1", Some(WorkPlace::Pass(1))),
            ("bench-pass-200", Some(WorkPlace::Pass(200))),
            ("bench-pass-0", None),
            ("bench-pass-201", None),
            ("bench-pass-007", None),
            ("bench-pass-+7", None),
            ("bench-roof", None),
            ("play-vertical", None),
        ] {
            let of = PhotoOf::from(text.to_owned());
            assert_eq!(of.work(), place, "{text}");
            assert_eq!(String::from(of), text);
        }
    }
}
