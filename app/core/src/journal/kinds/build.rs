//! One job: a piece or a batch of like pieces, and the film of it.

use crate::{journal::On, measure::Day};
use serde::{Deserialize, Serialize};

/// A name is enough.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Build {
    /// When it was begun.
    pub on: On,
    /// As chalked on the slate.
    pub title: String,
    /// How many like pieces are to be made.
    #[serde(default = "one")]
    pub items: u32,
    /// When it is due.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub due: Option<Day>,
}

fn one() -> u32 {
    1
}
