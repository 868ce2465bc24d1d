//! Fold and cost of a long journal, in milliseconds, and how they grow: `cargo run --profile bench
//! --example scale --features fixture -p benchslate-core`. JSON is decoded before the clock starts.
//! `-- 10000 FILE` writes such a journal instead, `-- plan FILE` the one with a plan of sixty steps, for measurements in
//! a browser.

#![allow(
    clippy::arithmetic_side_effects,
    clippy::as_conversions,
    clippy::expect_used,
    clippy::float_arithmetic,
    clippy::indexing_slicing,
    reason = "a measurement of invented data, not part of the program"
)]

mod plan;
mod shop;

use benchslate_core::{costing::Books, exchange::jsonl, journal::Shop};
use shop::shop;
use std::time::{Duration, Instant};

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
        let it = match size.parse() {
            Ok(entries) => shop(entries),
            Err(_no_number) => plan::sixty_steps(),
        };
        return std::fs::write(file, jsonl::write(&it.journal)).expect("a file that can be written");
    }
    plan::measure();
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
            grown.add("stretch Ana sand min 15 for b1 as one-more");
            now = now.after(&grown.journal, &[grown.id("one-more")]);
            drop(Books::close(&now, grown.end()).build_cost(a_build));
        });
        let all_sheets = least(1, || folded.builds.keys().for_each(|id| drop(books.build_cost(*id))));
        let closing = least(3, || drop(books.freeze(a_build)));
        println!("one more entry there, and the sheet of its build anew: {one_more:?}");
        println!(
            "{entries} entries: fold {fold:?}, cost {close:?}, one build's sheet {sheet:?}, shelf {shelf:?}"
        );
        println!("all {} sheets {all_sheets:?}; closing one build {closing:?}", folded.builds.len());
        both.push((fold + close).as_secs_f64() / entries as f64);
    }
    if let [few, many] = both[..] {
        println!("per entry, 100,000 against 10,000: {:.2}", many / few);
    }
}
