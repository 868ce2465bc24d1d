//! Items by moving average.
//!
//! A draw takes from every part of the shelf's cost its share by quantity; the last unit takes the rest
//! exactly. More drawn than is there: the missing part is costed at the last unit cost until the next
//! receipt settles it at its own, after which the average restarts. An item found empty: what the shelf
//! still held goes to the shop's count differences, never to the next build.
//! Source: IAS 2 paragraph 25 (weighted average, here as each shipment is received); negative shelf and count:
//! our own rule, DEVELOPERS.md § Stock. Not here: lots drawn by name (`named_lot`).

use crate::{
    costing::{CostKind, Gap, Parts},
    measure::Quantity,
};
use std::collections::VecDeque;

/// What an item's shelf is at the end.
#[derive(Clone, Debug)]
pub(crate) struct ItemAccount {
    /// The kind that a draw of it is.
    pub kind: CostKind,
    /// On the shelf; below zero while draws are not settled.
    pub quantity: Quantity,
    /// Its cost; below zero likewise.
    pub value: Parts,
    /// Cost and quantity that the last unit cost comes from.
    pub last: Option<(Parts, Quantity)>,
    /// What the shelf held after the last receipt.
    pub full: Quantity,
    /// Found missing: borne by the shop.
    pub differences: Parts,
    /// Cost that came without a quantity, so that no draw can take it.
    pub unplaced: Parts,
    /// What the shelf's cost lacks.
    pub gaps: Vec<Gap>,
}

/// What one draw took.
#[derive(Clone, Debug, Default)]
pub(crate) struct Taken {
    /// All that was ever taken, what came back included.
    pub gross: Parts,
    /// Still missing from the shelf, and its provisional cost; none where no unit cost is known.
    pub missing: Quantity,
    pub provisional: Option<Parts>,
    /// Something can be said of its cost.
    pub known: bool,
    pub gaps: Vec<Gap>,
    settled: Parts,
    settled_quantity: Quantity,
}

impl Taken {
    /// The draw's cost by today's knowledge.
    pub(crate) fn parts(&self) -> Parts {
        self.gross.plus(self.provisional.unwrap_or_default())
    }
}

/// A shelf, as receipts, draws, returns and counts go by in their order.
#[derive(Clone, Debug, Default)]
pub(crate) struct Average {
    shelf: Quantity,
    cost: Parts,
    last: Option<(Parts, Quantity)>,
    full: Quantity,
    differences: Parts,
    unplaced: Parts,
    gaps: Vec<Gap>,
    taken: Vec<Taken>,
    /// Draws that wait for a receipt, by place in `taken`.
    waiting: VecDeque<usize>,
}

impl Average {
    /// A shelf that will see so many draws.
    pub(crate) fn expecting(draws: usize) -> Average {
        Average { taken: Vec::with_capacity(draws), ..Average::default() }
    }

    /// A lot comes.
    pub(crate) fn receive(&mut self, quantity: Quantity, cost: Parts, gaps: &[Gap]) {
        if quantity.is_zero() {
            self.unplaced = self.unplaced.plus(cost);
            add_once(&mut self.gaps, gaps);
            return;
        }
        self.last = Some((cost, quantity));
        let (left, cost) = self.settle(quantity, cost, gaps);
        if left.is_zero() {
            return;
        }
        self.shelf = self.shelf.plus(left);
        self.cost = self.cost.plus(cost);
        add_once(&mut self.gaps, gaps);
        self.last = Some((self.cost, self.shelf));
        self.full = self.shelf;
    }

    /// A draw; its place among all draws is handed back.
    pub(crate) fn draw(&mut self, quantity: Quantity) -> usize {
        let mut taken = Taken { known: true, ..Taken::default() };
        let there = quantity.min(self.shelf);
        if !there.is_zero() {
            taken.gross = self.take(there);
            (taken.settled, taken.settled_quantity) = (taken.gross, there);
            taken.gaps = self.gaps.clone();
            if self.shelf.is_zero() {
                self.gaps.clear();
            }
        }
        taken.missing = quantity.minus(there);
        let at = self.taken.len();
        if !taken.missing.is_zero() {
            taken.provisional = self.last.map(|(cost, of)| cost.share(taken.missing, of));
            taken.known = taken.provisional.is_some() || !there.is_zero();
            self.waiting.push_back(at);
        }
        self.taken.push(taken);
        at
    }

    /// On the shelf.
    pub(crate) fn there(&self) -> Quantity {
        self.shelf
    }

    /// A draw that cost what it cost when its build was closed. With nothing left on the shelf, what is then left of its
    /// cost is a difference.
    pub(crate) fn draw_as_closed(&mut self, quantity: Quantity, cost: Parts) -> usize {
        self.cost = self.cost.minus(cost);
        self.shelf = self.shelf.minus(quantity);
        if self.shelf.is_zero() {
            self.differences = self.differences.plus(self.cost);
            self.cost = Parts::ZERO;
            self.gaps.clear();
        }
        let (gross, settled, settled_quantity) = (cost, cost, quantity);
        self.taken.push(Taken { known: true, gross, settled, settled_quantity, ..Taken::default() });
        self.taken.len().saturating_sub(1)
    }

