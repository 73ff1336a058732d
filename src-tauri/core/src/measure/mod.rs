//! Measurement: what numbers taken with instruments say, with their uncertainty. Pure functions; the
//! tables they read come from [`trade`](crate::trade), what they return is in [`model`](crate::model).

pub mod fit;
pub mod gauge;
pub mod verdict;
