//! Outcomes and opinions in the ledger, what outcomes teach, the scores, and a workshop's own knowledge.

use std::collections::BTreeMap;
use std::path::Path;

use rusqlite::Connection;
use serde_json::{Value, json};
use steady_core::app::Steady;
use steady_core::app::replay::replay;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::model::calibration::Calibration;
use steady_core::model::outcome::Outcome;
use steady_core::model::standing::Standing;
use steady_core::outcomes::learn::learn;
use steady_core::outcomes::score::{Forecast, calibration, scores};
use steady_core::trade::load;

use crate::support::{ask, case, code, open, scratch};

const RIGID: &str = "rigid-engine-speed";

fn page(steady: &Steady) -> Calibration {
    let Response::Calibration(page) = steady.handle(Request::Calibration).unwrap() else { panic!("no page") };
    *page
}

fn visit(steady: &Steady, answers: &str) -> String {
    replay(steady, &case(RIGID, answers).to_string(), Path::new(".")).unwrap().visit
}

fn confirm(visit: &str, causes: &[&str]) -> Value {
    json!({ "ask": "confirm-outcome", "visit": visit, "causes": causes, "by": "Robin Demo" })
}

#[test]
fn one_visit_counts_once_and_the_latest_outcome_stands() {
    let (folder, steady) = scratch();
    let visit = visit(&steady, "idle-noise=pops misfire-evidence=counts");
    assert_eq!((page(&steady).outcomes, page(&steady).on_judgement_alone), (0, true));
    for causes in [&["misfire"][..], &["misfire", "low-idle"], &["normal-character"]] {
        let standing = ask(&steady, confirm(&visit, causes));
        let outcome = standing.outcome.clone().unwrap();
        let mut named = causes.to_vec();
        named.sort_unstable();
        assert_eq!(
            (outcome.causes, outcome.by.as_str()),
            (named.iter().map(|id| (*id).to_owned()).collect(), "Robin Demo")
        );
        assert_eq!(page(&steady).outcomes, 1);
        let again = ask(&steady, confirm(&visit, causes));
        assert_eq!(again.ledger.entries, standing.ledger.entries, "the same outcome was written twice");
    }
    let undo = ask(&steady, json!({ "ask": "look", "visit": visit })).undo.unwrap();
    let standing = ask(&steady, json!({ "ask": "undo", "visit": visit, "entry": undo.entry }));
    assert_eq!(standing.outcome.unwrap().causes, ["low-idle", "misfire"]);
    drop(steady);
    assert_eq!(page(&open(folder.path()).unwrap()).outcomes, 1);
}

#[test]
fn outcomes_and_opinions_that_make_no_sense_are_refused() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "idle-noise=pops");
    let before = ask(&steady, json!({ "ask": "look", "visit": visit })).ledger;
    let opinion = |cause: &str, reason: &str| json!({ "ask": "give-opinion", "visit": visit, "cause": cause, "reason": reason });
    for (request, expected) in [
        (confirm(&visit, &["gremlins"]), "unknown-cause"),
        (confirm(&visit, &["torn-support-rubber"]), "unknown-cause"),
        (confirm(&visit, &[]), "outcome-contradicts"),
        (confirm(&visit, &["misfire", "misfire"]), "outcome-contradicts"),
        (confirm(&visit, &["misfire", "normal-character"]), "outcome-contradicts"),
        (confirm("nowhere", &["misfire"]), "unknown-visit"),
        (opinion("gremlins", "it sounds like it"), "unknown-cause"),
        (opinion("misfire", "  "), "opinion-without-reason"),
    ] {
        assert_eq!(code(&steady, request.clone()), expected, "{request}");
        assert_eq!(ask(&steady, json!({ "ask": "look", "visit": visit })).ledger, before, "{request}");
    }
}

