//! What was tried is taken: the entries that make it so.
//!
//! A rate becomes that person's from today on, where there is one alone who is not paid. A price becomes what the
//! pieces of the build are expected to bring (`sales`). Pieces become those that are wanted, while none is finished. New
//! stock becomes dearer or cheaper by the same factor on every salvaged lot that the build drew. What can't be taken as
//! it was shown is not taken in part.

use super::{NotTaken, Tried, sales::to_bring};
use crate::{
    journal::{
        Body, Change, Id, Journal, Shop,
        kinds::{self, Bearer, NewStock, Origin, Rate, Source},
    },
    measure::{Dec, Instant, Money, fixed},
};

/// The one person who is not paid.
fn alone(shop: &Shop) -> Option<Id> {
    let mut own = shop.people.iter().filter(|(id, person)| !person.paid && shop.offers(**id));
    let (id, _) = own.next()?;
    own.next().is_none().then_some(*id)
}

/// Why what was tried can't be taken as it was shown; none: it can. `sales`: what the pieces are to bring.
pub fn not_taken(
    journal: &Journal,
    shop: &Shop,
    of: (Id, Option<Money>),
    tried: Tried,
    now: Instant,
) -> Option<NotTaken> {
    take(journal, shop, of, tried, now, &mut || Id::of([0; 16])).err()
}

/// Entries that make it so: all of what was tried, or why not. `sales`: what the pieces are to bring.
pub fn take(
    journal: &Journal,
    shop: &Shop,
    (build, sales): (Id, Option<Money>),
    tried: Tried,
    now: Instant,
    fresh: &mut dyn FnMut() -> Id,
) -> Result<Vec<Change>, NotTaken> {
    let mut changes = Vec::new();
    if let Some(rate) = tried.rate {
        changes.push(new_rate(journal, shop, rate, now).ok_or(NotTaken::Whose)?);
    }
    if let Some(pieces) = tried.pieces {
        changes.push(new_pieces(journal, shop, build, pieces).ok_or(NotTaken::Finished)?);
    }
    if let Some(sales) = sales {
        changes.extend(to_bring(journal, shop, (build, sales), now, fresh)?);
    }
    if let Some(hundredths) = tried.new_stock {
        changes.extend(new_stock(journal, shop, build, hundredths));
    }
    Ok(changes)
}

fn new_rate(journal: &Journal, shop: &Shop, rate: Money, now: Instant) -> Option<Change> {
    let person = alone(shop)?;
    let Some(Body::Person(it)) = journal.body(person) else { return None };
    let from = shop.zone.day(now);
    let mut rates: Vec<Rate> = it.rates.iter().filter(|other| other.from != Some(from)).cloned().collect();
    rates.push(Rate { from: Some(from), an_hour: Dec::from(rate) });
    Some(Change::write(person, kinds::Person { rates, ..it.clone() }))
}

fn new_pieces(journal: &Journal, shop: &Shop, build: Id, pieces: u32) -> Option<Change> {
    let Some(Body::Build(it)) = journal.body(build) else { return None };
    let none = !shop.made.iter().any(|it| it.build == build);
    none.then(|| Change::write(build, kinds::Build { items: pieces, ..it.clone() }))
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
        let of = (build, trial.sales(tried));
        let changes = take(&it.journal, &shop, of, tried, now, &mut || Id::of([7; 16])).unwrap();
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
    fn what_cant_be_taken_is_not_taken_in_part() {
        let check = |lines: &str, tried: Tried, why: NotTaken| {
            let it = fixture(&format!("person Ana 20\nbuild trays items 4\n{lines}"));
            let (shop, build) = (it.shop(), it.id("trays"));
            let of = (build, it.books().trial(&shop, build).unwrap().sales(tried));
            assert_eq!(not_taken(&it.journal, &shop, of, tried, it.end()), Some(why), "{lines}");
        };
        let price = Some(Money::from_micros(1));
        check("person Bo 15", Tried { rate: price, price, ..Tried::default() }, NotTaken::Whose);
        check("made trays 2", Tried { pieces: Some(3), price, ..Tried::default() }, NotTaken::Finished);
    }

    #[test]
    fn fewer_pieces_are_taken_with_what_they_were_shown_to_bring() {
        let mut it = fixture("person Ana 20\nbuild trays items 10\nincome sale piece expected 500 for trays");
        let (shop, build) = (it.shop(), it.id("trays"));
        let tried = Tried { pieces: Some(8), ..Tried::default() };
        let of = (build, it.books().trial(&shop, build).unwrap().sales(tried));
        let changes = take(&it.journal, &shop, of, tried, it.end(), &mut || panic!("none is asked for"));
        changes.unwrap().into_iter().for_each(|change| it.write(change));
        let expected = it.books().build_cost(build).earned.expected;
        assert_eq!(expected.money().map(|it| it.shown(2)), Some("400.00".into()));
    }
}
