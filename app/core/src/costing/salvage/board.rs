//! The board: where all that was gathered went.

use crate::{
    costing::{Books, YieldFrom, stock::LotAccount},
    journal::kinds::{Basis, Bearer, Source},
    measure::{Map, Quantity, Ratio, Unit},
};

/// Quantities of a lot, all in its unit and measure.
#[derive(Clone, Debug, PartialEq)]
pub struct Board {
    /// The unit.
    pub unit: Unit,
    /// In which measure.
    pub basis: Basis,
    /// As it came; none where that can't be.
    pub gathered: Option<Quantity>,
    /// Sorted and usable, and not lost since.
    pub good: Quantity,
    /// Gone without a build: a flood, rot, thrown out, given away. No wastage, and no yield.
    pub lost: Quantity,
    /// Thrown out.
    pub culled: Quantity,
    /// Neither yet.
    pub unsorted: Quantity,
    /// Expected share of the unsorted, and where it comes from; none: nothing to expect, or not known.
    pub expected: Option<(Ratio, YieldFrom)>,
    /// Usable in the end; none: not known.
    pub usable: Option<Quantity>,
    /// Good ÷ sorted; none: nothing sorted.
    pub yield_so_far: Option<Ratio>,
    /// What stays drawn, by bearer.
    pub drawn_by: Vec<(Bearer, Quantity)>,
    /// What stays drawn.
    pub drawn: Quantity,
    /// Sorted good and on the shelf.
    pub on_shelf: Quantity,
    /// Expected of the unsorted.
    pub to_come: Quantity,
    /// Found empty.
    pub empty: bool,
    found_good: Quantity,
}

impl Board {
    /// Good when it was looked at, what was lost of it since included.
    pub fn found_good(&self) -> Quantity {
        self.found_good
    }

    /// Good beside so much of it.
    pub fn good_beside(&self, today: Quantity) -> Quantity {
        self.good.minus(today).max(Quantity::ZERO)
    }

    /// Thrown out or lost.
    pub fn out(&self) -> Quantity {
        self.culled.plus(self.lost)
    }

    /// Looked at so far: good and culled together.
    pub fn sorted(&self) -> Quantity {
        self.found_good.plus(self.culled)
    }
}

pub(super) fn board(books: &Books, lot: &LotAccount) -> Board {
    let mut drawn_by: Map<Bearer, Quantity> = Map::new();
    let source = Source::Lot(lot.facts.entry());
    let draws = books.stock.rows_of(source).filter(|row| row.returns.is_none() && !row.net().is_zero());
    for row in draws {
        let sum = drawn_by.entry(row.bearer).or_default();
        *sum = sum.plus(row.net());
    }
    Board {
        unit: lot.facts.unit,
        basis: lot.facts.basis,
        gathered: lot.facts.rough,
        good: lot.found.there_good(),
        lost: lot.found.lost().plus(lot.seen_gone),
        culled: lot.found.culled,
        unsorted: lot.found.there_unsorted(lot.facts.rough),
        expected: lot.expected,
        usable: lot.usable,
        yield_so_far: lot.found.yielded(),
        drawn_by: drawn_by.into_iter().collect(),
        drawn: lot.drawn,
        on_shelf: lot.on_shelf(),
        to_come: lot.to_come(),
        empty: lot.found.empty,
        found_good: lot.found.good,
    }
}
