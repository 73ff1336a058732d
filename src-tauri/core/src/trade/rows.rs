//! The rows of `data/`, one struct a table. Numbers and ids only; the words are in `text/`.

use std::collections::BTreeMap;

use serde::Deserialize;

use crate::model::gates::LiftKind;
use crate::model::ids;
use crate::model::occasion::Occasion;
use crate::model::standing::{CauseGroup, RoadRow, Support};
use crate::model::visit::{Gearbox, Seat};

/// What an answer means to the rules.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Reads {
    /// Looked, and nothing there.
    Clear,
    /// Says something, but neither good nor bad by itself.
    Neutral,
    /// Not looked.
    Open,
    /// Looked, and not decided.
    Unsure,
    /// Something found.
    Found,
}

/// What turns the shaft.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Speed {
    /// Engine speed, even at standstill.
    Engine,
    /// Gearbox output: still while the car stands.
    Output,
}

/// How a car carries its shaft.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Layout {
    /// Stands in intakes and ledgers, so it never changes; names the text `layout-ID`.
    pub id: String,
    /// Name, in a workshop's own file; shipped layouts are named in `text/`.
    #[serde(default)]
    pub name: Option<String>,
    /// What holds the bearing at the support.
    pub support: Support,
    /// What turns the shaft.
    pub speed: Speed,
    /// How many supports the shaft has; each has steps of its own.
    #[serde(default = "one")]
    pub supports: u8,
    /// Seats it can have.
    #[serde(default)]
    pub seats: Vec<Seat>,
    /// Its joints carry everything, or wear first: the look at them is part of the check that decides.
    #[serde(default)]
    pub joints_decide: bool,
    /// By hand at the support; decides what `felt` means.
    pub allowed_movement: AllowedMovement,
    /// The causes that exist on it.
    pub causes: Vec<String>,
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

/// What movement by hand a layout allows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum AllowedMovement {
    /// Rigid: what is felt is a finding.
    None,
    /// Up to the maker's figure, if it is known.
    MakerFigure,
}

/// One answer of a step.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct AnswerRow {
    /// Stands in ledgers; names the text `answer-ID`, or `answer-STEP-ID` where the step words it itself.
    pub id: String,
    /// What it means to the rules.
    pub reads: Reads,
    /// Excludes the other answers of an any-of step.
    #[serde(default)]
    pub lone: bool,
    /// Whether a screen offers it; false for what only earlier visits hold.
    #[serde(default = "yes")]
    pub offered: bool,
    /// Offered only where the maker's figure is written down, or only where it is not; none: in both cases.
    #[serde(default)]
    pub figure: Option<bool>,
}

/// A step that this one replaces: what earlier visits answered there is read as answered here.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Former {
    /// The earlier step.
    pub step: String,
    /// Earlier answers with another name now.
    #[serde(default)]
    pub answers: BTreeMap<String, String>,
}

/// A step and answers, any of which will do.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct StepAnswers {
    /// Id of a step of the same layout.
    pub step: String,
    /// Ids of answers there, any of which will do.
    pub any: Vec<String>,
    /// Only on a housing that was warm.
    #[serde(default)]
    pub warm: bool,
}

/// The kinds of answer a step takes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Form {
    /// Exactly one.
    OneOf,
    /// Any number.
    AnyOf,
    /// A number in a unit.
    Reading,
}

