//! What one bearer bears directly: expenses, and its share of drives.
//!
//! Kilometres × the rate of that day, rounded once per trip; kilometres and tolls are shared by parts,
//! largest remainder first, ties to the share that stands first in the entry. Tax that can be got back is
//! no cost. Source: our own rule, DEVELOPERS.md § Figures. Not here: haul hours (`labour`).

use super::{Gap, Parts, Working};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, SettingKey, Side},
        shop::{ByProduct, Expense, Receipt, Trip},
    },
    measure::{Day, Dec, Money, Quantity, fixed},
};

/// One expense, what no line of a receipt accounts for yet, or (below zero) what a by-product brought.
#[derive(Clone, Copy, Debug)]
pub(crate) struct ExpenseRow {
    pub entry: Id,
    /// None: a gap.
    pub cost: Option<Money>,
    pub tax_back: Money,
    pub side: Side,
    /// Borne by all that will be made with it.
    pub one_off: bool,
}

/// One bearer's share of a trip.
#[derive(Clone, Copy, Debug)]
pub(crate) struct TripRow {
    pub entry: Id,
    pub bearer: Bearer,
    pub km: Option<Quantity>,
    pub rate: Option<Money>,
    /// Tolls of the whole trip.
    pub whole_fee: Money,
    pub share: (u64, u64),
    /// This share of the kilometres at their rate; none: a gap.
    pub vehicle: Option<Money>,
    /// This share of the tolls.
    pub fee: Money,
}

impl ExpenseRow {
    pub(crate) fn of(expense: &Expense) -> ExpenseRow {
        ExpenseRow {
            entry: expense.order.entry,
            cost: expense.cost(),
            tax_back: expense.whole_tax_back(),
            side: expense.side,
            one_off: expense.one_off,
        }
    }

    /// None where the lines account for all of it.
    pub(crate) fn of_receipt(receipt: &Receipt) -> Option<ExpenseRow> {
        let open = !receipt.unsaid.is_zero() || !receipt.unsaid_tax_back.is_zero();
        open.then_some(ExpenseRow {
            entry: receipt.order.entry,
            cost: Some(receipt.unsaid),
            tax_back: receipt.unsaid_tax_back,
            side: Side::Piece,
            one_off: false,
        })
    }

    pub(crate) fn of_by_product(it: &ByProduct) -> ExpenseRow {
        let cost = it.amount.map(Money::negated);
        ExpenseRow { entry: it.order.entry, cost, tax_back: Money::ZERO, side: Side::Piece, one_off: false }
    }

    pub(crate) fn parts(&self) -> Parts {
        Parts::of_money(self.cost.unwrap_or_default())
    }

    pub(crate) fn gap(&self) -> Option<Gap> {
        self.cost.is_none().then_some(Gap::NoAmount { entry: self.entry })
    }
}

impl TripRow {
    pub(crate) fn parts(&self) -> Parts {
        Parts::of_vehicle(self.vehicle.unwrap_or_default()).plus(Parts::of_money(self.fee))
    }

    pub(crate) fn working(&self) -> Working {
        Working::Trip { km: self.km, rate: self.rate, fee: self.whole_fee, share: self.share }
    }

    pub(crate) fn gap(&self) -> Option<Gap> {
        match (self.km, self.rate) {
            (None, _) => Some(Gap::NoAmount { entry: self.entry }),
            (Some(km), None) if !km.is_zero() => Some(Gap::NoKmRate),
            (Some(_), _) => None,
        }
    }
}

/// A row for each bearer of a trip; without a bearer the shop bears it.
pub(crate) fn trip_rows(shop: &Shop, trip: &Trip, into: &mut Vec<TripRow>) {
    let rate = km_rate(shop, trip.order.day);
    let vehicle = trip.km.zip(rate).and_then(|(km, rate)| km_value(km, rate));
    let whole_shop = [(Bearer::Shop, 1)];
    let shares = if trip.shares.is_empty() { whole_shop.as_slice() } else { trip.shares.as_slice() };
    let weights: Vec<i128> = shares.iter().map(|(_, parts)| i128::from(*parts)).collect();
    let whole = shares.iter().fold(0_u64, |sum, (_, parts)| sum.saturating_add(u64::from(*parts)));
    let vehicles = vehicle.map(|it| fixed::allocate(it.micros(), &weights)).unwrap_or_default();
    let fees = fixed::allocate(trip.fee.micros(), &weights);
    for (at, ((bearer, parts), fee)) in shares.iter().zip(fees).enumerate() {
        into.push(TripRow {
            entry: trip.order.entry,
            bearer: *bearer,
            km: trip.km,
            rate,
            whole_fee: trip.fee,
            share: (u64::from(*parts), whole),
            vehicle: vehicles.get(at).map(|micros| Money::from_micros(*micros)),
            fee: Money::from_micros(fee),
        });
    }
}

fn km_rate(shop: &Shop, day: Day) -> Option<Money> {
    let text = shop.settings.on(SettingKey::KmRate, day)?;
    Dec::parse(text).ok()?.money().filter(|rate| !rate.is_negative())
}

fn km_value(km: Quantity, rate: Money) -> Option<Money> {
    fixed::mul_div(km.micros(), rate.micros(), fixed::SCALE).map(Money::from_micros)
}
