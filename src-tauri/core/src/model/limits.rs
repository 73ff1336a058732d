//! Every bound on what a person types, a screen sends or a file brings, once and with its reason. Typed and
//! brought data go through the same check, [`entry::check`]: what one device writes, another takes in.
//!
//! A bound keeps three promises: every screen and paper can show what was recorded, no file costs more memory
//! or time than an honest one, and nothing that a hand does at a car is refused.

mod bench;
mod check;
pub mod entry;
pub mod visit;

pub use check::{Beyond, is_printable};

use std::ops::RangeInclusive;

/// Longest line, characters: a name, plate, label, contact, own reason for a missing photo. Two lines of a paper.
pub const LINE: usize = 200;
/// Longest name of a device, characters: one line of a phone's list.
pub const DEVICE_NAME: usize = 60;
/// Imports that are listed to be taken back; older ones seldom are, and a list for ever grows for ever.
pub const LISTED_IMPORTS: u32 = 50;
/// Longest text of several lines, characters: the complaint, and when it happens. Three pages of a paper.
pub const TEXT: usize = 10_000;
/// Longest reason for a milder answer, an undo or another opinion, characters. Half a page.
pub const REASON: usize = 2_000;
/// Fewest letters and digits of a reason why a DANGER answer is milder now: a few words.
pub const REASON_LETTERS: usize = 8;
/// Longest note of the bench, characters. Half a page.
pub const NOTE: usize = 2_000;
/// Longest id of a step, cause, layout, gate or sound, characters. The longest that is shipped has 32; a
/// workshop gives its own.
pub const ID: usize = LINE;
/// Longest number with its unit as a person types it, characters: `0.0800 mm` has nine.
pub const TYPED: usize = 40;
/// Longest language tag, characters (RFC 5646, 4.4.1).
pub const LOCALE: usize = 35;
/// Longest capture time of a photo, characters: `2026-11-25 09:30:00` has 19.
pub const CAPTURED: usize = 24;
/// Longest name of a preference of the screens, bytes.
pub const PREFERENCE_NAME: usize = 40;

/// Most entries of one visit, all devices together. A long visit with its bench has 500; beyond this, opening
/// it could be felt.
pub const ENTRIES: usize = 5_000;
/// Most devices that write in one visit. A workshop has a handful; each is met for ever.
pub const VISIT_WRITERS: usize = 64;
/// Most devices that one handover file brings which nothing was heard of before.
pub const NEW_WRITERS: usize = 256;
/// Most photos of one visit, taken again ones counted: several of each of the 40 steps, and some of the bench.
pub const PHOTOS: usize = 200;
/// Most notes of the bench in one visit; each stands on the repair record.
pub const NOTES: usize = 100;
/// Most answers to one step that stand side by side. Each device has one at most; nobody hands a car round more.
pub const STANDING_ANSWERS: usize = 20;
/// Changes of one step to a milder answer that are told with each reply, the first, the gravest and the latest: the
/// finding lists them, the history has them all.
pub const MILDER_OF_A_STEP: usize = 3;
/// Plates and VINs under which one visit was written down before, each once: a card is found by them.
pub const FORMER_CARS: usize = 8;
/// Most sounds of a complaint, and most answers chosen at one step. The longest list that is shipped has 12.
pub const CHOICES: usize = 40;
/// Most answers that one answer supersedes: all that stand at its step.
pub const SUPERSEDED: usize = STANDING_ANSWERS;
/// Most causes of one layout: more could not be enumerated on a phone.
pub const CAUSES: usize = 20;
/// Most signs of an outcome. 40 are shipped; a workshop adds its own.
pub const SIGNS: usize = 400;

/// Most marks over one photo; more would hide what they point at.
pub const MARKS: usize = 12;
/// Most spots of one freehand line.
pub const SPOTS: usize = 200;
/// Longest label over a photo, characters.
pub const LABEL: usize = 40;
/// Least extent of an arrow or ring, as a share of the picture; anything less is a slip of the finger.
pub const LEAST_EXTENT: f32 = 0.01;

/// Most strokes of a signature: a name of 60 letters, each with a dot, has 120.
pub const STROKES: usize = 1_000;
/// Most points of a signature, all strokes together: five minutes of drawing at 60 points a second.
pub const POINTS: usize = 20_000;

/// Most readings of one gauge; five are asked for.
pub const GAUGE_READINGS: usize = 200;
/// Most earlier visits that a gauge's readings carry: as many as a trend takes.
pub const EARLIER: usize = 24;
/// Most days between two visits: from 1970 to the end of the year 9999, the ends of the clocks that are taken.
pub const DAYS: RangeInclusive<f64> = 0.0..=2_932_897.0;
/// Most bore readings at one depth and in all; no hand and no turntable gives more.
pub const BORE_AT_A_DEPTH: usize = 20_000;
/// See [`BORE_AT_A_DEPTH`].
pub const BORE_READINGS: usize = 100_000;
/// Most depths at which a bore is read; a seat is 30 mm deep at most.
pub const BORE_DEPTHS: usize = 200;
/// Most passes of a cutter; more than any housing stands.
pub const PASSES: u32 = 200;

