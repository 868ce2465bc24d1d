//! What was found usable in a salvaged lot, and what was thrown out.

use crate::{
    journal::{Id, On},
    measure::Dec,
};
use serde::{Deserialize, Serialize};

/// How far timber had come when it was thrown out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Link {
    /// As it came, nails and all.
    Gathered,
    /// Its nails were out.
    NailsOut,
    /// It had been sorted as good, and milled.
    Milled,
}

/// Quantities in the lot's unit; what is neither good nor culled is still unsorted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Sort {
    /// The day.
    pub on: On,
    /// The lot.
    pub lot: Id,
    /// Usable.
    pub good: Dec,
    /// Thrown out.
    pub culled: Dec,
    /// How far what was thrown out had come; none: its nails were out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub link: Option<Link>,
}
