//! Figures as shown: sums on view add up, and opening keeps the value that was tapped.

use super::{address, fixture};
use crate::{
    costing::{Part, present},
    measure::Shown,
};

#[test]
fn what_was_tapped_keeps_its_value_when_it_opens() {
    // Three hours that each end in two thirds of a cent.
    let it = fixture(
        "person Ana 10
        build bench
        stretch Ana sand min 20 for bench as a
        stretch Ana sand min 20 for bench as b
        stretch Ana cut min 20 for bench as c",
    );
    let cost = it.books().build_cost(it.id("bench"));
    let levels = present::open(&cost.true_cost, &address(&it, "true.labour.stage_sand"), 2).expect("opens");
    let shown: Vec<(String, Vec<String>)> = levels
        .iter()
        .map(|level| {
            let parts = level.parts.iter().flatten().map(Shown::text).collect();
            (level.shown.expect("money").text(), parts)
        })
        .collect();
    let want = [("10.00", vec!["10.00"]), ("10.00", vec!["3.33", "6.67"]), ("6.67", vec!["3.34", "3.33"])];
    assert_eq!(
        shown,
        want.map(|(whole, parts)| (whole.to_owned(), parts.into_iter().map(String::from).collect()))
    );
}

#[test]
fn what_is_taken_off_is_shown_by_its_size() {
    let it = fixture(
        "build bench
        lot oak bought 3 paid 10 for bench
        draw 1 oak for bench",
    );
    let cost = it.books().build_cost(it.id("bench"));
    let levels = present::open(&cost.bridge, &address(&it, "bridge.used.not-drawn"), 2).expect("opens");
    let bridge = &levels[1];
    let parts: Vec<String> = bridge.parts.iter().flatten().map(Shown::text).collect();
    assert_eq!(
        (bridge.shown.expect("money").text(), parts),
        ("3.33".into(), vec!["10.00".into(), "6.67".into(), "0.00".into()])
    );
    assert_eq!(levels[2].shown.expect("money").text(), "6.67");
}

#[test]
fn a_line_without_a_value_shows_none_and_takes_nothing() {
    let it = fixture(
        "person Ana 10\n person Bo\n build bench\n stretch Ana sand min 20 for bench\n stretch Bo sand min 20 for bench",
    );
    let cost = it.books().build_cost(it.id("bench"));
    let levels = present::open(&cost.true_cost, &address(&it, "true.labour.stage_sand"), 2).expect("opens");
    let parts: Vec<Option<String>> = levels[2].parts.iter().map(|shown| shown.map(|it| it.text())).collect();
    assert_eq!(parts, [Some("3.33".into()), None]);
}

#[test]
fn an_address_comes_back_from_its_text_and_opens_the_same() {
    let it = fixture("person Ana 10\n build bench\n stretch Ana sand min 20 for bench");
    let cost = it.books().build_cost(it.id("bench"));
    let path = address(&it, "true.labour.stage_sand");
    assert_eq!(crate::costing::Path::parse(&path.to_string()), path);
    let opened = cost.open(&path).expect("opens");
    assert_eq!(opened.len(), 3);
    assert!(cost.open(&address(&it, "true.labour.stage_cut")).is_none());
    assert!(cost.open(&crate::costing::Path::parse("nowhere")).is_none());
    assert!(cost.open(&crate::costing::Path::parse("")).is_none());
    assert_eq!(path.up().map(|up| up.to_string()).as_deref(), Some("true.labour"));
}

#[test]
fn an_hour_of_reclaiming_is_no_sum_of_its_parts() {
    let it = fixture(
        "person Ana 10
        build bench
        lot oak salvaged 10 paid 0 yield 1 new 10
        stretch Ana reclaim min 120 for oak
        sort oak good 10
        draw 10 oak for bench",
    );
    let lot = super::oak(&it);
    let level = present::alone(&lot.saving.paid_an_hour, 2);
    assert_eq!(level.shown.expect("money").text(), "50.00");
    assert_eq!(level.parts.iter().flatten().map(Shown::text).collect::<Vec<_>>(), ["100.00"]);
    assert_eq!(
        level.statement.parts.first().and_then(Part::signed_money).map(|it| it.shown(2)).as_deref(),
        Some("100.00")
    );
}
