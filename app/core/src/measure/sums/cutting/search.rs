//! Filling boards: greedily, each as full as can be found; then taking a few apart and filling them anew.
//!
//! A board gets the longest piece that is left, and beside it the pieces that leave least (minimum bin slack, Gupta and
//! Ho 1999); the work of each filling and of the whole search is bounded, and the same everywhere. An answer is
//! better by: pieces placed, length bought, length in all, boards, and then by how unevenly they are filled, so that a
//! board that is nearly empty goes.

use super::bound::Bound;
use crate::measure::InOrder;

/// Boards of one length, as whole numbers.
#[derive(Clone, Copy, Debug)]
pub(super) struct Boards {
    pub length: u64,
    /// With a cut.
    pub size: u64,
    pub there: Option<u32>,
}

/// A board that is cut: how many pieces of each length.
#[derive(Clone, Debug)]
pub(super) struct Board {
    pub stock: usize,
    pub counts: Vec<u32>,
}

/// Which wanted pieces have a length, and how many are still to be named; by length.
pub(super) type Queues = Vec<Vec<(usize, u32)>>;

/// Pieces by length, the longest first: with a cut each.
pub(super) struct Lengths {
    rows: Vec<(u64, u32)>,
    of: Queues,
}

impl Lengths {
    pub fn of(rows: Vec<(u64, Vec<(usize, u32)>)>) -> Lengths {
        let sum = |of: &[(usize, u32)]| of.iter().fold(0_u32, |sum, it| sum.saturating_add(it.1));
        Lengths {
            rows: rows.iter().map(|(size, of)| (*size, sum(of))).collect(),
            of: rows.into_iter().map(|(_, of)| of).collect(),
        }
    }

    pub fn sizes(&self) -> impl Iterator<Item = u64> {
        self.rows.iter().map(|row| row.0)
    }

    pub fn all(&self) -> impl Iterator<Item = (u64, u64)> {
        self.rows.iter().map(|row| (row.0, u64::from(row.1)))
    }

    pub fn whole(&self) -> u64 {
        self.all().fold(0, |sum, (size, count)| sum.saturating_add(size.saturating_mul(count)))
    }

    pub fn size_of(&self, counts: &[u32]) -> u64 {
        let pieces = self.sizes().zip(counts);
        pieces.fold(0, |sum, (size, count)| sum.saturating_add(size.saturating_mul(u64::from(*count))))
    }

    /// Which pieces were wanted of each length.
    pub fn queues(&self) -> Queues {
        self.of.clone()
    }

    /// Which pieces those are, taken from the queues.
    pub fn dealt(&self, counts: &[u32], queues: &mut Queues) -> Vec<(usize, u32)> {
        let mut pieces = Vec::new();
        for (count, queue) in counts.iter().zip(queues) {
            let mut wanted = *count;
            while wanted > 0 {
                let Some(first) = queue.first_mut() else { break };
                let taken = wanted.min(first.1);
                pieces.push((first.0, taken));
                wanted = wanted.saturating_sub(taken);
                first.1 = first.1.saturating_sub(taken);
                if first.1 == 0 {
                    queue.remove(0);
                }
            }
        }
        pieces
    }

    fn counts(&self) -> Vec<u32> {
        self.rows.iter().map(|row| row.1).collect()
    }
}

/// Places looked at in one filling, in all fillings, and rounds of taking apart.
const WORK_A_BOARD: u32 = 500;
const WORK: u32 = 400_000;
const ROUNDS: u32 = 600;

/// The best answer that was found, and the pieces that no board was left for.
/// `bound`: what nothing can go below, where all is placed; an answer that meets it is the best.
pub(super) fn best(lengths: &Lengths, stock: &[Boards], bound: &Bound) -> (Vec<Board>, Vec<u32>) {
    let mut shop = Filling { lengths, stock, work: WORK };
    let mut best = shop.answer(None);
    for prefers in 0..stock.len() {
        let other = shop.answer(Some(prefers));
        if other.key < best.key {
            best = other;
        }
    }
    let mut dice = Dice(0x9e37_79b9_7f4a_7c15);
    for _ in 0..ROUNDS {
        if shop.work == 0 || best.boards.len() < 2 || best.meets(bound) {
            break;
        }
        let other = shop.taken_apart(&best, &mut dice);
        if other.key <= best.key {
            best = other;
        }
    }
    (best.boards, best.left)
}

/// An answer, and how good it is: less is better.
struct Answer {
    boards: Vec<Board>,
    left: Vec<u32>,
    key: (u64, u64, u64, usize, std::cmp::Reverse<u128>),
}

impl Answer {
    fn meets(&self, bound: &Bound) -> bool {
        let (unplaced, bought, whole, boards, _) = self.key;
        let fewest = u32::try_from(boards).is_ok_and(|it| it <= bound.boards);
        unplaced == 0 && bought <= bound.bought && (bought == whole || fewest)
    }
}

