//! What is said of a shot, as it is typed: how many takes, how long one is, how long it is to set up.
//!
//! `2`, `2 x`, `3 takes`; `40`, `40 s`, `1:30`, `1 min 30`, `1.5 min`; `15`, `15 min`, `1 h 15`. A bare number is takes,
//! seconds, minutes: what a shot is measured in. None of them is nought. Source: our own rule.

use super::{
    Accepts, Refusal, Why, duration, fixed, limits,
    number::{self, mixed, refuse_minus},
    scan::Cursor,
};
use rust_decimal::Decimal;

const TAKE_WORDS: &[&str] = &["x", "\u{d7}", "take", "takes"];
const SECOND_WORDS: &[&str] = &["s", "sec", "secs", "second", "seconds"];
const MINUTE_WORDS: &[&str] = &["m", "min", "mins", "minute", "minutes"];

/// Reads how many takes are wanted.
///
/// # Errors
/// Text that is no whole number, nought, or above [`limits::MOST_TAKES`].
pub fn takes(text: &str) -> Result<u32, Refusal> {
    let mut cursor = Cursor::new(text, Accepts::Whole)?;
    refuse_minus(&cursor)?;
    let number = mixed(&mut cursor)?;
    cursor.skip_spaces();
    let place = cursor.place();
    let word = cursor.take_word();
    let sign = word.is_empty() && cursor.take_any(&['\u{d7}']).is_some();
    if !word.is_empty() && !sign && !TAKE_WORDS.contains(&word.as_str()) {
        return Err(cursor.refuse_at(Why::UnknownUnit, place));
    }
    cursor.finish()?;
    if number.denominator() != 1 {
        return Err(cursor.refuse_whole(Why::NotWhole));
    }
    within(&cursor, number.numerator(), limits::MOST_TAKES)
}

/// Reads the length of a take as it will be seen, in whole seconds.
///
/// # Errors
/// Text that is no such length, nought, or above [`limits::MOST_TAKE_SECONDS`].
pub fn seconds(text: &str) -> Result<u32, Refusal> {
    let mut cursor = Cursor::new(text, Accepts::Footage)?;
    refuse_minus(&cursor)?;
    let from = cursor.place();
    let minutes = cursor.take_digits();
    if !minutes.is_empty() && cursor.take_any(&[':']).is_some() {
        let place = cursor.place();
        let more = cursor.take_digits();
        if more.len() != 2 {
            return Err(cursor.refuse_next());
        }
        let sum = beside(minutes.parse().ok(), &more).map_err(|why| cursor.refuse_at(why, place))?;
        cursor.finish()?;
        return within(&cursor, sum, limits::MOST_TAKE_SECONDS);
    }
    cursor.back_to(from);
    let amount = mixed(&mut cursor)?;
    cursor.skip_spaces();
    let place = cursor.place();
    let word = cursor.take_word();
    cursor.take_any(&['.']);
    let in_minutes = MINUTE_WORDS.contains(&word.as_str());
    if !word.is_empty() && !in_minutes && !SECOND_WORDS.contains(&word.as_str()) {
        return Err(cursor.refuse_at(Why::UnknownUnit, place));
    }
    cursor.skip_spaces();
    let mut sum = fixed::mul_div(amount.numerator(), if in_minutes { 60 } else { 1 }, amount.denominator());
    if in_minutes && amount.denominator() == 1 && cursor.at_digit() {
        let place = cursor.place();
        let more = cursor.take_digits();
        sum = Some(beside(Some(amount.numerator()), &more).map_err(|why| cursor.refuse_at(why, place))?);
        cursor.skip_spaces();
        let place = cursor.place();
        let word = cursor.take_word();
        if !word.is_empty() && !SECOND_WORDS.contains(&word.as_str()) {
            return Err(cursor.refuse_at(Why::UnknownUnit, place));
        }
    }
    cursor.finish()?;
    within(&cursor, sum.unwrap_or(i128::MAX), limits::MOST_TAKE_SECONDS)
}

/// Reads how long a shot is to set up, in whole minutes.
///
/// # Errors
/// Text that is no such length, nought, or above [`limits::MOST_SET_UP_MINUTES`].
pub fn minutes(text: &str) -> Result<u32, Refusal> {
    let cursor = Cursor::new(text, Accepts::SetUp)?;
    let bare = text.trim();
    let alone = !bare.is_empty() && bare.chars().all(|it| it.is_ascii_digit() || matches!(it, '.' | ','));
    let read = if alone { duration::hours(&[bare, " min"].concat()) } else { duration::hours(text) };
    let read = read.map_err(|refusal| Refusal { accepts: Accepts::SetUp, ..refusal })?;
    within(&cursor, i128::from(read.0 / 60), limits::MOST_SET_UP_MINUTES)
}

