//! First-in first-out beside the moving average, and the day on which one takes the place of the other.

use super::check;
use crate::{
    costing::{Books, Formula, formula_effect},
    fixture::{Fixture, fixture},
    measure::{Day, Quantity},
};

const FIRST_IN: &str = "setting formula first_in_first_out\n";

const TWO_LOTS: &str = "
    build bench
    build trays
    item disc consumable each
    lot a bought 10 of disc unit each paid 20 on 2026-02-01
    lot b bought 10 of disc unit each paid 40 on 2026-02-03
    draw 12 disc for bench on 2026-02-04 as used";

/// Left of the discs, and what that cost.
#[track_caller]
fn left(it: &Fixture, quantity: &str, value: &str) {
    let line = it.books().shelf_line(it.source("disc")).expect("it came");
    assert_eq!(
        (line.quantity.expect("known").shown_trimmed(), line.value.shown(2)),
        (quantity.into(), value.into())
    );
}

#[track_caller]
fn used_up(it: &Fixture, build: &str, want: &str) {
    assert_eq!(it.books().build_cost(it.id(build)).parts.total().shown(2), want, "{build}");
}

#[test]
fn what_came_first_goes_first() {
    // 10 at 2 and 2 at 4: 28, and 8 at 4 are left. By the average 12 at 3: 36.
    let it = fixture(&format!("{FIRST_IN}{TWO_LOTS}"));
    used_up(&it, "bench", "28.00");
    left(&it, "8", "32.00");
    let it = fixture(TWO_LOTS);
    used_up(&it, "bench", "36.00");
    left(&it, "8", "24.00");
}

#[test]
fn a_draw_now_is_previewed_from_the_front_of_the_line() {
    let it = fixture(&format!("{FIRST_IN}{}", TWO_LOTS.replace("draw 12", "draw 8")));
    let preview = |quantity: &str| {
        let quantity = Quantity::from_decimal(quantity.parse().unwrap()).unwrap();
        it.books().preview(it.source("disc"), quantity).expect("known").shown(2)
    };
    // 2 at 2 are left, then 10 at 4, then what came last once more.
    assert_eq!([preview("2"), preview("5"), preview("13")], ["4.00", "16.00", "48.00"]);
    let unit = it.books().unit_cost(it.source("disc")).expect("known");
    assert_eq!(unit.rounded().shown(2), "2.00");
}

#[test]
fn a_shelf_below_nought_is_settled_by_the_next_receipt_under_both_formulas() {
    // 2 at 5, 5 drawn, 10 received at 6: the draw is 28.00, 7 at 6 are left, 70 in all.
    let history = "
        build bench
        item disc consumable each
        lot a bought 2 of disc unit each paid 10 on 2026-02-01
        draw 5 disc for bench on 2026-02-02 as used";
    for formula in ["", FIRST_IN] {
        let it = fixture(&format!("{formula}{history}"));
        used_up(&it, "bench", "25.00");
        left(&it, "-3", "-15.00");
        assert_eq!(it.books().shelf_line(it.source("disc")).expect("came").flags.len(), 1);
        let it =
            fixture(&format!("{formula}{history}\n lot b bought 10 of disc unit each paid 60 on 2026-02-03"));
        used_up(&it, "bench", "28.00");
        left(&it, "7", "42.00");
        assert_eq!(it.books().shelf_line(it.source("disc")).expect("came").flags, []);
    }
}

#[test]
fn what_comes_back_is_first_in_line_at_the_unit_cost_of_its_draw() {
    // 12 drawn for 28: 3 come back at 7 together and go out again before the 8 at 4.
    let back = format!("{FIRST_IN}{TWO_LOTS}\n return 3 of used on 2026-02-05 as back");
    let it = fixture(&back);
    used_up(&it, "bench", "21.00");
    left(&it, "11", "39.00");
    let it = fixture(&format!("{back}\n draw 4 disc for trays on 2026-02-06"));
    used_up(&it, "trays", "11.00");
    left(&it, "7", "28.00");
}

#[test]
fn what_comes_back_after_closing_costs_nothing_and_is_first_in_line() {
    let it = fixture(&format!(
        "{FIRST_IN}{TWO_LOTS}
        close bench on 2026-02-05
        return 3 of used on 2026-02-06
        draw 4 disc for trays on 2026-02-07"
    ));
    used_up(&it, "bench", "28.00");
    used_up(&it, "trays", "4.00");
    left(&it, "7", "28.00");
}

