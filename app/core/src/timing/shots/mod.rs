//! Shots of a build: in which order they are to be taken, how each stands, what is next, what is about to be too late.
//!
//! A shot has been taken when a take of it is a keeper, or when there are as many takes as were wanted. Its window opens
//! and closes with its step: before it begins, while it goes on, after its end and before the next begins. Once that is
//! over, a shot that can be had *once only* is missed; any other can still be set up and is late. A shot without a step,
//! or whose step was struck out, belongs to the build and can be taken whenever it fits. Source: our own rule.
//!
//! Worked example: sand, then coat. "First wipe", before the coat, once only: it can be taken from the moment sanding
//! begins, is told on the bench while it goes on, and is missed once the coat has begun.

mod added;
mod along;
#[cfg(test)]
mod tests;

pub use added::{Added, REAL_SECONDS, added, added_in_all, real_seconds, with_camera};
pub use along::{Along, along};

use crate::{
    journal::{
        Id, Shop,
        kinds::ShotWindow,
        shop::{Shot, Stretch, Take},
    },
    measure::{InOrder, Map},
};

/// How a shot stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Standing {
    /// It can be taken now.
    Open,
    /// Its window is over, but it can be set up again.
    Late,
    /// Its window is not open yet.
    Ahead,
    /// Once only, and not taken in time.
    Missed,
    /// Taken.
    Taken,
    /// Left out by the maker.
    Waived,
}

impl Standing {
    /// It is still to be taken, and can be.
    pub fn is_to_take(self) -> bool {
        matches!(self, Standing::Open | Standing::Late | Standing::Ahead)
    }
}

/// What a shot that can be had once only must come before.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Before {
    /// This step begins.
    Begins(Id),
    /// This step is over.
    Ends(Id),
}

/// A shot in its place in the list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Listed {
    /// The entry.
    pub shot: Id,
    /// What stands on the slate.
    pub number: u32,
    /// Its step, while that stands.
    pub step: Option<Id>,
    /// It names a step that was struck out.
    pub step_lost: bool,
    /// Its takes, places in `shop.takes`, as they were taken.
    pub takes: Vec<usize>,
    /// Takes that are wanted.
    pub wanted: u32,
    /// How it stands.
    pub standing: Standing,
    /// Once only: what it must come before.
    pub before: Option<Before>,
    /// That is the next to happen: with the change-over it is too late.
    pub closing: bool,
}

impl Listed {
    /// The number of the next take.
    pub fn next_take(&self) -> u32 {
        u32::try_from(self.takes.len()).unwrap_or(u32::MAX).saturating_add(1)
    }
}

/// The shots of a build: by the order of their steps, in a step by window, then what must be had, then as they were
/// thought of. Those without a step come last.
pub fn listed(shop: &Shop, build: Id) -> Vec<Listed> {
    let mut of_build: Vec<(&Id, &Shot)> =
        shop.shots.iter().filter(|(_, it)| it.body.build == build).collect();
    if of_build.is_empty() {
        return Vec::new();
    }
    of_build.order_by_key(|(_, it)| it.order);
    let along = along(shop, build);
    let mut takes: Map<Id, Vec<usize>> = Map::new();
    for (at, take) in shop.takes.iter().enumerate() {
        takes.entry(take.shot).or_default().push(at);
    }
    let place = |at: usize| u32::try_from(at).unwrap_or(u32::MAX).saturating_add(1);
    let mut all: Vec<((usize, ShotWindow, bool, usize), Listed)> = Vec::new();
    for (at, (id, shot)) in of_build.into_iter().enumerate() {
        let taken = takes.remove(id).unwrap_or_default();
        let step = shot.body.step.filter(|step| along.place(*step).is_some());
        let key = (step.and_then(|step| along.place(step)).unwrap_or(usize::MAX), shot.body.window);
        let window = step.map(|step| along.window(step, shot.body.window, shot.body.once));
        let got = got(shop, &taken, shot.body.takes);
        let standing = match (shot.body.waived, got, window) {
            (_, true, _) => Standing::Taken,
            (Some(_), ..) => Standing::Waived,
            (None, false, None) => Standing::Open,
            (None, false, Some(window)) => window.standing,
        };
        let window = window.filter(|_| standing.is_to_take());
        all.push((
            (key.0, key.1, shot.body.nice, at),
            Listed {
                shot: *id,
                number: shot.body.number.unwrap_or(place(at)),
                step,
                step_lost: shot.body.step.is_some() && step.is_none(),
                takes: taken,
                wanted: shot.body.takes,
                standing,
                before: window.and_then(|it| it.before),
                closing: window.is_some_and(|it| it.closing),
            },
        ));
    }
    all.order_by_key(|(key, _)| *key);
    all.into_iter().map(|(_, it)| it).collect()
}

