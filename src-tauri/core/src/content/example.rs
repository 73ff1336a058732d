//! Invented visits for the tests of this room, put together by hand: no rule ran over them.

use crate::model::answer::{AnswerValue, Temperature, Warmth};
use crate::model::entry::{Order, OwnerDecision, PhotoRef};
use crate::model::ids::step;
use crate::model::rating::{Reason, Urgency, Word};
use crate::model::rules::{ALL, VERSION};
use crate::model::standing::{
    AnswerForm, Answered, CauseGroup, CauseStand, LedgerStand, PhotoStand, Position, ReceiptStand, Sorting,
    Standing, StepStand, Support, TurnsWith,
};
use crate::model::time::Moment;
use crate::model::together::LooksStand;
use crate::model::visit::{Intake, Vehicle};

/// 25 November 2026, 09:30 UTC.
pub const AT: Moment = Moment(1_795_599_000_000);

/// Every rule, with the word it asks for.
pub fn every_rule() -> impl Iterator<Item = (&'static str, Word)> {
    ALL.into_iter().map(|facts| (facts.id, facts.word))
}

pub const CAUSES: [&str; 16] = [
    "loose-seat",
    "worn-bearing",
    "squeezed-bearing",
    "housing-damage",
    "torn-support-rubber",
    "low-idle",
    "torsional-rattle",
    "early-engagement",
    "misfire",
    "coupling-or-joint",
    "shaft-damage",
    "joint-angle-or-balance",
    "wheel-or-tyre",
    "loose-shield-or-mount",
    "air-leak",
    "normal-character",
];

const STEPS: [&str; 9] = [
    "idle-speed",
    "idle-noise",
    "misfire-evidence",
    step::NEUTRAL_2500_BUZZ,
    step::HOUSING_LOOK,
    step::PLAY_VERTICAL,
    step::PLAY_LATERAL,
    step::PLAY_FAR_END,
    step::TURN_BY_HAND,
];

/// A visit just opened: no answer, no rating.
pub fn opened() -> Standing {
    Standing {
        visit: "01936000-0000-7000-8000-000000000001".to_owned(),
        opened_at: AT,
        updated_at: AT,
        intake: Intake {
            vehicle: Vehicle {
                layout: "rigid-engine-speed".to_owned(),
                label: "demo tourer".to_owned(),
                plate: "TR 4417".to_owned(),
                ..Vehicle::default()
            },
            ..Intake::default()
        },
        vin_hint: None,
        layout_name: None,
        support: Support::Rigid,
        order: Order::UnderCarFirst,
        offers_order: false,
        entered: None,
        position: Position::Done,
        warmth: None,
        stations: Vec::new(),
        gate_sets: Vec::new(),
        steps: STEPS.iter().map(|id| step_stand(id)).collect(),
        pairs: Vec::new(),
        looks: LooksStand::default(),
        urgency: Urgency {
            word: None,
            do_not_drive: None,
            reasons: Vec::new(),
            complete: false,
            missing: [step::PLAY_VERTICAL, step::PLAY_LATERAL].map(str::to_owned).into(),
            limits: [step::HOUSING_LOOK, step::TURN_BY_HAND].map(str::to_owned).into(),
            unlooked: Vec::new(),
            in_part: false,
            rules: VERSION,
        },
        asks: "unrated".to_owned(),
        headline: "unrated".to_owned(),
        sorting: Sorting {
            causes: Vec::new(),
            bearing_probability: 0.2,
            bearing_unexcused: 0.2,
            next_check: None,
            no_check: None,
            surprise: None,
            turn: None,
            judgements: Vec::new(),
            outcomes: 0,
        },
        gauges: Vec::new(),
        opinion: None,
        outcome: None,
        repair: None,
        found: Vec::new(),
        milder: Vec::new(),
        elsewhere: Vec::new(),
        intake_entry: "ab".repeat(32),
        former_cars: Vec::new(),
        still_open: None,
        sounds: Vec::new(),
        road_rows: Vec::new(),
        undo: None,
        receipt: None,
        ledger: LedgerStand { entries: 3, head: "ab".repeat(32), broken_at: None },
        writers: Vec::new(),
        opened_under: VERSION,
        knowledge: "demo".to_owned(),
        technician: "Kim Demo".to_owned(),
    }
}

/// A visit rated by one rule.
pub fn rated(rule: &str, word: Word, cause: &str) -> Standing {
    let mut standing = checked();
    standing.urgency.word = Some(word);
    standing.asks = word.id().to_owned();
    standing.headline.clone_from(&standing.asks);
    standing.urgency.do_not_drive = Some(word >= Word::Warning);
    standing.urgency.reasons = vec![reason(rule, word, cause)];
    standing.sorting.causes = vec![likely(cause, 0.8)];
    standing
}

