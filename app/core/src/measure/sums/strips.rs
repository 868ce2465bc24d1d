//! Strips ripped from boards: how many a board gives, what is left of it, and how wide they are side by side.
//!
//! A board of usable width w gives n strips of width s with a kerf k where n·s + (n − 1)·k ≤ w, so
//! n = ⌊(w + k) ÷ (s + k)⌋; n strips edge to edge are n·s wide. Source: arithmetic; a full kerf is 1/8 in by common
//! practice. Not here: edges that are jointed first, which make the usable width.

use crate::measure::Fraction;

/// What strips are ripped from and how wide; all in one unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Ripped {
    /// Usable width of a board.
    pub board: Fraction,
    /// Width of a strip.
    pub strip: Fraction,
    /// What one cut takes.
    pub kerf: Fraction,
}

/// Strips of one board.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OfOne {
    /// How many.
    pub strips: u32,
    /// What is left after the last cut.
    pub rest: Fraction,
}

impl Ripped {
    /// What one board gives. None: a strip has no width, or a number is too large.
    ///
    /// ```
    /// # use benchslate_core::measure::{Fraction, sums::strips::Ripped};
    /// let of = |above, under| Fraction::of(above, under).unwrap();
    /// let ripped = Ripped { board: of(7, 2), strip: of(7, 8), kerf: of(1, 8) };
    /// let one = ripped.of_one().unwrap();
    /// assert_eq!((one.strips, one.rest.to_string()), (3, "1/2".into()));
    /// assert_eq!(ripped.boards(22), Some(8));
    /// assert_eq!(ripped.panel(22).unwrap().to_string(), "77/4"); // 19 1/4
    /// ```
    pub fn of_one(self) -> Option<OfOne> {
        let each = self.strip.plus(self.kerf)?;
        if self.strip.numerator() <= 0 || self.kerf.numerator() < 0 {
            return None;
        }
        let over = self.board.plus(self.kerf)?.times(Fraction::of(each.denominator(), each.numerator())?)?;
        let strips = over.numerator().checked_div(over.denominator())?;
        let used = each.times(Fraction::of(strips, 1)?)?;
        let rest = self.board.plus(used.times(Fraction::of(-1, 1)?)?)?;
        // The last cut may fall off the edge.
        let rest = if rest.numerator() < 0 { Fraction::ZERO } else { rest };
        Some(OfOne { strips: u32::try_from(strips).ok()?, rest })
    }

    /// Boards that so many strips take. None: a board gives none.
    pub fn boards(self, strips: u32) -> Option<u32> {
        let one = self.of_one()?.strips;
        if one == 0 { None } else { Some(strips.div_ceil(one)) }
    }

    /// Width of so many strips edge to edge. None: too large.
    pub fn panel(self, strips: u32) -> Option<Fraction> {
        self.strip.times(Fraction::of(i128::from(strips), 1)?)
    }

    /// Strips that make at least such a width. None: a strip has no width, or too many.
    pub fn strips_for(self, panel: Fraction) -> Option<u32> {
        let over = panel.times(Fraction::of(self.strip.denominator(), self.strip.numerator())?)?;
        let least = over.numerator().checked_add(over.denominator().checked_sub(1)?)?;
        u32::try_from(least.checked_div(over.denominator())?).ok()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn of(eighths: i128) -> Fraction {
        Fraction::of(eighths, 8).unwrap()
    }

    fn ripped(board: i128, strip: i128, kerf: i128) -> Ripped {
        Ripped { board: of(board), strip: of(strip), kerf: of(kerf) }
    }

    #[test]
    fn the_last_strip_needs_no_cut_after_it() {
        let one = ripped(32, 15, 2).of_one().unwrap();
        assert_eq!((one.strips, one.rest), (2, Fraction::ZERO));
        assert_eq!(ripped(31, 15, 2).of_one().unwrap().strips, 1);
    }

    #[test]
    fn a_strip_without_width_and_a_board_that_is_too_narrow_have_no_answer() {
        assert_eq!(ripped(32, 0, 1).of_one(), None);
        assert_eq!(ripped(32, 0, 1).strips_for(of(8)), None);
        assert_eq!(ripped(6, 7, 1).of_one().unwrap().strips, 0);
        assert_eq!(ripped(6, 7, 1).boards(4), None);
        assert_eq!(ripped(32, 7, 1).boards(0), Some(0));
    }

    #[test]
    fn a_panel_takes_the_strips_that_reach_its_width() {
        assert_eq!(ripped(28, 7, 1).strips_for(of(154)), Some(22));
        assert_eq!(ripped(28, 7, 1).strips_for(of(155)), Some(23));
    }

    proptest! {
        #[test]
        fn strips_and_cuts_fit_the_board_and_one_more_does_not(board in 1_i128..400, strip in 1_i128..90, kerf in 0_i128..5) {
            let n = i128::from(ripped(board, strip, kerf).of_one().unwrap().strips);
            prop_assert!(n == 0 || n * strip + (n - 1) * kerf <= board);
            prop_assert!((n + 1) * strip + n * kerf > board);
        }
    }
}
