//! Lines that stand here and are no longer as they were written, or whose signature proves them no more, written anew from
//! a copy that is. It is the one change of a line there is: none is mended but by the line of the same hash, and so none
//! says afterwards what it was not written to say.

use std::collections::BTreeMap;

use rusqlite::{Connection, params};

use super::ledger;
use crate::model::line::Line;

/// The trigger that holds every line as it is.
const HOLDS: &str = "entry_is_never_changed";

/// What a line that is held is to be written anew as, by a copy of it out of a chain that was proven; none where it is
/// whole, or the copy is no better.
pub(super) fn mended(held: &Line, copy: &Line) -> Option<Line> {
    if held.hash != copy.hash || held == copy || !ledger::is_whole(copy) {
        return None;
    }
    let with = |signature: &Option<String>| Line { signature: signature.clone(), ..copy.clone() };
    if ledger::is_whole(held) {
        // The copy is looked at first: a file of signatures that prove nothing costs one look each.
        return (ledger::is_proven(copy) && !ledger::is_proven(held)).then(|| copy.clone());
    }
    let kept = with(&held.signature);
    Some(if !ledger::is_proven(copy) && ledger::is_proven(&kept) { kept } else { copy.clone() })
}

/// Puts lines in the places of those of the same visit that are held.
pub(super) fn put(held: &mut [Line], mended: &[Line]) {
    let by_place: BTreeMap<(&str, u64), &Line> =
        mended.iter().map(|line| ((line.device.as_str(), line.seq), line)).collect();
    for line in held {
        if let Some(new) = by_place.get(&(line.device.as_str(), line.seq)) {
            *line = (*new).clone();
        }
    }
}

/// Writes lines over those of the same hash that stand in their places. The trigger that holds every line is lifted for
/// that and stands again in the same transaction: whoever stops in between leaves what stood.
pub(super) fn write(connection: &Connection, mended: &[Line]) -> Result<(), rusqlite::Error> {
    if mended.is_empty() {
        return Ok(());
    }
    let sql = "SELECT sql FROM sqlite_schema WHERE type = 'trigger' AND name = ?1";
    let trigger: String = connection.query_row(sql, [HOLDS], |row| row.get("sql"))?;
    connection.execute_batch(&format!("DROP TRIGGER {HOLDS}"))?;
    {
        let mut statement = connection.prepare(
            "UPDATE entry SET at = ?5, prev = ?6, signature = ?7, body = ?8
             WHERE visit = ?1 AND device = ?2 AND seq = ?3 AND hash = ?4",
        )?;
        for line in mended {
            let seq = i64::try_from(line.seq).unwrap_or(i64::MAX);
            let Line { visit, device, at, prev, hash, signature, body, .. } = line;
            statement.execute(params![visit, device, seq, hash, at.0, prev, signature, body])?;
        }
    }
    connection.execute_batch(&trigger)
}

#[cfg(test)]
mod tests {
    use super::mended;
    use crate::model::entry::EntryBody;
    use crate::model::line::Line;
    use crate::model::time::Moment;
    use crate::signing::key::DeviceKey;
    use crate::signing::line::Writer;
    use crate::store::ledger::next_entry;

    fn line() -> Line {
        let writer = Writer::of(DeviceKey::from_seed(&[7; 32]));
        let body = EntryBody::PartLeft { set: "lift".to_owned(), by: "Kim Demo".to_owned() };
        next_entry(&[], "visit", &writer, Moment(1), body).1
    }

    #[track_caller]
    fn check(change: impl Fn(&mut Line), by: impl Fn(&mut Line), expected: Option<Line>) {
        let (mut held, mut copy) = (line(), line());
        change(&mut held);
        by(&mut copy);
        assert_eq!(mended(&held, &copy), expected);
    }

    #[test]
    fn line_is_mended_by_itself_and_by_nothing_else() {
        let unproven = |line: &mut Line| line.signature = Some("0".repeat(128));
        let rotted = |line: &mut Line| line.body = line.body.replace("Kim", "Kxm");
        let other = |line: &mut Line| line.hash = "0".repeat(64);
        let same = |_: &mut Line| {};
        check(same, same, None);
        check(same, unproven, None);
        check(same, rotted, None);
        check(rotted, rotted, None);
        check(rotted, other, None);
        check(other, same, None);
        check(rotted, same, Some(line()));
        check(unproven, same, Some(line()));
        check(unproven, rotted, None);
        check(|line| line.prev = "1".repeat(64), same, Some(line()));
        check(|line| line.at = Moment(2), same, Some(line()));
        // Of two halves that are whole each.
        check(rotted, unproven, Some(line()));
    }
}
