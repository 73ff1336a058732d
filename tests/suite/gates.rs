//! No order of requests opens an under-car step while the engine may run, nor a running step while
//! somebody may be under the car. Checked against a shadow that only watches which requests succeed.

use std::collections::BTreeSet;
use std::sync::Arc;
use std::sync::atomic::{AtomicI64, Ordering};

use proptest::prelude::{ProptestConfig, any, prop_assert, proptest};
use serde_json::{Value, json};
use steady_core::app::request::Request;
use steady_core::app::{Setup, Steady};
use steady_core::model::entry::Order;
use steady_core::model::gates::LiftKind;
use steady_core::model::standing::{GateStand, Lock, Position, Standing};
use steady_core::model::time::Moment;

use crate::support::{MORNING, PlainPress, ask, code, scratch};

const SETS: [&str; 3] = ["running", "creep", "lift"];

fn opened(steady: &Steady, gearbox: &str, complaint: &str) -> Standing {
    ask(
        steady,
        json!({ "ask": "open", "intake": {
        "vehicle": { "layout": "rigid-engine-speed", "gearbox": gearbox }, "complaint": complaint } }),
    )
}

fn gates(standing: &Standing, set: &str) -> Vec<String> {
    let set = standing.gate_sets.iter().find(|stand| stand.id == set).unwrap();
    set.gates.iter().map(|gate| gate.id.clone()).collect()
}

#[track_caller]
fn enter(steady: &Steady, standing: &Standing, set: &str) {
    for gate in gates(standing, set) {
        ask(steady, json!({ "ask": "confirm-gate", "visit": standing.visit, "set": set, "gate": gate }));
    }
}

fn answer(visit: &str, step: &str, value: &str) -> Value {
    json!({ "ask": "answer", "visit": visit, "step": step, "value": value })
}

#[test]
fn steps_stay_shut_until_every_gate_is_confirmed() {
    let (_folder, steady) = scratch();
    let standing = opened(&steady, "automated-clutch", "");
    for (set, step, value) in [
        ("lift", "play-vertical", "none"),
        ("running", "misfire-evidence", "none"),
        ("creep", "creep-noise", "none"),
    ] {
        let gates = gates(&standing, set);
        for gate in &gates {
            assert_eq!(
                code(&steady, answer(&standing.visit, step, value)),
                "gate-closed",
                "{set} before {gate}"
            );
            ask(&steady, json!({ "ask": "confirm-gate", "visit": standing.visit, "set": set, "gate": gate }));
        }
        assert_eq!(code(&steady, answer(&standing.visit, step, value)), "ok", "{set}");
        ask(&steady, json!({ "ask": "leave-part", "visit": standing.visit }));
        assert_eq!(code(&steady, answer(&standing.visit, step, value)), "gate-closed", "{set} after leaving");
    }
}

/// Its own caution wants the parking brake on; before the car may creep it is off and the chocks are out.
#[test]
fn the_selector_is_moved_with_the_brake_set_and_the_chocks_in() {
    let (_folder, steady) = scratch();
    let standing = opened(&steady, "automated-clutch", "");
    enter(&steady, &standing, "running");
    let rattles =
        json!({ "ask": "answer", "visit": standing.visit, "step": "idle-noise", "value": ["rattle"] });
    let standing = ask(&steady, rattles);
    let step = standing.steps.iter().find(|step| step.id == "selector-effect").unwrap();
    assert_eq!((step.set.as_deref(), &step.lock), (Some("running"), &None));
    assert!(gates(&standing, "running").iter().any(|gate| gate == "brake-and-chocks"));
    assert_eq!(code(&steady, answer(&standing.visit, "selector-effect", "gone")), "ok");
    enter(&steady, &standing, "creep");
    assert_eq!(code(&steady, answer(&standing.visit, "selector-effect", "less")), "gate-closed");
}

