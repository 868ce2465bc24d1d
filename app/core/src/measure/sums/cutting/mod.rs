//! Lengths out of boards: how many boards a list of parts takes, which piece comes out of which, and what can't be beaten.
//!
//! A board of length L gives pieces whose lengths and one cut between each two come to at most L; so a piece is as long
//! as itself and a cut, and a board as itself and a cut (one-dimensional cutting stock, Gilmore and Gomory 1961). The
//! answer is the best of several greedy fillings, bettered by a search whose work is bounded ([`search`]); beside it
//! stands a bound that no answer can go below ([`bound`]). What is there already is used before anything is bought.
//! Not here: widths (a section has boards of its own), grain and knots, which are the maker's eye.

mod bound;
mod search;
mod typed;

pub use typed::{TypedStock, stock_typed};

use crate::measure::{Fraction, InOrder, limits};
use search::{Boards, Lengths};
use std::collections::BTreeMap;

/// So many pieces of one length, in inches.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pieces {
    /// Of one.
    pub length: Fraction,
    /// How many.
    pub count: u32,
}

/// Boards of one length, in inches.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stock {
    /// Of one.
    pub length: Fraction,
    /// So many are there; none: as many as it takes are bought.
    pub there: Option<u32>,
}

/// Boards that are cut alike.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cut {
    /// Out of which of the lengths in stock.
    pub stock: usize,
    /// How many boards.
    pub boards: u32,
    /// Out of each: which pieces, and how many of them.
    pub pieces: Vec<(usize, u32)>,
    /// Left of each after the last cut, in inches.
    pub rest: Fraction,
}

/// What a list of parts takes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plan {
    /// Boards that are cut alike, the fullest patterns first.
    pub cuts: Vec<Cut>,
    /// Boards in all.
    pub boards: u32,
    /// Fewer boards than this can't be.
    pub least_boards: u32,
    /// Length of the boards that are not there yet, in inches.
    pub bought: Fraction,
    /// Less than this can't be.
    pub least_bought: Fraction,
    /// Pieces that no board is left for, or that no board is long enough for.
    pub left_over: Vec<(usize, u32)>,
}

/// Why nothing can be said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoPlan {
    /// Nothing is wanted.
    NoPieces,
    /// No board to cut it from.
    NoBoards,
    /// More than is looked at ([`limits::MOST_PIECES`]).
    TooMany,
    /// Lengths that can't be.
    OutOfRange,
}

/// Plans the cuts. `kerf`: what one cut takes, in inches.
///
/// ```
/// # use benchslate_core::measure::{Fraction, sums::cutting::{Pieces, Stock, plan}};
/// let inches = |whole| Fraction::of(whole, 1).unwrap();
/// let legs = Pieces { length: inches(28), count: 8 };
/// let eight_feet = Stock { length: inches(96), there: None };
/// let plan = plan(&[legs], &[eight_feet], Fraction::of(1, 8).unwrap()).unwrap();
/// assert_eq!((plan.boards, plan.least_boards), (3, 3));
/// assert_eq!(plan.cuts[0].rest.to_string(), "93/8"); // 96 − 3 × 28 1/8
/// ```
///
/// # Errors
/// As [`NoPlan`].
pub fn plan(wanted: &[Pieces], stock: &[Stock], kerf: Fraction) -> Result<Plan, NoPlan> {
    let all = wanted.iter().fold(0_u32, |sum, it| sum.saturating_add(it.count));
    if all == 0 {
        return Err(NoPlan::NoPieces);
    }
    if all > limits::MOST_PIECES || stock.len() > limits::MOST_LENGTHS {
        return Err(NoPlan::TooMany);
    }
    let scaled = Scaled::of(wanted, stock, kerf).ok_or(NoPlan::OutOfRange)?;
    let longest = scaled.boards.iter().filter(|it| it.there != Some(0)).map(|it| it.size).max();
    let longest = longest.ok_or(NoPlan::NoBoards)?;
    let mut left_over: BTreeMap<usize, u32> = BTreeMap::new();
    let lengths = scaled.lengths(wanted, longest, &mut left_over);
    let (found, unplaced) =
        search::best(&lengths, &scaled.boards, &bound::of(&lengths, &scaled.boards, scaled.kerf, true));
    scaled.plan(&lengths, &found, (&unplaced, left_over)).ok_or(NoPlan::OutOfRange)
}

