//! A calendar day, and a day as a person types it.
//!
//! Days, weeks and months are cut in the shop's zone by `zone`; here a day is only a date.
//! Source: proleptic Gregorian calendar, ISO 8601 text. Not here: today, which is passed in.

mod typed;

pub use typed::{typed, typed_near};

use super::{Accepts, Refusal, Why, limits};
use chrono::{Datelike, Days, NaiveDate};
use serde::{Deserialize, Deserializer, Serialize, Serializer, de};
use std::fmt;

/// A calendar day between the first and the last year of [`limits`], written `2026-11-20`.
///
/// ```
/// # use benchslate_core::measure::Day;
/// let day = Day::parse("2026-02-28").unwrap();
/// assert_eq!(day.succ().to_string(), "2026-03-01");
/// assert_eq!(day.succ().days_since(day), 1);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Day(NaiveDate);

/// A day of the week, from Monday as in ISO 8601.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Weekday {
    /// Monday.
    Monday,
    /// Tuesday.
    Tuesday,
    /// Wednesday.
    Wednesday,
    /// Thursday.
    Thursday,
    /// Friday.
    Friday,
    /// Saturday.
    Saturday,
    /// Sunday.
    Sunday,
}

impl Weekday {
    /// All seven, from Monday.
    pub const ALL: [Weekday; 7] = [
        Weekday::Monday,
        Weekday::Tuesday,
        Weekday::Wednesday,
        Weekday::Thursday,
        Weekday::Friday,
        Weekday::Saturday,
        Weekday::Sunday,
    ];

    /// Days after Monday, 0 to 6.
    pub fn after_monday(self) -> u8 {
        match self {
            Weekday::Monday => 0,
            Weekday::Tuesday => 1,
            Weekday::Wednesday => 2,
            Weekday::Thursday => 3,
            Weekday::Friday => 4,
            Weekday::Saturday => 5,
            Weekday::Sunday => 6,
        }
    }
}

impl Day {
    /// A day by its numbers. `None`: no such day, or a year beyond the limits.
    pub fn of(year: i32, month: u32, day: u32) -> Option<Day> {
        let within = (limits::FIRST_YEAR..=limits::LAST_YEAR).contains(&year);
        NaiveDate::from_ymd_opt(year, month, day).filter(|_| within).map(Day)
    }

    /// Reads `2026-11-20` and nothing else.
    ///
    /// # Errors
    /// Another form, no such day, or a year beyond the limits ([`Why::AnotherCentury`]).
    pub fn parse(text: &str) -> Result<Day, Refusal> {
        let refused = |why, at| Refusal { why, accepts: Accepts::StoredDay, at };
        for (at, found) in text.chars().enumerate() {
            let fits = if at == 4 || at == 7 { found == '-' } else { found.is_ascii_digit() && at < 10 };
            if !fits {
                return Err(refused(Why::Unexpected { found }, Some(at)));
            }
        }
        let number = |from: usize, to: usize| text.get(from..to).and_then(|part| part.parse::<u32>().ok());
        let (Some(year), Some(month), Some(day)) = (number(0, 4), number(5, 7), number(8, 10)) else {
            let why = if text.is_empty() { Why::Empty } else { Why::Unfinished };
            return Err(refused(why, None));
        };
        in_year(i32::try_from(year).unwrap_or(0), month, day).map_err(|why| refused(why, None))
    }

    /// The year.
    pub fn year(self) -> i32 {
        self.0.year()
    }

    /// The month, 1 to 12.
    pub fn month(self) -> u32 {
        self.0.month()
    }

    /// The day of the month, 1 to 31.
    pub fn day_of_month(self) -> u32 {
        self.0.day()
    }

    /// The day of the week.
    pub fn weekday(self) -> Weekday {
        match self.0.weekday() {
            chrono::Weekday::Mon => Weekday::Monday,
            chrono::Weekday::Tue => Weekday::Tuesday,
            chrono::Weekday::Wed => Weekday::Wednesday,
            chrono::Weekday::Thu => Weekday::Thursday,
            chrono::Weekday::Fri => Weekday::Friday,
            chrono::Weekday::Sat => Weekday::Saturday,
            chrono::Weekday::Sun => Weekday::Sunday,
        }
    }

    /// The day after; the last day that there is stays.
    pub fn succ(self) -> Day {
        self.plus_days(1)
    }

    /// The day before; the first day that there is stays.
    pub fn pred(self) -> Day {
        self.plus_days(-1)
    }

    /// So many days later, or earlier below zero; stops at the first and the last day that there is.
    pub fn plus_days(self, days: i64) -> Day {
        let step = Days::new(days.unsigned_abs());
        let moved = if days < 0 { self.0.checked_sub_days(step) } else { self.0.checked_add_days(step) };
        let (first, last) = ends();
        let beyond = if days < 0 { first } else { last };
        moved.map_or(beyond, Day).clamp(first, last)
    }

    /// Days from `earlier` to this one; below zero where it is later.
    pub fn days_since(self, earlier: Day) -> i64 {
        self.0.signed_duration_since(earlier.0).num_days()
    }

    /// The first day of its month.
    pub fn first_of_month(self) -> Day {
        self.0.with_day(1).map_or(self, Day)
    }

    /// The first day of the month after.
    pub fn first_of_next_month(self) -> Day {
        self.first_of_month().plus_days(31).first_of_month()
    }

