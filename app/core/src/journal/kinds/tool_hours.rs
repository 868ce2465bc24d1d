//! Run hours of a tool as read off its counter, or known better than by the share of the stage.

use super::Bearer;
use crate::{
    journal::{Id, On},
    measure::Dec,
};
use serde::{Deserialize, Serialize};

/// Takes the place of the tool's duty for that day, stage and bearer.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ToolHours {
    /// The day.
    pub on: On,
    /// Which tool.
    pub tool: Id,
    /// What bears it.
    pub bearer: Bearer,
    /// At which stage.
    pub stage: Id,
    /// Run hours.
    pub hours: Dec,
}
