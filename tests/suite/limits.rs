//! Every field of every kind of entry has its bound: an entry with all of its fields filled is made longer,
//! larger and stranger at each of its leaves in turn, and each time it is refused. A field that is added does
//! not get through here without a bound, and a kind that is added not without an example.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::{Value, json};
use steady_core::model::answer::{AnswerValue, EngineWarmth, HeardAt, Temperature, Warmth};
use steady_core::model::bench::{
    BearingPlace, BenchBody, BoreStage, Contact, HousingLook, InstrumentUsed, RingTurn, SleeveWay,
};
use steady_core::model::bore::{BoreInstrument, BoreKind, BoreLevel, BoreReading, BoreReadings};
use steady_core::model::entry::{EntryBody, Order, OwnerDecision, PhotoRef, Receipt};
use steady_core::model::fit::{FitInput, Measured, Sleeve};
use steady_core::model::gates::LiftKind;
use steady_core::model::gauge::{
    BearingMark, ClearanceGroup, Direction, Earlier, GaugeInput, GaugePosition, Instrument, Lever,
};
use steady_core::model::limits;
use steady_core::model::mark::Mark;
use steady_core::model::occasion::{Conditions, Occasion, Speed};
use steady_core::model::outcome::Outcome;
use steady_core::model::photo_of::PhotoOf;
use steady_core::model::standing::Support;
use steady_core::model::time::Moment;
use steady_core::model::typed::{LengthUnit, Typed};
use steady_core::model::visit::{DistanceUnit, Gearbox, Intake, Odometer, Owner, Seat, Vehicle};

fn by() -> String {
    "Kim Demo".to_owned()
}

fn hash() -> String {
    "0123456789abcdef".repeat(4)
}

fn text(text: &str) -> Typed {
    Typed::Text(text.to_owned())
}

fn intake() -> Intake {
    Intake {
        vehicle: Vehicle {
            layout: "rigid-engine-speed".to_owned(),
            label: "Van".to_owned(),
            plate: "TR 4417".to_owned(),
            vin: "X".repeat(17),
            seat: Some(Seat::Bare),
            cylinders: Some(6),
            gearbox: Some(Gearbox::Manual),
            idle_rpm: Some([700, 800]),
            odometer: Some(Odometer { value: 120_000, unit: DistanceUnit::Km }),
            maker_play_mm: Some(0.4),
            warm_from_c: Some(45.0),
        },
        complaint: "It rattles.".to_owned(),
        complaint_sounds: vec!["rattle".to_owned()],
        when: "Cold.".to_owned(),
        owner: Owner { name: "Åsa".to_owned(), contact: "at work".to_owned() },
        occasion: Occasion::Comeback,
        conditions: Conditions {
            speed: Some(Speed { value: 60, unit: DistanceUnit::Km }),
            gear: "4".to_owned(),
            engine: Some(EngineWarmth::Warm),
        },
    }
}

fn gauge(place: GaugePosition, reading: Typed) -> BenchBody {
    let gauge = GaugeInput {
        unit: LengthUnit::Mm,
        station: "support".to_owned(),
        direction: Direction::Vertical,
        support: Support::Rigid,
        readings: vec![reading],
        instrument: Instrument { resolution: text("0.01"), mpe: Typed::Number(0.02) },
        place,
        maker_limit: Some(text("0.1 mm")),
        bearing: Some(BearingMark { bore_mm: text("35"), group: ClearanceGroup::C3 }),
        earlier: vec![Earlier { days_ago: 30.5, movement_mm: 0.02, standard_mm: 0.004 }],
    };
    BenchBody::Gauged {
        step: "play-vertical".to_owned(),
        gauge: Box::new(gauge),
        reason: Some("read again".to_owned()),
        supersedes: vec![hash()],
    }
}

