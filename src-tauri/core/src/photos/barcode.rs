//! What the bar and dot codes in a photo say. Reads pixels and knows nothing of cars.
//!
//! A still photo is looked at as it is and at half its size: a code near the camera is often sharper small. Reading
//! runs in a thread of its own, because a reader of hostile pictures may panic.
//!
//! Read in Rust on every platform, by rxing: a scanner plugin loads its model through the store's services, which a bay
//! without a network does not have. Cost: at most 1.7 MB of program, the size of a release build that does nothing
//! else.

use std::collections::HashSet;
use std::thread;

use image::imageops::{self, FilterType};
use image::{DynamicImage, GrayImage};
use rxing::{BarcodeFormat, DecodeHints};

use super::intake::{self, PhotoFault};

/// Long side of the picture that is searched, pixels. Common practice, no source: a label that fills a third of it
/// still has five pixels for the narrowest bar of 17 characters in Code 39.
const SEARCHED_SIDE: u32 = 2_000;

/// The kinds of code that carry a VIN on labels and papers, the usual first.
const KINDS: [BarcodeFormat; 4] =
    [BarcodeFormat::CODE_39, BarcodeFormat::DATA_MATRIX, BarcodeFormat::CODE_128, BarcodeFormat::QR_CODE];

/// Texts of the codes found, at most one of each kind.
///
/// # Errors
/// [`PhotoFault`] where the file is no picture that is taken.
pub fn texts(bytes: &[u8]) -> Result<Vec<String>, PhotoFault> {
    let photo = DynamicImage::ImageRgb8(intake::pixels(bytes, SEARCHED_SIDE)?).into_luma8();
    let found = thread::spawn(move || {
        let half = imageops::resize(
            &photo,
            (photo.width() / 2).max(1),
            (photo.height() / 2).max(1),
            FilterType::Triangle,
        );
        KINDS.into_iter().filter_map(|kind| read(&photo, kind).or_else(|| read(&half, kind))).collect()
    });
    // A reader that panicked has found nothing.
    Ok(found.join().unwrap_or_default())
}

fn read(photo: &GrayImage, kind: BarcodeFormat) -> Option<String> {
    let mut hints = DecodeHints {
        TryHarder: Some(true),
        PossibleFormats: Some(HashSet::from([kind])),
        ..DecodeHints::default()
    };
    let (width, height) = photo.dimensions();
    let found =
        rxing::helpers::detect_in_luma_with_hints(photo.as_raw().clone(), width, height, None, &mut hints);
    found.ok().map(|code| code.getText().to_owned())
}
