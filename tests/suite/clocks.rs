//! Whatever a clock says, what the app writes is a ledger that its own checker accepts, and that can be handed on.

use std::collections::BTreeSet;
use std::sync::Arc;
use std::sync::atomic::{AtomicI64, Ordering};

use proptest::prelude::{Strategy, prop, prop_oneof};
use proptest::test_runner::{Config, TestRunner};
use serde_json::{Value, json};
use steady_core::app::handover::verify;
use steady_core::app::replay::replay;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::app::{Setup, Steady};
use steady_core::model::time::Moment;

use crate::handover::exported;
use crate::handover_files::plain_photo;
use crate::support::{MORNING, PlainPress, answered, ask, code, enter_lift, note, under};

/// What the clock of these tests says; one test sets it, since a clock is a plain function.
static CLOCK: AtomicI64 = AtomicI64::new(0);
/// The last millisecond of the year 9999.
const LATEST: i64 = 253_402_300_799_999;
/// The earliest and the latest clock that can be right: the beginning of 2026, and the end of 2075.
const FIRST_BELIEVED: i64 = 1_767_225_600_000;
/// See [`FIRST_BELIEVED`].
const LAST_BELIEVED: i64 = 3_345_062_399_999;

/// Clocks about every bound there is, and any other.
fn clocks() -> impl Strategy<Value = Vec<i64>> {
    let bounds = [i64::MIN, -1, 0, 1, 1_795_599_000_000, LATEST - 1, LATEST, LATEST + 1, i64::MAX];
    let believable = FIRST_BELIEVED..LAST_BELIEVED + 1;
    let clock = prop_oneof![prop::sample::select(bounds.to_vec()), believable, proptest::num::i64::ANY];
    prop::collection::vec(clock, 2..12)
}

/// A request of each kind that leaves an entry, in an order in which each is taken when the clock is right.
const WRITING: [&str; 17] = [
    "answer",
    "undo",
    "order",
    "gates",
    "gauge",
    "photo",
    "mark",
    "waive",
    "leave",
    "opinion",
    "outcome",
    "teardown",
    "note",
    "run-out",
    "bench-photo",
    "amend",
    "sign",
];

/// One of them, asked of a visit for the `turn`th time; its code.
fn write(steady: &Steady, visit: &str, what: &str, turn: usize) -> String {
    let look = || ask(steady, json!({ "ask": "look", "visit": visit }));
    let upload = "0191d2f0-0000-7000-8000-00000000000c";
    let sent = || {
        let piece =
            json!({ "ask": "upload", "upload": upload, "index": 0, "base64": plain_photo(40 + turn as u8) });
        assert_eq!(code(steady, piece), "ok");
    };
    let either = |one: &'static str, other: &'static str| if turn.is_multiple_of(2) { one } else { other };
    let each = |requests: Vec<Value>| {
        let codes: BTreeSet<String> = requests.into_iter().map(|request| code(steady, request)).collect();
        codes.into_iter().collect::<Vec<_>>().join(" ")
    };
    let act = |act: Value| json!({ "ask": "bench", "visit": visit, "act": act });
    let request = match what {
        "answer" => {
            json!({ "ask": "answer", "step": "road-speed-vibration", "value": either("none", "not-tried") })
        }
        "order" => json!({ "ask": "choose-order", "order": either("running-first", "under-car-first") }),
        "gates" => {
            let sets = look().gate_sets;
            let lift = sets.iter().find(|set| set.id == "lift").unwrap();
            let confirm =
                |gate: &str| json!({ "ask": "confirm-gate", "visit": visit, "set": "lift", "gate": gate });
            return each(lift.gates.iter().map(|gate| confirm(&gate.id)).collect());
        }
        "gauge" => {
            json!({ "ask": "record-gauge", "step": "play-vertical", "reason": "read once more", "gauge": {
            "unit": "mm", "readings": ["0.010"], "instrument": { "resolution": "0.001", "mpe": "0.008" },
            "place": { "at": "bearing" }, "bearing": { "bore_mm": 35.0, "group": "C3" } } })
        }
        "photo" => {
            sent();
            json!({ "ask": "keep-photo", "step": "shaft-look", "upload": upload })
        }
        "mark" => {
            let photo = look().steps.iter().find_map(|step| Some(step.photo.as_ref()?.photo.sha256.clone()));
            let marks =
                json!([{ "shape": "arrow", "from": [0.1, 0.1], "to": [0.5, 0.1 + 0.01 * turn as f64] }]);
            json!({ "ask": "mark-photo", "step": "shaft-look", "photo": photo, "marks": marks })
        }
        "waive" => {
            json!({ "ask": "waive-photo", "step": "housing-look", "reason": either("too-dark", "hands-busy") })
        }
        "leave" => json!({ "ask": "leave-part" }),
        "opinion" => {
            json!({ "ask": "give-opinion", "cause": "misfire", "reason": format!("heard it, {turn}") })
        }
        "outcome" => json!({ "ask": "confirm-outcome", "causes": [either("misfire", "low-idle")] }),
        "teardown" => {
            let gates = [
                "lift-gates-hold",
                "stands-and-straps",
                "engine-and-gearbox-held",
                "shaft-marked",
                "maker-procedure",
                "high-voltage",
            ];
            return each(gates.iter().map(|gate| {
                json!({ "ask": "bench", "visit": visit, "act": { "gate": format!("teardown-{gate}") } })
            }).collect());
        }
        "note" => act(json!({ "note": format!("torque noted, {turn}") })),
        "run-out" => act(json!({ "run_out": format!("0.4{}", turn % 10) })),
        "bench-photo" => {
            sent();
            act(json!({ "of": "bench-found", "upload": upload }))
        }
        "amend" => {
            let vehicle = json!({ "layout": "rigid-engine-speed", "plate": format!("CK {turn}") });
            json!({ "ask": "amend", "intake": { "vehicle": vehicle } })
        }
        "sign" => json!({ "ask": "sign", "decision": "repair", "name": "", "locale": "en",
            "note_sha256": note(steady, visit).sha256, "strokes": [[[0.2, 0.4], [0.4, 0.7], [0.6, 0.3]]] }),
        "undo" => {
            let entry = look().undo.map_or_else(|| "0".repeat(64), |undo| undo.entry);
            json!({ "ask": "undo", "entry": entry, "reason": "felt once more" })
        }
        other => panic!("no request {other}"),
    };
    let mut request = request;
    request["visit"] = json!(visit);
    code(steady, request)
}

