//! A bore's readings: what they say about size and shape, what they cannot say, and what it takes to skim it
//! clean. Lengths are in mm inside.
//!
//! Read in this order: [`csv`] (the file) and [`check`] (what is refused), [`profile`] (readings to points),
//! [`coverage`] (what was read of the bore at all), [`circle`], [`zone`] and [`harmonics`] (the shapes fitted), [`doubt`] (uncertainty), [`shape`] and
//! [`skim`] (the answers).

pub mod arcs;
pub mod check;
pub mod circle;
pub mod comma;
pub mod coverage;
pub mod csv;
pub mod doubt;
pub mod enclosing;
pub mod exchange;
pub mod fault;
pub mod harmonics;
pub mod notes;
pub mod outliers;
pub mod plot;
pub mod profile;
pub mod proof;
pub mod section;
pub mod shape;
pub mod skim;
pub mod solve;
pub mod unit;
pub mod zone;
