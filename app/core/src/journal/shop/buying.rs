//! What is to be bought, as facts.

use super::{Field, Odd, Shop, same::Items, stock::quantity_or_told};
use crate::{
    journal::{Id, kinds, order::Order},
    measure::{Dec, Money, Quantity, Unit},
};

/// A line of the list.
#[derive(Clone, Debug, PartialEq)]
pub struct BuyLine {
    /// Its place in time.
    pub order: Order,
    /// The item that is meant; none: words only.
    pub item: Option<Id>,
    /// Words.
    pub what: String,
    /// How much, in `unit`; none: not said.
    pub quantity: Option<Quantity>,
    /// The item's unit, else as it was typed.
    pub unit: Unit,
    /// What all of it is thought to cost; none: nobody has said.
    pub price: Option<Money>,
    /// The build that it is for; none: the shop.
    pub for_build: Option<Id>,
    /// The lot that it became.
    pub bought: Option<Id>,
}

impl BuyLine {
    pub(super) fn read(
        order: Order,
        body: &kinds::BuyLine,
        items: Items,
        tell: &mut dyn FnMut(Odd),
    ) -> BuyLine {
        let meant = body.item.and_then(|id| items.meant(id));
        let typed = body.quantity.and_then(|dec| quantity_or_told(dec, tell));
        let unit = meant.map_or(body.unit.unwrap_or(Unit::Each), |(_, item)| item.unit);
        let fits = typed.and_then(|amount| match (body.item, body.unit) {
            (Some(id), Some(unit)) => items.in_its_unit(id, amount, unit),
            (Some(_) | None, _) => Some(amount),
        });
        if typed.is_some() && fits.is_none() {
            tell(Odd::UnitDoesNotFit);
        }
        let price = body.price.and_then(Dec::money);
        if body.price.is_some() && price.is_none() {
            tell(Odd::OutOfRange(Field::Money));
        }
        BuyLine {
            order,
            item: meant.map(|(id, _)| id),
            what: body.what.clone(),
            quantity: fits,
            unit,
            price,
            for_build: body.for_build,
            bought: body.bought,
        }
    }

    /// The entry.
    pub fn entry(&self) -> Id {
        self.order.entry
    }
}

impl Shop {
    /// Lines that are not bought yet, in the order in which they were written: also where the lot is struck out again.
    pub fn to_buy(&self) -> impl Iterator<Item = &BuyLine> {
        self.buy_lines.iter().filter(|line| line.bought.is_none_or(|lot| !self.lots.contains_key(&lot)))
    }

    /// Lines that were bought, the lot of each beside it, latest first.
    pub fn bought(&self) -> impl Iterator<Item = (&BuyLine, Id)> {
        let ticked = self.buy_lines.iter().rev().filter_map(|line| Some((line, line.bought?)));
        ticked.filter(|(_, lot)| self.lots.contains_key(lot))
    }
}
