//! What a finish covers by how much of it stays, and how thick a film is wet and dry.
//!
//! A litre spread at a dry film of d µm with a share v of solids by volume covers 1000·v ÷ d m². Wet and dry film:
//! dry = wet × v; thinned by a share r of its volume, wet = dry × (1 + r) ÷ v.
//! Source: theoretical spreading rate from non-volatile matter by volume, as ISO 23811 defines it. Not here: what stays
//! in the brush, which is the maker's allowance.

use crate::measure::{Dimension, Fraction, Quantity, Ratio, Unit};

/// Square metres that a litre covers with one coat. `dry`: thickness of the dry film. None: nothing stays, no film, or
/// no length.
///
/// ```
/// # use benchslate_core::measure::{Quantity, Ratio, Unit, sums::film};
/// let quantity = |text: &str| Quantity::from_decimal(text.parse().unwrap()).unwrap();
/// let solids = Ratio::share("0.65".parse().unwrap()).unwrap();
/// let covers = film::covers(solids, quantity("0.125"), Unit::Millimetre).unwrap();
/// assert_eq!(covers.quantity().unwrap().shown_trimmed(), "5.2");
/// ```
pub fn covers(solids: Ratio, dry: Quantity, unit: Unit) -> Option<Fraction> {
    let dry = millimetres(dry, unit)?;
    // A litre one millimetre thick covers a square metre.
    solids_of(solids)?.times(inverse(dry)?)
}

/// The dry film that a wet one leaves, in millimetres.
pub fn dry(wet: Quantity, unit: Unit, solids: Ratio) -> Option<Fraction> {
    millimetres(wet, unit)?.times(solids_of(solids)?)
}

/// The wet film that leaves a dry one, in millimetres; thinned by a share of its volume.
pub fn wet(dry: Quantity, unit: Unit, solids: Ratio, thinned: Ratio) -> Option<Fraction> {
    let thinned = Fraction::from_quantity(Quantity::from_micros(thinned.on_top().micros()));
    millimetres(dry, unit)?.times(thinned)?.times(inverse(solids_of(solids)?)?)
}

fn millimetres(thickness: Quantity, unit: Unit) -> Option<Fraction> {
    let is_film = unit.dimension() == Dimension::Length && !thickness.is_negative() && !thickness.is_zero();
    Fraction::from_quantity(thickness).converted(unit, Unit::Millimetre).filter(|_| is_film)
}

fn solids_of(solids: Ratio) -> Option<Fraction> {
    let share = Fraction::from_quantity(Quantity::from_micros(solids.micros()));
    Some(share).filter(|_| !solids.is_zero())
}

fn inverse(of: Fraction) -> Option<Fraction> {
    Fraction::of(of.denominator(), of.numerator())
}

#[cfg(test)]
mod tests {
    use super::*;
    use rust_decimal::Decimal;

    fn quantity(text: &str) -> Quantity {
        Quantity::from_decimal(Decimal::from_str_exact(text).unwrap()).unwrap()
    }

    fn share(text: &str) -> Ratio {
        Ratio::share(Decimal::from_str_exact(text).unwrap()).unwrap()
    }

    #[test]
    fn what_stays_makes_the_film() {
        let said = |it: Option<Fraction>| it.and_then(Fraction::quantity).unwrap().shown_trimmed();
        assert_eq!(said(dry(quantity("0.1"), Unit::Millimetre, share("0.5"))), "0.05");
        assert_eq!(said(wet(quantity("0.05"), Unit::Millimetre, share("0.5"), Ratio::ZERO)), "0.1");
    }

    #[test]
    fn no_film_and_no_solids_cover_nothing_that_can_be_said() {
        assert_eq!(covers(share("0"), quantity("0.1"), Unit::Millimetre), None);
        assert_eq!(covers(share("0.5"), quantity("0"), Unit::Millimetre), None);
        assert_eq!(covers(share("0.5"), quantity("1"), Unit::Litre), None);
    }
}
