//! What was tried is taken: the entries that make it so.
//!
//! A rate becomes that person's from today on, where there is one alone who is not paid. A price becomes what the sale
//! of the build is expected to bring. Pieces become those that are wanted, while none is finished. New stock becomes
//! dearer or cheaper by the same factor on every salvaged lot that the build drew.

use super::{Knob, Tried};
use crate::{
    journal::{
        Body, Change, Id, Journal, On, Shop,
        kinds::{self, Bearer, Income, IncomeKind, NewStock, Origin, Rate, Share, Side, Source},
    },
    measure::{Dec, Instant, Money, fixed},
};

/// Whether what a knob says can be taken.
pub fn takes(shop: &Shop, build: Id, knob: Knob) -> bool {
    match knob {
        Knob::Rate => alone(shop).is_some(),
        Knob::Pieces => !shop.made.iter().any(|it| it.build == build),
        Knob::Price | Knob::NewStock => true,
    }
}

/// The one person who is not paid.
fn alone(shop: &Shop) -> Option<Id> {
    let mut own = shop.people.iter().filter(|(id, person)| !person.paid && shop.offers(**id));
    let (id, _) = own.next()?;
    own.next().is_none().then_some(*id)
}

/// Entries that make it so; what can't be taken is left out. `pieces`: how many the price is for.
pub fn take(
    journal: &Journal,
    shop: &Shop,
    (build, pieces): (Id, u32),
    tried: Tried,
    now: Instant,
    fresh: &mut dyn FnMut() -> Id,
) -> Vec<Change> {
    let mut changes = Vec::new();
    changes.extend(tried.rate.and_then(|rate| new_rate(journal, shop, rate, now)));
    if let Some(price) = tried.price {
        let pieces = tried.pieces.unwrap_or(pieces);
        changes.extend(new_price(journal, shop, (build, price, pieces), now, fresh));
    }
    changes.extend(tried.pieces.and_then(|pieces| new_pieces(journal, shop, build, pieces)));
    if let Some(hundredths) = tried.new_stock {
        changes.extend(new_stock(journal, shop, build, hundredths));
    }
    changes
}

fn new_rate(journal: &Journal, shop: &Shop, rate: Money, now: Instant) -> Option<Change> {
    let person = alone(shop)?;
    let Some(Body::Person(it)) = journal.body(person) else { return None };
    let from = shop.zone.day(now);
    let mut rates: Vec<Rate> = it.rates.iter().filter(|other| other.from != Some(from)).cloned().collect();
    rates.push(Rate { from: Some(from), an_hour: Dec::from(rate) });
    Some(Change::write(person, kinds::Person { rates, ..it.clone() }))
}

/// The open sale of the build, or a new one.
fn new_price(
    journal: &Journal,
    shop: &Shop,
    (build, price, pieces): (Id, Money, u32),
    now: Instant,
    fresh: &mut dyn FnMut() -> Id,
) -> Option<Change> {
    let expected = Dec::from(Money::from_micros(fixed::mul_div(price.micros(), i128::from(pieces), 1)?));
    let only_its = |shares: &[(Bearer, u32)]| matches!(shares, [(Bearer::Build(it), _)] if *it == build);
    let open = shop.incomes.iter().find(|it| {
        it.kind == IncomeKind::Sale && it.side == Side::Piece && !it.settled && only_its(&it.shares)
    });
    if let Some(Body::Income(it)) = open.and_then(|it| journal.body(it.order.entry)) {
        let entry = open?.order.entry;
        return Some(Change::write(entry, Income { expected: Some(expected), ..it.clone() }));
    }
    let sale = Income {
        on: On::At(shop.zone.when(now)),
        kind: IncomeKind::Sale,
        side: Side::Piece,
        what: None,
        shares: vec![Share { bearer: Bearer::Build(build), parts: 1 }],
        expected: Some(expected),
        due: None,
        received: Vec::new(),
        settled: false,
    };
    Some(Change::write(fresh(), sale))
}

fn new_pieces(journal: &Journal, shop: &Shop, build: Id, pieces: u32) -> Option<Change> {
    let Some(Body::Build(it)) = journal.body(build) else { return None };
    let can = takes(shop, build, Knob::Pieces);
    can.then(|| Change::write(build, kinds::Build { items: pieces, ..it.clone() }))
}

fn new_stock(journal: &Journal, shop: &Shop, build: Id, hundredths: u32) -> Vec<Change> {
    let drawn = |lot: &Id| {
        shop.draws.iter().any(|it| it.bearer == Bearer::Build(build) && it.from == Source::Lot(*lot))
    };
    let lots = shop.lots.iter().filter(|(id, lot)| lot.origin == Origin::Salvaged && drawn(id));
    let change = |(id, _): (&Id, &_)| {
        let Some(Body::Lot(it)) = journal.body(*id) else { return None };
        let new = it.new.as_ref()?;
        let price = fixed::mul_div(new.price.money()?.micros(), i128::from(hundredths), 100)?;
        let new = NewStock { price: Dec::from(Money::from_micros(price)), ..new.clone() };
        Some(Change::write(*id, kinds::Lot { new: Some(new), ..it.clone() }))
    };
    lots.filter_map(change).collect()
}

#[cfg(test)]
#[allow(clippy::unwrap_used, clippy::panic, reason = "a test that can't go on must stop")]
mod tests {
    use super::*;
    use crate::fixture::fixture;

    #[test]
    fn what_was_tried_and_taken_is_how_it_stands_then() {
        let mut it = fixture(
            "
            person Ana 20
            person Bo 15 paid
            build trays items 10
            lot oak salvaged 40 paid 20 yield 1 new 5 as oak
            sort oak good 40
            draw 20 oak for trays
            stretch Ana mill min 600 for trays on 2026-03-02",
        );
        let (build, now) = (it.id("trays"), it.end());
        let money = |text: &str| Dec::parse(text).unwrap().money();
        let tried = Tried { rate: money("30"), price: money("60"), pieces: Some(8), new_stock: Some(150) };
        let shop = it.shop();
        let trial = it.books().trial(&shop, build).unwrap();
        let changes = take(&it.journal, &shop, (build, 10), tried, now, &mut || Id::of([7; 16]));
        assert_eq!(changes.len(), 4);
        changes.into_iter().for_each(|change| it.write(change));
        let shop = it.shop();
        let then = it.books().trial(&shop, build).unwrap();
        let wanted = trial.answers(tried);
        let got = then.answers(Tried::default());
        // The rate holds from today, on which the work was done.
        assert_eq!((got, then.stands.price), (wanted, money("60")));
    }

    #[test]
    fn of_two_who_are_not_paid_no_rate_is_taken() {
        let it = fixture("person Ana 20\nperson Bo 15\nbuild trays");
        let (shop, build) = (it.shop(), it.id("trays"));
        assert!(!takes(&shop, build, Knob::Rate));
        let tried = Tried { rate: Some(Money::from_micros(1)), ..Tried::default() };
        assert!(
            take(&it.journal, &shop, (build, 1), tried, it.end(), &mut || panic!("none is asked for"))
                .is_empty()
        );
    }
}
