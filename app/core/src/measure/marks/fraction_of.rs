//! A quantity as the nearest fraction on a rule.
//!
//! Rounded half-even to the finest mark that the shop reads (its "smallest fraction"), and said
//! to be exact or not. Not here: the sign of inches and the words around it.

use crate::measure::{Quantity, fixed};

/// The nearest mark on a rule to a quantity.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Nearest {
    /// Below zero.
    pub negative: bool,
    /// Whole units.
    pub whole: i128,
    /// Above the line; zero where it is whole.
    pub above: i128,
    /// Under the line, reduced; one where it is whole.
    pub under: i128,
    /// Whether the quantity lies on that mark.
    pub exact: bool,
}

/// The nearest mark to a quantity, of those `finest` to the unit (1, 2, 4 … 64; zero is taken as 1).
///
/// ```
/// # use benchslate_core::measure::{Quantity, marks};
/// let length = Quantity::from_decimal("40.625".parse().unwrap()).unwrap();
/// assert_eq!(marks::nearest(length, 16).text(), "40 5/8");
/// assert_eq!(marks::nearest(length, 16).feet_and_inches(), "3' 4 5/8\"");
/// assert!(!marks::nearest(length, 4).exact);
/// ```
pub fn nearest(quantity: Quantity, finest: u32) -> Nearest {
    let finest = i128::from(finest.max(1));
    let micros = quantity.micros();
    let marks = fixed::mul_div(micros, finest, fixed::SCALE).unwrap_or(0);
    let exact = marks.checked_mul(fixed::SCALE) == micros.checked_mul(finest);
    let size = marks.saturating_abs();
    let (whole, above) = (size.checked_div(finest).unwrap_or(0), size.checked_rem(finest).unwrap_or(0));
    let (above, under) = reduced(above, finest);
    Nearest { negative: marks < 0, whole, above, under, exact }
}

impl Nearest {
    /// `23 3/4`, `5/8`, `23`, `-1/2`.
    pub fn text(self) -> String {
        format!("{}{}", self.sign(), figures(self.whole, self.above, self.under))
    }

    /// A number of inches as feet and inches: `3' 4 5/8"`, `5/8"`, `3'`.
    pub fn feet_and_inches(self) -> String {
        let (feet, inches) = (self.whole / 12, self.whole % 12);
        let sign = self.sign();
        let fine = figures(inches, self.above, self.under);
        match (feet, inches == 0 && self.above == 0) {
            (0, _) => format!("{sign}{fine}\""),
            (_, true) => format!("{sign}{feet}'"),
            (_, false) => format!("{sign}{feet}' {fine}\""),
        }
    }

    fn sign(self) -> &'static str {
        if self.negative { "-" } else { "" }
    }
}

fn figures(whole: i128, above: i128, under: i128) -> String {
    match (whole, above) {
        (_, 0) => whole.to_string(),
        (0, _) => format!("{above}/{under}"),
        _ => format!("{whole} {above}/{under}"),
    }
}

fn reduced(above: i128, under: i128) -> (i128, i128) {
    let (mut a, mut b) = (under, above);
    while let Some(rest) = a.checked_rem(b) {
        (a, b) = (b, rest);
    }
    (above.checked_div(a).unwrap_or(0), under.checked_div(a).unwrap_or(1))
}

#[cfg(test)]
mod tests {
    use super::*;
    use rust_decimal::Decimal;

    #[track_caller]
    fn check(inches: &str, finest: u32, want: &str, feet: &str, exact: bool) {
        let quantity = Quantity::from_decimal(Decimal::from_str_exact(inches).expect(inches)).expect(inches);
        let near = nearest(quantity, finest);
        assert_eq!((near.text().as_str(), near.feet_and_inches().as_str(), near.exact), (want, feet, exact));
    }

    #[test]
    fn the_nearest_mark_is_reduced() {
        check("23.75", 16, "23 3/4", "1' 11 3/4\"", true);
        check("0.625", 64, "5/8", "5/8\"", true);
        check("36", 16, "36", "3'", true);
        check("0", 16, "0", "0\"", true);
        check("-0.5", 16, "-1/2", "-1/2\"", true);
        check("0.866142", 16, "7/8", "7/8\"", false);
        check("11.99", 16, "12", "1'", false);
        check("2.4", 0, "2", "2\"", false);
        check("0.03125", 16, "0", "0\"", false);
    }
}
