//! The film of a build: how much was shot, how long it became, when and where it went out.

use crate::{
    journal::{Id, On},
    measure::{Day, Dec},
};
use serde::{Deserialize, Serialize};

/// What is known of it; the latest entry of a build counts.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Film {
    /// The day.
    pub on: On,
    /// Of which build.
    pub build: Id,
    /// Shot, in minutes.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub footage: Option<Dec>,
    /// As it went out, in minutes.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub finished: Option<Dec>,
    /// The day on which it went out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub published: Option<Day>,
    /// Where it is to be seen.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub address: Option<String>,
}
