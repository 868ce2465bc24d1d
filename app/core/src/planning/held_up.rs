//! What holds a build up, in as few words as there are reasons: the longest waits in the chain that decides its end.
//!
//! Source: our own rule, DEVELOPERS.md § House. Not here: the chain itself (`slack`).

use super::{
    schedule::Plan,
    slack::{Gap, Link, Wait},
};
use crate::{
    journal::Id,
    measure::{InOrder, Instant, Seconds},
};

/// Waits shorter than this hold nothing up: a break at noon, a step that ends within the hour.
const LEAST: i64 = 4 * 3600;

/// Why time passes without work.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Cause {
    /// A step dries after its end.
    Dries {
        /// Which.
        step: Id,
        /// So long.
        length: Seconds,
    },
    /// The next free window of somebody.
    NextFree {
        /// Whose.
        person: Id,
        /// For which step.
        step: Id,
        /// When it begins.
        from: Instant,
        /// A shorter one was free before it.
        short: bool,
    },
    /// Something that a step needs is taken by another.
    Taken {
        /// What.
        resource: Id,
        /// Until then.
        until: Instant,
    },
    /// Somebody is at another build's step.
    Elsewhere {
        /// Who.
        person: Id,
        /// At which.
        at: Id,
        /// Until then.
        until: Instant,
    },
    /// A step that may not begin sooner.
    Date {
        /// Which.
        step: Id,
        /// When.
        start: Instant,
    },
    /// Nothing waits long: the work itself, most of it this step.
    Work {
        /// Which.
        step: Id,
        /// So long, by each who is at it.
        length: Seconds,
    },
}

impl Plan {
    /// The longest waits before the end of a build, `many` at most, in the order in which they come.
    pub fn held_up_by(&self, build: Id, many: usize) -> Vec<Cause> {
        let mut chain = self.holds_up(build);
        chain.reverse();
        let mut causes: Vec<(usize, i64, Cause)> = Vec::new();
        for link in &chain {
            for (length, cause) in self.causes(build, link) {
                causes.push((causes.len(), length, cause));
            }
        }
        causes.retain(|(_, length, _)| *length >= LEAST);
        causes.order_by_key(|(at, length, _)| (std::cmp::Reverse(*length), *at));
        causes.truncate(many);
        causes.order_by_key(|(at, ..)| *at);
        if causes.is_empty() {
            let placed = chain.iter().filter_map(|link| self.step(link.step));
            let longest = placed.max_by_key(|it| (it.left, it.step));
            return longest.map(|it| Cause::Work { step: it.step, length: it.left }).into_iter().collect();
        }
        causes.into_iter().map(|it| it.2).collect()
    }

    /// What a step waited for, and the gap after that, with their lengths.
    fn causes(&self, build: Id, link: &Link) -> Vec<(i64, Cause)> {
        let long = |from: Instant, to: Instant| to.since(from).0;
        let waits = match link.waits {
            Wait::Drying { before, from, until } => {
                Some((long(from, until), Cause::Dries { step: before, length: until.since(from) }))
            }
            Wait::Held { resource, by, until } => {
                let from = by.and_then(|by| self.step(by)).map_or(self.now, |it| it.end);
                Some((long(from, until), Cause::Taken { resource, until }))
            }
            Wait::Busy { person, at, until } => {
                let other = self.step(at).filter(|it| it.build != build);
                other.map(|it| (long(it.start, until), Cause::Elsewhere { person, at, until }))
            }
            Wait::Dries { until } => {
                Some((long(self.now, until), Cause::Date { step: link.step, start: until }))
            }
            Wait::Date { start } => Some((long(self.now, start), Cause::Date { step: link.step, start })),
            Wait::Now | Wait::Step { .. } => None,
        };
        let person = self.step(link.step).and_then(|it| it.people.first().copied());
        let gap = link.gap.zip(person).map(|(gap, person)| {
            let (from, to, short) = match gap {
                Gap::NoWindow { from, to } => (from, to, false),
                Gap::TooShort { from, to } => (from, to, true),
            };
            (long(from, to), Cause::NextFree { person, step: link.step, from: to, short })
        });
        waits.into_iter().chain(gap).collect()
    }
}
