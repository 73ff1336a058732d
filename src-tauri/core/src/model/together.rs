//! Steps that are dealt with together: two that share a screen, and the looks that can be said to be sound at once. In
//! the ledger each stays an answer of its own.

use serde::Serialize;

/// Two steps that share a screen, one below the other.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct PairStand {
    /// Its id: `play`. The screen's words are the texts `pair-ID`, `pair-ID-watch`, `pair-ID-do`.
    pub id: String,
    /// The two steps, in walk order.
    pub steps: [String; 2],
    /// The support they are done at, from 1, where the shaft has several.
    pub at_support: Option<u8>,
}

/// The looks that can be said to be sound at once.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct LooksStand {
    /// Every look that is asked for, in walk order.
    pub steps: Vec<String>,
    /// Those of them that "all sound" says now: not answered yet, and not locked.
    pub open: Vec<String>,
}

impl LooksStand {
    /// Whether there are several to be said at once, this one among them.
    pub fn several_with(&self, step: &str) -> bool {
        self.open.len() > 1 && self.open.iter().any(|open| open == step)
    }
}
