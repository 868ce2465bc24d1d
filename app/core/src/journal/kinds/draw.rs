//! Stock taken into a build, or coming back from it.

use super::{Bearer, Side, Source};
use crate::{
    journal::{Id, On},
    measure::{Dec, Unit},
};
use serde::{Deserialize, Serialize};

/// A draw, or a return where it names the draw that it undoes in part.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Draw {
    /// When.
    pub on: On,
    /// From which lot or item.
    pub from: Source,
    /// How much, as typed; 0 or more.
    pub quantity: Dec,
    /// In which unit it was typed.
    pub unit: Unit,
    /// What bears it.
    pub bearer: Bearer,
    /// What it is for; none: the piece.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub side: Option<Side>,
    /// The stage at which it was drawn: the bench offers it there again.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stage: Option<Id>,
    /// The draw that this much of comes back: then it is a return.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub returns: Option<Id>,
    /// Words.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub note: Option<String>,
}
