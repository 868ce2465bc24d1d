//! Something that a build owes somebody, by a day: what a sponsor or a client was promised.

use crate::{
    journal::{Id, On},
    measure::Day,
};
use serde::{Deserialize, Serialize};

/// What is owed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum DueWhat {
    /// The cut, to be looked at before it goes out.
    Review,
    /// Words in the film.
    Mention,
    /// A link under it.
    Link,
    /// Nobody else's goods until then.
    ExclusiveUntil,
    /// Anything else, in words.
    Other,
}

/// Which days a lead counts.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum DaysOf {
    /// All of them.
    #[default]
    Calendar,
    /// Monday to Friday.
    Working,
    /// The working days of whoever it is owed to.
    Theirs,
}

/// So many days from the publish date, or from another due.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct DueLead {
    /// How many; below zero is odd and said so.
    pub days: i32,
    /// Of which days.
    #[serde(default)]
    pub of: DaysOf,
    /// After the publish date; else before it. From another due it is always after.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub later: bool,
}

/// By a day, or by a lead; with neither, some time.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Due {
    /// When it was agreed or noted.
    pub on: On,
    /// Of which build.
    pub build: Id,
    /// What.
    pub what: DueWhat,
    /// In the maker's words; none: what it is, says it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub words: Option<String>,
    /// By this day.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub day: Option<Day>,
    /// Or so long before or after.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lead: Option<DueLead>,
    /// The due from which the lead counts; none: the publish date.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub after: Option<Id>,
    /// To whom.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub outsider: Option<Id>,
    /// Done on this day.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub done: Option<Day>,
}