#[test]
fn an_opinion_stands_beside_the_sorting_and_changes_nothing() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "idle-noise=pops play-vertical=none play-lateral=none turn-by-hand=smooth");
    let before = ask(&steady, json!({ "ask": "look", "visit": visit }));
    let after = ask(
        &steady,
        json!({ "ask": "give-opinion", "visit": visit, "cause": "worn-bearing", "reason": "It sings." }),
    );
    assert_eq!((&after.sorting, &after.urgency), (&before.sorting, &before.urgency));
    let opinion = after.opinion.unwrap();
    assert_eq!((opinion.cause.as_str(), opinion.by.as_str()), ("worn-bearing", "Kim Demo"));
    let Response::Finding(finding) =
        steady.handle(Request::Finding { visit, locale: "en".to_owned() }).unwrap()
    else {
        panic!("no finding")
    };
    assert_eq!(finding.said, ["Kim Demo thinks: Worn bearing. It sings."]);
}

/// An outcome as a workshop would have it after checking everything: only what matters here is filled in.
fn outcome(causes: &[&str], seen: &[&str]) -> Outcome {
    let (trade, _) = load(&[]).unwrap();
    let listed = &trade.layout(RIGID).unwrap().causes;
    Outcome {
        causes: causes.iter().map(|id| (*id).to_owned()).collect(),
        layout: RIGID.to_owned(),
        signs: trade.signs.iter().map(|sign| (sign.id.clone(), seen.contains(&sign.id.as_str()))).collect(),
        sorted: listed.iter().map(|id| (id.clone(), 0.25)).collect(),
        knowledge: String::new(),
    }
}

#[test]
fn outcomes_move_the_numbers_by_counting() {
    let (trade, _) = load(&[]).unwrap();
    let outcomes: Vec<Outcome> =
        (0..40)
            .map(|car| {
                if car < 10 {
                    outcome(&["misfire"], &["idle-pops", "misfire-read"])
                } else {
                    outcome(&[], &[])
                }
            })
            .collect();
    assert!(learn(&trade, &outcomes[..29]).layouts.is_empty(), "too few must teach nothing");
    let learned = learn(&trade, &outcomes);
    let taught = &learned.layouts[RIGID];
    assert_eq!(taught.outcomes, 40);
    // Judged 0.15 for 20 cars, and 10 of 40: (3 + 10) / (20 + 40).
    assert!((taught.priors["misfire"].mean() - 13.0 / 60.0).abs() < 1e-12);
    let leak = taught.signs["leak-read"].leak;
    assert!((leak.mean() - 0.4 / 60.0).abs() < 1e-12, "{leak:?}");
    let link = taught.signs["misfire-read"].links["misfire"];
    assert!(link.mean() > 0.92 && link.a + link.b <= 30.0 + 1e-9, "{link:?}");
    let mut turned = outcomes.clone();
    turned.reverse();
    assert_eq!(learn(&trade, &turned), learned);
}

/// Sixty cars with a bad bearing, whatever was heard: probabilities may move, ratings may not.
#[test]
fn learning_moves_probabilities_and_never_a_rating() {
    let (_folder, steady) = scratch();
    let cases = [
        "idle-speed=560 idle-noise=rattle idle-raise-effect=gone play-vertical=none play-lateral=none turn-by-hand=smooth",
        "idle-noise=pops misfire-evidence=counts play-vertical=none play-lateral=none turn-by-hand=smooth",
        "neutral-2500-buzz=felt play-vertical=felt",
        "idle-noise=hiss play-vertical=none play-lateral=none turn-by-hand=resists air-leak-test=none",
        "neutral-2500-buzz=felt",
        "idle-noise=none play-vertical=none play-lateral=none turn-by-hand=smooth housing-look=sound",
    ];
    let visits: Vec<String> = cases.iter().map(|answers| visit(&steady, answers)).collect();
    let look = |visit: &String| ask(&steady, json!({ "ask": "look", "visit": visit }));
    let before: Vec<_> = visits.iter().map(look).collect();
    let intake = json!({ "vehicle": { "layout": RIGID, "gearbox": "automated-clutch" } });
    for car in 0..60 {
        let taught = ask(&steady, json!({ "ask": "open", "intake": intake })).visit;
        ask(&steady, confirm(&taught, &[["worn-bearing"], ["squeezed-bearing"]][car % 2]));
    }
    let mut moved = 0;
    for (visit, before) in visits.iter().zip(&before) {
        let after = look(visit);
        assert_eq!(after.urgency, before.urgency);
        assert_eq!(after.sorting.bearing_unexcused, before.sorting.bearing_unexcused);
        assert_eq!((before.sorting.outcomes, after.sorting.outcomes), (0, 60));
        assert_eq!(after.knowledge, format!("{}/60", before.knowledge));
        moved += usize::from(
            (after.sorting.bearing_probability - before.sorting.bearing_probability).abs() > 0.02,
        );
    }
    assert!(moved >= 4, "outcomes taught almost nothing: {moved}");
    assert_eq!((page(&steady).outcomes, page(&steady).on_judgement_alone), (60, false));
    // Opened in a taught layout, and sorted again as it was once one outcome more has taught it.
    let late = look(&visit(&steady, cases[0]));
    assert_eq!(late.knowledge, format!("{}/60", before[0].knowledge));
    let one_more = ask(&steady, json!({ "ask": "open", "intake": intake })).visit;
    ask(&steady, confirm(&one_more, &["worn-bearing"]));
    assert_ne!(sorted(&look(&late.visit)), sorted(&late));
    let again = ask(&steady, json!({ "ask": "look-as-sorted", "visit": late.visit, "knowledge": null }));
    assert_eq!((&again.knowledge, sorted(&again)), (&late.knowledge, sorted(&late)));
}

