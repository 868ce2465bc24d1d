//! Tables read back by another program, and held against the figures that they come from.
//!
//! Source: library — the crate `csv` 1; the shops are invented.

use super::*;
use crate::{
    costing::{CostKind, Rule},
    fixture::{Fixture, fixture},
};
use std::collections::BTreeMap;

const SHOP: &str = "
    setting currency EUR
    setting km 0.50
    person Ana 26
    person Bo 20 paid
    build bench
    build shelves
    item oil consumable tin
    lot o1 bought 2 of oil unit tin paid 58 on 2026-02-02
    lot maple salvaged 120 paid 36 yield 0.8 new 7
    stretch Ana reclaim min 360 for maple on 2026-02-03
    sort maple good 48 culled 12
    stretch Ana sand from 08:00 to 10:20 for bench on 2026-02-04
    stretch Bo shoot min 45 for bench
    draw 20 maple for bench as drawn
    return 3 of drawn
    draw 0.5 oil for bench
    expense =hall 60 for bench
    expense card 7 for shelves
    trip 40 fee 3 for bench:1,shelves:1
    expense wrong 900 for bench as wrong
    strike wrong
";

type Row = BTreeMap<String, String>;

/// The rows of a table as another reader has them, by the names of the columns.
fn read(it: &Fixture, of: Of, build: Option<&str>) -> Vec<Row> {
    let (shop, books) = (it.shop(), it.books());
    let from = Sources { journal: &it.journal, shop: &shop, books: &books };
    let text = table(from, of, build.map(|name| it.id(name))).csv();
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    reader.deserialize().map(|row| row.expect("a row")).collect()
}

/// A column of money or quantities, summed exactly.
fn sum<'a>(rows: impl IntoIterator<Item = &'a Row>, column: &str) -> rust_decimal::Decimal {
    let numbers = rows.into_iter().map(|row| &row[column]).filter(|it| !it.is_empty());
    numbers.map(|it| it.parse::<rust_decimal::Decimal>().expect(it)).sum()
}

#[test]
fn the_lines_of_a_build_add_up_to_its_true_cost_and_its_own_hours() {
    let it = fixture(SHOP);
    let (books, rows) = (it.books(), read(&it, Of::Cost, None));
    for build in ["bench", "shelves"] {
        let cost = books.build_cost(it.id(build));
        let mine = || rows.iter().filter(|row| row["build"] == build);
        assert_eq!(sum(mine(), "money_EUR").to_string(), cost.true_cost.money().unwrap().shown(2));
        let own = cost.own_hours.hours().unwrap().in_hours().to_decimal();
        assert!((sum(mine(), "own_hours") - own).abs() < "0.00001".parse().unwrap());
        for part in &cost.true_cost.parts {
            let Some(Rule::Kind { kind, .. }) = part.statement().map(|it| it.rule) else { continue };
            let exact = part.value().and_then(|_| part.signed_money()).unwrap().to_decimal();
            let said = sum(mine().filter(|row| row["kind"] == kind.code()), "money_EUR");
            assert!((said - exact).abs() < "0.01".parse().unwrap(), "{kind:?}: {said}, {exact}");
        }
    }
    let kinds: std::collections::BTreeSet<&str> = rows.iter().map(|row| &row["kind"][..]).collect();
    assert!(kinds.iter().all(|code| CostKind::ALL.iter().any(|kind| kind.code() == *code)), "{kinds:?}");
}

#[test]
fn a_row_of_cost_says_what_it_is_of() {
    let it = fixture(SHOP);
    let rows = read(&it, Of::Cost, Some("bench"));
    let hall = rows.iter().find(|row| row["what"] == "'=hall").expect("the hall");
    assert_eq!(
        (&hall["kind"][..], &hall["money_EUR"][..], &hall["day"][..]),
        ("direct", "60.00", "2026-02-04")
    );
    let back = rows.iter().find(|row| row["quantity"] == "-3").expect("what came back");
    assert_eq!((&back["group"][..], &back["unit"][..]), ("maple", "bf"));
    assert!(back["money_EUR"].starts_with('-'), "{back:?}");
    let sanding = rows.iter().find(|row| row["kind"] == "labour" && row["group"] == "sand").expect("sanding");
    assert_eq!((&sanding["what"][..], &sanding["own_hours"][..]), ("Ana", "2.333333"));
    let shooting =
        rows.iter().find(|row| row["kind"] == "labour" && row["group"] == "shoot").expect("shooting");
    assert_eq!((&shooting["quantity"][..], &shooting["own_hours"][..]), ("0.75", ""));
}

#[test]
fn every_entry_is_a_row_and_a_struck_one_counts_for_nothing() {
    let it = fixture(SHOP);
    let rows = read(&it, Of::Entries, None);
    assert_eq!(rows.len(), it.journal.entries().count());
    let wrong = rows.iter().find(|row| row["what"] == "wrong").expect("the wrong one");
    assert_eq!((&wrong["state"][..], &wrong["money_EUR"][..]), ("struck", ""));
    let drive = rows.iter().find(|row| row["kind"] == "trip").expect("the drive");
    assert_eq!((&drive["for"][..], &drive["money_EUR"][..]), ("bench; shelves", "23.00"));
    let sanding = rows.iter().find(|row| row["stage"] == "sand").expect("sanding");
    let hours = (&sanding["from"][..], &sanding["to"][..], &sanding["hours"][..]);
    assert_eq!(hours, ("2026-02-04T08:00:00+00:00", "2026-02-04T10:20:00+00:00", "2.333333"));
    let lot = rows.iter().find(|row| row["kind"] == "lot" && row["what"] == "maple").expect("the lot");
    assert_eq!((&lot["quantity"][..], &lot["unit"][..], &lot["money_EUR"][..]), ("120", "bf", "36.00"));
}

#[test]
fn entries_of_one_build_are_those_of_its_journal() {
    let it = fixture(SHOP);
    let rows = read(&it, Of::Entries, Some("shelves"));
    assert!(rows.iter().any(|row| row["what"] == "card") && rows.iter().all(|row| row["stage"] != "sand"));
    let drive = rows.iter().find(|row| row["kind"] == "trip").expect("its share of the drive");
    assert_eq!(drive["money_EUR"], "11.50");
}

#[test]
fn stock_is_what_the_shelf_says() {
    let it = fixture(SHOP);
    let rows = read(&it, Of::Stock, None);
    let oil = rows.iter().find(|row| row["name"] == "oil").expect("oil");
    assert_eq!(
        (&oil["what"][..], &oil["left"][..], &oil["left_cost_EUR"][..], &oil["a_unit_EUR"][..]),
        ("item", "1.5", "43.50", "29")
    );
    assert_eq!(sum(&rows, "left_cost_EUR").to_string(), it.books().shelf_value().shown(2));
}

#[test]
fn income_has_a_row_a_payment() {
    let it = fixture(
        "
        setting currency CAD
        build bench
        income sale piece for bench expected 780 got 565 tax 65 fee 16.95 on 2026-03-01
        income sponsor film for bench expected 200
    ",
    );
    let rows = read(&it, Of::Income, Some("bench"));
    let kinds: Vec<_> =
        rows.iter().map(|row| (&row["kind"][..], &row["net_CAD"][..], &row["still_open_CAD"][..])).collect();
    assert_eq!(kinds, [("sale", "483.05", "296.95"), ("sponsor", "", "200.00")]);
}

#[test]
fn an_empty_shop_has_tables_with_a_head_alone() {
    for of in Of::ALL {
        assert_eq!(read(&fixture(""), of, None), Vec::<Row>::new(), "{of:?}");
    }
}
