//! The whole of a build on one line of time: days worked, what dried, when the camera was there, gaps, milestones.
//!
//! Everything lies on local days, counted from the first on the line. A **gap** is a week or more in which nobody worked on
//! it and nothing dried. A day was a **shoot** when there was work at a stage of shooting, the camera rolled, or a take was
//! had. Source: our own rule. Not here: money; what is still planned.

use super::{drying, worked};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, Role, Side, State},
    },
    measure::{Day, InOrder, Instant, Map, Seconds, minutes},
};
use std::collections::BTreeSet;

/// Days without work that make a gap.
pub const GAP: i64 = 7;

/// A build from its first day to its last.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Line {
    /// Where it begins.
    pub first: Day,
    /// How many days it is long: one at least.
    pub days: i64,
    /// Days worked, in order.
    pub worked: Vec<Worked>,
    /// What dried, in order of its start.
    pub dried: Vec<Dried>,
    /// Days on which the camera was there.
    pub shoots: Vec<i64>,
    /// Stretches of days without anything.
    pub gaps: Vec<Gap>,
    /// What stands out, in order.
    pub marks: Vec<Mark>,
    /// Person-hours in all, as they are shown.
    pub hours: Seconds,
}

impl Line {
    /// The day that lies so many after the first.
    pub fn day(&self, at: i64) -> Day {
        self.first.plus_days(at)
    }

    /// The most that was worked on one day.
    pub fn longest(&self) -> Seconds {
        self.worked.iter().map(|it| it.piece.plus(it.film)).max().unwrap_or_default()
    }

    /// The last day on it.
    pub fn last(&self) -> Day {
        self.day(self.days.saturating_sub(1))
    }
}

/// A day that was worked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Worked {
    /// Days after the first.
    pub at: i64,
    /// On the piece, and for both.
    pub piece: Seconds,
    /// On the film.
    pub film: Seconds,
}

/// Something that dried.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Dried {
    /// At which stage.
    pub stage: Id,
    /// From this day on.
    pub from: i64,
    /// For so many days, the last one with it.
    pub days: i64,
}

/// Days without anything.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Gap {
    /// The first of them.
    pub from: i64,
    /// How many.
    pub days: i64,
}

/// What stands out on the line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Mark {
    /// Days after the first.
    pub at: i64,
    /// The day.
    pub day: Day,
    /// What.
    pub what: Milestone,
}

/// A milestone.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Milestone {
    /// The build was begun.
    Begun,
    /// A step was done.
    StepDone(Id),
    /// So many good items were finished.
    Made(u32),
    /// So many left.
    HandedOver(u32),
    /// Where it stood from then on.
    State(State),
    /// The film went out.
    Published,
    /// It is to be finished by then.
    Due,
}

/// None: there is no such build.
pub fn line(shop: &Shop, build: Id, as_of: Instant) -> Option<Line> {
    let begun = shop.builds.get(&build)?;
    let bearer = Bearer::Build(build);
    let mut by_day: Map<Day, (Seconds, Seconds)> = Map::new();
    let mut shoots: BTreeSet<Day> = BTreeSet::new();
    let mut sum = Seconds::ZERO;
    let rows = worked::worked(shop, as_of);
    for row in rows.iter().filter(|row| row.bearer == bearer && !row.seconds.is_zero()) {
        let (piece, film) = by_day.entry(row.day).or_default();
        let of = if row.side == Side::Film { film } else { piece };
        *of = of.plus(row.seconds);
        sum = sum.plus(row.seconds);
        let at_work = shop.stages.get(&row.stage).is_some_and(|it| it.role == Some(Role::Shoot));
        let rolled = shop.stretches.get(row.stretch).is_some_and(|it| !it.rolling.is_empty());
        if at_work || rolled {
            shoots.insert(row.day);
        }
    }
    let mine = |shot: &Id| shop.shots.get(shot).is_some_and(|it| it.body.build == build);
    shoots.extend(shop.takes.iter().filter(|it| mine(&it.shot)).map(|it| it.order.day));
    let dried = dried(shop, bearer);
    let marks = marks(shop, build, shop.zone.day(as_of));
    let days = by_day.keys().copied().chain(shoots.iter().copied()).chain(marks.iter().map(|it| it.0));
    let days = days.chain(dried.iter().flat_map(|it| [it.1, it.2]));
    let (first, last) =
        days.fold((begun.order.day, begun.order.day), |(low, high), it| (low.min(it), high.max(it)));
    let at = |day: Day| day.days_since(first);
    let worked: Vec<Worked> = by_day
        .iter()
        .map(|(day, (piece, film))| Worked { at: at(*day), piece: *piece, film: *film })
        .collect();
    let dried: Vec<Dried> = dried
        .into_iter()
        .map(|(stage, from, to)| Dried { stage, from: at(from), days: to.days_since(from).saturating_add(1) })
        .collect();
    let mark = |(day, what): (Day, Milestone)| Mark { at: at(day), day, what };
    Some(Line {
        first,
        days: at(last).saturating_add(1),
        gaps: gaps(&worked, &dried),
        shoots: shoots.into_iter().map(at).collect(),
        marks: marks.into_iter().map(mark).collect(),
        hours: minutes::alone(sum),
        worked,
        dried,
    })
}

