//! All accounts, costed in such an order that stock drawn for a lot is costed before that lot.

use super::{
    DrawRow, Found, Frozen, ItemAccount, Looked, LotAccount, Mishap, WrittenOff,
    formula::{self, Formula},
    frozen::CameBack,
    lines, named_lot,
    pooled::Pooled,
    rows,
    written_off::{self, Seen, Why},
};
use crate::measure::InOrder;
use crate::{
    costing::{
        CostKind, Flag, Gap, Parts,
        books::{Bearing, Facts, Ledgers},
    },
    journal::{
        Id, Shop,
        kinds::{Bearer, Origin, ShelfState, Source},
        order::Order,
        shop::{Look, Lot},
    },
    measure::{Day, Map, Quantity, Ratio, fixed},
};
use rustc_hash::{FxHashMap, FxHashSet};
use std::{borrow::Cow, collections::BTreeSet};

/// Every draw, every lot and every item, costed.
#[derive(Clone, Debug, Default)]
pub(crate) struct Stock {
    pub rows: Vec<DrawRow>,
    pub lots: Map<Id, LotAccount>,
    pub items: Map<Id, ItemAccount>,
    /// Draws that would go round in a circle between lots.
    pub left_out: FxHashSet<Id>,
    /// Rows by account, in order.
    pub by_source: FxHashMap<Source, Vec<usize>>,
    /// Row of each draw and return.
    pub by_entry: FxHashMap<Id, usize>,
    /// Lots that are drawn by name, by the build that they were got for, in the order of their ids.
    pub got_for: FxHashMap<Id, Vec<Id>>,
    /// What closed builds keep of lots that are gone from the journal: a difference of the shop, by draw.
    pub gone: Vec<(Source, WrittenOff)>,
}

impl Stock {
    /// The row of a draw or return.
    pub(crate) fn row_of(&self, entry: Id) -> Option<&DrawRow> {
        self.rows.get(*self.by_entry.get(&entry)?)
    }
}

/// Costs all stock up to `last`.
pub(crate) fn stock(shop: &Shop, facts: &Facts, ledgers: &mut Ledgers, last: Day, frozen: Frozen) -> Stock {
    let rows = rows::rows(shop, last);
    ledgers.index_draws(&rows);
    let mut all = All { frozen, ..All::new(shop, facts, ledgers, rows, last) };
    all.look();
    for account in all.sequence() {
        match account {
            Source::Lot(lot) => all.named_lot(lot),
            Source::Item(item) => all.item(item),
        }
    }
    let mut stock = all.stock;
    for (lot, account) in &stock.lots {
        if let Some(build) = account.facts.for_build {
            stock.got_for.entry(build).or_default().push(*lot);
        }
    }
    stock
}

/// What the accounts are made from.
struct All<'a> {
    shop: &'a Shop,
    facts: &'a Facts,
    ledgers: &'a Ledgers,
    last: Day,
    stock: Stock,
    found: FxHashMap<Id, Found>,
    mishaps: FxHashMap<Id, Vec<Mishap>>,
    odd_sorts: FxHashMap<Id, Vec<Flag>>,
    odd_looks: FxHashMap<Source, Vec<Flag>>,
    looks: FxHashMap<Source, Vec<&'a Look>>,
    /// Which formula from which day on.
    formulas: Vec<(Option<Day>, Formula)>,
    pooled: Map<Id, Vec<&'a Lot>>,
    yields: FxHashMap<&'a str, Vec<Ratio>>,
    /// Draws that would go round in a circle.
    left_out: FxHashSet<usize>,
    frozen: Frozen,
    came_back: CameBack,
}

