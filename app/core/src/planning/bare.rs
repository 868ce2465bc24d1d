//! The planner's search without people and calendars: tasks of whole lengths, links with waits, things with counts.
//!
//! What published instances and textbook networks are held against. A plan of a shop goes through the same `place` and
//! `search`; here every task may run day and night, and is taken from its start to its end.
//! Source: the resource-constrained project scheduling problem, as in R. Kolisch, A. Sprecher, European Journal of
//! Operational Research 96 (1996) 205-216. Not here: steps of a journal (`network`).

use super::{
    calendar::{Calendar, FAR},
    place::{Board, Model, Takes, Task, Way},
    search::{bound, search, tails},
};
use crate::measure::InOrder;

/// A network of tasks, numbered from 0.
#[derive(Clone, Debug, Default)]
pub struct Bare {
    /// How long each takes.
    pub lengths: Vec<i64>,
    /// What comes before each, and what must pass after that.
    pub before: Vec<Vec<(usize, i64)>>,
    /// What each takes: of which thing, how many.
    pub takes: Vec<Vec<(usize, u32)>>,
    /// How many there are of each thing.
    pub counts: Vec<u32>,
}

/// What the search came to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shortest {
    /// The end of the last task.
    pub length: i64,
    /// When each begins.
    pub starts: Vec<i64>,
    /// How many schedules were tried.
    pub tried: u32,
    /// Nothing can be shorter.
    pub proven: bool,
}

impl Bare {
    /// The shortest schedule among at most so many.
    pub fn shortest(&self, schedules: u32, seed: u64) -> Shortest {
        let model = self.model();
        let least = self.lower_bound();
        let found = search(&model, &self.lengths, schedules, seed, Some(least));
        let mut board = Board::default();
        board.place(&model, &found.order, &self.lengths);
        Shortest {
            length: board.spots.iter().map(|it| it.end).max().unwrap_or(0),
            starts: board.spots.iter().map(|it| it.start).collect(),
            tried: found.tried,
            proven: found.proven,
        }
    }

    /// The longest chain of tasks and waits.
    pub fn longest_chain(&self) -> i64 {
        bound(&self.model(), &self.lengths).last().copied().unwrap_or(0).max(0)
    }

    /// What hangs on each task, its own length with it.
    pub fn tails(&self) -> Vec<i64> {
        tails(&self.model(), &self.lengths)
    }

    /// No schedule is shorter: the longest chain, or all work at one thing by how many there are of it.
    pub fn lower_bound(&self) -> i64 {
        let of_thing = |(thing, count): (usize, &u32)| {
            let work = self.takes.iter().zip(&self.lengths).map(|(takes, length)| {
                let own = takes.iter().filter(|(it, _)| *it == thing);
                own.fold(0_i64, |sum, (_, many)| sum.saturating_add(length.saturating_mul(i64::from(*many))))
            });
            let all = work.fold(0_i64, i64::saturating_add);
            let whole = all.checked_div(i64::from(*count)).unwrap_or(0);
            let rest = all.checked_rem(i64::from(*count)).unwrap_or(0);
            if rest > 0 { whole.saturating_add(1) } else { whole }
        };
        let by_things = self.counts.iter().enumerate().map(of_thing).max().unwrap_or(0);
        self.longest_chain().max(by_things)
    }

    fn model(&self) -> Model {
        let task = |at: usize| {
            let takes = self.takes.get(at).map(Vec::as_slice).unwrap_or_default();
            let take =
                |(unit, count): &(usize, u32)| Takes { unit: *unit, count: *count, before: 0, after: 0 };
            Task {
                build: 0,
                release: 0,
                fixed: false,
                due: None,
                one_go: false,
                gives_way: false,
                ways: vec![Way { calendar: 0, people: Vec::new() }],
                takes: takes.iter().filter(|(_, count)| *count > 0).map(take).collect(),
                before: self.before.get(at).cloned().unwrap_or_default(),
                after: Vec::new(),
            }
        };
        let mut tasks: Vec<Task> = (0..self.lengths.len()).map(task).collect();
        for (at, before) in self.before.iter().enumerate() {
            for (earlier, wait) in before {
                if let Some(task) = tasks.get_mut(*earlier) {
                    task.after.push((at, *wait));
                }
            }
        }
        for task in &mut tasks {
            task.after.order();
        }
        Model {
            tasks,
            calendars: vec![Calendar::always()],
            capacity: self.counts.clone(),
            taken: Vec::new(),
            due: vec![None],
            ..Model::default()
        }
    }
}

/// A schedule that could be: every task after what comes before it, and never more taken than there is.
pub fn could_be(bare: &Bare, starts: &[i64]) -> bool {
    let end = |at: usize| Some(starts.get(at)?.saturating_add(*bare.lengths.get(at)?));
    let after = bare.before.iter().enumerate().all(|(at, before)| {
        let start = starts.get(at).copied().unwrap_or(FAR.saturating_neg());
        before.iter().all(|(it, wait)| end(*it).is_some_and(|end| end.saturating_add(*wait) <= start))
    });
    let within = |moment: i64| {
        bare.counts.iter().enumerate().all(|(thing, count)| {
            let running = (0..starts.len()).filter(|at| {
                starts.get(*at).is_some_and(|it| *it <= moment) && end(*at).is_some_and(|it| moment < it)
            });
            let takes = running.filter_map(|at| bare.takes.get(at)).flatten().filter(|(it, _)| *it == thing);
            takes.fold(0_u32, |sum, (_, many)| sum.saturating_add(*many)) <= *count
        })
    };
    after && starts.iter().all(|start| within(*start))
}
