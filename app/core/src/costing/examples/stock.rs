//! Moving average, lots by name, returns, offcuts, a shelf below zero.

use super::{check, check_lot, fixture};
use crate::{
    costing::{Flag, Gap, Leaves},
    journal::kinds::Source,
    measure::Quantity,
};

/// An item's shelf after a history: quantity, value.
#[track_caller]
fn shelf(history: &str, name: &str, quantity: &str, value: &str) {
    let it = fixture(history);
    let line = it.books().shelf_line(it.source(name)).expect("came");
    let got = (line.quantity.expect("known").shown_trimmed(), line.value.shown(2));
    assert_eq!(got, (quantity.to_owned(), value.to_owned()));
}

pub(super) const NEGATIVE: &str = "
    build bench
    item disc consumable each
    lot first bought 2 of disc unit each paid 10 on 2026-02-01
    draw 5 disc for bench on 2026-02-02 as used";

#[test]
fn a_shelf_below_zero_is_settled_by_the_next_receipt_at_its_own_cost() {
    // 2 at 5, draw 5: 25 provisionally. Receive 10 at 6: draw 28.00, shelf 7 at 6 = 42.00; 70 in all.
    check(
        NEGATIVE,
        "true",
        1,
        "
        true 25.00
          consumables 25.00
    ",
    );
    shelf(NEGATIVE, "disc", "-3", "-15.00");
    let it = fixture(NEGATIVE);
    let flags = it.books().build_cost(it.id("bench")).true_cost.flags;
    assert_eq!(flags, [Flag::NegativeShelf { item: it.id("disc"), draw: it.id("used") }]);

    let settled = format!("{NEGATIVE}\n lot second bought 10 of disc unit each paid 60 on 2026-02-03");
    check(
        &settled,
        "true",
        1,
        "
        true 28.00
          consumables 28.00
    ",
    );
    shelf(&settled, "disc", "7", "42.00");
    assert!(fixture(&settled).books().build_cost(it.id("bench")).true_cost.flags.is_empty());
}

#[test]
fn a_receipt_may_settle_in_part_only() {
    let history = format!("{NEGATIVE}\n lot second bought 2 of disc unit each paid 12 on 2026-02-03");
    // 2 at 5 + 2 at 6 + 1 at the last unit cost before it, 5.
    check(
        &history,
        "true.consumables",
        1,
        "
        consumables 27.00
          item_disc 27.00
    ",
    );
    shelf(&history, "disc", "-1", "-5.00");
}

#[test]
fn what_was_never_received_has_no_cost_and_says_so() {
    let history = "build bench\n item disc consumable each\n draw 5 disc for bench as used";
    check(
        history,
        "true",
        3,
        "
        true -
          consumables -
            item_disc -
              used -
    ",
    );
    let settled = format!("{history}\n lot first bought 10 of disc unit each paid 60 on 2026-02-03");
    check(
        &settled,
        "true",
        1,
        "
        true 30.00
          consumables 30.00
    ",
    );
}

#[test]
fn a_purchase_typed_two_days_late_changes_nothing() {
    let in_time = "
        build bench
        item disc consumable each
        lot a bought 10 of disc unit each paid 10 on 2026-02-01
        lot b bought 10 of disc unit each paid 30 on 2026-02-03
        draw 5 disc for bench on 2026-02-04";
    let late = "
        build bench
        item disc consumable each
        lot a bought 10 of disc unit each paid 10 on 2026-02-01
        draw 5 disc for bench on 2026-02-04
        lot b bought 10 of disc unit each paid 30 on 2026-02-03";
    for history in [in_time, late] {
        check(
            history,
            "true",
            1,
            "
            true 10.00
              consumables 10.00
        ",
        );
        shelf(history, "disc", "15", "30.00");
    }
}

#[test]
fn screws_by_moving_average_leave_the_shelf_that_the_sample_shop_has() {
    // Invented shop: 100 at 20.34, 32 drawn, 100 at 24.86, 48 drawn.
    let history = "
        build bench
        item screw fitting each
        lot s1 bought 100 of screw unit each paid 18 tax 2.34 on 2026-01-20
        draw 32 screw for bench on 2026-03-07 as d1
        lot s2 bought 100 of screw unit each paid 22 tax 2.86 on 2026-06-10
        draw 48 screw for bench on 2026-06-27 as d2";
    check(
        history,
        "true.bought.item_screw",
        1,
        "
        item_screw 17.56
          d1 6.51
          d2 11.05
    ",
    );
    shelf(history, "screw", "120", "27.64");
    let it = fixture(history);
    let unit = it.books().unit_cost(it.source("screw")).expect("known").rounded();
    assert_eq!(unit.shown(6), "0.230305");
}

