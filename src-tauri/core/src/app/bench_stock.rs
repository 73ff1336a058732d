//! The workshop's own sleeves at the bench: what each would do in the housing at hand.

use crate::content::stock_line;
use crate::measure::fit::stock::{Housing, stock};
use crate::model::bench::BoreStand;
use crate::model::fit::{StockSays, StockStand};
use crate::model::verdict::BenchFindings;
use crate::model::workshop::StockSleeve;
use crate::trade::bench::BenchTables;
use crate::walk::bench::BenchRecord;
use crate::words::Words;

/// The housing as the bench recorded it: what was found, its bores as read, and what was cut of it.
pub(super) fn housing(found: &BenchFindings, read: [&Option<BoreStand>; 3], bench: &BenchRecord) -> Housing {
    let means = read.into_iter().flatten().filter_map(|bore| bore.shape.mean_diameter);
    let cut = bench.last_pass().and_then(|pass| pass.diameter_mm);
    let bores_mm = means.map(|size| size.value_mm).chain(cut).collect();
    Housing { found: found.clone(), bores_mm }
}

/// Each sleeve of the workshop, in its order.
pub(super) fn stands(
    own: &[StockSleeve],
    bench: &BenchRecord,
    housing: &Housing,
    (tables, words): (&BenchTables, &Words),
) -> Vec<StockStand> {
    own.iter().map(|sleeve| stand(sleeve, bench, housing, (tables, words))).collect()
}

fn stand(
    sleeve: &StockSleeve,
    bench: &BenchRecord,
    housing: &Housing,
    (tables, words): (&BenchTables, &Words),
) -> StockStand {
    let fit = bench.fit.as_ref();
    let (says, housing_bore_mm) =
        fit.map_or((StockSays::Open, None), |fit| stock(fit, sleeve, housing, tables));
    StockStand {
        material: sleeve.material.clone(),
        outside_mm: sleeve.outside_mm,
        bore_mm: sleeve.bore_mm,
        says,
        housing_bore_mm,
        line: stock_line(words, sleeve, says, housing_bore_mm),
    }
}
