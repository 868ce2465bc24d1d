//! What no cutting can go below.
//!
//! Boards: the bound L₂ of Martello and Toth (1990), with every board as long as the longest: pieces over half a board
//! need one each, and what is too long to go beside them needs more. Bought length: what the pieces come to, less all
//! that is there, in the stock that wastes least on cuts; a sum of whole boards, so a multiple of what their lengths
//! have in common. Never above the optimum. Kept by: `the_bound_is_never_above_the_answer`.

use super::search::{Boards, Lengths};

/// Least boards, and least length that is bought.
pub(super) struct Bound {
    pub boards: u32,
    pub bought: u64,
}

/// `all`: everything that is wanted has been placed; else some of it needs nothing, and nothing is promised.
pub(super) fn of(lengths: &Lengths, stock: &[Boards], kerf: u64, all: bool) -> Bound {
    let usable = || stock.iter().filter(|it| it.there != Some(0));
    let longest = usable().map(|it| it.size).max().unwrap_or(0);
    if !all || longest == 0 {
        return Bound { boards: 0, bought: 0 };
    }
    let boards = boards(lengths, longest);
    let there = usable().filter_map(|it| Some(it.size.saturating_mul(u64::from(it.there?))));
    let there = there.fold(0_u64, u64::saturating_add);
    let unlimited: Vec<&Boards> = usable().filter(|it| it.there.is_none()).collect();
    let need = lengths.whole().saturating_sub(there);
    let by_length = bought(need, &unlimited, kerf);
    let by_count = match (unlimited.as_slice(), there) {
        ([one], 0) => one.length.saturating_mul(u64::from(boards)),
        _ => 0,
    };
    Bound { boards, bought: by_length.max(by_count) }
}

/// The least sum of lengths whose sizes come to `need`, or less than it.
fn bought(need: u64, unlimited: &[&Boards], kerf: u64) -> u64 {
    // A board holds its length and a cut; of the shortest that is the most beside its length.
    let Some(shortest) = unlimited.iter().map(|it| it.length).min() else { return 0 };
    let part = u128::from(need).saturating_mul(u128::from(shortest));
    let size = u128::from(shortest.saturating_add(kerf).max(1));
    let least = u64::try_from(part.div_ceil(size)).unwrap_or(u64::MAX);
    let common = unlimited.iter().fold(0, |sum, it| common(sum, it.length)).max(1);
    least.div_ceil(common).saturating_mul(common)
}

fn common(mut a: u64, mut b: u64) -> u64 {
    while let Some(rest) = a.checked_rem(b) {
        (a, b) = (b, rest);
    }
    a
}

/// L₂: for each piece of at most half a board as the least that is looked at.
fn boards(lengths: &Lengths, board: u64) -> u32 {
    let least = lengths.sizes().filter(|size| size.saturating_mul(2) <= board).chain([0]);
    let best = least.map(|least| boards_from(lengths, board, least)).max().unwrap_or(0);
    u32::try_from(best).unwrap_or(u32::MAX)
}

fn boards_from(lengths: &Lengths, board: u64, least: u64) -> u64 {
    let (mut alone, mut over_half, mut over_half_sum, mut small) = (0_u64, 0_u64, 0_u64, 0_u64);
    for (size, count) in lengths.all() {
        let all = size.saturating_mul(count);
        if size > board.saturating_sub(least) {
            alone = alone.saturating_add(count);
        } else if size.saturating_mul(2) > board {
            over_half = over_half.saturating_add(count);
            over_half_sum = over_half_sum.saturating_add(all);
        } else if size >= least {
            small = small.saturating_add(all);
        }
    }
    let beside = over_half.saturating_mul(board).saturating_sub(over_half_sum);
    let more = small.saturating_sub(beside).div_ceil(board.max(1));
    alone.saturating_add(over_half).saturating_add(more)
}