#[test]
fn whatever_a_clock_says_the_checker_accepts_what_was_written() {
    let mut runner = TestRunner::new(Config { cases: 16, failure_persistence: None, ..Config::default() });
    let days = prop::sample::select(vec![0_u16, 1, 365, u16::MAX]);
    runner
        .run(&(clocks(), days, prop::num::usize::ANY), |(clocks, days_ago, first)| {
            let folder = tempfile::tempdir().unwrap();
            CLOCK.store(MORNING.0, Ordering::Relaxed);
            let clock = || Moment(CLOCK.load(Ordering::Relaxed));
            let setup = Setup { data_dir: folder.path().to_owned(), press: Arc::new(PlainPress), clock };
            let steady = Steady::open(setup).unwrap();
            steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
            let opened = json!({ "ask": "open", "intake": { "vehicle": { "layout": "rigid-engine-speed" } } });
            let visit = ask(&steady, opened).visit;
            let entries = || ask(&steady, json!({ "ask": "look", "visit": visit })).ledger.entries;
            for what in WRITING {
                assert_eq!(write(&steady, &visit, what, 0), "ok", "{what}, while the clock is right");
            }
            for (turn, clock) in clocks.iter().enumerate() {
                CLOCK.store(*clock, Ordering::Relaxed);
                let believed = Moment(*clock).is_believable();
                // One of each kind in turn: which of them the visit takes then is for its rules to say.
                for place in 0..4 {
                    let what = WRITING[first.wrapping_add(4 * turn + place) % WRITING.len()];
                    let before = entries();
                    let told = write(&steady, &visit, what, turn + 1);
                    assert!(believed || entries() == before, "{what} at {clock} leaves an entry: {told}");
                    assert_ne!(told, "internal", "{what} at {clock}");
                }
                let before = entries();
                let value = ["none", "not-tried"][(turn + 1) % 2];
                let answer = json!({ "ask": "answer", "visit": visit, "step": "road-speed-vibration", "value": value });
                let want = if believed { "ok" } else { "clock-wrong" };
                assert_eq!(code(&steady, answer), want, "{clock}");
                let after = ask(&steady, json!({ "ask": "look", "visit": visit })).ledger;
                assert_eq!((after.broken_at, after.entries > before), (None, believed), "{clock}");
            }
            // The furthest back there is, from the earliest and the latest clock that can be right.
            let case = json!({ "days_ago": days_ago, "vehicle": { "layout": "torque-tube" }, "answers": [] });
            let mut replayed = 0;
            for clock in [MORNING.0, FIRST_BELIEVED, LAST_BELIEVED] {
                CLOCK.store(clock, Ordering::Relaxed);
                replayed += u64::from(replay(&steady, &case.to_string(), folder.path()).is_ok());
            }
            assert_eq!(replayed, 3, "{days_ago} days ago");
            CLOCK.store(MORNING.0, Ordering::Relaxed);
            let file = exported(&steady, &[]);
            let told = verify(&mut &*file).unwrap();
            assert_eq!(told.visits.len() as u64, 1 + replayed);
            Ok(())
        })
        .unwrap();
}

/// What a device that opens a visit says, whose clock says this.
#[track_caller]
fn check_opened(clock: fn() -> Moment, want: &str) {
    let folder = tempfile::tempdir().unwrap();
    let setup = Setup { data_dir: folder.path().to_owned(), press: Arc::new(PlainPress), clock };
    let steady = Steady::open(setup).unwrap();
    steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
    let opened = json!({ "ask": "open", "intake": { "vehicle": { "layout": "torque-tube" } } });
    assert_eq!(code(&steady, opened), want);
}

