//! What was expected of a lot when it was a find, against what it has come to.
//!
//! Source: our own rule, DEVELOPERS.md § Salvage.

use super::appraisal::appraise;
use crate::{
    costing::{Books, Hours, parts::Lens},
    journal::{Id, Shop},
    measure::{Money, Quantity, Seconds},
};

/// Expected badly, usually and well; and so far.
#[derive(Clone, Debug, PartialEq)]
pub struct Expected {
    /// The find.
    pub find: Id,
    /// Usable, as expected.
    pub usable: [Option<Quantity>; 3],
    /// Usable in the end, by what is known now.
    pub usable_now: Option<Quantity>,
    /// Time to reclaim all of it, as expected.
    pub time: [Seconds; 3],
    /// Everybody's hours of reclaiming so far.
    pub hours_now: Hours,
    /// Money and vehicle, as expected.
    pub cash: Option<Money>,
    /// Money, helpers, vehicle and wear so far.
    pub cash_now: Money,
    /// What an hour was to pay.
    pub an_hour: [Option<Money>; 3],
    /// What an hour has paid on what was drawn so far.
    pub an_hour_now: Option<Money>,
}

impl Books {
    /// None: the lot was never a find.
    pub fn expected(&self, shop: &Shop, lot: Id) -> Option<Expected> {
        let (find, facts) = shop.finds.iter().find(|(_, find)| find.lot == Some(lot))?;
        let (account, book) = (self.stock.lots.get(&lot)?, self.lot(lot)?);
        let was = appraise(shop, facts);
        Some(Expected {
            find: *find,
            usable: was.outcomes.map(|it| it.usable),
            usable_now: account.usable,
            time: was.outcomes.map(|it| it.time),
            hours_now: account.reclaimed.own_hours().plus(account.reclaimed.paid_hours()),
            cash: was.cash,
            cash_now: account.cost().through(Lens::CashAndWear),
            an_hour: was.outcomes.map(|it| it.an_hour),
            an_hour_now: book.saving.paid_an_hour.money(),
        })
    }
}
