//! Time of day, and how it is typed.
//!
//! `08:05`, `8.05`, `0805`, `8`, `8 05 pm`, `12:55 p.m.`. Noon is 12 pm, midnight 12 am.
//! Not here: which instant it is (`zone`), lengths of work (`duration`), how a locale writes it.

use super::{Accepts, Refusal, Why, number::refuse_minus, scan::Cursor};
use serde::{Deserialize, Deserializer, Serialize, Serializer, de};
use std::fmt;

/// Seconds in a day of 24 hours.
pub(crate) const DAY: i64 = 86_400;

/// A time on the wall clock, to the second: 00:00 to 23:59:59.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct TimeOfDay(i64);

impl TimeOfDay {
    /// The start of the day.
    pub const MIDNIGHT: TimeOfDay = TimeOfDay(0);

    /// By its numbers. `None`: no such time on a 24-hour clock.
    pub fn of(hour: u8, minute: u8, second: u8) -> Option<TimeOfDay> {
        if hour > 23 || minute > 59 || second > 59 {
            return None;
        }
        let minutes = i64::from(hour).saturating_mul(60).saturating_add(i64::from(minute));
        Some(TimeOfDay(minutes.saturating_mul(60).saturating_add(i64::from(second))))
    }

    /// So many seconds after midnight, by the clock; wraps at 24 hours.
    pub fn after_midnight(seconds: i64) -> TimeOfDay {
        TimeOfDay(seconds.rem_euclid(DAY))
    }

    /// Reads a stored time: `18:00` or `18:00:30`, and nothing else.
    ///
    /// # Errors
    /// Another form, or no such time.
    pub fn parse(text: &str) -> Result<TimeOfDay, Refusal> {
        let refused = || Refusal::whole(Why::Unfinished, Accepts::TimeOfDay);
        let read = time_of_day(text)?;
        // What is stored is written in one way only.
        if read.to_string() == text { Ok(read) } else { Err(refused()) }
    }

    /// Seconds after midnight by the clock.
    pub fn seconds(self) -> i64 {
        self.0
    }

    /// The hour, 0 to 23.
    pub fn hour(self) -> i64 {
        self.0 / 3600
    }

    /// The minute, 0 to 59.
    pub fn minute(self) -> i64 {
        self.0 / 60 % 60
    }

    /// The second, 0 to 59.
    pub fn second(self) -> i64 {
        self.0 % 60
    }
}

impl Serialize for TimeOfDay {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for TimeOfDay {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<TimeOfDay, D::Error> {
        let text = <std::borrow::Cow<'de, str>>::deserialize(from)?;
        TimeOfDay::parse(&text)
            .map_err(|_| de::Error::invalid_value(de::Unexpected::Str(&text), &"a time as in 18:00"))
    }
}

impl fmt::Display for TimeOfDay {
    /// `08:05`, or `08:05:30` where there are seconds.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:02}:{:02}", self.hour(), self.minute())?;
        if self.second() == 0 { Ok(()) } else { write!(f, ":{:02}", self.second()) }
    }
}

