//! A fit from named values to what is shown of it. Needs no visit and writes nothing.

use super::failure::Failure;
use super::fault::Fault;
use super::steady::shown;
use crate::content::fit_lines;
use crate::measure::fit::calculate::calculate;
use crate::measure::fit::fault::FitFault;
use crate::model::bore::{BoreKind, BoreShape};
use crate::model::fit::{FitInput, FitResult, Measured, Sleeve};
use crate::model::gauge::ClearanceGroup;
use crate::model::typed::{Typed, TypedFault, both_ways_of};
use crate::trade::bench::BenchTables;
use crate::words::Words;

/// A fit that was worked out.
#[derive(Debug, Clone, PartialEq)]
pub struct Fitted {
    /// Numbers; `lines` say the same.
    pub result: FitResult,
    /// The same as sentences, in order.
    pub lines: Vec<String>,
}

/// Works a fit out.
///
/// # Errors
/// A code and what to do.
pub fn fit(input: &FitInput, locale: &str) -> Result<Fitted, Failure> {
    fitted(input, locale).map_err(|fault| shown(&fault, locale))
}

/// The names of [`fit_of_values`].
pub const NAMES: [&str; 17] = [
    "bearing-od",
    "od",
    "od-u",
    "bearing-bore",
    "bearing-width",
    "group",
    "class",
    "bore",
    "bore-u",
    "housing",
    "housing-od",
    "sleeve",
    "sleeve-od",
    "sleeve-od-u",
    "housing-bore",
    "housing-bore-u",
    "temp",
];

/// Works a fit out from named values, as a command line gives them: `bearing-od`, `class`, `bore`, `bore-u`
/// and so on; every length in millimetres, every `-u` in micrometres. A later value replaces an earlier one.
///
/// # Errors
/// A code and what to do.
pub fn fit_of_values(values: &[(String, String)], locale: &str) -> Result<Fitted, Failure> {
    let worked_out = input(values).map_err(Fault::from).and_then(|input| fitted(&input, locale));
    worked_out.map_err(|fault| told(&fault, values, locale))
}

/// A fault, with both readings of the number where there are two.
fn told(fault: &Fault, values: &[(String, String)], locale: &str) -> Failure {
    let failure = shown(fault, locale);
    let Fault::Fit(FitFault::Typed(TypedFault::Comma, field)) = fault else { return failure };
    let text = values.iter().rev().find(|(name, _)| name == field).map(|(_, value)| value.as_str());
    match (text.and_then(both_ways_of), Words::of(locale)) {
        (Some([one, other]), Ok(words)) => {
            let args =
                [("phrase", failure.message.as_str().into()), ("one", one.into()), ("other", other.into())];
            Failure { message: words.with("bore-read-two-ways", &args), ..failure }
        }
        _ => failure,
    }
}

/// What stands for a size in place of a number: the bore as this visit measured it.
const MEASURED: &str = "measured";

/// The values with the bore as measured in place of the word `measured`: its mean diameter, and the expanded
/// uncertainty of that.
///
/// # Errors
/// [`FitFault::BoreNotMeasured`] where it is asked for and there is none, [`FitFault::BoreReadInPart`] where only an
/// arc of it was read: the size of that is not the bore's.
pub(super) fn with_measured(
    values: Vec<(String, String)>,
    bore: Option<&BoreShape>,
) -> Result<Vec<(String, String)>, FitFault> {
    let asks = |(name, value): &(String, String)| {
        ["bore", "housing-bore"].contains(&name.as_str()) && value == MEASURED
    };
    let mut filled = Vec::new();
    for given in values {
        if !asks(&given) {
            filled.push(given);
            continue;
        }
        if bore.is_some_and(|bore| bore.kind != BoreKind::ThreePoint && !bore.is_read_round()) {
            return Err(FitFault::BoreReadInPart);
        }
        let size = bore.and_then(|bore| bore.mean_diameter).ok_or(FitFault::BoreNotMeasured)?;
        filled.push((format!("{}-u", given.0), format!("{:.1}", size.expanded_um)));
        filled.push((given.0, format!("{:.4}", size.value_mm)));
    }
    Ok(filled)
}

