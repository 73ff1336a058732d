//! What confirmed outcomes teach: counts that move the network's numbers, and scores of past sortings.
//! Sorts nothing itself, and moves no rating.

pub mod learn;
pub mod score;
pub mod weak;
