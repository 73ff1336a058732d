//! Fills the repair record from where a visit and its bench stand.

use fluent_bundle::FluentValue;

use crate::model::bench::{BenchStand, BoreStage, BoreStand, PassStand, WorkPhoto};
use crate::model::bore::{BoreSection, PlotPoint, PolarPlot};
use crate::model::photo_of::WorkPlace;
use crate::model::standing::Standing;
use crate::model::workshop::Workshop;
use crate::words::Words;

use super::finding_lines::{foot, vehicle};
use super::fit_lines::general_lines;
use super::fit_table::fit_tables;
use super::parts::{labels, letterhead, marked};
use super::repair::{BoreFigure, PlotMark, RepairRecord, RepairSection, ScaleRing};
use super::shared::PhotoLine;

/// The greatest deviation that a ring of the scale is drawn at, as a part of the radius: half of what the wall may take.
const SCALE_ROOM: f64 = 0.125;

/// What the repair record says. The same ledger, workshop and words give the same record.
pub fn build_repair(
    standing: &Standing,
    bench: &BenchStand,
    workshop: &Workshop,
    words: &Words,
) -> RepairRecord {
    RepairRecord {
        locale: words.locale().to_owned(),
        title: words.text("repair-title"),
        workshop: letterhead(workshop, words),
        verdict: bench.verdict_lines.clone(),
        vehicle: vehicle(standing, words),
        bores: figures(bench, words),
        sections: sections(bench, words),
        photos_heading: words.text("repair-heading-photos"),
        photos: in_order_of_work(bench)
            .into_iter()
            .flat_map(|(of, kept)| kept.iter().map(move |kept| photo(of, kept, words)))
            .collect(),
        cautions: ["rating", "maker", "measured", "torque"]
            .map(|id| words.text(&format!("repair-caution-{id}")))
            .into(),
        cautions_heading: words.text("finding-heading-cautions"),
        foot: foot(standing, words),
        page_foot: words.with("repair-foot", &[("visit", standing.visit.as_str().into())]),
        labels: labels(words),
    }
}

/// Photos as the work went: the bore as found, each pass, the bore as finished, the ring.
fn in_order_of_work(bench: &BenchStand) -> Vec<(WorkPlace, &Vec<WorkPhoto>)> {
    let mut kept: Vec<(WorkPlace, &Vec<WorkPhoto>)> =
        bench.photos.iter().map(|(of, kept)| (*of, kept)).collect();
    kept.sort_by_key(|(of, _)| match of {
        WorkPlace::Found => (0, 0),
        WorkPlace::Behind => (1, 0),
        WorkPlace::Pass(number) => (2, *number),
        WorkPlace::Finished => (3, 0),
        WorkPlace::Ring => (4, 0),
    });
    kept
}

fn stage_id(stage: BoreStage) -> &'static str {
    match stage {
        BoreStage::Found => "found",
        BoreStage::Behind => "behind",
        BoreStage::Finished => "finished",
    }
}

/// The bore before and after, as far as it was measured, both magnified alike.
fn figures(bench: &BenchStand, words: &Words) -> Vec<BoreFigure> {
    let bores = [
        (BoreStage::Found, &bench.found),
        (BoreStage::Behind, &bench.behind),
        (BoreStage::Finished, &bench.finished),
    ];
    let measured: Vec<(BoreStage, &BoreStand, &BoreSection)> = bores
        .into_iter()
        .filter_map(|(stage, bore)| bore.as_ref().and_then(|bore| Some((stage, bore, worst(bore)?))))
        .collect();
    let least = measured.iter().map(|(.., section)| section.plot.magnification).fold(f64::INFINITY, f64::min);
    measured.into_iter().map(|(stage, bore, section)| figure(stage, bore, section, least, words)).collect()
}

/// The worst depth of a bore: where it is least round, else the first.
pub(super) fn worst(bore: &BoreStand) -> Option<&BoreSection> {
    let off =
        |section: &&BoreSection| section.out_of_roundness_minimum_zone.map_or(0.0, |form| form.value_um);
    bore.shape.sections.iter().max_by(|a, b| off(a).total_cmp(&off(b)))
}

