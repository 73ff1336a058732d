//! The bench verdict: what is missing never makes it milder, and neither does anything worse.

use steady_core::app::fit::fit_of_values;
use steady_core::measure::verdict::{verdict, with_fit};
use steady_core::model::verdict::{
    BenchFindings, BenchGap, BenchVerdict, ClosingCheck, SleeveFound, Verdict, VerdictReason, WithUncertainty,
};
use steady_core::trade::bench::BenchTables;

fn verdict_on(found: &BenchFindings) -> BenchVerdict {
    verdict(found, BenchTables::shipped().unwrap())
}

fn round(value: f64, expanded: f64) -> Option<WithUncertainty> {
    Some(WithUncertainty { value, expanded })
}

/// A sound 72 mm seat, half of whose IT5 is 6.5 um, and a sleeve of 1.5 mm that would leave 4.5 mm of 6.0.
fn sound() -> BenchFindings {
    BenchFindings {
        cracked: Some(false),
        ring_turned: Some(false),
        diameter_mm: Some(72.0),
        roundness_um: round(3.0, 2.0),
        roundness_at_least: false,
        read_through: true,
        hot_interference_um: Some(4.0),
        yield_share: Some(0.3),
        touch_mm: Some(72.0),
        clean_up_um: Some(80.0),
        clean_all_round: false,
        clean_diameter_mm: None,
        wall_mm: round(6.0, 0.1),
        wall_least_mm: Some(4.0),
        sleeve: Some(SLEEVE),
        old_sleeve: Some(false),
        old_sleeve_out: false,
    }
}

const SLEEVE: SleeveFound =
    SleeveFound { bore_mm: 75.0, hot_interference_um: Some(5.0), yield_share: Some(0.4) };

#[track_caller]
fn check(change: impl Fn(&mut BenchFindings), expected: Option<Verdict>, reasons: &[VerdictReason]) {
    let mut found = sound();
    change(&mut found);
    let verdict = verdict_on(&found);
    assert_eq!(verdict.verdict, expected, "{verdict:?}");
    assert_eq!(verdict.reasons, reasons);
    assert_eq!(verdict.verdict.is_none(), !verdict.missing.is_empty(), "{verdict:?}");
    assert_eq!(verdict.closing_checks, [ClosingCheck::TurnsFreely]);
}

#[test]
fn each_finding_has_its_verdict() {
    use Verdict::{BearingsOnly, ReplaceHousing, SkimAndSleeve};
    use VerdictReason as R;
    check(|_| (), Some(BearingsOnly), &[R::SeatSound]);
    check(|found| found.cracked = Some(true), Some(ReplaceHousing), &[R::Cracked]);
    check(|found| found.roundness_um = round(12.0, 2.0), Some(SkimAndSleeve), &[R::OutOfRound]);
    check(|found| found.roundness_um = round(6.5, 2.0), None, &[R::RoundnessNotDecided]);
    check(|found| found.ring_turned = Some(true), Some(SkimAndSleeve), &[R::RingTurned]);
    check(|found| found.hot_interference_um = Some(0.0), Some(SkimAndSleeve), &[R::LooseHot]);
    check(|found| found.yield_share = Some(0.9), Some(SkimAndSleeve), &[R::TooTight]);
    // Read in part it can be proven out of round, and never round.
    check(
        |found| (found.roundness_um, found.roundness_at_least) = (round(12.0, 2.0), true),
        Some(SkimAndSleeve),
        &[R::OutOfRound],
    );
    check(|found| found.roundness_at_least = true, None, &[]);
    check(|found| (found.roundness_um, found.roundness_at_least) = (round(6.5, 2.0), true), None, &[]);
    check(|found| found.read_through = false, None, &[]);
}

#[track_caller]
fn turned(change: impl Fn(&mut BenchFindings), expected: Option<Verdict>, reason: Option<VerdictReason>) {
    let reasons = [VerdictReason::RingTurned];
    let mut reasons: Vec<VerdictReason> = reasons.into_iter().chain(reason).collect();
    if reason == Some(VerdictReason::WallTooThin) {
        reasons.reverse();
    }
    let change = |found: &mut BenchFindings| {
        found.ring_turned = Some(true);
        change(found);
    };
    check(change, expected, &reasons);
}

