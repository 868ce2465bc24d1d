//! The network: which steps are planned, what each waits for and takes, and what is wrong with any of them.
//!
//! Steps that are done are not planned; what they left drying or clamped still counts, from the end of the last work on
//! them. A step that is left out or dropped hands its place on: what came after it comes after what it came after, with
//! the wait that it had itself. A ring of steps is cut at its youngest link and told.
//! Worked example: coat, dry 24 h, coat, dry 72 h, handles. The second coat dropped: coat, dry 24 h, handles.
//! Source: our own rule, DEVELOPERS.md § House. Not here: how long a step takes (`hours`), when it is done (`schedule`).

use super::{
    asking::{Asking, Trial},
    calendar::{Calendar, FAR},
    hours::{self, Hours},
    place::{Model, Takes, Task, Way},
    trouble::Trouble,
};
use crate::{
    journal::{
        Id,
        kinds::After,
        shop::{Step, Stretch, Time},
    },
    measure::{Dec, InOrder, Instant, Map, Quantity, fixed},
    timing::drying::{self, Dries},
};
use std::collections::BTreeSet;

/// The steps of the plan, ready to be placed.
#[derive(Clone, Debug, Default)]
pub(crate) struct Network {
    pub model: Model,
    /// Which step each task is.
    pub steps: Vec<Id>,
    /// What each takes.
    pub hours: Vec<Hours>,
    /// Who stands behind each unit; then what.
    pub people: Vec<Id>,
    pub resources: Vec<Id>,
    pub troubles: Vec<Trouble>,
}

/// Reads the plan. `trials`: what is tried out.
pub(crate) fn network(asking: &Asking, trials: &[Trial], known: Option<&Network>) -> Network {
    let mut reading = Reading { asking, trials, known, calendars: Map::new(), network: Network::default() };
    reading.units();
    reading.choose();
    reading.tasks();
    reading.links();
    reading.left_behind();
    reading.network
}

struct Reading<'a> {
    asking: &'a Asking<'a>,
    trials: &'a [Trial],
    /// A network of the same shop, whose calendars need not be laid out again.
    known: Option<&'a Network>,
    /// By the people who are at it, in the order of the units.
    calendars: Map<Vec<usize>, usize>,
    network: Network,
}

