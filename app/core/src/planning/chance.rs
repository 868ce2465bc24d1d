//! The chance of a date: the plan run through thousands of times with drawn hours.
//!
//! Each simulated finish draws one factor that all steps share and a value for each step (split log-normal through quick,
//! usual, slow), takes off what is logged, leaves a twentieth at least, and places the steps in the order of the plan. A
//! draw of a step in one go that no window holds is taken as the longest window, and counted. The draws of a step hang on
//! the seed, the number of the finish and the step alone: however the runs are sliced, and whatever else is tried out, the
//! same draws come.
//! Worked example: 4, 6, 9 h: one draw in ten below 4 h and one above 9 h, of a step by itself.
//! Source: our own rule, DEVELOPERS.md § House; `tests/reference/plan_chance.rs`. Not here: what would help (`surer`).
#![allow(clippy::float_arithmetic, reason = "probabilities; a drawn time is rounded to whole seconds")]

use super::{
    calendar::{Calendar, FAR},
    draws::Draws,
    hours::Hours,
    network::Network,
    place::Board,
    schedule::Plan,
    spread::{self, Spread},
    two_dates,
};
use crate::{
    journal::Id,
    measure::{InOrder, Instant},
};

/// So many finishes are enough for a chance to two hundredths.
pub const RUNS: u32 = 2_000;

/// In time, of so many.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Odds {
    /// Finishes in time.
    pub in_time: u32,
    /// All of them.
    pub of: u32,
}

impl Odds {
    /// In hundredths, as it is shown; never 0 or 100 where both have happened.
    pub fn hundredths(self) -> u32 {
        let half = self.of / 2;
        let whole = self.in_time.saturating_mul(100).saturating_add(half).checked_div(self.of).unwrap_or(0);
        if self.in_time == 0 || self.in_time == self.of { whole } else { whole.clamp(1, 99) }
    }
}

/// Simulated finishes of a plan. It holds all that it needs; dropping it stops it.
#[derive(Clone, Debug)]
pub struct Chance {
    network: Network,
    order: Vec<usize>,
    builds: Vec<Id>,
    spread: Spread,
    draws: Draws,
    /// A number for each task, by its step.
    numbers: Vec<u64>,
    board: Board,
    work: Vec<i64>,
    ends: Vec<i64>,
    /// By build.
    finishes: Vec<Vec<i64>>,
    /// The same of the piece and of the film, of builds of which each has its date.
    apart: Vec<Vec<[i64; 2]>>,
    done: u32,
    wanted: u32,
    cut: u32,
}

impl Plan {
    /// `wanted` finishes to be simulated, none of them yet. Same seed, same answer.
    pub fn chance(&self, spread: Spread, seed: u64, wanted: u32) -> Chance {
        let network = self.network.clone();
        Chance {
            numbers: network.steps.iter().map(|step| spread::number(*step)).collect(),
            finishes: vec![Vec::new(); self.builds.len()],
            apart: vec![Vec::new(); self.builds.len()],
            builds: self.builds.iter().map(|it| it.build).collect(),
            order: self.order.clone(),
            draws: Draws::of(seed),
            board: Board::default(),
            work: Vec::new(),
            ends: Vec::new(),
            network,
            spread,
            done: 0,
            wanted,
            cut: 0,
        }
    }
}

impl Chance {
    /// Simulates so many more, at most up to those wanted.
    pub fn run(&mut self, more: u32) {
        for _ in 0..more.min(self.wanted.saturating_sub(self.done)) {
            self.once();
            self.done = self.done.saturating_add(1);
        }
    }

    /// How many of how many are done.
    pub fn progress(&self) -> (u32, u32) {
        (self.done, self.wanted)
    }

    /// All that were wanted are done.
    pub fn is_done(&self) -> bool {
        self.done >= self.wanted
    }

    /// How often a build was over by then; where its piece has a day of its own, how often that was over by that day, and
    /// its film by then.
    pub fn odds(&self, build: Id, until: Instant) -> Odds {
        self.odds_of(build, until, self.done)
    }

