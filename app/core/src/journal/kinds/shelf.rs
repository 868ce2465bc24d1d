//! What was found on the shelf.

use super::Source;
use crate::journal::On;
use serde::{Deserialize, Serialize};

/// What was found.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ShelfState {
    /// Nothing is left: what was drawn is all that there was.
    Empty,
}

/// A look at the shelf.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Shelf {
    /// When.
    pub on: On,
    /// Of which lot or item.
    pub of: Source,
    /// What was found.
    pub state: ShelfState,
}
