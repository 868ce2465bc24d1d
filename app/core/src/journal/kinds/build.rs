//! One job: a piece or a batch of like pieces, and the film of it.

use crate::{
    journal::{Id, On},
    measure::{Day, Dec},
};
use serde::{Deserialize, Serialize};

/// A name is enough.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Build {
    /// When it was begun.
    pub on: On,
    /// As chalked on the slate.
    pub title: String,
    /// How many like pieces are to be made.
    #[serde(default = "one")]
    pub items: u32,
    /// When it is due.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub due: Option<Day>,
    /// When its film is to go out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub publish: Option<Day>,
    /// How long its film is to become, in minutes.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub film_planned: Option<Dec>,
    /// The same piece again: the build of which this is a repeat.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub repeat_of: Option<Id>,
    /// How many are to be made in all, repeats counted in: over these the one-off work is spread.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub run_planned: Option<u32>,
    /// Share of the worked items that usually spoils, 0 to 1; none: none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub normal_spoil: Option<Dec>,
}

impl Build {
    /// A name is all that is said of it: one piece.
    pub fn named(on: On, title: String) -> Build {
        Build {
            on,
            title,
            items: one(),
            due: None,
            publish: None,
            film_planned: None,
            repeat_of: None,
            run_planned: None,
            normal_spoil: None,
        }
    }
}

fn one() -> u32 {
    1
}
