//! What the workshop's particulars, its units, the bench and a gauge put on the papers.

use crate::model::bench::GaugeStand;
use crate::model::gauge::{
    Direction, GaugeDecision, GaugeMeaning, GaugeResult, Limit, LimitSource, ReadingStand, Uncertainty,
};
use crate::model::ids::step;
use crate::model::rating::Word;
use crate::model::standing::{CauseGroup, Standing, Support};
use crate::model::typed::LengthUnit;
use crate::model::verdict::{BenchGap, BenchVerdict, Verdict, VerdictReason};
use crate::model::visit::{DistanceUnit, Odometer};
use crate::model::workshop::{TierHours, Units, Workshop};
use crate::words::Words;
use crate::words::for_tests::checks;

use super::example::{AT, checked, likely, opened, rated, reason, receipt};
use super::finding::{Finding, Scope};
use super::{build_finding, build_note, gauge_lines};

fn words() -> &'static Words {
    Words::of("en").expect("English is shipped")
}

fn workshop() -> Workshop {
    Workshop {
        name: "Example Works".to_owned(),
        address: vec!["1 Yard".to_owned(), "Exampleford".to_owned()],
        phone: "01632 960417".to_owned(),
        units: Units::default(),
        hours: vec![
            TierHours { tier: Verdict::BearingsOnly, from: 3.0, to: 4.5 },
            TierHours { tier: Verdict::SkimAndSleeve, from: 6.0, to: 6.0 },
        ],
        rate: Some(86.5),
        currency: "GBP".to_owned(),
        sleeves: Vec::new(),
        instruments: Vec::new(),
    }
}

fn loose() -> Standing {
    rated("movement-at-support", Word::Danger, "loose-seat")
}

fn finding(standing: &Standing, bench: Option<&BenchVerdict>) -> Finding {
    build_finding(standing, bench, &workshop(), words())
}

fn verdict(verdict: Option<Verdict>, at_least: Verdict) -> BenchVerdict {
    BenchVerdict {
        verdict,
        at_least,
        reasons: vec![VerdictReason::RingTurned],
        missing: if verdict.is_none() { vec![BenchGap::WallLeft] } else { Vec::new() },
        closing_checks: Vec::new(),
        gates: Vec::new(),
    }
}

fn states(scope: &Scope) -> Vec<&str> {
    scope.tiers.iter().map(|tier| tier.state.as_str()).collect()
}

#[test]
fn the_workshop_stands_on_each_paper_or_is_left_out() {
    let (standing, workshop) = (loose(), workshop());
    let head = finding(&standing, None).workshop.expect("particulars were given");
    assert_eq!((head.name.as_str(), head.phone.as_str()), ("Example Works", "Phone 01632 960417"));
    let note = build_note(&standing, &workshop, words());
    let ask = note.sections.iter().find(|section| section.id == "ask").expect("it says whom to ask");
    assert_eq!(ask.text[0], "Ask Example Works. Name on the check: Kim Demo.");
    assert_eq!(ask.text[1], "Phone: 01632 960417.");
    assert_eq!(note.receipt_from, "Note from: Example Works, 1 Yard, Exampleford");
    let nameless = build_note(&standing, &Workshop::default(), words());
    assert_eq!((nameless.workshop, nameless.receipt_from.as_str()), (None, ""));
    assert_ne!(nameless.sha256, note.sha256, "the particulars are part of what is signed");
    let phone = Workshop { phone: "1".to_owned(), ..Workshop::default() };
    let only_phone = build_finding(&standing, None, &phone, words()).workshop.expect("a phone is enough");
    assert_eq!((only_phone.name.as_str(), only_phone.address.len()), ("", 0));
}

#[test]
fn before_teardown_the_bench_is_said_to_decide() {
    let scope = finding(&loose(), None).scope.expect("a bearing is concerned");
    assert!(scope.lead[0].starts_with("The bench decides after teardown"), "{:?}", scope.lead);
    assert_eq!(states(&scope), ["open", "open", "open"]);
    let hours: Vec<&str> = scope.tiers.iter().map(|tier| tier.hours.as_str()).collect();
    assert_eq!(hours, ["3 to 4.5 h", "6 h", ""]);
    assert_eq!(scope.terms[1], "Rate: 86.50 GBP an hour, as the workshop entered it.");
    assert_eq!(scope.terms.last().map(String::as_str), Some("This is a scope of work, never a quote."));
}

