//! Lengths and other quantities as the trade types them, and fractions as it reads them.
//!
//! `5/8`, `23 3/4`, `3' 4 5/8"`, `22 mm`, `1.2 m`, `12 board feet`, `946 ml`. Terms of one kind add
//! up, the finer one last; a bare number after feet is inches, after pounds ounces. Everything is
//! exact until it is rounded once by whoever keeps it. A fraction of a length is one of a rule: halves down to
//! sixty-fourths.
//! Source: common practice of the trade; UCUM for what the units are. Not here: what a field asks
//! for, which comes in as a [`Hint`]; names for people to read.

mod fraction_of;
mod words;

pub use fraction_of::{Nearest, nearest};

use super::{
    Accepts, Dimension, Fraction, Quantity, Refusal, Unit, Why, limits,
    number::{MINUS, mixed, refuse_minus, too_large},
    rule,
    scan::Cursor,
};
use words::unit_of;

/// What a field expects.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct Hint {
    /// The unit of a bare number, and what `oz` means beside a volume.
    pub unit: Option<Unit>,
    /// Whose gallons, pints and fluid ounces.
    pub gallons: Gallons,
}

/// Whose gallons, quarts, pints and fluid ounces are meant where it isn't said.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Gallons {
    /// US measure: a gallon is 231 in³.
    #[default]
    Us,
    /// Imperial measure: a gallon is 4.54609 L.
    Imperial,
}

/// A quantity as it was typed, exact.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Typed {
    /// How much.
    pub amount: Fraction,
    /// Of what: as typed, else the hint's; none where neither says.
    pub unit: Option<Unit>,
}

impl Typed {
    /// In its own unit, rounded once to 10⁻⁶.
    pub fn quantity(self) -> Quantity {
        // The limit was kept on reading, so it fits.
        self.amount.quantity().unwrap_or(Quantity::ZERO)
    }

    /// In another unit, rounded once to 10⁻⁶; a typed quantity without a unit is in that one.
    ///
    /// # Errors
    /// [`Why::OtherKind`]: a weight where a length is wanted.
    pub fn in_unit(self, wanted: Unit) -> Result<Quantity, Refusal> {
        let from = self.unit.unwrap_or(wanted);
        let why = Why::OtherKind { wanted: wanted.dimension(), found: from.dimension() };
        let other_kind = Refusal::whole(why, Accepts::Quantity);
        if !from.converts_to(wanted) {
            return Err(other_kind);
        }
        let converted = self.amount.converted(from, wanted).and_then(Fraction::quantity);
        converted.ok_or(Refusal::whole(too_large(), Accepts::Quantity))
    }
}

/// Reads a quantity at or above zero.
///
/// ```
/// # use benchslate_core::measure::{Unit, Why, marks::{self, Hint}};
/// let inches = Hint { unit: Some(Unit::Inch), ..Hint::default() };
/// let read = |text| marks::quantity(text, inches).unwrap();
/// assert_eq!(read("23 3/4").quantity().shown_trimmed(), "23.75");
/// assert_eq!(read("3' 4 5/8\"").in_unit(Unit::Inch).unwrap().shown_trimmed(), "40.625");
/// assert_eq!(read("22 mm").unit, Some(Unit::Millimetre));
/// assert_eq!(marks::quantity("7/0", inches).unwrap_err().why, Why::ZeroUnderLine);
/// ```
///
/// # Errors
/// Half-typed, negative, ambiguous or too large numbers, units that are not known or don't go
/// together, text beyond [`limits::MOST_TYPED`]; each with its place.
pub fn quantity(text: &str, hint: Hint) -> Result<Typed, Refusal> {
    let mut cursor = Cursor::new(text, Accepts::Quantity)?;
    refuse_minus(&cursor)?;
    let mut sum = term(&mut cursor, None, hint)?;
    while !cursor.is_done() {
        let place = cursor.place();
        let more = term(&mut cursor, sum.unit, hint)?;
        sum = together(sum, more).map_err(|why| cursor.refuse_at(why, place))?;
    }
    let unit = sum.unit.or(hint.unit);
    if !sum.amount.is_at_most(limits::MOST_UNITS) {
        return Err(cursor.refuse_whole(too_large()));
    }
    Ok(Typed { amount: sum.amount, unit })
}

