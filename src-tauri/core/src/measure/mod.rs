//! What instruments read, turned into sizes, decisions and a verdict, each with its uncertainty. Pure
//! functions: the tables they read come from [`trade`](crate::trade), what they return is in
//! [`model`](crate::model).

pub mod bore;
pub mod fit;
pub mod gauge;
pub mod verdict;
