//! The shelf: what is left of every lot and item, its cost, and what a draw now would cost.

use super::{
    Books, CostKind, Flag, Gap, Like, Parts,
    stock::{DrawRow, ItemAccount, LotAccount},
};
use crate::{
    journal::{
        Id,
        kinds::{Origin, Source},
    },
    measure::{Money, Quantity, Unit, fixed},
};

/// Cost of one unit as ratios, so that nothing is lost: money over quantity, by pool.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct UnitCost {
    /// Fetched; for an item all that is on the shelf. None: nothing to spread it over.
    pub fetched: Option<(Money, Quantity)>,
    /// Reclaimed; none for an item, and before anything is sorted.
    pub reclaimed: Option<(Money, Quantity)>,
}

impl UnitCost {
    /// Money a unit, each pool rounded once to 10⁻⁶: for printing.
    pub fn rounded(&self) -> Money {
        self.of(Quantity::ONE).unwrap_or_default()
    }

    /// Money of so much.
    fn of(&self, quantity: Quantity) -> Option<Money> {
        let pools = [self.fetched, self.reclaimed].into_iter().flatten();
        pools.into_iter().try_fold(Money::ZERO, |sum, (money, over)| {
            let share = fixed::mul_div(money.micros(), quantity.micros(), over.micros())?;
            Some(sum.plus(Money::from_micros(share)))
        })
    }
}

/// Under what an item is low.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LowUnder {
    /// The maker's own mark.
    Mark(Quantity),
    /// What the last like build drew.
    Like(Like),
}

impl LowUnder {
    /// How much there ought to be.
    pub fn quantity(self) -> Quantity {
        match self {
            LowUnder::Mark(quantity) | LowUnder::Like(Like { quantity, .. }) => quantity,
        }
    }
}

/// What a draw leaves.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Leaves {
    /// So much on the shelf, and so much that is expected of what is unsorted.
    Left {
        /// On the shelf.
        there: Quantity,
        /// Still to come.
        to_come: Quantity,
    },
    /// It is more than is left: recorded and flagged.
    Short,
}

/// A lot by itself, or an item with all its lots.
#[derive(Clone, Debug, PartialEq)]
pub struct ShelfLine {
    /// Which.
    pub source: Source,
    /// The kind that a draw of it is.
    pub kind: CostKind,
    /// Unit of its quantities.
    pub unit: Unit,
    /// Left, unsorted timber by what is expected of it; below zero where more was drawn than came.
    /// None where that can't be said.
    pub quantity: Option<Quantity>,
    /// Of a salvaged lot: sorted good and there. Else all that is left.
    pub sorted: Quantity,
    /// Of a salvaged lot: expected of what is unsorted.
    pub to_come: Quantity,
    /// What is left cost so much.
    pub value: Money,
    /// The same, by part.
    pub parts: Parts,
    /// Left, and of how much: what a full box would be. None where that can't be said.
    pub share: Option<(Quantity, Quantity)>,
    /// Less is left than there ought to be.
    pub low: bool,
    /// Under what it is low; none: of a lot, and of an item that nobody set a mark for and no like build drew.
    pub low_under: Option<LowUnder>,
    /// What its cost lacks.
    pub gaps: Vec<Gap>,
    /// What is odd.
    pub flags: Vec<Flag>,
}

impl Books {
    /// Everything that is on the shelf, that ought to be, or that nobody can say; lots first, by id.
    pub fn shelf(&self) -> Vec<ShelfLine> {
        let lots = self.stock.lots.values().filter(|lot| lot.left().is_none_or(|left| !left.is_zero()));
        let lots = lots.map(lot_line);
        let items = self.stock.items.iter().filter_map(|(id, item)| self.item_line(*id, item));
        lots.chain(items).collect()
    }

    /// What everything on it cost.
    pub fn shelf_value(&self) -> Money {
        self.shelf().iter().fold(Money::ZERO, |sum, line| sum.plus(line.value))
    }

    /// The line of one lot or item, also where nothing is left. None: never came.
    pub fn shelf_line(&self, source: Source) -> Option<ShelfLine> {
        match self.account(source) {
            Source::Lot(lot) => self.stock.lots.get(&lot).map(lot_line),
            Source::Item(item) => {
                let account = self.stock.items.get(&item)?;
                Some(self.line_of(item, account))
            }
        }
    }