/// Its papers would bear that day, and other devices refuse lines from years ahead.
#[test]
fn no_visit_is_opened_on_a_day_that_cannot_be_today() {
    let day = |text: &str| Moment::parse(&format!("{text}T12:00:00Z")).unwrap();
    assert_eq!((day("2026-01-01").is_believable(), day("2025-12-31").is_believable()), (true, false));
    assert_eq!((day("2075-12-31").is_believable(), day("2076-01-01").is_believable()), (true, false));
    check_opened(|| MORNING, "ok");
    check_opened(|| Moment(0), "clock-wrong");
    check_opened(|| Moment(4_070_908_800_000), "clock-wrong");
}

/// Safety checks that were confirmed while the clock ran ahead hold for nobody once it is right, each of them by itself; and
/// a visit of then is an earlier one: a look after the repair lifts what it found.
#[test]
fn what_was_written_while_the_clock_ran_ahead_is_of_no_time_to_come() {
    const DAY: i64 = 86_400_000;
    static AHEAD: AtomicI64 = AtomicI64::new(0);
    let folder = tempfile::tempdir().unwrap();
    let at = |days: i64| AHEAD.store(MORNING.0 + days * DAY, Ordering::Relaxed);
    at(0);
    let clock = || Moment(AHEAD.load(Ordering::Relaxed));
    let setup = Setup { data_dir: folder.path().to_owned(), press: Arc::new(PlainPress), clock };
    let steady = Steady::open(setup).unwrap();
    steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
    let open = |occasion: &str| {
        let vehicle = json!({ "layout": "rigid-engine-speed", "plate": "CK 1001" });
        ask(&steady, json!({ "ask": "open", "intake": { "vehicle": vehicle, "occasion": occasion } })).visit
    };
    let felt = |visit: &str, value: &str| json!({ "ask": "answer", "visit": visit, "step": "play-vertical", "value": value, "temperature": "warm" });
    // One of the gates, in the middle, while the clock is wrong.
    let visit = open("complaint");
    let look = ask(&steady, json!({ "ask": "look", "visit": visit }));
    let gates: Vec<String> = look
        .gate_sets
        .iter()
        .find(|set| set.id == "lift")
        .unwrap()
        .gates
        .iter()
        .map(|gate| gate.id.clone())
        .collect();
    for (place, gate) in gates.iter().enumerate() {
        at(if place == 1 { 40 } else { 0 });
        ask(&steady, json!({ "ask": "confirm-gate", "visit": visit, "set": "lift", "gate": gate }));
    }
    at(0);
    assert_eq!(code(&steady, felt(&visit, "none")), "gates-too-old");
    // A DANGER of a visit that was opened then.
    at(40);
    let grave = open("complaint");
    enter_lift(&steady, &grave);
    ask(&steady, felt(&grave, "felt"));
    at(1);
    let still_open = || {
        let asked = Request::VisitsBefore { plate: "CK 1001".to_owned(), vin: String::new(), visit: None };
        let Response::VisitsBefore { still_open, .. } = steady.handle(asked).unwrap() else {
            panic!("no list")
        };
        still_open.map(|open| open.visit)
    };
    assert_eq!(still_open(), Some(grave));
    let after = open("after-repair");
    enter_lift(&steady, &after);
    ask(&steady, felt(&after, "none"));
    assert_eq!(still_open(), None);
}

/// Which visit came before which is kept by whatever brings both back, though the clock says otherwise.
#[test]
fn visit_of_a_day_to_come_is_an_earlier_one_after_it_was_restored_too() {
    const DAY: i64 = 86_400_000;
    static NOW: AtomicI64 = AtomicI64::new(0);
    let begun = |folder: &std::path::Path| {
        let clock = || Moment(NOW.load(Ordering::Relaxed));
        let setup = Setup { data_dir: folder.to_owned(), press: Arc::new(PlainPress), clock };
        let steady = Steady::open(setup).unwrap();
        steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
        steady
    };
    let [data, backup, restored, salvaged] = [(); 4].map(|()| tempfile::tempdir().unwrap());
    NOW.store(MORNING.0 + 40 * DAY, Ordering::Relaxed);
    let steady = begun(data.path());
    let grave = under(&steady, "CK 1002", "rigid-engine-speed", "complaint");
    answered(&steady, &grave, "play-vertical", json!("felt"), json!({ "temperature": "warm" }));
    NOW.store(MORNING.0, Ordering::Relaxed);
    let later = under(&steady, "CK 1002", "rigid-engine-speed", "complaint");
    let open = |steady: &Steady| {
        ask(steady, json!({ "ask": "look", "visit": later })).still_open.map(|open| open.visit)
    };
    assert_eq!(open(&steady), Some(grave.clone()));
    steady.backup(backup.path(), &mut |_| {}).unwrap();
    drop(steady);
    let new = begun(restored.path());
    new.restore(backup.path(), None, &mut |_| {}).unwrap();
    assert_eq!(open(&new), Some(grave.clone()), "restored");
    let new = begun(salvaged.path());
    new.salvage(&data.path().join("steady.db")).unwrap();
    assert_eq!(open(&new), Some(grave), "salvaged");
}