#[test]
fn the_last_unit_takes_the_rest_exactly() {
    let history = "
        build bench
        item disc consumable each
        lot a bought 3 of disc unit each paid 10
        draw 1 disc for bench as d1
        draw 1 disc for bench as d2
        draw 1 disc for bench as d3";
    check(
        history,
        "true",
        1,
        "
        true 10.00
          consumables 10.00
    ",
    );
    shelf(history, "disc", "0", "0.00");
}

#[test]
fn a_return_comes_back_at_the_unit_cost_of_its_draw() {
    // 20 drawn at 3.50, 4 returned: the build bears 56.00, shelf 14.00.
    let history = "
        build bench
        item board timber each
        lot a bought 20 of board unit each paid 70
        draw 20 board for bench as d1
        return 4 of d1 on 2026-02-05 as back";
    check(
        history,
        "true.bought.item_board",
        1,
        "
        item_board 56.00
          d1 70.00
          back -14.00
    ",
    );
    shelf(history, "board", "4", "14.00");
}

#[test]
fn offcuts_of_a_named_lot_return_to_it_at_that_draws_unit_cost() {
    let history = "
        build bench
        lot oak bought 20 paid 70
        draw 20 oak for bench as d1
        return 4 of d1 on 2026-02-05 as back";
    check(
        history,
        "true.bought.lot_oak",
        1,
        "
        lot_oak 56.00
          d1 70.00
          back -14.00
    ",
    );
    shelf(history, "oak", "4", "14.00");
}

#[test]
fn a_return_from_another_build_still_lowers_the_build_that_drew() {
    let history = "
        build bench
        build other
        lot oak bought 20 paid 70
        draw 20 oak for bench as d1
        return 20 of d1 as back";
    check(
        history,
        "true.bought.lot_oak",
        1,
        "
        lot_oak 0.00
          d1 70.00
          back -70.00
    ",
    );
}

#[test]
fn more_cannot_come_back_than_was_drawn() {
    let history = "
        build bench
        lot oak bought 20 paid 70
        draw 10 oak for bench as d1
        return 8 of d1 as b1
        return 8 of d1 as b2";
    check(
        history,
        "true.bought.lot_oak",
        1,
        "
        lot_oak 0.00
          d1 35.00
          b1 -28.00
          b2 -7.00
    ",
    );
    let it = fixture(history);
    assert_eq!(
        it.books().build_cost(it.id("bench")).true_cost.flags,
        [Flag::ReturnsTooMuch { entry: it.id("b2") }]
    );
}

#[test]
fn a_return_dated_before_its_draw_counts_right_after_it() {
    let history = "
        build bench
        item disc consumable each
        lot a bought 10 of disc unit each paid 10 on 2026-02-01
        draw 4 disc for bench on 2026-02-05 as d1
        return 1 of d1 on 2026-02-03 as back";
    check(
        history,
        "true.consumables.item_disc",
        1,
        "
        item_disc 3.00
          back -1.00
          d1 4.00
    ",
    );
    shelf(history, "disc", "7", "7.00");
}

#[test]
fn a_return_from_a_shelf_below_zero_shortens_the_wait() {
    let back = format!("{NEGATIVE}\n return 4 of used on 2026-02-03 as back");
    check(
        &back,
        "true",
        1,
        "
        true 5.00
          consumables 5.00
    ",
    );
    shelf(&back, "disc", "1", "5.00");
}

#[test]
fn an_overdrawn_lot_held_more_and_its_unit_cost_falls() {
    let history = "
        build bench
        lot oak bought 10 paid 30
        draw 6 oak for bench as d1
        draw 6 oak for bench as d2";
    check(
        history,
        "true.bought.lot_oak",
        1,
        "
        lot_oak 30.00
          d1 15.00
          d2 15.00
    ",
    );
    let it = fixture(history);
    assert_eq!(
        it.books().build_cost(it.id("bench")).true_cost.flags,
        [Flag::Overdrawn { lot: it.id("oak") }]
    );
}

#[test]
fn a_tin_found_empty_was_all_used_by_those_who_drew() {
    // 18.92 for a bottle; half and a quarter drawn, then it is empty: 2 to 1.
    let history = "
        build bench
        build other
        lot glue bought 1 unit bottle use consumable paid 18.92
        draw 0.5 glue for bench
        draw 0.25 glue for other
        empty glue";
    check(
        history,
        "true",
        1,
        "
        true 12.61
          consumables 12.61
    ",
    );
    shelf(history, "glue", "0", "0.00");
}

