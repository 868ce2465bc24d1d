//! What was paid at a till; its lines may come later.

use super::{Abroad, Bearer};
use crate::{journal::On, measure::Dec};
use serde::{Deserialize, Serialize};

/// Freight, discount and tax stand once, and are shared by the lines (lots and expenses that name this receipt) by
/// their value. What no line accounts for yet is money paid directly for `bearer`.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Receipt {
    /// The day at the till.
    pub on: On,
    /// From whom.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub whence: Option<String>,
    /// Freight.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub freight: Option<Dec>,
    /// Discount.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub discount: Option<Dec>,
    /// Tax in money.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tax: Option<Dec>,
    /// The tax can be got back, and then is no cost.
    #[serde(default)]
    pub tax_back: bool,
    /// All that was paid, tax and freight in it. None: what the lines come to.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub total: Option<Dec>,
    /// What bears the part that no line accounts for yet; none: the shop.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bearer: Option<Bearer>,
    /// The same as a statement of another country shows it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub abroad: Option<Box<Abroad>>,
}