/// Reads a time of day.
///
/// ```
/// # use benchslate_core::measure::clock_text::time_of_day;
/// assert_eq!(time_of_day("8.05").unwrap().to_string(), "08:05");
/// assert_eq!(time_of_day("12:55 p.m.").unwrap().to_string(), "12:55");
/// assert_eq!(time_of_day("12 am").unwrap().to_string(), "00:00");
/// ```
///
/// # Errors
/// Text that is no time of day, an hour that no clock has, sixty minutes or more.
pub fn time_of_day(text: &str) -> Result<TimeOfDay, Refusal> {
    let mut cursor = Cursor::new(text, Accepts::TimeOfDay)?;
    refuse_minus(&cursor)?;
    let place = cursor.place();
    let figures = cursor.take_digits();
    let (hour, minute) = match figures.len() {
        0 => return Err(cursor.refuse_next()),
        1 | 2 => (figures, minutes(&mut cursor)?),
        3 | 4 => {
            let (hour, minute) = figures.split_at(figures.len().saturating_sub(2));
            (hour.to_owned(), Some(minute.to_owned()))
        }
        _ => return Err(cursor.refuse_at(Why::NoSuchHour, place)),
    };
    let second = if minute.is_some() { seconds(&mut cursor)? } else { None };
    cursor.skip_spaces();
    let half = half_of_day(&mut cursor)?;
    cursor.finish()?;
    let number = |figures: Option<String>| figures.and_then(|f| f.parse::<u8>().ok()).unwrap_or(0);
    let (minute, second) = (number(minute), number(second));
    if minute > 59 {
        return Err(cursor.refuse_at(Why::MinutesOver59, place));
    }
    if second > 59 {
        return Err(cursor.refuse_at(Why::SecondsOver59, place));
    }
    let hour = by_half(number(Some(hour)), half);
    let time = hour.and_then(|hour| TimeOfDay::of(hour, minute, second));
    time.ok_or_else(|| cursor.refuse_at(Why::NoSuchHour, place))
}

/// Reads windows of a day: from and to, several after a comma. Up to a time that is not later is over midnight.
///
/// ```
/// # use benchslate_core::measure::clock_text::windows;
/// let said = |text| windows(text).unwrap().iter().map(|(from, to)| format!("{from} {to}")).collect::<Vec<_>>();
/// assert_eq!(said("9-13, 14:30 to 16"), ["09:00 13:00", "14:30 16:00"]);
/// assert_eq!(said("6 pm - 9 pm"), ["18:00 21:00"]);
/// assert_eq!(said("22-2"), ["22:00 02:00"]);
/// ```
///
/// # Errors
/// A window without two times, a time that is none, or two that are the same.
pub fn windows(text: &str) -> Result<Vec<(TimeOfDay, TimeOfDay)>, Refusal> {
    let refused = |why| Refusal::whole(why, Accepts::FreeHours);
    if text.chars().count() > super::limits::MOST_TYPED.saturating_mul(2) {
        return Err(refused(Why::TooLong { most: super::limits::MOST_TYPED.saturating_mul(2) }));
    }
    let mut windows = Vec::new();
    for part in text.split([',', ';']) {
        let ends = part.split_once(['-', '\u{2013}']).or_else(|| part.split_once(" to "));
        let (from, to) = ends.ok_or_else(|| refused(Why::Unfinished))?;
        let read = |text: &str| time_of_day(text.trim()).map_err(|it| refused(it.why));
        let (from, to) = (read(from)?, read(to)?);
        if from == to {
            return Err(refused(Why::Unfinished));
        }
        windows.push((from, to));
    }
    Ok(windows)
}

/// Half of a day on a clock of twice twelve.
#[derive(Clone, Copy)]
enum Half {
    Morning,
    Afternoon,
}

/// Two digits after `:`, `.`, `,`, `h` or a space.
fn minutes(cursor: &mut Cursor) -> Result<Option<String>, Refusal> {
    let from = cursor.place();
    cursor.skip_spaces();
    let mark = cursor.take_any(&[':', '.', ',', 'h', 'H']);
    cursor.skip_spaces();
    if mark.is_none() && cursor.place() == from {
        return Ok(None);
    }
    if !cursor.at_digit() {
        return match mark {
            Some(':' | '.' | ',') => Err(cursor.refuse_next()),
            _ => Ok(None),
        };
    }
    two_digits(cursor).map(Some)
}

/// Two digits after `:` or `.`.
fn seconds(cursor: &mut Cursor) -> Result<Option<String>, Refusal> {
    match cursor.take_any(&[':', '.']) {
        Some(_) => two_digits(cursor).map(Some),
        None => Ok(None),
    }
}

fn two_digits(cursor: &mut Cursor) -> Result<String, Refusal> {
    let figures = cursor.take_digits();
    if figures.len() == 2 { Ok(figures) } else { Err(cursor.refuse(Why::Unfinished)) }
}

