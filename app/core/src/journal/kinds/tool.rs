//! A thing that wears and is used again.

use crate::{
    journal::{Id, On},
    measure::{Day, Dec},
};
use serde::{Deserialize, Serialize};

/// How a tool was come by. Wear counts for the maker's own only.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ToolFrom {
    /// The maker's own.
    #[default]
    Bought,
    /// Given by a sponsor.
    Supplied,
    /// Lent: no wear, but it is said under the film.
    Lent,
}

/// At this stage it runs for so much of the time.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Duty {
    /// Which stage.
    pub stage: Id,
    /// Share of the time, more than 0 to 1.
    pub share: Dec,
}

/// From a day on so many hours are left in it, whatever was thought before.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct LifeLeft {
    /// First day in force.
    pub from: Day,
    /// Hours that are left in it at the beginning of that day.
    pub hours: Dec,
}

/// Money in the shop's currency, hours as decimals.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Tool {
    /// When it came, or when the entry was made.
    pub on: On,
    /// As called at the bench.
    pub name: String,
    /// What it cost.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub price: Option<Dec>,
    /// What it will fetch at the end.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub resale: Option<Dec>,
    /// Run hours that it lasts.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub life: Option<Dec>,
    /// Belts, oil, sharpening by others: money a run hour. Blades are apart.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub upkeep: Option<Dec>,
    /// Rated power, kW.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub kw: Option<Dec>,
    /// Share of the rated power that it draws at work, 0 to 1; none: all.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub load: Option<Dec>,
    /// Run hours before this journal.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub before: Option<Dec>,
    /// The stages at which it runs.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub duty: Vec<Duty>,
    /// Runs while the camera rolls, whatever the stage; on the film's side.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub rolls: bool,
    /// How it was come by.
    #[serde(default)]
    pub from: ToolFrom,
    /// Changed views of its life, each from a day on.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub left: Vec<LifeLeft>,
    /// Gone from this day on: sold, given, scrapped.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gone: Option<Day>,
    /// Who gave or lent it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub by: Option<Id>,
    /// Where to get one, as the maker gives it under a film.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub link: Option<String>,
}
