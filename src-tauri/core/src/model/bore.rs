//! A bore as it was read, as it is shaped, and as it would be skimmed: what the screens draw.
//!
//! Lengths are in mm or um as the names say, angles in degrees from the mark on the housing, counted the way
//! the readings count them. How the numbers come about is in `measure/bore`.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

/// How a bore was read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum BoreKind {
    /// Diameters between two opposite contacts.
    TwoPoint,
    /// Diameters by three contacts at 120 degrees that move out together.
    ThreePoint,
    /// A dial swept round a turntable: deviations of the radius.
    Dial,
    /// Points with coordinates x and y in a frame whose origin is the datum axis.
    Coordinates,
}

/// The instrument, as far as the uncertainty needs it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct BoreInstrument {
    /// Smallest step it shows.
    pub resolution_mm: f64,
    /// Maximum permissible error of a reading, setting included.
    pub mpe_mm: f64,
    /// Standard deviation of repeated readings of one spot; 0 where it was not tried.
    #[serde(default)]
    pub repeatability_mm: f64,
}

/// One reading. A diameter, a dial's reading turned so that more is wider, or a point.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(untagged, deny_unknown_fields)]
pub enum BoreReading {
    /// A diameter, or a deviation of the radius, at an angle.
    At {
        /// Direction of the reading; of one of the contacts for diameters.
        angle_deg: f64,
        /// What was read.
        value_mm: f64,
    },
    /// A point of the wall.
    Point {
        /// Across.
        x_mm: f64,
        /// Up.
        y_mm: f64,
    },
}

/// The readings at one depth.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct BoreLevel {
    /// Distance from the face.
    pub depth_mm: f64,
    /// In the order they were taken.
    pub readings: Vec<BoreReading>,
}

/// Everything read of one bore.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct BoreReadings {
    /// Way of reading; says what the numbers of a level are.
    pub kind: BoreKind,
    /// With what.
    pub instrument: BoreInstrument,
    /// Diameter at which a dial reads zero; for a dial alone.
    #[serde(default)]
    pub zero_diameter_mm: Option<f64>,
    /// The dial was zeroed against a ring or gauge of that diameter, so that the size is known too.
    #[serde(default)]
    pub zero_was_set: bool,
    /// Angles are counted clockwise, seen from the face that depths start at.
    #[serde(default)]
    pub clockwise: bool,
    /// Thinnest wall round the bore as it is, if it was measured.
    #[serde(default)]
    pub wall_mm: Option<f64>,
    /// How far that may be read off, either way; a calliper's usual error where it is not said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wall_error_mm: Option<f64>,
    /// Width of the seat, from the face inwards: without it nobody knows how much of the seat was read.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seat_width_mm: Option<f64>,
    /// By depth, from the face inwards.
    pub levels: Vec<BoreLevel>,
}

/// A value with its expanded uncertainty, k = 2 (about 95 %).
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct SizeMm {
    /// Millimetres.
    pub value_mm: f64,
    /// Expanded uncertainty, k = 2; in um because it is small.
    pub expanded_um: f64,
}

/// A small value with its expanded uncertainty, k = 2 (about 95 %).
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct FormUm {
    /// Micrometres.
    pub value_um: f64,
    /// Expanded uncertainty, k = 2.
    pub expanded_um: f64,
}

/// Something to say about the readings: the text with this id, filled in with these numbers.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct BoreNote {
    /// Id of the text: `bore-...` or `skim-...`.
    pub id: String,
    /// Numbers the text names.
    pub args: BTreeMap<String, f64>,
}

