//! What can be told of a VIN by itself.

use serde::Serialize;

/// What the check digit of a VIN says. Binding in North America alone.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum VinHint {
    /// Position 9 fits.
    Fits,
    /// Position 9 does not fit: look again; not an error outside North America.
    Differs,
    /// Not 17 characters, or I, O or Q in it.
    NotAVin,
}
