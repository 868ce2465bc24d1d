//! Somebody who works here, with dated rates.

use crate::{
    journal::On,
    measure::{Day, Dec, TimeOfDay, Weekday},
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
    /// Hours that are free for the shop, week by week; none: never said.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub free: Vec<FreeHours>,
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

/// Free from one local time to another on every such weekday. Up to a time that is not later: over midnight.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct FreeHours {
    /// Which day of the week.
    pub weekday: Weekday,
    /// From.
    pub from: TimeOfDay,
    /// To.
    pub to: TimeOfDay,
}

/// From one local time of a day to another; up to a time that is not later: over midnight.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Window {
    /// From.
    pub from: TimeOfDay,
    /// To.
    pub to: TimeOfDay,
}
