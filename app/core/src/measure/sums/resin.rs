//! Resin for a void: its volume, an allowance on top, and how much of each part to pour.
//!
//! A box holds length × width × depth, a cylinder π·d²·h ÷ 4. Mixed a : b by volume, resin is a ÷ (a + b) of the whole
//! and hardener the rest. Source: geometry; the first number of a ratio is always the resin (common practice). By
//! weight the ratio is another one, unless both weigh alike: a weight is not turned into a volume here.

use crate::measure::{
    Accepts, Dimension, Fraction, Quantity, Ratio, Refusal, Unit, Why, fixed, limits,
    marks::{self, Hint, Typed},
    number,
};

/// What is filled; lengths in millimetres.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Void {
    /// Length, width and depth.
    Box([Fraction; 3]),
    /// Diameter and depth.
    Cylinder([Fraction; 2]),
}

/// π to twenty digits: far beyond the millionth that is kept.
const PI: (i128, i128) = (314_159_265_358_979_323_846, 100_000_000_000_000_000_000);

impl Void {
    /// In millilitres, rounded once. None: too large.
    ///
    /// ```
    /// # use benchslate_core::measure::{Fraction, sums::resin::Void};
    /// let mm = |mm| Fraction::of(mm, 1).unwrap();
    /// let slab = Void::Box([mm(1000), mm(500), mm(20)]);
    /// assert_eq!(slab.millilitres().unwrap().shown_trimmed(), "10000");
    /// let hole = Void::Cylinder([mm(40), mm(25)]);
    /// assert_eq!(hole.millilitres().unwrap().shown_to(3), "31.416");
    /// ```
    pub fn millilitres(self) -> Option<Quantity> {
        let cubic = match self {
            Void::Box([length, width, depth]) => length.times(width)?.times(depth)?,
            Void::Cylinder([across, depth]) => {
                let quarter = across.times(across)?.times(depth)?.times(Fraction::of(1, 4)?)?;
                let (above, under) = PI;
                let micros = fixed::mul_div(quarter.numerator(), above, quarter.denominator())?;
                return fixed::mul_div(micros, fixed::SCALE, under.checked_mul(1_000)?)
                    .map(Quantity::from_micros);
            }
        };
        cubic.times(Fraction::of(1, 1_000)?)?.quantity()
    }
}

/// Resin and hardener, parts by volume.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Mix {
    /// Parts of resin.
    pub resin: Fraction,
    /// Parts of hardener.
    pub hardener: Fraction,
}

impl Mix {
    /// How much of each, resin first; they add up to the whole. None: no parts at all.
    ///
    /// ```
    /// # use benchslate_core::measure::{Quantity, sums::resin};
    /// let whole = Quantity::from_decimal("10".parse().unwrap()).unwrap();
    /// let [resin, hardener] = resin::mix_typed("2:1").unwrap().of(whole).unwrap();
    /// assert_eq!((resin.shown_to(3), hardener.shown_to(3)), ("6.667".into(), "3.333".into()));
    /// ```
    pub fn of(self, whole: Quantity) -> Option<[Quantity; 2]> {
        let both = self.resin.plus(self.hardener)?;
        let part = self.resin.times(Fraction::of(both.denominator(), both.numerator())?)?;
        let resin = Fraction::from_quantity(whole).times(part)?.quantity()?;
        Some([resin, whole.minus(resin)])
    }
}

/// All voids and what is mixed on top of them, in millilitres. None: too large.
pub fn poured(voids: &[Void], allowance: Ratio) -> Option<Quantity> {
    let all = voids.iter().try_fold(Quantity::ZERO, |sum, it| Some(sum.plus(it.millilitres()?)))?;
    fixed::mul_div(all.micros(), allowance.on_top().micros(), fixed::SCALE).map(Quantity::from_micros)
}

/// Reads `2:1`, `100 : 45`, `2 to 1`, `2/1`.
///
/// # Errors
/// As [`number::amount`]; a part that is nothing, or only one.
pub fn mix_typed(text: &str) -> Result<Mix, Refusal> {
    let unfinished = Refusal::whole(Why::Unfinished, Accepts::Amount);
    let parted = text.split_once(" to ").or_else(|| text.split_once([':', '/']));
    let (resin, hardener) = parted.ok_or(unfinished)?;
    let part = |text: &str| {
        let amount = number::amount(text)?;
        let part = Quantity::from_decimal(amount).filter(|it| !it.is_zero());
        part.map(Fraction::from_quantity).ok_or(Refusal::whole(Why::Empty, Accepts::Amount))
    };
    Ok(Mix { resin: part(resin)?, hardener: part(hardener)? })
}

/// Reads voids: `600 x 40 x 20 mm`, `dia 40 x 25`, several with `+` or a semicolon between them. Bare numbers are in
/// the hint's unit; a unit after the last side is that of all sides without one.
///
/// # Errors
/// As [`marks::quantity`]; two sides that are no hole, four that are nothing, a side that is no length or is nothing.
pub fn voids_typed(text: &str, hint: Hint) -> Result<Vec<Void>, Refusal> {
    let voids = text.split(['+', ';', '\n']).map(str::trim).filter(|it| !it.is_empty());
    let voids = voids.map(|it| void(it, hint)).collect::<Result<Vec<Void>, Refusal>>()?;
    if voids.is_empty() {
        return Err(Refusal::whole(Why::Empty, Accepts::Quantity));
    }
    if voids.len() > limits::MOST_LENGTHS {
        return Err(Refusal::whole(Why::TooLong { most: limits::MOST_LENGTHS }, Accepts::Quantity));
    }
    Ok(voids)
}

