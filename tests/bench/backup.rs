//! A backup of 1,000 visits with 12 photos each: the first, one with a visit more, and one with nothing new.

use std::path::Path;

use steady_core::app::backup::back_up;
use steady_core::model::time::Moment;
use steady_core::photos::intake::take_in;

use crate::handover::{camera_picture, fill};
use crate::{report, timed};

const VISITS: usize = 1_000;
const ROUNDS: usize = 5;

/// Prints the measurements.
pub fn measure(folder: &Path) {
    let (data, backup) = (folder.join("backed-up"), folder.join("backup"));
    // Small photos: what is new is their number, and their bytes are the disk's to copy.
    let photo = take_in(&camera_picture(1, 640, 480)).unwrap();
    fill(&data, 0..VISITS, &photo);
    let make = |day: i64| back_up(&data, &backup, Moment(day * 86_400_000), &mut |_| {}).unwrap();
    let [mut first, mut more, mut nothing] = [const { Vec::new() }; 3];
    timed(&mut first, || assert!(make(0).new));
    for round in 0..ROUNDS {
        timed(&mut nothing, || assert!(!make(1).new));
        fill(&data, VISITS + round..VISITS + round + 1, &photo);
        timed(&mut more, || assert!(make(2).new));
    }
    report("backup of 1,000 visits with 12 small photos each, first", first);
    report("  again with one visit more", more);
    report("  again with nothing new", nothing);
}
