//! Folding and costing grow with the journal and no faster.
//!
//! Time over time, never milliseconds: four times the entries may take eight times as long, which a
//! quadratic walk exceeds by far. A busy machine is given several tries.

use benchslate_core::{
    costing::Books,
    fixture::{Fixture, fixture},
    journal::Shop,
};
use std::time::{Duration, Instant};

/// So many builds, each with a lot from the same place, an item that all share, work by one person.
fn shop(builds: usize) -> Fixture {
    let mut it = fixture("person Ana 26\n item disc consumable each");
    for build in 0..builds {
        it.add(&format!("build b{build} on 2026-02-{:02}", 1 + build % 28));
        it.add(&format!("lot t{build} salvaged 120 paid 36 from barn for b{build} new 7"));
        it.add(&format!("sort t{build} good 80 culled 20"));
        it.add(&format!("lot d{build} bought 20 of disc unit each paid 11"));
        it.add(&format!("draw 13 disc for b{build} as x{build}"));
        it.add(&format!("return 1 of x{build}"));
        it.add(&format!("draw 3.5 t{build} for b{build}"));
        it.add(&format!("stretch Ana sand from 08:00 to 09:30 for b{build}"));
        it.add(&format!("expense van 55 for b{build}"));
    }
    it
}

fn least(it: &Fixture) -> Duration {
    let run = || {
        let start = Instant::now();
        let books = Books::close(&Shop::fold(&it.journal, &it.zone), it.end());
        let took = start.elapsed();
        drop(books);
        took
    };
    (0..5).map(|_| run()).min().expect("five runs")
}

// Source: common practice — asymptotic cost is checked by the ratio of two sizes, the least of several runs each.
#[test]
fn four_times_the_journal_takes_no_more_than_eight_times_as_long() {
    let (few, many) = (shop(400), shop(1600));
    let ratios: Vec<f64> = (0..6).map(|_| least(&many).as_secs_f64() / least(&few).as_secs_f64()).collect();
    assert!(ratios.iter().any(|ratio| *ratio < 8.0), "grows faster than the journal: {ratios:?}");
}
