//! Overhead: what the shop costs whether or not anyone works, applied to hours.
//!
//! Rate = monthly costs ÷ normal hours of a month, in two pools: the shop's over all person-hours on builds and lots, the
//! film's over film hours and the film part of `both`. Months that a cost touches count whole; admin carries none. The
//! rate stays a ratio, each stretch's share is rounded once. Power that the tools bear comes off its bill; where it is more
//! than the bill, nothing is left of that, and a flag says so. Source: IAS 2 paragraph 13 (allocation by normal capacity);
//! pools and months: our own rule, DEVELOPERS.md § Figures. Not here: what was not borne in a month (`year`).

use super::{
    Flag, Gap, Parts, Working,
    sides::{OneSide, Split},
};
use crate::{
    journal::{Id, Shop, kinds::SettingKey},
    measure::{Day, Dec, Map, Money, Quantity, Seconds, fixed},
};

/// What a month costs, and over how many hours it goes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Month {
    /// Of the shop: over all hours.
    pub shop: Money,
    /// Of the film: over film hours.
    pub film: Money,
    /// Person-hours of a normal month; none: not said.
    pub hours: Option<Quantity>,
    /// Film hours of a normal month; none: not said.
    pub film_hours: Option<Quantity>,
    /// The bill that is less than what the tools drew by their meter: nothing of it is left for the shop.
    pub beyond: Option<Id>,
}

/// The months of a shop, worked out once each.
pub(crate) struct Months<'a> {
    shop: &'a Shop,
    by_first: Map<Day, Month>,
}

/// A stretch's share.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct Borne {
    /// From the shop's pool.
    pub shop: Money,
    /// From the film's.
    pub film: Money,
    pub month: Month,
    pub gap: Option<Gap>,
}

impl<'a> Months<'a> {
    pub(crate) fn of(shop: &'a Shop) -> Months<'a> {
        Months { shop, by_first: Map::new() }
    }

    /// The month that a day is in.
    pub(crate) fn at(&mut self, day: Day) -> Month {
        let shop = self.shop;
        *self.by_first.entry(day.first_of_month()).or_insert_with(|| month(shop, day))
    }

    /// The share of a stretch; nothing where no month costs anything.
    pub(crate) fn share(&mut self, day: Day, seconds: Seconds, split: Split) -> Borne {
        let month = self.at(day);
        let film_part = split.part(Parts::of_own_hours(super::Hours::of(seconds)), OneSide::Film).own_hours();
        let whole = super::Hours::of(seconds).micros();
        let (shop, no_hours) = applied(month.shop, month.hours, whole);
        let (film, no_film_hours) = applied(month.film, month.film_hours, film_part.micros());
        let gap = if no_hours {
            Some(Gap::NoNormalHours { film: false })
        } else {
            no_film_hours.then_some(Gap::NoNormalHours { film: true })
        };
        Borne { shop, film, month, gap }
    }
}

/// `millionths of a second × cost ÷ (3600 × hours)`, rounded once. True: there are costs, and no hours to go over.
fn applied(cost: Money, hours: Option<Quantity>, time: i128) -> (Money, bool) {
    if cost.is_zero() || time == 0 {
        return (Money::ZERO, false);
    }
    let Some(hours) = hours.filter(|it| !it.is_zero()) else { return (Money::ZERO, true) };
    let over = hours.micros().saturating_mul(3600);
    let share = fixed::mul_div(time, cost.micros(), over).unwrap_or(0);
    (Money::from_micros(share), false)
}

impl Borne {
    /// What is odd about it.
    pub(crate) fn flag(&self) -> Option<Flag> {
        self.month.beyond.map(|cost| Flag::MeteredBeyondBill { cost })
    }

    /// All of it, as a part of a cost.
    pub(crate) fn parts(&self) -> Parts {
        Parts::of_overhead(self.shop.plus(self.film))
    }

    /// One side's: the shop's pool by the key, the film's to the film.
    pub(crate) fn part(&self, split: Split, side: OneSide) -> Parts {
        let shop = split.part(Parts::of_overhead(self.shop), side);
        match side {
            OneSide::Piece => shop,
            OneSide::Film => shop.plus(Parts::of_overhead(self.film)),
        }
    }

    pub(crate) fn working(&self, seconds: Seconds) -> Working {
        Working::Overhead { seconds, month: self.month, film: !self.film.is_zero() }
    }
}

fn month(shop: &Shop, day: Day) -> Month {
    let last = day.first_of_next_month().pred();
    let in_tools = shop.settings.on(SettingKey::PowerIn, last) != Some("month");
    let kwh = shop.settings.on(SettingKey::KwhPrice, last).and_then(|text| Dec::parse(text).ok()?.money());
    let mut month = Month {
        hours: hours(shop, SettingKey::NormalHours, last),
        film_hours: hours(shop, SettingKey::NormalFilmHours, last),
        ..Month::default()
    };
    for cost in shop.monthly.iter().filter(|cost| cost.in_month(day)) {
        // Power that is in the tools' rates is not counted twice.
        let metered = kwh.filter(|_| in_tools).and_then(|kwh| {
            fixed::mul_div(cost.tools_kwh.micros(), kwh.micros(), fixed::SCALE).map(Money::from_micros)
        });
        let left = cost.a_month.minus(metered.unwrap_or_default());
        if left.is_negative() {
            month.beyond = Some(cost.order.entry);
        }
        let left = left.max(Money::ZERO);
        let pool = if cost.film { &mut month.film } else { &mut month.shop };
        *pool = pool.plus(left);
    }
    month
}

fn hours(shop: &Shop, key: SettingKey, last: Day) -> Option<Quantity> {
    Dec::parse(shop.settings.on(key, last)?).ok()?.quantity().filter(|it| *it > Quantity::ZERO)
}
