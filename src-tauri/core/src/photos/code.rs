//! Codes a JPEG from bands while the next ones are still being made.

use std::cell::RefCell;
use std::ops::Range;
use std::sync::mpsc::Receiver;

use jpeg_encoder::{Encoder, ImageBuffer, JpegColorType, SamplingFactor};

use super::colours::Colours;
use super::intake::PhotoFault;

/// A JPEG and its size.
pub struct Coded {
    pub jpeg: Vec<u8>,
    /// Width, pixels.
    pub width: u32,
    /// Height, pixels.
    pub height: u32,
}

/// Upright rows in a JPEG's colours.
#[derive(Default)]
pub struct Strip {
    /// Which rows of the picture.
    pub rows: Range<u32>,
    pub colours: Colours,
}

/// What comes from a thread that makes bands.
pub type Bands = Receiver<Result<Strip, PhotoFault>>;

/// Codes bands that come from several threads in turn; `seen` looks at each.
///
/// # Errors
/// The first fault of a band, [`PhotoFault::NotAnImage`] for a picture that no JPEG can hold.
pub fn encode(
    (width, height): (u32, u32),
    quality: u8,
    bands: Vec<Bands>,
    seen: impl FnMut(&Strip),
) -> Result<Coded, PhotoFault> {
    let side = |side: u32| u16::try_from(side).map_err(|_| PhotoFault::TooLarge);
    let coming = RefCell::new(Coming { bands, turn: 0, now: Strip::default(), fault: None, seen });
    let rows = Rows { width: side(width)?, height: side(height)?, coming: &coming };
    let mut jpeg = Vec::new();
    let mut encoder = Encoder::new(&mut jpeg, quality);
    encoder.set_sampling_factor(SamplingFactor::F_2_2);
    encoder.encode_image(rows).map_err(|_| PhotoFault::NotAnImage)?;
    match coming.into_inner().fault {
        None => Ok(Coded { jpeg, width, height }),
        Some(fault) => Err(fault),
    }
}

/// Bands as they come, each thread in its turn.
struct Coming<F> {
    bands: Vec<Bands>,
    turn: usize,
    now: Strip,
    fault: Option<PhotoFault>,
    seen: F,
}

impl<F: FnMut(&Strip)> Coming<F> {
    fn go_on_to(&mut self, row: u32) {
        while self.fault.is_none() && row >= self.now.rows.end {
            let thread = self.turn % self.bands.len().max(1);
            let next = self.bands.get(thread).and_then(|thread| thread.recv().ok());
            self.turn += 1;
            match next {
                Some(Ok(band)) => {
                    (self.seen)(&band);
                    self.now = band;
                }
                Some(Err(fault)) => self.fault = Some(fault),
                None => self.fault = Some(PhotoFault::NotAnImage),
            }
        }
    }
}

/// The picture as the encoder asks for it: row by row, downwards.
struct Rows<'a, F> {
    width: u16,
    height: u16,
    coming: &'a RefCell<Coming<F>>,
}

impl<F: FnMut(&Strip)> ImageBuffer for Rows<'_, F> {
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
        let row = usize::from(y).saturating_sub(coming.now.rows.start as usize);
        let [bright, blue, red, _] = buffers;
        let Colours { brightness, colour: [blues, reds], .. } = &coming.now.colours;
        let end = bright.len() + width;
        bright.extend_from_slice(line(brightness, row, width));
        bright.resize(end, 0);
        let half = width.div_ceil(2);
        widen(line(blues, row / 2, half), width, blue);
        widen(line(reds, row / 2, half), width, red);
    }
}

/// Appends each sample twice: the encoder takes the first of two by two for all.
fn widen(samples: &[u8], width: usize, buffer: &mut Vec<u8>) {
    let start = buffer.len();
    buffer.resize(start + width, 0);
    let (pairs, odd) = buffer.get_mut(start..).unwrap_or_default().as_chunks_mut();
    pairs.iter_mut().zip(samples).for_each(|(pair, sample)| *pair = [*sample; 2]);
    odd.iter_mut().zip(samples.last()).for_each(|(one, sample)| *one = *sample);
}

/// A row of a plane; nothing after a fault, which refuses the whole.
fn line(plane: &[u8], row: usize, width: usize) -> &[u8] {
    plane.get(row * width..(row + 1) * width).unwrap_or_default()
}
