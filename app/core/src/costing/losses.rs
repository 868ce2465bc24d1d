//! What the shop lost of its stock: count differences, thrown out, given away, lots of which nothing was usable.
//!
//! Each line opens to the entries. Source: our own rule, DEVELOPERS.md § Why; that such a loss is no cost of what is built
//! next: IAS 2 paragraphs 16 and 34. Not here: at what cost (`stock`), spoiled items (`batch`).

use super::{Books, Part, Parts, Rule, Statement, Value, Why, WrittenOff, stock::rows};
use crate::{
    journal::{Id, kinds::Source},
    measure::{Money, Quantity, Unit},
};

impl Books {
    /// What nobody can take any more, by lot and item.
    pub fn losses(&self) -> Vec<(Source, Parts)> {
        let lots = self.stock.lots.iter().map(|(id, lot)| (Source::Lot(*id), lot.losses()));
        let items = self.stock.items.iter().map(|(id, item)| (Source::Item(*id), item.losses()));
        lots.chain(items).filter(|(_, lost)| !lost.is_zero()).collect()
    }

    /// What the shop lost of its stock, by why, down to the entries.
    pub fn stock_losses(&self) -> Statement {
        let lines = self.written_off();
        let of_why = |why: Why| {
            let lines: Vec<&(Unit, WrittenOff)> = lines.iter().filter(|(_, line)| line.why == why).collect();
            let parts = lines.iter().map(|(unit, line)| {
                let figure = line.parts.total();
                let working = rows::working(Some(line.quantity), *unit, figure, line.parts.own_hours());
                Part::entry(line.entry, line.known.then_some(Value::Money(figure)), working)
            });
            let (parts, gaps) =
                (parts.collect(), lines.iter().flat_map(|(_, line)| line.gaps.clone()).collect());
            (!lines.is_empty())
                .then(|| Part::plus(Statement::sum(Rule::WrittenOff { why }, parts, gaps, Vec::new())))
        };
        let parts = Why::ALL.into_iter().filter_map(of_why).collect();
        Statement::sum(Rule::StockLosses, parts, Vec::new(), Vec::new())
    }

    /// What one look at the shelf came to: how much is gone, and what that cost; below zero where more was found. None:
    /// what the books said was there.
    pub fn written_off_by(&self, entry: Id) -> Option<WrittenOff> {
        let lots = self.stock.lots.values().flat_map(|lot| &lot.written_off);
        let items = self.stock.items.values().flat_map(|item| &item.written_off);
        lots.chain(items).find(|line| line.entry == entry).cloned()
    }

    /// What several looks came to together; none: all was as the books said.
    pub fn written_off_by_all(&self, entries: &[Id]) -> Option<Money> {
        let lines = entries.iter().filter_map(|entry| self.written_off_by(*entry));
        lines.fold(None, |sum: Option<Money>, line| Some(sum.unwrap_or_default().plus(line.parts.total())))
    }

    /// So much was counted, and the books say otherwise: by how much, below zero where some is missing. Of a salvaged lot
    /// what is sorted is counted. None: nothing is known of it.
    pub fn count_differs(&self, source: Source, counted: Quantity) -> Option<Quantity> {
        Some(counted.minus(self.shelf_line(source)?.sorted))
    }

    /// Every line of it and the unit of its quantity, in the order of the shelf.
    fn written_off(&self) -> Vec<(Unit, WrittenOff)> {
        let mut all = Vec::new();
        for (id, lot) in &self.stock.lots {
            let unit = lot.facts.unit;
            all.extend(lot.written_off.iter().map(|line| (unit, line.clone())));
            if !lot.lost.is_zero() {
                let why = if lot.drawn.is_zero() { Why::NothingUsable } else { Why::Closed };
                all.push((unit, WrittenOff::of(*id, why, Quantity::ZERO, lot.lost)));
            }
        }
        for (id, item) in &self.stock.items {
            let unit = self.unit_of_item(*id);
            all.extend(item.written_off.iter().map(|line| (unit, line.clone())));
        }
        all
    }

    fn unit_of_item(&self, item: Id) -> Unit {
        self.shop.items.get(&item).map_or(Unit::Each, |item| item.unit)
    }
}

impl super::stock::ItemAccount {
    /// What the shop bears of it.
    pub(crate) fn losses(&self) -> Parts {
        self.written_off.iter().fold(Parts::ZERO, |sum, it| sum.plus(it.parts))
    }
}