/// What the readings come to: size, form and taper, each with its uncertainty.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct BoreShape {
    /// How it was read.
    pub kind: BoreKind,
    /// Mean diameter over all depths; none where a dial was never set to a size.
    pub mean_diameter: Option<SizeMm>,
    /// How much wider the deepest section is than the one at the face, by a straight line through the
    /// sections' mean diameters; negative where it narrows. None with a single depth.
    pub taper: Option<FormUm>,
    /// How far the centre wanders from the first to the last depth. None where centres are not seen.
    pub centre_drift: Option<FormUm>,
    /// Greatest ovality of any depth.
    pub greatest_ovality: Option<FormUm>,
    /// Greatest out-of-roundness (minimum zone) of any depth.
    pub greatest_out_of_roundness: Option<FormUm>,
    /// Parts of the seat's width that no ring read all round stands for, from and to in mm from the face. None
    /// where the width is not known.
    pub unread_depths_mm: Option<Vec<[f64; 2]>>,
    /// By depth.
    pub sections: Vec<BoreSection>,
    /// Standard uncertainties of one reading, line by line.
    pub budget: Vec<BudgetLine>,
    /// What the method cannot see, and what was flagged.
    pub notes: Vec<BoreNote>,
}

impl BoreShape {
    /// Every depth was read all round.
    pub fn is_read_round(&self) -> bool {
        self.sections.iter().all(|section| section.unread_deg.is_empty())
    }

    /// Rings read all round stand for the whole width of the seat.
    pub fn is_read_through(&self) -> bool {
        self.unread_depths_mm.as_ref().is_some_and(Vec::is_empty)
    }
}

/// One line of the uncertainty budget of one reading.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct BudgetLine {
    /// Id of the text that names the source and how the number was made: `bore-budget-...`.
    pub id: String,
    /// Standard uncertainty of one reading.
    pub standard_um: f64,
}

/// The shape at one depth.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct BoreSection {
    /// Distance from the face.
    pub depth_mm: f64,
    /// Number of readings.
    pub readings: usize,
    /// Arcs that no reading stands for, from and to, counted up; `to` may pass 360. Empty: read all round.
    pub unread_deg: Vec<[f64; 2]>,
    /// Mean diameter: of the least-squares circle, or the mean of the diameters read; of the part that was read.
    pub mean_diameter: Option<SizeMm>,
    /// Greatest less smallest diameter of the fitted oval; none where an oval cannot be seen.
    pub ovality: Option<FormUm>,
    /// Out-of-roundness about the least-squares circle; none with one angle, or where a part was not read.
    pub out_of_roundness_least_squares: Option<FormUm>,
    /// Out-of-roundness by the minimum zone, the narrowest ring that holds every point; none with one angle, or
    /// where half the ring or more was not read in one piece.
    pub out_of_roundness_minimum_zone: Option<FormUm>,
    /// The method is blind to some shapes, or a part was not read: the real out-of-roundness is at least this.
    pub at_least: bool,
    /// What a perfectly round bore would show on average by the instrument's errors alone; less than this
    /// is nothing found.
    pub floor_um: f64,
    /// Lobes by number, as far as the angles allow.
    pub lobes: Vec<Lobe>,
    /// Most lobes that the number of angles can tell.
    pub most_lobes: usize,
    /// Circles, with their centres in the frame of the readings; none where centres are not seen.
    pub circles: Option<BoreCircles>,
    /// For screen and paper.
    pub plot: PolarPlot,
}

/// One harmonic of the profile.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Lobe {
    /// Number of lobes round the bore: 2 is an oval.
    pub lobes: usize,
    /// Amplitude of the radius, half of peak to valley, with its uncertainty.
    pub amplitude: FormUm,
    /// Direction of the first place where this lobe is widest.
    pub widest_deg: f64,
}

/// The circles of one section.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct BoreCircles {
    /// Gauss: the mean of the ring.
    pub least_squares: CircleMm,
    /// Expanded uncertainty of its centre, k = 2, across and up; it grows without bound as the arc read shrinks.
    pub centre_expanded_um: [f64; 2],
    /// Outer circle of the minimum zone.
    pub zone_outer: CircleMm,
    /// Inner circle of the minimum zone, about the same centre.
    pub zone_inner: CircleMm,
    /// Directions, about the zone's centre, of the points that fix the outer circle.
    pub outer_contacts_deg: Vec<f64>,
    /// The same for the inner circle.
    pub inner_contacts_deg: Vec<f64>,
    /// No centre anywhere inside the points' box gives a zone narrower by more than this.
    pub proven_within_um: f64,
}