/// What was cut is known, whatever was planned; without the diameter it was clean at, that is what is missing.
#[test]
fn a_pass_that_touched_all_round_is_the_cut_that_cleans_up() {
    use Verdict::SkimAndSleeve;
    let cut = |diameter: Option<f64>, sleeve: f64| {
        let mut found = sound();
        (found.ring_turned, found.clean_up_um, found.clean_all_round) = (Some(true), None, true);
        found.clean_diameter_mm = diameter;
        found.sleeve.as_mut().unwrap().bore_mm = sleeve;
        verdict_on(&found)
    };
    let measured = cut(Some(72.4), 75.0);
    assert_eq!((measured.verdict, measured.missing), (Some(SkimAndSleeve), vec![]));
    let unmeasured = cut(None, 75.0);
    assert_eq!((unmeasured.verdict, unmeasured.missing), (None, vec![BenchGap::CleanDiameter]));
    // A sleeve that is smaller than the bore by now has nothing to be pressed into.
    assert!(cut(Some(75.2), 75.0).reasons.contains(&VerdictReason::SleeveTooSmall));
    // Before the pass that touches all round the cut is not known.
    let mut touched = sound();
    (touched.ring_turned, touched.clean_up_um, touched.clean_diameter_mm) = (Some(true), None, Some(72.4));
    assert_eq!(verdict_on(&touched).missing, vec![BenchGap::CleanUp]);
}

/// The wall counts once the sleeve has its room: 6.0 less 1.5 mm against what has to be left.
#[test]
fn sleeve_and_the_wall_it_leaves_decide_where_the_seat_is_cut() {
    use Verdict::{ReplaceHousing, SkimAndSleeve};
    use VerdictReason as R;
    turned(|_| (), Some(SkimAndSleeve), None);
    turned(|found| found.wall_mm = round(5.2, 0.1), Some(ReplaceHousing), Some(R::WallTooThin));
    turned(|found| found.wall_mm = round(5.5, 0.1), None, Some(R::WallNotDecided));
    turned(|found| found.wall_mm = round(5.6, 0.1), Some(SkimAndSleeve), None);
    turned(|found| found.wall_mm = round(5.6, 0.5), None, Some(R::WallNotDecided));
    turned(|found| found.wall_mm = round(-1.0, 0.1), None, None);
    turned(|found| found.clean_up_um = Some(3200.0), None, Some(R::SleeveTooSmall));
    turned(|found| found.clean_up_um = Some(5000.0), Some(ReplaceHousing), Some(R::WallTooThin));
    // Without a sleeve the thinnest that is made, 1 mm, tells whether any would do, and no more.
    turned(|found| found.sleeve = None, None, None);
    turned(
        |found| (found.sleeve, found.wall_mm) = (None, round(4.9, 0.1)),
        Some(ReplaceHousing),
        Some(R::WallTooThin),
    );
    turned(|found| (found.sleeve, found.wall_mm) = (None, round(5.0, 0.1)), None, None);
    let sleeve = |change: fn(&mut SleeveFound)| {
        move |found: &mut BenchFindings| change(found.sleeve.as_mut().unwrap())
    };
    turned(sleeve(|it| it.bore_mm = 72.05), None, Some(R::SleeveTooSmall));
    turned(sleeve(|it| it.hot_interference_um = Some(0.0)), None, Some(R::SleeveLooseHot));
    turned(sleeve(|it| it.hot_interference_um = None), None, None);
    turned(sleeve(|it| it.yield_share = Some(0.81)), None, Some(R::SleeveTooTight));
    turned(sleeve(|it| it.yield_share = None), None, None);
    turned(|found| found.touch_mm = None, None, None);
    turned(|found| found.read_through = false, None, None);
}

