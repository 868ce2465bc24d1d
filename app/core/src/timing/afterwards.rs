//! Hours that are typed: logged after the work, or a start and an end put right to the minute.
//!
//! Never: a refusal of what overlaps; it is written, and `worked` says who gets the time.

use super::{Hand, acts, at_work};
use crate::{
    journal::{
        Body, Change, Id, On, Shop,
        kinds::{Bearer, Side, Span, Stretch},
        shop::Time,
    },
    measure::{Day, Instant, Seconds, TimeOfDay, Zone},
};

/// How the time was said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Said {
    /// How long, in whole minutes; when on that day is not known.
    Length(Seconds),
    /// From and to by the clock of that day.
    Times(TimeOfDay, TimeOfDay),
    /// From; it still runs.
    Since(TimeOfDay),
}

/// A stretch as a form says it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Logged {
    /// The day it began.
    pub day: Day,
    /// When, or how long.
    pub said: Said,
    /// Who.
    pub person: Id,
    /// What kind of work.
    pub stage: Id,
    /// What bears it.
    pub bearer: Bearer,
    /// What it is for.
    pub side: Side,
    /// Making jigs, templates, the design.
    pub one_off: bool,
    /// Words.
    pub note: Option<String>,
}

impl Logged {
    /// The entry to be written. None: it ends before it begins, or, where it is new, as it begins.
    ///
    /// `before`: the entry that this corrects. Its camera and breaks stay where they lie inside; one that
    /// ended days after it began still does.
    pub fn stretch(&self, shop: &Shop, before: Option<&Stretch>) -> Option<Stretch> {
        let zone = &shop.zone;
        let Logged { day, said, person, stage, bearer, side, one_off, note } = self.clone();
        let side = if matches!(bearer, Bearer::Lot(_)) { Side::Piece } else { side };
        let (from, to, minutes) = match said {
            Said::Length(length) => (None, None, Some(whole_minutes(length))),
            Said::Since(from) => (Some(zone.at(day, from)), None, None),
            Said::Times(from, to) => {
                let last = day.plus_days(before.map_or(0, |before| days_long(zone, before)));
                (Some(zone.at(day, from)), Some(zone.at(last, to)), None)
            }
        };
        // A clock that was stopped in its first minute has both in one: that may stay.
        if from.zip(to).is_some_and(|(from, to)| to < from || (to == from && before.is_none())) {
            return None;
        }
        let inside = |spans: &[Span]| {
            from.map_or_else(Vec::new, |from| {
                let within = |span: &&Span| {
                    span.from.instant >= from
                        && to.is_none_or(|to| span.to.is_some_and(|end| end.instant <= to))
                };
                spans.iter().filter(within).copied().collect()
            })
        };
        let from_when = from.map(|from| zone.when(from));
        // Of other work, or for something else, it is another step.
        let same = before.filter(|before| before.stage == stage && before.bearer == bearer);
        let step = same.map_or_else(|| at_work::step_for(shop, bearer, stage, person), |before| before.step);
        Some(Stretch {
            on: from_when.map_or(On::Day(day), On::At),
            person,
            stage,
            bearer,
            side,
            from: from_when,
            to: to.map(|to| zone.when(to)),
            minutes,
            pauses: before.map(|before| inside(&before.pauses)).unwrap_or_default(),
            rolling: before.map(|before| inside(&before.rolling)).unwrap_or_default(),
            together: before.filter(|before| before.person == person).and_then(|before| before.together),
            step,
            still_running: before.and_then(|before| before.still_running),
            one_off,
            note,
        })
    }
}

/// The moment meant by a typed start: of that time of day the one nearest to `from`, the start as it
/// stands. None where it is after `end`, the end or now.
pub fn begun(zone: &Zone, from: Instant, end: Instant, time: TimeOfDay) -> Option<Instant> {
    let day = zone.day(from);
    let around = [day.pred(), day, day.succ()].map(|day| zone.at(day, time));
    let nearest = around.into_iter().min_by_key(|at| at.since(from).0.unsigned_abs())?;
    (nearest <= end).then_some(nearest)
}

/// The moment meant by a typed end: the first at that time of day since `from`, the start. None where it
/// has not come since.
pub fn ended(zone: &Zone, from: Instant, now: Instant, time: TimeOfDay) -> Option<Instant> {
    let day = zone.day(from);
    // A start with seconds is typed back without them.
    let from = from.minute();
    let first = [day, day.succ()].map(|day| zone.at(day, time)).into_iter().find(|at| *at >= from)?;
    (first <= now).then_some(first)
}