/// What is typed with the lit marks of a steel rule added to it: each of `lit` stands under a 1 and
/// is a part of an inch. Nothing typed is nothing; a bare number is inches.
///
/// ```
/// # use benchslate_core::measure::{Unit, marks::{self, Hint}};
/// let sum = marks::with_lit("19", &[4, 8], Hint::default()).unwrap();
/// assert_eq!((marks::nearest(sum.quantity(), 32).text().as_str(), sum.unit), ("19 3/8", Some(Unit::Inch)));
/// ```
///
/// # Errors
/// As [`quantity`]; a unit that inches can't follow, such as millimetres; no mark at all under a 1.
pub fn with_lit(text: &str, lit: &[u32], hint: Hint) -> Result<Typed, Refusal> {
    let refused = |why| Refusal::whole(why, Accepts::Quantity);
    let mut marks = Fraction::ZERO;
    for under in lit {
        let mark = Fraction::of(1, i128::from(*under)).ok_or(refused(Why::ZeroUnderLine))?;
        marks = marks.plus(mark).ok_or(refused(too_large()))?;
    }
    let marks = Typed { amount: marks, unit: Some(Unit::Inch) };
    if text.trim().is_empty() {
        return Ok(marks);
    }
    let typed = quantity(text, Hint { unit: Some(Unit::Inch), ..hint })?;
    if lit.is_empty() {
        return Ok(typed);
    }
    if typed.unit == marks.unit {
        let amount = typed.amount.plus(marks.amount).ok_or(refused(too_large()))?;
        return Ok(Typed { amount, ..typed });
    }
    together(typed, marks).map_err(refused)
}

/// Length times width, in a unit of area, rounded once to 10⁻⁶; bare numbers are in `bare`.
///
/// # Errors
/// A unit that is no length, a `wanted` that is no area, or an area that is too large.
pub fn area(length: Typed, width: Typed, bare: Unit, wanted: Unit) -> Result<Quantity, Refusal> {
    let refused = |why| Refusal::whole(why, Accepts::Quantity);
    let inches = |side: Typed| {
        let unit = side.unit.unwrap_or(bare);
        let why = Why::OtherKind { wanted: Dimension::Length, found: unit.dimension() };
        side.amount.converted(unit, Unit::Inch).ok_or(refused(why))
    };
    let square = inches(length)?.times(inches(width)?).ok_or(refused(too_large()))?;
    let why = Why::OtherKind { wanted: Dimension::Area, found: wanted.dimension() };
    let area = square.converted(Unit::SquareInch, wanted).ok_or(refused(why))?;
    area.quantity().ok_or(refused(too_large()))
}

/// One number with its unit; `after` is the unit of the term before it.
fn term(cursor: &mut Cursor, after: Option<Unit>, hint: Hint) -> Result<Typed, Refusal> {
    if after.is_some() && cursor.peek().is_some_and(|c| MINUS.contains(&c)) {
        cursor.step(); // 3'-4" as drawings write it.
    }
    let place = cursor.place();
    let amount = mixed(cursor)?;
    let written = cursor.passed('/', place);
    cursor.skip_spaces();
    let typed = if cursor.is_done() || cursor.at_digit() {
        bare(cursor, amount, after, place)?
    } else {
        let unit = unit_of(cursor, hint)?;
        cursor.skip_spaces();
        Typed { amount, unit: Some(unit) }
    };
    let length = typed.unit.or(hint.unit).is_some_and(|unit| unit.dimension() == Dimension::Length);
    if length && written && !rule::has(amount.denominator()) {
        return Err(cursor.refuse_at(Why::NoSuchMark, place));
    }
    Ok(typed)
}

/// A number without a unit: alone, or the finer unit after feet or pounds.
fn bare(cursor: &Cursor, amount: Fraction, after: Option<Unit>, place: usize) -> Result<Typed, Refusal> {
    if !cursor.is_done() {
        // `23 3`: most likely a fraction on its way, or a unit left out.
        return Err(cursor.refuse(Why::UnitMissing));
    }
    let unit = match after {
        None => None,
        Some(Unit::Foot) => Some(Unit::Inch),
        Some(Unit::Pound) => Some(Unit::Ounce),
        Some(_) => return Err(cursor.refuse_at(Why::UnitMissing, place)),
    };
    Ok(Typed { amount, unit })
}

