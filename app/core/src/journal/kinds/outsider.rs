//! Somebody outside the shop who is waited for: a sponsor, a client, another shop.

use crate::{
    journal::On,
    measure::{Day, Weekday},
};
use serde::{Deserialize, Serialize};

/// What somebody outside is to the shop.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum OutsiderKind {
    /// Pays for, or gives something to, a film.
    Sponsor,
    /// Has something made.
    Client,
    /// Another shop: planes, glazes, prints.
    Shop,
}

/// Their days count when something waits for them.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Outsider {
    /// When the entry was made.
    pub on: On,
    /// As called here.
    pub name: String,
    /// What they are to the shop.
    pub kind: OutsiderKind,
    /// Days of the week on which they work, 1 Monday to 7 Sunday (ISO 8601).
    #[serde(default = "monday_to_friday")]
    pub week: Vec<u8>,
    /// Days on which they don't.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub off: Vec<Day>,
}

/// The days that most work. Source: common practice; changed by a tap.
pub fn monday_to_friday() -> Vec<u8> {
    let week = Weekday::ALL.into_iter().take(5);
    week.map(|day| day.after_monday().saturating_add(1)).collect()
}
