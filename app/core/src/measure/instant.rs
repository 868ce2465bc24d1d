//! Instants, offsets from UTC, and the pair of both as it is stored.
//!
//! Source: RFC 3339. Whole seconds: a fraction of a second is refused on reading.
//! Not here: which offset holds when (`zone`).

use super::{Accepts, Day, Refusal, Seconds, TimeOfDay, Why, clock_text::DAY, limits};
use serde::{Deserialize, Deserializer, Serialize, Serializer, de};
use std::fmt;

/// Whole seconds since 1970-01-01T00:00:00Z, leap seconds not counted.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Instant(pub i64);

/// Local time less UTC, in seconds: east is above zero.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Offset(pub i32);

/// An instant with the offset that held where it was written:
/// `2026-11-20T08:05:00-05:00`. Ordered by the instant.
///
/// ```
/// # use benchslate_core::measure::When;
/// let when = When::parse("2026-11-20T08:05:00-05:00").unwrap();
/// assert_eq!(when.instant.0, 1_795_179_900);
/// assert_eq!(when.to_string(), "2026-11-20T08:05:00-05:00");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct When {
    /// The instant.
    pub instant: Instant,
    /// The offset; written to the whole minute.
    pub offset: Offset,
}

impl Instant {
    /// The whole minute that it lies in.
    pub fn minute(self) -> Instant {
        Instant(self.0.saturating_sub(self.0.rem_euclid(60)))
    }

    /// Time from `earlier` to this; below zero where it is later.
    pub fn since(self, earlier: Instant) -> Seconds {
        Seconds(self.0.saturating_sub(earlier.0))
    }

    /// So much later, or earlier below zero. Saturates.
    pub fn plus(self, length: Seconds) -> Instant {
        Instant(self.0.saturating_add(length.0))
    }
}

impl When {
    /// Reads an RFC 3339 instant with `Z` or a numeric offset, in whole seconds.
    ///
    /// # Errors
    /// Another form, no such day or hour, or a year beyond the limits.
    pub fn parse(text: &str) -> Result<When, Refusal> {
        let refused = |why| Refusal::whole(why, Accepts::StoredWhen);
        let (date, rest) = split(text, 10).ok_or_else(|| refused(unfinished(text)))?;
        let (clock, offset) = split(rest, 9).ok_or_else(|| refused(Why::Unfinished))?;
        let day = Day::parse(date).map_err(|r| Refusal { accepts: Accepts::StoredWhen, ..r })?;
        let time = clock_numbers(clock).map_err(refused)?;
        let offset = offset_of(offset).ok_or_else(|| refused(Why::Unfinished))?;
        let local = day.since_1970().saturating_mul(DAY).saturating_add(time.seconds());
        Ok(When { instant: Instant(local.saturating_sub(i64::from(offset.0))), offset })
    }

    /// The local day and time by its own offset.
    pub fn local(self) -> (Day, TimeOfDay) {
        local(self.instant, self.offset)
    }

    /// The local day by its own offset.
    pub fn day(self) -> Day {
        self.local().0
    }
}

impl Offset {
    /// Whole minutes towards UTC, for writing.
    fn minutes(self) -> i32 {
        self.0 / 60
    }
}

/// The local day and time of an instant at an offset.
pub(crate) fn local(instant: Instant, offset: Offset) -> (Day, TimeOfDay) {
    let seconds = instant.0.saturating_add(i64::from(offset.0));
    (Day::from_1970(seconds.div_euclid(DAY)), TimeOfDay::after_midnight(seconds))
}

impl fmt::Display for When {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let minutes = self.offset.minutes();
        let (day, time) = local(self.instant, Offset(minutes.saturating_mul(60)));
        let sign = if minutes < 0 { '-' } else { '+' };
        let size = minutes.unsigned_abs();
        write!(f, "{day}T{:02}:{:02}:{:02}", time.hour(), time.minute(), time.second())?;
        write!(f, "{sign}{:02}:{:02}", size / 60, size % 60)
    }
}

