//! What the bench verdict says, as sentences.

use crate::model::verdict::{BenchGap, BenchVerdict, ClosingCheck, Verdict, VerdictReason};
use crate::words::Words;

/// The verdict, its reasons, what is missing, and the checks that close the repair.
pub fn verdict_lines(words: &Words, found: &BenchVerdict) -> Vec<String> {
    let mut lines = match found.verdict {
        Some(verdict) => vec![words.text(verdict_id(verdict))],
        None => vec![words.text("verdict-open"), words.text(at_least_id(found.at_least))],
    };
    lines.extend(found.reasons.iter().map(|reason| words.text(reason_id(*reason))));
    let gaps: Vec<String> = found.missing.iter().map(|gap| words.text(gap_id(*gap))).collect();
    if !gaps.is_empty() {
        lines.push(words.with("verdict-missing", &[("gaps", words.list(&gaps).into())]));
    }
    let closing = |check: &ClosingCheck| match check {
        ClosingCheck::TurnsFreely => words.text("closing-turns-freely"),
    };
    let sets: Vec<String> =
        found.gates.iter().map(|set| words.text(&format!("verdict-gates-{set}"))).collect();
    if !sets.is_empty() {
        lines.push(words.with("verdict-gates", &[("sets", words.list(&sets).into())]));
    }
    lines.extend(found.closing_checks.iter().map(closing));
    lines
}

fn verdict_id(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::BearingsOnly => "verdict-bearings-only",
        Verdict::SkimAndSleeve => "verdict-skim-and-sleeve",
        Verdict::ReplaceHousing => "verdict-replace-housing",
    }
}

fn at_least_id(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::BearingsOnly => "verdict-at-least-bearings-only",
        Verdict::SkimAndSleeve => "verdict-at-least-skim-and-sleeve",
        Verdict::ReplaceHousing => "verdict-at-least-replace-housing",
    }
}

fn reason_id(reason: VerdictReason) -> &'static str {
    match reason {
        VerdictReason::Cracked => "verdict-why-cracked",
        VerdictReason::WallTooThin => "verdict-why-wall-too-thin",
        VerdictReason::WallNotDecided => "verdict-why-wall-not-decided",
        VerdictReason::SleeveTooSmall => "verdict-why-sleeve-too-small",
        VerdictReason::SleeveLooseHot => "verdict-why-sleeve-loose-hot",
        VerdictReason::SleeveTooTight => "verdict-why-sleeve-too-tight",
        VerdictReason::OutOfRound => "verdict-why-out-of-round",
        VerdictReason::RoundnessNotDecided => "verdict-why-roundness-not-decided",
        VerdictReason::RingTurned => "verdict-why-ring-turned",
        VerdictReason::OldSleeveOut => "verdict-why-old-sleeve-out",
        VerdictReason::LooseHot => "verdict-why-loose-hot",
        VerdictReason::TooTight => "verdict-why-too-tight",
        VerdictReason::SeatSound => "verdict-why-seat-sound",
    }
}

fn gap_id(gap: BenchGap) -> &'static str {
    match gap {
        BenchGap::Cracks => "verdict-gap-cracks",
        BenchGap::RingMarks => "verdict-gap-ring-marks",
        BenchGap::Diameter => "verdict-gap-diameter",
        BenchGap::Roundness => "verdict-gap-roundness",
        BenchGap::Depths => "verdict-gap-depths",
        BenchGap::HotFit => "verdict-gap-hot-fit",
        BenchGap::Stress => "verdict-gap-stress",
        BenchGap::CleanUp => "verdict-gap-clean-up",
        BenchGap::CleanDiameter => "verdict-gap-clean-diameter",
        BenchGap::WallLeft => "verdict-gap-wall-left",
        BenchGap::Sleeve => "verdict-gap-sleeve",
        BenchGap::SleeveHotFit => "verdict-gap-sleeve-hot-fit",
        BenchGap::SleeveStress => "verdict-gap-sleeve-stress",
        BenchGap::WallLeast => "verdict-gap-wall-least",
        BenchGap::OldSleeve => "verdict-gap-old-sleeve",
        BenchGap::BehindSleeve => "verdict-gap-behind-sleeve",
    }
}

#[cfg(test)]
mod tests {
    use super::verdict_lines;
    use crate::model::verdict::{BenchGap, BenchVerdict, ClosingCheck, Verdict, VerdictReason};
    use crate::trade::bench::BenchTables;
    use crate::words::Words;

    /// A missing text stops the test: see `words::in_place_of_text`.
    #[test]
    fn every_verdict_reason_and_gap_has_its_sentence() {
        let words = Words::of("en").expect("English is shipped");
        for at_least in [Verdict::BearingsOnly, Verdict::SkimAndSleeve, Verdict::ReplaceHousing] {
            for verdict in [None, Some(at_least)] {
                let found = BenchVerdict {
                    verdict,
                    at_least,
                    reasons: vec![
                        VerdictReason::Cracked,
                        VerdictReason::WallTooThin,
                        VerdictReason::WallNotDecided,
                        VerdictReason::SleeveTooSmall,
                        VerdictReason::SleeveLooseHot,
                        VerdictReason::SleeveTooTight,
                        VerdictReason::OutOfRound,
                        VerdictReason::RoundnessNotDecided,
                        VerdictReason::RingTurned,
                        VerdictReason::OldSleeveOut,
                        VerdictReason::LooseHot,
                        VerdictReason::TooTight,
                        VerdictReason::SeatSound,
                    ],
                    missing: vec![
                        BenchGap::Cracks,
                        BenchGap::RingMarks,
                        BenchGap::Diameter,
                        BenchGap::Roundness,
                        BenchGap::Depths,
                        BenchGap::HotFit,
                        BenchGap::Stress,
                        BenchGap::CleanUp,
                        BenchGap::CleanDiameter,
                        BenchGap::WallLeft,
                        BenchGap::Sleeve,
                        BenchGap::SleeveHotFit,
                        BenchGap::SleeveStress,
                        BenchGap::WallLeast,
                        BenchGap::OldSleeve,
                        BenchGap::BehindSleeve,
                    ],
                    gates: vec!["heat".to_owned(), "refit".to_owned()],
                    closing_checks: vec![ClosingCheck::TurnsFreely],
                };
                assert_eq!(verdict_lines(words, &found).len(), if verdict.is_none() { 18 } else { 17 });
            }
        }
    }

    #[test]
    fn every_bench_gate_and_advice_has_its_sentence() {
        let words = Words::of("en").expect("English is shipped");
        let tables = BenchTables::shipped().expect("the tables are sound");
        assert_eq!(tables.gates.len(), 23);
        for gate in &tables.gates {
            assert!(words.text(&format!("gate-{}", gate.id)).ends_with('.'));
            words.text(&format!("gates-{}", gate.set));
            words.text(&format!("gates-{}-why", gate.set));
        }
        for row in &tables.advice {
            words.text(&format!("fit-advice-{}", row.id));
        }
    }
}
