//! The books: one pass over everything up to a moment, then statements on demand.
//!
//! [`Books::close`] costs every entry once: hours, drives, expenses, draws; each leaf is rounded once to
//! 10⁻⁶ and every division of a sum is an allocation, so parents add up. Linear in entries but for the
//! sorts. Statements (`build`, `salvage`, `shelf`) read the rows of one bearer only.
//! Never: a clock. Entries dated after the local day of `as_of` are left out, and flagged where they bear.

use super::{
    Flag, Hours, Items,
    closing::Closing,
    direct::{self, ExpenseRow, TripRow},
    income::IncomeRow,
    labour::{self, LabourRow},
    likes::Likes,
    one_off::Series,
    outlook::ToCome,
    overhead::Months,
    sides::{self, Keys, OneSide, Split},
    stock::{self, DrawRow, Frozen, LotLine, Stock},
    tools::{self, Tools},
};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, Role, Side},
        order::Order,
        shop::{Lot, Odd},
    },
    measure::{Day, Instant, Map, Money},
    timing::worked::{Owned, Worked, owned},
};
use rustc_hash::FxHashMap;

/// Rows that one bearer bears, by place.
#[derive(Clone, Debug, Default)]
pub(crate) struct Bearing {
    pub labour: Vec<usize>,
    pub tools: Vec<usize>,
    pub trips: Vec<usize>,
    pub expenses: Vec<usize>,
    pub draws: Vec<usize>,
    pub incomes: Vec<usize>,
    /// Dated after the day of the books.
    pub later: Vec<Id>,
}

/// The costed rows that stock doesn't need to be known for, and who bears them.
#[derive(Clone, Debug, Default)]
pub(crate) struct Ledgers {
    pub labour: Vec<LabourRow>,
    pub trips: Vec<TripRow>,
    pub expenses: Vec<ExpenseRow>,
    pub tools: Tools,
    pub keys: Keys,
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
    pub(crate) made: Map<Id, Items>,
    pub(crate) incomes: Vec<IncomeRow>,
    pub(crate) series: Vec<Series>,
    pub(crate) likes: Likes,
    /// Which of them a build shares in.
    pub(crate) in_series: FxHashMap<Id, usize>,
    /// What the steps of a build still cost.
    pub(crate) to_come: Map<Id, ToCome>,
}

/// What statements need of the shop beside the rows.
#[derive(Clone, Debug, Default)]
pub(crate) struct Facts {
    pub odd: FxHashMap<Id, Vec<Odd>>,
    /// Role and place in the picker of every stage.
    pub stages: FxHashMap<Id, (Option<Role>, u8)>,
    pub items: crate::measure::Map<Id, crate::journal::shop::Item>,
    /// Lots of items: who they are for changes nothing.
    pub pooled: FxHashMap<Id, Id>,
    /// The shop has tools, or monthly costs.
    pub keeps_tools: bool,
    pub keeps_months: bool,
    /// Tax to be got back of lots that are pooled under items.
    pub pooled_tax_back: Money,
}

impl Books {
    /// Costs everything up to the end of the local day of `as_of`; clocks run until `as_of`.
    ///
    /// What the draws of a closed build cost stays as it was when it was closed.
    pub fn close(shop: &Shop, as_of: Instant) -> Books {
        Closing::begin(shop, as_of).to_the_end(shop)
    }

