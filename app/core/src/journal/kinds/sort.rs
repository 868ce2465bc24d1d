//! What was found usable in a salvaged lot, and what was thrown out.

use crate::{
    journal::{Id, On},
    measure::Dec,
};
use serde::{Deserialize, Serialize};

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
}
