//! Money paid for one bearer directly.

use super::{Bearer, Side};
use crate::{journal::On, measure::Dec};
use serde::{Deserialize, Serialize};

/// Hall hire, a memory card, sharpening: nothing that goes through the shelf.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Expense {
    /// When.
    pub on: On,
    /// What it was for.
    pub what: String,
    /// Money, before tax.
    pub amount: Dec,
    /// Tax in money.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tax: Option<Dec>,
    /// The tax can be got back, and then is no cost.
    #[serde(default)]
    pub tax_back: bool,
    /// What bears it.
    pub bearer: Bearer,
    /// What it is for.
    pub side: Side,
}
