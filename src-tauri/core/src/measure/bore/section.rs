//! One cross-section: mean size, oval, out-of-roundness by least squares and by minimum zone, lobes.
//!
//! The narrowest ring about some of a wall's points is no wider than about all of them, so where a part was not read
//! it still says how much out of round the bore is at the least. That holds while the points stand round the centre:
//! past half a turn unread in one piece a centre far outside could make the ring narrower still, and nothing is said.

use crate::model::bore::{BoreCircles, BoreReadings, BoreSection, CircleMm, Lobe, SizeMm};

use super::circle::{Fit, Point, direction, distance, least_squares};
use super::coverage::{unread_arcs, widest};
use super::doubt::{COVERAGE, Doubt, form, mean_range, size};
use super::fault::BoreRefusal;
use super::harmonics::{MOST, Waves, fit};
use super::outliers::flagged;
use super::plot::{Circles, plot};
use super::profile::{Profile, angle_from, radius_share};
use super::solve::dot;
use super::zone::{Zone, minimum};

/// With so much unread in one piece the points do not stand round any centre, in degrees.
const HALF_TURN_DEG: f64 = 180.0;

/// The shape of a cross-section.
///
/// # Errors
/// [`BoreRefusal::NotRound`] where no circle passes near the points.
pub fn section(readings: &BoreReadings, profile: &Profile) -> Result<BoreSection, BoreRefusal> {
    let doubt = Doubt::of(&readings.instrument);
    if profile.sees_centre() {
        from_points(readings, profile, &doubt)
    } else {
        from_diameters(readings, profile, &doubt)
    }
}

/// From points whose centre is seen.
fn from_points(
    readings: &BoreReadings,
    profile: &Profile,
    doubt: &Doubt,
) -> Result<BoreSection, BoreRefusal> {
    let points = profile.bare();
    let fit = least_squares(&points).ok_or(BoreRefusal::NotRound)?;
    let zone = minimum(&points, fit.centre).ok_or(BoreRefusal::NotRound)?;
    let (angles, distances) = profile.polar(fit.centre);
    let deviations: Vec<f64> = distances.iter().map(|distance| distance - fit.radius).collect();
    let (spread, squares) = range(&points, &fit, &deviations);
    let weights: f64 = zone.contacts.iter().map(|contact| contact.weight.powi(2)).sum();
    let variance = fit.spread.get(2).and_then(|row| row.get(2)).copied().unwrap_or(1.0);
    let known = readings.zero_diameter_mm.is_none() || readings.zero_was_set;
    let shaped = Shaped {
        mean: known.then(|| size(2.0 * fit.radius, 2.0 * doubt.fitted(variance))),
        least_squares: (spread, squares),
        zone: (zone.width(), weights),
        circles: Circles {
            centre: fit.centre,
            radius: fit.radius,
            zone_centre: zone.centre,
            zone: [zone.outer, zone.inner],
        },
        drawn: Some(circles(&points, &fit, &zone, doubt)),
    };
    shaped.section(readings, profile, doubt, &angles, &deviations)
}

/// Range of the deviations about the least-squares circle, and the sum of its squared weights: each of the two
/// readings for itself, less what the circle follows.
fn range(points: &[Point], fit: &Fit, deviations: &[f64]) -> (f64, f64) {
    let ends = |a: &(&f64, &Point), b: &(&f64, &Point)| a.0.total_cmp(b.0);
    let both = deviations.iter().zip(points);
    let (Some(high), Some(low)) = (both.clone().max_by(ends), both.min_by(ends)) else { return (0.0, 0.0) };
    let row = |point: &Point| {
        let [cos, sin] = direction(fit.centre, *point);
        [cos, sin, 1.0]
    };
    let (a, b) = (row(high.1), row(low.1));
    let apart = [a[0] - b[0], a[1] - b[1], 0.0];
    let followed: f64 = fit.spread.iter().zip(&apart).map(|(row, share)| share * dot(row, &apart)).sum();
    (high.0 - low.0, 2.0 - followed)
}

fn circles(points: &[Point], fit: &Fit, zone: &Zone, doubt: &Doubt) -> BoreCircles {
    let circle = |centre: Point, radius_mm: f64| CircleMm { x_mm: centre[0], y_mm: centre[1], radius_mm };
    let contacts = |outer: bool| {
        let touching = zone.contacts.iter().filter(|contact| contact.outer == outer);
        let places = touching.filter_map(|contact| points.get(contact.point));
        places.map(|point| angle_from(zone.centre, *point).to_degrees()).collect()
    };
    let variance = |axis: usize| fit.spread.get(axis).and_then(|row| row.get(axis)).copied().unwrap_or(1.0);
    let expanded_um = |axis: usize| COVERAGE * doubt.form(variance(axis)) * 1000.0;
    BoreCircles {
        least_squares: circle(fit.centre, fit.radius),
        centre_expanded_um: [expanded_um(0), expanded_um(1)],
        zone_outer: circle(zone.centre, zone.outer),
        zone_inner: circle(zone.centre, zone.inner),
        outer_contacts_deg: contacts(true),
        inner_contacts_deg: contacts(false),
        proven_within_um: zone.proven_within * 1000.0,
    }
}

