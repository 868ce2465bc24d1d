//! Placing steps one after the other, each as early as what stands already allows: the serial scheme.
//!
//! A step needs one way of doing it (whose calendar, which people) and so many of each resource. People are taken from its
//! start to its end, nights between in it, so that no other step of theirs comes in between, unless it gives way: then its
//! work lies around what stands already. Resources are taken from its start to its end and as long as they are held. It
//! starts at the first instant from which all of this is free.
//! Whole seconds, no floating point, and nothing is allocated once a board has been used: a forecast places thousands.
//! Source: serial schedule generation, as in R. Kolisch, European Journal of Operational Research 90 (1996) 320-333; the
//! calendars are ours. Not here: in which order (`search`), what the steps are (`network`).

use super::calendar::{Calendar, FAR};

/// One way of doing a task: who, and when all of them are free.
#[derive(Clone, Debug)]
pub(crate) struct Way {
    /// Place of the calendar in the model.
    pub calendar: usize,
    /// Places of the people among the units.
    pub people: Vec<usize>,
}

/// So many of a unit, and how long before the start and after the end.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Takes {
    pub unit: usize,
    pub count: u32,
    pub before: i64,
    pub after: i64,
}

/// What is placed.
#[derive(Clone, Debug)]
pub(crate) struct Task {
    /// Which build, by the maker's order.
    pub build: usize,
    /// Not before.
    pub release: i64,
    /// Should begin at its release at the latest: what is later counts as lateness of its build.
    pub fixed: bool,
    /// Should be over by then.
    pub due: Option<i64>,
    /// In one window.
    pub one_go: bool,
    /// Other steps of its people may come in between.
    pub gives_way: bool,
    /// Any one of them; whichever is done first, of two the first.
    pub ways: Vec<Way>,
    pub takes: Vec<Takes>,
    /// Tasks before it, and what must pass after their end.
    pub before: Vec<(usize, i64)>,
    /// The same the other way.
    pub after: Vec<(usize, i64)>,
}

/// All that placing needs to know but the order and the work.
#[derive(Clone, Debug, Default)]
pub(crate) struct Model {
    pub tasks: Vec<Task>,
    pub calendars: Vec<Calendar>,
    /// How many there are of each unit; people are units of one.
    pub capacity: Vec<u32>,
    /// Taken already: unit, from, to, count.
    pub taken: Vec<(usize, i64, i64, u32)>,
    /// When each build should be over.
    pub due: Vec<Option<i64>>,
    /// When the piece of a build should be over, where that date is its film's alone: `two_dates`.
    pub piece_due: Vec<Option<i64>>,
    /// Which tasks are work on a film.
    pub of_film: Vec<bool>,
}

/// Where a task lies.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct Spot {
    pub start: i64,
    pub end: i64,
    /// Which of its ways.
    pub way: usize,
}

impl Spot {
    const NEVER: Spot = Spot { start: FAR, end: FAR, way: 0 };

    /// It found no place.
    pub fn never(self) -> bool {
        self.end >= FAR
    }
}

/// From an instant on so many are taken; nothing before the first.
type Level = (i64, u32);

/// Where everything lies, and what is taken when.
#[derive(Clone, Debug, Default)]
pub(crate) struct Board {
    pub spots: Vec<Spot>,
    taken: Vec<Vec<Level>>,
    /// From and to of the work on what gives way, by task.
    around: Vec<(usize, i64, i64)>,
}

impl Board {
    /// Places every task of the order. `work`: seconds by task.
    pub fn place(&mut self, model: &Model, order: &[usize], work: &[i64]) {
        self.clear(model);
        for at in order {
            let (Some(task), Some(work)) = (model.tasks.get(*at), work.get(*at)) else { continue };
            let mut ready = task.release;
            for (before, wait) in &task.before {
                let end = self.spots.get(*before).map_or(FAR, |it| it.end);
                ready = ready.max(end.saturating_add(*wait));
            }
            let spot = if ready >= FAR { Spot::NEVER } else { self.best(model, task, ready, *work) };
            self.take(model, *at, spot);
        }
    }

