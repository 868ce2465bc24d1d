//! Receipts: what their lines bear of freight, discount and tax, and what no line accounts for yet.
//!
//! Freight, discount and tax go over the lines by their value, in whole minor units of the currency, largest remainder
//! first, ties by entry id: a till prints no tenths of a cent. Source: our own rule, DEVELOPERS.md § Figures.

use super::{Odd, Shop, facts::money_or_zero};
use crate::{
    journal::{
        Id,
        kinds::{self, Bearer},
        order::Order,
    },
    measure::{InOrder, Money, fixed},
};
use rustc_hash::FxHashMap;

/// Money that a line bears of what stands once on its receipt.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Shared {
    /// Freight.
    pub freight: Money,
    /// Discount.
    pub discount: Money,
    /// Tax that stays in the cost.
    pub tax: Money,
    /// Tax that can be got back.
    pub tax_back: Money,
}

impl Shared {
    /// What it adds to the cost of a line.
    pub fn cost(&self) -> Money {
        self.freight.plus(self.tax).minus(self.discount)
    }
}

/// What was paid at a till.
#[derive(Clone, Debug, PartialEq)]
pub struct Receipt {
    /// Its place in time.
    pub order: Order,
    /// From whom.
    pub whence: Option<String>,
    /// Freight, discount and tax of the whole receipt.
    pub whole: Shared,
    /// All that was paid; none: what the lines come to.
    pub total: Option<Money>,
    /// Who bears what no line accounts for yet.
    pub bearer: Bearer,
    /// Its lines, by entry: what each is worth before anything is shared.
    pub lines: Vec<(Id, Money)>,
    /// Cost that no line accounts for yet.
    pub unsaid: Money,
    /// Tax to be got back that no line accounts for yet.
    pub unsaid_tax_back: Money,
}

impl Receipt {
    pub(super) fn read(order: Order, body: &kinds::Receipt, tell: &mut dyn FnMut(Odd)) -> Receipt {
        let tax = money_or_zero(body.tax, tell);
        let (tax, tax_back) = if body.tax_back { (Money::ZERO, tax) } else { (tax, Money::ZERO) };
        let freight = money_or_zero(body.freight, tell);
        let discount = money_or_zero(body.discount, tell);
        Receipt {
            order,
            whence: body.whence.clone(),
            whole: Shared { freight, discount, tax, tax_back },
            total: body.total.map(|total| money_or_zero(Some(total), tell)),
            bearer: body.bearer.unwrap_or(Bearer::Shop),
            lines: Vec::new(),
            unsaid: Money::ZERO,
            unsaid_tax_back: Money::ZERO,
        }
    }

    /// What its lines come to before anything is shared.
    pub fn said(&self) -> Money {
        self.lines.iter().fold(Money::ZERO, |sum, (_, value)| sum.plus(*value))
    }

    /// What was paid; without a total what its lines come to, freight and tax in it and the discount off.
    pub fn comes_to(&self) -> Money {
        let beside = self.whole.cost().plus(self.whole.tax_back);
        self.total.unwrap_or_else(|| self.said().plus(beside))
    }

    /// What its lines have still to say of the total, before anything is shared; negative where they say more. None:
    /// no total was kept, and the lines are all that is known.
    pub fn open(&self) -> Option<Money> {
        let beside = self.whole.cost().plus(self.whole.tax_back);
        self.total.map(|total| total.minus(self.said()).minus(beside))
    }

    /// What its lines say beyond the total.
    pub fn beyond(&self) -> Option<Money> {
        self.open().filter(|open| open.is_negative()).map(Money::negated)
    }

    /// Whether lines are missing: by its total, or because it has none at all.
    pub fn waits(&self) -> bool {
        self.open().map_or(self.lines.is_empty(), |open| open > Money::ZERO)
    }

    /// What each line bears, in their order. Nothing where no line has a value: then the receipt bears it itself.
    fn shares(&self, minor: u8) -> Vec<Shared> {
        let weights: Vec<i128> = self.lines.iter().map(|(_, value)| value.micros()).collect();
        if weights.iter().all(|weight| *weight <= 0) {
            return Vec::new();
        }
        let of = |whole: Money| in_minor_units(whole, &weights, minor);
        let (freight, discount) = (of(self.whole.freight), of(self.whole.discount));
        let (tax, tax_back) = (of(self.whole.tax), of(self.whole.tax_back));
        let parts = freight.into_iter().zip(discount).zip(tax).zip(tax_back);
        parts
            .map(|(((freight, discount), tax), tax_back)| Shared { freight, discount, tax, tax_back })
            .collect()
    }

    /// What stays with the receipt itself. True: the lines come to more than was paid.
    fn settle(&mut self, shared: bool) -> bool {
        let whole = self.whole;
        let open = self.open().unwrap_or(Money::ZERO);
        let own = if shared { Money::ZERO } else { whole.cost() };
        self.unsaid = open.max(Money::ZERO).plus(own);
        self.unsaid_tax_back = if shared { Money::ZERO } else { whole.tax_back };
        open.is_negative()
    }
}

