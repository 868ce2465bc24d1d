//! Runs: builds that repeat one another.

use super::Shop;
use crate::{journal::Id, measure::InOrder};
use std::collections::BTreeSet;

impl Shop {
    /// The build at the beginning of a chain of repeats. A circle ends where it comes back to.
    pub fn first_of_run(&self, build: Id) -> Id {
        let mut seen: BTreeSet<Id> = BTreeSet::new();
        let mut at = build;
        while seen.insert(at) {
            match self.builds.get(&at).and_then(|it| it.repeat_of).filter(|of| self.builds.contains_key(of)) {
                Some(of) => at = of,
                None => return at,
            }
        }
        // A circle has no first: the least id of it stands for it.
        seen.into_iter().next().unwrap_or(build)
    }

    /// Good ones of a build that are still there, with one entry of handing over (`but`) left out.
    pub fn still_here(&self, build: Id, but: Id) -> u32 {
        let made = self.made.iter().filter(|it| it.build == build);
        let made = made.fold(0_u32, |sum, it| sum.saturating_add(it.good));
        let left = self.handed.iter().filter(|it| it.build == build && it.order.entry != but);
        left.fold(made, |sum, it| sum.saturating_sub(it.count))
    }

    /// All builds of its run, in the order in which they were begun; itself alone where nothing repeats it.
    pub fn run_of(&self, build: Id) -> Vec<Id> {
        let first = self.first_of_run(build);
        let mut all: Vec<Id> =
            self.builds.keys().copied().filter(|it| self.first_of_run(*it) == first).collect();
        all.order_by_key(|id| self.builds.get(id).map(|build| build.order));
        all
    }
}