/// A visit with every step answered and nothing found.
pub fn checked() -> Standing {
    let mut standing = opened();
    answer(&mut standing, "idle-speed", AnswerValue::Reading(760.0));
    for (id, value) in [
        ("idle-noise", "none"),
        ("misfire-evidence", "none"),
        (step::NEUTRAL_2500_BUZZ, "none"),
        (step::HOUSING_LOOK, "sound"),
        (step::PLAY_VERTICAL, "none"),
        (step::PLAY_LATERAL, "none"),
        (step::PLAY_FAR_END, "none"),
        (step::TURN_BY_HAND, "smooth"),
    ] {
        answer(&mut standing, id, AnswerValue::One(value.to_owned()));
    }
    standing.urgency.complete = true;
    standing.urgency.missing.clear();
    standing.urgency.limits.clear();
    standing
}

/// A reason without steps; it names the cause only where its rule does.
pub fn reason(rule: &str, word: Word, cause: &str) -> Reason {
    let cause = (rule == "cause-likely").then(|| cause.to_owned());
    Reason { rule: rule.to_owned(), word, steps: Vec::new(), cause, basis: Vec::new(), says: Vec::new() }
}

/// Answers one step.
pub fn answer(standing: &mut Standing, id: &str, value: AnswerValue) {
    let step = at(standing, id);
    let open = ["unsure", "not-done", "not-tried", "not-read", "unknown"];
    let conclusive = !open.iter().any(|choice| value.has(choice));
    step.answered = Some(Answered {
        value,
        temperature: step.asks_temperature.then_some(Temperature::Felt(Warmth::Warm)),
        free: None,
        engine: None,
        heard_at: None,
        reason: None,
        by: "Kim Demo".to_owned(),
        at: AT,
        disputed: false,
        milder_needs_reason: false,
        found: false,
        conclusive,
    });
}

/// Answers one step with one choice.
pub fn choose(standing: &mut Standing, id: &str, choice: &str) {
    answer(standing, id, AnswerValue::One(choice.to_owned()));
}

/// Takes a step's answer away.
pub fn unanswer(standing: &mut Standing, id: &str) {
    at(standing, id).answered = None;
}

/// Gives a step a photo and a rating.
pub fn picture(standing: &mut Standing, id: &str, word: Option<Word>) {
    let step = at(standing, id);
    step.word = word;
    let photo = PhotoRef {
        sha256: format!("photo-of-{id}"),
        original_sha256: String::new(),
        width: 4,
        height: 3,
        taken: None,
    };
    step.photo = Some(PhotoStand { photo, at: AT, marks: Vec::new() });
}

/// The step with this id.
pub fn at<'a>(standing: &'a mut Standing, id: &str) -> &'a mut StepStand {
    standing.steps.iter_mut().find(|step| step.id == id).expect("the step is in the example")
}

pub fn likely(id: &str, probability: f64) -> CauseStand {
    let group = if id == "normal-character" { CauseGroup::Normal } else { CauseGroup::Other };
    CauseStand {
        id: id.to_owned(),
        own_name: None,
        group,
        probability,
        interval: None,
        before: probability,
        basis: Vec::new(),
        together: 0.0,
        likelihood: "likely".to_owned(),
        speaks_for: Vec::new(),
        against: Vec::new(),
    }
}

/// A receipt signed a day later.
pub fn receipt(name: &str) -> ReceiptStand {
    ReceiptStand {
        decision: OwnerDecision::Decline,
        name: name.to_owned(),
        note_sha256: "cd".repeat(32),
        locale: "en".to_owned(),
        rating: None,
        at: Moment(AT.0 + 86_400_000),
        strokes: vec![vec![[0.1, 0.2], [0.3, 0.4]]],
        outdated: false,
    }
}

fn step_stand(id: &str) -> StepStand {
    StepStand {
        id: id.to_owned(),
        set: None,
        station: "support".to_owned(),
        form: AnswerForm::OneOf { choices: Vec::new() },
        asks_temperature: matches!(id, step::PLAY_VERTICAL | step::PLAY_LATERAL),
        asks_free: (id == step::TURN_BY_HAND).then_some(TurnsWith::Engine),
        asks_engine: id == step::IDLE_SPEED,
        asks_heard_at: false,
        optional: false,
        both_ends: false,
        figures: String::new(),
        at_support: None,
        hands_on: false,
        wants_photo: false,
        answered: None,
        word: None,
        lock: None,
        photo: None,
        earlier: Vec::new(),
        before: None,
        waiver: None,
        gauge: false,
        asks_figure: false,
    }
}
