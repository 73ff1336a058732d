//! Photos made small enough to send: a kept photo is about a megabyte, a paper with twelve of them is to
//! stay under two.
//!
//! The kept file is not touched; intake and its limits are in `steady_core::photos`. Encoding anew also
//! leaves behind whatever else a file carries.

use std::panic::catch_unwind;

use image::codecs::jpeg::JpegEncoder;
use image::{DynamicImage, ImageFormat, ImageReader, Limits};
use steady_core::app::press::PhotoFound;
use steady_core::content::shared::PhotoLine;
use typst::foundations::Bytes;

/// How large a photo may be on paper.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Budget {
    /// Bytes to stay under if any of [`TRIES`] does.
    bytes: usize,
    /// Longest side in pixels to begin with.
    side: u32,
}

/// Twelve of these, fonts and text stay under two megabytes.
pub(crate) const BESIDE_A_STEP: Budget = Budget { bytes: 140_000, side: 900 };
/// One photo, larger on the page.
pub(crate) const ON_THE_NOTE: Budget = Budget { bytes: 400_000, side: 1200 };

/// Share of the longest side in percent and JPEG quality, from the best down. The last is taken whatever
/// it weighs.
const TRIES: [(u32, u8); 4] = [(100, 80), (85, 72), (70, 65), (50, 55)];
/// No kept photo is larger; a file that claims to be is not one of ours.
const LARGEST_SIDE: u32 = 12_000;

/// A photo ready to print.
pub(crate) struct Picture<'a> {
    /// Name of the kept file.
    pub(crate) sha256: &'a str,
    /// The small JPEG.
    pub(crate) jpeg: Bytes,
    index: usize,
}

impl Picture<'_> {
    /// Where the templates find it. Numbered, not named by hash: see `world::file_id`.
    pub(crate) fn path(&self) -> String {
        format!("/photos/{}.jpg", self.index)
    }
}

/// The photos of a paper.
pub(crate) struct Prepared<'a> {
    /// Those that are printed.
    pub pictures: Vec<Picture<'a>>,
    /// Hashes of those whose file is not what was kept.
    pub damaged: Vec<&'a str>,
}

/// Fetches each photo once and makes it small. One that is missing, damaged or cannot be read is left out, and
/// the paper says so.
pub(crate) fn prepare<'a>(
    lines: impl IntoIterator<Item = &'a PhotoLine>,
    fetch: &dyn Fn(&str) -> PhotoFound,
    budget: Budget,
) -> Prepared<'a> {
    let (mut pictures, mut damaged): (Vec<Picture<'a>>, Vec<&'a str>) = (Vec::new(), Vec::new());
    for line in lines {
        let sha256 = line.sha256.as_str();
        if damaged.contains(&sha256) || pictures.iter().any(|picture| picture.sha256 == sha256) {
            continue;
        }
        match fetch(sha256) {
            PhotoFound::Whole(bytes) => {
                if let Some(jpeg) = small(&bytes, budget) {
                    pictures.push(Picture { sha256, jpeg: Bytes::new(jpeg), index: pictures.len() });
                }
            }
            PhotoFound::Damaged => damaged.push(sha256),
            PhotoFound::Missing => {}
        }
    }
    Prepared { pictures, damaged }
}

fn small(bytes: &[u8], budget: Budget) -> Option<Vec<u8>> {
    // Decoders may panic on a damaged file; that costs the photo, not the paper.
    let full = catch_unwind(|| decode(bytes)).ok().flatten()?;
    let mut last = None;
    for (percent, quality) in TRIES {
        let jpeg = encode(&shrink(&full, budget.side * percent / 100), quality)?;
        let fits = jpeg.len() <= budget.bytes;
        last = Some(jpeg);
        if fits {
            break;
        }
    }
    last
}

fn decode(bytes: &[u8]) -> Option<DynamicImage> {
    let mut reader = ImageReader::with_format(std::io::Cursor::new(bytes), ImageFormat::Jpeg);
    let mut limits = Limits::default();
    limits.max_image_width = Some(LARGEST_SIDE);
    limits.max_image_height = Some(LARGEST_SIDE);
    reader.limits(limits);
    Some(DynamicImage::ImageRgb8(reader.decode().ok()?.into_rgb8()))
}

/// `full` with its longest side at most `side`; never made larger.
fn shrink(full: &DynamicImage, side: u32) -> DynamicImage {
    if full.width().max(full.height()) <= side { full.clone() } else { full.thumbnail(side, side) }
}

fn encode(picture: &DynamicImage, quality: u8) -> Option<Vec<u8>> {
    let mut jpeg = Vec::new();
    picture.write_with_encoder(JpegEncoder::new_with_quality(&mut jpeg, quality)).ok()?;
    Some(jpeg)
}

#[cfg(test)]
mod tests {
    use super::{BESIDE_A_STEP, decode, encode, small};
    use image::{DynamicImage, RgbImage};

    #[test]
    fn a_large_photo_becomes_small_and_keeps_its_shape() {
        let big = RgbImage::from_fn(2560, 1280, |x, y| image::Rgb([(x % 251) as u8, (y % 241) as u8, 90]));
        let jpeg = small(&encode(&DynamicImage::from(big), 90).expect("jpeg"), BESIDE_A_STEP).expect("small");
        let back = decode(&jpeg).expect("readable");
        assert!(jpeg.len() <= 140_000, "{} bytes", jpeg.len());
        assert_eq!(back.width(), back.height() * 2);
        assert!((450..=900).contains(&back.width()), "{}", back.width());
    }

    #[test]
    fn a_small_photo_is_not_blown_up() {
        let jpeg =
            small(&encode(&DynamicImage::from(RgbImage::new(40, 30)), 90).expect("jpeg"), BESIDE_A_STEP)
                .expect("small");
        let back = decode(&jpeg).expect("readable");
        assert_eq!((back.width(), back.height()), (40, 30));
    }

    #[test]
    fn what_is_no_photo_is_left_out() {
        for bytes in [&b""[..], b"not a photo", &[0xFF, 0xD8, 0xFF, 0xE0, 0, 16]] {
            assert!(small(bytes, BESIDE_A_STEP).is_none());
        }
    }
}
