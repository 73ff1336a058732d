//! The rules over every answer of the support's steps, for every layout, and over noise and complaints beside them:
//! movement at a rigid support is always DANGER, nothing that is worse is rated milder, what was not looked at is
//! named, and noise alone never asks for more than CAUTION.

use std::sync::LazyLock;

use proptest::prelude::{ProptestConfig, any, prop_assert, proptest};
use steady_core::model::answer::{AnswerValue, Circumstances};
use steady_core::model::ids::base;
use steady_core::model::rating::{Urgency, Word};
use steady_core::model::standing::Support;
use steady_core::model::time::Moment;
use steady_core::model::visit::{Intake, Vehicle};
use steady_core::sorting::sort::sort_untaught;
use steady_core::trade::rows::{Form, Reads, StepRow};
use steady_core::trade::{Trade, load};
use steady_core::urgency::rating::rate;
use steady_core::walk::applies;
use steady_core::walk::case::case;
use steady_core::walk::record::{Record, StandingAnswer};

/// An answer to a step, with whether the shaft was free; none for a step that nobody answered.
type Given = Option<(AnswerValue, Option<bool>)>;
/// What is answered, by step.
type Answers = Vec<(String, Given)>;

static TRADE: LazyLock<Trade> = LazyLock::new(|| load(&[]).unwrap().0);

/// Of each layout the answers of the support that find nothing.
static SOUND: LazyLock<Vec<Vec<Answers>>> =
    LazyLock::new(|| TRADE.layouts.iter().map(|layout| sound_supports(&TRADE, &layout.id)).collect());

fn rows<'t>(trade: &'t Trade, layout: &str) -> Vec<&'t StepRow> {
    applies::steps(trade, trade.layout(layout).unwrap(), None)
}

/// The steps of the support: what decides, and what limits.
fn of_support<'t>(trade: &'t Trade, layout: &str) -> Vec<&'t StepRow> {
    rows(trade, layout).into_iter().filter(|row| row.hands_on || row.limits).collect()
}

/// Every answer a step can get, and none.
fn every_answer(row: &StepRow) -> Vec<Given> {
    let mut all: Vec<Given> = vec![None];
    for answer in &row.answers {
        let value = match row.form {
            Form::AnyOf => AnswerValue::Any(vec![answer.id.clone()]),
            _ => AnswerValue::One(answer.id.clone()),
        };
        let turned = row.asks_free && answer.reads != Reads::Open;
        let frees: &[Option<bool>] = if turned { &[None, Some(true), Some(false)] } else { &[None] };
        all.extend(frees.iter().map(|free| Some((value.clone(), *free))));
    }
    all
}

fn rated(trade: &Trade, layout: &str, sounds: &[&str], given: &[(String, Given)]) -> Urgency {
    let vehicle = Vehicle { layout: layout.to_owned(), idle_rpm: Some([700, 800]), ..Vehicle::default() };
    let sounds = sounds.iter().map(|sound| (*sound).to_owned()).collect();
    let intake = Intake { vehicle, complaint_sounds: sounds, ..Intake::default() };
    let mut record = Record { intake, ..Record::default() };
    for (step, given) in given {
        let Some((value, free)) = given else { continue };
        let answer = StandingAnswer {
            entry: String::new(),
            value: value.clone(),
            circumstances: Circumstances { free: *free, ..Circumstances::default() },
            layout: None,
            figure_mm: None,
            tube_opened: true,
            reason: None,
            by: String::new(),
            at: Moment(0),
        };
        record.answers.insert(step.clone(), vec![answer]);
    }
    let case = case(trade, trade.layout(layout).unwrap(), &record);
    rate(&case, &sort_untaught(trade, &case))
}

/// Every combination of answers to these steps, each step varying fastest from the last.
fn combinations(steps: &[&StepRow]) -> Vec<Answers> {
    steps.iter().fold(vec![Vec::new()], |so_far, row| {
        let answers = every_answer(row);
        let longer = |one: &Answers| {
            let one = one.clone();
            let with = |given: &Given| [one.clone(), vec![(row.id.clone(), given.clone())]].concat();
            answers.iter().map(with).collect::<Vec<_>>()
        };
        so_far.iter().flat_map(longer).collect()
    })
}

