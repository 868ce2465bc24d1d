//! What was found on the shelf, or went from it without a build.

use super::Source;
use crate::{
    journal::On,
    measure::{Dec, Unit},
};
use serde::{Deserialize, Serialize};

/// What was found, or done.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ShelfState {
    /// Nothing is left: what was drawn is all that there was.
    Empty,
    /// So much was counted.
    Counted,
    /// So much spoiled in store and was thrown out.
    ThrownOut,
    /// So much was given away.
    Given,
}

/// A look at the shelf.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Shelf {
    /// When.
    pub on: On,
    /// Of which lot or item.
    pub of: Source,
    /// What was found, or done.
    pub state: ShelfState,
    /// How much, as typed; 0 or more. None where it is empty.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub quantity: Option<Dec>,
    /// In which unit; none: that of the stock.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub unit: Option<Unit>,
    /// Words.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub note: Option<String>,
}

impl Shelf {
    /// Found empty.
    pub fn empty(on: On, of: Source) -> Shelf {
        Shelf { on, of, state: ShelfState::Empty, quantity: None, unit: None, note: None }
    }

    /// So much counted, thrown out or given away.
    pub fn of(on: On, of: Source, state: ShelfState, quantity: Dec, unit: Unit) -> Shelf {
        Shelf { on, of, state, quantity: Some(quantity), unit: Some(unit), note: None }
    }
}
