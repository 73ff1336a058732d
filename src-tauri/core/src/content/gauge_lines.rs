//! What the readings of a gauge say, as sentences.

use crate::model::bench::GaugeLines;
use crate::model::gauge::{
    Bands, BudgetSource, GaugeDecision, GaugeMeaning, GaugeResult, LimitSource, OtherLever, Remedy, Trend,
    TrendShows, Uncertainty,
};
use crate::model::standing::Support;
use crate::model::typed::LengthUnit;
use crate::words::Words;

/// Everything a result says: what is decided, what that rests on, and where the uncertainty comes from.
pub fn gauge_lines(words: &Words, result: &GaugeResult) -> GaugeLines {
    let decided = vec![words.text(decision_id(result.decision)), words.text(meaning_id(result.meaning))];
    let mut rests_on: Vec<String> =
        result.remedies.iter().map(|remedy| remedy_line(words, remedy, result)).collect();
    rests_on.extend(measured(words, result));
    rests_on.extend(result.trend.as_ref().map(|trend| trend_line(words, trend)));
    rests_on.extend(result.chances.map(|chances| {
        words.with(
            "gauge-chances",
            &[
                ("missed", words.percent(chances.missed).into()),
                ("alarm", words.percent(chances.false_alarm).into()),
                ("undecided", words.percent(chances.undecided).into()),
            ],
        )
    }));
    rests_on.push(words.text("gauge-maker-first"));
    GaugeLines { decided, rests_on, budget: budget(words, result), basis: Vec::new() }
}

/// The movement, how far it is known, and its limit.
fn measured(words: &Words, result: &GaugeResult) -> Vec<String> {
    let mut lines = vec![mean(words, result)];
    if (result.ratio - 1.0).abs() > 1e-9 {
        lines.push(words.with("gauge-ratio", &[("ratio", words.rounded(result.ratio, 3).into())]));
    }
    lines.extend(result.other_lever.as_ref().map(|other| other_line(words, other)));
    lines.push(match &result.uncertainty {
        Some(uncertainty) => interval(words, uncertainty),
        None => words.text("gauge-one-reading"),
    });
    let doubtful = result.readings.iter().filter(|reading| reading.doubtful).count();
    if doubtful > 0 {
        lines.push(words.with("gauge-doubtful", &[("count", doubtful.into())]));
    }
    lines.push(limit(words, result));
    lines.extend(result.bands.as_ref().map(|bands| bands_line(words, bands)));
    lines
}

fn other_line(words: &Words, other: &OtherLever) -> String {
    let args = [
        ("ratio", words.rounded(other.ratio, 3).into()),
        ("mean", words.movement(other.mean_mm).into()),
        ("decision", words.text(decision_id(other.decision)).into()),
    ];
    words.with("gauge-other-lever", &args)
}

fn mean(words: &Words, result: &GaugeResult) -> String {
    let args = [("mean", words.movement(result.mean_mm).into()), ("count", result.readings.len().into())];
    words.with("gauge-mean", &args)
}

fn interval(words: &Words, uncertainty: &Uncertainty) -> String {
    words.with(
        "gauge-interval",
        &[
            ("low", words.movement(uncertainty.low_mm).into()),
            ("high", words.movement(uncertainty.high_mm).into()),
            ("expanded", words.movement(uncertainty.expanded_mm).into()),
            ("factor", words.rounded(uncertainty.factor, 2).into()),
        ],
    )
}

fn limit(words: &Words, result: &GaugeResult) -> String {
    let id = match result.limit.source {
        LimitSource::Maker => "gauge-limit-maker",
        LimitSource::InternalClearance => "gauge-limit-internal-clearance",
        LimitSource::None => return words.text("gauge-limit-none"),
    };
    words.with(id, &[("limit", words.movement(result.limit.mm.unwrap_or_default()).into())])
}

fn bands_line(words: &Words, bands: &Bands) -> String {
    let fail = ("fail", words.movement(bands.proven_above_mm).into());
    if bands.none_up_to_mm < 0.0 {
        return words.with("gauge-bands-no-pass", &[fail]);
    }
    words.with("gauge-bands", &[("pass", words.movement(bands.none_up_to_mm).into()), fail])
}

fn remedy_line(words: &Words, remedy: &Remedy, result: &GaugeResult) -> String {
    if *remedy == Remedy::FindLimit && result.support == Support::Rubber {
        return words.text("gauge-remedy-find-figure");
    }
    gauge_remedy(words, remedy, result.unit)
}

fn gauge_remedy(words: &Words, remedy: &Remedy, unit: LengthUnit) -> String {
    let length = |mm: f64| words.rounded(unit.of_mm(mm), 4);
    let gauge = |id: &str, resolution: f64, mpe: f64, readings: u32| {
        words.with(
            id,
            &[
                ("resolution", length(resolution).into()),
                ("mpe", length(mpe).into()),
                ("unit", unit.sign().into()),
                ("readings", readings.into()),
            ],
        )
    };
    match *remedy {
        Remedy::MoreReadings { readings } => {
            words.with("gauge-remedy-more-readings", &[("readings", readings.into())])
        }
        Remedy::FinerGauge { resolution_mm, mpe_mm } => {
            gauge("gauge-remedy-finer-gauge", resolution_mm, mpe_mm, 0)
        }
        Remedy::AtBearing => words.text("gauge-remedy-at-bearing"),
        Remedy::FindLever => words.text("gauge-remedy-find-lever"),
        Remedy::FinerGaugeMoreReadings { resolution_mm, mpe_mm, readings } => {
            gauge("gauge-remedy-finer-gauge-more-readings", resolution_mm, mpe_mm, readings)
        }
        Remedy::ReadAgain { readings } => {
            words.with("gauge-remedy-read-again", &[("readings", readings.into())])
        }
        Remedy::FindLimit => words.text("gauge-remedy-find-limit"),
        Remedy::TooNearLimit => words.text("gauge-remedy-too-near-limit"),
    }
}

