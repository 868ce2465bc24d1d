//! Spreading rates, films wet and dry, resin, and strips.

use benchslate_core::measure::{
    Fraction, Quantity, Ratio, Unit,
    marks::{self, Hint},
    sums::{
        film,
        resin::{self, Void},
        strips::Ripped,
    },
};
use rust_decimal::Decimal;

fn quantity(text: &str) -> Quantity {
    Quantity::from_decimal(Decimal::from_str_exact(text).expect(text)).expect(text)
}

fn share(text: &str) -> Ratio {
    Ratio::share(Decimal::from_str_exact(text).expect(text)).expect(text)
}

/// Rounded to as many digits as the source prints; a half goes up, as the charts have it.
#[track_caller]
fn printed(got: Fraction, want: &str) {
    let digits = want.split_once('.').map_or(0, |(_, after)| after.len());
    let (digits, way) =
        (u32::try_from(digits).expect("few"), rust_decimal::RoundingStrategy::MidpointAwayFromZero);
    let got = got.quantity().expect("fits").to_decimal().round_dp_with_strategy(digits, way);
    assert_eq!(got.to_string(), want);
}

/// Square feet that a US gallon covers, by solids and thousandths of an inch.
fn square_feet(solids: &str, mils: &str) -> Fraction {
    let inches = quantity(&(Decimal::from_str_exact(mils).expect(mils) / Decimal::from(1000)).to_string());
    let metres = film::covers(share(solids), inches, Unit::Inch).expect("a film");
    let litres = Fraction::ONE.converted(Unit::UsGallon, Unit::Litre).expect("a volume");
    let feet =
        metres.converted(Unit::SquareMetre, Unit::SquareFoot).expect("an area").quantity().expect("fits");
    let gallon = litres.quantity().expect("fits");
    let product = feet.to_decimal() * gallon.to_decimal();
    Fraction::from_quantity(quantity(&product.round_dp(6).to_string()))
}

// Source: published — data sheet (scribd 343849341): 65 % solids by volume at 5 mil dry cover 208.52 ft² a US gallon, at 125 µm 5.2 m² a litre.
// DIFFERENCE: it multiplies by 1604; exact is 231 in³ over a mil and 144 in², 1604.1667, which gives 208.54.
#[test]
fn spreading_rate_of_a_coating_with_two_thirds_of_solids() {
    printed(square_feet("0.65", "5"), "208.54");
    printed(film::covers(share("0.65"), quantity("0.125"), Unit::Millimetre).expect("a film"), "5.2");
}

// Source: published — coverage chart of a coatings maker: 35 % solids at 1, 2, 3 mil cover 561, 281, 187 ft² a US gallon.
#[test]
fn spreading_rate_of_a_varnish() {
    for (mils, want) in [("1", "561"), ("2", "281"), ("3", "187")] {
        printed(square_feet("0.35", mils), want);
    }
}

// Source: published — the same chart: all solids at 1 to 10 mil, 1604 down to 160 ft² a US gallon.
#[test]
fn spreading_rate_of_what_is_all_solids() {
    let chart = [
        ("1", "1604"),
        ("2", "802"),
        ("3", "535"),
        ("4", "401"),
        ("5", "321"),
        ("6", "267"),
        ("8", "201"),
        ("10", "160"),
    ];
    for (mils, want) in chart {
        printed(square_feet("1", mils), want);
    }
}

// Source: published — geionline.com: a gallon wet at 10 mil covers 160.417 ft².
#[test]
fn a_wet_gallon() {
    printed(square_feet("1", "10"), "160.417");
}

// Source: common practice — dry film is wet film times solids: 8 mil wet with 35 % solids leave 2.8 mil; thinned by a tenth, 8.8 mil wet are needed for them.
#[test]
fn wet_film_leaves_a_dry_one() {
    let mil = |it: Fraction| it.times_of(1000).converted(Unit::Millimetre, Unit::Inch).expect("a length");
    printed(mil(film::dry(quantity("0.008"), Unit::Inch, share("0.35")).expect("a film")), "2.8");
    let wet = film::wet(quantity("0.0028"), Unit::Inch, share("0.35"), share("0.1")).expect("a film");
    printed(mil(wet), "8.8");
}

// Source: common practice — a dry film of 50 µm with half solids is 100 µm wet.
#[test]
fn half_solids_are_twice_as_thick_wet() {
    let wet = film::wet(quantity("0.05"), Unit::Millimetre, share("0.5"), Ratio::ZERO).expect("a film");
    printed(wet, "0.1");
}

trait Times {
    fn times_of(self, whole: i128) -> Self;
}

impl Times for Fraction {
    fn times_of(self, whole: i128) -> Fraction {
        Fraction::of(self.numerator() * whole, self.denominator()).expect("fits")
    }
}

// Source: published — topepoxy.eu, guide: a slab of 100 × 50 × 2 cm is 10 litres.
#[test]
fn a_slab_of_resin() {
    let hint = Hint { unit: Some(Unit::Millimetre), ..Hint::default() };
    let voids = resin::voids_typed("100 x 50 x 2 cm", hint).expect("a void");
    assert_eq!(resin::poured(&voids, Ratio::ZERO).expect("fits"), quantity("10000"));
}

// Source: published — Jamestown Distributors, support note: 2:1 by volume is two parts of resin to one of hardener; 300 ml are 200 and 100.
#[test]
fn two_to_one_by_volume() {
    let [resin, hardener] = resin::mix_typed("2:1").expect("a ratio").of(quantity("300")).expect("parts");
    assert_eq!((resin, hardener), (quantity("200"), quantity("100")));
    let [resin, hardener] = resin::mix_typed("2:1").expect("a ratio").of(quantity("10")).expect("parts");
    assert_eq!((resin.shown_to(3), hardener.shown_to(3)), ("6.667".into(), "3.333".into()));
}

// Source: common practice — a cylinder is π·d²·h ÷ 4: 40 by 25 mm hold 31.416 ml; 3 by 2 in, 7.8336 US fluid ounces.
#[test]
fn round_holes() {
    let hole = |across: &str, depth: &str| {
        let hint = Hint { unit: Some(Unit::Millimetre), ..Hint::default() };
        let mm = |text: &str| {
            let typed = marks::quantity(text, hint).expect(text);
            typed.amount.converted(typed.unit.expect("a unit"), Unit::Millimetre).expect("a length")
        };
        Void::Cylinder([mm(across), mm(depth)]).millilitres().expect("fits")
    };
    assert_eq!(hole("40", "25").shown_to(3), "31.416");
    let ounces =
        Fraction::from_quantity(hole("3 in", "2 in")).converted(Unit::Millilitre, Unit::UsFluidOunce);
    printed(ounces.expect("a volume"), "7.8336");
}

// Source: common practice — strips of 7/8 in with a full kerf of 1/8 in: a board of 3 1/2 in gives 3; 22 of them are 19 1/4 in wide.
#[test]
fn strips_of_seven_eighths() {
    let of = |above, under| Fraction::of(above, under).expect("fits");
    let ripped = Ripped { board: of(7, 2), strip: of(7, 8), kerf: of(1, 8) };
    assert_eq!(ripped.of_one().expect("a width").strips, 3);
    assert_eq!(ripped.panel(22).expect("fits"), of(77, 4));
}
