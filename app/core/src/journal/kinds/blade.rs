//! A blade, bit or belt fitted to a tool: it wears by the tool's run hours, and is never drawn to a build.

use crate::{
    journal::{Id, On},
    measure::{Day, Dec},
};
use serde::{Deserialize, Serialize};

/// Fitted on the day of `on`. Runs of the day it comes off belong to the next one.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Blade {
    /// The day it was fitted.
    pub on: On,
    /// To which tool.
    pub tool: Id,
    /// What it is.
    pub what: String,
    /// What it cost, tax that stays in it.
    pub cost: Dec,
    /// Run hours that it lasts.
    pub life: Dec,
    /// Taken off on this day; what is left in it then is a loss of the shop.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub off: Option<Day>,
}
