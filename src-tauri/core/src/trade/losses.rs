//! The rows of `losses.toml`: what mistakes cost, and the decisions that rest on it.

use std::collections::BTreeSet;

use serde::Deserialize;

/// A named loss.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LossRow {
    /// Names the text `loss-ID`.
    pub id: String,
    /// In minutes of work, so that checks and mistakes are weighed in one unit.
    pub minutes: f64,
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

/// A decision that is judgement: act or wait.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct JudgementRow {
    /// Names the text `judgement-ID`.
    pub id: String,
    /// What has to be likely for acting to be worth it.
    pub about: About,
    /// What acting is: names the text `course-ID`.
    pub act: String,
    /// What is lost by acting where the fault is not there.
    pub act_loss: String,
    /// What waiting is: names the text `course-ID`.
    pub wait: String,
    /// What is lost by waiting where it is.
    pub wait_loss: String,
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

/// The probability a decision rests on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum About {
    /// The bearing group with nothing else to excuse it, as the rating reads it.
    Suspicion,
    /// The bearing group.
    Bearing,
    /// Every other cause by itself.
    Other,
}

/// The losses and the decisions.
#[derive(Debug, Clone, Default, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Losses {
    /// Each by its id; a decision names two of them.
    #[serde(default, rename = "loss")]
    pub losses: Vec<LossRow>,
    /// In the order in which they are shown.
    #[serde(default, rename = "judgement")]
    pub judgements: Vec<JudgementRow>,
}

/// The loss that a whole hazard is reckoned at.
const HAZARD: &str = "hazard";

impl Losses {
    /// A loss by id, minutes; 0 for an unknown one, which the check refuses.
    pub fn minutes(&self, id: &str) -> f64 {
        self.losses.iter().find(|loss| loss.id == id).map_or(0.0, |loss| loss.minutes)
    }

    /// Where a loss comes from; empty for an unknown one.
    pub fn basis(&self, id: &str) -> &str {
        self.losses.iter().find(|loss| loss.id == id).map_or("", |loss| loss.basis.as_str())
    }

    /// What a hazard of one costs, minutes.
    pub fn hazard(&self) -> f64 {
        self.minutes(HAZARD)
    }

    /// Checks ids, sizes and bases.
    ///
    /// # Errors
    /// The first fault, naming the row.
    pub fn check(&self) -> Result<(), String> {
        let unique: BTreeSet<&String> = self.losses.iter().map(|loss| &loss.id).collect();
        if unique.len() != self.losses.len() {
            return Err("losses: an id stands twice".to_owned());
        }
        for loss in &self.losses {
            if !(loss.minutes.is_finite() && loss.minutes > 0.0) || loss.basis.trim().is_empty() {
                return Err(format!("loss {}: minutes must be above 0, and a basis is needed", loss.id));
            }
        }
        let known = |id: &str| self.losses.iter().any(|loss| loss.id == id);
        for row in &self.judgements {
            if !known(&row.act_loss) || !known(&row.wait_loss) || row.basis.trim().is_empty() {
                return Err(format!("judgement {}: a loss is unknown or the basis is missing", row.id));
            }
        }
        if known(HAZARD) { Ok(()) } else { Err("losses: hazard is missing".to_owned()) }
    }
}
