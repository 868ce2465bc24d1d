//! Where something is in a film: `12:30`, `1:02:03`; and how that is shown.
//!
//! Minutes and seconds, or hours, minutes and seconds, with a colon between. Source: common practice of players.
//! Not here: time of day (`clock_text`), lengths of work (`duration`).

use super::{Accepts, Refusal, Why, limits, number::refuse_minus, scan::Cursor};
use rust_decimal::Decimal;

/// Reads whole seconds from the start of a film.
///
/// ```
/// # use benchslate_core::measure::film_time;
/// assert_eq!(film_time::typed("1:02:03"), Ok(3_723));
/// assert_eq!(film_time::typed("0:45"), Ok(45));
/// ```
///
/// # Errors
/// Text without a colon, sixty seconds or more, sixty minutes or more beside hours, below zero, or beyond
/// [`limits::MOST_FILM_SECONDS`].
pub fn typed(text: &str) -> Result<u32, Refusal> {
    let mut cursor = Cursor::new(text, Accepts::FilmTime)?;
    refuse_minus(&cursor)?;
    let first = number(&mut cursor, 1)?;
    colon(&mut cursor)?;
    let place = cursor.place();
    let second = number(&mut cursor, 2)?;
    let seconds = if cursor.peek() == Some(':') {
        if second > 59 {
            return Err(cursor.refuse_at(Why::MinutesOver59, place));
        }
        colon(&mut cursor)?;
        let place = cursor.place();
        let third = number(&mut cursor, 2)?;
        let minutes = first.saturating_mul(60).saturating_add(second);
        beside(&cursor, minutes, third, place)?
    } else {
        beside(&cursor, first, second, place)?
    };
    cursor.finish()?;
    let most = limits::MOST_FILM_SECONDS;
    let beyond = || cursor.refuse_whole(Why::TooLarge { most: Decimal::from(most / 3600) });
    u32::try_from(seconds).ok().filter(|it| *it <= most).ok_or_else(beyond)
}

/// As a player shows it: `12:30`, `1:02:03`.
pub fn shown(seconds: u32) -> String {
    let (minutes, second) = (seconds / 60, seconds % 60);
    let (hour, minute) = (minutes / 60, minutes % 60);
    if hour == 0 { format!("{minute}:{second:02}") } else { format!("{hour}:{minute:02}:{second:02}") }
}

fn number(cursor: &mut Cursor, least: usize) -> Result<u64, Refusal> {
    let place = cursor.place();
    let digits = cursor.take_digits();
    if digits.len() < least {
        return Err(cursor.refuse_next());
    }
    digits.parse().map_err(|_| {
        cursor.refuse_at(Why::TooLarge { most: Decimal::from(limits::MOST_FILM_SECONDS / 3600) }, place)
    })
}

fn colon(cursor: &mut Cursor) -> Result<(), Refusal> {
    cursor.take_any(&[':']).map(|_| ()).ok_or_else(|| cursor.refuse_next())
}

fn beside(cursor: &Cursor, minutes: u64, seconds: u64, place: usize) -> Result<u64, Refusal> {
    if seconds > 59 {
        return Err(cursor.refuse_at(Why::SecondsOver59, place));
    }
    Ok(minutes.saturating_mul(60).saturating_add(seconds))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[track_caller]
    fn refused(text: &str, why: Why) {
        assert_eq!(typed(text).map_err(|it| it.why), Err(why), "{text}");
    }

    #[test]
    fn minutes_and_seconds_stand_apart() {
        assert_eq!(typed("0:00"), Ok(0));
        assert_eq!(typed(" 90:05 "), Ok(5_405), "minutes alone may pass sixty");
        assert_eq!(typed("100:00:00"), Ok(360_000));
        refused("", Why::Empty);
        refused("90", Why::Unfinished);
        refused("1:5", Why::Unfinished);
        refused("1.30", Why::Unexpected { found: '.' });
        refused("1:60", Why::SecondsOver59);
        refused("1:60:00", Why::MinutesOver59);
        refused("1:00:61", Why::SecondsOver59);
        refused("-1:00", Why::Negative);
        refused("1:00:00:00", Why::Unexpected { found: ':' });
        refused("one", Why::Unexpected { found: 'o' });
        refused("100:00:01", Why::TooLarge { most: Decimal::from(100) });
        refused("99999999999999999999999:00", Why::TooLarge { most: Decimal::from(100) });
    }

    proptest! {
        #[test]
        fn what_is_shown_is_read_again(seconds in 0..=limits::MOST_FILM_SECONDS) {
            prop_assert_eq!(typed(&shown(seconds)), Ok(seconds));
        }

        #[test]
        fn no_text_makes_it_panic(text in "\\PC{0,40}") {
            let _ = typed(&text);
        }
    }
}
