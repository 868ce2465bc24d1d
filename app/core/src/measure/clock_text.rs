//! Time of day, and how it is typed.
//!
//! `08:05`, `8.05`, `0805`, `8`, `8 05 pm`, `12:55 p.m.`. Noon is 12 pm, midnight 12 am.
//! Not here: which instant it is (`zone`), lengths of work (`duration`), how a locale writes it.

use super::{Accepts, Refusal, Seconds, Why, number::refuse_minus, scan::Cursor};
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
    typed(text).map(|typed| typed.time)
}

/// A time as it was typed.
#[derive(Clone, Copy)]
struct Typed {
    time: TimeOfDay,
    /// Whether am or pm stood beside it.
    marked: bool,
    /// Whether it could be an hour of a clock of twice twelve.
    on_half_clock: bool,
}

fn typed(text: &str) -> Result<Typed, Refusal> {
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
    let (hour, minute, second) = (number(Some(hour)), number(minute), number(second));
    if minute > 59 {
        return Err(cursor.refuse_at(Why::MinutesOver59, place));
    }
    if second > 59 {
        return Err(cursor.refuse_at(Why::SecondsOver59, place));
    }
    let time = by_half(hour, half).and_then(|hour| TimeOfDay::of(hour, minute, second));
    let time = time.ok_or_else(|| cursor.refuse_at(Why::NoSuchHour, place))?;
    Ok(Typed { time, marked: half.is_some(), on_half_clock: (1..=12).contains(&hour) })
}

/// Reads windows of a day: from and to, several after a comma. Up to a time that is not later is over midnight.
///
/// Where am or pm stands at one end alone, the other is read so that the window is the shorter one.
///
/// ```
/// # use benchslate_core::measure::clock_text::windows;
/// let said = |text| windows(text).unwrap().iter().map(|(from, to)| format!("{from} {to}")).collect::<Vec<_>>();
/// assert_eq!(said("9-13, 14:30 to 16"), ["09:00 13:00", "14:30 16:00"]);
/// assert_eq!(said("6 pm - 9 pm"), ["18:00 21:00"]);
/// assert_eq!(said("22-2"), ["22:00 02:00"]);
/// assert_eq!(said("6-9pm"), ["18:00 21:00"]);
/// assert_eq!(said("9-1pm"), ["09:00 13:00"]);
/// ```
///
/// # Errors
/// A window without two times, a time that is none, two that are the same, or more hours than
/// [`super::limits::MOST_FREE_HOURS`].
pub fn windows(text: &str) -> Result<Vec<(TimeOfDay, TimeOfDay)>, Refusal> {
    let refused = |why| Refusal::whole(why, Accepts::FreeHours);
    if text.chars().count() > super::limits::MOST_TYPED.saturating_mul(2) {
        return Err(refused(Why::TooLong { most: super::limits::MOST_TYPED.saturating_mul(2) }));
    }
    let mut windows = Vec::new();
    for part in text.split([',', ';']) {
        let ends = part.split_once(['-', '\u{2013}']).or_else(|| part.split_once(" to "));
        let (from, to) = ends.ok_or_else(|| refused(Why::Unfinished))?;
        let read = |text: &str| typed(text.trim()).map_err(|it| refused(it.why));
        let (from, to) = carried(read(from)?, read(to)?);
        if from == to {
            return Err(refused(Why::SameTimes));
        }
        let (hours, most) = (length(from, to) / 3600, super::limits::MOST_FREE_HOURS);
        if length(from, to) > most.saturating_mul(3600) {
            return Err(refused(Why::LongWindow { hours, most }));
        }
        windows.push((from, to));
    }
    Ok(windows)
}

/// What windows come to together.
pub fn together(windows: &[(TimeOfDay, TimeOfDay)]) -> Seconds {
    Seconds(windows.iter().map(|(from, to)| length(*from, *to)).fold(0, i64::saturating_add))
}

