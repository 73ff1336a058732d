//! What the tests look for in a language, from `checks.toml` and `formats.toml` in its folder.

use std::path::PathBuf;

use super::Words;
use super::files::LOCALES;

/// The folder of a language; all of them for an empty tag.
pub fn folder(tag: &str) -> PathBuf {
    PathBuf::from(concat!(env!("CARGO_MANIFEST_DIR"), "/text")).join(tag)
}

/// What only somebody who reads the language can say; each field is told in the file.
#[derive(serde::Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Checks {
    /// DANGER, WARNING, CAUTION and NOTICE.
    pub signal_words: [String; 4],
    /// One of them names the maker in the caution of a step behind a gate.
    pub maker: Vec<String>,
    /// What WARNING says: no driving, what carries the car, engine off, the driven wheels.
    pub forbidden: [String; 4],
    /// What DANGER forbids beside.
    pub start: String,
    /// What would let somebody drive it after all.
    pub own_wheels: String,
    /// 5 January 2026, 7:04 UTC.
    pub moment: String,
    /// 0.8 mm.
    pub length: String,
    /// Three readings, their mean, its uncertainty and the limit.
    pub readings: [String; 4],
    /// Signs that stand nowhere in the texts.
    pub unwanted: Vec<String>,
    /// Names of the reading measures.
    pub readability: Vec<String>,
    /// Why there is no reading measure.
    pub no_formula: Option<String>,
    /// `None` for the language the rows were written in.
    pub law: Option<Law>,
}

/// How the rows of the roadworthiness law are named.
#[derive(serde::Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Law {
    /// The annex, up to its row.
    pub annex: String,
    /// A major defect.
    pub major: String,
    /// The law's word for what may not be driven.
    pub dangerous: String,
}

/// What is to be read out of a language's texts.
#[track_caller]
pub fn checks(tag: &str) -> Checks {
    read(tag, "checks.toml")
}

/// A file of a language's folder.
#[track_caller]
pub fn read<T: serde::de::DeserializeOwned>(tag: &str, file: &str) -> T {
    let path = folder(tag).join(file);
    let text = std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    toml::from_str(&text).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

/// English first; ways of writing (`en-US`) too.
pub fn every_language() -> impl Iterator<Item = &'static Words> {
    Words::locales().into_iter().map(|tag| Words::of(tag).expect("a shipped language can be read"))
}

/// The tags of the languages that say everything themselves: not of a way of writing one of them.
pub fn whole_languages() -> impl Iterator<Item = &'static str> {
    LOCALES.iter().filter(|locale| locale.over.is_none()).map(|locale| locale.tag)
}
