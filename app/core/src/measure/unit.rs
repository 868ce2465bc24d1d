//! Units: what may be counted, its stored code, and exact conversion.
//!
//! Sizes are whole numbers of a small base of the same dimension, so a conversion is one
//! multiply-and-divide, rounded once to 10⁻⁶.
//! Sources: UCUM `ucum-essence.xml` 2.2 (inch 2.54 cm, foot 12 in, yard 3 ft, US gallon 231 in³,
//! imperial gallon 4.54609 L, pound 7000 grains, board foot 144 in³) and NIST SP 811 App. B.8.
//! Not here: what people call a unit (`marks` reads it, the screens say it), nominal sizes (`board`).

use super::{Quantity, fixed};
use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

/// What a unit measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Dimension {
    /// Single things.
    Count,
    /// Things sold by the pack; what is in one differs from item to item, so none converts.
    Pack,
    /// Length.
    Length,
    /// Area.
    Area,
    /// Volume.
    Volume,
    /// Mass.
    Mass,
    /// Board measure of timber; one board foot of wood is 144 in³ of volume.
    BoardMeasure,
}

/// One line a unit: its doc, name, stored code, dimension and size in the base of the dimension.
macro_rules! units {
    ($($(#[$doc:meta])* $name:ident $code:literal $dimension:ident $size:literal;)+) => {
        /// A unit of quantity.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Unit { $($(#[$doc])* $name,)+ }

        impl Unit {
            /// Every unit, in the order of a list to pick from.
            pub const ALL: &'static [Unit] = &[$(Unit::$name,)+];

            /// The stored code. Never changed once released.
            pub fn code(self) -> &'static str {
                match self { $(Unit::$name => $code,)+ }
            }

            /// What it measures.
            pub fn dimension(self) -> Dimension {
                match self { $(Unit::$name => Dimension::$dimension,)+ }
            }

            /// Size in the base of its dimension.
            fn size(self) -> i128 {
                match self { $(Unit::$name => $size,)+ }
            }
        }
    };
}

// Bases: length 0.1 mm; area its square; volume its cube ÷ 16; mass 10⁻⁸ kg ÷ 16. The sixteenths
// make the fluid ounce and the ounce whole.
units! {
    /// A single thing.
    Each "each" Count 1;
    /// A tin.
    Tin "tin" Pack 1;
    /// A bottle.
    Bottle "bottle" Pack 1;
    /// A tube.
    Tube "tube" Pack 1;
    /// A box.
    Box "box" Pack 1;
    /// A bag.
    Bag "bag" Pack 1;
    /// A roll.
    Roll "roll" Pack 1;
    /// A sheet.
    Sheet "sheet" Pack 1;
    /// A set.
    Set "set" Pack 1;
    /// A board, as they come.
    Board "board" Pack 1;
    /// A millimetre.
    Millimetre "mm" Length 10;
    /// A centimetre.
    Centimetre "cm" Length 100;
    /// A metre.
    Metre "m" Length 10_000;
    /// An inch, 2.54 cm.
    Inch "in" Length 254;
    /// A foot, 12 in.
    Foot "ft" Length 3_048;
    /// A yard, 3 ft.
    Yard "yd" Length 9_144;
    /// A square centimetre.
    SquareCentimetre "cm2" Area 10_000;
    /// A square metre.
    SquareMetre "m2" Area 100_000_000;
    /// A square inch.
    SquareInch "in2" Area 64_516;
    /// A square foot, 144 in².
    SquareFoot "ft2" Area 9_290_304;
    /// A board foot: board measure, 144 in³ of wood where the sizes are actual.
    BoardFoot "bf" BoardMeasure 37_755_795_456;
    /// A millilitre.
    Millilitre "ml" Volume 16_000_000;
    /// A litre.
    Litre "l" Volume 16_000_000_000;
    /// A cubic metre.
    CubicMetre "m3" Volume 16_000_000_000_000;
    /// A cubic inch.
    CubicInch "in3" Volume 262_193_024;
    /// A cubic foot, 1728 in³.
    CubicFoot "ft3" Volume 453_069_545_472;
    /// A US fluid ounce, a sixteenth of a US pint.
    UsFluidOunce "us_fl_oz" Volume 473_176_473;
    /// A US pint, half a US quart.
    UsPint "us_pt" Volume 7_570_823_568;
    /// A US quart, a quarter of a US gallon.
    UsQuart "us_qt" Volume 15_141_647_136;
    /// A US gallon, 231 in³.
    UsGallon "us_gal" Volume 60_566_588_544;
    /// An imperial fluid ounce, a twentieth of an imperial pint.
    ImperialFluidOunce "imp_fl_oz" Volume 454_609_000;
    /// An imperial pint, an eighth of an imperial gallon.
    ImperialPint "imp_pt" Volume 9_092_180_000;
    /// An imperial quart, a quarter of an imperial gallon.
    ImperialQuart "imp_qt" Volume 18_184_360_000;
    /// An imperial gallon, 4.54609 L.
    ImperialGallon "imp_gal" Volume 72_737_440_000;
    /// A gram.
    Gram "g" Mass 1_600_000;
    /// A kilogram.
    Kilogram "kg" Mass 1_600_000_000;
    /// An avoirdupois ounce, a sixteenth of a pound.
    Ounce "oz" Mass 45_359_237;
    /// An avoirdupois pound, 0.453 592 37 kg.
    Pound "lb" Mass 725_747_792;
}

impl Unit {
    /// The unit of a stored code; `None`: not one of ours.
    pub fn from_code(code: &str) -> Option<Unit> {
        Unit::ALL.iter().copied().find(|unit| unit.code() == code)
    }

    /// Whether an amount in one can be said in the other.
    pub fn converts_to(self, other: Unit) -> bool {
        self == other || (self.family() == other.family() && self.dimension() != Dimension::Pack)
    }

    /// One of this in `other`, as a numerator and a denominator: exact.
    pub(crate) fn ratio_to(self, other: Unit) -> Option<(i128, i128)> {
        self.converts_to(other).then(|| (self.size(), other.size()))
    }

    /// Board measure is volume for conversion; the two stay apart for all else.
    fn family(self) -> Dimension {
        match self.dimension() {
            Dimension::BoardMeasure => Dimension::Volume,
            other @ (Dimension::Count
            | Dimension::Pack
            | Dimension::Length
            | Dimension::Area
            | Dimension::Volume
            | Dimension::Mass) => other,
        }
    }
}

/// An amount said in another unit, rounded once to 10⁻⁶. `None`: of another kind, or too large.
///
/// ```
/// # use benchslate_core::measure::{Quantity, Unit, convert};
/// let three_feet = Quantity::from_decimal(3.into()).unwrap();
/// assert_eq!(convert(three_feet, Unit::Foot, Unit::Millimetre).unwrap().shown_trimmed(), "914.4");
/// assert_eq!(convert(three_feet, Unit::Foot, Unit::Kilogram), None);
/// ```
pub fn convert(amount: Quantity, from: Unit, to: Unit) -> Option<Quantity> {
    let (numerator, denominator) = from.ratio_to(to)?;
    fixed::mul_div(amount.micros(), numerator, denominator).map(Quantity::from_micros)
}

impl Serialize for Unit {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.serialize_str(self.code())
    }
}

