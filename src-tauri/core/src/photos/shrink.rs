//! From decoded pixels to an upright JPEG of bounded size, band by band: two threads shrink, stand upright and
//! change to the JPEG's colours while the bands before are coded. Only a few bands are held beside the picture.
//!
//! A band is shrunk from its share of the picture with its surroundings, so that no seam shows.

use std::cell::RefCell;
use std::ops::Range;
use std::sync::mpsc::{Receiver, sync_channel};
use std::thread;

use fast_image_resize::images::{Image, ImageRef};
use fast_image_resize::{FilterType, PixelType, ResizeAlg, ResizeOptions, Resizer};
use image::metadata::Orientation;
use image::{DynamicImage, RgbImage};
use jpeg_encoder::{Encoder, ImageBuffer, JpegColorType, SamplingFactor, rgb_to_ycbcr};

use super::decode::Decoded;
use super::intake::PhotoFault;

const THREADS: usize = 2;
/// About how much of the picture a band is made from, in rows or columns.
const BAND_FROM: u32 = 128;

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

/// A JPEG and its size.
pub struct Shrunk {
    /// The file.
    pub jpeg: Vec<u8>,
    /// Width, pixels.
    pub width: u32,
    /// Height, pixels.
    pub height: u32,
}

/// Makes the JPEG.
///
/// # Errors
/// [`PhotoFault::NotAnImage`] for a picture that no JPEG can hold.
pub fn shrink(picture: &Decoded, wanted: Wanted) -> Result<Shrunk, PhotoFault> {
    let plan = Plan::new(picture, wanted);
    thread::scope(|scope| {
        let from = [(); THREADS].map(|()| sync_channel(1));
        let (senders, receivers): (Vec<_>, Vec<_>) = from.into_iter().unzip();
        for (turn, sender) in senders.into_iter().enumerate() {
            scope.spawn(move || {
                let mut resizer = Resizer::new();
                for rows in plan.bands().skip(turn).step_by(THREADS) {
                    // Whoever codes has given up when nobody listens.
                    if sender.send(band(&mut resizer, picture, plan, rows)).is_err() {
                        break;
                    }
                }
            });
        }
        encode(plan, receivers, wanted.quality)
    })
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

/// Sizes, and which part of the picture each row comes from.
#[derive(Debug, Clone, Copy)]
struct Plan {
    orientation: Orientation,
    /// Columns become rows.
    turned: bool,
    /// The first row comes from the far end.
    reversed: bool,
    /// Size in the picture's own frame, shrunk.
    across: u32,
    down: u32,
    /// Rows of a band.
    step: u32,
}

impl Plan {
    fn new(picture: &Decoded, wanted: Wanted) -> Self {
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
    fn upright(self) -> (u32, u32) {
        if self.turned { (self.down, self.across) } else { (self.across, self.down) }
    }

    /// Upright rows, band by band.
    fn bands(self) -> impl Iterator<Item = Range<u32>> {
        let (_, height) = self.upright();
        (0..height.div_ceil(self.step))
            .map(move |band| band * self.step..((band + 1) * self.step).min(height))
    }

    /// Where upright rows lie along the axis they come from, shrunk.
    fn along(self, rows: Range<u32>) -> Range<u32> {
        let (_, height) = self.upright();
        if self.reversed { height - rows.end..height - rows.start } else { rows }
    }
}

/// Rows in the JPEG's colours, one plane a component.
#[derive(Default)]
struct Band {
    planes: [Vec<u8>; 3],
    rows: Range<u32>,
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
    let options = ResizeOptions::new().resize_alg(ResizeAlg::Convolution(FilterType::Lanczos3));
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

fn band(resizer: &mut Resizer, picture: &Decoded, plan: Plan, rows: Range<u32>) -> Result<Band, PhotoFault> {
    let piece = piece(resizer, picture, plan, rows.clone())?;
    let mut planes = [(); 3].map(|()| Vec::with_capacity(piece.len() / 3));
    for pixel in piece.pixels() {
        let [red, green, blue] = pixel.0;
        let (y, cb, cr) = rgb_to_ycbcr(red, green, blue);
        planes.iter_mut().zip([y, cb, cr]).for_each(|(plane, value)| plane.push(value));
    }
    let [_, blue, red] = &mut planes;
    let width = usize::try_from(piece.width()).unwrap_or(usize::MAX);
    [blue, red].into_iter().for_each(|plane| share_colour(plane, width));
    Ok(Band { planes, rows })
}

/// Puts the mean of two by two samples where the first of them stands: it is the one that the encoder takes for all.
fn share_colour(plane: &mut [u8], width: usize) {
    for rows in plane.chunks_mut(2 * width.max(1)) {
        let (upper, lower) = rows.split_at_mut(width.min(rows.len()));
        let mut lower = lower.chunks(2);
        for pair in upper.chunks_mut(2) {
            let below = lower.next().unwrap_or_default();
            let sum: u16 = pair.iter().chain(below).copied().map(u16::from).sum();
            let count = u16::try_from(pair.len() + below.len()).unwrap_or(1);
            if let (Some(first), Ok(mean)) = (pair.first_mut(), u8::try_from((sum + count / 2) / count)) {
                *first = mean;
            }
        }
    }
}

/// Start and length, in the source's pixels, of a part of `whole` shrunk ones.
fn share(part: &Range<u32>, whole: u32, source: u32) -> (f64, f64) {
    let place = |at: u32| f64::from(at) * f64::from(source) / f64::from(whole);
    let (start, end) = (place(part.start), place(part.end));
    let length = end - start;
    // Rounding must not lead over the edge.
    (start, if start + length > end { length.next_down() } else { length })
}

fn encode(
    plan: Plan,
    bands: Vec<Receiver<Result<Band, PhotoFault>>>,
    quality: u8,
) -> Result<Shrunk, PhotoFault> {
    let (width, height) = plan.upright();
    let side = |side: u32| u16::try_from(side).map_err(|_| PhotoFault::TooLarge);
    let coming = RefCell::new(Coming { bands, turn: 0, now: Band::default(), fault: None });
    let rows = Rows { width: side(width)?, height: side(height)?, coming: &coming };
    let mut jpeg = Vec::new();
    let mut encoder = Encoder::new(&mut jpeg, quality);
    // Colour at half the resolution each way, as cameras write it.
    encoder.set_sampling_factor(SamplingFactor::F_2_2);
    encoder.encode_image(rows).map_err(|_| PhotoFault::NotAnImage)?;
    match coming.into_inner().fault {
        None => Ok(Shrunk { jpeg, width, height }),
        Some(fault) => Err(fault),
    }
}

/// Bands as they come, each thread in its turn.
struct Coming {
    bands: Vec<Receiver<Result<Band, PhotoFault>>>,
    turn: usize,
    now: Band,
    fault: Option<PhotoFault>,
}

impl Coming {
    fn go_on_to(&mut self, row: u32) {
        while self.fault.is_none() && row >= self.now.rows.end {
            let next = self.bands.get(self.turn % THREADS).and_then(|thread| thread.recv().ok());
            self.turn += 1;
            match next {
                Some(Ok(band)) => self.now = band,
                Some(Err(fault)) => self.fault = Some(fault),
                None => self.fault = Some(PhotoFault::NotAnImage),
            }
        }
    }
}

/// The picture as the encoder asks for it: row by row, downwards.
struct Rows<'a> {
    width: u16,
    height: u16,
    coming: &'a RefCell<Coming>,
}

impl ImageBuffer for Rows<'_> {
    fn get_jpeg_color_type(&self) -> JpegColorType {
        JpegColorType::Ycbcr
    }

    fn width(&self) -> u16 {
        self.width
    }

    fn height(&self) -> u16 {
        self.height
    }

    fn fill_buffers(&self, y: u16, buffers: &mut [Vec<u8>; 4]) {
        let mut coming = self.coming.borrow_mut();
        coming.go_on_to(u32::from(y));
        let width = usize::from(self.width);
        let start = (usize::from(y)).saturating_sub(coming.now.rows.start as usize) * width;
        for (plane, buffer) in coming.now.planes.iter().zip(buffers) {
            match plane.get(start..start + width) {
                Some(row) => buffer.extend_from_slice(row),
                // Only after a fault, which refuses the whole.
                None => buffer.resize(buffer.len() + width, 0),
            }
        }
    }
}
