//! From signs to the probability of each cause: a two-layer noisy-OR network with leak, solved exactly
//! over every combination of causes. Says why, and which check would tell most. Rates nothing.

pub mod evidence;
pub mod explain;
pub mod likelihood;
pub mod network;
pub mod next;
pub mod posterior;
pub mod sort;
