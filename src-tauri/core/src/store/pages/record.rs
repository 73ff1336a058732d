//! A record ("Record Format"): a header with the length of itself and the type of each column, then the columns.

/// One row of a table, or one key of an index.
#[derive(Debug, Clone)]
pub struct SqliteRecord {
    payload: Vec<u8>,
    /// Of each column its type and where it begins.
    columns: Vec<(u64, usize)>,
}

/// More columns than any table here has.
const MOST_COLUMNS: usize = 64;

impl SqliteRecord {
    /// Reads a record that fills its payload to the byte; nothing else is one.
    pub fn read(payload: Vec<u8>) -> Option<Self> {
        let types = types(&payload)?;
        let mut at = types.header;
        let mut columns = Vec::with_capacity(types.columns.len());
        for kind in types.columns {
            columns.push((kind, at));
            at = at.checked_add(usize::try_from(length(kind)?).ok()?)?;
        }
        (at == payload.len()).then_some(Self { payload, columns })
    }

    /// How many columns there are.
    pub fn columns(&self) -> usize {
        self.columns.len()
    }

    /// What a column says; none where it holds something other than text.
    pub fn text(&self, column: usize) -> Option<&str> {
        let (kind, at) = *self.columns.get(column)?;
        if kind < 13 || kind % 2 == 0 {
            return None;
        }
        let end = at + usize::try_from(length(kind)?).ok()?;
        std::str::from_utf8(self.payload.get(at..end)?).ok()
    }

    /// A column's whole number.
    pub fn int(&self, column: usize) -> Option<i64> {
        let (kind, at) = *self.columns.get(column)?;
        match kind {
            8 => Some(0),
            9 => Some(1),
            1..=6 => {
                let bytes = self.payload.get(at..at + usize::try_from(length(kind)?).ok()?)?;
                // Two's complement, most significant byte first: the first byte carries the sign.
                let sign = if bytes.first()? & 0x80 == 0 { 0 } else { -1_i64 };
                Some(bytes.iter().fold(sign, |number, byte| (number << 8) | i64::from(*byte)))
            }
            _ => None,
        }
    }

    /// Whether a column holds nothing, as the column does that a row's number stands for.
    pub fn is_null(&self, column: usize) -> bool {
        self.columns.get(column).is_some_and(|(kind, _)| *kind == 0)
    }
}

struct Types {
    /// Bytes of the header.
    header: usize,
    columns: Vec<u64>,
}

fn types(bytes: &[u8]) -> Option<Types> {
    let (header, mut at) = varint(bytes, 0)?;
    let header = usize::try_from(header).ok()?;
    let mut columns = Vec::new();
    while at < header {
        let (kind, next) = varint(bytes, at)?;
        columns.push(kind);
        at = next;
        if columns.len() > MOST_COLUMNS {
            return None;
        }
    }
    (at == header && !columns.is_empty()).then_some(Types { header, columns })
}

/// Whether the head of a record, as far as it is here, promises a payload of that many bytes.
pub fn promises(bytes: &[u8], payload: u64) -> bool {
    promised(bytes, payload).is_some()
}

/// Asked at every byte of a damaged page, and of the text that fills whole ones: most are answered by a column or two.
fn promised(bytes: &[u8], payload: u64) -> Option<()> {
    let (header, mut at) = varint(bytes, 0)?;
    let (mut sum, mut columns) = (header, 0);
    while at as u64 != header {
        let (kind, next) = varint(bytes, at)?;
        (at, columns) = (next, columns + 1);
        sum = sum.checked_add(length(kind)?)?;
        (sum <= payload && at as u64 <= header && columns <= MOST_COLUMNS).then_some(())?;
    }
    (columns > 0 && sum == payload).then_some(())
}

/// Bytes of a column, by its type; types 10 and 11 stand in no file.
fn length(kind: u64) -> Option<u64> {
    match kind {
        0 | 8 | 9 => Some(0),
        1..=4 => Some(kind),
        5 => Some(6),
        6 | 7 => Some(8),
        10 | 11 => None,
        _ => Some((kind - 12) / 2),
    }
}

/// A number of one to nine bytes, most significant first; seven bits a byte, and all eight of the ninth. Gives back
/// where it ends.
pub fn varint(bytes: &[u8], at: usize) -> Option<(u64, usize)> {
    let mut number = 0_u64;
    for index in 0..9 {
        let byte = *bytes.get(at.checked_add(index)?)?;
        if index == 8 {
            return Some(((number << 8) | u64::from(byte), at + 9));
        }
        number = (number << 7) | u64::from(byte & 0x7f);
        if byte & 0x80 == 0 {
            return Some((number, at + index + 1));
        }
    }
    None
}

#[cfg(test)]
mod tests {
    use super::{SqliteRecord, promises, varint};

    #[test]
    fn numbers_of_each_length_are_read() {
        for (bytes, number, end) in [
            (&[0x00][..], 0, 1),
            (&[0x7f], 127, 1),
            (&[0x81, 0x00], 128, 2),
            (&[0x81, 0x0d], 141, 2),
            (&[0xff; 9], u64::MAX, 9),
        ] {
            assert_eq!(varint(bytes, 0), Some((number, end)), "{bytes:?}");
        }
        assert_eq!(varint(&[0x80, 0x80], 0), None, "cut short");
    }

    #[test]
    fn a_head_promises_what_its_columns_come_to() {
        let head = [6, 0, 17, 1, 9, 5];
        assert!(promises(&head, 15) && !promises(&head, 14) && !promises(&head, 16));
        assert!(!promises(&head[..5], 15), "cut short");
        for wrong in [&[1][..], &[0], &[], &[2, 10], &[3, 0x81], &[2, 0x81, 0]] {
            assert!((0..40).all(|payload| !promises(wrong, payload)), "{wrong:?}");
        }
        let many = |columns: u8| [vec![columns + 1], vec![0; usize::from(columns)]].concat();
        assert!(promises(&many(64), 65) && !promises(&many(65), 66), "more columns than any table has");
    }

    #[test]
    fn a_record_fills_its_bytes_or_is_none() {
        // Header of 6 bytes: nothing, a text of two letters, minus two in one byte, one, minus one in six bytes.
        let bytes = [&[6, 0, 17, 1, 9, 5][..], b"ab", &[0xfe], &[0xff; 6]].concat();
        let record = SqliteRecord::read(bytes.clone()).expect("a record");
        assert_eq!((record.columns(), record.is_null(0), record.text(1)), (5, true, Some("ab")));
        assert_eq!([record.int(2), record.int(3), record.int(4)], [Some(-2), Some(1), Some(-1)]);
        assert_eq!((record.int(1), record.text(2), record.int(9)), (None, None, None));
        for wrong in [&bytes[..14], &[bytes.as_slice(), &[0]].concat(), &[], &[200], &[2, 10], &[1]] {
            assert!(SqliteRecord::read(wrong.to_vec()).is_none(), "{wrong:?}");
        }
    }
}