#[test]
fn scores_are_those_of_the_definition() {
    let forecast = |probability: f64, there: bool| Forecast { probability, there, base: 0.5 };
    let found =
        scores(&[forecast(0.9, true), forecast(0.9, false), forecast(0.2, false), forecast(0.1, true)]);
    assert!((found.brier - (0.01 + 0.81 + 0.04 + 0.81) / 4.0).abs() < 1e-12);
    assert!((found.calibration + found.refinement + found.grouping - found.brier).abs() < 1e-12);
    assert!((found.log_score_base - std::f64::consts::LN_2).abs() < 1e-12);
    let groups: Vec<(f64, u32)> = found.groups.iter().map(|group| (group.low, group.count)).collect();
    assert_eq!(groups, [(0.1, 1), (0.2, 1), (0.9, 2)]);
    // Within each group one probability only: nothing is left over.
    assert!(found.grouping.abs() < 1e-12);
}

#[test]
fn signs_seen_as_often_without_their_causes_are_weak() {
    let (trade, _) = load(&[]).unwrap();
    let outcomes: Vec<Outcome> = (0..40)
        .map(|car| match car % 4 {
            0 => outcome(&["misfire"], &["misfire-read", "idle-pops"]),
            1 => outcome(&["misfire"], &["misfire-read"]),
            2 => outcome(&[], &["idle-pops"]),
            _ => outcome(&[], &[]),
        })
        .collect();
    let page = calibration(&trade, &outcomes);
    let weak: Vec<&str> = page.weak_signs.iter().map(|sign| sign.sign.as_str()).collect();
    assert!(weak.contains(&"idle-pops") && !weak.contains(&"misfire-read"), "{weak:?}");
}

#[test]
fn outcomes_are_found_by_their_index() {
    let (folder, steady) = scratch();
    drop(steady);
    let database = Connection::open(folder.path().join("steady.db")).unwrap();
    let plan: String = database
        .query_row(
            "EXPLAIN QUERY PLAN SELECT visit, device, seq, at, prev, hash, body FROM entry
             WHERE substr(body, 1, 27) = '{\"kind\":\"outcome-confirmed\"' OR substr(body, 1, 19) = '{\"kind\":\"withdrawn\"'",
            [],
            |row| row.get("detail"),
        )
        .unwrap();
    assert!(plan.contains("entry_teaches"), "{plan}");
}

