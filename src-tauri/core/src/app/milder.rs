//! Which changes to a milder answer are told: with each reply, in the result and in the finding.

use std::collections::BTreeMap;

use crate::model::answer::{AnswerValue, Circumstances};
use crate::model::ids::answer;
use crate::model::limits;
use crate::model::milder::MilderStand;
use crate::model::rating::Word;
use crate::model::time::Moment;
use crate::trade::Trade;
use crate::trade::rows::Layout;
use crate::urgency::rating;
use crate::walk::case;
use crate::walk::record::{Record, StandingAnswer};

/// Of each step the first, the gravest and then the latest, as many as are told, in the order of the ledger: what was
/// once found is not put out of sight by changing the answer again.
pub fn told(trade: &Trade, layout: &Layout, record: &Record) -> Vec<MilderStand> {
    let mut places: BTreeMap<&str, Vec<usize>> = BTreeMap::new();
    for (place, made) in record.milder.iter().enumerate() {
        places.entry(&made.step).or_default().push(place);
    }
    let mut told = vec![false; record.milder.len()];
    for (step, places) in places {
        let many = places.len() > limits::MILDER_OF_A_STEP;
        let gravest = many.then(|| gravest(&places, |was| asked(trade, layout, (record, step), was), record));
        let first = places.first().copied();
        let mut order: Vec<usize> = first.into_iter().chain(gravest.flatten()).collect();
        order.extend(places.iter().rev());
        let mut room = limits::MILDER_OF_A_STEP;
        for place in order {
            if let Some(told) = told.get_mut(place).filter(|told| room > 0 && !**told) {
                *told = true;
                room -= 1;
            }
        }
    }
    record.milder.iter().zip(told).filter(|(_, told)| *told).map(|(made, _)| made.clone()).collect()
}

/// The first of the gravest.
fn gravest(places: &[usize], word: impl Fn(&AnswerValue) -> Option<Word>, record: &Record) -> Option<usize> {
    let mut words: Vec<(&AnswerValue, Option<Word>)> = Vec::new();
    let mut best: Option<(usize, Option<Word>)> = None;
    for place in places {
        let was = &record.milder.get(*place)?.was;
        let known = words.iter().find(|(value, _)| *value == was).map(|(_, word)| *word);
        let its = known.unwrap_or_else(|| word(was));
        if known.is_none() {
            words.push((was, its));
        }
        if best.is_none_or(|(_, best)| its > best) {
            best = Some((*place, its));
        }
    }
    best.map(|(place, _)| place)
}

/// What an answer asked for by itself, in the car as it is written down now. What a gauge proved is as grave as any; what
/// nobody can tell any more may have been.
fn asked(trade: &Trade, layout: &Layout, (record, step): (&Record, &str), was: &AnswerValue) -> Option<Word> {
    if was.has(answer::BY_GAUGE) {
        return Some(Word::Danger);
    }
    if was.has(answer::NOT_HERE) {
        return Some(Word::Warning);
    }
    let given = StandingAnswer {
        entry: String::new(),
        value: was.clone(),
        circumstances: Circumstances::default(),
        layout: None,
        figure_mm: record.intake.vehicle.maker_play_mm,
        tube_opened: record.tube_opened,
        reason: None,
        by: String::new(),
        at: Moment(0),
    };
    let (intake, tube_opened) = (record.intake.clone(), record.tube_opened);
    let mut answers = record.answers.clone();
    answers.insert(step.to_owned(), vec![given]);
    let then = Record { intake, tube_opened, answers, ..Record::default() };
    rating::rate_steps(&case::case(trade, layout, &then)).get(step).copied()
}
