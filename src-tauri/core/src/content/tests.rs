//! What the papers must and must not say.

use crate::model::answer::{AnswerValue, Temperature, Warmth};
use crate::model::ids::step;
use crate::model::milder::MilderStand;
use crate::model::rating::Word;
use crate::model::standing::{NextCheck, RepairStage, RoadRow, Standing, Weight};
use crate::model::workshop::Workshop;
use crate::words::Words;
use crate::words::for_tests::{checks, every_language};

use super::example::{
    AT, CAUSES, answer, at, checked, choose, every_rule, likely, opened, picture, rated, reason, receipt,
    unanswer,
};
use super::finding::Finding;
use super::note::Note;
use super::open_points::OPEN_ANSWERS;
use super::{build_finding, build_note};

fn words() -> &'static Words {
    Words::of("en").expect("English is shipped")
}

fn finding(standing: &Standing) -> Finding {
    build_finding(standing, None, &Workshop::default(), words())
}

fn note(standing: &Standing) -> Note {
    build_note(standing, &Workshop::default(), words())
}

/// A section of the note as one text.
fn section(note: &Note, id: &str) -> String {
    note.sections.iter().find(|section| section.id == id).expect("the note has the section").text.join(" ")
}

fn whole(note: &Note) -> String {
    let sections: Vec<String> = note.sections.iter().map(|section| section.text.join(" ")).collect();
    format!("{} {} {} {}", note.band.label, note.band.headline, sections.join(" "), note.short_text)
}

#[track_caller]
fn check_has(text: &str, want: &str) {
    assert!(text.contains(want), "{want:?} is not in {text:?}");
}

#[track_caller]
fn check_lacks(text: &str, forbidden: &str) {
    assert!(!text.to_lowercase().contains(forbidden), "{forbidden:?} is in {text:?}");
}

/// A standing in which everything that can be said is said at least once.
fn full() -> Standing {
    let mut standing = rated("movement-at-support", Word::Danger, "loose-seat");
    choose(&mut standing, step::PLAY_VERTICAL, "felt");
    standing.urgency.reasons[0].steps = vec![step::PLAY_VERTICAL.to_owned()];
    standing.found = vec![step::PLAY_VERTICAL.to_owned()];
    standing.urgency.reasons.push(reason("cause-likely", Word::Caution, "misfire"));
    let mut cause = likely("loose-seat", 0.96);
    for decibans in [12.0, 4.0, 0.5] {
        let value = AnswerValue::One("felt".to_owned());
        cause.speaks_for.push(Weight {
            step: step::PLAY_VERTICAL.to_owned(),
            value,
            decibans,
            gauge: None,
            basis: Vec::new(),
        });
    }
    standing.sorting.causes = vec![cause, likely("misfire", 0.7), likely("air-leak", 0.001)];
    standing.sorting.next_check =
        Some(NextCheck { step: step::PLAY_LATERAL.to_owned(), why: "next-hands-on".to_owned(), gain: 0.0 });
    standing.road_rows =
        vec![RoadRow { id: "bearing".to_owned(), uk: "6.1.7 (b)".to_owned(), eu: "6.1.7 (b)".to_owned() }];
    standing.receipt = Some(receipt("Demo Owner"));
    standing
}

#[test]
fn danger_says_do_not_drive_everywhere() {
    for (rule, word) in every_rule().filter(|(_, word)| *word == Word::Danger) {
        let note = note(&rated(rule, word, "loose-seat"));
        assert_eq!((note.band.label.as_str(), note.band.headline.as_str()), ("DANGER", "DO NOT DRIVE"));
        // Said once in the message, before anything else of what to do.
        let said = note.short_text.to_lowercase();
        check_has(&note.short_text, "DANGER. DO NOT DRIVE. Not even home.");
        assert_eq!(said.matches("not drive").count() + said.matches("not be driven").count(), 1, "{said}");
        check_has(&section(&note, "do-now"), "Do not drive the car");
    }
}

#[test]
fn danger_before_the_end_says_the_rest_is_open() {
    let mut standing = rated("housing-broken", Word::Danger, "housing-damage");
    unanswer(&mut standing, step::PLAY_VERTICAL);
    standing.urgency.missing = vec![step::PLAY_VERTICAL.to_owned()];
    standing.urgency.complete = false;
    check_has(&section(&note(&standing), "found"), "The rest of the check is still open.");
    check_has(&note(&standing).short_text, "The rest of the check is still open.");
    check_has(&finding(&standing).answer.join(" "), "The hands-on check is not finished.");
    check_has(&finding(&standing).next.join(" "), "Finish the check: Play up and down.");
}