/// In the frame of the readings.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct CircleMm {
    /// Centre, across.
    pub x_mm: f64,
    /// Centre, up.
    pub y_mm: f64,
    /// Half the diameter, mm.
    pub radius_mm: f64,
}

/// A polar plot with the deviation magnified: the mean or least-squares circle is the unit circle.
/// Curves are closed by the screen, except where a gap follows; x to the right, y up, angle 0 to the right, and clockwise where the
/// readings count so.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct PolarPlot {
    /// How many times the deviation is drawn larger than the radius.
    pub magnification: f64,
    /// Every point, in order of angle.
    pub points: Vec<PlotPoint>,
    /// The minimum zone's outer circle, drawn the same way; empty where it is not known of the whole ring.
    pub zone_outer: Vec<[f64; 2]>,
    /// Its inner circle.
    pub zone_inner: Vec<[f64; 2]>,
}

impl PolarPlot {
    /// The wall as it was read, in pieces: where a gap follows a piece ends. One piece where it was read all round.
    pub fn pieces(&self) -> Vec<Vec<[f64; 2]>> {
        let after_gap = self.points.iter().position(|point| point.gap_follows).map_or(0, |at| at + 1);
        let turned = self.points.iter().cycle().skip(after_gap).take(self.points.len());
        let mut pieces: Vec<Vec<[f64; 2]>> = vec![Vec::new()];
        for point in turned {
            if let Some(piece) = pieces.last_mut() {
                piece.push(point.at);
            }
            if point.gap_follows {
                pieces.push(Vec::new());
            }
        }
        pieces.retain(|piece| !piece.is_empty());
        pieces
    }

    /// The same plot at another magnification, so that two can be held side by side.
    pub fn magnified(&self, magnification: f64) -> Self {
        let share = magnification / self.magnification;
        let draw = |at: &[f64; 2]| {
            let far = at[0].hypot(at[1]);
            let scale = if far > 0.0 { (1.0 + (far - 1.0) * share) / far } else { 1.0 };
            [at[0] * scale, at[1] * scale]
        };
        Self {
            magnification,
            points: self
                .points
                .iter()
                .map(|point| PlotPoint { at: draw(&point.at), ..point.clone() })
                .collect(),
            zone_outer: self.zone_outer.iter().map(draw).collect(),
            zone_inner: self.zone_inner.iter().map(draw).collect(),
        }
    }
}

/// A reading as drawn.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct PlotPoint {
    /// Direction.
    pub angle_deg: f64,
    /// Deviation of the radius from the unit circle; positive is wider.
    pub deviation_um: f64,
    /// Where it is drawn.
    pub at: [f64; 2],
    /// It does not fit its neighbours: read it again. It was used all the same.
    pub flagged: bool,
    /// Drawn from the reading opposite or a third of a turn away, not read here.
    pub mirrored: bool,
    /// Nothing was read between here and the next point: no wall is drawn there.
    pub gap_follows: bool,
}

/// Which axis the skim is cut about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum SkimAxis {
    /// The datum axis: the origin of the readings.
    Datum,
    /// Parallel to it, wherever the least has to be cut.
    Free,
}

/// What is asked of a skim plan.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct SkimAsk {
    /// Depth of one pass, on the diameter.
    pub pass_diameter_mm: f64,
    /// The axis; none takes the datum where the readings know one, else a free axis.
    #[serde(default)]
    pub axis: Option<SkimAxis>,
    /// Thinnest wall now; none takes the one noted with the readings.
    #[serde(default)]
    pub wall_mm: Option<f64>,
    /// Thinnest wall that may be left.
    #[serde(default)]
    pub wall_min_mm: Option<f64>,
    /// How far the wall may be read off, either way; none takes what is noted with the readings.
    #[serde(default)]
    pub wall_error_mm: Option<f64>,
    /// Bore that the new sleeve is pressed into: the cut goes on to it, and the wall is what that leaves.
    #[serde(default)]
    pub sleeve_bore_mm: Option<f64>,
}

