//! What a bench records of a housing beside its bore: the old sleeve, the workshop's own sleeves and instruments, and each
//! bearing turned after assembly.

use serde_json::{Value, json};
use steady_core::content::build_repair;
use steady_core::model::bench::{BenchPartId, BenchStand};
use steady_core::model::fit::StockSays;
use steady_core::model::standing::RepairStage;
use steady_core::model::verdict::BenchGap;
use steady_core::model::workshop::Workshop;
use steady_core::words::Words;

use crate::bench_visit::{bench, confirm, demo, visit};
use crate::support::{ask, code, scratch};

/// An old sleeve comes out behind the gates of its way; what it hid is looked at and read before a cut is decided.
#[test]
fn old_sleeve_comes_out_behind_its_gates_and_hides_the_bore_until_then() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "play-vertical=felt");
    confirm(&steady, &visit, "teardown");
    let act = |act: Value| json!({ "ask": "bench", "visit": visit, "act": act });
    let file = |stage: &str| act(json!({ "bore": stage, "file": demo("worn-seat-dial.csv") }));
    let look =
        json!({ "cracked": false, "dyed": true, "ring_turned": true, "wall_least_mm": 3.0, "sleeved": true });
    bench(&steady, act(json!({ "look": look })));
    let found = bench(&steady, file("found"));
    assert_eq!(found.plan, None, "the old sleeve's bore is not what is cut");
    assert!(found.verdict.missing.contains(&BenchGap::BehindSleeve), "{:?}", found.verdict);
    let next = |stand: &BenchStand| serde_json::to_value(stand.next).unwrap();
    assert_eq!(next(&found), "old-sleeve");
    assert_eq!(code(&steady, file("behind")), "sleeve-still-in");
    for (way, set) in [("heat", "heat"), ("press", "press"), ("bored", "machining")] {
        let out = |outside: &str| act(json!({ "sleeve_out": way, "outside": outside }));
        assert_eq!(code(&steady, out("75.06")), "gate-closed", "{way}");
        confirm(&steady, &visit, set);
        assert_eq!(code(&steady, out("0,4")), "sleeve-size-refused");
        assert_eq!(code(&steady, out("75,06")), "ok", "{way}");
    }
    bench(&steady, act(json!({ "pass": 1, "contact": "all-round", "diameter": "75.0" })));
    let out = bench(&steady, act(json!({ "sleeve_out": "bored", "outside": "75.06" })));
    let skim = out.parts.iter().find(|part| part.id == BenchPartId::Skim).unwrap();
    assert!(!skim.done, "the cutter touched the sleeve all round, not the housing");
    assert_eq!(out.sleeve_out.as_ref().and_then(|out| out.outside_mm), Some(75.06));
    assert_eq!((out.look.cracked, out.look.dyed), (None, None), "what it hid was not looked at");
    assert!(out.verdict.missing.contains(&BenchGap::Cracks), "{:?}", out.verdict);
    let behind = bench(&steady, file("behind"));
    assert!(behind.plan.is_some());
    assert!(!behind.verdict.missing.contains(&BenchGap::BehindSleeve), "{:?}", behind.verdict);
    let grip = &behind.sleeve_out.as_ref().unwrap().lines;
    assert!(grip.iter().any(|line| line.contains("of grip")), "{grip:?}");
    let standing = ask(&steady, json!({ "ask": "look", "visit": visit }));
    let record = build_repair(&standing, &behind, &Workshop::default(), Words::of("en").unwrap());
    let said: Vec<&String> = record.sections.iter().flat_map(|part| &part.text).collect();
    for sentence in ["The old sleeve was bored through.", "Cracks were not looked for.", "75.06 mm"] {
        assert!(said.iter().any(|line| line.contains(sentence)), "no {sentence:?} in {said:?}");
    }
    assert_eq!(record.bores.len(), 2, "as found and behind the sleeve");
    let undone = act(json!({ "undo": behind.undo.unwrap().entry }));
    assert_eq!(bench(&steady, undone).behind, None);
}

