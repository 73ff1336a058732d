//! The gauge on the shaft: from readings to a movement at the bearing with its uncertainty, a decision,
//! and what would decide. [`judge`](judge::judge) is the way in.

pub mod budget;
pub mod combine;
pub mod decide;
pub mod fault;
pub mod judge;
pub mod likelihood;
pub mod meaning;
pub mod read;
pub mod remedies;
pub mod risk;
pub mod student;
pub mod trend;
