//! To make it surer: each thing that would help, simulated with the same draws as the plan as it stands.
//!
//! Steps that may be dropped, somebody else for a step, shots that are only nice to have, a shorter film, one more window,
//! a later date. Ranked by the chance that they gain, then by the hours that they free. A later date counts the same
//! finishes against it, so it is never worse. The order of the steps stays: what more freedom comes to in it is what is
//! shown, also where that is less.
//! Source: our own rule, DEVELOPERS.md § House; `tests/reference/plan_example.rs`. Not here: the draws (`chance`).

use super::{
    asking::{Asking, Trial},
    chance::{Chance, Odds},
    schedule::Plan,
    spread::Spread,
};
use crate::{
    journal::{
        Id,
        kinds::{Role, Window},
    },
    measure::{Day, InOrder, Instant, Seconds, Weekday},
};
use std::cmp::Reverse;

/// Finishes of one candidate that are simulated before the next has its turn.
const TURN: u32 = 20;
/// So many that say who else could do a step, at most.
const OTHERS: usize = 4;

/// What one thing would come to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Helped {
    /// Which.
    pub trial: Trial,
    /// The chance with it.
    pub odds: Odds,
    /// Finishes in time more than without; below zero: fewer.
    pub gained: i64,
    /// Hours of planned work that fall away, of everybody.
    pub freed: Seconds,
    /// When the build is over by the means.
    pub finish: Option<Instant>,
}

#[derive(Clone, Debug)]
struct Candidate {
    trial: Trial,
    freed: Seconds,
    finish: Option<Instant>,
    /// None: the finishes of the plan as it stands count.
    chance: Option<Chance>,
    until: Instant,
}

/// All candidates under way. It holds all that it needs; dropping it stops it.
#[derive(Clone, Debug)]
pub struct Surer {
    build: Id,
    until: Instant,
    base: Chance,
    all: Vec<Candidate>,
}

/// What is asked about a build that should be over by then.
#[derive(Clone, Copy, Debug)]
pub struct Question {
    /// Which build.
    pub build: Id,
    /// By when it should be over.
    pub until: Instant,
    /// What the factor is drawn with.
    pub spread: Spread,
    /// The same as of the plan's chance, for the same draws.
    pub seed: u64,
    /// So many finishes each.
    pub wanted: u32,
}

impl Plan {
    /// Candidates to be simulated, nothing of it done yet.
    pub fn surer(&self, asking: &Asking, question: &Question, trials: &[Trial]) -> Surer {
        let Question { build, until, spread, seed, wanted } = *question;
        let work = self.work_left();
        let candidate = |trial: &Trial| {
            if let Trial::Later { until, .. } = trial {
                let finish = self.build(build).and_then(|it| it.finish);
                return Candidate {
                    trial: *trial,
                    freed: Seconds::ZERO,
                    finish,
                    chance: None,
                    until: *until,
                };
            }
            let plan = self.with(asking, std::slice::from_ref(trial));
            let freed = Seconds(work.saturating_sub(plan.work_left()).max(0));
            let finish = plan.build(build).and_then(|it| it.finish);
            let chance = Some(plan.chance(spread, seed, wanted));
            Candidate { trial: *trial, freed, finish, chance, until }
        };
        let all = trials.iter().map(candidate).collect();
        Surer { build, until, base: self.chance(spread, seed, wanted), all }
    }

    /// What might help a build, as far as the plan itself shows it: pass it to [`Plan::surer`].
    ///
    /// `shorter`: so many thousandths of the planned film would do. `later`: another date to compare.
    pub fn candidates(
        &self,
        asking: &Asking,
        build: Id,
        shorter: Option<u32>,
        later: Option<Instant>,
    ) -> Vec<Trial> {
        let mut all: Vec<Trial> = Vec::new();
        let own = || self.steps.iter().filter(|it| it.build == build);
        let step = |id: Id| asking.shop.steps.get(&id);
        let may_go = own().filter(|it| step(it.step).is_some_and(|it| it.body.drops.is_some()));
        all.extend(may_go.map(|it| Trial::Drop { step: it.step }));
        all.extend(self.others(asking, build));
        if asking.filming.iter().any(|it| !it.nice.is_zero() && own().any(|own| own.step == it.step)) {
            all.push(Trial::LeaveShots { build });
        }
        let edits = own()
            .filter_map(|it| step(it.step))
            .any(|it| asking.shop.stages.get(&it.body.stage).is_some_and(|it| it.role == Some(Role::Edit)));
        all.extend(shorter.filter(|_| edits).map(|thousandths| Trial::Shorter { build, thousandths }));
        all.extend(self.windows(asking, build));
        all.extend(later.map(|until| Trial::Later { build, until }));
        all
    }

