//! A decimal as it is stored: text in plain notation, its scale kept.
//!
//! A JSON number, an exponent and a NaN are refused on reading: a number would pass through
//! binary floating point in many a reader, and figures would change in silence.

use super::{Accepts, Money, Quantity, Refusal, Why, limits};
use rust_decimal::Decimal;
use serde::{Deserialize, Deserializer, Serialize, Serializer, de};
use std::fmt;

/// A stored decimal. At most 28 digits, written as it was typed: `"12.50"` stays `"12.50"`.
///
/// ```
/// # use benchslate_core::measure::Dec;
/// let price: Dec = serde_json::from_str("\"12.50\"").unwrap();
/// assert_eq!(serde_json::to_string(&price).unwrap(), "\"12.50\"");
/// assert!(serde_json::from_str::<Dec>("12.5").is_err());
/// assert!(serde_json::from_str::<Dec>("\"1e3\"").is_err());
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Dec(pub Decimal);

impl Dec {
    /// Reads plain notation: an optional `-`, digits, and one full stop with digits after it.
    ///
    /// # Errors
    /// Anything else, or more than [`limits::MOST_DIGITS`] digits.
    pub fn parse(text: &str) -> Result<Dec, Refusal> {
        let refused = |why, at| Err(Refusal { why, accepts: Accepts::StoredDecimal, at });
        if text.is_empty() {
            return refused(Why::Empty, None);
        }
        let (mut digits, mut point, mut last_is_digit) = (0_usize, false, false);
        for (at, found) in text.chars().enumerate() {
            match found {
                '0'..='9' => digits = digits.saturating_add(1),
                '-' if at == 0 => {}
                '.' if last_is_digit && !point => point = true,
                'e' | 'E' if last_is_digit => return refused(Why::Exponent, Some(at)),
                _ => return refused(Why::Unexpected { found }, Some(at)),
            }
            last_is_digit = found.is_ascii_digit();
        }
        if !last_is_digit {
            return refused(Why::Unfinished, Some(text.chars().count()));
        }
        if digits > limits::MOST_DIGITS {
            return refused(Why::TooLong { most: limits::MOST_DIGITS }, None);
        }
        // 28 digits always fit in 96 bits; should they not, that is a limit too.
        Decimal::from_str_exact(text)
            .map(Dec)
            .or_else(|_| refused(Why::TooLong { most: limits::MOST_DIGITS }, None))
    }

    /// As money, rounded half-even to 10⁻⁶. `None`: beyond the limits.
    pub fn money(self) -> Option<Money> {
        Money::from_decimal(self.0)
    }

    /// As a quantity, rounded half-even to 10⁻⁶. `None`: beyond the limits.
    pub fn quantity(self) -> Option<Quantity> {
        Quantity::from_decimal(self.0)
    }

    /// A share in hundredths, without trailing noughts: `0.125` as `12.5`.
    pub fn hundredths(self) -> String {
        let hundredths = self.0.checked_mul(100.into()).unwrap_or(self.0);
        hundredths.normalize().to_string()
    }

    /// Without trailing noughts: `12.50` as `12.5`.
    pub fn plain(self) -> String {
        self.0.normalize().to_string()
    }
}

impl From<Money> for Dec {
    /// Without trailing noughts.
    fn from(money: Money) -> Dec {
        Dec(money.to_decimal().normalize())
    }
}

impl From<Quantity> for Dec {
    /// Without trailing noughts.
    fn from(quantity: Quantity) -> Dec {
        Dec(quantity.to_decimal().normalize())
    }
}

impl fmt::Display for Dec {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.0)
    }
}

impl Serialize for Dec {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Dec {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Dec, D::Error> {
        let text = <std::borrow::Cow<'de, str>>::deserialize(from)?;
        Dec::parse(&text)
            .map_err(|_| de::Error::invalid_value(de::Unexpected::Str(&text), &"a plain decimal in quotes"))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[track_caller]
    fn check(text: &str, want: Result<&str, (Why, Option<usize>)>) {
        let got = Dec::parse(text).map(|dec| dec.to_string());
        assert_eq!(
            got,
            want.map(str::to_owned).map_err(|(why, at)| Refusal { why, accepts: Accepts::StoredDecimal, at })
        );
    }

    #[test]
    fn plain_notation_keeps_its_scale() {
        check("12.50", Ok("12.50"));
        check("-0.000001", Ok("-0.000001"));
        check("0", Ok("0"));
        check("007", Ok("7"));
        check("9999999999999999999999999999", Ok("9999999999999999999999999999"));
        check("0.000000000000000000000000001", Ok("0.000000000000000000000000001"));
    }

    #[test]
    fn what_is_not_plain_is_refused() {
        check("", Err((Why::Empty, None)));
        check("1e30", Err((Why::Exponent, Some(1))));
        check("NaN", Err((Why::Unexpected { found: 'N' }, Some(0))));
        check("+1", Err((Why::Unexpected { found: '+' }, Some(0))));
        check(".5", Err((Why::Unexpected { found: '.' }, Some(0))));
        check("1.", Err((Why::Unfinished, Some(2))));
        check("-", Err((Why::Unfinished, Some(1))));
        check("1_000", Err((Why::Unexpected { found: '_' }, Some(1))));
        check("1.2.3", Err((Why::Unexpected { found: '.' }, Some(3))));
        check("١٢", Err((Why::Unexpected { found: '١' }, Some(0))));
        check("99999999999999999999999999999", Err((Why::TooLong { most: 28 }, None)));
    }

    #[test]
    fn json_numbers_and_nothing_are_refused() {
        for json in ["12.5", "1e3", "null", "[]", "true", "\"\"", "\"NaN\"", "\"1e3\""] {
            assert!(serde_json::from_str::<Dec>(json).is_err(), "{json}");
        }
    }

    proptest! {
        #[test]
        fn what_was_written_is_read_back_to_the_byte(mantissa in -10_i128.pow(27)..10_i128.pow(27), scale in 0_u32..27) {
            let json = serde_json::to_string(&Dec(Decimal::from_i128_with_scale(mantissa, scale))).expect("writes");
            let back: Dec = serde_json::from_str(&json).expect("reads");
            prop_assert_eq!(serde_json::to_string(&back).expect("writes"), json);
        }

        #[test]
        fn no_text_makes_it_panic(text in "\\PC{0,40}") {
            let _ = Dec::parse(&text);
        }
    }
}
