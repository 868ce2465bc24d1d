//! Money paid for one bearer directly.

use super::{Abroad, Bearer, Side};
use crate::{
    journal::{Id, On},
    measure::Dec,
};
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
    /// The receipt that it is a line of: discount and tax stand there.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub receipt: Option<Id>,
    /// A jig, a template: borne by all that will be made with it.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub one_off: bool,
    /// The same as a statement of another country shows it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub abroad: Option<Box<Abroad>>,
}
