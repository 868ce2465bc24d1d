//! What is to be bought: what runs low, what open builds will take, and what becomes of a line once it is bought.
//!
//! For a build: what its like drew, less what it has drawn and what lies on the shelf. For the shop: what is missing up
//! to the maker's own mark. What is on the list already is not asked for again.
//! Worked example: 20 went into run 1, run 2 has drawn 4 and 12 lie there: 4 are wanted.
//! Source: our own rule, DEVELOPERS.md § Why. Not here: what is low (`costing::likes`, `costing::shelf`).

use crate::{
    costing::{Books, Like},
    journal::{
        Change, Id, On, Shop,
        kinds::{self, BuyLine, Lot, Origin, Source, Use},
    },
    measure::{Dec, Map, Quantity, Unit},
};
use std::collections::BTreeSet;

/// Why something is wanted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Why {
    /// Less is left than the maker's mark.
    Low {
        /// The mark.
        mark: Quantity,
    },
    /// A like build drew more than is left for this one.
    Like(Like),
}

/// Something that ought to be bought.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wanted {
    /// Which item.
    pub item: Id,
    /// How much, in its unit.
    pub quantity: Quantity,
    /// For which build; none: the shop.
    pub for_build: Option<Id>,
    /// Why.
    pub why: Why,
}

/// What ought to be on the list and is not: for open builds first, then up to the marks.
pub fn wanted(shop: &Shop, books: &Books) -> Vec<Wanted> {
    let mut listed: Map<Id, Quantity> = Map::new();
    let mut asked: BTreeSet<(Id, Option<Id>)> = BTreeSet::new();
    for line in shop.to_buy() {
        let Some(item) = line.item else { continue };
        let sum = listed.entry(item).or_default();
        *sum = sum.plus(line.quantity.unwrap_or(Quantity::ONE));
        asked.insert((item, line.for_build));
    }
    let left = |item: Id| {
        let line = books.shelf_line(Source::Item(item));
        line.and_then(|line| line.quantity).unwrap_or_default()
    };
    // What lies there or is on the list goes to the first build that needs it.
    let mut free: Map<Id, Quantity> = Map::new();
    let mut all = Vec::new();
    for (like, item, own) in books.likes_of_open() {
        let free = free
            .entry(item)
            .or_insert_with(|| left(item).plus(listed.get(&item).copied().unwrap_or_default()));
        let needs = like.quantity.minus(own).max(Quantity::ZERO);
        let takes = needs.min((*free).max(Quantity::ZERO));
        *free = free.minus(takes);
        let quantity = needs.minus(takes);
        let new = !asked.contains(&(item, like.for_build)) && shop.offers(item);
        if !quantity.is_zero() && new {
            let wanted = Wanted { item, quantity, for_build: like.for_build, why: Why::Like(like) };
            let sum = listed.entry(item).or_default();
            *sum = sum.plus(quantity);
            all.push(wanted);
        }
    }
    for (item, it) in shop.items.iter().filter(|(item, _)| shop.offers(**item)) {
        let Some(mark) = it.low else { continue };
        let there = left(*item).plus(listed.get(item).copied().unwrap_or_default());
        let quantity = mark.minus(there);
        if quantity > Quantity::ZERO && left(*item) < mark && !asked.contains(&(*item, None)) {
            all.push(Wanted { item: *item, quantity, for_build: None, why: Why::Low { mark } });
        }
    }
    all
}

/// As a line of the list.
pub fn line(shop: &Shop, on: On, wanted: &Wanted) -> BuyLine {
    let unit = shop.items.get(&wanted.item).map_or(Unit::Each, |item| item.unit);
    BuyLine {
        on,
        item: Some(wanted.item),
        what: String::new(),
        quantity: Some(Dec::from(wanted.quantity)),
        unit: Some(unit),
        price: None,
        for_build: wanted.for_build,
        bought: None,
    }
}

