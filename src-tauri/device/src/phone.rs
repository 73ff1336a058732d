//! The device as seen from Rust: five things to ask, each of them optional on some phone.

use serde::{Deserialize, Serialize};
use std::path::Path;

/// What a phone can be asked. Every request may come to nothing; none may end the app.
pub trait Phone: Send + Sync {
    /// Opens the system's sheet to send a file. What the person then does is not known: Android reports most
    /// targets as cancelled.
    ///
    /// # Errors
    /// [`PhoneFault::Absent`] where there is no such sheet, [`PhoneFault::Failed`] where it did not open.
    fn share(&self, file: &Path, mime: &str) -> Result<(), PhoneFault>;

    /// Lets the phone be felt.
    ///
    /// # Errors
    /// As for [`Phone::share`].
    fn feel(&self, feel: Feel) -> Result<(), PhoneFault>;

    /// Keeps the screen lit, or lets it go dark again.
    ///
    /// # Errors
    /// As for [`Phone::share`].
    fn stay_awake(&self, on: bool) -> Result<(), PhoneFault>;

    /// What the system's bars, the camera's cut-out and the keyboard cover now.
    ///
    /// # Errors
    /// As for [`Phone::share`].
    fn insets(&self) -> Result<Insets, PhoneFault>;

    /// Puts the app behind the others, as Back does on the first screen.
    ///
    /// # Errors
    /// As for [`Phone::share`].
    fn leave(&self) -> Result<(), PhoneFault>;
}

/// How the phone is felt. No sound goes with either: a bay is loud.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Feel {
    /// Short: an answer was taken.
    Tick,
    /// Long: DANGER.
    Danger,
}

impl Feel {
    /// For how long the motor runs, milliseconds. Common practice, no source.
    pub fn milliseconds(self) -> u32 {
        match self {
            Self::Tick => 20,
            Self::Danger => 700,
        }
    }
}

/// What is covered at each edge, CSS px.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
pub struct Insets {
    /// CSS px covered at the top: status bar, camera.
    pub top: f64,
    /// CSS px covered at the right, of a turned phone.
    pub right: f64,
    /// At the bottom; the keyboard's height while it is shown.
    pub bottom: f64,
    /// CSS px covered at the left, of a turned phone.
    pub left: f64,
}

/// Why the phone did not do it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum PhoneFault {
    /// This device has no such thing.
    #[error("absent")]
    Absent,
    /// It has, and did not do it.
    #[error("failed")]
    Failed,
}