/// A plan to skim a bore clean.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct SkimPlan {
    /// About which the cutter turns.
    pub axis: SkimAxis,
    /// Centre of the cut in the frame of the readings; none where centres are not seen.
    pub centre_mm: Option<[f64; 2]>,
    /// The arcs' angles are counted clockwise, as in the readings.
    pub clockwise: bool,
    /// How far that is from the datum.
    pub shift_um: Option<f64>,
    /// Depth of one pass, on the diameter.
    pub pass_diameter_mm: f64,
    /// Diameter at which the cutter first touches; none where the size is not known.
    pub touch_diameter_mm: Option<f64>,
    /// Smallest cut on the radius, from the first touch, that cleans up all round at every depth measured.
    pub cut: FormUm,
    /// Diameter after exactly that cut; none where the size is not known.
    pub clean_diameter: Option<SizeMm>,
    /// Passes until the cutter has touched all round.
    pub passes_needed: usize,
    /// Passes to allow for when the cut is taken with its uncertainty.
    pub passes_to_allow: usize,
    /// Each pass, the last one clean.
    pub passes: Vec<SkimPass>,
    /// The method is blind to some shapes, or a part was not read: the cut is at least this.
    pub at_least: bool,
    /// The cut for the new sleeve; none where its bore was not given or the size is not known.
    pub sleeve: Option<SleeveCut>,
    /// What follows.
    pub verdict: SkimVerdict,
    /// Last pass that surely leaves the wall asked for; none where no wall is known.
    pub last_safe_pass: Option<usize>,
    /// The verdict's sentence first, then what else is to be known.
    pub notes: Vec<BoreNote>,
}

/// The cut that makes room for a sleeve.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct SleeveCut {
    /// Bore that the sleeve is pressed into.
    pub bore_mm: f64,
    /// Cut on the radius since the first touch, where the most is cut.
    pub cut_mm: f64,
    /// The bore is wide enough to have cleaned up by then, uncertainty included.
    pub cleans_up: bool,
    /// Thinnest wall left then, if the wall is known.
    pub wall_left_mm: Option<f64>,
}

/// A cut of the machine, and what it leaves.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct SkimPass {
    /// Counted from 1.
    pub number: usize,
    /// Cut on the radius since the first touch.
    pub cut_um: f64,
    /// Diameter after it; none where the size is not known.
    pub diameter_mm: Option<f64>,
    /// Share of the ring touched so far, over all depths, 0 to 1.
    pub touched_share: f64,
    /// The cutter has touched all round at every depth, and every depth was read all round.
    pub clean: bool,
    /// Thinnest wall left, if the wall is known: the thinnest wall taken where most is cut.
    pub wall_left_mm: Option<f64>,
    /// The wall left, less its uncertainty, is still the least asked for.
    pub wall_enough: Option<bool>,
    /// What has been touched at each depth.
    pub touched: Vec<TouchedDepth>,
}

/// What the cutter has touched at one depth.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct TouchedDepth {
    /// Distance from the face.
    pub depth_mm: f64,
    /// Arcs about the axis of the cut, from and to, counted up; `to` may pass 360. A whole ring is `[0, 360]`.
    pub arcs_deg: Vec<[f64; 2]>,
    /// Arcs that were not read, the same way: nobody knows what the cutter touches there.
    pub unread_deg: Vec<[f64; 2]>,
}

/// What a skim plan comes to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum SkimVerdict {
    /// It cleans up and the wall left is enough, uncertainty included: for this cut alone where no sleeve is planned.
    Skim,
    /// It cleans up; whether the wall left is enough cannot be said, because no wall or no minimum was given.
    WallUnknown,
    /// It cleans up, but the wall left is within its uncertainty of the minimum.
    WallUndecided,
    /// The wall would be too thin before it cleans up or takes the sleeve: stop and scrap.
    Scrap,
    /// A part of the bore was not read: whether it cleans up there cannot be said.
    ReadInPart,
}
