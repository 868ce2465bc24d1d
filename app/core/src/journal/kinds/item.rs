//! Something kept in stock.

use crate::{
    journal::On,
    measure::{Dec, Unit},
};
use serde::{Deserialize, Serialize};

/// What a thing in stock is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Use {
    /// Wood and boards.
    Timber,
    /// Hinges, screws, glass: stays in the piece.
    Fitting,
    /// Glue, oil, abrasives: used up.
    Consumable,
}

/// One sort of thing; its lots are alike and drawn by the shop's formula.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Item {
    /// When the entry was made.
    pub on: On,
    /// As written on the shelf.
    pub name: String,
    /// What it is for.
    #[serde(rename = "use")]
    pub purpose: Use,
    /// What it is counted in.
    pub unit: Unit,
    /// The maker's own word for one of it: `disc`, `tin`, `bottle`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub word: Option<String>,
    /// What one of it holds, in `content_unit`: a tin of 750 ml.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub content: Option<Dec>,
    /// Unit of `content`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub content_unit: Option<Unit>,
    /// Say so when less than this is left.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub low: Option<Dec>,
}