/// Everything as whole numbers of one small length.
struct Scaled {
    /// So many of it to the inch.
    an_inch: i128,
    kerf: u64,
    /// With a cut each.
    pieces: Vec<u64>,
    boards: Vec<Boards>,
}

impl Scaled {
    fn of(wanted: &[Pieces], stock: &[Stock], kerf: Fraction) -> Option<Scaled> {
        let all = wanted.iter().map(|it| it.length).chain(stock.iter().map(|it| it.length)).chain([kerf]);
        let an_inch = all.clone().try_fold(1_i128, |sum, it| {
            let step = Fraction::of(it.denominator(), sum)?;
            sum.checked_mul(step.numerator())
        })?;
        let whole = |it: Fraction| {
            let scaled = it.times(Fraction::of(an_inch, 1)?)?;
            u64::try_from(scaled.numerator()).ok().filter(|it| *it <= MOST_SIZE)
        };
        let kerf = whole(kerf)?;
        let with_cut = |it: Fraction| whole(it).filter(|it| *it > 0)?.checked_add(kerf);
        let pieces = wanted.iter().map(|it| with_cut(it.length)).collect::<Option<Vec<u64>>>()?;
        let boards = stock.iter().map(|it| {
            let length = whole(it.length).filter(|it| *it > 0)?;
            Some(Boards { length, size: length.checked_add(kerf)?, there: it.there })
        });
        Some(Scaled { an_inch, kerf, pieces, boards: boards.collect::<Option<Vec<Boards>>>()? })
    }

    /// Pieces that fit, by length; the others are left over.
    fn lengths(&self, wanted: &[Pieces], longest: u64, left_over: &mut BTreeMap<usize, u32>) -> Lengths {
        let mut by_size: BTreeMap<u64, Vec<(usize, u32)>> = BTreeMap::new();
        for (at, (it, size)) in wanted.iter().zip(&self.pieces).enumerate() {
            if it.count == 0 {
                continue;
            }
            if *size > longest {
                left_over.insert(at, it.count);
            } else {
                by_size.entry(*size).or_default().push((at, it.count));
            }
        }
        Lengths::of(by_size.into_iter().rev().collect())
    }

    /// `left`: pieces by length that no board is left for, and those that no board is long enough for.
    fn plan(
        &self,
        lengths: &Lengths,
        found: &[search::Board],
        (unplaced, mut left): (&[u32], BTreeMap<usize, u32>),
    ) -> Option<Plan> {
        let mut queues = lengths.queues();
        let mut cuts: Vec<Cut> = Vec::new();
        let mut bought = 0_u64;
        for board in found {
            let of = self.boards.get(board.stock)?;
            if of.there.is_none() {
                bought = bought.checked_add(of.length)?;
            }
            let rest = of.length.saturating_sub(lengths.size_of(&board.counts));
            let pieces = lengths.dealt(&board.counts, &mut queues);
            let alike = cuts.iter_mut().find(|cut| cut.stock == board.stock && cut.pieces == pieces);
            match alike {
                Some(cut) => cut.boards = cut.boards.saturating_add(1),
                None => cuts.push(Cut { stock: board.stock, boards: 1, pieces, rest: self.inches(rest)? }),
            }
        }
        // Dealt after those that are cut: a piece stands in one of the two.
        for (at, count) in lengths.dealt(unplaced, &mut queues) {
            let sum = left.entry(at).or_default();
            *sum = sum.saturating_add(count);
        }
        cuts.order_by_key(|cut| std::cmp::Reverse((cut.boards, cut.pieces.len())));
        let bound = bound::of(lengths, &self.boards, self.kerf, left.is_empty());
        Some(Plan {
            boards: u32::try_from(found.len()).ok()?,
            least_boards: bound.boards,
            bought: self.inches(bought)?,
            least_bought: self.inches(bound.bought)?,
            left_over: left.into_iter().collect(),
            cuts,
        })
    }

    fn inches(&self, scaled: u64) -> Option<Fraction> {
        Fraction::of(i128::from(scaled), self.an_inch)
    }
}

/// Far above any board, far below where a sum of all pieces would not fit.
const MOST_SIZE: u64 = 1 << 48;

#[cfg(test)]
mod tests;
