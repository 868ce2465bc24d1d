//! The zone table against the IANA tz database, by way of chrono-tz.
//!
//! The table is filled as the program fills it from the browser (`probing`), and then compared with the library.

#[path = "../../app/core/examples/cost_sheet/zones.rs"]
mod probing;

use benchslate_core::measure::{Day, Instant, Offset, TimeOfDay, When};
use chrono::{DateTime, Datelike, LocalResult, NaiveDate, TimeZone, Timelike};
use chrono_tz::Tz;
pub use probing::probed;
use probing::{FIRST, LAST, library_offset};

const HALF_HOUR_STEP: usize = 1_800;
fn day(year: i32, month: u32, date: u32) -> Day {
    Day::of(year, month, date).expect("a day")
}

fn time(hour: u8, minute: u8) -> TimeOfDay {
    TimeOfDay::of(hour, minute, 0).expect("a time")
}

/// Hours between two local times of a zone.
#[track_caller]
fn check_hours(tz: Tz, from: (Day, TimeOfDay), to: (Day, TimeOfDay), want: &str) {
    let zone = probed(tz);
    let length = zone.at(to.0, to.1).since(zone.at(from.0, from.1));
    assert_eq!(length.in_hours().shown_trimmed(), want, "{}", tz.name());
}

const COMPARED: [Tz; 6] = [
    Tz::America__Toronto,
    Tz::Europe__Dublin,
    Tz::Australia__Lord_Howe,
    Tz::Africa__Casablanca,
    Tz::Asia__Kathmandu,
    Tz::America__Santiago,
];

// Source: library — chrono-tz 0.10 (IANA tz database): every half hour of 22 years in six zones.
#[test]
fn every_half_hour_has_the_local_time_of_the_library() {
    for tz in COMPARED {
        let zone = probed(tz);
        for instant in (FIRST..LAST).step_by(HALF_HOUR_STEP) {
            let offset = zone.offset(Instant(instant));
            assert_eq!(offset, Offset(library_offset(tz, instant)), "{} at {instant}", tz.name());
        }
    }
}

// Source: library — chrono-tz 0.10: local day and time of day, every 11 hours.
#[test]
fn local_days_and_times_are_the_library_s() {
    for tz in COMPARED {
        let zone = probed(tz);
        for instant in (FIRST..LAST).step_by(11 * 3_600) {
            let local =
                tz.from_utc_datetime(&DateTime::from_timestamp(instant, 0).expect("fits").naive_utc());
            let want =
                (day(local.year(), local.month(), local.day()), i64::from(local.num_seconds_from_midnight()));
            let (got_day, got_time) = zone.local(Instant(instant));
            assert_eq!((got_day, got_time.seconds()), want, "{} at {instant}", tz.name());
        }
    }
}

// Source: library — chrono-tz 0.10: local time to instant, the earlier where it comes twice.
// DIFFERENCE: the library has no answer where the clock jumps over a time; we go on by the jump.
#[test]
fn local_times_lead_to_the_instants_of_the_library() {
    for tz in COMPARED {
        let zone = probed(tz);
        let mut date = NaiveDate::from_ymd_opt(2015, 1, 2).expect("a date");
        while date.year() < 2036 {
            for half_hour in 0..48_u32 {
                let local = date.and_hms_opt(half_hour / 2, half_hour % 2 * 30, 0).expect("a time");
                let clock = time(
                    u8::try_from(half_hour / 2).expect("small"),
                    u8::try_from(half_hour % 2 * 30).expect("small"),
                );
                let got = zone.at(day(date.year(), date.month(), date.day()), clock).0;
                let want = match tz.from_local_datetime(&local) {
                    LocalResult::Single(one) => one.timestamp(),
                    LocalResult::Ambiguous(one, other) => one.timestamp().min(other.timestamp()),
                    LocalResult::None => {
                        local.and_utc().timestamp() - i64::from(library_offset(tz, got - 86_400))
                    }
                };
                assert_eq!(got, want, "{} {local}", tz.name());
            }
            date = date.succ_opt().expect("a date");
        }
    }
}