/// One row of `steps.toml`. A step may have several rows for different supports.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct StepRow {
    /// Stands in ledgers, so it never changes; names the texts `step-ID`, `step-ID-do`, `step-ID-watch`.
    pub id: String,
    /// Gate set before it; none for the owner's account.
    #[serde(default)]
    pub set: Option<String>,
    /// Other gate sets in which it can be answered too.
    #[serde(default)]
    pub also_in: Vec<String>,
    /// Where along the shaft hands and eyes go: one of `ids::STATIONS`.
    pub station: String,
    /// Whether one answer, several or a number is given.
    pub form: Form,
    /// Answers, for one-of and any-of.
    #[serde(default)]
    pub answers: Vec<AnswerRow>,
    /// Unit of a reading.
    #[serde(default)]
    pub unit: String,
    /// Least accepted reading.
    #[serde(default)]
    pub min: f64,
    /// Greatest accepted reading.
    #[serde(default)]
    pub max: f64,
    /// Where the number pad starts.
    #[serde(default)]
    pub usual: f64,
    /// Supports it applies to; empty: all.
    #[serde(default)]
    pub supports: Vec<Support>,
    /// Shaft speed it needs.
    #[serde(default)]
    pub speed: Option<Speed>,
    /// Whether it is the step of cars whose joints decide, or of those whose joints do not; none: of both.
    #[serde(default)]
    pub joints_decide: Option<bool>,
    /// Gearboxes it applies to; empty: all. An unknown gearbox keeps the step.
    #[serde(default)]
    pub gearboxes: Vec<Gearbox>,
    /// Hidden unless one condition of every group holds or is unanswered.
    #[serde(default)]
    pub needs: Vec<Vec<StepAnswers>>,
    /// Not there at all before each of these is answered so, at every support that the car has.
    #[serde(default)]
    pub after: Vec<StepAnswers>,
    /// A walk is whole without it.
    #[serde(default)]
    pub optional: bool,
    /// Part of the check that decides.
    #[serde(default)]
    pub hands_on: bool,
    /// Not part of it, but of the support: a rating names it where it says nothing.
    #[serde(default)]
    pub limits: bool,
    /// Of the driveline beyond the support: a rating names it where nobody looked.
    #[serde(default)]
    pub driveline: bool,
    /// About what is heard at idle: no next check where a vibration on the road is complained of.
    #[serde(default)]
    pub at_idle: bool,
    /// Done at both ends of a shaft that nothing holds between them.
    #[serde(default)]
    pub both_ends: bool,
    /// The pair of steps with which it shares a screen; names the texts `pair-ID`, `pair-ID-watch`, `pair-ID-do`.
    #[serde(default)]
    pub pair: Option<String>,
    /// One of the looks that can be said to be sound at once.
    #[serde(default)]
    pub sound_together: bool,
    /// Done once at each support of the shaft.
    #[serde(default)]
    pub each_support: bool,
    /// The support it is done at, from 2 on, where it is the copy of a row for a further support; 0 otherwise.
    #[serde(skip)]
    pub support_number: u8,
    /// Records how warm the housing was.
    #[serde(default)]
    pub asks_temperature: bool,
    /// Asks whether the shaft is free of what turns with it: the engine, or wheels and final drive.
    #[serde(default)]
    pub asks_free: bool,
    /// Asks how warm the engine was.
    #[serde(default)]
    pub asks_engine: bool,
    /// Asks where along the car a noise was loudest, once one is heard.
    #[serde(default)]
    pub asks_heard_at: bool,
    /// A step it replaces.
    #[serde(default)]
    pub formerly: Option<Former>,
    /// Something to go and check; false for what is only noted when it happens.
    #[serde(default = "yes")]
    pub recommended: bool,
    /// A photo, or a reason for none, belongs to it.
    #[serde(default = "yes")]
    pub pictured: bool,
    /// Usual working time, minutes.
    pub minutes: f64,
    /// Cost of the risk in doing it, 0 to 1.
    pub hazard: f64,
    /// Where the figures in its words come from, for whoever asks at the car.
    #[serde(default)]
    pub figures: String,
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

fn yes() -> bool {
    true
}

fn one() -> u8 {
    1
}

impl StepRow {
    /// Whether it belongs to the hands-on check as somebody does it: what decides, and the look at what holds the shaft.
    pub fn is_hands_on_check(&self) -> bool {
        self.hands_on || self.limits && self.form == Form::AnyOf
    }

    /// The answer that stands alone and says that nothing was found, where several can be given.
    pub fn sound(&self) -> Option<&str> {
        let sound = |row: &&AnswerRow| row.lone && row.offered && row.reads == Reads::Clear;
        self.answers.iter().find(sound).map(|row| row.id.as_str()).filter(|_| self.form == Form::AnyOf)
    }

    /// What a choice means to the rules; `None` for an answer this step does not have.
    pub fn reads(&self, choice: &str) -> Option<Reads> {
        self.answers.iter().find(|row| row.id == choice).map(|row| row.reads)
    }
}

