//! Properties of the rules over answers of every kind: a worse answer never lowers the urgency, and
//! movement felt at a rigid support keeps the bearing group high whatever else is answered.

use proptest::prelude::{Just, ProptestConfig, Strategy, any, prop_assert, prop_oneof, proptest};
use steady_core::model::answer::{AnswerValue, Circumstances};
use steady_core::model::rating::{Urgency, Word};
use steady_core::model::standing::{CauseGroup, Sorting};
use steady_core::model::time::Moment;
use steady_core::model::visit::{Gearbox, Intake, Vehicle};
use steady_core::sorting::sort::sort_untaught;
use steady_core::trade::rows::{Form, Reads, StepRow};
use steady_core::trade::{Trade, load};
use steady_core::urgency::rating::rate;
use steady_core::walk::applies;
use steady_core::walk::case::case;
use steady_core::walk::record::{Record, StandingAnswer};

fn trade() -> Trade {
    load(&[]).unwrap().0
}

/// One of the layouts that are shipped, whichever these are.
fn picked(trade: &Trade, pick: usize) -> &str {
    &trade.layouts[pick % trade.layouts.len()].id
}

/// What is answered, as one number a step: which of the step's answers, or none.
type Picks = Vec<u32>;

fn steps<'t>(trade: &'t Trade, layout: &str) -> Vec<&'t StepRow> {
    applies::steps(trade, trade.layout(layout).unwrap(), Some(Gearbox::AutomatedClutch))
}

/// The answer a pick stands for; a third of the picks leave the step unanswered.
fn value(step: &StepRow, pick: u32) -> Option<AnswerValue> {
    if pick.is_multiple_of(3) {
        return None;
    }
    let pick = pick / 3;
    match step.form {
        Form::Reading => Some(AnswerValue::Reading([450.0, 600.0, 690.0, 750.0, 900.0][pick as usize % 5])),
        Form::OneOf => Some(AnswerValue::One(step.answers[pick as usize % step.answers.len()].id.clone())),
        Form::AnyOf => {
            let several: Vec<&str> =
                step.answers.iter().filter(|row| !row.lone).map(|row| row.id.as_str()).collect();
            let chosen = several.iter().enumerate().filter(|(bit, _)| pick >> bit & 1 == 1);
            let chosen: Vec<String> = chosen.map(|(_, id)| (*id).to_owned()).collect();
            let lone = step.answers.iter().find(|row| row.lone).map(|row| row.id.clone());
            Some(AnswerValue::Any(if chosen.is_empty() { vec![lone.unwrap()] } else { chosen }))
        }
    }
}

