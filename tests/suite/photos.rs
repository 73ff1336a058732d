//! Photos on their way in: bounds, orientation, private tags out, and files that are no pictures.

use std::io::Cursor;

use base64::Engine;
use image::{ExtendedColorType, ImageEncoder, Rgb, RgbImage};
use serde_json::json;
use sha2::{Digest, Sha256};
use steady_core::app::PhotoSize;
use steady_core::photos::intake::{LONG_SIDE, PhotoFault, take_in};

use crate::support::{ask, code, scratch};

fn jpeg(picture: &RgbImage) -> Vec<u8> {
    let mut bytes = Vec::new();
    image::codecs::jpeg::JpegEncoder::new_with_quality(&mut bytes, 95)
        .write_image(picture.as_raw(), picture.width(), picture.height(), ExtendedColorType::Rgb8)
        .unwrap();
    bytes
}

/// A picture of four plain quarters: red, green above; blue, white below; wider than high.
fn quarters(width: u32, height: u32) -> RgbImage {
    RgbImage::from_fn(width, height, |x, y| match (x < width / 2, y < height / 2) {
        (true, true) => Rgb([220, 20, 20]),
        (false, true) => Rgb([20, 200, 20]),
        (true, false) => Rgb([20, 20, 220]),
        (false, false) => Rgb([240, 240, 240]),
    })
}

/// The JPEG with an EXIF block: orientation, capture time, and a place.
fn with_exif(jpeg: &[u8], orientation: u16) -> Vec<u8> {
    let mut tiff: Vec<u8> = b"MM\0\x2a\0\0\0\x08".to_vec();
    let entry = |tag: u16, kind: u16, count: u32, value: [u8; 4]| {
        [&tag.to_be_bytes()[..], &kind.to_be_bytes(), &count.to_be_bytes(), &value].concat()
    };
    tiff.extend(3_u16.to_be_bytes());
    tiff.extend(entry(0x0112, 3, 1, [0, u8::try_from(orientation).unwrap(), 0, 0]));
    tiff.extend(entry(0x8769, 4, 1, 50_u32.to_be_bytes()));
    tiff.extend(entry(0x8825, 4, 1, 88_u32.to_be_bytes()));
    tiff.extend([0; 4]);
    assert_eq!(tiff.len(), 50);
    tiff.extend(1_u16.to_be_bytes());
    tiff.extend(entry(0x9003, 2, 20, 68_u32.to_be_bytes()));
    tiff.extend([0; 4]);
    tiff.extend(b"2026:11:25 09:30:00\0");
    assert_eq!(tiff.len(), 88);
    tiff.extend(1_u16.to_be_bytes());
    tiff.extend(entry(0x0001, 2, 2, *b"N\0\0\0"));
    tiff.extend([0; 4]);
    let segment = [b"Exif\0\0".to_vec(), tiff].concat();
    let length = u16::try_from(segment.len() + 2).unwrap().to_be_bytes();
    [&jpeg[..2], &[0xff, 0xe1], &length, &segment, &jpeg[2..]].concat()
}

/// Colour names of the four corners, top left first, row by row.
fn corners(jpeg: &[u8]) -> String {
    let picture = image::load_from_memory(jpeg).unwrap().into_rgb8();
    let (width, height) = picture.dimensions();
    let name = |x: u32, y: u32| match picture.get_pixel(x, y).0 {
        [r, g, b] if r > 200 && g > 200 && b > 200 => 'w',
        [r, g, b] if r > g && r > b => 'r',
        [_, g, b] if g > b => 'g',
        _ => 'b',
    };
    [(0, 0), (width - 1, 0), (0, height - 1), (width - 1, height - 1)]
        .iter()
        .map(|(x, y)| name(*x, *y))
        .collect()
}

/// Where row 0 and column 0 of the file lie, for each value of tag 0x0112.
/// Source: CIPA DC-008 / JEITA CP-3451, second-hand; value 7 from memory, re-derived from the others.
#[test]
fn all_eight_orientations_stand_upright() {
    let plain = jpeg(&quarters(64, 32));
    for (orientation, expected, size) in [
        (1, "rgbw", (64, 32)),
        (2, "grwb", (64, 32)),
        (3, "wbgr", (64, 32)),
        (4, "bwrg", (64, 32)),
        (5, "rbgw", (32, 64)),
        (6, "brwg", (32, 64)),
        (7, "wgbr", (32, 64)),
        (8, "gwrb", (32, 64)),
    ] {
        let taken = take_in(&with_exif(&plain, orientation)).unwrap();
        assert_eq!(corners(&taken.full), expected, "orientation {orientation}");
        assert_eq!((taken.width, taken.height), size, "orientation {orientation}");
        assert_eq!(corners(&taken.thumb), expected, "thumbnail, orientation {orientation}");
    }
}

#[test]
fn capture_time_goes_on_and_nothing_private_does() {
    let given = with_exif(&jpeg(&quarters(64, 32)), 6);
    assert!(
        exif::Reader::new()
            .read_from_container(&mut Cursor::new(&given))
            .unwrap()
            .get_field(exif::Tag::GPSLatitudeRef, exif::In::PRIMARY)
            .is_some()
    );
    let taken = take_in(&given).unwrap();
    assert_eq!(taken.taken.as_deref(), Some("2026-11-25 09:30:00"));
    assert_eq!(taken.original_sha256, <[u8; 32]>::from(Sha256::digest(&given)));
    for kept in [&taken.full, &taken.thumb] {
        assert!(exif::Reader::new().read_from_container(&mut Cursor::new(kept)).is_err(), "a tag was kept");
    }
}

