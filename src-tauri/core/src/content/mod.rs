//! What a finding and a note say: content in one language, never layout.

pub mod finding;
pub mod note;
pub mod shared;