/// From diameters: the gauge's own middle is the centre, and both ways of judging roundness come to the same.
fn from_diameters(
    readings: &BoreReadings,
    profile: &Profile,
    doubt: &Doubt,
) -> Result<BoreSection, BoreRefusal> {
    let centre = [0.0, 0.0];
    let (angles, radii) = profile.polar(centre);
    let count = radii.len() as f64;
    let mean = radii.iter().sum::<f64>() / count;
    let (least, most) =
        (radii.iter().copied().fold(f64::INFINITY, f64::min), radii.iter().copied().fold(0.0, f64::max));
    let deviations: Vec<f64> = radii.iter().map(|radius| radius - mean).collect();
    let shaped = Shaped {
        mean: Some(size(2.0 * mean, doubt.mean(1.0 / count))),
        least_squares: (most - least, 2.0),
        zone: (most - least, 2.0),
        circles: Circles { centre, radius: mean, zone_centre: centre, zone: [most, least] },
        drawn: None,
    };
    shaped.section(readings, profile, doubt, &angles, &deviations)
}

/// What the two ways share. Pairs are a value in mm and the sum of its squared weights.
struct Shaped {
    mean: Option<SizeMm>,
    least_squares: (f64, f64),
    zone: (f64, f64),
    circles: Circles,
    drawn: Option<BoreCircles>,
}

impl Shaped {
    fn section(
        self,
        readings: &BoreReadings,
        profile: &Profile,
        doubt: &Doubt,
        angles: &[f64],
        deviations: &[f64],
    ) -> Result<BoreSection, BoreRefusal> {
        let share = radius_share(readings.kind);
        let waves = fit(angles, deviations, profile.fold, MOST).ok_or(BoreRefusal::NotRound)?;
        let roundness = |(value, squares): (f64, f64)| form(value, share * doubt.form(squares));
        let several = deviations.len() > 1;
        let unread_deg = unread(profile, &self.circles);
        let whole = unread_deg.is_empty();
        let surrounded = widest(&unread_deg) < HALF_TURN_DEG;
        let lobes = if whole { lobes(&waves, share * doubt.reading()) } else { Vec::new() };
        let flags = flagged(angles, deviations, profile.fold, share * doubt.reading());
        Ok(BoreSection {
            depth_mm: profile.depth_mm,
            readings: deviations.len(),
            unread_deg,
            mean_diameter: self.mean,
            // Greatest less smallest diameter: twice the peak to valley of the radius.
            ovality: waves
                .numbered(2)
                .filter(|_| whole)
                .map(|wave| form(4.0 * wave.amplitude, 4.0 * share * doubt.form(wave.variance))),
            out_of_roundness_least_squares: (several && whole).then(|| roundness(self.least_squares)),
            out_of_roundness_minimum_zone: (several && surrounded).then(|| roundness(self.zone)),
            at_least: profile.fold > 1 || !whole,
            floor_um: mean_range(deviations.len()) * share * doubt.reading() * 1000.0,
            lobes,
            most_lobes: if whole { waves.fold * waves.pairs() } else { 0 },
            circles: self.drawn,
            plot: plot(profile, &self.circles, &flags, readings.clockwise),
        })
    }
}

/// Arcs of the drawn circle that no point stands for.
fn unread(profile: &Profile, circles: &Circles) -> Vec<[f64; 2]> {
    let angle = |point: &super::profile::ProfilePoint| angle_from(circles.centre, point.at).to_degrees();
    let mut angles: Vec<f64> = profile.points.iter().map(angle).collect();
    angles.sort_by(f64::total_cmp);
    unread_arcs(&angles)
}

fn lobes(waves: &Waves, standard: f64) -> Vec<Lobe> {
    let waves = waves.waves().into_iter().filter(|wave| wave.number > 1);
    let lobe = |wave: super::harmonics::Wave| Lobe {
        lobes: wave.number,
        amplitude: form(wave.amplitude, standard * wave.variance.sqrt()),
        widest_deg: wave.crest.to_degrees(),
    };
    waves.map(lobe).collect()
}

/// How far the centres of two sections are apart, mm, and the variance of that for readings of variance 1.
pub fn drift(first: &Fit, last: &Fit) -> (f64, f64) {
    let [cos, sin] = direction(first.centre, last.centre);
    let along = |fit: &Fit| {
        let way = [cos, sin, 0.0];
        fit.spread.iter().zip(&way).map(|(row, share)| share * dot(row, &way)).sum::<f64>()
    };
    (distance(first.centre, last.centre), along(first) + along(last))
}