/// The input of named values, if a fit can be worked out from it.
pub(super) fn checked(values: &[(String, String)]) -> Result<FitInput, Fault> {
    let input = input(values)?;
    calculate(&input, BenchTables::shipped().map_err(Fault::Internal)?)?;
    Ok(input)
}

fn fitted(input: &FitInput, locale: &str) -> Result<Fitted, Fault> {
    let words = Words::of(locale)?;
    let tables = BenchTables::shipped().map_err(Fault::Internal)?;
    let result = calculate(input, tables)?;
    let lines = fit_lines(words, &result);
    Ok(Fitted { result, lines })
}

fn input(values: &[(String, String)]) -> Result<FitInput, FitFault> {
    if !values.iter().all(|(name, _)| NAMES.contains(&name.as_str())) {
        return Err(FitFault::Unreadable);
    }
    if values.iter().any(|(_, value)| value == MEASURED) {
        return Err(FitFault::BoreNotMeasured);
    }
    let text =
        |name: &str| values.iter().rev().find(|(given, _)| given == name).map(|(_, value)| value.clone());
    let typed = |name: &str| text(name).map(Typed::Text);
    let measured =
        |name: &str| typed(name).map(|size| Measured { size, expanded_um: typed(&format!("{name}-u")) });
    Ok(FitInput {
        bearing_outside: typed("bearing-od"),
        measured_outside: measured("od"),
        bearing_bore: typed("bearing-bore"),
        bearing_width: typed("bearing-width"),
        group: text("group").map(|group| clearance_group(&group)).transpose()?,
        class: text("class"),
        measured_bore: measured("bore"),
        housing: text("housing").unwrap_or_default(),
        housing_outside: typed("housing-od"),
        sleeve: sleeve(text("sleeve"), measured("sleeve-od"), measured("housing-bore"))?,
        temperature: text("temp").map(|range| temperatures(&range)).transpose()?,
    })
}

/// All three of a sleeve's values, or none.
fn sleeve(
    material: Option<String>,
    outside: Option<Measured>,
    housing_bore: Option<Measured>,
) -> Result<Option<Sleeve>, FitFault> {
    match (material, outside, housing_bore) {
        (None, None, None) => Ok(None),
        (Some(material), Some(outside), Some(housing_bore)) => {
            Ok(Some(Sleeve { material, outside, housing_bore }))
        }
        _ => Err(FitFault::SleeveIncomplete),
    }
}

fn clearance_group(group: &str) -> Result<ClearanceGroup, FitFault> {
    match group.to_ascii_uppercase().as_str() {
        "C2" => Ok(ClearanceGroup::C2),
        "CN" => Ok(ClearanceGroup::CN),
        "C3" => Ok(ClearanceGroup::C3),
        "C4" => Ok(ClearanceGroup::C4),
        _ => Err(FitFault::UnknownGroup),
    }
}

/// Two temperatures as people write a range: `20..100`, `20-100`, `-10 - 80`, with any dash.
fn temperatures(range: &str) -> Result<[Typed; 2], FitFault> {
    let dash = |sign: char| ['-', '\u{2013}', '\u{2014}', '\u{2212}'].contains(&sign);
    let between = || {
        // The first sign of a number is no dash between two.
        let after = range.char_indices().skip_while(|(_, sign)| !sign.is_ascii_digit());
        let (at, sign) = after.into_iter().find(|(_, sign)| dash(*sign))?;
        Some((range.get(..at)?, range.get(at + sign.len_utf8()..)?))
    };
    let (low, high) = range.split_once("..").or_else(between).ok_or(FitFault::TemperatureRefused)?;
    let number = |text: &str| Typed::Text(text.trim().replace('\u{2212}', "-"));
    Ok([number(low), number(high)])
}

impl From<FitFault> for Fault {
    fn from(fault: FitFault) -> Self {
        Self::Fit(fault)
    }
}