/// Whether a stretch shares time with another of the same person. An open one runs until `now`.
pub fn overlaps(shop: &Shop, entry: Id, now: Instant) -> bool {
    let span = |time: Time| match time {
        Time::Span(span) => Some((span.from, span.to.unwrap_or(now))),
        Time::Amount(_) => None,
    };
    let Some(mine) = shop.stretches.iter().find(|it| it.entry() == entry) else { return false };
    let Some((from, to)) = span(mine.time) else { return false };
    let others = shop.stretches.iter().filter(|it| it.person == mine.person && it.entry() != entry);
    others.filter_map(|it| span(it.time)).any(|(begun, ended)| begun < to && from < ended)
}

impl Hand<'_> {
    /// A start, an end, or both put right. What goes together with it goes along.
    pub fn put_right(&mut self, entry: Id, from: Option<Instant>, to: Option<Instant>) -> Vec<Change> {
        let mut changes = from.map(|from| self.begun_at(entry, from)).unwrap_or_default();
        let Some(to) = to else { return changes };
        for end in self.end_at(entry, to) {
            match changes.iter_mut().find(|change| change.entry == end.entry) {
                Some(change) => {
                    if let Some(Body::Stretch(begun)) = &change.body {
                        let stretch = acts::ended(begun.clone(), self.shop.zone.when(to));
                        *change = Change::write(end.entry, stretch);
                    }
                }
                None => changes.push(end),
            }
        }
        changes
    }
}

fn whole_minutes(length: Seconds) -> u32 {
    u32::try_from(length.0.div_euclid(60)).unwrap_or(u32::MAX)
}

