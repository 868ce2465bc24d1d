//! A build's plan as it is drawn: work on its day, what dries between, weeks, and where an instant stands on the sheet.
//!
//! One scale for all of it: the sheet is as wide as its days from today on, each as wide as the other also where the
//! clock changes. Floating point: places on a sheet, 0 at its left end and 1 at its right.
#![allow(clippy::float_arithmetic, reason = "places on a sheet")]

use super::{schedule::Plan, two_dates::is_film};
use crate::{
    journal::{Id, Shop, kinds::Bearer},
    measure::{Day, InOrder, Instant, Map, Seconds, Weekday},
    timing::drying::{self, Dries},
};

/// The longest sheet, in days: past it dates stand at its end.
const MOST_DAYS: i64 = 366;
/// The shortest.
const LEAST_DAYS: i64 = 14;

/// Work of one day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DayWork {
    /// Left end of its day.
    pub from: f64,
    /// On the film; else on the piece.
    pub film: bool,
    /// Hours of everybody, of the highest bar.
    pub height: f64,
    /// The step that most of it is.
    pub step: Id,
    /// So long.
    pub hours: Seconds,
}

/// What stands on the sheet.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Drawn {
    /// The first day.
    pub first: Option<Day>,
    /// How wide a day is.
    pub day: f64,
    /// Work, by day, the piece before the film.
    pub work: Vec<DayWork>,
    /// Drying: from and to.
    pub dries: Vec<(f64, f64)>,
    /// First days of weeks, as many as have room for their words.
    pub weeks: Vec<(f64, Day)>,
    /// Days of rest as the week has them: from and to.
    pub ends_of_week: Vec<(f64, f64)>,
    /// Now.
    pub now: f64,
    from: i64,
    days: i64,
}

/// So many words of weeks have room, at most.
const MOST_WEEKS: i64 = 4;

impl Plan {
    /// The sheet of a build, wide enough for `dates`.
    pub fn drawn(&self, shop: &Shop, build: Id, dates: &[Instant]) -> Drawn {
        let zone = &shop.zone;
        let first = zone.day(self.now);
        let ends = self.steps.iter().filter(|it| it.build == build).map(|it| it.next);
        let last =
            ends.chain(dates.iter().copied()).map(|it| zone.day(it).days_since(first)).max().unwrap_or(0);
        let days = last.saturating_add(3).clamp(LEAST_DAYS, MOST_DAYS);
        let mut sheet = Drawn { first: Some(first), from: first.since_1970(), days, ..Drawn::default() };
        sheet.day = 1.0 / whole(days);
        sheet.now = sheet.place(shop, self.now);
        self.weeks(&mut sheet, first);
        self.work(&mut sheet, shop, build);
        let own = self.steps.iter().filter(|it| it.build == build && it.next > it.end);
        let planned = own.map(|it| (it.end, it.next));
        // What was done before dries on.
        let mine = |it: &Dries| it.bearer == Bearer::Build(build) && it.dry > self.now;
        let begun = drying::dries(shop).into_iter().filter(mine).map(|it| (self.now, it.dry));
        let all = begun.chain(planned);
        sheet.dries = all.map(|(from, to)| (sheet.place(shop, from), sheet.place(shop, to))).collect();
        sheet
    }

    fn weeks(&self, sheet: &mut Drawn, first: Day) {
        let to_monday = i64::from(7_u8.saturating_sub(first.weekday().after_monday()) % 7);
        let weeks = sheet.days.saturating_sub(to_monday).saturating_add(6) / 7;
        // Every week, every second, every fourth: as there is room.
        let every =
            [1, 2, 4, 8, 13].into_iter().find(|it| weeks <= MOST_WEEKS.saturating_mul(*it)).unwrap_or(26);
        let mut ahead = to_monday;
        let mut at = 0_i64;
        while ahead < sheet.days {
            if at.checked_rem(every) == Some(0) {
                sheet.weeks.push((whole(ahead) * sheet.day, first.plus_days(ahead)));
            }
            ahead = ahead.saturating_add(7);
            at = at.saturating_add(1);
        }
        let rest = (0..sheet.days).filter(|ahead| first.plus_days(*ahead).weekday() == Weekday::Sunday);
        sheet.ends_of_week =
            rest.map(|it| (whole(it) * sheet.day, whole(it.saturating_add(1)) * sheet.day)).collect();
    }

    fn work(&self, sheet: &mut Drawn, shop: &Shop, build: Id) {
        // By day and side: the whole, and each step's part of it.
        let mut sums: Map<(i64, bool), Vec<(Id, i64)>> = Map::new();
        for it in self.steps.iter().filter(|it| it.build == build) {
            let film = is_film(shop, it.step);
            let people = i64::try_from(it.people.len().max(1)).unwrap_or(1);
            for (from, to) in &it.pieces {
                let mut at = *from;
                while at < *to {
                    let day = shop.zone.day(at);
                    let until = shop.zone.start_of(day.succ()).min(*to);
                    let ahead = day.since_1970().saturating_sub(sheet.from);
                    let seconds = until.since(at).0.saturating_mul(people);
                    sums.entry((ahead, film)).or_default().push((it.step, seconds));
                    if until <= at {
                        break;
                    }
                    at = until;
                }
            }
        }
        let sum = |parts: &[(Id, i64)]| parts.iter().map(|it| it.1).fold(0_i64, i64::saturating_add);
        let highest = sums.iter().map(|(_, parts)| sum(parts)).max().unwrap_or(0).max(1);
        for ((ahead, film), parts) in &sums {
            let hours = sum(parts);
            let most = parts.iter().max_by_key(|(_, seconds)| *seconds).map(|it| it.0);
            if let Some(step) = most.filter(|_| *ahead < sheet.days) {
                let (from, height) = (whole(*ahead) * sheet.day, whole(hours) / whole(highest));
                sheet.work.push(DayWork { from, film: *film, height, step, hours: Seconds(hours) });
            }
        }
        sheet.work.order_by(|a, b| a.film.cmp(&b.film).then(a.from.total_cmp(&b.from)));
    }
}

impl Drawn {
    /// Where an instant stands; before today at the left end, past the sheet at the right.
    pub fn place(&self, shop: &Shop, at: Instant) -> f64 {
        let day = shop.zone.day(at);
        let (begins, ends) = (shop.zone.start_of(day), shop.zone.start_of(day.succ()));
        let length = ends.since(begins).0.max(1);
        let within = whole(at.since(begins).0) / whole(length);
        let ahead = whole(day.since_1970().saturating_sub(self.from));
        ((ahead + within) * self.day).clamp(0.0, 1.0)
    }
}

/// A count as a place: far below what a double holds exactly.
fn whole(count: i64) -> f64 {
    i32::try_from(count).map_or(0.0, f64::from)
}