    /// The same by what is known today: as if no build had been closed.
    pub fn by_todays_knowledge(shop: &Shop, as_of: Instant) -> Books {
        Closing::with(as_of, Frozen::default()).to_the_end(shop)
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

/// The hours behind the rows of work, for what goes by them.
pub(super) struct Counted {
    worked: Vec<Worked>,
    owned: Vec<Owned>,
    /// The place of each in the rows of work; none of what is dated after the books.
    place: Vec<Option<usize>>,
}

impl Ledgers {
    /// What was paid and driven.
    pub(super) fn pay_all(&mut self, shop: &Shop, last: Day) {
        let ledgers = self;
        ledgers.expenses.reserve(shop.expenses.len());
        ledgers.trips.reserve(shop.trips.len());
        for expense in &shop.expenses {
            ledgers.pay(expense.bearer, expense.order, ExpenseRow::of(expense), last);
        }
        for receipt in shop.receipts.values() {
            if let Some(row) = ExpenseRow::of_receipt(receipt) {
                ledgers.pay(receipt.bearer, receipt.order, row, last);
            }
        }
        for it in &shop.by_products {
            ledgers.pay(it.of, it.order, ExpenseRow::of_by_product(it), last);
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
    }

    /// Hours, and what they bear of the shop's own costs.
    pub(super) fn of_hours(shop: &Shop, as_of: Instant, last: Day) -> (Ledgers, Counted) {
        let mut ledgers = Ledgers { labour: Vec::with_capacity(shop.stretches.len()), ..Ledgers::default() };
        let counted = ledgers.work(shop, as_of, last);
        ledgers.share_hours(shop, &counted.worked, last);
        (ledgers, counted)
    }

    fn work(&mut self, shop: &Shop, as_of: Instant, last: Day) -> Counted {
        let (worked, owned) = owned(shop, as_of);
        let mut place: Vec<Option<usize>> = Vec::with_capacity(worked.len());
        for it in &worked {
            let bearing = self.bearing.entry(it.bearer).or_default();
            if it.day > last {
                bearing.later.push(it.entry);
                place.push(None);
                continue;
            }
            bearing.labour.push(self.labour.len());
            place.push(Some(self.labour.len()));
            self.labour.push(labour::row(shop, it));
        }
        for piece in &owned {
            let row = place.get(piece.stretch).copied().flatten().and_then(|at| self.labour.get_mut(at));
            let (Some(row), Some(stretch)) = (row, shop.stretches.get(piece.stretch)) else { continue };
            for roll in &stretch.rolling {
                let (from, to) = (roll.from.max(piece.from), roll.to.unwrap_or(piece.to).min(piece.to));
                if from < to {
                    row.rolled = row.rolled.plus(to.since(from));
                }
            }
        }
        Counted { worked, owned, place }
    }

    /// What tools and machines ran beside the hours.
    pub(super) fn run_tools(&mut self, shop: &Shop, counted: &Counted, last: Day) {
        let Counted { worked, owned, place } = counted;
        let split = |at: usize| {
            let row = place.get(at).copied().flatten().and_then(|at| self.labour.get(at));
            row.map_or(Split::PIECE, |row| row.split)
        };
        self.tools = tools::tools(shop, worked, owned, split, last);
        for (at, row) in self.tools.rows.iter().enumerate() {
            self.bearing.entry(row.bearer).or_default().tools.push(at);
        }
    }

    /// Which side each stretch is for, and what it bears of the shop's own costs.
    fn share_hours(&mut self, shop: &Shop, worked: &[Worked], last: Day) {
        let slow_down = sides::slow_down(shop, last);
        let mut direct: FxHashMap<Id, Split> = FxHashMap::default();
        let counted = worked.iter().filter(|it| it.day <= last);
        for (it, row) in counted.clone().zip(&self.labour) {
            let Bearer::Build(build) = it.bearer else { continue };
            if it.side == Side::Both {
                continue;
            }
            let whole = Hours::of(row.seconds);
            let split = sides::of_work(it.side, Split::PIECE, row.seconds, row.rolled, slow_down);
            let film = split.hours(whole, OneSide::Film).micros();
            let sum = direct.entry(build).or_insert(Split { piece: 0, film: 0 });
            sum.piece = sum.piece.saturating_add(whole.micros().saturating_sub(film));
            sum.film = sum.film.saturating_add(film);
        }
        self.keys = Keys::of(shop, &direct, last);
        let mut months = Months::of(shop);
        for (it, row) in counted.zip(&mut self.labour) {
            let key = self.keys.of_bearer(it.bearer);
            row.split = sides::of_work(it.side, key.split, row.seconds, row.rolled, slow_down);
            let admin = shop.stages.get(&it.stage).is_some_and(|stage| stage.role == Some(Role::Admin));
            if it.bearer != Bearer::Shop && !admin {
                row.overhead = months.share(it.day, row.seconds, row.split);
            }
        }
    }

    fn pay(&mut self, bearer: Bearer, order: Order, row: ExpenseRow, last: Day) {
        let bearing = self.bearing.entry(bearer).or_default();
        if order.day > last {
            bearing.later.push(order.entry);
            return;
        }
        bearing.expenses.push(self.expenses.len());
        self.expenses.push(row);
    }

    /// Draws by bearer; returns stand with their draw.
    pub(crate) fn index_draws(&mut self, rows: &[DrawRow]) {
        for (at, row) in rows.iter().enumerate() {
            self.bearing.entry(row.bearer).or_default().draws.push(at);
        }
    }

    /// Shares of income by bearer.
    pub(super) fn index_incomes(&mut self, rows: &[IncomeRow]) {
        for (at, row) in rows.iter().enumerate() {
            self.bearing.entry(row.bearer).or_default().incomes.push(at);
        }
    }

    /// Everyone who bears something.
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
        self.has_role(stage, Role::Haul)
    }

    pub(crate) fn has_role(&self, stage: Id, role: Role) -> bool {
        self.stages.get(&stage).is_some_and(|(of, _)| *of == Some(role))
    }

    pub(super) fn of(shop: &Shop) -> Facts {
        let mut odd: FxHashMap<Id, Vec<Odd>> = FxHashMap::default();
        for (entry, what) in &shop.odd {
            odd.entry(*entry).or_default().push(*what);
        }
        let stages = shop.stages.iter().map(|(id, stage)| (*id, (stage.role, stage.place)));
        let pooled = shop.lots.iter().filter_map(|(id, lot)| lot.item.map(|item| (*id, item)));
        Facts {
            odd,
            stages: stages.collect(),
            items: shop.items.clone(),
            pooled: pooled.collect(),
            keeps_tools: !shop.tools.is_empty(),
            keeps_months: !shop.monthly.is_empty(),
            pooled_tax_back: shop
                .lots
                .values()
                .filter(|lot| lot.item.is_some())
                .fold(Money::ZERO, |sum, lot| sum.plus(lot.whole_tax_back())),
        }
    }
}
