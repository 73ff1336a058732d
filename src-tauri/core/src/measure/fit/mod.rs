//! The fit of a bearing in its seat: from sizes and materials to interference, pressure, stress, what is
//! left of the bearing's clearance, and how it goes together. [`calculate`](calculate::calculate) is the way in.

pub mod assembly;
pub mod calculate;
pub mod clearance;
pub mod fault;
pub mod holding;
pub mod lame;
pub mod read;
pub mod sizes;
pub mod sleeve;
pub mod stack;
pub mod stock;
pub mod thermal;
