//! What is put on a build that is closed, and how a build is reopened.
//!
//! What would move its figures is asked about, never refused: reopen it, or the shop bears it. What was made can't be
//! the shop's: reopen it, or leave it. Pieces that leave and money that comes in are as usual after a build is closed.
//! Source: our own rule, DEVELOPERS.md § Figures. Not here: what closing freezes (`costing::stock::frozen`).

use super::{
    Body, Change, Id, Journal, On, Shop,
    kinds::{Bearer, BuildState, State},
};
use crate::measure::{Day, Instant};

/// Something is put on a build that is closed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OnClosed {
    /// Which.
    pub build: Id,
    /// The shop could bear it instead.
    pub by_shop: bool,
}

/// The closed build that these changes would put something on; none: none of them does.
///
/// What was on it before stays there unasked, and what comes back from a draw comes back at nothing anyway.
pub fn on_closed(journal: &Journal, shop: &Shop, changes: &[Change], today: Day) -> Option<OnClosed> {
    let build = changes.iter().find_map(|change| {
        let before = journal.last_body(change.entry).map(builds).unwrap_or_default();
        builds(change.body.as_ref()?).into_iter().find(|build| {
            let late = !before.contains(build) && shop.state_of(*build, today) == State::Closed;
            late && !changes.iter().any(|change| ends_closing(journal, change, *build))
        })
    })?;
    let made = |change: &Change| matches!(&change.body, Some(Body::Made(it)) if it.build == build);
    Some(OnClosed { build, by_shop: !changes.iter().any(made) })
}

/// The same changes, borne by the shop where they were for this build.
pub fn borne_by_shop(changes: &mut [Change], build: Id) {
    let of = Bearer::Build(build);
    for body in changes.iter_mut().filter_map(|change| change.body.as_mut()) {
        if let Some(bearer) = bearer(body).filter(|it| **it == of) {
            *bearer = Bearer::Shop;
        } else if let Body::Receipt(it) = body {
            it.bearer = it.bearer.filter(|it| *it != of);
        } else if let Body::Lot(it) = body {
            it.for_build = it.for_build.filter(|it| *it != build);
        } else if let Body::Trip(it) = body {
            for share in it.shares.iter_mut().filter(|share| share.bearer == of) {
                share.bearer = Bearer::Shop;
            }
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

/// The one bearer of a body.
fn bearer(body: &mut Body) -> Option<&mut Bearer> {
    if let Body::Stretch(it) = body {
        return Some(&mut it.bearer);
    }
    if let Body::Expense(it) = body {
        return Some(&mut it.bearer);
    }
    if let Body::ToolHours(it) = body {
        return Some(&mut it.bearer);
    }
    if let Body::ByProduct(it) = body {
        return Some(&mut it.of);
    }
    let Body::Draw(it) = body else { return None };
    it.returns.is_none().then_some(&mut it.bearer)
}

/// The builds whose figures a body moves by being there.
fn builds(body: &Body) -> Vec<Id> {
    let of = |bearer: &Bearer| if let Bearer::Build(build) = bearer { Some(*build) } else { None };
    if let Body::Trip(it) = body {
        return it.shares.iter().filter_map(|share| of(&share.bearer)).collect();
    }
    let one = if let Body::Made(it) = body {
        Some(it.build)
    } else if let Body::Lot(it) = body {
        it.for_build
    } else if let Body::Receipt(it) = body {
        it.bearer.as_ref().and_then(of)
    } else {
        bearer(&mut body.clone()).and_then(|it| of(it))
    };
    one.into_iter().collect()
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
        let asked = Some(OnClosed { build: bench, by_shop: true });
        assert_eq!(on_closed(&it.journal, &shop, &changes, today), asked);
        assert_eq!(on_closed(&it.journal, &shop, &changes, Day::parse("2026-02-09").unwrap()), None);
        borne_by_shop(&mut changes, bench);
        assert_eq!(changes[0].body, Some(expense(Bearer::Shop).into()));
        let tray = [Change::write(Id::of([8; 16]), expense(Bearer::Build(it.id("tray"))))];
        assert_eq!(on_closed(&it.journal, &shop, &tray, today), None);
    }

    /// A late line of its own, in the words of a fixture: is it asked about, could the shop bear it, and does it then?
    #[track_caller]
    fn late(line: &str, want: Option<bool>) {
        let before =
            fixture(&format!("tool saw price 1450 resale 450 life 400\nlot oak bought 9 paid 9\n{CLOSED}"));
        let (bench, today) = (before.id("bench"), Day::parse("2026-02-12").unwrap());
        let mut after = before.clone();
        after.add(line);
        let written = crate::journal::line::read(after.lines.last().unwrap()).unwrap().entry;
        let body = after.journal.body(written).cloned();
        let mut changes = [Change { entry: written, body, settles: false }];
        let asked = |changes: &[Change]| on_closed(&before.journal, &before.shop(), changes, today);
        let want = want.map(|by_shop| OnClosed { build: bench, by_shop });
        assert_eq!(asked(&changes), want, "{line}");
        if want.is_some_and(|it| it.by_shop) {
            borne_by_shop(&mut changes, bench);
            assert_eq!(asked(&changes), None, "{line}");
        }
    }

    #[test]
    fn whatever_moves_its_figures_is_asked_about() {
        late("expense hall 55 for bench", Some(true));
        late("stretch Ana sand min 60 for bench", Some(true));
        late("draw 1 oak for bench", Some(true));
        late("receipt till total 20 for bench", Some(true));
        late("lot elm bought 4 paid 8 for bench", Some(true));
        late("ran saw 2 stage sand for bench", Some(true));
        late("by-product kindling 20 of bench", Some(true));
        late("trip 40 for oak:1,bench:2", Some(true));
        late("made bench 2 spoiled 0.5 scrap 3", Some(false));
        late("hand bench 1 sold", None);
        late("income sale piece for bench expected 40", None);
        late("trip 40 for oak:1,tray:2", None);
    }

    #[test]
    fn a_correction_that_moves_something_onto_it_is_asked_about_too() {
        let it = fixture(&format!(
            "{CLOSED}\ntrip 40 for tray,bench as way\nby-product kindling 20 of tray as wood"
        ));
        let (bench, today) = (it.id("bench"), Day::parse("2026-02-12").unwrap());
        let asked = |name: &str, of: &str, to: &str| {
            let mut body = it.journal.body(it.id(name)).cloned().unwrap();
            let (of, to) = (Bearer::Build(it.id(of)), Bearer::Build(it.id(to)));
            if let Body::Trip(it) = &mut body {
                it.shares.iter_mut().filter(|share| share.bearer == of).for_each(|share| share.bearer = to);
            } else if let Some(bearer) = bearer(&mut body) {
                *bearer = to;
            }
            let change = Change { entry: it.id(name), body: Some(body), settles: false };
            on_closed(&it.journal, &it.shop(), &[change], today).map(|it| it.build)
        };
        assert_eq!(asked("wood", "tray", "bench"), Some(bench));
        assert_eq!(asked("wood", "bench", "tray"), None);
        // Its share was on the bench before.
        assert_eq!(asked("way", "tray", "bench"), None);
        assert_eq!(asked("way", "bench", "tray"), None);
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