#[test]
fn without_hours_and_rate_none_are_made_up() {
    let scope = build_finding(&loose(), None, &Workshop::default(), words()).scope.expect("a scope");
    assert!(scope.tiers.iter().all(|tier| tier.hours.is_empty()));
    assert_eq!(scope.terms, ["This is a scope of work, never a quote."]);
}

#[test]
fn the_bench_verdict_is_named_with_its_reason() {
    let found = verdict(Some(Verdict::SkimAndSleeve), Verdict::SkimAndSleeve);
    let scope = finding(&loose(), Some(&found)).scope.expect("a scope");
    assert_eq!(scope.lead[0], "The bench says: Skim the seat and press in a sleeve.");
    assert_eq!(scope.lead[1], "The bearing has spun in its bore.");
    assert_eq!(states(&scope), ["ruled-out", "chosen", "ruled-out"]);
    let open = finding(&loose(), Some(&verdict(None, Verdict::SkimAndSleeve))).scope.expect("a scope");
    assert!(open.lead.join(" ").contains("Not measured or looked at: the wall as it is"), "{:?}", open.lead);
    assert_eq!(states(&open), ["ruled-out", "open", "open"]);
}

#[test]
fn a_scope_is_given_only_where_a_bearing_is_concerned() {
    let has = |standing: &Standing| finding(standing, None).scope.is_some();
    assert!(!has(&opened()) && !has(&checked()));
    assert!(!has(&rated("cause-likely", Word::Caution, "misfire")));
    assert!(!has(&rated("no-bearing-action", Word::Notice, "normal-character")));
    let mut bearing = rated("cause-likely", Word::Caution, "worn-bearing");
    bearing.sorting.causes[0].group = CauseGroup::Bearing;
    assert!(has(&bearing));
    let mut likely_bearing = rated("finding-unexplained", Word::Caution, "misfire");
    likely_bearing.sorting.bearing_probability = 0.5;
    assert!(has(&likely_bearing));
    let mut rubber = rated("rubber-play", Word::Warning, "torn-support-rubber");
    rubber.support = Support::Rubber;
    rubber.sorting.bearing_probability = 0.9;
    assert!(!has(&rubber));
    let begun = verdict(None, Verdict::BearingsOnly);
    assert!(finding(&rubber, Some(&begun)).scope.is_some(), "what the bench recorded is said");
}

#[test]
fn no_decision_speaks_of_a_repair_where_there_is_none() {
    let labels = |standing: &Standing| {
        let note = build_note(standing, &workshop(), words());
        let ids: Vec<&str> = note.decisions.iter().map(|line| line.id.as_str()).collect();
        assert_eq!(ids, ["repair", "decide-later", "decline"], "the ids are recorded alike");
        note.decisions.into_iter().map(|line| line.label).collect::<Vec<_>>().join("; ")
    };
    for (standing, repair) in [
        (loose(), true),
        (rated("bearing-likely", Word::Warning, "worn-bearing"), true),
        (rated("cause-likely", Word::Caution, "misfire"), true),
        (rated("no-bearing-action", Word::Notice, "normal-character"), false),
        (opened(), false),
    ] {
        let said = labels(&standing);
        assert_eq!(said.contains("repair"), repair, "{:?}: {said}", standing.urgency.word);
    }
}

#[test]
fn every_language_words_the_decisions_by_rating() {
    for tag in Words::locales() {
        let words = Words::of(tag).expect("shipped");
        for id in ["repair", "decline"] {
            let plain = words.text(&format!("decision-{id}"));
            for rating in ["notice", "unrated"] {
                assert_ne!(words.text(&format!("decision-{id}-{rating}")), plain, "{tag}");
            }
        }
    }
}

