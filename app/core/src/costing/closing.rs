//! Books made a stage at a time, for a maker who is not to be kept waiting.
//!
//! [`Books::close`] goes through all stages at once; whoever has taps to answer in between goes through them one by
//! one. Each takes about as long as another. Never: another shop than the one it was begun with.

use super::{
    Books, batch,
    books::{Counted, Facts, Ledgers},
    income,
    likes::Likes,
    one_off, outlook,
    stock::{self, Frozen, Stock},
};
use crate::{
    journal::Shop,
    measure::{Instant, Map},
};
use rustc_hash::FxHashMap;
use std::ops::ControlFlow;

/// Books that are not made yet.
pub struct Closing {
    as_of: Instant,
    stage: Stage,
}

/// What comes next, and what there is for it.
enum Stage {
    Hours(Frozen),
    Tools(Frozen, Box<Ledgers>, Counted),
    Stock(Frozen, Box<Ledgers>),
    Statements(Facts, Box<Ledgers>, Box<Stock>),
}

impl Closing {
    /// Begins books as of a moment. What the draws of a closed build cost stays as it was when it was closed.
    pub fn begin(shop: &Shop, as_of: Instant) -> Closing {
        Closing::with(as_of, Frozen::of(shop, shop.zone.day(as_of)))
    }

    pub(super) fn with(as_of: Instant, frozen: Frozen) -> Closing {
        Closing { as_of, stage: Stage::Hours(frozen) }
    }

    /// One stage further, of the same shop; with the last of them the books are made.
    pub fn go_on(self, shop: &Shop) -> ControlFlow<Books, Closing> {
        let Closing { as_of, stage } = self;
        let last = shop.zone.day(as_of);
        let stage = match stage {
            Stage::Hours(frozen) => {
                let (ledgers, counted) = Ledgers::of_hours(shop, as_of, last);
                Stage::Tools(frozen, Box::new(ledgers), counted)
            }
            Stage::Tools(frozen, mut ledgers, counted) => {
                ledgers.run_tools(shop, &counted, last);
                ledgers.pay_all(shop, last);
                Stage::Stock(frozen, ledgers)
            }
            Stage::Stock(frozen, mut ledgers) => {
                let facts = Facts::of(shop);
                let stock = stock::stock(shop, &facts, &mut ledgers, last, frozen);
                Stage::Statements(facts, ledgers, Box::new(stock))
            }
            Stage::Statements(facts, ledgers, stock) => {
                return ControlFlow::Break(books(shop, as_of, facts, *ledgers, *stock));
            }
        };
        ControlFlow::Continue(Closing { as_of, stage })
    }

    /// All stages that are left.
    pub fn to_the_end(mut self, shop: &Shop) -> Books {
        loop {
            match self.go_on(shop) {
                ControlFlow::Continue(next) => self = next,
                ControlFlow::Break(books) => return books,
            }
        }
    }
}

/// What of the books reads the ledgers and stock.
fn books(shop: &Shop, as_of: Instant, facts: Facts, mut ledgers: Ledgers, stock: Stock) -> Books {
    let last = shop.zone.day(as_of);
    let (made, incomes) = (batch::made(shop, last), income::rows(shop, last));
    ledgers.index_incomes(&incomes);
    let likes = Likes::of(shop, last, &stock.rows);
    let (series, in_series, to_come) = (Vec::new(), FxHashMap::default(), Map::new());
    let mut books =
        Books { as_of, ledgers, stock, shop: facts, made, incomes, series, likes, in_series, to_come };
    books.series = one_off::series(&books, shop);
    for (at, series) in books.series.iter().enumerate() {
        books.in_series.extend(series.shares.iter().map(|share| (share.build, at)));
    }
    books.to_come = outlook::to_come(&books, shop);
    books
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{fixture::fixture, journal::kinds::Bearer};

    #[test]
    fn stage_by_stage_leads_to_the_same_books() {
        let it = fixture(
            "
            build bench
            item disc consumable each
            person wren 24
            lot oak bought 10 unit bf use timber paid 80 on 2026-01-20
            lot discs bought 50 of disc unit each paid 31
            draw 4 oak for bench on 2026-02-22
            draw 14 disc for bench on 2026-03-14
            expense card 38 for bench side film",
        );
        let (shop, as_of) = (it.shop(), it.books().as_of);
        let mut closing = Closing::begin(&shop, as_of);
        let mut stages = 1;
        let books = loop {
            match closing.go_on(&shop) {
                ControlFlow::Continue(next) => closing = next,
                ControlFlow::Break(books) => break books,
            }
            stages += 1;
        };
        assert_eq!(stages, 4);
        let bench = it.id("bench");
        assert_eq!(books.build_cost(bench), it.books().build_cost(bench));
        assert_eq!(books.shelf(), it.books().shelf());
        assert!(!books.ledgers.borne_by(Bearer::Build(bench)).draws.is_empty());
    }
}
