//! A filter for shrinking pictures: each new pixel is a mean of those within three pixels' reach, weighted by
//! Lanczos's window.
//!
//! Each band needs its weights anew, two sines each, and those of a mathematics library were a tenth of all work on a
//! photo. One sine by a short polynomial gives the same weights to far below what pixels of a byte can tell.

use std::f64::consts::{FRAC_PI_2, PI};

use fast_image_resize::{Filter, FilterType};

/// How far the window reaches to either side, in pixels of the shrunk picture.
const SUPPORT: f64 = 3.0;
/// The cosine's series: the factor of each term over the one before it, the highest power first.
const SERIES: [f64; 8] =
    [1.0 / 240.0, 1.0 / 182.0, 1.0 / 132.0, 1.0 / 90.0, 1.0 / 56.0, 1.0 / 30.0, 1.0 / 12.0, 1.0 / 2.0];

/// The window as `fast_image_resize` takes it; its own of the same name where it takes none.
pub fn filter() -> FilterType {
    Filter::new("Lanczos over three pixels", weight, SUPPORT).map_or(FilterType::Lanczos3, FilterType::Custom)
}

/// sinc(x) sinc(x / 3), with sin 3t = 3 sin t - 4 sin³ t.
fn weight(x: f64) -> f64 {
    let third = (PI / SUPPORT * x).abs();
    if third >= PI {
        return 0.0;
    }
    // So near the middle the weight is 1 to seven places; a sine that is 1e-12 off would show there.
    if third < 1e-4 {
        return 1.0;
    }
    let sine = sine(third);
    let square = sine * sine;
    square * (3.0 - 4.0 * square) / (SUPPORT * third * third)
}

/// Sine of an angle from 0 to pi, to 1e-12: the cosine's series about pi / 2, the middle of that range.
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
