//! Sizes of a picture that is shrunk and stood upright band by band, and where in the source each band lies.

use std::ops::Range;

use image::metadata::Orientation;

use super::decode::Decoded;

/// About how many rows or columns of the picture each band is made from.
const BAND_FROM: u32 = 96;

/// How a picture is to come out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Wanted {
    /// What stands it upright.
    pub orientation: Orientation,
    /// Longest side at most, pixels.
    pub side: u32,
    /// JPEG quality, 1 to 100.
    pub quality: u8,
}

/// Sizes, and which part of the picture each row comes from.
#[derive(Debug, Clone, Copy)]
pub struct Plan {
    /// What stands it upright.
    pub orientation: Orientation,
    /// It lies on its side: columns of the file become rows of the upright picture.
    pub turned: bool,
    /// The first upright row comes from the far end of the file's picture.
    reversed: bool,
    /// Width as it lies in the file, shrunk, pixels.
    pub across: u32,
    /// Height as it lies in the file, shrunk, pixels.
    pub down: u32,
    /// Rows of a band.
    step: u32,
}

impl Plan {
    /// How a decoded picture becomes the one that is wanted.
    pub fn new(picture: &Decoded, wanted: Wanted) -> Self {
        let longest = picture.width.max(picture.height);
        let scaled = |length: u32| {
            let scaled = u64::from(length) * u64::from(wanted.side) / u64::from(longest);
            if longest <= wanted.side { length } else { u32::try_from(scaled).unwrap_or(wanted.side).max(1) }
        };
        use Orientation::{FlipVertical, Rotate90, Rotate90FlipH, Rotate180, Rotate270, Rotate270FlipH};
        let turned = matches!(wanted.orientation, Rotate90 | Rotate270 | Rotate90FlipH | Rotate270FlipH);
        let reversed = matches!(wanted.orientation, Rotate180 | FlipVertical | Rotate270 | Rotate270FlipH);
        let (across, down) = (scaled(picture.width), scaled(picture.height));
        let (rows, source) = if turned { (across, picture.width) } else { (down, picture.height) };
        // Even, since two rows share their colour.
        let step = (BAND_FROM * rows / source.max(1)).max(8) & !1;
        Self { orientation: wanted.orientation, turned, reversed, across, down, step }
    }

    /// Width and height, upright.
    pub fn upright(self) -> (u32, u32) {
        if self.turned { (self.down, self.across) } else { (self.across, self.down) }
    }

    /// Upright rows, band by band.
    pub fn bands(self) -> impl Iterator<Item = Range<u32>> {
        let (_, height) = self.upright();
        (0..height.div_ceil(self.step))
            .map(move |band| band * self.step..((band + 1) * self.step).min(height))
    }

    /// Where upright rows lie along the axis they come from, shrunk.
    pub fn along(self, rows: Range<u32>) -> Range<u32> {
        let (_, height) = self.upright();
        if self.reversed { height - rows.end..height - rows.start } else { rows }
    }
}
