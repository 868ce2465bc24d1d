//! What the shop costs every month whether or not anyone works.

use super::Side;
use crate::{
    journal::On,
    measure::{Day, Dec},
};
use serde::{Deserialize, Serialize};

/// Rent, insurance, storage. Months that it touches count whole.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct MonthlyCost {
    /// When the entry was made.
    pub on: On,
    /// What for.
    pub what: String,
    /// Money a month.
    pub a_month: Dec,
    /// `film`: borne by film hours only. Else by all hours.
    pub side: Side,
    /// First day; none: from the beginning.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub from: Option<Day>,
    /// Last day; none: still going on.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub to: Option<Day>,
    /// Of a power bill: the kWh in it that the tools drew. Where power is in the tools' rates they come off here.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tools_kwh: Option<Dec>,
}