/// Adds a finer term of the same kind.
fn together(sum: Typed, more: Typed) -> Result<Typed, Why> {
    let (Some(from), Some(to)) = (sum.unit, more.unit) else { return Err(Why::UnitMissing) };
    let other_kind = Why::OtherKind { wanted: from.dimension(), found: to.dimension() };
    if from.dimension() != to.dimension() || from.dimension() == Dimension::Pack {
        return Err(other_kind);
    }
    if from.ratio_to(to).is_none_or(|(coarse, fine)| coarse <= fine) {
        return Err(Why::FinerFirst);
    }
    let amount = sum.amount.converted(from, to).and_then(|sum| sum.plus(more.amount));
    Ok(Typed { amount: amount.ok_or(too_large())?, unit: Some(to) })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const INCHES: Hint = Hint { unit: Some(Unit::Inch), gallons: Gallons::Us };
    const PLAIN: Hint = Hint { unit: None, gallons: Gallons::Us };

    #[track_caller]
    fn check(text: &str, above: i128, under: i128, unit: Option<Unit>) {
        let typed = quantity(text, PLAIN).map_err(|refused| format!("{text}: {refused:?}"));
        let amount = Fraction::of(above, under).expect("a fraction");
        assert_eq!(typed, Ok(Typed { amount, unit }), "{text}");
    }

    #[track_caller]
    fn refused(text: &str, why: Why, at: usize) {
        let want = Refusal::at(why, Accepts::Quantity, at);
        assert_eq!(quantity(text, PLAIN), Err(want), "{text}");
    }

    #[test]
    fn lengths_are_read_as_the_trade_types_them() {
        check("5/8", 5, 8, None);
        check("23 3/4", 95, 4, None);
        check("23-3/4", 95, 4, None);
        check("23¾", 95, 4, None);
        check("23 ¾ in", 95, 4, Some(Unit::Inch));
        check("3' 4 5/8\"", 325, 8, Some(Unit::Inch));
        check("3'4 5/8", 325, 8, Some(Unit::Inch));
        check("3′ 4⅝″", 325, 8, Some(Unit::Inch));
        check("3’ 4 5/8”", 325, 8, Some(Unit::Inch));
        check("3'-4\"", 40, 1, Some(Unit::Inch));
        check("3 ft 4 5/8 in.", 325, 8, Some(Unit::Inch));
        check("3 feet and 4 inches", 40, 1, Some(Unit::Inch));
        check("3ft4in", 40, 1, Some(Unit::Inch));
        check("3ft2in", 38, 1, Some(Unit::Inch));
        check("3'", 3, 1, Some(Unit::Foot));
        check("22 mm", 22, 1, Some(Unit::Millimetre));
        check("22mm", 22, 1, Some(Unit::Millimetre));
        check("1.2 m", 6, 5, Some(Unit::Metre));
        check("1,2 m", 6, 5, Some(Unit::Metre));
        check("1 m 20 cm", 120, 1, Some(Unit::Centimetre));
        check("8/4", 2, 1, None);
        check("0", 0, 1, None);
    }

    #[test]
    fn other_quantities_are_read_with_their_units() {
        check("12 board feet", 12, 1, Some(Unit::BoardFoot));
        check("12 bd. ft.", 12, 1, Some(Unit::BoardFoot));
        check("12bf", 12, 1, Some(Unit::BoardFoot));
        check("946 ml", 946, 1, Some(Unit::Millilitre));
        check("946 mL", 946, 1, Some(Unit::Millilitre));
        check("1/2 l", 1, 2, Some(Unit::Litre));
        check("32 sq ft", 32, 1, Some(Unit::SquareFoot));
        check("32 ft2", 32, 1, Some(Unit::SquareFoot));
        check("3 m²", 3, 1, Some(Unit::SquareMetre));
        check("2 lb 3", 35, 1, Some(Unit::Ounce));
        check("4 pieces", 4, 1, Some(Unit::Each));
        check("2 tins", 2, 1, Some(Unit::Tin));
        check("1 US quart", 1, 1, Some(Unit::UsQuart));
        check("1 imp. gal", 1, 1, Some(Unit::ImperialGallon));
        check("1 qt", 1, 1, Some(Unit::UsQuart));
        check("8 fl. oz.", 8, 1, Some(Unit::UsFluidOunce));
        check("8 oz", 8, 1, Some(Unit::Ounce));
    }

    #[test]
    fn the_field_says_what_a_bare_number_and_an_ounce_are() {
        let oil = Hint { unit: Some(Unit::Millilitre), gallons: Gallons::Imperial };
        let unit = |text, hint| quantity(text, hint).ok().and_then(|typed| typed.unit);
        assert_eq!(unit("5/8", INCHES), Some(Unit::Inch));
        assert_eq!(unit("8 oz", oil), Some(Unit::ImperialFluidOunce));
        assert_eq!(unit("1 pint", oil), Some(Unit::ImperialPint));
        assert_eq!(unit("1 us pint", oil), Some(Unit::UsPint));
    }

    #[test]
    fn half_typed_and_impossible_fractions_are_refused() {
        refused("5/", Why::NothingUnderLine, 2);
        refused("23 3/", Why::NothingUnderLine, 5);
        refused("5/ mm", Why::NothingUnderLine, 2);
        refused("/8", Why::NothingAboveLine, 0);
        refused("7/0", Why::ZeroUnderLine, 2);
        refused("1 7/0 in", Why::ZeroUnderLine, 4);
        refused("5/8/3", Why::Unexpected { found: '/' }, 3);
        refused("1.5/8", Why::Unexpected { found: '/' }, 3);
        refused("3 9/8", Why::FractionOverOne, 1);
        refused("3.5 1/8", Why::FractionOverOne, 3);
        refused("1/20000", Why::TooLarge { most: 10_000.into() }, 2);
        refused("23 3", Why::UnitMissing, 3);
        refused("3' 4 5", Why::UnitMissing, 5);
    }

    #[test]
    fn nonsense_negatives_and_the_absurd_are_refused() {
        refused("-3/4", Why::Negative, 0);
        refused("−22 mm", Why::Negative, 0);
        refused("1e30", Why::Exponent, 1);
        refused("1e30 mm", Why::Exponent, 1);
        refused("mm", Why::Unexpected { found: 'm' }, 0);
        refused("22 zorks", Why::UnknownUnit, 3);
        refused("22 mm thick", Why::UnknownUnit, 3);
        refused("2x4", Why::UnknownUnit, 1);
        refused("22 mm %", Why::Unexpected { found: '%' }, 6);
        refused("3 kg 4 mm", Why::OtherKind { wanted: Dimension::Mass, found: Dimension::Length }, 5);
        refused("2 tins 3 tins", Why::OtherKind { wanted: Dimension::Pack, found: Dimension::Pack }, 7);
        refused("4 in 3 ft", Why::FinerFirst, 5);
        refused("3 m 4", Why::UnitMissing, 4);
        refused("99999999999999", too_large(), 0);
        refused("1 234 mm", Why::Grouping, 1);
        let novel = "It was the best of joints. ".repeat(2_000);
        refused(&novel, Why::TooLong { most: 60 }, 60);
        assert_eq!(quantity("", PLAIN), Err(Refusal::whole(Why::Empty, Accepts::Quantity)));
    }

    #[test]
    fn a_mark_that_reads_two_ways_is_asked_about() {
        for text in ["1,234", "1.234", "1,234 mm"] {
            let why = quantity(text, PLAIN).map_err(|refused| refused.why);
            assert!(matches!(why, Err(Why::GroupedOrDecimal { .. })), "{text}");
        }
        check("0.125 in", 1, 8, Some(Unit::Inch));
        check("1.2340", 617, 500, None);
    }

    #[test]
    fn a_fraction_of_a_length_is_one_of_a_rule() {
        refused("4 1/22 ft", Why::NoSuchMark, 0);
        refused("3' 4 1/22\"", Why::NoSuchMark, 3);
        refused("1/3 m", Why::NoSuchMark, 0);
        let why = |text| quantity(text, INCHES).map_err(|refused| refused.why);
        assert_eq!(why("19 1/22").unwrap_err(), Why::NoSuchMark);
        assert_eq!(why("19 3/6").unwrap().amount, Fraction::of(39, 2).unwrap());
        assert!(["19 63/64", "8/4", "5/1", "⅓ ft", "1.2 m"].into_iter().all(|text| why(text).is_ok()));
        // A third of a tin is no length.
        check("1/3 tin", 1, 3, Some(Unit::Tin));
        check("2/3 l", 2, 3, Some(Unit::Litre));
    }

    #[test]
    fn lit_marks_add_to_what_is_typed() {
        let shown = |text, lit: &[u32]| {
            let sum = with_lit(text, lit, PLAIN).map_err(|refused| refused.why)?;
            Ok(format!("{} {}", nearest(sum.quantity(), 64).text(), sum.unit.map_or("", Unit::code)))
        };
        assert_eq!(shown("19", &[4, 8]).as_deref(), Ok("19 3/8 in"));
        assert_eq!(shown("", &[2, 4, 8, 16, 32]).as_deref(), Ok("31/32 in"));
        assert_eq!(shown("", &[]).as_deref(), Ok("0 in"));
        assert_eq!(shown("3'", &[8]).as_deref(), Ok("36 1/8 in"));
        assert_eq!(shown("3' 4 1/2", &[8]).as_deref(), Ok("40 5/8 in"));
        assert_eq!(shown("22 mm", &[]).as_deref(), Ok("22 mm"));
        assert_eq!(shown("22 mm", &[8]), Err(Why::FinerFirst));
        assert_eq!(shown("19", &[0]), Err(Why::ZeroUnderLine));
        assert_eq!(shown("5/", &[8]), Err(Why::NothingUnderLine));
    }

    #[test]
    fn a_length_by_a_width_is_an_area() {
        let typed = |text| quantity(text, PLAIN).expect(text);
        let shown = |a, b, unit| {
            area(typed(a), typed(b), Unit::Inch, unit)
                .map(Quantity::shown_trimmed)
                .map_err(|refused| refused.why)
        };
        assert_eq!(shown("4'", "8'", Unit::SquareFoot).as_deref(), Ok("32"));
        assert_eq!(shown("500 mm", "0.38 m", Unit::SquareMetre).as_deref(), Ok("0.19"));
        assert_eq!(shown("12", "24", Unit::SquareFoot).as_deref(), Ok("2"));
        let no_area = Why::OtherKind { wanted: Dimension::Area, found: Dimension::Mass };
        assert_eq!(shown("12", "24", Unit::Kilogram), Err(no_area));
        let no_length = Why::OtherKind { wanted: Dimension::Length, found: Dimension::Mass };
        assert_eq!(shown("12 kg", "24", Unit::SquareFoot), Err(no_length));
    }

    #[test]
    fn a_weight_is_no_length() {
        let typed = quantity("3 kg", PLAIN).expect("reads");
        let why = Why::OtherKind { wanted: Dimension::Length, found: Dimension::Mass };
        assert_eq!(typed.in_unit(Unit::Inch).map_err(|refused| refused.why), Err(why));
        let bare = quantity("3", PLAIN).expect("reads");
        assert_eq!(bare.in_unit(Unit::Inch).map(Quantity::shown_trimmed).ok().as_deref(), Some("3"));
    }

    proptest! {
        #[test]
        fn a_fraction_shown_can_be_typed_again(parts in 0_i128..64 * 100_000, power in 0_u32..7) {
            let finest = 2_u32.pow(power);
            let exact = Fraction::of(parts, i128::from(finest)).expect("fits");
            let near = nearest(exact.quantity().expect("fits"), finest);
            prop_assert!(near.exact);
            prop_assert_eq!(quantity(&near.text(), PLAIN).map(|typed| typed.amount), Ok(exact));
            prop_assert_eq!(
                quantity(&near.feet_and_inches(), PLAIN).and_then(|typed| typed.in_unit(Unit::Inch)).ok(),
                exact.quantity(),
            );
        }

        #[test]
        fn no_text_makes_it_panic(text in "\\PC{0,70}") {
            let _ = quantity(&text, PLAIN);
        }

        #[test]
        fn no_keys_of_the_pad_make_it_panic(text in "[0-9 .,/'\"a-zA-Z½²-]{0,20}") {
            let _ = quantity(&text, INCHES);
        }
    }
}
