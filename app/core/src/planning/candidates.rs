//! What might make a plan surer, as far as the plan itself shows it: what may be dropped, who else could do a step, one
//! more window, less film, a later date.
//!
//! Of people and windows there are many, and only by placing the plan with each is it known which are worth simulating:
//! those by which the build is over soonest by the means. That is done so many at a call, beside a screen that is alive.
//! Source: our own rule, DEVELOPERS.md § House. Not here: what each is worth (`surer`).

use super::{
    asking::{Asking, Trial},
    schedule::Plan,
};
use crate::{
    journal::{
        Id,
        kinds::{Role, Window},
    },
    measure::{Day, InOrder, Instant, Map, Seconds, Weekday},
};
use std::cmp::Reverse;

/// So many that say who else could do a step, at most.
const OTHERS: usize = 4;
/// Windows are looked for over so many days.
const DAYS: i64 = 31;

/// All that might help, most of it still to be weighed.
#[derive(Clone, Debug)]
pub struct Candidates {
    build: Id,
    finish: Option<Instant>,
    trials: Vec<Trial>,
    /// By when the build would be over with each of the first of them.
    weighed: Vec<Option<Instant>>,
}

impl Plan {
    /// What might help a build: pass it to [`Plan::surer`].
    ///
    /// `shorter`: so many thousandths of the planned film would do. `later`: another date to compare.
    pub fn candidates(
        &self,
        asking: &Asking,
        build: Id,
        shorter: Option<u32>,
        later: Option<Instant>,
    ) -> Vec<Trial> {
        let mut all = self.candidates_of(asking, build, shorter, later);
        while !all.is_weighed() {
            all.weigh(self, asking);
        }
        all.chosen()
    }

    /// The same, nothing of it weighed yet.
    pub fn candidates_of(
        &self,
        asking: &Asking,
        build: Id,
        shorter: Option<u32>,
        later: Option<Instant>,
    ) -> Candidates {
        let own = || self.steps.iter().filter(|it| it.build == build);
        let step = |id: Id| asking.shop.steps.get(&id);
        let may_go = own().filter(|it| step(it.step).is_some_and(|it| it.body.drops.is_some()));
        let mut trials: Vec<Trial> = may_go.map(|it| Trial::Drop { step: it.step }).collect();
        self.others(asking, build, &mut trials);
        if asking.filming.iter().any(|it| !it.nice.is_zero() && own().any(|own| own.step == it.step)) {
            trials.push(Trial::LeaveShots { build });
        }
        let edits = own()
            .filter_map(|it| step(it.step))
            .any(|it| asking.shop.stages.get(&it.body.stage).is_some_and(|it| it.role == Some(Role::Edit)));
        trials.extend(shorter.filter(|_| edits).map(|thousandths| Trial::Shorter { build, thousandths }));
        self.windows(asking, build, &mut trials);
        trials.extend(later.map(|until| Trial::Later { build, until }));
        let finish = self.over(build);
        Candidates { build, finish, trials, weighed: Vec::new() }
    }

    /// Somebody else for a step that one person does.
    fn others(&self, asking: &Asking, build: Id, all: &mut Vec<Trial>) {
        for placed in self.steps.iter().filter(|it| it.build == build && it.people.len() == 1) {
            let any = asking.shop.steps.get(&placed.step).is_some_and(|it| it.body.any);
            let people = asking.shop.people.keys().filter(|id| asking.shop.offers(**id));
            let free = people.filter(|id| self.free(**id).is_some_and(|it| !it.is_empty()));
            let others = free.filter(|id| !any && !placed.people.contains(id));
            all.extend(others.map(|person| Trial::Other { step: placed.step, person: *person }));
        }
    }

    /// One more window for each person at the build: as they usually give on such a day.
    fn windows(&self, asking: &Asking, build: Id, all: &mut Vec<Trial>) {
        let Some(row) = self.build(build) else { return };
        let Some(until) = row.finish.into_iter().chain(row.due).min() else { return };
        let mut people: Vec<Id> =
            self.steps.iter().filter(|it| it.build == build).flat_map(|it| it.people.clone()).collect();
        people.order();
        people.dedup();
        let zone = &asking.shop.zone;
        for person in people {
            all.extend(self.days_without(asking, person, until).into_iter().filter_map(|day| {
                let usual = usual_window(asking, person, weekend(day.weekday()))?;
                let ends = if usual.to > usual.from { day } else { day.succ() };
                let (from, to) = (zone.at(day, usual.from), zone.at(ends, usual.to));
                Some(Trial::Window { person, from, to })
            }));
        }
    }

