//! What is left of a price with tax in it and a fee off it, against published examples.

use benchslate_core::{
    fixture::fixture,
    journal::shop::{tax_in, tax_on},
    measure::Dec,
};

fn dec(text: &str) -> Dec {
    Dec::parse(text).expect(text)
}

/// Net of an amount that came with this tax in it and this fee off it, in the books of a build.
#[track_caller]
fn check(got: &str, net: &str) {
    let it = fixture(&format!("build bench\n income sale piece for bench expected 1000 got {got}"));
    let earned = it.books().build_cost(it.id("bench")).earned;
    assert_eq!(earned.net.money().expect("it came").shown(2), net, "{got}");
}

/// A price without tax, its rate, the tax, and the price with it: both ways.
#[track_caller]
fn with_tax(without: &str, rate: &str, tax: &str, with: &str) {
    let says = |tax: Option<Dec>| tax.expect("within the limits").money().expect("money").shown(2);
    assert_eq!(says(tax_on(dec(without), dec(rate), 2)), tax);
    assert_eq!(says(tax_in(dec(with), dec(rate), 2)), tax);
    check(&format!("{with} tax {tax}"), &format!("{:.2}", dec(without).0));
}

// Source: published — HMRC, "Calculating VAT for VAT-inclusive and VAT-exclusive prices": 100 at 20 % is 120, at 5 % 105.
#[test]
fn value_added_tax_on_a_price_and_in_it() {
    with_tax("100", "0.20", "20.00", "120");
    with_tax("100", "0.05", "5.00", "105");
}

// Source: published — itsrelative.co.uk, "VAT fraction" (2014): a sixth of 60 is 10.00; a twenty-first of 80 is 3.81.
#[test]
fn the_fraction_of_a_price_that_is_tax() {
    for (with, rate, tax) in [("60", "0.20", "10.00"), ("80", "0.05", "3.81")] {
        let got = tax_in(dec(with), dec(rate), 2).expect("within the limits");
        assert_eq!(got.money().expect("money").shown(2), tax);
    }
    check("80 tax 3.81", "76.19");
}

// Source: published — OpenStax, Principles of Accounting 1, ch. 12 (m67903): 8 % on shoes of 50 is 4; 54 are collected.
#[test]
fn sales_tax_is_owed_and_earns_nothing() {
    with_tax("50", "0.08", "4.00", "54");
}

// Source: published — OpenStax, Principles of Accounting 1, ch. 9 (m67881): of a canoe for 300 paid by card, 5 % are kept
// back: 15 of fee, 285 still to come in.
#[test]
fn what_is_kept_back_by_whoever_passes_it_on() {
    check("300 fee 15", "285.00");
}