#[test]
fn no_rating_reads_not_yet_checked() {
    let note = note(&opened());
    assert_eq!((note.band.word.as_str(), note.band.label.as_str()), ("unrated", "NOT YET CHECKED"));
    check_has(&note.short_text, "NOT YET CHECKED");
    check_has(&section(&note, "not-known"), "We have not felt if the shaft moves up and down.");
    check_has(&section(&note, "do-now"), "we cannot tell you if you may drive the car");
    assert_eq!(finding(&opened()).band.label, "NOT YET CHECKED");
}

#[test]
fn no_rating_never_gives_comfort() {
    for cause in CAUSES {
        for buzz in ["none", "felt", "not-tried"] {
            let mut standing = opened();
            standing.sorting.causes = vec![likely(cause, 0.97)];
            choose(&mut standing, step::NEUTRAL_2500_BUZZ, buzz);
            let note = whole(&note(&standing));
            let finding = finding(&standing).answer.join(" ");
            for claim in ["safe", "fine", "harmless", "no risk", "no fault", "you can drive", "okay", "sound"]
            {
                check_lacks(&finding, claim);
                // "A sound can hint at a fault" speaks of a noise.
                check_lacks(&note.replace("A sound can hint at a fault", ""), claim);
            }
            check_lacks(&finding, "none of these causes");
        }
    }
}

#[test]
fn suspicion_without_a_rating_names_no_part() {
    let mut standing = opened();
    standing.sorting.causes = vec![likely("loose-seat", 0.9)];
    choose(&mut standing, step::NEUTRAL_2500_BUZZ, "felt");
    standing.urgency.reasons =
        vec![reason("bearing-likely", Word::Warning, ""), reason("cause-likely", Word::Caution, "misfire")];
    let note = note(&standing);
    check_has(&section(&note, "found"), "Some signs raise a suspicion. Only the check by hand can tell.");
    check_lacks(&whole(&note), "likely fault");
    check_lacks(&whole(&note), "most likely");
    let finding = finding(&standing);
    check_has(&finding.answer[1], "Suspicion only: ");
    check_has(&finding.next[0], "Finish the check: Play up and down");
    assert_eq!(finding.headings.reasons, "What raises suspicion");
}

#[test]
fn notice_with_nothing_heard_says_not_reproduced() {
    let mut standing = rated("no-bearing-action", Word::Notice, "normal-character");
    standing.intake.complaint = "it hums".to_owned();
    check_has(&section(&note(&standing), "found"), "The noise was not reproduced: it did not show");
    check_has(&finding(&standing).reasons[0].text, "Not reproduced: nothing was heard");
    check_has(&note(&standing).short_text, "not reproduced");

    for id in ["idle-noise", step::NEUTRAL_2500_BUZZ] {
        unanswer(&mut standing, id);
    }
    check_has(&section(&note(&standing), "found"), "not reproduced: we did not run the engine to listen");
    check_has(&finding(&standing).unknown.join(" "), "no running check was done");
}

#[test]
fn misfire_names_the_risk_to_the_exhaust() {
    let standing = rated("cause-likely", Word::Caution, "misfire");
    check_has(&finding(&standing).reasons[0].text, "ruin the catalyst");
    check_has(&section(&note(&standing), "found"), "can ruin a costly part of the exhaust");
    let other = rated("cause-likely", Word::Caution, "low-idle");
    check_lacks(&whole(&note(&other)), "exhaust");
}

#[test]
fn every_rule_has_its_own_sentence_in_both_papers() {
    let mut seen = Vec::new();
    for (rule, word) in every_rule() {
        let standing = rated(rule, word, "low-idle");
        let sentences = (finding(&standing).reasons[0].text.clone(), section(&note(&standing), "found"));
        assert!(!seen.contains(&sentences), "{rule} repeats another rule's sentence");
        seen.push(sentences);
    }
}

#[test]
fn unknown_lists_what_was_not_decided() {
    let mut standing = checked();
    standing.intake.complaint = "it hums".to_owned();
    choose(&mut standing, step::PLAY_LATERAL, "unsure");
    choose(&mut standing, step::TURN_BY_HAND, "not-done");
    standing.urgency.limits = vec![step::TURN_BY_HAND.to_owned()];
    choose(&mut standing, "misfire-evidence", "not-read");
    unanswer(&mut standing, "idle-speed");
    at(&mut standing, step::HOUSING_LOOK).answered.as_mut().expect("answered").disputed = true;
    standing.ledger.broken_at = Some(7);
    let unknown = finding(&standing).unknown;
    assert_eq!(
        unknown,
        [
            "Turn the shaft by hand: Limited to play; drag of the bearing was not checked.",
            "Play side to side: result unsure, treated as not passed.",
            "Look at the housing: two devices recorded different answers.",
            "2 other steps were not checked.",
            "Not reproduced: nothing was heard while running.",
            "The record does not fit together from entry 7 on.",
        ]
    );
    let owner = section(&note(&standing), "not-known");
    check_has(&owner, "We did not check if the bearing drags.");
    check_has(&owner, "from side to side, but we are not sure");
    check_has(&owner, "2 checks were not done.");
    check_has(&owner, "may be incomplete");
}