    /// The same of the first so many finishes.
    pub(crate) fn odds_of(&self, build: Id, until: Instant, first: u32) -> Odds {
        let of = first.min(self.done);
        let looked_at = usize::try_from(of).unwrap_or(usize::MAX);
        let place = self.builds.iter().position(|it| *it == build).unwrap_or(usize::MAX);
        let in_time = match (self.network.model.piece_due.get(place), self.apart.get(place)) {
            (Some(Some(due)), Some(all)) => {
                let both = |[piece, film]: &&[i64; 2]| *piece <= *due && *film <= until.0;
                all.iter().take(looked_at).filter(both).count()
            }
            _ => self.of(build).iter().take(looked_at).filter(|end| **end <= until.0).count(),
        };
        Odds { in_time: u32::try_from(in_time).unwrap_or(u32::MAX), of }
    }

    /// When so many in a hundred finishes of a build were over. None: nothing was simulated yet, no step is planned, or
    /// it was beyond the windows that are laid out.
    pub fn over_by(&self, build: Id, in_hundred: u32) -> Option<Instant> {
        let mut ends = self.of(build).to_vec();
        ends.order();
        let place = u64::from(self.done).saturating_mul(u64::from(in_hundred)).div_ceil(100).max(1);
        let end = ends.get(usize::try_from(place.saturating_sub(1)).ok()?)?;
        (*end > FAR.saturating_neg() && *end < FAR).then_some(Instant(*end))
    }

    /// The end of a build in every finish that was simulated, in the order in which they were.
    pub fn ends(&self, build: Id) -> impl Iterator<Item = Instant> + '_ {
        self.of(build).iter().map(|end| Instant(*end))
    }

    /// How often a draw of a step in one go was cut to the longest window.
    pub fn cut(&self) -> u32 {
        self.cut
    }

    /// What the factor is drawn with.
    pub fn spread(&self) -> Spread {
        self.spread
    }

    pub(crate) fn of(&self, build: Id) -> &[i64] {
        let place = self.builds.iter().position(|it| *it == build);
        place.and_then(|at| self.finishes.get(at)).map(Vec::as_slice).unwrap_or_default()
    }

    fn once(&mut self) {
        let stream = self.draws.beside(u64::from(self.done));
        let mut shared = stream;
        let factor = self.spread.sigma * shared.normal();
        self.work.clear();
        for (hours, number) in self.network.hours.iter().zip(&self.numbers) {
            self.work.push(drawn(hours, factor, stream.beside(*number).normal()));
        }
        self.cut = self.cut.saturating_add(self.too_long());
        self.board.place(&self.network.model, &self.order, &self.work);
        self.board.finishes(&self.network.model, &mut self.ends);
        for (all, end) in self.finishes.iter_mut().zip(&self.ends) {
            all.push((*end).min(FAR));
        }
        let model = &self.network.model;
        for (build, all) in self.apart.iter_mut().enumerate() {
            if model.piece_due.get(build).is_some_and(Option::is_some) {
                let ends = two_dates::ends(model, &self.board.spots, build);
                all.push(ends.map(|it| it.map_or(FAR.saturating_neg(), |(end, _)| end.min(FAR))));
            }
        }
    }

    fn too_long(&self) -> u32 {
        let Network { model, .. } = &self.network;
        let longer = model.tasks.iter().zip(&self.work).filter(|(task, work)| {
            let windows = task.ways.iter().filter_map(|way| model.calendars.get(way.calendar));
            task.one_go && windows.map(Calendar::longest).max().is_some_and(|longest| **work > longest.0)
        });
        u32::try_from(longer.count()).unwrap_or(u32::MAX)
    }
}

/// What a step takes in one simulated finish: `factor` is the logarithm of what all share, `normal` the step's own draw.
fn drawn(hours: &Hours, factor: f64, normal: f64) -> i64 {
    let deviation = if normal < 0.0 { hours.below } else { hours.above };
    let drawn = libm::exp(hours.log_usual + deviation * normal + factor);
    let left = seconds(drawn).saturating_sub(hours.logged).max(hours.least);
    let scaled = left.saturating_mul(hours.scale).checked_div(1000).unwrap_or(left);
    scaled.saturating_add(hours.adds)
}

/// Whole seconds; a hundred years at most.
fn seconds(drawn: f64) -> i64 {
    let rounded = libm::round(drawn);
    if !(0.0..=3.2e9).contains(&rounded) {
        return 3_200_000_000;
    }
    #[allow(clippy::as_conversions, reason = "it was looked at: it fits")]
    let whole = rounded as i64;
    whole
}
