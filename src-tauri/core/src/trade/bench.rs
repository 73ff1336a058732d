//! The bench tables of `data/bench/`: hole classes, bearing tables, materials, settings and class advice.
//! Read and checked once; the rules that use them are in `measure`.

pub mod rows;

use std::sync::OnceLock;

use serde::Deserialize;

use super::rows::GateRow;
use rows::{AdviceRow, ClearanceRow, GradeRow, HoleRow, Material, OutsideRow, Settings, VerdictSettings};

/// What `data/bench` says, read and checked once.
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
    /// Housings, sleeves and rings that a fit can be worked out for.
    pub materials: Vec<Material>,
    /// Which hole classes suit which condition.
    pub advice: Vec<AdviceRow>,
    /// What the sums of a fit turn on.
    pub settings: Settings,
    /// What the verdict turns on, such as the least wall.
    pub verdict: VerdictSettings,
    /// Gates of the bench part; not part of the walk.
    pub gates: Vec<GateRow>,
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

    /// The limit for the form of a seat, micrometres: a share of IT5. Where the diameter was measured and not named a
    /// worn seat must not pass for one of the next range, whose limit is wider: the smaller of the two counts.
    pub fn form_limit_um(&self, diameter_mm: f64) -> Option<f64> {
        let named = self.it5_um(diameter_mm - WORN_MM).into_iter().chain(self.it5_um(diameter_mm));
        named.reduce(f64::min).map(|it5| it5 * self.settings.roundness_share_of_it5.value)
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

/// A seat that has worn by more than this, in mm on the diameter, is not taken for sound by anybody: common practice, no
/// source.
const WORN_MM: f64 = 0.5;

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
    check_numbers(SETTINGS)?;
    check_numbers(VERDICT)?;
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
        for [least, most] in row.groups() {
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

/// Every single number carries its basis.
fn check_numbers(text: &str) -> Result<(), String> {
    let rows: toml::Table = parsed("settings", text)?;
    let based = |row: &toml::Value| {
        row.get("basis").and_then(toml::Value::as_str).is_some_and(|basis| !basis.trim().is_empty())
    };
    match rows.iter().find(|(_, row)| !based(row)) {
        Some((name, _)) => Err(format!("{name}: its basis is missing")),
        None => Ok(()),
    }
}

fn span(name: &str, low: f64, high: f64, basis: &str) -> Result<(), String> {
    if low.is_nan() || high.is_nan() || low >= high {
        return Err(format!("{name}: its limits must rise"));
    }
    if basis.trim().is_empty() { Err(format!("{name}: its basis is missing")) } else { Ok(()) }
}
