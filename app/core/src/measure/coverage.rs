//! How much of a finish an area takes, by what one tin is said to cover.
//!
//! `area × pieces × coats ÷ area that one covers`, what is lost on top, rounded once to 10⁻⁶. Source: common practice;
//! the figure on the tin is for one coat. Where a data sheet gives solids and film instead, `sums::film` makes it an
//! area. Not here: drying.

use super::{
    Accepts, Dimension, Fraction, Quantity, Ratio, Refusal, Unit, Why,
    marks::{self, Hint},
    number,
    sums::film,
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
    /// said of one `per`. `65 % at 125 µm` says the share of solids by volume and the dry film, and is said of a litre.
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
        if let Some((solids, film)) = text.split_once('%') {
            return by_film(solids, film, hint);
        }
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

/// What a litre covers by its solids and the film that they leave.
fn by_film(solids: &str, film: &str, hint: Hint) -> Result<Spread, Refusal> {
    let solids = number::percent(solids)?;
    let solids = Ratio::share(solids).filter(|it| !it.is_zero());
    let solids = solids.ok_or(Refusal::whole(Why::TooLarge { most: 100.into() }, Accepts::Percent))?;
    let words = [",", "solids", "by volume", ",", "at"];
    let film = words.iter().fold(film.trim(), |text, word| text.strip_prefix(word).unwrap_or(text).trim());
    // Thousandths of a millimetre and of an inch are units of films only.
    let fine = [
        ("µm", Unit::Millimetre),
        ("μm", Unit::Millimetre),
        ("um", Unit::Millimetre),
        ("microns", Unit::Millimetre),
    ];
    let fine = fine.into_iter().chain([("mils", Unit::Inch), ("mil", Unit::Inch), ("thou", Unit::Inch)]);
    let found = fine.into_iter().find_map(|(word, unit)| Some((film.strip_suffix(word)?, unit)));
    let (thickness, unit) = match found {
        Some((text, unit)) => {
            let thousandths = marks::quantity(text.trim(), Hint { unit: None, ..hint })?;
            let thickness = thousandths.amount.times(Fraction::of(1, 1_000).unwrap_or(Fraction::ZERO));
            (thickness.and_then(Fraction::quantity).unwrap_or_default(), unit)
        }
        None => {
            let typed = marks::quantity(film, Hint { unit: None, ..hint })?;
            let unit = typed.unit.ok_or(Refusal::whole(Why::UnitMissing, Accepts::Quantity))?;
            (typed.quantity(), unit)
        }
    };
    let refused = Refusal::whole(
        Why::OtherKind { wanted: Dimension::Length, found: unit.dimension() },
        Accepts::Quantity,
    );
    let area = film::covers(solids, thickness, unit).and_then(Fraction::quantity).ok_or(refused)?;
    Ok(Spread { area, unit: Unit::SquareMetre, per: Unit::Litre })
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

    /// How many of an item it takes, when one covers that much and so much stays in brush and tin on top. `None`: it
    /// covers nothing, a unit is no area, or too large.
    ///
    /// ```
    /// # use benchslate_core::measure::{Quantity, Ratio, Unit, coverage::Coats};
    /// let quantity = |text: &str| Quantity::from_decimal(text.parse().unwrap()).unwrap();
    /// let trays = Coats { area: quantity("0.19"), unit: Unit::SquareMetre, pieces: 24, coats: 1 };
    /// assert_eq!(trays.coated().unwrap().shown_trimmed(), "4.56");
    /// let tins = |on_top| trays.takes(quantity("15"), Unit::SquareMetre, on_top).unwrap().shown_trimmed();
    /// assert_eq!(tins(Ratio::ZERO), "0.304");
    /// assert_eq!(tins(Ratio::share("0.1".parse().unwrap()).unwrap()), "0.3344");
    /// ```
    pub fn takes(self, covers: Quantity, unit: Unit, on_top: Ratio) -> Option<Quantity> {
        let one = Fraction::from_quantity(covers).converted(unit, self.unit)?;
        let all = Fraction::from_quantity(Quantity::from_micros(on_top.on_top().micros()));
        self.exact()?.times(Fraction::of(one.denominator(), one.numerator())?)?.times(all)?.quantity()
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
        let takes = |coats, covers: &str, unit| {
            top(coats).takes(quantity(covers), unit, Ratio::ZERO).map(Quantity::shown_trimmed)
        };
        assert_eq!(takes(1, "100", Unit::SquareFoot).as_deref(), Some("0.2"));
        assert_eq!(takes(3, "100", Unit::SquareFoot).as_deref(), Some("0.6"));
        assert_eq!(takes(1, "9.290304", Unit::SquareMetre).as_deref(), Some("0.2"));
        assert_eq!(takes(0, "100", Unit::SquareFoot).as_deref(), Some("0"));
    }

    #[test]
    fn what_covers_nothing_or_is_no_area_has_no_answer() {
        assert_eq!(top(1).takes(Quantity::ZERO, Unit::SquareFoot, Ratio::ZERO), None);
        assert_eq!(top(1).takes(quantity("1"), Unit::Litre, Ratio::ZERO), None);
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
        spread("65 % at 125 µm", Some(("5.2", Unit::SquareMetre, Unit::Litre)));
        spread("65 %, 0.125 mm", Some(("5.2", Unit::SquareMetre, Unit::Litre)));
        spread("50 % solids by volume at 2 mil", Some(("9.84252", Unit::SquareMetre, Unit::Litre)));
        spread("65 % at 125", None);
        spread("65 %", None);
        spread("0 % at 125 µm", None);
        spread("165 % at 125 µm", None);
        spread("65 % at 0 µm", None);
        spread("65 % at 3 kg", None);
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
        let _ = all.takes(quantity("0.000001"), Unit::SquareMetre, Ratio::ONE);
    }
}
