//! What the shop lost of its stock: count differences, thrown out, given away, lots of which nothing was usable.
//!
//! Each line opens to the entries. Source: our own rule, DEVELOPERS.md § Why; that such a loss is no cost of what is built
//! next: IAS 2 paragraphs 16 and 34. Not here: at what cost (`stock`), spoiled items (`batch`).

use super::{Books, Part, Parts, Rule, Statement, Value, Why, WrittenOff, stock::rows};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, Source},
    },
    measure::{Day, Money, Quantity, Unit},
};
use std::collections::BTreeSet;

impl Books {
    /// What nobody can take any more, by lot and item.
    pub fn losses(&self) -> Vec<(Source, Parts)> {
        let lots = self.stock.lots.iter().map(|(id, lot)| (Source::Lot(*id), lot.losses()));
        let items = self.stock.items.iter().map(|(id, item)| (Source::Item(*id), item.losses()));
        let gone = self.stock.gone.iter().map(|(source, line)| (*source, line.parts));
        lots.chain(items).chain(gone).filter(|(_, lost)| !lost.is_zero()).collect()
    }

    /// What the shop lost of its stock, by why, down to the entries.
    pub fn stock_losses(&self) -> Statement {
        Books::by_why(&self.written_off())
    }

    /// The same of one year: what was counted, thrown out and given away in it, lots that were found to hold nothing
    /// usable in it, and what came in it for stock of closed builds with none left.
    pub fn stock_losses_in(&self, shop: &Shop, year: i32) -> Statement {
        let mut lines = self.written_off();
        let days = lines.iter().map(|(_, line)| self.lost_on(shop, line)).collect::<Vec<Option<Day>>>();
        let mut days = days.into_iter();
        lines.retain(|_| days.next().flatten().is_some_and(|day| day.year() == year));
        Books::by_why(&lines)
    }

    /// Years in which something was lost, the latest first.
    pub fn loss_years(&self, shop: &Shop) -> Vec<i32> {
        let lines = self.written_off();
        let years = lines.iter().filter_map(|(_, line)| Some(self.lost_on(shop, line)?.year()));
        let years: BTreeSet<i32> = years.collect();
        years.into_iter().rev().collect()
    }

    /// The day of its entry; of a lot as a whole, the last day on which something was said or borne of it.
    fn lost_on(&self, shop: &Shop, line: &WrittenOff) -> Option<Day> {
        let look = shop.looks.iter().find(|it| it.entry() == line.entry).map(|it| it.order.day);
        let cull = || shop.culls.iter().find(|it| it.order.entry == line.entry).map(|it| it.order.day);
        // What a closed build left over: by the day on which it was closed.
        let draw = || {
            let row = self.stock.row_of(line.entry)?;
            let closed = match row.bearer {
                Bearer::Build(build) => shop.closed_on(build, shop.zone.day(self.as_of)),
                Bearer::Lot(_) | Bearer::Shop => None,
            };
            Some(closed.unwrap_or(row.order.day))
        };
        look.or_else(cull).or_else(draw).or_else(|| self.last_day_of(shop, line.entry))
    }

    fn last_day_of(&self, shop: &Shop, lot: Id) -> Option<Day> {
        let facts = shop.lots.get(&lot)?;
        let of = Bearer::Lot(lot);
        let bears = self.ledgers.borne_by(of);
        let labour = bears.labour.iter().filter_map(|at| self.ledgers.labour.get(*at)).map(|row| row.day);
        let paid = shop.expenses.iter().filter(|it| it.bearer == of).map(|it| it.order.day);
        let sorts = shop.sorts.iter().filter(|it| it.lot == lot).map(|it| it.order.day);
        let culls = shop.culls.iter().filter(|it| it.lot == lot).map(|it| it.order.day);
        let looks = shop.looks.iter().filter(|it| it.of == Source::Lot(lot)).map(|it| it.order.day);
        let days = labour.chain(paid).chain(sorts).chain(culls).chain(looks).chain([facts.order.day]);
        let last = shop.zone.day(self.as_of);
        days.filter(|day| *day <= last).max()
    }

    fn by_why(lines: &[(Unit, WrittenOff)]) -> Statement {
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
        all.extend(self.stock.gone.iter().map(|(_, line)| (Unit::Each, line.clone())));
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

#[cfg(test)]
mod tests {
    use crate::{costing::Statement, fixture::fixture};

    #[track_caller]
    fn check(lines: &str, years: &[(i32, &str)]) {
        let it = fixture(&format!(
            "build bench
            item disc consumable each
            lot a bought 40 of disc unit each paid 80 on 2025-03-01
            lot oak salvaged 20 paid 60 on 2025-03-01
            {lines}
            note looked-again on 2026-04-01"
        ));
        let (books, shop) = (it.books(), it.shop());
        let money = |of: &Statement| of.money().unwrap_or_default();
        let told: Vec<(i32, String)> = books
            .loss_years(&shop)
            .into_iter()
            .map(|year| (year, money(&books.stock_losses_in(&shop, year)).shown(2)))
            .collect();
        let want = years.iter().map(|(year, lost)| (*year, (*lost).to_owned()));
        assert_eq!(told, want.collect::<Vec<_>>(), "{lines}");
        let sum = years
            .iter()
            .fold(super::Money::ZERO, |sum, (year, _)| sum.plus(money(&books.stock_losses_in(&shop, *year))));
        assert_eq!(sum, money(&books.stock_losses()), "the years make the whole");
        assert!(books.stock_losses_in(&shop, 2019).parts.is_empty());
    }

    #[test]
    fn what_was_lost_is_lost_in_the_year_in_which_it_was_found_so() {
        check("", &[]);
        check(
            "throw 5 disc on 2025-06-01\n give 2 disc on 2026-02-03\n count 30 disc on 2026-02-04",
            &[(2026, "10.00"), (2025, "10.00")],
        );
        check("sort oak good 0 culled 20 on 2026-02-01", &[(2026, "60.00")]);
        check("sort oak good 20 on 2025-04-01\n cull oak 5 unexpected on 2026-02-01", &[(2026, "15.00")]);
    }

    #[test]
    fn what_comes_for_stock_of_closed_builds_is_lost_in_the_year_in_which_it_comes() {
        check(
            "sort oak good 20 on 2025-04-01
            draw 20 oak for bench on 2025-04-02
            close bench on 2025-04-03
            expense late-fee 8 for oak on 2026-02-01",
            &[(2026, "8.00")],
        );
    }
}
