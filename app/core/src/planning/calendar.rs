//! Free windows: when a person is free for the shop, in real time, and when several are free at once.
//!
//! A window of a weekday is a local time; which instants it means is asked of the shop's zone day by day, so that it is an
//! hour shorter or longer where the clock changes inside it. Up to a time that is not later means over midnight, and the
//! window belongs to the day on which it begins. A day off takes every window that begins on it, extra ones too.
//! Kept as sorted instants in whole seconds UTC with the sum of free time before each, so that "so many working hours from
//! here" is one look-up. Source: our own rule, DEVELOPERS.md § House. Not here: what is done in them.

use crate::{
    journal::{
        Id, Shop,
        kinds::{Step, Window},
    },
    measure::{Day, Dec, InOrder, Instant, Seconds},
    timing::estimates,
};

/// So far ahead windows are laid out: two years of evenings.
pub const DAYS_AHEAD: i64 = 731;

/// Beyond any instant that is planned.
pub(crate) const FAR: i64 = i64::MAX / 4;

/// One window, with the free seconds up to its end.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Open {
    from: i64,
    to: i64,
    until: i64,
}

/// Sorted windows that do not touch each other.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Calendar {
    open: Vec<Open>,
    longest: i64,
}

impl Calendar {
    /// Of windows in any order; those that touch or overlap become one.
    pub fn of(mut windows: Vec<(Instant, Instant)>) -> Calendar {
        windows.order();
        let mut open: Vec<Open> = Vec::with_capacity(windows.len());
        for (from, to) in windows.into_iter().filter(|(from, to)| from < to) {
            match open.last_mut() {
                Some(last) if last.to >= from.0 => last.to = last.to.max(to.0),
                Some(_) | None => open.push(Open { from: from.0, to: to.0, until: 0 }),
            }
        }
        Calendar::summed(open)
    }

    /// Day and night: for what no calendar bounds.
    pub(crate) fn always() -> Calendar {
        Calendar::summed(vec![Open { from: FAR.saturating_neg(), to: FAR, until: 0 }])
    }

    fn summed(mut open: Vec<Open>) -> Calendar {
        let (mut sum, mut longest) = (0_i64, 0_i64);
        for it in &mut open {
            let length = it.to.saturating_sub(it.from);
            sum = sum.saturating_add(length);
            it.until = sum;
            longest = longest.max(length);
        }
        Calendar { open, longest }
    }

    /// The windows of one person from an instant on, over [`DAYS_AHEAD`] days. `more`: windows to try out.
    pub fn of_person(shop: &Shop, person: Id, from: Instant, more: &[(Instant, Instant)]) -> Calendar {
        let first = shop.zone.day(from).pred();
        let mut windows: Vec<(Instant, Instant)> = more.to_vec();
        let mut lay = |day: Day, window: Window| {
            let ends = if window.to > window.from { day } else { day.succ() };
            windows.push((shop.zone.at(day, window.from), shop.zone.at(ends, window.to)));
        };
        let weekly = shop.people.get(&person).map(|it| it.free.as_slice()).unwrap_or_default();
        let own: Vec<_> = shop.free_days.iter().filter(|it| it.person == person).collect();
        for ahead in 0..=DAYS_AHEAD {
            let day = first.plus_days(ahead);
            let mut today = own.iter().filter(|it| it.first <= day && day <= it.last);
            if today.clone().any(|it| it.is_off()) {
                continue;
            }
            let weekday = day.weekday();
            for it in weekly.iter().filter(|it| it.weekday == weekday) {
                lay(day, Window { from: it.from, to: it.to });
            }
            today.by_ref().flat_map(|it| &it.extra).for_each(|it| lay(day, *it));
        }
        for (begins, _) in &mut windows {
            *begins = (*begins).max(from);
        }
        Calendar::of(windows)
    }

    /// Where all of some people are free, from an instant on; with `any` the longest free time is that of one of them.
    fn longest_of(shop: &Shop, who: &[Id], any: bool, from: Instant) -> Seconds {
        let mut own = who.iter().map(|person| Calendar::of_person(shop, *person, from, &[]));
        if any {
            return own.map(|it| it.longest()).max().unwrap_or_default();
        }
        let first = own.next().unwrap_or_default();
        own.fold(first, |sum, it| sum.and(&it)).longest()
    }

