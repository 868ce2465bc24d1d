//! The shelf of an item: all its lots together, by moving average or first-in first-out.
//!
//! The shelf is a row of layers, the first in line in front; under the average there is one. A draw takes from the
//! front, of a layer its share of every part by quantity; the last unit takes the rest exactly.
//! More drawn than is there: the missing part is costed at the last unit cost until the next
//! receipt settles it at its own, after which the average restarts. What is counted short is drawn by the formula, what
//! is counted over comes in at the average, or at what came last; both go to the shop's count differences, never to the
//! next build. What comes back goes to the front of the line at its draw's unit cost.
//! Worked example: 2 at 5, 5 drawn, 10 received at 6: the draw costs 28.00, 7 at 6 are left, 70 in all. Drawn by a build
//! that was closed before they came, it keeps its 25.00, and the 7 bear the other 45.00.
//! Source: IAS 2 paragraph 25 (weighted average, here as each shipment is received; first-in first-out); negative shelf,
//! count and return: our own rule, DEVELOPERS.md § Why. Not here: lots drawn by name (`named_lot`), which formula when
//! (`formula`).

use super::{
    Formula,
    written_off::{Why, WrittenOff},
};
use crate::{
    costing::{CostKind, Gap, Parts},
    journal::Id,
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
    /// What lies there, first in line first.
    pub layers: Vec<(Parts, Quantity)>,
    /// Cost and quantity that the last unit cost comes from.
    pub last: Option<(Parts, Quantity)>,
    /// What the shelf held after the last receipt.
    pub full: Quantity,
    /// What the shop bears: found missing, thrown out, given away.
    pub written_off: Vec<WrittenOff>,
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
    /// It keeps what it cost when its build was closed: what it still waits for is settled at what is left of that.
    keeps: bool,
}

impl Taken {
    /// The draw's cost by today's knowledge.
    pub(crate) fn parts(&self) -> Parts {
        self.gross.plus(self.provisional.unwrap_or_default())
    }
}

/// So much at such a cost.
#[derive(Clone, Debug)]
struct Layer {
    quantity: Quantity,
    cost: Parts,
    gaps: Vec<Gap>,
}

/// A shelf, as receipts, draws, returns and looks go by in their order.
#[derive(Clone, Debug, Default)]
pub(crate) struct Pooled {
    formula: Formula,
    layers: VecDeque<Layer>,
    last: Option<(Parts, Quantity)>,
    full: Quantity,
    written_off: Vec<WrittenOff>,
    /// What was drawn for the shop itself, by place in `taken`.
    gone: Vec<(usize, WrittenOff)>,
    unplaced: Parts,
    /// Of what came without a quantity: gone once the shelf is empty.
    loose_gaps: Vec<Gap>,
    taken: Vec<Taken>,
    /// Draws that wait for a receipt, by place in `taken`.
    waiting: VecDeque<usize>,
}

impl Pooled {
    /// A shelf that will see so many draws.
    pub(crate) fn expecting(draws: usize, formula: Formula) -> Pooled {
        Pooled { formula, taken: Vec::with_capacity(draws), ..Pooled::default() }
    }

    /// From here on by this formula: what is there goes on at what it stands at.
    pub(crate) fn goes_by(&mut self, formula: Formula) {
        self.formula = formula;
        if formula == Formula::MovingAverage {
            let mut layers = std::mem::take(&mut self.layers).into_iter();
            self.layers.extend(layers.next());
            layers.for_each(|layer| self.put(layer, false));
        }
    }

    /// A lot comes.
    pub(crate) fn receive(&mut self, entry: Id, quantity: Quantity, cost: Parts, gaps: &[Gap]) {
        if quantity.is_zero() {
            self.unplaced = self.unplaced.plus(cost);
            add_once(&mut self.loose_gaps, gaps);
            return;
        }
        self.last = Some((cost, quantity));
        let (quantity, cost) = self.settle(entry, quantity, cost, gaps);
        if quantity.is_zero() {
            return;
        }
        self.put(Layer { quantity, cost, gaps: gaps.to_vec() }, false);
        self.full = self.there();
    }

