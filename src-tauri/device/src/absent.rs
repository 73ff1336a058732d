//! A desktop: no sheet, no motor, no bars. The screens then do as they do in a browser.

use std::path::Path;
use std::sync::Arc;

use crate::phone::{Feel, Insets, Phone, PhoneFault};

/// The device of a desktop.
pub fn phone() -> Arc<dyn Phone> {
    Arc::new(Absent)
}

struct Absent;

impl Phone for Absent {
    fn share(&self, _: &Path, _: &str) -> Result<(), PhoneFault> {
        Err(PhoneFault::Absent)
    }

    fn feel(&self, _: Feel) -> Result<(), PhoneFault> {
        Err(PhoneFault::Absent)
    }

    fn stay_awake(&self, _: bool) -> Result<(), PhoneFault> {
        Err(PhoneFault::Absent)
    }

    fn insets(&self) -> Result<Insets, PhoneFault> {
        Err(PhoneFault::Absent)
    }

    fn leave(&self) -> Result<(), PhoneFault> {
        Err(PhoneFault::Absent)
    }
}
