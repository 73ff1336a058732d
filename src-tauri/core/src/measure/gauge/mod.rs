//! The gauge on the shaft: from readings to a movement at the bearing with its uncertainty, a decision,
//! and what would decide. [`evaluate`](evaluate::evaluate) is the way in.

pub mod budget;
pub mod combine;
pub mod decide;
pub mod evaluate;
pub mod fault;
pub mod likelihood;
pub mod meaning;
pub mod read;
pub mod remedies;
pub mod risk;
pub mod student;
pub mod trend;