    /// What one unit costs now.
    pub fn unit_cost(&self, source: Source) -> Option<UnitCost> {
        self.unit_cost_with(source, Quantity::ZERO)
    }

    /// What one unit costs now, if all of it is known: a part that isn't is no nought.
    ///
    /// # Errors
    /// What is not known, first things first.
    pub fn known_unit_cost(&self, source: Source) -> Result<UnitCost, Option<Gap>> {
        let gap = self.shelf_line(source).and_then(|line| line.gaps.first().copied());
        match self.unit_cost(source) {
            Some(cost) if gap.is_none() => Ok(cost),
            _ => Err(gap),
        }
    }

    /// What a draw now would cost; none where that can't be said. An item's shelf that would run out: the
    /// rest at the last unit cost. A lot that would: more was there than thought, and its unit cost falls.
    pub fn preview(&self, source: Source, quantity: Quantity) -> Option<Money> {
        if let Source::Item(item) = self.account(source) {
            return self.stock.items.get(&item)?.would_cost(quantity).map(|parts| parts.total());
        }
        self.unit_cost_with(source, quantity)?.of(quantity)
    }

    /// What a draw now would leave. None where that can't be said.
    pub fn leaves(&self, source: Source, quantity: Quantity) -> Option<Leaves> {
        let line = self.shelf_line(source)?;
        let left = line.quantity?.minus(quantity);
        // What is only expected is not there to be taken; where the draw takes more than is there, it eats into that.
        let there =
            if line.to_come.is_zero() { left } else { line.sorted.minus(quantity).max(Quantity::ZERO) };
        Some(if left.is_negative() {
            Leaves::Short
        } else {
            Leaves::Left { there, to_come: left.minus(there) }
        })
    }

    /// Whether it is known that nothing of it is on the shelf, nor to come.
    pub fn is_gone(&self, source: Source) -> bool {
        let left = self.shelf_line(source).and_then(|line| line.quantity);
        left.is_some_and(|left| left <= Quantity::ZERO)
    }

    /// What a draw or return took; none where that can't be said.
    pub fn draw_cost(&self, entry: Id) -> Option<Money> {
        let row = self.stock.row_of(entry)?;
        row.known.then(|| row.parts.total())
    }

    /// A pooled lot is its item.
    fn account(&self, source: Source) -> Source {
        match source {
            Source::Lot(lot) => self.shop.pooled.get(&lot).map_or(source, |item| Source::Item(*item)),
            Source::Item(_) => source,
        }
    }

    fn unit_cost_with(&self, source: Source, more: Quantity) -> Option<UnitCost> {
        match self.account(source) {
            Source::Item(item) => {
                let (parts, over) = self.stock.items.get(&item)?.unit()?;
                Some(UnitCost { fetched: Some((parts.total(), over)), reclaimed: None })
            }
            Source::Lot(lot) => self.stock.lots.get(&lot)?.unit_cost(more),
        }
    }

    /// An item with a mark, or that an open build will take, is on view even where nothing is left.
    fn item_line(&self, id: Id, account: &ItemAccount) -> Option<ShelfLine> {
        let line = self.line_of(id, account);
        let missed = match line.low_under {
            Some(LowUnder::Mark(_)) => line.low,
            Some(LowUnder::Like(like)) => line.low && like.for_build.is_some(),
            None => false,
        };
        (!account.quantity.is_zero() || !line.parts.is_zero() || missed).then_some(line)
    }

    fn line_of(&self, id: Id, account: &ItemAccount) -> ShelfLine {
        let item = self.shop.items.get(&id);
        let mark = item.and_then(|item| item.low).map(LowUnder::Mark);
        let low_under = mark.or_else(|| self.likes.of_item(id).map(LowUnder::Like));
        let low = low_under.is_some_and(|under| account.quantity < under.quantity());
        let draws = self.stock.rows_of(Source::Item(id));
        let odd = draws.flat_map(|row| &row.flags).filter(|flag| matches!(flag, Flag::NegativeShelf { .. }));
        ShelfLine {
            source: Source::Item(id),
            kind: account.kind,
            unit: item.map_or(Unit::Each, |item| item.unit),
            quantity: Some(account.quantity),
            sorted: account.quantity,
            to_come: Quantity::ZERO,
            value: account.held().total(),
            parts: account.held(),
            share: (!account.full.is_zero()).then_some((account.quantity, account.full)),
            low,
            low_under,
            gaps: account.gaps.clone(),
            flags: odd.copied().collect(),
        }
    }
}

