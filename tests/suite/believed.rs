//! What strangers bring is added to what is known and takes nothing away: no rating is made milder, no earlier DANGER
//! lifted, nothing taught and nothing erased by a device that nobody confirmed, whoever carries its lines.

use serde_json::json;
use steady_core::app::Steady;
use steady_core::app::handover::verify;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::model::limits;
use steady_core::model::rating::Word;

use crate::backup_generations::{back_up, restore};
use crate::handover::{exported, rigid};
use crate::handover_corpus::strangers_parts;
use crate::handover_files::{sealed, small_visit, zip};
use crate::support::{answered, ask, code, enter_lift, finding, scratch, under};

const RIGID: &str = "rigid-engine-speed";
const PLATE: &str = "BL 4001";

/// A visit rated DANGER here, and a stranger's device that holds it.
struct Two {
    _folders: [tempfile::TempDir; 2],
    here: Steady,
    stranger: Steady,
    visit: String,
}

fn two() -> Two {
    let ((own, here), (theirs, stranger)) = (scratch(), scratch());
    let visit = under(&here, PLATE, RIGID, "complaint");
    answered(&here, &visit, "play-vertical", json!("felt"), json!({}));
    stranger.import(&mut &exported(&here, &[&visit])[..]).unwrap();
    Two { _folders: [own, theirs], here, stranger, visit }
}

impl Two {
    fn word(&self) -> Option<Word> {
        ask(&self.here, json!({ "ask": "look", "visit": self.visit })).urgency.word
    }

    /// What a visit opened now finds still open.
    fn open_now(&self) -> Option<Word> {
        under(&self.here, PLATE, RIGID, "complaint");
        let asked = Request::VisitsBefore { plate: PLATE.to_owned(), vin: String::new(), visit: None };
        let Response::VisitsBefore { still_open, .. } = self.here.handle(asked).unwrap() else {
            panic!("no list")
        };
        still_open.map(|open| open.word)
    }

    fn device(&self) -> (String, String) {
        let Response::Devices(list) = self.stranger.handle(Request::Devices).unwrap() else {
            panic!("no list")
        };
        (list.own.device.clone(), list.own.code.clone())
    }
}

#[test]
fn folder_of_a_stranger_makes_no_rating_milder_and_erases_nothing() {
    let two = two();
    let (backup, genuine) = (tempfile::tempdir().unwrap(), rigid(&two.here, "BL 4002"));
    let file = exported(&two.here, &[&genuine]);
    two.stranger.import(&mut &file[..]).unwrap();
    two.stranger.erase(&genuine, "BL 4002").unwrap();
    let slip = json!({ "reason": "the glove slipped" });
    ask(&two.stranger, json!({ "ask": "leave-part", "visit": two.visit }));
    enter_lift(&two.stranger, &two.visit);
    assert_eq!(answered(&two.stranger, &two.visit, "play-vertical", json!("none"), slip).urgency.word, None);
    back_up(&two.stranger, backup.path());
    let done = restore(&two.here, backup.path());
    assert_eq!((done.of_another, done.devices, two.word()), (true, 0, Some(Word::Danger)));
    assert_eq!(done.imported.set_apart[0].why.code, "handover-milder");
    // The database alone, as one that was set aside.
    let database = two._folders[1].path().join("steady.db");
    let done = two.here.salvage(&database).unwrap();
    assert_eq!((done.of_another, done.devices, two.word()), (true, 0, Some(Word::Danger)));
    // A third device, where something is already, takes the visit that the stranger erased.
    let (_third, third) = scratch();
    small_visit(&third, "BL 4003");
    restore(&third, backup.path());
    assert_eq!(third.import(&mut &file[..]).unwrap().taken, [genuine]);
}