struct Filling<'a> {
    lengths: &'a Lengths,
    stock: &'a [Boards],
    work: u32,
}

impl Filling<'_> {
    fn answer(&mut self, prefers: Option<usize>) -> Answer {
        let boards = self.fill_all(Vec::new(), self.lengths.counts(), prefers, &mut None);
        self.judged(boards)
    }

    /// Two to five boards are emptied, one of them the emptiest, and what was in them is cut anew.
    fn taken_apart(&mut self, answer: &Answer, dice: &mut Dice) -> Answer {
        let mut order: Vec<usize> = (0..answer.boards.len()).collect();
        let fill = |at: &usize| answer.boards.get(*at).map_or(0, |it| self.lengths.size_of(&it.counts));
        order.order_by_key(fill);
        let many = usize::try_from(dice.below(4)).unwrap_or(0).saturating_add(2);
        let mut taken = vec![order.first().copied().unwrap_or(0)];
        while taken.len() < many.min(order.len()) {
            let at = usize::try_from(dice.below(u64::try_from(order.len()).unwrap_or(1))).unwrap_or(0);
            if !taken.contains(&at) {
                taken.push(at);
            }
        }
        let mut left = answer.left.clone();
        let mut kept = Vec::new();
        for (at, board) in answer.boards.iter().enumerate() {
            if taken.contains(&at) {
                left.iter_mut()
                    .zip(&board.counts)
                    .for_each(|(left, count)| *left = left.saturating_add(*count));
            } else {
                kept.push(board.clone());
            }
        }
        let prefers = usize::try_from(dice.below(u64::try_from(self.stock.len()).unwrap_or(1))).ok();
        let prefers = prefers.filter(|_| dice.below(2) == 0);
        let boards = self.fill_all(kept, left, prefers, &mut Some(dice));
        self.judged(boards)
    }

    fn judged(&self, (boards, left): (Vec<Board>, Vec<u32>)) -> Answer {
        let (mut bought, mut whole, mut squares) = (0_u64, 0_u64, 0_u128);
        for board in &boards {
            let Some(of) = self.stock.get(board.stock) else { continue };
            whole = whole.saturating_add(of.length);
            if of.there.is_none() {
                bought = bought.saturating_add(of.length);
            }
            let fill = u128::from(self.lengths.size_of(&board.counts));
            squares = squares.saturating_add(fill.saturating_mul(fill));
        }
        let unplaced = left.iter().fold(0_u64, |sum, it| sum.saturating_add(u64::from(*it)));
        let key = (unplaced, bought, whole, boards.len(), std::cmp::Reverse(squares));
        Answer { boards, left, key }
    }

    /// Board after board, until nothing is left or no board is.
    fn fill_all(
        &mut self,
        mut boards: Vec<Board>,
        mut left: Vec<u32>,
        prefers: Option<usize>,
        dice: &mut Option<&mut Dice>,
    ) -> (Vec<Board>, Vec<u32>) {
        let mut there: Vec<Option<u32>> = self.stock.iter().map(|it| it.there).collect();
        for board in &boards {
            take(&mut there, board.stock);
        }
        // What no board is left for stays out of the way of the rest.
        let mut aside: Vec<u32> = vec![0; left.len()];
        while let Some(first) = self.first(&left, dice) {
            match self.board(&left, first, &there, prefers) {
                Some(board) => {
                    take(&mut there, board.stock);
                    left.iter_mut().zip(&board.counts).for_each(|(it, less)| *it = it.saturating_sub(*less));
                    boards.push(board);
                }
                None => {
                    if let (Some(from), Some(to)) = (left.get_mut(first), aside.get_mut(first)) {
                        *to = *from;
                        *from = 0;
                    }
                }
            }
        }
        (boards, aside)
    }

    /// The longest piece that is left; by the dice one time in four the one after it.
    fn first(&self, left: &[u32], dice: &mut Option<&mut Dice>) -> Option<usize> {
        let mut there = left.iter().enumerate().filter(|(_, count)| **count > 0).map(|(at, _)| at);
        let first = there.next()?;
        let other = dice.as_mut().is_some_and(|dice| dice.below(4) == 0);
        Some(there.next().filter(|_| other).unwrap_or(first))
    }

    /// One board with that piece in it: out of what is there before anything is bought, of the preferred length where
    /// that will do, else of the length that wastes the smallest part; the shortest that holds it in the end.
    fn board(
        &mut self,
        left: &[u32],
        first: usize,
        there: &[Option<u32>],
        prefers: Option<usize>,
    ) -> Option<Board> {
        let piece = self.lengths.rows.get(first)?.0;
        let free = |at: usize| there.get(at).is_some_and(|it| *it != Some(0));
        let fits = |at: &usize| free(*at) && self.stock.get(*at).is_some_and(|it| it.size >= piece);
        let open: Vec<usize> = (0..self.stock.len()).filter(fits).collect();
        let is_there = |at: &usize| self.stock.get(*at).is_some_and(|it| it.there.is_some());
        let own: Vec<usize> = open.iter().copied().filter(is_there).collect();
        let open = if own.is_empty() { open } else { own };
        let tried: Vec<usize> = match prefers.filter(|at| open.contains(at)) {
            Some(one) => vec![one],
            None => open,
        };
        let mut best: Option<(u128, Board)> = None;
        for at in tried {
            let size = self.stock.get(at)?.size;
            let counts = self.fill(left, first, size);
            let stock = self.shortest(&counts, at, there);
            let of = self.stock.get(stock)?;
            let waste = of.size.saturating_sub(self.lengths.size_of(&counts));
            let part =
                u128::from(waste).saturating_mul(1 << 40).checked_div(u128::from(of.size)).unwrap_or(0);
            if best.as_ref().is_none_or(|(least, _)| part < *least) {
                best = Some((part, Board { stock, counts }));
            }
        }
        best.map(|it| it.1)
    }

    /// The shortest board of the same sort (there, or bought) that holds as much.
    fn shortest(&self, counts: &[u32], at: usize, there: &[Option<u32>]) -> usize {
        let size = self.lengths.size_of(counts);
        let bought = self.stock.get(at).is_some_and(|it| it.there.is_none());
        let holds = |(other, it): &(usize, &Boards)| {
            it.size >= size
                && it.there.is_none() == bought
                && there.get(*other).is_some_and(|it| *it != Some(0))
        };
        let all = self.stock.iter().enumerate().filter(holds);
        all.min_by_key(|(_, it)| it.length).map_or(at, |(other, _)| other)
    }

    fn fill(&mut self, left: &[u32], first: usize, size: u64) -> Vec<u32> {
        let mut one = vec![0; left.len()];
        let mut left = left.to_vec();
        if let (Some(count), Some(still)) = (one.get_mut(first), left.get_mut(first)) {
            *count = 1;
            *still = still.saturating_sub(1);
        }
        let piece = self.lengths.rows.get(first).map_or(0, |row| row.0);
        let rest = size.saturating_sub(piece);
        let mut still: Vec<u64> = Vec::with_capacity(left.len());
        let mut sum = 0_u64;
        for ((size, _), count) in self.lengths.rows.iter().zip(&left).rev() {
            sum = sum.saturating_add(size.saturating_mul(u64::from(*count)));
            still.push(sum);
        }
        still.reverse();
        let work = WORK_A_BOARD.min(self.work);
        let mut filler = Filler {
            lengths: self.lengths,
            left: &left,
            still: &still,
            now: one.clone(),
            best: one,
            rest,
            work,
        };
        filler.go(0, rest);
        self.work = self.work.saturating_sub(WORK_A_BOARD.min(self.work).saturating_sub(filler.work));
        filler.best
    }
}

