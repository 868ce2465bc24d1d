//! How long a tool ran.
//!
//! The union of the intervals of work of one bearer at one stage × the tool's duty there: two people at one planer for
//! 2 h at 0.6 are 1.2 h. Time that two share is counted with the stretch that began first. Hours logged as an amount are
//! added. A tool that rolls runs while the camera does. Hours that were read off take the place of all that for their
//! day, stage and bearer. Source: our own rule, DEVELOPERS.md § Figures.

use super::wear::Scaled;
use crate::{
    costing::Hours,
    journal::{
        Id, Shop,
        kinds::Bearer,
        shop::{Time, Tool},
    },
    measure::{Day, InOrder, Instant, Map, Ratio, Seconds, fixed},
    timing::worked::{Owned, Worked},
};
use rustc_hash::{FxHashMap, FxHashSet};

/// Time at a machine, and the share of it that the machine ran.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Run {
    pub seconds: Seconds,
    pub duty: Ratio,
}

impl Run {
    /// Run hours.
    pub(crate) fn hours(self) -> Hours {
        Hours::of_scaled(self.scaled().0)
    }

    pub(crate) fn scaled(self) -> Scaled {
        Scaled(i128::from(self.seconds.0).saturating_mul(self.duty.micros()))
    }
}

/// One run of a tool.
pub(super) struct OfTool {
    pub entry: Id,
    /// The stretch that it was in; none: read off.
    pub stretch: Option<usize>,
    pub bearer: Bearer,
    pub stage: Id,
    pub day: Day,
    pub run: Run,
    from: Instant,
}

/// From, to, stretch.
type Piece = (Instant, Instant, usize);

/// A stretch, its start, and what it adds to the time of those before it.
type Added = (usize, Instant, Seconds);

/// Time at a stage, by stretch; and the intervals with the camera rolling.
pub(super) struct AtStage {
    /// By stage and bearer, stretches in the order of their start.
    stages: Map<Id, Map<Bearer, Vec<Added>>>,
    /// Of each bearer.
    pieces: Map<Bearer, Vec<Piece>>,
    rolling: Map<Bearer, Vec<Piece>>,
}

pub(super) fn by_stage(shop: &Shop, worked: &[Worked], owned: &[Owned], last: Day) -> AtStage {
    let mut intervals: Map<(Id, Bearer), Vec<Piece>> = Map::new();
    let mut all = AtStage { stages: Map::new(), pieces: Map::new(), rolling: Map::new() };
    for piece in owned {
        let (Some(row), Some(stretch)) = (worked.get(piece.stretch), shop.stretches.get(piece.stretch))
        else {
            continue;
        };
        if row.day > last {
            continue;
        }
        let it = (piece.from, piece.to, piece.stretch);
        intervals.entry((row.stage, row.bearer)).or_default().push(it);
        all.pieces.entry(row.bearer).or_default().push(it);
        for roll in &stretch.rolling {
            let (from, to) = (roll.from.max(piece.from), roll.to.unwrap_or(piece.to).min(piece.to));
            if from < to {
                all.rolling.entry(row.bearer).or_default().push((from, to, piece.stretch));
            }
        }
    }
    for ((stage, bearer), pieces) in intervals {
        all.stages.entry(stage).or_default().insert(bearer, union(shop, pieces));
    }
    for (at, stretch) in shop.stretches.iter().enumerate() {
        let (Time::Amount(seconds), Some(row)) = (stretch.time, worked.get(at)) else { continue };
        if row.day <= last && !seconds.is_zero() {
            let start = shop.zone.start_of(row.day);
            let of_stage = all.stages.entry(row.stage).or_default();
            of_stage.entry(row.bearer).or_default().push((at, start, seconds));
        }
    }
    all
}