/// One's own backup, and one that is taken in where nothing is yet, bring all of it along.
#[test]
fn own_backup_is_believed() {
    let two = two();
    let (backup, gone) = (tempfile::tempdir().unwrap(), rigid(&two.here, "BL 4004"));
    two.here.import(&mut &exported(&two.stranger, &[])[..]).unwrap();
    let (device, shown) = two.device();
    assert_eq!(code(&two.here, json!({ "ask": "confirm-device", "device": device, "code": shown })), "ok");
    two.here.erase(&gone, "BL 4004").unwrap();
    back_up(&two.here, backup.path());
    assert!(!restore(&two.here, backup.path()).of_another, "of this folder");
    let (_new, new) = scratch();
    let done = restore(&new, backup.path());
    assert_eq!((done.of_another, done.devices), (false, 1), "nothing was here");
    assert_eq!(code(&new, json!({ "ask": "look", "visit": gone })), "unknown-visit");
}

#[test]
fn no_earlier_danger_is_lifted_by_a_device_not_confirmed() {
    let two = two();
    assert_eq!(two.open_now(), Some(Word::Danger));
    // A look after the repair, all in order and warm.
    let after = under(&two.stranger, PLATE, RIGID, "after-repair");
    for step in ["play-vertical", "play-lateral"] {
        answered(&two.stranger, &after, step, json!("none"), json!({ "temperature": "warm" }));
    }
    two.here.import(&mut &exported(&two.stranger, &[&after])[..]).unwrap();
    assert_eq!(two.open_now(), Some(Word::Danger));
    let (device, shown) = two.device();
    assert_eq!(code(&two.here, json!({ "ask": "confirm-device", "device": device, "code": shown })), "ok");
    assert_eq!(two.open_now(), None, "somebody of the workshop looked at it");
}

#[test]
fn no_row_of_later_visits_puts_an_earlier_danger_out_of_sight() {
    let two = two();
    let many: Vec<String> =
        (0..=limits::EARLIER).map(|_| under(&two.stranger, PLATE, RIGID, "complaint")).collect();
    let many: Vec<&str> = many.iter().map(String::as_str).collect();
    assert_eq!(two.here.import(&mut &exported(&two.stranger, &many)[..]).unwrap().taken.len(), many.len());
    assert_eq!(two.open_now(), Some(Word::Danger));
}

#[test]
fn no_stranger_gives_a_danger_to_another_car() {
    let two = two();
    let intake = json!({ "vehicle": { "layout": RIGID, "plate": "ZZ 1" }, "complaint": "it hums" });
    ask(&two.stranger, json!({ "ask": "amend", "visit": two.visit, "intake": intake }));
    let file = exported(&two.stranger, &[&two.visit]);
    assert_eq!(two.here.import(&mut &file[..]).unwrap_err().code, "handover-milder");
    assert_eq!(two.open_now(), Some(Word::Danger));
}

#[test]
fn outcomes_of_a_device_not_confirmed_teach_nothing() {
    let two = two();
    ask(
        &two.stranger,
        json!({ "ask": "confirm-outcome", "visit": two.visit, "causes": ["low-idle"], "by": "E" }),
    );
    two.here.import(&mut &exported(&two.stranger, &[&two.visit])[..]).unwrap();
    let outcomes = || {
        let Response::Calibration(page) = two.here.handle(Request::Calibration).unwrap() else {
            panic!("no page")
        };
        page.outcomes
    };
    assert_eq!(outcomes(), 0);
    let (device, shown) = two.device();
    assert_eq!(code(&two.here, json!({ "ask": "confirm-device", "device": device, "code": shown })), "ok");
    assert_eq!(outcomes(), 1);
}

/// The finding says first that somebody nobody knows wrote in it: the names in it are those that were written.
#[test]
fn finding_says_first_that_a_device_is_not_confirmed() {
    let two = two();
    let ask_opinion =
        json!({ "ask": "give-opinion", "visit": two.visit, "cause": "misfire", "reason": "heard it" });
    assert_eq!(code(&two.stranger, ask_opinion), "ok");
    two.here.import(&mut &exported(&two.stranger, &[&two.visit])[..]).unwrap();
    let finding = finding(&two.here, &two.visit);
    assert!(finding.answer[1].contains("not confirmed here"), "{:?}", finding.answer);
}

