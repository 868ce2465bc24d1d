//! Money that comes in: expected, and received.

use super::{Share, Side};
use crate::{
    journal::On,
    measure::{Day, Dec},
};
use serde::{Deserialize, Serialize};

/// Where money comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum IncomeKind {
    /// The pieces themselves.
    Sale,
    /// Work for somebody by the hour or job.
    Commission,
    /// A sponsor's fee.
    Sponsor,
    /// A share of advertising.
    AdShare,
    /// A share of what others sold.
    Affiliate,
    /// Plans, courses, prints.
    Plans,
    /// Anything else.
    Other,
}

/// One payment. Net of it = amount − tax in it − fee.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Received {
    /// The day.
    pub on: Day,
    /// As it arrived; below zero: paid back.
    pub amount: Dec,
    /// Tax that is in it, in money.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tax: Option<Dec>,
    /// Kept back by whoever passed it on.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fee: Option<Dec>,
}

/// Expected amounts are before tax and fees. A deposit counts as received.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Income {
    /// The day it was agreed or noted.
    pub on: On,
    /// Where it comes from.
    pub kind: IncomeKind,
    /// Which side earned it.
    pub side: Side,
    /// Words.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub what: Option<String>,
    /// Which builds, by parts; none: the shop.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub shares: Vec<Share>,
    /// Expected in all, before tax and fees.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub expected: Option<Dec>,
    /// Expected by this day.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub due: Option<Day>,
    /// What arrived so far.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub received: Vec<Received>,
    /// Nothing more will come.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub settled: bool,
}
