//! The skim plan: how much has to be cut until the cutter has touched all round at every depth measured, pass
//! by pass, and what wall that leaves.
//!
//! The cut is a cylinder parallel to the datum axis. About the datum its radius is that of the farthest point;
//! about a free axis it is the radius of the smallest circle that holds the points of every depth. A sleeve needs room
//! of its own: where its bore is given the cut goes on to it, and the wall is what that leaves. Practice of skimming in passes of a thousandth of an inch until the cutter cleans up: common practice, no source.

use crate::model::bore::{
    BoreKind, BoreNote, BoreReadings, SkimAsk, SkimAxis, SkimPass, SkimPlan, SkimVerdict, SleeveCut,
    TouchedDepth,
};

use super::arcs::{RingPoint, TOUCH, share, touched, unread};
use super::check::check;
use super::circle::{Point, algebraic, direction, distance};
use super::doubt::{COVERAGE, Doubt, form, size};
use super::enclosing;
use super::fault::{BoreFault, BoreRefusal};
use super::notes::{note, tenth};
use super::profile::{Profile, angle_from, profile, radius_share};
use super::shape::shape;

/// A pass deeper than this, in mm on the diameter, is roughing and no skim.
const DEEPEST_PASS_MM: f64 = 2.0;
/// More passes than anybody would take.
const MOST_PASSES: f64 = 400.0;
/// The wall allows so many times the passes to allow for, and so many more: nobody needs to be told where to stop.
const AMPLE: [f64; 2] = [3.0, 20.0];
/// A wall is taken with a calliper within this, either way, in mm, where nobody says how: common practice, no source.
pub const WALL_ERROR_MM: f64 = 0.1;
/// A datum farther from the bore's centre than this part of the radius is no axis of the bore.
const DATUM_WITHIN: f64 = 0.25;

/// Plans the skim.
///
/// # Errors
/// Readings that [`check`] refuses; a three-point gauge, which cannot see an oval; a datum axis where the
/// readings know none; a free axis where only a part was read; a pass, wall or sleeve's bore that cannot be.
pub fn skim(readings: &BoreReadings, ask: &SkimAsk) -> Result<SkimPlan, BoreFault> {
    check(readings).map_err(|(why, _)| why)?;
    let wall = checked_wall(readings, ask)?;
    let axis = chosen_axis(readings, ask)?;
    let profiles: Vec<Profile> = readings.levels.iter().map(|level| profile(readings, level)).collect();
    let cut = Cut::about(&profiles, axis)?;
    let rings = rings(&profiles, cut.centre);
    let whole = rings.iter().all(|(_, ring)| unread(ring).is_empty());
    // The smallest circle that holds an arc is no bore.
    if axis == SkimAxis::Free && !whole && readings.kind != BoreKind::TwoPoint {
        return Err(BoreRefusal::ReadInPart.into());
    }
    let plan = Plan { readings, ask, wall, axis, cut: &cut, rings, whole };
    plan.write()
}

fn checked_wall(readings: &BoreReadings, ask: &SkimAsk) -> Result<Option<f64>, BoreRefusal> {
    if !(ask.pass_diameter_mm > 0.0 && ask.pass_diameter_mm <= DEEPEST_PASS_MM) {
        return Err(BoreRefusal::PassDepth);
    }
    let wall = ask.wall_mm.or(readings.wall_mm);
    if ask.sleeve_bore_mm.is_some_and(|bore| !(bore > 0.0 && bore.is_finite())) {
        return Err(BoreRefusal::SizeImplausible);
    }
    if [wall, ask.wall_min_mm, ask.wall_error_mm]
        .into_iter()
        .flatten()
        .any(|wall| !wall.is_finite() || wall < 0.0)
    {
        return Err(BoreRefusal::WallNegative);
    }
    if ask.wall_min_mm.is_some() && wall.is_none() {
        return Err(BoreRefusal::WallMissing);
    }
    Ok(wall)
}

