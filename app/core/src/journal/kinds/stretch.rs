//! An interval of work; without an end it is a clock.

use super::{Bearer, Side};
use crate::{
    journal::{Id, On},
    measure::{Seconds, When},
};
use serde::{Deserialize, Serialize};

/// From and to; an open `to` is still going on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Span {
    /// Begun.
    pub from: When,
    /// Ended.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub to: Option<When>,
}

/// Either `from` (with or without `to`), or a day in `on` with `minutes`.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Stretch {
    /// The day, where only an amount of hours was given; else the start.
    pub on: On,
    /// Who.
    pub person: Id,
    /// What kind of work.
    pub stage: Id,
    /// What bears it.
    pub bearer: Bearer,
    /// What it is for.
    pub side: Side,
    /// Begun; none where only an amount was given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub from: Option<When>,
    /// Ended; none while the clock runs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub to: Option<When>,
    /// Hours logged as an amount, in minutes as typed: they overlap nothing and are in no wall-clock figure.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub minutes: Option<u32>,
    /// Breaks inside it, as intervals.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub pauses: Vec<Span>,
    /// Camera running, as intervals.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub rolling: Vec<Span>,
    /// Clocks that were begun as "both" carry the same mark, and pause, change over and stop together.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub together: Option<Id>,
    /// Asked whether it still runs, and told so, at this moment.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub still_running: Option<When>,
    /// Making jigs, templates, the design: borne by all that will be made with it.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub one_off: bool,
    /// The step of the plan that it is work on.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub step: Option<Id>,
    /// Words.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub note: Option<String>,
}

impl Span {
    /// The length of all spans that have ended, one after another.
    pub fn whole(spans: &[Span]) -> Seconds {
        let ended = spans.iter().filter_map(|span| Some(span.to?.instant.since(span.from.instant)));
        ended.fold(Seconds::ZERO, Seconds::plus)
    }
}

impl Stretch {
    /// The amount of hours that was logged; none where it has a start.
    pub fn logged(&self) -> Option<Seconds> {
        self.minutes.map(|minutes| Seconds(i64::from(minutes).saturating_mul(60)))
    }
}
