//! Items that are other ones: what came, was drawn and was found of both counts as one item's, from the beginning.
//!
//! Every saying joins two sets of items; the item that it was said of last goes into the other. So chains end, a
//! circle can't arise, and two phones that said it of the same item agree. Kept by: `costing::laws`.

use super::{Item, Odd, Shop};
use crate::{
    journal::{Body, Id, order::Order},
    measure::{Map, Quantity, Unit, convert},
};

/// An item that is another one.
#[derive(Clone, Debug, PartialEq)]
pub struct Merged {
    /// The entry that says so.
    pub entry: Id,
    /// The item that it is; that may be another one too.
    pub is: Id,
    /// As it was written on the shelf: what was typed for it is still in its unit.
    pub item: Item,
}

/// All items, those that are other ones too.
#[derive(Clone, Copy)]
pub(crate) struct Items<'a> {
    pub items: &'a Map<Id, Item>,
    pub merged: &'a Map<Id, Merged>,
}

impl<'a> Items<'a> {
    /// The item that an id means. None: there is none.
    pub fn meant(self, id: Id) -> Option<(Id, &'a Item)> {
        let mut at = id;
        // Each step leads to an item that was there when this one went, so it ends.
        while let Some(merged) = self.merged.get(&at) {
            at = merged.is;
        }
        Some((at, self.items.get(&at)?))
    }

    /// So much, typed for this item, in the unit of the item that it means. None: it doesn't fit.
    /// An item that isn't there takes it as it is.
    pub fn in_its_unit(self, id: Id, amount: Quantity, unit: Unit) -> Option<Quantity> {
        let Some(mut merged) = self.merged.get(&id) else {
            return self.items.get(&id).map_or(Some(amount), |item| item.in_its_unit(amount, unit));
        };
        let mut amount = merged.item.in_its_unit(amount, unit)?;
        loop {
            let (is, went) = (merged.is, &merged.item);
            match self.merged.get(&is) {
                Some(next) => {
                    amount = next.item.of_another(went, amount)?;
                    merged = next;
                }
                None => return self.items.get(&is)?.of_another(went, amount),
            }
        }
    }
}

impl Item {
    /// So much of another item, in that one's unit, in this one's: a tin of 750 ml is 1.5 tins of 500 ml.
    pub fn of_another(&self, other: &Item, amount: Quantity) -> Option<Quantity> {
        let holds = || {
            let (content, unit) = other.content?;
            let all = amount.times(content)?;
            // As much as it holds goes by what this one holds, else by this one's own unit.
            match self.content {
                Some((one, one_unit)) => convert(all, unit, one_unit)?.over(one),
                None => convert(all, unit, self.unit),
            }
        };
        // Two tins of one word may hold differently much.
        let both_hold = other.content.is_some() && self.content.is_some();
        if both_hold && self.unit == other.unit && self.content != other.content {
            return holds();
        }
        self.in_its_unit(amount, other.unit).or_else(holds)
    }
}

impl Shop {
    /// Every item by whatever id names it.
    pub(crate) fn all_items(&self) -> Items<'_> {
        Items { items: &self.items, merged: &self.merged }
    }

    /// The item that an id means, where it is one that another was said to be. None: there is no such item.
    pub fn item(&self, id: Id) -> Option<&Item> {
        self.all_items().meant(id).map(|(_, item)| item)
    }

    /// The id that an item's id means.
    pub fn item_meant(&self, id: Id) -> Option<Id> {
        self.all_items().meant(id).map(|(id, _)| id)
    }

    /// The entries that say that an item is this one, and as what each was typed.
    pub fn also(&self, id: Id) -> Vec<(Id, &Item)> {
        let is = |at: &Id| self.item_meant(*at) == Some(id);
        self.merged.iter().filter(|(at, _)| is(at)).map(|(_, it)| (it.entry, &it.item)).collect()
    }

    /// Why an item can't be said to be another one; none where it can.
    pub fn cannot_be(&self, item: Id, is: Id) -> Option<Odd> {
        let lost = |what| Some(Odd::Lost { what });
        let Some((from, one)) = self.all_items().meant(item) else { return lost(item) };
        let Some((to, other)) = self.all_items().meant(is) else { return lost(is) };
        if from == to {
            return Some(Odd::SameAlready);
        }
        other.of_another(one, Quantity::ONE).is_none().then_some(Odd::UnitDoesNotFit)
    }

    /// Before anything that names items is read. `later`: in order.
    pub(super) fn merge(&mut self, later: &[(Order, &Body)]) {
        for (order, body) in later {
            let Body::Same(same) = body else { continue };
            match self.cannot_be(same.item, same.is) {
                None => self.join(order.entry, same.item, same.is),
                // What is lost is told with all else that is.
                Some(Odd::Lost { .. }) => {}
                Some(odd) => self.odd.push((order.entry, odd)),
            }
        }
    }

    fn join(&mut self, entry: Id, item: Id, is: Id) {
        let (Some(from), Some(is)) = (self.item_meant(item), self.item_meant(is)) else { return };
        if let Some(item) = self.items.remove(&from) {
            self.merged.insert(from, Merged { entry, is, item });
        }
    }
}
