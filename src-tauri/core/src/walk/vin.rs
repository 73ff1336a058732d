//! The check digit of a vehicle identification number: a hint only. It binds in North America alone;
//! elsewhere position 9 is free, so a misfit is never an error.
//!
//! Source: 49 CFR 565.15(c), tables of letter values and position weights.

use crate::model::vin::VinHint;

/// What the check digit says; `None` for an empty VIN.
pub fn hint(vin: &str) -> Option<VinHint> {
    let vin = vin.trim().to_uppercase();
    if vin.is_empty() {
        return None;
    }
    Some(match check_digit(&vin) {
        None => VinHint::NotAVin,
        Some(digit) if vin.chars().nth(8) == Some(digit) => VinHint::Fits,
        Some(_) => VinHint::Differs,
    })
}

/// The VIN in what a code on a label says: a word of 17 VIN characters, upper-cased; of several, one whose check
/// digit fits comes first. Labels of imported cars put an `I` before it (from memory), which no VIN can hold.
pub fn within(text: &str) -> Option<String> {
    let upper = text.to_uppercase();
    let words = upper.split(|letter: char| !letter.is_ascii_alphanumeric());
    let mut vins: Vec<&str> = words
        .map(|word| if word.len() == WEIGHTS.len() + 1 { word.trim_start_matches('I') } else { word })
        .filter(|word| check_digit(word).is_some())
        .collect();
    vins.sort_by_key(|vin| hint(vin) != Some(VinHint::Fits));
    vins.first().map(|vin| (*vin).to_owned())
}

/// Weights of the seventeen positions.
const WEIGHTS: [u32; 17] = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2];

/// The digit position 9 must hold, `X` for ten; `None` if this is no VIN.
pub fn check_digit(vin: &str) -> Option<char> {
    let values: Vec<u32> = vin.chars().map(value).collect::<Option<_>>()?;
    if values.len() != WEIGHTS.len() {
        return None;
    }
    let sum: u32 = values.iter().zip(WEIGHTS).map(|(value, weight)| value * weight).sum();
    Some(char::from_digit(sum % 11, 10).unwrap_or('X'))
}

fn value(letter: char) -> Option<u32> {
    match letter {
        '0'..='9' => letter.to_digit(10),
        'A'..='H' => Some(u32::from(letter) - u32::from('A') + 1),
        'J'..='N' => Some(u32::from(letter) - u32::from('J') + 1),
        'P' => Some(7),
        'R' => Some(9),
        'S'..='Z' => Some(u32::from(letter) - u32::from('S') + 2),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::within;

    #[track_caller]
    fn check(text: &str, expected: Option<&str>) {
        assert_eq!(within(text).as_deref(), expected, "{text}");
    }

    #[test]
    fn a_vin_is_found_in_what_labels_say() {
        check("1M8GDM9AXKP042788", Some("1M8GDM9AXKP042788"));
        check("1m8gdm9axkp042788", Some("1M8GDM9AXKP042788"));
        check("I1M8GDM9AXKP042788", Some("1M8GDM9AXKP042788"));
        check("PART 4711;1M8GDM9AXKP042788;2026", Some("1M8GDM9AXKP042788"));
        check("https://label.example/?v=1M8GDM9AXKP042788", Some("1M8GDM9AXKP042788"));
        // Outside North America position 9 is free.
        check("0ZZZZZ00000000002", Some("0ZZZZZ00000000002"));
        check("0ZZZZZ00000000002 1M8GDM9AXKP042788", Some("1M8GDM9AXKP042788"));
    }

    #[test]
    fn other_codes_are_no_vin() {
        for text in ["", "4006381333931", "1M8GDM9AXKP04278", "1M8GDM9AXKP0427888", "IM8GDM9AXKP042788"] {
            check(text, None);
        }
        check("OM8GDM9AXKP042788", None);
        check("1M8GDM9AX KP042788", None);
    }
}