impl<'a> All<'a> {
    fn new(shop: &'a Shop, facts: &'a Facts, ledgers: &'a Ledgers, rows: Vec<DrawRow>, last: Day) -> All<'a> {
        let mut all = All {
            shop,
            facts,
            ledgers,
            last,
            stock: Stock { rows, ..Stock::default() },
            found: FxHashMap::default(),
            mishaps: FxHashMap::default(),
            odd_sorts: FxHashMap::default(),
            odd_looks: FxHashMap::default(),
            looks: FxHashMap::default(),
            formulas: formula::changes(shop, last),
            pooled: Map::new(),
            yields: FxHashMap::default(),
            left_out: FxHashSet::default(),
            frozen: Frozen::default(),
            came_back: CameBack::default(),
        };
        for (at, row) in all.stock.rows.iter().enumerate() {
            all.stock.by_source.entry(row.account).or_default().push(at);
            all.stock.by_entry.entry(row.entry()).or_insert(at);
        }
        for lot in all.lots() {
            if let Some(item) = lot.item {
                all.pooled.entry(item).or_default().push(lot);
            }
        }
        all
    }

    fn lots(&self) -> impl Iterator<Item = &'a Lot> + use<'a> {
        let last = self.last;
        self.shop.lots.values().filter(move |lot| lot.order.day <= last)
    }

    /// Sortings and culls, in their order.
    fn looked(&self) -> Vec<Looked<'a>> {
        let sorts = self.shop.sorts.iter().map(Looked::Sort);
        let mut all: Vec<Looked> = sorts.chain(self.shop.culls.iter().map(Looked::Cull)).collect();
        all.retain(|it| it.order().day <= self.last);
        all.order_by_key(Looked::order);
        all
    }

    /// Sorts, looks at the shelf, and the yields of each place that lots came from.
    fn look(&mut self) {
        for looked in self.looked() {
            let (lot, order) = (looked.lot(), looked.order());
            let rough = self.shop.lots.get(&lot).and_then(|lot| lot.rough);
            let mishap = self.found.entry(lot).or_default().look(&looked, rough);
            self.mishaps.entry(lot).or_default().extend(mishap);
            for flag in self.facts.odd_flags(order.entry) {
                self.odd_sorts.entry(lot).or_default().push(flag);
            }
        }
        for look in self.shop.looks.iter().filter(|look| look.order.day <= self.last) {
            let account = rows::account(self.shop, look.of);
            if let (Source::Lot(lot), true) = (account, look.is_empty()) {
                self.found.entry(lot).or_default().empty = true;
            }
            for flag in self.facts.odd_flags(look.entry()) {
                self.odd_looks.entry(account).or_default().push(flag);
            }
            self.looks.entry(account).or_default().push(look);
        }
        for lot in self.lots().filter(|lot| lot.origin == Origin::Salvaged) {
            let found = self.found.get(&lot.entry()).copied().unwrap_or_default();
            if let (Some(whence), Some(share)) = (lot.whence.as_deref(), found.yielded()) {
                self.yields.entry(whence.trim()).or_default().push(share);
            }
        }
        for yields in self.yields.values_mut() {
            yields.order();
        }
    }

    /// Every account, those that feed others first. Circles are broken at the least id, and flagged.
    fn sequence(&mut self) -> Vec<Source> {
        let mut accounts: BTreeSet<Source> = self.stock.by_source.keys().copied().collect();
        accounts.extend(self.lots().filter(|lot| lot.item.is_none()).map(named_lot::source));
        accounts.extend(self.shop.items.keys().copied().map(Source::Item));
        accounts.extend(self.pooled.keys().copied().map(Source::Item));
        accounts.extend(self.looks.keys().copied().filter(|account| matches!(account, Source::Item(_))));
        let mut feeds: Map<Source, Vec<Source>> = Map::new();
        let mut waits: Map<Source, usize> = Map::new();
        for (from, to, _) in self.feeding() {
            feeds.entry(from).or_default().push(to);
            let count = waits.entry(to).or_default();
            *count = count.saturating_add(1);
        }
        let mut ready: BTreeSet<Source> =
            accounts.iter().copied().filter(|account| !waits.contains_key(account)).collect();
        let mut sequence = Vec::with_capacity(accounts.len());
        while !accounts.is_empty() {
            let Some(account) = ready.pop_first().or_else(|| accounts.first().copied()) else { break };
            accounts.remove(&account);
            sequence.push(account);
            for to in feeds.remove(&account).unwrap_or_default() {
                let left = waits.get_mut(&to).map_or(0, |count| {
                    *count = count.saturating_sub(1);
                    *count
                });
                if left == 0 && accounts.contains(&to) {
                    ready.insert(to);
                }
            }
        }
        self.leave_out(&sequence);
        sequence
    }