fn rated(trade: &Trade, layout: &str, answers: &[(String, AnswerValue)]) -> (Urgency, Sorting) {
    let vehicle = Vehicle {
        layout: layout.to_owned(),
        gearbox: Some(Gearbox::AutomatedClutch),
        idle_rpm: Some([700, 800]),
        ..Vehicle::default()
    };
    let mut record = Record { intake: Intake { vehicle, ..Intake::default() }, ..Record::default() };
    for (step, value) in answers {
        let answer = StandingAnswer {
            entry: String::new(),
            value: value.clone(),
            circumstances: Circumstances::default(),
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
    let sorting = sort_untaught(trade, &case);
    (rate(&case, &sorting), sorting)
}

fn answered(steps: &[&StepRow], picks: &Picks) -> Vec<(String, AnswerValue)> {
    steps
        .iter()
        .zip(picks)
        .filter_map(|(step, pick)| value(step, *pick).map(|value| (step.id.clone(), value)))
        .collect()
}

/// Every answer that is worse than the given one: a worse meaning, more seen, or further from the range.
fn worse(step: &StepRow, value: &AnswerValue) -> Vec<AnswerValue> {
    let reads = |choice: &str| step.reads(choice).unwrap();
    match value {
        AnswerValue::Reading(rpm) if (700.0..=800.0).contains(rpm) => {
            vec![AnswerValue::Reading(640.0), AnswerValue::Reading(450.0), AnswerValue::Reading(950.0)]
        }
        AnswerValue::Reading(rpm) if *rpm < 700.0 => vec![AnswerValue::Reading(rpm - 50.0)],
        AnswerValue::Reading(_) => Vec::new(),
        AnswerValue::One(one) => {
            let judging = [Reads::Clear, Reads::Unsure, Reads::Found];
            if !judging.contains(&reads(one)) {
                return Vec::new();
            }
            let heavier = |id: &str| judging.contains(&reads(id)) && reads(id) > reads(one);
            let later = |id: &str| {
                reads(id) == Reads::Found
                    && reads(one) == Reads::Found
                    && step.answers.iter().position(|row| row.id == id)
                        > step.answers.iter().position(|row| row.id == *one)
            };
            let ids = step.answers.iter().map(|row| row.id.clone());
            ids.filter(|id| heavier(id) || later(id)).map(AnswerValue::One).collect()
        }
        AnswerValue::Any(seen) => {
            let mut more = Vec::new();
            for row in step.answers.iter().filter(|row| !row.lone && !seen.contains(&row.id)) {
                let kept =
                    seen.iter().filter(|id| !step.answers.iter().any(|row| row.lone && row.id == **id));
                more.push(AnswerValue::Any(kept.cloned().chain([row.id.clone()]).collect()));
            }
            more
        }
    }
}

/// Picks that leave both directions clear half of the time, so that the rule about probability is reached.
fn picks() -> impl Strategy<Value = Picks> {
    proptest::collection::vec(any::<u32>(), 32)
}

/// `none` for a hands-on play step; pick 1 is the first answer.
fn with_clear_plays(steps: &[&StepRow], mut picks: Picks, clear: bool) -> Picks {
    for (step, pick) in steps.iter().zip(picks.iter_mut()) {
        if clear && step.hands_on && step.id != "turn-by-hand" {
            *pick = 1;
        }
    }
    picks
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 4_000, ..ProptestConfig::default() })]

    #[test]
    fn worse_answers_never_lower_urgency(picks in picks(), layout in any::<usize>(), clear in any::<bool>()) {
        let trade = trade();
        let layout = picked(&trade, layout);
        let steps = steps(&trade, layout);
        let picks = with_clear_plays(&steps, picks, clear);
        let before = answered(&steps, &picks);
        let (urgency, _) = rated(&trade, layout, &before);
        for (index, (step, value)) in before.iter().enumerate() {
            let row = steps.iter().find(|row| &row.id == step).unwrap();
            for worse in worse(row, value) {
                let mut after = before.clone();
                after[index].1 = worse.clone();
                let (then, _) = rated(&trade, layout, &after);
                // "Not yet checked" is not milder than NOTICE.
                let unchecked = then.word.is_none() && urgency.word == Some(Word::Notice) && !then.complete;
                prop_assert!(unchecked || then.word >= urgency.word, "{step}: {worse:?} made {:?} of {:?} in {before:?}", then.word, urgency.word);
            }
        }
    }

    #[test]
    fn felt_movement_keeps_the_bearing_group_high(picks in picks(), vertical in any::<bool>()) {
        let trade = trade();
        let steps = steps(&trade, "rigid-engine-speed");
        let felt = if vertical { "play-vertical" } else { "play-lateral" };
        let mut answers = answered(&steps, &picks);
        answers.retain(|(step, _)| step != felt);
        answers.push((felt.to_owned(), AnswerValue::One("felt".to_owned())));
        let (urgency, sorting) = rated(&trade, "rigid-engine-speed", &answers);
        prop_assert!(sorting.bearing_probability >= 0.8, "{} in {answers:?}", sorting.bearing_probability);
        prop_assert!(urgency.word == Some(Word::Danger));
    }

    #[test]
    fn suspicion_without_excuses_is_never_the_milder(picks in picks(), layout in any::<usize>()) {
        let trade = trade();
        let layout = picked(&trade, layout);
        let steps = steps(&trade, layout);
        let answers = answered(&steps, &picks);
        let (_, sorting) = rated(&trade, layout, &answers);
        let is_of_support = |row: &&StepRow| row.id.starts_with("play-vertical") || row.id == "tube-open-check";
        let has_support = steps.iter().any(is_of_support);
        prop_assert!((0.0..=1.0 + 1e-12).contains(&sorting.bearing_unexcused));
        prop_assert!(sorting.bearing_unexcused >= sorting.bearing_probability - 1e-12);
        for cause in &sorting.causes {
            prop_assert!((0.0..=1.0).contains(&cause.probability), "{cause:?}");
        }
        // Causes do not exclude each other: one of the bearing's is there at least as surely as the likeliest of them,
        // and no more surely than all of them together.
        let bearing = sorting.causes.iter().filter(|cause| cause.group == CauseGroup::Bearing);
        let (largest, total) = bearing.map(|cause| cause.probability)
            .fold((0.0_f64, 0.0), |(largest, total), one| (largest.max(one), total + one));
        // A shaft without a support has no bearing that could be at fault.
        prop_assert!((largest > 0.0) == has_support, "a cause of the bearing on {layout}");
        prop_assert!(largest - 1e-9 <= sorting.bearing_probability && sorting.bearing_probability <= total + 1e-9);
    }

    #[test]
    fn answers_left_open_never_give_a_notice(open in prop_oneof![Just("not-done"), Just("unsure")], which in 0_usize..2) {
        let trade = trade();
        let step = ["play-vertical", "play-lateral"][which];
        let mut answers: Vec<(String, AnswerValue)> = ["play-vertical", "play-lateral"].iter()
            .map(|step| ((*step).to_owned(), AnswerValue::One("none".to_owned()))).collect();
        answers.push(("turn-by-hand".to_owned(), AnswerValue::One("smooth".to_owned())));
        for (id, value) in &mut answers {
            if id == step {
                *value = AnswerValue::One(open.to_owned());
            }
        }
        let (urgency, _) = rated(&trade, "rigid-engine-speed", &answers);
        prop_assert!(urgency.word != Some(Word::Notice));
    }
}

