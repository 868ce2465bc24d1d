//! A planned piece of footage.

use crate::{
    journal::{Id, On},
    measure::Day,
};
use serde::{Deserialize, Serialize};

/// When a shot is to be taken, against its step.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ShotWindow {
    /// Before the step begins.
    Before,
    /// While it goes on.
    #[default]
    During,
    /// After its end.
    After,
}

/// What is to be shot, and what it takes.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Shot {
    /// When it was thought of.
    pub on: On,
    /// Words.
    pub what: String,
    /// Its number on the slate, given once: what was held before the camera stays true. None: its place in the list.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub number: Option<u32>,
    /// Of which build.
    pub build: Id,
    /// At which step of it; none: whenever it fits.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub step: Option<Id>,
    /// Setting up, in whole minutes.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub set_up: Option<u32>,
    /// How many takes are wanted.
    pub takes: u32,
    /// Length of a take as it will be seen, in seconds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seconds: Option<u32>,
    /// The film can do without it.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub nice: bool,
    /// When, against its step.
    #[serde(default)]
    pub window: ShotWindow,
    /// Once its window is over it can't be taken any more.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub once: bool,
    /// Left out, since this day.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub waived: Option<Day>,
}

impl Shot {
    /// One of which nothing is said yet: a must, taken once, while its step goes on.
    pub fn blank(on: On, build: Id) -> Shot {
        Shot {
            on,
            what: String::new(),
            number: None,
            build,
            step: None,
            set_up: None,
            takes: 1,
            seconds: None,
            nice: false,
            window: ShotWindow::During,
            once: false,
            waived: None,
        }
    }
}
