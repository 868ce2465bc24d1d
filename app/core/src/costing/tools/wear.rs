//! What wear takes: units of production, never more than price − resale.
//!
//! Worked example: 800.00, 200.00 at the end, 1,500 h: 0.40 an hour; after 600 h it is worth 560.00, and "400 h left"
//! makes it 0.90 an hour from then on. A blade: price ÷ life, stops at its price; runs of the day it comes off belong to
//! the next one. Source: IAS 16 paragraphs 50, 51 and 62 (units of production, a changed estimate is prospective).

use super::{BladeBook, wears};
use crate::{
    costing::Gap,
    journal::{
        Id, Shop,
        shop::{Blade, Tool},
    },
    measure::{Day, InOrder, Money, Quantity, fixed},
};
use rustc_hash::FxHashMap;

/// Run time exactly: seconds × millionths of duty.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Scaled(pub(crate) i128);

/// Seconds × millionths in one hour.
const HOUR: i128 = 3600 * fixed::SCALE;

impl Scaled {
    /// In hours, rounded to 10⁻⁶.
    pub(crate) fn in_hours(self) -> Quantity {
        Quantity::from_micros(fixed::mul_div(self.0, fixed::SCALE, HOUR).unwrap_or(0))
    }

    /// At so much an hour, rounded once.
    pub(crate) fn at(self, an_hour: Money) -> Money {
        Money::from_micros(fixed::mul_div(self.0, an_hour.micros(), HOUR).unwrap_or(0))
    }

    /// A share of an amount that so many hours take whole, rounded once.
    fn of(self, amount: Money, life: Quantity) -> Money {
        // life in millionths of an hour is life × 10⁶; the millionths cancel out.
        let over = life.micros().saturating_mul(3600);
        Money::from_micros(fixed::mul_div(self.0, amount.micros(), over).unwrap_or(0))
    }
}

/// What is left in a thing that wears.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Left {
    /// Still to wear.
    pub money: Money,
    /// Over how many hours that was thought to last.
    pub hours: Quantity,
}

/// One tool's wear, run by run.
pub(super) struct Account<'a> {
    tool: &'a Tool,
    /// What is still to wear, and the rate: an amount over so many hours.
    left: Money,
    rate: Option<Left>,
    /// Changed views of its life that are still to come.
    changes: &'a [(Day, Quantity)],
}

impl<'a> Account<'a> {
    pub(super) fn of(tool: &'a Tool) -> Account<'a> {
        let to_wear = tool.to_wear().filter(|_| wears(tool)).unwrap_or_default();
        let rate = tool.life.map(|hours| Left { money: to_wear, hours });
        let mut account = Account { tool, left: to_wear, rate, changes: &tool.left };
        let before = Scaled(tool.before.micros().saturating_mul(3600));
        account.take(before);
        account
    }

    /// What a run takes; true: it wanted more than is left.
    pub(super) fn run(&mut self, day: Day, run: Scaled) -> (Money, bool) {
        self.change(day);
        self.take(run)
    }

    fn take(&mut self, run: Scaled) -> (Money, bool) {
        let Some(rate) = self.rate else { return (Money::ZERO, false) };
        let wants = run.of(rate.money, rate.hours);
        let takes = wants.min(self.left);
        self.left = self.left.minus(takes);
        (takes, wants > takes)
    }

    fn change(&mut self, day: Day) {
        while let Some(((from, hours), rest)) = self.changes.split_first() {
            if *from > day {
                break;
            }
            self.changes = rest;
            self.rate = (!hours.is_zero()).then_some(Left { money: self.left, hours: *hours });
        }
    }

    /// Wear an hour as thought on a day.
    pub(super) fn rate(&self, day: Day) -> Option<Money> {
        if !wears(self.tool) {
            return Some(Money::ZERO);
        }
        let changed = self.changes.iter().rfind(|(from, hours)| *from <= day && !hours.is_zero());
        let rate = changed.map_or(self.rate, |(_, hours)| Some(Left { money: self.left, hours: *hours }))?;
        self.tool.price?;
        fixed::mul_div(rate.money.micros(), fixed::SCALE, rate.hours.micros()).map(Money::from_micros)
    }

    /// Resale and what is still to wear.
    pub(super) fn book_value(&self) -> Option<Money> {
        let price = self.tool.price?;
        Some(if wears(self.tool) { self.tool.resale.min(price).plus(self.left) } else { price })
    }

    pub(super) fn gap(&self, id: Id, tool: &Tool) -> Option<Gap> {
        match (wears(tool), tool.price, tool.life) {
            (false, ..) | (true, Some(_), Some(_)) => None,
            (true, None, _) => Some(Gap::NoToolPrice { tool: id }),
            (true, Some(_), None) => Some(Gap::NoToolLife { tool: id }),
        }
    }
}

/// Blades, each with what is left in it.
pub(super) struct Blades<'a> {
    all: Vec<(&'a Blade, Money)>,
    /// Places of each tool's, in the order in which they were fitted.
    by_tool: FxHashMap<Id, Vec<usize>>,
    last: Day,
}

impl<'a> Blades<'a> {
    pub(super) fn of(shop: &'a Shop, last: Day) -> Blades<'a> {
        let fitted: Vec<&Blade> = shop.blades.iter().filter(|blade| blade.order.day <= last).collect();
        let mut by_tool: FxHashMap<Id, Vec<usize>> = FxHashMap::default();
        for (at, blade) in fitted.iter().enumerate() {
            by_tool.entry(blade.tool).or_default().push(at);
        }
        for places in by_tool.values_mut() {
            places.order_by_key(|at| fitted.get(*at).map(|blade| blade.order));
        }
        Blades { all: fitted.into_iter().map(|blade| (blade, blade.cost)).collect(), by_tool, last }
    }

    /// The place of the blade on a tool on a day: the one fitted last that isn't off.
    fn on(&self, tool: Id, day: Day) -> Option<usize> {
        let fitted = self.by_tool.get(&tool)?;
        let is = |at: &usize, so: &dyn Fn(&Blade) -> bool| self.all.get(*at).is_some_and(|it| so(it.0));
        let until = fitted.partition_point(|at| is(at, &|blade| blade.order.day <= day));
        let mut newest_first = fitted.get(..until)?.iter().rev();
        newest_first.find(|at| is(at, &|blade| blade.off.is_none_or(|off| day < off))).copied()
    }

    /// What a run takes of the blade.
    pub(super) fn run(&mut self, tool: Id, day: Day, run: Scaled) -> Money {
        let at = self.on(tool, day);
        let Some((blade, left)) = at.and_then(|at| self.all.get_mut(at)) else { return Money::ZERO };
        let Some(life) = blade.life else { return Money::ZERO };
        let takes = run.of(blade.cost, life).min(*left);
        *left = left.minus(takes);
        takes
    }

    /// A run hour of the blade that is on a tool; none: none is.
    pub(super) fn rate(&self, tool: Id, day: Day) -> Option<Money> {
        let (blade, _) = self.all.get(self.on(tool, day)?)?;
        fixed::mul_div(blade.cost.micros(), fixed::SCALE, blade.life?.micros()).map(Money::from_micros)
    }

    pub(super) fn close(self) -> Vec<BladeBook> {
        let last = self.last;
        let books = self.all.into_iter().map(|(blade, left)| BladeBook {
            blade: blade.order.entry,
            cost: blade.cost,
            worn: blade.cost.minus(left),
            left,
            off: blade.off.is_some_and(|off| off <= last),
        });
        books.collect()
    }
}
