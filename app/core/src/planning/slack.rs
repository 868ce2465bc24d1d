//! Slack: how much free time is left between the end of a build and its date, and what holds the build up.
//!
//! Slack is free hours of whoever runs the last step, less what else is planned for them there, then days. Late: below
//! zero, the free hours that were used beyond the date. What holds it up is a chain from the last step back: each step
//! begins where it does because of one thing that was over last.
//! Worked example: over Saturday 12:06, due Wednesday: Saturday's last 54 minutes are the only free ones, and 4 days.
//! Source: our own rule, DEVELOPERS.md § House. Not here: how likely that is (`chance`).

use super::{place::Spot, schedule::Plan, two_dates::Dated};
use crate::{
    journal::{Id, kinds::Side},
    measure::{Instant, Seconds},
};

/// Time that is left.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Slack {
    /// Who runs the last step; of several the one with the least left.
    pub person: Id,
    /// Free hours of theirs between the end and the date; below zero: late by so many.
    pub free: Seconds,
    /// Whole days of 24 hours between the two; below zero: late.
    pub days: i64,
    /// Which side has so little left, where each has its date; none: the whole build.
    pub side: Option<Side>,
}

/// Why a step can't begin sooner.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wait {
    /// Nothing but now.
    Now,
    /// Its own date.
    Date {
        /// When it is to begin.
        start: Instant,
    },
    /// Something that is done dries until then.
    Dries {
        /// When it may begin.
        until: Instant,
    },
    /// The step before it.
    Step {
        /// Which.
        before: Id,
    },
    /// The step before it, and what must pass after that.
    Drying {
        /// Which.
        before: Id,
        /// Its end.
        from: Instant,
        /// When this one may begin.
        until: Instant,
    },
    /// Something that it needs is taken.
    Held {
        /// What.
        resource: Id,
        /// By which step; none: by one that is done.
        by: Option<Id>,
        /// Until then.
        until: Instant,
    },
    /// Somebody who must be at it is at something else.
    Busy {
        /// Who.
        person: Id,
        /// At which step.
        at: Id,
        /// Until then.
        until: Instant,
    },
}

/// Between what a step waited for and its start nobody is free, or not for long enough.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Gap {
    /// No free window.
    NoWindow {
        /// From.
        from: Instant,
        /// To.
        to: Instant,
    },
    /// Free windows, none of them long enough for a step in one go, or one that nothing comes in between of.
    TooShort {
        /// From.
        from: Instant,
        /// To.
        to: Instant,
    },
}

/// One step of the chain.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Link {
    /// Which.
    pub step: Id,
    /// It begins.
    pub start: Instant,
    /// It ends.
    pub end: Instant,
    /// Because of this it does not begin sooner.
    pub waits: Wait,
    /// And after that, because of this.
    pub gap: Option<Gap>,
}

impl Plan {
    /// What is left before a build's date, of two of the one with less before it. None: no date, no step, or one without
    /// room.
    pub fn slack(&self, build: Id) -> Option<Slack> {
        self.tightest(build).map(|it| it.0)
    }

    /// The same, and the step that it is counted from.
    fn tightest(&self, build: Id) -> Option<(Slack, Id)> {
        let all = self.dated(build).into_iter().filter_map(|it| Some((self.slack_of(&it)?, it.last)));
        let late = |it: &Slack| it.free.0 >= 0 && it.days >= 0;
        all.min_by_key(|(it, _)| (late(it), it.free, it.days))
    }

    fn slack_of(&self, dated: &Dated) -> Option<Slack> {
        let Dated { side, finish, due, .. } = *dated;
        let last = self.step(dated.last)?;
        let late = finish > due;
        let (from, to) = if late { (due, finish) } else { (finish, due) };
        let free = |person: &Id| {
            let free = self.free(*person).map_or(0, |it| it.between(from, to).0);
            let others = self.steps.iter().filter(|it| !late && it.people.contains(person));
            let inside = |(begins, ends): &(Instant, Instant)| {
                ends.0.min(to.0).saturating_sub(begins.0.max(from.0)).max(0)
            };
            let taken = others.flat_map(|it| &it.pieces).map(inside).fold(0_i64, i64::saturating_add);
            free.saturating_sub(taken)
        };
        let (free, person) = last.people.iter().map(|it| (free(it), *it)).min()?;
        let signed = |it: i64| if late { it.saturating_neg() } else { it };
        let days = to.since(from).0.div_euclid(86_400);
        Some(Slack { person, free: Seconds(signed(free)), days: signed(days), side })
    }

    /// The chain of steps that decides when a build is over, the last first; of two dates, the one with less before it.
    pub fn holds_up(&self, build: Id) -> Vec<Link> {
        let mut chain: Vec<Link> = Vec::new();
        let tightest = self.tightest(build).map(|it| it.1);
        let mut next = tightest.or_else(|| self.build(build)?.last);
        while let Some(step) = next {
            let Some(at) = self.network.steps.iter().position(|it| *it == step) else { break };
            let Some(link) = self.link(at).filter(|_| chain.len() < self.network.steps.len()) else { break };
            next = match link.waits {
                Wait::Step { before } | Wait::Drying { before, .. } => Some(before),
                Wait::Busy { at, .. } => Some(at),
                Wait::Held { by, .. } => by,
                Wait::Now | Wait::Date { .. } | Wait::Dries { .. } => None,
            };
            chain.push(link);
        }
        chain
    }

