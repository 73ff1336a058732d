//! The parts of the bench's work: which of them the verdict asks for, which are done, and which comes next.

use crate::model::bench::BoreStage;
use crate::model::bench::{BenchGates, BenchPart, BenchPartId, Contact, RingTurn};
use crate::model::verdict::{BenchVerdict, Verdict};
use crate::walk::bench::BenchRecord;

/// Every part in the order of the work.
pub(super) fn parts(bench: &BenchRecord, sets: &[BenchGates], verdict: &BenchVerdict) -> Vec<BenchPart> {
    let confirmed = |set: &str| {
        sets.iter()
            .find(|gates| gates.id == set)
            .is_some_and(|gates| gates.gates.iter().all(|gate| gate.confirmed.is_some()))
    };
    let read = |stage: BoreStage| bench.bores.contains_key(&stage);
    let cut = !bench.passes.is_empty();
    let replaced = verdict.verdict == Some(Verdict::ReplaceHousing);
    let skimmed = cut || (verdict.at_least >= Verdict::SkimAndSleeve && !replaced);
    let clean = bench.passes.values().next_back().is_some_and(|pass| pass.contact == Contact::AllRound);
    let free = bench.ring.as_ref().is_some_and(|ring| ring.turns == RingTurn::Free);
    let looked = bench.look.cracked.is_some() && bench.look.ring_turned.is_some();
    let part = |(id, wanted, done)| BenchPart { id, wanted, done };
    [
        (BenchPartId::GatesTeardown, true, confirmed("teardown")),
        (BenchPartId::Look, true, looked),
        (BenchPartId::Found, true, read(BoreStage::Found)),
        (BenchPartId::GatesMachining, skimmed, confirmed("machining")),
        (BenchPartId::Skim, skimmed, clean),
        (BenchPartId::GatesHeat, true, confirmed("heat")),
        (BenchPartId::Finished, skimmed || replaced, read(BoreStage::Finished)),
        (BenchPartId::Fit, true, bench.fit.is_some()),
        (BenchPartId::Ring, true, free),
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
