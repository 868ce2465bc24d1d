//! Items leaving: sold, given, kept.

use crate::journal::{Id, On};
use serde::{Deserialize, Serialize};

/// What became of them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum HandedOver {
    /// For money.
    Sold,
    /// For nothing.
    Given,
    /// By the maker.
    Kept,
}

/// So many leave.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct HandOver {
    /// The day.
    pub on: On,
    /// Of which build.
    pub build: Id,
    /// How many.
    pub count: u32,
    /// What became of them.
    pub how: HandedOver,
    /// The money for them, where it is kept as an entry.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub income: Option<Id>,
}