#[test]
fn gates_record_who_and_when() {
    let (_folder, steady) = scratch();
    let standing = opened(&steady, "manual", "");
    enter(&steady, &standing, "lift");
    let standing = ask(&steady, json!({ "ask": "look", "visit": standing.visit }));
    let lift = standing.gate_sets.iter().find(|set| set.id == "lift").unwrap();
    assert!(lift.open && lift.gates.len() >= 9);
    for gate in &lift.gates {
        assert_eq!(gate.confirmed.as_ref().unwrap().by, "Kim Demo", "{}", gate.id);
    }
}

/// The engine runs on: what holds of both is confirmed once, what differs before each, and all of it after leaving.
#[test]
fn creeping_asks_for_what_differs_from_running() {
    let (_folder, steady) = scratch();
    let standing = opened(&steady, "automated-clutch", "");
    let visit = &standing.visit;
    let look = || ask(&steady, json!({ "ask": "look", "visit": visit }));
    let asked = |set: &str| -> Vec<String> {
        let standing = look();
        let stand = standing.gate_sets.iter().find(|stand| stand.id == set).unwrap();
        let open = stand.gates.iter().filter(|gate| gate.confirmed.is_none());
        open.map(|gate| gate.id.clone()).collect()
    };
    let fresh = asked("creep");
    enter(&steady, &standing, "running");
    let differs = ["creep-driver-ready", "creep-brake-off", "creep-distance", "creep-nobody-around"];
    assert_eq!(asked("creep"), differs);
    assert_eq!(code(&steady, answer(visit, "creep-noise", "none")), "gate-closed");
    enter(&steady, &standing, "creep");
    assert_eq!(code(&steady, answer(visit, "creep-noise", "none")), "ok");
    assert_eq!(code(&steady, answer(visit, "misfire-evidence", "none")), "gate-closed");
    assert_eq!(asked("running"), ["brake-and-chocks", "neutral-or-park", "nobody-near", "clothing-secured"]);
    let beneath = json!({ "ask": "confirm-gate", "visit": visit, "set": "lift", "gate": "engine-off" });
    assert_eq!(code(&steady, beneath), "part-entered");
    ask(&steady, json!({ "ask": "leave-part", "visit": visit }));
    assert_eq!(asked("creep"), fresh);
    assert_eq!(fresh.len(), 7);
    enter(&steady, &standing, "lift");
    let creeping = json!({ "ask": "confirm-gate", "visit": visit, "set": "creep", "gate": "fumes-out" });
    assert_eq!(code(&steady, creeping), "part-entered");
}

/// What somebody else confirmed while the engine ran was not looked at by whoever lets the car creep.
#[test]
fn gates_carried_on_are_still_of_whoever_confirmed_them() {
    let (_folder, steady) = scratch();
    let standing = opened(&steady, "automated-clutch", "");
    enter(&steady, &standing, "running");
    steady.handle(Request::SetTechnician { name: "Pat Ode".to_owned() }).unwrap();
    enter(&steady, &standing, "creep");
    assert_eq!(code(&steady, answer(&standing.visit, "creep-noise", "none")), "gates-of-another");
}

/// Whoever goes under the car has looked for themselves, though the phone stayed at the car.
#[test]
fn gates_that_somebody_else_confirmed_are_confirmed_anew() {
    let (_folder, steady) = scratch();
    let standing = opened(&steady, "manual", "");
    enter(&steady, &standing, "lift");
    let name = |name: &str| steady.handle(Request::SetTechnician { name: name.to_owned() }).unwrap();
    name("Pat Ode");
    let felt = answer(&standing.visit, "play-vertical", "none");
    assert_eq!(code(&steady, felt.clone()), "gates-of-another");
    ask(&steady, json!({ "ask": "leave-part", "visit": standing.visit }));
    enter(&steady, &standing, "lift");
    assert_eq!(code(&steady, felt), "ok");
    name("Kim Demo");
    let owners_account = answer(&standing.visit, "road-speed-vibration", "none");
    assert_eq!(code(&steady, owners_account), "ok", "no gate stands before the owner's account");
}

