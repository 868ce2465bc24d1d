//! Money: whole millionths of the shop's currency.
//!
//! Exact: leaves are rounded once on the way in, above them there is only plus and minus.
//! There are no operators, and the methods that reckon stay inside `core`, so that no screen
//! can add money. Not here: which currency (`currency`), how a sum is shown (`show`).

use super::{fixed, limits, show::Shown};
use rust_decimal::Decimal;

/// An amount of money in the shop's currency, exact to 10⁻⁶ of its unit.
///
/// ```
/// # use benchslate_core::measure::Money;
/// let paid = Money::from_decimal("32.0850".parse().unwrap()).unwrap();
/// assert_eq!(paid.shown(2), "32.08"); // half to even
/// assert_eq!(paid.to_decimal().to_string(), "32.085000");
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Money(i128);

impl Money {
    /// No money.
    pub const ZERO: Money = Money(0);

    /// Rounded half-even to 10⁻⁶. `None`: beyond [`limits::MOST_UNITS`] either way.
    pub fn from_decimal(amount: Decimal) -> Option<Money> {
        let within = amount.abs() <= Decimal::from(limits::MOST_UNITS);
        fixed::micros_of(amount).filter(|_| within).map(Money)
    }

    /// The amount with six digits after the point.
    pub fn to_decimal(self) -> Decimal {
        fixed::decimal_of(self.0)
    }

    /// Exactly none.
    pub fn is_zero(self) -> bool {
        self.0 == 0
    }

    /// Below zero.
    pub fn is_negative(self) -> bool {
        self.0 < 0
    }

    /// Its size: a loss is told without its sign.
    #[must_use]
    pub fn unsigned(self) -> Money {
        if self.is_negative() { self.negated() } else { self }
    }

    /// Plain text rounded half-even to `minor` digits, for a figure that stands alone:
    /// `-32.09`, `2994.01`, never `-0.00`. Within a sum, see [`super::show`].
    pub fn shown(self, minor: u8) -> String {
        Shown::alone(self, minor).text()
    }

    /// From whole millionths.
    pub(crate) fn from_micros(micros: i128) -> Money {
        Money(micros)
    }

    /// Whole millionths.
    pub(crate) fn micros(self) -> i128 {
        self.0
    }

    /// The sum. Saturates, which the limits make unreachable.
    pub(crate) fn plus(self, more: Money) -> Money {
        Money(self.0.saturating_add(more.0))
    }

    /// The difference. Saturates, which the limits make unreachable.
    pub(crate) fn minus(self, less: Money) -> Money {
        Money(self.0.saturating_sub(less.0))
    }

    /// The same size the other way.
    pub(crate) fn negated(self) -> Money {
        Money(self.0.saturating_neg())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn money(text: &str) -> Option<Money> {
        Money::from_decimal(Decimal::from_str_exact(text).expect(text))
    }

    #[test]
    fn money_is_rounded_half_even_to_the_millionth_once_on_the_way_in() {
        assert_eq!(money("0.0000025"), Some(Money(2)));
        assert_eq!(money("0.0000035"), Some(Money(4)));
        assert_eq!(money("-12.5"), Some(Money(-12_500_000)));
    }

    #[test]
    fn beyond_the_limit_there_is_no_money() {
        assert!(money("1000000000000").is_some());
        assert!(money("-1000000000000").is_some());
        assert_eq!(money("1000000000000.000001"), None);
        assert_eq!(Money::from_decimal(Decimal::MAX), None);
    }

    #[test]
    fn sums_never_wrap_or_panic() {
        let most = Money(i128::MAX);
        assert_eq!(most.plus(most), most);
        assert_eq!(Money(i128::MIN).negated(), most);
        assert_eq!(Money(i128::MIN).minus(most), Money(i128::MIN));
        assert!(Money(i128::MIN).is_negative() && !Money::ZERO.is_negative() && Money::ZERO.is_zero());
        assert_eq!(most.to_decimal(), Decimal::MAX);
        assert_eq!(Money::from_micros(5).micros(), 5);
    }
}
