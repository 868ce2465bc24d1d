//! Looking for an order of the steps that ends each build soon: sampled, justified and crossed.
//!
//! An order is worth what the serial scheme makes of it (`place`): how late each build is by its own date, in the maker's
//! order, then when each is over. The first order is the one that anybody would try: build by build, of what may begin the
//! one with most still hanging on it. Others are drawn with a bias for what may least wait; each is pushed to the right
//! and back to the left (justified), good ones are crossed, and the best is kept. An order replaces another only where
//! something ends sooner, so a plan that can't be bettered stays as anybody would have placed it. Same seed, same order.
//! Source: regret-biased sampling by latest finish, A. Drexl (1991); double justification, V. Valls, F. Ballestín,
//! S. Quintanilla, European Journal of Operational Research 165 (2005) 375-386; crossing of activity lists,
//! S. Hartmann (1998). Not here: what the steps are (`network`).

use super::{
    calendar::{Calendar, FAR},
    draws::Draws,
    place::{Board, Model, Spot, Takes, Task},
    two_dates,
};
use crate::measure::InOrder;

/// What a search came to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Found {
    pub order: Vec<usize>,
    /// What the order comes to: lateness by build, then the ends.
    pub worth: Vec<i64>,
    /// How many schedules were tried.
    pub tried: u32,
    /// Nothing can be better: it is what the links and calendars alone come to.
    pub proven: bool,
}

/// Tries at most so many schedules. `least`: the last build is known to end no sooner, whatever the order.
pub(crate) fn search(model: &Model, work: &[i64], schedules: u32, seed: u64, least: Option<i64>) -> Found {
    let tails = tails(model, work);
    let mut search = Search {
        model,
        back: mirrored(model),
        work,
        ranks: ranks(model, &tails),
        board: Board::default(),
        ends: Vec::new(),
        tried: 0,
        draws: Draws::of(seed),
    };
    let first = listed(model, &mut |open: &[usize]| eagerest(model, &tails, open));
    let worth = search.worth_of(&first);
    let mut bound = bound(model, work);
    if let (Some(last), Some(least)) = (bound.last_mut(), least) {
        *last = least.max(*last);
    }
    let mut best = One { order: first, worth };
    if best.worth > bound && schedules > EACH {
        search.evolve(&mut best, &bound, &tails, schedules);
    }
    let proven = best.worth <= bound;
    Found { order: best.order, worth: best.worth, tried: search.tried, proven }
}

/// What no order can better: every task as early as links, waits and calendars alone allow.
pub(crate) fn bound(model: &Model, work: &[i64]) -> Vec<i64> {
    let free = Model { capacity: vec![u32::MAX; model.capacity.len()], taken: Vec::new(), ..model.clone() };
    let order = listed(&free, &mut |_: &[usize]| 0);
    let mut board = Board::default();
    board.place(&free, &order, work);
    let mut worth = Vec::new();
    worth_of(model, &board, &mut worth);
    worth
}

/// What hangs on each task: its own work and the longest chain of work and waits after it.
pub(crate) fn tails(model: &Model, work: &[i64]) -> Vec<i64> {
    let order = listed(model, &mut |_: &[usize]| 0);
    let mut tails = vec![0_i64; model.tasks.len()];
    for at in order.into_iter().rev() {
        let after = model.tasks.get(at).map(|task| task.after.as_slice()).unwrap_or_default();
        let tail = |(next, wait): &(usize, i64)| tails.get(*next).map_or(0, |it| it.saturating_add(*wait));
        let longest = after.iter().map(tail).max().unwrap_or(0);
        if let Some(place) = tails.get_mut(at) {
            *place = longest.saturating_add(work.get(at).copied().unwrap_or(0));
        }
    }
    tails
}

#[derive(Clone, Debug)]
struct One {
    order: Vec<usize>,
    worth: Vec<i64>,
}

struct Search<'a> {
    model: &'a Model,
    back: Model,
    work: &'a [i64],
    /// A place for each task that no link contradicts.
    ranks: Vec<usize>,
    board: Board,
    ends: Vec<i64>,
    tried: u32,
    draws: Draws,
}

/// So many schedules are tried for each order: it, to the right, and back to the left.
const EACH: u32 = 3;
/// One task in so many changes places with the next when an order is crossed.
const SWAPS: u64 = 20;