fn bore(reading: BoreReading) -> BenchBody {
    let bore = BoreReadings {
        kind: BoreKind::Dial,
        instrument: BoreInstrument { resolution_mm: 0.001, mpe_mm: 0.004, repeatability_mm: 0.001 },
        zero_diameter_mm: Some(72.0),
        zero_was_set: true,
        clockwise: true,
        wall_mm: Some(6.0),
        wall_error_mm: Some(0.05),
        seat_width_mm: Some(17.0),
        levels: vec![BoreLevel { depth_mm: 5.0, readings: vec![reading] }],
    };
    let used = InstrumentUsed {
        name: "Bore gauge 4".to_owned(),
        calibrated: Some("2026-01-05".to_owned()),
        due: Some("2027-01-04".to_owned()),
    };
    BenchBody::BoreRead { stage: BoreStage::Found, bore: Box::new(bore), instrument: Some(used) }
}

fn fit() -> BenchBody {
    let measured = || Measured { size: text("72.013"), expanded_um: Some(text("4")) };
    let fit = FitInput {
        bearing_outside: Some(text("72")),
        measured_outside: Some(measured()),
        bearing_bore: Some(text("35")),
        bearing_width: Some(text("17")),
        group: Some(ClearanceGroup::C3),
        class: Some("N7".to_owned()),
        measured_bore: Some(measured()),
        housing: "A356".to_owned(),
        housing_outside: Some(text("96")),
        sleeve: Some(Sleeve {
            material: "mild-steel".to_owned(),
            outside: measured(),
            housing_bore: measured(),
        }),
        temperature: Some([text("20"), text("100")]),
    };
    BenchBody::FitGiven { fit: Box::new(fit) }
}