    /// Days from now to an instant, a month at most, on which a person has no window and is not off.
    fn days_without(&self, asking: &Asking, person: Id, until: Instant) -> Vec<Day> {
        let zone = &asking.shop.zone;
        let first = zone.day(asking.now).succ();
        let many = zone.day(until).days_since(first).clamp(0, DAYS);
        let off = |day| {
            asking
                .shop
                .free_days
                .iter()
                .any(|it| it.person == person && it.is_off() && it.first <= day && day <= it.last)
        };
        let busy = |day| {
            let free = self
                .free(person)
                .map_or(Seconds::ZERO, |it| it.between(zone.start_of(day), zone.end_of(day)));
            !free.is_zero()
        };
        (0..=many).map(|ahead| first.plus_days(ahead)).filter(|day| !off(*day) && !busy(*day)).collect()
    }
}

impl Candidates {
    /// Weighs the next one: places the plan with it, where that says which of its kind are worth simulating.
    pub fn weigh(&mut self, plan: &Plan, asking: &Asking) {
        let Some(trial) = self.trials.get(self.weighed.len()).copied() else { return };
        let compared = matches!(trial, Trial::Other { .. } | Trial::Window { .. });
        let then = || plan.with(asking, &[trial]).over(self.build);
        let then = compared.then(then).flatten();
        self.weighed.push(then);
    }

    /// Nothing is left to be weighed.
    pub fn is_weighed(&self) -> bool {
        self.weighed.len() >= self.trials.len()
    }

    /// What is worth simulating: of people those few with whom the build is over sooner, of windows the best of each
    /// person, of the rest all.
    pub fn chosen(&self) -> Vec<Trial> {
        let mut others: Vec<(Instant, Id, Id)> = Vec::new();
        let mut windows: Map<Id, (Instant, Instant)> = Map::new();
        for (trial, then) in self.trials.iter().zip(&self.weighed) {
            let Some(then) = *then else { continue };
            if let Trial::Other { step, person } = *trial
                && self.finish.is_some_and(|finish| then < finish)
            {
                others.push((then, step, person));
            }
            if let Trial::Window { person, from, .. } = *trial {
                let best = windows.entry(person).or_insert((then, from));
                *best = (*best).min((then, from));
            }
        }
        others.order();
        others.truncate(OTHERS);
        let is_best = |person: Id, from: Instant| windows.get(&person).is_some_and(|best| best.1 == from);
        // Those few stand where the first of them stood.
        let mut few = Some(others.into_iter().map(|(_, step, person)| Trial::Other { step, person }));
        let mut chosen = Vec::new();
        for trial in &self.trials {
            match *trial {
                Trial::Other { .. } => chosen.extend(few.take().into_iter().flatten()),
                Trial::Window { person, from, .. } if !is_best(person, from) => {}
                Trial::Drop { .. }
                | Trial::LeaveShots { .. }
                | Trial::Shorter { .. }
                | Trial::Window { .. }
                | Trial::Later { .. } => chosen.push(*trial),
            }
        }
        chosen
    }
}

/// The window that a person has most often on working days, or on weekends; of two the shorter, then the later.
fn usual_window(asking: &Asking, person: Id, on_weekends: bool) -> Option<Window> {
    let free = asking.shop.people.get(&person)?.free.iter().filter(|it| weekend(it.weekday) == on_weekends);
    let length = |it: &Window| it.to.seconds().saturating_sub(it.from.seconds()).rem_euclid(86_400);
    let all: Vec<Window> = free.map(|it| Window { from: it.from, to: it.to }).collect();
    let often = |it: &Window| all.iter().filter(|other| *other == it).count();
    all.iter().min_by_key(|it| (Reverse(often(it)), length(it), Reverse(it.from))).copied()
}

fn weekend(day: Weekday) -> bool {
    matches!(day, Weekday::Saturday | Weekday::Sunday)
}