    /// Ends of the builds.
    pub fn finishes(&self, model: &Model, into: &mut Vec<i64>) {
        into.clear();
        into.resize(model.due.len(), FAR.saturating_neg());
        for (task, spot) in model.tasks.iter().zip(&self.spots) {
            if let Some(finish) = into.get_mut(task.build) {
                *finish = (*finish).max(spot.end);
            }
        }
    }

    fn clear(&mut self, model: &Model) {
        self.around.clear();
        self.spots.clear();
        self.spots.resize(model.tasks.len(), Spot::NEVER);
        self.taken.resize_with(model.capacity.len(), Vec::new);
        self.taken.iter_mut().for_each(Vec::clear);
        for (unit, from, to, count) in &model.taken {
            if let Some(levels) = self.taken.get_mut(*unit) {
                add(levels, *from, *to, *count);
            }
        }
    }

    fn best(&self, model: &Model, task: &Task, ready: i64, work: i64) -> Spot {
        let mut best = Spot::NEVER;
        for (at, way) in task.ways.iter().enumerate() {
            if let Some((start, end)) = self.first_fit(model, task, way, ready, work)
                && end < best.end
            {
                best = Spot { start, end, way: at };
            }
        }
        best
    }

    fn first_fit(&self, model: &Model, task: &Task, way: &Way, ready: i64, work: i64) -> Option<(i64, i64)> {
        let calendar = model.calendars.get(way.calendar)?;
        let work = if task.one_go { work.min(calendar.longest().0) } else { work };
        if work <= 0 {
            return Some((ready, ready));
        }
        if task.gives_way && !task.one_go {
            return self.first_around(model, task, way, ready, work);
        }
        let mut from = ready;
        let mut place = calendar.next(from);
        loop {
            let (opens, closes) = calendar.window(place)?;
            let start = from.max(opens);
            if start >= closes {
                place = place.saturating_add(1);
                continue;
            }
            if task.one_go && closes.saturating_sub(start) < work {
                from = closes;
                place = place.saturating_add(1);
                continue;
            }
            let end = calendar.end(place, start, work)?;
            let Some(free) = self.blocked_until(model, task, way, start, end) else {
                return Some((start, end));
            };
            from = free;
            if from >= closes {
                place = place.saturating_add(calendar.skip(place, from));
            }
        }
    }

    /// The same for what gives way: its people's free time is used up piece by piece.
    fn first_around(
        &self,
        model: &Model,
        task: &Task,
        way: &Way,
        ready: i64,
        work: i64,
    ) -> Option<(i64, i64)> {
        let mut from = ready;
        loop {
            let (mut start, mut end, mut left) = (FAR, from, work);
            self.free_of(model, way, from, &mut |opens, closes| {
                start = start.min(opens);
                end = opens.saturating_add(left.min(closes.saturating_sub(opens)));
                left = left.saturating_sub(end.saturating_sub(opens));
                left > 0
            });
            if left > 0 {
                return None;
            }
            match self.things_blocked_until(model, task, start, end) {
                Some(free) => from = free,
                None => return Some((start, end)),
            }
        }
    }

    /// The pieces of time in which all people of a way are free and at nothing else, until `visit` has enough.
    fn free_of(&self, model: &Model, way: &Way, from: i64, visit: &mut dyn FnMut(i64, i64) -> bool) {
        let Some(calendar) = model.calendars.get(way.calendar) else { return };
        let mut place = calendar.next(from);
        while let Some((opens, closes)) = calendar.window(place) {
            let mut at = from.max(opens);
            while at < closes {
                let (mut busy, mut until) = (None, closes);
                for unit in &way.people {
                    let Some(levels) = self.taken.get(*unit) else { return };
                    let most = free(model, *unit, 1);
                    busy = busy.max(last_clash(levels, most, at, at.saturating_add(1)));
                    until = until.min(first_clash(levels, most, at));
                }
                match busy {
                    Some(over) => at = over,
                    None if !visit(at, until) => return,
                    None => at = until,
                }
            }
            place = place.saturating_add(1);
        }
    }

    /// Something that it takes is not free right through: the first instant at which starting may be tried again.
    fn blocked_until(&self, model: &Model, task: &Task, way: &Way, start: i64, end: i64) -> Option<i64> {
        let mut until = self.things_blocked_until(model, task, start, end);
        for unit in &way.people {
            let levels = self.taken.get(*unit)?;
            until = until.max(last_clash(levels, free(model, *unit, 1), start, end));
        }
        until
    }

