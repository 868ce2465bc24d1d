//! Folding and costing grow with the journal and no faster.
//!
//! Time over time, never milliseconds: four times the entries may take eight times as long, which a
//! quadratic walk exceeds by far. A busy machine is given several tries.

#[path = "../../app/core/examples/scale/shop.rs"]
mod of_every_kind;

use benchslate_core::{costing::Books, fixture::Fixture, journal::Shop};
use of_every_kind::shop;
use std::time::{Duration, Instant};

/// Fold, books, and the sheet of every build.
fn least(it: &Fixture) -> Duration {
    let run = || {
        let start = Instant::now();
        let shop = Shop::fold(&it.journal, &it.zone);
        let books = Books::close(&shop, it.end());
        shop.builds.keys().for_each(|build| drop(books.build_cost(*build)));
        let took = start.elapsed();
        drop(books);
        took
    };
    (0..5).map(|_| run()).min().expect("five runs")
}

// Source: common practice — asymptotic cost is checked by the ratio of two sizes, the least of several runs each.
#[test]
fn four_times_the_journal_takes_no_more_than_eight_times_as_long() {
    let (few, many) = (shop(4_000), shop(16_000));
    let ratios: Vec<f64> = (0..6).map(|_| least(&many).as_secs_f64() / least(&few).as_secs_f64()).collect();
    assert!(ratios.iter().any(|ratio| *ratio < 8.0), "grows faster than the journal: {ratios:?}");
}
