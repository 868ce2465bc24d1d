//! Two pools, yields, what was saved and what an hour of reclaiming paid.

use super::{check, check_lot, fixture, oak};
use crate::costing::{Flag, Gap, Value};

/// 120 rough, fetched 36.00; 60 sorted, 48 good after 6 h at 25; expected yield 0.8.
const SORTED_HALF: &str = "
    person Ana 25
    build bench
    lot oak salvaged 120 paid 36 yield 0.8
    stretch Ana reclaim min 360 for oak
    sort oak good 48 culled 12
    draw 20 oak for bench as d1";

/// Later 7 h, 45 good, 15 culled.
const SORTED_ALL: &str = "
    stretch Ana reclaim min 420 for oak on 2026-03-01
    sort oak good 45 culled 15";

#[track_caller]
fn unit(history: &str, usable: &str, want: &str) {
    let lot = oak(&fixture(history));
    assert_eq!(lot.board.usable.expect("known").shown_trimmed(), usable);
    assert_eq!(lot.unit_cost.expect("known").rounded().shown(4), want);
}

#[test]
fn fetched_goes_over_what_is_expected_and_reclaimed_over_what_is_sorted() {
    // U 96; 0.375 + 3.125 = 3.50; 20 = 70.00.
    unit(SORTED_HALF, "96", "3.5000");
    check(
        SORTED_HALF,
        "true.salvaged.lot_oak",
        1,
        "
        lot_oak 70.00
          d1 70.00
    ",
    );
}

#[test]
fn later_sorting_moves_the_cost_of_what_was_drawn() {
    // U 93; 3.8817; the draw of 20 = 77.63, left 73 = 283.37; 361.00 in all.
    let history = format!("{SORTED_HALF}{SORTED_ALL}");
    unit(&history, "93", "3.8817");
    check(
        &history,
        "true",
        1,
        "
        true 77.63
          salvaged 77.63
    ",
    );
    let it = fixture(&history);
    let line = it.books().shelf_line(it.source("oak")).expect("there");
    assert_eq!(
        (line.quantity.expect("known").shown_trimmed(), line.value.shown(2)),
        ("73".into(), "283.37".into())
    );
    assert_eq!(oak(&it).cost.money().expect("known").shown(2), "361.00");
}

#[test]
fn a_draw_opens_down_to_the_lines_of_its_lot() {
    let it = fixture(SORTED_HALF);
    let draw = it.books().draw(it.id("d1")).expect("drawn by name");
    super::same(
        &it,
        &draw,
        1,
        "
        draw_d1 70.00
          oak 7.50
          stretch 62.50
    ",
    );
}

#[test]
fn haul_hours_are_fetched_and_other_hours_reclaimed() {
    check_lot(
        "person Ana 20
        setting km 0.5
        lot oak salvaged 100 paid 10 fee 5 yield 0.5
        trip 20 fee 2 for oak as drive
        expense rope 3 for oak as rope
        stretch Ana buy-and-haul min 60 for oak as hauled
        stretch Ana reclaim min 90 for oak as nails
        stretch Ana mill min 30 for oak as milled",
        "cost_oak",
        2,
        "
        cost_oak 90.00
          fetched 50.00
            oak 15.00
            drive 12.00
            rope 3.00
            hauled 20.00
          reclaimed 40.00
            nails 30.00
            milled 10.00
        ",
    );
}

#[test]
fn culls_found_late_lower_what_is_usable() {
    let history = format!("{SORTED_HALF}{SORTED_ALL}\n sort oak good 0 culled 10");
    // 361.00 ÷ 83.
    unit(&history, "83", "4.3494");
    // Sound boards beyond what was gathered mean that more was there.
    let more = format!("{SORTED_HALF}{SORTED_ALL}\n sort oak good 7 culled 3");
    unit(&more, "100", "3.6100");
}

#[test]
fn a_flood_is_a_loss_and_leaves_the_unit_cost_alone() {
    // U 93 at 3.8817: 10 lost = 38.82, the draw of 20 still 77.63; 361.00 in all.
    let history = format!("{SORTED_HALF}{SORTED_ALL}\n cull oak 10 unexpected");
    unit(&history, "93", "3.8817");
    let it = fixture(&history);
    let (books, lot) = (it.books(), oak(&it));
    let losses: Vec<String> = books.losses().iter().map(|(_, parts)| parts.total().shown(2)).collect();
    assert_eq!(losses, ["38.82"]);
    assert_eq!(
        (lot.board.on_shelf.shown_trimmed(), lot.shelf.total().shown(2)),
        ("63".into(), "244.55".into())
    );
    assert_eq!((lot.board.good.shown_trimmed(), lot.board.lost.shown_trimmed()), ("83".into(), "10".into()));
    assert_eq!(books.draw_cost(it.id("d1")).map(|cost| cost.shown(2)), Some("77.63".into()));
    // 0 culls of a sorted lot by a cull of their own lower what is usable: 361.00 ÷ 83.
    unit(&format!("{SORTED_HALF}{SORTED_ALL}\n cull oak 10"), "83", "4.3494");
}

