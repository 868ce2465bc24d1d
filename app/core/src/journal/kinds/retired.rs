//! A thing that is not offered any more: a finished build, a partner who left, an item never bought again.

use crate::journal::{Id, On};
use serde::{Deserialize, Serialize};

/// Nothing that names the thing changes; the latest word about it holds.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Retired {
    /// When it was put away, or taken back.
    pub on: On,
    /// Which build, person, stage, item, lot or tool.
    pub what: Id,
    /// It is offered again.
    #[serde(default, skip_serializing_if = "is_false")]
    pub back: bool,
}

#[allow(clippy::trivially_copy_pass_by_ref, reason = "serde asks for a reference")]
fn is_false(it: &bool) -> bool {
    !*it
}
