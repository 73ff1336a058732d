//! Fills the repair record from where a visit and its bench stand.

use crate::model::bench::{BenchStand, BoreStage, BoreStand, PassStand, WorkPhoto};
use crate::model::bore::BoreSection;
use crate::model::photo_of::WorkPlace;
use crate::model::standing::Standing;
use crate::model::workshop::Workshop;
use crate::words::Words;

use super::finding_lines::{foot, vehicle};
use super::parts::{labels, letterhead, marked};
use super::repair::{BoreFigure, RepairRecord, RepairSection};
use super::shared::PhotoLine;

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
        photos: bench
            .photos
            .iter()
            .flat_map(|(of, kept)| kept.iter().map(|kept| photo(*of, kept, words)))
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

fn stage_id(stage: BoreStage) -> &'static str {
    match stage {
        BoreStage::Found => "found",
        BoreStage::Finished => "finished",
    }
}

/// The bore before and after, as far as it was measured, both magnified alike.
fn figures(bench: &BenchStand, words: &Words) -> Vec<BoreFigure> {
    let bores = [(BoreStage::Found, &bench.found), (BoreStage::Finished, &bench.finished)];
    let measured: Vec<(BoreStage, &BoreStand, &BoreSection)> = bores
        .into_iter()
        .filter_map(|(stage, bore)| bore.as_ref().and_then(|bore| Some((stage, bore, worst(bore)?))))
        .collect();
    let least = measured.iter().map(|(.., section)| section.plot.magnification).fold(f64::INFINITY, f64::min);
    measured.into_iter().map(|(stage, bore, section)| figure(stage, bore, section, least, words)).collect()
}

/// The worst depth of a bore: where it is least round, else the first.
fn worst(bore: &BoreStand) -> Option<&BoreSection> {
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
    ];
    BoreFigure {
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

fn sections(bench: &BenchStand, words: &Words) -> Vec<RepairSection> {
    let notes = bench.notes.iter().map(|note| {
        let args = [
            ("text", note.text.as_str().into()),
            ("by", note.by.as_str().into()),
            ("at", words.time(note.at).into()),
        ];
        words.with("repair-note", &args)
    });
    let ring = bench.ring.iter().map(|ring| {
        let id = match ring.turns {
            crate::model::bench::RingTurn::Free => "repair-ring-free",
            crate::model::bench::RingTurn::Stiff => "repair-ring-stiff",
            crate::model::bench::RingTurn::Rough => "repair-ring-rough",
        };
        words.with(id, &[("by", ring.by.as_str().into()), ("at", words.time(ring.at).into())])
    });
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
    let parts: [(&str, Vec<String>); 6] = [
        ("gates", gates.collect()),
        ("plan", bench.plan_lines.clone()),
        ("passes", bench.passes.iter().map(|pass| pass_line(pass, words)).collect()),
        ("fit", bench.fit_lines.clone()),
        ("ring", ring.chain(run_out).collect()),
        ("notes", notes.collect()),
    ];
    let section = |(id, text): (&str, Vec<String>)| {
        let text = if text.is_empty() { vec![words.text("repair-not-recorded")] } else { text };
        RepairSection { heading: words.text(&format!("repair-heading-{id}")), text }
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
        WorkPlace::Found | WorkPlace::Finished | WorkPlace::Ring => words.text(&format!("repair-photo-{of}")),
    };
    let alt = words.with("repair-photo-alt", &[("caption", caption.as_str().into())]);
    marked((&kept.sha256, &kept.marks), caption, alt, words)
}