#[test]
fn a_flood_before_the_sorting_takes_its_share_of_what_was_fetched() {
    // 60 unsorted at 0.8: 30 of them lost are 24 of 96 in the fetched 36.00, and none of what was reclaimed.
    let history = format!("{SORTED_HALF}\n cull oak 30 at gathered unexpected");
    unit(&history, "96", "3.5000");
    let it = fixture(&history);
    let losses: Vec<String> = it.books().losses().iter().map(|(_, parts)| parts.total().shown(2)).collect();
    assert_eq!(losses, ["9.00"]);
    let board = oak(&it).board;
    assert_eq!((board.unsorted.shown_trimmed(), board.to_come.shown_trimmed()), ("30".into(), "24".into()));
}

#[track_caller]
fn chain(history: &str, want: &[&str]) {
    let lot = oak(&fixture(history));
    let told: Vec<String> = lot
        .chain
        .links
        .iter()
        .map(|link| {
            let [quantity, lost, mishap, waits] =
                [link.quantity, link.lost, link.mishap, link.waits].map(|it| it.shown_trimmed());
            let cost = link.cost.money().map(|it| it.shown(2)).unwrap_or_default();
            let code = link.at.code();
            format!(
                "{code} {quantity}: lost {lost}+{mishap}, waits {waits}; {} h, {cost}",
                link.hours.in_hours().shown_trimmed()
            )
        })
        .collect();
    assert_eq!(told, want);
    assert_eq!(lot.chain.cost.money(), lot.cost.money());
}

#[test]
fn the_chain_loses_at_each_link_and_adds_up() {
    chain(
        "
        person Ana 25
        setting km 0.5
        build bench
        item discs consumable each
        lot packet bought 10 of discs unit each paid 20
        lot oak salvaged 120 paid 30 yield 0.8
        trip 20 for oak
        stretch Ana buy-and-haul min 60 for oak
        stretch Ana reclaim min 360 for oak
        cull oak 6 at gathered
        sort oak good 84 culled 20
        stretch Ana sand min 30 for oak
        draw 3 discs for oak
        stretch Ana mill min 120 for oak
        cull oak 9 at milled
        cull oak 5 unexpected
        draw 40 oak for bench",
        &[
            "gathered 120: lost 0+0, waits 0; 1 h, 65.00",
            "nails-out 114: lost 6+0, waits 0; 6 h, 150.00",
            "sorted 84: lost 20+0, waits 10; 0.5 h, 18.50",
            "milled 75: lost 9+0, waits 0; 2 h, 50.00",
            "piece 40: lost 0+5, waits 30; 0 h, 0.00",
        ],
    );
}

#[test]
fn what_is_drawn_off_the_heap_never_waited_to_be_sorted() {
    let history = "
        person Ana 25
        build bench
        lot oak salvaged 30 paid 0 yield 0.5
        sort oak good 10 culled 2";
    let drew = |quantity: &str| format!("{history}\n draw {quantity} oak for bench");
    let sorted = |text: &str| {
        let lot = oak(&fixture(&drew(text)));
        let of = |at: usize| {
            (lot.chain.links[at].quantity.shown_trimmed(), lot.chain.links[at].waits.shown_trimmed())
        };
        (of(0).0, of(2), of(4), lot.chain.more.shown_trimmed())
    };
    let text = |a: &str, b: &str| (a.to_owned(), b.to_owned());
    assert_eq!(sorted("20"), ("30".into(), text("20", "8"), text("20", "0"), "0".into()));
    assert_eq!(sorted("33"), ("35".into(), text("33", "0"), text("33", "0"), "5".into()));
}

#[test]
fn a_lot_found_empty_was_what_was_drawn() {
    let history = format!("{SORTED_HALF}\n empty oak");
    unit(&history, "20", "9.3000");
    check(
        &history,
        "true",
        1,
        "
        true 186.00
          salvaged 186.00
    ",
    );
}

#[test]
fn reclaiming_is_never_spread_over_less_than_was_drawn() {
    // 20 drawn unsorted: 6 h at 25 over 20.
    let history = SORTED_HALF.replace("sort oak good 48 culled 12", "sort oak good 10 culled 2");
    // U = 10 + 108 × 0.8 = 96.4.
    unit(&history, "96.4", "7.8734");
}