#[test]
fn contradicting_everything_else_does_not_hide_felt_movement() {
    let trade = trade();
    let steps = steps(&trade, "rigid-engine-speed");
    let clear = |step: &&&StepRow| step.id != "play-vertical" && step.form != Form::Reading;
    let mut answers: Vec<(String, AnswerValue)> = steps
        .iter()
        .filter(clear)
        .filter_map(|step| {
            let row = step.answers.iter().find(|row| row.reads == Reads::Clear)?;
            let value = match step.form {
                Form::AnyOf => AnswerValue::Any(vec![row.id.clone()]),
                Form::OneOf | Form::Reading => AnswerValue::One(row.id.clone()),
            };
            Some((step.id.clone(), value))
        })
        .collect();
    answers.push(("play-vertical".to_owned(), AnswerValue::One("felt".to_owned())));
    let (_, sorting) = rated(&trade, "rigid-engine-speed", &answers);
    assert!(sorting.bearing_probability >= 0.8, "{}", sorting.bearing_probability);
}

/// A rattle more once let a loose shield explain the knock, and the rating fell.
#[test]
fn one_more_noise_does_not_explain_the_others_away() {
    let trade = trade();
    let rated_by = |noises: &[&str]| {
        let noises = noises.iter().map(|noise| (*noise).to_owned()).collect();
        let answers = [
            ("idle-noise".to_owned(), AnswerValue::Any(noises)),
            ("idle-raise-effect".to_owned(), AnswerValue::One("gone".to_owned())),
            ("tube-open-check".to_owned(), AnswerValue::One("none".to_owned())),
        ];
        rated(&trade, "torque-tube", &answers).0.word
    };
    let before = rated_by(&["pops", "knock", "hiss"]);
    assert_eq!(before, Some(Word::Caution), "noise alone");
    assert!(rated_by(&["rattle", "pops", "knock", "hiss"]) >= before);
}
