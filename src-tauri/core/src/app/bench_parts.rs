//! The parts of the bench's work: which of them the verdict asks for, which are done, and which comes next.

use crate::model::bench::{BenchPart, BenchPartId, BoreStage, Contact};
use crate::model::verdict::{BenchGap, BenchVerdict, Verdict};
use crate::trade::bench::BenchTables;
use crate::walk::bench::{BenchRecord, MACHINING, TEARDOWN};

/// Every part in the order of the work.
pub(super) fn parts(bench: &BenchRecord, verdict: &BenchVerdict, tables: &BenchTables) -> Vec<BenchPart> {
    let confirmed = |set: &str| bench.is_open(set, tables);
    let read = |stage: BoreStage| bench.bores.contains_key(&stage);
    let cut = !bench.passes.is_empty();
    // A housing that is to be replaced is cut no further.
    let replaced = verdict.verdict == Some(Verdict::ReplaceHousing);
    let skimmed = !replaced && (cut || verdict.at_least >= Verdict::SkimAndSleeve);
    let clean = bench.last_pass().is_some_and(|pass| pass.contact == Contact::AllRound);
    // Whether an old sleeve hides the bore matters once there is something to cut.
    let sleeve_known = !skimmed || !verdict.missing.contains(&BenchGap::OldSleeve);
    let looked = bench.look.cracked.is_some() && bench.look.ring_turned.is_some() && sleeve_known;
    let old_sleeve = bench.sleeve_out.is_some() || verdict.missing.contains(&BenchGap::BehindSleeve);
    // The bore of a sleeve that is out is gone.
    let found = read(BoreStage::Found);
    let part = |(id, wanted, done)| BenchPart { id, wanted, done };
    [
        (BenchPartId::GatesTeardown, true, confirmed(TEARDOWN)),
        (BenchPartId::Look, true, looked),
        (BenchPartId::Found, found || bench.sleeve_out.is_none(), found),
        (BenchPartId::OldSleeve, skimmed && old_sleeve, read(BoreStage::Behind)),
        (BenchPartId::GatesMachining, skimmed, confirmed(MACHINING)),
        (BenchPartId::Skim, skimmed, clean),
        (BenchPartId::GatesHeat, true, confirmed("heat")),
        (BenchPartId::Finished, skimmed || replaced, read(BoreStage::Finished)),
        (BenchPartId::Fit, true, bench.fit.is_some()),
        (BenchPartId::GatesPress, true, confirmed("press")),
        (BenchPartId::Ring, true, bench.turned_free),
        (BenchPartId::GatesRefit, true, confirmed("refit")),
        (BenchPartId::Notes, true, !bench.notes.is_empty()),
    ]
    .map(part)
    .into()
}

/// The first part that is wanted and not done.
pub(super) fn next(parts: &[BenchPart]) -> Option<BenchPartId> {
    parts.iter().find(|part| part.wanted && !part.done).map(|part| part.id)
}
