//! So many like pieces of a build.

use crate::{
    journal::{Id, On},
    measure::{Dec, Unit},
};
use serde::{Deserialize, Serialize};

/// One side of a piece, as typed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Extent {
    /// How much.
    pub amount: Dec,
    /// A unit of length.
    pub unit: Unit,
}

/// A line of the parts list. Sizes are finished ones.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Part {
    /// When it was written down.
    pub on: On,
    /// Of which build.
    pub build: Id,
    /// Leg, rail, slat.
    pub name: String,
    /// How many of them.
    pub count: u32,
    /// Along the grain.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub length: Option<Extent>,
    /// Across it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub width: Option<Extent>,
    /// Through it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub thickness: Option<Extent>,
    /// So many are cut.
    #[serde(default, skip_serializing_if = "is_none")]
    pub cut: u32,
}

// As serde asks for it.
fn is_none(count: &u32) -> bool {
    *count == 0
}