#[test]
fn what_a_cold_check_leaves_open_is_not_known() {
    let mut standing = checked();
    let cold = "a bearing seat can loosen when hot";
    assert!(!finding(&standing).unknown.join(" ").contains(cold));
    standing.urgency.reasons = vec![reason("cold-check-buzz", Word::Caution, "")];
    check_has(&finding(&standing).unknown.join(" "), cold);
    check_has(&section(&note(&standing), "not-known"), "It may be loose when it is hot.");
}

#[test]
fn vin_hint_is_never_in_a_paper() {
    let mut standing = checked();
    standing.intake.vehicle.vin = "1M8GDM9AXKP042788".to_owned();
    let without = (finding(&standing), note(&standing));
    standing.vin_hint = Some(crate::model::vin::VinHint::Differs);
    assert_eq!((finding(&standing), note(&standing)), without);
}

#[test]
fn a_step_shows_time_hand_warmth_and_reason() {
    let mut standing = checked();
    let given = at(&mut standing, step::PLAY_VERTICAL).answered.as_mut().expect("answered");
    given.temperature = Some(Temperature::Felt(Warmth::Cold));
    given.disputed = true;
    standing.milder.push(MilderStand {
        step: step::PLAY_VERTICAL.to_owned(),
        was: AnswerValue::One("felt".to_owned()),
        now: Some(AnswerValue::One("none".to_owned())),
        reason: "felt the mount, not the shaft".to_owned(),
        by: "Kim Demo".to_owned(),
        at: AT,
    });
    let finding = finding(&standing);
    let line =
        finding.steps.iter().find(|line| line.step == step::PLAY_VERTICAL).expect("the step is listed");
    assert_eq!(line.answer, "No movement");
    assert_eq!(
        line.details,
        [
            "2026-11-25 09:30 UTC, by Kim Demo",
            "Felt with the housing cold",
            "Two devices recorded different answers. The worse one counts.",
            "Changed from a DANGER or WARNING answer. Reason given: felt the mount, not the shaft",
        ]
    );
}

#[test]
fn steps_without_an_answer_are_named_as_not_checked() {
    let finding = finding(&opened());
    let said = finding.not_checked.expect("nothing was checked");
    assert!(finding.steps.is_empty() && said.starts_with("Not checked: Idle speed, "), "{said}");
    assert_eq!(said.matches(", ").count() + 1, opened().steps.len());
}

#[test]
fn a_waiver_is_shown_in_words_until_there_is_a_photo() {
    let waived = |reason: &str| {
        let mut standing = checked();
        at(&mut standing, "idle-noise").waiver = Some(reason.to_owned());
        standing
    };
    let shown = |standing: &Standing| finding(standing).steps[1].waiver.clone();
    assert_eq!(shown(&waived("too-dark")).as_deref(), Some("No photo: Too dark for a picture"));
    assert_eq!(shown(&waived("lamp was { $broken }")).as_deref(), Some("No photo: lamp was { $broken }"));
    // Nobody said so: going on noted it.
    assert_eq!(
        shown(&waived("nothing-to-show")).as_deref(),
        Some("No photo was taken. Steady noted by itself that there was nothing to show.")
    );
    let mut pictured = waived("too-dark");
    picture(&mut pictured, "idle-noise", None);
    assert_eq!(shown(&pictured), None);
    assert_eq!(
        finding(&pictured).steps[1].photo.as_ref().map(|it| it.sha256.as_str()),
        Some("photo-of-idle-noise")
    );
}

#[track_caller]
fn check_photo(pictures: &[(&str, Option<Word>)], want: Option<&str>) {
    let mut standing = checked();
    for (id, word) in pictures {
        picture(&mut standing, id, *word);
    }
    let got = note(&standing).photo.map(|photo| photo.sha256);
    assert_eq!(got, want.map(|id| format!("photo-of-{id}")));
}

