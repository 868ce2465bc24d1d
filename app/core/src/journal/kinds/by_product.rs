//! What a lot or a build yielded beside what it was for: kindling, shavings, a window sold out of a wall.

use super::Bearer;
use crate::{journal::On, measure::Dec};
use serde::{Deserialize, Serialize};

/// Lowers the fetched part of a lot, or the piece side of a build.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ByProduct {
    /// The day.
    pub on: On,
    /// Of what.
    pub of: Bearer,
    /// What it was.
    pub what: String,
    /// Money that came for it.
    pub amount: Dec,
}
