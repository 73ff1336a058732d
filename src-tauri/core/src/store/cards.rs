//! The list of visits: one derived card each, its page and its search.

use std::collections::BTreeSet;

use rusqlite::{Connection, OptionalExtension, Row, params};
use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

use super::fault::StoreFault;
use super::open::Store;
use crate::model::former_car::FormerCar;
use crate::model::rating::Word;

/// A visit's card as stored. `word` and `receipt` hold the ids used in text keys.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct CardRow {
    /// Id; one card a visit.
    pub visit: String,
    /// Make and model as written.
    pub label: String,
    /// As typed; folded in `haystack`.
    pub plate: String,
    /// As typed; folded in `haystack`.
    pub vin: String,
    /// Owner's name.
    pub owner: String,
    /// Milliseconds since 1970.
    pub opened_at: i64,
    /// Milliseconds since 1970.
    pub updated_at: i64,
    /// The rating's id, if there is one.
    pub word: Option<String>,
    /// Steps answered.
    pub answered: u32,
    /// Those of them whose answer decides something; none on a card from before that was counted.
    pub conclusive: Option<u32>,
    /// Steps that apply.
    pub steps: u32,
    /// The decision's id, if the note was signed for.
    pub receipt: Option<String>,
    /// The repair's stage, by id.
    pub repair: Option<String>,
    /// An outcome is confirmed.
    pub confirmed: bool,
    /// What the search looks in: [`haystack`] of the fields.
    pub haystack: String,
}

/// At most [`PAGE`] cards, and how to go on.
#[derive(Debug, Clone, Default)]
pub struct CardPage {
    /// Latest first.
    pub cards: Vec<CardRow>,
    /// How many match in all.
    pub total: u64,
    /// Where the next page starts.
    pub next: Option<String>,
}

/// A word of a search. A card fits it that holds it as it was typed, is rated so, or was opened in that month.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sought {
    /// One word, as somebody typed it; how it is folded hangs on what it is looked for in.
    pub typed: String,
    /// The rating it names.
    pub rating: Option<Word>,
    /// The month it names, from 1.
    pub month: Option<u8>,
}

/// Cards on a page.
pub const PAGE: usize = 30;

/// What a card is read from.
const CARDS: &str =
    "SELECT visit, label, plate, vin, owner, opened_at, updated_at, word, answered, steps, receipt,
         haystack, settled, repair, confirmed
     FROM card";

/// Between plate and VIN of a car as it was written down before; no field holds it.
const FORMER: char = '\u{1f}';

/// What the search looks in: the fields folded, with plate and VIN also without their spaces and hyphens,
/// the day of opening as it may be typed, and what the car was written down as before.
pub fn haystack(fields: &[&str], former: &[FormerCar], day: &str) -> String {
    let mut text = day_forms(day);
    for field in fields {
        for form in [folded(field), packed(field)] {
            text.push('\n');
            text.push_str(&form);
        }
    }
    for FormerCar { plate, vin } in former {
        let [plate, vin] = [plate, vin].map(|field| packed(field));
        // The VIN on a line of its own too: a car is looked for at the start of one.
        text.push_str(&format!("\n{plate}{FORMER}{vin}\n{vin}"));
    }
    text
}

/// Plates and VINs, packed, under which a visit was written down before.
fn former(haystack: &str) -> impl Iterator<Item = (&str, &str)> {
    haystack.lines().filter_map(|line| line.split_once(FORMER))
}

/// Lower case without accents and with a straight apostrophe: what a person types who has no such key.
pub(crate) fn folded(text: &str) -> String {
    let plain = |letter: char| match letter {
        'ł' => "l".to_owned(),
        'ø' => "o".to_owned(),
        'đ' => "d".to_owned(),
        'ß' => "ss".to_owned(),
        'æ' => "ae".to_owned(),
        'œ' => "oe".to_owned(),
        '\u{2018}' | '\u{2019}' | '\u{02bc}' => "'".to_owned(),
        letter => letter.to_string(),
    };
    text.to_lowercase().nfd().filter(|letter| !is_combining_mark(*letter)).map(plain).collect()
}

/// Folded, without what people put between letters and digits.
fn packed(text: &str) -> String {
    folded(text).chars().filter(|letter| letter.is_alphanumeric()).collect()
}

/// A day such as `2026-11-25` in the orders people write it in, with points and with strokes.
fn day_forms(day: &str) -> String {
    let parts: Vec<&str> = day.split('-').collect();
    let [year, month, date] = parts.as_slice() else { return day.to_owned() };
    format!("{day}\n{date}.{month}.{year}\n{date}/{month}/{year}\n{month}/{date}/{year}")
}