fn figure(
    stage: BoreStage,
    bore: &BoreStand,
    section: &BoreSection,
    magnification: f64,
    words: &Words,
) -> BoreFigure {
    let plot = section.plot.magnified(magnification);
    let args = [
        ("depth", words.measured(section.depth_mm).into()),
        ("times", words.number(magnification.round()).into()),
        ("turn", (if bore.clockwise { "clockwise" } else { "counter" }).into()),
    ];
    BoreFigure {
        clockwise: bore.clockwise,
        marks: marks(&plot, words),
        scale: scale(&plot, words),
        heading: words.text(&format!("repair-bore-{}", stage_id(stage))),
        caption: words.with("repair-bore-caption", &args),
        alt: words.with("repair-bore-alt", &args),
        wall: plot.pieces(),
        whole: section.unread_deg.is_empty(),
        zone_outer: plot.zone_outer,
        zone_inner: plot.zone_inner,
        lines: bore.lines.clone(),
    }
}

/// The places farthest out and farthest in, unless the wall is round to a tenth of a micrometre.
fn marks(plot: &PolarPlot, words: &Words) -> Vec<PlotMark> {
    let by = |a: &&PlotPoint, b: &&PlotPoint| a.deviation_um.total_cmp(&b.deviation_um);
    let (Some(high), Some(low)) = (plot.points.iter().max_by(by), plot.points.iter().min_by(by)) else {
        return Vec::new();
    };
    if high.deviation_um - low.deviation_um < 0.1 {
        return Vec::new();
    }
    let mark = |point: &PlotPoint, outward: bool| {
        let args = [
            ("value", words.fine(point.deviation_um.abs()).into()),
            ("angle", words.angle(point.angle_deg, 1).into()),
        ];
        let id = if outward { "repair-bore-out" } else { "repair-bore-in" };
        PlotMark { at: point.at, outward, label: words.with(id, &args) }
    };
    vec![mark(high, true), mark(low, false)]
}

/// A ring outside and one inside, at a round number of micrometres that the drawing has room for.
fn scale(plot: &PolarPlot, words: &Words) -> Vec<ScaleRing> {
    let far = |point: &&PlotPoint| point.deviation_um.abs();
    let Some(point) = plot.points.iter().max_by(|a, b| far(a).total_cmp(&far(b))) else { return Vec::new() };
    if far(&point) < 0.1 {
        return Vec::new();
    }
    let a_micrometre = ((point.at[0].hypot(point.at[1]) - 1.0) / point.deviation_um).abs();
    let mut steps = (-1..4).flat_map(|power| [1.0, 2.0, 5.0].map(|step| step * 10_f64.powi(power)));
    let Some(step) = steps.rfind(|step| step * a_micrometre <= SCALE_ROOM) else { return Vec::new() };
    let ring = |side: f64, id: &str| ScaleRing {
        radius: 1.0 + side * step * a_micrometre,
        label: words.with(id, &[("value", words.fine(step).into())]),
    };
    vec![ring(1.0, "repair-scale-out"), ring(-1.0, "repair-scale-in")]
}

