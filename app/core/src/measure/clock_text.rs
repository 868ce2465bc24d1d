//! Time of day, and how it is typed.

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

impl fmt::Display for TimeOfDay {
    /// `08:05`, or `08:05:30` where there are seconds.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:02}:{:02}", self.hour(), self.minute())?;
        if self.second() == 0 { Ok(()) } else { write!(f, ":{:02}", self.second()) }
    }
}
