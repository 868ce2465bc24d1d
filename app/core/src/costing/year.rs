//! Month by month: what the shop cost, what hours bore of it, and what nobody bore.
//!
//! Worked example: 360 over 90 h and 45 over 36 film h; a month with 70 h, 28 of them film: applied 315, actual 405, not
//! borne 90. Source: IAS 2 paragraph 13 (what is not allocated is an expense of the period).

use super::{
    Books,
    overhead::{Month, Months},
};
use crate::{
    journal::Shop,
    measure::{Day, Map, Money},
};

/// One month of the shop.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct MonthBorne {
    /// Its first day.
    pub first: Day,
    /// What it costs, and over how many hours.
    pub month: Month,
    /// What hours bore.
    pub applied: Money,
    /// It is not over yet.
    pub under_way: bool,
}

impl MonthBorne {
    /// What it costs in all.
    pub fn actual(&self) -> Money {
        self.month.shop.plus(self.month.film)
    }

    /// What nobody bore; below zero: more was borne than it cost.
    pub fn not_borne(&self) -> Money {
        self.actual().minus(self.applied)
    }
}

impl Books {
    /// What nobody bore of the months of a year that are over.
    pub fn not_borne_in(&self, shop: &Shop, year: i32) -> Money {
        let over = self.months(shop).into_iter().filter(|it| !it.under_way && it.first.year() == year);
        over.fold(Money::ZERO, |sum, it| sum.plus(it.not_borne()))
    }

    /// Every month from the first that costs anything to the month of the books.
    pub fn months(&self, shop: &Shop) -> Vec<MonthBorne> {
        let last = shop.zone.day(self.as_of);
        let mut applied: Map<Day, Money> = Map::new();
        for row in &self.ledgers.labour {
            let borne = row.overhead.parts().overhead();
            let sum = applied.entry(row.day.first_of_month()).or_default();
            *sum = sum.plus(borne);
        }
        let costs = shop.monthly.iter().map(|cost| cost.from.unwrap_or(cost.order.day).first_of_month());
        let Some(mut at) = costs.chain(applied.iter().filter(|it| !it.1.is_zero()).map(|it| *it.0)).min()
        else {
            return Vec::new();
        };
        let mut months = Months::of(shop);
        let mut all = Vec::new();
        while at <= last {
            all.push(MonthBorne {
                first: at,
                month: months.at(at),
                applied: applied.get(&at).copied().unwrap_or_default(),
                under_way: at.first_of_next_month() > last,
            });
            at = at.first_of_next_month();
        }
        all
    }
}