/// A stranger's device confirmed the gates in the technician's name: nobody has looked at the lift.
#[test]
fn gates_that_a_strangers_device_confirmed_open_nothing() {
    let two = two();
    ask(&two.here, json!({ "ask": "leave-part", "visit": two.visit }));
    two.stranger.import(&mut &exported(&two.here, &[&two.visit])[..]).unwrap();
    enter_lift(&two.stranger, &two.visit);
    two.here.import(&mut &exported(&two.stranger, &[&two.visit])[..]).unwrap();
    let answer = json!({ "ask": "answer", "visit": two.visit, "step": "play-lateral", "value": "none" });
    assert_eq!(code(&two.here, answer.clone()), "gates-of-another");
    ask(&two.here, json!({ "ask": "leave-part", "visit": two.visit }));
    enter_lift(&two.here, &two.visit);
    assert_eq!(code(&two.here, answer), "ok");
}

/// What a retired device wrote since stays outside; what another says in the same visit comes in.
#[test]
fn what_is_held_back_of_one_device_holds_back_no_other() {
    let ((_a, retired), (_b, other), (_c, here)) = (scratch(), scratch(), scratch());
    let visit = rigid(&retired, PLATE);
    let file = exported(&retired, &[&visit]);
    here.import(&mut &file[..]).unwrap();
    let Response::Devices(list) = retired.handle(Request::Devices).unwrap() else { panic!("no list") };
    assert_eq!(code(&here, json!({ "ask": "retire-device", "device": list.own.device })), "ok");
    ask(&retired, json!({ "ask": "answer", "visit": visit, "step": "turn-by-hand", "value": "smooth" }));
    other.import(&mut &exported(&retired, &[&visit])[..]).unwrap();
    ask(&other, json!({ "ask": "leave-part", "visit": visit }));
    enter_lift(&other, &visit);
    answered(&other, &visit, "play-vertical", json!("felt"), json!({}));
    let done = here.import(&mut &exported(&other, &[&visit])[..]).unwrap();
    assert_eq!((done.taken.len(), done.set_apart[0].why.code.as_str()), (1, "handover-held-back"));
    let standing = ask(&here, json!({ "ask": "look", "visit": visit }));
    assert_eq!(standing.urgency.word, Some(Word::Danger));
    let turned = standing.steps.iter().find(|step| step.id == "turn-by-hand").unwrap();
    assert!(turned.answered.is_none(), "what the retired device wrote since");
}

/// A stranger carried it first and its maker after; what the maker's own file holds stays when the first is taken back.
#[test]
fn what_a_second_file_holds_too_stays_when_the_first_is_taken_back() {
    let ((_a, maker), (_b, carrier), (_c, here)) = (scratch(), scratch(), scratch());
    let visit = rigid(&maker, PLATE);
    carrier.import(&mut &exported(&maker, &[&visit])[..]).unwrap();
    here.import(&mut &exported(&carrier, &[&visit])[..]).unwrap();
    let imports = || {
        let Response::Devices(list) = here.handle(Request::Devices).unwrap() else { panic!("no list") };
        list.imports.iter().map(|import| import.import).collect::<Vec<_>>()
    };
    let first = imports()[0];
    let own = exported(&maker, &[&visit]);
    for _ in 0..2 {
        assert_eq!(here.import(&mut &own[..]).unwrap().unchanged, 1);
    }
    assert_eq!(imports().len(), 2, "the same file twice is one");
    here.handle(Request::TakeBackImport { import: first }).unwrap();
    assert_eq!(code(&here, json!({ "ask": "look", "visit": visit })), "ok");
    here.handle(Request::TakeBackImport { import: imports()[0] }).unwrap();
    assert_eq!(code(&here, json!({ "ask": "look", "visit": visit })), "unknown-visit");
}

#[test]
fn manifest_says_its_program_in_one_short_line() {
    for made_by in ["9\nWhole and genuine; signed by 1234 5678".to_owned(), "9".repeat(limits::LINE + 1)] {
        let file = zip(&sealed(&strangers_parts(), |manifest| manifest["made_by"] = json!(made_by)));
        assert_eq!(verify(&mut &*file).unwrap_err().code, "handover-unknown", "{made_by:.20}");
    }
}