#[test]
fn long_side_is_bounded_and_small_pictures_are_left() {
    let taken = take_in(&jpeg(&quarters(3_000, 1_500))).unwrap();
    assert_eq!((taken.width, taken.height), (LONG_SIDE, LONG_SIDE / 2));
    let thumb = image::load_from_memory(&taken.thumb).unwrap();
    assert_eq!((thumb.width(), thumb.height()), (480, 240));
    let small = take_in(&jpeg(&quarters(100, 50))).unwrap();
    assert_eq!((small.width, small.height), (100, 50));
}

/// A PNG header that claims a size, with nothing behind it.
fn claimed(width: u32, height: u32) -> Vec<u8> {
    let mut png = b"\x89PNG\r\n\x1a\n".to_vec();
    let body = [&b"IHDR"[..], &width.to_be_bytes(), &height.to_be_bytes(), &[8, 2, 0, 0, 0]].concat();
    png.extend(13_u32.to_be_bytes());
    png.extend(&body);
    png.extend(crc32(&body).to_be_bytes());
    png.extend([0, 0, 0, 0, b'I', b'D', b'A', b'T', 0x35, 0xaf, 0x06, 0x1e]);
    png
}

fn crc32(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(u32::MAX, |crc, byte| {
        (0..8).fold(
            crc ^ u32::from(*byte),
            |crc, _| if crc & 1 == 1 { crc >> 1 ^ 0xedb8_8320 } else { crc >> 1 },
        )
    })
}

#[test]
fn what_is_no_picture_is_refused_by_name() {
    let good = jpeg(&quarters(64, 32));
    let base_media = |brand: &[u8]| [&[0, 0, 0, 24][..], b"ftyp", brand, &[0; 40]].concat();
    for (name, bytes, fault) in [
        ("empty", Vec::new(), PhotoFault::NotAnImage),
        ("text", b"not a picture at all".to_vec(), PhotoFault::NotAnImage),
        ("cut short", good[..good.len() / 3].to_vec(), PhotoFault::CutShort),
        ("cut short in its scan", good[..good.len() - 40].to_vec(), PhotoFault::CutShort),
        ("head only", good[..4].to_vec(), PhotoFault::CutShort),
        ("gif", b"GIF89a\x01\0\x01\0\0\0\0;".to_vec(), PhotoFault::Format),
        ("heic", base_media(b"heic"), PhotoFault::Heic),
        ("heic sequence", base_media(b"hevc"), PhotoFault::Heic),
        ("heic by its family's name", base_media(b"mif1"), PhotoFault::Heic),
        ("avif", base_media(b"avif"), PhotoFault::Format),
        ("film", base_media(b"isom"), PhotoFault::Format),
        ("heic cut off in its brand", base_media(b"heic")[..10].to_vec(), PhotoFault::Format),
        ("12,001 wide", claimed(12_001, 10), PhotoFault::TooLarge),
        ("12,001 high", claimed(10, 12_001), PhotoFault::TooLarge),
        ("claims much, holds nothing", claimed(12_000, 12_000), PhotoFault::CutShort),
        ("over 60 MB", vec![0xff; 60 * 1024 * 1024 + 1], PhotoFault::TooLarge),
    ] {
        assert_eq!(take_in(&bytes).map(|_| ()), Err(fault), "{name}");
    }
}

#[test]
fn uploaded_photo_is_kept_and_found_by_its_hash() {
    let (_folder, steady) = scratch();
    let standing =
        ask(&steady, json!({ "ask": "open", "intake": { "vehicle": { "layout": "rigid-engine-speed" } } }));
    let upload = "0191d2f0-0000-7000-8000-000000000001";
    let bytes = jpeg(&quarters(640, 320));
    let piece = |index: usize, bytes: &[u8]| json!({ "ask": "upload", "upload": upload, "index": index, "base64": base64::engine::general_purpose::STANDARD.encode(bytes) });
    for (index, chunk) in bytes.chunks(2_000).enumerate() {
        assert_eq!(code(&steady, piece(index, chunk)), "ok");
    }
    assert_eq!(code(&steady, piece(99, b"x")), "upload-out-of-order");
    let keep =
        json!({ "ask": "keep-photo", "visit": standing.visit, "step": "housing-look", "upload": upload });
    let standing = ask(&steady, keep.clone());
    let photo =
        &standing.steps.iter().find(|step| step.id == "housing-look").unwrap().photo.as_ref().unwrap().photo;
    let full = steady.photo(&photo.sha256, PhotoSize::Full).unwrap();
    assert_eq!(steady_core::model::hex::encode(&Sha256::digest(&full)), photo.sha256);
    assert_eq!(code(&steady, keep), "upload-unknown");
    for name in ["../steady.db", &"0".repeat(64), "x"] {
        assert_eq!(steady.photo(name, PhotoSize::Thumb).unwrap_err().code, "photo-missing");
    }
}