fn take(there: &mut [Option<u32>], stock: usize) {
    if let Some(Some(count)) = there.get_mut(stock) {
        *count = count.saturating_sub(1);
    }
}

/// The pieces that leave least of a board, among so many places looked at.
struct Filler<'a> {
    lengths: &'a Lengths,
    left: &'a [u32],
    /// All that is left from a length on.
    still: &'a [u64],
    now: Vec<u32>,
    best: Vec<u32>,
    rest: u64,
    work: u32,
}

impl Filler<'_> {
    fn go(&mut self, from: usize, rest: u64) {
        if rest < self.rest {
            self.rest = rest;
            self.best.clone_from(&self.now);
        }
        // The first length from here on of which a piece still goes in.
        let goes = |at: &usize| {
            let count = self.left.get(*at).copied().unwrap_or(0);
            count > 0 && self.lengths.rows.get(*at).is_some_and(|row| row.0 <= rest)
        };
        let Some(at) = (from..self.left.len()).find(goes) else { return };
        let (Some((size, _)), Some(still)) =
            (self.lengths.rows.get(at).copied(), self.still.get(at).copied())
        else {
            return;
        };
        if self.rest == 0 || rest.saturating_sub(still) >= self.rest {
            return;
        }
        let most = u32::try_from(rest.checked_div(size).unwrap_or(0)).unwrap_or(u32::MAX);
        let before = self.now.get(at).copied().unwrap_or(0);
        for count in (0..=most.min(self.left.get(at).copied().unwrap_or(0))).rev() {
            if self.work == 0 {
                break;
            }
            self.work = self.work.saturating_sub(1);
            if let Some(now) = self.now.get_mut(at) {
                *now = before.saturating_add(count);
            }
            self.go(at.saturating_add(1), rest.saturating_sub(size.saturating_mul(u64::from(count))));
        }
        if let Some(now) = self.now.get_mut(at) {
            *now = before;
        }
    }
}

/// Numbers that look thrown and are the same on every phone (a linear congruence, Knuth's constants).
struct Dice(u64);

impl Dice {
    fn below(&mut self, many: u64) -> u64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33).checked_rem(many).unwrap_or(0)
    }
}
