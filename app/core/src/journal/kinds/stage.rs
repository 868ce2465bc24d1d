//! A kind of work.

use super::Side;
use crate::journal::On;
use serde::{Deserialize, Serialize};

/// Rules hang on the role, which survives a change of name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Role {
    /// Fetching things.
    Haul,
    /// Making salvaged timber usable.
    Reclaim,
    /// Glue sets after it.
    GlueUp,
    /// A coat dries after it.
    Finish,
    /// In front of the camera.
    Shoot,
    /// Cutting the film.
    Edit,
    /// Carries no overhead.
    Admin,
}

/// The 21 usual stages stand without an entry (`journal::stages`); an entry of the same id changes one.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Stage {
    /// When the entry was made.
    pub on: On,
    /// As called at the bench.
    pub name: String,
    /// What its hours are for, unless a stretch says otherwise.
    pub side: Side,
    /// What rules hang on, if any.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub role: Option<Role>,
}
