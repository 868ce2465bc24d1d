//! Finishes are drawn in slices, so that the sheet stays alive: first the chance, then each way that would help.

use super::ask::{Made, SEED};
use crate::dom::prelude::*;
use crate::{
    platform::{clock, idle},
    shell::Desk,
};
use benchslate_core::{
    measure::Instant,
    planning::{Chance, Helped, Odds, Plan, Question, chance::RUNS, shorter_film, taking::a_week_later},
};
use leptos::task::spawn_local;
use std::sync::Arc;

/// A slice ends after so many milliseconds.
const SLICE_MS: i64 = 24;
/// So many finishes between two looks at the clock.
const FEW: u32 = 10;
/// Dates are told for these.
pub const SURE: [u32; 3] = [50, 80, 95];

/// What the runs have come to.
#[derive(Clone, Debug, PartialEq)]
pub struct Told {
    /// In time; none: there is no date.
    pub odds: Option<Odds>,
    /// Half the time, four times in five, nineteen in twenty.
    pub dates: [Option<Instant>; 3],
    /// Draws that no window holds.
    pub cut: u32,
}

/// Where looking for ways stands.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Looking {
    /// Not begun.
    #[default]
    Waits,
    /// So many hundredths.
    Goes(u32),
    /// Stopped by a tap.
    Stopped,
    /// All that was wanted.
    Done,
}

/// What runs, and what it has come to.
#[derive(Clone, Copy)]
pub struct Runs {
    /// The plan as it stands.
    pub told: RwSignal<Option<Told>>,
    /// With what is tried.
    pub tried: RwSignal<Option<Told>>,
    /// Best first.
    pub ways: RwSignal<Vec<Helped>>,
    /// How far that is.
    pub looking: RwSignal<Looking>,
    /// Goes up when what runs is of no use any more.
    turn: RwSignal<u32>,
}

impl Runs {
    /// Nothing runs yet.
    pub fn new() -> Runs {
        Runs {
            told: RwSignal::new(None),
            tried: RwSignal::new(None),
            ways: RwSignal::new(Vec::new()),
            looking: RwSignal::new(Looking::Waits),
            turn: RwSignal::new(0),
        }
    }

    /// Ends what runs; none: the sheet is gone.
    fn next(self) -> u32 {
        let turn = self.turn.get_untracked().wrapping_add(1);
        self.turn.set(turn);
        turn
    }

    fn goes_on(self, turn: u32) -> bool {
        self.turn.try_with_untracked(|it| *it == turn) == Some(true)
    }

    /// A tap on Stop: what is there stays.
    pub fn stop(self) {
        self.next();
        self.looking.set(Looking::Stopped);
    }

    /// Begins anew for a plan.
    pub fn begin(self, desk: Desk, made: Arc<Made>) {
        let turn = self.next();
        self.tried.set(None);
        self.ways.set(Vec::new());
        self.looking.set(Looking::Waits);
        spawn_local(async move {
            let chance = made.plan.chance(made.spread, SEED, RUNS);
            let Some(told) = self.finish(turn, chance, &made, made.due()).await else { return };
            self.told.set(Some(told));
            self.look(desk, turn, &made).await;
        });
    }

    /// The same with something tried out; `plan` holds it.
    pub fn try_out(self, made: Arc<Made>, plan: Plan) {
        let turn = self.turn.get_untracked();
        spawn_local(async move {
            let chance = plan.chance(made.spread, SEED, RUNS);
            // What is tried may be another date.
            let due = plan.build(made.build).and_then(|it| it.due);
            if let Some(told) = self.finish(turn, chance, &made, due).await {
                self.tried.set(Some(told));
            }
        });
    }

    async fn finish(self, turn: u32, mut chance: Chance, made: &Made, due: Option<Instant>) -> Option<Told> {
        let run = || {
            chance.run(FEW);
            !chance.is_done()
        };
        if !self.sliced(turn, run).await {
            return None;
        }
        let odds = due.map(|due| chance.odds(made.build, due));
        Some(Told { odds, dates: SURE.map(|sure| chance.over_by(made.build, sure)), cut: chance.cut() })
    }

    /// Does a piece of work after the other as long as there is one, a turn of the screen between; false: it is of no use
    /// any more.
    async fn sliced(self, turn: u32, mut more: impl FnMut() -> bool) -> bool {
        loop {
            let began = clock::now();
            let mut goes_on = true;
            while goes_on && clock::now() - began < SLICE_MS {
                goes_on = more();
            }
            idle::turn().await;
            if !self.goes_on(turn) {
                return false;
            }
            if !goes_on {
                return true;
            }
        }
    }

    /// What would make it surer, with the same draws.
    async fn look(self, desk: Desk, turn: u32, made: &Made) {
        let Some(due) = made.due() else { return };
        let question =
            Question { build: made.build, until: due, spread: made.spread, seed: SEED, wanted: RUNS };
        let mut all = desk.now_read(|view| {
            let shorter = shorter_film(view.shop, made.build).map(|it| it.thousandths);
            let later = Some(a_week_later(&view.shop.zone, due));
            made.plan.candidates_of(&made.asking(view.shop), made.build, shorter, later)
        });
        let weigh = || {
            if !all.is_weighed() {
                desk.now_read(|view| all.weigh(&made.plan, &made.asking(view.shop)));
            }
            !all.is_weighed()
        };
        if !self.sliced(turn, weigh).await {
            return;
        }
        let mut trials = all.chosen().into_iter();
        let mut surer = made.plan.surer_without(&question);
        let add = || {
            let next = trials.next();
            if let Some(trial) = next {
                desk.now_read(|view| surer.add(&made.plan, &made.asking(view.shop), &question, trial));
            }
            next.is_some()
        };
        if !self.sliced(turn, add).await {
            return;
        }
        let mut shown = 0;
        while !surer.is_done() {
            let began = clock::now();
            while !surer.is_done() && clock::now() - began < SLICE_MS {
                surer.run(FEW);
            }
            idle::turn().await;
            if !self.goes_on(turn) {
                return;
            }
            let (done, wanted) = surer.progress();
            let hundredths = done.saturating_mul(100).checked_div(wanted).unwrap_or(100);
            // Figures that change at every turn can't be read.
            if hundredths >= shown + 20 {
                shown = hundredths;
                self.ways.set(surer.ranked());
            }
            self.looking.set(Looking::Goes(hundredths));
        }
        self.ways.set(surer.ranked());
        self.looking.set(Looking::Done);
    }
}
