//! What a car came in for, where that decides which checks are worth a thought.

use crate::model::case::Case;
use crate::model::ids::{answer, step};
use crate::trade::Trade;

/// The answer of the owner's account that puts a vibration on the road.
const GROWS: &str = "grows-with-speed";

/// Whether no check at idle is the next one: nothing was heard when somebody listened there, or nothing but the road is
/// complained of, and the account or what was `found` under the car says where to look.
pub fn is_not_at_idle(trade: &Trade, case: &Case, found: &[String]) -> bool {
    let elsewhere = !found.is_empty() && is_of_the_road(trade, case);
    is_silent_at_idle(case) || is_the_road(trade, case) || elsewhere
}

/// Whether what is complained of is felt on the road, and nothing was heard at idle. A vibration that nobody has asked
/// about yet is taken as one of the road until the account says otherwise.
pub fn is_the_road(trade: &Trade, case: &Case) -> bool {
    let account = step::ROAD_SPEED_VIBRATION;
    let unasked = !case.complaint_sounds.is_empty() && !case.looked(account);
    is_of_the_road(trade, case) && (case.has(account, GROWS) || unasked)
}

/// Whether it was listened to at idle and nothing was heard: then what looks for the cause of an idle noise is not next.
pub fn is_silent_at_idle(case: &Case) -> bool {
    case.has(step::IDLE_NOISE, answer::NONE)
}

/// Whether no sound is complained of but those of the road, and none was heard at idle.
fn is_of_the_road(trade: &Trade, case: &Case) -> bool {
    let of_the_road = |sound: &String| trade.sounds.iter().any(|row| &row.id == sound && row.on_the_road);
    let heard = case.answer(step::IDLE_NOISE).is_some_and(|answer| answer.found);
    !heard && case.complaint_sounds.iter().all(of_the_road)
}
