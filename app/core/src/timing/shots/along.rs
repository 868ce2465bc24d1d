//! How far the steps of a build have come, as far as shots ask: in which order, which have begun, which are over.
//!
//! A step has begun when there is work on it, and it is over when it is marked done or a step after it has begun. A
//! stretch that names no step counts for the first step of its stage that was not done by its day, where the step had
//! been thought of by then. Where no step of a build names what comes before it, they follow as they were written.

use super::{Before, Standing};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, ShotWindow},
        shop::{Step, Stretch},
    },
    measure::{InOrder, Map},
};
use std::collections::BTreeSet;

/// The steps of a build, in order.
#[derive(Clone, Debug, Default)]
pub struct Along {
    order: Vec<Id>,
    before: Map<Id, Vec<Id>>,
    after: Map<Id, Vec<Id>>,
    begun: BTreeSet<Id>,
    done: BTreeSet<Id>,
}

/// When a shot of a step can be taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Opening {
    pub standing: Standing,
    pub before: Option<Before>,
    pub closing: bool,
}

/// How far the steps of a build have come.
pub fn along(shop: &Shop, build: Id) -> Along {
    let mut steps: Vec<(&Id, &Step)> = shop.steps.iter().filter(|(_, it)| it.build() == build).collect();
    steps.order_by_key(|(_, it)| it.order);
    let mut along = Along::default();
    let named = steps.iter().any(|(_, it)| !it.body.after.is_empty());
    let mut last = None;
    for (id, step) in &steps {
        let stands = |it: &Id| shop.steps.get(it).is_some_and(|it| it.build() == build);
        let before: Vec<Id> = if named {
            step.body.after.iter().map(|it| it.step).filter(stands).collect()
        } else {
            last.into_iter().collect()
        };
        for other in &before {
            along.after.entry(*other).or_default().push(**id);
        }
        along.before.insert(**id, before);
        if step.done().is_some() {
            along.done.insert(**id);
        }
        last = Some(**id);
    }
    along.order = in_order(&steps, &along.before);
    for stretch in shop.stretches.iter().filter(|it| it.bearer == Bearer::Build(build)) {
        along.begun.extend(along.step_of(shop, stretch));
    }
    along
}

/// Each after what comes before it, else as they were written; a circle is broken where it begins.
fn in_order(steps: &[(&Id, &Step)], before: &Map<Id, Vec<Id>>) -> Vec<Id> {
    let mut order: Vec<Id> = Vec::new();
    let mut left: Vec<Id> = steps.iter().map(|(id, _)| **id).collect();
    while !left.is_empty() {
        let free = |id: &Id| before.get(id).is_none_or(|all| all.iter().all(|it| order.contains(it)));
        let at = left.iter().position(free).unwrap_or(0);
        order.push(left.remove(at));
    }
    order
}

impl Along {
    /// The steps, in order.
    pub fn steps(&self) -> &[Id] {
        &self.order
    }

    /// The place of a step; none: it is no step of this build.
    pub fn place(&self, step: Id) -> Option<usize> {
        self.order.iter().position(|it| *it == step)
    }

    /// There is work on it, or it is done.
    pub fn begun(&self, step: Id) -> bool {
        self.begun.contains(&step) || self.done.contains(&step)
    }

    /// It is done, or a step after it has begun.
    pub fn over(&self, step: Id) -> bool {
        self.done.contains(&step) || self.followers(step).iter().any(|it| self.begun(*it))
    }

    /// All before it have begun: it may be next.
    pub fn is_next(&self, step: Id) -> bool {
        !self.begun(step) && self.before.get(&step).is_none_or(|all| all.iter().all(|it| self.begun(*it)))
    }

    fn followers(&self, step: Id) -> &[Id] {
        self.after.get(&step).map(Vec::as_slice).unwrap_or_default()
    }

    /// The step that a stretch is work on.
    pub(super) fn step_of(&self, shop: &Shop, stretch: &Stretch) -> Option<Id> {
        if let Some(step) = stretch.step.filter(|it| self.place(*it).is_some()) {
            return Some(step);
        }
        let day = stretch.order.day;
        let takes = |id: &&Id| {
            shop.steps.get(*id).is_some_and(|it| {
                it.body.stage == stretch.stage
                    && it.order.day <= day
                    && it.done().is_none_or(|done| done >= day)
            })
        };
        self.order.iter().find(takes).copied()
    }

    pub(super) fn window(&self, step: Id, window: ShotWindow, once: bool) -> Opening {
        let next_begins = || self.followers(step).iter().find(|it| !self.begun(**it)).copied();
        let (open, over, before) = match window {
            ShotWindow::Before => (self.is_next(step), self.begun(step), Some(Before::Begins(step))),
            ShotWindow::During => (self.begun(step), self.over(step), Some(Before::Ends(step))),
            ShotWindow::After => {
                let followed = self.followers(step).iter().any(|it| self.begun(*it));
                (self.over(step), followed, next_begins().map(Before::Begins))
            }
        };
        let standing = match (over, open) {
            (true, _) if once => Standing::Missed,
            (true, _) => Standing::Late,
            (false, true) => Standing::Open,
            (false, false) => Standing::Ahead,
        };
        let near = match before {
            Some(Before::Begins(it)) => self.is_next(it),
            Some(Before::Ends(it)) => self.begun(it),
            None => false,
        };
        let before = before.filter(|_| once);
        Opening { standing, before, closing: once && near && !over }
    }
}
