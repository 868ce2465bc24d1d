//! What is typed against published readings and conversions.

use benchslate_core::measure::{
    Quantity, Seconds, Unit, duration,
    marks::{self, Hint},
};

#[track_caller]
fn check(text: &str, unit: Unit, want: &str) {
    let typed = marks::quantity(text, Hint { unit: Some(unit), ..Hint::default() }).expect("a quantity");
    let got = typed.in_unit(unit).map(Quantity::shown_trimmed);
    assert_eq!(got.as_deref(), Ok(want), "{text}");
}

// Source: common practice — decimal equivalents of the fractions on a rule, as tabled in any machinist's handbook.
#[test]
fn fractions_of_an_inch_have_their_decimal_equivalents() {
    let rows = [
        ("1/64", "0.015625"),
        ("1/32", "0.03125"),
        ("3/64", "0.046875"),
        ("1/16", "0.0625"),
        ("5/32", "0.15625"),
        ("11/64", "0.171875"),
        ("3/8", "0.375"),
        ("27/64", "0.421875"),
        ("5/8", "0.625"),
        ("23/32", "0.71875"),
        ("63/64", "0.984375"),
    ];
    for (fraction, decimal) in rows {
        check(fraction, Unit::Inch, decimal);
    }
}

// Source: published — the inch is 25.4 mm exactly (UCUM 2.2, NIST SP 811 App. B.8).
#[test]
fn fractions_in_millimetres_are_exact() {
    check("5/8 in", Unit::Millimetre, "15.875");
    check("3' 4 5/8\"", Unit::Millimetre, "1031.875");
    check("6'", Unit::Millimetre, "1828.8");
    check("1.2 m", Unit::Millimetre, "1200");
    check("25,4 mm", Unit::Inch, "1");
}

// Source: published — UCUM 2.2: a US quart is 946.352946 mL, so a tin marked 946 ml is a quart less 0.35 mL.
#[test]
fn a_tin_of_946_ml_is_a_us_quart_to_the_third_digit() {
    let typed = marks::quantity("946 ml", Hint::default()).expect("a quantity");
    assert_eq!(typed.in_unit(Unit::UsQuart).map(|q| q.shown_to(3)).as_deref(), Ok("1"));
}

// Source: common practice — naming hardwood thickness in quarters of an inch: 4/4 is 1 in, 8/4 is 2 in.
#[test]
fn hardwood_quarters_are_fractions_like_any_other() {
    check("4/4", Unit::Inch, "1");
    check("5/4", Unit::Inch, "1.25");
    check("8/4", Unit::Inch, "2");
}

// Source: library — isodate 0.7.2: PT1.5H = PT1H30M = 5,400 s, PT36H = 129,600 s.
#[test]
fn hours_are_as_long_as_iso_8601_says() {
    for (text, seconds) in
        [("1.5", 5_400), ("1,5 h", 5_400), ("1 h 30", 5_400), ("1:30", 5_400), ("36 h", 129_600)]
    {
        assert_eq!(duration::hours(text), Ok(Seconds(seconds)), "{text}");
    }
}