pub(super) fn write(connection: &Connection, card: &CardRow) -> Result<(), rusqlite::Error> {
    let mut statement = connection.prepare_cached(
        "INSERT INTO card (visit, label, plate, vin, owner, opened_at, updated_at, word, answered, steps, receipt, haystack,
             settled, repair, confirmed)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15)
         ON CONFLICT (visit) DO UPDATE SET label = excluded.label, plate = excluded.plate, vin = excluded.vin,
             owner = excluded.owner, opened_at = excluded.opened_at, updated_at = excluded.updated_at,
             word = excluded.word, answered = excluded.answered, steps = excluded.steps,
             receipt = excluded.receipt, haystack = excluded.haystack, settled = excluded.settled,
             repair = excluded.repair, confirmed = excluded.confirmed",
    )?;
    statement.execute(params![
        card.visit,
        card.label,
        card.plate,
        card.vin,
        card.owner,
        card.opened_at,
        card.updated_at,
        card.word,
        card.answered,
        card.steps,
        card.receipt,
        card.haystack,
        card.conclusive,
        card.repair,
        card.confirmed
    ])?;
    Ok(())
}

impl Store {
    /// A page of cards that fit every word of `search`, after the card `after` names.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn cards(&self, search: &[Sought], after: Option<&str>) -> Result<CardPage, StoreFault> {
        page(&self.connection, search, after).map_err(StoreFault::sql("list visits"))
    }

    /// The card of a visit.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn card(&self, visit: &str) -> Result<Option<CardRow>, StoreFault> {
        let read = || -> Result<Option<CardRow>, rusqlite::Error> {
            self.connection
                .prepare_cached(&format!("{CARDS} WHERE visit = ?1"))?
                .query_row([visit], card)
                .optional()
        };
        read().map_err(StoreFault::sql("read a card"))
    }

    /// Writes a card anew, beside the ledger that it is derived from.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn renew_card(&self, card: &CardRow) -> Result<(), StoreFault> {
        write(&self.connection, card).map_err(StoreFault::sql("write a card"))
    }

    /// Visits whose intake was written anew and whose card is from before they were found by what they were checked as.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn cards_to_renew(&self) -> Result<Vec<String>, StoreFault> {
        let sql = "SELECT visit FROM card WHERE settled IS NULL AND EXISTS (
             SELECT 1 FROM entry WHERE entry.visit = card.visit AND instr(entry.body, '\"amended\"') > 0)";
        let read = || -> Result<Vec<String>, rusqlite::Error> {
            self.connection.prepare(sql)?.query_map([], |row| row.get(0))?.collect()
        };
        read().map_err(StoreFault::sql("look for cards of before"))
    }

    /// The visits among these cards of whose car another visit is rated graver, and a WARNING at least. All of them are
    /// asked for at once: a look for each car would read every card once more.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn beside_graver(&self, cards: &[CardRow]) -> Result<BTreeSet<String>, StoreFault> {
        beside_graver(&self.connection, cards).map_err(StoreFault::sql("look for graver visits of cars"))
    }

    /// The visits of a car, oldest first: the same VIN, or the same plate where no two VINs differ. Letters and
    /// digits alone are compared, in one case; a plate or VIN of fewer than three of them names no car.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn visits_of_car(&self, plate: &str, vin: &str) -> Result<Vec<String>, StoreFault> {
        let found = of_car(&self.connection, &packed(plate), &packed(vin));
        let found = found.map_err(StoreFault::sql("find the car's visits"))?;
        Ok(found.into_iter().filter(|found| found.is_now).map(|found| found.visit).collect())
    }

    /// The latest visits of a car but for the one that asks, the earliest first: as many as `most`, and as many again
    /// of those that were rated DANGER or WARNING, so that no row of later ones puts them out of sight. Those that were
    /// written down under this plate or VIN before it was corrected are among them.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn latest_of_car(
        &self,
        (plate, vin): (&str, &str),
        except: Option<&str>,
        most: usize,
    ) -> Result<Vec<String>, StoreFault> {
        let found = of_car(&self.connection, &packed(plate), &packed(vin));
        let mut found = found.map_err(StoreFault::sql("find the car's visits"))?;
        found.retain(|found| Some(found.visit.as_str()) != except);
        let late = found.len().saturating_sub(most);
        let grave = found.iter().filter(|found| found.word >= Some(Word::Warning));
        let grave: BTreeSet<String> = grave.rev().take(most).map(|found| found.visit.clone()).collect();
        let is_shown = |(place, found): &(usize, OfCar)| *place >= late || grave.contains(&found.visit);
        Ok(found.into_iter().enumerate().filter(is_shown).map(|(_, found)| found.visit).collect())
    }

    /// Those of some visits whose first line was here before this one's, in the order they came. One that is only about
    /// to be written comes after them all.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn written_before(&self, visit: &str, of: &[String]) -> Result<Vec<String>, StoreFault> {
        let first = |visit: &str| -> Result<Option<i64>, StoreFault> {
            let sql = "SELECT min(id) FROM entry WHERE visit = ?1";
            let read = || self.connection.prepare_cached(sql)?.query_row([visit], |row| row.get(0));
            read().map_err(StoreFault::sql("look for earlier visits"))
        };
        let now = first(visit)?.unwrap_or(i64::MAX);
        let mut came = Vec::new();
        for other in of {
            came.extend(first(other)?.filter(|first| *first < now).map(|first| (first, other.clone())));
        }
        came.sort();
        Ok(came.into_iter().map(|(_, other)| other).collect())
    }

    /// Number of visits.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn visits(&self) -> Result<u64, StoreFault> {
        count(&self.connection, &[]).map_err(StoreFault::sql("count visits"))
    }
}

