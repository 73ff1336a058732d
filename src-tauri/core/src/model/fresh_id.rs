//! Ids that nobody has given yet.

use std::time::SystemTime;

use uuid::{NoContext, Timestamp, Uuid};

/// A new id; ids sort by when they were made.
pub fn fresh_id() -> Uuid {
    fresh_at(SystemTime::now())
}

/// Before 1970 there is no such id, and the library stops the program: a clock that stands there counts as 1970, and
/// only chance tells its ids apart.
fn fresh_at(now: SystemTime) -> Uuid {
    if now < SystemTime::UNIX_EPOCH {
        return Uuid::new_v7(Timestamp::from_unix(NoContext, 0, 0));
    }
    Uuid::now_v7()
}

#[cfg(test)]
mod tests {
    use std::time::{Duration, SystemTime};

    use super::fresh_at;

    #[test]
    fn clock_before_1970_still_makes_ids_of_its_own() {
        let before = SystemTime::UNIX_EPOCH - Duration::from_secs(86_400);
        let ids = [before, before, SystemTime::now()].map(fresh_at);
        assert!(ids.iter().all(|id| id.get_version_num() == 7), "{ids:?}");
        assert!(ids[0] != ids[1] && ids[1] < ids[2], "{ids:?}");
    }
}
