//! How sure a sorting is, and what rests on it: intervals, surprises, what would change the order, and
//! the decisions that are judgement. The causes themselves are in [`standing`](super::standing).

use serde::Serialize;

use super::answer::AnswerValue;

/// Where a probability lies, given how uncertain the judged numbers behind it are: 5 % of the seeded
/// draws fall below `low` and 5 % above `high`.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Interval {
    /// Lower end, 0 to 1.
    pub low: f64,
    /// Upper end, 0 to 1.
    pub high: f64,
}

/// A sign that the list of causes does not fit this car.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Surprise {
    /// Which, as the id of a text: `surprise-signs-disagree` or `surprise-not-listed`.
    pub why: String,
    /// The steps whose answers fit least, worst first.
    pub steps: Vec<String>,
}

/// One answer that would put another cause first.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Turn {
    /// The open step.
    pub step: String,
    /// Answer at that step that would.
    pub value: AnswerValue,
    /// The cause that would then lead.
    pub cause: String,
    /// Its probability then, 0 to 1.
    pub probability: f64,
}

/// A decision that is judgement: act or wait, by the expected loss of each.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Judgement {
    /// Id of the row in `data/losses.toml`; its question is the text `judgement-ID`.
    pub id: String,
    /// The cause it is about; none where it is about the bearing group.
    pub cause: Option<String>,
    /// Probability it rests on, 0 to 1.
    pub probability: f64,
    /// The probability at which the decision turns: below it waiting loses less, from it on acting does.
    pub turns_at: f64,
    /// Acting: right if the fault is there.
    pub act: Course,
    /// Waiting: right if it is not.
    pub wait: Course,
    /// Whether acting loses less now.
    pub acts: bool,
}

/// One course to take.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Course {
    /// Its name, the text `course-ID`.
    pub id: String,
    /// What goes wrong if it is the wrong one, the text `loss-ID`.
    pub loss: String,
    /// Expected loss, minutes: what the mistake costs times how probable it is.
    pub expected: f64,
    /// Where the cost of the mistake comes from, in the data's own words.
    pub basis: String,
}