/// What each stretch adds to the union, in the order of their starts.
fn union(shop: &Shop, mut pieces: Vec<Piece>) -> Vec<Added> {
    pieces.order_by_key(|(from, _, at)| (*from, shop.stretches.get(*at).map(|it| it.entry())));
    let mut covered: Option<Instant> = None;
    let mut added: Vec<Added> = Vec::new();
    let mut place: FxHashMap<usize, usize> = FxHashMap::default();
    for (from, to, at) in pieces {
        let begins = covered.map_or(from, |covered| covered.max(from));
        covered = Some(covered.map_or(to, |covered| covered.max(to)));
        if begins >= to {
            continue;
        }
        let more = to.since(begins);
        match place.get(&at).and_then(|place| added.get_mut(*place)) {
            Some(sum) => sum.2 = sum.2.plus(more),
            None => {
                place.insert(at, added.len());
                added.push((at, from, more));
            }
        }
    }
    added
}

/// The runs of one tool, in the order of their start.
pub(super) fn of_tool(
    shop: &Shop,
    id: Id,
    tool: &Tool,
    worked: &[Worked],
    at_stage: &AtStage,
    last: Day,
) -> Vec<OfTool> {
    let read_off: Vec<_> =
        shop.tool_hours.iter().filter(|it| it.tool == id && it.order.day <= last).collect();
    let known: FxHashSet<(Day, Id, Bearer)> =
        read_off.iter().map(|it| (it.order.day, it.stage, it.bearer)).collect();
    let mut runs: Vec<OfTool> = Vec::new();
    let mut add = |(at, from, seconds): Added, duty: Ratio| {
        let Some(row) = worked.get(at) else { return };
        if tool.gone.is_some_and(|gone| row.day >= gone) || known.contains(&(row.day, row.stage, row.bearer))
        {
            return;
        }
        runs.push(OfTool {
            entry: row.entry,
            stretch: Some(at),
            bearer: row.bearer,
            stage: row.stage,
            day: row.day,
            run: Run { seconds, duty },
            from,
        });
    };
    if tool.rolls {
        camera(shop, tool, worked, at_stage, &mut add);
    } else {
        for (stage, bearers) in &at_stage.stages {
            if let Some(duty) = tool.duty_at(*stage) {
                bearers.values().flatten().for_each(|it| add(*it, duty));
            }
        }
    }
    for it in read_off {
        let seconds = fixed::mul_div(it.hours.micros(), 3600, fixed::SCALE).unwrap_or(0);
        runs.push(OfTool {
            entry: it.order.entry,
            stretch: None,
            bearer: it.bearer,
            stage: it.stage,
            day: it.order.day,
            run: Run { seconds: super::whole(i64::try_from(seconds).unwrap_or(i64::MAX)), duty: Ratio::ONE },
            from: shop.zone.start_of(it.order.day),
        });
    }
    runs.order_by_key(|it| (it.from, it.entry));
    runs
}

/// Rolling time and the stages that it runs at, as one union a bearer.
fn camera(
    shop: &Shop,
    tool: &Tool,
    worked: &[Worked],
    at_stage: &AtStage,
    add: &mut dyn FnMut(Added, Ratio),
) {
    let mut pieces: Map<Bearer, Vec<Piece>> = at_stage.rolling.clone();
    let runs = |at: usize| worked.get(at).and_then(|row| tool.duty_at(row.stage));
    for (bearer, all) in &at_stage.pieces {
        let filmed = all.iter().filter(|(_, _, at)| runs(*at).is_some()).copied();
        pieces.entry(*bearer).or_default().extend(filmed);
    }
    for (_, pieces) in pieces {
        for it in union(shop, pieces) {
            add(it, runs(it.0).unwrap_or(Ratio::ONE));
        }
    }
    for (stage, bearers) in &at_stage.stages {
        let Some(duty) = tool.duty_at(*stage) else { continue };
        let stretches = bearers.values().flatten();
        let amounts =
            stretches.filter(|(at, ..)| shop.stretches.get(*at).is_some_and(|it| it.from().is_none()));
        amounts.for_each(|it| add(*it, duty));
    }
}