#[test]
fn the_note_shows_the_photo_of_the_worst_step() {
    check_photo(&[], None);
    check_photo(&[("idle-noise", None), ("housing-look", None)], Some("idle-noise"));
    check_photo(
        &[("idle-noise", Some(Word::Caution)), ("play-vertical", Some(Word::Danger)), ("turn-by-hand", None)],
        Some("play-vertical"),
    );
    check_photo(
        &[("housing-look", Some(Word::Notice)), ("play-lateral", Some(Word::Notice))],
        Some("housing-look"),
    );
}

#[test]
fn full_finding_reads_as_expected() {
    let finding = finding(&full());
    assert_eq!(
        finding.answer,
        [
            "DANGER: do not drive this car.",
            "Movement where none is allowed, felt by hand or proven by a gauge: the shaft moves at its bearing.",
            "Found: Play up and down: Movement felt.",
            "Behind it, most likely: Bearing loose in its housing (96%). Also likely: Engine misfire (70%). \
             At least one bearing cause: 20%.",
        ]
    );
    check_has(&finding.reasons[0].text, "Rests on: Play up and down: Movement felt.");
    assert_eq!(
        finding.causes[0].speaks_for,
        [
            "Play up and down: Movement felt (strong)",
            "Play up and down: Movement felt (clear)",
            "Play up and down: Movement felt (slight)",
        ]
    );
    assert_eq!(finding.causes[2].percent, "under 1%");
    check_has(&finding.next.join(" "), "Next check: Play side to side. Only the hands-on check decides.");
    check_has(&finding.road[0], "6.1.7 (b)");
    assert_eq!(finding.labels.page, "Page {page} of {pages}");
    let signed = finding.signed.expect("a receipt was signed");
    assert_eq!(
        signed.text,
        "Leave it as it is, I was told the risk. Note received on 2026-11-26 09:30 UTC by Demo Owner."
    );
    check_has(&signed.note_line, &"cd".repeat(32));
}

#[test]
fn an_outdated_receipt_says_so() {
    let mut standing = full();
    let mut signed = receipt("");
    signed.outdated = true;
    standing.receipt = Some(signed);
    let text = note(&standing).signed.expect("a receipt was signed").text;
    check_has(&text, "no name was given");
    check_has(&text, "Something was recorded after this was signed");
}

#[test]
fn after_a_repair_the_note_asks_for_none_and_clears_nothing() {
    for word in [Word::Danger, Word::Warning, Word::Caution] {
        let mut standing = rated("movement-at-support", word, "loose-seat");
        standing.repair = Some(RepairStage::TornDown);
        assert!(!whole(&note(&standing)).contains("before the repair"), "{word:?}");
        standing.repair = Some(RepairStage::TurnsFree);
        let note = note(&standing);
        assert!(section(&note, "found").starts_with("This note tells what we found before the repair."));
        assert!(section(&note, "do-now").contains("Do not drive it until we say so."), "{word:?}");
        assert!(!section(&note, "do-now").contains("price"), "{word:?}");
        assert!(note.short_text.contains("before the repair") && !note.short_text.contains("price"));
        // What was checked after it is told as ever.
        standing.repair = Some(RepairStage::CheckedAgain);
        assert!(!whole(&self::note(&standing)).contains("before the repair"), "{word:?}");
    }
    let mut unrated = opened();
    unrated.repair = Some(RepairStage::TurnsFree);
    assert!(note(&unrated).short_text.contains("Do not drive it until we say so."));
}

#[test]
fn signing_does_not_change_the_note() {
    let mut standing = full();
    standing.receipt = None;
    let before = note(&standing);
    standing.receipt = Some(receipt("Demo Owner"));
    standing.updated_at = crate::model::time::Moment(AT.0 + 86_400_000);
    standing.ledger.entries += 1;
    standing.ledger.head = "ef".repeat(32);
    let after = note(&standing);
    assert_eq!(before.sha256, after.sha256);
    assert_eq!(before.sha256.len(), 64);
    assert!(before.signed.is_none() && after.signed.is_some());
}

#[test]
fn every_change_an_owner_can_read_changes_the_hash() {
    let before = note(&checked()).sha256;
    let mut other_answer = checked();
    choose(&mut other_answer, "misfire-evidence", "not-read");
    let mut other_car = checked();
    other_car.intake.vehicle.plate = "TR 4418".to_owned();
    for changed in [other_answer, other_car, rated("play-unsure", Word::Warning, "loose-seat")] {
        assert_ne!(note(&changed).sha256, before);
    }
}