impl Search<'_> {
    fn evolve(&mut self, best: &mut One, bound: &[i64], tails: &[i64], schedules: u32) {
        // Twice the root of what may be tried: found by trying, on published instances, from 240 schedules to 5,000.
        let kept = usize::try_from(schedules.isqrt()).unwrap_or(0).saturating_mul(2).max(8);
        let first = self.justified(best.order.clone());
        if first.worth < best.worth {
            best.clone_from(&first);
        }
        let mut all = vec![first];
        while self.tried.saturating_add(EACH) <= schedules {
            let order = if all.len() < kept { self.sampled(tails) } else { self.crossed(&all) };
            let one = self.justified(order);
            if one.worth < best.worth {
                best.clone_from(&one);
            }
            if best.worth.as_slice() <= bound {
                return;
            }
            if all.len() < kept {
                all.push(one);
            } else if !all.iter().any(|it| it.worth == one.worth && it.order == one.order) {
                let worst = (0..all.len()).max_by(|a, b| {
                    let worth = |at: &usize| all.get(*at).map(|it| &it.worth);
                    worth(a).cmp(&worth(b))
                });
                if let Some(worst) = worst.and_then(|at| all.get_mut(at)).filter(|it| one.worth <= it.worth) {
                    *worst = one;
                }
            }
        }
    }

    /// What an order comes to; the board then holds it.
    fn worth_of(&mut self, order: &[usize]) -> Vec<i64> {
        self.board.place(self.model, order, self.work);
        self.tried = self.tried.saturating_add(1);
        let mut worth = Vec::new();
        worth_of(self.model, &self.board, &mut worth);
        worth
    }

    /// The order, or what it becomes when it is pushed to the right and back to the left, whichever ends sooner.
    fn justified(&mut self, order: Vec<usize>) -> One {
        let worth = self.worth_of(&order);
        if self.board.spots.iter().any(|it| it.never()) {
            return One { order, worth };
        }
        let mut ends = std::mem::take(&mut self.ends);
        self.board.finishes(self.model, &mut ends);
        for task in &mut self.back.tasks {
            task.release = ends.get(task.build).map_or(0, |it| it.saturating_neg());
        }
        self.ends = ends;
        let right = self.by(|spot| spot.end.saturating_neg(), false);
        self.board.place(&self.back, &right, self.work);
        self.tried = self.tried.saturating_add(1);
        // In mirrored time the last to end begins first.
        let again = self.by(|spot| spot.end.saturating_neg(), true);
        let worth_again = self.worth_of(&again);
        if worth_again <= worth { One { order: again, worth: worth_again } } else { One { order, worth } }
    }

    /// The tasks by a time of their place on the board.
    fn by(&self, key: impl Fn(&Spot) -> i64, forwards: bool) -> Vec<usize> {
        let rank = |at: usize| {
            let rank = self.ranks.get(at).copied().unwrap_or(at);
            if forwards { rank } else { usize::MAX.saturating_sub(rank) }
        };
        let mut keyed: Vec<(i64, usize, usize)> =
            self.board.spots.iter().enumerate().map(|(at, spot)| (key(spot), rank(at), at)).collect();
        keyed.order();
        keyed.into_iter().map(|(.., at)| at).collect()
    }

    /// An order drawn with a bias for what may least wait; every second one keeps to the maker's order of builds.
    fn sampled(&mut self, tails: &[i64]) -> Vec<usize> {
        let (model, work) = (self.model, self.work);
        let mut draws = self.draws;
        let strict = draws.below(2) == 0;
        let longest = work.iter().copied().max().unwrap_or(0);
        let least = longest.checked_div(10).unwrap_or(0).max(1);
        let order = listed(model, &mut |open: &[usize]| {
            let build = |at: usize| model.tasks.get(at).map_or(usize::MAX, |it| it.build);
            let first = open.iter().map(|at| build(*at)).min();
            let may = |at: usize| !strict || Some(build(at)) == first;
            // What still hangs on it when it is over.
            let hangs = |at: usize| {
                tails.get(at).copied().unwrap_or(0).saturating_sub(work.get(at).copied().unwrap_or(0))
            };
            let lowest = open.iter().map(|at| hangs(*at)).min().unwrap_or(0);
            let weight = |at: usize| {
                let regret = hangs(at).saturating_sub(lowest).saturating_add(least);
                if may(at) { u64::try_from(regret).unwrap_or(0) } else { 0 }
            };
            let sum = open.iter().fold(0_u64, |sum, at| sum.saturating_add(weight(*at)));
            let mut drawn = draws.below(sum);
            let place = open.iter().position(|at| {
                let weight = weight(*at);
                let here = drawn < weight;
                drawn = drawn.saturating_sub(weight);
                here
            });
            place.unwrap_or(0)
        });
        self.draws = draws;
        order
    }

    /// Two good orders made one: the ends of the first, what lies between by the second.
    fn crossed(&mut self, all: &[One]) -> Vec<usize> {
        let (mother, father) = (self.good(all), self.good(all));
        let (Some(mother), Some(father)) = (all.get(mother), all.get(father)) else { return Vec::new() };
        let many = mother.order.len();
        let (one, two) = (self.draws.place(many.saturating_add(1)), self.draws.place(many.saturating_add(1)));
        let (from, to) = (one.min(two), one.max(two));
        let mut in_it = vec![false; many];
        let mut order = Vec::with_capacity(many);
        let sources = [(&mother.order, from), (&father.order, to), (&mother.order, many)];
        for (source, until) in sources {
            for at in source {
                if order.len() >= until {
                    break;
                }
                if let Some(there) = in_it.get_mut(*at).filter(|it| !**it) {
                    *there = true;
                    order.push(*at);
                }
            }
        }
        for place in 1..many {
            let (Some(before), Some(at)) = (order.get(place.saturating_sub(1)), order.get(place)) else {
                continue;
            };
            let linked =
                self.model.tasks.get(*at).is_none_or(|task| task.before.iter().any(|(it, _)| it == before));
            if self.draws.below(SWAPS) == 0 && !linked {
                order.swap(place.saturating_sub(1), place);
            }
        }
        order
    }

    /// The better of two drawn ones.
    fn good(&mut self, all: &[One]) -> usize {
        let (one, two) = (self.draws.place(all.len()), self.draws.place(all.len()));
        let worth = |at: usize| all.get(at).map(|it| &it.worth);
        if worth(one) <= worth(two) { one } else { two }
    }
}

