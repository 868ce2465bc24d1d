//! What there is a count of, and steps take: clamps, the bench, the dust-free corner.

use crate::journal::On;
use serde::{Deserialize, Serialize};

/// Not stock: it comes back when the step is over.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Resource {
    /// When it was written down.
    pub on: On,
    /// As called in the shop.
    pub name: String,
    /// How many there are.
    pub count: u32,
}