/// Whatever was said to dry after work on it: at which stage, from and to which day.
fn dried(shop: &Shop, bearer: Bearer) -> Vec<(Id, Day, Day)> {
    let mut all = Vec::new();
    for stretch in shop.stretches.iter().filter(|it| it.bearer == bearer) {
        if let Some(dries) = drying::of(shop, stretch.entry()) {
            all.push((dries.stage, stretch.order.day, shop.zone.day(dries.dry)));
        }
    }
    all.order_by_key(|it| (it.1, it.2));
    all
}

fn marks(shop: &Shop, build: Id, today: Day) -> Vec<(Day, Milestone)> {
    let mut all: Vec<(Day, Milestone)> = Vec::new();
    if let Some(it) = shop.builds.get(&build) {
        all.push((it.order.day, Milestone::Begun));
        all.extend(it.due.map(|day| (day, Milestone::Due)));
    }
    let done = shop.steps.iter().filter(|(_, it)| it.build() == build);
    all.extend(done.filter_map(|(id, it)| Some((it.done()?, Milestone::StepDone(*id)))));
    let made = shop.made.iter().filter(|it| it.build == build);
    all.extend(made.map(|it| (it.order.day, Milestone::Made(it.good))));
    let left = shop.handed.iter().filter(|it| it.build == build);
    all.extend(left.map(|it| (it.order.day, Milestone::HandedOver(it.count))));
    let states = shop.states.iter().filter(|it| it.build == build && it.order.day <= today);
    all.extend(states.map(|it| (it.order.day, Milestone::State(it.state))));
    let published = shop.films.get(&build).and_then(|it| it.published);
    all.extend(published.map(|day| (day, Milestone::Published)));
    all.order_by_key(|it| it.0);
    all
}

/// Between days worked, what dried taken as work.
fn gaps(worked: &[Worked], dried: &[Dried]) -> Vec<Gap> {
    let mut taken: Vec<(i64, i64)> = worked.iter().map(|it| (it.at, it.at)).collect();
    taken.extend(dried.iter().map(|it| (it.from, it.from.saturating_add(it.days).saturating_sub(1))));
    taken.order();
    let mut gaps = Vec::new();
    let mut until: Option<i64> = None;
    for (from, to) in taken {
        if let Some(until) = until {
            let days = from.saturating_sub(until).saturating_sub(1);
            if days >= GAP {
                gaps.push(Gap { from: until.saturating_add(1), days });
            }
        }
        until = Some(until.unwrap_or(to).max(to));
    }
    gaps
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fixture::fixture;

    #[test]
    fn work_drying_shoots_gaps_and_milestones_lie_on_one_line() {
        let it = fixture(
            "
            person Ana 26
            build trays on 2026-02-01
            stretch Ana glue-up from 08:00 to 09:00 for trays as panel on 2026-02-02
            dry panel held 60 next 2880
            stretch Ana sand from 08:00 to 10:00 roll 08:00-08:30 for trays on 2026-02-20
            stretch Ana edit min 90 for trays side film on 2026-02-20
            step coat trays finish done 2026-02-21
            made trays 4 on 2026-02-22
            ",
        );
        let line = line(&it.shop(), it.id("trays"), it.end()).unwrap();
        assert_eq!((line.first.to_string().as_str(), line.days), ("2026-02-01", 22));
        let hours: Vec<(i64, i64, i64)> =
            line.worked.iter().map(|it| (it.at, it.piece.0 / 60, it.film.0 / 60)).collect();
        assert_eq!(hours, [(1, 60, 0), (19, 120, 90)]);
        assert_eq!(line.dried.iter().map(|it| (it.from, it.days)).collect::<Vec<_>>(), [(1, 3)]);
        // Dry on the 4th; the next work on the 20th.
        assert_eq!(line.gaps, [Gap { from: 4, days: 15 }]);
        assert_eq!(line.shoots, [19]);
        assert_eq!(line.hours, Seconds(16_200));
        let marks: Vec<(i64, bool)> =
            line.marks.iter().map(|it| (it.at, matches!(it.what, Milestone::Made(4)))).collect();
        assert_eq!(marks, [(0, false), (20, false), (21, true)]);
    }

    #[test]
    fn a_build_that_was_never_worked_on_is_one_day_long() {
        let it = fixture("build trays on 2026-02-01");
        let line = line(&it.shop(), it.id("trays"), it.end()).unwrap();
        assert_eq!((line.days, line.worked.len(), line.marks.len()), (1, 0, 1));
    }
}