#[test]
fn an_item_found_empty_is_a_difference_of_the_shop() {
    let history = "
        build bench
        item disc consumable each
        lot a bought 10 of disc unit each paid 20
        draw 4 disc for bench
        empty disc
        lot b bought 10 of disc unit each paid 30 on 2026-02-05
        draw 1 disc for bench";
    check(
        history,
        "true",
        1,
        "
        true 11.00
          consumables 11.00
    ",
    );
    shelf(history, "disc", "9", "27.00");
    let it = fixture(history);
    let losses = it.books().losses();
    assert_eq!(losses.len(), 1);
    assert_eq!((losses[0].0, losses[0].1.total().shown(2)), (it.source("disc"), "12.00".to_owned()));
}

#[test]
fn supplied_oil_is_value_and_no_money() {
    let history = "
        build bench
        lot oil supplied 1 unit tin paid 58
        draw 0.5 oil for bench";
    check(
        history,
        "bridge",
        1,
        "
        bridge 29.00
          used 0.00
          rest_supplied 29.00
    ",
    );
}

#[test]
fn a_part_of_a_tin_may_be_typed_by_what_it_holds() {
    let history = "
        build bench
        item oil consumable tin holds 750 in ml
        lot a bought 2 of oil unit tin paid 60
        draw 250 oil unit ml for bench";
    // 0.333333 of a tin at 30.
    check(
        history,
        "true",
        1,
        "
        true 10.00
          consumables 10.00
    ",
    );
}

#[test]
fn stock_drawn_for_a_lot_is_borne_by_that_lot() {
    // Ten discs at 2.00 spent on reclaiming oak, all of it drawn by the bench.
    let history = "
        build bench
        item disc consumable each
        lot box bought 50 of disc unit each paid 100
        lot oak salvaged 10 paid 5 yield 1
        draw 10 disc for oak as spent
        sort oak good 10
        draw 10 oak for bench";
    check(
        history,
        "true",
        1,
        "
        true 25.00
          salvaged 25.00
    ",
    );
    check_lot(
        history,
        "cost_oak",
        2,
        "
        cost_oak 25.00
          fetched 5.00
            oak 5.00
          reclaimed 20.00
            spent 20.00
    ",
    );
}

#[test]
fn stock_that_goes_round_in_a_circle_stops_somewhere_and_is_said() {
    let history = "
        build bench
        lot oak bought 10 paid 10
        lot elm bought 10 paid 10
        draw 10 oak for elm as there
        draw 10 elm for oak as back";
    let it = fixture(history);
    let circles = it.books().shelf_line(it.source("oak")).expect("there");
    assert_eq!(circles.quantity, Some(Quantity::ZERO));
    let elm = it.books().lot(it.id("elm")).expect("there").cost.money().expect("known");
    let oak = it.books().lot(it.id("oak")).expect("there").cost.money().expect("known");
    assert_eq!((oak.shown(2), elm.shown(2)), ("10.00".into(), "20.00".into()));
}

#[test]
fn a_preview_says_what_a_draw_now_would_cost() {
    let it = fixture(NEGATIVE.split("draw").next().expect("before the draw"));
    let books = it.books();
    let of = |quantity: &str| {
        let quantity = Quantity::from_decimal(quantity.parse().unwrap()).unwrap();
        books.preview(it.source("disc"), quantity).expect("known").shown(2)
    };
    assert_eq!([of("1"), of("2"), of("5")], ["5.00", "10.00", "25.00"]);
    assert_eq!(
        books.preview(Source::Lot(it.id("first")), Quantity::ONE),
        books.preview(it.source("disc"), Quantity::ONE)
    );
}

#[test]
fn a_unit_has_no_known_cost_while_a_part_of_it_is_not_known() {
    let known = |history: &str| {
        let it = fixture(history);
        it.books().known_unit_cost(it.source("oak")).map(|cost| cost.rounded().shown(2))
    };
    let lot = "lot oak salvaged 100 paid 0 yield 0.7\n";
    assert_eq!(known(lot), Ok("0.00".into()));
    assert_eq!(known(&format!("{lot} trip 84 for oak")), Err(Some(Gap::NoKmRate)));
    assert_eq!(known(&format!("setting km 0.5\n {lot} trip 84 for oak")), Ok("0.60".into()));
    let it = fixture("lot oak salvaged 100 paid 0");
    let lacks = it.books().known_unit_cost(it.source("oak")).err();
    assert_eq!(lacks, Some(Some(Gap::NoYield { lot: it.id("oak") })));
}