    /// A draw; its place among all draws is handed back.
    pub(crate) fn draw(&mut self, quantity: Quantity) -> usize {
        let mut taken = Taken { known: true, ..Taken::default() };
        let there = quantity.min(self.there());
        if !there.is_zero() {
            taken.gaps = self.loose_gaps.clone();
            taken.gross = self.take(there, &mut taken.gaps);
            (taken.settled, taken.settled_quantity) = (taken.gross, there);
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
        self.layers.iter().fold(Quantity::ZERO, |sum, layer| sum.plus(layer.quantity))
    }

    /// A draw that cost what it cost when its build was closed: the next in line bears what that leaves of what it took.
    /// With nothing left on the shelf, it is a difference; with less there than it drew, the next receipts bear it.
    pub(crate) fn draw_as_closed(&mut self, draw: Id, quantity: Quantity, cost: Parts) -> usize {
        let there = quantity.min(self.there());
        let missing = quantity.minus(there);
        let took = self.take(there, &mut Vec::new());
        let at = self.taken.len();
        let mut taken = Taken { known: true, keeps: true, gross: cost, ..Taken::default() };
        if missing.is_zero() {
            self.differs(draw, took.minus(cost));
        } else {
            (taken.gross, taken.missing, taken.provisional) = (took, missing, Some(cost.minus(took)));
            self.waiting.push_back(at);
        }
        (taken.settled, taken.settled_quantity) = (taken.gross, there);
        self.taken.push(taken);
        at
    }

    /// What closed builds leave over is borne by the next in line, or, with nothing left, is a difference.
    fn differs(&mut self, entry: Id, rest: Parts) {
        match self.layers.front_mut() {
            Some(layer) => layer.cost = layer.cost.plus(rest),
            None if rest.is_zero() => {}
            None => self.written_off.push(WrittenOff::of(entry, Why::Closed, Quantity::ZERO, rest)),
        }
    }

    /// Comes back after its build was closed.
    pub(crate) fn give_back_at_nothing(&mut self, entry: Id, quantity: Quantity) {
        if !quantity.is_zero() {
            self.come_back(entry, quantity, Parts::ZERO, Vec::new());
        }
    }

    /// So much of a draw comes back at that draw's unit cost, or at what it came back at when the build was closed
    /// (`closed`); what it gives back is handed back.
    pub(crate) fn give_back(
        &mut self,
        entry: Id,
        draw: usize,
        quantity: Quantity,
        closed: Option<Parts>,
    ) -> Parts {
        let Some(taken) = self.taken.get_mut(draw) else { return Parts::ZERO };
        // What was never there comes back first: it only shortens the wait.
        let unmade = quantity.min(taken.missing);
        let (mut back, mut over) = (Parts::ZERO, Parts::ZERO);
        if !unmade.is_zero() {
            let waits = taken.provisional.unwrap_or_default();
            back = closed.map_or_else(|| waits.share(unmade, taken.missing), |it| it.share(unmade, quantity));
            taken.missing = taken.missing.minus(unmade);
            taken.provisional = taken.provisional.map(|it| it.minus(back));
            taken.gross = taken.gross.plus(back);
            if taken.missing.is_zero() {
                over = taken.provisional.take().unwrap_or_default();
                taken.gross = taken.gross.plus(over);
                self.waiting.retain(|at| *at != draw);
            }
        }
        let real = quantity.minus(unmade).min(taken.settled_quantity);
        if !real.is_zero() {
            let of_real = taken.settled.share(real, taken.settled_quantity);
            let cost = closed.map_or(of_real, |it| it.minus(back));
            taken.settled = taken.settled.minus(cost);
            taken.settled_quantity = taken.settled_quantity.minus(real);
            let gaps = taken.gaps.clone();
            self.come_back(entry, real, cost, gaps);
            back = back.plus(cost);
        }
        self.differs(entry, over.negated());
        back
    }

    /// Thrown out, or given away: drawn by the formula, and borne by the shop.
    pub(crate) fn write_off(&mut self, entry: Id, why: Why, quantity: Quantity) {
        let at = self.draw(quantity);
        self.gone.push((at, WrittenOff::of(entry, why, quantity, Parts::ZERO)));
    }

    /// So much was counted; found empty is nought. `lacks`: what a unit lacks whose cost nobody knows.
    pub(crate) fn count(&mut self, entry: Id, quantity: Quantity, lacks: Gap) {
        let mut found = (Quantity::ZERO, Parts::ZERO);
        // Drawn and never received, and yet the shelf is not below nought: so much more was there.
        for at in self.waiting.drain(..) {
            let Some(taken) = self.taken.get_mut(at) else { continue };
            let cost = taken.provisional.take().unwrap_or_default();
            found = (found.0.plus(taken.missing), found.1.plus(cost));
            taken.gross = taken.gross.plus(cost);
            taken.settled = taken.settled.plus(cost);
            taken.settled_quantity = taken.settled_quantity.plus(taken.missing);
            taken.missing = Quantity::ZERO;
        }
        let there = self.there();
        if quantity < there {
            self.write_off(entry, Why::Counted, there.minus(quantity));
        }
        if there < quantity {
            let more = quantity.minus(there);
            let unit = self.unit_of_more();
            let cost = unit.map(|(cost, of)| cost.share(more, of)).unwrap_or_default();
            found = (found.0.plus(more), found.1.plus(cost));
            let gaps = if unit.is_some() { Vec::new() } else { vec![lacks] };
            self.put(Layer { quantity: more, cost, gaps }, false);
            self.full = self.full.max(quantity);
        }
        if !found.0.is_zero() {
            let (quantity, cost) = (found.0.negated(), found.1.negated());
            self.written_off.push(WrittenOff::of(entry, Why::Counted, quantity, cost));
        }
    }

    /// The end: the shelf, and what each draw took.
    pub(crate) fn close(mut self) -> (ItemAccount, Vec<Taken>) {
        let waiting = self.waiting.iter().filter_map(|at| self.taken.get(*at));
        let (missing, provisional) =
            waiting.fold((Quantity::ZERO, Parts::ZERO), |(quantity, cost), taken| {
                (quantity.plus(taken.missing), cost.plus(taken.provisional.unwrap_or_default()))
            });
        for (at, gone) in std::mem::take(&mut self.gone) {
            let taken = self.taken.get(at);
            let parts = taken.map(Taken::parts).unwrap_or_default();
            let (known, gaps) = taken.map(|it| (it.known, it.gaps.clone())).unwrap_or_default();
            self.written_off.push(WrittenOff { parts, known, gaps, ..gone });
        }
        let mut gaps = std::mem::take(&mut self.loose_gaps);
        self.layers.iter().for_each(|layer| add_once(&mut gaps, &layer.gaps));
        let cost = self.layers.iter().fold(Parts::ZERO, |sum, layer| sum.plus(layer.cost));
        let account = ItemAccount {
            kind: CostKind::Bought,
            quantity: self.there().minus(missing),
            value: cost.minus(provisional),
            layers: self.layers.iter().map(|layer| (layer.cost, layer.quantity)).collect(),
            last: self.last,
            full: self.full,
            written_off: self.written_off,
            unplaced: self.unplaced,
            gaps,
        };
        (account, self.taken)
    }

    /// What comes back is first in line.
    fn come_back(&mut self, entry: Id, quantity: Quantity, cost: Parts, gaps: Vec<Gap>) {
        let (quantity, cost) = self.settle(entry, quantity, cost, &gaps);
        if quantity.is_zero() {
            return;
        }
        self.put(Layer { quantity, cost, gaps }, true);
        self.full = self.full.max(self.there());
    }

    fn put(&mut self, layer: Layer, first: bool) {
        match self.layers.front_mut() {
            Some(all) if self.formula == Formula::MovingAverage => {
                all.quantity = all.quantity.plus(layer.quantity);
                all.cost = all.cost.plus(layer.cost);
                add_once(&mut all.gaps, &layer.gaps);
            }
            Some(_) if first => self.layers.push_front(layer),
            Some(_) | None => self.layers.push_back(layer),
        }
        self.refresh();
    }

    /// The last unit cost is that of the average, where that is the formula.
    fn refresh(&mut self) {
        if let (Formula::MovingAverage, Some(layer)) = (self.formula, self.layers.front()) {
            self.last = Some((layer.cost, layer.quantity));
        }
    }

    /// What a unit costs that turns up: the average, or what came last.
    fn unit_of_more(&self) -> Option<(Parts, Quantity)> {
        self.last.filter(|(_, of)| !of.is_zero())
    }

    fn take(&mut self, mut quantity: Quantity, gaps: &mut Vec<Gap>) -> Parts {
        let mut cost = Parts::ZERO;
        while let Some(layer) = self.layers.front_mut().filter(|_| !quantity.is_zero()) {
            let takes = quantity.min(layer.quantity);
            let share = layer.cost.share(takes, layer.quantity);
            add_once(gaps, &layer.gaps);
            quantity = quantity.minus(takes);
            cost = cost.plus(share);
            layer.cost = layer.cost.minus(share);
            layer.quantity = layer.quantity.minus(takes);
            if layer.quantity.is_zero() {
                self.layers.pop_front();
            }
        }
        if self.layers.is_empty() {
            self.loose_gaps.clear();
        }
        cost
    }

    /// Those who wait take from what comes, first come first; what is left is handed back. Those of closed builds take
    /// what is left of what they cost, all that comes until then.
    fn settle(
        &mut self,
        entry: Id,
        mut quantity: Quantity,
        mut cost: Parts,
        gaps: &[Gap],
    ) -> (Quantity, Parts) {
        while let Some(at) = self.waiting.front().copied() {
            if quantity.is_zero() {
                break;
            }
            let Some(taken) = self.taken.get_mut(at) else { break };
            let settles = quantity.min(taken.missing);
            let still = taken.missing.minus(settles);
            let mut share = cost.share(settles, quantity);
            if taken.keeps {
                let waits = taken.provisional.unwrap_or_default();
                share = if still.is_zero() { waits } else { share };
                taken.provisional = Some(waits.minus(share));
            } else {
                taken.provisional = taken.provisional.map(|it| it.share(still, taken.missing));
                add_once(&mut taken.gaps, gaps);
            }
            cost = cost.minus(share);
            quantity = quantity.minus(settles);
            taken.missing = still;
            taken.gross = taken.gross.plus(share);
            taken.settled = taken.settled.plus(share);
            taken.settled_quantity = taken.settled_quantity.plus(settles);
            taken.known = true;
            if still.is_zero() {
                taken.provisional = None;
                self.waiting.pop_front();
            }
        }
        if quantity.is_zero() {
            self.differs(entry, std::mem::take(&mut cost));
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