/// A bore that was not read before its sleeve came out is gone with it, and is asked for no more.
#[test]
fn bore_of_a_sleeve_that_is_out_is_not_asked_for() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "play-vertical=felt");
    let act = |act: Value| json!({ "ask": "bench", "visit": visit, "act": act });
    for set in ["teardown", "press"] {
        confirm(&steady, &visit, set);
    }
    let seen =
        json!({ "cracked": false, "dyed": true, "ring_turned": true, "wall_least_mm": 3.0, "sleeved": true });
    let look = || act(json!({ "look": seen }));
    let next = |stand: &BenchStand| serde_json::to_value(stand.next).unwrap();
    assert_eq!(next(&bench(&steady, look())), "found");
    let out = bench(&steady, act(json!({ "sleeve_out": "press", "outside": null })));
    assert_eq!(next(&out), "look", "what it hid is looked at anew");
    let looked = bench(&steady, look());
    assert_eq!(next(&looked), "old-sleeve", "the bore behind it");
}

/// The workshop's own sleeves stand at its bench: open before a fit, and then with what the housing is bored to.
#[test]
fn sleeves_of_the_workshop_stand_at_its_bench() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "play-vertical=felt");
    let sleeves = json!([{ "material": "mild-steel", "outside": "76.05", "bore": "70" }]);
    let set = json!({ "ask": "set-workshop", "workshop": { "sleeves": sleeves } });
    steady.handle(serde_json::from_value(set).unwrap()).unwrap();
    confirm(&steady, &visit, "teardown");
    let before = bench(&steady, json!({ "ask": "look-at-bench", "visit": visit }));
    assert_eq!((before.stock[0].says, before.stock[0].housing_bore_mm), (StockSays::Open, None));
    let values = json!({ "bearing-od": "72", "class": "N7", "housing": "A356", "housing-od": "110", "temp": "20..60" });
    let after = bench(&steady, json!({ "ask": "bench", "visit": visit, "act": { "fit": values } }));
    let [least, most] = after.stock[0].housing_bore_mm.unwrap();
    assert!(75.0 < least && least < most && most < 76.05, "{least} {most}");
    assert!(after.stock[0].line.contains("bore the housing to"), "{}", after.stock[0].line);
}

/// A sleeve is offered for no housing that is scrap, none for more than its wall bears, and none for a bore that is wider
/// already.
#[test]
fn sleeve_of_the_workshop_goes_into_no_housing_that_cannot_take_it() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "play-vertical=felt");
    let sleeve = |outside: &str| json!({ "material": "ductile-iron", "outside": outside, "bore": "70" });
    let set = json!({ "ask": "set-workshop", "workshop": { "sleeves": [sleeve("75.06"), sleeve("84")] } });
    steady.handle(serde_json::from_value(set).unwrap()).unwrap();
    confirm(&steady, &visit, "teardown");
    let act = |act: Value| bench(&steady, json!({ "ask": "bench", "visit": visit, "act": act }));
    let look = |cracked: bool| {
        act(
            json!({ "look": { "cracked": cracked, "ring_turned": true, "wall_least_mm": 4.0, "sleeved": false } }),
        )
    };
    look(false);
    act(json!({ "bore": "found", "file": demo("worn-seat-dial.csv") }));
    let values =
        json!({ "bearing-od": "72", "class": "N7", "housing": "A356", "housing-od": "87", "temp": "20..50" });
    let says = |stand: &BenchStand| stand.stock.iter().map(|it| it.says).collect::<Vec<_>>();
    let sound = act(json!({ "fit": values }));
    assert_eq!(says(&sound), [StockSays::BoreTo, StockSays::WallTooThin], "{:?}", sound.stock);
    let cracked = look(true);
    assert_eq!(says(&cracked), [StockSays::HousingReplaced; 2], "{:?}", cracked.stock);
    assert!(
        cracked.stock.iter().all(|it| it.housing_bore_mm.is_none() && it.line.contains("to be replaced"))
    );
    look(false);
    confirm(&steady, &visit, "machining");
    let wide = act(json!({ "pass": 1, "contact": "partly", "diameter": "75.5" }));
    assert_eq!(says(&wide), [StockSays::BoreTooWide, StockSays::WallTooThin], "{:?}", wide.stock);
}

