//! Tax on top of an amount: typed as a share of it (`13 %`) or as money (`9.43`), always kept as money.
//!
//! One reading for every form that takes tax, so that what can be typed once can be typed again where it is
//! put right.

use crate::measure::{Dec, Money, Refusal, fixed, number};

/// Reads tax as it is typed beside an amount, in a currency of so many digits after the mark.
/// None: a share of an amount that isn't there, or beyond the limits.
///
/// ```
/// # use benchslate_core::{journal::shop::tax_typed, measure::Dec};
/// let paid = Dec::parse("18.50").ok();
/// assert_eq!(tax_typed("13 %", paid, 2).unwrap().unwrap().to_string(), "2.4");
/// assert_eq!(tax_typed("13", paid, 2).unwrap().unwrap().to_string(), "13");
/// ```
///
/// # Errors
/// As [`number::percent`] with a `%` at its end, else as [`number::amount`].
pub fn tax_typed(text: &str, amount: Option<Dec>, minor: u8) -> Result<Option<Dec>, Refusal> {
    if !text.trim_end().ends_with('%') {
        return number::amount(text).map(|tax| Some(Dec(tax)));
    }
    let share = Dec(number::percent(text)?);
    Ok(amount.and_then(|amount| tax_on(amount, share, minor)))
}

/// Tax that is in an amount already, typed as a share of what it is on or as money: `13 %` in 565.00 is 65.00.
/// None: as [`tax_typed`].
///
/// # Errors
/// As [`tax_typed`].
pub fn tax_in_typed(text: &str, amount: Option<Dec>, minor: u8) -> Result<Option<Dec>, Refusal> {
    if !text.trim_end().ends_with('%') {
        return number::amount(text).map(|tax| Some(Dec(tax)));
    }
    let share = Dec(number::percent(text)?);
    Ok(amount.and_then(|amount| tax_in(amount, share, minor)))
}

/// Millionths in the smallest coin.
fn step(minor: u8) -> Option<i128> {
    fixed::power_of_ten(fixed::SCALE_DIGITS.saturating_sub(u32::from(minor.min(6))))
}

/// An amount with the tax on it. None: beyond the limits.
pub fn with_tax(amount: Dec, tax: Option<Dec>) -> Option<Money> {
    let tax = tax.map_or(Some(Money::ZERO), Dec::money)?;
    Some(amount.money()?.plus(tax))
}

/// Tax on an amount by its share (`0.13`), rounded half-even to the currency's `minor` digits as on a receipt.
/// None: beyond the limits.
pub fn tax_on(amount: Dec, share: Dec, minor: u8) -> Option<Dec> {
    let step = step(minor)?;
    let (amount, share) = (amount.money()?, share.money()?);
    let units = fixed::mul_div(amount.micros(), share.micros(), fixed::SCALE.checked_mul(step)?)?;
    Some(Dec::from(Money::from_micros(units.checked_mul(step)?)))
}

/// The tax that is in an amount with tax, by its share: `amount × share ÷ (1 + share)`, rounded half-even to the
/// currency's `minor` digits. None: beyond the limits.
///
/// ```
/// # use benchslate_core::{journal::shop::tax_in, measure::Dec};
/// let [paid, share] = ["31.85", "0.13"].map(|text| Dec::parse(text).unwrap());
/// assert_eq!(tax_in(paid, share, 2).unwrap().to_string(), "3.66");
/// ```
pub fn tax_in(amount: Dec, share: Dec, minor: u8) -> Option<Dec> {
    let step = step(minor)?;
    let (amount, share) = (amount.money()?, share.money()?);
    let whole = fixed::SCALE.checked_add(share.micros())?.checked_mul(step)?;
    let units = fixed::mul_div(amount.micros(), share.micros(), whole)?;
    Some(Dec::from(Money::from_micros(units.checked_mul(step)?)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::Why;

    fn dec(text: &str) -> Dec {
        Dec::parse(text).unwrap()
    }

    #[track_caller]
    fn check(amount: &str, share: &str, minor: u8, want: &str) {
        assert_eq!(tax_on(dec(amount), dec(share), minor).unwrap().to_string(), want);
    }

    #[test]
    fn tax_by_its_share_is_whole_in_the_smallest_coin() {
        check("71.50", "0.13", 2, "9.3");
        check("0.50", "0.13", 2, "0.06");
        check("0.50", "0.15", 2, "0.08");
        check("1000", "0.1", 0, "100");
        check("0", "0.13", 2, "0");
    }

    #[test]
    fn tax_in_a_total_is_what_on_top_of_the_rest_comes_to_it() {
        let within = |total: &str, share: &str| tax_in(dec(total), dec(share), 2).unwrap().to_string();
        // 28.19 and 13 % on it is 31.85; 72.57 and 13 % on it is 82.00.
        assert_eq!(within("31.85", "0.13"), "3.66");
        assert_eq!(within("82.00", "0.13"), "9.43");
        assert_eq!(within("40", "0"), "0");
        assert_eq!(tax_in(dec("1100"), dec("0.1"), 0).unwrap().to_string(), "100");
    }

    #[track_caller]
    fn typed(text: &str, amount: &str, tax: &str, in_all: &str) {
        let read = tax_typed(text, Some(dec(amount)), 2).unwrap().unwrap();
        assert_eq!(read.plain(), tax, "{text} on {amount}");
        assert_eq!(with_tax(dec(amount), Some(read)).unwrap().shown(2), in_all, "{text} on {amount}");
    }

    #[test]
    fn tax_is_typed_as_a_share_or_as_money() {
        typed("13 %", "18.50", "2.4", "20.90");
        typed("13%", "18.54", "2.41", "20.95");
        typed("13", "18.50", "13", "31.50");
        typed("9,43", "72.57", "9.43", "82.00");
        typed("14.975 %", "100", "14.98", "114.98");
        typed("0 %", "40", "0", "40.00");
    }

    #[test]
    fn tax_in_an_amount_is_typed_as_a_share_or_as_money() {
        let read =
            |text: &str, amount: &str| tax_in_typed(text, Some(dec(amount)), 2).unwrap().unwrap().plain();
        assert_eq!(read("13 %", "565.00"), "65");
        assert_eq!(read("65", "565.00"), "65");
        assert_eq!(read("20 %", "100"), "16.67");
        assert_eq!(read("13 %", "-565"), "-65");
        assert_eq!(tax_in_typed("13 %", None, 2).ok(), Some(None));
    }

    #[test]
    fn a_share_of_nothing_is_no_tax_and_nonsense_is_refused() {
        assert_eq!(tax_typed("13 %", None, 2).ok(), Some(None));
        assert_eq!(tax_typed("13 %%", None, 2).map_err(|it| it.why), Err(Why::Unexpected { found: '%' }));
        assert_eq!(tax_typed("much", None, 2).map_err(|it| it.why), Err(Why::Unexpected { found: 'm' }));
        assert_eq!(tax_typed("9.43", None, 2).ok().flatten(), Some(dec("9.43")));
        assert_eq!(with_tax(dec("40"), None).unwrap().shown(2), "40.00");
    }
}