    /// Comes back after its build was closed.
    pub(crate) fn give_back_at_nothing(&mut self, quantity: Quantity) {
        let (left, _) = self.settle(quantity, Parts::ZERO, &[]);
        self.shelf = self.shelf.plus(left);
        self.full = self.full.max(self.shelf);
        if !self.shelf.is_zero() {
            self.last = Some((self.cost, self.shelf));
        }
    }

    /// So much of a draw comes back at that draw's unit cost; what it gives back is handed back.
    pub(crate) fn give_back(&mut self, draw: usize, quantity: Quantity) -> Parts {
        let Some(taken) = self.taken.get_mut(draw) else { return Parts::ZERO };
        // What was never there comes back first: it only shortens the wait.
        let unmade = quantity.min(taken.missing);
        let mut back = Parts::ZERO;
        if !unmade.is_zero() {
            back = taken.provisional.unwrap_or_default().share(unmade, taken.missing);
            taken.missing = taken.missing.minus(unmade);
            taken.provisional = taken.provisional.map(|it| it.minus(back));
            taken.gross = taken.gross.plus(back);
            if taken.missing.is_zero() {
                self.waiting.retain(|at| *at != draw);
            }
        }
        let real = quantity.minus(unmade).min(taken.settled_quantity);
        if real.is_zero() {
            return back;
        }
        let cost = taken.settled.share(real, taken.settled_quantity);
        taken.settled = taken.settled.minus(cost);
        taken.settled_quantity = taken.settled_quantity.minus(real);
        let gaps = taken.gaps.clone();
        let (left, rest) = self.settle(real, cost, &gaps);
        if !left.is_zero() {
            self.shelf = self.shelf.plus(left);
            self.cost = self.cost.plus(rest);
            add_once(&mut self.gaps, &gaps);
            self.last = Some((self.cost, self.shelf));
            self.full = self.full.max(self.shelf);
        }
        back.plus(cost)
    }

    /// Found empty.
    pub(crate) fn empty(&mut self) {
        self.differences = self.differences.plus(self.cost);
        (self.shelf, self.cost) = (Quantity::ZERO, Parts::ZERO);
        self.gaps.clear();
        // Drawn and never received, and yet the shelf is merely empty: so much more was there.
        for at in self.waiting.drain(..) {
            let Some(taken) = self.taken.get_mut(at) else { continue };
            let found = taken.provisional.take().unwrap_or_default();
            self.differences = self.differences.minus(found);
            taken.gross = taken.gross.plus(found);
            taken.settled = taken.settled.plus(found);
            taken.settled_quantity = taken.settled_quantity.plus(taken.missing);
            taken.missing = Quantity::ZERO;
        }
    }

    /// The end: the shelf, and what each draw took.
    pub(crate) fn close(self) -> (ItemAccount, Vec<Taken>) {
        let waiting = self.waiting.iter().filter_map(|at| self.taken.get(*at));
        let (missing, provisional) =
            waiting.fold((Quantity::ZERO, Parts::ZERO), |(quantity, cost), taken| {
                (quantity.plus(taken.missing), cost.plus(taken.provisional.unwrap_or_default()))
            });
        let account = ItemAccount {
            kind: CostKind::Bought,
            quantity: self.shelf.minus(missing),
            value: self.cost.minus(provisional),
            last: self.last,
            full: self.full,
            differences: self.differences,
            unplaced: self.unplaced,
            gaps: self.gaps,
        };
        (account, self.taken)
    }

    fn take(&mut self, quantity: Quantity) -> Parts {
        let cost = self.cost.share(quantity, self.shelf);
        self.cost = self.cost.minus(cost);
        self.shelf = self.shelf.minus(quantity);
        cost
    }

    /// Those who wait take from what comes, first come first; what is left is handed back.
    fn settle(&mut self, mut quantity: Quantity, mut cost: Parts, gaps: &[Gap]) -> (Quantity, Parts) {
        while let Some(at) = self.waiting.front().copied() {
            if quantity.is_zero() {
                break;
            }
            let Some(taken) = self.taken.get_mut(at) else { break };
            let settles = quantity.min(taken.missing);
            let share = cost.share(settles, quantity);
            cost = cost.minus(share);
            quantity = quantity.minus(settles);
            let still = taken.missing.minus(settles);
            taken.provisional = taken.provisional.map(|it| it.share(still, taken.missing));
            taken.missing = still;
            taken.gross = taken.gross.plus(share);
            taken.settled = taken.settled.plus(share);
            taken.settled_quantity = taken.settled_quantity.plus(settles);
            taken.known = true;
            add_once(&mut taken.gaps, gaps);
            if still.is_zero() {
                taken.provisional = None;
                self.waiting.pop_front();
            }
        }
        (quantity, cost)
    }
}

/// Each once: what comes back brings the gaps that it was taken with.
fn add_once(all: &mut Vec<Gap>, gaps: &[Gap]) {
    for gap in gaps {
        if !all.contains(gap) {
            all.push(*gap);
        }
    }
}
