//! What instruments read, turned into sizes with their uncertainty. Rates nothing and records nothing.

pub mod bore;