/// Lengths and sizes that are recorded, millimetres: what a digit too many makes of any of them is still told
/// by the rules of the bench; this is where a number stops being one that a paper can print.
pub const LENGTH_MM: RangeInclusive<f64> = -1_000_000.0..=1_000_000.0;
/// The seat's diameter after a pass, millimetres: smaller or larger ones are a wrong unit.
pub const DIAMETER_MM: RangeInclusive<f64> = 1.0..=1_000.0;
/// Wall that has to be left, millimetres.
pub const WALL_MM: RangeInclusive<f64> = 0.1..=100.0;
/// The run-out of a shaft, millimetres: more is a slip of the dial's point.
pub const RUN_OUT_MM: RangeInclusive<f64> = 0.0..=10.0;
/// The radial internal clearance left of a bearing, millimetres: no ball bearing of a shaft has more.
pub const CLEARANCE_MM: RangeInclusive<f64> = 0.0..=1.0;
/// Angles of readings, degrees: ten turns either way.
pub const ANGLE_DEG: RangeInclusive<f64> = -3_600.0..=3_600.0;
/// From where on a maker calls a housing warm, degrees Celsius.
pub const WARM_FROM_C: RangeInclusive<f64> = 0.0..=120.0;
/// From where on a housing can be called warm at intake, degrees Celsius: below it no engine has run (common practice, no
/// source), and a cold check would clear what it cannot.
pub const WARM_FROM_LEAST_C: f64 = 30.0;
/// A maker's figure for the movement that is allowed, millimetres; above zero.
pub const MAKER_PLAY_MM: RangeInclusive<f64> = 0.0..=50.0;
/// Sizes of a seat as read, and its width, millimetres: smaller or larger ones are a wrong unit.
pub const SEAT_MM: RangeInclusive<f64> = DIAMETER_MM;
/// Places along a shaft, millimetres from one another: common practice, no source. Beyond it a movement at the gauge would
/// be none at the bearing.
pub const ALONG_SHAFT_MM: RangeInclusive<f64> = 0.0..=10_000.0;
/// Days since an earlier movement that a trend takes: a hundred years, above zero.
pub const EARLIER_DAYS: RangeInclusive<f64> = 0.0..=36_525.0;
/// An earlier movement, millimetres: more is none of a support.
pub const EARLIER_MM: RangeInclusive<f64> = 0.0..=100.0;
/// Its standard uncertainty, millimetres: less, and the line through it would leave the range of numbers.
pub const EARLIER_STANDARD_MM: RangeInclusive<f64> = 1e-9..=100.0;
/// Temperatures that a housing under a car can take in use, degrees Celsius: outside them a number was mistyped.
pub const IN_USE_C: RangeInclusive<f64> = -60.0..=200.0;
/// Temperatures of a housing that is read in a workshop, degrees Celsius.
pub const HOUSING_C: RangeInclusive<f64> = -40.0..=150.0;
/// A reading at a step, rpm. What a step itself allows is in `data/steps.toml`.
pub const READING: RangeInclusive<f64> = 0.0..=20_000.0;
/// An idle speed, rpm.
pub const IDLE_RPM: RangeInclusive<u32> = 200..=9_000;
/// Cylinders of an engine.
pub const CYLINDERS: RangeInclusive<u8> = 1..=16;
/// An odometer's figure, in either unit; none shows more than eight digits.
pub const ODOMETER: RangeInclusive<u32> = 0..=99_999_999;
/// Speeds, kilometres or miles in an hour.
pub const SPEED: RangeInclusive<u32> = 0..=400;
/// Probabilities, and shares of a picture or of the pad for a signature.
pub const SHARE: RangeInclusive<f64> = 0.0..=1.0;

