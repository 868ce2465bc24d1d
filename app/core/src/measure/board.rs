//! Board measure, true volume, and what a dressed softwood board is sold as.
//!
//! Board feet = thickness × width × length in inches ÷ 144, for what is sold on nominal sizes; less
//! than 1 in counts as 1 in. True volume is the same product of the actual sizes, without that rule.
//! They are different quantities and are kept apart: a yard sells the first, a saw meets the second.
//! Sources: US Navy NAVEDTRA 14069 and *Engineering Aid Basic* 6-3 (board measure); PS 20 *American
//! Softwood Lumber Standard* (nominal and least dressed sizes, as tabled by Engineering ToolBox and
//! in Tenn. Comp. R. & Regs. 0080-07-07-.06). Not here: hardwood quarters, tally rules of a yard.

use super::{Fraction, Quantity, Refusal, Unit, marks::Typed};

/// Thickness, width and length, each in inches, exact.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Size {
    /// In inches.
    pub thickness: Fraction,
    /// In inches.
    pub width: Fraction,
    /// In inches.
    pub length: Fraction,
}

/// How wet a board was when it was dressed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Seasoning {
    /// 19 % moisture or less.
    Dry,
    /// Above it.
    Green,
}

impl Size {
    /// From lengths as they were typed; bare numbers are inches.
    ///
    /// # Errors
    /// A unit that is no length.
    pub fn typed(thickness: Typed, width: Typed, length: Typed) -> Result<Size, Refusal> {
        let inches = |typed: Typed| {
            typed.in_unit(Unit::Inch)?; // Refuses what is no length, or too long.
            let exact = typed.amount.converted(typed.unit.unwrap_or(Unit::Inch), Unit::Inch);
            Ok(exact.unwrap_or(typed.amount))
        };
        Ok(Size { thickness: inches(thickness)?, width: inches(width)?, length: inches(length)? })
    }

    /// From stored quantities in one unit. `None`: no unit of length, or too long.
    pub fn stored([thickness, width, length]: [Quantity; 3], unit: Unit) -> Option<Size> {
        let inches = |quantity| Fraction::from_quantity(quantity).converted(unit, Unit::Inch);
        Some(Size { thickness: inches(thickness)?, width: inches(width)?, length: inches(length)? })
    }

    /// Board feet of so many boards as they are sold: less than 1 in thick counts as 1 in.
    /// Rounded once to 10⁻⁶. `None`: too large.
    pub fn board_measure(self, boards: u32) -> Option<Quantity> {
        let thickness = if self.thickness.is_less_than_one() { Fraction::ONE } else { self.thickness };
        Size { thickness, ..self }.true_volume(boards)
    }

    /// Board feet of wood that is there: 144 in³ each. Rounded once to 10⁻⁶. `None`: too large.
    ///
    /// ```
    /// # use benchslate_core::measure::{Quantity, Unit, board::Size};
    /// let size = ["0.75", "5.5", "48"].map(|text| Quantity::from_decimal(text.parse().unwrap()).unwrap());
    /// let size = Size::stored(size, Unit::Inch).unwrap();
    /// assert_eq!(size.true_volume(12).unwrap().shown_trimmed(), "16.5");
    /// assert_eq!(size.board_measure(12).unwrap().shown_trimmed(), "22"); // 1 in counted, width as it is
    /// ```
    pub fn true_volume(self, boards: u32) -> Option<Quantity> {
        let face = self.thickness.times(self.width)?.times(self.length)?;
        face.times(Fraction::of(i128::from(boards), IN3_IN_BOARD_FOOT)?)?.quantity()
    }

    /// What new softwood of at least this section is sold as, of the same length.
    /// `None`: thicker or wider than the standard's boards and dimension lumber.
    ///
    /// ```
    /// # use benchslate_core::measure::{Quantity, Unit, board::{Seasoning, Size}};
    /// let own = ["0.75", "5.5", "48"].map(|text| Quantity::from_decimal(text.parse().unwrap()).unwrap());
    /// let sold = Size::stored(own, Unit::Inch).unwrap().sold_as(Seasoning::Dry).unwrap();
    /// assert_eq!((sold.thickness.to_string(), sold.width.to_string()), ("1".into(), "6".into()));
    /// assert_eq!(sold.board_measure(12).unwrap().shown_trimmed(), "24");
    /// ```
    pub fn sold_as(self, seasoning: Seasoning) -> Option<Size> {
        let thickness = covering(THICKNESSES, self.thickness, seasoning)?;
        let width = covering(WIDTHS, self.width, seasoning)?;
        Some(Size { thickness, width, length: self.length })
    }

    /// The least section to which a nominal size is dressed, of the same length.
    /// `None`: not a nominal size of the standard's boards and dimension lumber.
    pub fn dressed(self, seasoning: Seasoning) -> Option<Size> {
        let thickness = of_nominal(THICKNESSES, self.thickness, seasoning)?;
        let width = of_nominal(WIDTHS, self.width, seasoning)?;
        Some(Size { thickness, width, length: self.length })
    }
}

const IN3_IN_BOARD_FOOT: i128 = 144;

