//! Every sentence a person reads, by its id, in one language: the Fluent files of `text/`.
//!
//! Which sentence is right where is not decided here; papers choose theirs in [`content`](crate::content)
//! and screens read the same files themselves.

mod files;
mod isolate;
mod sentence;
mod shown;

use std::sync::{Arc, OnceLock};

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use unic_langid::LanguageIdentifier;

use crate::model::workshop::Units;

use files::{LOCALES, Locale};

/// The texts of one language, and the units its lengths and distances are shown in.
#[derive(Clone)]
pub struct Words {
    tag: &'static str,
    bundle: Arc<FluentBundle<FluentResource>>,
    from_right: bool,
    units: Units,
}

/// Why there is no text.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum WordsError {
    /// No texts in the language asked for.
    #[error("there are no texts in that language")]
    UnknownLocale,
    /// A shipped file cannot be read: a fault of the build.
    #[error("the text file {0} cannot be read")]
    Faulty(&'static str),
    /// No text has this id.
    #[error("a text is missing")]
    Missing(String),
    /// The text asks for something it was not given.
    #[error("a text cannot be filled in")]
    Unfilled(String),
}

impl Words {
    /// The texts of the language with this tag, such as `en`. They are read once for each language.
    ///
    /// # Errors
    /// [`WordsError::UnknownLocale`] for a tag that no folder of `text/` has.
    pub fn of(locale: &str) -> Result<&'static Self, WordsError> {
        static READ: [OnceLock<Result<Words, WordsError>>; LOCALES.len()] =
            [const { OnceLock::new() }; LOCALES.len()];
        let found = LOCALES.iter().zip(&READ).find(|(shipped, _)| shipped.tag == locale);
        let (shipped, slot) = found.ok_or(WordsError::UnknownLocale)?;
        slot.get_or_init(|| Self::read(shipped)).as_ref().map_err(Clone::clone)
    }

    /// The same texts with lengths and distances in these units.
    pub fn measured_in(&self, units: Units) -> Self {
        Self { units, ..self.clone() }
    }

    /// The tags of every language there are texts in.
    pub fn locales() -> Vec<&'static str> {
        LOCALES.iter().map(|locale| locale.tag).collect()
    }

    /// RFC 5646, as its folder is called.
    pub fn locale(&self) -> &'static str {
        self.tag
    }

    /// Whether this language is read from right to left.
    pub fn reads_from_right(&self) -> bool {
        self.from_right
    }

    /// The text with this id, filled in. In a language read from right to left, a value that would lose its order is
    /// set apart by marks that do not show.
    ///
    /// # Errors
    /// [`WordsError::Missing`] or [`WordsError::Unfilled`], with the id.
    pub fn get(&self, id: &str, args: &[(&str, FluentValue<'_>)]) -> Result<String, WordsError> {
        let missing = || WordsError::Missing(id.to_owned());
        let message = self.bundle.get_message(id).ok_or_else(missing)?;
        let pattern = message.value().ok_or_else(missing)?;
        let mut filled = FluentArgs::new();
        for (name, value) in args {
            let value = value.clone();
            filled.set(*name, if self.from_right { isolate::isolated(value) } else { value });
        }
        let mut faults = Vec::new();
        let text = self.bundle.format_pattern(pattern, Some(&filled), &mut faults).into_owned();
        if faults.is_empty() { Ok(text) } else { Err(WordsError::Unfilled(id.to_owned())) }
    }

    /// The text with this id, if there is one: for ids that come from outside, such as a workshop's own layout.
    pub fn find(&self, id: &str) -> Option<String> {
        self.get(id, &[]).ok()
    }

    /// The text with this id. A missing text shows its id, so that a paper is never lost over a word;
    /// the core's own tests stop there instead.
    pub fn text(&self, id: &str) -> String {
        self.with(id, &[])
    }

    /// The text with this id, filled in; a missing one as in [`Words::text`].
    pub fn with(&self, id: &str, args: &[(&str, FluentValue<'_>)]) -> String {
        self.get(id, args).unwrap_or_else(|fault| in_place_of_text(id, &fault))
    }

    fn read(locale: &Locale) -> Result<Self, WordsError> {
        let language: LanguageIdentifier = locale.tag.parse().map_err(|_| WordsError::UnknownLocale)?;
        let mut bundle = FluentBundle::new_concurrent(vec![language]);
        // Fluent's own marks would stand round every value, and part a number from its percent sign.
        bundle.set_use_isolating(false);
        let parsed = |name: &'static str, text: &str| {
            FluentResource::try_new(text.to_owned()).map_err(|_| WordsError::Faulty(name))
        };
        let whole = LOCALES.iter().find(|other| Some(other.tag) == locale.over);
        for (name, text) in whole.unwrap_or(locale).files {
            bundle.add_resource(parsed(name, text)?).map_err(|_| WordsError::Faulty(name))?;
        }
        for (name, text) in whole.map_or(&[][..], |_| locale.files) {
            bundle.add_resource_overriding(parsed(name, text)?);
        }
        let mut words =
            Self { tag: locale.tag, bundle: Arc::new(bundle), from_right: false, units: Units::default() };
        words.from_right = words.get("language-direction", &[])? == "rtl";
        Ok(words)
    }
}

#[cfg(not(test))]
fn in_place_of_text(id: &str, _: &WordsError) -> String {
    id.to_owned()
}

#[cfg(test)]
fn in_place_of_text(_: &str, fault: &WordsError) -> String {
    panic!("{fault:?}")
}

#[cfg(test)]
mod american_tests;
#[cfg(test)]
pub mod for_tests;
#[cfg(test)]
mod language_tests;
#[cfg(test)]
mod tests;
