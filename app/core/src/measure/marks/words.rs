//! The trade's words and abbreviations for units, as they are typed.
//!
//! One list, in lower case, without full stops, singular and plural. Source: common practice;
//! every symbol of UCUM and SI that people type is among them. Not here: the codes that are
//! stored (`unit`), the names that a screen shows.

use super::{Gallons, Hint};
use crate::measure::{Dimension, Refusal, Unit, Why, scan::Cursor};

/// What a word can mean.
#[derive(Clone, Copy)]
enum Meaning {
    /// One unit.
    One(Unit),
    /// A unit that US and imperial measure size differently.
    Either(Unit, Unit),
    /// `oz`: of weight, or of volume where the field is for a volume.
    AnyOunce,
}

use Meaning::{AnyOunce, Either, One};

const FLUID_OUNCE: Meaning = Either(Unit::UsFluidOunce, Unit::ImperialFluidOunce);
const PINT: Meaning = Either(Unit::UsPint, Unit::ImperialPint);
const QUART: Meaning = Either(Unit::UsQuart, Unit::ImperialQuart);
const GALLON: Meaning = Either(Unit::UsGallon, Unit::ImperialGallon);

const WORDS: &[(&str, Meaning)] = &[
    ("each", One(Unit::Each)),
    ("ea", One(Unit::Each)),
    ("pc", One(Unit::Each)),
    ("pcs", One(Unit::Each)),
    ("piece", One(Unit::Each)),
    ("pieces", One(Unit::Each)),
    ("tin", One(Unit::Tin)),
    ("tins", One(Unit::Tin)),
    ("can", One(Unit::Tin)),
    ("cans", One(Unit::Tin)),
    ("bottle", One(Unit::Bottle)),
    ("bottles", One(Unit::Bottle)),
    ("tube", One(Unit::Tube)),
    ("tubes", One(Unit::Tube)),
    ("box", One(Unit::Box)),
    ("boxes", One(Unit::Box)),
    ("bag", One(Unit::Bag)),
    ("bags", One(Unit::Bag)),
    ("roll", One(Unit::Roll)),
    ("rolls", One(Unit::Roll)),
    ("sheet", One(Unit::Sheet)),
    ("sheets", One(Unit::Sheet)),
    ("set", One(Unit::Set)),
    ("sets", One(Unit::Set)),
    ("board", One(Unit::Board)),
    ("boards", One(Unit::Board)),
    ("mm", One(Unit::Millimetre)),
    ("millimetre", One(Unit::Millimetre)),
    ("millimetres", One(Unit::Millimetre)),
    ("millimeter", One(Unit::Millimetre)),
    ("millimeters", One(Unit::Millimetre)),
    ("cm", One(Unit::Centimetre)),
    ("centimetre", One(Unit::Centimetre)),
    ("centimetres", One(Unit::Centimetre)),
    ("centimeter", One(Unit::Centimetre)),
    ("centimeters", One(Unit::Centimetre)),
    ("m", One(Unit::Metre)),
    ("metre", One(Unit::Metre)),
    ("metres", One(Unit::Metre)),
    ("meter", One(Unit::Metre)),
    ("meters", One(Unit::Metre)),
    ("\"", One(Unit::Inch)),
    ("in", One(Unit::Inch)),
    ("inch", One(Unit::Inch)),
    ("inches", One(Unit::Inch)),
    ("'", One(Unit::Foot)),
    ("ft", One(Unit::Foot)),
    ("foot", One(Unit::Foot)),
    ("feet", One(Unit::Foot)),
    ("lin ft", One(Unit::Foot)),
    ("linear foot", One(Unit::Foot)),
    ("linear feet", One(Unit::Foot)),
    ("yd", One(Unit::Yard)),
    ("yds", One(Unit::Yard)),
    ("yard", One(Unit::Yard)),
    ("yards", One(Unit::Yard)),
    ("cm2", One(Unit::SquareCentimetre)),
    ("sq cm", One(Unit::SquareCentimetre)),
    ("m2", One(Unit::SquareMetre)),
    ("sqm", One(Unit::SquareMetre)),
    ("sq m", One(Unit::SquareMetre)),
    ("square metre", One(Unit::SquareMetre)),
    ("square metres", One(Unit::SquareMetre)),
    ("square meter", One(Unit::SquareMetre)),
    ("square meters", One(Unit::SquareMetre)),
    ("in2", One(Unit::SquareInch)),
    ("sq in", One(Unit::SquareInch)),
    ("square inch", One(Unit::SquareInch)),
    ("square inches", One(Unit::SquareInch)),
    ("ft2", One(Unit::SquareFoot)),
    ("sqft", One(Unit::SquareFoot)),
    ("sq ft", One(Unit::SquareFoot)),
    ("square foot", One(Unit::SquareFoot)),
    ("square feet", One(Unit::SquareFoot)),
    ("bf", One(Unit::BoardFoot)),
    ("fbm", One(Unit::BoardFoot)),
    ("bdft", One(Unit::BoardFoot)),
    ("bd ft", One(Unit::BoardFoot)),
    ("board ft", One(Unit::BoardFoot)),
    ("board foot", One(Unit::BoardFoot)),
    ("board feet", One(Unit::BoardFoot)),
    ("ml", One(Unit::Millilitre)),
    ("cc", One(Unit::Millilitre)),
    ("cm3", One(Unit::Millilitre)),
    ("millilitre", One(Unit::Millilitre)),
    ("millilitres", One(Unit::Millilitre)),
    ("milliliter", One(Unit::Millilitre)),
    ("milliliters", One(Unit::Millilitre)),
    ("l", One(Unit::Litre)),
    ("ltr", One(Unit::Litre)),
    ("litre", One(Unit::Litre)),
    ("litres", One(Unit::Litre)),
    ("liter", One(Unit::Litre)),
    ("liters", One(Unit::Litre)),
    ("m3", One(Unit::CubicMetre)),
    ("cu m", One(Unit::CubicMetre)),
    ("cubic metre", One(Unit::CubicMetre)),
    ("cubic metres", One(Unit::CubicMetre)),
    ("cubic meter", One(Unit::CubicMetre)),
    ("cubic meters", One(Unit::CubicMetre)),
    ("in3", One(Unit::CubicInch)),
    ("cu in", One(Unit::CubicInch)),
    ("cubic inch", One(Unit::CubicInch)),
    ("cubic inches", One(Unit::CubicInch)),
    ("ft3", One(Unit::CubicFoot)),
    ("cu ft", One(Unit::CubicFoot)),
    ("cubic foot", One(Unit::CubicFoot)),
    ("cubic feet", One(Unit::CubicFoot)),
    ("fl oz", FLUID_OUNCE),
    ("floz", FLUID_OUNCE),
    ("fluid ounce", FLUID_OUNCE),
    ("fluid ounces", FLUID_OUNCE),
    ("pt", PINT),
    ("pint", PINT),
    ("pints", PINT),
    ("qt", QUART),
    ("qts", QUART),
    ("quart", QUART),
    ("quarts", QUART),
    ("gal", GALLON),
    ("gals", GALLON),
    ("gallon", GALLON),
    ("gallons", GALLON),
    ("g", One(Unit::Gram)),
    ("gram", One(Unit::Gram)),
    ("grams", One(Unit::Gram)),
    ("kg", One(Unit::Kilogram)),
    ("kgs", One(Unit::Kilogram)),
    ("kilo", One(Unit::Kilogram)),
    ("kilos", One(Unit::Kilogram)),
    ("kilogram", One(Unit::Kilogram)),
    ("kilograms", One(Unit::Kilogram)),
    ("oz", AnyOunce),
    ("ounce", AnyOunce),
    ("ounces", AnyOunce),
    ("lb", One(Unit::Pound)),
    ("lbs", One(Unit::Pound)),
    ("pound", One(Unit::Pound)),
    ("pounds", One(Unit::Pound)),
];