#[test]
fn danger_locks_the_engine_and_leaves_the_finding_open() {
    let (_folder, steady) = scratch();
    let standing = opened(&steady, "automated-clutch", "");
    enter(&steady, &standing, "running");
    let found = ask(&steady, answer(&standing.visit, "running-stop", "heavy-knock"));
    assert_eq!(found.position, Position::Leave { set: "running".to_owned() });
    assert_eq!(code(&steady, answer(&standing.visit, "misfire-evidence", "none")), "danger-locks-running");
    assert_eq!(code(&steady, answer(&standing.visit, "running-stop", "none")), "reason-needed");
    ask(&steady, json!({ "ask": "leave-part", "visit": standing.visit }));
    for set in ["running", "creep"] {
        let gate = gates(&standing, set)[0].clone();
        let request = json!({ "ask": "confirm-gate", "visit": standing.visit, "set": set, "gate": gate });
        assert_eq!(code(&steady, request), "danger-locks-running");
    }
    enter(&steady, &standing, "lift");
    assert_eq!(code(&steady, answer(&standing.visit, "play-vertical", "none")), "ok");
}

#[test]
fn danger_found_beneath_locks_what_runs() {
    let (_folder, steady) = scratch();
    let standing = opened(&steady, "automated-clutch", "knock under load");
    assert_eq!(standing.position, Position::Step { step: "road-speed-vibration".to_owned() });
    enter(&steady, &standing, "lift");
    let standing = ask(&steady, answer(&standing.visit, "play-lateral", "felt"));
    let running = standing.steps.iter().find(|step| step.id == "idle-speed").unwrap();
    assert_eq!(running.lock, Some(Lock::DangerFound { step: "play-lateral".to_owned() }));
    assert_eq!(standing.sorting.next_check.unwrap().step, "play-vertical");
}

#[test]
fn undo_brings_back_what_stood_and_asks_why_after_danger() {
    let (_folder, steady) = scratch();
    let standing = opened(&steady, "manual", "");
    enter(&steady, &standing, "lift");
    ask(&steady, answer(&standing.visit, "turn-by-hand", "rough"));
    let mut smooth = answer(&standing.visit, "turn-by-hand", "smooth");
    assert_eq!(code(&steady, smooth.clone()), "reason-needed");
    smooth["reason"] = json!("a brake was dragging");
    ask(&steady, smooth);
    let undo = |standing: &Standing| json!({ "ask": "undo", "visit": standing.visit, "entry": standing.undo.as_ref().unwrap().entry });
    let look = || ask(&steady, json!({ "ask": "look", "visit": standing.visit }));
    let back = ask(&steady, undo(&look()));
    let turn = back.steps.iter().find(|step| step.id == "turn-by-hand").unwrap();
    assert!(turn.answered.as_ref().unwrap().value.has("rough"));
    ask(&steady, answer(&standing.visit, "play-vertical", "felt"));
    let danger = look();
    assert!(danger.undo.as_ref().unwrap().needs_reason);
    assert_eq!(code(&steady, undo(&danger)), "reason-needed");
    assert_eq!(code(&steady, undo(&back)), "undo-out-of-date");
}

/// "A safety check" might be any of seven: which one it was, and where, stands in the offer.
#[test]
fn undo_names_the_gate_and_its_set() {
    let (_folder, steady) = scratch();
    let standing = opened(&steady, "manual", "");
    let gates = gates(&standing, "lift");
    for gate in gates.iter().take(2) {
        let confirm = json!({ "ask": "confirm-gate", "visit": standing.visit, "set": "lift", "gate": gate });
        let offer = ask(&steady, confirm).undo.unwrap();
        let named = (offer.what.as_str(), offer.gate.as_ref(), offer.set.as_deref(), offer.step);
        assert_eq!(named, ("gate-confirmed", Some(gate), Some("lift"), None));
    }
}

