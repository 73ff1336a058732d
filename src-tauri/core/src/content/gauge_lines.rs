//! What the readings of a gauge say, as sentences.

use crate::model::bench::GaugeLines;
use crate::model::gauge::{
    Bands, BudgetSource, GaugeDecision, GaugeMeaning, GaugeResult, LimitSource, OtherLever, Remedy, Trend,
    TrendShows, Uncertainty,
};
use crate::model::sentence::{Arg, Sentence};
use crate::model::standing::Support;
use crate::model::typed::LengthUnit;

/// Everything a result says: what is decided, what that rests on, and where the uncertainty comes from.
pub fn gauge_lines(result: &GaugeResult) -> GaugeLines {
    let decided = vec![Sentence::of(decision_id(result.decision)), Sentence::of(meaning_id(result.meaning))];
    let mut rests_on: Vec<Sentence> =
        result.remedies.iter().map(|remedy| remedy_line(remedy, result)).collect();
    rests_on.extend(measured(result));
    rests_on.extend(result.trend.as_ref().map(trend_line));
    rests_on.extend(result.chances.map(|chances| {
        Sentence::of("gauge-chances")
            .with("missed", Arg::Percent(chances.missed))
            .with("alarm", Arg::Percent(chances.false_alarm))
            .with("undecided", Arg::Percent(chances.undecided))
    }));
    rests_on.push(Sentence::of("gauge-maker-first"));
    GaugeLines { decided, rests_on, budget: budget(result), basis: Vec::new() }
}

/// The movement, how far it is known, and its limit.
fn measured(result: &GaugeResult) -> Vec<Sentence> {
    let mut lines = vec![mean(result)];
    if (result.ratio - 1.0).abs() > 1e-9 {
        lines.push(Sentence::of("gauge-ratio").with("ratio", Arg::Number(result.ratio, 3)));
    }
    lines.extend(result.other_lever.as_ref().map(other_line));
    lines.push(match &result.uncertainty {
        Some(uncertainty) => interval(uncertainty),
        None => Sentence::of("gauge-one-reading"),
    });
    let doubtful = result.readings.iter().filter(|reading| reading.doubtful).count();
    if doubtful > 0 {
        lines.push(Sentence::of("gauge-doubtful").with("count", count(doubtful)));
    }
    lines.push(limit(result));
    lines.extend(result.bands.as_ref().map(bands_line));
    lines
}

fn other_line(other: &OtherLever) -> Sentence {
    Sentence::of("gauge-other-lever")
        .with("ratio", Arg::Number(other.ratio, 3))
        .with("mean", Arg::Movement(other.mean_mm))
        .with("decision", Sentence::of(decision_id(other.decision)))
}

fn mean(result: &GaugeResult) -> Sentence {
    Sentence::of("gauge-mean")
        .with("mean", Arg::Movement(result.mean_mm))
        .with("count", count(result.readings.len()))
}

fn interval(uncertainty: &Uncertainty) -> Sentence {
    Sentence::of("gauge-interval")
        .with("low", Arg::Movement(uncertainty.low_mm))
        .with("high", Arg::Movement(uncertainty.high_mm))
        .with("expanded", Arg::Movement(uncertainty.expanded_mm))
        .with("factor", Arg::Number(uncertainty.factor, 2))
}

fn limit(result: &GaugeResult) -> Sentence {
    let id = match result.limit.source {
        LimitSource::Maker => "gauge-limit-maker",
        LimitSource::InternalClearance => "gauge-limit-internal-clearance",
        LimitSource::None => return Sentence::of("gauge-limit-none"),
    };
    Sentence::of(id).with("limit", Arg::Movement(result.limit.mm.unwrap_or_default()))
}

fn bands_line(bands: &Bands) -> Sentence {
    let fail = Arg::Movement(bands.proven_above_mm);
    if bands.none_up_to_mm < 0.0 {
        return Sentence::of("gauge-bands-no-pass").with("fail", fail);
    }
    Sentence::of("gauge-bands").with("pass", Arg::Movement(bands.none_up_to_mm)).with("fail", fail)
}

fn remedy_line(remedy: &Remedy, result: &GaugeResult) -> Sentence {
    if *remedy == Remedy::FindLimit && result.support == Support::Rubber {
        return Sentence::of("gauge-remedy-find-figure");
    }
    gauge_remedy(remedy, result.unit)
}

fn gauge_remedy(remedy: &Remedy, unit: LengthUnit) -> Sentence {
    let length = |mm: f64| Arg::Number(unit.of_mm(mm), 4);
    let gauge = |id: &str, resolution: f64, mpe: f64, readings: u32| {
        Sentence::of(id)
            .with("resolution", length(resolution))
            .with("mpe", length(mpe))
            .with("unit", Arg::Verbatim(unit.sign().to_owned()))
            .with("readings", readings)
    };
    match *remedy {
        Remedy::MoreReadings { readings } => {
            Sentence::of("gauge-remedy-more-readings").with("readings", readings)
        }
        Remedy::FinerGauge { resolution_mm, mpe_mm } => {
            gauge("gauge-remedy-finer-gauge", resolution_mm, mpe_mm, 0)
        }
        Remedy::AtBearing => Sentence::of("gauge-remedy-at-bearing"),
        Remedy::FindLever => Sentence::of("gauge-remedy-find-lever"),
        Remedy::FinerGaugeMoreReadings { resolution_mm, mpe_mm, readings } => {
            gauge("gauge-remedy-finer-gauge-more-readings", resolution_mm, mpe_mm, readings)
        }
        Remedy::ReadAgain { readings } => Sentence::of("gauge-remedy-read-again").with("readings", readings),
        Remedy::FindLimit => Sentence::of("gauge-remedy-find-limit"),
        Remedy::TooNearLimit => Sentence::of("gauge-remedy-too-near-limit"),
    }
}

fn trend_line(trend: &Trend) -> Sentence {
    let (id, slope) = match trend.shows {
        TrendShows::Growing => ("gauge-trend-growing", trend.slope_mm_per_year),
        TrendShows::Shrinking => ("gauge-trend-shrinking", -trend.slope_mm_per_year),
        TrendShows::NoChangeShown => ("gauge-trend-no-change-shown", trend.slope_mm_per_year),
    };
    Sentence::of(id)
        .with("count", count(trend.points.len()))
        .with("slope", Arg::Movement(slope))
        .with("expanded", Arg::Movement(trend.expanded_mm_per_year))
}

fn budget(result: &GaugeResult) -> Vec<Sentence> {
    let mut lines = vec![Sentence::of("gauge-budget")];
    lines.extend(result.budget.iter().map(|line| {
        Sentence::of("gauge-budget-line")
            .with("source", Sentence::of(source_id(line.source)))
            .with("contribution", Arg::Fine(line.contribution_mm * 1000.0))
            .with("share", Arg::Percent(line.share))
    }));
    lines
}

fn count(of: usize) -> Arg {
    Arg::Count(u32::try_from(of).unwrap_or(u32::MAX))
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
        GaugeMeaning::ReplacesUnsure => "gauge-meaning-replaces-unsure",
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
            GaugeMeaning::ReplacesUnsure,
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
            let line = words().say(&gauge_remedy(&remedy, LengthUnit::Thou));
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
            assert!(words().say(&trend_line(&trend)).contains("0.1"));
        }
        assert_eq!(words().movement(-0.0001), "0 mm");
    }
}