fn lot_line(lot: &LotAccount) -> ShelfLine {
    let left = lot.left();
    ShelfLine {
        source: Source::Lot(lot.facts.entry()),
        kind: lot.kind,
        unit: lot.facts.unit,
        quantity: left,
        sorted: lot.on_shelf(),
        to_come: lot.to_come(),
        value: lot.shelf().total(),
        parts: lot.shelf(),
        share: left.zip(lot.usable),
        low: false,
        low_under: None,
        gaps: lot.gaps.clone(),
        flags: lot.flags.clone(),
    }
}

impl LotAccount {
    /// Sorted good and there: all that is left, but for a salvaged lot that is not sorted yet.
    pub(crate) fn on_shelf(&self) -> Quantity {
        let left = self.left().unwrap_or_default();
        if self.facts.origin == Origin::Salvaged {
            let [_, gone] = self.gone;
            let there = self.found.good.plus(self.more).minus(self.drawn).minus(gone);
            let sorted = there.max(Quantity::ZERO);
            if self.usable.is_some() { sorted.min(left) } else { sorted }
        } else {
            left
        }
    }

    /// Usable in the end and not sorted yet.
    pub(crate) fn to_come(&self) -> Quantity {
        self.left().map_or(Quantity::ZERO, |left| left.minus(self.on_shelf()))
    }

    /// As if no build that drew from it had been closed.
    pub(crate) fn unit_of_all(&self) -> Option<UnitCost> {
        let pool = |pool: Parts, over: Option<Quantity>| {
            over.filter(|over| !over.is_zero()).map(|over| (pool.total(), over))
        };
        let fetched = pool(self.fetched, Some(self.usable?));
        let reclaimed = pool(self.reclaimed, self.sorted).filter(|(money, _)| !money.is_zero());
        (fetched.is_some() || reclaimed.is_some()).then_some(UnitCost { fetched, reclaimed })
    }

    /// With so much more drawn.
    fn unit_cost(&self, more: Quantity) -> Option<UnitCost> {
        let rest = self.rest;
        let [gone_usable, gone_sorted] = rest.gone;
        let pool = |pool: Parts, over: Option<Quantity>, gone: Quantity| {
            let least = rest.drawn.plus(more).plus(gone);
            let over = over.map(|over| over.max(least)).filter(|over| !over.is_zero())?;
            Some((pool.total(), over))
        };
        let fetched = pool(rest.fetched, Some(rest.usable?), gone_usable);
        let sorted = rest.sorted.or((!more.is_zero()).then_some(more));
        let reclaimed = pool(rest.reclaimed, sorted, gone_sorted).filter(|(money, _)| !money.is_zero());
        (fetched.is_some() || reclaimed.is_some()).then_some(UnitCost { fetched, reclaimed })
    }
}

impl ItemAccount {
    /// All that is still held, what came without a quantity too.
    fn held(&self) -> Parts {
        self.value.plus(self.unplaced)
    }

    /// Cost and quantity of what is next in line, else of the last that was.
    fn unit(&self) -> Option<(Parts, Quantity)> {
        self.layers.first().copied().or(self.last).filter(|(_, quantity)| !quantity.is_zero())
    }

    fn would_cost(&self, quantity: Quantity) -> Option<Parts> {
        let (mut missing, mut sum) = (quantity, Parts::ZERO);
        for (cost, of) in &self.layers {
            let takes = missing.min(*of);
            sum = sum.plus(cost.share(takes, *of));
            missing = missing.minus(takes);
        }
        if missing.is_zero() {
            return Some(sum);
        }
        let (cost, of) = self.last?;
        Some(sum.plus(cost.share(missing, of)))
    }
}

/// Rows by where they draw from.
impl super::stock::Stock {
    pub(crate) fn rows_of(&self, source: Source) -> impl Iterator<Item = &DrawRow> {
        let at = self.by_source.get(&source);
        at.into_iter().flatten().filter_map(|at| self.rows.get(*at))
    }
}
