//! The shop's zone: a table of offset changes, and the cutting of time into local days.
//!
//! `core` holds no zone data. The table is asked of the browser (or of a library in tests) and
//! passed in. Source: IANA tz database, by way of whoever fills the table.
//! Not here: today, or which zone the shop is in.

use super::{Day, Instant, Offset, TimeOfDay, When, clock_text::DAY, instant::local};

/// A zone as a table.
///
/// The first row holds for everything before the second, whatever its instant. A last row that
/// repeats the offset before it marks how far the table was asked: beyond it the rule of the last
/// years repeats. Without such a row the last offset holds for good.
#[derive(Clone, Debug, Default, PartialEq, Eq, Hash)]
pub struct Zone {
    /// Name in the IANA tz database, such as `America/Toronto`.
    pub name: String,
    /// Instants of change in seconds since 1970 UTC, rising, each with the offset from then on in
    /// seconds east. Empty: UTC.
    pub changes: Vec<(i64, i32)>,
}

impl Zone {
    /// UTC under its own name.
    pub fn utc() -> Zone {
        Zone { name: "UTC".to_owned(), changes: Vec::new() }
    }

    /// The offset that holds at an instant.
    pub fn offset(&self, instant: Instant) -> Offset {
        self.table_offset(self.twin(instant).unwrap_or(instant))
    }

    /// The instant together with the offset that holds then.
    pub fn when(&self, instant: Instant) -> When {
        When { instant, offset: self.offset(instant) }
    }

    /// The local day of an instant.
    pub fn day(&self, instant: Instant) -> Day {
        self.local(instant).0
    }

    /// The local day and time of an instant.
    pub fn local(&self, instant: Instant) -> (Day, TimeOfDay) {
        local(instant, self.offset(instant))
    }

    /// The first instant of a local day, also where midnight is skipped or comes twice.
    pub fn start_of(&self, day: Day) -> Instant {
        self.at(day, TimeOfDay::MIDNIGHT)
    }

    /// The last second of a local day.
    pub fn end_of(&self, day: Day) -> Instant {
        Instant(self.start_of(day.succ()).0.saturating_sub(1))
    }

    /// The instant of a local day and time. Where the clock jumps over it, as far after the jump
    /// as it was typed after its start; where it comes twice, the earlier.
    pub fn at(&self, day: Day, time: TimeOfDay) -> Instant {
        let clock = day.since_1970().saturating_mul(DAY).saturating_add(time.seconds());
        let by = |offset: Offset| Instant(clock.saturating_sub(i64::from(offset.0)));
        // No offset is a day wide, so these two see the change from either side.
        let before = self.offset(Instant(clock.saturating_sub(DAY)));
        let after = self.offset(Instant(clock.saturating_add(DAY)));
        if self.offset(by(before)) == before || self.offset(by(after)) != after {
            by(before)
        } else {
            by(after)
        }
    }

    fn table_offset(&self, instant: Instant) -> Offset {
        let after = self.changes.partition_point(|(from, _)| *from <= instant.0);
        let row = self.changes.get(after.saturating_sub(1));
        Offset(row.map_or(0, |(_, offset)| *offset))
    }

    /// Beyond the end of the table: the like instant of the last year in it whose first of March
    /// falls on the same weekday. Rules such as "the last Sunday of October" then fall on the same
    /// date. January and February are winter or summer throughout in either hemisphere.
    fn twin(&self, instant: Instant) -> Option<Instant> {
        let end = self.end().filter(|end| instant.0 >= *end)?;
        let (day, time) = local(instant, Offset(0));
        let last = Day::from_1970(end.div_euclid(DAY)).year().saturating_sub(1);
        let march = Day::of(day.year(), 3, 1)?.weekday();
        let year = (last.saturating_sub(11)..=last)
            .rev()
            .find(|year| Day::of(*year, 3, 1).is_some_and(|first| first.weekday() == march))?;
        let twin = Day::of(year, day.month(), day.day_of_month()).or_else(|| Day::of(year, 2, 28))?;
        Some(Instant(twin.since_1970().saturating_mul(DAY).saturating_add(time.seconds())))
    }

    /// Where the table says that it ends.
    fn end(&self) -> Option<i64> {
        match self.changes.as_slice() {
            [.., (_, before), (end, last)] if before == last => Some(*end),
            _ => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// Eastern time in 2026, with the end of the table said.
    fn eastern() -> Zone {
        let changes = vec![
            (i64::MIN, -18_000),
            (1_772_953_200, -14_400), // 8 March, 02:00 to 03:00
            (1_793_512_800, -18_000), // 1 November, 02:00 to 01:00
            (1_798_761_600, -18_000), // asked until 1 January 2027
        ];
        Zone { name: "America/Toronto".to_owned(), changes }
    }

    #[track_caller]
    fn check(day: &str, hour: u8, minute: u8, want: &str) {
        let zone = eastern();
        let time = TimeOfDay::of(hour, minute, 0).expect("a time");
        let at = zone.at(Day::parse(day).expect(day), time);
        assert_eq!(zone.when(at).to_string(), want);
    }

    #[test]
    fn a_local_time_is_one_instant_even_where_clocks_change() {
        check("2026-03-08", 1, 59, "2026-03-08T01:59:00-05:00");
        check("2026-03-08", 2, 30, "2026-03-08T03:30:00-04:00");
        check("2026-03-08", 3, 0, "2026-03-08T03:00:00-04:00");
        check("2026-11-01", 1, 30, "2026-11-01T01:30:00-04:00");
        check("2026-11-01", 2, 0, "2026-11-01T02:00:00-05:00");
        check("2026-07-01", 0, 0, "2026-07-01T00:00:00-04:00");
    }

    #[test]
    fn a_day_of_a_change_has_23_or_25_hours() {
        let hours = |day| {
            let (zone, day) = (eastern(), Day::parse(day).expect(day));
            zone.start_of(day.succ()).since(zone.start_of(day)).0 / 3600
        };
        assert_eq!((hours("2026-03-07"), hours("2026-03-08"), hours("2026-11-01")), (24, 23, 25));
    }

    #[test]
    fn a_zone_without_a_table_is_utc() {
        let zone = Zone::default();
        assert_eq!(zone.offset(Instant(0)), Offset(0));
        assert_eq!(zone.day(Instant(86_399)).to_string(), "1970-01-01");
    }

    #[test]
    fn without_an_end_the_last_offset_holds_for_good() {
        let mut zone = eastern();
        zone.changes.pop();
        assert_eq!(zone.offset(Instant(4_000_000_000)), Offset(-18_000));
    }

    proptest! {
        #[test]
        fn no_instant_and_no_table_makes_it_panic(instant: i64, changes in prop::collection::vec((any::<i64>(), any::<i32>()), 0..4)) {
            let zone = Zone { name: String::new(), changes };
            for zone in [zone, eastern()] {
                let (day, time) = zone.local(Instant(instant));
                let _ = (zone.at(day, time), zone.start_of(day), zone.when(Instant(instant)).to_string());
            }
        }

        #[test]
        fn an_instant_s_local_time_leads_back_to_it_but_where_it_comes_twice(instant in 1_700_000_000_i64..1_798_000_000) {
            let zone = eastern();
            let (day, time) = zone.local(Instant(instant));
            let back = zone.at(day, time).0;
            prop_assert!(back == instant || back == instant - 3_600);
        }
    }
}
