//! Spent, used up, true cost and what is between them.

use super::{check, fixture};
use crate::costing::{CostKind, Flag, Gap};

#[test]
fn spent_less_the_shelf_plus_earlier_stock_is_used_up() {
    // Tin 30 (half drawn), hinges 8 (all), direct 12, glue from earlier stock 10: 50 - 15 + 10 = 45.
    check(
        "build bench
        lot tin bought 1 unit tin use consumable paid 30 for bench
        lot hinges bought 4 unit each use fitting paid 8 for bench
        lot glue bought 2 unit bottle use consumable paid 20
        draw 0.5 tin for bench
        draw 4 hinges for bench
        draw 1 glue for bench
        expense card 12 for bench",
        "bridge.used",
        2,
        "
        used 45.00
          spent 50.00
            money_tin 30.00
            money_hinges 8.00
            direct-money 12.00
        - not-drawn 15.00
            left_tin 15.00
            left_hinges 0.00
          other-stock 10.00
            lot_glue 10.00
        ",
    );
}

const TIMBER: &str = "
    person Ana 30
    build bench
    lot oak salvaged 40 paid 20 yield 1
    stretch Ana reclaim min 300 for oak
    sort oak good 40
    draw 10 oak for bench";

#[test]
fn the_hours_in_the_timber_are_in_the_true_cost_and_not_in_labour() {
    check(
        TIMBER,
        "true",
        2,
        "
        true 42.50
          salvaged 42.50
            lot_oak 42.50
    ",
    );
    check(
        TIMBER,
        "bridge",
        1,
        "
        bridge 42.50
          used 5.00
          rest_salvaged 37.50
    ",
    );
    check(
        TIMBER,
        "own-hours",
        2,
        "
        own-hours 1.25 h
          labour 0 h
          timber 1.25 h
            draw 1.25 h
    ",
    );
}

#[test]
fn kinds_go_by_use_then_by_origin() {
    check(
        "build bench
        lot oak salvaged 10 paid 10 yield 1
        lot walnut bought 10 paid 20
        lot ends offcut 10
        lot oil supplied 1 unit tin paid 58
        lot glue salvaged 1 unit bottle use consumable paid 1 yield 1
        draw 5 oak for bench
        draw 5 walnut for bench
        draw 5 ends for bench
        draw 0.5 oil for bench
        draw 1 glue for bench
        expense van 55 for bench",
        "true",
        1,
        "
        true 100.00
          salvaged 5.00
          bought 10.00
          offcut 0.00
          consumables 1.00
          direct 55.00
          supplied 29.00
        ",
    );
}

#[test]
fn wages_on_a_lot_are_money_of_that_lot() {
    // 105 for the lot and 4 h of helper at 20, bought for it; 90 of 110 drawn.
    let history = "
        person Ada 20 paid
        build bench
        lot oak salvaged 110 paid 105 yield 1 for bench
        stretch Ada reclaim min 240 for oak
        sort oak good 110
        draw 99 oak for bench";
    check(
        history,
        "bridge.used",
        1,
        "
        used 166.50
          spent 185.00
        - not-drawn 18.50
          other-stock 0.00
    ",
    );
    check(
        history,
        "bridge",
        1,
        "
        bridge 166.50
          used 166.50
    ",
    );
}

#[test]
fn draws_of_an_item_are_other_stock_whoever_it_was_bought_for() {
    check(
        "build bench
        item hinge fitting each
        lot box bought 10 of hinge unit each paid 20 for bench
        draw 4 hinge for bench",
        "bridge.used",
        1,
        "
        used 8.00
          spent 0.00
        - not-drawn 0.00
          other-stock 8.00
        ",
    );
}

#[test]
fn tax_that_can_be_got_back_is_apart() {
    let history = "
        build bench
        lot glue bought 1 unit bottle use consumable paid 17.20 tax-back 2.24 for bench
        lot board bought 1 unit each paid 10 tax 1.30 for bench
        draw 1 board for bench
        expense card 38 tax-back 4.94 for bench
        expense van 50 tax 5 for bench";
    check(
        history,
        "bridge.used.spent",
        1,
        "
        spent 121.50
          money_glue 17.20
          money_board 11.30
          direct-money 93.00
    ",
    );
    check(
        history,
        "tax-back",
        1,
        "
        tax-back 7.18
          glue 2.24
          expense 4.94
    ",
    );
}

#[test]
fn a_trip_is_shared_among_its_lots_and_kilometres_are_no_money_paid() {
    // 40 km at 0.55 over two lots: 11.00 each.
    let history = "
        setting km 0.55
        build bench
        lot oak salvaged 10 paid 4 yield 1 for bench
        lot elm salvaged 10 paid 0 yield 1
        trip 40 fee 3 for oak,elm
        draw 10 oak for bench";
    check(
        history,
        "true",
        2,
        "
        true 16.50
          salvaged 16.50
            lot_oak 16.50
    ",
    );
    check(
        history,
        "bridge",
        2,
        "
        bridge 16.50
          used 5.50
            spent 5.50
          - not-drawn 0.00
            other-stock 0.00
          rest_salvaged 11.00
            lot_oak 11.00
    ",
    );
}

#[test]
fn odd_shares_of_a_trip_lose_nothing() {
    check(
        "setting km 0.55
        build bench
        lot oak salvaged 10 paid 0 yield 1
        trip 10 fee 1 for oak:1,bench:2
        draw 10 oak for bench",
        "true",
        1,
        "
        true 6.50
          salvaged 2.17
          direct 4.33
        ",
    );
}

#[test]
fn what_no_entry_tells_of_yet_is_a_gap_and_not_nought() {
    let it = fixture(TIMBER);
    let cost = it.books().build_cost(it.id("bench"));
    assert!(cost.true_cost.gaps.is_empty(), "no hours of its own, so no overhead: {:?}", cost.true_cost.gaps);
    assert_eq!(cost.hour_earned.value, None);
    assert_eq!(cost.hour_earned.gaps, [Gap::IncomeNotKept]);

    let it = fixture(&format!("{TIMBER}\n stretch Ana sand min 60 for bench"));
    let cost = it.books().build_cost(it.id("bench"));
    let want = [CostKind::Tools, CostKind::Overhead].map(|kind| Gap::NotKept { kind });
    assert_eq!(cost.true_cost.gaps, want);
    assert_eq!(cost.true_cost.money().map(|it| it.shown(2)).as_deref(), Some("72.50"));
}

#[test]
fn what_is_dated_later_is_left_out_and_said() {
    let mut it = fixture("build bench\n expense card 38 for bench on 2026-02-01");
    let end = it.end();
    it.add("expense van 55 for bench on 2026-03-01 as van");
    let books = crate::costing::Books::close(&it.shop(), end);
    let cost = books.build_cost(it.id("bench"));
    assert_eq!(cost.true_cost.money().map(|it| it.shown(2)).as_deref(), Some("38.00"));
    assert_eq!(cost.true_cost.flags, [Flag::Later { entry: it.id("van") }]);
}

#[test]
fn a_build_without_entries_has_cost_nothing_so_far() {
    check("build bench", "true", 1, "true 0.00");
    check(
        "build bench",
        "bridge",
        2,
        "
        bridge 0.00
          used 0.00
            spent 0.00
          - not-drawn 0.00
            other-stock 0.00
    ",
    );
}