fn void(text: &str, hint: Hint) -> Result<Void, Refusal> {
    let round = ["diameter", "dia.", "dia", "\u{d8}", "\u{2300}"];
    let across = round.iter().find_map(|word| text.strip_prefix(word));
    let sides: Vec<&str> = across.unwrap_or(text).split(['×', 'x', 'X', '*']).map(str::trim).collect();
    let read = |text: &&str| marks::quantity(text, Hint { unit: None, ..hint });
    let sides = sides.iter().map(read).collect::<Result<Vec<Typed>, Refusal>>()?;
    let bare = sides.last().and_then(|it| it.unit).or(hint.unit).unwrap_or(Unit::Millimetre);
    let millimetres = |it: &Typed| {
        let unit = it.unit.unwrap_or(bare);
        if unit.dimension() != Dimension::Length {
            let why = Why::OtherKind { wanted: Dimension::Length, found: unit.dimension() };
            return Err(Refusal::whole(why, Accepts::Quantity));
        }
        let length = it.amount.converted(unit, Unit::Millimetre).filter(|it| it.numerator() > 0);
        length.ok_or(Refusal::whole(Why::Empty, Accepts::Quantity))
    };
    let sides = sides.iter().map(millimetres).collect::<Result<Vec<Fraction>, Refusal>>()?;
    match (across.is_some(), sides.as_slice()) {
        (true, [across, depth]) => Ok(Void::Cylinder([*across, *depth])),
        (false, [length, width, depth]) => Ok(Void::Box([*length, *width, *depth])),
        _ => Err(Refusal::whole(Why::Unfinished, Accepts::Quantity)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use rust_decimal::Decimal;

    const MM: Hint = Hint { unit: Some(Unit::Millimetre), gallons: marks::Gallons::Us };

    #[track_caller]
    fn holds(text: &str, want: Option<&str>) {
        let none = Ratio::ZERO;
        let got = voids_typed(text, MM).ok().map(|it| poured(&it, none).unwrap().shown_to(2));
        assert_eq!(got.as_deref(), want, "{text}");
    }

    #[test]
    fn voids_are_read_as_a_tired_person_types_them() {
        holds("600 x 40 x 20", Some("480"));
        holds("600x40x20 mm", Some("480"));
        holds("60 × 4 × 2 cm", Some("480"));
        holds("600 x 40 x 20 + dia 40 x 25", Some("511.42"));
        holds("dia 1 in x 1 in", Some("12.87"));
        holds("1 ft x 2 in x 1/4 in", Some("98.32"));
        holds("600 x 40", None);
        holds("600 x 40 x", None);
        holds("600 x 40 x 20 x 3", None);
        holds("dia 40", None);
        holds("40 l", None);
        holds("0 x 40 x 20", None);
        holds("-6 x 4 x 2", None);
        holds("a big one", None);
        holds("", None);
        holds("+", None);
    }

    #[test]
    fn ratios_are_read_as_a_tin_prints_them() {
        let read = |text| mix_typed(text).ok().map(|it| (it.resin.to_string(), it.hardener.to_string()));
        let parts = |a: &str, b: &str| Some((a.to_owned(), b.to_owned()));
        assert_eq!(read("2:1"), parts("2", "1"));
        assert_eq!(read("100 : 45"), parts("100", "45"));
        assert_eq!(read("2 to 1"), parts("2", "1"));
        assert_eq!(read("1,5/1"), parts("3/2", "1"));
        for text in ["2", "2:", ":1", "0:1", "2:0", "2:1:1", "two to one", "", "-2:1"] {
            assert_eq!(read(text), None, "{text}");
        }
    }

    #[test]
    fn what_is_mixed_on_top_is_part_of_the_pour() {
        let voids = voids_typed("1000 x 500 x 20", MM).unwrap();
        let tenth = Ratio::share(Decimal::from_str_exact("0.1").unwrap()).unwrap();
        assert_eq!(poured(&voids, tenth).unwrap().shown_trimmed(), "11000");
    }

    proptest! {
        #[test]
        fn both_parts_are_the_whole(whole in 0_i128..10_i128.pow(13), a in 1_i128..500, b in 1_i128..500) {
            let mix = Mix { resin: Fraction::of(a, 1).unwrap(), hardener: Fraction::of(b, 1).unwrap() };
            let whole = Quantity::from_micros(whole);
            let [resin, hardener] = mix.of(whole).unwrap();
            prop_assert_eq!(resin.plus(hardener), whole);
            prop_assert!(!hardener.is_negative());
        }

        #[test]
        fn no_text_makes_it_panic(text in "\\PC{0,40}") {
            let _ = (voids_typed(&text, MM), mix_typed(&text));
        }
    }
}
