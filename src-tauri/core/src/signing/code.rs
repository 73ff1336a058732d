//! The short code of a device's key, which two people compare.

use sha2::{Digest, Sha256};

/// What is hashed before the key, so that no other hash of the key is its code.
const DOMAIN: &[u8] = b"steady code 1\n";
/// Digits of a code.
const DIGITS: usize = 24;

/// The code of a public key: 24 digits in groups of four.
///
/// Made of the one key and not of both devices', so that it can be read off a device before it has heard of the
/// other. An honest device's code then stands fixed, and whoever wants to pass for it has to find a key with the
/// same 24 digits: 10^24, or 2^80, keys to be made and hashed, one after another. Two keys of one's own that share
/// a code take 2^40 and deceive nobody: both are that person's. Digits read alike in every language; words would
/// need a list of each.
pub fn code(key: &[u8; 32]) -> String {
    let digest = Sha256::new().chain_update(DOMAIN).chain_update(key).finalize();
    let mut number: Vec<u8> = digest.to_vec();
    let digits: Vec<char> = (0..DIGITS).map(|_| char::from(b'0' + divide_by_ten(&mut number))).collect();
    digits.chunks(4).map(|group| group.iter().collect::<String>()).collect::<Vec<_>>().join(" ")
}

/// Divides a number of many bytes, the greatest first, and gives back what is left over.
fn divide_by_ten(number: &mut [u8]) -> u8 {
    let mut rest = 0_u16;
    for byte in number {
        let here = rest * 256 + u16::from(*byte);
        *byte = u8::try_from(here / 10).unwrap_or(u8::MAX);
        rest = here % 10;
    }
    u8::try_from(rest).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::code;
    use std::collections::HashSet;

    #[test]
    fn code_hangs_on_every_bit_of_the_key() {
        let mut seen = HashSet::new();
        for bit in 0..256 {
            let mut key = [7; 32];
            key[bit / 8] ^= 1 << (bit % 8);
            assert!(seen.insert(code(&key)), "bit {bit}");
        }
    }

    #[test]
    fn code_is_six_groups_of_four_digits_that_are_all_as_likely() {
        let mut counts = [0_u32; 10];
        for number in 0_u32..500 {
            let mut key = [0; 32];
            key[..4].copy_from_slice(&number.to_le_bytes());
            let code = code(&key);
            let groups: Vec<&str> = code.split(' ').collect();
            assert_eq!((groups.len(), groups.iter().all(|group| group.len() == 4)), (6, true), "{code}");
            for digit in code.bytes().filter(u8::is_ascii_digit) {
                counts[usize::from(digit - b'0')] += 1;
            }
        }
        // 12,000 digits: 1,200 of each, with a standard deviation of 33.
        assert!(counts.iter().all(|count| (1_000..1_400).contains(count)), "{counts:?}");
    }
}