/// A line that was changed on disk teaches nothing.
#[test]
fn a_changed_outcome_teaches_nothing() {
    let (folder, steady) = scratch();
    let visit = visit(&steady, "idle-noise=pops");
    ask(&steady, confirm(&visit, &["misfire"]));
    drop(steady);
    let database = Connection::open(folder.path().join("steady.db")).unwrap();
    database.execute_batch("DROP TRIGGER entry_is_never_changed").unwrap();
    let changed = "UPDATE entry SET body = replace(body, '[\"misfire\"]', '[\"air-leak\"]')";
    assert!(database.execute(changed, []).unwrap() > 0);
    drop(database);
    assert_eq!(page(&open(folder.path()).unwrap()).outcomes, 0);
}

const OWN: &str = r#"
[[cause]]
id = "cracked-flywheel"
name = "Cracked flywheel"
group = "other"
layouts = ["rigid-engine-speed"]
prior = 0.04
weight = 10.0
basis = "two cars in ten years"

[[sign]]
id = "flywheel-knock"
steps = ["idle-noise"]
present = ["knock"]
leak = 0.02
weight = 10.0
links = [{ cause = "cracked-flywheel", p = 0.8 }]
basis = "two cars in ten years"
"#;

/// Opens a data folder with own knowledge files and gives back what was refused.
fn with_own(files: &[&str]) -> (tempfile::TempDir, Steady, Vec<String>) {
    let folder = tempfile::tempdir().unwrap();
    std::fs::create_dir_all(folder.path().join("knowledge")).unwrap();
    for (index, text) in files.iter().enumerate() {
        std::fs::write(folder.path().join(format!("knowledge/{index}.toml")), text).unwrap();
    }
    let steady = open(folder.path()).unwrap();
    let name = Request::SetTechnician { name: "Kim Demo".to_owned() };
    let Response::Home(home) = steady.handle(name).unwrap() else { panic!("no home") };
    assert!(home.notices.iter().all(|notice| notice.id == "knowledge-row-refused"));
    let refused = home.notices.into_iter().map(|notice| notice.detail).collect();
    (folder, steady, refused)
}

#[test]
fn own_causes_and_signs_take_part_under_their_own_name() {
    let (_folder, steady, refused) = with_own(&[OWN]);
    assert_eq!(refused, Vec::<String>::new());
    let own = ask(&steady, json!({ "ask": "look", "visit": visit(&steady, "idle-noise=knock") }));
    let cause = own.sorting.causes.iter().find(|cause| cause.id == "cracked-flywheel").unwrap();
    assert_eq!(cause.own_name.as_deref(), Some("Cracked flywheel"));
    assert!(cause.probability > 4.0 * cause.before, "{} from {}", cause.probability, cause.before);
    let (_folder, shipped) = scratch();
    let shipped = ask(&shipped, json!({ "ask": "look", "visit": visit(&shipped, "idle-noise=knock") }));
    assert!(shipped.sorting.causes.iter().all(|cause| cause.id != "cracked-flywheel"));
    assert!(own.knowledge.starts_with(&format!("{}+", shipped.knowledge)), "{}", own.knowledge);
    let rated = ask(&steady, confirm(&own.visit, &["cracked-flywheel"]));
    assert_eq!(rated.outcome.unwrap().causes, ["cracked-flywheel"]);
}

/// The probabilities by cause.
fn sorted(standing: &Standing) -> BTreeMap<String, f64> {
    standing.sorting.causes.iter().map(|cause| (cause.id.clone(), cause.probability)).collect()
}

#[test]
fn an_old_visit_is_sorted_again_as_it_was_though_own_knowledge_changed() {
    let (folder, steady, _) = with_own(&[OWN]);
    let then = ask(&steady, json!({ "ask": "look", "visit": visit(&steady, "idle-noise=knock") }));
    drop(steady);
    std::fs::write(folder.path().join("knowledge/0.toml"), OWN.replace("0.8", "0.3")).unwrap();
    let steady = open(folder.path()).unwrap();
    let now = ask(&steady, json!({ "ask": "look", "visit": then.visit }));
    assert_ne!(sorted(&now), sorted(&then));
    let request =
        |version: Option<&str>| json!({ "ask": "look-as-sorted", "visit": then.visit, "knowledge": version });
    for version in [None, Some(then.knowledge.as_str())] {
        let again = ask(&steady, request(version));
        assert_eq!((&again.knowledge, sorted(&again)), (&then.knowledge, sorted(&then)), "{version:?}");
    }
    assert_eq!(sorted(&ask(&steady, request(Some(&now.knowledge)))), sorted(&now));
    for unknown in ["", "0123456789ab", &format!("{}/7", then.knowledge), &format!("{}/many", then.knowledge)]
    {
        assert_eq!(code(&steady, request(Some(unknown))), "knowledge-not-kept", "{unknown}");
    }
}

