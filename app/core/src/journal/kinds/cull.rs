//! Timber of a salvaged lot that was thrown out by itself, after the sorting or beside it.
//!
//! Usual wastage lowers what is usable, and the rest costs more. What nobody could expect (a flood, rot in store) is a
//! loss of the shop at what it had cost, and the rest costs what it did.

use super::Link;
use crate::{
    journal::{Id, On},
    measure::Dec,
};
use serde::{Deserialize, Serialize};

/// So much of a lot, thrown out.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Cull {
    /// The day.
    pub on: On,
    /// The lot.
    pub lot: Id,
    /// How much, in the lot's unit.
    pub quantity: Dec,
    /// How far it had come; none: it had been sorted as good.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub link: Option<Link>,
    /// Nobody could expect it: a loss, no wastage.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub unexpected: bool,
}