/// `am`, `p.m.`, `P`.
fn half_of_day(cursor: &mut Cursor) -> Result<Option<Half>, Refusal> {
    if cursor.is_done() {
        return Ok(None);
    }
    let half = match cursor.take_any(&['a', 'A', 'p', 'P']) {
        Some('a' | 'A') => Half::Morning,
        Some(_) => Half::Afternoon,
        None => return Err(cursor.refuse_next()),
    };
    cursor.take_any(&['.']);
    cursor.skip_spaces();
    if cursor.take_any(&['m', 'M']).is_some() {
        cursor.take_any(&['.']);
    }
    Ok(Some(half))
}

fn by_half(hour: u8, half: Option<Half>) -> Option<u8> {
    let on_half_clock = (1..=12).contains(&hour).then_some(hour % 12);
    match half {
        None => Some(hour),
        Some(Half::Morning) => on_half_clock,
        Some(Half::Afternoon) => on_half_clock?.checked_add(12),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[track_caller]
    fn check(text: &str, want: Result<&str, (Why, usize)>) {
        let got = time_of_day(text).map(|time| time.to_string());
        let want = want.map(str::to_owned).map_err(|(why, at)| Refusal::at(why, Accepts::TimeOfDay, at));
        assert_eq!(got, want, "{text}");
    }

    #[test]
    fn a_time_is_read_in_every_way_it_is_written() {
        check("08:05", Ok("08:05"));
        check("8.05", Ok("08:05"));
        check("8,05", Ok("08:05"));
        check("8 05", Ok("08:05"));
        check("8h05", Ok("08:05"));
        check("8 h", Ok("08:00"));
        check("8", Ok("08:00"));
        check("805", Ok("08:05"));
        check("2359", Ok("23:59"));
        check("0:00", Ok("00:00"));
        check("8 05 pm", Ok("20:05"));
        check("8pm", Ok("20:00"));
        check("12:55 p.m.", Ok("12:55"));
        check("12:55 A. M.", Ok("00:55"));
        check("8:05p", Ok("20:05"));
        check("8:05:30", Ok("08:05:30"));
    }

    #[test]
    fn what_no_clock_shows_is_refused() {
        check("noonish", Err((Why::Unexpected { found: 'n' }, 0)));
        check("-8:05", Err((Why::Negative, 0)));
        check("24:00", Err((Why::NoSuchHour, 0)));
        check("25", Err((Why::NoSuchHour, 0)));
        check("13 pm", Err((Why::NoSuchHour, 0)));
        check("0 am", Err((Why::NoSuchHour, 0)));
        check("8:60", Err((Why::MinutesOver59, 0)));
        check("8:05:60", Err((Why::SecondsOver59, 0)));
        check("8:", Err((Why::Unfinished, 2)));
        check("8:5", Err((Why::Unfinished, 3)));
        check("8:05 xm", Err((Why::Unexpected { found: 'x' }, 5)));
        check("8:05 pm now", Err((Why::Unexpected { found: 'n' }, 8)));
        check("123456", Err((Why::NoSuchHour, 0)));
        check("1e30", Err((Why::Unexpected { found: 'e' }, 1)));
        check(&"8:05 ".repeat(99), Err((Why::TooLong { most: 60 }, 60)));
    }

    proptest! {
        #[test]
        fn a_time_shown_can_be_typed_again(seconds in 0_i64..DAY) {
            let time = TimeOfDay::after_midnight(seconds);
            prop_assert_eq!(time_of_day(&time.to_string()), Ok(time));
        }

        #[test]
        fn no_text_makes_it_panic(text in "\\PC{0,70}") {
            let _ = time_of_day(&text);
        }

        #[test]
        fn no_keys_make_it_panic(text in "[0-9 .,:apmh-]{0,12}") {
            let _ = time_of_day(&text);
        }
    }
}
