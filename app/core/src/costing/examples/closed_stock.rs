//! Builds that were closed while their stock was not settled: what they were told to cost stays, the rest bears what comes.

use super::{fixture, stock::NEGATIVE};

/// What the bench cost, what the shelf holds of discs, and what is a difference of the shop; 70 in all, or so.
#[track_caller]
fn closed_below_zero(formula: &str, later: &str, bench: &str, shelf: (&str, &str), lost: &str) {
    for order in ["moving_average", "first_in_first_out"] {
        if !formula.is_empty() && formula != order {
            continue;
        }
        let history = format!("setting formula {order}\n{NEGATIVE}\n close bench on 2026-02-02\n {later}");
        let it = fixture(&history);
        let books = it.books();
        let cost = books.build_cost(it.id("bench")).true_cost.money().expect("known").shown(2);
        let line = books.shelf_line(it.source("disc")).expect("came");
        let left = (line.quantity.expect("known").shown_trimmed(), line.value.shown(2));
        let differs = books.stock_losses().money().unwrap_or_default().shown(2);
        assert_eq!(cost, bench, "{history}");
        assert_eq!((left.0.as_str(), left.1.as_str()), shelf, "{history}");
        assert_eq!(differs, lost, "{history}");
    }
}

#[test]
fn a_build_closed_while_the_shelf_was_below_zero_keeps_what_it_cost() {
    let check =
        |later: &str, shelf: (&str, &str), lost: &str| closed_below_zero("", later, "25.00", shelf, lost);
    check("", ("-3", "-15.00"), "0.00");
    // 70 in all: 25.00 was told, so the 7 that are left bear 45.00.
    let second = "lot second bought 10 of disc unit each paid 60 on 2026-02-03";
    check(second, ("7", "45.00"), "0.00");
    // 2 at 6 do not cover the 3 that are missing: what they cost beyond that waits for the next.
    let some = "lot some bought 2 of disc unit each paid 12 on 2026-02-03";
    check(some, ("-1", "-3.00"), "0.00");
    check(
        &format!("{some}\n lot more bought 4 of disc unit each paid 28 on 2026-02-04"),
        ("3", "25.00"),
        "0.00",
    );
    // All that came is gone: 3 at 6 are 18 where 15 were told. The other 3.00 are a difference of the shop.
    check("lot rest bought 3 of disc unit each paid 18 on 2026-02-03", ("0", "0.00"), "3.00");
    // What was counted was there all the time: 3 at 5 more than the books said.
    check("count 4 disc on 2026-02-03", ("4", "20.00"), "-35.00");
    // One of them comes back at nothing, and 8 of the 10 are left: 70 less 25.00.
    let back = "return 1 of used on 2026-02-03";
    check(&format!("{back}\n {second}"), ("8", "45.00"), "0.00");
    check(&format!("{second}\n {back}"), ("8", "45.00"), "0.00");
}

#[test]
fn what_was_drawn_after_a_closed_build_below_zero_is_settled_by_what_is_left() {
    // 2 more drawn for the shop: 10 at 6, of which the closed build leaves 7 at 45.00.
    closed_below_zero(
        "moving_average",
        "draw 2 disc for shop on 2026-02-02
        lot second bought 10 of disc unit each paid 60 on 2026-02-03",
        "25.00",
        ("5", "32.14"),
        "0.00",
    );
}

#[test]
fn a_lot_with_less_in_it_than_was_thought_moves_no_closed_build() {
    // 4 of 10 at 4 stay drawn: 16.00 told. There were 3 only, and what is left of the 40 is borne by what comes next.
    let mut it = fixture(
        "
        build bench
        item disc consumable each
        lot box bought 10 of disc unit each paid 40
        draw 5 disc for bench as d1
        return 1 of d1 as back
        close bench",
    );
    let Some(crate::journal::Body::Lot(body)) = it.journal.body(it.id("box")).cloned() else {
        panic!("a lot")
    };
    let rough = crate::measure::Dec::parse("3").expect("a number");
    let lot = crate::journal::kinds::Lot { rough, ..body };
    it.write(crate::journal::Change::write(it.id("box"), lot));
    let cost = |it: &crate::fixture::Fixture| {
        let books = it.books();
        (
            books.build_cost(it.id("bench")).true_cost.money().expect("known").shown(2),
            books.shelf_value().shown(2),
        )
    };
    assert_eq!(cost(&it), ("16.00".into(), "24.00".into()));
    it.add("lot next bought 5 of disc unit each paid 10 on 2026-02-03");
    assert_eq!(cost(&it), ("16.00".into(), "34.00".into()));
    // Struck out altogether it leaves what the closed build keeps.
    it.add("strike box");
    assert_eq!(cost(&it), ("16.00".into(), "-6.00".into()));
}

#[test]
fn a_lot_struck_out_leaves_closed_builds_what_they_drew_of_it() {
    let it = fixture(
        "
        build bench
        lot oak bought 10 paid 40
        draw 4 oak for bench as d1
        return 1 of d1
        close bench
        strike oak",
    );
    let books = it.books();
    assert_eq!(books.build_cost(it.id("bench")).true_cost.money().expect("known").shown(2), "12.00");
    assert_eq!(books.stock_losses().money().expect("known").shown(2), "-12.00");
}