/// Reads how many real seconds at the camera one of footage takes.
///
/// # Errors
/// Text that is no number, nought, or above [`limits::MOST_REAL_SECONDS`].
pub fn real_seconds(text: &str) -> Result<Decimal, Refusal> {
    let cursor = Cursor::new(text, Accepts::Amount)?;
    let number = number::amount(text)?;
    let most = Decimal::from(limits::MOST_REAL_SECONDS);
    match number {
        it if it.is_zero() => Err(cursor.refuse_whole(Why::Nought)),
        it if it.is_sign_negative() => Err(cursor.refuse_whole(Why::Negative)),
        it if it > most => Err(cursor.refuse_whole(Why::TooLarge { most })),
        it => Ok(it),
    }
}

/// Minutes and the seconds beside them, under sixty.
fn beside(minutes: Option<i128>, seconds: &str) -> Result<i128, Why> {
    let seconds = seconds.parse::<i128>().ok().filter(|it| *it < 60).ok_or(Why::SecondsOver59)?;
    Ok(minutes.unwrap_or(i128::MAX).saturating_mul(60).saturating_add(seconds))
}

fn within(cursor: &Cursor, value: i128, most: u32) -> Result<u32, Refusal> {
    if value == 0 {
        return Err(cursor.refuse_whole(Why::Nought));
    }
    let most_of = Decimal::from(most);
    let fits = u32::try_from(value).ok().filter(|it| *it <= most);
    fits.ok_or_else(|| cursor.refuse_whole(Why::TooLarge { most: most_of }))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Text, then what it is read as; a dash where it is refused.
    fn check(read: fn(&str) -> Result<u32, Refusal>, table: &[(&str, Option<u32>)]) {
        for (text, want) in table {
            assert_eq!(read(text).ok(), *want, "{text}: {:?}", read(text));
        }
    }

    #[test]
    fn takes_as_a_tired_person_types_them() {
        check(
            takes,
            &[
                ("2", Some(2)),
                (" 2 ", Some(2)),
                ("2x", Some(2)),
                ("2 X", Some(2)),
                ("3 takes", Some(3)),
                ("4 \u{d7}", Some(4)),
                ("0", None),
                ("00", None),
                ("-1", None),
                ("1.5", None),
                ("1/2", None),
                ("two", None),
                ("2 3", None),
                ("100", None),
                ("99999999999999999999", None),
                ("1e3", None),
                ("", None),
            ],
        );
    }

    #[test]
    fn a_length_as_a_tired_person_types_it() {
        check(
            seconds,
            &[
                ("40", Some(40)),
                ("40s", Some(40)),
                ("40 sec.", Some(40)),
                ("1:30", Some(90)),
                ("0:05", Some(5)),
                ("1 min", Some(60)),
                ("1.5 min", Some(90)),
                ("1,5 min", Some(90)),
                ("1 min 30", Some(90)),
                ("1 min 30 s", Some(90)),
                ("1/2 min", Some(30)),
                ("0", None),
                ("0:00", None),
                ("1:75", None),
                ("1:3", None),
                ("-5", None),
                ("2 h", None),
                ("40 40", None),
                ("long", None),
                ("61 min", None),
                ("3601", None),
                ("", None),
            ],
        );
    }

    #[test]
    fn real_seconds_as_a_tired_person_types_them() {
        let read = |text: &str| real_seconds(text).ok().map(|it| it.normalize().to_string());
        let table = [("3", Some("3")), ("2.5", Some("2.5")), ("2,5", Some("2.5")), ("100", Some("100"))];
        for (text, want) in table {
            assert_eq!(read(text).as_deref(), want, "{text}");
        }
        for text in ["0", "-3", "100.1", "three", "3 s", ""] {
            assert_eq!(read(text), None, "{text}");
        }
    }

    #[test]
    fn a_set_up_as_a_tired_person_types_it() {
        check(
            minutes,
            &[
                ("15", Some(15)),
                ("15 min", Some(15)),
                ("15min", Some(15)),
                ("1 h", Some(60)),
                ("1 h 15", Some(75)),
                ("1:15", Some(75)),
                ("1/2 h", Some(30)),
                ("0", None),
                ("0 min", None),
                ("-15", None),
                ("fifteen", None),
                ("1441", None),
                ("25 h", None),
                ("", None),
            ],
        );
    }
}
