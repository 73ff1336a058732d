//! From the ledger to where the walk stands: what was recorded, what applies, what is locked and why,
//! and what comes next. Rates nothing; the word DANGER reaches it as an argument.

pub mod applies;
pub mod bench;
pub mod case;
pub mod former;
pub mod locks;
pub mod order;
pub mod position;
pub mod record;
pub mod relayout;
pub mod together;
pub mod undo;
pub mod vin;
