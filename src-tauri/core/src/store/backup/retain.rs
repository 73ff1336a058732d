//! Which generations stay: the latest seven, and of every month the last.

use std::collections::BTreeSet;

use super::list::List;

/// How many of the latest stay.
const LATEST: usize = 7;

/// Numbers of the generations that stay. The order is that of their numbers; a clock only tells the month.
pub fn retained(lists: &[List]) -> BTreeSet<u64> {
    let mut ordered: Vec<&List> = lists.iter().collect();
    ordered.sort_by_key(|list| std::cmp::Reverse(list.number));
    let mut months = BTreeSet::new();
    let mut kept = BTreeSet::new();
    for (place, list) in ordered.iter().enumerate() {
        let month: String = list.made_at.day().chars().take(7).collect();
        if months.insert(month) || place < LATEST {
            kept.insert(list.number);
        }
    }
    kept
}

/// Numbers of all generations.
pub fn all(lists: &[List]) -> BTreeSet<u64> {
    lists.iter().map(|list| list.number).collect()
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use super::super::list::{List, Piece};
    use super::retained;
    use crate::model::time::Moment;

    fn list(number: u64, day: i64) -> List {
        List {
            number,
            made_at: Moment(day * 86_400_000),
            made_by: String::new(),
            data: String::new(),
            visits: BTreeMap::new(),
            missing: Vec::new(),
            database: Piece { sha256: String::new(), bytes: 0 },
            photos: Vec::new(),
            own: BTreeMap::new(),
        }
    }

    #[track_caller]
    fn check(days: &[i64], expected: &[u64]) {
        let lists: Vec<List> = (1..).zip(days).map(|(number, day)| list(number, *day)).collect();
        assert_eq!(retained(&lists).into_iter().collect::<Vec<_>>(), expected, "{days:?}");
    }

    #[test]
    fn latest_seven_and_the_last_of_each_month_stay() {
        check(&[], &[]);
        check(&[1, 2, 3], &[1, 2, 3]);
        // Nine of one month: two go.
        check(&[1, 2, 3, 4, 5, 6, 7, 8, 9], &[3, 4, 5, 6, 7, 8, 9]);
        // Two of January, ten of March: January keeps its last.
        check(&[3, 4, 60, 61, 62, 63, 64, 65, 66, 67, 68, 69], &[2, 6, 7, 8, 9, 10, 11, 12]);
        // A clock that went back changes no order.
        check(&[9_000, 9_001, 1, 2, 3, 4, 5, 6, 7, 8], &[2, 4, 5, 6, 7, 8, 9, 10]);
    }
}