    /// Where both are free.
    #[must_use]
    pub fn and(&self, other: &Calendar) -> Calendar {
        let (mut mine, mut theirs) = (self.open.iter().peekable(), other.open.iter().peekable());
        let mut open = Vec::new();
        while let (Some(one), Some(two)) = (mine.peek(), theirs.peek()) {
            let (from, to) = (one.from.max(two.from), one.to.min(two.to));
            if from < to {
                open.push(Open { from, to, until: 0 });
            }
            if one.to <= two.to {
                mine.next();
            } else {
                theirs.next();
            }
        }
        Calendar::summed(open)
    }

    /// The same windows with time running backwards.
    pub(crate) fn mirrored(&self) -> Calendar {
        let back = |it: &Open| Open { from: it.to.saturating_neg(), to: it.from.saturating_neg(), until: 0 };
        Calendar::summed(self.open.iter().rev().map(back).collect())
    }

    /// There is none.
    pub fn is_empty(&self) -> bool {
        self.open.is_empty()
    }

    /// The longest window.
    pub fn longest(&self) -> Seconds {
        Seconds(self.longest)
    }

    /// Every window, in time.
    pub fn windows(&self) -> impl Iterator<Item = (Instant, Instant)> + '_ {
        self.open.iter().map(|it| (Instant(it.from), Instant(it.to)))
    }

    /// Free time between two instants.
    pub fn between(&self, from: Instant, to: Instant) -> Seconds {
        let inside = |it: &Open| it.to.min(to.0).saturating_sub(it.from.max(from.0)).max(0);
        Seconds(self.open.iter().fold(0, |sum: i64, it| sum.saturating_add(inside(it))))
    }

    /// The parts of the windows that lie between two instants.
    pub fn pieces(&self, from: Instant, to: Instant) -> Vec<(Instant, Instant)> {
        let cut = |it: &Open| (Instant(it.from.max(from.0)), Instant(it.to.min(to.0)));
        self.open.iter().map(cut).filter(|(from, to)| from < to).collect()
    }

    /// The place of the first window that is not over at an instant.
    pub(crate) fn next(&self, at: i64) -> usize {
        self.open.partition_point(|it| it.to <= at)
    }

    /// How many windows after the one at `place` are over at an instant, that one with them.
    pub(crate) fn skip(&self, place: usize, at: i64) -> usize {
        let rest = self.open.get(place..).unwrap_or_default();
        rest.partition_point(|it| it.to <= at)
    }

    /// From and to of a window.
    pub(crate) fn window(&self, place: usize) -> Option<(i64, i64)> {
        self.open.get(place).map(|it| (it.from, it.to))
    }

    /// When so much work is done that is begun at `start`, inside the window at `place`.
    pub(crate) fn end(&self, place: usize, start: i64, work: i64) -> Option<i64> {
        let first = self.open.get(place)?;
        let done = first.until.saturating_sub(first.to.saturating_sub(start)).saturating_add(work);
        if done <= first.until {
            return Some(start.saturating_add(work));
        }
        let rest = self.open.get(place..)?;
        let last = rest.get(rest.partition_point(|it| it.until < done))?;
        Some(last.to.saturating_sub(last.until.saturating_sub(done)))
    }
}

