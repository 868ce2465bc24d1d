//! A drive, shared among what it was for.

use super::Bearer;
use crate::{journal::On, measure::Dec};
use serde::{Deserialize, Serialize};

/// So many parts of a trip for one bearer.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Share {
    /// What bears them.
    pub bearer: Bearer,
    /// Parts of the whole, 1 or more.
    pub parts: u32,
}

/// Kilometres there and back at the shop's rate, and what the way itself cost.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Trip {
    /// The day.
    pub on: On,
    /// Kilometres, there and back.
    pub km: Dec,
    /// Tolls, parking, ferry: money.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fee: Option<Dec>,
    /// Who bears it.
    pub shares: Vec<Share>,
}
