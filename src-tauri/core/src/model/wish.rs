//! The wish for a photo: written down before the camera opens, because a phone may end the app while its
//! camera is in front. It is no part of the ledger; it says where a photo that arrives later belongs.

use serde::Serialize;

use super::time::Moment;

/// A photo that is being taken.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct PhotoWish {
    /// Its id, made up by the screen (UUID).
    pub id: String,
    /// Visit the photo is for.
    pub visit: String,
    /// Step it is a photo of.
    pub step: String,
    /// When the camera was called.
    pub at: Moment,
}
