//! Conversions against the definitions and the printed factors of the standards.

use benchslate_core::measure::{Quantity, Unit, convert};
use rust_decimal::Decimal;

fn quantity(text: &str) -> Quantity {
    Quantity::from_decimal(Decimal::from_str_exact(text).expect(text)).expect(text)
}

/// So many of one unit are exactly this in the other, to the six digits that are kept.
#[track_caller]
fn check(amount: &str, from: Unit, want: &str, to: Unit) {
    let got = convert(quantity(amount), from, to).expect("units of one kind");
    assert_eq!(got.shown_trimmed(), want, "{amount} {} in {}", from.code(), to.code());
}

/// The converted amount, rounded to as many digits as the source prints.
#[track_caller]
fn check_printed(amount: &str, from: Unit, printed: &str, to: Unit) {
    let digits = printed.split_once('.').map_or(0, |(_, after)| after.len());
    let got = convert(quantity(amount), from, to).expect("units of one kind").to_decimal();
    let digits = u32::try_from(digits).expect("few digits");
    assert_eq!(got.round_dp(digits).to_string(), printed, "{amount} {} in {}", from.code(), to.code());
}

// Source: published — UCUM, ucum-essence.xml 2.2 (2024-06-17): inch 2.54 cm, foot 12 in, yard 3 ft.
#[test]
fn lengths_follow_their_definitions() {
    check("1", Unit::Inch, "2.54", Unit::Centimetre);
    check("1", Unit::Inch, "25.4", Unit::Millimetre);
    check("1", Unit::Foot, "12", Unit::Inch);
    check("1", Unit::Foot, "0.3048", Unit::Metre);
    check("1", Unit::Yard, "3", Unit::Foot);
    check("1", Unit::Yard, "0.9144", Unit::Metre);
}

// Source: published — UCUM 2.2 and NIST SP 811 App. B.8 (9.290304 E-02 m², 1.638706 E-05 m³, 2.831685 E-02 m³).
#[test]
fn areas_and_volumes_follow_from_the_inch() {
    check("1", Unit::SquareFoot, "0.092903", Unit::SquareMetre);
    check("100", Unit::SquareFoot, "9.290304", Unit::SquareMetre);
    check("1", Unit::SquareFoot, "144", Unit::SquareInch);
    check("1", Unit::SquareInch, "6.4516", Unit::SquareCentimetre);
    check("1", Unit::CubicInch, "16.387064", Unit::Millilitre);
    check("1", Unit::CubicFoot, "1728", Unit::CubicInch);
    check_printed("10000", Unit::CubicFoot, "283.1685", Unit::CubicMetre);
}

// Source: published — UCUM 2.2: board foot 144 in³, so exactly 0.002 359 737 216 m³.
// DIFFERENCE: many pages print 0.002 359 737 225 974 m³, wrong from the ninth digit on.
#[test]
fn a_board_foot_of_wood_is_144_cubic_inches() {
    check("1", Unit::BoardFoot, "144", Unit::CubicInch);
    check("1000000", Unit::BoardFoot, "2359.737216", Unit::CubicMetre);
    check("12", Unit::BoardFoot, "1", Unit::CubicFoot);
    check("1", Unit::CubicMetre, "423.776001", Unit::BoardFoot);
}

// Source: published — UCUM 2.2: US gallon 231 in³, quart a quarter, pint half of that, fluid ounce a sixteenth.
#[test]
fn us_measure_follows_the_gallon_of_231_cubic_inches() {
    check("1", Unit::UsGallon, "231", Unit::CubicInch);
    check("1", Unit::UsGallon, "3785.411784", Unit::Millilitre);
    check("1", Unit::UsQuart, "946.352946", Unit::Millilitre);
    check("1", Unit::UsPint, "473.176473", Unit::Millilitre);
    check("1000", Unit::UsFluidOunce, "29573.529562", Unit::Millilitre); // …5625, half to even
    check("1", Unit::UsGallon, "128", Unit::UsFluidOunce);
}

// Source: published — UCUM 2.2: imperial gallon 4.54609 L; NIST SP 811 App. B.8: fluid ounce 28.41306 mL.
#[test]
fn imperial_measure_follows_its_own_gallon() {
    check("1", Unit::ImperialGallon, "4.54609", Unit::Litre);
    check("1", Unit::ImperialPint, "568.26125", Unit::Millilitre);
    check("4", Unit::ImperialQuart, "1", Unit::ImperialGallon);
    check_printed("1", Unit::ImperialFluidOunce, "28.41306", Unit::Millilitre);
    check("1", Unit::ImperialPint, "20", Unit::ImperialFluidOunce);
}

// Source: published — UCUM 2.2 (pound 7000 grains) and NIST SP 811 App. B.8 (0.4535924 kg, 28.34952 g).
#[test]
fn masses_follow_the_pound() {
    check("1", Unit::Pound, "453.59237", Unit::Gram);
    check("1", Unit::Pound, "16", Unit::Ounce);
    check_printed("1000", Unit::Pound, "453.5924", Unit::Kilogram);
    check_printed("1", Unit::Ounce, "28.34952", Unit::Gram);
}

// Source: published — reciprocals of the same definitions, as NIST SP 811 App. B.8 gives the factors.
#[test]
fn the_way_back_agrees_with_the_printed_reciprocals() {
    check_printed("1", Unit::SquareMetre, "10.763910", Unit::SquareFoot);
    check_printed("1", Unit::Litre, "33.814023", Unit::UsFluidOunce);
    check_printed("1", Unit::Litre, "0.264172", Unit::UsGallon);
    check_printed("1", Unit::Kilogram, "2.204623", Unit::Pound);
    check_printed("1", Unit::ImperialGallon, "1.200950", Unit::UsGallon);
    check_printed("1", Unit::UsFluidOunce, "1.040843", Unit::ImperialFluidOunce);
}
