//! Finished items: those that can be sold or used, and those that can't.

use crate::{
    journal::{Id, On},
    measure::Dec,
};
use serde::{Deserialize, Serialize};

/// So many are finished; adds to what was finished before.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Made {
    /// The day.
    pub on: On,
    /// Of which build.
    pub build: Id,
    /// Good ones.
    pub good: u32,
    /// Of each spoiled one: the share of the work that was in it, 0 to 1.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub spoiled: Vec<Dec>,
    /// What the spoiled ones fetched.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub scrap: Option<Dec>,
}
