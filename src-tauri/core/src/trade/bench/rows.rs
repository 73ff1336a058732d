//! The rows of `data/bench/`, one struct a table. Numbers and ids only; the words are in `text/`.

use serde::Deserialize;

use crate::model::gauge::ClearanceGroup;
use crate::model::typed::LengthUnit;

/// Limits of one hole class in one range of diameters.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct HoleRow {
    /// Class, such as `N7`.
    pub class: String,
    /// Lower end of the range of diameters, itself outside.
    pub over_mm: f64,
    /// Upper end, itself inside.
    pub to_mm: f64,
    /// Upper limit, micrometres from nominal.
    pub upper_um: f64,
    /// Lower limit, micrometres from nominal.
    pub lower_um: f64,
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

/// IT5 in one range.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct GradeRow {
    /// Lower end of the range of diameters, itself outside.
    pub over_mm: f64,
    /// Upper end, itself inside.
    pub to_mm: f64,
    /// Width, micrometres.
    pub it5_um: f64,
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

/// Limits of a bearing's outside diameter in one range.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct OutsideRow {
    /// Lower end of the range of diameters, itself outside.
    pub over_mm: f64,
    /// Upper end, itself inside.
    pub to_mm: f64,
    /// Upper limit, micrometres from nominal.
    pub upper_um: f64,
    /// Lower limit, micrometres from nominal.
    pub lower_um: f64,
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

/// Radial internal clearance in one range of bores, micrometres, least and most of each group.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ClearanceRow {
    /// Lower end of the range of diameters, itself outside.
    pub over_mm: f64,
    /// Upper end, itself inside.
    pub to_mm: f64,
    #[serde(rename = "C2")]
    c2: [f64; 2],
    #[serde(rename = "CN")]
    cn: [f64; 2],
    #[serde(rename = "C3")]
    c3: [f64; 2],
    #[serde(rename = "C4")]
    c4: [f64; 2],
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

impl ClearanceRow {
    /// Every group's least and most.
    pub(super) fn groups(&self) -> [[f64; 2]; 4] {
        [self.c2, self.cn, self.c3, self.c4]
    }

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
    /// By which class advice is given.
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
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

/// Families of materials that class advice tells apart.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Family {
    /// Aluminium and magnesium alloys.
    LightAlloy,
    /// For which ISO 286 classes are advised by load.
    IronOrSteel,
    /// Bronze, as sleeves are made of.
    CopperAlloy,
}

/// Classes advised under one condition.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct AdviceRow {
    /// What the load and the housing are like, as `core/data/bench` names it.
    pub id: String,
    /// Classes of the shipped table.
    pub classes: Vec<String>,
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

/// A number with its basis.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Setting {
    /// In the unit that its name ends in.
    pub value: f64,
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

/// Steps of gauges that are to be had, coarsest first.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct GaugeSteps {
    mm: Vec<f64>,
    thou: Vec<f64>,
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

impl GaugeSteps {
    /// The steps in a unit.
    pub fn of(&self, unit: LengthUnit) -> &[f64] {
        match unit {
            LengthUnit::Mm => &self.mm,
            LengthUnit::Thou => &self.thou,
        }
    }
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
    pub gauge_steps: GaugeSteps,
    pub most_readings: Setting,
    pub doubtful_score: Setting,
    pub sleeve_wall_least_mm: Setting,
    pub operating_clearance_least_um: Setting,
    pub raceway_ratio: Setting,
    pub friction_least: Setting,
    pub friction_most: Setting,
    pub assembly_clearance_um: Setting,
    pub cold_limit_c: Setting,
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