/// The places of each word in a statement.
const PLACES: usize = 4;

/// One condition for each word, its places numbered from `first` on; what a word does not name is null there and fits
/// nothing.
fn conditions(words: usize, first: usize) -> String {
    let either = |word: usize| {
        let at = |place: usize| first + PLACES * word + place;
        let like = |place: usize| format!("haystack LIKE ?{} ESCAPE '\\'", at(place));
        format!(" AND ({} OR {} OR {} OR word = ?{})", like(0), like(1), like(2), at(3))
    };
    (0..words).map(either).collect()
}

/// The values of a search's places.
fn values(search: &[Sought]) -> Vec<Option<String>> {
    let of = |word: &Sought| {
        let [typed, packed] = patterns(&word.typed);
        // A haystack begins with the day of opening.
        let month = word.month.map(|month| format!("____-{month:02}-__\n%"));
        [Some(typed), Some(packed), month, word.rating.map(|rating| rating.id().to_owned())]
    };
    search.iter().flat_map(of).collect()
}

fn count(connection: &Connection, search: &[Sought]) -> Result<u64, rusqlite::Error> {
    let sql = format!("SELECT count(*) FROM card WHERE 1{}", conditions(search.len(), 1));
    let total: i64 = connection
        .prepare_cached(&sql)?
        .query_row(rusqlite::params_from_iter(values(search)), |row| row.get(0))?;
    Ok(u64::try_from(total).unwrap_or(0))
}

fn page(
    connection: &Connection,
    search: &[Sought],
    after: Option<&str>,
) -> Result<CardPage, rusqlite::Error> {
    let words = values(search);
    let (opened_at, visit) = after.and_then(place).unwrap_or((i64::MAX, String::new()));
    let sql = format!(
        "{CARDS} WHERE (opened_at, visit) < (?1, ?2){} ORDER BY opened_at DESC, visit DESC LIMIT {}",
        conditions(search.len(), 3),
        PAGE + 1
    );
    let mut values: Vec<&dyn rusqlite::ToSql> = vec![&opened_at, &visit];
    values.extend(words.iter().map(|word| word as &dyn rusqlite::ToSql));
    let mut statement = connection.prepare_cached(&sql)?;
    let rows = statement.query_map(values.as_slice(), card)?;
    let mut cards: Vec<CardRow> = rows.collect::<Result<_, _>>()?;
    let more = cards.len() > PAGE;
    cards.truncate(PAGE);
    let next = cards.last().filter(|_| more).map(|card| format!("{}/{}", card.opened_at, card.visit));
    Ok(CardPage { cards, total: count(connection, search)?, next })
}

/// Fewest letters and digits that name a car.
const NAMES_A_CAR: usize = 3;

/// A visit of a car.
struct OfCar {
    visit: String,
    word: Option<Word>,
    /// It is written down as this car now, not only before it was corrected.
    is_now: bool,
}

/// Whether two plates, or two VINs, as typed, read the same.
pub fn is_same_name(one: &str, other: &str) -> bool {
    packed(one) == packed(other)
}

/// Whether two plates with their VINs, as typed, are one car.
pub fn are_one_car((plate, vin): (&str, &str), (its_plate, its_vin): (&str, &str)) -> bool {
    is_car((&packed(plate), &packed(vin)), (&packed(its_plate), &packed(its_vin)))
}

