//! Every released format stays readable: each kept file is brought in, folded and costed, and compared with
//! the figures written beside it when it was kept.
//!
//! A file and its figures are added, never edited: where this test fails, the program is wrong. A new file
//! without figures fails too, and the figures that it came to are printed.

use super::folder::files;
use benchslate_core::{
    costing::{Books, OneSide, Rule, Statement, Value},
    exchange::{
        backup::{self, Held, Looked},
        jsonl,
    },
    journal::{Content, Id, Journal, Shop},
    measure::{Day, Quantity, Zone},
};
use std::{fmt::Write, ops::Range};

#[test]
fn every_kept_file_folds_to_the_figures_it_was_kept_with() {
    for file in files("v1", "jsonl").into_iter().chain(files("v1", "zip")) {
        let bytes = lines_of(&std::fs::read(&file).unwrap());
        let figures = std::fs::read_to_string(file.with_extension("figures")).unwrap_or_default();
        assert_eq!(figures_of(&brought(&bytes)), figures, "{}", file.display());
    }
}

#[test]
fn every_kept_file_goes_out_again_to_the_byte() {
    for file in files("v1", "jsonl").into_iter().chain(files("v1", "zip")) {
        let bytes = lines_of(&std::fs::read(&file).unwrap());
        assert!(jsonl::write(&brought(&bytes)).as_bytes() == bytes, "{}", file.display());
    }
}

#[test]
fn every_kept_backup_brings_its_photos() {
    for file in files("v1", "zip") {
        let bytes = std::fs::read(&file).unwrap();
        let piece = |range: Range<u64>| bytes[range.start as usize..range.end as usize].to_vec();
        let held = Held { from: 0, bytes: bytes.clone(), length: bytes.len() as u64 };
        let Looked::Contents(contents) = backup::contents(held).unwrap() else {
            panic!("all of it is there")
        };
        let manifest = piece(contents.manifest());
        let mut read = contents.opened(manifest).unwrap();
        let photos = read.photos().to_vec();
        let photos = photos.iter().map(|at| read.photo(at, piece(at.range())).unwrap().name.hash).collect();
        assert_eq!(backup::named(&brought(&lines_of(&bytes))), photos, "{}", file.display());
    }
}

/// The journal of a backup, or a journal as it is.
fn lines_of(bytes: &[u8]) -> Vec<u8> {
    if backup::begins(bytes) { backup::journal_of(bytes).unwrap() } else { bytes.to_vec() }
}

fn brought(bytes: &[u8]) -> Journal {
    let mut journal = Journal::default();
    jsonl::check_bytes(&journal, bytes).unwrap().merge_into(&mut journal);
    journal
}

/// What a maker would compare, a line each; days cut in UTC, everything up to the end of 2026.
fn figures_of(journal: &Journal) -> String {
    let mut text = format!("lines {}\n", journal.len());
    let zone = Zone::utc();
    let shop = Shop::fold(journal, &zone);
    let _ = writeln!(
        text,
        "entries {}, struck out {}, two versions {}",
        shown(journal),
        struck(journal),
        split(journal)
    );
    for person in shop.people.values() {
        let rate = person.rates.last().map_or("-".into(), |rate| rate.an_hour.shown(2));
        let _ = writeln!(text, "person {}, paid {}, {rate} an hour", person.name, person.paid);
    }
    for note in &shop.notes {
        let _ = writeln!(text, "note {}", note.text);
    }
    let end = zone.start_of(Day::parse("2027-01-01").unwrap());
    let books = Books::close(&shop, end);
    for (build, facts) in &shop.builds {
        let _ = writeln!(text, "build {}", facts.title);
        cost(&mut text, &books, *build);
        more(&mut text, &shop, &books, *build);
    }
    running(&mut text, &shop, &books);
    planned(&mut text, &shop, &books);
    let odd: Vec<String> = shop.odd.iter().map(|(_, odd)| format!("{odd:?}")).collect();
    let _ = writeln!(text, "odd {}", odd.join(", "));
    text
}

fn cost(text: &mut String, books: &Books, build: Id) {
    let cost = books.build_cost(build);
    let figures = [
        ("true cost", Some(&cost.true_cost)),
        ("spent", cost.spent()),
        ("used up", cost.used_up()),
        ("tax back", Some(&cost.tax_back)),
        ("own hours", Some(&cost.own_hours)),
    ];
    for (name, statement) in figures {
        let _ = writeln!(text, "  {name} {}", said(statement));
    }
}

/// Of a shop that keeps tools, income or finished items; files that were kept before there were any say nothing of it.
fn more(text: &mut String, shop: &Shop, books: &Books, build: Id) {
    if shop.tools.is_empty() && shop.incomes.is_empty() && shop.made.is_empty() {
        return;
    }
    let cost = books.build_cost(build);
    let _ = writeln!(text, "  {:?}", shop.state_of(build, Day::parse("2026-12-31").unwrap()));
    let side =
        |side: OneSide| cost.sides.part(|rule| matches!(rule, Rule::Side { side: it, .. } if *it == side));
    let figures = [
        ("piece", side(OneSide::Piece)),
        ("film", side(OneSide::Film)),
        ("came in", Some(&cost.earned.net)),
        ("still expected", Some(&cost.earned.expected)),
        ("tax in it", Some(&cost.earned.tax)),
        ("in kind", Some(&cost.in_kind)),
        ("an hour earned", Some(&cost.hour_earned)),
        ("one good item", Some(&cost.batch.item)),
        ("salvage saved", cost.saving.as_ref().map(|it| &it.at_rate)),
    ];
    for (name, statement) in figures {
        let _ = writeln!(text, "  {name} {}", said(statement));
    }
    let parts = [("tools", cost.parts.tools()), ("overhead", cost.parts.overhead())];
    for (name, money) in parts.into_iter().chain([("loss", cost.batch.loss)]) {
        let _ = writeln!(text, "  {name} {}", money.shown(2));
    }
    let items = &cost.items;
    let (good, spoiled, left) = (items.good, items.spoiled.len(), items.left());
    let _ = writeln!(text, "  items good {good}, spoiled {spoiled}, sold {}, left {left}", items.sold);
}

