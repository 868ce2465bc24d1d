//! What is missing is said; a figure shows what there is.

use super::{check, fixture};
use crate::costing::{Flag, Gap};

#[track_caller]
fn gaps(history: &str, want: &[fn(&crate::fixture::Fixture) -> Gap]) {
    let it = fixture(history);
    let want: Vec<Gap> = want.iter().map(|gap| gap(&it)).collect();
    assert_eq!(it.books().build_cost(it.id("bench")).true_cost.gaps, want);
}

#[test]
fn a_lot_without_a_price_shows_the_rest_of_its_cost() {
    let history = "
        person Ana 10
        build bench
        lot oak salvaged 10 yield 1
        stretch Ana reclaim min 60 for oak
        sort oak good 10
        draw 5 oak for bench";
    check(
        history,
        "true",
        1,
        "
        true 5.00
          salvaged 5.00
    ",
    );
    gaps(history, &[|it| Gap::NoPrice { lot: it.id("oak") }]);
}

#[test]
fn an_offcut_without_a_price_lacks_nothing() {
    gaps("build bench\n lot ends offcut 10\n draw 5 ends for bench", &[]);
}

#[test]
fn an_item_bought_without_a_price_lacks_it_until_the_shelf_is_empty() {
    let history = "
        build bench
        item disc consumable each
        lot a bought 10 of disc unit each
        draw 10 disc for bench
        lot b bought 10 of disc unit each paid 10 on 2026-02-05";
    gaps(history, &[|it| Gap::NoPrice { lot: it.id("a") }]);
    gaps(
        &format!("{}\n build bench2", history.replace("draw 10", "draw 5")),
        &[|it| Gap::NoPrice { lot: it.id("a") }],
    );
    let other = format!("{history}\n build other\n draw 5 disc for other");
    let it = fixture(&other);
    assert_eq!(it.books().build_cost(it.id("other")).true_cost.gaps, []);
}

#[test]
fn what_an_item_s_shelf_lacks_is_said_once_however_often_some_of_it_comes_back() {
    let mut it = fixture("build bench\n item disc consumable each\n lot a bought 500 of disc unit each");
    for turn in 2..26 {
        it.add(&format!("draw 3 disc for bench as d{turn} on 2026-02-{turn:02}"));
        it.add(&format!("return 1 of d{turn}"));
    }
    let line = it.books().shelf_line(it.source("disc")).expect("it came");
    assert_eq!(line.gaps, [Gap::NoPrice { lot: it.id("a") }]);
}

#[test]
fn kilometres_without_a_rate_are_a_gap_and_tolls_still_count() {
    let history = "build bench\n trip 40 fee 3 for bench";
    check(
        history,
        "true",
        2,
        "
        true 3.00
          direct 3.00
            trip 3.00
    ",
    );
    gaps(history, &[|_| Gap::NoKmRate]);
    gaps("build bench\n trip 0 fee 3 for bench", &[]);
}

#[test]
fn numbers_that_cannot_be_are_gaps() {
    gaps(
        "build bench\n expense card 10000000000000 for bench as e",
        &[|it| Gap::NoAmount { entry: it.id("e") }],
    );
    gaps(
        "build bench\n lot oak bought -4 paid 3\n draw 1 oak for bench",
        &[|it| Gap::NoQuantity { entry: it.id("oak") }],
    );
    gaps(
        "build bench\n lot oak bought 4 paid 3\n draw -1 oak for bench as d",
        &[|it| Gap::NoQuantity { entry: it.id("d") }],
    );
}

#[test]
fn a_lot_without_a_quantity_is_what_was_drawn_once_it_is_empty() {
    check(
        "build bench\n lot oak bought -4 paid 3\n draw 1 oak for bench\n empty oak",
        "true",
        1,
        "
        true 3.00
          bought 3.00
    ",
    );
}

#[test]
fn a_draw_from_a_lot_that_was_struck_out_is_not_costed() {
    let history = "build bench\n lot oak bought 4 paid 3\n draw 1 oak for bench as d\n strike oak";
    let it = fixture(history);
    let cost = it.books().build_cost(it.id("bench"));
    assert_eq!(cost.true_cost.value, None);
    assert_eq!(
        cost.true_cost.gaps,
        [Gap::NeverReceived { source: crate::journal::kinds::Source::Lot(it.id("oak")) }]
    );
    assert!(matches!(cost.true_cost.flags.as_slice(), [Flag::Odd { entry, .. }] if *entry == it.id("d")));
}

#[test]
fn a_return_of_a_draw_that_was_struck_out_counts_for_nothing() {
    let it = fixture(
        "build bench\n lot oak bought 4 paid 4\n draw 2 oak for bench as d\n return 1 of d as r\n strike d",
    );
    let cost = it.books().build_cost(it.id("bench"));
    assert_eq!(cost.true_cost.money().map(|it| it.shown(2)).as_deref(), Some("0.00"));
    assert_eq!(cost.true_cost.flags, [Flag::ReturnOfNothing { entry: it.id("r") }]);
}

#[test]
fn someone_who_was_struck_out_has_no_rate() {
    let it = fixture("person Ana 20\n build bench\n stretch Ana sand min 60 for bench as s\n strike Ana");
    let cost = it.books().build_cost(it.id("bench"));
    assert!(cost.true_cost.gaps.contains(&Gap::NoPerson { entry: it.id("s") }));
    assert_eq!(cost.true_cost.value, None);
}

#[test]
fn no_own_hours_cost_nothing_even_where_a_rate_a_kilometre_is_missing() {
    let it = fixture(
        "build bench\n lot oak salvaged 10 paid 5 new 7\n trip 20 for oak\n sort oak good 10\n draw 10 oak for bench",
    );
    let saving = it.books().lot(it.id("oak")).expect("a lot").saving;
    assert_eq!(saving.at_rate.value, saving.time_free.value);
    assert_eq!(saving.at_rate.money().map(|it| it.shown(2)).as_deref(), Some("65.00"));
    assert!(saving.at_rate.gaps.contains(&Gap::NoKmRate));
}

#[test]
fn what_is_odd_in_a_lot_is_said_beside_what_was_drawn_of_it() {
    let it = fixture(
        "build bench
        lot oak salvaged 4 paid 4 yield 7
        sort oak good 3 culled -1 as s
        draw 2 oak for bench",
    );
    let flags = it.books().build_cost(it.id("bench")).true_cost.flags;
    let of = |name: &str| {
        flags.iter().any(|flag| matches!(flag, Flag::Odd { entry, .. } if *entry == it.id(name)))
    };
    assert!(of("oak") && of("s"), "{flags:?}");
}