/// Both ends, where a mark at one of them says something of the other.
fn carried(from: Typed, to: Typed) -> (TimeOfDay, TimeOfDay) {
    let half_a_day_on = |time: TimeOfDay| TimeOfDay::after_midnight(time.0.saturating_add(DAY / 2));
    let shorter = |one: (TimeOfDay, TimeOfDay), other: (TimeOfDay, TimeOfDay)| {
        // None at all is no window.
        let of = |(from, to): (TimeOfDay, TimeOfDay)| if from == to { DAY } else { length(from, to) };
        if of(other) < of(one) { other } else { one }
    };
    let both = (from.time, to.time);
    match (from.marked, to.marked) {
        (false, true) if from.on_half_clock => shorter(both, (half_a_day_on(from.time), to.time)),
        (true, false) if to.on_half_clock => shorter(both, (from.time, half_a_day_on(to.time))),
        _ => both,
    }
}

/// Seconds of a window; one that ends before it begins ends the next day.
fn length(from: TimeOfDay, to: TimeOfDay) -> i64 {
    to.0.saturating_sub(from.0).rem_euclid(DAY)
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

    #[test]
    fn a_window_is_read_in_every_way_it_is_written() {
        for (text, want, hours) in [
            ("18:00-21:00", "18:00-21:00", 3.0),
            ("6 pm - 9 pm", "18:00-21:00", 3.0),
            ("6-9pm", "18:00-21:00", 3.0),
            ("6-9 p.m.", "18:00-21:00", 3.0),
            ("6 to 9 pm", "18:00-21:00", 3.0),
            ("6pm-9", "18:00-21:00", 3.0),
            ("6-9am", "06:00-09:00", 3.0),
            ("6-9", "06:00-09:00", 3.0),
            ("9-1pm", "09:00-13:00", 4.0),
            ("9am-1", "09:00-13:00", 4.0),
            ("8:30-5pm", "08:30-17:00", 8.5),
            ("10-2am", "22:00-02:00", 4.0),
            ("10pm-2", "22:00-02:00", 4.0),
            ("12-2pm", "12:00-14:00", 2.0),
            ("12-8am", "00:00-08:00", 8.0),
            ("9-9pm", "09:00-21:00", 12.0),
            ("9-9am", "21:00-09:00", 12.0),
            ("18-9pm", "18:00-21:00", 3.0),
            ("0-4am", "00:00-04:00", 4.0),
            ("22-2", "22:00-02:00", 4.0),
            ("6-22", "06:00-22:00", 16.0),
            ("9-13, 2-4pm; 8-10 pm", "09:00-13:00 14:00-16:00 20:00-22:00", 8.0),
        ] {
            let got = windows(text).unwrap_or_else(|refused| panic!("{text}: {refused:?}"));
            let each = got.iter().map(|(from, to)| format!("{from}-{to}")).collect::<Vec<_>>();
            assert_eq!(each.join(" "), want, "{text}");
            assert_eq!(together(&got), Seconds((hours * 3600.0) as i64), "{text}");
        }
    }

    #[test]
    fn what_is_no_window_of_a_day_is_refused() {
        let long = |hours| Why::LongWindow { hours, most: 16 };
        for (text, why) in [
            ("9-9", Why::SameTimes),
            ("9 pm-9 pm", Why::SameTimes),
            ("9-12, 14-14", Why::SameTimes),
            ("21-18", long(21)),
            ("6-22:01", long(16)),
            ("9-12, 18-16", long(22)),
            ("0-23:59", long(23)),
            ("9 am-8 am", long(23)),
            ("9", Why::Unfinished),
            ("9-25", Why::NoSuchHour),
            ("evenings", Why::Unfinished),
            ("9-noon", Why::Unexpected { found: 'n' }),
        ] {
            assert_eq!(windows(text), Err(Refusal::whole(why, Accepts::FreeHours)), "{text}");
        }
    }

    proptest! {
        #[test]
        fn a_window_shown_can_be_typed_again(from in 0_i64..1440, minutes in 1_i64..=960) {
            let window = [from, from + minutes].map(|minute| TimeOfDay::after_midnight(minute * 60));
            let [from, to] = window;
            prop_assert_eq!(windows(&format!("{from}-{to}")), Ok(vec![(from, to)]));
            prop_assert_eq!(together(&[(from, to)]), Seconds(minutes * 60));
        }

        #[test]
        fn no_keys_make_windows_panic(text in "[0-9 .,:;apmto-]{0,16}") {
            let _ = windows(&text);
        }

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
