//! What a word of a search means beside its letters: a rating by its signal word, a month by its name, as any of the
//! languages writes them. What is printed is found as it is printed.

use std::collections::BTreeSet;
use std::sync::OnceLock;

use crate::model::rating::Word;
use crate::model::time::Moment;
use crate::store::cards::{Sought, folded};
use crate::words::Words;

/// Shortest beginning of a month's name that is taken for it.
const BEGINNING: usize = 3;

/// The words of a search, each with what it means.
pub(super) fn sought(search: &str) -> Vec<Sought> {
    let words = search.split_whitespace().take(8);
    words
        .map(|typed| {
            let plain = folded(typed);
            let plain = plain.trim_matches(|sign: char| !sign.is_alphanumeric());
            Sought { typed: typed.to_owned(), rating: rating(plain), month: month(plain) }
        })
        .collect()
}

fn rating(plain: &str) -> Option<Word> {
    let named = |word: &Word| {
        let id = format!("word-{}", word.id());
        every_language().any(|words| folded(&words.text(&id)) == plain)
    };
    Word::ALL.into_iter().find(named)
}

/// The month whose name this is in some language, or the only one whose name begins so.
fn month(plain: &str) -> Option<u8> {
    static NAMES: OnceLock<Vec<(u8, String)>> = OnceLock::new();
    let names = NAMES.get_or_init(names_of_months);
    let exact = names.iter().find(|(_, name)| name == plain);
    let begun = || {
        let begins = |(_, name): &&(u8, String)| name.starts_with(plain);
        let months: BTreeSet<u8> = names.iter().filter(begins).map(|(month, _)| *month).collect();
        if months.len() == 1 { months.first().copied() } else { None }
    };
    let long_enough = plain.chars().count() >= BEGINNING;
    exact.map(|(month, _)| *month).or_else(|| long_enough.then(begun).flatten())
}

/// The words of a printed date that are there in one month alone.
fn names_of_months() -> Vec<(u8, String)> {
    let mut names = Vec::new();
    for words in every_language() {
        let printed: Vec<BTreeSet<String>> =
            (1..=12).map(|month| letters(&words.date(middle_of(month)))).collect();
        for (month, own) in (1..).zip(&printed) {
            let only = |word: &&String| printed.iter().filter(|other| other.contains(*word)).count() == 1;
            names.extend(own.iter().filter(only).map(|word| (month, word.clone())));
        }
    }
    names
}

fn letters(date: &str) -> BTreeSet<String> {
    let folded = folded(date);
    let words = folded.split(|sign: char| !sign.is_alphabetic());
    words.filter(|word| word.chars().count() >= BEGINNING).map(str::to_owned).collect()
}

/// A day about the middle of a month of 2026: the 15th of January, and thirty days on for each month.
fn middle_of(month: i64) -> Moment {
    const JANUARY: i64 = 1_768_478_400_000;
    Moment(JANUARY + (month - 1) * 30 * 86_400_000)
}

fn every_language() -> impl Iterator<Item = &'static Words> {
    Words::locales().into_iter().filter_map(|locale| Words::of(locale).ok())
}

#[cfg(test)]
mod tests {
    use super::sought;
    use crate::model::rating::Word;

    #[track_caller]
    fn check(typed: &str, rating: Option<Word>, month: Option<u8>) {
        let found = sought(typed);
        assert_eq!((found[0].rating, found[0].month), (rating, month), "{typed}");
    }

    #[test]
    fn signal_words_and_months_are_known_in_every_language() {
        check("danger", Some(Word::Danger), None);
        check("GEFAHR", Some(Word::Danger), None);
        check("Warnung", Some(Word::Warning), None);
        check("November", None, Some(11));
        check("nov", None, Some(11));
        check("novembre", None, Some(11));
        check("noviembre,", None, Some(11));
        check("März", None, Some(3));
        check("août", None, Some(8));
        check("בנובמבר", None, Some(11));
        // June and July begin alike in French.
        check("jui", None, None);
        check("de", None, None);
        check("Lindqvist", None, None);
    }
}
