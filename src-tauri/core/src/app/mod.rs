//! The core's whole face: one enum of requests, one of responses, and the function between them.

pub mod failure;
pub mod press;
pub mod request;
pub mod response;
