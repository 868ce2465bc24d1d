//! A cost is a vector of parts, never one number; beside it the hours that are in it.
//!
//! Money parts in millionths of the shop's currency, hours in millionths of a second: a draw takes the
//! same share of every one of them. Source: our own rule, DEVELOPERS.md § Figures.
//! Not here: how any part is worked out (a file each).

use crate::{
    journal::kinds::StoredParts,
    measure::{Dec, Money, Quantity, Seconds, fixed},
};

/// Hours that may be a share of worked ones, so exact to a millionth of a second.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Hours(i128);

impl Hours {
    /// No time.
    pub const ZERO: Hours = Hours(0);

    /// Whole seconds of work.
    pub fn of(seconds: Seconds) -> Hours {
        Hours(i128::from(seconds.0).saturating_mul(fixed::SCALE))
    }

    /// Seconds × millionths of a duty.
    pub(crate) fn of_scaled(scaled: i128) -> Hours {
        Hours(scaled)
    }

    /// Rounded half-even to whole seconds.
    pub fn seconds(self) -> Seconds {
        let whole = fixed::mul_div(self.0, 1, fixed::SCALE).unwrap_or(0);
        Seconds(i64::try_from(whole).unwrap_or(i64::MAX))
    }

    /// As hours, rounded half-even to 10⁻⁶: `10.165179`.
    pub fn in_hours(self) -> Quantity {
        Quantity::from_micros(fixed::mul_div(self.0, 1, 3600).unwrap_or(0))
    }

    /// Exactly none.
    pub fn is_zero(self) -> bool {
        self.0 == 0
    }

    /// Millionths of a second.
    pub(crate) fn micros(self) -> i128 {
        self.0
    }

    pub(crate) fn plus(self, more: Hours) -> Hours {
        Hours(self.0.saturating_add(more.0))
    }

    pub(crate) fn minus(self, less: Hours) -> Hours {
        Hours(self.0.saturating_sub(less.0))
    }
}

/// Which part of a cost a figure is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Lens {
    /// Everything: the true cost.
    All,
    /// Money that was paid, wages included: Spent and Used up.
    Cash,
    /// What is no money that was paid: vehicle, own labour, supplied value, tools, overhead.
    Rest,
    /// What salvage costs while own time is free: money, wages, vehicle, wear.
    CashAndWear,
    /// Own labour at its rate.
    OwnLabour,
}

const N: usize = 9;

/// The parts of a cost.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Parts([i128; N]);

impl Parts {
    /// Nothing.
    pub const ZERO: Parts = Parts([0; N]);

    /// Money paid for things.
    pub fn money(&self) -> Money {
        let Parts([it, ..]) = self;
        Money::from_micros(*it)
    }

    /// Hours of people who are paid, at their rates.
    pub fn paid_labour(&self) -> Money {
        let Parts([_, it, ..]) = self;
        Money::from_micros(*it)
    }

    /// Kilometres at the shop's rate.
    pub fn vehicle(&self) -> Money {
        let Parts([_, _, it, ..]) = self;
        Money::from_micros(*it)
    }

    /// Hours of people who are not paid, at their rates.
    pub fn own_labour(&self) -> Money {
        let Parts([_, _, _, it, ..]) = self;
        Money::from_micros(*it)
    }

    /// Value of what was supplied.
    pub fn supplied(&self) -> Money {
        let Parts([_, _, _, _, it, ..]) = self;
        Money::from_micros(*it)
    }

    /// Wear, power, upkeep and blades.
    pub fn tools(&self) -> Money {
        let Parts([_, _, _, _, _, it, ..]) = self;
        Money::from_micros(*it)
    }

    /// Share of what the shop costs.
    pub fn overhead(&self) -> Money {
        let Parts([_, _, _, _, _, _, it, ..]) = self;
        Money::from_micros(*it)
    }

    /// Own hours in it.
    pub fn own_hours(&self) -> Hours {
        let Parts([.., it, _]) = self;
        Hours(*it)
    }

    /// Paid people's hours in it.
    pub fn paid_hours(&self) -> Hours {
        let Parts([.., it]) = self;
        Hours(*it)
    }

    /// All money parts together.
    pub fn total(&self) -> Money {
        self.through(Lens::All)
    }

    /// Nothing in any part.
    pub fn is_zero(&self) -> bool {
        *self == Parts::ZERO
    }

    pub(crate) fn of_money(money: Money) -> Parts {
        Parts([money.micros(), 0, 0, 0, 0, 0, 0, 0, 0])
    }

    pub(crate) fn of_vehicle(money: Money) -> Parts {
        Parts([0, 0, money.micros(), 0, 0, 0, 0, 0, 0])
    }

    pub(crate) fn of_supplied(money: Money) -> Parts {
        Parts([0, 0, 0, 0, money.micros(), 0, 0, 0, 0])
    }

    pub(crate) fn of_tools(money: Money) -> Parts {
        Parts([0, 0, 0, 0, 0, money.micros(), 0, 0, 0])
    }

