//! A cost is a vector of parts, never one number; beside it the hours that are in it.
//!
//! Money parts in millionths of the shop's currency, hours in millionths of a second: a draw takes the
//! same share of every one of them. Source: our own rule, DEVELOPERS.md § Figures.
//! Not here: tools and overhead, which no entry kind tells of yet ([`super::Gap`]).

use crate::measure::{Money, Quantity, Seconds, fixed};

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
    /// What is no money that was paid: vehicle, own labour, supplied value.
    Rest,
    /// What salvage costs while own time is free: money, wages, vehicle.
    CashAndVehicle,
    /// Own labour at its rate.
    OwnLabour,
}

const N: usize = 7;

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
        Parts([money.micros(), 0, 0, 0, 0, 0, 0])
    }

    pub(crate) fn of_vehicle(money: Money) -> Parts {
        Parts([0, 0, money.micros(), 0, 0, 0, 0])
    }

    pub(crate) fn of_supplied(money: Money) -> Parts {
        Parts([0, 0, 0, 0, money.micros(), 0, 0])
    }

    /// Work: `paid` people's hours are money.
    pub(crate) fn of_labour(value: Money, seconds: Seconds, paid: bool) -> Parts {
        let (value, time) = (value.micros(), Hours::of(seconds).0);
        if paid { Parts([0, value, 0, 0, 0, 0, time]) } else { Parts([0, 0, 0, value, 0, time, 0]) }
    }

    pub(crate) fn through(&self, lens: Lens) -> Money {
        let [all, cash, vehicle, own] =
            [self.total_micros(), self.cash_micros(), self.vehicle().micros(), self.own_labour().micros()];
        Money::from_micros(match lens {
            Lens::All => all,
            Lens::Cash => cash,
            Lens::Rest => all.saturating_sub(cash),
            Lens::CashAndVehicle => cash.saturating_add(vehicle),
            Lens::OwnLabour => own,
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

    fn total_micros(&self) -> i128 {
        let Parts([money, paid, vehicle, own, supplied, ..]) = *self;
        [money, paid, vehicle, own, supplied].into_iter().fold(0, i128::saturating_add)
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