    /// By the means it would be over sooner with somebody else at a step; those that gain most.
    fn others(&self, asking: &Asking, build: Id) -> Vec<Trial> {
        let Some(finish) = self.build(build).and_then(|it| it.finish) else { return Vec::new() };
        let mut all: Vec<(Instant, Id, Id)> = Vec::new();
        for placed in self.steps.iter().filter(|it| it.build == build && it.people.len() == 1) {
            let any = asking.shop.steps.get(&placed.step).is_some_and(|it| it.body.any);
            let people = asking.shop.people.keys().filter(|id| asking.shop.offers(**id));
            let free = people.filter(|id| self.free(**id).is_some_and(|it| !it.is_empty()));
            for person in free.filter(|id| !any && !placed.people.contains(id)) {
                let trial = Trial::Other { step: placed.step, person: *person };
                let then = self.with(asking, &[trial]).build(build).and_then(|it| it.finish);
                all.extend(then.filter(|then| *then < finish).map(|then| (then, placed.step, *person)));
            }
        }
        all.order();
        all.into_iter().take(OTHERS).map(|(_, step, person)| Trial::Other { step, person }).collect()
    }

    /// One more window for each person at the build: as they usually give on such a day, when it helps most.
    fn windows(&self, asking: &Asking, build: Id) -> Vec<Trial> {
        let Some(row) = self.build(build) else { return Vec::new() };
        let Some(until) = row.finish.into_iter().chain(row.due).min() else { return Vec::new() };
        let mut people: Vec<Id> =
            self.steps.iter().filter(|it| it.build == build).flat_map(|it| it.people.clone()).collect();
        people.order();
        people.dedup();
        let zone = &asking.shop.zone;
        let best = |person: &Id| {
            let tried = self.days_without(asking, *person, until).into_iter().filter_map(|day| {
                let usual = usual_window(asking, *person, weekend(day.weekday()))?;
                let ends = if usual.to > usual.from { day } else { day.succ() };
                let (from, to) = (zone.at(day, usual.from), zone.at(ends, usual.to));
                let trial = Trial::Window { person: *person, from, to };
                let then = self.with(asking, &[trial]).build(build)?.finish?;
                Some(((then, from), trial))
            });
            tried.min_by_key(|(key, _)| *key).map(|(_, trial)| trial)
        };
        people.iter().filter_map(best).collect()
    }

    /// Days from now to an instant, a month at most, on which a person has no window and is not off.
    fn days_without(&self, asking: &Asking, person: Id, until: Instant) -> Vec<Day> {
        let zone = &asking.shop.zone;
        let first = zone.day(asking.now).succ();
        let many = zone.day(until).days_since(first).clamp(0, 31);
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

    /// Planned work of everybody.
    fn work_left(&self) -> i64 {
        let of_all = |it: &super::Placed| {
            let people = i64::try_from(it.people.len()).unwrap_or(1);
            it.left.0.saturating_mul(people)
        };
        self.steps.iter().map(of_all).fold(0, i64::saturating_add)
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

impl Surer {
    /// Simulates so many finishes more, by turns.
    pub fn run(&mut self, more: u32) {
        let mut left = more;
        while left > 0 && !self.is_done() {
            let turn = left.min(TURN);
            let behind = self.chances().min_by_key(|it| it.progress().0);
            let Some(chance) = behind else { return };
            chance.run(turn);
            left = left.saturating_sub(turn);
        }
    }

    fn chances(&mut self) -> impl Iterator<Item = &mut Chance> {
        let rest = self.all.iter_mut().filter_map(|it| it.chance.as_mut());
        std::iter::once(&mut self.base).chain(rest)
    }

    /// How many finishes of how many are done, of all candidates.
    pub fn progress(&self) -> (u32, u32) {
        let all = self.all.iter().filter_map(|it| it.chance.as_ref()).chain([&self.base]);
        all.fold((0, 0), |sum, it| {
            let (done, wanted) = it.progress();
            (sum.0.saturating_add(done), sum.1.saturating_add(wanted))
        })
    }

    /// Everything that was wanted is done.
    pub fn is_done(&self) -> bool {
        let (done, wanted) = self.progress();
        done >= wanted
    }

    /// The plan as it stands.
    pub fn odds(&self) -> Odds {
        self.base.odds(self.build, self.until)
    }

    /// Every candidate by what it gains, then by what it frees. Finishes that are done in all of them are compared.
    pub fn ranked(&self) -> Vec<Helped> {
        let chances = self.all.iter().filter_map(|it| it.chance.as_ref()).chain([&self.base]);
        let done = chances.map(|it| it.progress().0).min().unwrap_or(0);
        let before = self.base.odds_of(self.build, self.until, done);
        let helped = |it: &Candidate| {
            let chance = it.chance.as_ref().unwrap_or(&self.base);
            let odds = chance.odds_of(self.build, it.until, done);
            let gained = i64::from(odds.in_time).saturating_sub(i64::from(before.in_time));
            Helped { trial: it.trial, odds, gained, freed: it.freed, finish: it.finish }
        };
        let mut all: Vec<Helped> = self.all.iter().map(helped).collect();
        all.order_by_key(|it| Reverse((it.gained, it.freed)));
        all
    }
}

/// A film that is shorter: so many thousandths of what was planned.
pub fn shorter(planned: Seconds, less: Seconds) -> Option<u32> {
    let stays = planned.0.saturating_sub(less.0).max(0).saturating_mul(1000).checked_div(planned.0)?;
    u32::try_from(stays).ok().filter(|it| *it < 1000)
}
