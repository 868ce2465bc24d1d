//! Sums that add up as shown, against published apportionments.
//!
//! Largest remainder is Hamilton's method. The published seats are shown here as money without
//! minor units: a parent of 60 whole units with the exact quotas as its parts.

use benchslate_core::measure::{Money, Shown};
use rust_decimal::Decimal;

fn money(text: &str) -> Money {
    Money::from_decimal(Decimal::from_str_exact(text).expect(text)).expect(text)
}

#[track_caller]
fn check(whole: &str, parts: &[&str], minor: u8, want: &[&str]) {
    let parts: Vec<Money> = parts.iter().map(|part| money(part)).collect();
    let shown = Shown::alone(money(whole), minor).parts(&parts);
    assert_eq!(shown.iter().map(Shown::text).collect::<Vec<_>>(), want);
}

// Source: published — electowiki.org, "Largest remainder method": US House 1790 by Hamilton, 60 seats, 3,615,920 people.
#[test]
fn the_seats_of_1790() {
    let states = [
        (630_560, "11"),
        (475_327, "8"),
        (432_879, "7"),
        (353_523, "6"),
        (331_589, "6"),
        (278_514, "5"),
        (236_841, "4"),
        (206_236, "3"),
        (179_570, "3"),
        (141_822, "2"),
        (85_533, "1"),
        (70_835, "1"),
        (68_705, "1"),
        (68_446, "1"),
        (55_540, "1"),
    ];
    let people: i64 = states.iter().map(|(people, _)| people).sum();
    assert_eq!(people, 3_615_920);
    let quota = |people: i64| Decimal::from(people * 60).checked_div(Decimal::from(3_615_920)).expect("fits");
    let quotas: Vec<Money> =
        states.iter().map(|(people, _)| Money::from_decimal(quota(*people)).expect("fits")).collect();
    let seats = Shown::alone(money("60"), 0).parts(&quotas);
    let want: Vec<_> = states.iter().map(|(_, seats)| *seats).collect();
    assert_eq!(seats.iter().map(Shown::text).collect::<Vec<_>>(), want);
}

// Source: common practice — a bill split in equal parts; rounding each by itself gives 1.02 and 0.06.
#[test]
fn equal_parts_of_a_bill_add_up_to_it() {
    let third = "33.333333";
    check("100", &["33.333334", third, third], 2, &["33.34", "33.33", "33.33"]);
    let sixth = "0.166667";
    check(
        "1",
        &[sixth, sixth, sixth, sixth, "0.166666", "0.166666"],
        2,
        &["0.17", "0.17", "0.17", "0.17", "0.16", "0.16"],
    );
    check("0.05", &["0.016667", "0.016667", "0.016666"], 2, &["0.02", "0.02", "0.01"]);
}

// Source: published — Principles of Accounting vol. 2 (OpenStax, m68085), inputs of exercises: 36,000 by sales values
// of 3,750 : 9,375 and 66,000 by 11,000 : 19,470; the answers are computed.
#[test]
fn joint_costs_by_sales_value() {
    check("36000", &["10285.714286", "25714.285714"], 2, &["10285.71", "25714.29"]);
    check("66000", &["23826.714801", "42173.285199"], 2, &["23826.71", "42173.29"]);
}

// Source: common practice — a negative total is apportioned like its absolute value, up to ties.
#[test]
fn what_is_taken_off_adds_up_too() {
    check("-100", &["-33.333334", "-33.333333", "-33.333333"], 2, &["-33.34", "-33.33", "-33.33"]);
}