fn chosen_axis(readings: &BoreReadings, ask: &SkimAsk) -> Result<SkimAxis, BoreRefusal> {
    match (readings.kind, ask.axis) {
        (BoreKind::ThreePoint, _) => Err(BoreRefusal::CannotSeeOval),
        (BoreKind::TwoPoint, Some(SkimAxis::Datum)) => Err(BoreRefusal::NoDatum),
        (BoreKind::TwoPoint, _) => Ok(SkimAxis::Free),
        (BoreKind::Dial | BoreKind::Coordinates, axis) => Ok(axis.unwrap_or(SkimAxis::Datum)),
    }
}

/// The cut about one axis, in mm.
struct Cut {
    centre: Point,
    /// Radius at which the cutter first touches.
    touch: f64,
    /// Radius at which it has touched everywhere.
    clean: f64,
    /// Sum of the squared weights of the readings in the difference of the two.
    squares: f64,
}

impl Cut {
    fn about(profiles: &[Profile], axis: SkimAxis) -> Result<Self, BoreRefusal> {
        let points: Vec<Point> = profiles.iter().flat_map(Profile::bare).collect();
        let (middle, radius) = algebraic(&points).ok_or(BoreRefusal::NotRound)?;
        let seen = profiles.iter().all(Profile::sees_centre);
        let centre = match axis {
            SkimAxis::Datum if distance([0.0, 0.0], middle) > DATUM_WITHIN * radius => {
                return Err(BoreRefusal::NoDatum);
            }
            SkimAxis::Free if seen => enclosing::smallest(&points).ok_or(BoreRefusal::Empty)?.0,
            SkimAxis::Datum | SkimAxis::Free => [0.0, 0.0],
        };
        let (touch, clean) = reach(&points, centre);
        let fixed = axis == SkimAxis::Datum || !seen;
        let squares = if fixed { 2.0 } else { sensitivity(&points, centre, touch, clean) };
        Ok(Self { centre, touch, clean, squares })
    }
}

fn reach(points: &[Point], centre: Point) -> (f64, f64) {
    let distances = points.iter().map(|point| distance(centre, *point));
    distances.fold((f64::INFINITY, 0.0), |(least, most), it| (least.min(it), most.max(it)))
}

/// Squared weights of the readings in the cut about a free axis, which follows them: each reading that touches
/// is moved a little out and in, and the cut found anew (GUM 5.1.3, note 2).
fn sensitivity(points: &[Point], centre: Point, touch: f64, clean: f64) -> f64 {
    const STEP: f64 = 1e-6;
    let near = |point: &Point| {
        let it = distance(centre, *point);
        it >= clean - 1e-8 || it <= touch + 1e-8
    };
    let moved = |at: usize, by: f64| {
        let mut points = points.to_vec();
        if let Some(point) = points.get_mut(at) {
            let [cos, sin] = direction(centre, *point);
            *point = [point[0] + by * cos, point[1] + by * sin];
        }
        let (touch, clean) = reach(&points, enclosing::smallest(&points).map_or(centre, |circle| circle.0));
        clean - touch
    };
    let touching = points.iter().enumerate().filter(|(_, point)| near(point));
    touching.map(|(at, _)| ((moved(at, STEP) - moved(at, -STEP)) / (2.0 * STEP)).powi(2)).sum()
}

/// Each depth as a ring about the axis of the cut.
fn rings(profiles: &[Profile], centre: Point) -> Vec<(f64, Vec<RingPoint>)> {
    let ring = |profile: &Profile| {
        let seen = |point: &Point| RingPoint {
            angle_deg: angle_from(centre, *point).to_degrees(),
            distance: distance(centre, *point),
        };
        let mut ring: Vec<RingPoint> = profile.bare().iter().map(seen).collect();
        ring.sort_by(|a, b| a.angle_deg.total_cmp(&b.angle_deg));
        (profile.depth_mm, ring)
    };
    profiles.iter().map(ring).collect()
}

struct Plan<'a> {
    readings: &'a BoreReadings,
    ask: &'a SkimAsk,
    wall: Option<f64>,
    axis: SkimAxis,
    cut: &'a Cut,
    rings: Vec<(f64, Vec<RingPoint>)>,
    /// Every depth was read all round.
    whole: bool,
}