/// The longest free time from an instant on of those who do a step that must be done in one go, where it may take longer
/// than that when it is slow: an error of its estimate. Nobody named, or without any free hours, is another matter.
pub fn longer_than_a_window(shop: &Shop, step: &Step, from: Instant) -> Option<Seconds> {
    let slow = step.slow.or_else(|| step.usual.map(|usual| estimates::ends_of(usual)[1]));
    let slow = slow.filter(|_| step.one_go)?;
    let longest = Calendar::longest_of(shop, &step.who, step.any, from);
    (!longest.is_zero() && slow > Dec::from(longest.in_hours())).then_some(longest)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{fixture::fixture, measure::When};

    fn at(text: &str) -> Instant {
        When::parse(text).unwrap().instant
    }

    #[track_caller]
    fn check(lines: &str, from: &str, want: &[&str]) {
        let it = fixture(lines);
        let shop = it.shop();
        let calendar = Calendar::of_person(&shop, it.id("Ana"), at(from), &[]);
        let said = calendar.windows().take(want.len()).map(|(from, to)| {
            let text = |at| shop.zone.when(at).to_string();
            format!("{} {}", text(from).get(5..16).unwrap(), text(to).get(5..16).unwrap())
        });
        assert_eq!(said.collect::<Vec<_>>(), want);
    }

    #[test]
    fn one_go_that_no_free_time_holds_is_told_and_nobody_free_is_not() {
        let it = fixture(
            "
            person Ana 26 free wed/18:00-21:00,sat/09:00-13:00
            person Bo 22 free sat/10:00-19:00
            person Cy 20
            build trays
            step fits trays glue-up who Ana hours ,2,4 one-go
            step slow trays glue-up who Ana hours ,2,5 one-go
            step usual trays glue-up who Ana hours ,3, one-go
            step broken trays glue-up who Ana hours ,2,5
            step both trays glue-up who Ana,Bo hours ,2,4 one-go
            step any trays glue-up who Ana,Bo any hours ,2,9 one-go
            step nobody trays glue-up hours ,2,9 one-go
            step unfree trays glue-up who Cy hours ,2,9 one-go",
        );
        let shop = it.shop();
        let told = |name: &str| {
            let step = &shop.steps.get(&it.id(name)).unwrap().body;
            longer_than_a_window(&shop, step, at("2026-02-01T00:00:00+00:00")).map(|it| it.0 / 3600)
        };
        let all = ["fits", "slow", "usual", "broken", "both", "any", "nobody", "unfree"].map(told);
        // Usual alone: a slow one takes five hours. Both are free together for three.
        assert_eq!(all, [None, Some(4), Some(4), None, Some(3), None, None, None]);
    }

    #[test]
    fn weekdays_days_off_and_extra_time_make_the_windows() {
        let ana = "person Ana 26 free wed/18:00-21:00,sat/09:00-13:00,sat/14:00-16:00";
        let from = "2026-02-01T00:00:00Z";
        check(ana, from, &["02-04T18:00 02-04T21:00", "02-07T09:00 02-07T13:00", "02-07T14:00 02-07T16:00"]);
        let off = format!("{ana}\n off Ana 2026-02-04");
        check(&off, from, &["02-07T09:00 02-07T13:00"]);
        let week = format!("{ana}\n off Ana 2026-02-04 to 2026-02-10");
        check(&week, from, &["02-11T18:00 02-11T21:00"]);
        let extra = format!("{ana}\n off Ana 2026-02-03 but 19:00-20:00,20:00-20:30");
        check(&extra, from, &["02-03T19:00 02-03T20:30", "02-04T18:00 02-04T21:00"]);
        // A day off wins.
        check(&format!("{extra}\n off Ana 2026-02-03"), from, &["02-04T18:00 02-04T21:00"]);
    }

    #[test]
    fn a_window_that_has_begun_is_what_is_left_of_it_and_one_may_run_over_midnight() {
        let ana = "person Ana 26 free tue/22:00-02:00";
        check(ana, "2026-02-01T00:00:00Z", &["02-03T22:00 02-04T02:00"]);
        check(ana, "2026-02-04T01:00:00Z", &["02-04T01:00 02-04T02:00", "02-10T22:00 02-11T02:00"]);
    }

    #[test]
    fn work_goes_on_in_the_next_window_and_ends_where_the_hours_are_used_up() {
        let window = |from, to| (Instant(from), Instant(to));
        let calendar = Calendar::of(vec![window(100, 200), window(300, 350), window(350, 400)]);
        assert_eq!(calendar.longest(), Seconds(100));
        assert_eq!(calendar.end(0, 150, 50), Some(200));
        assert_eq!(calendar.end(0, 150, 51), Some(301));
        assert_eq!(calendar.end(0, 100, 200), Some(400));
        assert_eq!(calendar.end(0, 100, 201), None);
        assert_eq!(calendar.between(Instant(150), Instant(320)), Seconds(70));
        let other = Calendar::of(vec![window(0, 120), window(180, 310), window(390, 500)]);
        let both: Vec<_> = calendar.and(&other).windows().collect();
        assert_eq!(both, [window(100, 120), window(180, 200), window(300, 310), window(390, 400)]);
    }
}
