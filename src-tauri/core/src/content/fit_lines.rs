//! What a fit says, as sentences.

use crate::model::fit::{
    Assembly, ClearanceStand, FitResult, FitState, NotCounted, PartId, SeatFit, SeatId, SizeFrom, SizeStand,
    SleeveDesign, Spread, StressStand,
};
use crate::model::gauge::ClearanceGroup;
use crate::words::Words;
use fluent_bundle::FluentValue;

/// Everything a fit says, in the order it is read.
pub fn fit_lines(words: &Words, result: &FitResult) -> Vec<String> {
    let mut lines: Vec<String> = result.seats.iter().flat_map(|seat| seat_lines(words, seat)).collect();
    lines.extend(general_lines(words, result));
    lines
}

/// What holds for all seats of a fit: what is left of the clearance, the form, what holds hot, what is not counted.
pub(super) fn general_lines(words: &Words, result: &FitResult) -> Vec<String> {
    let mut lines: Vec<String> =
        result.sleeve.iter().flat_map(|sleeve| sleeve_lines(words, sleeve)).collect();
    lines.extend(result.clearance.iter().flat_map(|clearance| clearance_lines(words, clearance)));
    lines.push(words.with("fit-form", &[("form", fine(words, result.form_um))]));
    let advice = if result.light_alloy { "fit-advice-light-alloy" } else { "fit-advice-iron" };
    lines.extend(holding_lines(words, result));
    lines.push(words.text(advice));
    for row in &result.advice {
        let condition = words.text(&format!("fit-advice-{}", row.condition));
        let classes = row.classes.join(", ");
        let args = [("condition", condition.into()), ("classes", classes.into())];
        lines.push(words.with("fit-advice-line", &args));
    }
    let missing: Vec<String> = result.not_counted.iter().map(|what| words.text(missing_id(*what))).collect();
    lines.push(format!("{} {}.", words.text("fit-not-counted"), missing.join("; ")));
    lines.push(words.text("fit-maker-first"));
    lines
}

/// How the parts go into one another, a line a seat: grip at 20 C, cold and hot, then force, heat and cold.
pub fn joining_lines(words: &Words, result: &FitResult) -> Vec<String> {
    let line = |seat: &SeatFit| {
        let name = words.with(seat_id(seat.seat), &[("diameter", words.measured(seat.diameter_mm).into())]);
        let mut said = vec![spread(words, fine, "fit-interference", &seat.interference_um)];
        said.extend(hot_lines(words, seat));
        said.extend(assembly_lines(words, &seat.assembly));
        words.with("repair-sheet-joined", &[("seat", name.into()), ("lines", said.join(" ").into())])
    };
    let sleeve = result.sleeve.iter().map(|sleeve| sleeve_lines(words, sleeve).join(" "));
    result.seats.iter().map(line).chain(sleeve).collect()
}

pub(super) fn seat_id(seat: SeatId) -> &'static str {
    match seat {
        SeatId::BearingInHousing => "fit-seat-bearing-in-housing",
        SeatId::BearingInSleeve => "fit-seat-bearing-in-sleeve",
        SeatId::SleeveInHousing => "fit-seat-sleeve-in-housing",
    }
}

fn seat_lines(words: &Words, seat: &SeatFit) -> Vec<String> {
    let mut lines =
        vec![words.with(seat_id(seat.seat), &[("diameter", words.measured(seat.diameter_mm).into())])];
    lines.extend(size_lines(words, seat));
    lines.push(spread(words, fine, "fit-interference", &seat.interference_um));
    lines.push(words.text(state_id(seat.state)));
    lines.extend(hot_lines(words, seat));
    lines.extend(strength_lines(words, seat));
    lines
}

/// What a table of a seat's interference does not say: its sizes, what becomes of it hot, strength, how it goes together.
pub(super) fn seat_rest(words: &Words, seat: &SeatFit) -> Vec<String> {
    let mut lines = size_lines(words, seat);
    // The last says what becomes of the fit hot; those before it give the figures of the table.
    lines.extend(hot_lines(words, seat).pop());
    lines.extend(strength_lines(words, seat));
    lines
}