/// Shares money in whole minor units; what is finer than those goes to the first line.
fn in_minor_units(whole: Money, weights: &[i128], minor: u8) -> Vec<Money> {
    let digits = fixed::SCALE_DIGITS.saturating_sub(u32::from(minor.min(6)));
    let step = fixed::power_of_ten(digits).unwrap_or(1);
    let units = whole.micros().checked_div(step).unwrap_or(0);
    let mut finer = whole.micros().saturating_sub(units.saturating_mul(step));
    let shares = fixed::allocate(units, weights).into_iter().map(|share| {
        let money = share.saturating_mul(step).saturating_add(finer);
        finer = 0;
        Money::from_micros(money)
    });
    shares.collect()
}

impl Shop {
    /// Ties lots and expenses to their receipts and shares out what stands once. Can be done again and again.
    pub(super) fn share_receipts(&mut self) {
        if self.receipts.is_empty() {
            return;
        }
        let minor = self.minor();
        for receipt in self.receipts.values_mut() {
            receipt.lines.clear();
        }
        let lots = self.lots.values().filter_map(|lot| Some((lot.receipt?, lot.entry(), lot.paid)));
        let expenses = self.expenses.iter().filter_map(|it| Some((it.receipt?, it.order.entry, it.amount)));
        for (receipt, entry, value) in lots.chain(expenses) {
            if let Some(receipt) = self.receipts.get_mut(&receipt) {
                receipt.lines.push((entry, value.unwrap_or_default()));
            }
        }
        let mut places: FxHashMap<Id, usize> = FxHashMap::default();
        for (at, expense) in self.expenses.iter().enumerate().filter(|it| it.1.receipt.is_some()) {
            places.entry(expense.order.entry).or_insert(at);
        }
        for (id, receipt) in self.receipts.iter_mut() {
            receipt.lines.order_by_key(|(entry, _)| *entry);
            let shares = receipt.shares(minor);
            if receipt.settle(!shares.is_empty()) {
                self.odd.push((*id, Odd::LinesBeyondTotal));
            }
            for ((entry, _), share) in receipt.lines.iter().zip(shares) {
                if let Some(lot) = self.lots.get_mut(entry) {
                    lot.shared = share;
                }
                if let Some(expense) = places.get(entry).and_then(|at| self.expenses.get_mut(*at)) {
                    expense.shared = share;
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn money(units: i128) -> Money {
        Money::from_micros(units * 10_000)
    }

    #[test]
    fn a_receipt_waits_until_its_lines_come_to_its_total() {
        let receipt = |total: Option<i128>, lines: &[i128]| Receipt {
            order: Order {
                day: crate::measure::Day::parse("2026-11-20").unwrap(),
                rank: 1,
                time: None,
                entry: Id::of([1; 16]),
            },
            whence: None,
            whole: Shared {
                freight: money(600),
                discount: money(100),
                tax: money(943),
                tax_back: Money::ZERO,
            },
            total: total.map(money),
            bearer: Bearer::Shop,
            lines: lines.iter().map(|value| (Id::of([2; 16]), money(*value))).collect(),
            unsaid: Money::ZERO,
            unsaid_tax_back: Money::ZERO,
        };
        // 82.00 with 6.00 freight, 1.00 off and 9.43 tax leaves 67.57 for the lines.
        let open = |lines: &[i128]| receipt(Some(8200), lines).open();
        assert_eq!(open(&[]), Some(money(6757)));
        assert_eq!(open(&[2037]), Some(money(4720)));
        assert_eq!(open(&[2037, 4720]), Some(Money::ZERO));
        assert_eq!(open(&[7000]), Some(money(-243)));
        assert_eq!(receipt(Some(8200), &[7000]).beyond(), Some(money(243)));
        assert_eq!(receipt(Some(8200), &[2037]).beyond(), None);
        let waits = |total, lines: &[i128]| receipt(total, lines).waits();
        assert!(
            waits(Some(8200), &[2037]) && !waits(Some(8200), &[2037, 4720]) && !waits(Some(8200), &[7000])
        );
        assert!(waits(None, &[]) && !waits(None, &[2037]));
    }

    #[test]
    fn tax_goes_over_the_lines_by_value_in_whole_cents() {
        // Worked example: 9.43 over 24.00, 16.50 and 31.00 is 3.16, 2.18 and 4.09.
        let weights = [2400, 1650, 3100];
        assert_eq!(in_minor_units(money(943), &weights, 2), [money(316), money(218), money(409)]);
        assert_eq!(in_minor_units(money(600), &weights, 2), [money(201), money(139), money(260)]);
        assert_eq!(
            in_minor_units(Money::from_micros(9_430_001), &weights, 2)[0],
            Money::from_micros(3_160_001)
        );
    }
}
