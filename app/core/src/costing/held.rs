//! What lies on the shelf, for the books: money and paid labour only, as of the end of a day.
//!
//! Each line is what came less what was drawn and written off, and opens to those entries. Close the books as of that
//! day ([`Books::close`] with `Zone::end_of`). Worked example: 10 for 20 and 12 drawn of a second 10 for 40 later: by the
//! average 8 for 24.00. Source: our own rule, DEVELOPERS.md § Why.
//! Not here: own labour, wear, overhead and supplied value in it (`shelf`).

use super::{
    Books, Part, Rule, Statement, Value, Working,
    parts::{Lens, Parts},
    shelf::ShelfLine,
    stock::rows,
};
use crate::{
    journal::{Id, Shop, kinds::Source, shop::Lot},
    measure::{Money, Unit, fixed},
};

impl Books {
    /// What lies there and what it is worth, lots first, each line down to its entries.
    pub fn on_the_shelf(&self, shop: &Shop) -> Statement {
        let lines = self
            .shelf()
            .into_iter()
            .filter(|line| line.quantity.is_none_or(|left| !left.is_zero()) || !line.parts.is_zero());
        let parts = lines.map(|line| Part::plus(self.held(shop, &line))).collect();
        Statement::sum(Rule::OnTheShelf, parts, Vec::new(), Vec::new())
    }

    fn held(&self, shop: &Shop, line: &ShelfLine) -> Statement {
        let worth = line.parts.through(Lens::Cash);
        let unit_cost =
            line.quantity.and_then(|of| fixed::mul_div(worth.micros(), fixed::SCALE, of.micros()));
        let rule = Rule::Held {
            source: line.source,
            kind: line.kind,
            quantity: line.quantity,
            unit: line.unit,
            unit_cost: unit_cost.map(Money::from_micros),
        };
        let mut parts = Vec::new();
        for lot in self.lots_of(shop, line.source) {
            let lines = self.lot_lines(lot).into_iter();
            parts.extend(lines.filter_map(|line| cash(line.entry, line.parts, line.working)));
        }
        for row in self.stock.rows_of(line.source) {
            let out = row.parts.negated();
            parts.extend(cash(row.entry(), out, row.working(row.parts.through(Lens::Cash))));
        }
        parts.extend(self.gone(line.source, line.unit));
        Statement::sum(rule, parts, line.gaps.clone(), line.flags.clone())
    }

    fn lots_of<'a>(&self, shop: &'a Shop, source: Source) -> Vec<&'a Lot> {
        let last = shop.zone.day(self.as_of);
        match source {
            Source::Lot(lot) => shop.lots.get(&lot).into_iter().collect(),
            Source::Item(item) => {
                let lots = shop.lots.values().filter(|lot| lot.item == Some(item) && lot.order.day <= last);
                lots.collect()
            }
        }
    }

    /// What went without a build.
    fn gone(&self, source: Source, unit: Unit) -> Vec<Part> {
        let (lines, lost) = match source {
            Source::Lot(id) => self.stock.lots.get(&id).map(|lot| (&lot.written_off, lot.lost)),
            Source::Item(id) => self.stock.items.get(&id).map(|item| (&item.written_off, Parts::ZERO)),
        }
        .map_or((&[][..], Parts::ZERO), |(lines, lost)| (lines.as_slice(), lost));
        let mut parts: Vec<Part> = lines
            .iter()
            .filter_map(|line| {
                let worth = line.parts.through(Lens::Cash);
                let working = rows::working(Some(line.quantity), unit, worth, line.parts.own_hours());
                cash(line.entry, line.parts.negated(), working)
            })
            .collect();
        let (Source::Lot(id) | Source::Item(id)) = source;
        parts.extend(cash(id, lost.negated(), Working::Amount));
        parts
    }
}

/// An entry by its money; none where it has none.
fn cash(entry: Id, parts: Parts, working: Working) -> Option<Part> {
    let money = parts.through(Lens::Cash);
    (!money.is_zero()).then(|| Part::entry(entry, Some(Value::Money(money)), working))
}
