//! American English is made of the English texts by a list of words, so that neither can say what the other does not:
//! `STEADY_WRITE_AMERICAN=1 cargo test -p steady-core --lib american` writes it.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use super::Words;
use super::for_tests::{folder, read};

const TAG: &str = "en-US";
const FILE: &str = "differs.ftl";
const HEAD: &str = "### What American English says otherwise. Made of the English texts and of words.toml, which says how.\n";

/// `words.toml`.
#[derive(serde::Deserialize)]
#[serde(deny_unknown_fields)]
struct List {
    /// American by British word.
    words: BTreeMap<String, String>,
    /// Messages that differ by more.
    own: BTreeMap<String, String>,
}

/// Every message of the English texts as it stands in its file, by file and place.
fn english() -> Vec<(String, String)> {
    let mut paths: Vec<_> =
        std::fs::read_dir(folder("en")).expect("the text folder is there").flatten().collect();
    paths.sort_by_key(std::fs::DirEntry::file_name);
    let mut messages: Vec<(String, String)> = Vec::new();
    for path in paths
        .iter()
        .map(std::fs::DirEntry::path)
        .filter(|path| path.extension().is_some_and(|it| it == "ftl"))
    {
        let text = std::fs::read_to_string(&path).expect("the file can be read");
        for line in text.lines().filter(|line| !line.starts_with('#') && !line.is_empty()) {
            match line
                .split_once(" =")
                .filter(|_| line.starts_with(|first: char| first.is_ascii_alphabetic()))
            {
                Some((id, said)) => messages.push((id.to_owned(), said.to_owned())),
                None => {
                    let (_, said) = messages.last_mut().expect("a file starts with a message");
                    write!(said, "\n{line}").expect("a text grows");
                }
            }
        }
    }
    messages
}

/// The text with a word replaced wherever it stands alone, small or with a capital.
fn replaced(text: &str, british: &str, american: &str) -> String {
    let capital = |word: &str| {
        let mut letters = word.chars();
        letters
            .next()
            .map(|first| first.to_uppercase().chain(letters).collect::<String>())
            .unwrap_or_default()
    };
    let once = |text: &str, from: &str, to: &str| {
        let part_of_word = |sign: char| sign.is_alphanumeric() || "-_$".contains(sign);
        let mut made = String::new();
        let mut rest = text;
        while let Some((before, after)) = rest.split_once(from) {
            let alone = !made.chars().chain(before.chars()).next_back().is_some_and(part_of_word)
                && !after.starts_with(part_of_word);
            made.push_str(before);
            made.push_str(if alone { to } else { from });
            rest = after;
        }
        made + rest
    };
    once(&once(text, british, american), &capital(british), &capital(american))
}

/// What American English says for a text.
fn american(list: &List, text: &str) -> String {
    let mut words: Vec<_> = list.words.iter().collect();
    words.sort_by_key(|(british, _)| std::cmp::Reverse(british.len()));
    words.into_iter().fold(text.to_owned(), |text, (british, american)| replaced(&text, british, american))
}

/// The file as it has to be.
fn made(list: &List) -> String {
    let mut text = HEAD.to_owned();
    for (id, said) in english() {
        let own = list.own.get(&id).map_or_else(|| american(list, &said), |own| format!(" {own}"));
        if own != said {
            write!(text, "\n{id} ={own}").expect("a text grows");
        }
    }
    text + "\n"
}

#[test]
fn what_holds_a_british_word_has_its_american_one() {
    let list: List = read(TAG, "words.toml");
    let path = folder(TAG).join(FILE);
    if std::env::var_os("STEADY_WRITE_AMERICAN").is_some() {
        std::fs::write(&path, made(&list)).expect("the text folder can be written");
    }
    let kept = std::fs::read_to_string(&path).unwrap_or_default();
    assert!(
        kept == made(&list),
        "{FILE} is not what the English texts make: {}",
        "set STEADY_WRITE_AMERICAN=1"
    );
    let known: Vec<String> = english().into_iter().map(|(id, _)| id).collect();
    let unknown = list.own.keys().find(|id| !known.contains(id));
    assert_eq!(unknown, None, "English does not say it");
    let unused = list
        .words
        .keys()
        .find(|british| !english().iter().any(|(_, said)| replaced(said, british, "-") != *said));
    assert_eq!(unused, None, "no text holds it");
}

#[test]
fn a_word_is_replaced_where_it_stands_alone() {
    let list: List = read(TAG, "words.toml");
    for (british, want) in [
        ("Prop shaft, centre bearing, fibre.", "Driveshaft, center bearing, fiber."),
        ("Load it on a recovery truck.", "Load it on a flatbed truck."),
        ("grey-iron in a grey band", "grey-iron in a gray band"),
        ("{ $metres } millimetres", "{ $metres } millimeters"),
        ("Guard the swarf, look at the tyres", "Guard the chips, look at the tires"),
    ] {
        assert_eq!(american(&list, british), want);
    }
}

#[test]
fn what_does_not_differ_is_said_in_english() {
    let (english, american) = (Words::of("en").expect("shipped"), Words::of(TAG).expect("shipped"));
    assert_eq!(american.text("note-means-caution"), english.text("note-means-caution"));
    assert_eq!(english.text("finding-title"), "Finding: prop shaft and its support bearing");
    assert_eq!(american.text("finding-title"), "Finding: driveshaft and its support bearing");
}