#[test]
fn complaint_chooses_the_order_unless_somebody_does() {
    let (_folder, steady) = scratch();
    let asked = |complaint: &str| {
        let standing = opened(&steady, "manual", complaint);
        ask(&steady, answer(&standing.visit, "road-speed-vibration", "not-tried"))
    };
    for complaint in ["buzzing at 2,500", "knocks", "vibrates on the motorway"] {
        let standing = asked(complaint);
        assert_eq!(
            (standing.position, standing.order),
            (Position::Order, Order::UnderCarFirst),
            "{complaint}"
        );
    }
    let standing = asked("rattles when setting off");
    assert_eq!((standing.position, standing.order), (Position::Order, Order::RunningFirst));
    let chosen =
        ask(&steady, json!({ "ask": "choose-order", "visit": standing.visit, "order": "running-first" }));
    assert_eq!(chosen.position, Position::Gates { set: "running".to_owned() });
}

/// The hands-on check alone: under the car, what holds the shaft and the play, out again, and there is a rating.
#[test]
fn the_hands_on_check_is_a_way_of_its_own_and_the_rest_goes_on_from_there() {
    let (_folder, steady) = scratch();
    let standing = opened(&steady, "manual", "rattles");
    let visit = &standing.visit;
    let choose = |order: &str| ask(&steady, json!({ "ask": "choose-order", "visit": visit, "order": order }));
    assert_eq!(choose("hands-on").position, Position::Gates { set: "lift".to_owned() });
    enter(&steady, &standing, "lift");
    let at = |standing: &Standing, step: &str| {
        assert_eq!(standing.position, Position::Step { step: step.to_owned() });
    };
    at(&ask(&steady, json!({ "ask": "look", "visit": visit })), "housing-look");
    let seen = json!({ "ask": "answer", "visit": visit, "step": "housing-look", "value": ["sound"] });
    let seen = ask(&steady, seen);
    assert!(
        seen.steps.iter().any(|step| step.id == "housing-look" && step.wants_photo),
        "what holds the shaft"
    );
    at(&seen, "housing-look");
    ask(
        &steady,
        json!({ "ask": "waive-photo", "visit": visit, "step": "housing-look", "reason": "too-dark" }),
    );
    let felt = ask(&steady, answer(visit, "play-vertical", "none"));
    let nothing = felt.steps.iter().find(|step| step.id == "play-vertical").unwrap();
    assert_eq!((nothing.wants_photo, nothing.waiver.as_deref()), (false, Some("nothing-to-show")));
    at(&felt, "play-lateral");
    let done = ask(&steady, answer(visit, "play-lateral", "none"));
    assert_eq!(done.position, Position::Leave { set: "lift".to_owned() });
    let left = ask(&steady, json!({ "ask": "leave-part", "visit": visit }));
    assert_eq!(left.position, Position::Done);
    assert!(left.urgency.complete && !left.urgency.unlooked.is_empty(), "it says what nobody looked at");
    at(&choose("running-first"), "road-speed-vibration");
}

