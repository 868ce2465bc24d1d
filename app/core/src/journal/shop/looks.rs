//! Looks at the shelf as facts: what was found there, or went from it without a build.

use super::{
    Lot, Odd,
    same::Items,
    stock::{in_stock_unit, meant, quantity_or_told},
};
use crate::{
    journal::{
        Id,
        kinds::{self, ShelfState, Source},
        order::Order,
    },
    measure::Quantity,
};
use std::collections::BTreeMap;

/// A look at the shelf.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Look {
    /// Its place in time.
    pub order: Order,
    /// Of what.
    pub of: Source,
    /// What was found, or done.
    pub state: ShelfState,
    /// How much, in the unit of the lot or item; of an empty shelf nothing. None where it can't be: not counted.
    pub quantity: Option<Quantity>,
}

impl Look {
    pub(super) fn read(
        order: Order,
        body: &kinds::Shelf,
        lots: &BTreeMap<Id, Lot>,
        items: Items,
        tell: &mut dyn FnMut(Odd),
    ) -> Look {
        let look = |quantity| Look { order, of: meant(body.of, items), state: body.state, quantity };
        let Some(typed) = body.quantity.filter(|_| body.state != ShelfState::Empty) else {
            let empty = body.state == ShelfState::Empty;
            if !empty {
                tell(Odd::OutOfRange(super::Field::Quantity));
            }
            return look(empty.then_some(Quantity::ZERO));
        };
        let typed = quantity_or_told(typed, tell);
        let fits = typed.and_then(|amount| match body.unit {
            Some(unit) => in_stock_unit(amount, unit, body.of, lots, items),
            None => Some(amount),
        });
        if typed.is_some() && fits.is_none() {
            tell(Odd::UnitDoesNotFit);
        }
        look(fits)
    }

    /// The entry.
    pub fn entry(&self) -> Id {
        self.order.entry
    }

    /// Nothing is left.
    pub fn is_empty(&self) -> bool {
        self.state == ShelfState::Empty
    }
}
