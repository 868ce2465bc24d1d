//! Quantities and lengths of work.
//!
//! A quantity is whole millionths of a unit that stands beside it; a length of work is whole
//! seconds. As with money the reckoning stays inside `core`. Not here: units (`unit`), how either
//! is typed (`marks`, `duration`).

use super::{fixed, limits};
use rust_decimal::Decimal;

/// So much of a unit that stands beside it, exact to 10⁻⁶.
///
/// ```
/// # use benchslate_core::measure::Quantity;
/// let tin = Quantity::from_decimal("0.6100".parse().unwrap()).unwrap();
/// assert_eq!(tin.shown_trimmed(), "0.61");
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Quantity(i128);

impl Quantity {
    /// Nothing.
    pub const ZERO: Quantity = Quantity(0);
    /// One.
    pub const ONE: Quantity = Quantity(fixed::SCALE);

    /// Rounded half-even to 10⁻⁶. `None`: beyond [`limits::MOST_UNITS`] either way.
    pub fn from_decimal(amount: Decimal) -> Option<Quantity> {
        let within = amount.abs() <= Decimal::from(limits::MOST_UNITS);
        fixed::micros_of(amount).filter(|_| within).map(Quantity)
    }

    /// The amount with six digits after the point.
    pub fn to_decimal(self) -> Decimal {
        fixed::decimal_of(self.0)
    }

    /// Exactly nothing.
    pub fn is_zero(self) -> bool {
        self.0 == 0
    }

    /// Below zero.
    pub fn is_negative(self) -> bool {
        self.0 < 0
    }

    /// Plain text without trailing noughts: `0.61`, `4`; at most six digits after the point.
    pub fn shown_trimmed(self) -> String {
        let text = fixed::point_text(self.0, fixed::SCALE_DIGITS);
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    }

    /// Plain text rounded half-even to at most `digits` after the point, without trailing noughts.
    pub fn shown_to(self, digits: u8) -> String {
        let rounded = fixed::power_of_ten(fixed::SCALE_DIGITS.saturating_sub(u32::from(digits)))
            .and_then(|step| fixed::mul_div(self.0, 1, step)?.checked_mul(step));
        Quantity(rounded.unwrap_or(self.0)).shown_trimmed()
    }

    /// A quantity of hours as whole seconds, rounded half to even.
    pub fn as_hours(self) -> Seconds {
        let seconds = fixed::mul_div(self.0, 3600, fixed::SCALE).unwrap_or(0);
        Seconds(i64::try_from(seconds).unwrap_or(0))
    }

    /// From whole millionths.
    pub(crate) fn from_micros(micros: i128) -> Quantity {
        Quantity(micros)
    }

    /// Whole millionths.
    pub(crate) fn micros(self) -> i128 {
        self.0
    }

    /// The sum. Saturates, which the limits make unreachable.
    pub(crate) fn plus(self, more: Quantity) -> Quantity {
        Quantity(self.0.saturating_add(more.0))
    }

    /// The difference. Saturates, which the limits make unreachable.
    pub(crate) fn minus(self, less: Quantity) -> Quantity {
        Quantity(self.0.saturating_sub(less.0))
    }

    /// How many times `one` this is, rounded once: 100 ml of a tin of 750 ml is 0.133333.
    pub(crate) fn over(self, one: Quantity) -> Option<Quantity> {
        fixed::mul_div(self.0, fixed::SCALE, one.0).map(Quantity)
    }

    /// So many times `one`, rounded once: 2 tins of 750 ml are 1500 ml.
    pub(crate) fn times(self, one: Quantity) -> Option<Quantity> {
        fixed::mul_div(self.0, one.0, fixed::SCALE).map(Quantity)
    }

    /// The same size the other way.
    pub(crate) fn negated(self) -> Quantity {
        Quantity(self.0.saturating_neg())
    }
}

/// A length of work, in whole seconds.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Seconds(pub i64);

impl Seconds {
    /// No time.
    pub const ZERO: Seconds = Seconds(0);

    /// How long, whichever way it runs.
    pub fn length(self) -> Seconds {
        Seconds(self.0.saturating_abs())
    }

    /// Whole hours and the whole minutes beside them; seconds that make no minute are left out,
    /// as on a clock. Below zero both are.
    ///
    /// ```
    /// # use benchslate_core::measure::Seconds;
    /// assert_eq!(Seconds(8_159).hours_minutes(), (2, 15));
    /// ```
    pub fn hours_minutes(self) -> (i64, i64) {
        (self.0 / 3600, self.0 % 3600 / 60)
    }

    /// Whole minutes and the seconds over.
    pub fn minutes_seconds(self) -> (i64, i64) {
        (self.0 / 60, self.0 % 60)
    }

    /// Hours as a quantity, rounded once to 10⁻⁶.
    pub fn in_hours(self) -> Quantity {
        Quantity(fixed::mul_div(i128::from(self.0), fixed::SCALE, 3600).unwrap_or(0))
    }

    /// No time at all.
    pub fn is_zero(self) -> bool {
        self.0 == 0
    }

    /// The sum. Saturates.
    pub(crate) fn plus(self, more: Seconds) -> Seconds {
        Seconds(self.0.saturating_add(more.0))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn quantity(text: &str) -> Quantity {
        Quantity::from_decimal(Decimal::from_str_exact(text).expect(text)).expect(text)
    }

    #[test]
    fn trailing_noughts_are_not_shown() {
        assert_eq!(quantity("4.000").shown_trimmed(), "4");
        assert_eq!(quantity("100").shown_trimmed(), "100");
        assert_eq!(quantity("-0.500").shown_trimmed(), "-0.5");
        assert_eq!(quantity("0").shown_trimmed(), "0");
        assert_eq!(quantity("0.0000004").shown_trimmed(), "0");
    }

    #[test]
    fn a_quantity_is_shown_to_as_many_digits_as_asked() {
        assert_eq!(quantity("9.333333").shown_to(2), "9.33");
        assert_eq!(quantity("2.5").shown_to(0), "2");
        assert_eq!(quantity("-0.004").shown_to(2), "0");
        assert_eq!(quantity("1.25").shown_to(9), "1.25");
    }

    #[test]
    fn beyond_the_limit_there_is_no_quantity() {
        let most = Decimal::from(limits::MOST_UNITS);
        assert!(Quantity::from_decimal(most).is_some());
        assert!(Quantity::from_decimal(Decimal::MAX).is_none());
        assert!(Quantity::from_decimal(Decimal::MIN).is_none());
    }

    #[test]
    fn hours_and_minutes_leave_out_the_seconds() {
        assert_eq!(Seconds(59).hours_minutes(), (0, 0));
        assert_eq!(Seconds(-5_400).hours_minutes(), (-1, -30));
        assert_eq!(Seconds(5_400).in_hours(), quantity("1.5"));
    }
}