fn size_lines(words: &Words, seat: &SeatFit) -> Vec<String> {
    let part = match seat.seat {
        SeatId::BearingInHousing | SeatId::BearingInSleeve => PartId::OuterRing,
        SeatId::SleeveInHousing => PartId::Sleeve,
    };
    let part = words.text(part_id(part));
    let mut lines =
        vec![size(words, "fit-size-hole", &seat.hole, ""), size(words, "fit-size-part", &seat.part, &part)];
    if seat.hole_in_class == Some(false) {
        lines.push(words.text("fit-hole-outside-class"));
    }
    lines
}

fn strength_lines(words: &Words, seat: &SeatFit) -> Vec<String> {
    let mut lines = vec![spread(words, number, "fit-pressure", &seat.pressure_mpa)];
    lines.extend(seat.stress.iter().map(|stress| stress_line(words, stress)));
    lines.extend(assembly_lines(words, &seat.assembly));
    lines
}

/// What the sleeve has to be: outside for the grip and the stress, its bore before it is pressed in.
fn sleeve_lines(words: &Words, sleeve: &SleeveDesign) -> Vec<String> {
    let mm = |mm: f64| FluentValue::from(words.measured(mm));
    let limits = [sleeve.outside_least_mm, sleeve.outside_most_mm];
    let outside = match (limits, sleeve.holds) {
        (_, Some(false)) => words.text("fit-sleeve-none-holds"),
        ([Some(least), Some(most)], _) => {
            words.with("fit-sleeve-outside", &[("least", mm(least)), ("most", mm(most))])
        }
        ([Some(least), None], _) => words.with("fit-sleeve-outside-least", &[("least", mm(least))]),
        _ => words.text("fit-sleeve-outside-unknown"),
    };
    let closes = spread(words, fine, "fit-sleeve-closes", &sleeve.closes_um);
    let bored = match sleeve.bored_before_mm {
        Some([least, most]) => words.with("fit-sleeve-bored", &[("least", mm(least)), ("most", mm(most))]),
        None => words.text("fit-sleeve-bored-after"),
    };
    vec![outside, closes, bored]
}

fn material(words: &Words, id: &str) -> String {
    words.text(&format!("material-{id}"))
}

/// Which class holds the bare housing hot; where none does, what does. A sleeve's fit says that of itself.
fn holding_lines(words: &Words, result: &FitResult) -> Vec<String> {
    let holding = &result.holding;
    if result.seats.iter().any(|seat| seat.seat == SeatId::SleeveInHousing) {
        return Vec::new();
    }
    let class = ("class", FluentValue::from(holding.tightest.clone()));
    let loosens = holding.tightest_may_loosen_c;
    let Some(hottest) = holding.hottest_c else {
        return match loosens {
            Some(above) => {
                vec![words.with("fit-holding-no-range", &[class, ("loosens", number(words, above))])]
            }
            None => vec![words.with("fit-holding-never", &[class])],
        };
    };
    let celsius = ("celsius", number(words, hottest));
    if !holding.classes.is_empty() {
        let classes = ("classes", holding.classes.join(", ").into());
        return vec![words.with("fit-holding-classes", &[celsius, classes])];
    }
    let above = ("loosens", number(words, loosens.unwrap_or(hottest)));
    let mut lines = vec![words.with("fit-holding-none", &[celsius, class, above])];
    let bore = holding.bare_bore_most_mm;
    lines.extend(bore.map(|bore| words.with("fit-holding-bare", &[("bore", words.measured(bore).into())])));
    lines.extend(holding.sleeve.iter().map(|sleeve| {
        let args = [
            ("material", FluentValue::from(material(words, &sleeve.material))),
            ("grip", fine(words, sleeve.grip_um)),
            ("bore", words.measured(sleeve.bore_most_mm).into()),
        ];
        words.with("fit-holding-sleeve", &args)
    }));
    lines
}

