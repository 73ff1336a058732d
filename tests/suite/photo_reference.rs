//! Photo intake held against an imaging library that is not ours, and against a reader of tags: both answers were
//! recorded by `tests/reference/photos.py`. Large pictures are held against the plain way to the same picture: stood
//! upright and shrunk as a whole by `image`.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use image::codecs::jpeg::JpegEncoder;
use image::imageops::{FilterType, rotate180_in_place};
use image::metadata::Orientation;
use image::{DynamicImage, GenericImageView, Rgb, RgbImage};
use serde::Deserialize;
use steady_core::photos::intake::take_in;

/// Coding a smooth picture anew may change a sample by this much, and all samples together by this much on average.
const MOST: u8 = 10;
const MEAN: f64 = 2.0;
/// A thumbnail is coded more coarsely.
const MOST_IN_THUMBNAIL: u8 = 16;

#[derive(Deserialize)]
struct Record {
    private_tags: Vec<Tags>,
    orientation: Vec<Sample>,
}

#[derive(Deserialize)]
struct Tags {
    file: String,
    groups: std::collections::BTreeMap<String, u32>,
    private: Vec<String>,
}

#[derive(Deserialize)]
struct Sample {
    orientation: u16,
    jpeg: String,
    upright: String,
    width: u32,
    height: u32,
}

fn record() -> Record {
    serde_json::from_str(include_str!("../reference/photos.json")).unwrap()
}

/// Greatest and mean difference of two pictures' samples; none if their sizes differ.
fn difference(one: &RgbImage, other: &RgbImage) -> Option<(u8, f64)> {
    if one.dimensions() != other.dimensions() {
        return None;
    }
    let each = || one.as_raw().iter().zip(other.as_raw()).map(|(a, b)| a.abs_diff(*b));
    let sum: u64 = each().map(u64::from).sum();
    Some((each().max().unwrap(), sum as f64 / one.as_raw().len() as f64))
}

#[test]
fn orientations_match_another_library_pixel_by_pixel() {
    let record = record();
    let upright = |sample: &Sample| {
        RgbImage::from_raw(sample.width, sample.height, STANDARD.decode(&sample.upright).unwrap()).unwrap()
    };
    let mut looked_at = Vec::new();
    for sample in &record.orientation {
        let taken = take_in(&STANDARD.decode(&sample.jpeg).unwrap()).unwrap();
        let ours = image::load_from_memory(&taken.full).unwrap().into_rgb8();
        let (most, mean) = difference(&ours, &upright(sample)).expect("the sizes are the same");
        assert!(most <= MOST && mean < MEAN, "orientation {}: {most} at most, {mean}", sample.orientation);
        for other in record.orientation.iter().filter(|other| other.orientation != sample.orientation) {
            let found = difference(&ours, &upright(other));
            let unlike = found.is_none_or(|(most, mean)| most > MOST && mean > MEAN);
            assert!(unlike, "{} and {} look alike", sample.orientation, other.orientation);
        }
        looked_at.push(sample.orientation);
    }
    assert_eq!(looked_at, [1, 2, 3, 4, 5, 6, 7, 8]);
}

/// The record says what exiftool found; that it could find anything shows in the photo as it was given.
#[test]
fn reader_of_tags_found_nothing_private() {
    let record = record();
    let of = |file: &str| record.private_tags.iter().find(|tags| tags.file == file).unwrap();
    for group in ["EXIF", "GPS", "XMP", "IPTC"] {
        assert!(of("given").groups.contains_key(group), "{group} was not planted");
    }
    for file in ["kept", "thumbnail"] {
        assert_eq!(of(file).private, Vec::<String>::new(), "{file}");
        assert!(of(file).groups.contains_key("File"), "{file} was not read");
    }
}

/// Slow waves and a slope, so that no two of the eight ways to hold it look alike.
fn waves(width: u32, height: u32) -> RgbImage {
    RgbImage::from_fn(width, height, |x, y| {
        let wave = (f64::from(x).hypot(f64::from(2 * y)) / 60.0).sin();
        Rgb([(128.0 + 90.0 * wave) as u8, (x * 255 / width) as u8, (y * 255 / height) as u8])
    })
}

/// The JPEG with tag 0x0112 in front.
fn held(picture: &RgbImage, orientation: u8) -> Vec<u8> {
    let mut jpeg = Vec::new();
    JpegEncoder::new_with_quality(&mut jpeg, 95).encode_image(picture).unwrap();
    let tag = [0, 1, 1, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0, 0, 0, 0, 0];
    let exif = [&[0xff, 0xe1, 0, 34][..], b"Exif\0\0MM\0\x2a\0\0\0\x08", &tag].concat();
    [&jpeg[..2], &exif, &jpeg[2..]].concat()
}

/// Shrunk as a whole, then stood upright.
fn plainly(picture: &DynamicImage, size: (u32, u32), orientation: Orientation) -> RgbImage {
    let mut plain = match size == picture.dimensions() {
        true => picture.clone(),
        false => picture.resize_exact(size.0, size.1, FilterType::Lanczos3),
    };
    plain.apply_orientation(orientation);
    plain.into_rgb8()
}

#[test]
fn photo_and_thumbnail_match_the_plain_way_in_every_orientation() {
    // Odd sides; the second is shrunk for the photo too. Either way many bands make it.
    for (size, full, thumb, orientations) in
        [((1_921, 641), (1_921, 641), (480, 160), 1..=8), ((2_801, 801), (2_560, 732), (480, 137), 6..=6)]
    {
        let picture = waves(size.0, size.1);
        let drawn = DynamicImage::ImageRgb8(picture.clone());
        for number in orientations {
            let taken = take_in(&held(&picture, number)).unwrap();
            let orientation = Orientation::from_exif(number).unwrap();
            for (kept, size, bound) in [(&taken.full, full, MOST), (&taken.thumb, thumb, MOST_IN_THUMBNAIL)] {
                let ours = image::load_from_memory(kept).unwrap().into_rgb8();
                let mut plain = plainly(&drawn, size, orientation);
                let (most, mean) = difference(&ours, &plain).unwrap();
                assert!(most <= bound && mean < MEAN, "{size:?} under {number}: {most} at most, {mean}");
                rotate180_in_place(&mut plain);
                assert!(difference(&ours, &plain).unwrap().1 > MEAN, "{size:?} looks alike turned round");
            }
        }
    }
}
