//! What a comma in a number of a bore file means. Where cells are parted by semicolons or tabs it is a decimal comma, as
//! three of the four languages write it, unless it could as well part thousands: then the file can be read two ways,
//! and nobody guesses where metal is cut.

use std::borrow::Cow;

use super::unit::without_unit;

/// What commas in numbers mean.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Comma {
    /// They part cells, so none stands in a number.
    Cells,
    /// A decimal comma: `72,013` is 72.013.
    Decimal,
    /// They part thousands: `72,013` is 72013.
    Thousands,
}

/// What the commas of a file's numbers show.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Seen<'t> {
    /// No number has one.
    None,
    /// One at least can be nothing but a decimal comma.
    Decimal,
    /// Every one could part thousands; the first, with the place it was seen at.
    Either(&'t str, usize),
}

/// Looks at every number of a file, each with its line.
pub fn seen<'t>(cells: impl Iterator<Item = (&'t str, usize)>) -> Seen<'t> {
    let mut found = Seen::None;
    for (cell, line) in cells.filter(|(cell, _)| cell.contains(',')) {
        match found {
            _ if !parts_thousands(cell) => return Seen::Decimal,
            Seen::None => found = Seen::Either(cell, line),
            Seen::Decimal | Seen::Either(..) => {}
        }
    }
    found
}

/// A cell as it is read, with a decimal point.
pub fn plain(cell: &str, comma: Comma) -> Cow<'_, str> {
    match comma {
        Comma::Decimal if !cell.contains('.') => Cow::Owned(cell.replacen(',', ".", 1)),
        Comma::Thousands if parts_thousands(cell) => Cow::Owned(cell.replace(',', "")),
        Comma::Cells | Comma::Decimal | Comma::Thousands => Cow::Borrowed(cell),
    }
}

/// One to three figures, not 0 first, then groups of three: what writers of English part by commas. A unit behind it
/// proves nothing of the comma.
fn parts_thousands(cell: &str) -> bool {
    let cell = without_unit(cell);
    let cell = cell.strip_prefix(['-', '+']).unwrap_or(cell);
    let (whole, rest) = cell.split_once('.').unwrap_or((cell, ""));
    let mut groups = whole.split(',');
    let figures = |group: &str| group.bytes().all(|byte| byte.is_ascii_digit());
    let first = groups.next().unwrap_or_default();
    let leads = (1..=3).contains(&first.len()) && figures(first) && !first.starts_with('0');
    leads && !rest.contains(',') && groups.all(|group| group.len() == 3 && figures(group))
}

#[cfg(test)]
mod tests {
    use super::{Comma, Seen, parts_thousands, plain, seen};

    #[test]
    fn commas_are_told_apart() {
        for (cell, thousands) in
            [("72,013", true), ("-1,234", true), ("1,234,567", true), ("1,234.5", true), ("0,013", false)]
        {
            assert_eq!(parts_thousands(cell), thousands, "{cell}");
        }
        for cell in ["72,01", "72,0135", "1.234,5", "1234,567", ",5", "5,", "", "a,bcd"] {
            assert!(!parts_thousands(cell) || !cell.contains(','), "{cell}");
        }
        assert_eq!(plain("72,013", Comma::Decimal), "72.013");
        assert_eq!(plain("72,013", Comma::Thousands), "72013");
        assert_eq!(plain("1.234,5", Comma::Decimal), "1.234,5", "left to be refused");
        assert_eq!(plain("1,000 um", Comma::Thousands), "1000 um");
        let look = |cells: &[&'static str]| seen(cells.iter().copied().zip(1..));
        assert_eq!(look(&["3", "72.013"]), Seen::None);
        assert_eq!(look(&["3", "72,013", "72,014"]), Seen::Either("72,013", 2));
        assert_eq!(look(&["3", "72,013", "72,01"]), Seen::Decimal);
        for length in ["1,000um", "1,000 um", "-1,250mm", "1,000thou", "2,835in"] {
            assert_eq!(look(&[length, "72,013"]), Seen::Either(length, 1), "{length}");
        }
        assert_eq!(look(&["0,01mm"]), Seen::Decimal);
    }
}
