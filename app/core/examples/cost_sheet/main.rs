//! The figures of a backup or a journal, as on the phone: `cargo run --example cost_sheet -p benchslate-core -- FILE`.
//!
//! `--as-of 2026-11-20T15:00:00Z`: the moment that the books are closed at; without it the end of the last day that an
//! entry is of. `--zone America/Toronto`: the zone that days are cut in; without it the one that was chosen, else UTC. `--json`: a tree instead of a table.
//! `--csv`: the lines of cost as the file that the phone saves; `--csv stock`: another of its tables.

#![allow(
    clippy::arithmetic_side_effects,
    clippy::expect_used,
    reason = "a program for those who build this one, not part of it"
)]

mod sheet;
mod zones;

use benchslate_core::{
    costing::Books,
    exchange::{
        backup, jsonl,
        tables::{self, Of, Sources},
    },
    journal::{Journal, Shop, kinds::SettingKey},
    measure::{Instant, When, Zone},
};

fn main() {
    let mut words = std::env::args().skip(1).peekable();
    let (mut file, mut as_of, mut zone, mut json, mut csv) = (None, None, None, false, None);
    while let Some(word) = words.next() {
        match word.as_str() {
            "--json" => json = true,
            "--csv" => {
                let named = |word: &String| Of::ALL.into_iter().find(|of| of.code() == *word);
                let of = words.peek().and_then(named);
                csv = Some(of.map_or(Of::Cost, |of| {
                    words.next();
                    of
                }));
            }
            "--as-of" => {
                let moment = words.next().expect("a moment after --as-of");
                as_of = Some(When::parse(&moment).expect("a moment like 2026-11-20T15:00:00Z").instant);
            }
            "--zone" => {
                let name = words.next().expect("a name after --zone");
                zone = Some(zones::probed(name.parse().expect("a zone like America/Toronto")));
            }
            _ => file = Some(word),
        }
    }
    let file = file.expect("the path of a backup, or of a journal.jsonl");
    let mut bytes = std::fs::read(&file).expect("a file that can be read");
    if backup::begins(&bytes) {
        bytes = backup::journal_of(&bytes).unwrap_or_else(|bad| stop(&format!("{file}: {bad:?}")));
    }
    let mut journal = Journal::default();
    let incoming =
        jsonl::check_bytes(&journal, &bytes).unwrap_or_else(|bad| stop(&format!("{file}: {bad:?}")));
    incoming.merge_into(&mut journal);
    let zone = zone.or_else(|| chosen(&journal)).unwrap_or_else(Zone::utc);
    let shop = Shop::fold(&journal, &zone);
    let books = Books::close(&shop, as_of.unwrap_or_else(|| end(&journal, &zone)));
    if let Some(of) = csv {
        let table = tables::table(Sources { journal: &journal, shop: &shop, books: &books }, of, None);
        return print!("{}", table.csv());
    }
    let figures = sheet::sheets(&shop, &books);
    if json {
        println!("{}", serde_json::to_string_pretty(&figures.json()).expect("text and numbers"));
    } else {
        print!("{}", figures.table());
    }
}

/// The zone that was chosen for the shop.
fn chosen(journal: &Journal) -> Option<Zone> {
    let shop = Shop::fold(journal, &Zone::utc());
    let name = shop.settings.latest(SettingKey::Zone)?;
    Some(zones::probed(
        name.parse().unwrap_or_else(|_| stop(&format!("no zone is known by the name {name}"))),
    ))
}

/// The last second of the last day that an entry is of.
fn end(journal: &Journal, zone: &Zone) -> Instant {
    let days = journal.entries().filter_map(|entry| Some(journal.body(entry)?.on().day(zone)));
    let last = days.max().unwrap_or_else(|| stop("nothing is written in it"));
    Instant(zone.start_of(last.succ()).0 - 1)
}

fn stop(why: &str) -> ! {
    eprintln!("{why}");
    std::process::exit(1)
}
