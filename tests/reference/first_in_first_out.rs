//! Items by first-in first-out, against a published trail of purchases and sales.

use benchslate_core::fixture::{Fixture, fixture};

/// The shelf, its cost, and what was sold so far.
#[track_caller]
fn check(it: &Fixture, quantity: &str, value: &str, sold: &str) {
    let books = it.books();
    let line = books.shelf_line(it.source("case")).expect("it came");
    assert_eq!(line.quantity.expect("known").shown_trimmed(), quantity);
    assert_eq!(line.value.shown(2), value);
    assert_eq!(books.build_cost(it.id("sales")).parts.total().shown(2), sold);
}

/// One sale.
#[track_caller]
fn issued(it: &Fixture, name: &str, cost: &str) {
    assert_eq!(it.books().draw_cost(it.id(name)).expect("known").shown(2), cost);
}

// Source: published — OpenStax, Principles of Accounting 1, ch. 10 (m67889 to m67891), "Spy Who Loves You", perpetual first-in first-out.
#[test]
fn every_issue_takes_the_oldest_layers() {
    let mut it = fixture("setting formula first_in_first_out\n build sales\n item case fitting each");
    it.add("lot july1 bought 150 of case unit each paid 3150 on 2026-07-01");
    check(&it, "150", "3150.00", "0.00");
    // 120 at 21.
    it.add("draw 120 case for sales on 2026-07-05 as july5");
    issued(&it, "july5", "2520.00");
    check(&it, "30", "630.00", "2520.00");
    it.add("lot july10 bought 225 of case unit each paid 6075 on 2026-07-10");
    check(&it, "255", "6705.00", "2520.00");
    // 30 at 21 and 150 at 27.
    it.add("draw 180 case for sales on 2026-07-15 as july15");
    issued(&it, "july15", "4680.00");
    check(&it, "75", "2025.00", "7200.00");
    // DIFFERENCE: the source's alternative text prints 8,895 for the end; its table and its sums are 8,955.
    it.add("lot july25 bought 210 of case unit each paid 6930 on 2026-07-25");
    check(&it, "285", "8955.00", "7200.00");
}

// Source: published — the same example: sales of 11,340 leave a gross margin of 4,140; 16,155 were available.
#[test]
fn what_was_available_is_sold_or_on_the_shelf() {
    let it = fixture(
        "setting formula first_in_first_out
        build sales
        item case fitting each
        lot july1 bought 150 of case unit each paid 3150 on 2026-07-01
        draw 120 case for sales on 2026-07-05
        lot july10 bought 225 of case unit each paid 6075 on 2026-07-10
        draw 180 case for sales on 2026-07-15
        lot july25 bought 210 of case unit each paid 6930 on 2026-07-25
        income sale piece for sales expected 11340 got 11340",
    );
    let (books, sales) = (it.books(), it.books().build_cost(it.id("sales")));
    let (sold, held) = (sales.parts.total(), books.shelf_value());
    assert_eq!((sold.shown(2), held.shown(2)), ("7200.00".into(), "8955.00".into()));
    assert_eq!(sales.earned.net.money().expect("known").shown(2), "11340.00");
}

// Source: published — the same example, periodic: first-in first-out comes to the same (m67890).
#[test]
fn all_issues_at_the_end_of_the_month_come_to_the_same() {
    let it = fixture(
        "setting formula first_in_first_out
        build sales
        item case fitting each
        lot july1 bought 150 of case unit each paid 3150 on 2026-07-01
        lot july10 bought 225 of case unit each paid 6075 on 2026-07-10
        lot july25 bought 210 of case unit each paid 6930 on 2026-07-25
        draw 300 case for sales on 2026-07-31",
    );
    check(&it, "285", "8955.00", "7200.00");
}
