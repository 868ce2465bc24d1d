//! What had a date and has none any more: done, met, out, struck out, or not so many pieces as it was. A phone that took
//! an earlier file in keeps such an event, and its alarm, until it is told that it is off.
//!
//! Every name that an earlier file can have had is gone through, and those that this one has no date for are called off
//! (RFC 5545, 3.8.1.11). Which pieces a step was laid in is not kept: as many are called off as all of it would take, when
//! slow, of the free windows from now on. Closed builds are told for a quarter of a year.
//! Source: our own rule. Not here: what has a date (`of_shop`).

use super::{DateOf, Dated, Span, Uid, What};
use crate::{
    journal::{
        Body, Content, Id, Journal, On, Shop,
        kinds::{self, State},
    },
    measure::{Day, Dec, Instant, Seconds, fixed},
    planning::{
        Plan,
        publishing::{Owed, publishing},
    },
    timing::drying::Dries,
};

/// So long after it was closed a build is told, in days.
const TOLD_FOR: i64 = 92;

/// So many pieces of a step are called off, at most.
const MOST: u32 = 12;

/// What a file is written of.
#[derive(Clone, Copy, Debug)]
pub struct Of<'a> {
    /// All that was ever written.
    pub journal: &'a Journal,
    /// As it is.
    pub shop: &'a Shop,
    /// The plan of its open builds.
    pub plan: &'a Plan,
    /// One build; none: the whole shop.
    pub build: Option<Id>,
    /// The day it is.
    pub today: Day,
}

/// Dates to call off, where `there` has none of that name.
pub fn gone(of: &Of, there: &[Dated]) -> Vec<Dated> {
    let mut all: Vec<Dated> = Vec::new();
    for entry in of.journal.entries() {
        match of.journal.last_body(entry) {
            Some(Body::Step(it)) if of.tells(it.build) => of.step(entry, it, &mut all),
            Some(Body::Due(it)) if of.tells(it.build) => of.owed(entry, it, &mut all),
            Some(Body::Build(_)) if of.tells(entry) => of.dates(entry, &mut all),
            Some(Body::Drying(it)) => all.extend(of.dries(entry, it)),
            _ => {}
        }
    }
    all.retain(|it| !there.iter().any(|other| other.uid == it.uid));
    all
}

impl Of<'_> {
    fn tells(&self, build: Id) -> bool {
        let state = self.shop.state_on(build, self.today);
        let over = |(state, day)| state == State::Closed && self.today.days_since(day) > TOLD_FOR;
        self.build.map_or_else(|| !state.is_some_and(over), |of| of == build)
    }

    fn day(&self, on: &On) -> Span {
        whole(on.day(&self.shop.zone))
    }

    /// Its pieces, and its drying where something waited for that.
    fn step(&self, entry: Id, it: &kinds::Step, all: &mut Vec<Dated>) {
        let title = it.title.clone();
        let span = it.done.map_or_else(|| self.day(&it.on), whole);
        for number in 1..=self.pieces(it) {
            let what = What::Step { step: entry, title: title.clone() };
            all.push(Dated { uid: Uid { entry, date: DateOf::Piece(number) }, what, span });
        }
        let waited = self.shop.steps.values().flat_map(|it| &it.body.after);
        if waited.filter(|it| it.step == entry).any(|it| it.wait.is_some()) {
            let what = What::StepDry { step: entry, title };
            all.push(Dated { uid: Uid { entry, date: DateOf::Dry }, what, span });
        }
    }

    fn pieces(&self, it: &kinds::Step) -> u32 {
        let hours = it.slow.or(it.usual).and_then(Dec::quantity);
        let seconds = hours.and_then(|it| fixed::mul_div(it.micros(), 3_600, fixed::SCALE));
        let mut left = seconds.unwrap_or(0);
        let windows = it.who.first().and_then(|who| self.plan.free(*who)).filter(|_| !it.one_go);
        let mut many = 0_u32;
        for (from, to) in windows.into_iter().flat_map(|it| it.windows()) {
            if left <= 0 || many >= MOST {
                break;
            }
            left = left.saturating_sub(i128::from(to.since(from).0));
            many = many.saturating_add(1);
        }
        many.max(1)
    }

    fn owed(&self, entry: Id, it: &kinds::Due, all: &mut Vec<Dated>) {
        let known = publishing(self.shop, it.build, self.today, None).owed;
        let by = known.iter().find(|it| it.due == entry).and_then(|it| it.by);
        let by = by.or(it.day).unwrap_or_else(|| it.on.day(&self.shop.zone));
        let owed = Owed {
            due: entry,
            what: it.what,
            words: it.words.clone().unwrap_or_default(),
            by: Some(by),
            done: it.done,
            outsider: it.outsider,
            late: false,
            over: false,
        };
        let what = What::Due { build: it.build, owed };
        all.push(Dated { uid: Uid { entry, date: DateOf::Due }, what, span: whole(by) });
    }

    /// A build's own dates, as they were said last.
    fn dates(&self, build: Id, all: &mut Vec<Dated>) {
        let said = self.journal.history(build);
        let said = said.iter().rev().filter_map(|it| match &it.content {
            Content::Body(Body::Build(body)) => Some(body),
            Content::Body(_) | Content::Struck | Content::Newer | Content::Unreadable => None,
        });
        let said: Vec<&kinds::Build> = said.collect();
        if let Some(due) = said.iter().find_map(|it| it.due) {
            let uid = Uid { entry: build, date: DateOf::Due };
            all.push(Dated { uid, what: What::Piece(build), span: whole(due) });
        }
        if let Some(day) = said.iter().find_map(|it| it.publish) {
            for (date, what) in [(DateOf::Cut, What::Cut(build)), (DateOf::Publish, What::Publish(build))] {
                all.push(Dated { uid: Uid { entry: build, date }, what, span: whole(day) });
            }
        }
    }

    /// What would be dry today or later; what is past rings no more.
    fn dries(&self, entry: Id, it: &kinds::Drying) -> Option<Dated> {
        let Some(Body::Stretch(stretch)) = self.journal.last_body(it.stretch) else { return None };
        let bearer = stretch.bearer;
        let minutes = i64::from(it.next).saturating_mul(60);
        let dry: Instant = stretch.to?.instant.plus(Seconds(minutes));
        let mine = self.build.is_none_or(|of| bearer == kinds::Bearer::Build(of));
        let later = dry >= self.shop.zone.start_of(self.today);
        let dries = Dries {
            entry,
            stretch: it.stretch,
            bearer,
            stage: stretch.stage,
            item: it.item,
            held: None,
            dry,
        };
        (mine && later).then_some(Dated {
            uid: Uid { entry, date: DateOf::Dry },
            what: What::Dry(dries),
            span: Span::Moment(dry),
        })
    }
}

fn whole(day: Day) -> Span {
    Span::Days { first: day, last: day }
}
