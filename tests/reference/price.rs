//! Margin and mark-up against their printed table and exercises.

use benchslate_core::{
    costing::{
        Hours,
        price::{OnePiece, Wish, price},
    },
    measure::{Dec, Money},
};

fn asked(cost: &str, wish: Wish) -> Money {
    let cost = Dec::parse(cost).unwrap().money().unwrap();
    let one = OnePiece { cost, own: Money::default(), hours: Hours::default(), pieces: 1, ahead: None };
    price(&one, wish, Dec::default(), Dec::default()).unwrap().each
}

fn dec(text: &str) -> Dec {
    Dec::parse(text).unwrap()
}

// Source: published — OpenStax, Principles of Managerial Accounting (m68079): mark-up on cost.
#[test]
fn a_markup_on_the_cost() {
    for (cost, markup, wanted) in
        [("10", "0.30", "13.00"), ("12", "0.30", "15.60"), ("8", "0.20", "9.60"), ("9", "0.20", "10.80")]
    {
        assert_eq!(asked(cost, Wish::Markup(dec(markup))).shown(2), wanted);
    }
}

// Source: common practice — margin = mark-up ÷ (1 + mark-up), the table of pairs as trade handbooks print it.
#[test]
fn each_markup_has_its_margin() {
    for (markup, margin) in [
        ("0.10", "0.090909"),
        ("0.20", "0.166667"),
        ("0.25", "0.20"),
        ("0.30", "0.230769"),
        ("0.40", "0.285714"),
        ("0.50", "0.333333"),
        ("0.75", "0.428571"),
        ("1.00", "0.50"),
        ("3.00", "0.75"),
    ] {
        let up = asked("12", Wish::Markup(dec(markup))).shown(3);
        assert_eq!(asked("12", Wish::Margin(dec(margin))).shown(3), up, "{markup}");
    }
    assert_eq!(asked("12", Wish::Margin(dec("0.30"))).shown(2), "17.14");
}
