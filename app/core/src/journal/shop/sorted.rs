//! What sorting a salvaged lot found, and what was thrown out beside, as facts.

use super::{Odd, stock::quantity_or_told};
use crate::{
    journal::{
        Id,
        kinds::{self, Link},
        order::Order,
    },
    measure::Quantity,
};

/// What a sorting found.
#[derive(Clone, Debug, PartialEq)]
pub struct Sort {
    /// Its place in time.
    pub order: Order,
    /// The lot.
    pub lot: Id,
    /// Usable, in the lot's unit.
    pub good: Quantity,
    /// Thrown out, in the lot's unit.
    pub culled: Quantity,
    /// How far what was thrown out had come.
    pub link: Link,
}

impl super::Shop {
    /// Whether as much of a lot was looked at as was gathered.
    pub fn is_sorted(&self, lot: Id, rough: Quantity) -> bool {
        let sorts = self.sorts.iter().filter(|it| it.lot == lot);
        let looked = sorts.fold(Quantity::ZERO, |sum, it| sum.plus(it.good).plus(it.culled));
        looked >= rough
    }
}

impl Sort {
    pub(super) fn read(order: Order, body: &kinds::Sort, tell: &mut dyn FnMut(Odd)) -> Sort {
        let mut read = |dec| quantity_or_told(dec, tell).unwrap_or(Quantity::ZERO);
        let link = body.link.unwrap_or(Link::NailsOut);
        Sort { order, lot: body.lot, good: read(body.good), culled: read(body.culled), link }
    }

    /// The entry.
    pub fn entry(&self) -> Id {
        self.order.entry
    }
}

/// What was thrown out by itself.
#[derive(Clone, Debug, PartialEq)]
pub struct Cull {
    /// Its place in time.
    pub order: Order,
    /// The lot.
    pub lot: Id,
    /// How much, in the lot's unit.
    pub quantity: Quantity,
    /// How far it had come.
    pub link: Link,
    /// Nobody could expect it.
    pub unexpected: bool,
}

impl Cull {
    pub(super) fn read(order: Order, body: &kinds::Cull, tell: &mut dyn FnMut(Odd)) -> Cull {
        Cull {
            order,
            lot: body.lot,
            quantity: quantity_or_told(body.quantity, tell).unwrap_or(Quantity::ZERO),
            link: body.link.unwrap_or(Link::Milled),
            unexpected: body.unexpected,
        }
    }

    /// The entry.
    pub fn entry(&self) -> Id {
        self.order.entry
    }
}
