//! Density and movement of timber.

use benchslate_core::measure::{
    Fraction, Quantity, Unit,
    sums::{
        movement::{Sawn, change, mass},
        species::Species,
    },
};
use rust_decimal::Decimal;

fn quantity(text: &str) -> Quantity {
    Quantity::from_decimal(Decimal::from_str_exact(text).expect(text)).expect(text)
}

/// Rounded to as many digits as the source prints.
#[track_caller]
fn printed(got: Fraction, want: &str) {
    let digits = want.split_once('.').map_or(0, |(_, after)| after.len());
    let got = got.quantity().expect("fits").to_decimal().round_dp(u32::try_from(digits).expect("few"));
    assert_eq!(got.to_string(), want);
}

// Source: published — Wood Handbook (FPL-GTR-190), pp. 13-17 and 13-18: white fir, flat sawn, 232 mm at 8 %, is 1.7 mm wider at 11 %, 233.7 mm; in inches 9.15, 0.067 and 9.217.
#[test]
fn white_fir_flooring_moves_as_the_handbook_says() {
    for (width, moved) in [("232", "1.7"), ("9.15", "0.067")] {
        let change = change(Species::FirWhite, Sawn::Flat, quantity(width), quantity("8"), quantity("11"));
        printed(change.expect("within 6 to 14"), moved);
    }
    let change = change(Species::FirWhite, Sawn::Flat, quantity("232"), quantity("8"), quantity("11"));
    let whole = quantity("232").to_decimal() + change.expect("holds").quantity().expect("fits").to_decimal();
    assert_eq!(whole.round_dp(1).to_string(), "233.7");
}

// Source: published — Wood Handbook, table 13-5: change coefficients, flat and quarter sawn, a hundred times what one per cent does to 1000 mm.
#[test]
fn change_coefficients_of_the_handbook() {
    let rows = [
        (Species::AshWhite, "2.74", "1.69"),
        (Species::BeechAmerican, "4.31", "1.90"),
        (Species::CherryBlack, "2.48", "1.26"),
        (Species::OakWhite, "3.65", "1.80"),
        (Species::WalnutBlack, "2.74", "1.90"),
    ];
    for (species, flat, quarter) in rows {
        let one =
            |sawn| change(species, sawn, quantity("1000"), quantity("8"), quantity("9")).expect("holds");
        printed(one(Sawn::Flat), flat);
        printed(one(Sawn::Quarter), quarter);
    }
}

// Source: from memory — Wood Handbook, table 13-5, northern red oak, flat sawn .00369. DIFFERENCE: flooring charts print .00365, which is white oak's.
#[test]
fn red_oak_is_not_white_oak() {
    let one = change(Species::OakRed, Sawn::Flat, quantity("1000"), quantity("8"), quantity("9"));
    printed(one.expect("holds"), "3.69");
}

// Source: published — Wood Handbook equation 4-12 as the University of Missouri works it: specific gravity 0.40 at 12 % is 27.968 lb/ft³ and 448 kg/m³.
#[test]
fn density_at_twelve_per_cent() {
    let one = |unit| mass(Species::PinePonderosa, quantity("1"), unit, quantity("12")).expect("fits");
    printed(one(Unit::CubicMetre), "448");
    let pounds = one(Unit::CubicFoot).converted(Unit::Kilogram, Unit::Pound).expect("a mass");
    // DIFFERENCE: theirs takes 62.43 lb/ft³ for water; exact it is 27.9678.
    printed(pounds, "27.968");
}

// Source: published — trade glossary: white ash weighs 42 lb a cubic foot and 3.5 lb a board foot.
#[test]
fn white_ash_by_the_cubic_foot_and_the_board_foot() {
    let pounds = |unit| {
        let kilograms = mass(Species::AshWhite, quantity("1"), unit, quantity("12")).expect("fits");
        kilograms.converted(Unit::Kilogram, Unit::Pound).expect("a mass")
    };
    printed(pounds(Unit::CubicFoot), "42");
    printed(pounds(Unit::BoardFoot), "3.5");
}

// Source: published — Wood Handbook table 5-3 by equation 4-12: kilograms a cubic metre at 12 % are 1120 times the specific gravity.
#[test]
fn densities_that_follow_from_the_table() {
    let rows = [
        (Species::AshWhite, "672"),
        (Species::BeechAmerican, "717"),
        (Species::CherryBlack, "560"),
        (Species::MapleSugar, "706"),
        (Species::OakWhite, "762"),
        (Species::YellowPoplar, "470"),
        (Species::WalnutBlack, "616"),
        (Species::PineLoblolly, "571"),
    ];
    for (species, want) in rows {
        printed(mass(species, quantity("1"), Unit::CubicMetre, quantity("12")).expect("fits"), want);
    }
}
