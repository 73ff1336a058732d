//! The old sleeve of the bench: how it may come out, and what it says once it is out.

use crate::content::sleeve_out_lines;
use crate::model::bench::{BoreStand, SleeveOutStand, SleeveWay, SleeveWayStand};
use crate::trade::bench::BenchTables;
use crate::walk::bench::BenchRecord;
use crate::words::Words;

/// Each way out with the gates it takes.
pub(super) fn ways(bench: &BenchRecord, tables: &BenchTables) -> Vec<SleeveWayStand> {
    let stand = |way: SleeveWay| SleeveWayStand {
        way,
        gates: way.gates().to_owned(),
        open: bench.is_open(way.gates(), tables),
    };
    SleeveWay::ALL.map(stand).into()
}

/// The sleeve that came out, beside the bore that was behind it.
pub(super) fn out(bench: &BenchRecord, behind: Option<&BoreStand>, words: &Words) -> Option<SleeveOutStand> {
    let out = bench.sleeve_out.as_ref()?;
    let (way, outside_mm) = out.what;
    let behind_mm = behind.and_then(|bore| bore.shape.mean_diameter).map(|size| size.value_mm);
    let lines = sleeve_out_lines(words, way, outside_mm, behind_mm);
    Some(SleeveOutStand { way, outside_mm, lines, by: out.by.clone(), at: out.at })
}