/// Of each kind of lift at most seven gates are asked for; where two kinds were said, all of both.
#[test]
fn the_gates_under_a_car_are_those_of_what_holds_it_up() {
    let (_folder, steady) = scratch();
    let confirm = |visit: &str, gate: &str, lift: &str| {
        ask(
            &steady,
            json!({ "ask": "confirm-gate", "visit": visit, "set": "lift", "gate": gate, "lift": lift }),
        )
    };
    let lift = |standing: &Standing| standing.gate_sets.iter().find(|set| set.id == "lift").unwrap().clone();
    for kind in LiftKind::ALL {
        let standing = opened(&steady, "manual", "");
        let name = kind.id();
        assert_eq!(serde_json::to_value(kind).unwrap(), name, "a text's key and the spelling on disk");
        let of_kind = |gate: &&GateStand| gate.lifts.is_empty() || gate.lifts.contains(&kind);
        let all = lift(&standing).gates;
        let own: Vec<&GateStand> = all.iter().filter(of_kind).collect();
        assert!((5..=7).contains(&own.len()) && own.len() < all.len(), "{name}: {} gates", own.len());
        for (at, gate) in own.iter().enumerate() {
            assert!(!lift(&ask(&steady, json!({ "ask": "look", "visit": standing.visit }))).open, "{name}");
            let then = lift(&confirm(&standing.visit, &gate.id, name));
            assert_eq!((then.gates.len(), then.open), (own.len(), at + 1 == own.len()), "{name}");
        }
    }
    let standing = opened(&steady, "manual", "");
    confirm(&standing.visit, "engine-off", "pit");
    let mixed = lift(&confirm(&standing.visit, "not-alone", "stands"));
    assert_eq!(mixed.gates.len(), lift(&standing).gates.len(), "nobody knows what holds it up");
}

/// A slip of the finger costs what is about the lift, not the whole part again: that the car sat firm on the one says
/// nothing of the other, nor of the first once it was left.
#[test]
fn another_lift_is_said_without_leaving_and_asks_for_what_differs() {
    let (_folder, steady) = scratch();
    let standing = opened(&steady, "manual", "");
    let lift = |standing: &Standing| standing.gate_sets.iter().find(|set| set.id == "lift").unwrap().clone();
    let of = |gate: Option<&str>, kind: &str| match gate {
        Some(gate) => {
            json!({ "ask": "confirm-gate", "visit": standing.visit, "set": "lift", "gate": gate, "lift": kind })
        }
        None => json!({ "ask": "say-lift", "visit": standing.visit, "set": "lift", "lift": kind }),
    };
    assert_eq!(
        code(&steady, of(None, "pit")),
        "part-not-entered",
        "the screen keeps it until something is confirmed"
    );
    let mut then = lift(&standing);
    while let Some(gate) = then.gates.iter().find(|gate| gate.confirmed.is_none()).filter(|_| !then.open) {
        then = lift(&ask(&steady, of(Some(&gate.id), "platform")));
    }
    assert!(then.open && then.lift == Some(LiftKind::Platform));
    let said = lift(&ask(&steady, of(None, "two-post")));
    assert_eq!((said.open, said.lift), (false, Some(LiftKind::TwoPost)));
    assert_eq!(said.lifts.len(), LiftKind::ALL.len(), "every kind can still be said");
    let left: Vec<&str> =
        said.gates.iter().filter(|gate| gate.confirmed.is_none()).map(|gate| &*gate.id).collect();
    assert_eq!(left, ["lift-fits", "shaken-low", "locks-engaged"]);
    assert_eq!(code(&steady, answer(&standing.visit, "play-vertical", "none")), "gate-closed");
    let again = left.iter().map(|gate| lift(&ask(&steady, of(Some(gate), "two-post"))).open);
    assert_eq!(again.collect::<Vec<_>>(), [false, false, true]);
    let steps = ask(&steady, answer(&standing.visit, "play-vertical", "none"));
    assert_eq!(steps.entered.as_deref(), Some("lift"), "nobody came out from under the car");
    // One wheel-on-the-floor kind after a lift asks for its chocks again where they were never confirmed.
    assert!(!lift(&ask(&steady, of(None, "stands"))).open);
    assert_eq!(code(&steady, answer(&standing.visit, "play-lateral", "none")), "gate-closed");
    let back = lift(&ask(&steady, of(None, "two-post")));
    let asked: Vec<&str> =
        back.gates.iter().filter(|gate| gate.confirmed.is_none()).map(|gate| &*gate.id).collect();
    assert_eq!((back.open, asked), (false, left));
}

/// What the clock of the next test says.
static LATER: AtomicI64 = AtomicI64::new(0);

