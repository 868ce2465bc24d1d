//! What is put on a build that is closed, and how a build is reopened.
//!
//! A late hour, draw or expense on a closed build is asked about, never refused: reopen it, or the shop bears it.
//! Source: our own rule, DEVELOPERS.md § Figures. Not here: what closing freezes (`costing::stock::frozen`).

use super::{
    Body, Change, Id, Journal, On, Shop,
    kinds::{Bearer, BuildState, State},
};
use crate::measure::{Day, Instant};

/// The closed build that these changes would put something on; none: none of them does.
///
/// What was on it before stays there unasked, and what comes back from a draw comes back at nothing anyway.
pub fn on_closed(journal: &Journal, shop: &Shop, changes: &[Change], today: Day) -> Option<Id> {
    changes.iter().find_map(|change| {
        let Bearer::Build(build) = bearer(change.body.as_ref()?)? else { return None };
        let before = journal.last_body(change.entry).and_then(bearer);
        let late = before != Some(Bearer::Build(build)) && is_closed(shop, build, today);
        let reopens = changes.iter().any(|change| ends_closing(journal, change, build));
        (late && !reopens).then_some(build)
    })
}

/// The same changes, borne by the shop where they were for this build.
pub fn borne_by_shop(changes: &mut [Change], build: Id) {
    for body in changes.iter_mut().filter_map(|change| change.body.as_mut()) {
        if bearer(body) != Some(Bearer::Build(build)) {
            continue;
        }
        if let Body::Stretch(it) = body {
            it.bearer = Bearer::Shop;
        } else if let Body::Draw(it) = body {
            it.bearer = Bearer::Shop;
        } else if let Body::Expense(it) = body {
            it.bearer = Bearer::Shop;
        }
    }
}

/// What reopens a build. Closed today, its closing is struck out: within a day closing comes last, so nothing said
/// later on that day could stand after it. None: it isn't closed.
pub fn reopen(shop: &Shop, build: Id, now: Instant, fresh: Id) -> Option<Change> {
    let today = shop.zone.day(now);
    let last = shop.last_state(build, today).filter(|it| it.state == State::Closed)?;
    if last.order.day == today {
        return Some(Change::strike(last.order.entry));
    }
    let on = On::At(shop.zone.when(now));
    Some(Change::write(fresh, BuildState { on, build, state: State::Reopened, frozen: Vec::new() }))
}

impl Shop {
    /// The day a build was closed on; none: it is open at the end of `today`.
    pub fn closed_on(&self, build: Id, today: Day) -> Option<Day> {
        self.last_state(build, today).filter(|it| it.state == State::Closed).map(|it| it.order.day)
    }

    /// Whether one-off work, spoilage and learning can have anything to do with a build: more than one item or a run
    /// is planned, or one of the two repeats the other.
    pub fn is_run(&self, build: Id) -> bool {
        let Some(it) = self.builds.get(&build) else { return false };
        it.items > 1
            || it.run_planned.is_some()
            || it.repeat_of.is_some()
            || self.builds.values().any(|other| other.repeat_of == Some(build))
    }
}

fn is_closed(shop: &Shop, build: Id, today: Day) -> bool {
    shop.state_of(build, today) == State::Closed
}

fn bearer(body: &Body) -> Option<Bearer> {
    if let Body::Stretch(it) = body {
        return Some(it.bearer);
    }
    if let Body::Expense(it) = body {
        return Some(it.bearer);
    }
    let Body::Draw(it) = body else { return None };
    it.returns.is_none().then_some(it.bearer)
}

/// It reopens the build, or takes its closing back.
fn ends_closing(journal: &Journal, change: &Change, build: Id) -> bool {
    let was = |body: &Body, closed: bool| {
        let Body::BuildState(it) = body else { return false };
        it.build == build && (it.state == State::Closed) == closed
    };
    match &change.body {
        Some(body) => was(body, false),
        None => journal.last_body(change.entry).is_some_and(|body| was(body, true)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{fixture::fixture, journal::kinds::Expense, measure::Dec};

    const CLOSED: &str = "
        person Ana 26
        build bench
        build tray
        close bench on 2026-02-10 as end
        ";

    fn expense(bearer: Bearer) -> Expense {
        Expense {
            abroad: None,
            on: On::Day(Day::parse("2026-02-12").unwrap()),
            what: "hall".into(),
            amount: Dec::parse("55").unwrap(),
            tax: None,
            tax_back: false,
            bearer,
            side: crate::journal::kinds::Side::Piece,
            receipt: None,
            one_off: false,
        }
    }

    fn at(day: &str) -> Instant {
        Instant(crate::measure::Zone::utc().start_of(Day::parse(day).unwrap()).0 + 3600)
    }

    #[test]
    fn what_is_late_on_a_closed_build_is_asked_about_and_the_shop_can_bear_it() {
        let it = fixture(CLOSED);
        let (shop, bench) = (it.shop(), it.id("bench"));
        let today = Day::parse("2026-02-12").unwrap();
        let mut changes = vec![Change::write(Id::of([7; 16]), expense(Bearer::Build(bench)))];
        assert_eq!(on_closed(&it.journal, &shop, &changes, today), Some(bench));
        assert_eq!(on_closed(&it.journal, &shop, &changes, Day::parse("2026-02-09").unwrap()), None);
        borne_by_shop(&mut changes, bench);
        assert_eq!(changes[0].body, Some(expense(Bearer::Shop).into()));
        let tray = [Change::write(Id::of([8; 16]), expense(Bearer::Build(it.id("tray"))))];
        assert_eq!(on_closed(&it.journal, &shop, &tray, today), None);
    }

    #[test]
    fn what_was_on_it_stays_unasked_and_reopening_answers() {
        let mut it = fixture("build bench\nexpense hall 55 for bench as hall\nclose bench on 2026-02-10");
        let bench = it.id("bench");
        let changed = Change::write(it.id("hall"), expense(Bearer::Build(bench)));
        let today = Day::parse("2026-02-12").unwrap();
        assert_eq!(on_closed(&it.journal, &it.shop(), &[changed], today), None);
        let late = Change::write(Id::of([7; 16]), expense(Bearer::Build(bench)));
        let opens = reopen(&it.shop(), bench, at("2026-02-12"), Id::of([6; 16])).unwrap();
        assert_eq!(on_closed(&it.journal, &it.shop(), &[opens.clone(), late], today), None);
        it.write(opens);
        assert_eq!(it.shop().state_of(bench, today), State::Reopened);
    }

    #[test]
    fn closed_today_its_closing_is_struck_out() {
        let mut it = fixture(CLOSED);
        let (bench, day) = (it.id("bench"), Day::parse("2026-02-10").unwrap());
        assert_eq!(it.shop().closed_on(bench, day), Some(day));
        let opens = reopen(&it.shop(), bench, at("2026-02-10"), Id::of([6; 16])).unwrap();
        assert_eq!(opens, Change::strike(it.id("end")));
        it.write(opens);
        assert_eq!(it.shop().closed_on(bench, day), None);
        assert_eq!(reopen(&it.shop(), bench, at("2026-02-10"), Id::of([6; 16])), None);
    }

    #[test]
    fn a_build_of_one_that_repeats_nothing_is_no_run() {
        let it = fixture("build bench\nbuild tray\nbuild trays\n");
        assert!(!it.shop().is_run(it.id("bench")));
    }
}