#[test]
fn a_signature_keeps_the_words_it_was_given_under() {
    let signed = |rating: Option<&str>| {
        let mut standing = loose();
        let mut receipt = receipt("R. Example");
        receipt.rating = rating.map(str::to_owned);
        standing.receipt = Some(receipt);
        finding(&standing, None).signed.expect("it was signed").text
    };
    assert!(signed(Some("unrated")).starts_with("I do not want it checked."), "{}", signed(Some("unrated")));
    assert!(signed(Some("danger")).starts_with("Leave it as it is, I was told the risk."));
    assert!(
        signed(None).starts_with("Leave it as it is, I was told the risk."),
        "an older receipt reads by the rating there is"
    );
    assert!(signed(Some("no-such-rating")).starts_with("Leave it as it is, I was told the risk."));
}

#[test]
fn unchecked_steps_are_one_sentence() {
    let whole = finding(&checked(), None);
    assert_eq!((whole.steps.len(), whole.not_checked), (checked().steps.len(), None));
    let mut standing = checked();
    super::example::unanswer(&mut standing, "idle-speed");
    super::example::choose(&mut standing, "misfire-evidence", "not-read");
    super::example::choose(&mut standing, "idle-noise", "not-tried");
    super::example::picture(&mut standing, "idle-noise", None);
    let finding = finding(&standing, None);
    assert_eq!(finding.not_checked.as_deref(), Some("Not checked: Idle speed, Misfire evidence."));
    assert!(finding.steps.iter().any(|line| line.step == "idle-noise"), "a photo is not left out");
    assert_eq!(finding.steps.len(), checked().steps.len() - 2);
}

fn gauged() -> Standing {
    let mut standing = loose();
    let reading = |mm: f64| ReadingStand { at_gauge_mm: mm, at_bearing_mm: mm, doubtful: false };
    let uncertainty = Uncertainty {
        standard_mm: 0.0065,
        dof: None,
        dof_used: None,
        factor: 2.0,
        expanded_mm: 0.013,
        low_mm: 0.291,
        high_mm: 0.317,
    };
    let result = GaugeResult {
        station: "support".to_owned(),
        direction: Direction::Vertical,
        support: Support::Rigid,
        unit: LengthUnit::Mm,
        readings: [0.31, 0.29, 0.3].map(reading).into(),
        ratio: 0.8,
        other_lever: None,
        mean_mm: 0.304,
        deviation_mm: Some(0.01),
        uncertainty: Some(uncertainty),
        budget: Vec::new(),
        limit: Limit { source: LimitSource::InternalClearance, mm: Some(0.0254), at_gauge_mm: None },
        bands: None,
        decision: GaugeDecision::Proven,
        meaning: GaugeMeaning::Felt,
        remedies: Vec::new(),
        likelihood: None,
        chances: None,
        trend: None,
    };
    let by = "Kim Demo".to_owned();
    standing.gauges = vec![GaugeStand {
        step: step::PLAY_VERTICAL.to_owned(),
        lines: gauge_lines(&result),
        result,
        by,
        at: AT,
    }];
    standing
}

/// 0.304 mm is 11.97 thousandths of an inch, 0.0254 mm is one; by hand.
#[test]
fn a_gauge_is_a_row_of_the_table_in_the_workshops_unit() {
    #[track_caller]
    fn check(tag: &str, length: Option<LengthUnit>, want: [&str; 4]) {
        let words = Words::of(tag).expect("shipped").measured_in(Units { length, distance: None });
        let table = build_finding(&gauged(), None, &workshop(), &words).gauges.expect("a gauge was read");
        let row = &table.rows[0];
        let plain = |text: &str| text.replace('\u{a0}', " ").replace(['\u{2068}', '\u{2069}'], "");
        let got = [&row.readings, &row.mean, &row.expanded, &row.limit].map(|text| plain(text));
        assert_eq!(got, want.map(str::to_owned), "{tag}");
        assert_eq!(table.columns.len(), 6);
    }
    for tag in Words::locales() {
        let readings = checks(tag).readings;
        check(tag, None, readings.each_ref().map(String::as_str));
    }
    let thou = Some(LengthUnit::Thou);
    check("en", thou, ["12.2; 11.42; 11.81 thou", "11.97 thou", "± 0.51 thou", "1 thou"]);
    let table = finding(&gauged(), None).gauges.expect("a gauge was read");
    assert_eq!(table.rows[0].decision, "Movement beyond the limit is proven.");
    assert_eq!(table.rows[0].ratio, "1 mm at the gauge is 0.8 mm at the bearing.");
    assert!(finding(&loose(), None).gauges.is_none());
    let mut unfelt = gauged();
    super::example::choose(&mut unfelt, step::PLAY_VERTICAL, "not-done");
    let listed = finding(&unfelt, None).steps.into_iter().find(|line| line.step == step::PLAY_VERTICAL);
    let details = listed.expect("a gauge was read there").details;
    assert!(details.iter().any(|line| line.contains("table of readings")), "{details:?}");
}