    fn things_blocked_until(&self, model: &Model, task: &Task, start: i64, end: i64) -> Option<i64> {
        let mut until = None;
        for it in &task.takes {
            let levels = self.taken.get(it.unit)?;
            let (from, to) = (start.saturating_sub(it.before), end.saturating_add(it.after));
            let clash = last_clash(levels, free(model, it.unit, it.count), from, to);
            until = until.max(clash.map(|clash| clash.saturating_add(it.before)));
        }
        until
    }

    /// The work on a task, where it lies around other steps; none: it lies in every window from its start to its end.
    pub fn around(&self, at: usize) -> impl Iterator<Item = (i64, i64)> + '_ {
        self.around.iter().filter(move |it| it.0 == at).map(|it| (it.1, it.2))
    }

    fn take(&mut self, model: &Model, at: usize, spot: Spot) {
        if let Some(place) = self.spots.get_mut(at) {
            *place = spot;
        }
        let Some(task) = model.tasks.get(at).filter(|_| !spot.never() && spot.start < spot.end) else {
            return;
        };
        if let Some(way) = task.ways.get(spot.way) {
            self.take_people(model, way, at, (spot, task.gives_way && !task.one_go));
        }
        for it in &task.takes {
            if let Some(levels) = self.taken.get_mut(it.unit) {
                let (from, to) = (spot.start.saturating_sub(it.before), spot.end.saturating_add(it.after));
                add(levels, from, to, it.count);
            }
        }
    }

    fn take_people(&mut self, model: &Model, way: &Way, at: usize, (spot, around): (Spot, bool)) {
        let first = self.around.len();
        let mut pieces = std::mem::take(&mut self.around);
        if around {
            self.free_of(model, way, spot.start, &mut |from, to| {
                pieces.push((at, from, to.min(spot.end)));
                to < spot.end
            });
        }
        let whole = [(at, spot.start, spot.end)];
        let taken = if around { pieces.get(first..).unwrap_or_default() } else { whole.as_slice() };
        for unit in &way.people {
            let Some(levels) = self.taken.get_mut(*unit) else { continue };
            taken.iter().for_each(|(_, from, to)| add(levels, *from, *to, 1));
        }
        self.around = pieces;
    }
}

/// The most of a unit that may be taken already where so many of it are wanted.
fn free(model: &Model, unit: usize, count: u32) -> u32 {
    model.capacity.get(unit).copied().unwrap_or(0).saturating_sub(count)
}

/// The first instant after another from which on more is taken than may be.
fn first_clash(levels: &[Level], most: u32, after: i64) -> i64 {
    let later = levels.get(levels.partition_point(|(begins, _)| *begins <= after)..).unwrap_or_default();
    later.iter().find(|(_, taken)| *taken > most).map_or(FAR, |(begins, _)| *begins)
}

/// The end of the last stretch between two instants in which more is taken than may be.
fn last_clash(levels: &[Level], most: u32, from: i64, to: i64) -> Option<i64> {
    let mut at = levels.partition_point(|(begins, _)| *begins < to);
    let mut ends = levels.get(at).map_or(FAR, |(begins, _)| *begins);
    while at > 0 && ends > from {
        at = at.saturating_sub(1);
        let (begins, taken) = levels.get(at).copied()?;
        if taken > most {
            return Some(ends);
        }
        ends = begins;
    }
    None
}

fn add(levels: &mut Vec<Level>, from: i64, to: i64, count: u32) {
    if from >= to {
        return;
    }
    let first = level_at(levels, from);
    let last = level_at(levels, to);
    if let Some(between) = levels.get_mut(first..last) {
        for (_, taken) in between {
            *taken = taken.saturating_add(count);
        }
    }
}

/// The place of the level that begins at an instant, made where there is none.
fn level_at(levels: &mut Vec<Level>, at: i64) -> usize {
    let place = levels.partition_point(|(begins, _)| *begins < at);
    if levels.get(place).is_none_or(|(begins, _)| *begins != at) {
        let before = place.checked_sub(1).and_then(|it| levels.get(it)).map_or(0, |(_, taken)| *taken);
        levels.insert(place, (at, before));
    }
    place
}
