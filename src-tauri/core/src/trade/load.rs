//! Reads the shipped data and a workshop's own layout files into one [`Trade`].

use std::sync::OnceLock;

use serde::Deserialize;
use sha2::{Digest, Sha256};

use crate::model::case::Rules;
use crate::model::hex;
use crate::model::ids;
use crate::model::learned::Learned;
use crate::model::rules::LIKELY;

use super::check::{check_layout, check_trade};
use super::losses::Losses;
use super::rows::{
    CauseRow, GateRow, GatesHold, Layout, NumberRow, RoadDataRow, RuleNumbers, SignRow, SoundRow, StepRow,
    WaiverRow,
};
use super::texts::{LAYOUT_FOLDER, SHIPPED, Texts};

/// The most supports a shaft may have: a three-piece shaft has two, and a workshop's own layout may have one more.
pub const MAX_SUPPORTS: u8 = 3;

/// Everything the trade knows, checked.
#[derive(Debug, Clone, PartialEq)]
pub struct Trade {
    /// Version: the first 12 hex digits of the SHA-256 over the shipped files, and behind a `+` six over
    /// the workshop's own, where there are any.
    pub version: String,
    /// Layouts, shipped ones first.
    pub layouts: Vec<Layout>,
    /// Steps, in walk order within their set.
    pub steps: Vec<StepRow>,
    /// Gates, in order.
    pub gates: Vec<GateRow>,
    /// How long they hold once confirmed.
    pub gates_hold: GatesHold,
    /// Sounds an owner may describe, as intake offers them.
    pub sounds: Vec<SoundRow>,
    /// Why a step may go without its photo.
    pub waivers: Vec<WaiverRow>,
    /// What may be wrong with a car; the workshop's own come last.
    pub causes: Vec<CauseRow>,
    /// What answers are evidence of.
    pub signs: Vec<SignRow>,
    /// What roadworthiness law says of a finding; shown, never a rating.
    pub road: Vec<RoadDataRow>,
    /// What mistakes cost, and the decisions that rest on it.
    pub losses: Losses,
    /// The version of the rules, and the numbers they turn on.
    pub rules: RuleNumbers,
    /// Outcomes a layout needs before they move its numbers.
    pub enough: u32,
    /// What confirmed outcomes have taught; nothing as loaded.
    pub learned: Learned,
}

impl Trade {
    /// The layout with this id.
    pub fn layout(&self, id: &str) -> Option<&Layout> {
        self.layouts.iter().find(|layout| layout.id == id)
    }

    /// Where a rule and the numbers it turns on come from, in the data's own words.
    pub fn basis_of_rule(&self, id: &str) -> Vec<String> {
        let Some(row) = self.rules.rules.iter().find(|row| row.id == id) else { return Vec::new() };
        let turns_on = self.rules.numbers.iter().filter(|number| row.numbers.contains(&number.id));
        let number = |it: &NumberRow| {
            format!("{} ({} {}): {}", it.about, it.value, it.unit, it.basis).replace(" )", ")")
        };
        std::iter::once(row.basis.clone()).chain(turns_on.map(number)).collect()
    }

    /// The rules that rate, with the numbers they turn on; `warm_from_c` is the maker's word on what is warm.
    pub fn rules_for(&self, warm_from_c: Option<f64>) -> Rules {
        Rules {
            version: self.rules.version,
            warm_from_c: warm_from_c.unwrap_or_else(|| self.number(WARM_FROM)),
            likely: self.number(LIKELY_FROM),
        }
    }

    /// A number that a rule or the sorting turns on; 0 for an unknown one, which the check refuses.
    pub fn number(&self, id: &str) -> f64 {
        self.rules.numbers.iter().find(|row| row.id == id).map_or(0.0, |row| row.value)
    }

    /// The version of all that sorts a car of this layout: [`Trade::version`], and behind a `/` how many
    /// outcomes taught its numbers, if any did.
    pub fn version_for(&self, layout: &str) -> String {
        match self.learned.layouts.get(layout) {
            Some(taught) => format!("{}/{}", self.version, taught.outcomes),
            None => self.version.clone(),
        }
    }
}

/// A workshop's file that was not taken, and why.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Refused {
    /// As it is called in the data folder.
    pub file: String,
    /// Line and reason.
    pub reason: String,
}

/// Reads the shipped data, then adds the workshop's own layout files (`name`, `text`).
///
/// A bad own file is refused by name and the rest keeps working; an own layout never replaces a
/// shipped one.
///
/// # Errors
/// The first fault of the shipped data: a fault of the build, caught by the tests.
pub fn load(own_layouts: &[(String, String)]) -> Result<(Trade, Vec<Refused>), String> {
    let mut trade = read_shipped(&Texts::shipped().shipped)?;
    let refused = add_layouts(&mut trade, own_layouts);
    Ok((trade, refused))
}

/// Adds layout files to what is there, and says which were refused.
pub(super) fn add_layouts(trade: &mut Trade, files: &[(String, String)]) -> Vec<Refused> {
    let mut refused = Vec::new();
    for (file, text) in files {
        match own_layout(trade, text) {
            Ok(layout) => trade.layouts.push(layout),
            Err(reason) => refused.push(Refused { file: file.clone(), reason }),
        }
    }
    refused
}

fn own_layout(trade: &Trade, text: &str) -> Result<Layout, String> {
    let layout: Layout = toml::from_str(text).map_err(|fault| located(&fault, text))?;
    check_layout(trade, &layout)?;
    Ok(layout)
}

