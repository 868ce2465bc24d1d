//! Counts, what was thrown out, what was given away: the shop bears it, never the next build.

use crate::{
    costing::Gap,
    fixture::{Fixture, fixture},
};

const TWO_LOTS: &str = "
    build bench
    item disc consumable each
    lot a bought 10 of disc unit each paid 20 on 2026-02-01
    lot b bought 10 of disc unit each paid 40 on 2026-02-03";

/// Left of a lot or item, what that cost, and the shop's losses as a tree.
#[track_caller]
fn told(it: &Fixture, name: &str, left: (&str, &str), losses: &str) {
    let books = it.books();
    let line = books.shelf_line(it.source(name)).expect("it came");
    let quantity = line.quantity.expect("known").shown_trimmed();
    assert_eq!((&quantity[..], &line.value.shown(2)[..]), left);
    super::same(it, &books.stock_losses(), 2, losses);
}

#[test]
fn counted_short_is_a_difference_at_the_average() {
    let it = fixture(&format!("{TWO_LOTS}\n count 18 disc on 2026-02-04 as walk"));
    told(
        &it,
        "disc",
        ("18", "54.00"),
        "
        stock-losses 6.00
          counted 6.00
            walk 6.00
    ",
    );
}

#[test]
fn counted_short_is_a_difference_from_the_front_of_the_line() {
    let it = fixture(&format!(
        "setting formula first_in_first_out\n{TWO_LOTS}\n count 9 disc on 2026-02-04 as walk"
    ));
    // 10 at 2 and 1 at 4.
    told(
        &it,
        "disc",
        ("9", "36.00"),
        "
        stock-losses 24.00
          counted 24.00
            walk 24.00
    ",
    );
}

#[test]
fn counted_over_comes_in_at_the_average_or_at_what_came_last() {
    let count = "count 22 disc on 2026-02-04 as walk";
    let it = fixture(&format!("{TWO_LOTS}\n {count}"));
    told(
        &it,
        "disc",
        ("22", "66.00"),
        "
        stock-losses -6.00
          counted -6.00
            walk -6.00
    ",
    );
    let it = fixture(&format!("setting formula first_in_first_out\n{TWO_LOTS}\n {count}"));
    told(
        &it,
        "disc",
        ("22", "68.00"),
        "
        stock-losses -8.00
          counted -8.00
            walk -8.00
    ",
    );
}

#[test]
fn a_count_of_a_shelf_below_nought_says_that_more_was_there() {
    // 2 at 5, 5 drawn, 4 counted: 3 more were there for the draw, and 4 lie there, all at 5.
    let it = fixture(
        "build bench
        item disc consumable each
        lot a bought 2 of disc unit each paid 10 on 2026-02-01
        draw 5 disc for bench on 2026-02-02
        count 4 disc on 2026-02-03 as walk",
    );
    told(
        &it,
        "disc",
        ("4", "20.00"),
        "
        stock-losses -35.00
          counted -35.00
            walk -35.00
    ",
    );
    assert_eq!(it.books().build_cost(it.id("bench")).parts.total().shown(2), "25.00");
    assert_eq!(it.books().shelf_line(it.source("disc")).expect("came").flags, []);
}

#[test]
fn what_was_counted_and_never_came_costs_what_nobody_knows() {
    let it = fixture(
        "build bench\n item disc consumable each\n count 4 disc as walk\n draw 1 disc for bench on 2026-02-02",
    );
    let line = it.books().shelf_line(it.source("disc")).expect("counted");
    assert_eq!(line.quantity.expect("known").shown_trimmed(), "3");
    assert_eq!(line.gaps, [Gap::NeverReceived { source: it.source("disc") }]);
}

#[test]
fn a_count_that_is_right_says_nothing() {
    let it =
        fixture(&format!("{TWO_LOTS}\n draw 5 disc for bench on 2026-02-04\n count 15 disc on 2026-02-04"));
    told(&it, "disc", ("15", "45.00"), "stock-losses 0.00");
}

