//! Stretches as facts: whole seconds, pauses inside, odd ends told; and what dries after them.

use super::{Field, Odd};
use crate::{
    journal::{
        Id,
        kinds::{self, Bearer, Side},
        order::Order,
    },
    measure::{Instant, Seconds, limits},
};

/// From, to; an open end is still going on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Interval {
    /// Begun.
    pub from: Instant,
    /// Ended.
    pub to: Option<Instant>,
}

/// When the work was.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Time {
    /// From and to, or still running.
    Span(Interval),
    /// Only an amount is known: it overlaps nothing and is in no wall-clock figure.
    Amount(Seconds),
}

/// An interval of work.
#[derive(Clone, Debug, PartialEq)]
pub struct Stretch {
    /// Its place in time: the local day of its start.
    pub order: Order,
    /// Who.
    pub person: Id,
    /// What kind of work.
    pub stage: Id,
    /// What bears it.
    pub bearer: Bearer,
    /// What it is for. Hours on a lot are of the piece, whatever their stage.
    pub side: Side,
    /// When.
    pub time: Time,
    /// Breaks.
    pub pauses: Vec<Interval>,
    /// Camera running.
    pub rolling: Vec<Interval>,
    /// Begun together with another's clock, under this mark.
    pub together: Option<Id>,
    /// Told at this moment that it still runs.
    pub still_running: Option<Instant>,
    /// Borne by all that will be made with it.
    pub one_off: bool,
    /// The step of the plan that it is work on.
    pub step: Option<Id>,
    /// Words.
    pub note: Option<String>,
}

impl Stretch {
    pub(super) fn read(order: Order, body: &kinds::Stretch, tell: &mut dyn FnMut(Odd)) -> Stretch {
        let side = if matches!(body.bearer, Bearer::Lot(_)) { Side::Piece } else { body.side };
        Stretch {
            order,
            person: body.person,
            stage: body.stage,
            bearer: body.bearer,
            side,
            time: time(body, tell),
            pauses: intervals(&body.pauses),
            rolling: intervals(&body.rolling),
            together: body.together,
            still_running: body.still_running.map(|when| when.instant),
            one_off: body.one_off,
            step: body.step,
            note: body.note.clone(),
        }
    }

    /// The entry.
    pub fn entry(&self) -> Id {
        self.order.entry
    }

    /// A clock: begun and not ended.
    pub fn runs(&self) -> bool {
        matches!(self.time, Time::Span(Interval { to: None, .. }))
    }

    /// When it began, where that is known.
    pub fn from(&self) -> Option<Instant> {
        match self.time {
            Time::Span(span) => Some(span.from),
            Time::Amount(_) => None,
        }
    }

    /// Paused now: its last pause has no end.
    pub fn paused(&self) -> bool {
        self.runs() && self.pauses.iter().any(|pause| pause.to.is_none())
    }

    /// The camera is rolling now.
    pub fn rolls(&self) -> bool {
        self.runs() && self.rolling.iter().any(|span| span.to.is_none())
    }
}

/// What needs time after the work on it. It begins where its stretch ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Drying {
    /// Its place in time.
    pub order: Order,
    /// The glue-up or the coat.
    pub stretch: Id,
    /// What dries.
    pub item: Option<Id>,
    /// Clamps or the dust-free corner are taken for so long.
    pub held: Option<Seconds>,
    /// The next step may begin after so long.
    pub next: Seconds,
}

impl Drying {
    pub(super) fn read(order: Order, body: &kinds::Drying, tell: &mut dyn FnMut(Odd)) -> Drying {
        let next = minutes(body.next, tell);
        let held = body.held.map(|held| minutes(held, tell));
        Drying { order, stretch: body.stretch, item: body.item, held, next }
    }
}

/// Minutes within the limits; beyond them no time at all, and told.
fn minutes(minutes: u32, tell: &mut dyn FnMut(Odd)) -> Seconds {
    let minutes = i64::from(minutes);
    if minutes <= limits::MOST_HOURS.saturating_mul(60) {
        return Seconds(minutes.saturating_mul(60));
    }
    tell(Odd::OutOfRange(Field::Hours));
    Seconds::ZERO
}

fn time(body: &kinds::Stretch, tell: &mut dyn FnMut(Odd)) -> Time {
    let Some(from) = body.from else {
        return Time::Amount(minutes(body.minutes.unwrap_or(0), tell));
    };
    let from = from.instant;
    let to = body.to.map(|when| when.instant);
    if to.is_some_and(|to| to < from) {
        tell(Odd::EndsBeforeStart);
        return Time::Span(Interval { from, to: Some(from) });
    }
    Time::Span(Interval { from, to })
}

fn intervals(spans: &[kinds::Span]) -> Vec<Interval> {
    let read =
        spans.iter().map(|span| Interval { from: span.from.instant, to: span.to.map(|to| to.instant) });
    read.filter(|span| span.to.is_none_or(|to| to >= span.from)).collect()
}
