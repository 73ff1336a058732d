//! What holds a bearing in its housing when hot. In a light alloy no tabled class may do, and then it has to be said
//! what does: a bore smaller than any class, or a sleeve that grows no more than the bearing.

use super::calculate::ring;
use super::fault::FitFault;
use super::read::Checked;
use super::sizes::{interference, of_class};
use super::stack::Stack;
use super::thermal::{ROOM_C, loose_from};
use crate::model::fit::{Holding, HoldingSleeve, SizeStand};
use crate::trade::bench::BenchTables;
use crate::trade::bench::rows::Material;

/// The sleeve that is advised: nearest to the bearing in its expansion, and to be had everywhere.
const SLEEVE: &str = "mild-steel";

/// What holds, class by class.
///
/// # Errors
/// [`FitFault::DiameterNotTabled`] where no class is tabled at this diameter.
pub fn holding(checked: &Checked<'_>, tables: &BenchTables) -> Result<Holding, FitFault> {
    let hottest_c = checked.temperature.map(|[_, high]| high.max(ROOM_C));
    let mut classes: Vec<(String, SizeStand)> = tables
        .holes
        .iter()
        .filter_map(|row| Some((row.class.clone(), of_class(tables, &row.class, checked.nominal).ok()?)))
        .collect();
    classes.sort_by(|a, b| b.1.most_mm.total_cmp(&a.1.most_mm).then(a.0.cmp(&b.0)));
    classes.dedup_by(|a, b| a.0 == b.0);
    let (tightest, hole) = classes.last().cloned().ok_or(FitFault::DiameterNotTabled)?;
    let lost = |around: &Material, diameter: f64, inside: &Material, celsius: f64| {
        (around.expansion_per_million_k - inside.expansion_per_million_k)
            * 1e-6
            * diameter
            * (celsius - ROOM_C)
    };
    let least = |hole: &SizeStand, around: &Material, celsius: f64| {
        let room = interference(&checked.outside, hole).least;
        room - lost(around, checked.nominal, checked.bearing, celsius)
    };
    let hot = hottest_c.unwrap_or(ROOM_C);
    let tight = |hole: &SizeStand| [ROOM_C, hot].iter().all(|at| least(hole, checked.housing, *at) > 0.0);
    let held = classes.iter().filter(|(_, hole)| tight(hole)).map(|(class, _)| class.clone()).collect();
    // `opened`: what the housing lets go of a sleeve opens the sleeve's bore.
    let bore_most = |around: &Material, opened: f64| {
        checked.outside.least_mm - (lost(around, checked.nominal, checked.bearing, hot) + opened).max(0.0)
    };
    let sleeve = tables.material(SLEEVE).zip(hottest_c).map(|(steel, hottest)| {
        let outside = checked.nominal + 2.0 * tables.settings.sleeve_wall_least_mm.value;
        let grip = lost(checked.housing, outside, steel, hottest).max(0.0);
        let around = checked.housing_outside.filter(|around| *around > outside).unwrap_or(f64::INFINITY);
        let stack = Stack {
            bearing: ring(0.0, checked.nominal, checked.bearing),
            sleeve: Some(ring(checked.nominal, outside, steel)),
            housing: ring(outside, around, checked.housing),
        };
        let bore_most_mm = bore_most(steel, stack.closing(grip));
        HoldingSleeve { material: steel.id.clone(), grip_um: grip * 1000.0, bore_most_mm }
    });
    Ok(Holding {
        hottest_c,
        classes: held,
        tightest,
        tightest_may_loosen_c: loose_from(&|celsius| least(&hole, checked.housing, celsius)),
        bare_bore_most_mm: hottest_c.map(|_| bore_most(checked.housing, 0.0)),
        sleeve,
    })
}
