//! One cost for several things at once, shared by quantity and by value, against published examples.
//!
//! By quantity: several draws share one lot. By value: the lines of one receipt share its freight.

use benchslate_core::{fixture::fixture, measure::Money};

/// Each quantity's share of the cost of one lot.
#[track_caller]
fn by_quantity(cost: &str, shares: &[(u32, &str)]) {
    let whole: u32 = shares.iter().map(|(quantity, _)| quantity).sum();
    let mut it = fixture(&format!("lot joint bought {whole} unit each paid {cost}"));
    for (at, (quantity, _)) in shares.iter().enumerate() {
        it.add(&format!("build product{at}"));
        it.add(&format!("draw {quantity} joint for product{at}"));
    }
    let books = it.books();
    for (at, (_, want)) in shares.iter().enumerate() {
        let cost = books.build_cost(it.id(&format!("product{at}")));
        assert_eq!(cost.parts.total().shown(2), *want, "product {at}");
    }
    assert_eq!(books.shelf_value(), Money::default());
}

/// Each line's share of what a receipt carries once, and of that for one of its quantity.
#[track_caller]
fn by_value(cost: &str, lines: &[(u32, &str, &str, &str)]) {
    let mut it = fixture(&format!("receipt mill freight {cost}"));
    for (at, (quantity, value, ..)) in lines.iter().enumerate() {
        it.add(&format!("lot line{at} bought {quantity} unit each paid {value} receipt mill"));
    }
    let shop = it.shop();
    for (at, (quantity, _, want, each)) in lines.iter().enumerate() {
        let share = shop.lots[&it.id(&format!("line{at}"))].shared.freight;
        assert_eq!(share.shown(2), *want, "line {at}");
        let one = share.to_decimal() / rust_decimal::Decimal::from(*quantity);
        assert_eq!(one.round_dp(2).to_string(), *each, "one of line {at}");
    }
}

// Source: published — a lumber mill's four grades, 7,500,000 board feet and 900,000 of joint cost (answered exercise at
// answer.ya.guru, 5179340), physical units: 180,000, 360,000, 225,000 and 135,000.
#[test]
fn grades_of_lumber_by_the_board_foot() {
    by_quantity(
        "900000",
        &[
            (1_500_000, "180000.00"),
            (3_000_000, "360000.00"),
            (1_875_000, "225000.00"),
            (1_125_000, "135000.00"),
        ],
    );
}

// Source: published — the same exercise, sales value at the split-off: 270,000, 405,000, 157,500 and 67,500.
#[test]
fn grades_of_lumber_by_their_value() {
    by_value(
        "900000",
        &[
            (1_500_000, "450000000", "270000.00", "0.18"),
            (3_000_000, "675000000", "405000.00", "0.14"),
            (1_875_000, "262500000", "157500.00", "0.08"),
            (1_125_000, "112500000", "67500.00", "0.06"),
        ],
    );
}

// Source: published — examination question (gaodun.com 1012ww): 5,000 over 800 gallons at 9 and 200 at 4; by value 4,500
// and 500, 5.63 a gallon (4,500 ÷ 800 = 5.625); by quantity 5.00.
#[test]
fn two_joint_products_either_way() {
    // DIFFERENCE: printed as 5.63; a half goes to the even cent here.
    by_value("5000", &[(800, "7200", "4500.00", "5.62"), (200, "800", "500.00", "2.50")]);
    by_quantity("5000", &[(800, "4000.00"), (200, "1000.00")]);
}

// Source: published — slides on joint costs (scribd.com 389133615): 100,000 over 300, 300, 200, 100 and 100 barrels.
#[test]
fn a_refinery_by_the_barrel() {
    by_quantity(
        "100000",
        &[(300, "30000.00"), (300, "30000.00"), (200, "20000.00"), (100, "10000.00"), (100, "10000.00")],
    );
}
