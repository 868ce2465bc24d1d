//! A day that is not as its weekday says: off, or with more time.
//!
//! An entry of its own and not a list in the person's: two phones that each note a day off then make two entries, and
//! merging keeps both; in one list they would be two versions of a person, and one of them would have to be picked.

use super::Window;
use crate::{
    journal::{Id, On},
    measure::Day,
};
use serde::{Deserialize, Serialize};

/// Without windows the days are off; with windows these come beside what the weekday gives. A day off wins over both.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct FreeDay {
    /// When it was written down.
    pub on: On,
    /// Whose.
    pub person: Id,
    /// The day, or the first of them.
    pub day: Day,
    /// The last of them; none: one day.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub last: Option<Day>,
    /// More time on that day; none: off.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub extra: Vec<Window>,
}
