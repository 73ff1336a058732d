//! Reads the shipped data and a workshop's own layout files into one [`Trade`].

use serde::Deserialize;
use sha2::{Digest, Sha256};

use crate::model::hex;
use crate::model::learned::Learned;

use super::check::{check_layout, check_trade};
use super::losses::Losses;
use super::rows::{CauseRow, GateRow, Layout, RoadDataRow, SignRow, SoundRow, StepRow, WaiverRow};
use super::texts::{LAYOUT_FOLDER, Texts};

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
    /// Complaint sounds.
    pub sounds: Vec<SoundRow>,
    /// Reasons for no photo.
    pub waivers: Vec<WaiverRow>,
    /// Causes.
    pub causes: Vec<CauseRow>,
    /// Signs.
    pub signs: Vec<SignRow>,
    /// Roadworthiness rows.
    pub road: Vec<RoadDataRow>,
    /// What mistakes cost, and the decisions that rest on it.
    pub losses: Losses,
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
    /// File name.
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

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Learning {
    enough: u32,
    #[expect(dead_code, reason = "every number in the data says where it comes from")]
    basis: String,
}

/// Reads the shipped files (`name`, `text`).
///
/// # Errors
/// The first fault, or a file that is missing.
pub(super) fn read_shipped(files: &[(String, String)]) -> Result<Trade, String> {
    let layouts = files.iter().filter(|(name, _)| name.starts_with(LAYOUT_FOLDER));
    let tables = |name: &str| read::<Tables>(files, name);
    let trade = Trade {
        version: version(files),
        layouts: layouts.map(|(name, _)| read::<Layout>(files, name)).collect::<Result<_, String>>()?,
        steps: tables("steps")?.step,
        gates: tables("gates")?.gate,
        sounds: tables("complaints")?.sound,
        waivers: tables("waivers")?.waiver,
        causes: tables("causes")?.cause,
        signs: tables("signs")?.sign,
        road: tables("road")?.row,
        losses: read(files, "losses")?,
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
