//! How much of a bore was read: arcs of a ring that no reading stands for, and parts of the seat's width that no
//! whole ring stands for. Nothing that is said of the bore reaches beyond what was read.

use crate::model::bore::{BoreReadings, BoreSection};

/// Readings farther apart than this leave the arc between them unread, in degrees: twelve places, as on a clock,
/// with 5 degrees for the hand. Common practice, no source.
const WIDEST_DEG: f64 = 35.0;
/// Between two whole rings at most this part of the seat's width is taken as like its neighbours, and to an end of
/// the seat, where there is a ring on one side only, half of that. Common practice, no source.
const WIDEST_BETWEEN: f64 = 0.5;
const WIDEST_END: f64 = 0.25;
/// Depths are typed in tenths of a millimetre; less than this is none, in mm.
const NO_DEPTH_MM: f64 = 0.05;

/// Whether nothing is known of the wall between two directions, so many degrees apart.
pub fn is_gap(wide_deg: f64) -> bool {
    wide_deg > WIDEST_DEG
}

/// Arcs that no reading stands for, from one reading to the next, counted up; `to` may pass 360. The angles, in
/// degrees, stand in order; none of them leaves the whole ring unread.
pub fn unread_arcs(angles_deg: &[f64]) -> Vec<[f64; 2]> {
    let Some(first) = angles_deg.first() else { return vec![[0.0, 360.0]] };
    let next = angles_deg.iter().skip(1).copied().chain([first + 360.0]);
    angles_deg.iter().zip(next).map(|(from, to)| [*from, to]).filter(|[from, to]| is_gap(to - from)).collect()
}

/// Degrees that arcs span together.
pub fn span(arcs_deg: &[[f64; 2]]) -> f64 {
    arcs_deg.iter().map(|[from, to]| to - from).sum()
}

/// Widest of the arcs, degrees; 0 for none.
pub fn widest(arcs_deg: &[[f64; 2]]) -> f64 {
    arcs_deg.iter().map(|[from, to]| to - from).fold(0.0, f64::max)
}

/// Parts of the seat's width that no ring read all round stands for, from and to in mm from the face. None where
/// nobody said how wide the seat is: then nobody knows.
pub fn unread_depths(readings: &BoreReadings, sections: &[BoreSection]) -> Option<Vec<[f64; 2]>> {
    let width = readings.seat_width_mm?;
    let whole = sections.iter().filter(|section| section.unread_deg.is_empty()).map(|it| it.depth_mm);
    let within: Vec<f64> =
        whole.filter(|depth| (-NO_DEPTH_MM..=width + NO_DEPTH_MM).contains(depth)).collect();
    let (Some(first), Some(last)) = (within.first(), within.last()) else { return Some(vec![[0.0, width]]) };
    let limited =
        |from: f64, to: f64, share: f64| (to - from > share * width + NO_DEPTH_MM).then_some([from, to]);
    let mut unread: Vec<[f64; 2]> = limited(0.0, *first, WIDEST_END).into_iter().collect();
    let between = within.iter().zip(within.iter().skip(1));
    unread.extend(between.filter_map(|(from, to)| limited(*from, *to, WIDEST_BETWEEN)));
    unread.extend(limited(*last, width, WIDEST_END));
    Some(unread)
}

#[cfg(test)]
mod tests {
    use super::{span, unread_arcs, widest};

    #[test]
    fn arcs_between_far_readings_are_unread() {
        let clock: Vec<f64> = (0..12).map(|at| f64::from(at) * 30.0).collect();
        assert!(unread_arcs(&clock).is_empty());
        let half = [0.0, 30.0, 60.0, 90.0, 120.0, 150.0, 180.0];
        assert_eq!(unread_arcs(&half), [[180.0, 360.0]]);
        assert_eq!(unread_arcs(&[10.0]), [[10.0, 370.0]]);
        assert_eq!(unread_arcs(&[]), [[0.0, 360.0]]);
        let cross = unread_arcs(&[0.0, 90.0, 180.0, 270.0]);
        assert!((span(&cross) - 360.0).abs() < 1e-12 && (widest(&cross) - 90.0).abs() < 1e-12);
    }
}