#[test]
fn a_change_of_formula_takes_what_is_there_at_what_it_stands_at() {
    // On the 3rd 6 are there at 3 each. From then first in first out: these 6 go before the 10 at 5.
    let history = "
        build bench
        build trays
        item disc consumable each
        lot a bought 5 of disc unit each paid 10 on 2026-02-01
        lot b bought 5 of disc unit each paid 20 on 2026-02-01
        draw 4 disc for bench on 2026-02-02
        lot c bought 10 of disc unit each paid 50 on 2026-02-03
        draw 8 disc for trays on 2026-02-04";
    let change = |day: &str| format!("setting formula first_in_first_out from {day}\n{history}");
    let it = fixture(&change("2026-02-03"));
    used_up(&it, "bench", "12.00");
    used_up(&it, "trays", "28.00");
    left(&it, "8", "40.00");
    // A day later all 16 at 68 are one: 8 of them are 34.
    let it = fixture(&change("2026-02-04"));
    used_up(&it, "trays", "34.00");
    // And back to the average on the 4th: what is left of the layers is one again.
    let it = fixture(&format!("{}\nsetting formula moving_average from 2026-02-04", change("2026-02-01")));
    // First in: 4 at 2 for the bench; 1 at 2, 5 at 4, 10 at 5 are 72; half of it is 36.
    used_up(&it, "bench", "8.00");
    used_up(&it, "trays", "36.00");
}

#[test]
fn the_shelf_is_worth_the_same_on_both_sides_of_a_change() {
    let it = fixture(TWO_LOTS);
    let value = |it: &Fixture| it.books().shelf_value();
    let before = value(&it);
    let mut it = it;
    it.add("setting formula first_in_first_out from 2026-02-05 on 2026-02-05");
    assert_eq!(value(&it), before);
    it.add("setting formula moving_average from 2026-02-06 on 2026-02-06");
    assert_eq!(value(&it), before);
}

#[test]
fn a_build_that_was_closed_keeps_what_it_cost_when_the_formula_changes_from_the_beginning() {
    let it = fixture(&format!("{TWO_LOTS}\n close bench on 2026-02-05\n {FIRST_IN}"));
    used_up(&it, "bench", "36.00");
    // 60 came, 36 went: the 8 that are left bear the rest.
    left(&it, "8", "24.00");
}

#[test]
fn late_freight_on_stock_of_a_closed_build_is_borne_by_the_next_in_line() {
    let it = fixture(&format!(
        "{FIRST_IN}{TWO_LOTS}
        close bench on 2026-02-05
        expense freight 6 for a on 2026-02-06
        draw 8 disc for trays on 2026-02-07"
    ));
    used_up(&it, "bench", "28.00");
    used_up(&it, "trays", "38.00");
}

#[test]
fn the_effect_of_a_change_is_told_before_it_is_made() {
    let it = fixture(TWO_LOTS);
    let told = |from: Option<&str>| {
        let from = from.map(|day| Day::parse(day).unwrap());
        formula_effect(&it.shop(), it.end(), from).map(|under| {
            let builds = under.builds.iter().map(|(build, money)| (it.name(*build), money.shown(2)));
            (under.formula, under.shelf.shown(2), builds.collect::<Vec<_>>())
        })
    };
    let want = |formula, shelf: &str, used: &str| {
        (formula, shelf.to_owned(), vec![("bench".to_owned(), used.to_owned())])
    };
    let (average, first) =
        (want(Formula::MovingAverage, "24.00", "36.00"), want(Formula::FirstIn, "32.00", "28.00"));
    assert_eq!(told(None), [average.clone(), first]);
    // From tomorrow on nothing that was drawn moves.
    let same = want(Formula::FirstIn, "24.00", "36.00");
    assert_eq!(told(Some("2026-02-05")), [average, same]);
}

#[test]
fn an_odd_choice_of_formula_is_the_average() {
    let it = fixture(&format!("setting formula newest\n{TWO_LOTS}"));
    used_up(&it, "bench", "36.00");
    assert_eq!(Formula::on(&it.shop(), Day::parse("2026-02-04").unwrap()), Formula::MovingAverage);
    let shop = fixture(&format!("{FIRST_IN}{TWO_LOTS}")).shop();
    assert_eq!(Formula::on(&shop, Day::parse("2026-02-04").unwrap()), Formula::FirstIn);
    let _ = Books::close(&shop, it.end());
}

#[test]
fn a_draw_of_two_layers_lacks_what_either_lacks() {
    check(
        "
        setting formula first_in_first_out
        build bench
        item disc consumable each
        lot a bought 10 of disc unit each on 2026-02-01
        lot b bought 10 of disc unit each paid 40 on 2026-02-03
        draw 10 disc for bench on 2026-02-04 as first
        draw 2 disc for bench on 2026-02-04 as second",
        "true.consumables.item_disc",
        1,
        "
        item_disc 8.00
          first 0.00
          second 8.00
    ",
    );
}
