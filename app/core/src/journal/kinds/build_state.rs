//! A build that is paused, closed, reopened.

use crate::{
    journal::{Id, On},
    measure::Dec,
};
use serde::{Deserialize, Serialize};

/// Where a build stands from then on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum State {
    /// Under way.
    Begun,
    /// Laid aside.
    Paused,
    /// Done; what its draws cost stays as it was.
    Closed,
    /// Under way again; its draws cost what is known today.
    Reopened,
}

/// The parts of a cost as stored: money in the shop's currency, hours in seconds.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct StoredParts {
    /// Paid for things.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub money: Option<Dec>,
    /// Paid labour.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub paid: Option<Dec>,
    /// Kilometres at the shop's rate.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub vehicle: Option<Dec>,
    /// Own labour at its rate.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub own: Option<Dec>,
    /// Value of what was supplied.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub supplied: Option<Dec>,
    /// Wear, power, upkeep.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tools: Option<Dec>,
    /// Share of the shop.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub overhead: Option<Dec>,
    /// Own hours in it, in seconds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub own_seconds: Option<Dec>,
    /// Paid people's hours in it, in seconds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub paid_seconds: Option<Dec>,
}

/// What a draw cost when its build was closed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Frozen {
    /// The draw.
    pub draw: Id,
    /// What stayed drawn, in the unit of its stock.
    pub quantity: Dec,
    /// From the pool of what was fetched, or from an item's shelf.
    pub fetched: StoredParts,
    /// From the pool of what was reclaimed.
    #[serde(default)]
    pub reclaimed: StoredParts,
}

/// From that day on. Within a day reopening comes first and closing last.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct BuildState {
    /// When.
    pub on: On,
    /// Which build.
    pub build: Id,
    /// Where it stands.
    pub state: State,
    /// Of a closing: what its draws cost then.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub frozen: Vec<Frozen>,
}