/// A line is bought: it becomes a lot with what was paid, got for its build, and the line names it. No price: a gap in
/// the lot until it is typed.
pub fn buy(shop: &Shop, on: On, (entry, line): (Id, &BuyLine), lot: Id, paid: Option<Dec>) -> Vec<Change> {
    let item = line.item.and_then(|id| shop.item_meant(id)).and_then(|id| Some((id, shop.items.get(&id)?)));
    let unit = line.unit.or(item.map(|(_, item)| item.unit)).unwrap_or(Unit::Each);
    let body = Lot {
        on,
        item: item.map(|(id, _)| id),
        name: line.what.clone(),
        purpose: item.map_or(Use::Fitting, |(_, item)| item.purpose),
        origin: Origin::Bought,
        rough: line.quantity.unwrap_or(Dec::from(Quantity::ONE)),
        unit,
        paid,
        for_build: line.for_build,
        ..kinds::Lot::bare(on)
    };
    vec![Change::write(lot, body), Change::write(entry, BuyLine { bought: Some(lot), ..line.clone() })]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fixture::{Fixture, fixture};

    const RUNS: &str = "
        build run1
        build run2 repeat run1
        item disc consumable each
        item glue consumable each low 3
        lot a bought 32 of disc unit each paid 64
        lot g bought 2 of glue unit each paid 10
        draw 20 disc for run1
        close run1 on 2026-02-05";

    #[track_caller]
    fn check(it: &Fixture, want: &[(&str, &str, Option<&str>)]) {
        let wanted = wanted(&it.shop(), &it.books());
        let told: Vec<(String, String, Option<String>)> = wanted
            .iter()
            .map(|it_is| {
                (it.name(it_is.item), it_is.quantity.shown_trimmed(), it_is.for_build.map(|id| it.name(id)))
            })
            .collect();
        let want = want
            .iter()
            .map(|(item, many, build)| ((*item).to_owned(), (*many).to_owned(), build.map(str::to_owned)));
        assert_eq!(told, want.collect::<Vec<_>>());
    }

    #[test]
    fn what_a_like_build_drew_and_the_marks_are_wanted() {
        let it = fixture(RUNS);
        check(&it, &[("disc", "8", Some("run2")), ("glue", "1", None)]);
        let it = fixture(&format!("{RUNS}\n draw 4 disc for run2 on 2026-02-06"));
        check(&it, &[("disc", "8", Some("run2")), ("glue", "1", None)]);
        let it = fixture(&format!("{RUNS}\n lot b bought 8 of disc unit each paid 16"));
        check(&it, &[("glue", "1", None)]);
    }

    #[test]
    fn what_is_on_the_list_is_not_asked_for_again() {
        let it = fixture(&format!("{RUNS}\n buy 5 disc for run2 as line\n buy 1 glue"));
        check(&it, &[]);
        let it = fixture(&format!("{RUNS}\n buy 5 disc"));
        check(&it, &[("disc", "3", Some("run2")), ("glue", "1", None)]);
    }

    #[test]
    fn a_line_that_is_bought_is_a_lot_for_its_build_and_off_the_list() {
        let mut it = fixture(&format!("{RUNS}\n buy 8 disc for run2 as line"));
        let shop = it.shop();
        let Some(crate::journal::Body::BuyLine(line)) = it.journal.body(it.id("line")).cloned() else {
            panic!("a line")
        };
        let on = On::Day(shop.zone.day(it.end()));
        let lot = Id::of([7; 16]);
        for change in buy(&shop, on, (it.id("line"), &line), lot, Some(Dec::parse("19").unwrap())) {
            it.write(change);
        }
        let shop = it.shop();
        assert_eq!(shop.to_buy().count(), 0);
        assert_eq!(shop.bought().map(|(_, lot)| lot).collect::<Vec<_>>(), [lot]);
        let bought = &shop.lots[&lot];
        assert_eq!(
            (bought.for_build, bought.till().map(|it| it.shown(2))),
            (Some(it.id("run2")), Some("19.00".into()))
        );
        assert_eq!(it.books().shelf_line(it.source("disc")).unwrap().quantity.unwrap().shown_trimmed(), "20");
        // The lot struck out: the line stands open again.
        it.write(Change::strike(lot));
        assert_eq!(it.shop().to_buy().count(), 1);
    }

    #[test]
    fn words_become_a_lot_by_themselves() {
        let it = fixture("build bench\n buy-words brass-hooks for bench as line");
        let Some(crate::journal::Body::BuyLine(line)) = it.journal.body(it.id("line")).cloned() else {
            panic!("a line")
        };
        let shop = it.shop();
        let changes = buy(&shop, line.on, (it.id("line"), &line), Id::of([7; 16]), None);
        let Some(crate::journal::Body::Lot(lot)) = &changes[0].body else { panic!("a lot") };
        assert_eq!((&lot.name[..], lot.rough.plain(), lot.paid), ("brass-hooks", "1".to_owned(), None));
    }
}
