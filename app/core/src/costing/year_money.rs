//! The money of a year: what came in and what was paid, month by month and by kind; the view for the maker's own books.
//!
//! Counted when it was received or paid (for lots and receipts: on their day), tax that goes on or comes back apart; own
//! time, kilometres and wear are no money and stand beside it. What a tool cost is not in it: the day of a tool is that on
//! which it came or was written down, and many were bought before the journal; an expense of the shop says that it was
//! paid. What an own hour left of the year = (in − out + goods in
//! kind) ÷ own hours. Source: our own rule, DEVELOPERS.md § Figures; not a tax return of any country.

use super::{Books, Gap, Hours, direct::ExpenseRow};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, IncomeKind, Origin},
    },
    measure::{Day, InOrder, Money, fixed},
};
use std::{cmp::Reverse, collections::BTreeSet};

/// What money came for, or went for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Flow {
    /// Came in, tax and fees out.
    In(IncomeKind),
    /// Timber, fittings, consumables.
    Materials,
    /// Paid directly, what by-products brought taken off.
    Direct,
    /// Wages.
    PaidPeople,
    /// Blades and bits.
    Blades,
    /// What the shop costs every month.
    Monthly,
}

impl Flow {
    /// Comes in; else it goes out.
    pub fn comes_in(self) -> bool {
        matches!(self, Flow::In(_))
    }
}

/// One kind of it over the months.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FlowLine {
    /// Which.
    pub flow: Flow,
    /// January to December.
    pub months: [Money; 12],
}

impl FlowLine {
    /// All of the year, below zero where it went out.
    pub fn signed(&self) -> Money {
        if self.flow.comes_in() { self.sum() } else { self.sum().negated() }
    }

    /// All of the year.
    pub fn sum(&self) -> Money {
        self.months.iter().fold(Money::ZERO, |sum, it| sum.plus(*it))
    }
}

/// A year.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct YearMoney {
    /// What came in, then what was paid; kinds of which there was none are left out.
    pub lines: Vec<FlowLine>,
    /// In less out, month by month.
    pub left: [Money; 12],
    /// Months that have begun.
    pub begun: usize,
    /// Tax that came in with it: owed.
    pub tax_in: Money,
    /// Tax that was paid and can be got back.
    pub tax_back: Money,
    /// Goods from sponsors, at their value when they came.
    pub in_kind: Money,
    /// Kilometres at their rate: no money.
    pub vehicle: Money,
    /// Wear, blades apart: no money.
    pub wear: Money,
    /// Hours of people who are not paid.
    pub own: Hours,
    /// Of these, what an hour left; none: no own hours.
    pub an_hour: Option<Money>,
}

impl YearMoney {
    /// In less out.
    pub fn left_of_year(&self) -> Money {
        self.left.iter().fold(Money::ZERO, |sum, it| sum.plus(*it))
    }

    fn add(&mut self, flow: Flow, day: Day, money: Money) {
        if money.is_zero() {
            return;
        }
        let month = month_of(day);
        let at = match self.lines.iter().position(|it| it.flow == flow) {
            Some(at) => at,
            None => {
                let at = self.lines.iter().position(|it| it.flow > flow).unwrap_or(self.lines.len());
                self.lines.insert(at, FlowLine { flow, months: [Money::ZERO; 12] });
                at
            }
        };
        if let Some(sum) = self.lines.get_mut(at).and_then(|it| it.months.get_mut(month)) {
            *sum = sum.plus(money);
        }
        if let Some(left) = self.left.get_mut(month) {
            *left = if flow.comes_in() { left.plus(money) } else { left.minus(money) };
        }
    }
}

fn month_of(day: Day) -> usize {
    usize::try_from(day.month().saturating_sub(1)).unwrap_or(0)
}

impl Books {
    /// The years that anything happened in, up to the year of the books.
    pub fn years(&self, shop: &Shop) -> (i32, i32) {
        let last = shop.zone.day(self.as_of).year();
        let worked = self.ledgers.labour.iter().map(|row| row.day);
        let lots = shop.lots.values().map(|lot| lot.order.day);
        let paid = shop.expenses.iter().map(|it| it.order.day);
        let paid = paid.chain(shop.receipts.values().map(|it| it.order.day));
        let paid = paid.chain(shop.trips.iter().map(|it| it.order.day));
        let paid = paid.chain(shop.blades.iter().map(|it| it.order.day));
        let paid = paid.chain(shop.monthly.iter().map(|it| it.from.unwrap_or(it.order.day)));
        let got = shop.incomes.iter().flat_map(|it| it.received.iter().map(|got| got.on));
        let got = got.chain(shop.by_products.iter().map(|it| it.order.day));
        let first = worked.chain(lots).chain(paid).chain(got).map(Day::year).min();
        (first.unwrap_or(last).min(last), last)
    }