fn trend_line(words: &Words, trend: &Trend) -> String {
    let (id, slope) = match trend.shows {
        TrendShows::Growing => ("gauge-trend-growing", trend.slope_mm_per_year),
        TrendShows::Shrinking => ("gauge-trend-shrinking", -trend.slope_mm_per_year),
        TrendShows::NoChangeShown => ("gauge-trend-no-change-shown", trend.slope_mm_per_year),
    };
    words.with(
        id,
        &[
            ("count", trend.points.len().into()),
            ("slope", words.movement(slope).into()),
            ("expanded", words.movement(trend.expanded_mm_per_year).into()),
        ],
    )
}

fn budget(words: &Words, result: &GaugeResult) -> Vec<String> {
    let mut lines = vec![words.text("gauge-budget")];
    lines.extend(result.budget.iter().map(|line| {
        words.with(
            "gauge-budget-line",
            &[
                ("source", words.text(source_id(line.source)).into()),
                ("contribution", words.fine(line.contribution_mm * 1000.0).into()),
                ("share", words.percent(line.share).into()),
            ],
        )
    }));
    lines
}

/// The text of a decision.
pub fn decision_id(decision: GaugeDecision) -> &'static str {
    match decision {
        GaugeDecision::Proven => "gauge-decision-proven",
        GaugeDecision::NoneProven => "gauge-decision-none-proven",
        GaugeDecision::NotDecided => "gauge-decision-not-decided",
        GaugeDecision::Compare => "gauge-decision-compare",
    }
}

fn meaning_id(meaning: GaugeMeaning) -> &'static str {
    match meaning {
        GaugeMeaning::Felt => "gauge-meaning-felt",
        GaugeMeaning::BeyondFigure => "gauge-meaning-beyond-figure",
        GaugeMeaning::Unsure => "gauge-meaning-unsure",
        GaugeMeaning::SettlesUnsure => "gauge-meaning-settles-unsure",
        GaugeMeaning::Silent => "gauge-meaning-silent",
    }
}

fn source_id(source: BudgetSource) -> &'static str {
    match source {
        BudgetSource::Scatter => "gauge-source-scatter",
        BudgetSource::Resolution => "gauge-source-resolution",
        BudgetSource::Mpe => "gauge-source-mpe",
        BudgetSource::Alignment => "gauge-source-alignment",
        BudgetSource::GaugePlace => "gauge-source-gauge-place",
        BudgetSource::BearingPlace => "gauge-source-bearing-place",
    }
}

#[cfg(test)]
mod tests {
    use super::{decision_id, gauge_remedy, meaning_id, trend_line};
    use crate::model::gauge::{GaugeDecision, GaugeMeaning, Remedy, Trend, TrendShows};
    use crate::model::typed::LengthUnit;
    use crate::words::Words;

    fn words() -> &'static Words {
        Words::of("en").expect("English is shipped")
    }

    /// A missing text stops the test: see `words::in_place_of_text`.
    #[test]
    fn every_decision_meaning_remedy_and_trend_has_its_sentence() {
        for decision in [
            GaugeDecision::Proven,
            GaugeDecision::NoneProven,
            GaugeDecision::NotDecided,
            GaugeDecision::Compare,
        ] {
            assert!(words().text(decision_id(decision)).ends_with('.'));
        }
        for meaning in [
            GaugeMeaning::Felt,
            GaugeMeaning::BeyondFigure,
            GaugeMeaning::Unsure,
            GaugeMeaning::SettlesUnsure,
            GaugeMeaning::Silent,
        ] {
            assert!(words().text(meaning_id(meaning)).ends_with('.'));
        }
        let (resolution_mm, mpe_mm, readings) = (0.00254, 0.00508, 7);
        for (remedy, holds) in [
            (Remedy::MoreReadings { readings }, "7 readings"),
            (Remedy::FinerGauge { resolution_mm, mpe_mm }, "a 0.1 thou gauge"),
            (Remedy::AtBearing, "at the bearing"),
            (Remedy::FindLever, "which bearing moves"),
            (Remedy::FinerGaugeMoreReadings { resolution_mm, mpe_mm, readings }, "at most 0.2 thou, and 7"),
            (Remedy::ReadAgain { readings: 3 }, "at least 3"),
            (Remedy::FindLimit, "clearance group"),
            (Remedy::TooNearLimit, "unsure"),
        ] {
            let line = gauge_remedy(words(), &remedy, LengthUnit::Thou);
            assert!(line.contains(holds), "{line}");
        }
        for shows in [TrendShows::Growing, TrendShows::Shrinking, TrendShows::NoChangeShown] {
            let trend = Trend {
                points: Vec::new(),
                intervals_mm: Vec::new(),
                slope_mm_per_year: -0.0004,
                expanded_mm_per_year: 0.1,
                line_mm: [0.0, 0.0],
                shows,
            };
            assert!(trend_line(words(), &trend).contains("0.1"));
        }
        assert_eq!(words().movement(-0.0001), "0 mm");
    }
}
