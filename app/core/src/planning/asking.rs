//! What the plan is asked with: builds in the maker's order, their dates, what the film adds, and what is tried out.

use super::turns;
use crate::{
    journal::{Id, Shop, kinds::State, order::Order},
    measure::{Day, InOrder, Instant, Map, Seconds},
    timing::Worked,
};

/// A plan is asked for.
#[derive(Clone, Copy, Debug)]
pub struct Asking<'a> {
    /// Present state.
    pub shop: &'a Shop,
    /// What was worked up to `now`.
    pub worked: &'a [Worked],
    /// The plan begins here.
    pub now: Instant,
    /// Builds that are planned, in the maker's order: [`open_builds`].
    pub builds: &'a [Id],
    /// By when the last step of a build should be over, where that is not the end of its due day: from the way back
    /// from the publish date.
    pub until: &'a Map<Id, Instant>,
    /// Minutes that filming adds to steps.
    pub filming: &'a [Filming],
}

/// What filming adds to one step.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Filming {
    /// Which step.
    pub step: Id,
    /// Slowed by, set-ups and takes of its shots: by each person who is at it.
    pub adds: Seconds,
    /// Of this, shots that are only nice to have.
    pub nice: Seconds,
}

/// Open builds in the order in which they are planned: those that the maker puts first ([`turns`]), then the one that is
/// due first, those without a date last, then the one begun first. Paused ones and ones put away are left out.
pub fn open_builds(shop: &Shop, today: Day) -> Vec<Id> {
    let state = |id: Id| shop.state_of(id, today);
    let open = shop.builds.iter().filter(|(id, _)| {
        let goes_on = matches!(state(**id), State::Begun | State::Reopened);
        goes_on && shop.offers(**id)
    });
    let turn = |id: Id| turns::turn(shop, id, today);
    let mut all: Vec<(usize, bool, Option<Day>, Order, Id)> =
        open.map(|(id, build)| (turn(*id), build.due.is_none(), build.due, build.order, *id)).collect();
    all.order();
    all.into_iter().map(|(.., id)| id).collect()
}

impl Asking<'_> {
    /// By when a build should be over: as given, else the last second of the day on which it is due. Where there are both,
    /// what is given is its film's, and its piece has that day: `two_dates`.
    pub fn due(&self, build: Id) -> Option<Instant> {
        let given = self.until.get(&build).copied();
        given.or_else(|| self.shop.builds.get(&build)?.due.map(|day| self.shop.zone.end_of(day)))
    }
}

/// What is tried out against the plan as it stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Trial {
    /// A step is dropped: what came after it then comes after what it came after.
    Drop {
        /// Which.
        step: Id,
    },
    /// Somebody else does a step.
    Other {
        /// Which.
        step: Id,
        /// Who.
        person: Id,
    },
    /// Shots of a build that are only nice to have are left out.
    LeaveShots {
        /// Which build.
        build: Id,
    },
    /// A shorter film: a build's steps at an edit take that much less.
    Shorter {
        /// Which build.
        build: Id,
        /// So many of the planned thousandths of the film stay.
        thousandths: u32,
    },
    /// Somebody gives one more window.
    Window {
        /// Who.
        person: Id,
        /// From.
        from: Instant,
        /// To.
        to: Instant,
    },
    /// A later date for a build.
    Later {
        /// Which build.
        build: Id,
        /// Until then.
        until: Instant,
    },
}