/// Entries with every field filled and no list empty; of each kind within them one at least.
fn examples() -> Vec<EntryBody> {
    let step = || "housing-look".to_owned();
    let answered = |value: AnswerValue| EntryBody::Answered {
        step: step(),
        value,
        temperature: Some(Temperature::Felt(Warmth::Warm)),
        free: Some(true),
        engine: Some(EngineWarmth::Warm),
        heard_at: Some(HeardAt::AllAlong),
        layout: Some("torque-tube".to_owned()),
        figure_mm: Some(1.5),
        clock: Some(Moment(1)),
        reason: Some("looked again".to_owned()),
        supersedes: vec![hash()],
        by: by(),
    };
    let photo = PhotoRef {
        sha256: hash(),
        original_sha256: hash(),
        width: 2_560,
        height: 1_920,
        taken: Some("2026-11-25 09:30:00".to_owned()),
    };
    let marks = vec![
        Mark::Arrow { from: [0.25, 0.25], to: [0.75, 0.5] },
        Mark::Ring { corners: [[0.25, 0.25], [0.75, 0.5]] },
        Mark::Freehand { points: vec![[0.25, 0.25], [0.75, 0.5]] },
        Mark::Label { at: [0.5, 0.5], text: "crack".to_owned() },
    ];
    let outcome = Outcome {
        causes: vec!["worn-bearing".to_owned()],
        layout: "rigid-engine-speed".to_owned(),
        signs: BTreeMap::from([("play".to_owned(), true)]),
        sorted: BTreeMap::from([("worn-bearing".to_owned(), 0.75)]),
        knowledge: "1".to_owned(),
    };
    let receipt = Receipt {
        decision: OwnerDecision::Repair,
        name: "Åsa".to_owned(),
        note_sha256: hash(),
        locale: "en".to_owned(),
        rating: Some("danger".to_owned()),
        lines: Some(7),
        strokes: vec![vec![[0.25, 0.25], [0.75, 0.5]]],
    };
    let shaft = GaugePosition::Shaft {
        pivot_mm: text("0"),
        gauge_mm: Typed::Number(400.5),
        bearing_mm: text("800"),
        or: Some(Lever { pivot_mm: text("800"), bearing_mm: text("0") }),
        error_mm: Some(5.0),
    };
    let look = HousingLook {
        cracked: Some(false),
        ring_turned: Some(true),
        wall_least_mm: Some(4.0),
        dyed: Some(true),
        sleeved: Some(true),
    };
    let bench = [
        gauge(shaft, text("0.08 mm")),
        gauge(GaugePosition::Bearing, Typed::Number(0.08)),
        BenchBody::GateConfirmed { gate: "supported".to_owned() },
        bore(BoreReading::At { angle_deg: 10.0, value_mm: 0.01 }),
        bore(BoreReading::Point { x_mm: 36.0, y_mm: 0.5 }),
        BenchBody::Looked { look },
        BenchBody::SleeveOut { way: SleeveWay::Press, outside_mm: Some(75.06) },
        BenchBody::PassCut { number: 1, contact: Contact::Partly, diameter_mm: Some(72.05) },
        fit(),
        BenchBody::RingTurned {
            turns: RingTurn::Free,
            bearing: Some(BearingPlace::Rear),
            cold: Some(true),
            clearance_mm: Some(0.012),
        },
        BenchBody::RunOutRead { run_out_mm: 0.25 },
        BenchBody::Noted { text: "45 Nm".to_owned() },
    ];
    let mut bodies = vec![
        EntryBody::Opened { intake: intake(), knowledge: "1".to_owned(), rules: 2, by: by() },
        EntryBody::Amended {
            intake: intake(),
            takes_back: vec![hash()],
            reason: Some("another layout".to_owned()),
            by: by(),
        },
        EntryBody::OrderChosen { order: Order::RunningFirst, by: by() },
        EntryBody::GateConfirmed {
            set: "lift".to_owned(),
            gate: "engine-off".to_owned(),
            lift: Some(LiftKind::TwoPost),
            clock: Some(Moment(1)),
            by: by(),
        },
        EntryBody::LiftSaid { set: "lift".to_owned(), lift: LiftKind::Pit, by: by() },
        EntryBody::PartLeft { set: "lift".to_owned(), by: by() },
        answered(AnswerValue::One("sound".to_owned())),
        answered(AnswerValue::Any(vec!["cracked".to_owned()])),
        answered(AnswerValue::Reading(750.0)),
        EntryBody::PhotoKept { of: PhotoOf::Step(step()), photo, by: by() },
        EntryBody::PhotoMarked { of: PhotoOf::Step(step()), photo: hash(), marks, by: by() },
        EntryBody::PhotosPaired { step: step(), before: Some(hash()), after: hash(), by: by() },
        EntryBody::PhotoWaived { step: step(), reason: "too dark".to_owned(), by: by() },
        EntryBody::Withdrawn { entry: hash(), reason: Some("slipped".to_owned()), by: by() },
        EntryBody::Arranged { what: "gates-confirmed".to_owned(), by: by() },
        EntryBody::OpinionGiven { cause: "misfire".to_owned(), reason: "heard it".to_owned(), by: by() },
        EntryBody::OutcomeConfirmed { outcome, by: by() },
        EntryBody::Received { receipt },
    ];
    bodies.extend(bench.map(|bench| EntryBody::Bench { bench, by: by() }));
    bodies
}

/// A place within a JSON value.
type Path = Vec<Step>;

#[derive(Clone, Debug)]
enum Step {
    Key(String),
    At(usize),
}

fn at<'v>(value: &'v mut Value, path: &[Step]) -> &'v mut Value {
    path.iter().fold(value, |value, step| match step {
        Step::Key(key) => value.get_mut(key).unwrap(),
        Step::At(index) => value.get_mut(index).unwrap(),
    })
}

