//! Figures as they are shown: rounded alone, or apportioned so that a sum adds up.
//!
//! Top-down: the parts of a shown figure are apportioned under it, largest remainder first, ties
//! to the earlier part. A part that is already whole minor units never moves; terms may be
//! negative. Source: our own rule; largest remainder is Hamilton's method of apportionment.
//! Not here: currency signs and grouping, which the browser adds; hours (`minutes`).

use super::{Money, fixed};

/// A figure of money rounded to whole minor units for showing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Shown {
    units: i128,
    minor: u8,
}

impl Shown {
    /// Digits after the point.
    pub fn minor(self) -> u8 {
        self.minor
    }

    /// Rounded half-even by itself, to `minor` digits after the point (six at most).
    pub fn alone(money: Money, minor: u8) -> Shown {
        let minor = held(minor);
        let units = fixed::mul_div(money.micros(), 1, step(minor)).unwrap_or(0);
        Shown { units, minor }
    }

    /// Shows the parts of a figure that is shown as `self`, so that they add up to it.
    ///
    /// Each part goes to the whole minor unit next below or above it. Parts that don't make up
    /// this figure (more than a minor unit a part away) are each rounded alone.
    ///
    /// ```
    /// # use benchslate_core::measure::{Money, Shown};
    /// let money = |text: &str| Money::from_decimal(text.parse().unwrap()).unwrap();
    /// let whole = Shown::alone(money("2994.014356"), 2);
    /// let parts = whole.parts(&[money("2083.925045"), money("910.089311")]);
    /// assert_eq!(whole.text(), "2994.01");
    /// assert_eq!(parts.iter().map(Shown::text).collect::<Vec<_>>(), ["2083.92", "910.09"]);
    /// ```
    pub fn parts(self, parts: &[Money]) -> Vec<Shown> {
        let step = step(self.minor);
        let floors: Vec<(i128, i128)> =
            parts.iter().map(|part| floor_and_rest(part.micros(), step)).collect();
        let Some(units) = fixed::raised(&floors, self.units) else { return self.each_alone(parts) };
        units.into_iter().map(|units| Shown { units, minor: self.minor }).collect()
    }

    /// Plain text with the digits of the currency: `-32.09`, `2994.01`, never `-0.00`.
    pub fn text(&self) -> String {
        fixed::point_text(self.units, u32::from(self.minor))
    }

    /// Nothing, as shown.
    pub fn is_zero(self) -> bool {
        self.units == 0
    }

    /// Below zero, as shown.
    pub fn is_negative(self) -> bool {
        self.units < 0
    }

    /// The same size the other way: a term that a sum takes off is shown by its size beside a minus.
    #[must_use]
    pub fn negated(self) -> Shown {
        Shown { units: self.units.saturating_neg(), minor: self.minor }
    }

    fn each_alone(self, parts: &[Money]) -> Vec<Shown> {
        parts.iter().map(|part| Shown::alone(*part, self.minor)).collect()
    }
}

/// No currency has more digits than money is held to.
fn held(minor: u8) -> u8 {
    minor.min(6)
}

/// Millionths in one minor unit.
fn step(minor: u8) -> i128 {
    let digits = fixed::SCALE_DIGITS.saturating_sub(u32::from(minor));
    fixed::power_of_ten(digits).unwrap_or(1)
}

/// Whole minor units at or below, and the millionths above them.
fn floor_and_rest(micros: i128, step: i128) -> (i128, i128) {
    (micros.checked_div_euclid(step).unwrap_or(0), micros.checked_rem_euclid(step).unwrap_or(0))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use rust_decimal::Decimal;

    fn money(text: &str) -> Money {
        Money::from_decimal(Decimal::from_str_exact(text).expect(text)).expect(text)
    }

    #[track_caller]
    fn check(parts: &[&str], minor: u8, want_whole: &str, want: &[&str]) {
        let parts: Vec<Money> = parts.iter().map(|text| money(text)).collect();
        let whole = parts.iter().fold(Money::ZERO, |sum, part| sum.plus(*part));
        let shown = Shown::alone(whole, minor);
        assert_eq!(shown.text(), want_whole);
        let got: Vec<String> = shown.parts(&parts).iter().map(Shown::text).collect();
        assert_eq!(got, want);
    }

    #[test]
    fn the_sides_of_a_build_add_up_to_its_true_cost() {
        check(&["2083.925045", "910.089311"], 2, "2994.01", &["2083.92", "910.09"]);
    }

    #[test]
    fn a_typed_amount_never_moves() {
        check(&["58.00", "0.004", "0.004"], 2, "58.01", &["58.00", "0.01", "0.00"]);
        check(&["10.00", "0.333333", "0.333333", "0.333334"], 2, "11.00", &["10.00", "0.33", "0.33", "0.34"]);
    }

    #[test]
    fn the_signed_terms_of_a_bridge_add_up() {
        check(&["259.41", "-55.531429", "16.454400"], 2, "220.33", &["259.41", "-55.53", "16.45"]);
        check(&["-0.005", "-0.005"], 2, "-0.01", &["0.00", "-0.01"]);
    }

    #[test]
    fn a_currency_without_minor_units_is_shown_whole() {
        check(&["100.5", "100.5"], 0, "201", &["101", "100"]);
        check(&["0.0005", "1.2345"], 3, "1.235", &["0.001", "1.234"]);
    }

    #[test]
    fn parts_of_some_other_figure_are_rounded_alone() {
        let whole = Shown::alone(money("100"), 2);
        let got: Vec<String> = whole.parts(&[money("1.005"), money("2")]).iter().map(Shown::text).collect();
        assert_eq!(got, ["1.00", "2.00"]);
        let near = Shown::alone(money("1.02"), 2).parts(&[money("1"), money("0.01")]);
        assert_eq!(near.iter().map(Shown::text).collect::<Vec<_>>(), ["1.00", "0.01"]);
    }

    #[test]
    fn minus_nothing_is_nothing() {
        assert_eq!(money("-0.004").shown(2), "0.00");
        assert_eq!(money("-32.085001").shown(2), "-32.09");
    }

    proptest! {
        #[test]
        fn parts_add_up_within_one_minor_unit_down_three_levels(
            micros in prop::collection::vec(-10_i128.pow(12)..10_i128.pow(12), 4..16), minor in 0_u8..5,
        ) {
            // Groups of parts under one whole, then the parts of each group under the shown group.
            let parts: Vec<Money> = micros.iter().map(|m| Money::from_micros(*m)).collect();
            let groups: Vec<&[Money]> = parts.chunks(3).collect();
            let sum = |of: &[Money]| of.iter().fold(Money::ZERO, |sum, part| sum.plus(*part));
            let sums: Vec<Money> = groups.iter().map(|group| sum(group)).collect();
            let whole = Shown::alone(sum(&parts), minor);
            let shown = whole.parts(&sums);
            prop_assert_eq!(shown.iter().map(|s| s.units).sum::<i128>(), whole.units);
            for (group, shown) in groups.iter().zip(&shown) {
                let leaves = shown.parts(group);
                prop_assert_eq!(leaves.iter().map(|s| s.units).sum::<i128>(), shown.units);
                for (leaf, exact) in leaves.iter().zip(*group) {
                    prop_assert!((leaf.units * step(minor) - exact.micros()).abs() < step(minor));
                }
            }
        }
    }
}