/// One row of `gates.toml`.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct GateRow {
    /// Stands in ledgers; names the text `gate-ID`.
    pub id: String,
    /// Its set: `running`, `creep` or `lift`.
    pub set: String,
    /// Other sets that it stands before as well; gone on to from its own, it is not asked for again.
    #[serde(default)]
    pub also_in: Vec<String>,
    /// Gearboxes it applies to; empty: all. An unknown gearbox keeps the gate.
    #[serde(default)]
    pub gearboxes: Vec<Gearbox>,
    /// What holds the car up that it is about; empty: whatever does.
    #[serde(default)]
    pub lifts: Vec<LiftKind>,
    /// Where the figures in its words come from, for whoever asks at the car.
    #[serde(default)]
    pub figures: String,
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

/// How long confirmed gates hold.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct GatesHold {
    /// Minutes without a gate confirmed or a step answered, after which nobody knows what happened at the car.
    pub away_minutes: u32,
    /// Minutes from the first gate on, however much was done since.
    pub longest_minutes: u32,
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

impl Default for GatesHold {
    /// Where the files say nothing: as those of this program do.
    fn default() -> Self {
        Self { away_minutes: 120, longest_minutes: 480, basis: "common practice, no source".to_owned() }
    }
}

/// One row of `complaints.toml`.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SoundRow {
    /// Stands in intakes; names the text `sound-ID`.
    pub id: String,
    /// Look from beneath before any revving.
    pub under_car_first: bool,
    /// Noticed on the road rather than at idle.
    #[serde(default)]
    pub on_the_road: bool,
    /// Beginnings of words that say so, lower case.
    pub words: Vec<String>,
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

/// One row of `waivers.toml`.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WaiverRow {
    /// Stands in ledgers; names the text `waiver-ID`.
    pub id: String,
    /// Whether a screen offers it.
    #[serde(default = "yes")]
    pub offered: bool,
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

/// One row of `causes.toml`.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CauseRow {
    /// Stands in opinions and outcomes; names the texts `cause-ID` and `cause-ID-about`.
    pub id: String,
    /// Name, in a workshop's own file; shipped causes are named in `text/`.
    #[serde(default)]
    pub name: Option<String>,
    /// Layouts a workshop's own cause is added to; a layout lists the shipped ones itself.
    #[serde(default)]
    pub layouts: Vec<String>,
    /// The bearing or everything else: ratings rest on the group as a whole.
    pub group: CauseGroup,
    /// Gearboxes it exists with; empty: all. An unknown gearbox keeps it.
    #[serde(default)]
    pub gearboxes: Vec<Gearbox>,
    /// Probability before any check, between 0 and 1, both excluded.
    pub prior: f64,
    /// What makes it more or less probable beforehand on some cars.
    #[serde(default)]
    pub shifts: Vec<PriorShift>,
    /// Cars' worth of experience behind it.
    pub weight: f64,
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

/// Cars on which a cause is more or less probable beforehand; every condition that is named has to hold.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PriorShift {
    /// Layouts; empty: all.
    #[serde(default)]
    pub layouts: Vec<String>,
    /// Seats; empty: all, known or not.
    #[serde(default)]
    pub seats: Vec<Seat>,
    /// Cars that have run at least so many kilometres.
    #[serde(default)]
    pub from_km: Option<f64>,
    /// Cars whose owner notices any of these sounds; empty: all.
    #[serde(default)]
    pub sounds: Vec<String>,
    /// What brings the car in; empty: all.
    #[serde(default)]
    pub occasions: Vec<Occasion>,
    /// What the odds are multiplied by.
    pub odds: f64,
    /// A published source, or that it is judgement.
    pub basis: String,
}

