//! The bench tables of `data/bench/`: hole classes, bearing tables, materials, settings and class advice.
//! Read and checked once; the rules that use them are in `measure`.

use std::sync::OnceLock;

use serde::Deserialize;

use super::rows::GateRow;
use crate::model::gauge::ClearanceGroup;

/// Every bench table.
#[derive(Debug, Clone, PartialEq)]
pub struct BenchTables {
    /// Hole classes (ISO 286-2).
    pub holes: Vec<HoleRow>,
    /// Standard tolerance grade 5 (ISO 286-1).
    pub grades: Vec<GradeRow>,
    /// Outside diameter of bearings (ISO 492).
    pub outsides: Vec<OutsideRow>,
    /// Internal clearance (ISO 5753-1).
    pub clearances: Vec<ClearanceRow>,
    /// Materials.
    pub materials: Vec<Material>,
    /// Class advice.
    pub advice: Vec<AdviceRow>,
    /// Single numbers.
    pub settings: Settings,
    /// Single numbers of the verdict.
    pub verdict: VerdictSettings,
    /// Gates of the bench part; not part of the walk.
    pub gates: Vec<GateRow>,
}

/// Limits of one hole class in one range of diameters.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct HoleRow {
    /// Class, such as `N7`.
    pub class: String,
    /// The range is over this.
    pub over_mm: f64,
    /// Up to and including this.
    pub to_mm: f64,
    /// Upper limit, micrometres from nominal.
    pub upper_um: f64,
    /// Lower limit.
    pub lower_um: f64,
    /// Where the row comes from.
    pub basis: String,
}

/// IT5 in one range.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct GradeRow {
    /// Over.
    pub over_mm: f64,
    /// Up to and including.
    pub to_mm: f64,
    /// Width, micrometres.
    pub it5_um: f64,
    /// Where the row comes from.
    pub basis: String,
}

/// Limits of a bearing's outside diameter in one range.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct OutsideRow {
    /// Over.
    pub over_mm: f64,
    /// Up to and including.
    pub to_mm: f64,
    /// Upper limit, micrometres from nominal.
    pub upper_um: f64,
    /// Lower limit.
    pub lower_um: f64,
    /// Where the row comes from.
    pub basis: String,
}

/// Radial internal clearance in one range of bores, micrometres, least and most of each group.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ClearanceRow {
    /// Over.
    pub over_mm: f64,
    /// Up to and including.
    pub to_mm: f64,
    #[serde(rename = "C2")]
    c2: [f64; 2],
    #[serde(rename = "CN")]
    cn: [f64; 2],
    #[serde(rename = "C3")]
    c3: [f64; 2],
    #[serde(rename = "C4")]
    c4: [f64; 2],
    /// Where the row comes from.
    pub basis: String,
}

impl ClearanceRow {
    /// Least and most clearance of a group, micrometres.
    pub fn of(&self, group: ClearanceGroup) -> [f64; 2] {
        match group {
            ClearanceGroup::C2 => self.c2,
            ClearanceGroup::CN => self.cn,
            ClearanceGroup::C3 => self.c3,
            ClearanceGroup::C4 => self.c4,
        }
    }
}

/// A material near 20 C.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Material {
    /// Its id, such as `A356`.
    pub id: String,
    /// Its family.
    pub family: Family,
    /// Young's modulus, GPa.
    pub modulus_gpa: f64,
    /// Poisson's ratio.
    pub poisson: f64,
    /// Linear expansion, 1e-6 per kelvin.
    pub expansion_per_million_k: f64,
    /// Yield strength, MPa; none where the material has no yield point.
    #[serde(default)]
    pub yield_mpa: Option<f64>,
    /// Highest temperature for fitting, Celsius.
    pub heat_limit_c: f64,
    /// Where the row comes from.
    pub basis: String,
}

/// Families of materials that class advice tells apart.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Family {
    /// Aluminium and magnesium alloys.
    LightAlloy,
    /// Iron and steel.
    IronOrSteel,
    /// Copper alloys.
    CopperAlloy,
}

/// Classes advised under one condition.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct AdviceRow {
    /// The condition's id.
    pub id: String,
    /// Classes of the shipped table.
    pub classes: Vec<String>,
    /// Where the row comes from.
    pub basis: String,
}

/// A number with its basis.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Setting {
    /// The number.
    pub value: f64,
    /// Where it comes from.
    pub basis: String,
}

/// The single numbers of `settings.toml`; units are in the names.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
#[expect(missing_docs, reason = "each is explained by its basis in the data file")]
pub struct Settings {
    pub position_error_mm: Setting,
    pub gauge_tilt_deg: Setting,
    pub guard_standard_uncertainties: Setting,
    pub largest_reading_mm: Setting,
    pub most_readings: Setting,
    pub doubtful_score: Setting,
    pub sleeve_wall_least_mm: Setting,
    pub operating_clearance_least_um: Setting,
    pub raceway_ratio: Setting,
    pub friction_least: Setting,
    pub friction_most: Setting,
    pub assembly_clearance_um: Setting,
    pub cold_limit_c: Setting,
    pub room_c: Setting,
    pub measured_size_apart_mm: Setting,
    pub roundness_share_of_it5: Setting,
}

/// The single numbers of `verdict.toml`; units are in the names.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
#[expect(missing_docs, reason = "each is explained by its basis in the data file")]
pub struct VerdictSettings {
    pub guard_standard_uncertainties: Setting,
    pub least_interference_um: Setting,
    pub most_yield_share: Setting,
}