/// Line and message of a TOML fault, without repeating the file's text.
pub(super) fn located(fault: &toml::de::Error, text: &str) -> String {
    let line = line_at(text, fault.span().map_or(0, |span| span.start));
    format!("line {line}: {}", fault.message())
}

/// The line, from 1, of a place in a text.
pub(super) fn line_at(text: &str, at: usize) -> usize {
    text.bytes().take(at).filter(|byte| *byte == b'\n').count() + 1
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Tables {
    #[serde(default)]
    step: Vec<StepRow>,
    #[serde(default)]
    gate: Vec<GateRow>,
    #[serde(default)]
    hold: Option<GatesHold>,
    #[serde(default)]
    sound: Vec<SoundRow>,
    #[serde(default)]
    waiver: Vec<WaiverRow>,
    #[serde(default)]
    cause: Vec<CauseRow>,
    #[serde(default)]
    sign: Vec<SignRow>,
    #[serde(default)]
    row: Vec<RoadDataRow>,
}

/// A housing counts as warm from here on, degrees Celsius.
pub const WARM_FROM: &str = "warm-from";
/// A cause is likely from this probability on.
pub const LIKELY_FROM: &str = "likely-from";
/// How far around the edge of the maker's range an idle reading is in doubt, rpm.
pub const IDLE_SPREAD: &str = "idle-spread";
/// The numbers that have to be there.
pub const NUMBERS: [&str; 3] = [WARM_FROM, LIKELY_FROM, IDLE_SPREAD];

/// What stood in the code when the files of the first rules had no table of numbers.
fn first_rules() -> RuleNumbers {
    let row = |id: &str, value: f64, unit: &str| NumberRow {
        id: id.to_owned(),
        value,
        unit: unit.to_owned(),
        about: String::new(),
        basis: "workshop judgement, as the first rules had it".to_owned(),
    };
    // Nobody could record degrees then.
    let numbers =
        vec![row(WARM_FROM, 40.0, "°C"), row(LIKELY_FROM, LIKELY, ""), row(IDLE_SPREAD, 25.0, "rpm")];
    RuleNumbers { version: 1, numbers, rules: Vec::new() }
}

/// Puts behind each run of steps that are done at each support the same steps for the further ones, as far as a
/// layout has them.
fn at_each_support(steps: Vec<StepRow>, supports: u8) -> Vec<StepRow> {
    let mut all: Vec<StepRow> = Vec::new();
    for run in steps.chunk_by(|a, b| a.each_support && b.each_support) {
        all.extend_from_slice(run);
        let repeated = run.first().is_some_and(|row| row.each_support);
        for number in (2..=supports).filter(|_| repeated) {
            all.extend(run.iter().map(|row| StepRow {
                id: ids::at_support(&row.id, number),
                support_number: number,
                ..row.clone()
            }));
        }
    }
    all
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Learning {
    enough: u32,
    #[expect(dead_code, reason = "every number in the data says where it comes from")]
    basis: String,
}

/// Reads the files that come with a program. Those of this one are read once: a practice, a rehearsal and each look at a
/// data folder ask for them again.
///
/// # Errors
/// The first fault, or a file that is missing.
pub(super) fn read_shipped(files: &[(String, String)]) -> Result<Trade, String> {
    static OURS: OnceLock<Result<Trade, String>> = OnceLock::new();
    let ours = SHIPPED.iter().copied().eq(files.iter().map(|(name, text)| (name.as_str(), text.as_str())));
    if ours { OURS.get_or_init(|| read_files(files)).clone() } else { read_files(files) }
}

fn read_files(files: &[(String, String)]) -> Result<Trade, String> {
    let layouts = files.iter().filter(|(name, _)| name.starts_with(LAYOUT_FOLDER));
    let tables = |name: &str| read::<Tables>(files, name);
    let layouts: Vec<Layout> =
        layouts.map(|(name, _)| read::<Layout>(files, name)).collect::<Result<_, String>>()?;
    let rules = if files.iter().any(|(name, _)| name == "rules") {
        read::<RuleNumbers>(files, "rules")?
    } else {
        first_rules()
    };
    let steps = tables("steps")?.step;
    let each_support = |sign: &SignRow| {
        sign.steps.iter().all(|step| steps.iter().any(|row| &row.id == step && row.each_support))
    };
    let mut signs = tables("signs")?.sign;
    for sign in &mut signs {
        sign.each_support = each_support(sign);
    }
    let trade = Trade {
        version: version(files),
        layouts,
        steps: at_each_support(steps, MAX_SUPPORTS),
        gates: tables("gates")?.gate,
        gates_hold: tables("gates")?.hold.unwrap_or_default(),
        sounds: tables("complaints")?.sound,
        waivers: tables("waivers")?.waiver,
        causes: tables("causes")?.cause,
        signs,
        road: tables("road")?.row,
        losses: read(files, "losses")?,
        rules,
        enough: read::<Learning>(files, "learning")?.enough,
        learned: Learned::default(),
    };
    check_trade(&trade)?;
    Ok(trade)
}

fn read<'a, T: Deserialize<'a>>(files: &'a [(String, String)], name: &str) -> Result<T, String> {
    let file = files.iter().find(|(file, _)| file == name);
    let (_, text) = file.ok_or_else(|| format!("{name}.toml is missing"))?;
    toml::from_str(text).map_err(|fault| format!("{name}.toml: {}", located(&fault, text)))
}

fn version(files: &[(String, String)]) -> String {
    let mut hasher = Sha256::new();
    for (_, text) in files {
        hasher.update(text.as_bytes());
    }
    format!("{:.12}", hex::encode(&hasher.finalize()))
}