    /// The latest `first` day of the week that is not after this day.
    pub fn first_of_week(self, first: Weekday) -> Day {
        let back = i64::from(self.weekday().after_monday()).saturating_sub(i64::from(first.after_monday()));
        self.plus_days(back.rem_euclid(7).saturating_neg())
    }

    /// Days since 1970-01-01.
    pub(crate) fn since_1970(self) -> i64 {
        self.0.signed_duration_since(NaiveDate::default()).num_days()
    }

    /// The day so many days since 1970-01-01; the first or last that there is beyond them.
    pub(crate) fn from_1970(days: i64) -> Day {
        Day(NaiveDate::default()).plus_days(days)
    }
}

impl fmt::Display for Day {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:04}-{:02}-{:02}", self.year(), self.month(), self.day_of_month())
    }
}

impl Serialize for Day {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Day {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Day, D::Error> {
        let text = <std::borrow::Cow<'de, str>>::deserialize(from)?;
        Day::parse(&text)
            .map_err(|_| de::Error::invalid_value(de::Unexpected::Str(&text), &"a day as in 2026-11-20"))
    }
}

/// A day of a year, or why there is none.
fn in_year(year: i32, month: u32, day: u32) -> Result<Day, Why> {
    if !(limits::FIRST_YEAR..=limits::LAST_YEAR).contains(&year) {
        return Err(Why::AnotherCentury { first: limits::FIRST_YEAR, last: limits::LAST_YEAR });
    }
    Day::of(year, month, day).ok_or(Why::NoSuchDay)
}

/// The first and the last day that there is.
fn ends() -> (Day, Day) {
    let day = |year, month, day| Day(NaiveDate::from_ymd_opt(year, month, day).unwrap_or_default());
    (day(limits::FIRST_YEAR, 1, 1), day(limits::LAST_YEAR, 12, 31))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn day(text: &str) -> Day {
        Day::parse(text).expect(text)
    }

    #[track_caller]
    fn refused(text: &str, why: Why, at: Option<usize>) {
        assert_eq!(Day::parse(text), Err(Refusal { why, accepts: Accepts::StoredDay, at }), "{text}");
    }

    #[test]
    fn a_stored_day_is_iso_8601_and_nothing_else() {
        let century = Why::AnotherCentury { first: 1900, last: 2200 };
        refused("", Why::Empty, None);
        refused("2026-11", Why::Unfinished, None);
        refused("2026-11-2", Why::Unfinished, None);
        refused("2026-11-201", Why::Unexpected { found: '1' }, Some(10));
        refused("2026/11/20", Why::Unexpected { found: '/' }, Some(4));
        refused("20 nov 2026", Why::Unexpected { found: ' ' }, Some(2));
        refused("2026-1-20", Why::Unexpected { found: '-' }, Some(6));
        refused("2026-02-29", Why::NoSuchDay, None);
        refused("2026-00-10", Why::NoSuchDay, None);
        refused("1899-12-31", century, None);
        refused("2201-01-01", century, None);
        refused("٢٠٢٦-11-20", Why::Unexpected { found: '٢' }, Some(0));
        assert_eq!(day("2028-02-29").to_string(), "2028-02-29");
    }

    #[test]
    fn json_holds_a_day_as_text() {
        assert_eq!(serde_json::to_string(&day("2026-11-20")).ok().as_deref(), Some("\"2026-11-20\""));
        assert!(serde_json::from_str::<Day>("20261120").is_err());
        assert!(serde_json::from_str::<Day>("\"2026-02-30\"").is_err());
    }

    #[test]
    fn weeks_and_months_have_their_first_days() {
        let friday = day("2026-11-20");
        assert_eq!(friday.weekday(), Weekday::Friday);
        assert_eq!(friday.first_of_week(Weekday::Monday), day("2026-11-16"));
        assert_eq!(friday.first_of_week(Weekday::Sunday), day("2026-11-15"));
        assert_eq!(friday.first_of_week(Weekday::Friday), friday);
        assert_eq!(friday.first_of_week(Weekday::Saturday), day("2026-11-14"));
        assert_eq!(friday.first_of_month(), day("2026-11-01"));
        assert_eq!(day("2026-01-31").first_of_next_month(), day("2026-02-01"));
        assert_eq!(day("2026-12-31").first_of_next_month(), day("2027-01-01"));
        for (weekday, after) in Weekday::ALL.into_iter().zip(0..) {
            assert_eq!(weekday.after_monday(), after);
        }
    }

    #[test]
    fn days_stop_at_the_first_and_the_last() {
        assert_eq!(day("2200-12-31").succ(), day("2200-12-31"));
        assert_eq!(day("1900-01-01").pred(), day("1900-01-01"));
        assert_eq!(day("2026-01-01").plus_days(i64::MAX), day("2200-12-31"));
        assert_eq!(day("2026-01-01").plus_days(i64::MIN), day("1900-01-01"));
        assert_eq!(Day::from_1970(i64::MAX), day("2200-12-31"));
    }

    proptest! {
        #[test]
        fn days_between_add_up(a in 0_i64..80_000, b in 0_i64..80_000) {
            let (first, second) = (Day::from_1970(a), Day::from_1970(b));
            prop_assert_eq!(second.days_since(first), b - a);
            prop_assert_eq!(first.plus_days(b - a), second);
            prop_assert_eq!(first.succ().pred(), first);
        }
    }
}