    /// Draws that a lot bears: from which account, into which, by which row.
    fn feeding(&self) -> Vec<(Source, Source, usize)> {
        let rows = self.stock.rows.iter().enumerate();
        rows.filter_map(|(at, row)| match row.bearer {
            Bearer::Lot(lot) if self.shop.lots.contains_key(&lot) => {
                Some((row.account, rows::account(self.shop, Source::Lot(lot)), at))
            }
            Bearer::Lot(_) | Bearer::Build(_) | Bearer::Shop => None,
        })
        .collect()
    }

    fn leave_out(&mut self, sequence: &[Source]) {
        let feeding = self.feeding();
        if feeding.is_empty() {
            return;
        }
        let place: FxHashMap<Source, usize> =
            sequence.iter().enumerate().map(|(at, account)| (*account, at)).collect();
        for (from, to, at) in feeding {
            if place.get(&from) >= place.get(&to) {
                self.left_out.insert(at);
                if let Some(row) = self.stock.rows.get_mut(at) {
                    row.flags.push(Flag::Circle { entry: row.entry() });
                    self.stock.left_out.insert(row.entry());
                }
            }
        }
    }

    /// What a lot bears, circles left out.
    fn bears(&self, lot: Id) -> Cow<'a, Bearing> {
        let bears = self.ledgers.borne_by(Bearer::Lot(lot));
        if self.left_out.is_empty() {
            return Cow::Borrowed(bears);
        }
        let mut bears = bears.clone();
        bears.draws.retain(|at| !self.left_out.contains(at));
        Cow::Owned(bears)
    }

    /// The rows of an account, to be put back where they were.
    fn take_rows(&mut self, account: Source) -> Vec<usize> {
        self.stock.by_source.get_mut(&account).map(std::mem::take).unwrap_or_default()
    }

    fn put_back(&mut self, account: Source, rows: Vec<usize>) {
        if !rows.is_empty() {
            self.stock.by_source.insert(account, rows);
        }
    }

    fn named_lot(&mut self, id: Id) {
        let of_lot = self.take_rows(Source::Lot(id));
        let lot = self.shop.lots.get(&id).filter(|lot| lot.order.day <= self.last);
        let Some(lot) = lot else {
            self.never_received(Source::Lot(id), &of_lot);
            self.put_back(Source::Lot(id), of_lot);
            return;
        };
        let lines = lines::lines(self.facts, lot, self.ledgers, &self.stock.rows, &self.bears(id));
        let drawn =
            of_lot.iter().filter_map(|at| self.stock.rows.get(*at)).filter(|row| row.returns.is_none());
        let drawn = drawn.fold(Quantity::ZERO, |sum, row| sum.plus(row.net()));
        let found = self.found.get(&id).copied().unwrap_or_default();
        let seen = self.seen(lot, &of_lot);
        let mut account = named_lot::open(lot, &lines, (found, seen), drawn, self.history(lot, found));
        account.flags.extend(lines.iter().flat_map(|line| self.facts.odd_flags(line.entry)));
        account.flags.extend(self.odd_sorts.get(&id).into_iter().flatten());
        account.flags.extend(self.odd_looks.get(&Source::Lot(id)).into_iter().flatten());
        named_lot::share_out(&mut account, &mut self.stock.rows, &of_lot, &self.frozen);
        self.stock.lots.insert(id, account);
        self.put_back(Source::Lot(id), of_lot);
    }

    /// What looks at a lot by itself say.
    fn seen(&self, lot: &Lot, of_lot: &[usize]) -> Seen {
        let mishaps = self.mishaps.get(&lot.entry()).cloned().unwrap_or_default();
        let looks = self.looks.get(&Source::Lot(lot.entry()));
        let Some(looks) = looks.filter(|looks| !looks.iter().all(|look| look.is_empty())) else {
            return Seen { mishaps, ..Seen::default() };
        };
        let mut sorts = self.looked();
        sorts.retain(|it| it.lot() == lot.entry());
        let draws = of_lot.iter().filter_map(|at| {
            let row = self.stock.rows.get(*at)?;
            Some((self.counts_from(row), row.signed_quantity()?))
        });
        Seen { mishaps, ..written_off::seen(lot, looks, &sorts, &draws.collect::<Vec<_>>()) }
    }

    /// A return dated before its draw comes right after it.
    fn counts_from(&self, row: &DrawRow) -> Order {
        let draw = row.returns.and_then(|draw| self.stock.rows.get(draw));
        draw.map_or(row.order, |draw| draw.order.max(row.order))
    }

    /// Median yield of the other sorted lots from the same place.
    fn history(&self, lot: &Lot, found: Found) -> Option<(Ratio, usize)> {
        let yields = self.yields.get(lot.whence.as_deref()?.trim())?;
        // Its own yield is passed over; of equal ones it is no matter which.
        let own = found.yielded().and_then(|own| yields.binary_search(&own).ok());
        let others = yields.len().saturating_sub(usize::from(own.is_some()));
        let other = |at: usize| {
            let passed = own.is_some_and(|own| at >= own);
            yields.get(at.saturating_add(usize::from(passed)))
        };
        let upper = other(others.checked_div(2)?)?;
        let lower = other(others.saturating_sub(1).checked_div(2)?)?;
        Some((middle(*lower, *upper)?, others))
    }

    fn never_received(&mut self, source: Source, draws: &[usize]) {
        for at in draws {
            let Some(row) = self.stock.rows.get_mut(*at) else { continue };
            if let Some(closed) = self.frozen.get(row.entry()) {
                (row.parts, row.reclaimed) = (closed.cost(), closed.reclaimed);
                (row.known, row.frozen) = (true, true);
                let gone = row.parts.negated();
                let gone = WrittenOff::of(row.entry(), Why::Closed, Quantity::ZERO, gone);
                self.stock.gone.push((source, gone));
            } else {
                row.gaps.push(Gap::NeverReceived { source });
            }
        }
    }

    fn item(&mut self, id: Id) {
        let lots = self.pooled.remove(&id).unwrap_or_default();
        let of_item = self.take_rows(Source::Item(id));
        let looks = self.looks.remove(&Source::Item(id)).unwrap_or_default();
        let kind = self.item_kind(id, &lots);
        let mut events = Vec::with_capacity(lots.len().saturating_add(of_item.len()));
        let timed: BTreeSet<Day> = looks
            .iter()
            .filter(|look| look.state == ShelfState::Counted && look.order.time.is_some())
            .map(|look| look.order.day)
            .collect();
        // First of their day: nothing else has that rank.
        events.extend(self.formulas.iter().filter_map(|(from, formula)| {
            let order = Order { day: (*from)?, rank: 0, time: None, entry: Id::of([0; 16]) };
            Some((order, Turn::Formula(*formula)))
        }));
        events.extend(lots.iter().map(|lot| (lot.order, Turn::Receipt(lot))));
        events.extend(of_item.iter().filter_map(|at| self.turn(*at, &timed)));
        events.extend(self.lost_of(&lots));
        events.extend(looks.into_iter().map(|look| {
            // What was found empty was so at the end of its day, whatever the time.
            let counts = if look.is_empty() { look.order } else { among(look.order, &timed) };
            (counts, Turn::Look(look))
        }));
        events.order_by_key(|(order, turn)| (*order, turn.comes_back()));
        let first = self.formulas.iter().find(|(from, _)| from.is_none());
        let mut shelf = Pooled::expecting(of_item.len(), first.map(|(_, it)| *it).unwrap_or_default());
        // Place of each row among the draws of this item.
        let mut taken: Vec<(usize, usize)> = Vec::with_capacity(of_item.len());
        let mut places: FxHashMap<usize, usize> =
            FxHashMap::with_capacity_and_hasher(of_item.len(), Default::default());
        for (_, turn) in events {
            match turn {
                Turn::Formula(formula) => shelf.goes_by(formula),
                Turn::Receipt(lot) => self.receive(lot, &mut shelf),
                Turn::Draw(row) => {
                    let place = self.draw(row, &mut shelf);
                    taken.push((row, place));
                    places.insert(row, place);
                }
                Turn::Return { row, draw } => self.give_back(row, places.get(&draw).copied(), &mut shelf),
                Turn::Lost { entry, quantity } => shelf.write_off(entry, Why::ThrownOut, quantity),
                Turn::Look(it) => look(it, &mut shelf, Source::Item(id)),
            }
        }
        let (account, costs) = shelf.close();
        for (at, place) in taken {
            let (Some(row), Some(cost)) = (self.stock.rows.get_mut(at), costs.get(place)) else { continue };
            row.parts = cost.parts();
            row.known = row.frozen || (row.quantity.is_some() && cost.known);
            row.gaps.extend_from_slice(&cost.gaps);
            if !cost.known {
                row.gaps.push(Gap::NeverReceived { source: Source::Item(id) });
            }
            if !cost.missing.is_zero() {
                row.flags.push(Flag::NegativeShelf { item: id, draw: row.entry() });
            }
        }
        for at in &of_item {
            if let Some(row) = self.stock.rows.get_mut(*at) {
                row.kind = kind;
            }
        }
        self.put_back(Source::Item(id), of_item);
        self.stock.items.insert(id, ItemAccount { kind, ..account });
    }

    /// What was lost in store of the lots of an item.
    fn lost_of(&self, lots: &[&'a Lot]) -> Vec<(Order, Turn<'a>)> {
        let of = |lot: Id| lots.iter().any(|it| it.entry() == lot);
        let culls = self.shop.culls.iter().filter(|it| it.unexpected && it.order.day <= self.last);
        let lost = |entry: Id, quantity: Quantity| Turn::Lost { entry, quantity };
        culls.filter(|it| of(it.lot)).map(|it| (it.order, lost(it.entry(), it.quantity))).collect()
    }

    fn receive(&mut self, lot: &Lot, shelf: &mut Pooled) {
        let lines = lines::lines(self.facts, lot, self.ledgers, &self.stock.rows, &self.bears(lot.entry()));
        let cost = lines.iter().fold(Parts::ZERO, |sum, line| sum.plus(line.parts));
        let mut gaps: Vec<Gap> = lines.iter().filter_map(|line| line.gap).collect();
        let found = self.found.get(&lot.entry()).copied().unwrap_or_default();
        let quantity = lot.rough.unwrap_or_default().minus(found.culled).max(Quantity::ZERO);
        if lot.rough.is_none() {
            gaps.push(Gap::NoQuantity { entry: lot.entry() });
        }
        shelf.receive(lot.entry(), quantity, cost, &gaps);
    }

    /// A draw of a closed build takes what it cost when it was closed, whatever is there.
    fn draw(&mut self, at: usize, shelf: &mut Pooled) -> usize {
        let row = self.stock.rows.get_mut(at);
        let quantity = row.as_ref().and_then(|row| row.quantity).unwrap_or_default();
        let frozen = row.as_ref().and_then(|row| self.frozen.get(row.entry()));
        match (row, frozen) {
            // What had come back by then is gone from what was frozen: it comes back at the same cost.
            (Some(row), Some(frozen)) => {
                row.frozen = true;
                let (_, gave_back) = frozen.gave_back(row);
                shelf.draw_as_closed(row.entry(), quantity, frozen.cost().plus(gave_back))
            }
            _ => shelf.draw(quantity),
        }
    }

    fn give_back(&mut self, at: usize, draw: Option<usize>, shelf: &mut Pooled) {
        let Some(draw) = draw else { return };
        let of = self.stock.rows.get(at).and_then(|row| row.returns);
        let drawn = of.and_then(|of| Some((of, self.stock.rows.get(of).filter(|row| row.frozen)?)));
        let known = drawn.and_then(|(of, row)| Some((of, self.frozen.get(row.entry())?.gave_back(row))));
        let Some(row) = self.stock.rows.get_mut(at) else { return };
        let quantity = row.quantity.unwrap_or_default();
        let before = known.map(|(of, known)| self.came_back.of(of, quantity, known));
        let (before, closed) = before.map_or((quantity, None), |(before, cost)| (before, Some(cost)));
        row.parts = shelf.give_back(row.entry(), draw, before, closed).negated();
        shelf.give_back_at_nothing(row.entry(), quantity.minus(before));
        (row.known, row.frozen) = (true, known.is_some());
    }

    fn turn(&self, at: usize, timed: &BTreeSet<Day>) -> Option<(Order, Turn<'a>)> {
        let row = self.stock.rows.get(at)?;
        let Some(draw) = row.returns else {
            let returns_nothing = row.flags.iter().any(|flag| matches!(flag, Flag::ReturnOfNothing { .. }));
            return (!returns_nothing).then_some((among(row.order, timed), Turn::Draw(at)));
        };
        let drawn = self.stock.rows.get(draw).map_or(row.order, |draw| draw.order);
        Some((among(row.order, timed).max(among(drawn, timed)), Turn::Return { row: at, draw }))
    }

    /// One origin throughout: that; else bought.
    fn item_kind(&self, id: Id, lots: &[&Lot]) -> CostKind {
        let purpose =
            self.shop.items.get(&id).map_or(crate::journal::kinds::Use::Fitting, |item| item.purpose);
        let origin = lots.first().map_or(Origin::Bought, |lot| lot.origin);
        let one = lots.iter().all(|lot| lot.origin == origin);
        CostKind::of_stock(purpose, if one { origin } else { Origin::Bought })
    }
}