/// Every temperature end, then the one statement that counts: whether the fit goes loose hot.
fn hot_lines(words: &Words, seat: &SeatFit) -> Vec<String> {
    let (Some(coldest), Some(hottest)) = (seat.over_temperature.first(), seat.over_temperature.last()) else {
        return Vec::new();
    };
    if seat.over_temperature.len() == 1 {
        return vec![words.text("fit-range-not-given")];
    }
    let at = |at: &crate::model::fit::AtTemperature| {
        let mut args = spread_args(words, fine, &at.interference_um);
        args.push(("celsius", number(words, at.celsius)));
        words.with("fit-at-temperature", &args)
    };
    let ends = [coldest, hottest].into_iter().filter(|end| (end.celsius - 20.0).abs() > 0.05);
    let mut lines: Vec<String> = ends.map(at).collect();
    let celsius = ("celsius", number(words, hottest.celsius));
    let change = fine(words, seat.change_hot_um.abs());
    lines.push(if seat.change_hot_um < 0.0 {
        words.with("fit-loosens-hot", &[celsius, ("loss", change)])
    } else {
        words.with("fit-tightens-hot", &[celsius, ("gain", change)])
    });
    let warned = |above: Option<f64>| above.filter(|above| *above < hottest.celsius);
    lines.push(if let Some(above) = warned(seat.loose_above_c) {
        words.with("fit-goes-loose-hot", &[("celsius", number(words, above))])
    } else if seat.state == FitState::MayBeLoose && seat.change_hot_um < 0.0 {
        words.text("fit-looser-hot")
    } else if let Some(above) = warned(seat.may_loosen_above_c) {
        words.with("fit-may-loosen-hot", &[("celsius", number(words, above))])
    } else if seat.over_temperature.iter().all(|at| at.state == FitState::Tight) {
        words.text("fit-holds")
    } else {
        words.text(state_id(coldest.state.max(hottest.state)))
    });
    lines
}

fn stress_line(words: &Words, stress: &StressStand) -> String {
    let mut args = vec![
        ("part", words.text(part_id(stress.part)).into()),
        ("material", material(words, &stress.material).into()),
    ];
    let Some(hoop) = stress.hoop_mpa else { return words.with("fit-stress-unknown", &args) };
    args.push(("hoop", number(words, hoop)));
    args.push(("tresca", number(words, stress.tresca_mpa.unwrap_or_default())));
    args.push(("mises", number(words, stress.mises_mpa.unwrap_or_default())));
    let (Some(limit), Some(used)) = (stress.yield_mpa, stress.used) else {
        return words.with("fit-stress-no-yield", &args);
    };
    args.push(("limit", number(words, limit)));
    args.push(("used", words.percent(used).into()));
    words.with(if used < 1.0 { "fit-stress" } else { "fit-stress-beyond" }, &args)
}

fn assembly_lines(words: &Words, assembly: &Assembly) -> Vec<String> {
    let mut lines = Vec::new();
    let Some(heat_to) = assembly.heat_to_c else { return vec![words.text("fit-slides")] };
    if let Some([oiled, dry]) = assembly.press_n {
        let newtons = |force: f64| FluentValue::from(words.rounded(force, 0));
        lines.push(words.with("fit-press", &[("oiled", newtons(oiled)), ("dry", newtons(dry))]));
    }
    let limit = ("limit", number(words, assembly.heat_limit_c));
    lines.push(match assembly.cool_to_c {
        None => words.with("fit-heat", &[("celsius", whole_up(words, heat_to)), limit]),
        Some(cool_to) if assembly.cold_is_enough => {
            words.with("fit-heat-and-cold", &[("celsius", words.rounded(cool_to.floor(), 0).into()), limit])
        }
        Some(_) => words.text("fit-heat-not-enough"),
    });
    lines
}

fn clearance_lines(words: &Words, clearance: &ClearanceStand) -> Vec<String> {
    let mut loss = spread_args(words, fine, &clearance.loss_um);
    loss.push(("worst", fine(words, clearance.worst_loss_um)));
    let mut lines = vec![words.with("fit-clearance-loss", &loss)];
    let group = |group: ClearanceGroup| ("group", FluentValue::from(format!("{group:?}")));
    if let (Some(mark), Some([low, high]), Some([left_low, left_high])) =
        (clearance.group, clearance.before_um, clearance.left_um)
    {
        let args = [
            group(mark),
            ("low", fine(words, low)),
            ("high", fine(words, high)),
            ("left-low", fine(words, left_low)),
            ("left-high", fine(words, left_high)),
        ];
        lines.push(words.with("fit-clearance-left", &args));
        if left_low <= 0.0 {
            lines.push(words.text("fit-clearance-gone"));
        }
    }
    lines.push(match clearance.needed {
        Some(needed) => words.with("fit-clearance-needed", &[group(needed)]),
        None => words.text("fit-clearance-none-enough"),
    });
    lines
}

