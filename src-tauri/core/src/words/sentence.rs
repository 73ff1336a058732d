//! A sentence that was chosen without a language, in this one. The screens do the same in `ui/src/sentence.ts`.

use fluent_bundle::FluentValue;

use super::Words;
use crate::model::sentence::{Arg, Sentence};

impl Words {
    /// A sentence in this language.
    pub fn say(&self, sentence: &Sentence) -> String {
        let args: Vec<(&str, FluentValue<'_>)> =
            sentence.args.iter().map(|(name, arg)| (name.as_str(), self.filled(arg))).collect();
        let found = sentence.texts.iter().find(|id| self.bundle.has_message(id));
        match (found, &sentence.or) {
            (None, Some(stand_in)) => stand_in.clone(),
            (found, _) => self.with(found.or(sentence.texts.last()).map_or("", String::as_str), &args),
        }
    }

    /// Sentences in this language, one after the other.
    pub fn say_all(&self, sentences: &[Sentence]) -> String {
        self.each(sentences).join(" ")
    }

    /// What goes into a sentence, in this language.
    pub fn arg(&self, arg: &Arg) -> String {
        match arg {
            Arg::Count(count) => self.number(f64::from(*count)),
            Arg::Verbatim(text) => text.clone(),
            Arg::Sentence(sentence) => self.say(sentence),
            Arg::Sentences(sentences) => self.say_all(sentences),
            Arg::List(sentences) => self.list(&self.each(sentences)),
            Arg::Number(value, decimals) => self.rounded(*value, *decimals),
            Arg::Movement(mm) => self.movement(*mm),
            Arg::Fine(um) => self.fine(*um),
            Arg::Percent(share) => self.percent(*share),
        }
    }

    /// A count stays a number: a text may choose its wording by it.
    fn filled(&self, arg: &Arg) -> FluentValue<'static> {
        match arg {
            Arg::Count(count) => FluentValue::from(*count),
            other => self.arg(other).into(),
        }
    }

    fn each(&self, sentences: &[Sentence]) -> Vec<String> {
        sentences.iter().map(|sentence| self.say(sentence)).collect()
    }
}
