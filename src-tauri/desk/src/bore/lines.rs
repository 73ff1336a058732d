//! A bore's shape and a skim plan in lines for a person; `--json` prints the whole of it instead.

use std::fmt::Write as _;

use steady_core::model::bore::{BoreSection, BoreShape, FormUm, SizeMm, SkimAxis, SkimPass, SkimPlan};
use steady_core::words::Words;

/// Passes a person wants to see at each end of a long plan.
const SHOWN: usize = 12;

/// The shape, without a last line end.
pub fn of_shape(shape: &BoreShape, notes: &[String], words: &Words) -> String {
    let mut text = String::new();
    let _ = writeln!(text, "Mean size          {}", size(shape.mean_diameter));
    let _ = writeln!(text, "Taper              {}", form(shape.taper, false));
    let _ = writeln!(text, "Centre drift       {}", form(shape.centre_drift, false));
    for section in &shape.sections {
        let _ = write!(text, "{}", of_section(section));
    }
    for line in &shape.budget {
        let _ = writeln!(text, "Budget             {:.2} um  {}", line.standard_um, words.text(&line.id));
    }
    with_notes(text, notes)
}

fn of_section(section: &BoreSection) -> String {
    let mut text = String::new();
    let _ = writeln!(text, "Depth {} mm, {} readings", Short(section.depth_mm), section.readings);
    if !section.unread_deg.is_empty() {
        let _ = writeln!(text, "  NOT READ         {} deg", arcs(&section.unread_deg));
    }
    let _ = writeln!(text, "  Mean size        {}", size(section.mean_diameter));
    let _ = writeln!(text, "  Ovality          {}", form(section.ovality, false));
    let _ = writeln!(
        text,
        "  Out of round     {} least squares",
        form(section.out_of_roundness_least_squares, section.at_least)
    );
    let _ = writeln!(
        text,
        "                   {} minimum zone",
        form(section.out_of_roundness_minimum_zone, section.at_least)
    );
    let mut lobes = section.lobes.clone();
    lobes.sort_by(|a, b| b.amplitude.value_um.total_cmp(&a.amplitude.value_um));
    let clear = lobes.iter().filter(|lobe| lobe.amplitude.value_um > lobe.amplitude.expanded_um);
    for lobe in clear.take(3) {
        let amplitude = form(Some(lobe.amplitude), false);
        let _ = writeln!(
            text,
            "  Lobes            {} of {amplitude}, widest at {:.0} deg",
            lobe.lobes, lobe.widest_deg
        );
    }
    text
}

/// The plan, without a last line end.
pub fn of_plan(plan: &SkimPlan, notes: &[String]) -> String {
    let mut text = String::new();
    let axis = match plan.axis {
        SkimAxis::Datum => "datum",
        SkimAxis::Free => "free",
    };
    let shift = plan.shift_um.map_or_else(String::new, |shift| format!(", {shift:.1} um from the datum"));
    let _ = writeln!(text, "Axis        {axis}{shift}");
    let _ = writeln!(text, "Cut         {} on the radius", form(Some(plan.cut), plan.at_least));
    let _ = writeln!(text, "Clean at    {}", size(plan.clean_diameter));
    let _ = writeln!(text, "Passes      {} of {} mm", plan.passes_needed, Short(plan.pass_diameter_mm));
    let hidden = plan.passes.len().saturating_sub(2 * SHOWN);
    for pass in &plan.passes {
        if hidden == 0 || pass.number <= SHOWN || pass.number > SHOWN + hidden {
            let _ = writeln!(text, "{}", of_pass(pass));
        } else if pass.number == SHOWN + 1 {
            let _ = writeln!(text, "  ... {hidden} more, all in --json");
        }
    }
    with_notes(text, notes)
}

fn of_pass(pass: &SkimPass) -> String {
    let mut text =
        format!("  Pass {:<3}  touched {:>3.0}%", pass.number, (pass.touched_share * 100.0).floor());
    if let Some(diameter) = pass.diameter_mm {
        let _ = write!(text, "  diameter {diameter:.4} mm");
    }
    if let Some(wall) = pass.wall_left_mm {
        let enough = if pass.wall_enough == Some(false) { ", NOT SURELY ENOUGH" } else { "" };
        let _ = write!(text, "  wall {wall:.3} mm{enough}");
    }
    for depth in &pass.touched {
        let touched = if depth.arcs_deg.is_empty() { "nothing".to_owned() } else { arcs(&depth.arcs_deg) };
        let _ = write!(text, "\n            depth {} mm: {touched}", Short(depth.depth_mm));
        if !depth.unread_deg.is_empty() {
            let _ = write!(text, "; NOT READ {}", arcs(&depth.unread_deg));
        }
    }
    text
}

fn arcs(arcs_deg: &[[f64; 2]]) -> String {
    arcs_deg.iter().map(|[from, to]| format!("{from:.0}-{to:.0}")).collect::<Vec<_>>().join(", ")
}

fn with_notes(mut text: String, notes: &[String]) -> String {
    for note in notes {
        let _ = writeln!(text, "- {note}");
    }
    text.trim_end().to_owned()
}

fn size(size: Option<SizeMm>) -> String {
    size.map_or_else(
        || "not known".to_owned(),
        |size| format!("{:.4} mm +- {:.1} um", size.value_mm, size.expanded_um),
    )
}

fn form(form: Option<FormUm>, at_least: bool) -> String {
    let least = if at_least { "at least " } else { "" };
    form.map_or_else(
        || "not seen".to_owned(),
        |form| format!("{least}{:.1} um +- {:.1}", form.value_um, form.expanded_um),
    )
}

/// A length with no more digits than a file would have.
struct Short(f64);

impl std::fmt::Display for Short {
    fn fmt(&self, to: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(to, "{}", (self.0 * 1e5).round() / 1e5)
    }
}