/// A nominal size in eighths of an inch, and what it is dressed to in thirty-seconds.
struct Row {
    nominal: i128,
    dry: i128,
    green: i128,
}

const fn row(nominal: i128, dry: i128, green: i128) -> Row {
    Row { nominal, dry, green }
}

/// Boards to 1½ in, dimension lumber from 2 in.
const THICKNESSES: &[Row] = &[
    row(3, 10, 11),
    row(4, 14, 15),
    row(5, 18, 19),
    row(6, 20, 22),
    row(8, 24, 25),
    row(10, 32, 33),
    row(12, 40, 41),
    row(16, 48, 50),
    row(20, 64, 66),
    row(24, 80, 82),
    row(28, 96, 98),
    row(32, 112, 114),
    row(36, 128, 130),
];

/// Boards and dimension lumber. From 8 in up a dry width loses ¾ in, not ½ in.
const WIDTHS: &[Row] = &[
    row(16, 48, 50),
    row(24, 80, 82),
    row(32, 112, 114),
    row(40, 144, 148),
    row(48, 176, 180),
    row(64, 232, 240),
    row(80, 296, 304),
    row(96, 360, 368),
    row(112, 424, 432),
    row(128, 488, 496),
];

impl Row {
    fn nominal(&self) -> Option<Fraction> {
        Fraction::of(self.nominal, 8)
    }

    fn dressed(&self, seasoning: Seasoning) -> Option<Fraction> {
        let size = match seasoning {
            Seasoning::Dry => self.dry,
            Seasoning::Green => self.green,
        };
        Fraction::of(size, 32)
    }
}

fn of_nominal(rows: &[Row], nominal: Fraction, seasoning: Seasoning) -> Option<Fraction> {
    rows.iter().find(|row| row.nominal() == Some(nominal))?.dressed(seasoning)
}

/// The least nominal size that is dressed to no less.
fn covering(rows: &[Row], least: Fraction, seasoning: Seasoning) -> Option<Fraction> {
    let enough = |row: &&Row| row.dressed(seasoning).is_some_and(|dressed| dressed.covers(least));
    rows.iter().find(enough)?.nominal()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::marks::{self, Hint};

    fn size(text: &str) -> Size {
        let part =
            |text| marks::quantity(text, Hint { unit: Some(Unit::Inch), ..Hint::default() }).expect(text);
        let parts: Vec<_> = text.split(" x ").map(part).collect();
        Size::typed(parts[0], parts[1], parts[2]).expect("lengths")
    }

    #[track_caller]
    fn check(text: &str, boards: u32, sold: &str, wood: &str) {
        let shown = |quantity: Option<Quantity>| quantity.map(Quantity::shown_trimmed).unwrap_or_default();
        let size = size(text);
        assert_eq!(
            (shown(size.board_measure(boards)).as_str(), shown(size.true_volume(boards)).as_str()),
            (sold, wood)
        );
    }

    #[test]
    fn less_than_an_inch_counts_as_an_inch_where_it_is_sold() {
        check("3/4 x 6 x 8 ft", 1, "4", "3");
        check("1 x 6 x 4 ft", 12, "24", "24");
        check("22 mm x 100 mm x 1200 mm", 1, "1.291669", "1.118769");
        check("0 x 6 x 8 ft", 1, "4", "0");
        check("2 x 4 x 300 ft", 0, "0", "0");
    }

    #[test]
    fn a_planed_board_is_sold_as_its_nominal_size() {
        let sold = |text: &str| {
            let sold = size(text).sold_as(Seasoning::Dry)?;
            Some(format!("{} x {}", sold.thickness, sold.width))
        };
        assert_eq!(sold("3/4 x 5 1/2 x 48").as_deref(), Some("1 x 6"));
        assert_eq!(sold("1 1/2 x 3 1/2 x 48").as_deref(), Some("2 x 4"));
        assert_eq!(sold("0.7 x 5 x 48").as_deref(), Some("1 x 6"));
        assert_eq!(sold("5 x 5 x 48"), None);
        assert_eq!(size("1 x 7 x 48").dressed(Seasoning::Dry), None);
    }

    #[test]
    fn every_row_is_dressed_to_less_and_comes_back() {
        for rows in [THICKNESSES, WIDTHS] {
            for row in rows {
                for seasoning in [Seasoning::Dry, Seasoning::Green] {
                    let dressed = row.dressed(seasoning).expect("a size");
                    let nominal = row.nominal().expect("a size");
                    assert!(nominal.covers(dressed) && nominal != dressed);
                    assert_eq!(covering(rows, dressed, seasoning), Some(nominal));
                    assert_eq!(of_nominal(rows, nominal, seasoning), Some(dressed));
                }
            }
        }
    }

    #[test]
    fn a_weight_is_no_side_of_a_board() {
        let kilo = marks::quantity("3 kg", Hint::default()).expect("reads");
        assert!(Size::typed(kilo, kilo, kilo).is_err());
        assert_eq!(Size::stored([Quantity::ZERO; 3], Unit::Kilogram), None);
    }
}