impl Plan<'_> {
    fn write(&self) -> Result<SkimPlan, BoreFault> {
        let doubt = Doubt::of(&self.readings.instrument);
        let share = radius_share(self.readings.kind);
        let cut = self.cut.clean - self.cut.touch;
        let standard = share * doubt.form(self.cut.squares);
        let needed = self.passes_for(cut);
        let allowed = self.passes_for(cut + COVERAGE * standard);
        if allowed > MOST_PASSES {
            return Err(BoreRefusal::TooManyPasses.into());
        }
        let doubtful = (COVERAGE * standard).hypot(self.wall_doubt());
        let sleeve = self.sleeve(cut + COVERAGE * standard);
        let passes: Vec<SkimPass> = (1..=needed as usize).map(|number| self.pass(number, doubtful)).collect();
        let (verdict, last_safe_pass) = self.verdict(&passes, sleeve.as_ref(), doubtful);
        let seen = self.readings.kind != BoreKind::TwoPoint;
        let mut plan = SkimPlan {
            axis: self.axis,
            centre_mm: seen.then_some(self.cut.centre),
            clockwise: self.readings.clockwise,
            shift_um: seen.then(|| distance([0.0, 0.0], self.cut.centre) * 1000.0),
            pass_diameter_mm: self.ask.pass_diameter_mm,
            touch_diameter_mm: self.size_known().then_some(2.0 * self.cut.touch),
            cut: form(cut, standard),
            clean_diameter: self
                .size_known()
                .then(|| size(2.0 * self.cut.clean, 2.0 * share * doubt.reading())),
            passes_needed: needed as usize,
            passes_to_allow: allowed as usize,
            passes,
            at_least: !seen || !self.whole,
            sleeve,
            verdict,
            last_safe_pass,
            notes: Vec::new(),
        };
        plan.notes = self.notes(&plan)?;
        Ok(plan)
    }

    fn size_known(&self) -> bool {
        self.readings.zero_diameter_mm.is_none() || self.readings.zero_was_set
    }

    /// Whole passes for a cut on the radius; one at least, since a cutter that touches cuts.
    fn passes_for(&self, cut: f64) -> f64 {
        (2.0 * (cut - TOUCH) / self.ask.pass_diameter_mm).ceil().max(1.0)
    }

    fn pass(&self, number: usize, doubtful: f64) -> SkimPass {
        let cut = number as f64 * self.ask.pass_diameter_mm / 2.0;
        let reach = self.cut.touch + cut;
        let depth = |(depth_mm, ring): &(f64, Vec<RingPoint>)| TouchedDepth {
            depth_mm: *depth_mm,
            arcs_deg: touched(ring, reach),
            unread_deg: unread(ring),
        };
        let touched: Vec<TouchedDepth> = self.rings.iter().map(depth).collect();
        let wall_left = self.wall.map(|wall| wall - cut);
        let least = self.ask.wall_min_mm;
        SkimPass {
            number,
            cut_um: cut * 1000.0,
            diameter_mm: self.size_known().then_some(2.0 * reach),
            touched_share: touched.iter().map(|it| share(&it.arcs_deg)).sum::<f64>() / touched.len() as f64,
            clean: self.whole && reach + TOUCH >= self.cut.clean,
            wall_left_mm: wall_left,
            wall_enough: wall_left.zip(least).map(|(left, least)| left - doubtful >= least),
            touched,
        }
    }

    /// Expanded uncertainty of the wall, mm: its error may lie anywhere within its limits.
    fn wall_doubt(&self) -> f64 {
        if self.wall.is_none() {
            return 0.0;
        }
        let error = self.ask.wall_error_mm.or(self.readings.wall_error_mm).unwrap_or(WALL_ERROR_MM);
        COVERAGE * error / 3.0_f64.sqrt()
    }

    /// The cut for the sleeve, where its bore is given and the size of this one is known. `clean` is the cut that
    /// surely cleans up.
    fn sleeve(&self, clean: f64) -> Option<SleeveCut> {
        let bore_mm = self.ask.sleeve_bore_mm.filter(|_| self.size_known())?;
        let cut_mm = bore_mm / 2.0 - self.cut.touch;
        let wall_left_mm = self.wall.map(|wall| wall - cut_mm.max(clean));
        Some(SleeveCut { bore_mm, cut_mm, cleans_up: self.whole && cut_mm + TOUCH >= clean, wall_left_mm })
    }

    /// The wall after the pass that cleans up and after the sleeve's cut, against the least asked for.
    fn verdict(
        &self,
        passes: &[SkimPass],
        sleeve: Option<&SleeveCut>,
        doubtful: f64,
    ) -> (SkimVerdict, Option<usize>) {
        let cleaned = passes.last().and_then(|pass| pass.wall_left_mm);
        let left = sleeve.and_then(|sleeve| sleeve.wall_left_mm).into_iter().chain(cleaned).reduce(f64::min);
        let (Some(wall), Some(left), Some(least)) = (self.wall, left, self.ask.wall_min_mm) else {
            let gone = left.is_some_and(|left| left - doubtful <= 0.0);
            let open = if self.whole { SkimVerdict::WallUnknown } else { SkimVerdict::ReadInPart };
            return (if gone { SkimVerdict::Scrap } else { open }, None);
        };
        let room = (2.0 * (wall - doubtful - least + TOUCH) / self.ask.pass_diameter_mm).floor().max(0.0);
        let verdict = if left <= 0.0 || left + doubtful < least {
            SkimVerdict::Scrap
        } else if !self.whole {
            SkimVerdict::ReadInPart
        } else if left - doubtful < least {
            SkimVerdict::WallUndecided
        } else {
            SkimVerdict::Skim
        };
        (verdict, Some(room as usize))
    }

    fn notes(&self, plan: &SkimPlan) -> Result<Vec<BoreNote>, BoreFault> {
        let safe = plan.last_safe_pass.unwrap_or_default() as f64;
        let args =
            [("passes", plan.passes_needed as f64), ("allow", plan.passes_to_allow as f64), ("safe", safe)];
        let id = match plan.verdict {
            // A pass that nobody comes near is no place to stop at; nor is a wall enough before the sleeve has its room.
            SkimVerdict::Skim => match (plan.sleeve.is_some(), ample(safe, plan.passes_to_allow as f64)) {
                (true, true) => "skim-verdict-skim-ample",
                (true, false) => "skim-verdict-skim",
                (false, true) => "skim-verdict-before-sleeve-ample",
                (false, false) => "skim-verdict-before-sleeve",
            },
            SkimVerdict::WallUnknown => "skim-verdict-wall-unknown",
            SkimVerdict::WallUndecided => "skim-verdict-wall-undecided",
            SkimVerdict::Scrap => "skim-verdict-scrap",
            SkimVerdict::ReadInPart => "skim-verdict-read-in-part",
        };
        let mut notes = vec![note(id, &args)];
        if plan.shift_um.is_none() {
            notes.push(note("skim-at-least", &[]));
        }
        notes.push(sleeve_note(plan.sleeve.as_ref()));
        match (plan.shift_um, self.axis) {
            (Some(shift), SkimAxis::Free) => notes.push(note("skim-axis-moves", &[("shift", tenth(shift))])),
            (None, _) => notes.push(note("skim-axis-unseen", &[])),
            (Some(_), SkimAxis::Datum) => {}
        }
        let said = shape(self.readings)?.notes;
        if said.iter().any(|note| note.id == "bore-flagged") {
            notes.push(note("skim-flagged", &[]));
        }
        notes.extend(said.into_iter().filter(|note| note.id == "bore-flagged"));
        if !self.size_known() {
            notes.push(note("skim-size-unknown", &[]));
        }
        notes.push(note("skim-between", &[]));
        notes.push(note("skim-caution", &[]));
        Ok(notes)
    }
}

/// What room the sleeve takes.
fn sleeve_note(sleeve: Option<&SleeveCut>) -> BoreNote {
    let Some(sleeve) = sleeve else { return note("skim-sleeve-unknown", &[]) };
    let (bore, cut) = (("bore", sleeve.bore_mm), ("cut", sleeve.cut_mm));
    if !sleeve.cleans_up {
        return note("skim-sleeve-too-small", &[bore]);
    }
    match sleeve.wall_left_mm {
        Some(wall) => note("skim-sleeve-wall", &[bore, cut, ("wall", wall)]),
        None => note("skim-sleeve-cut", &[bore, cut]),
    }
}

fn ample(safe: f64, allow: f64) -> bool {
    let [times, more] = AMPLE;
    safe >= times * allow && safe >= allow + more
}
