//! What a bore was read with, and whether its calibration held that day.

use crate::model::bench::InstrumentUsed;
use crate::model::time::Moment;
use crate::model::workshop::is_overdue;
use crate::words::Words;

/// The instrument of readings that were recorded at a moment.
pub fn instrument_line(words: &Words, used: &InstrumentUsed, at: Moment) -> String {
    let InstrumentUsed { name, calibrated, due } = used;
    let overdue = is_overdue(calibrated.as_deref(), due.as_deref(), &at.day());
    let id = match (calibrated, due) {
        // A calibration that was still to come is none, and had not run out.
        (Some(_), Some(due)) if overdue && *due < at.day() => "instrument-line-overdue",
        (Some(_), Some(_)) if !overdue => "instrument-line-due",
        _ => "instrument-line-no-date",
    };
    let day = |day: &Option<String>| day.clone().unwrap_or_default();
    let args =
        [("name", name.clone().into()), ("calibrated", day(calibrated).into()), ("due", day(due).into())];
    words.with(id, &args)
}