#[test]
fn no_yield_typed_takes_the_median_of_what_came_from_there() {
    let history = "
        lot a salvaged 10 paid 0 from church
        lot b salvaged 10 paid 0 from church
        lot c salvaged 10 paid 0 from barn
        lot oak salvaged 100 paid 36 from church
        sort a good 6 culled 4
        sort b good 8 culled 2
        sort c good 1 culled 9";
    let it = fixture(history);
    let lot = oak(&it);
    assert_eq!(lot.board.usable.expect("known").shown_trimmed(), "70");
    assert_eq!(lot.cost.flags, [Flag::YieldFromHistory { lot: it.id("oak"), lots: 2 }]);
}

#[test]
fn no_yield_and_no_history_is_a_gap_until_something_is_sorted() {
    let history = "
        build bench
        lot oak salvaged 100 paid 36
        draw 10 oak for bench as d1";
    check(
        history,
        "true",
        3,
        "
        true -
          salvaged -
            lot_oak -
              d1 -
    ",
    );
    let it = fixture(history);
    assert_eq!(it.books().build_cost(it.id("bench")).true_cost.gaps, [Gap::NoYield { lot: it.id("oak") }]);
    let sorted = format!("{history}\n sort oak good 20 culled 5");
    let it = fixture(&sorted);
    let lot = oak(&it);
    // 20 + 75 × 0.8 = 80.
    assert_eq!(lot.board.usable.expect("known").shown_trimmed(), "80");
    assert_eq!(lot.cost.flags, [Flag::YieldFromItself { lot: it.id("oak") }]);
    check(
        &sorted,
        "true",
        1,
        "
        true 4.50
          salvaged 4.50
    ",
    );
}

#[test]
fn a_lot_all_culled_is_lost_and_borne_by_no_build() {
    let it = fixture("lot oak salvaged 10 paid 30 yield 0.5\n sort oak good 0 culled 10");
    let books = it.books();
    assert_eq!(books.losses().iter().map(|(_, lost)| lost.total().shown(2)).collect::<Vec<_>>(), ["30.00"]);
    assert!(books.shelf().is_empty());
}

#[test]
fn new_stock_would_have_been_bought_with_its_waste_and_its_tax() {
    // 20 × 7 ÷ 0.9 × 1.13 = 175.78.
    check_lot(
        "build bench
        lot oak salvaged 100 paid 0 yield 1 new 7 waste 0.1 new-tax 0.13
        draw 20 oak for bench",
        "saved-free.bought-instead",
        1,
        "
        bought-instead 175.78
          oak 175.78
        ",
    );
}

#[test]
fn new_stock_takes_its_share_of_a_delivery() {
    check_lot(
        "build bench
        lot oak salvaged 100 paid 0 yield 0.8 new 7 delivery 60
        draw 20 oak for bench",
        "saved-free.bought-instead",
        0,
        "bought-instead 155.00",
    );
}

/// 12 boards of 3/4 × 5 1/2 × 48 in, sold as 1 × 6 × 4 ft: 24 board feet nominal, 16.5 of wood; at 6.00.
#[track_caller]
fn boards(lot: &str, sold: &str, want: &str) {
    let history = format!(
        "build bench
        lot oak salvaged {lot} paid 0 yield 1 new 6 sold {sold}
        draw 16.5 oak for bench"
    );
    let history = if lot.starts_with("24") { history.replace("draw 16.5", "draw 24") } else { history };
    check_lot(&history, "saved-free.bought-instead", 0, want);
}

#[test]
fn both_measures_are_kept_and_new_stock_is_compared_in_its_own() {
    boards("16.5 measure actual other 24", "nominal", "bought-instead 144.00");
    boards("16.5 measure actual other 24", "actual", "bought-instead 99.00");
    boards("24 measure nominal other 16.5", "actual", "bought-instead 99.00");
    boards("24 measure nominal", "nominal", "bought-instead 144.00");
    // Known in one measure only: no guess.
    boards("16.5 measure actual", "nominal", "bought-instead -");
}

/// The pew oak of the invented shop, without its overhead.
const PEWS: &str = "
    setting km 0.55
    person Wren 26
    person Tobin 22
    build bench
    lot oak salvaged 140 paid 120 yield 0.8 for bench new 9.80 waste 0.15 new-tax 0.13 on 2026-01-10
    trip 64 for oak
    stretch Wren buy-and-haul min 120 for oak
    stretch Wren reclaim min 600 for oak
    stretch Tobin reclaim min 270 for oak
    sort oak good 112 culled 28 on 2026-01-24
    draw 78 oak for bench on 2026-02-07 as d1
    return 9 of d1 on 2026-03-08";

