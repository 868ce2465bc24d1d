//! Money of another country, as the statement shows it.

use crate::measure::Dec;
use serde::{Deserialize, Serialize};

/// Kept beside what was charged in the shop's currency, which alone is costed. Amounts of other countries are listed,
/// never added.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Abroad {
    /// The amount.
    pub amount: Dec,
    /// Its currency (ISO 4217).
    pub currency: String,
}