    /// Builds that were worked at, or for which money came in, in a year, and what an hour earned on each, as far as it
    /// is known by now; the best first, those without an answer last, with what it lacks.
    pub fn paid_best(&self, shop: &Shop, year: i32) -> Vec<(Id, Result<Money, Gap>)> {
        let mut builds: BTreeSet<Id> = BTreeSet::new();
        let worked = shop.stretches.iter().filter(|it| it.order.day.year() == year).map(|it| it.bearer);
        let paid = shop.incomes.iter().filter(|it| it.received.iter().any(|got| got.on.year() == year));
        let paid = paid.flat_map(|it| it.shares.iter().map(|(bearer, _)| *bearer));
        for bearer in worked.chain(paid) {
            if let Bearer::Build(id) = bearer {
                builds.insert(id);
            }
        }
        let hour = |id: Id| {
            let hour = self.build_cost(id).hour_earned;
            // It may lack other things too, and have an answer all the same.
            let kept = !hour.gaps.contains(&Gap::IncomeNotKept);
            let why = if kept { Gap::NoOwnHours { build: id } } else { Gap::IncomeNotKept };
            hour.money().ok_or(why)
        };
        let mut all: Vec<(Id, Result<Money, Gap>)> = builds.into_iter().map(|id| (id, hour(id))).collect();
        all.order_by_key(|(id, hour)| (Reverse(hour.ok()), *id));
        all
    }

    /// The money of a year, up to the day of the books.
    pub fn year_money(&self, shop: &Shop, year: i32) -> YearMoney {
        let today = shop.zone.day(self.as_of);
        let within = |day: Day| day.year() == year && day <= today;
        let mut it = YearMoney::default();
        for income in &shop.incomes {
            for got in income.received.iter().filter(|got| within(got.on)) {
                it.add(Flow::In(income.kind), got.on, got.amount.minus(got.tax).minus(got.fee));
                it.tax_in = it.tax_in.plus(got.tax);
            }
        }
        for lot in shop.lots.values().filter(|lot| within(lot.order.day)) {
            let till = lot.till().unwrap_or_default();
            if lot.origin == Origin::Supplied {
                it.in_kind = it.in_kind.plus(till);
            } else {
                it.add(Flow::Materials, lot.order.day, till);
            }
            it.tax_back = it.tax_back.plus(lot.whole_tax_back());
        }
        let paid = shop.expenses.iter().map(|it| (it.order.day, ExpenseRow::of(it)));
        let receipts =
            shop.receipts.values().filter_map(|it| Some((it.order.day, ExpenseRow::of_receipt(it)?)));
        let by_products = shop.by_products.iter().map(|it| (it.order.day, ExpenseRow::of_by_product(it)));
        for (day, row) in paid.chain(receipts).chain(by_products).filter(|(day, _)| within(*day)) {
            it.add(Flow::Direct, day, row.cost.unwrap_or_default());
            it.tax_back = it.tax_back.plus(row.tax_back);
        }
        for trip in shop.trips.iter().filter(|trip| within(trip.order.day)) {
            it.add(Flow::Direct, trip.order.day, trip.fee);
            let rows = self.ledgers.trips.iter().filter(|row| row.entry == trip.order.entry);
            it.vehicle = rows.fold(it.vehicle, |sum, row| sum.plus(row.vehicle.unwrap_or_default()));
        }
        for row in self.ledgers.labour.iter().filter(|row| within(row.day)) {
            if row.paid {
                it.add(Flow::PaidPeople, row.day, row.value.unwrap_or_default());
            } else {
                it.own = it.own.plus(Hours::of(row.seconds));
            }
        }
        for blade in shop.blades.iter().filter(|blade| within(blade.order.day)) {
            it.add(Flow::Blades, blade.order.day, blade.cost);
        }
        it.every_month(shop, year, today);
        let runs = self.ledgers.tools.rows.iter().filter(|row| within(row.day));
        it.wear = runs.fold(it.wear, |sum, row| sum.plus(row.wear));
        let hour = fixed::SCALE.saturating_mul(3600);
        let left = it.left_of_year().plus(it.in_kind);
        it.an_hour = fixed::mul_div(left.micros(), hour, it.own.micros()).map(Money::from_micros);
        it
    }
}

