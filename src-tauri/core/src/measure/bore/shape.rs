//! The whole bore: its sections, mean size, taper, and what cannot be seen.

use crate::model::bore::{BoreReadings, BoreSection, BoreShape, FormUm, SizeMm};

use super::check::check;
use super::circle::least_squares;
use super::coverage::unread_depths;
use super::doubt::{Doubt, form, size};
use super::fault::{BoreFault, BoreRefusal};
use super::notes::notes;
use super::profile::{Profile, profile, radius_share};
use super::section::{drift, section};

/// The shape of a bore.
///
/// # Errors
/// Readings that [`check`] refuses, or that no circle fits.
pub fn shape(readings: &BoreReadings) -> Result<BoreShape, BoreFault> {
    check(readings).map_err(|(why, _)| why)?;
    let profiles: Vec<Profile> = readings.levels.iter().map(|level| profile(readings, level)).collect();
    let sections =
        profiles.iter().map(|profile| section(readings, profile)).collect::<Result<Vec<_>, _>>()?;
    let doubt = Doubt::of(&readings.instrument);
    let greatest = |which: fn(&BoreSection) -> Option<FormUm>| {
        sections.iter().filter_map(which).max_by(|a, b| a.value_um.total_cmp(&b.value_um))
    };
    let unread_depths_mm = unread_depths(readings, &sections);
    Ok(BoreShape {
        kind: readings.kind,
        mean_diameter: mean(readings, &sections, &doubt),
        taper: taper(readings, &sections, &doubt),
        centre_drift: centre_drift(&profiles, &doubt)?,
        greatest_ovality: greatest(|section| section.ovality),
        greatest_out_of_roundness: greatest(|section| section.out_of_roundness_minimum_zone),
        budget: doubt.lines(),
        notes: notes(readings, &sections, unread_depths_mm.as_deref()),
        unread_depths_mm,
        sections,
    })
}

/// Mean of the sections' mean diameters, each by how well it is known: depths that were read alike count alike, and
/// one of which only an arc was read neither spoils the others nor makes them look better known. The instrument's
/// error is shared, so it does not shrink.
fn mean(readings: &BoreReadings, sections: &[BoreSection], doubt: &Doubt) -> Option<SizeMm> {
    let means = sections.iter().map(|section| section.mean_diameter).collect::<Option<Vec<SizeMm>>>()?;
    let on_diameter = 2.0 * radius_share(readings.kind);
    let shared = on_diameter * doubt.mpe;
    let weight = |mean: &SizeMm| 1.0 / (standard(mean).powi(2) - shared * shared).max(LEAST_VARIANCE);
    let known: f64 = means.iter().map(weight).sum();
    let value = means.iter().map(|mean| weight(mean) * mean.value_mm).sum::<f64>() / known;
    Some(size(value, (shared * shared + 1.0 / known).sqrt()))
}

/// No mean is known better than this beside the error that all share: a picometre, squared, in mm.
const LEAST_VARIANCE: f64 = 1e-18;

fn standard(size: &SizeMm) -> f64 {
    size.expanded_um / 1000.0 / super::doubt::COVERAGE
}

/// Least-squares line through mean diameter over depth, times the depth from first to last. Each section's
/// error counts as its own, which is never too small.
///
/// Where the size is not known the dial's zero is the same at every depth, so the taper still is.
fn taper(readings: &BoreReadings, sections: &[BoreSection], doubt: &Doubt) -> Option<FormUm> {
    let (first, last) = (sections.first()?.depth_mm, sections.last()?.depth_mm);
    let count = sections.len() as f64;
    let middle = sections.iter().map(|section| section.depth_mm).sum::<f64>() / count;
    let squares: f64 = sections.iter().map(|section| (section.depth_mm - middle).powi(2)).sum();
    if squares <= 0.0 {
        return None;
    }
    let on_diameter = 2.0 * radius_share(readings.kind);
    let (mut rise, mut variance) = (0.0, 0.0);
    for section in sections {
        let share = (section.depth_mm - middle) / squares * (last - first);
        rise += share * diameter(section);
        let own = section.mean_diameter.as_ref().map_or(on_diameter * doubt.reading(), standard);
        variance += (share * own).powi(2);
    }
    Some(form(rise, variance.sqrt()))
}

/// Mean diameter of a section, about the dial's zero where the size is not known.
fn diameter(section: &BoreSection) -> f64 {
    let fitted = section.circles.as_ref().map(|circles| 2.0 * circles.least_squares.radius_mm);
    fitted.or(section.mean_diameter.map(|mean| mean.value_mm)).unwrap_or_default()
}

fn centre_drift(profiles: &[Profile], doubt: &Doubt) -> Result<Option<FormUm>, BoreRefusal> {
    let (Some(first), Some(last)) = (profiles.first(), profiles.last()) else { return Ok(None) };
    if profiles.len() < 2 || !first.sees_centre() {
        return Ok(None);
    }
    let fitted = |profile: &Profile| least_squares(&profile.bare()).ok_or(BoreRefusal::NotRound);
    let (apart, variance) = drift(&fitted(first)?, &fitted(last)?);
    Ok(Some(form(apart, doubt.form(variance))))
}
