//! Fold and cost of a long journal, in milliseconds, and how they grow: `cargo run --profile bench
//! --example scale --features fixture -p benchslate-core`. JSON is decoded before the clock starts.
//! `-- 10000 FILE` writes such a journal instead, for measurements in a browser.

#![allow(
    clippy::arithmetic_side_effects,
    clippy::as_conversions,
    clippy::expect_used,
    clippy::float_arithmetic,
    reason = "a measurement of invented data, not part of the program"
)]

use benchslate_core::{
    costing::Books,
    exchange::jsonl,
    fixture::{Fixture, fixture},
    journal::Shop,
};
use std::time::{Duration, Instant};

/// A shop of so many entries: every build draws, works, spends and salvages alike.
fn shop(entries: usize) -> Fixture {
    let mut it = fixture(
        "setting km 0.55
        person Ana 26
        person Ada 20 paid
        item disc consumable each low 10
        item screw fitting each",
    );
    let mut build = 0;
    while it.lines.len() < entries {
        build += 1;
        let (month, day) = (1 + build / 28 % 12, 1 + build % 28);
        it.add(&format!("build b{build} on 2026-{month:02}-{day:02}"));
        it.add(&format!("lot t{build} salvaged 120 paid 36 yield 0.8 for b{build} new 7 waste 0.1"));
        it.add(&format!("trip 40 fee 2 for t{build}:1,b{build}:1"));
        it.add(&format!("sort t{build} good 80 culled 20"));
        it.add(&format!("expense van {}.37 for b{build}", build % 90));
        for turn in 0..10 {
            let (from, to) = (7 + turn, 8 + turn);
            it.add(&format!("lot d{build}-{turn} bought 20 of disc unit each paid {}", 11 + turn));
            it.add(&format!("draw 13 disc for b{build} as x{build}-{turn}"));
            it.add(&format!("return 1 of x{build}-{turn}"));
            it.add(&format!("draw 3.5 t{build} for b{build}"));
            it.add(&format!("stretch Ana reclaim from {from:02}:00 to {to:02}:10 for t{build}"));
            it.add(&format!("stretch Ada sand from {from:02}:05 to {to:02}:00 for b{build}"));
            it.add(&format!("stretch Ana mill min 75 for b{build}"));
        }
    }
    it
}

fn least(times: usize, mut work: impl FnMut()) -> Duration {
    let run = |work: &mut dyn FnMut()| {
        let start = Instant::now();
        work();
        start.elapsed()
    };
    (0..times).map(|_| run(&mut work)).min().unwrap_or_default()
}

fn main() {
    let words: Vec<String> = std::env::args().skip(1).collect();
    if let [size, file] = &words[..] {
        let text = jsonl::write(&shop(size.parse().expect("a number of entries")).journal);
        return std::fs::write(file, text).expect("a file that can be written");
    }
    let sizes = [10_000, 100_000];
    let mut both = Vec::new();
    for size in sizes {
        let it = shop(size);
        let folded = it.shop();
        let books = Books::close(&folded, it.end());
        let a_build = *folded.builds.keys().next().expect("a build");
        let fold = least(7, || drop(Shop::fold(&it.journal, &it.zone)));
        let close = least(7, || drop(Books::close(&folded, it.end())));
        let sheet = least(7, || drop(books.build_cost(a_build)));
        let shelf = least(7, || drop(books.shelf()));
        let entries = it.journal.entries().count();
        let mut grown = shop(size);
        let mut now = grown.shop();
        let one_more = least(7, || {
            grown.add("stretch Ana sand min 15 for b1");
            let entry = grown.journal.entries().last().expect("the one just written");
            now = now.after(&grown.journal, &[entry]);
            drop(Books::close(&now, grown.end()).build_cost(a_build));
        });
        println!("one more entry there, and the sheet of its build anew: {one_more:?}");
        println!(
            "{entries} entries: fold {fold:?}, cost {close:?}, one build's sheet {sheet:?}, shelf {shelf:?}"
        );
        both.push((fold + close).as_secs_f64() / entries as f64);
    }
    if let [few, many] = both[..] {
        println!("per entry, 100,000 against 10,000: {:.2}", many / few);
    }
}