/// How bad an answer reads: open below all else, then clear, unsure, found; later answers of a row are worse.
fn badness(row: &StepRow, given: &Given) -> Option<(Reads, usize)> {
    let (value, free) = given.as_ref()?;
    let place = row.answers.iter().position(|answer| value.has(&answer.id))?;
    let reads = row.answers[place].reads;
    let engine = value.has("resists") && *free == Some(false);
    let judges = [Reads::Clear, Reads::Unsure, Reads::Found].contains(&reads) && !engine;
    judges.then_some((reads, if reads == Reads::Found { place } else { 0 }))
}

fn is_open(row: &StepRow, given: &Given) -> bool {
    match given {
        None => true,
        Some((value, _)) => value.choices().iter().all(|choice| row.reads(choice) == Some(Reads::Open)),
    }
}

/// The support's steps of a layout, one support at a time with the others clean, so that two of them stay few.
fn cases_of(trade: &Trade, layout: &str) -> Vec<Answers> {
    let steps = of_support(trade, layout);
    let supports = trade.layout(layout).unwrap().supports.max(1);
    let mut all = Vec::new();
    for number in 1..=supports {
        let here = |row: &&&StepRow| row.support_number.max(1) == number;
        let varied: Vec<&StepRow> = steps.iter().filter(here).copied().collect();
        let clean: Answers =
            steps.iter().filter(|row| !here(row)).map(|row| (row.id.clone(), clean(row))).collect();
        all.extend(combinations(&varied).into_iter().map(|one| [one, clean.clone()].concat()));
    }
    all
}

fn clean(row: &StepRow) -> Given {
    let clear = row.answers.iter().find(|answer| answer.reads == Reads::Clear).unwrap();
    let several = row.form == Form::AnyOf;
    let value =
        if several { AnswerValue::Any(vec![clear.id.clone()]) } else { AnswerValue::One(clear.id.clone()) };
    Some((value, row.asks_free.then_some(true)))
}

#[test]
fn every_answer_of_the_support_is_rated_as_the_rules_say() {
    let trade = &*TRADE;
    let mut counted = Vec::new();
    for layout in &trade.layouts {
        let steps = of_support(trade, &layout.id);
        let row = |id: &str| *steps.iter().find(|row| row.id == id).unwrap();
        let cases = cases_of(trade, &layout.id);
        let words: Vec<Urgency> = cases.iter().map(|case| rated(trade, &layout.id, &[], case)).collect();
        for (case, urgency) in cases.iter().zip(&words) {
            let rigid = layout.support == Support::Rigid;
            let play =
                |step: &str| ["play-vertical", "play-lateral", "tube-open-check"].contains(&base(step));
            let felt = case.iter().any(|(step, given)| {
                play(step) && given.as_ref().is_some_and(|(value, _)| value.has("felt"))
            });
            assert!(!(rigid && felt) || urgency.word == Some(Word::Danger), "{}: {case:?}", layout.id);
            for (step, given) in case {
                let named = urgency.limits.contains(step) || urgency.missing.contains(step);
                assert!(!is_open(row(step), given) || named, "{step} is not named: {case:?} {urgency:?}");
            }
            assert_eq!(urgency.complete, urgency.missing.is_empty());
        }
        worse_is_never_milder(&cases, &words, &row);
        counted.push((layout.id.as_str(), cases.len()));
    }
    assert_eq!(
        counted,
        [
            ("rigid-engine-speed", 1_925),
            ("rigid-output-speed", 1_925),
            ("rubber-centre", 10_692),
            ("two-centres", 2 * 10_692),
            ("one-piece", 660),
            ("front-shaft", 660),
            ("half-shaft", 19_250),
            ("torque-tube", 385),
        ]
    );
}

/// One answer worse, all else equal: never a milder word.
fn worse_is_never_milder<'t>(
    cases: &[Vec<(String, Given)>],
    words: &[Urgency],
    row: &impl Fn(&str) -> &'t StepRow,
) {
    let key = |case: &[(String, Given)]| format!("{case:?}");
    let by_case: std::collections::HashMap<String, &Urgency> =
        cases.iter().map(|case| key(case)).zip(words).collect();
    for (case, urgency) in cases.iter().zip(words) {
        for (place, (step, given)) in case.iter().enumerate() {
            let row = row(step);
            let Some(bad) = badness(row, given) else { continue };
            let free = |given: &Given| given.as_ref().and_then(|(_, free)| *free);
            let worse = |other: &Given| {
                free(other) == free(given) && badness(row, other).is_some_and(|other| other > bad)
            };
            for other in every_answer(row).into_iter().filter(worse) {
                let mut changed = case.clone();
                changed[place].1 = other;
                let then = by_case.get(&key(&changed));
                let milder = then.is_some_and(|then| then.word < urgency.word);
                assert!(!milder, "{case:?} is {:?}, {changed:?} {:?}", urgency.word, then.map(|it| it.word));
            }
        }
    }
}