/// One thing wrong at a time: the row is refused by file, line and reason, and the rest keeps working.
#[test]
fn bad_rows_are_refused_one_by_one() {
    let changed = |from: &str, to: &str| OWN.replace(from, to);
    for (text, line, reason) in [
        (changed("prior = 0.04", "prior = 0.0"), 2, "above 0 and below 1"),
        (changed("prior = 0.04", "prior = 1.0"), 2, "above 0 and below 1"),
        (changed("prior = 0.04", "prior = nan"), 2, "above 0 and below 1"),
        (
            changed(
                "weight = 10.0\nbasis = \"two cars in ten years\"\n\n[[sign",
                "weight = 1e9\nbasis = \"x\"\n\n[[sign",
            ),
            2,
            "weight",
        ),
        (changed("group = \"other\"", "group = \"other\"\ncolour = \"red\""), 2, "colour"),
        (changed("id = \"cracked-flywheel\"", "id = \"misfire\""), 2, "exists already"),
        (changed("layouts = [\"rigid-engine-speed\"]", "layouts = [\"boat\"]"), 2, "no layout boat"),
        (changed("layouts = [\"rigid-engine-speed\"]\n", ""), 2, "no layout has it"),
        (changed("name = \"Cracked flywheel\"\n", ""), 2, "name"),
        (changed("basis = \"two cars in ten years\"\n\n", "basis = \" \"\n\n"), 2, "basis"),
        (
            changed("links = [{ cause = \"cracked-flywheel\"", "links = [{ cause = \"flywheel-knock\""),
            11,
            "only causes bring signs about",
        ),
        (
            changed("links = [{ cause = \"cracked-flywheel\"", "links = [{ cause = \"idle-knock\""),
            11,
            "only causes bring signs about",
        ),
        (
            changed("links = [{ cause = \"cracked-flywheel\"", "links = [{ cause = \"misfire\""),
            2,
            "no evidence could move it",
        ),
        (changed("p = 0.8", "p = 1.0"), 11, "above 0 and below 1"),
        (changed("steps = [\"idle-noise\"]", "steps = [\"kick-the-tyres\"]"), 11, "kick-the-tyres"),
        (changed("[[sign]]", "[[sign]"), 11, ""),
    ] {
        let (_folder, steady, refused) = with_own(&[&text, &OWN.replace("flywheel", "damper")]);
        let first = &refused[0];
        assert!(
            first.starts_with(&format!("0.toml: line {line}: ")) && first.contains(reason),
            "{reason}: {refused:?}"
        );
        let standing = ask(&steady, json!({ "ask": "look", "visit": visit(&steady, "idle-noise=knock") }));
        let known = |id: &str| standing.sorting.causes.iter().any(|cause| cause.id == id);
        assert!(known("cracked-damper"), "{reason}: the good file was not taken");
        assert!(!known("cracked-flywheel"), "{reason}");
    }
}

#[test]
fn own_files_never_crowd_a_layout() {
    let many: String = (b'a'..=b'z')
        .map(|letter| OWN.replace("flywheel", &format!("part-{}", char::from(letter))))
        .collect();
    let (_folder, steady, refused) = with_own(&[&many]);
    let standing = ask(&steady, json!({ "ask": "look", "visit": visit(&steady, "idle-noise=knock") }));
    assert_eq!(standing.sorting.causes.len(), 21);
    assert!(refused.iter().any(|line| line.contains("more than 20 causes")), "{refused:?}");
    let total: BTreeMap<&str, f64> =
        standing.sorting.causes.iter().map(|cause| (cause.id.as_str(), cause.probability)).collect();
    assert!(total.values().all(|probability| (0.0..=1.0).contains(probability)));
}
