//! An exact fraction, as a rule or a typed length has it.

use super::{Quantity, Unit, fixed};
use std::fmt;

/// A numerator over a denominator above zero, reduced: exact where a decimal would not end.
///
/// ```
/// # use benchslate_core::measure::{Fraction, Unit};
/// let third = Fraction::of(2, 6).unwrap();
/// assert_eq!((third.numerator(), third.denominator()), (1, 3));
/// assert_eq!(third.quantity().unwrap().shown_trimmed(), "0.333333");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Fraction {
    numerator: i128,
    denominator: i128,
}

impl Fraction {
    /// Nothing.
    pub const ZERO: Fraction = Fraction { numerator: 0, denominator: 1 };
    /// One.
    pub const ONE: Fraction = Fraction { numerator: 1, denominator: 1 };

    /// Reduced, the sign above the line. `None`: zero under the line, or beyond 128 bits.
    pub fn of(numerator: i128, denominator: i128) -> Option<Fraction> {
        let divisor = common_divisor(numerator.unsigned_abs(), denominator.unsigned_abs());
        let divisor = i128::try_from(divisor).ok()?;
        let (above, below) = (numerator.checked_div(divisor)?, denominator.checked_div(divisor)?);
        match below.signum() {
            0 => None,
            1 => Some(Fraction { numerator: above, denominator: below }),
            _ => Some(Fraction { numerator: above.checked_neg()?, denominator: below.checked_neg()? }),
        }
    }

    /// A quantity as a fraction of millionths.
    pub fn from_quantity(quantity: Quantity) -> Fraction {
        // A million is never zero, so the fallback is not reached.
        Fraction::of(quantity.micros(), fixed::SCALE).unwrap_or(Fraction::ZERO)
    }

    /// Above the line.
    pub fn numerator(self) -> i128 {
        self.numerator
    }

    /// Under the line, above zero.
    pub fn denominator(self) -> i128 {
        self.denominator
    }

    /// Rounded once, half-even, to 10⁻⁶. `None`: too large.
    pub fn quantity(self) -> Option<Quantity> {
        fixed::mul_div(self.numerator, fixed::SCALE, self.denominator).map(Quantity::from_micros)
    }

    /// The same amount in another unit, exact. `None`: of another kind, or too large.
    pub fn converted(self, from: Unit, to: Unit) -> Option<Fraction> {
        let (numerator, denominator) = from.ratio_to(to)?;
        self.times(Fraction::of(numerator, denominator)?)
    }

    /// The sum. `None`: beyond 128 bits.
    pub(crate) fn plus(self, more: Fraction) -> Option<Fraction> {
        let left = self.numerator.checked_mul(more.denominator)?;
        let right = more.numerator.checked_mul(self.denominator)?;
        Fraction::of(left.checked_add(right)?, self.denominator.checked_mul(more.denominator)?)
    }

    /// The product. `None`: beyond 128 bits.
    pub(crate) fn times(self, by: Fraction) -> Option<Fraction> {
        Fraction::of(self.numerator.checked_mul(by.numerator)?, self.denominator.checked_mul(by.denominator)?)
    }

    /// Whether it is as much as another, or more. Beyond 128 bits it isn't said to be.
    pub(crate) fn covers(self, other: Fraction) -> bool {
        let mine = self.numerator.checked_mul(other.denominator);
        let others = other.numerator.checked_mul(self.denominator);
        mine.zip(others).is_some_and(|(mine, others)| mine >= others)
    }

    /// Whether it is less than one.
    pub(crate) fn is_less_than_one(self) -> bool {
        self.numerator < self.denominator
    }

    /// Whether it is at most a whole number.
    pub(crate) fn is_at_most(self, whole: i64) -> bool {
        i128::from(whole).checked_mul(self.denominator).is_none_or(|most| self.numerator <= most)
    }
}

impl fmt::Display for Fraction {
    /// `5/8`, or `6` where it is whole.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.numerator)?;
        if self.denominator == 1 { Ok(()) } else { write!(f, "/{}", self.denominator) }
    }
}

/// Greatest common divisor; at least one, so that it may always be divided by.
fn common_divisor(mut a: u128, mut b: u128) -> u128 {
    while let Some(rest) = a.checked_rem(b) {
        (a, b) = (b, rest);
    }
    a.max(1)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_fraction_is_reduced_with_its_sign_above_the_line() {
        let half = Fraction::of(4, -8).expect("fits");
        assert_eq!((half.numerator(), half.denominator()), (-1, 2));
        assert_eq!(Fraction::of(0, -5), Some(Fraction::ZERO));
        assert_eq!(Fraction::of(1, 0), None);
        assert_eq!(Fraction::of(0, 0), None);
    }

    #[test]
    fn what_does_not_fit_is_said() {
        let huge = Fraction::of(i128::MAX, 1).expect("fits");
        assert_eq!(huge.plus(huge), None);
        assert_eq!(huge.times(huge), None);
        assert_eq!(huge.quantity(), None);
        assert!(!huge.is_at_most(5));
        assert_eq!(Fraction::of(i128::MIN, -1), None);
    }

    #[test]
    fn millimetres_in_inches_are_exact() {
        let thick = Fraction::of(22, 1).and_then(|mm| mm.converted(Unit::Millimetre, Unit::Inch));
        assert_eq!(thick, Fraction::of(220, 254));
    }
}