#[test]
fn a_draw_typed_late_with_an_earlier_day_is_in_the_count() {
    let counted = format!("{TWO_LOTS}\n count 15 disc on 2026-02-05 as walk");
    let it = fixture(&counted);
    assert_eq!(it.books().stock_losses().money().expect("known").shown(2), "15.00");
    let it = fixture(&format!("{counted}\n draw 5 disc for bench on 2026-02-04"));
    told(&it, "disc", ("15", "45.00"), "stock-losses 0.00");
}

#[test]
fn thrown_out_and_given_away_are_losses_of_the_shop_each_on_its_line() {
    let it = fixture(&format!(
        "{TWO_LOTS}
        throw 2 disc on 2026-02-04 as spoiled
        give 1 disc on 2026-02-04 as gift
        draw 1 disc for bench on 2026-02-05"
    ));
    told(
        &it,
        "disc",
        ("16", "48.00"),
        "
        stock-losses 9.00
          thrown-out 6.00
            spoiled 6.00
          given 3.00
            gift 3.00
    ",
    );
    assert_eq!(it.books().build_cost(it.id("bench")).parts.total().shown(2), "3.00");
    assert_eq!(it.books().shop_cost().parts.total().shown(2), "0.00");
}

#[test]
fn more_thrown_out_than_was_there_waits_for_the_next_receipt_too() {
    let it = fixture(
        "build bench
        item disc consumable each
        lot a bought 2 of disc unit each paid 10 on 2026-02-01
        throw 5 disc on 2026-02-02 as spoiled
        lot b bought 10 of disc unit each paid 60 on 2026-02-03",
    );
    told(
        &it,
        "disc",
        ("7", "42.00"),
        "
        stock-losses 28.00
          thrown-out 28.00
            spoiled 28.00
    ",
    );
}

#[test]
fn a_lot_by_itself_is_counted_and_thrown_out_at_its_unit_cost() {
    // 40 for 80; 10 drawn, 5 thrown out, 20 of the 25 that ought to be there counted.
    let it = fixture(
        "build bench
        lot oak bought 40 paid 80 on 2026-02-01
        draw 10 oak for bench on 2026-02-02
        throw 5 oak on 2026-02-03 as wet
        count 20 oak on 2026-02-04 as walk
        draw 4 oak for bench on 2026-02-05",
    );
    told(
        &it,
        "oak",
        ("16", "32.00"),
        "
        stock-losses 20.00
          counted 10.00
            walk 10.00
          thrown-out 10.00
            wet 10.00
    ",
    );
    assert_eq!(it.books().build_cost(it.id("bench")).parts.total().shown(2), "28.00");
}

#[test]
fn a_lot_by_itself_that_is_counted_over_held_more_and_its_unit_cost_falls() {
    let it = fixture(
        "build bench
        lot oak bought 40 paid 80 on 2026-02-01
        draw 10 oak for bench on 2026-02-02
        count 40 oak on 2026-02-04",
    );
    told(&it, "oak", ("40", "64.00"), "stock-losses 0.00");
}

#[test]
fn of_a_salvaged_lot_what_is_sorted_can_be_counted() {
    // 120 rough for 36, 60 looked at: 48 good. 20 drawn, 25 of the 28 counted; U stays 48 + 60 × 0.8 = 96.
    let it = fixture(
        "build bench
        lot oak salvaged 120 paid 36 yield 0.8 on 2026-02-01
        sort oak good 48 culled 12 on 2026-02-02
        draw 20 oak for bench on 2026-02-03
        count 25 oak on 2026-02-04 as walk",
    );
    told(
        &it,
        "oak",
        ("73", "27.38"),
        "
        stock-losses 1.12
          counted 1.12
            walk 1.12
    ",
    );
    let line = it.books().shelf_line(it.source("oak")).expect("there");
    assert_eq!((line.sorted.shown_trimmed(), line.to_come.shown_trimmed()), ("25".into(), "48".into()));
}