/// Every place of a value, itself first.
fn places(value: &Value) -> Vec<Path> {
    let inner: Vec<(Step, &Value)> = match value {
        Value::Object(fields) => fields.iter().map(|(key, it)| (Step::Key(key.clone()), it)).collect(),
        Value::Array(list) => list.iter().enumerate().map(|(index, it)| (Step::At(index), it)).collect(),
        _ => Vec::new(),
    };
    let below = inner.into_iter().flat_map(|(step, it)| {
        places(it).into_iter().map(move |path| [vec![step.clone()], path].concat()).collect::<Vec<_>>()
    });
    std::iter::once(Vec::new()).chain(below).collect()
}

/// Whether an entry of this form would be taken in.
fn taken(value: &Value) -> bool {
    serde_json::from_value::<EntryBody>(value.clone()).is_ok_and(|body| limits::entry::check(&body).is_ok())
}

/// What is put in place of a leaf or a list: far beyond anything that a person records.
fn beyond(value: &Value) -> Vec<Value> {
    match value {
        Value::String(_) => vec![
            json!("7".repeat(20_001)),
            json!("\u{10348}".repeat(10_001)),
            json!("\u{1b}[2J"),
            json!("7\u{202e}7"),
        ],
        Value::Number(_) => vec![json!(1e300), json!(-1e300), json!(u64::MAX), json!(4e9), json!(-4e9)],
        Value::Array(list) => vec![Value::Array(list.iter().cycle().take(200_000).cloned().collect())],
        _ => Vec::new(),
    }
}

/// What one example has at a place, in words: the kinds it is within and the field.
fn named(path: &[Step]) -> String {
    path.iter()
        .map(|step| match step {
            Step::Key(key) => format!(".{key}"),
            Step::At(_) => "[]".to_owned(),
        })
        .collect()
}

#[test]
fn every_field_of_every_entry_has_its_bound() {
    let mut leaves = 0;
    for body in examples() {
        let whole = serde_json::to_value(&body).unwrap();
        assert!(taken(&whole), "{whole}");
        for place in places(&whole) {
            let it = at(&mut whole.clone(), &place).clone();
            let name = named(&place);
            assert!(!it.is_null() && it != json!([]) && it != json!({}), "{name} is left empty in {whole}");
            for large in beyond(&it) {
                let mut changed = whole.clone();
                *at(&mut changed, &place) = large;
                assert!(!taken(&changed), "{name} has no bound in {whole}");
                leaves += 1;
            }
        }
    }
    println!("{leaves} entries beyond their bounds, each refused");
    assert!(leaves > 400, "{leaves}");
}

/// Maps are lists by name: too many names, and names that are too long.
#[test]
fn every_map_has_its_bound() {
    let mut maps = 0;
    for body in examples() {
        let whole = serde_json::to_value(&body).unwrap();
        for (map, value) in [("signs", json!(true)), ("sorted", json!(0.5))] {
            let path = [Step::Key("outcome".to_owned()), Step::Key(map.to_owned())];
            if whole.pointer(&format!("/outcome/{map}")).is_none() {
                continue;
            }
            let many: serde_json::Map<_, _> =
                (0..1_000).map(|it| (format!("a{it}"), value.clone())).collect();
            let long = serde_json::Map::from_iter([("a".repeat(201), value)]);
            for names in [many, long] {
                let mut changed = whole.clone();
                *at(&mut changed, &path) = Value::Object(names);
                assert!(!taken(&changed), "{map}");
                maps += 1;
            }
        }
    }
    assert_eq!(maps, 4);
}