/// On which day after its first a stretch ends.
fn days_long(zone: &Zone, stretch: &Stretch) -> i64 {
    let ends = stretch.from.zip(stretch.to);
    ends.map_or(0, |(from, to)| zone.day(to.instant).days_since(zone.day(from.instant)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::timing::clocks::tests::{ANA, BO, Bench, SAND, TRAYS, clock, plain, when};

    fn time(text: &str) -> TimeOfDay {
        crate::measure::clock_text::time_of_day(text).unwrap()
    }

    fn logged(said: Said) -> Logged {
        Logged {
            day: Day::parse("2026-11-20").unwrap(),
            said,
            person: ANA,
            stage: SAND,
            bearer: Bearer::Build(TRAYS),
            side: Side::Piece,
            one_off: false,
            note: None,
        }
    }

    fn stretch(said: Said, before: Option<&Stretch>) -> Option<Stretch> {
        logged(said).stretch(&Shop::default(), before)
    }

    #[test]
    fn a_length_is_minutes_on_a_day() {
        let it = stretch(Said::Length(Seconds(8100)), None).unwrap();
        assert_eq!(
            (it.minutes, it.from, it.on),
            (Some(135), None, On::Day(Day::parse("2026-11-20").unwrap()))
        );
    }

    #[test]
    fn from_and_to_are_moments_of_that_day() {
        let it = stretch(Said::Times(time("8:05"), time("10:00")), None).unwrap();
        assert_eq!((it.from, it.to, it.minutes), (Some(when("08:05")), Some(when("10:00")), None));
        assert_eq!(it.on, On::At(when("08:05")));
    }

    #[test]
    fn an_end_before_a_start_is_no_stretch() {
        assert_eq!(stretch(Said::Times(time("13:00"), time("10:00")), None), None);
    }

    #[test]
    fn no_time_at_all_is_nothing_to_log_but_may_stand_where_it_was() {
        let none = || Said::Times(time("10:00"), time("10:00"));
        assert_eq!(stretch(none(), None), None);
        let stopped = Stretch { to: Some(when("10:00")), ..plain(ANA, "10:00") };
        assert!(stretch(none(), Some(&stopped)).is_some());
    }

    #[test]
    fn hours_on_a_lot_are_of_the_piece() {
        let it = Logged { bearer: Bearer::Lot(TRAYS), side: Side::Film, ..logged(Said::Length(Seconds(60))) };
        assert_eq!(it.stretch(&Shop::default(), None).unwrap().side, Side::Piece);
    }

    #[test]
    fn a_correction_keeps_camera_and_breaks_that_lie_inside() {
        let span = |from, to| Span { from: when(from), to: Some(when(to)) };
        let before = Stretch {
            to: Some(when("12:00")),
            pauses: vec![span("08:10", "08:20"), span("10:00", "10:10")],
            rolling: vec![span("09:00", "09:40")],
            together: Some(TRAYS),
            ..plain(ANA, "08:00")
        };
        let it = stretch(Said::Times(time("8:30"), time("11")), Some(&before)).unwrap();
        assert_eq!(it.pauses, [span("10:00", "10:10")]);
        assert_eq!((it.rolling, it.together), (before.rolling.clone(), Some(TRAYS)));
        let other = Logged { person: BO, ..logged(Said::Times(time("8"), time("12"))) };
        assert_eq!(other.stretch(&Shop::default(), Some(&before)).unwrap().together, None);
        assert!(stretch(Said::Length(Seconds(3600)), Some(&before)).unwrap().pauses.is_empty());
    }

    #[test]
    fn a_stretch_past_midnight_still_ends_on_the_next_day() {
        let zone = Zone::utc();
        let next = zone.at(Day::parse("2026-11-21").unwrap(), time("2:00"));
        let before = Stretch { to: Some(zone.when(next)), ..plain(ANA, "22:00") };
        let it = stretch(Said::Times(time("21:30"), time("1:30")), Some(&before)).unwrap();
        assert_eq!(it.to.unwrap().to_string(), "2026-11-21T01:30:00+00:00");
    }

    #[test]
    fn a_typed_start_is_the_nearest_that_is_past() {
        let begun = |from, typed, now| begun(&Zone::utc(), clock(from), clock(now), time(typed));
        assert_eq!(begun("08:05", "7:30", "10:00"), Some(clock("07:30")));
        assert_eq!(begun("08:05", "8:40", "10:00"), Some(clock("08:40")));
        assert_eq!(begun("08:05", "11:00", "10:00"), None);
        let evening_before = Zone::utc().at(Day::parse("2026-11-19").unwrap(), time("23:40"));
        assert_eq!(begun("00:10", "23:40", "10:00"), Some(evening_before));
    }

    #[test]
    fn a_typed_end_is_the_first_since_the_start() {
        let ended = |from, typed, now| ended(&Zone::utc(), clock(from), clock(now), time(typed));
        assert_eq!(ended("08:05", "9:30", "10:00"), Some(clock("09:30")));
        assert_eq!(ended("08:05", "8:05", "10:00"), Some(clock("08:05")));
        assert_eq!(ended("08:05", "7:00", "10:00"), None);
        assert_eq!(ended("08:05", "11:00", "10:00"), None);
    }

    #[test]
    fn a_start_and_an_end_are_put_right_in_one_act() {
        let mut bench = Bench::new();
        let before = bench.log(ANA, "07:00", "08:00", &[]);
        let entry = bench.log(ANA, "08:00", "12:00", &[("11:00", "11:30")]);
        let (journal, shop) = (bench.journal.clone(), bench.shop());
        let mut fresh = || bench.fresh();
        let mut hand = Hand { journal: &journal, shop: &shop, now: clock("13:00"), fresh: &mut fresh };
        let changes = hand.put_right(entry, Some(clock("08:20")), Some(clock("11:10")));
        bench.write(&changes);
        let it = bench.stored(entry);
        assert_eq!((it.from, it.to), (Some(when("08:20")), Some(when("11:10"))));
        assert_eq!(it.pauses, [Span { from: when("11:00"), to: Some(when("11:10")) }]);
        // The stretch that it took over from still ends where it begins.
        assert_eq!(bench.stored(before).to, Some(when("08:20")));
    }

    #[test]
    fn stretches_of_one_person_overlap_and_those_that_touch_do_not() {
        let mut bench = Bench::new();
        let first = bench.log(ANA, "08:00", "09:00", &[]);
        let next = bench.log(ANA, "09:00", "10:00", &[]);
        let other = bench.log(BO, "08:30", "09:30", &[]);
        let across = |bench: &Bench, entry| overlaps(&bench.shop(), entry, clock("23:00"));
        assert!(!across(&bench, first) && !across(&bench, next) && !across(&bench, other));
        let open = bench.open(ANA, "09:30");
        assert!(across(&bench, open) && across(&bench, next) && !across(&bench, first));
    }
}
