//! Chapters, what is owed, and to whom, as facts.

use super::Shop;
use crate::{
    journal::{Id, kinds, kinds::OutsiderKind, order::Order},
    measure::{Day, InOrder, Weekday},
};

/// A chapter of the film of a build.
#[derive(Clone, Debug, PartialEq)]
pub struct Chapter {
    /// Its place in time.
    pub order: Order,
    /// As it was written.
    pub body: kinds::Chapter,
}

/// Somebody outside who is waited for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Outsider {
    /// Their place in time.
    pub order: Order,
    /// As called here.
    pub name: String,
    /// What they are to the shop.
    pub kind: OutsiderKind,
    /// Days of the week on which they work; none: nobody works there.
    pub week: Vec<Weekday>,
    /// Days on which they don't.
    pub off: Vec<Day>,
}

impl Outsider {
    pub(super) fn read(order: Order, body: &kinds::Outsider) -> Outsider {
        let works = |day: &Weekday| body.week.contains(&day.after_monday().saturating_add(1));
        Outsider {
            order,
            name: body.name.clone(),
            kind: body.kind,
            week: Weekday::ALL.into_iter().filter(works).collect(),
            off: body.off.clone(),
        }
    }

    /// Whether they work on a day.
    pub fn works_on(&self, day: Day) -> bool {
        self.week.contains(&day.weekday()) && !self.off.contains(&day)
    }
}

/// Something that a build owes.
#[derive(Clone, Debug, PartialEq)]
pub struct Due {
    /// Its place in time.
    pub order: Order,
    /// As it was written.
    pub body: kinds::Due,
}

impl Shop {
    /// The chapters of a film, by where they begin; of two at one place the earlier written first.
    pub fn chapters_of(&self, build: Id) -> Vec<&Chapter> {
        let mut all: Vec<&Chapter> = self.chapters.iter().filter(|it| it.body.build == build).collect();
        all.order_by_key(|it| (it.body.at, it.order));
        all
    }

    /// What a build owes, in the order in which it was written.
    pub fn dues_of(&self, build: Id) -> Vec<(Id, &Due)> {
        let mut all: Vec<(Id, &Due)> =
            self.dues.iter().filter(|(_, it)| it.body.build == build).map(|(id, it)| (*id, it)).collect();
        all.order_by_key(|(_, it)| it.order);
        all
    }
}