impl Reading<'_> {
    /// People and resources; the calendar of each person.
    fn units(&mut self) {
        let shop = self.asking.shop;
        let net = &mut self.network;
        net.people = shop.people.keys().copied().collect();
        net.resources = shop.resources.keys().copied().collect();
        net.model.capacity = vec![1; net.people.len()];
        net.model.capacity.extend(shop.resources.values().map(|it| it.count));
        for (unit, person) in net.people.iter().enumerate() {
            let more = self.trials.iter().filter_map(|trial| {
                let Trial::Window { person: who, from, to } = trial else { return None };
                (who == person).then_some((*from, *to))
            });
            let more: Vec<(Instant, Instant)> = more.collect();
            let known = self.known.and_then(|it| it.model.calendars.get(unit)).filter(|_| more.is_empty());
            let calendar =
                known.cloned().unwrap_or_else(|| Calendar::of_person(shop, *person, self.asking.now, &more));
            self.calendars.insert(vec![unit], net.model.calendars.len());
            net.model.calendars.push(calendar);
        }
    }

    /// The steps that are planned, by build and then as they were written.
    fn choose(&mut self) {
        let asking = self.asking;
        for build in asking.builds {
            let due = asking.due(*build);
            let later = self.trials.iter().find_map(|trial| {
                let Trial::Later { build: of, until } = trial else { return None };
                (of == build).then_some(*until)
            });
            let due = later.or(due);
            self.network.model.due.push(due.map(|it| it.0));
            if let Some(due) = due.filter(|due| *due < asking.now) {
                self.network.troubles.push(Trouble::DatePast { build: *build, due });
            }
            let of_build =
                asking.shop.steps.iter().filter(|(_, it)| it.build() == *build && it.done().is_none());
            let ids: Vec<Id> = of_build.map(|(id, _)| *id).collect();
            for id in ids {
                if !self.dropped(id) && self.can_be_planned(id) {
                    self.network.steps.push(id);
                }
            }
        }
    }

    fn dropped(&self, step: Id) -> bool {
        self.trials.iter().any(|trial| matches!(trial, Trial::Drop { step: it } if *it == step))
    }

    /// Its people; each a unit.
    fn people(&self, id: Id, step: &Step) -> Vec<usize> {
        let other = self.trials.iter().find_map(|trial| {
            let Trial::Other { step, person } = trial else { return None };
            (*step == id).then(|| std::slice::from_ref(person))
        });
        let who = other.unwrap_or(&step.body.who);
        let unit = |person: &Id| self.network.people.binary_search(person).ok();
        who.iter().filter_map(unit).collect()
    }

    /// Whether a step can be planned at all; if not, why.
    fn can_be_planned(&mut self, id: Id) -> bool {
        let Some(step) = self.asking.shop.steps.get(&id) else { return false };
        let mut tell = |trouble| self.network.troubles.push(trouble);
        for person in step.body.who.iter().filter(|it| !self.asking.shop.people.contains_key(it)) {
            tell(Trouble::PersonGone { step: id, person: *person });
        }
        if hours::out_of_order(step) {
            tell(Trouble::OutOfOrder { step: id });
        }
        if step.hours.iter().all(Option::is_none) && step.left.is_none() {
            tell(Trouble::NoEstimate { step: id });
            return false;
        }
        let people = self.people(id, step);
        if people.is_empty() {
            self.network.troubles.push(Trouble::NobodyNamed { step: id });
            return false;
        }
        let without = people.iter().filter(|unit| self.free(**unit).is_none_or(Calendar::is_empty));
        let without: Vec<Id> = without.filter_map(|it| self.network.people.get(*it).copied()).collect();
        // Of several any one of whom will do, one with free hours is enough.
        let lacks = if step.body.any { without.len() == people.len() } else { !without.is_empty() };
        for person in without {
            self.network.troubles.push(Trouble::NoFreeHours { step: id, person });
        }
        if lacks {
            return false;
        }
        let together = step.body.any || {
            let calendar = self.together(people);
            self.network.model.calendars.get(calendar).is_some_and(|it| !it.is_empty())
        };
        if !together {
            self.network.troubles.push(Trouble::NeverTogether { step: id });
        }
        together
    }

    fn free(&self, unit: usize) -> Option<&Calendar> {
        self.network.model.calendars.get(unit)
    }

    /// The calendar of the hours at which all of them are free.
    fn together(&mut self, mut people: Vec<usize>) -> usize {
        people.order();
        people.dedup();
        if let Some(known) = self.calendars.get(&people) {
            return *known;
        }
        let mut calendars = people.iter().filter_map(|unit| self.free(*unit));
        let first = calendars.next().cloned().unwrap_or_default();
        let both = calendars.fold(first, |sum, it| sum.and(it));
        let place = self.network.model.calendars.len();
        self.network.model.calendars.push(both);
        self.calendars.insert(people, place);
        place
    }

    fn tasks(&mut self) {
        for id in self.network.steps.clone() {
            let Some(step) = self.asking.shop.steps.get(&id) else { continue };
            let mut people = self.people(id, step);
            let ways = if step.body.any {
                people.iter().map(|unit| Way { calendar: *unit, people: vec![*unit] }).collect()
            } else {
                people.order();
                people.dedup();
                vec![Way { calendar: self.together(people.clone()), people }]
            };
            let hours = hours::of(self.asking, self.trials, id, step);
            self.in_one_go(id, step, &ways, &hours);
            let takes = self.takes(id, step);
            let (start, due) = self.dates(id, step);
            let build = self.asking.builds.iter().position(|it| *it == step.build()).unwrap_or(0);
            self.network.hours.push(hours);
            self.network.model.tasks.push(Task {
                build,
                release: start.map_or(self.asking.now, |start| start.max(self.asking.now)).0,
                fixed: start.is_some(),
                due: due.map(|it| it.0),
                one_go: step.body.one_go,
                gives_way: step.body.gives_way,
                ways,
                takes,
                before: Vec::new(),
                after: Vec::new(),
            });
        }
    }

    fn in_one_go(&mut self, id: Id, step: &Step, ways: &[Way], hours: &Hours) {
        let longest = ways.iter().filter_map(|way| self.free(way.calendar)).map(Calendar::longest).max();
        let Some(longest) = longest.filter(|_| step.body.one_go) else { return };
        if hours.slow > longest {
            self.network.troubles.push(Trouble::LongerThanAWindow { step: id, slow: hours.slow, longest });
        }
    }

    fn takes(&mut self, id: Id, step: &Step) -> Vec<Takes> {
        let mut all = Vec::new();
        for need in &step.body.needs {
            let Ok(place) = self.network.resources.binary_search(&need.resource) else {
                self.network.troubles.push(Trouble::ResourceGone { step: id, resource: need.resource });
                continue;
            };
            let unit = self.network.people.len().saturating_add(place);
            let there = self.network.model.capacity.get(unit).copied().unwrap_or(0);
            if need.count > there {
                let (resource, needs) = (need.resource, need.count);
                self.network.troubles.push(Trouble::TooFew { step: id, resource, needs, there });
            }
            let count = need.count.min(there);
            all.push(Takes { unit, count, before: 0, after: need.held.map_or(0, seconds) });
        }
        all
    }

    fn dates(&mut self, id: Id, step: &Step) -> (Option<Instant>, Option<Instant>) {
        let now = self.asking.now;
        let start = step.body.start.map(|it| it.instant);
        let end = step.body.end.map(|it| it.instant);
        if let Some(start) = start.filter(|it| *it < now) {
            self.network.troubles.push(Trouble::StartPast { step: id, start });
        }
        if let Some(end) = end.filter(|it| *it < now) {
            self.network.troubles.push(Trouble::EndPast { step: id, end });
        }
        (start.filter(|it| *it >= now), end)
    }

    /// What each waits for.
    fn links(&mut self) {
        let cut = self.rings();
        let steps = self.network.steps.clone();
        for (at, id) in steps.iter().enumerate() {
            let mut found = Vec::new();
            let mut release = self.asking.now.0;
            self.before((*id, *id), 0, &cut, &mut vec![*id], &mut |found_it| match found_it {
                Before::Task(step, wait) => found.push((step, wait)),
                Before::Until(instant) => release = release.max(instant),
            });
            let mut before: Vec<(usize, i64)> = Vec::new();
            for (step, wait) in found {
                let Some(place) = steps.iter().position(|it| *it == step) else { continue };
                match before.iter_mut().find(|(it, _)| *it == place) {
                    Some((_, known)) => *known = wait.max(*known),
                    None => before.push((place, wait)),
                }
            }
            for (place, wait) in &before {
                if let Some(task) = self.network.model.tasks.get_mut(*place) {
                    task.after.push((at, *wait));
                }
            }
            if let Some(task) = self.network.model.tasks.get_mut(at) {
                task.before = before;
                task.release = task.release.max(release);
            }
        }
    }

    /// What `of` waits for, by the links of `via`: itself, or one that is left out and hands its place on.
    fn before(
        &mut self,
        (of, via): (Id, Id),
        depth: usize,
        cut: &[(Id, Id)],
        seen: &mut Vec<Id>,
        tell: &mut dyn FnMut(Before),
    ) {
        let shop = self.asking.shop;
        let Some(step) = shop.steps.get(&via) else { return };
        for After { step: before, wait } in &step.body.after {
            if cut.contains(&(via, *before)) {
                continue;
            }
            // What was said at the bench goes before what was planned; where nothing is waited for there is no drying.
            let said = wait.and_then(|_| self.said(*before)).map(|it| it.dry.0);
            let wait = wait.map_or(0, seconds);
            match shop.steps.get(before) {
                Some(it) if it.done().is_some() => {
                    let planned = self.over(*before, it).saturating_add(wait);
                    tell(Before::Until(said.unwrap_or(planned)));
                }
                Some(_) if self.network.steps.contains(before) => tell(Before::Task(*before, wait)),
                Some(it) if self.asking.builds.contains(&it.build()) => {
                    if !seen.contains(before) && depth < shop.steps.len() {
                        seen.push(*before);
                        self.before((of, *before), depth.saturating_add(1), cut, seen, tell);
                    }
                }
                Some(_) | None if depth == 0 => {
                    self.network.troubles.push(Trouble::AfterGone { step: of, after: *before });
                }
                Some(_) | None => {}
            }
        }
    }

    /// When the last work on a step that is done was over.
    fn over(&self, id: Id, step: &Step) -> i64 {
        let shop = self.asking.shop;
        let of_step = shop.stretches.iter().filter(|it| it.step == Some(id));
        let ended = |it: &Stretch| match it.time {
            Time::Span(span) => span.to,
            Time::Amount(_) => None,
        };
        let last = of_step.filter_map(ended).max();
        let day = step.done().map(|day| shop.zone.end_of(day));
        last.or(day).unwrap_or(self.asking.now).min(self.asking.now).0
    }

    /// What was said at the bench of the last work on a step that dries.
    fn said(&self, id: Id) -> Option<Dries> {
        let shop = self.asking.shop;
        let mut own = shop.stretches.iter().rev().filter(|it| it.step == Some(id));
        own.find_map(|it| drying::of(shop, it.entry()))
    }

    /// Clamps and corners that steps which are done, or stretches that dry, still hold.
    fn left_behind(&mut self) {
        let (shop, now) = (self.asking.shop, self.asking.now.0);
        for (id, step) in shop.steps.iter().filter(|(_, it)| it.done().is_some()) {
            if !self.asking.builds.contains(&step.build()) {
                continue;
            }
            let over = self.over(*id, step);
            // What was said at the bench goes before what was planned.
            let said = self.said(*id).and_then(|it| it.held);
            for need in &step.body.needs {
                let Ok(place) = self.network.resources.binary_search(&need.resource) else { continue };
                let planned = over.saturating_add(need.held.map_or(0, seconds));
                let until = said.map_or(planned, |it| it.0);
                let unit = self.network.people.len().saturating_add(place);
                if until > now {
                    let from = FAR.saturating_neg();
                    let there = self.network.model.capacity.get(unit).copied().unwrap_or(0);
                    self.network.model.taken.push((unit, from, until, need.count.min(there)));
                }
            }
        }
    }

    /// Links that close a ring, each ring told once.
    fn rings(&mut self) -> Vec<(Id, Id)> {
        let mut cut = Vec::new();
        while let Some(steps) = self.ring(&cut) {
            if let (Some(first), Some(last)) = (steps.first(), steps.last()) {
                cut.push((*first, *last));
            }
            self.network.troubles.push(Trouble::Circle { steps });
        }
        cut
    }

    /// A ring that no cut opens: each waits for the one before it, the first, written first, for the last.
    fn ring(&self, cut: &[(Id, Id)]) -> Option<Vec<Id>> {
        let shop = self.asking.shop;
        let open = |id: &Id| {
            let step = shop.steps.get(id).filter(|it| it.done().is_none())?;
            self.asking.builds.contains(&step.build()).then_some(step)
        };
        let mut done: BTreeSet<Id> = BTreeSet::new();
        for first in shop.steps.keys().filter(|id| open(id).is_some()) {
            // From `first` to what it waits for, and on; with each which of its links is looked at next.
            let mut way: Vec<(Id, usize)> = vec![(*first, 0)];
            while let Some((at, link)) = way.last_mut() {
                let (at, place) = (*at, *link);
                *link = link.saturating_add(1);
                let after = open(&at).and_then(|it| it.body.after.get(place)).filter(|_| !done.contains(&at));
                let Some(After { step: next, .. }) = after else {
                    done.insert(at);
                    way.pop();
                    continue;
                };
                if cut.contains(&(at, *next)) || open(next).is_none() {
                    continue;
                }
                if let Some(begins) = way.iter().position(|(it, _)| it == next) {
                    // The way goes against time.
                    let mut steps: Vec<Id> = way.get(begins..)?.iter().rev().map(|(it, _)| *it).collect();
                    let written = |id: &Id| open(id).map(|it| (it.order, *id));
                    let turn = steps.iter().enumerate().min_by_key(|(_, id)| written(id));
                    let turn = turn.map_or(0, |(place, _)| place);
                    steps.rotate_left(turn);
                    return Some(steps);
                }
                way.push((*next, 0));
            }
        }
        None
    }
}

/// One thing that a step waits for.
enum Before {
    /// A step that is planned, and what must pass after it.
    Task(Id, i64),
    /// An instant: what was done dries until then.
    Until(i64),
}

/// Hours as typed, in whole seconds; below zero is none.
pub(crate) fn seconds(hours: Dec) -> i64 {
    let micros = hours.quantity().map_or(0, Quantity::micros);
    let whole = fixed::mul_div(micros, 3600, fixed::SCALE).unwrap_or(0);
    i64::try_from(whole).unwrap_or(0).max(0)
}

#[cfg(test)]
mod tests;