/// Nobody knows what happened at the car meanwhile.
#[test]
fn gates_do_not_hold_for_another_day_nor_while_nobody_was_there() {
    for (away_minutes, answered, want) in [
        (119, 1, "ok"),
        (121, 1, "gates-too-old"),
        (6 * 24 * 60, 1, "gates-too-old"),
        (100, 5, "gates-too-old"),
    ] {
        let folder = tempfile::tempdir().unwrap();
        LATER.store(MORNING.0, Ordering::Relaxed);
        let clock = || Moment(LATER.load(Ordering::Relaxed));
        let setup = Setup { data_dir: folder.path().to_owned(), press: Arc::new(PlainPress), clock };
        let steady = Steady::open(setup).unwrap();
        steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
        let standing = opened(&steady, "manual", "");
        enter(&steady, &standing, "lift");
        let felt = |value: &str| answer(&standing.visit, "play-vertical", value);
        let mut said = "ok".to_owned();
        for turn in 0..answered {
            LATER.fetch_add(away_minutes * 60_000, Ordering::Relaxed);
            said = code(&steady, felt(if turn % 2 == 0 { "unsure" } else { "not-done" }));
        }
        assert_eq!(said, want, "{answered} times {away_minutes} minutes");
        ask(&steady, json!({ "ask": "leave-part", "visit": standing.visit }));
        enter(&steady, &standing, "lift");
        assert_eq!(code(&steady, felt("unsure")), "ok", "confirmed anew");
    }
}

/// A screen that is opened days later, or by somebody else, offers nobody a shaft to take hold of.
#[test]
fn checks_that_hold_no_more_close_what_is_shown() {
    let folder = tempfile::tempdir().unwrap();
    LOOKED.store(MORNING.0, Ordering::Relaxed);
    let clock = || Moment(LOOKED.load(Ordering::Relaxed));
    let steady =
        Steady::open(Setup { data_dir: folder.path().to_owned(), press: Arc::new(PlainPress), clock });
    let steady = steady.unwrap();
    let name = |name: &str| steady.handle(Request::SetTechnician { name: name.to_owned() }).unwrap();
    name("Kim Demo");
    let standing = opened(&steady, "manual", "");
    enter(&steady, &standing, "lift");
    let shown = || {
        let standing = ask(&steady, json!({ "ask": "look", "visit": standing.visit }));
        let lift = standing.gate_sets.iter().find(|set| set.id == "lift").unwrap().clone();
        let step = standing.steps.iter().find(|step| step.id == "play-vertical").unwrap().lock.clone();
        (lift.open, lift.lock, step, standing.position)
    };
    let set = || "lift".to_owned();
    let (open, lock, step, position) = shown();
    assert_eq!((open, lock, step), (true, None, None));
    assert!(matches!(position, Position::Looks));
    let closed = |why: Lock| (false, Some(why.clone()), Some(why), Position::Leave { set: set() });
    name("Pat Ode");
    assert_eq!(shown(), closed(Lock::GatesOfAnother { set: set() }));
    name("Kim Demo");
    assert!(shown().0, "whose checks they are goes on");
    LOOKED.fetch_add(6 * 24 * 60 * 60_000, Ordering::Relaxed);
    assert_eq!(shown(), closed(Lock::GatesTooOld { set: set() }));
    ask(&steady, json!({ "ask": "leave-part", "visit": standing.visit }));
    enter(&steady, &standing, "lift");
    assert!(shown().0, "confirmed anew");
}

/// What the clock of the test before says.
static LOOKED: AtomicI64 = AtomicI64::new(0);

/// What the requests that succeeded say about people and engine.
#[derive(Default)]
struct Shadow {
    /// Since a part was left last: the gates confirmed, with their set; `None` for other entries.
    since: Vec<Option<(String, String)>>,
}

/// What holds of a car that runs as of one that creeps.
const SHARED: [&str; 3] = ["wheels-on-floor", "doors-shut", "fumes-out"];