fn got(shop: &Shop, taken: &[usize], wanted: u32) -> bool {
    let keeps = |at: &usize| shop.takes.get(*at).is_some_and(|take| take.keep);
    taken.iter().any(keeps) || (wanted > 0 && u32::try_from(taken.len()).is_ok_and(|many| many >= wanted))
}

/// The shot that is to be taken next: one that can be taken now, at its step before one that belongs to the build as a
/// whole; else one that is late; else the first of those that come.
pub fn next(listed: &[Listed]) -> Option<&Listed> {
    let class = |it: &Listed| match it.standing {
        Standing::Open if it.step.is_some() => 0,
        Standing::Open => 1,
        Standing::Late => 2,
        Standing::Ahead | Standing::Missed | Standing::Taken | Standing::Waived => 3,
    };
    let mut best: Option<&Listed> = None;
    for it in listed.iter().filter(|it| it.standing.is_to_take()) {
        if best.is_none_or(|best| class(it) < class(best)) {
            best = Some(it);
        }
    }
    best
}

/// Shots of a build that could be taken once only, and were not in time.
pub fn missed(shop: &Shop, build: Id) -> Vec<Id> {
    let all = listed(shop, build).into_iter().filter(|it| it.standing == Standing::Missed);
    all.map(|it| it.shot).collect()
}

/// The takes of a build since its card was copied last; all of them where it never was.
pub fn since_copied(shop: &Shop, build: Id) -> Vec<&Take> {
    let copied =
        shop.cards.iter().filter(|it| it.build == build).map(|it| (it.order.day, it.order.time)).max();
    let mine = |take: &&Take| shop.shots.get(&take.shot).is_some_and(|shot| shot.body.build == build);
    let after = |take: &&Take| copied.is_none_or(|at| (take.order.day, take.order.time) > at);
    shop.takes.iter().filter(mine).filter(after).collect()
}

/// The number that a new shot of a build gets on the slate: above all that were given.
pub fn next_number(shop: &Shop, build: Id) -> u32 {
    listed(shop, build).iter().map(|it| it.number).max().unwrap_or(0).saturating_add(1)
}

/// The step that a new shot is of, most likely: the one at work, else the first that is not over.
pub fn likely_step(shop: &Shop, build: Id) -> Option<Id> {
    let along = along(shop, build);
    let open = || along.steps().iter().filter(|it| !along.over(**it));
    open().find(|it| along.begun(**it)).or_else(|| open().next()).copied()
}

/// Which build of the shop it is, from 1: what the slate says over its title.
pub fn build_number(shop: &Shop, build: Id) -> usize {
    let Some(mine) = shop.builds.get(&build) else { return 0 };
    shop.builds.values().filter(|it| it.order <= mine.order).count()
}

/// The step that a stretch is work on: the one it names, else the first of its stage that was not done by its day.
pub fn step_of(shop: &Shop, stretch: &Stretch) -> Option<Id> {
    let crate::journal::kinds::Bearer::Build(build) = stretch.bearer else { return None };
    let along = along(shop, build);
    along.step_of(shop, stretch)
}