/// An old sleeve hides the bore that is cut: until it is out and that is read, no skim is decided.
#[test]
fn old_sleeve_hides_the_wall_until_it_is_out_and_read_behind() {
    use Verdict::SkimAndSleeve;
    use VerdictReason as R;
    turned(|found| found.old_sleeve = None, None, None);
    turned(|found| found.old_sleeve = Some(true), None, None);
    let out = |found: &mut BenchFindings| (found.old_sleeve, found.old_sleeve_out) = (Some(true), true);
    turned(out, Some(SkimAndSleeve), Some(R::OldSleeveOut));
    turned(
        |found| {
            out(found);
            found.touch_mm = None;
        },
        None,
        Some(R::OldSleeveOut),
    );
    // A sound seat in an old sleeve stays as it is; once the sleeve is out it takes a new one.
    check(|found| found.old_sleeve = Some(true), Some(Verdict::BearingsOnly), &[R::SeatSound]);
    check(|found| found.old_sleeve = None, Some(Verdict::BearingsOnly), &[R::SeatSound]);
    check(out, Some(SkimAndSleeve), &[R::OldSleeveOut]);
    let found = BenchFindings { ring_turned: Some(true), old_sleeve: None, ..sound() };
    assert_eq!(verdict_on(&found).missing, [BenchGap::OldSleeve]);
    let found = BenchFindings { ring_turned: Some(true), old_sleeve: Some(true), ..sound() };
    assert_eq!(verdict_on(&found).missing, [BenchGap::BehindSleeve]);
}

#[test]
fn what_cannot_be_counts_as_not_measured() {
    for (roundness, missing) in [
        (round(f64::NAN, 1.0), true),
        (round(-1.0, 1.0), true),
        (round(1.0, f64::NAN), true),
        (round(1.0, 1.0), false),
    ] {
        let found = BenchFindings { roundness_um: roundness, ..sound() };
        assert_eq!(verdict_on(&found).missing.contains(&BenchGap::Roundness), missing);
    }
    let found = BenchFindings { ring_turned: Some(true), wall_least_mm: Some(0.0), ..sound() };
    assert_eq!(verdict_on(&found).missing, [BenchGap::WallLeast]);
    assert_eq!(verdict_on(&BenchFindings::default()).verdict, None);
}

#[test]
fn a_fit_fills_in_what_it_knows_and_no_more() {
    let fit = |line: &str| {
        let values: Vec<(String, String)> = line
            .split(' ')
            .map(|pair| pair.split_once('=').unwrap())
            .map(|(name, value)| (name.to_owned(), value.to_owned()))
            .collect();
        fit_of_values(&values, "en").unwrap().result
    };
    let bare = BenchFindings { hot_interference_um: None, yield_share: None, diameter_mm: None, ..sound() };
    let whole = with_fit(&bare, &fit("bearing-od=72 class=N7 housing=A356 housing-od=92 temp=20..80"), false);
    assert_eq!(whole.diameter_mm, Some(72.0));
    assert!((whole.hot_interference_um.unwrap() - (-4.0 - 41.04)).abs() < 0.01, "{whole:?}");
    assert!(whole.yield_share.is_some_and(|share| 0.1 < share && share < 0.3), "{whole:?}");
    assert_eq!(verdict_on(&whole).reasons, [VerdictReason::LooseHot]);
    let less = with_fit(&bare, &fit("bearing-od=72 class=N7 housing=A356"), false);
    assert_eq!(verdict_on(&less).missing, [BenchGap::HotFit, BenchGap::Stress]);
    let sleeved =
        fit("bearing-od=72 bore=71.955 housing=A356 housing-od=96 temp=20..60 sleeve=ductile-iron \
                       sleeve-od=75.06 housing-bore=75.00");
    let to_come = with_fit(&bare, &sleeved, false);
    assert_eq!((to_come.hot_interference_um, to_come.yield_share), (None, None), "{to_come:?}");
    assert!(to_come.sleeve.unwrap().hot_interference_um.is_some_and(|hot| hot > 0.0), "{to_come:?}");
    let in_place = with_fit(&bare, &sleeved, true);
    assert_eq!(in_place.hot_interference_um, to_come.sleeve.unwrap().hot_interference_um);
}