#[test]
fn what_rotted_in_store_counts_against_what_the_salvage_saved() {
    let history = "
        build bench
        lot oak salvaged 20 paid 40 yield 1 new 7 on 2026-02-01
        sort oak good 20 on 2026-02-02
        draw 10 oak for bench on 2026-02-03";
    let saved = |history: &str| {
        let it = fixture(history);
        let book = it.books().lot(it.id("oak")).expect("a lot");
        book.saving.time_free.money().expect("known").shown(2)
    };
    assert_eq!(saved(history), "50.00");
    assert_eq!(saved(&format!("{history}\n throw 5 oak on 2026-02-04")), "40.00");
}

#[test]
fn a_look_without_a_quantity_that_can_be_is_said_and_counts_for_nothing() {
    let it = fixture(&format!("{TWO_LOTS}\n count -3 disc on 2026-02-04"));
    assert_eq!(it.shop().odd.len(), 1);
    told(&it, "disc", ("20", "60.00"), "stock-losses 0.00");
}

#[test]
fn what_is_drawn_after_a_count_of_the_same_day_is_not_in_it() {
    let history = format!(
        "{TWO_LOTS}
        draw 5 disc for bench time 09:00 on 2026-02-04
        count 15 disc time 10:00 as walk
        draw 2 disc for bench time 14:00 as later
        return 1 of later time 13:00"
    );
    told(&fixture(&history), "disc", ("14", "42.00"), "stock-losses 0.00");
    // Without a time a look comes after all that was drawn that day.
    let whole = history.replace("disc time 10:00", "disc");
    assert_eq!(fixture(&whole).books().stock_losses().money().expect("known").shown(2), "-3.00");
}

#[test]
fn a_lot_by_itself_is_counted_by_the_time_too() {
    let it = fixture(
        "build bench
        lot oak bought 40 paid 80 on 2026-02-01
        count 40 oak time 10:00 on 2026-02-02 as walk
        draw 10 oak for bench time 14:00",
    );
    told(&it, "oak", ("30", "60.00"), "stock-losses 0.00");
}

#[test]
fn the_shelf_of_any_day_is_what_lay_there_then_in_money_and_paid_labour() {
    let it = fixture(
        "person Ana 30
        person Ada 20 paid
        build bench
        item disc consumable each
        lot a bought 10 of disc unit each paid 20 on 2026-02-01
        lot oak salvaged 20 paid 10 yield 1 on 2026-02-02
        stretch Ana reclaim min 60 for oak
        stretch Ada reclaim min 60 for oak
        sort oak good 20
        lot b bought 10 of disc unit each paid 40 on 2026-02-03
        draw 12 disc for bench on 2026-02-04 as used
        draw 5 oak for bench as timber
        throw 2 disc on 2026-02-05 as spoiled",
    );
    let shop = it.shop();
    let on = |day: &str| {
        let day = crate::measure::Day::parse(day).unwrap();
        crate::costing::Books::close(&shop, shop.zone.end_of(day)).on_the_shelf(&shop)
    };
    super::same(
        &it,
        &on("2026-02-01"),
        1,
        "
        shelf 20.00
          item_disc 20.00
    ",
    );
    // 10 paid and an hour of Ada's at 20; Ana's own hour is no money.
    super::same(
        &it,
        &on("2026-02-03"),
        1,
        "
        shelf 90.00
          lot_oak 30.00
          item_disc 60.00
    ",
    );
    super::same(
        &it,
        &on("2026-02-05"),
        2,
        "
        shelf 40.50
          lot_oak 22.50
            oak 10.00
            stretch 20.00
            timber -7.50
          item_disc 18.00
            a 20.00
            b 40.00
            used -36.00
            spoiled -6.00
    ",
    );
    assert_eq!(on("2026-01-31").money().expect("nothing").shown(2), "0.00");
}

#[test]
fn what_is_counted_is_held_against_the_books_at_once() {
    let it = fixture(&format!("{TWO_LOTS}\n lot oak salvaged 20 paid 10 yield 1\n sort oak good 8"));
    let differs = |name: &str, counted: &str| {
        let counted = crate::measure::Quantity::from_decimal(counted.parse().unwrap()).unwrap();
        it.books().count_differs(it.source(name), counted).expect("known").shown_trimmed()
    };
    assert_eq!([differs("disc", "18"), differs("disc", "20"), differs("oak", "9")], ["-2", "0", "1"]);
}
