//! How much of a finish an area takes, by what one tin is said to cover.
//!
//! `area × pieces × coats ÷ area that one covers`, rounded once to 10⁻⁶. Source: common practice; the
//! figure on the tin is for one coat. Not here: spreading rate from film thickness, drying.

use super::{Dimension, Fraction, Quantity, Unit};

/// Coats on so many like pieces.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Coats {
    /// Area of one piece.
    pub area: Quantity,
    /// Unit of that area.
    pub unit: Unit,
    /// How many pieces.
    pub pieces: u32,
    /// How many coats.
    pub coats: u32,
}

impl Coats {
    /// The area that is coated, each coat counted, in its own unit. `None`: too large, or no area.
    pub fn coated(self) -> Option<Quantity> {
        self.exact()?.quantity()
    }

    /// How many of an item it takes, when one covers that much. `None`: it covers nothing, a unit
    /// is no area, or too large.
    ///
    /// ```
    /// # use benchslate_core::measure::{Quantity, Unit, coverage::Coats};
    /// let quantity = |text: &str| Quantity::from_decimal(text.parse().unwrap()).unwrap();
    /// let trays = Coats { area: quantity("0.19"), unit: Unit::SquareMetre, pieces: 24, coats: 1 };
    /// assert_eq!(trays.coated().unwrap().shown_trimmed(), "4.56");
    /// let tins = trays.takes(quantity("15"), Unit::SquareMetre).unwrap();
    /// assert_eq!(tins.shown_trimmed(), "0.304");
    /// ```
    pub fn takes(self, covers: Quantity, unit: Unit) -> Option<Quantity> {
        let one = Fraction::from_quantity(covers).converted(unit, self.unit)?;
        self.exact()?.times(Fraction::of(one.denominator(), one.numerator())?)?.quantity()
    }

    fn exact(self) -> Option<Fraction> {
        if self.unit.dimension() != Dimension::Area {
            return None;
        }
        let many = i128::from(self.pieces).checked_mul(i128::from(self.coats))?;
        Fraction::from_quantity(self.area).times(Fraction::of(many, 1)?)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use rust_decimal::Decimal;

    fn quantity(text: &str) -> Quantity {
        Quantity::from_decimal(Decimal::from_str_exact(text).expect(text)).expect(text)
    }

    fn top(coats: u32) -> Coats {
        Coats { area: quantity("20"), unit: Unit::SquareFoot, pieces: 1, coats }
    }

    #[test]
    fn each_coat_takes_as_much_again() {
        let takes =
            |coats, covers: &str, unit| top(coats).takes(quantity(covers), unit).map(Quantity::shown_trimmed);
        assert_eq!(takes(1, "100", Unit::SquareFoot).as_deref(), Some("0.2"));
        assert_eq!(takes(3, "100", Unit::SquareFoot).as_deref(), Some("0.6"));
        assert_eq!(takes(1, "9.290304", Unit::SquareMetre).as_deref(), Some("0.2"));
        assert_eq!(takes(0, "100", Unit::SquareFoot).as_deref(), Some("0"));
    }

    #[test]
    fn what_covers_nothing_or_is_no_area_has_no_answer() {
        assert_eq!(top(1).takes(Quantity::ZERO, Unit::SquareFoot), None);
        assert_eq!(top(1).takes(quantity("1"), Unit::Litre), None);
        assert_eq!(Coats { unit: Unit::Litre, ..top(1) }.coated(), None);
    }

    #[test]
    fn the_absurd_has_no_answer_and_does_not_panic() {
        let most = quantity("1000000000000");
        let all = Coats { area: most, unit: Unit::SquareFoot, pieces: u32::MAX, coats: u32::MAX };
        assert!(all.coated().is_some());
        let _ = all.takes(quantity("0.000001"), Unit::SquareMetre);
    }
}
