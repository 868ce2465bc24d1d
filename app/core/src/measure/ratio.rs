//! A share of a whole: yield, waste, tax.

use super::{Quantity, fixed};
use rust_decimal::Decimal;

/// A share of one, exact to 10⁻⁶: `0.13` is 13 %.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Ratio(i128);

impl Ratio {
    /// None of it.
    pub const ZERO: Ratio = Ratio(0);
    /// All of it.
    pub const ONE: Ratio = Ratio(fixed::SCALE);

    /// A share from 0 to 1, rounded half-even to 10⁻⁶. `None`: outside.
    /// ```
    /// # use benchslate_core::measure::Ratio;
    /// assert_eq!(Ratio::share("1.0".parse().unwrap()), Some(Ratio::ONE));
    /// assert_eq!(Ratio::share("1.01".parse().unwrap()), None);
    /// ```
    pub fn share(amount: Decimal) -> Option<Ratio> {
        fixed::micros_of(amount).map(Ratio).filter(|it| (Ratio::ZERO..=Ratio::ONE).contains(it))
    }

    /// Exactly none.
    pub fn is_zero(self) -> bool {
        self.0 == 0
    }

    /// As a decimal: `0.13`.
    pub fn to_decimal(self) -> Decimal {
        fixed::decimal_of(self.0).normalize()
    }

    /// As people say it: 0.125 is 12.5 of a hundred.
    pub fn hundredths(self) -> Quantity {
        Quantity::from_micros(self.0.saturating_mul(100))
    }

    /// Rounded half to even to whole hundredths, as it is kept.
    pub fn hundredth(self) -> super::Dec {
        super::Dec(self.to_decimal().round_dp(2))
    }

    /// Millionths.
    pub(crate) fn micros(self) -> i128 {
        self.0
    }

    /// What is left of one: 0.15 wasted leaves 0.85.
    pub(crate) fn rest(self) -> Ratio {
        Ratio(fixed::SCALE.saturating_sub(self.0))
    }

    /// One and this much on top: 0.13 tax makes 1.13.
    pub(crate) fn on_top(self) -> Ratio {
        Ratio(fixed::SCALE.saturating_add(self.0))
    }
}
