//! From signs to the probability of each cause: a two-layer noisy-OR network with leak, solved exactly
//! over every combination of causes. Says why, how sure it is, and which check is worth most. Rates
//! nothing.

pub mod act_or_wait;
pub mod chance;
pub mod draws;
pub mod evidence;
pub mod explain;
pub mod foresee;
pub mod gauge_evidence;
pub mod likelihood;
pub mod network;
pub mod next;
pub mod number;
pub mod posterior;
pub mod ready;
pub mod sort;
pub mod surprise;
