//! The plan: every step of every open build, when and by whom, and when each build is over.
//!
//! The steps are placed with their means (`hours`), in one order for all builds, found once (`search`): what can be on
//! time is, the maker's order of builds goes before, and within that each build is over as soon as may be.
//! Worked example: sand, coat, dry 24 h, coat, dry 72 h, handles, shoot: 1.8 h on an evening, and 4.3 h of editing.
//! Source: our own rule, DEVELOPERS.md § House; `tests/reference/plan_example.rs`. Not here: chances (`chance`).

use super::{
    asking::{Asking, Trial},
    calendar::Calendar,
    network::{Network, network},
    place::{Board, Spot},
    search::search,
    trouble::Trouble,
    two_dates,
};
use crate::{
    journal::{Id, Shop},
    measure::{InOrder, Instant, Seconds},
};

/// So many schedules are tried for the order of a plan, at most.
pub const SCHEDULES: u32 = 600;

/// The order is found with this.
const SEED: u64 = 7;

/// Something taken beyond the end of a step.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Held {
    /// What.
    pub resource: Id,
    /// How many.
    pub count: u32,
    /// Until then; the end of the step, where it is not held beyond.
    pub until: Instant,
}

/// Where a step lies.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Placed {
    /// Which.
    pub step: Id,
    /// Of which build.
    pub build: Id,
    /// Who is at it.
    pub people: Vec<Id>,
    /// What each of them still does on it.
    pub left: Seconds,
    /// Its first moment.
    pub start: Instant,
    /// Its last.
    pub end: Instant,
    /// The windows that it takes, in time.
    pub pieces: Vec<(Instant, Instant)>,
    /// What comes after it may begin then at the latest: the end, and the longest wait after it.
    pub next: Instant,
    /// What it takes, and until when.
    pub held: Vec<Held>,
}

/// When a build is over.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Finish {
    /// Which.
    pub build: Id,
    /// The end of its last step by the means. None: no step is planned, or one finds no room.
    pub finish: Option<Instant>,
    /// The step that ends last.
    pub last: Option<Id>,
    /// By when it should be.
    pub due: Option<Instant>,
}

/// All open builds, planned together.
#[derive(Clone, Debug)]
pub struct Plan {
    /// Every step that is planned, by its start.
    pub steps: Vec<Placed>,
    /// A row each, in the maker's order.
    pub builds: Vec<Finish>,
    /// What is wrong.
    pub troubles: Vec<Trouble>,
    /// How many schedules were tried for the order.
    pub tried: u32,
    /// Nothing could end sooner: the links, waits and free windows alone come to this.
    pub proven: bool,
    pub(crate) now: Instant,
    pub(crate) network: Network,
    pub(crate) order: Vec<usize>,
    pub(crate) spots: Vec<Spot>,
}

impl Plan {
    /// Plans; a few milliseconds for sixty steps.
    pub fn of(asking: &Asking) -> Plan {
        let network = two_dates::written(asking, network(asking, &[], None));
        let work = work(&network);
        let found = search(&network.model, &work, SCHEDULES, SEED, None);
        Plan::placed(asking, network, found.order, (found.tried, found.proven))
    }

    /// The plan with something else tried out, its steps in the order of this one.
    pub fn with(&self, asking: &Asking, trials: &[Trial]) -> Plan {
        let network = two_dates::written(asking, network(asking, trials, Some(&self.network)));
        let order = kept(&self.network, &self.order, &network);
        Plan::placed(asking, network, order, (1, false))
    }

    fn placed(
        asking: &Asking,
        mut network: Network,
        order: Vec<usize>,
        (tried, proven): (u32, bool),
    ) -> Plan {
        let mut board = Board::default();
        board.place(&network.model, &order, &work(&network));
        let mut steps = Vec::new();
        for at in 0..board.spots.len() {
            steps.extend(placed(asking, &network, &board, at));
        }
        let spots = board.spots;
        steps.order_by_key(|it| (it.start, it.end, it.step));
        missed(&mut network, &spots);
        two_dates::missed(asking, &mut network, &spots);
        let builds = finishes(asking, &network, &spots);
        let troubles = network.troubles.clone();
        Plan { steps, builds, troubles, tried, proven, now: asking.now, network, order, spots }
    }

    /// Where a step lies.
    pub fn step(&self, step: Id) -> Option<&Placed> {
        self.steps.iter().find(|it| it.step == step)
    }

    /// When a build is over.
    pub fn build(&self, build: Id) -> Option<&Finish> {
        self.builds.iter().find(|it| it.build == build)
    }