#[test]
fn an_item_under_its_mark_is_low_even_when_nothing_is_left() {
    let history = "
        build bench
        item disc consumable each low 5
        lot a bought 10 of disc unit each paid 10
        draw 6 disc for bench";
    let it = fixture(history);
    let low =
        |it: &crate::fixture::Fixture| it.books().shelf().iter().map(|line| line.low).collect::<Vec<_>>();
    assert_eq!(low(&it), [true]);
    assert_eq!(low(&fixture(&format!("{history}\n draw 4 disc for bench"))), [true]);
    assert_eq!(low(&fixture(&history.replace("draw 6", "draw 5"))), [false]);
}

/// `11.89 + 3.6`: on the shelf and to come.
fn left(it: Leaves) -> String {
    match it {
        Leaves::Left { there, to_come } => format!("{} + {}", there.shown_trimmed(), to_come.shown_trimmed()),
        Leaves::Short => "short".into(),
    }
}

#[test]
fn what_is_only_expected_is_not_on_the_shelf_after_a_draw() {
    let it = fixture("build bench\nlot oak salvaged 34 paid 20 yield 0.3\nsort oak good 22 culled 0");
    let books = it.books();
    let leaves = |quantity: &str| {
        let quantity = Quantity::from_decimal(quantity.parse().unwrap()).unwrap();
        left(books.leaves(it.source("oak"), quantity).expect("known"))
    };
    // Twelve are unsorted, of which 3.6 are expected: 22 − 10.11 lie there. A draw of more takes from what is to come.
    assert_eq!(
        [leaves("10.11"), leaves("22"), leaves("24"), leaves("30")],
        ["11.89 + 3.6", "0 + 3.6", "0 + 1.6", "short"]
    );
}

#[test]
fn what_is_used_up_is_gone_and_what_is_not_known_is_not() {
    let history = "build bench\nitem oil consumable tin\nlot can bought 1 of oil unit tin paid 10\ndraw 0.5 oil for bench";
    let it = fixture(history);
    assert!(!it.books().is_gone(it.source("oil")));
    let it = fixture(&format!("{history}\ndraw 0.5 oil for bench"));
    assert!(it.books().is_gone(it.source("oil")));
    let it = fixture("build bench\nlot oak salvaged 40 paid 20");
    assert!(!it.books().is_gone(it.source("oak")));
}

#[test]
fn a_draw_that_is_only_looked_at_says_what_it_leaves() {
    let it = fixture(NEGATIVE.split("draw").next().expect("before the draw"));
    let books = it.books();
    let leaves = |quantity: &str| {
        let quantity = Quantity::from_decimal(quantity.parse().unwrap()).unwrap();
        left(books.leaves(it.source("disc"), quantity).expect("known"))
    };
    assert_eq!([leaves("0.5"), leaves("2"), leaves("5")], ["1.5 + 0", "0 + 0", "short"]);
    let drawn = fixture(NEGATIVE);
    let draw = drawn.shop().draws.first().expect("a draw").entry();
    assert_eq!(drawn.books().draw_cost(draw).expect("known").shown(2), "25.00");
}

#[test]
fn what_a_sorting_would_come_to_is_that_of_the_same_sorting_kept() {
    use crate::journal::{Body, Id, On, kinds::Sort};
    let history = "
        lot oak salvaged 100 paid 20 yield 0.5
        sort oak good 10 culled 10";
    let it = fixture(history);
    let (shop, oak) = (it.shop(), it.id("oak"));
    let dec = |text: &str| crate::measure::Dec::parse(text).unwrap();
    let sort = Sort {
        on: On::Day(shop.zone.day(it.end())),
        lot: oak,
        good: dec("30"),
        culled: dec("10"),
        link: None,
    };
    let with = shop.with(&[(Id::of([9; 16]), Body::Sort(sort))]);
    let board = |shop: &crate::journal::Shop| {
        let book = crate::costing::Books::close(shop, it.end()).lot(oak).expect("a lot");
        (book.board.good.shown_trimmed(), book.board.usable.expect("known").shown_trimmed())
    };
    assert_eq!(board(&with), ("40".into(), "60".into()));
    assert_eq!(board(&shop), ("10".into(), "50".into()));
}