    pub(crate) fn of_overhead(money: Money) -> Parts {
        Parts([0, 0, 0, 0, 0, 0, money.micros(), 0, 0])
    }

    pub(crate) fn of_own_hours(hours: Hours) -> Parts {
        Parts([0, 0, 0, 0, 0, 0, 0, hours.0, 0])
    }

    /// As stored when a build was closed; what is out of range counts as nothing.
    pub(crate) fn stored(it: &StoredParts) -> Parts {
        let parts = [it.money, it.paid, it.vehicle, it.own, it.supplied, it.tools, it.overhead];
        let [money, paid, vehicle, own, supplied, tools, overhead] = parts.map(micros);
        Parts([
            money,
            paid,
            vehicle,
            own,
            supplied,
            tools,
            overhead,
            micros(it.own_seconds),
            micros(it.paid_seconds),
        ])
    }

    /// To be stored.
    pub(crate) fn to_stored(self) -> StoredParts {
        let some = |it: i128| (it != 0).then(|| Dec(fixed::decimal_of(it).normalize()));
        let [money, paid, vehicle, own, supplied, tools, overhead, own_seconds, paid_seconds] =
            self.0.map(some);
        StoredParts { money, paid, vehicle, own, supplied, tools, overhead, own_seconds, paid_seconds }
    }

    /// Work: `paid` people's hours are money.
    pub(crate) fn of_labour(value: Money, seconds: Seconds, paid: bool) -> Parts {
        let (value, time) = (value.micros(), Hours::of(seconds).0);
        if paid {
            Parts([0, value, 0, 0, 0, 0, 0, 0, time])
        } else {
            Parts([0, 0, 0, value, 0, 0, 0, time, 0])
        }
    }

    pub(crate) fn through(&self, lens: Lens) -> Money {
        let (all, cash) = (self.total_micros(), self.cash_micros());
        Money::from_micros(match lens {
            Lens::All => all,
            Lens::Cash => cash,
            Lens::Rest => all.saturating_sub(cash),
            Lens::CashAndWear => {
                cash.saturating_add(self.vehicle().micros()).saturating_add(self.tools().micros())
            }
            Lens::OwnLabour => self.own_labour().micros(),
        })
    }

    pub(crate) fn plus(self, more: Parts) -> Parts {
        self.with(more, i128::saturating_add)
    }

    pub(crate) fn minus(self, less: Parts) -> Parts {
        self.with(less, i128::saturating_sub)
    }

    pub(crate) fn negated(self) -> Parts {
        Parts::ZERO.minus(self)
    }

    /// Each part times `take ÷ whole`, rounded once; everything where `take` is the whole, so that the
    /// last unit takes the rest exactly. Nothing of a whole of nothing.
    pub(crate) fn share(self, take: Quantity, whole: Quantity) -> Parts {
        if take == whole {
            return self;
        }
        Parts(self.0.map(|part| match part {
            0 => 0,
            part => fixed::mul_div(part, take.micros(), whole.micros()).unwrap_or(0),
        }))
    }

    /// Shares every part by `weights`, largest remainder first, ties to the earlier: nothing is lost.
    pub(crate) fn allocate(self, weights: &[i128]) -> Vec<Parts> {
        let mut shares = vec![Parts::ZERO; weights.len()];
        for (place, part) in self.0.into_iter().enumerate() {
            if part == 0 {
                continue;
            }
            for (share, amount) in shares.iter_mut().zip(fixed::allocate(part, weights)) {
                if let Some(slot) = share.0.get_mut(place) {
                    *slot = amount;
                }
            }
        }
        shares
    }

    /// Shares every part by that same part of `lines`: what each line takes of it. Nothing is lost; a part that no line
    /// has goes to the first.
    pub(crate) fn allocate_like(self, lines: &[Parts]) -> Vec<Parts> {
        let mut shares = vec![Parts::ZERO; lines.len()];
        for (place, part) in self.0.into_iter().enumerate().filter(|(_, part)| *part != 0) {
            let weights: Vec<i128> =
                lines.iter().map(|line| line.0.get(place).copied().unwrap_or(0)).collect();
            for (share, amount) in shares.iter_mut().zip(fixed::allocate(part, &weights)) {
                if let Some(slot) = share.0.get_mut(place) {
                    *slot = amount;
                }
            }
        }
        shares
    }

    fn total_micros(&self) -> i128 {
        let Parts([money, paid, vehicle, own, supplied, tools, overhead, ..]) = *self;
        [money, paid, vehicle, own, supplied, tools, overhead].into_iter().fold(0, i128::saturating_add)
    }

    fn cash_micros(&self) -> i128 {
        let Parts([money, paid, ..]) = *self;
        money.saturating_add(paid)
    }

    fn with(self, other: Parts, f: fn(i128, i128) -> i128) -> Parts {
        let mut result = self;
        for (slot, it) in result.0.iter_mut().zip(other.0) {
            *slot = f(*slot, it);
        }
        result
    }
}

/// A stored decimal in millionths.
fn micros(stored: Option<Dec>) -> i128 {
    stored.and_then(|it| fixed::micros_of(it.0)).unwrap_or(0)
}