// Source: library — chrono-tz 0.10: days cut at local midnight, where it is skipped (Santiago) and where it is not.
#[test]
fn each_day_starts_where_the_last_second_of_the_day_before_ends() {
    for tz in COMPARED {
        let zone = probed(tz);
        let mut this = day(2016, 1, 1);
        while this.year() < 2030 {
            let start = zone.start_of(this);
            assert_eq!(zone.day(start), this, "{} {this}", tz.name());
            assert_eq!(zone.day(Instant(start.0 - 1)), this.pred(), "{} {this}", tz.name());
            this = this.succ();
        }
    }
}

// Source: library — chrono-tz 0.10, which holds the last rules on beyond the table: every 90 minutes from 2037 to 2060.
#[test]
fn beyond_the_table_the_last_rule_repeats() {
    let end = 2_840_140_800; // 1 January 2060
    for tz in [
        Tz::America__Toronto,
        Tz::Europe__Dublin,
        Tz::Australia__Lord_Howe,
        Tz::Asia__Kathmandu,
        Tz::America__Santiago,
    ] {
        let zone = probed(tz);
        for instant in (LAST..end).step_by(3 * HALF_HOUR_STEP) {
            let offset = zone.offset(Instant(instant));
            assert_eq!(offset, Offset(library_offset(tz, instant)), "{} at {instant}", tz.name());
        }
    }
}

// Source: published — IANA tz database: Toronto 2026-03-08 02:00 to 03:00 and 2026-11-01 02:00 to 01:00.
#[test]
fn an_hour_is_lost_and_won_in_toronto() {
    let (spring, autumn) = (day(2026, 3, 8), day(2026, 11, 1));
    check_hours(Tz::America__Toronto, (spring, time(1, 30)), (spring, time(3, 30)), "1");
    check_hours(Tz::America__Toronto, (autumn, time(0, 30)), (autumn, time(2, 30)), "3");
    check_hours(Tz::America__Toronto, (spring, time(0, 0)), (spring.succ(), time(0, 0)), "23");
    check_hours(Tz::America__Toronto, (autumn, time(0, 0)), (autumn.succ(), time(0, 0)), "25");
}

// Source: published — IANA tz database: Dublin 2026-03-29 01:00 to 02:00 and 2026-10-25 02:00 to 01:00.
#[test]
fn an_hour_is_lost_and_won_in_dublin() {
    let (spring, autumn) = (day(2026, 3, 29), day(2026, 10, 25));
    check_hours(Tz::Europe__Dublin, (spring, time(0, 30)), (spring, time(2, 30)), "1");
    check_hours(Tz::Europe__Dublin, (autumn, time(0, 30)), (autumn, time(2, 30)), "3");
}

// Source: published — IANA tz database: Lord Howe 2026-10-04 02:00 to 02:30 and 2026-04-05 02:00 to 01:30.
#[test]
fn half_an_hour_is_lost_and_won_on_lord_howe() {
    let (spring, autumn) = (day(2026, 10, 4), day(2026, 4, 5));
    check_hours(Tz::Australia__Lord_Howe, (spring, time(1, 30)), (spring, time(3, 30)), "1.5");
    check_hours(Tz::Australia__Lord_Howe, (autumn, time(1, 0)), (autumn, time(3, 0)), "2.5");
}

// Source: published — IANA tz database, Toronto: 02:30 is jumped over on 2026-03-08, 01:30 comes twice on 2026-11-01.
#[test]
fn a_time_that_is_jumped_over_goes_forward_and_one_that_comes_twice_is_the_earlier() {
    let zone = probed(Tz::America__Toronto);
    let jumped = zone.at(day(2026, 3, 8), time(2, 30));
    assert_eq!(zone.when(jumped).to_string(), "2026-03-08T03:30:00-04:00");
    let twice = zone.at(day(2026, 11, 1), time(1, 30));
    assert_eq!(zone.when(twice).to_string(), "2026-11-01T01:30:00-04:00");
}

// Source: library — chrono 0.4 writes and reads RFC 3339; both ways agree.
#[test]
fn stored_instants_are_rfc_3339() {
    let zone = probed(Tz::America__Toronto);
    for instant in (FIRST..LAST).step_by(1_234_567) {
        let text = zone.when(Instant(instant)).to_string();
        assert_eq!(DateTime::parse_from_rfc3339(&text).map(|read| read.timestamp()), Ok(instant));
        let written = Tz::Asia__Kathmandu.timestamp_opt(instant, 0).single().expect("one").to_rfc3339();
        assert_eq!(When::parse(&written).map(|when| when.instant), Ok(Instant(instant)));
    }
}
