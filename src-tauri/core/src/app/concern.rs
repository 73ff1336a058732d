//! What a car came in for, where that decides which checks are worth a thought.

use crate::model::case::Case;
use crate::model::ids::{self, answer, step};
use crate::trade::Trade;

use super::asks::LIFT;

/// The answer of the owner's account that puts a vibration on the road.
const GROWS: &str = "grows-with-speed";

/// Whether what is complained of is felt on the road, and nothing was heard at idle: then no check at idle is the next
/// one. A vibration that nobody has asked about yet is taken as one of the road until the account says otherwise.
pub fn is_the_road(trade: &Trade, case: &Case) -> bool {
    let of_the_road = |sound: &String| trade.sounds.iter().any(|row| &row.id == sound && row.on_the_road);
    let told = &case.complaint_sounds;
    let account = step::ROAD_SPEED_VIBRATION;
    let unasked = !told.is_empty() && !case.looked(account);
    let heard = case.answer(step::IDLE_NOISE).is_some_and(|answer| answer.found);
    told.iter().all(of_the_road) && (case.has(account, GROWS) || unasked) && !heard
}

/// Whether it was listened to at idle and nothing was heard: then what looks for the cause of an idle noise is not next.
pub fn is_silent_at_idle(case: &Case) -> bool {
    case.has(step::IDLE_NOISE, answer::NONE)
}

/// Whether hands or eyes under the car found something, and nothing of an engine at idle is complained of or heard:
/// then no check at idle is the next one either.
pub fn is_found_at_the_shaft(trade: &Trade, case: &Case) -> bool {
    let of_the_road = |sound: &String| trade.sounds.iter().any(|row| &row.id == sound && row.on_the_road);
    let heard = case.answer(step::IDLE_NOISE).is_some_and(|answer| answer.found);
    let under = |id: &str| {
        let row = trade.steps.iter().find(|row| row.id == ids::base(id));
        row.is_some_and(|row| row.set.as_deref() == Some(LIFT))
    };
    let found = case.answers.iter().any(|(id, answer)| answer.found && under(id));
    found && !heard && case.complaint_sounds.iter().all(of_the_road)
}