/// What stands for the whole shop.
fn running(text: &mut String, shop: &Shop, books: &Books) {
    for receipt in shop.receipts.values() {
        let whence = receipt.whence.as_deref().unwrap_or("-");
        let _ = writeln!(
            text,
            "receipt {whence}, {} lines, unsaid {}",
            receipt.lines.len(),
            receipt.unsaid.shown(2)
        );
    }
    for book in books.tools() {
        let name = &shop.tools[&book.tool].name;
        let worth = book.book_value.map_or("-".into(), |it| it.shown(2));
        let _ = writeln!(text, "tool {name}, {} h, worth {worth}", book.hours_all.shown_to(4));
    }
    for blade in books.blades() {
        let _ = writeln!(text, "blade worn {}, left {}", blade.worn.shown(2), blade.left.shown(2));
    }
    for month in books.months(shop).iter().take(3) {
        let _ = writeln!(
            text,
            "month {} bore {} of {}",
            month.first,
            month.applied.shown(2),
            month.actual().shown(2)
        );
    }
    if !shop.dryings.is_empty() || !shop.photos.is_empty() {
        let _ = writeln!(text, "dryings {}, photos {}", shop.dryings.len(), shop.photos.len());
    }
}

/// What is planned, looked at, put away and said to be one; files that were kept before there was any say nothing of it.
fn planned(text: &mut String, shop: &Shop, books: &Books) {
    for build in shop.builds.keys().filter(|build| shop.steps.values().any(|it| it.build() == **build)) {
        let cost = books.build_cost(*build);
        let against = books.against_plan(shop, *build);
        let hours = against.hours().map_or("-".into(), |it| {
            [it.actual, it.planned].map(|it| it.in_hours().shown_to(4)).join(" of ")
        });
        let money = against
            .materials()
            .map_or("-".into(), |it| format!("{} of {}", it.actual.shown(2), it.planned.shown(2)));
        let _ = writeln!(text, "outlook {}", said(Some(&cost.outlook)));
        let _ = writeln!(text, "hours {hours}, materials {money}, above {}", said(cost.above.as_ref()));
        let (left, all) = shop.pieces_of(*build);
        let _ = writeln!(text, "pieces to cut {left} of {all}");
    }
    for line in &shop.buy_lines {
        let (much, bought) = (line.quantity.map(|it| it.shown_trimmed()), line.bought.is_some());
        let _ = writeln!(text, "to buy {}, bought {bought}", much.unwrap_or_default());
    }
    for cull in &shop.culls {
        let _ = writeln!(text, "culled {}, unexpected {}", cull.quantity.shown_trimmed(), cull.unexpected);
    }
    for find in shop.finds.values() {
        let told = benchslate_core::costing::salvage::appraise(shop, find);
        let cash = told.cash.map_or("-".into(), |it| it.shown(2));
        let _ = writeln!(text, "found {}, {cash} in money, taken {}", find.name, find.lot.is_some());
    }
    for film in shop.films.values() {
        let minutes = |it: Option<Quantity>| it.map_or("-".into(), Quantity::shown_trimmed);
        let _ = writeln!(text, "film {} shot, {} finished", minutes(film.footage), minutes(film.finished));
    }
    for build in shop.builds.keys() {
        for it in benchslate_core::timing::shots::listed(shop, *build) {
            let (what, taken) = (&shop.shots[&it.shot].body.what, it.takes.len());
            let _ = writeln!(text, "shot {} {what}, {taken} of {}, {:?}", it.number, it.wanted, it.standing);
        }
    }
    for (order, build) in &shop.series_ends {
        let _ = writeln!(text, "run of {} ended {}", shop.builds[build].title, order.day);
    }
    if !shop.retired.is_empty() || !shop.merged.is_empty() {
        let _ = writeln!(text, "put away {}, merged {}", shop.retired.len(), shop.merged.len());
    }
}

fn said(statement: Option<&Statement>) -> String {
    match statement.and_then(|it| it.value) {
        Some(Value::Money(money) | Value::PerHour(money)) => money.shown(2),
        Some(Value::Hours(hours)) => hours.in_hours().shown_to(4),
        None => "-".into(),
    }
}

fn shown(journal: &Journal) -> usize {
    journal.entries().count()
}

fn struck(journal: &Journal) -> usize {
    let gone = |entry: &Id| journal.shown(*entry).is_some_and(|it| it.content == Content::Struck);
    journal.entries().filter(gone).count()
}

fn split(journal: &Journal) -> usize {
    journal.entries().filter(|entry| journal.heads(*entry).len() > 1).count()
}
