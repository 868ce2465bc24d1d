//! Lengths of work as they are typed, to the whole minute.
//!
//! `2 h 15`, `2:15`, `2.25`, `2,25 h`, `1 1/2 h`, `135 min`; a bare number is hours.
//! Source: our own rule (hours logged as an amount are whole minutes as typed).
//! Not here: time of day (`clock_text`), or how long a stretch may be before it is asked about.

use super::{
    Accepts, Fraction, Refusal, Seconds, Why, fixed, limits,
    number::{mixed, refuse_minus},
    scan::Cursor,
};
use rust_decimal::Decimal;

const HOUR_WORDS: &[&str] = &["h", "hr", "hrs", "hour", "hours"];
const MINUTE_WORDS: &[&str] = &["m", "min", "mins", "minute", "minutes"];

/// Reads a length of work at or above zero, rounded half-even to the whole minute.
///
/// ```
/// # use benchslate_core::measure::{Seconds, duration};
/// for text in ["2 h 15", "2:15", "2.25", "2,25 h", "2 1/4", "135 min"] {
///     assert_eq!(duration::hours(text), Ok(Seconds(8_100)), "{text}");
/// }
/// ```
///
/// # Errors
/// Text that is no length of time, sixty minutes or more beside hours, a mark that can be read in
/// two ways, below zero, or above [`limits::MOST_HOURS`].
pub fn hours(text: &str) -> Result<Seconds, Refusal> {
    let mut cursor = Cursor::new(text, Accepts::Hours)?;
    refuse_minus(&cursor)?;
    let minutes = match by_colon(&mut cursor)? {
        Some(minutes) => minutes,
        None => by_words(&mut cursor)?,
    };
    cursor.finish()?;
    let most = limits::MOST_HOURS;
    let seconds = i64::try_from(minutes).ok().and_then(|minutes| minutes.checked_mul(60));
    let within = seconds.filter(|seconds| *seconds <= most.saturating_mul(3600));
    let too_long = cursor.refuse_whole(Why::TooLarge { most: Decimal::from(most) });
    within.map(Seconds).ok_or(too_long)
}

/// Reads the hours of one stretch: more than none, and a day at most.
///
/// ```
/// # use benchslate_core::measure::{Seconds, Why, duration};
/// assert_eq!(duration::stretch("2 h 15"), Ok(Seconds(8_100)));
/// // Ninety minutes were meant, and a bare number is hours.
/// assert_eq!(duration::stretch("90").unwrap_err().why, Why::OverADay { minutes: Some(90) });
/// ```
///
/// # Errors
/// As [`hours`]; no minute at all, or more than [`limits::MOST_STRETCH`].
pub fn stretch(text: &str) -> Result<Seconds, Refusal> {
    let length = hours(text)?;
    let refused = |why| Err(Refusal::whole(why, Accepts::Hours));
    if length.is_zero() {
        return refused(Why::Nought);
    }
    if length.0 <= limits::MOST_STRETCH {
        return Ok(length);
    }
    // Said where the number would be minutes of one day.
    let bare = text.trim().parse::<u16>().ok();
    let minutes = bare.filter(|minutes| i64::from(*minutes).saturating_mul(60) <= limits::MOST_STRETCH);
    refused(Why::OverADay { minutes })
}

/// `2:15`.
fn by_colon(cursor: &mut Cursor) -> Result<Option<i128>, Refusal> {
    let from = cursor.place();
    let hours = cursor.take_digits();
    if hours.is_empty() || cursor.take_any(&[':']).is_none() {
        cursor.back_to(from);
        return Ok(None);
    }
    let place = cursor.place();
    let minutes = cursor.take_digits();
    if minutes.len() != 2 {
        return Err(cursor.refuse_next());
    }
    let hours = hours.parse::<i128>().map_err(|_| too_many(cursor, from))?;
    beside_hours(hours, &minutes).map(Some).map_err(|why| cursor.refuse_at(why, place))
}

/// `2.25 h`, `2 h 15 min`, `135 min`.
fn by_words(cursor: &mut Cursor) -> Result<i128, Refusal> {
    let from = cursor.place();
    let amount = mixed(cursor)?;
    cursor.skip_spaces();
    let place = cursor.place();
    let word = cursor.take_word();
    cursor.take_any(&['.']);
    if MINUTE_WORDS.contains(&word.as_str()) {
        return whole_minutes(amount, 1).ok_or_else(|| too_many(cursor, from));
    }
    if !word.is_empty() && !HOUR_WORDS.contains(&word.as_str()) {
        return Err(cursor.refuse_at(Why::UnknownUnit, place));
    }
    cursor.skip_spaces();
    if word.is_empty() || !cursor.at_digit() {
        return whole_minutes(amount, 60).ok_or_else(|| too_many(cursor, from));
    }
    if amount.denominator() != 1 {
        // `2.5 h 15`: either the point or the minutes, not both.
        return Err(cursor.refuse_next());
    }
    let place = cursor.place();
    let minutes = cursor.take_digits();
    cursor.skip_spaces();
    let word_place = cursor.place();
    let word = cursor.take_word();
    cursor.take_any(&['.']);
    if !word.is_empty() && !MINUTE_WORDS.contains(&word.as_str()) {
        return Err(cursor.refuse_at(Why::UnknownUnit, word_place));
    }
    beside_hours(amount.numerator(), &minutes).map_err(|why| cursor.refuse_at(why, place))
}