fn size(words: &Words, id: &str, size: &SizeStand, part: &str) -> String {
    let from = match size.from {
        SizeFrom::Measured => "fit-from-measured",
        SizeFrom::Class => "fit-from-class",
        SizeFrom::Bearing => "fit-from-bearing",
    };
    let args = [
        ("part", part.to_owned().into()),
        ("least", words.measured(size.least_mm).into()),
        ("most", words.measured(size.most_mm).into()),
        ("from", words.text(from).into()),
    ];
    words.with(id, &args)
}

/// How a value of a spread is written.
type Written = fn(&Words, f64) -> FluentValue<'static>;

fn spread(words: &Words, written: Written, id: &str, spread: &Spread) -> String {
    words.with(id, &spread_args(words, written, spread))
}

fn spread_args(
    words: &Words,
    written: Written,
    spread: &Spread,
) -> Vec<(&'static str, FluentValue<'static>)> {
    [("least", spread.least), ("mean", spread.mean), ("most", spread.most)]
        .map(|(name, value)| (name, written(words, value)))
        .into()
}

fn fine(words: &Words, um: f64) -> FluentValue<'static> {
    words.fine(um).into()
}

fn number(words: &Words, value: f64) -> FluentValue<'static> {
    words.rounded(value, 1).into()
}

fn whole_up(words: &Words, value: f64) -> FluentValue<'static> {
    words.rounded(value.ceil(), 0).into()
}

fn part_id(part: PartId) -> &'static str {
    match part {
        PartId::OuterRing => "fit-part-outer-ring",
        PartId::Sleeve => "fit-part-sleeve",
        PartId::Housing => "fit-part-housing",
    }
}

fn state_id(state: FitState) -> &'static str {
    match state {
        FitState::Tight => "fit-state-tight",
        FitState::MayBeLoose => "fit-state-may-be-loose",
        FitState::Loose => "fit-state-loose",
    }
}

fn missing_id(what: NotCounted) -> &'static str {
    match what {
        NotCounted::ShaftFit => "fit-missing-shaft-fit",
        NotCounted::RingsApart => "fit-missing-rings-apart",
        NotCounted::HousingApart => "fit-missing-housing-apart",
        NotCounted::HousingWall => "fit-missing-housing-wall",
        NotCounted::BearingBore => "fit-missing-bearing-bore",
        NotCounted::Group => "fit-missing-group",
        NotCounted::Width => "fit-missing-width",
        NotCounted::Temperature => "fit-missing-temperature",
        NotCounted::SizeUncertainty => "fit-missing-size-uncertainty",
        NotCounted::Form => "fit-missing-form",
    }
}

#[cfg(test)]
mod tests {
    use super::{missing_id, part_id, state_id};
    use crate::model::fit::{FitState, NotCounted, PartId};
    use crate::trade::bench::BenchTables;
    use crate::words::Words;

    /// A missing text stops the test: see `words::in_place_of_text`.
    #[test]
    fn every_part_state_and_gap_has_its_words() {
        let words = Words::of("en").expect("English is shipped");
        for part in [PartId::OuterRing, PartId::Sleeve, PartId::Housing] {
            words.text(part_id(part));
        }
        for state in [FitState::Tight, FitState::MayBeLoose, FitState::Loose] {
            words.text(state_id(state));
        }
        for what in [
            NotCounted::ShaftFit,
            NotCounted::RingsApart,
            NotCounted::HousingApart,
            NotCounted::HousingWall,
            NotCounted::BearingBore,
            NotCounted::Group,
            NotCounted::Width,
            NotCounted::Temperature,
            NotCounted::SizeUncertainty,
            NotCounted::Form,
        ] {
            words.text(missing_id(what));
        }
    }

    #[test]
    fn every_material_has_a_name() {
        for locale in Words::locales() {
            let words = Words::of(locale).expect("the language is shipped");
            for row in &BenchTables::shipped().expect("the tables are sound").materials {
                assert_ne!(super::material(words, &row.id), row.id, "{locale}");
            }
        }
    }

    #[test]
    fn refusals_name_every_material_of_the_table() {
        let words = Words::of("en").expect("English is shipped");
        let help = words.text("error-unknown-material-help");
        for material in &BenchTables::shipped().expect("the tables are sound").materials {
            assert!(help.contains(&material.id), "{}", material.id);
        }
    }
}
