//! The texts that a trade's knowledge is read from: what is shipped, and a workshop's own. They are kept
//! whole under their version, so that an old finding can be derived again.

use serde::{Deserialize, Serialize};

use super::load::{Refused, Trade, add_layouts, read_shipped};
use super::own;

/// Where the names of shipped layouts begin.
pub(super) const LAYOUT_FOLDER: &str = "layouts/";

/// The shipped files, in the order that makes their version.
pub(super) const SHIPPED: [(&str, &str); 18] = [
    ("layouts/rigid-engine-speed", include_str!("../../data/layouts/rigid-engine-speed.toml")),
    ("layouts/rigid-output-speed", include_str!("../../data/layouts/rigid-output-speed.toml")),
    ("layouts/rubber-centre", include_str!("../../data/layouts/rubber-centre.toml")),
    ("layouts/two-centres", include_str!("../../data/layouts/two-centres.toml")),
    ("layouts/one-piece", include_str!("../../data/layouts/one-piece.toml")),
    ("layouts/front-shaft", include_str!("../../data/layouts/front-shaft.toml")),
    ("layouts/half-shaft", include_str!("../../data/layouts/half-shaft.toml")),
    ("layouts/torque-tube", include_str!("../../data/layouts/torque-tube.toml")),
    ("steps", include_str!("../../data/steps.toml")),
    ("gates", include_str!("../../data/gates.toml")),
    ("complaints", include_str!("../../data/complaints.toml")),
    ("waivers", include_str!("../../data/waivers.toml")),
    ("causes", include_str!("../../data/causes.toml")),
    ("signs", include_str!("../../data/signs.toml")),
    ("road", include_str!("../../data/road.toml")),
    ("losses", include_str!("../../data/losses.toml")),
    ("learning", include_str!("../../data/learning.toml")),
    ("rules", include_str!("../../data/rules.toml")),
];

/// What was shipped with earlier rules, oldest first, as it was kept under its version: visits that were rated by it
/// can be read so on every device.
const EARLIER: [&str; 3] = [
    include_str!("../../data/earlier/rules-1.json"),
    include_str!("../../data/earlier/rules-2.json"),
    include_str!("../../data/earlier/rules-3.json"),
];

/// Files by name, each with its text.
pub type Files = Vec<(String, String)>;

/// Every text that knowledge is read from.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Texts {
    /// Shipped with the program.
    pub shipped: Files,
    /// The workshop's own layouts.
    pub layouts: Files,
    /// The workshop's own causes, signs and layouts.
    pub rows: Files,
}

impl Texts {
    /// What this program ships, alone.
    pub fn shipped() -> Self {
        let shipped = SHIPPED.map(|(name, text)| (name.to_owned(), text.to_owned())).to_vec();
        Self { shipped, ..Self::default() }
    }

    /// What was shipped with earlier rules, oldest first.
    pub fn earlier() -> Vec<Self> {
        EARLIER.into_iter().filter_map(|json| serde_json::from_str(json).ok()).collect()
    }

    /// Reads the knowledge. Gives back which of the workshop's own layout files, and which of its rows, were
    /// refused, and why; the rest works.
    ///
    /// # Errors
    /// The first fault of the shipped texts.
    pub fn read(&self) -> Result<(Trade, [Vec<Refused>; 2]), String> {
        let mut trade = read_shipped(&self.shipped)?;
        let layouts = add_layouts(&mut trade, &self.layouts);
        let rows = own::add(&mut trade, &self.rows);
        own::mark_version(&mut trade, &[self.layouts.as_slice(), self.rows.as_slice()].concat());
        Ok((trade, [layouts, rows]))
    }
}
