//! The books: one pass over everything up to a moment, then statements on demand.
//!
//! [`Books::close`] costs every entry once: hours, drives, expenses, draws; each leaf is rounded once to
//! 10⁻⁶ and every division of a sum is an allocation, so parents add up. Linear in entries but for the
//! sorts. Statements (`build`, `salvage`, `shelf`) read the rows of one bearer only.
//! Never: a clock. Entries dated after the local day of `as_of` are left out, and flagged where they bear.

use super::{
    Flag,
    direct::{self, ExpenseRow, TripRow},
    labour::{self, LabourRow},
    stock::{self, DrawRow, LotLine, Stock},
};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, Role},
        shop::{Lot, Odd},
    },
    measure::{Day, Instant},
    timing::worked,
};
use rustc_hash::FxHashMap;

/// Rows that one bearer bears, by place.
#[derive(Clone, Debug, Default)]
pub(crate) struct Bearing {
    pub labour: Vec<usize>,
    pub trips: Vec<usize>,
    pub expenses: Vec<usize>,
    pub draws: Vec<usize>,
    /// Dated after the day of the books.
    pub later: Vec<Id>,
}

/// The costed rows that stock doesn't need to be known for, and who bears them.
#[derive(Clone, Debug, Default)]
pub(crate) struct Ledgers {
    pub labour: Vec<LabourRow>,
    pub trips: Vec<TripRow>,
    pub expenses: Vec<ExpenseRow>,
    bearing: FxHashMap<Bearer, Bearing>,
    none: Bearing,
}

/// Everything costed, as of a moment.
#[derive(Clone, Debug)]
pub struct Books {
    /// The moment.
    pub as_of: Instant,
    pub(crate) ledgers: Ledgers,
    pub(crate) stock: Stock,
    pub(crate) shop: Facts,
}

/// What statements need of the shop beside the rows.
#[derive(Clone, Debug, Default)]
pub(crate) struct Facts {
    pub odd: FxHashMap<Id, Vec<Odd>>,
    /// Role and place in the picker of every stage.
    pub stages: FxHashMap<Id, (Option<Role>, u8)>,
    pub items: std::collections::BTreeMap<Id, crate::journal::shop::Item>,
    /// Lots of items: who they are for changes nothing.
    pub pooled: FxHashMap<Id, Id>,
}

impl Books {
    /// Costs everything up to the end of the local day of `as_of`; clocks run until `as_of`.
    pub fn close(shop: &Shop, as_of: Instant) -> Books {
        let last = shop.zone.day(as_of);
        let facts = Facts::of(shop);
        let mut ledgers = Ledgers::of(shop, as_of, last);
        let stock = stock::stock(shop, &facts, &mut ledgers, last);
        Books { as_of, ledgers, stock, shop: facts }
    }

    /// Every line of the cost of a lot.
    pub(crate) fn lot_lines(&self, lot: &Lot) -> Vec<LotLine> {
        let bears = self.ledgers.borne_by(Bearer::Lot(lot.entry()));
        let lines = stock::lines::lines(&self.shop, lot, &self.ledgers, &self.stock.rows, bears);
        lines.into_iter().filter(|line| !self.stock.left_out.contains(&line.entry)).collect()
    }

    /// What the fold found odd about an entry.
    pub(crate) fn odd(&self, entry: Id) -> impl Iterator<Item = Flag> + '_ {
        self.shop.odd_flags(entry)
    }
}

impl Ledgers {
    fn of(shop: &Shop, as_of: Instant, last: Day) -> Ledgers {
        let mut ledgers = Ledgers {
            labour: Vec::with_capacity(shop.stretches.len()),
            expenses: Vec::with_capacity(shop.expenses.len()),
            trips: Vec::with_capacity(shop.trips.len()),
            ..Ledgers::default()
        };
        for worked in worked(shop, as_of) {
            if worked.day > last {
                ledgers.bearing.entry(worked.bearer).or_default().later.push(worked.entry);
                continue;
            }
            let at = ledgers.labour.len();
            ledgers.bearing.entry(worked.bearer).or_default().labour.push(at);
            ledgers.labour.push(labour::row(shop, &worked));
        }
        for expense in &shop.expenses {
            let bearing = ledgers.bearing.entry(expense.bearer).or_default();
            if expense.order.day > last {
                bearing.later.push(expense.order.entry);
                continue;
            }
            bearing.expenses.push(ledgers.expenses.len());
            ledgers.expenses.push(ExpenseRow::of(expense));
        }
        for trip in &shop.trips {
            if trip.order.day > last {
                for (bearer, _) in &trip.shares {
                    ledgers.bearing.entry(*bearer).or_default().later.push(trip.order.entry);
                }
                continue;
            }
            let first = ledgers.trips.len();
            direct::trip_rows(shop, trip, &mut ledgers.trips);
            for (at, row) in ledgers.trips.iter().enumerate().skip(first) {
                ledgers.bearing.entry(row.bearer).or_default().trips.push(at);
            }
        }
        for draw in shop.draws.iter().filter(|draw| draw.order.day > last) {
            ledgers.bearing.entry(draw.bearer).or_default().later.push(draw.entry());
        }
        ledgers
    }

    /// Draws by bearer; returns stand with their draw.
    pub(crate) fn index_draws(&mut self, rows: &[DrawRow]) {
        for (at, row) in rows.iter().enumerate() {
            self.bearing.entry(row.bearer).or_default().draws.push(at);
        }
    }

    /// Everyone who bears something.
    #[cfg(test)]
    pub(crate) fn bearers(&self) -> impl Iterator<Item = Bearer> {
        self.bearing.keys().copied()
    }

    /// What a bearer bears.
    pub(crate) fn borne_by(&self, bearer: Bearer) -> &Bearing {
        self.bearing.get(&bearer).unwrap_or(&self.none)
    }
}

impl Facts {
    /// Where a stage stands in the picker; one that isn't there stands last.
    pub(crate) fn stage_place(&self, stage: Id) -> u8 {
        self.stages.get(&stage).map_or(u8::MAX, |(_, place)| *place)
    }

    /// What the fold found odd about an entry.
    pub(crate) fn odd_flags(&self, entry: Id) -> impl Iterator<Item = Flag> + '_ {
        let odd = self.odd.get(&entry).into_iter().flatten();
        odd.map(move |odd| Flag::Odd { entry, odd: *odd })
    }

    pub(crate) fn hauls(&self, stage: Id) -> bool {
        self.stages.get(&stage).is_some_and(|(role, _)| *role == Some(Role::Haul))
    }

    fn of(shop: &Shop) -> Facts {
        let mut odd: FxHashMap<Id, Vec<Odd>> = FxHashMap::default();
        for (entry, what) in &shop.odd {
            odd.entry(*entry).or_default().push(*what);
        }
        let stages = shop.stages.iter().map(|(id, stage)| (*id, (stage.role, stage.place)));
        let pooled = shop.lots.iter().filter_map(|(id, lot)| lot.item.map(|item| (*id, item)));
        Facts { odd, stages: stages.collect(), items: shop.items.clone(), pooled: pooled.collect() }
    }
}