/// One row of `signs.toml`.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SignRow {
    /// Stands in outcomes, which teach its numbers.
    pub id: String,
    /// Steps that decide it.
    pub steps: Vec<String>,
    /// Supports it applies to; empty: all.
    #[serde(default)]
    pub supports: Vec<Support>,
    /// Its steps are done once at each support.
    #[serde(skip)]
    pub each_support: bool,
    /// For a reading: how it is turned into a likelihood.
    #[serde(default)]
    pub reading: Option<ReadingSign>,
    /// Answers that say it is present.
    #[serde(default)]
    pub present: Vec<String>,
    /// Answers that say it is absent.
    #[serde(default)]
    pub absent: Vec<String>,
    /// Only that it is seen says something: a look that finds it not there says nothing.
    #[serde(default)]
    pub absent_is_silent: bool,
    /// Answers that do not decide it, with their likelihoods.
    #[serde(default)]
    pub soft: Vec<SoftAnswer>,
    /// What "not there" weighs where it was felt cold.
    #[serde(default)]
    pub cold: Option<Cold>,
    /// Probability of the sign without any linked cause.
    pub leak: f64,
    /// Cars' worth of experience behind each number.
    pub weight: f64,
    /// The causes that bring it about.
    pub links: Vec<Link>,
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

/// How a reading becomes a likelihood.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum ReadingSign {
    /// How far the reading is below the maker's range.
    BelowRange,
    /// How far it is above.
    AboveRange,
}

/// An answer with its likelihood when the sign is present and when it is absent.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SoftAnswer {
    /// Of one of the sign's steps.
    pub answer: String,
    /// P(answer | sign present).
    pub present: f64,
    /// P(answer | sign absent).
    pub absent: f64,
}

/// The likelihoods of "not there" felt on a cold housing.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Cold {
    /// P(not there when felt cold | sign present).
    pub present: f64,
    /// P(not there when felt cold | sign absent).
    pub absent: f64,
    /// A published source, or that they are judgement.
    pub basis: String,
}

/// A cause that brings a sign about.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Link {
    /// By its id.
    pub cause: String,
    /// Probability that it alone brings the sign about.
    pub p: f64,
    /// Shaft speed it needs: a shaft that stands still makes no noise.
    #[serde(default)]
    pub speed: Option<Speed>,
    /// Where the number comes from, where the sign's own basis does not say it.
    #[serde(default)]
    pub basis: Option<String>,
}

impl SignRow {
    /// Its steps on a shaft with so many supports.
    pub fn steps_at(&self, supports: u8) -> Vec<String> {
        self.asked_at(supports).map(|(number, step)| ids::at_support(step, number)).collect()
    }

    /// The same, each as the number of its support and the step there.
    pub fn asked_at(&self, supports: u8) -> impl Iterator<Item = (u8, &str)> {
        let last = if self.each_support { supports.max(1) } else { 1 };
        (1..=last).flat_map(|number| self.steps.iter().map(move |step| (number, step.as_str())))
    }
}

/// `rules.toml`: the version of the rules and the numbers they and the sorting turn on.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RuleNumbers {
    /// The version of the rules that these files go with.
    pub version: u32,
    /// Thresholds by id; a missing one is refused when the files are read.
    #[serde(rename = "number")]
    pub numbers: Vec<NumberRow>,
    /// Where each rule comes from; the first rules did not say.
    #[serde(default, rename = "rule")]
    pub rules: Vec<RuleRow>,
}

/// Where a rule comes from.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RuleRow {
    /// As in `model/rules.rs`.
    pub id: String,
    /// Ids of the numbers it turns on.
    #[serde(default)]
    pub numbers: Vec<String>,
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

/// A number that a rule or the sorting turns on.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct NumberRow {
    /// What code asks for it by.
    pub id: String,
    /// In `unit`.
    pub value: f64,
    /// Empty for a probability.
    #[serde(default)]
    pub unit: String,
    /// What turns on it.
    pub about: String,
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

/// One row of `road.toml`.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RoadDataRow {
    /// Names the text `road-ID`.
    pub id: String,
    /// The UK inspection manual's number of the defect.
    pub uk: String,
    /// Item of the EU directive; empty where it has none.
    pub eu: String,
    /// Answers that fall under it.
    pub when: Vec<StepAnswers>,
    /// A published source, or `common practice, no source`.
    pub basis: String,
}

impl RoadDataRow {
    /// Without what only the data needs.
    pub fn shown(&self) -> RoadRow {
        RoadRow { id: self.id.clone(), uk: self.uk.clone(), eu: self.eu.clone() }
    }
}
