//! What stands in a pack, and what is left out.

use super::*;
use crate::{
    exchange::jsonl,
    fixture::{Fixture, fixture},
    journal::{Body, Change, Journal, kinds},
    measure::Zone,
};

fn of(it: &Fixture, chosen: Chosen) -> Pack {
    pack(&it.shop(), &it.books(), it.id("bench"), it.end(), chosen).unwrap()
}

fn sample() -> (Shop, Books, Instant) {
    let mut journal = Journal::default();
    let file = include_str!("../../../../../public/sample-shop.jsonl");
    jsonl::check(&journal, file).unwrap().merge_into(&mut journal);
    let (shop, now) = (Shop::fold(&journal, &Zone::utc()), Instant(1_795_186_800));
    let books = Books::close(&shop, now);
    (shop, books, now)
}

/// Materials as `heading name quantity`.
fn said(pack: &Pack) -> Vec<String> {
    let line = |it: &Material| format!("{:?} {} {}", it.made_of, it.name, it.quantity.shown_trimmed());
    pack.materials.iter().map(line).collect()
}

#[test]
fn the_pew_bench_is_made_of_what_was_drawn_less_what_came_back() {
    let (shop, books, now) = sample();
    let bench = *shop.builds.iter().find(|(_, it)| it.title == "Bench from church pews").unwrap().0;
    let pack = pack(&shop, &books, bench, now, Chosen::default()).unwrap();
    let want = [
        "Salvaged pew oak 69",
        "Consumable brass screw, no. 6 x 3/4 in 32",
        "Bought steel bracket 4",
        "Supplied seat cushion 1",
        "Supplied hard oil, 750 ml 0.75",
        "Consumable wood glue 0.5",
        "Consumable sanding disc 14",
    ];
    let mut got = said(&pack);
    got.sort();
    let mut sorted = want.map(str::to_owned).to_vec();
    sorted.sort();
    assert_eq!(got, sorted);
    assert!(pack.materials.is_sorted_by_key(|it| it.made_of));
    let tools: Vec<&str> = pack.tools.iter().map(|it| &it.name[..]).collect();
    assert_eq!(tools, ["camera and lens", "random-orbit sander", "table saw", "thickness planer"]);
    // A client's own cushion is nobody's gift.
    let given = Disclosed::Given { what: "hard oil, 750 ml".to_owned() };
    assert_eq!(pack.disclosed, [Disclosed::Paid { fee: None, by: None }, given]);
    assert_eq!(pack.costs, None);
}

#[test]
fn costs_are_those_of_the_sheet_and_add_up() {
    let (shop, books, now) = sample();
    let chosen = Chosen { costs: true, ..Chosen::default() };
    for (id, build) in &shop.builds {
        let Some((kinds, whole)) = pack(&shop, &books, *id, now, chosen).unwrap().costs else {
            panic!("{}: no costs", build.title)
        };
        let cents = |shown: &Shown| shown.text().replace('.', "").parse::<i64>().unwrap();
        assert_eq!(kinds.iter().map(|(_, it)| cents(it)).sum::<i64>(), cents(&whole), "{}", build.title);
    }
}

const GIFTS: &str = "build bench
tool lathe lent at mill:0.5
tool saw at mill:0.2
tool press at finish:0.2
person ana
stretch ana mill from 09:00 to 10:00 for bench
income sponsor film for bench expected 900
income other film got 5
income sale piece for bench got 700";

#[test]
fn a_name_and_a_fee_are_left_out_unless_asked_for() {
    let mut it = fixture(GIFTS);
    let (them, lathe) = (Id::of([90; 16]), it.id("lathe"));
    let on = crate::journal::On::Day(Day::parse("2026-02-01").unwrap());
    let (name, kind) = ("Reed and Rush".to_owned(), kinds::OutsiderKind::Sponsor);
    let week = kinds::monday_to_friday();
    it.write(Change::write(them, kinds::Outsider { on, name, kind, week, off: Vec::new() }));
    let Some(Body::Tool(tool)) = it.journal.body(lathe).cloned() else { panic!("a tool") };
    it.write(Change::write(lathe, kinds::Tool { by: Some(them), ..tool }));
    let plain = of(&it, Chosen::default());
    let lent = |by| Disclosed::LentTool { what: "lathe".to_owned(), by };
    assert_eq!(plain.disclosed, [Disclosed::Paid { fee: None, by: None }, lent(None)]);
    assert_eq!(plain.tools.iter().map(|it| &it.name[..]).collect::<Vec<_>>(), ["lathe", "saw"]);
    let named = of(&it, Chosen { names: true, fee: true, costs: false });
    let who = Some("Reed and Rush".to_owned());
    let fee = Money::from_decimal("900".parse().unwrap());
    assert_eq!(named.disclosed, [Disclosed::Paid { fee, by: None }, lent(who)]);
    let text = format!("{plain:?}");
    assert!(!text.contains("Reed") && !text.contains("900"), "{text}");
}

#[test]
fn a_tool_that_was_gone_was_not_used() {
    let mut it = fixture(GIFTS);
    let saw = it.id("saw");
    let Some(Body::Tool(tool)) = it.journal.body(saw).cloned() else { panic!("a tool") };
    it.write(Change::write(saw, kinds::Tool { gone: Some(Day::parse("2026-01-15").unwrap()), ..tool }));
    let names: Vec<String> = of(&it, Chosen::default()).tools.into_iter().map(|it| it.name).collect();
    assert_eq!(names, ["lathe"]);
}

#[test]
fn a_client_of_whom_something_is_owed_pays_for_no_film() {
    let mut it = fixture(GIFTS);
    let (on, build) = (crate::journal::On::Day(Day::parse("2026-02-01").unwrap()), it.id("bench"));
    let owed = |it: &mut Fixture, number: u8, name: &str, kind| {
        let (who, due) = (Id::of([number; 16]), Id::of([number + 100; 16]));
        let (name, week) = (name.to_owned(), kinds::monday_to_friday());
        it.write(Change::write(who, kinds::Outsider { on, name, kind, week, off: Vec::new() }));
        let (what, outsider) = (kinds::DueWhat::Mention, Some(who));
        let due_is = kinds::Due {
            on,
            build,
            what,
            words: None,
            day: None,
            lead: None,
            after: None,
            outsider,
            done: None,
        };
        it.write(Change::write(due, due_is));
    };
    let by = |it: &Fixture| {
        let paid = of(it, Chosen { names: true, ..Chosen::default() }).disclosed;
        paid.into_iter().find_map(|it| if let Disclosed::Paid { by, .. } = it { Some(by) } else { None })
    };
    owed(&mut it, 91, "The Larches", kinds::OutsiderKind::Client);
    assert_eq!(by(&it), Some(None));
    owed(&mut it, 92, "Reed and Rush", kinds::OutsiderKind::Sponsor);
    assert_eq!(by(&it), Some(Some("Reed and Rush".to_owned())));
}