/// Where something counts on a day on which somebody counted at a known time: draws, returns and the count by their
/// times, so that what was drawn after the count is not in it. On other days as it is.
fn among(order: Order, timed: &BTreeSet<Day>) -> Order {
    const DRAW: u8 = 4;
    const LOOK: u8 = 6;
    let moves = order.time.is_some() && (DRAW..=LOOK).contains(&order.rank) && timed.contains(&order.day);
    if moves { Order { rank: DRAW, ..order } } else { order }
}

/// What somebody found at an item's shelf, or took from it without a build.
fn look(look: &Look, shelf: &mut Pooled, source: Source) {
    let Some(quantity) = look.quantity else { return };
    match look.state {
        ShelfState::Empty | ShelfState::Counted => {
            shelf.count(look.entry(), quantity, Gap::NeverReceived { source });
        }
        ShelfState::ThrownOut => shelf.write_off(look.entry(), Why::ThrownOut, quantity),
        ShelfState::Given => shelf.write_off(look.entry(), Why::Given, quantity),
    }
}

/// Halfway between two shares.
fn middle(lower: Ratio, upper: Ratio) -> Option<Ratio> {
    let both = lower.micros().saturating_add(upper.micros());
    Ratio::share(fixed::decimal_of(fixed::mul_div(both, 1, 2)?))
}

/// What goes by at an item's shelf.
#[derive(Clone, Copy)]
enum Turn<'a> {
    Formula(Formula),
    Receipt(&'a Lot),
    Draw(usize),
    Return { row: usize, draw: usize },
    Lost { entry: Id, quantity: Quantity },
    Look(&'a Look),
}

impl Turn<'_> {
    fn comes_back(self) -> bool {
        matches!(self, Turn::Return { .. })
    }
}
