//! A line of the list of what is to be bought.

use crate::{
    journal::{Id, On},
    measure::{Dec, Unit},
};
use serde::{Deserialize, Serialize};

/// So much of an item, or of something that only has words as yet.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct BuyLine {
    /// When it was written down.
    pub on: On,
    /// The item; none: words only.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub item: Option<Id>,
    /// Words; may be empty where there is an item.
    #[serde(default)]
    pub what: String,
    /// How much; none: one, or whatever there is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub quantity: Option<Dec>,
    /// In which unit; none: that of the item, else pieces.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub unit: Option<Unit>,
    /// What all of it is thought to cost, as it was seen; none: nobody has said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub price: Option<Dec>,
    /// The build that it is for; none: the shop.
    #[serde(default, rename = "for", skip_serializing_if = "Option::is_none")]
    pub for_build: Option<Id>,
    /// Ticked: the lot that it became.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bought: Option<Id>,
}