/// The kinds that an entry can be of, each told apart by a match that names them all.
#[test]
fn every_kind_has_its_example() {
    let kind = |body: &EntryBody| match body {
        EntryBody::Opened { .. } => 0,
        EntryBody::Amended { .. } => 1,
        EntryBody::OrderChosen { .. } => 2,
        EntryBody::GateConfirmed { .. } => 3,
        EntryBody::PartLeft { .. } => 4,
        EntryBody::Answered { value: AnswerValue::One(_), .. } => 5,
        EntryBody::Answered { value: AnswerValue::Any(_), .. } => 6,
        EntryBody::Answered { value: AnswerValue::Reading(_), .. } => 7,
        EntryBody::PhotoKept { .. } => 8,
        EntryBody::PhotoMarked { .. } => 9,
        EntryBody::PhotosPaired { .. } => 10,
        EntryBody::PhotoWaived { .. } => 11,
        EntryBody::Withdrawn { .. } => 12,
        EntryBody::Arranged { .. } => 13,
        EntryBody::OpinionGiven { .. } => 14,
        EntryBody::OutcomeConfirmed { .. } => 15,
        EntryBody::Received { .. } => 16,
        EntryBody::LiftSaid { .. } => 26,
        EntryBody::Bench { bench, .. } => match bench {
            BenchBody::Gauged { .. } => 17,
            BenchBody::GateConfirmed { .. } => 18,
            BenchBody::BoreRead { .. } => 19,
            BenchBody::Looked { .. } => 20,
            BenchBody::PassCut { .. } => 21,
            BenchBody::FitGiven { .. } => 22,
            BenchBody::RingTurned { .. } => 23,
            BenchBody::RunOutRead { .. } => 24,
            BenchBody::Noted { .. } => 25,
            BenchBody::SleeveOut { .. } => 26,
        },
    };
    let kinds: BTreeSet<i32> = examples().iter().map(kind).collect();
    assert_eq!(kinds.into_iter().collect::<Vec<_>>(), (0..27).collect::<Vec<_>>());
}

/// An entry at its bound, and the same one beyond it.
#[track_caller]
fn check(field: &str, change: impl Fn(&mut Value, usize), most: usize) {
    let example = |field: &str| {
        let pointer = format!("/{}", field.replace('.', "/"));
        let values = examples().into_iter().map(|body| serde_json::to_value(body).unwrap());
        values.filter(|value| value.pointer(&pointer).is_some()).collect::<Vec<_>>()
    };
    let found = example(field);
    assert!(!found.is_empty(), "no entry has {field}");
    for whole in found {
        for (size, fits) in [(most, true), (most + 1, false)] {
            let mut changed = whole.clone();
            change(changed.pointer_mut(&format!("/{}", field.replace('.', "/"))).unwrap(), size);
            assert_eq!(taken(&changed), fits, "{field} of {size} in {}", whole["kind"]);
        }
    }
}

#[test]
fn bounds_are_what_is_written_down() {
    let long = |value: &mut Value, size: usize| *value = json!("é".repeat(size));
    let points = |value: &mut Value, size: usize| *value = json!([vec![[0.5, 0.5]; size]]);
    let empty = |value: &mut Value, size: usize| *value = json!(vec![Vec::<[f32; 2]>::new(); size]);
    let number = |value: &mut Value, size: usize| *value = json!(size);
    let many = |value: &mut Value, size: usize| {
        let one = value[0].clone();
        *value = json!(vec![one; size]);
    };
    check("by", long, limits::LINE);
    check("intake.complaint", long, limits::TEXT);
    check("intake.complaint_sounds", many, limits::CHOICES);
    check("intake.vehicle.plate", long, limits::LINE);
    check("intake.vehicle.cylinders", number, 16);
    check("intake.vehicle.odometer.value", number, 99_999_999);
    check("intake.owner.name", long, limits::LINE);
    check("supersedes", many, limits::SUPERSEDED);
    check("receipt.strokes", points, limits::POINTS);
    check("receipt.strokes", empty, limits::STROKES);
    check("receipt.name", long, limits::LINE);
    check("photo.width", number, 2_560);
    check("bench.text", long, limits::NOTE);
    check("bench.gauge.readings", many, limits::GAUGE_READINGS);
    check("bench.gauge.earlier", many, limits::EARLIER);
    check("bench.bore.levels", many, limits::BORE_DEPTHS);
    check("bench.number", number, 200);
    check("outcome.causes", many, limits::CAUSES);
}