/// Whole hours and the minutes beside them, under sixty.
fn beside_hours(hours: i128, minutes: &str) -> Result<i128, Why> {
    let minutes = minutes.parse::<i128>().ok().filter(|m| *m < 60).ok_or(Why::MinutesOver59)?;
    Ok(hours.saturating_mul(60).saturating_add(minutes))
}

fn whole_minutes(amount: Fraction, each: i128) -> Option<i128> {
    fixed::mul_div(amount.numerator(), each, amount.denominator())
}

fn too_many(cursor: &Cursor, place: usize) -> Refusal {
    cursor.refuse_at(Why::TooLarge { most: Decimal::from(limits::MOST_HOURS) }, place)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[track_caller]
    fn check(text: &str, want: Result<i64, (Why, Option<usize>)>) {
        let got = hours(text).map_err(|refused| (refused.why, refused.at));
        assert_eq!(got, want.map(|minutes| Seconds(minutes * 60)), "{text}");
    }

    #[test]
    fn hours_are_read_in_every_way_they_are_said() {
        check("2 h 15", Ok(135));
        check("2h15", Ok(135));
        check("2h 15m", Ok(135));
        check("2 hrs. 15 min.", Ok(135));
        check("2 hours 5 minutes", Ok(125));
        check("2:15", Ok(135));
        check("02:05", Ok(125));
        check("2.25", Ok(135));
        check("2,25 h", Ok(135));
        check("2 1/4 h", Ok(135));
        check("1½ h", Ok(90));
        check("135 min", Ok(135));
        check("90 m", Ok(90));
        check("3", Ok(180));
        check("0", Ok(0));
        check("0.33", Ok(20));
        check("1/3 h", Ok(20));
        check("4000 h", Ok(240_000));
    }

    #[test]
    fn what_is_no_length_of_work_is_refused() {
        check("", Err((Why::Empty, None)));
        check("soon", Err((Why::Unexpected { found: 's' }, Some(0))));
        check("2 weeks", Err((Why::UnknownUnit, Some(2))));
        check("2:", Err((Why::Unfinished, Some(2))));
        check("2:1", Err((Why::Unfinished, Some(3))));
        check("2:75", Err((Why::MinutesOver59, Some(2))));
        check("2:015", Err((Why::Unfinished, Some(5))));
        check("2 h 75", Err((Why::MinutesOver59, Some(4))));
        check("2 h 15 h", Err((Why::UnknownUnit, Some(7))));
        check("2.5 h 15", Err((Why::Unexpected { found: '1' }, Some(6))));
        check("1 1/", Err((Why::NothingUnderLine, Some(4))));
        check("7/0 h", Err((Why::ZeroUnderLine, Some(2))));
        check("-2", Err((Why::Negative, Some(0))));
        check("1e30", Err((Why::Exponent, Some(1))));
        check("2:15:30", Err((Why::Unexpected { found: ':' }, Some(4))));
        check("1000001 h", Err((Why::TooLarge { most: 1_000_000.into() }, None)));
        check(&"9".repeat(40), Err((crate::measure::number::too_large(), Some(0))));
        check(&"2 h ".repeat(400), Err((Why::TooLong { most: 60 }, Some(60))));
        let two_ways = hours("1,234").map_err(|refused| refused.why);
        assert!(matches!(two_ways, Err(Why::GroupedOrDecimal { .. })));
    }

    #[test]
    fn one_stretch_is_more_than_none_and_a_day_at_most() {
        let over = |minutes| Err(Why::OverADay { minutes });
        for (text, want) in [
            ("2 h 15", Ok(135)),
            ("90 min", Ok(90)),
            ("1:30", Ok(90)),
            ("24", Ok(1440)),
            ("1440 min", Ok(1440)),
            ("0", Err(Why::Nought)),
            ("0:00", Err(Why::Nought)),
            ("0 min", Err(Why::Nought)),
            ("1/200", Err(Why::Nought)),
            ("90", over(Some(90))),
            (" 25 ", over(Some(25))),
            ("1440", over(Some(1440))),
            ("1441", over(None)),
            ("90 h", over(None)),
            ("24:01", over(None)),
            ("90.5", over(None)),
            ("soon", Err(Why::Unexpected { found: 's' })),
        ] {
            let got = stretch(text).map_err(|refused| refused.why);
            assert_eq!(got, want.map(|minutes| Seconds(minutes * 60)), "{text}");
        }
    }

    proptest! {
        #[test]
        fn hours_and_minutes_shown_can_be_typed_again(minutes in 0_i64..60_000_000) {
            let length = Seconds(minutes * 60);
            let (h, m) = length.hours_minutes();
            prop_assert_eq!(hours(&format!("{h}:{m:02}")), Ok(length));
            prop_assert_eq!(hours(&format!("{h} h {m}")), Ok(length));
        }

        #[test]
        fn no_text_makes_it_panic(text in "\\PC{0,70}") {
            let _ = hours(&text);
        }

        #[test]
        fn no_keys_make_it_panic(text in "[0-9 .,:/hmin-]{0,20}") {
            let _ = hours(&text);
        }
    }
}