impl BenchTables {
    /// The shipped tables.
    ///
    /// # Errors
    /// The first fault of the shipped data: a fault of the build, caught by the tests.
    pub fn shipped() -> Result<&'static Self, String> {
        static READ: OnceLock<Result<BenchTables, String>> = OnceLock::new();
        READ.get_or_init(read).as_ref().map_err(Clone::clone)
    }

    /// The limits of a hole class at a nominal diameter.
    pub fn hole(&self, class: &str, diameter_mm: f64) -> Option<&HoleRow> {
        self.holes.iter().find(|row| row.class == class && within(diameter_mm, row.over_mm, row.to_mm))
    }

    /// IT5 at a nominal diameter, micrometres.
    pub fn it5_um(&self, diameter_mm: f64) -> Option<f64> {
        self.grades.iter().find(|row| within(diameter_mm, row.over_mm, row.to_mm)).map(|row| row.it5_um)
    }

    /// The limits of a bearing's outside diameter.
    pub fn outside(&self, diameter_mm: f64) -> Option<&OutsideRow> {
        self.outsides.iter().find(|row| within(diameter_mm, row.over_mm, row.to_mm))
    }

    /// The internal clearance of bearings with a bore.
    pub fn clearance(&self, bore_mm: f64) -> Option<&ClearanceRow> {
        self.clearances.iter().find(|row| within(bore_mm, row.over_mm, row.to_mm))
    }

    /// A material by its id, in any case.
    pub fn material(&self, id: &str) -> Option<&Material> {
        self.materials.iter().find(|row| row.id.eq_ignore_ascii_case(id.trim()))
    }
}

/// Over the one, up to and including the other: 80 mm belongs to "over 50 up to 80".
fn within(value: f64, over: f64, to: f64) -> bool {
    over < value && value <= to
}

const HOLES: &str = include_str!("../../data/bench/holes.toml");
const BEARINGS: &str = include_str!("../../data/bench/bearings.toml");
const MATERIALS: &str = include_str!("../../data/bench/materials.toml");
const ADVICE: &str = include_str!("../../data/bench/advice.toml");
const VERDICT: &str = include_str!("../../data/bench/verdict.toml");
const TEARDOWN: &str = include_str!("../../data/bench/teardown.toml");
const SETTINGS: &str = include_str!("../../data/bench/settings.toml");

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Tables {
    #[serde(default)]
    hole: Vec<HoleRow>,
    #[serde(default)]
    grade: Vec<GradeRow>,
    #[serde(default)]
    outside: Vec<OutsideRow>,
    #[serde(default)]
    clearance: Vec<ClearanceRow>,
    #[serde(default)]
    material: Vec<Material>,
    #[serde(default)]
    advice: Vec<AdviceRow>,
    #[serde(default)]
    gate: Vec<GateRow>,
}

fn read() -> Result<BenchTables, String> {
    let tables = |name: &str, text: &'static str| parsed::<Tables>(name, text);
    let holes = tables("holes", HOLES)?;
    let bearings = tables("bearings", BEARINGS)?;
    let read = BenchTables {
        holes: holes.hole,
        grades: holes.grade,
        outsides: bearings.outside,
        clearances: bearings.clearance,
        materials: tables("materials", MATERIALS)?.material,
        advice: tables("advice", ADVICE)?.advice,
        gates: tables("teardown", TEARDOWN)?.gate,
        settings: parsed("settings", SETTINGS)?,
        verdict: parsed("verdict", VERDICT)?,
    };
    check(&read)?;
    Ok(read)
}

fn parsed<'a, T: Deserialize<'a>>(name: &str, text: &'a str) -> Result<T, String> {
    toml::from_str(text).map_err(|fault| format!("bench/{name}.toml: {}", fault.message()))
}

fn check(tables: &BenchTables) -> Result<(), String> {
    for row in &tables.holes {
        span(&row.class, row.over_mm, row.to_mm, &row.basis)?;
        span(&row.class, row.lower_um, row.upper_um, &row.basis)?;
    }
    for row in &tables.grades {
        span("grade", row.over_mm, row.to_mm, &row.basis)?;
    }
    for row in &tables.outsides {
        span("outside", row.over_mm, row.to_mm, &row.basis)?;
        span("outside", row.lower_um, row.upper_um, &row.basis)?;
    }
    for row in &tables.clearances {
        span("clearance", row.over_mm, row.to_mm, &row.basis)?;
        for [least, most] in [row.c2, row.cn, row.c3, row.c4] {
            span("clearance", least, most, &row.basis)?;
        }
    }
    for row in &tables.materials {
        span(&row.id, 0.0, row.modulus_gpa.min(row.expansion_per_million_k), &row.basis)?;
        span(&row.id, row.poisson, 0.5, &row.basis)?;
    }
    for row in &tables.gates {
        span(&row.id, 0.0, 1.0, &row.basis)?;
    }
    for row in &tables.advice {
        let known = |class: &String| tables.holes.iter().any(|hole| &hole.class == class);
        if row.classes.is_empty() || !row.classes.iter().all(known) || row.basis.trim().is_empty() {
            return Err(format!("advice {}: a class or the basis is missing", row.id));
        }
    }
    Ok(())
}

fn span(name: &str, low: f64, high: f64, basis: &str) -> Result<(), String> {
    if low.is_nan() || high.is_nan() || low >= high {
        return Err(format!("{name}: its limits must rise"));
    }
    if basis.trim().is_empty() { Err(format!("{name}: its basis is missing")) } else { Ok(()) }
}
