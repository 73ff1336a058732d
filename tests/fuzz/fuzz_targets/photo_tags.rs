//! A camera's tags, in front of a sound picture: whatever they say, the picture is taken in, upright or not.

#![no_main]

use std::sync::OnceLock;

use libfuzzer_sys::fuzz_target;
use steady_core::photos::intake::take_in;

/// 24 by 16 pixels.
fn plain() -> &'static [u8] {
    static PLAIN: OnceLock<Vec<u8>> = OnceLock::new();
    PLAIN.get_or_init(|| {
        let mut bytes = Vec::new();
        image::RgbImage::from_pixel(24, 16, image::Rgb([90, 120, 30]))
            .write_to(&mut std::io::Cursor::new(&mut bytes), image::ImageFormat::Jpeg)
            .expect("a plain picture can be written");
        bytes
    })
}

fuzz_target!(init: std::panic::set_hook(Box::new(|_| {})), |tags: &[u8]| {
    let tags = &tags[..tags.len().min(65_000)];
    let length = u16::try_from(tags.len() + 8).expect("short enough").to_be_bytes();
    let (start, rest) = plain().split_at(2);
    let photo = [start, &[0xff, 0xe1], &length, b"Exif\0\0", tags, rest].concat();
    let taken = take_in(&photo).expect("tags never refuse a picture");
    assert_eq!(taken.width.max(taken.height), 24);
    if let Some(time) = taken.taken {
        assert_eq!(time.len(), 19, "{time}");
    }
});