/// The workshop's instrument goes into the record as it stood that day, with its step and error; one that was overdue says so.
#[test]
fn bore_is_read_with_an_instrument_of_the_workshop_and_says_if_it_was_overdue() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "play-vertical=felt");
    let own = |name: &str, due: &str| json!({ "name": name, "resolution": "0.01", "mpe": "0.02", "calibrated": "2026-01-05", "due": due });
    let workshop = |instruments: Value| {
        let set = json!({ "ask": "set-workshop", "workshop": { "instruments": instruments } });
        steady.handle(serde_json::from_value(set).unwrap()).unwrap();
    };
    workshop(json!([own("Bore gauge 4", "2027-01-04"), own("Bore gauge 3", "2026-02-01")]));
    confirm(&steady, &visit, "teardown");
    let read = |with: Option<&str>| {
        let act = json!({ "bore": "found", "file": demo("worn-seat-dial.csv"), "instrument": with });
        json!({ "ask": "bench", "visit": visit, "act": act })
    };
    assert_eq!(code(&steady, read(Some("Bore gauge 9"))), "unknown-instrument");
    let expanded = |stand: &BenchStand| {
        stand.found.as_ref().unwrap().shape.greatest_out_of_roundness.unwrap().expanded_um
    };
    let says = |stand: &BenchStand, what: &str| {
        stand.found.as_ref().unwrap().lines.iter().any(|line| line.contains(what))
    };
    let file = bench(&steady, read(None));
    assert!(!says(&file, "Bore gauge"), "none was named");
    let valid = bench(&steady, read(Some("Bore gauge 4")));
    assert!(expanded(&valid) > expanded(&file), "a coarser instrument than the file says");
    assert!(says(&valid, "Read with Bore gauge 4, calibrated on 2026-01-05, valid until 2027-01-04."));
    let overdue = bench(&steady, read(Some("Bore gauge 3")));
    assert!(says(&overdue, "WHOSE CALIBRATION HAD RUN OUT on 2026-02-01"), "{:?}", overdue.found);
    let mut ahead = own("Bore gauge 5", "9999-12-31");
    ahead["calibrated"] = json!("9999-12-30");
    workshop(json!([ahead]));
    let ahead = bench(&steady, read(Some("Bore gauge 5")));
    assert!(says(&ahead, "OF WHICH NO VALID CALIBRATION IS KNOWN"), "{:?}", ahead.found);
    workshop(json!([own("Bore gauge 3", "2026-02-01")]));
    let overdue = bench(&steady, read(Some("Bore gauge 3")));
    // What the workshop notes later changes no record.
    workshop(json!([own("Bore gauge 3", "2028-01-01")]));
    let later = bench(&steady, json!({ "ask": "look-at-bench", "visit": visit }));
    assert_eq!(later.found, overdue.found);
    assert_eq!(later.instruments.iter().map(|own| own.overdue).collect::<Vec<_>>(), [false]);
}

/// Of two bearings both have to turn freely, each cold and with some clearance left; one alone stands for itself.
#[test]
fn repair_ends_when_every_bearing_turns_freely_cold() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "play-vertical=felt");
    confirm(&steady, &visit, "teardown");
    let turn = |act: Value| bench(&steady, json!({ "ask": "bench", "visit": visit, "act": act }));
    let ring = |turns: &str, bearing: &str, cold: bool, clearance: Value| {
        turn(json!({ "ring": turns, "bearing": bearing, "cold": cold, "clearance": clearance }))
    };
    let stage = || ask(&steady, json!({ "ask": "look", "visit": visit })).repair;
    let ends = |after: &BenchStand| {
        let done = after.parts.iter().find(|part| part.id == BenchPartId::Ring).unwrap().done;
        assert_eq!(stage() == Some(RepairStage::TurnsFree), done, "{:?}", after.ring_lines);
        done
    };
    let says = |after: &BenchStand, what: &str| after.ring_lines.iter().any(|line| line.contains(what));
    let front = ring("free", "front", true, json!("0,012"));
    assert!(!ends(&front) && says(&front, "rear bearing was not turned"), "{:?}", front.ring_lines);
    assert!(says(&front, "clearance left: 0.012"), "{:?}", front.ring_lines);
    let warm = ring("free", "rear", false, Value::Null);
    assert!(!ends(&warm) && says(&warm, "Turn it again when it is cold"), "{:?}", warm.ring_lines);
    let gone = ring("free", "rear", true, json!("0"));
    assert!(!ends(&gone) && says(&gone, "NO INTERNAL CLEARANCE"), "{:?}", gone.ring_lines);
    let both = ring("free", "rear", true, Value::Null);
    assert!(ends(&both) && both.rings.len() == 2, "{:?}", both.ring_lines);
    assert!(!ends(&ring("stiff", "front", true, Value::Null)));
    let alone = turn(json!({ "ring": "free" }));
    assert!(ends(&alone) && alone.rings.len() == 1, "{:?}", alone.ring_lines);
    for clearance in ["-0.1", "2"] {
        let act = json!({ "ring": "free", "clearance": clearance });
        let refused = json!({ "ask": "bench", "visit": visit, "act": act });
        assert_eq!(code(&steady, refused), "clearance-refused", "{clearance}");
    }
}
