//! One try at a shot. An entry of its own, so that two phones can tick takes of the same shot.

use crate::journal::{Id, On};
use serde::{Deserialize, Serialize};

/// A take.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Take {
    /// When it was taken.
    pub on: On,
    /// Of which shot.
    pub shot: Id,
    /// What the camera calls its clip.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub clip: Option<String>,
    /// A keeper.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub keep: bool,
}
