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
    /// Area that so much of it covers with one coat, by its tin or its data sheet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub covers: Option<Dec>,
    /// Unit of that area.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub covers_unit: Option<Unit>,
    /// Of how much that is said: a litre, a tin.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub covers_per: Option<Unit>,
    /// It dries by taking up oxygen; none: nobody said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub oxidises: Option<bool>,
    /// Its maker states it for contact with food.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub food_safe: Option<bool>,
    /// Where to get it, as the maker gives it under a film.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub link: Option<String>,
}

impl Item {
    /// Nothing said of it but this.
    pub fn named(on: On, name: &str, purpose: Use, unit: Unit) -> Item {
        Item {
            on,
            name: name.to_owned(),
            purpose,
            unit,
            word: None,
            content: None,
            content_unit: None,
            low: None,
            covers: None,
            covers_unit: None,
            covers_per: None,
            oxidises: None,
            food_safe: None,
            link: None,
        }
    }
}