/// Longest name or address line of the workshop, characters.
pub const WORKSHOP_LINE: usize = 100;
/// Longest phone number of the workshop, characters.
pub const WORKSHOP_PHONE: usize = 60;
/// Longest currency of the workshop, characters.
pub const WORKSHOP_CURRENCY: usize = 12;
/// Most lines of the workshop's address: as many as a letter's head holds.
pub const WORKSHOP_ADDRESS: usize = 4;
/// Hours of a job, above zero: more than any of these takes.
pub const WORKSHOP_HOURS: RangeInclusive<f64> = 0.0..=200.0;
/// The rate of an hour, above zero, in any currency: beyond it is a slip of the finger.
pub const WORKSHOP_RATE: RangeInclusive<f64> = 0.0..=1_000_000.0;
/// Most sizes of sleeve that a workshop lists: more than a shelf holds.
pub const WORKSHOP_SLEEVES: usize = 40;
/// Most instruments that a workshop lists.
pub const WORKSHOP_INSTRUMENTS: usize = 20;
/// Longest name of an instrument, characters: one line of a phone's list.
pub const INSTRUMENT_NAME: usize = 60;
/// Step, error and scatter of an instrument, millimetres: a coarser one measures no seat, and none that a workshop has shows
/// less than a nanometre.
pub const INSTRUMENT_MM: RangeInclusive<f64> = 1e-6..=1.0;
/// Longest name of a workshop's own cause, characters: one line of a phone's list.
pub const CAUSE_NAME: usize = 60;

const MIB: u64 = 1024 * 1024;
/// Longest case file, bytes; the longest of the demo has 6,000.
pub const CASE_BYTES: u64 = MIB;
/// Most answers and gates of a case file, and most rows of its bench.
pub const CASE_ROWS: usize = 1_000;
/// Longest file of a gauge's readings or of the workshop's particulars, bytes.
pub const SMALL_FILE_BYTES: u64 = MIB;
/// Longest bore file, bytes: [`BORE_READINGS`] of 80 letters.
pub const BORE_FILE_BYTES: u64 = 8 * MIB;
/// Longest photo as the camera gives it, bytes: 108 megapixels from a phone stay below.
pub const CAMERA_BYTES: u64 = 60 * MIB;
/// Greatest side of a photo as the camera gives it, pixels.
pub const CAMERA_SIDE: u32 = 12_000;
/// Greatest memory that decoding a photo may take, bytes: 12,000 by 12,000 pixels of RGB and some more. A photo
/// of 12 megapixels takes 36 million. Beside it stand the file itself, the photo at half its size (4 million)
/// and a few megabytes for bands that are shrunk.
pub const DECODE_BYTES: u64 = 512 * MIB;
/// Long side of a kept photo, pixels: a crack a tenth of a millimetre wide shows at arm's length.
pub const PHOTO_SIDE: u32 = 2_560;
/// Least side of a photo that is taken here, pixels: a picture of fewer shows nothing that anybody could judge.
pub const LEAST_PHOTO_SIDE: u32 = 160;
/// Long side of a thumbnail, pixels.
pub const THUMB_SIDE: u32 = 480;
/// Longest kept photo, bytes. Pure noise of 2,560 pixels a side at the kept quality stays below.
pub const PHOTO_BYTES: u64 = 16 * MIB;
/// Longest of a workshop's own files of layouts and knowledge that is read or backed up, bytes.
pub const OWN_FILE_BYTES: u64 = MIB;
/// As many of them are read of each kind.
pub const OWN_FILES: usize = 200;
/// Longest name of one that is backed up, bytes: a name of 255 leaves no room for what another system puts before it.
pub const OWN_NAME_BYTES: usize = 200;
/// Longest piece in which a screen sends or fetches a file, bytes.
pub const PIECE_BYTES: u64 = 512 * 1024;

/// Greatest handover file, bytes: a zip's directory counts in 32 bits, and its greatest number has a meaning.
pub const HANDOVER_BYTES: u64 = 0xffff_fffe;
/// Greatest database that is copied to be read, bytes: 100,000 visits of 60 entries take 6 GB; what is larger is
/// mostly no database, and would fill the disk first.
pub const DATABASE_BYTES: u64 = 16 * 1024 * MIB;
/// Greatest backup as one file, bytes: 200,000 photos of 300 kB, more than a phone has room for.
pub const BACKUP_BYTES: u64 = 64 * 1024 * MIB;
/// Greatest list of a backup's generation, bytes: 200,000 photos take two thirds of it, and reading it takes ten times as
/// much memory.
pub const BACKUP_LIST_BYTES: u64 = 48 * MIB;
/// Longest record of a damaged database that is read, bytes. No entry comes near it.
pub const SALVAGED_BYTES: u64 = 16 * MIB;
/// Most parts of a handover file: its directory counts them in 16 bits.
pub const HANDOVER_PARTS: usize = 60_000;
/// Longest manifest of a handover file, bytes: [`HANDOVER_PARTS`] of the longest names.
pub const MANIFEST_BYTES: u64 = 16 * MIB;
/// Longest ledger of one visit, bytes: with a bore of [`BORE_READINGS`] found and one finished.
pub const LEDGER_BYTES: u64 = 16 * MIB;
/// Longest paper, bytes.
pub const PAPER_BYTES: u64 = 32 * MIB;