#[test]
fn typed_words_pass_through_whole() {
    let long = "it hums; then <b>#bang</b> { $x } ".repeat(200);
    let mut standing = checked();
    standing.intake.complaint = long.clone();
    standing.intake.owner.name = long.clone();
    standing.intake.complaint_sounds = vec!["buzz".to_owned(), "rattle".to_owned()];
    let finding = finding(&standing);
    assert_eq!(finding.complaint[0].value, long);
    assert_eq!(finding.complaint[1].value, "Buzz, Rattle");
    assert!(finding.vehicle.iter().any(|field| field.value == long));
}

#[test]
fn a_layout_of_the_workshop_is_shown_by_its_own_id() {
    let mut standing = checked();
    standing.intake.vehicle.layout = "our-own".to_owned();
    assert!(finding(&standing).vehicle.iter().any(|field| field.value == "our-own"));
}

#[track_caller]
fn check_head(plate: &str, label: &str, want: &str) {
    let mut standing = opened();
    standing.intake.vehicle.plate = plate.to_owned();
    standing.intake.vehicle.label = label.to_owned();
    let text = note(&standing).short_text;
    assert!(text.starts_with(want), "{text}");
    assert!(text.chars().count() <= 480);
}

#[test]
fn the_message_names_the_car_only_where_that_is_short_and_plain() {
    check_head("TR 4417", "demo tourer", "TR 4417, 25 November 2026: NOT YET CHECKED.");
    check_head("", "demo tourer", "demo tourer, 25 November 2026:");
    check_head("www.example.org", "https://example.org", "Your car, 25 November 2026:");
    check_head(&"Ä".repeat(500), "", "Your car, 25 November 2026:");
}

#[test]
fn a_full_message_says_that_there_is_more() {
    let mut standing = rated("movement-at-support", Word::Danger, "loose-seat");
    for (rule, word) in every_rule().skip(1) {
        standing.urgency.reasons.push(reason(rule, word, "low-idle"));
    }
    let note = note(&standing);
    assert!(note.short_text.chars().count() <= 480);
    assert!(
        note.short_text.ends_with("There is more in the full note: ask us for it."),
        "{}",
        note.short_text
    );
    check_has(&note.short_text, "You could lose control.");
    check_has(&section(&note, "found"), " more points. The workshop can show them to you.");
}

#[test]
fn readings_show_their_unit() {
    let mut standing = checked();
    answer(&mut standing, "idle-speed", AnswerValue::Reading(1200.0));
    assert_eq!(finding(&standing).steps[0].answer, "1,200 rpm");
    answer(&mut standing, "idle-noise", AnswerValue::Any(vec!["rattle".to_owned(), "knock".to_owned()]));
    assert_eq!(finding(&standing).steps[1].answer, "Rattle, Light knock");
}

/// The lists of ids in this room against the data they come from.
#[test]
fn open_answers_are_those_of_the_data() {
    let data: toml::Table = include_str!("../../data/steps.toml").parse().expect("steps.toml is TOML");
    let rows = data["step"].as_array().expect("steps are a list");
    let mut open: Vec<&str> = Vec::new();
    for row in rows {
        let answers = row.get("answers").and_then(|list| list.as_array()).into_iter().flatten();
        open.extend(
            answers
                .filter(|it| it["reads"].as_str() == Some("open") && it.get("offered").is_none())
                .filter_map(|it| it["id"].as_str()),
        );
    }
    let sorted = |mut ids: Vec<&'static str>| {
        ids.sort_unstable();
        ids
    };
    open.sort_unstable();
    open.dedup();
    assert_eq!(open, sorted(OPEN_ANSWERS.to_vec()));
}

#[test]
fn warning_forbids_the_same_in_every_language() {
    for words in every_language() {
        let (tag, want) = (words.locale(), checks(words.locale()));
        // The message begins with the headline, which forbids driving.
        let message = format!("{} {}", words.text("headline-warning"), words.text("short-now-warning"));
        for (id, said) in
            [("note-now-warning", words.text("note-now-warning")), ("short-now-warning", message)]
        {
            let said = said.to_lowercase();
            for part in &want.forbidden {
                assert!(said.contains(&part.to_lowercase()), "{tag} {id}: {part} is not in {said}");
            }
        }
        for id in ["note-now-danger", "short-now-danger"] {
            assert!(words.text(id).contains(&want.start), "{tag} {id}: {}", words.text(id));
        }
        // Nothing that lets somebody drive it themselves stays behind.
        for id in ["headline-warning", "finding-sum-warning", "note-means-warning", "course-hold-back"] {
            let said = words.text(id).to_lowercase();
            assert!(!said.contains(&want.own_wheels), "{tag} {id}: {said}");
        }
    }
}