fn runs_on(from: &str, to: &str) -> bool {
    matches!((from, to), ("running", "creep") | ("creep", "running"))
}

impl Shadow {
    /// The entered set, and its gates that stand.
    fn stands(&self) -> (Option<&str>, BTreeSet<&str>) {
        let (mut entered, mut confirmed) = (None, BTreeSet::new());
        for (set, gate) in self.since.iter().flatten() {
            if let Some(before) = entered.filter(|before| *before != set.as_str()) {
                confirmed.retain(|gate| runs_on(before, set) && SHARED.contains(gate));
            }
            entered = Some(set.as_str());
            confirmed.insert(gate.as_str());
        }
        (entered, confirmed)
    }

    fn confirm(&mut self, set: &str, gate: &str) {
        let (entered, confirmed) = self.stands();
        if !confirmed.contains(gate) || (entered != Some(set) && !SHARED.contains(&gate)) {
            self.since.push(Some((set.to_owned(), gate.to_owned())));
        }
    }

    fn may_answer(&self, gates: &[String], set: &str) -> bool {
        let (entered, confirmed) = self.stands();
        entered == Some(set) && gates.iter().all(|gate| confirmed.contains(gate.as_str()))
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 60, ..ProptestConfig::default() })]

    #[test]
    fn nobody_is_under_a_running_engine(moves in proptest::collection::vec((0_u8..12, any::<u16>()), 40..90)) {
        let (_folder, steady) = scratch();
        let first = opened(&steady, "automated-clutch", "");
        let visit = first.visit.clone();
        let all: Vec<(String, Vec<String>)> = SETS.iter().map(|set| ((*set).to_owned(), gates(&first, set))).collect();
        let mut shadow = Shadow::default();
        for (kind, pick) in moves {
            let (set, gates) = &all[pick as usize % 3];
            match kind {
                0..=3 => {
                    // Mostly go on with the set that is entered, so that sets do open.
                    let entered = shadow.stands().0.map(str::to_owned);
                    let (set, gates) = all.iter().find(|(id, _)| kind > 0 && entered.as_ref() == Some(id)).unwrap_or(&all[pick as usize % 3]);
                    for gate in gates.iter().take(1 + pick as usize % gates.len().max(1) + usize::from(kind == 3) * 20) {
                        let request = json!({ "ask": "confirm-gate", "visit": visit, "set": set, "gate": gate });
                        if code(&steady, request) == "ok" {
                            let entered = shadow.stands().0;
                            prop_assert!(entered.is_none_or(|entered| entered == set || runs_on(entered, set)));
                            shadow.confirm(set, gate);
                        }
                    }
                }
                4 => {
                    if code(&steady, json!({ "ask": "leave-part", "visit": visit })) == "ok" {
                        shadow = Shadow::default();
                    }
                }
                5 => {
                    let standing = ask(&steady, json!({ "ask": "look", "visit": visit }));
                    if let Some(offer) = standing.undo {
                        let request = json!({ "ask": "undo", "visit": visit, "entry": offer.entry, "reason": "a slip of the hand" });
                        prop_assert!(code(&steady, request) == "ok");
                        shadow.since.pop();
                    }
                }
                _ => {
                    let (step, value) = match set.as_str() {
                        "lift" => [("play-vertical", "none"), ("turn-by-hand", "smooth"), ("shaft-look", "dented")][pick as usize / 3 % 3],
                        "running" => [("misfire-evidence", "none"), ("neutral-2500-buzz", "felt"), ("air-leak-test", "none")][pick as usize / 3 % 3],
                        _ => ("creep-noise", "none"),
                    };
                    let ok = code(&steady, answer(&visit, step, value)) == "ok";
                    prop_assert!(ok == shadow.may_answer(gates, set), "{step} in {:?}", shadow.stands());
                    if ok {
                        shadow.since.push(None);
                    }
                }
            }
        }
    }
}
