//! What the last like build drew of each item: where the maker has set no mark, less than that is low.
//!
//! Like: another build of the same run (`repeat of`, at however many removes) of one that is open, the latest that drew
//! the item; else the latest closed build that drew it. Worked example: 20 discs went into run 1; run 2 is open and 16
//! are left: low. Source: our own rule, DEVELOPERS.md § Why. Not here: the maker's own mark (`shelf`).

use super::stock::DrawRow;
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, Source, State},
        order::Order,
    },
    measure::{Day, InOrder, Map, Quantity},
};

/// A like build, and what stayed drawn of an item.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Like {
    /// The build that drew it.
    pub build: Id,
    /// How much.
    pub quantity: Quantity,
    /// The open build that it is a like of; none: the last closed one.
    pub for_build: Option<Id>,
}

/// What builds drew of items, and the likes of what is open.
#[derive(Clone, Debug, Default)]
pub(crate) struct Likes {
    /// By build, then item.
    drawn: Map<Id, Map<Id, Quantity>>,
    /// By item, for the shelf.
    by_item: Map<Id, Like>,
    /// By open build that repeats another, then item.
    by_build: Map<Id, Map<Id, Like>>,
}

impl Likes {
    pub(crate) fn of(shop: &Shop, last: Day, rows: &[DrawRow]) -> Likes {
        let mut likes = Likes::default();
        for row in rows.iter().filter(|row| row.returns.is_none() && !row.net().is_zero()) {
            if let (Source::Item(item), Bearer::Build(build)) = (row.account, row.bearer) {
                let sum = likes.drawn.entry(build).or_default().entry(item).or_default();
                *sum = sum.plus(row.net());
            }
        }
        let order = |build: &Id| shop.builds.get(build).map(|it| it.order);
        let mut drew: Vec<(Option<Order>, Id)> = likes.drawn.keys().map(|id| (order(id), *id)).collect();
        drew.order();
        let mut open: Vec<(Option<Order>, Id)> = Vec::new();
        for (id, build) in &shop.builds {
            if build.repeat_of.is_some()
                && build.order.day <= last
                && shop.state_of(*id, last) != State::Closed
            {
                open.push((Some(build.order), *id));
            }
        }
        open.order();
        let mut closed: Vec<(Order, Id)> = Vec::new();
        for (_, id) in &drew {
            let state = shop.last_state(*id, last).filter(|it| it.state == State::Closed);
            closed.extend(state.map(|it| (it.order, *id)));
        }
        closed.order();
        for (_, build) in &closed {
            likes.learn(*build, None);
        }
        for (_, build) in &open {
            let run = first_of_run(shop, *build);
            for (_, other) in drew.iter().filter(|(_, other)| other != build) {
                if first_of_run(shop, *other) == run {
                    likes.learn(*other, Some(*build));
                }
            }
        }
        likes
    }

    /// Later ones take the place of earlier ones.
    fn learn(&mut self, build: Id, for_build: Option<Id>) {
        for (item, quantity) in self.drawn.get(&build).into_iter().flatten() {
            let like = Like { build, quantity: *quantity, for_build };
            self.by_item.insert(*item, like);
            if let Some(open) = for_build {
                self.by_build.entry(open).or_default().insert(*item, like);
            }
        }
    }

    /// What a build drew of every item.
    pub(crate) fn drawn_by(&self, build: Id) -> Option<&Map<Id, Quantity>> {
        self.drawn.get(&build)
    }

    pub(crate) fn of_item(&self, item: Id) -> Option<Like> {
        self.by_item.get(&item).copied()
    }
}

impl super::Books {
    /// Of each open build that repeats another: what its like drew of every item, and what it has drawn itself.
    pub fn likes_of_open(&self) -> Vec<(Like, Id, Quantity)> {
        let all = self.likes.by_build.iter().flat_map(|(build, items)| {
            let own = self.likes.drawn.get(build);
            items.iter().map(move |(item, like)| {
                (*like, *item, own.and_then(|own| own.get(item)).copied().unwrap_or_default())
            })
        });
        all.collect()
    }
}

/// The first build of a run.
fn first_of_run(shop: &Shop, build: Id) -> Id {
    let mut at = build;
    // Merged journals may hold a circle; no way is longer than there are builds.
    for _ in 0..shop.builds.len() {
        match shop.builds.get(&at).and_then(|it| it.repeat_of) {
            Some(of) => at = of,
            None => return at,
        }
    }
    at
}
