//! The plate and VIN under which a visit was written down before they were corrected.

/// What a car was written down as while something of it was checked, before it was corrected: whoever comes by that plate
/// sees the visit too.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FormerCar {
    /// As typed then.
    pub plate: String,
    /// As typed then.
    pub vin: String,
}
