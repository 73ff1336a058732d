//! From rows of pixels to a JPEG's colours: brightness for each pixel, colour for two by two of them, as cameras
//! write it. The mean of two by two pixels is at hand then, and is the same picture at half its size.
//!
//! The encoder drops three of four colour samples, so the mean is put in the fourth's place first.

use jpeg_encoder::rgb_to_ycbcr;

/// Rows in a JPEG's colours.
#[derive(Default)]
pub struct Colours {
    /// Brightness, as wide as the rows.
    pub brightness: Vec<u8>,
    /// Blue and red colour, half as wide and half as many rows, the last column and row standing alone if odd.
    pub colour: [Vec<u8>; 2],
    /// The rows at half their size, three bytes a pixel.
    pub halved: Vec<u8>,
}

/// Splits rows of so many pixels of three bytes; the first is an even one of the picture.
pub fn split(rgb: &[u8], width: usize) -> Colours {
    let brightness = rgb.as_chunks().0.iter().map(|[red, green, blue]| rgb_to_ycbcr(*red, *green, *blue).0);
    let brightness = brightness.collect();
    let halved = halve(rgb, width);
    let colours = || halved.as_chunks().0.iter().map(|[red, green, blue]| rgb_to_ycbcr(*red, *green, *blue));
    let colour = [colours().map(|colour| colour.1).collect(), colours().map(|colour| colour.2).collect()];
    Colours { brightness, colour, halved }
}

/// The mean of two by two pixels; of two where a column or a row stands alone.
fn halve(rgb: &[u8], width: usize) -> Vec<u8> {
    let half = 3 * width.div_ceil(2);
    let mut halved = vec![0; half * rgb.len().div_ceil(6 * width.max(1))];
    let mut sums = vec![0_u16; 3 * width];
    for (rows, into) in rgb.chunks(6 * width.max(1)).zip(halved.chunks_exact_mut(half.max(1))) {
        let (upper, lower) = rows.split_at_checked(3 * width).unwrap_or((rows, rows));
        let lower = if lower.is_empty() { upper } else { lower };
        let both = upper.iter().zip(lower).map(|(upper, lower)| u16::from(*upper) + u16::from(*lower));
        sums.iter_mut().zip(both).for_each(|(sum, both)| *sum = both);
        let (pairs, odd) = sums.as_chunks();
        let (into, into_odd) = into.split_at_mut(3 * pairs.len());
        for ([r0, g0, b0, r1, g1, b1], into) in pairs.iter().zip(into.as_chunks_mut().0) {
            *into = [quarter(r0 + r1), quarter(g0 + g1), quarter(b0 + b1)];
        }
        into_odd.iter_mut().zip(odd).for_each(|(into, sum)| *into = quarter(2 * sum));
    }
    halved
}

/// Of four samples' sum, rounded.
fn quarter(sum: u16) -> u8 {
    ((sum + 2) / 4) as u8
}