/// What the plan is made of, before what it says.
fn plan_lines(bench: &BenchStand, words: &Words) -> Vec<String> {
    let Some(plan) = &bench.plan else { return bench.plan_lines.clone() };
    let mm = |mm: f64| FluentValue::from(words.measured(mm));
    let with = |id: &str, args: &[(&str, FluentValue<'_>)]| words.with(&format!("repair-plan-{id}"), args);
    let mut lines = vec![
        with(
            if plan.at_least { "cut-least" } else { "cut" },
            &[
                ("cut", words.fine(plan.cut.value_um).into()),
                ("expanded", words.fine(plan.cut.expanded_um).into()),
            ],
        ),
        with(
            "passes",
            &[
                ("pass", mm(plan.pass_diameter_mm)),
                ("needed", plan.passes_needed.into()),
                ("allow", plan.passes_to_allow.into()),
            ],
        ),
    ];
    lines.extend(
        plan.touch_diameter_mm
            .zip(plan.clean_diameter)
            .map(|(touch, clean)| with("diameters", &[("touch", mm(touch)), ("clean", mm(clean.value_mm))])),
    );
    // With a sleeve what is left is told after the cut for it.
    let clean = plan.passes.last().filter(|_| plan.sleeve.is_none());
    lines.extend(clean.and_then(|pass| pass.wall_left_mm).map(|left| with("wall", &[("left", mm(left))])));
    lines.extend(plan.sleeve.map(|cut| match cut.wall_left_mm {
        Some(left) => with("sleeve-and-wall", &[("bore", mm(cut.bore_mm)), ("left", mm(left))]),
        None => with("sleeve", &[("bore", mm(cut.bore_mm))]),
    }));
    lines.extend(bench.plan_lines.iter().cloned());
    lines
}

fn sections(bench: &BenchStand, words: &Words) -> Vec<RepairSection> {
    let notes = bench.notes.iter().map(|note| {
        let args = [
            ("text", note.text.as_str().into()),
            ("by", note.by.as_str().into()),
            ("at", words.time(note.at).into()),
        ];
        words.with("repair-note", &args)
    });
    let ring = bench.ring_lines.iter().cloned();
    let run_out = bench.run_out.iter().map(|read| {
        let args = [
            ("size", words.measured(read.run_out_mm).into()),
            ("by", read.by.as_str().into()),
            ("at", words.time(read.at).into()),
        ];
        words.with("repair-run-out", &args)
    });
    let gates = bench.gate_sets.iter().flat_map(|set| &set.gates).filter_map(|gate| {
        let confirmed = gate.confirmed.as_ref()?;
        let args = [
            ("gate", words.text(&format!("gate-{}", gate.id)).into()),
            ("by", confirmed.by.as_str().into()),
            ("at", words.time(confirmed.at).into()),
        ];
        Some(words.with("repair-gate", &args))
    });
    let sleeve_out = bench.sleeve_out.iter().flat_map(|out| {
        let args = [("by", out.by.as_str().into()), ("at", words.time(out.at).into())];
        out.lines.iter().cloned().chain([words.with("repair-sleeve-out-by", &args)])
    });
    let parts: [(&str, Vec<String>); 7] = [
        ("gates", gates.collect()),
        ("look", bench.look_lines.iter().cloned().chain(sleeve_out).collect()),
        ("plan", plan_lines(bench, words)),
        ("passes", bench.passes.iter().map(|pass| pass_line(pass, words)).collect()),
        ("fit", bench.fit.as_ref().map(|fit| general_lines(words, fit)).unwrap_or_default()),
        ("ring", ring.chain(run_out).collect()),
        ("notes", notes.collect()),
    ];
    let section = |(id, text): (&str, Vec<String>)| {
        let text = if text.is_empty() { vec![words.text("repair-not-recorded")] } else { text };
        let fit = bench.fit.as_ref().filter(|_| id == "fit");
        RepairSection {
            heading: words.text(&format!("repair-heading-{id}")),
            tables: fit.map(|fit| fit_tables(words, fit)).unwrap_or_default(),
            text,
        }
    };
    parts.into_iter().map(section).collect()
}

fn pass_line(pass: &PassStand, words: &Words) -> String {
    use crate::model::bench::Contact;
    let contact = words.text(match pass.contact {
        Contact::None => "repair-contact-none",
        Contact::Partly => "repair-contact-partly",
        Contact::AllRound => "repair-contact-all-round",
    });
    let args = [
        ("pass", pass.number.into()),
        ("contact", contact.into()),
        ("diameter", pass.diameter_mm.map(|mm| words.measured(mm)).unwrap_or_default().into()),
        ("by", pass.by.as_str().into()),
        ("at", words.time(pass.at).into()),
    ];
    words.with(if pass.diameter_mm.is_some() { "repair-pass-measured" } else { "repair-pass" }, &args)
}

fn photo(of: WorkPlace, kept: &WorkPhoto, words: &Words) -> PhotoLine {
    let caption = match of {
        WorkPlace::Pass(number) => words.with("repair-photo-pass", &[("pass", number.to_string().into())]),
        WorkPlace::Found | WorkPlace::Behind | WorkPlace::Finished | WorkPlace::Ring => {
            words.text(&format!("repair-photo-{of}"))
        }
    };
    let alt = words.with("repair-photo-alt", &[("caption", caption.as_str().into())]);
    marked((&kept.sha256, &kept.marks), caption, alt, words)
}
