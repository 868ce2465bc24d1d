//! Conversions against a general library of units.

use benchslate_core::measure::{Quantity, Unit, convert};
use uom::si::{
    area::{square_centimeter, square_foot, square_inch, square_meter},
    f64::{Area, Length, Mass, Volume},
    length::{centimeter, foot, inch, meter, millimeter, yard},
    mass::{gram, kilogram, ounce, pound},
    volume::{
        cubic_foot, cubic_inch, cubic_meter, fluid_ounce, gallon, gallon_imperial, liter, milliliter,
        pint_liquid, quart_liquid,
    },
};

/// A thousand of one unit in the other, as near as the library's seven printed digits.
#[track_caller]
fn check(from: Unit, to: Unit, library: f64) {
    let thousand = Quantity::from_decimal(1_000.into()).expect("fits");
    let got = convert(thousand, from, to).expect("of one kind").to_decimal();
    let got: f64 = got.to_string().parse().expect("a number");
    let off = ((got - library) / library).abs();
    assert!(off < 2e-6, "{} in {}: {got}, library {library}", from.code(), to.code());
}

// Source: library — uom 0.36: lengths.
#[test]
fn lengths_agree_with_the_library() {
    let of =
        |it: Length| [it.get::<millimeter>(), it.get::<centimeter>(), it.get::<meter>(), it.get::<inch>()];
    let units = [Unit::Millimetre, Unit::Centimetre, Unit::Metre, Unit::Inch];
    let from = [
        (Unit::Foot, Length::new::<foot>(1_000.0)),
        (Unit::Yard, Length::new::<yard>(1_000.0)),
        (Unit::Inch, Length::new::<inch>(1_000.0)),
    ];
    for (unit, length) in from {
        units.into_iter().zip(of(length)).for_each(|(to, library)| check(unit, to, library));
    }
}

// Source: library — uom 0.36: areas.
#[test]
fn areas_agree_with_the_library() {
    let thousand = Area::new::<square_foot>(1_000.0);
    check(Unit::SquareFoot, Unit::SquareMetre, thousand.get::<square_meter>());
    check(Unit::SquareFoot, Unit::SquareInch, thousand.get::<square_inch>());
    check(
        Unit::SquareInch,
        Unit::SquareCentimetre,
        Area::new::<square_inch>(1_000.0).get::<square_centimeter>(),
    );
}

// Source: library — uom 0.36: volumes, US and imperial.
#[test]
fn volumes_agree_with_the_library() {
    let of = |it: Volume| [it.get::<liter>(), it.get::<milliliter>(), it.get::<cubic_inch>()];
    let units = [Unit::Litre, Unit::Millilitre, Unit::CubicInch];
    let from = [
        (Unit::UsGallon, Volume::new::<gallon>(1_000.0)),
        (Unit::UsQuart, Volume::new::<quart_liquid>(1_000.0)),
        (Unit::UsPint, Volume::new::<pint_liquid>(1_000.0)),
        (Unit::UsFluidOunce, Volume::new::<fluid_ounce>(1_000.0)),
        (Unit::ImperialGallon, Volume::new::<gallon_imperial>(1_000.0)),
        (Unit::CubicFoot, Volume::new::<cubic_foot>(1_000.0)),
        (Unit::CubicMetre, Volume::new::<cubic_meter>(1_000.0)),
    ];
    for (unit, volume) in from {
        units.into_iter().zip(of(volume)).for_each(|(to, library)| check(unit, to, library));
    }
    // The library has no board foot: a twelfth of a cubic foot.
    check(Unit::BoardFoot, Unit::Litre, Volume::new::<cubic_foot>(1_000.0 / 12.0).get::<liter>());
}

// Source: library — uom 0.36: masses.
#[test]
fn masses_agree_with_the_library() {
    check(Unit::Pound, Unit::Kilogram, Mass::new::<pound>(1_000.0).get::<kilogram>());
    check(Unit::Ounce, Unit::Gram, Mass::new::<ounce>(1_000.0).get::<gram>());
}
