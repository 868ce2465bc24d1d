//! Rounding of money and minor units of currencies against the outside world.

use benchslate_core::measure::{Money, Region, currency};
use rust_decimal::Decimal;

#[track_caller]
fn check(amount: &str, minor: u8, want: &str) {
    let money = Money::from_decimal(Decimal::from_str_exact(amount).expect(amount)).expect(amount);
    assert_eq!(money.shown(minor), want, "{amount}");
}

// Source: published — half-even cases in the documentation of rust_decimal (6.5 to 6, 7.5 to 8) and IEEE 754 roundTiesToEven.
#[test]
fn halves_go_to_the_even_unit() {
    check("0.5", 0, "0");
    check("1.5", 0, "2");
    check("2.5", 0, "2");
    check("-2.5", 0, "-2");
    check("6.5", 0, "6");
    check("7.5", 0, "8");
}

// Source: library — Python 3.11 decimal, ROUND_HALF_EVEN; binary floating point gives 2.67 for the fourth and is wrong.
#[test]
fn cents_are_rounded_as_decimals_and_not_as_binary_fractions() {
    check("0.125", 2, "0.12");
    check("2.665", 2, "2.66");
    check("1.005", 2, "1.00");
    check("2.675", 2, "2.68");
    check("1.015", 2, "1.02");
}

// Source: library — rust_decimal 1.43, round_dp_with_strategy(MidpointNearestEven), an implementation of its own.
#[test]
fn every_rounding_agrees_with_the_library() {
    use rust_decimal::RoundingStrategy::MidpointNearestEven;
    for minor in 0_u8..=4 {
        for micros in (-3_000_000_i64..3_000_000).step_by(125) {
            let exact = Decimal::new(micros, 6);
            let mut want = exact.round_dp_with_strategy(u32::from(minor), MidpointNearestEven);
            want.rescale(u32::from(minor));
            if want.is_zero() {
                want.set_sign_positive(true);
            }
            let got = Money::from_decimal(exact).expect("small").shown(minor);
            assert_eq!(got, want.to_string());
        }
    }
}

// Source: published — ISO 4217 list one (2026-02-01): minor units of live codes.
// DIFFERENCE: CLDR gives 0 for AFN, ALL, LAK, RSD and others, and 0 for IQD; ISO is followed.
#[test]
fn minor_units_follow_iso_4217() {
    let rows = [
        ("USD", 2),
        ("CAD", 2),
        ("EUR", 2),
        ("GBP", 2),
        ("JPY", 0),
        ("KRW", 0),
        ("VND", 0),
        ("CLP", 0),
        ("ISK", 0),
        ("UGX", 0),
        ("KWD", 3),
        ("BHD", 3),
        ("JOD", 3),
        ("OMR", 3),
        ("TND", 3),
        ("LYD", 3),
        ("IQD", 3),
        ("CLF", 4),
        ("UYW", 4),
        ("AFN", 2),
        ("ALL", 2),
        ("RSD", 2),
    ];
    for (code, digits) in rows {
        assert!(currency::known(code), "{code}");
        assert_eq!(currency::minor_digits(code), digits, "{code}");
    }
}

// Source: published — ISO 4217 list one (2026-02-01): 17 live codes with 0 digits, 139 with 2, 7 with 3, 2 with 4.
#[test]
fn as_many_codes_as_the_list_has() {
    let count = |digits| currency::codes().filter(|code| currency::minor_digits(code) == digits).count();
    assert_eq!([0, 2, 3, 4].map(count), [17, 139, 7, 2]);
}

// Source: published — ISO 4217 list three: codes withdrawn (DEM 2002, HRK 2023, ANG 2025, BGN 2026) and codes without money.
#[test]
fn withdrawn_codes_and_metals_are_not_known() {
    for code in ["DEM", "FRF", "HRK", "ANG", "BGN", "ZWL", "XAU", "XXX", "XTS", "XDR"] {
        assert!(!currency::known(code), "{code}");
    }
}

// Source: from memory — currencies, and first days of the week as printed on calendars there.
#[test]
fn a_region_has_its_currency_and_its_week() {
    use benchslate_core::measure::Weekday::{Monday, Saturday, Sunday};
    let rows = [
        ("CA", "CAD", Sunday),
        ("US", "USD", Sunday),
        ("GB", "GBP", Monday),
        ("DE", "EUR", Monday),
        ("CH", "CHF", Monday),
        ("JP", "JPY", Sunday),
        ("BR", "BRL", Sunday),
        ("AU", "AUD", Monday),
        ("EG", "EGP", Saturday),
        ("HR", "EUR", Monday),
        ("BG", "EUR", Monday),
    ];
    for (code, currency, first_day) in rows {
        let region = Region::of(code).expect(code);
        assert_eq!((region.currency(), region.first_day()), (currency, first_day), "{code}");
    }
}