    fn link(&self, at: usize) -> Option<Link> {
        let net = &self.network;
        let (task, spot) = (net.model.tasks.get(at)?, *self.spots.get(at)?);
        if spot.never() {
            return None;
        }
        let release = Instant(task.release);
        let first = match release {
            now if now <= self.now => Wait::Now,
            start if task.fixed => Wait::Date { start },
            until => Wait::Dries { until },
        };
        let mut waits = vec![(task.release, first)];
        for (before, wait) in &task.before {
            let (step, end) = (*net.steps.get(*before)?, self.spots.get(*before)?.end);
            let until = end.saturating_add(*wait);
            let (from, may) = (Instant(end), Instant(until));
            let reason = if *wait > 0 {
                Wait::Drying { before: step, from, until: may }
            } else {
                Wait::Step { before: step }
            };
            waits.push((until, reason));
        }
        self.taken_by_others(at, spot, &mut waits);
        // Of two that are over at once the step that it comes after is the better reason: it stands last.
        let latest = waits.iter().map(|(until, _)| *until).filter(|it| *it <= spot.start).max()?;
        let (_, reason) = *waits.iter().rev().find(|(until, _)| *until == latest)?;
        let gap = (latest < spot.start).then(|| self.gap(at, spot, latest)).flatten();
        Some(Link {
            step: *net.steps.get(at)?,
            start: Instant(spot.start),
            end: Instant(spot.end),
            waits: reason,
            gap,
        })
    }

    /// Steps placed before this one that its people or its resources were at until it began.
    fn taken_by_others(&self, at: usize, spot: Spot, waits: &mut Vec<(i64, Wait)>) {
        let net = &self.network;
        let Some(task) = net.model.tasks.get(at) else { return };
        let mine = task.ways.get(spot.way).map(|it| it.people.as_slice()).unwrap_or_default();
        let mut found = Vec::new();
        for other in self.order.iter().take_while(|it| **it != at) {
            let (Some(step), Some(there)) = (net.steps.get(*other), self.spots.get(*other)) else { continue };
            let Some(theirs) = net.model.tasks.get(*other) else { continue };
            let people = theirs.ways.get(there.way).map(|it| it.people.as_slice()).unwrap_or_default();
            let shared = people.iter().find(|it| mine.contains(it)).and_then(|it| net.people.get(*it));
            if let Some(person) = shared.filter(|_| there.end <= spot.start) {
                found.push((there.end, Wait::Busy { person: *person, at: *step, until: Instant(there.end) }));
            }
            for it in &theirs.takes {
                let until = there.end.saturating_add(it.after);
                let wants = task.takes.iter().find(|own| own.unit == it.unit).map_or(0, |own| own.count);
                if wants > 0 && until <= spot.start && self.full(it.unit, wants, until) {
                    found.extend(self.held(it.unit, Some(*step), until));
                }
            }
        }
        for (unit, _, until, _) in &net.model.taken {
            let wants = task.takes.iter().find(|own| own.unit == *unit).map_or(0, |own| own.count);
            if wants > 0 && *until <= spot.start && self.full(*unit, wants, *until) {
                found.extend(self.held(*unit, None, *until));
            }
        }
        found.append(waits);
        *waits = found;
    }

    fn held(&self, unit: usize, by: Option<Id>, until: i64) -> Option<(i64, Wait)> {
        let resource = *self.network.resources.get(unit.checked_sub(self.network.people.len())?)?;
        Some((until, Wait::Held { resource, by, until: Instant(until) }))
    }

    /// Just before an instant there was not enough of a unit.
    fn full(&self, unit: usize, wants: u32, until: i64) -> bool {
        let model = &self.network.model;
        let before = until.saturating_sub(1);
        let steps = model.tasks.iter().zip(&self.spots).flat_map(|(task, spot)| {
            let of_unit = task.takes.iter().filter(move |it| it.unit == unit);
            of_unit.map(|it| (spot.start, spot.end.saturating_add(it.after), it.count))
        });
        let left = model.taken.iter().filter(|it| it.0 == unit).map(|it| (it.1, it.2, it.3));
        let there = steps.chain(left).filter(|(from, to, _)| *from <= before && before < *to);
        let taken = there.fold(0_u32, |sum, it| sum.saturating_add(it.2));
        taken.saturating_add(wants) > model.capacity.get(unit).copied().unwrap_or(0)
    }

    fn gap(&self, at: usize, spot: Spot, from: i64) -> Option<Gap> {
        let model = &self.network.model;
        let way = model.tasks.get(at)?.ways.get(spot.way)?;
        let calendar = model.calendars.get(way.calendar)?;
        let (from, to) = (Instant(from), Instant(spot.start));
        let free = !calendar.between(from, to).is_zero();
        Some(if free { Gap::TooShort { from, to } } else { Gap::NoWindow { from, to } })
    }
}
