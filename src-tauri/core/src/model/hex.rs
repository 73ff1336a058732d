//! Lower-case hexadecimal, both ways.

/// Bytes as hexadecimal digits.
pub fn encode(bytes: &[u8]) -> String {
    const DIGITS: [char; 16] =
        ['0', '1', '2', '3', '4', '5', '6', '7', '8', '9', 'a', 'b', 'c', 'd', 'e', 'f'];
    let digit = |value: u8| DIGITS.get(usize::from(value)).copied().unwrap_or_default();
    let mut text = String::with_capacity(2 * bytes.len());
    for byte in bytes {
        text.push(digit(byte >> 4));
        text.push(digit(byte & 0xf));
    }
    text
}

/// The bytes behind exactly `2 * N` lower-case digits.
pub fn decode<const N: usize>(text: &str) -> Option<[u8; N]> {
    let digits = text.as_bytes();
    if digits.len() != 2 * N {
        return None;
    }
    let mut bytes = [0; N];
    for (byte, pair) in bytes.iter_mut().zip(digits.chunks_exact(2)) {
        *byte = pair.iter().try_fold(0_u8, |sum, digit| Some(sum * 16 + value(*digit)?))?;
    }
    Some(bytes)
}

fn value(digit: u8) -> Option<u8> {
    match digit {
        b'0'..=b'9' => Some(digit - b'0'),
        b'a'..=b'f' => Some(digit - b'a' + 10),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::{decode, encode};

    #[test]
    fn what_is_written_reads_back() {
        let bytes: Vec<u8> = (0..=255).collect();
        assert_eq!(decode::<256>(&encode(&bytes)).map(|read| read.to_vec()), Some(bytes));
        for wrong in ["", "0", "00a", "0G", "0A", "000"] {
            assert_eq!(decode::<1>(wrong), None, "{wrong}");
        }
    }
}
