//! A VIN from a photographed barcode: codes made by another library, photographed in arithmetic. Turned, small,
//! noisy, badly lit, kept as JPEG; what shows none is refused in words, and nothing of it stays.

use std::io::Cursor;
use std::path::Path;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use image::{GrayImage, ImageFormat, Luma};
use serde::Deserialize;
use serde_json::{Value, json};
use steady_core::app::request::Request;
use steady_core::app::response::{Response, VinRead};
use steady_core::model::vin::VinHint;

use crate::support::scratch;

const UPLOAD: &str = "00000000-0000-7000-8000-000000000039";

#[derive(Deserialize)]
struct Published {
    code: Vec<Code>,
}

#[derive(Deserialize)]
struct Code {
    file: String,
    vin: Option<String>,
}

fn folder() -> std::path::PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("published")
}

fn codes() -> Vec<Code> {
    let text = std::fs::read_to_string(folder().join("barcodes.toml")).unwrap();
    toml::from_str::<Published>(&text).unwrap().code
}

/// How a code is photographed: pixels for one of the file's, degrees, greatest error of a pixel.
#[derive(Clone, Copy)]
struct Shot {
    scale: f32,
    turned: f32,
    noise: u32,
}

/// A picture of 2000 by 1500 with the code in its middle, darker towards one side.
fn photographed(code: &GrayImage, shot: Shot) -> Vec<u8> {
    let (sin, cos) = shot.turned.to_radians().sin_cos();
    let (middle_x, middle_y) = (code.width() as f32 / 2.0, code.height() as f32 / 2.0);
    let mut chance: u32 = 2_463_534_242;
    let picture = GrayImage::from_fn(2000, 1500, |x, y| {
        let (dx, dy) = ((x as f32 - 1000.0) / shot.scale, (y as f32 - 750.0) / shot.scale);
        let (from_x, from_y) = (middle_x + cos * dx + sin * dy, middle_y - sin * dx + cos * dy);
        let ink = bilinear(code, from_x, from_y);
        chance ^= chance << 13;
        chance ^= chance >> 17;
        chance ^= chance << 5;
        let light = 60.0 + 170.0 * (2000 - x / 2) as f32 / 2000.0;
        let error = (chance % (2 * shot.noise + 1)) as f32 - shot.noise as f32;
        Luma([(15.0 + ink * (light - 15.0) + error).clamp(0.0, 255.0) as u8])
    });
    let mut jpeg = Vec::new();
    picture.write_to(&mut Cursor::new(&mut jpeg), ImageFormat::Jpeg).unwrap();
    jpeg
}

/// 0 for ink, 1 for paper; paper outside.
fn bilinear(code: &GrayImage, x: f32, y: f32) -> f32 {
    let (x, y) = (x - 0.5, y - 0.5);
    let at = |x: f32, y: f32| {
        let inside = x >= 0.0 && y >= 0.0 && x < code.width() as f32 && y < code.height() as f32;
        if inside { f32::from(code.get_pixel(x as u32, y as u32).0[0]) / 255.0 } else { 1.0 }
    };
    let (left, top) = (x.floor(), y.floor());
    let (right, below) = (x - left, y - top);
    let row = |y| at(left, y) * (1.0 - right) + at(left + 1.0, y) * right;
    row(top) * (1.0 - below) + row(top + 1.0) * below
}

/// What the core makes of a photo: the VIN with its hint, or a code. Nothing of the photo stays.
fn read(photo: &[u8]) -> Result<VinRead, String> {
    let (_folder, steady) = scratch();
    let ask = |request: Value| {
        let request: Request = serde_json::from_value(request).unwrap();
        steady.handle(request).map_err(|failure| failure.code)
    };
    for (index, piece) in photo.chunks(256 * 1024).enumerate() {
        let base64 = STANDARD.encode(piece);
        ask(json!({ "ask": "upload", "upload": UPLOAD, "index": index, "base64": base64 })).unwrap();
    }
    let answer = ask(json!({ "ask": "read-vin", "upload": UPLOAD }));
    let again = ask(json!({ "ask": "read-vin", "upload": UPLOAD }));
    assert_eq!(again.err().as_deref(), Some("upload-unknown"), "the photo was kept");
    match answer? {
        Response::Vin(read) => Ok(read),
        other => panic!("no VIN but {other:?}"),
    }
}

#[track_caller]
fn check(shot: Shot, file: &str, expected: Option<&str>) {
    let picture = image::open(folder().join("barcodes").join(file)).unwrap().into_luma8();
    let answer = read(&photographed(&picture, shot));
    match expected {
        Some(vin) => {
            let answer = answer.unwrap_or_else(|fault| panic!("{file} at {} degrees: {fault}", shot.turned));
            assert_eq!((answer.vin.as_str(), answer.hint), (vin, Some(VinHint::Fits)), "{file}");
        }
        None => assert_eq!(answer.err().as_deref(), Some("no-vin-in-photo"), "{file}"),
    }
}

#[test]
fn vin_is_read_from_codes_of_another_library() {
    for Code { file, vin } in codes() {
        let scale = if file.starts_with("code") || file.starts_with("ean") { 3.0 } else { 6.0 };
        check(Shot { scale, turned: 0.0, noise: 12 }, &file, vin.as_deref());
    }
}

#[test]
fn vin_is_read_turned_small_and_noisy() {
    let vin = Some("1M8GDM9AXKP042788");
    for turned in [90.0, 180.0, 4.0, -4.0, 270.0] {
        check(Shot { scale: 3.0, turned, noise: 12 }, "code39.png", vin);
    }
    for turned in [20.0, 45.0, 135.0] {
        check(Shot { scale: 6.0, turned, noise: 12 }, "datamatrix.png", vin);
    }
    check(Shot { scale: 1.5, turned: 0.0, noise: 30 }, "code39.png", vin);
    check(Shot { scale: 3.0, turned: 0.0, noise: 30 }, "datamatrix.png", vin);
}

#[test]
fn photo_without_a_vin_is_refused_in_words() {
    let empty = GrayImage::from_pixel(640, 480, Luma([120]));
    let mut png = Vec::new();
    empty.write_to(&mut Cursor::new(&mut png), ImageFormat::Png).unwrap();
    assert_eq!(read(&png).err().as_deref(), Some("no-vin-in-photo"));
    assert_eq!(read(b"not a picture").err().as_deref(), Some("photo-not-an-image"));
}
