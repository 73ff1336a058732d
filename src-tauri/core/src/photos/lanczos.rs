//! The window of Lanczos over three pixels, as a filter for shrinking.
//!
//! Each band needs its weights anew, two sines each, and those of a mathematics library were a tenth of all work on a
//! photo. One sine by a short polynomial gives the same weights to far below what pixels of a byte can tell.

use std::f64::consts::{FRAC_PI_2, PI};

use fast_image_resize::{Filter, FilterType};

const SUPPORT: f64 = 3.0;
/// Each power's factor over the one before it, the highest first.
const SERIES: [f64; 8] =
    [1.0 / 240.0, 1.0 / 182.0, 1.0 / 132.0, 1.0 / 90.0, 1.0 / 56.0, 1.0 / 30.0, 1.0 / 12.0, 1.0 / 2.0];

/// The filter.
pub fn filter() -> FilterType {
    Filter::new("Lanczos over three pixels", weight, SUPPORT).map_or(FilterType::Lanczos3, FilterType::Custom)
}

/// sinc(x) sinc(x / 3), with sin 3t = 3 sin t - 4 sin³ t.
fn weight(x: f64) -> f64 {
    let third = (PI / SUPPORT * x).abs();
    if third >= PI {
        return 0.0;
    }
    // Nearer than that the weight is one to seven places.
    if third < 1e-4 {
        return 1.0;
    }
    let sine = sine(third);
    let square = sine * sine;
    square * (3.0 - 4.0 * square) / (SUPPORT * third * third)
}

/// Of an angle from 0 to pi: the cosine's series around its middle, to 1e-12.
fn sine(angle: f64) -> f64 {
    let square = (angle - FRAC_PI_2) * (angle - FRAC_PI_2);
    SERIES.into_iter().fold(1.0, |rest, part| 1.0 - square * rest * part)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn weights_are_those_of_the_window() {
        let sinc = |x: f64| if x == 0.0 { 1.0 } else { (PI * x).sin() / (PI * x) };
        let near = (2..12).map(|places| 0.1_f64.powi(places));
        for x in (-4_000..=4_000).map(|step| f64::from(step) / 1_000.0).chain(near) {
            let exact = if x.abs() < SUPPORT { sinc(x) * sinc(x / SUPPORT) } else { 0.0 };
            assert!((weight(x) - exact).abs() < 1e-7, "{x}: {} and {exact}", weight(x));
        }
    }
}