/// Reads a unit at the cursor, as far as the next number.
pub(super) fn unit_of(cursor: &mut Cursor, hint: Hint) -> Result<Unit, Refusal> {
    let place = cursor.place();
    let written = written(cursor);
    if written.is_empty() {
        return Err(cursor.refuse_next());
    }
    let plain = written.strip_suffix(" and").unwrap_or(&written);
    let (plain, hint) = whose(plain, hint);
    let found = WORDS.iter().find(|(word, _)| *word == plain);
    let unit = found.and_then(|(_, meaning)| meant(*meaning, hint));
    unit.ok_or_else(|| cursor.refuse_at(Why::UnknownUnit, place))
}

/// The text of a unit in lower case, without full stops, its words one space apart: a mark of feet
/// or inches, or words with the power that may follow them.
fn written(cursor: &mut Cursor) -> String {
    if let Some(mark) = take_mark(cursor) {
        return mark.to_owned();
    }
    let mut written = String::new();
    loop {
        let word = cursor.take_word();
        if word.is_empty() {
            break;
        }
        if !written.is_empty() {
            written.push(' ');
        }
        written.push_str(&word);
        if let Some(power) = take_power(cursor) {
            written.push(power);
        }
        cursor.take_any(&['.']);
        cursor.skip_spaces();
    }
    written
}

