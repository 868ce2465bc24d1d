//! To make it surer: each thing that would help, simulated with the same draws as the plan as it stands.
//!
//! Steps that may be dropped, somebody else for a step, shots that are only nice to have, a shorter film, one more window,
//! a later date. Ranked by the chance that they gain, then by the hours that they free. A later date counts the same
//! finishes against it, so it is never worse. The order of the steps stays: what more freedom comes to in it is what is
//! shown, also where that is less.
//! Source: our own rule, DEVELOPERS.md § House; `tests/reference/plan_example.rs`. Not here: the draws (`chance`), and
//! what might help at all (`candidates`).

use super::{
    asking::{Asking, Trial},
    chance::{Chance, Odds},
    schedule::Plan,
    spread::Spread,
};
use crate::{
    journal::Id,
    measure::{InOrder, Instant, Seconds},
};
use std::cmp::Reverse;

/// Finishes of one candidate that are simulated before the next has its turn.
const TURN: u32 = 20;

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
        let mut surer = self.surer_without(question);
        trials.iter().for_each(|trial| surer.add(self, asking, question, *trial));
        surer
    }

    /// The same before anything is tried: see [`Surer::add`].
    pub fn surer_without(&self, question: &Question) -> Surer {
        let Question { build, until, spread, seed, wanted } = *question;
        Surer { build, until, base: self.chance(spread, seed, wanted), all: Vec::new() }
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

impl Surer {
    /// One more thing to try, against the plan that this one was made of.
    pub fn add(&mut self, plan: &Plan, asking: &Asking, question: &Question, trial: Trial) {
        let Question { build, until, spread, seed, wanted } = *question;
        if let Trial::Later { until, .. } = trial {
            let finish = plan.build(build).and_then(|it| it.finish);
            self.all.push(Candidate { trial, freed: Seconds::ZERO, finish, chance: None, until });
            return;
        }
        let then = plan.with(asking, &[trial]);
        let freed = Seconds(plan.work_left().saturating_sub(then.work_left()).max(0));
        let finish = then.build(build).and_then(|it| it.finish);
        let chance = Some(then.chance(spread, seed, wanted));
        self.all.push(Candidate { trial, freed, finish, chance, until });
    }

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
