//! The check digit of a vehicle identification number: a hint only. It binds in North America alone;
//! elsewhere position 9 is free, so a misfit is never an error.
//!
//! Source: 49 CFR 565.15(c), tables of letter values and position weights.

use crate::model::standing::VinHint;

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