    /// When the piece of a build is done: the end of its last step that is not work on the film.
    pub fn piece_over(&self, shop: &Shop, build: Id) -> Option<Instant> {
        let mine = |it: &&Placed| it.build == build && !two_dates::is_film(shop, it.step);
        let piece = self.steps.iter().filter(mine);
        piece.map(|it| it.end).max()
    }

    /// The steps of the plan in the order in which they are placed.
    pub fn in_order(&self) -> impl Iterator<Item = Id> + '_ {
        self.order.iter().filter_map(|at| self.network.steps.get(*at).copied())
    }

    /// The free windows of a person, as the plan has them.
    pub fn free(&self, person: Id) -> Option<&Calendar> {
        let unit = self.network.people.binary_search(&person).ok()?;
        self.network.model.calendars.get(unit)
    }
}

/// The seconds that each task is planned with.
fn work(network: &Network) -> Vec<i64> {
    network.hours.iter().map(|it| it.left.0).collect()
}

/// The order of one network, for another of which some steps are gone.
pub(crate) fn kept(from: &Network, order: &[usize], to: &Network) -> Vec<usize> {
    let mut left: Vec<usize> = order
        .iter()
        .filter_map(|at| from.steps.get(*at))
        .filter_map(|step| to.steps.iter().position(|it| it == step))
        .collect();
    let missing = (0..to.steps.len()).filter(|at| !left.contains(at)).collect::<Vec<_>>();
    left.extend(missing);
    // A link that is new among them goes before the order.
    let mut sorted: Vec<usize> = Vec::with_capacity(left.len());
    while let Some(place) = left.iter().position(|at| {
        let before = to.model.tasks.get(*at).map(|task| task.before.as_slice()).unwrap_or_default();
        before.iter().all(|(it, _)| sorted.contains(it))
    }) {
        sorted.push(left.remove(place));
    }
    sorted
}

fn placed(asking: &Asking, network: &Network, board: &Board, at: usize) -> Option<Placed> {
    let (step, task, spot) = (*network.steps.get(at)?, network.model.tasks.get(at)?, *board.spots.get(at)?);
    if spot.never() {
        return None;
    }
    let way = task.ways.get(spot.way)?;
    let (start, end) = (Instant(spot.start), Instant(spot.end));
    let wait = task.after.iter().map(|(_, wait)| *wait).max().unwrap_or(0);
    let held = task.takes.iter().filter_map(|it| {
        let resource = *network.resources.get(it.unit.checked_sub(network.people.len())?)?;
        Some(Held { resource, count: it.count, until: end.plus(Seconds(it.after)) })
    });
    let mut pieces: Vec<_> = board.around(at).map(|(from, to)| (Instant(from), Instant(to))).collect();
    if pieces.is_empty() {
        pieces = network.model.calendars.get(way.calendar)?.pieces(start, end);
    }
    Some(Placed {
        step,
        build: *asking.builds.get(task.build)?,
        people: way.people.iter().filter_map(|unit| network.people.get(*unit).copied()).collect(),
        left: network.hours.get(at)?.left,
        start,
        end,
        pieces,
        next: end.plus(Seconds(wait)),
        held: held.collect(),
    })
}

/// What found no room, or lies beside its date.
fn missed(network: &mut Network, spots: &[Spot]) {
    let Network { model, steps, troubles, .. } = network;
    for ((task, spot), step) in model.tasks.iter().zip(spots).zip(steps.iter().copied()) {
        if spot.never() {
            troubles.push(Trouble::NoRoom { step });
            continue;
        }
        if task.fixed && spot.start > task.release {
            let (should, can) = (Instant(task.release), Instant(spot.start));
            troubles.push(Trouble::StartMissed { step, should, can });
        }
        if let Some(due) = task.due.filter(|due| spot.end > *due) {
            troubles.push(Trouble::EndMissed { step, should: Instant(due), is: Instant(spot.end) });
        }
    }
}

fn finishes(asking: &Asking, network: &Network, spots: &[Spot]) -> Vec<Finish> {
    let of = |(place, build): (usize, &Id)| {
        let own = network.model.tasks.iter().zip(spots).zip(&network.steps);
        let own = own.filter(|((task, _), _)| task.build == place);
        let last = own.max_by_key(|((_, spot), step)| (spot.end, **step));
        Finish {
            build: *build,
            finish: last.filter(|((_, spot), _)| !spot.never()).map(|((_, spot), _)| Instant(spot.end)),
            last: last.map(|(_, step)| *step),
            due: network.model.due.get(place).copied().flatten().map(Instant),
        }
    };
    asking.builds.iter().enumerate().map(of).collect()
}
