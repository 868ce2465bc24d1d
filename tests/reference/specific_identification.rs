//! Lots drawn by name, against a published example of specific identification.

use benchslate_core::fixture::fixture;

/// 140 of the first lot and 160 of the second are sold, in this order of lines.
#[track_caller]
fn check(sales: &str) {
    let it = fixture(&format!(
        "build sales
        lot july1 bought 150 unit each paid 3150 on 2026-07-01
        lot july10 bought 225 unit each paid 6075 on 2026-07-10
        lot july25 bought 210 unit each paid 6930 on 2026-07-25
        {sales}"
    ));
    let books = it.books();
    assert_eq!(books.build_cost(it.id("sales")).parts.total().shown(2), "7260.00");
    let shelf: Vec<(String, String)> = books
        .shelf()
        .iter()
        .map(|line| (line.quantity.expect("known").shown_trimmed(), line.value.shown(2)))
        .collect();
    // 10 at 21, 65 at 27, 210 at 33: 8,895.
    let want = [("10", "210.00"), ("65", "1755.00"), ("210", "6930.00")];
    assert_eq!(shelf, want.map(|(quantity, value)| (quantity.to_owned(), value.to_owned())));
}

// Source: published — OpenStax, Principles of Accounting 1, ch. 10 (m67890), "Spy Who Loves You", specific identification, perpetual.
#[test]
fn each_lot_bears_the_cost_of_what_was_drawn_of_it() {
    check(
        "draw 120 july1 for sales on 2026-07-05
        draw 20 july1 for sales on 2026-07-15
        draw 160 july10 for sales on 2026-07-15",
    );
}

// Source: published — the same example, periodic: the order of the sales changes nothing (m67889).
#[test]
fn the_order_of_the_draws_changes_nothing() {
    check(
        "draw 160 july10 for sales on 2026-07-31
        draw 140 july1 for sales on 2026-07-31",
    );
}
