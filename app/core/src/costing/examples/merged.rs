//! An item that was typed in twice: what its lots and draws come to is what they would have come to as one.

use crate::{
    fixture::{Fixture, fixture},
    measure::Money,
};

/// `two`: the item under which the second half of it was typed in.
fn discs(two: &str, end: &str) -> Fixture {
    fixture(&format!(
        "
        build bench
        build trays
        item discs consumable each low 5
        item wheels consumable each
        lot a bought 2 of discs unit each paid 10 on 2026-02-02
        draw 5 {two} for bench as early on 2026-02-03
        lot b bought 10 of {two} unit each paid 60 on 2026-02-04
        return 1 of early on 2026-02-05
        draw 3 discs for trays on 2026-02-06
        empty {two} on 2026-02-07
        {end}
        expense end 0 for shop on 2026-02-28"
    ))
}

#[track_caller]
fn shows(money: Option<Money>, want: &str) {
    assert_eq!(money.map(|it| it.shown(2)).as_deref(), Some(want));
}

#[track_caller]
fn costs_alike(merged: &Fixture, one: &Fixture) {
    for build in ["bench", "trays"] {
        let cost = |it: &Fixture| it.books().build_cost(it.id(build)).true_cost.value;
        assert_eq!(cost(merged), cost(one), "{build}");
    }
    let shelf = |it: &Fixture| {
        it.books().shelf().into_iter().map(|it| (it.quantity, it.parts, it.low)).collect::<Vec<_>>()
    };
    assert_eq!(shelf(merged), shelf(one));
    assert_eq!(merged.books().losses().len(), one.books().losses().len());
}

#[test]
fn an_item_typed_twice_and_merged_costs_what_one_would_have_cost_from_the_beginning() {
    let one = discs("discs", "");
    costs_alike(&discs("wheels", "same wheels discs"), &one);
    // Said the day before anything came, it is the same: it holds from the beginning.
    costs_alike(&discs("wheels", "same wheels discs on 2026-02-01"), &one);
    // 2 at 5 and 3 at 6 drawn, one of them back at 5.60: the shelf is 8 for 47.60, and 3 of it 17.85.
    shows(one.books().build_cost(one.id("trays")).true_cost.money(), "17.85");
}

#[test]
fn struck_out_they_are_two_again() {
    let two = discs("wheels", "");
    costs_alike(&discs("wheels", "same wheels discs as it\nstrike it"), &two);
}

#[test]
fn a_chain_and_a_circle_are_one_item() {
    let chain = "item sheets consumable each\nsame wheels sheets\nsame sheets discs";
    costs_alike(&discs("wheels", chain), &discs("discs", ""));
    let it = discs("wheels", &format!("{chain}\nsame discs wheels"));
    costs_alike(&it, &discs("discs", ""));
    let (shop, discs) = (it.shop(), it.id("discs"));
    assert_eq!(shop.items.len(), 1);
    for name in ["wheels", "sheets", "discs"] {
        assert_eq!(shop.item_meant(it.id(name)), Some(discs), "{name}");
    }
    assert_eq!(shop.odd.len(), 1, "the last saying says nothing new");
}

#[test]
fn a_tin_of_another_size_counts_by_what_it_holds() {
    let it = fixture(
        "
        build bench
        item oil consumable tin holds 750 in ml
        item can consumable tin holds 500 in ml
        item drops consumable ml
        lot a bought 1 of oil unit tin paid 58
        lot b bought 1 of can unit tin paid 32
        lot c bought 250 of drops unit ml paid 10
        same can oil
        same drops can
        draw 1 can for bench",
    );
    let (shop, oil) = (it.shop(), it.source("oil"));
    assert_eq!(shop.odd, []);
    // 750, 500 and 250 ml are two tins of 750 for 100; a tin of 500 is two thirds of one.
    let line = it.books().shelf_line(oil).unwrap();
    assert_eq!(line.quantity.map(|it| it.shown_to(4)).as_deref(), Some("1.3333"));
    shows(it.books().build_cost(it.id("bench")).true_cost.money(), "33.33");
}

#[test]
fn what_can_be_one_is_asked_before_it_is_said() {
    use crate::journal::shop::Odd;
    let it = fixture(
        "
        item oil consumable tin holds 750 in ml
        item drops consumable ml
        item glue consumable kg
        item tubes consumable tin",
    );
    let shop = it.shop();
    let why = |item, is| shop.cannot_be(it.id(item), it.id(is));
    assert_eq!((why("oil", "drops"), why("drops", "oil"), why("tubes", "oil")), (None, None, None));
    assert_eq!(why("glue", "oil"), Some(Odd::UnitDoesNotFit));
    assert_eq!(why("drops", "tubes"), Some(Odd::UnitDoesNotFit));
    assert_eq!(why("oil", "oil"), Some(Odd::SameAlready));
}