/// The visits of a car with their ratings, the earliest first.
fn of_car(connection: &Connection, plate: &str, vin: &str) -> Result<Vec<OfCar>, rusqlite::Error> {
    let line =
        |word: &str| if word.chars().count() < NAMES_A_CAR { String::new() } else { format!("%\n{word}%") };
    let mut statement = connection.prepare_cached(
        "SELECT visit, plate, vin, word, haystack FROM card WHERE haystack LIKE ?1 OR haystack LIKE ?2
         ORDER BY opened_at, visit",
    )?;
    let rows = statement.query_map(params![line(plate), line(vin)], |row| {
        let [its_plate, its_vin]: [String; 2] = [row.get("plate")?, row.get("vin")?];
        let (word, haystack): (Option<String>, String) = (row.get("word")?, row.get("haystack")?);
        let is_now = is_car((plate, vin), (&packed(&its_plate), &packed(&its_vin)));
        if !is_now && !former(&haystack).any(|car| is_car((plate, vin), car)) {
            return Ok(None);
        }
        let word = word.as_deref().and_then(Word::from_id);
        Ok(Some(OfCar { visit: row.get("visit")?, word, is_now }))
    })?;
    rows.filter_map(Result::transpose).collect()
}

fn beside_graver(connection: &Connection, cards: &[CardRow]) -> Result<BTreeSet<String>, rusqlite::Error> {
    let rated = |word: Option<&str>| word.and_then(Word::from_id);
    let cars: Vec<_> = cards
        .iter()
        .map(|card| (card, rated(card.word.as_deref()), packed(&card.plate), packed(&card.vin)))
        .collect();
    let mut found = BTreeSet::new();
    let mut statement = connection
        .prepare_cached("SELECT visit, plate, vin, word, haystack FROM card WHERE word IN (?1, ?2)")?;
    let mut rows = statement.query([Word::Warning.id(), Word::Danger.id()])?;
    while let Some(row) = rows.next()? {
        let [visit, plate, vin, word, haystack]: [String; 5] =
            [row.get("visit")?, row.get("plate")?, row.get("vin")?, row.get("word")?, row.get("haystack")?];
        let (plate, vin, word) = (packed(&plate), packed(&vin), rated(Some(&word)));
        for (card, its_word, its_plate, its_vin) in &cars {
            let is_its = |car: (&str, &str)| is_car((its_plate, its_vin), car);
            let graver = card.visit != visit && word > *its_word;
            if graver && (is_its((&plate, &vin)) || former(&haystack).any(is_its)) {
                found.insert(card.visit.clone());
            }
        }
    }
    Ok(found)
}

/// Whether two plates with their VINs, packed, are one car.
fn is_car((plate, vin): (&str, &str), (its_plate, its_vin): (&str, &str)) -> bool {
    let names = |word: &str| word.chars().count() >= NAMES_A_CAR;
    if names(vin) && names(its_vin) { vin == its_vin } else { names(plate) && plate == its_plate }
}

fn place(after: &str) -> Option<(i64, String)> {
    let (opened_at, visit) = after.split_once('/')?;
    Some((opened_at.parse().ok()?, visit.to_owned()))
}

/// A word as it was typed, and without what people put between letters and digits, as LIKE patterns.
fn patterns(word: &str) -> [String; 2] {
    let (typed, packed) = (folded(word), packed(word));
    [pattern(&typed), pattern(if packed.is_empty() { &typed } else { &packed })]
}

/// Folded text as a LIKE pattern; its own wildcards are plain letters.
fn pattern(folded: &str) -> String {
    let escaped: String = folded
        .chars()
        .flat_map(|letter| if matches!(letter, '%' | '_' | '\\') { vec!['\\', letter] } else { vec![letter] })
        .collect();
    format!("%{escaped}%")
}

fn card(row: &Row<'_>) -> Result<CardRow, rusqlite::Error> {
    Ok(CardRow {
        visit: row.get("visit")?,
        label: row.get("label")?,
        plate: row.get("plate")?,
        vin: row.get("vin")?,
        owner: row.get("owner")?,
        opened_at: row.get("opened_at")?,
        updated_at: row.get("updated_at")?,
        word: row.get("word")?,
        answered: row.get("answered")?,
        steps: row.get("steps")?,
        receipt: row.get("receipt")?,
        haystack: row.get("haystack")?,
        conclusive: row.get("settled")?,
        repair: row.get("repair")?,
        confirmed: row.get("confirmed")?,
    })
}
