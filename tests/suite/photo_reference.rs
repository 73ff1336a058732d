//! Photo intake held against an imaging library that is not ours, and against a reader of tags: both answers were
//! recorded by `tests/reference/photos.py`.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use image::RgbImage;
use serde::Deserialize;
use steady_core::photos::intake::take_in;

/// Coding a smooth picture anew may change a sample by this much, and all samples together by this much on average.
const MOST: u8 = 10;
const MEAN: f64 = 2.0;

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