fn worth_of(model: &Model, board: &Board, worth: &mut Vec<i64>) {
    let mut ends = Vec::new();
    board.finishes(model, &mut ends);
    worth.clear();
    let late = |(end, due): (&i64, &Option<i64>)| due.map_or(0, |due| end.saturating_sub(due).max(0));
    worth.extend(ends.iter().zip(&model.due).map(late));
    for (build, worth) in worth.iter_mut().enumerate() {
        *worth = two_dates::late(model, &board.spots, build).unwrap_or(*worth);
    }
    for (task, spot) in model.tasks.iter().zip(&board.spots) {
        let begun_late = if task.fixed { spot.start.saturating_sub(task.release).max(0) } else { 0 };
        let over_late = task.due.map_or(0, |due| spot.end.saturating_sub(due).max(0));
        if let Some(late) = worth.get_mut(task.build) {
            *late = late.saturating_add(begun_late).saturating_add(over_late);
        }
    }
    worth.extend(ends);
}

/// An order that no link contradicts: of what may come next the place that `choose` says.
fn listed(model: &Model, choose: &mut dyn FnMut(&[usize]) -> usize) -> Vec<usize> {
    let mut missing: Vec<usize> = model.tasks.iter().map(|task| task.before.len()).collect();
    let mut open: Vec<usize> =
        missing.iter().enumerate().filter(|(_, missing)| **missing == 0).map(|(at, _)| at).collect();
    let mut order = Vec::with_capacity(missing.len());
    while !open.is_empty() {
        let chosen = choose(&open).min(open.len().saturating_sub(1));
        let at = open.remove(chosen);
        order.push(at);
        let after = model.tasks.get(at).map(|task| task.after.as_slice()).unwrap_or_default();
        for (next, _) in after {
            if let Some(missing) = missing.get_mut(*next) {
                *missing = missing.saturating_sub(1);
                if *missing == 0 {
                    let place = open.partition_point(|it| it < next);
                    open.insert(place, *next);
                }
            }
        }
    }
    order
}

/// Of the first build the one with most hanging on it; of two the first.
fn eagerest(model: &Model, tails: &[i64], open: &[usize]) -> usize {
    let key = |at: &usize| {
        let build = model.tasks.get(*at).map_or(usize::MAX, |it| it.build);
        (build, tails.get(*at).map_or(0, |it| it.saturating_neg()))
    };
    let best = open.iter().enumerate().min_by_key(|(_, at)| key(at));
    best.map_or(0, |(place, _)| place)
}

fn ranks(model: &Model, tails: &[i64]) -> Vec<usize> {
    let order = listed(model, &mut |open: &[usize]| eagerest(model, tails, open));
    let mut ranks = vec![0_usize; order.len()];
    for (rank, at) in order.into_iter().enumerate() {
        if let Some(place) = ranks.get_mut(at) {
            *place = rank;
        }
    }
    ranks
}

/// The same with time running backwards: what came before comes after, what was held after is held before.
fn mirrored(model: &Model) -> Model {
    let turned = |it: &Takes| Takes { before: it.after, after: it.before, ..*it };
    let task = |task: &Task| Task {
        release: FAR.saturating_neg(),
        fixed: false,
        due: None,
        takes: task.takes.iter().map(turned).collect(),
        before: task.after.clone(),
        after: task.before.clone(),
        ..task.clone()
    };
    let taken = model
        .taken
        .iter()
        .map(|(unit, from, to, count)| (*unit, to.saturating_neg(), from.saturating_neg(), *count));
    Model {
        tasks: model.tasks.iter().map(task).collect(),
        calendars: model.calendars.iter().map(Calendar::mirrored).collect(),
        capacity: model.capacity.clone(),
        taken: taken.collect(),
        due: vec![None; model.due.len()],
        ..Model::default()
    }
}