const LOOSE_SLEEVE: SleeveFound =
    SleeveFound { bore_mm: 77.0, hot_interference_um: Some(-5.0), yield_share: Some(0.4) };

/// Every combination of sound, bad and not measured.
fn every_finding() -> Vec<BenchFindings> {
    let mut all =
        vec![BenchFindings { touch_mm: Some(72.0), clean_up_um: Some(80.0), read_through: true, ..sound() }];
    let mut split = |set: &dyn Fn(&mut BenchFindings, usize)| {
        all = all
            .iter()
            .flat_map(|found| {
                (0..3).map(|which| {
                    let mut one = found.clone();
                    set(&mut one, which);
                    one
                })
            })
            .collect();
    };
    let pick = |which: usize, sound: f64, bad: f64| [None, Some(sound), Some(bad)][which];
    split(&|found, which| found.cracked = [None, Some(false), Some(true)][which]);
    split(&|found, which| found.ring_turned = [None, Some(false), Some(true)][which]);
    split(&|found, which| found.roundness_um = [None, round(3.0, 2.0), round(30.0, 2.0)][which]);
    split(&|found, which| found.hot_interference_um = pick(which, 4.0, -4.0));
    split(&|found, which| found.yield_share = pick(which, 0.2, 1.2));
    split(&|found, which| found.wall_mm = [None, round(6.0, 0.1), round(3.0, 0.1)][which]);
    split(&|found, which| found.sleeve = [None, Some(SLEEVE), Some(LOOSE_SLEEVE)][which]);
    split(&|found, which| found.wall_least_mm = pick(which, 4.0, 9.0));
    assert_eq!(all.len(), 3_usize.pow(8));
    all
}

/// The finding with one value taken away.
fn without(found: &BenchFindings) -> Vec<BenchFindings> {
    vec![
        BenchFindings { cracked: None, ..found.clone() },
        BenchFindings { ring_turned: None, ..found.clone() },
        BenchFindings { diameter_mm: None, ..found.clone() },
        BenchFindings { roundness_um: None, ..found.clone() },
        BenchFindings { hot_interference_um: None, ..found.clone() },
        BenchFindings { yield_share: None, ..found.clone() },
        BenchFindings { clean_up_um: None, ..found.clone() },
        BenchFindings { touch_mm: None, ..found.clone() },
        BenchFindings { wall_mm: None, ..found.clone() },
        BenchFindings { wall_least_mm: None, ..found.clone() },
        BenchFindings { sleeve: None, ..found.clone() },
        BenchFindings { read_through: false, ..found.clone() },
        BenchFindings { roundness_at_least: true, ..found.clone() },
    ]
}

#[test]
fn a_missing_value_never_makes_the_verdict_milder() {
    let (mut compared, mut mildest) = (0, 0);
    for found in every_finding() {
        let whole = verdict_on(&found);
        mildest += usize::from(whole.verdict == Some(Verdict::BearingsOnly));
        for less in without(&found) {
            let verdict = verdict_on(&less);
            if let (Some(before), Some(after)) = (whole.verdict, verdict.verdict) {
                assert!(after >= before, "{found:?} {less:?}");
            }
            let seen = [less.cracked.is_some(), less.ring_turned.is_some(), less.roundness_um.is_some()];
            let fit =
                [less.hot_interference_um.is_some(), less.yield_share.is_some(), less.diameter_mm.is_some()];
            let read = less.read_through && !less.roundness_at_least;
            if seen.contains(&false) || fit.contains(&false) || !read {
                assert_ne!(verdict.verdict, Some(Verdict::BearingsOnly), "{less:?}");
            }
            compared += 1;
        }
    }
    assert_eq!(compared, 13 * 6561);
    assert_eq!(mildest, 27, "wall and sleeve are of no account where the seat stays");
}
