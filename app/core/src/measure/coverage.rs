//! How much of a finish an area takes, by what one tin is said to cover.
//!
//! `area × pieces × coats ÷ area that one covers`, rounded once to 10⁻⁶. Source: common practice; the
//! figure on the tin is for one coat. Not here: spreading rate from film thickness, drying.

use super::{
    Accepts, Dimension, Fraction, Quantity, Refusal, Unit, Why,
    marks::{self, Hint},
};

/// What so much of a finish covers with one coat.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Spread {
    /// The area.
    pub area: Quantity,
    /// Unit of the area.
    pub unit: Unit,
    /// Of one of these: a litre, a tin.
    pub per: Unit,
}

impl Spread {
    /// Reads `12 m2 a litre`, `12 m²/l`, `350 sq ft per gal`; a bare area is in `hint`'s unit, and without an end it is
    /// said of one `per`.
    ///
    /// ```
    /// # use benchslate_core::measure::{Unit, coverage::Spread, marks::Hint};
    /// let area = Hint { unit: Some(Unit::SquareMetre), ..Hint::default() };
    /// let read = |text| Spread::typed(text, area, Unit::Tin).unwrap();
    /// assert_eq!((read("12 m2 a litre").unit, read("12 m²/l").per), (Unit::SquareMetre, Unit::Litre));
    /// assert_eq!((read("15").area.shown_trimmed().as_str(), read("15").per), ("15", Unit::Tin));
    /// ```
    ///
    /// # Errors
    /// As [`marks::quantity`]; what is no area, or nothing at all.
    pub fn typed(text: &str, hint: Hint, per: Unit) -> Result<Spread, Refusal> {
        let (area, of) = split_per(text);
        let (area, unit) = area_typed(area, hint, Unit::Inch)?;
        let per = match of {
            // A unit alone is one of it.
            Some(of) => {
                let one = marks::quantity(&["1 ", of].concat(), Hint { unit: None, ..hint })?;
                one.unit.unwrap_or(per)
            }
            None => per,
        };
        Ok(Spread { area, unit, per })
    }
}

fn split_per(text: &str) -> (&str, Option<&str>) {
    let word = [" an ", " a ", " per "].into_iter().find_map(|word| text.split_once(word));
    // A stroke between figures is a fraction.
    let stroke = || {
        let (area, of) = text.rsplit_once('/')?;
        let unit = of.trim_start().starts_with(char::is_alphabetic);
        unit.then_some((area, of))
    };
    match word.or_else(stroke) {
        Some((area, of)) => (area.trim(), Some(of.trim())),
        None => (text, None),
    }
}

/// Reads an area: `0.19 m2`, or two sides with a cross between them, `600 x 320 mm`. A bare area is in `hint`'s unit,
/// bare sides in `side`; a unit after the last side is that of both.
///
/// ```
/// # use benchslate_core::measure::{Unit, coverage::area_typed, marks::Hint};
/// let area = Hint { unit: Some(Unit::SquareMetre), ..Hint::default() };
/// let read = |text| area_typed(text, area, Unit::Millimetre).unwrap().0.shown_trimmed();
/// assert_eq!((read("0.19"), read("600 x 320"), read("2 × 4 ft")), ("0.19".into(), "0.192".into(), "0.743224".into()));
/// ```
///
/// # Errors
/// As [`marks::quantity`]; what is neither an area nor two lengths.
pub fn area_typed(text: &str, hint: Hint, side: Unit) -> Result<(Quantity, Unit), Refusal> {
    let wanted = hint.unit.filter(|unit| unit.dimension() == Dimension::Area).unwrap_or(Unit::SquareMetre);
    if let Some((length, width)) = text.split_once(['×', 'x', 'X', '*']) {
        let read = |text: &str| marks::quantity(text.trim(), Hint { unit: None, ..hint });
        let (length, width) = (read(length)?, read(width)?);
        let both = width.unit.unwrap_or(side);
        return Ok((marks::area(length, width, both, wanted)?, wanted));
    }
    let typed = marks::quantity(text, Hint { unit: Some(wanted), ..hint })?;
    let unit = typed.unit.unwrap_or(wanted);
    if unit.dimension() != Dimension::Area {
        let why = Why::OtherKind { wanted: Dimension::Area, found: unit.dimension() };
        return Err(Refusal::whole(why, Accepts::Quantity));
    }
    Ok((typed.quantity(), unit))
}

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

    #[track_caller]
    fn spread(text: &str, want: Option<(&str, Unit, Unit)>) {
        let hint = Hint { unit: Some(Unit::SquareMetre), ..Hint::default() };
        let read = Spread::typed(text, hint, Unit::Tin).ok();
        let want = want.map(|(area, unit, per)| Spread { area: quantity(area), unit, per });
        assert_eq!(read, want, "{text}");
    }

    #[test]
    fn what_a_tin_says_it_covers_is_read_as_it_is_written() {
        spread("12 m2 a litre", Some(("12", Unit::SquareMetre, Unit::Litre)));
        spread("12m²/l", Some(("12", Unit::SquareMetre, Unit::Litre)));
        spread("350 sq ft per gal", Some(("350", Unit::SquareFoot, Unit::UsGallon)));
        spread("1/2 m2 a tin", Some(("0.5", Unit::SquareMetre, Unit::Tin)));
        spread("15", Some(("15", Unit::SquareMetre, Unit::Tin)));
        spread("12 l", None);
        spread("12 m2 a", None);
        spread("12 m2 a wing", None);
        spread("", None);
    }

    #[track_caller]
    fn area(text: &str, want: Option<(&str, Unit)>) {
        let hint = Hint { unit: Some(Unit::SquareFoot), ..Hint::default() };
        let read = area_typed(text, hint, Unit::Inch).ok();
        assert_eq!(read, want.map(|(area, unit)| (quantity(area), unit)), "{text}");
    }

    #[test]
    fn an_area_is_typed_or_is_two_sides() {
        area("20", Some(("20", Unit::SquareFoot)));
        area("0.19 m2", Some(("0.19", Unit::SquareMetre)));
        area("24 x 12", Some(("2", Unit::SquareFoot)));
        area("3' x 1' 6\"", Some(("4.5", Unit::SquareFoot)));
        area("2 × 4 ft", Some(("8", Unit::SquareFoot)));
        area("24 x", None);
        area("24 x 12 x 3", None);
        area("24 kg x 3", None);
        area("3 l", None);
    }

    #[test]
    fn the_absurd_has_no_answer_and_does_not_panic() {
        let most = quantity("1000000000000");
        let all = Coats { area: most, unit: Unit::SquareFoot, pieces: u32::MAX, coats: u32::MAX };
        assert!(all.coated().is_some());
        let _ = all.takes(quantity("0.000001"), Unit::SquareMetre);
    }
}
