//! What the example `cost_sheet` prints of the sample shop, against the figures that were worked out beside it.

#[path = "../../app/core/examples/cost_sheet/sheet.rs"]
mod sheet;

use benchslate_core::{
    costing::Books,
    exchange::jsonl,
    journal::{Journal, Shop},
    measure::When,
};
use serde_json::Value;
use sheet::{Figure, sheets};

fn printed() -> Figure {
    let mut journal = Journal::default();
    let file = include_bytes!("../../public/sample-shop.jsonl");
    jsonl::check_bytes(&journal, file).unwrap().merge_into(&mut journal);
    let shop = Shop::fold(&journal, &crate::zones::probed(chrono_tz::America::Toronto));
    sheets(&shop, &Books::close(&shop, When::parse("2026-11-20T15:00:00Z").unwrap().instant))
}

const BUILDS: [(&str, &str); 4] = [
    ("B1", "Bench from church pews"),
    ("B2", "Gymnasium-floor trays, first run"),
    ("B3", "Gymnasium-floor trays, second run"),
    ("B4", "Reading bench for a library corner"),
];

// Source: library — two programs written apart from this one and from each other, over invented data; figures.json,
// under `shown`, holds what both came to.
#[test]
fn the_sheet_of_every_build_shows_what_was_worked_out_beside_it() {
    let want: Value = serde_json::from_str(include_str!("sample_shop/figures.json")).unwrap();
    let got = printed();
    let mut compared = 0;
    for (name, title) in BUILDS {
        let want = &want["builds"][name]["shown"];
        let same = |want: &Value, path: &[&str]| {
            let says = got.at(&[&["builds", title], path].concat()).map_or("0.00", |it| it.says.as_str());
            assert_eq!(says, want.as_str().unwrap_or("0.00"), "{title}: {path:?}");
        };
        same(&want["by_side"]["whole"], &["true"]);
        same(&want["by_side"]["piece"], &["sides", "piece"]);
        same(&want["by_side"]["film"], &["sides", "film"]);
        let parts = [
            ("money", "money"),
            ("paid", "paid labour"),
            ("vehicle", "vehicle"),
            ("own", "own labour"),
            ("tools", "tools"),
            ("overhead", "overhead"),
            ("supplied", "supplied"),
        ];
        for (of, part) in parts {
            same(&want["by_part"][of], &["by part", part]);
        }
        for kind in ["labour", "tools", "overhead"] {
            same(&want["by_kind"][kind], &["true", kind]);
        }
        compared += 3 + parts.len() + 3;
    }
    assert_eq!(compared, 52);
}

// Source: library — the same; `true_cost` and `used_up` of the bench to six digits, rounded here to cents.
#[test]
fn the_bridge_and_a_lot_stand_on_it_as_a_table_and_as_json() {
    let got = printed();
    let bench = ["builds", "Bench from church pews"];
    let at = |path: &[&str]| got.at(&[&bench[..], path].concat()).map(|it| it.says.clone());
    assert_eq!(at(&["bridge"]).as_deref(), Some("2994.01"));
    assert_eq!(at(&["bridge", "used"]).as_deref(), Some("220.33"));
    assert_eq!(at(&["own-hours"]).as_deref(), Some("81 h 24"));
    let oak = got.at(&["lots", "pew oak", "board", "drawn"]).expect("it was drawn from");
    assert!(oak.says.ends_with(" bf"), "{}", oak.says);
    let table = got.table();
    assert!(
        table.lines().any(|line| line.trim_start().starts_with("true ") && line.ends_with("2994.01")),
        "{table}"
    );
    assert_eq!(got.json()["parts"][0]["parts"][0]["name"], "Bench from church pews");
}