impl Serialize for When {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for When {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<When, D::Error> {
        let text = <std::borrow::Cow<'de, str>>::deserialize(from)?;
        When::parse(&text)
            .map_err(|_| de::Error::invalid_value(de::Unexpected::Str(&text), &"an RFC 3339 instant"))
    }
}

fn unfinished(text: &str) -> Why {
    if text.is_empty() { Why::Empty } else { Why::Unfinished }
}

fn split(text: &str, at: usize) -> Option<(&str, &str)> {
    text.split_at_checked(at)
}

/// `T08:05:00`.
fn clock_numbers(text: &str) -> Result<TimeOfDay, Why> {
    let mut numbers = [0_u8; 3];
    for (at, found) in text.chars().enumerate() {
        let place = at / 3;
        let fits = match at % 3 {
            0 => found == if at == 0 { 'T' } else { ':' },
            _ => found.is_ascii_digit(),
        };
        if !fits {
            return Err(Why::Unexpected { found });
        }
        if let (Some(number), Some(digit)) = (numbers.get_mut(place), found.to_digit(10)) {
            *number = number.saturating_mul(10).saturating_add(u8::try_from(digit).unwrap_or(0));
        }
    }
    let [hour, minute, second] = numbers;
    TimeOfDay::of(hour, minute, second).ok_or(Why::NoSuchHour)
}

/// `Z` or `-05:00`.
fn offset_of(text: &str) -> Option<Offset> {
    if text == "Z" {
        return Some(Offset(0));
    }
    let mut characters = text.chars();
    let negative = match characters.next()? {
        '+' => false,
        '-' => true,
        _ => return None,
    };
    let (hours, minutes) = characters.as_str().split_once(':')?;
    let two = |part: &str| {
        let digits = part.len() == 2 && part.chars().all(|c| c.is_ascii_digit());
        digits.then(|| part.parse::<i32>().ok()).flatten()
    };
    let (hours, minutes) = (two(hours)?, two(minutes).filter(|m| *m < 60)?);
    let seconds = hours.checked_mul(60)?.checked_add(minutes)?.checked_mul(60)?;
    if seconds > limits::MOST_OFFSET {
        return None;
    }
    Some(Offset(if negative { seconds.saturating_neg() } else { seconds }))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn what_is_no_instant_is_refused() {
        for text in [
            "",
            "2026-11-20",
            "2026-11-20T08:05:00",
            "2026-11-20 08:05:00Z",
            "2026-11-20T08:05Z",
            "2026-11-20T08:05:00.5Z",
            "2026-11-20T24:00:00Z",
            "2026-11-20T08:60:00Z",
            "2026-02-30T08:05:00Z",
            "1850-01-01T08:05:00Z",
            "2026-11-20T08:05:00-0500",
            "2026-11-20T08:05:00-5:00",
            "2026-11-20T08:05:00+19:00",
            "2026-11-20T08:05:00+05:60",
            "2026-11-20T08:05:00−05:00",
            "2026-11-2٠T08:05:00Z",
        ] {
            assert!(When::parse(text).is_err(), "{text}");
            assert!(serde_json::from_str::<When>(&format!("\"{text}\"")).is_err(), "{text}");
        }
        assert!(serde_json::from_str::<When>("12").is_err());
    }

    #[test]
    fn the_day_is_the_local_one() {
        let late = When::parse("2026-11-20T23:30:00-05:00").expect("reads");
        assert_eq!(late.day().to_string(), "2026-11-20");
        let utc = When::parse("2026-11-21T04:30:00Z").expect("reads");
        assert_eq!(utc.instant, late.instant);
        assert_eq!(utc.to_string(), "2026-11-21T04:30:00+00:00");
        assert_eq!(utc.day().to_string(), "2026-11-21");
    }

    proptest! {
        #[test]
        fn an_instant_written_is_read_back(seconds in -2_000_000_000_i64..7_000_000_000, minutes in -1080_i32..1080) {
            let when = When { instant: Instant(seconds), offset: Offset(minutes * 60) };
            prop_assert_eq!(When::parse(&when.to_string()), Ok(when));
        }

        #[test]
        fn no_text_makes_it_panic(text in "\\PC{0,40}") {
            let _ = When::parse(&text);
        }
    }
}
