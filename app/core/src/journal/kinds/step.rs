//! A piece of planned work.

use crate::{
    journal::{Id, On},
    measure::{Day, Dec, When},
};
use serde::{Deserialize, Serialize};

/// What must be over before it begins.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct After {
    /// The step before.
    pub step: Id,
    /// Hours that must pass after its end, day and night.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wait: Option<Dec>,
}

/// What is taken while it goes on.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Need {
    /// Clamps, the bench, the dust-free corner.
    pub resource: Id,
    /// How many of it.
    pub count: u32,
    /// Hours that they stay taken after its end.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub held: Option<Dec>,
}

/// Hours are of each person who is at it, as typed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Step {
    /// The day on which it was thought of.
    pub on: On,
    /// Words.
    pub title: String,
    /// Of which build.
    pub build: Id,
    /// What kind of work.
    pub stage: Id,
    /// Who does it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub who: Vec<Id>,
    /// Any one of them will do; else all are needed.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub any: bool,
    /// One time in ten it is quicker than this.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub quick: Option<Dec>,
    /// What it usually takes.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub usual: Option<Dec>,
    /// One time in ten it is slower than this.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub slow: Option<Dec>,
    /// How much there is to do, in the stage's unit of work.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub units: Option<Dec>,
    /// What comes before it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub after: Vec<After>,
    /// What it takes.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub needs: Vec<Need>,
    /// It can't be broken off.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub one_go: bool,
    /// Other steps of whoever is at it may come in between.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub gives_way: bool,
    /// The camera is there.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub filmed: bool,
    /// It begins then.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub start: Option<When>,
    /// It is over by then.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub end: Option<When>,
    /// It may be dropped: what that costs, in the maker's words.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub drops: Option<String>,
    /// Done on this day.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub done: Option<Day>,
    /// Hours left, where the maker knows better.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub left: Option<Dec>,
}

impl Step {
    /// One of which nothing is known yet.
    pub fn blank(on: On, build: Id, stage: Id) -> Step {
        Step {
            on,
            title: String::new(),
            build,
            stage,
            who: Vec::new(),
            any: false,
            quick: None,
            usual: None,
            slow: None,
            units: None,
            after: Vec::new(),
            needs: Vec::new(),
            one_go: false,
            gives_way: false,
            filmed: false,
            start: None,
            end: None,
            drops: None,
            done: None,
            left: None,
        }
    }
}