impl YearMoney {
    fn every_month(&mut self, shop: &Shop, year: i32, today: Day) {
        for month in 1..=12 {
            let Some(first) = Day::of(year, month, 1).filter(|first| *first <= today) else { continue };
            self.begun = self.begun.saturating_add(1);
            for cost in shop.monthly.iter().filter(|cost| cost.order.day <= today && cost.in_month(first)) {
                self.add(Flow::Monthly, first, cost.a_month);
            }
        }
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used, clippy::indexing_slicing, reason = "a test that can't go on must stop")]
mod tests {
    use super::*;
    use crate::{fixture::fixture, measure::Dec};

    #[test]
    fn a_year_is_what_came_in_and_what_was_paid_in_it() {
        let it = fixture(
            "
            person Ana 20 on 2025-12-30
            person Ada 15 paid
            monthly rent 100 from 2026-02-01
            build bench
            lot pine bought 10 paid 50 on 2025-12-31
            lot oak bought 10 paid 80 on 2026-01-05
            lot oil supplied 1 value 40 by sponsor use consumable unit tin
            expense screws 12 for bench
            stretch Ana mill min 600 for bench on 2026-01-20
            stretch Ada sand min 120 for bench
            income sale piece got 565 tax 65 fee 15 for bench on 2026-03-03
            ",
        );
        let (books, shop) = (it.books(), it.shop());
        let year = books.year_money(&shop, 2026);
        let said: Vec<(Flow, String)> = year.lines.iter().map(|it| (it.flow, it.sum().shown(2))).collect();
        assert_eq!(
            said,
            [
                (Flow::In(IncomeKind::Sale), "485.00".into()),
                (Flow::Materials, "80.00".into()),
                (Flow::Direct, "12.00".into()),
                (Flow::PaidPeople, "30.00".into()),
                (Flow::Monthly, "200.00".into()),
            ]
        );
        assert_eq!(year.left.map(|it| it.shown(2))[..3], ["-122.00", "-100.00", "385.00"]);
        assert_eq!(
            (year.begun, year.tax_in.shown(2), year.in_kind.shown(2)),
            (3, "65.00".into(), "40.00".into())
        );
        // 163 and 40 in kind over ten own hours.
        assert_eq!(year.an_hour.map(|it| it.shown(2)), Some("20.30".into()));
        assert_eq!(books.year_money(&shop, 2025).lines[0].sum().shown(2), "50.00");
        assert_eq!(books.years(&shop), (2025, 2026));
    }

    #[test]
    fn every_year_in_which_money_moved_can_be_reached() {
        let check = |line: &str, first: i32| {
            let it = fixture(&format!(
                "person Ana 20 on 2024-05-01
                build bench
                {line}
                stretch Ana mill min 60 for bench on 2026-01-20"
            ));
            assert_eq!(it.books().years(&it.shop()), (first, 2026), "{line}");
        };
        check("", 2026);
        check("income sale piece expected 100 for bench", 2026);
        check("income sale piece got 100 for bench", 2024);
        check("monthly rent 100", 2024);
        check("monthly rent 100 from 2025-02-01", 2025);
        check("trip 40 fee 5 for shop", 2024);
        check("receipt timber-yard total 30", 2024);
        check("tool saw price 800\n blade disc of saw cost 64 life 40", 2024);
    }

    #[test]
    fn a_build_without_an_hour_earned_says_what_it_lacks() {
        let it = fixture(
            "
            person Ana 20
            person Ada 15 paid
            build bench
            build shelf
            build box
            stretch Ada mill min 60 for bench
            income sale piece got 100 for bench
            stretch Ana mill min 60 for shelf
            stretch Ana mill min 60 for box
            income sale piece got 30 for box
            ",
        );
        let [bench, shelf, box_] = ["bench", "shelf", "box"].map(|name| it.id(name));
        let hour = Dec::parse("30").unwrap().money().unwrap();
        let mut got = it.books().paid_best(&it.shop(), 2026);
        assert_eq!(got.remove(0), (box_, Ok(hour)));
        got.sort_by_key(|it| it.0);
        assert_eq!(got, [(bench, Err(Gap::NoOwnHours { build: bench })), (shelf, Err(Gap::IncomeNotKept))]);
    }
}