#[test]
fn the_three_ways_of_the_pew_oak() {
    check_lot(
        PEWS,
        "saved-at-rate",
        1,
        "
        saved-at-rate 550.13
          bought-instead 898.95
        - money-and-vehicle 95.61
        - own-time 253.21
    ",
    );
    check_lot(
        PEWS,
        "saved-free",
        2,
        "
        saved-free 803.33
          bought-instead 898.95
            oak 898.95
        - money-and-vehicle 95.61
            oak 73.93
            trip 21.69
    ",
    );
    check_lot(PEWS, "paid-an-hour", 0, "paid-an-hour 79.03 an hour");
}

#[test]
fn dearer_than_new_is_said_plainly() {
    check_lot(
        "person Ana 28
        build bench
        lot oak salvaged 88 paid 71 new 6.50 waste 0.1 new-tax 0.13
        stretch Ana reclaim min 840 for oak
        sort oak good 52.8 culled 35.2
        draw 52.8 oak for bench",
        "saved-at-rate",
        1,
        "
        saved-at-rate -32.09
          bought-instead 430.91
        - money-and-vehicle 71.00
        - own-time 392.00
        ",
    );
}

#[test]
fn without_hours_an_hour_of_reclaiming_paid_nothing_that_can_be_said() {
    let history = "
        build bench
        lot oak salvaged 10 paid 5 yield 1 new 3
        draw 10 oak for bench";
    let it = fixture(history);
    let saving = oak(&it).saving;
    assert_eq!(saving.paid_an_hour.value, None);
    assert_eq!(saving.paid_an_hour.gaps, [Gap::NoHours { lot: it.id("oak") }]);
    assert_eq!(saving.at_rate.money().map(|it| it.shown(2)).as_deref(), Some("25.00"));
}

#[test]
fn paid_helpers_are_cash_and_not_own_hours() {
    let history = "
        person Ada 20 paid
        person Ana 25
        build bench
        lot oak salvaged 10 paid 5 yield 1 new 10
        stretch Ada reclaim min 120 for oak
        stretch Ana reclaim min 60 for oak
        sort oak good 10
        draw 10 oak for bench";
    check_lot(
        history,
        "saved-free",
        1,
        "
        saved-free 55.00
          bought-instead 100.00
        - money-and-vehicle 45.00
    ",
    );
    check_lot(history, "paid-an-hour", 0, "paid-an-hour 55.00 an hour");
}

#[test]
fn nothing_drawn_saves_nothing_yet() {
    let it = fixture("lot oak salvaged 10 paid 5 yield 1 new 10");
    let saving = oak(&it).saving;
    assert_eq!(saving.time_free.value, None);
    assert!(saving.time_free.gaps.contains(&Gap::NothingDrawn { lot: it.id("oak") }));
}

#[test]
fn no_price_of_new_stock_is_a_gap() {
    let it = fixture("build bench\n lot oak salvaged 10 paid 5 yield 1\n draw 1 oak for bench");
    let saving = oak(&it).saving;
    assert_eq!(saving.time_free.value, None);
    assert_eq!(saving.time_free.gaps, [Gap::NoNewPrice { lot: it.id("oak") }]);
}

#[test]
fn a_lot_written_off_counts_against_the_saving() {
    let it = fixture(
        "person Ana 10
        lot oak salvaged 10 paid 30 yield 0.5 new 10
        stretch Ana reclaim min 60 for oak
        sort oak good 0 culled 10",
    );
    let saving = oak(&it).saving;
    let shown =
        [&saving.time_free, &saving.at_rate, &saving.paid_an_hour].map(|it| it.money().map(|it| it.shown(2)));
    assert_eq!(shown.map(Option::unwrap), ["-30.00", "-40.00", "-30.00"]);
    assert!(matches!(saving.paid_an_hour.value, Some(Value::PerHour(_))));
}

/// Found by the law that a true cost is the sum of its rows: the draw stood without a value beside its return.
#[test]
fn a_draw_that_came_back_whole_still_shows_what_it_took() {
    check(
        "person Ana 10
        build bench
        lot oak salvaged 10 paid 5
        draw 2 oak for bench as d1
        return 2 of d1 as back
        draw 4 oak for bench as d2
        stretch Ana reclaim min 60 for oak",
        "true.salvaged.lot_oak",
        1,
        "
        lot_oak 10.00
          d1 5.00
          d2 10.00
          back -5.00
        ",
    );
}