#[test]
fn the_first_lines_are_few_and_name_no_list_of_steps() {
    let mut standing = loose();
    standing.urgency.reasons.push(reason("cause-likely", Word::Caution, "misfire"));
    standing.sorting.causes = vec![likely("loose-seat", 0.96)];
    super::example::unanswer(&mut standing, step::PLAY_LATERAL);
    standing.urgency.missing = vec![step::PLAY_LATERAL.to_owned()];
    let finding = finding(&standing, None);
    assert!(finding.answer.len() <= 4, "{:?}", finding.answer);
    assert_eq!(finding.answer.last().map(String::as_str), Some("The hands-on check is not finished."));
    let open = words().text("step-play-lateral");
    assert!(finding.next[1].contains(&open), "{:?}", finding.next);
}

#[track_caller]
fn check_distance(unit: Option<DistanceUnit>, read_in: DistanceUnit, want: &str) {
    let words = words().measured_in(Units { length: None, distance: unit });
    let mut standing = loose();
    standing.intake.vehicle.odometer = Some(Odometer { value: 128_400, unit: read_in });
    let vehicle = build_finding(&standing, None, &workshop(), &words).vehicle;
    let shown = vehicle.into_iter().find(|field| field.label == "Odometer").map(|field| field.value);
    assert_eq!(shown.as_deref(), Some(want));
}

/// One mile is 1.609344 km exactly (NIST SP 811, App. B.8); converted by hand.
#[test]
fn a_distance_is_shown_in_the_workshops_unit_with_what_was_read() {
    use DistanceUnit::{Km, Miles};
    check_distance(None, Km, "128,400 km");
    check_distance(Some(Km), Km, "128,400 km");
    check_distance(Some(Miles), Km, "79,784 miles (read as 128,400 km)");
    check_distance(Some(Km), Miles, "206,640 km (read as 128,400 miles)");
}

/// By hand: 72.019 / 25.4 = 2.83539..., 0.0254 mm is one thousandth of an inch.
#[test]
fn sizes_and_form_errors_follow_the_unit() {
    let inch = words().measured_in(Units { length: Some(LengthUnit::Thou), distance: None });
    assert_eq!(inch.measured(72.019), "2.8354 in");
    assert_eq!(inch.measured(0.8), "31.5 thou");
    assert_eq!(inch.measured(10.0), "0.3937 in");
    assert_eq!(inch.fine(12.7), "0.5 thou");
    assert_eq!(inch.length(0.8), "31.5 thou");
    assert_eq!(words().measured(72.019), "72.019 mm");
    assert_eq!(words().fine(12.7), "12.7 µm");
    assert_eq!(
        [359.96, -0.04, 725.0, -90.0].map(|degrees| words().angle(degrees, 1)),
        ["0", "0", "5", "270"],
        "an angle is shown within a turn"
    );
    let metric = words().measured_in(Units { length: Some(LengthUnit::Mm), distance: None });
    assert_eq!(metric.length(0.8), "0.8 mm");
    assert_eq!((words().money(95.0), words().money(1_086.5)), ("95".to_owned(), "1,086.50".to_owned()));
    let german = Words::of("de").expect("shipped");
    assert_eq!(german.money(0.05), "0,05");
}
