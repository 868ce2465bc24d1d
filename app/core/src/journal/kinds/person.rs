//! Somebody who works here, with dated rates.

use crate::{
    journal::On,
    measure::{Day, Dec},
};
use serde::{Deserialize, Serialize};

/// Unpaid time is own labour at its rate; paid time is money at its rate.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Person {
    /// When the entry was made.
    pub on: On,
    /// As called at the bench.
    pub name: String,
    /// Paid wages, which are then not logged as an expense too.
    #[serde(default)]
    pub paid: bool,
    /// In any order; the one in force is the latest that has begun.
    #[serde(default)]
    pub rates: Vec<Rate>,
}

/// Money an hour from a day on.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Rate {
    /// First day in force; none: from the beginning.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub from: Option<Day>,
    /// Money an hour.
    pub an_hour: Dec,
}