impl<'de> Deserialize<'de> for Unit {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Unit, D::Error> {
        let code = <std::borrow::Cow<'de, str>>::deserialize(from)?;
        Unit::from_code(&code)
            .ok_or_else(|| de::Error::invalid_value(de::Unexpected::Str(&code), &"a unit code"))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn every_code_is_its_own_and_comes_back() {
        for unit in Unit::ALL {
            assert_eq!(Unit::from_code(unit.code()), Some(*unit));
        }
        let mut codes: Vec<_> = Unit::ALL.iter().map(|unit| unit.code()).collect();
        codes.sort_unstable();
        codes.dedup();
        assert_eq!(codes.len(), Unit::ALL.len());
    }

    #[test]
    fn an_unknown_code_is_refused_when_read() {
        assert!(serde_json::from_str::<Unit>("\"furlong\"").is_err());
        assert!(serde_json::from_str::<Unit>("3").is_err());
        assert_eq!(serde_json::from_str::<Unit>("\"bf\"").ok(), Some(Unit::BoardFoot));
        assert_eq!(serde_json::to_string(&Unit::BoardFoot).ok().as_deref(), Some("\"bf\""));
    }

    #[test]
    fn packs_convert_to_nothing_but_themselves() {
        assert!(Unit::Tin.converts_to(Unit::Tin));
        assert!(!Unit::Tin.converts_to(Unit::Bottle));
        assert!(!Unit::Tin.converts_to(Unit::Each));
        assert!(Unit::BoardFoot.converts_to(Unit::CubicMetre));
        assert!(!Unit::BoardFoot.converts_to(Unit::SquareFoot));
    }

    /// Two units of one kind, the finer second.
    fn coarse_and_fine() -> impl Strategy<Value = (Unit, Unit)> {
        let pairs: Vec<(Unit, Unit)> = Unit::ALL
            .iter()
            .flat_map(|a| Unit::ALL.iter().map(|b| (*a, *b)))
            .filter(|(a, b)| a.converts_to(*b) && b.size() <= a.size())
            .collect();
        prop::sample::select(pairs)
    }

    proptest! {
        #[test]
        fn there_and_back_by_a_finer_unit_is_the_same(
            micros in -1_000_000_000_000_i128..1_000_000_000_000, (coarse, fine) in coarse_and_fine(),
        ) {
            let amount = Quantity::from_micros(micros);
            let there = convert(amount, coarse, fine).expect("one kind");
            prop_assert_eq!(convert(there, fine, coarse), Some(amount));
        }
    }
}
