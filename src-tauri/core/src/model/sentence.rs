//! A sentence that the core chose and a screen puts into words: which text, and what goes into it. The language is
//! the reader's, so no document has to be asked for to show one sentence of it.

use std::collections::BTreeMap;

use serde::Serialize;

/// A sentence before it has a language.
#[derive(Debug, Clone, Default, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Sentence {
    /// Ids of texts: the first that there is.
    pub texts: Vec<String>,
    /// What stands there where none of them is.
    pub or: Option<String>,
    /// What the text asks for, by name.
    pub args: BTreeMap<String, Arg>,
}

/// What goes into a sentence.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(tag = "is", content = "of", rename_all = "kebab-case")]
pub enum Arg {
    /// The same in every language, such as a name.
    Verbatim(String),
    /// Filled in as a sentence within the sentence.
    Sentence(Sentence),
    /// Sentences one after the other.
    Sentences(Vec<Sentence>),
    /// Things in a row, joined as the language joins them.
    List(Vec<Sentence>),
    /// How many; a text may choose its wording by it.
    Count(u32),
    /// A number with at most so many decimals.
    Number(f64, u8),
    /// A movement, mm.
    Movement(f64),
    /// A form error or an uncertainty, um.
    Fine(f64),
    /// A share of one.
    Percent(f64),
}

impl Sentence {
    /// The text with this id.
    pub fn of(text: impl Into<String>) -> Self {
        Self { texts: vec![text.into()], ..Self::default() }
    }

    /// The first of these texts that there is.
    pub fn first_of(texts: impl IntoIterator<Item = String>) -> Self {
        Self { texts: texts.into_iter().collect(), ..Self::default() }
    }

    /// The same for a text that may be missing, such as that of a workshop's own cause.
    #[must_use]
    pub fn or(mut self, stand_in: impl Into<String>) -> Self {
        self.or = Some(stand_in.into());
        self
    }

    /// The same with one thing more to fill in.
    #[must_use]
    pub fn with(mut self, name: &str, arg: impl Into<Arg>) -> Self {
        self.args.insert(name.to_owned(), arg.into());
        self
    }
}

impl From<Sentence> for Arg {
    fn from(sentence: Sentence) -> Self {
        Self::Sentence(sentence)
    }
}

impl From<u32> for Arg {
    fn from(count: u32) -> Self {
        Self::Count(count)
    }
}