fn take_mark(cursor: &mut Cursor) -> Option<&'static str> {
    const FEET: &[char] = &['\'', '\u{2019}', '\u{2018}', '\u{2032}'];
    const INCHES: &[char] = &['"', '\u{201d}', '\u{201c}', '\u{2033}'];
    if cursor.take_any(INCHES).is_some() {
        return Some("\"");
    }
    cursor.take_any(FEET)?;
    // Two marks of feet are one of inches.
    if cursor.take_any(FEET).is_some() { Some("\"") } else { Some("'") }
}

/// A square or a cube: `²`, `^2`, or a `2` that no further figure, letter or mark follows.
fn take_power(cursor: &mut Cursor) -> Option<char> {
    let place = cursor.place();
    cursor.take_any(&['^']);
    let power = match cursor.peek() {
        Some('²') => '2',
        Some('³') => '3',
        Some(plain @ ('2' | '3')) if ends_after(cursor) => plain,
        _ => {
            cursor.back_to(place);
            return None;
        }
    };
    cursor.step();
    Some(power)
}

fn ends_after(cursor: &Cursor) -> bool {
    cursor.peek_after(1).is_none_or(char::is_whitespace)
}

/// Takes off a word that says whose measure is meant.
fn whose(written: &str, hint: Hint) -> (&str, Hint) {
    const OWNERS: &[(&str, Gallons)] = &[
        ("us ", Gallons::Us),
        ("imp ", Gallons::Imperial),
        ("imperial ", Gallons::Imperial),
        ("uk ", Gallons::Imperial),
    ];
    for (owner, gallons) in OWNERS {
        if let Some(rest) = written.strip_prefix(owner) {
            return (rest, Hint { gallons: *gallons, ..hint });
        }
    }
    (written, hint)
}

fn meant(meaning: Meaning, hint: Hint) -> Option<Unit> {
    let volume = hint.unit.is_some_and(|unit| unit.dimension() == Dimension::Volume);
    match (meaning, hint.gallons) {
        (One(unit), _) => Some(unit),
        (Either(us, _), Gallons::Us) => Some(us),
        (Either(_, imperial), Gallons::Imperial) => Some(imperial),
        (AnyOunce, _) if !volume => Some(Unit::Ounce),
        (AnyOunce, _) => meant(FLUID_OUNCE, hint),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_word_stands_twice_and_every_unit_can_be_typed() {
        let mut words: Vec<_> = WORDS.iter().map(|(word, _)| *word).collect();
        words.sort_unstable();
        let all = words.len();
        words.dedup();
        assert_eq!(words.len(), all);
        for unit in Unit::ALL {
            let typed = WORDS.iter().any(|(_, meaning)| {
                [Gallons::Us, Gallons::Imperial]
                    .iter()
                    .any(|gallons| meant(*meaning, Hint { unit: None, gallons: *gallons }) == Some(*unit))
            });
            assert!(typed, "{unit:?}");
        }
    }
}
