//! From decoded pixels to upright JPEGs of bounded size, band by band: two threads shrink, stand upright and change to
//! the JPEG's colours while the bands before are coded. Only a few bands are held beside the picture.
//!
//! A band is shrunk from its share of the picture with its surroundings, so that no seam shows.
//!
//! The picture is held once, as decoded: no second and third copy is made. Cost: a band's edges are worked on twice. A
//! thumbnail is the mean of two by two pixels that coding the colour leaves behind, shrunk on, and not the camera's
//! picture again: of two drawn pictures it keeps 0.97 and 0.91 of the edge energy that shrinking the whole in one step
//! keeps (vipsthumbnail 0.92 and 0.86). Cost: it waits for its photo.

use std::ops::Range;
use std::sync::mpsc::{SyncSender, sync_channel};
use std::thread;

use fast_image_resize::images::{Image, ImageRef};
use fast_image_resize::{PixelType, ResizeAlg, ResizeOptions, Resizer};
use image::metadata::Orientation;
use image::{DynamicImage, RgbImage};

use super::code::{self, Coded, Strip};
use super::colours;
use super::decode::Decoded;
use super::intake::PhotoFault;
use super::lanczos;
use super::plan::{Plan, Wanted};

const THREADS: usize = 2;

/// Makes the JPEG of a photo and the one of its thumbnail. A thumbnail of at most a quarter of the photo's side is
/// made from the photo at half its size, which coding it leaves behind, and not from the camera's picture again.
///
/// # Errors
/// [`PhotoFault::NotAnImage`] for a picture that no JPEG can hold.
pub fn shrink(picture: &Decoded, full: Wanted, thumb: Wanted) -> Result<(Coded, Coded), PhotoFault> {
    let plan = Plan::new(picture, full);
    let (width, height) = plan.upright();
    if width.max(height) < 4 * thumb.side {
        return Ok((
            jpeg(picture, plan, full, |_| {})?,
            jpeg(picture, Plan::new(picture, thumb), thumb, |_| {})?,
        ));
    }
    let (width, height) = (width.div_ceil(2), height.div_ceil(2));
    let mut rgb = Vec::with_capacity(usize::try_from(3 * width * height).map_err(|_| PhotoFault::TooLarge)?);
    let full = jpeg(picture, plan, full, |band| rgb.extend_from_slice(&band.colours.halved))?;
    let half = Decoded { width, height, rgb, tags: None };
    let thumb = Wanted { orientation: Orientation::NoTransforms, ..thumb };
    Ok((full, jpeg(&half, Plan::new(&half, thumb), thumb, |_| {})?))
}

/// The picture's pixels, upright, in place of a JPEG.
///
/// # Errors
/// As [`shrink`].
pub fn pixels(picture: &Decoded, wanted: Wanted) -> Result<RgbImage, PhotoFault> {
    let plan = Plan::new(picture, wanted);
    let mut resizer = Resizer::new();
    let mut rgb = Vec::new();
    for rows in plan.bands() {
        rgb.extend(piece(&mut resizer, picture, plan, rows)?.into_raw());
    }
    let (width, height) = plan.upright();
    RgbImage::from_raw(width, height, rgb).ok_or(PhotoFault::NotAnImage)
}

fn jpeg(
    picture: &Decoded,
    plan: Plan,
    wanted: Wanted,
    seen: impl FnMut(&Strip),
) -> Result<Coded, PhotoFault> {
    thread::scope(|scope| {
        let from = [(); THREADS].map(|()| sync_channel(0));
        let (senders, receivers): (Vec<_>, Vec<_>) = from.into_iter().unzip();
        let start = |(turn, sender): (usize, SyncSender<_>)| {
            scope.spawn(move || {
                let mut resizer = Resizer::new();
                for rows in plan.bands().skip(turn).step_by(THREADS) {
                    // Whoever codes has given up when nobody listens.
                    if sender.send(band(&mut resizer, picture, plan, rows)).is_err() {
                        break;
                    }
                }
            })
        };
        let threads: Vec<_> = senders.into_iter().enumerate().map(start).collect();
        let coded = code::encode(plan.upright(), wanted.quality, receivers, seen);
        // A scope alone waits for their work, and not until they are gone.
        let broken = threads.into_iter().filter_map(|thread| thread.join().err()).count();
        if broken == 0 { coded } else { Err(PhotoFault::NotAnImage) }
    })
}

fn band(resizer: &mut Resizer, picture: &Decoded, plan: Plan, rows: Range<u32>) -> Result<Strip, PhotoFault> {
    let piece = piece(resizer, picture, plan, rows.clone())?;
    let width = usize::try_from(piece.width()).map_err(|_| PhotoFault::TooLarge)?;
    Ok(Strip { rows, colours: colours::split(piece.as_raw(), width) })
}

/// Upright rows as pixels.
fn piece(
    resizer: &mut Resizer,
    picture: &Decoded,
    plan: Plan,
    rows: Range<u32>,
) -> Result<RgbImage, PhotoFault> {
    let along = plan.along(rows);
    let length = along.end - along.start;
    let options = ResizeOptions::new().resize_alg(ResizeAlg::Convolution(lanczos::filter()));
    let (size, options) = if plan.turned {
        let (left, width) = share(&along, plan.across, picture.width);
        ((length, plan.down), options.crop(left, 0.0, width, f64::from(picture.height)))
    } else {
        let (top, height) = share(&along, plan.down, picture.height);
        ((plan.across, length), options.crop(0.0, top, f64::from(picture.width), height))
    };
    let from = ImageRef::new(picture.width, picture.height, &picture.rgb, PixelType::U8x3)
        .map_err(|_| PhotoFault::NotAnImage)?;
    let mut to = Image::new(size.0, size.1, PixelType::U8x3);
    resizer.resize(&from, &mut to, &options).map_err(|_| PhotoFault::NotAnImage)?;
    let piece = RgbImage::from_raw(size.0, size.1, to.into_vec()).ok_or(PhotoFault::NotAnImage)?;
    let mut piece = DynamicImage::ImageRgb8(piece);
    piece.apply_orientation(plan.orientation);
    Ok(piece.into_rgb8())
}

/// Start and length, in the source's pixels, of a part of `whole` shrunk ones.
fn share(part: &Range<u32>, whole: u32, source: u32) -> (f64, f64) {
    let place = |at: u32| f64::from(at) * f64::from(source) / f64::from(whole);
    let (start, end) = (place(part.start), place(part.end));
    let length = end - start;
    // Rounding must not lead over the edge.
    (start, if start + length > end { length.next_down() } else { length })
}