/// What is heard or felt with the engine running, and what an owner says; a run broken off is not among them.
const NOISES: [&str; 8] = [
    "idle-noise",
    "idle-raise-effect",
    "clutch-pedal-effect",
    "selector-effect",
    "neutral-2500-buzz",
    "creep-noise",
    "engagement-reset-effect",
    "road-speed-vibration",
];
const SOUNDS: [&str; 7] = ["buzz", "knock", "vibration", "rattle", "pops", "hiss", "whine"];

/// The answers of the support that find nothing: plays clear, the look sound or not seen, the turn not bad.
fn sound_supports(trade: &Trade, layout: &str) -> Vec<Answers> {
    let steps = of_support(trade, layout);
    let row = |id: &str| *steps.iter().find(|row| row.id == id).unwrap();
    let nothing = |(step, given): &(String, Given)| {
        let row = row(step);
        let bad = badness(row, given).is_some_and(|(reads, _)| reads > Reads::Clear);
        let undecided = row.hands_on && is_open(row, given);
        !(bad || undecided)
    };
    cases_of(trade, layout).into_iter().filter(|case| case.iter().all(nothing)).collect()
}

/// Every set of noises at idle, every buzz, every single complaint, with every sound support.
#[test]
fn noise_alone_stops_at_caution() {
    let trade = &*TRADE;
    let mut counted = 0;
    for layout in &trade.layouts {
        let rows = rows(trade, &layout.id);
        let noises = rows.iter().find(|row| row.id == "idle-noise").unwrap();
        let heard: Vec<&str> =
            noises.answers.iter().filter(|row| !row.lone).map(|row| row.id.as_str()).collect();
        let buzz = if rows.iter().any(|row| row.id == "neutral-2500-buzz") { "felt" } else { "" };
        for support in sound_supports(trade, &layout.id).iter().step_by(4) {
            for set in 1..1_u32 << heard.len() {
                let chosen = heard.iter().enumerate().filter(|(bit, _)| set >> bit & 1 == 1);
                let chosen = chosen.map(|(_, id)| (*id).to_owned()).collect();
                let mut answers = support.clone();
                answers.push(("idle-noise".to_owned(), Some((AnswerValue::Any(chosen), None))));
                if !buzz.is_empty() {
                    answers.push((
                        "neutral-2500-buzz".to_owned(),
                        Some((AnswerValue::One(buzz.to_owned()), None)),
                    ));
                }
                let complaint = SOUNDS[set as usize % SOUNDS.len()];
                let urgency = rated(trade, &layout.id, &[complaint], &answers);
                assert_eq!(urgency.word, Some(Word::Caution), "{}: {answers:?} {urgency:?}", layout.id);
                counted += 1;
            }
        }
    }
    assert!(counted >= 2_000, "{counted} combinations");
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 3_000, ..ProptestConfig::default() })]

    #[test]
    fn whatever_is_heard_or_told_stops_at_caution(
        layout in any::<usize>(), support in any::<u32>(), picks in proptest::collection::vec(any::<u32>(), 8), told in 0_u32..128
    ) {
        let trade = &*TRADE;
        let layout = layout % trade.layouts.len();
        let supports = &SOUND[layout];
        let layout = trade.layouts[layout].id.clone();
        let mut answers = supports[support as usize % supports.len()].clone();
        for (step, pick) in NOISES.iter().zip(&picks) {
            let Some(row) = rows(trade, &layout).into_iter().find(|row| row.id == *step) else { continue };
            let all = every_answer(row);
            answers.push(((*step).to_owned(), all[*pick as usize % all.len()].clone()));
        }
        let sounds: Vec<&str> =
            SOUNDS.iter().enumerate().filter(|(bit, _)| told >> bit & 1 == 1).map(|(_, id)| *id).collect();
        let urgency = rated(trade, &layout, &sounds, &answers);
        prop_assert!(urgency.word <= Some(Word::Caution), "{layout}: {answers:?} {urgency:?}");
        prop_assert!(urgency.word.is_some());
    }
}
