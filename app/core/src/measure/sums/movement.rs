//! How a panel moves with its moisture, and what it weighs.
//!
//! ΔD = D × C × (M₂ − M₁), D the width at M₁, C the change for one per cent, flat or quarter sawn (*Wood Handbook*,
//! equation 13-2). It holds from 6 to 14 % only. Density at moisture M is G × (1 + M ÷ 100) × 1000 kg/m³ (equation
//! 4-12); G at 12 %, so it is at its best near 12. Not here: thickness, which moves by the other coefficient.

use super::species::Species;
use crate::measure::{Fraction, Quantity, Unit};

/// How a board lies in the log.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Sawn {
    /// Its face along the growth rings.
    #[default]
    Flat,
    /// Its face across them.
    Quarter,
}

/// Why nothing can be said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Beyond {
    /// A moisture below 6 or above 14 %.
    Moisture,
    /// No coefficient is known for the species.
    Species,
    /// A number is too large.
    Number,
}

/// Moisture between which the coefficients hold, in per cent.
pub const FROM: i64 = 6;
/// See [`FROM`].
pub const TO: i64 = 14;

/// Change of a width from one moisture to another, in its own unit: below zero it shrinks. Moistures in per cent.
///
/// ```
/// # use benchslate_core::measure::{Quantity, sums::{movement::{Sawn, change}, species::Species}};
/// let quantity = |text: &str| Quantity::from_decimal(text.parse().unwrap()).unwrap();
/// let change = change(Species::FirWhite, Sawn::Flat, quantity("232"), quantity("8"), quantity("11")).unwrap();
/// assert_eq!(change.quantity().unwrap().shown_trimmed(), "1.7052");
/// ```
///
/// # Errors
/// As [`Beyond`].
pub fn change(
    species: Species,
    sawn: Sawn,
    width: Quantity,
    from: Quantity,
    to: Quantity,
) -> Result<Fraction, Beyond> {
    let holds = |it: Quantity| {
        let it = Fraction::from_quantity(it);
        it.is_at_most(TO) && Fraction::of(FROM.into(), 1).is_some_and(|least| it.covers(least))
    };
    if !holds(from) || !holds(to) {
        return Err(Beyond::Moisture);
    }
    let coefficient = match sawn {
        Sawn::Flat => species.flat_sawn(),
        Sawn::Quarter => species.quarter_sawn(),
    };
    let coefficient = coefficient.ok_or(Beyond::Species)?;
    let share = Fraction::of(coefficient.into(), 100_000).ok_or(Beyond::Number)?;
    let by = Fraction::from_quantity(to.minus(from));
    Fraction::from_quantity(width).times(share).and_then(|it| it.times(by)).ok_or(Beyond::Number)
}

/// Kilograms of a volume at a moisture in per cent. None: no volume, or too large.
///
/// ```
/// # use benchslate_core::measure::{Quantity, Unit, sums::{movement::mass, species::Species}};
/// let quantity = |text: &str| Quantity::from_decimal(text.parse().unwrap()).unwrap();
/// let cubic_metre = mass(Species::AshWhite, quantity("1"), Unit::CubicMetre, quantity("12")).unwrap();
/// assert_eq!(cubic_metre.quantity().unwrap().shown_trimmed(), "672");
/// ```
pub fn mass(species: Species, volume: Quantity, unit: Unit, moisture: Quantity) -> Option<Fraction> {
    let litres = Fraction::from_quantity(volume).converted(unit, Unit::Litre)?;
    let wet = Fraction::from_quantity(moisture).times(Fraction::of(1, 100)?)?.plus(Fraction::ONE)?;
    litres.times(Fraction::of(species.gravity().into(), 100)?)?.times(wet)
}

#[cfg(test)]
mod tests {
    use super::*;
    use rust_decimal::Decimal;

    fn quantity(text: &str) -> Quantity {
        Quantity::from_decimal(Decimal::from_str_exact(text).unwrap()).unwrap()
    }

    #[test]
    fn beyond_six_to_fourteen_nothing_is_said() {
        let from =
            |from, to| change(Species::OakWhite, Sawn::Flat, quantity("300"), quantity(from), quantity(to));
        assert!(from("6", "14").is_ok());
        assert_eq!(from("5.9", "12"), Err(Beyond::Moisture));
        assert_eq!(from("12", "14.1"), Err(Beyond::Moisture));
        let cedar =
            change(Species::RedcedarWestern, Sawn::Flat, quantity("300"), quantity("8"), quantity("9"));
        assert_eq!(cedar, Err(Beyond::Species));
    }

    #[test]
    fn drying_shrinks_and_quarter_sawn_less() {
        let moved =
            |sawn| change(Species::OakRed, sawn, quantity("10"), quantity("12"), quantity("8")).unwrap();
        assert_eq!(moved(Sawn::Flat).quantity().unwrap().shown_trimmed(), "-0.1476");
        assert_eq!(moved(Sawn::Quarter).quantity().unwrap().shown_trimmed(), "-0.0632");
    }

    #[test]
    fn a_volume_is_wanted_for_a_mass() {
        assert_eq!(mass(Species::OakRed, quantity("1"), Unit::Metre, quantity("12")), None);
    }
}
