//! A day as a person types it.
//!
//! `2026-11-20`, `20 nov`, `nov 20, 2026`, `20.11.`, `20/11`, `today`, `yesterday`, `tomorrow`. With
//! full stops the day comes first; with strokes either may, so `11/12` is asked about. Without a
//! year it is the day nearest to today. Month names are English. Source: common practice.
//! Not here: today, which is passed in.

use super::{Day, in_year};
use crate::measure::{Accepts, Refusal, Why, number::MINUS, number::refuse_minus, scan::Cursor};

const MONTHS: [&str; 12] = [
    "january",
    "february",
    "march",
    "april",
    "may",
    "june",
    "july",
    "august",
    "september",
    "october",
    "november",
    "december",
];

/// Reads a day.
///
/// ```
/// # use benchslate_core::measure::{Day, Why, day};
/// let today = Day::parse("2026-01-05").unwrap();
/// assert_eq!(day::typed("20 nov", today).unwrap().to_string(), "2025-11-20");
/// assert_eq!(day::typed("yesterday", today).unwrap().to_string(), "2026-01-04");
/// assert!(matches!(day::typed("11/12", today).unwrap_err().why, Why::DayOrMonthFirst { .. }));
/// ```
///
/// # Errors
/// Text that is no day, a day that isn't in the calendar, an order that can be read in two ways, or
/// a year beyond [`crate::measure::limits`].
pub fn typed(text: &str, today: Day) -> Result<Day, Refusal> {
    let mut cursor = Cursor::new(text, Accepts::Day)?;
    refuse_minus(&cursor)?;
    let day = if cursor.at_digit() { by_figures(&mut cursor, today) } else { by_word(&mut cursor, today) }?;
    cursor.finish()?;
    day.map_err(|why| cursor.refuse_whole(why))
}

/// Years from today within which a thing at the bench can have happened.
const LIFETIME: i32 = 50;

/// Reads a day on which something happened or is due: within half a century of today.
///
/// # Errors
/// As [`typed`], and a day that is further away, so that a slip of the finger in a year is not kept.
pub fn typed_near(text: &str, today: Day) -> Result<Day, Refusal> {
    let day = typed(text, today)?;
    let (first, last) = (today.year().saturating_sub(LIFETIME), today.year().saturating_add(LIFETIME));
    let near = (first..=last).contains(&day.year());
    near.then_some(day).ok_or_else(|| Refusal::whole(Why::AnotherCentury { first, last }, Accepts::Day))
}

/// What the text says; refused only once all of it has been read.
type Said = Result<Day, Why>;

/// `today`, `nov 20 2026`.
fn by_word(cursor: &mut Cursor, today: Day) -> Result<Said, Refusal> {
    let place = cursor.place();
    let word = cursor.take_word();
    match word.as_str() {
        "today" => return Ok(Ok(today)),
        "yesterday" => return Ok(Ok(today.pred())),
        "tomorrow" => return Ok(Ok(today.succ())),
        _ => {}
    }
    let Some(month) = month_of(&word) else {
        cursor.back_to(place);
        return Err(cursor.refuse_next());
    };
    cursor.take_any(&['.']);
    cursor.skip_spaces();
    let day = day_number(cursor)?;
    cursor.take_any(&[',']);
    let year = year_after(cursor)?;
    Ok(dated(Parts { day, month, year }, today))
}

/// `2026-11-20`, `20 nov`, `20.11.`, `20/11`.
fn by_figures(cursor: &mut Cursor, today: Day) -> Result<Said, Refusal> {
    let place = cursor.place();
    let figures = cursor.take_digits();
    if figures.len() == 4 {
        return year_first(cursor, &figures);
    }
    cursor.back_to(place);
    let first = day_number(cursor)?;
    let spaced = cursor.skip_spaces();
    if let Some(mark) = cursor.take_any(&['.', '/', '-']) {
        cursor.skip_spaces();
        if cursor.at_digit() {
            return two_numbers(cursor, first, mark, today);
        }
    } else if !spaced && cursor.peek().is_some_and(|c| !c.is_alphabetic()) {
        return Err(cursor.refuse_next());
    }
    let place = cursor.place();
    let mut word = cursor.take_word();
    if word == "of" {
        cursor.skip_spaces();
        word = cursor.take_word();
    }
    let Some(month) = month_of(&word) else {
        cursor.back_to(place);
        return Err(cursor.refuse_next());
    };
    cursor.take_any(&['.', ',', '-']);
    let year = year_after(cursor)?;
    Ok(dated(Parts { day: first, month, year }, today))
}

/// After a year of four figures.
fn year_first(cursor: &mut Cursor, year: &str) -> Result<Said, Refusal> {
    let Some(mark) = cursor.take_any(&['-', '/', '.']) else { return Err(cursor.refuse_next()) };
    let month = number(cursor, 2)?;
    if cursor.take_any(&[mark]).is_none() {
        return Err(cursor.refuse_next());
    }
    let day = number(cursor, 2)?;
    Ok(in_year(year.parse().unwrap_or(0), month, day))
}

/// Two numbers and perhaps a year: with full stops day first, else as the calendar allows.
fn two_numbers(cursor: &mut Cursor, first: u32, mark: char, today: Day) -> Result<Said, Refusal> {
    let second = number(cursor, 2)?;
    cursor.skip_spaces();
    let year = match cursor.take_any(&[mark]) {
        Some(_) => year_after(cursor)?,
        None => None,
    };
    let day_first = Parts { day: first, month: second, year };
    let month_first = Parts { day: second, month: first, year };
    if mark == '.' || first > 12 || first == second {
        return Ok(dated(day_first, today));
    }
    if second > 12 {
        return Ok(dated(month_first, today));
    }
    Ok(match (dated(day_first, today), dated(month_first, today)) {
        (Ok(day_first), Ok(month_first)) => Err(Why::DayOrMonthFirst { day_first, month_first }),
        (read, Err(_)) | (Err(_), read) => read,
    })
}

struct Parts {
    day: u32,
    month: u32,
    year: Option<i32>,
}

/// The day of that year, or without one the nearest to today; the earlier where two are as near.
fn dated(Parts { day, month, year }: Parts, today: Day) -> Said {
    if let Some(year) = year {
        return in_year(year, month, day);
    }
    let years = today.year().saturating_sub(1)..=today.year().saturating_add(1);
    let near = years.filter_map(|year| Day::of(year, month, day));
    near.min_by_key(|day| day.days_since(today).unsigned_abs()).ok_or(Why::NoSuchDay)
}

/// A day of the month, perhaps with `st`, `nd`, `rd` or `th`.
fn day_number(cursor: &mut Cursor) -> Result<u32, Refusal> {
    let day = number(cursor, 2)?;
    let place = cursor.place();
    if !matches!(cursor.take_word().as_str(), "st" | "nd" | "rd" | "th") {
        cursor.back_to(place);
    }
    Ok(day)
}

/// A year of four figures, or two of this century; none where nothing is left.
fn year_after(cursor: &mut Cursor) -> Result<Option<i32>, Refusal> {
    cursor.skip_spaces();
    if cursor.is_done() {
        return Ok(None);
    }
    if cursor.peek().is_some_and(|c| MINUS.contains(&c)) {
        cursor.step();
    }
    let from = cursor.place();
    let year = i32::try_from(number(cursor, 4)?).unwrap_or(0);
    match cursor.place().saturating_sub(from) {
        2 => Ok(Some(year.saturating_add(2000))),
        4 => Ok(Some(year)),
        _ => Err(cursor.refuse(Why::Unfinished)),
    }
}

fn number(cursor: &mut Cursor, most_figures: usize) -> Result<u32, Refusal> {
    let place = cursor.place();
    let figures = cursor.take_digits();
    if figures.is_empty() {
        return Err(cursor.refuse_next());
    }
    let fits = figures.len() <= most_figures;
    figures.parse().ok().filter(|_| fits).ok_or_else(|| cursor.refuse_at(Why::NoSuchDay, place))
}

/// The whole name of a month, or its first letters, three at least.
fn month_of(word: &str) -> Option<u32> {
    let found = MONTHS.iter().zip(1_u32..).find(|(name, _)| word.len() >= 3 && name.starts_with(word));
    found.map(|(_, number)| number)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_day_in_another_century_is_refused() {
        let today = Day::parse("2026-11-20").expect("a day");
        let why = |text| typed_near(text, today).map_err(|refusal| refusal.why);
        let refused = Err(Why::AnotherCentury { first: 1976, last: 2076 });
        assert_eq!(why("1926-11-20"), refused);
        assert_eq!(why("2126-11-20"), refused);
        assert_eq!(why("2025-11-20").map(|day| day.to_string()), Ok("2025-11-20".to_owned()));
    }
    use proptest::prelude::*;

    fn today() -> Day {
        Day::of(2026, 11, 20).expect("a day")
    }

    #[track_caller]
    fn check(text: &str, want: Result<&str, (Why, Option<usize>)>) {
        let got = typed(text, today()).map(|day| day.to_string()).map_err(|r| (r.why, r.at));
        assert_eq!(got, want.map(str::to_owned), "{text}");
    }

    #[test]
    fn a_day_is_read_in_every_way_it_is_written() {
        check("2026-11-20", Ok("2026-11-20"));
        check("2026/1/5", Ok("2026-01-05"));
        check("20 nov", Ok("2026-11-20"));
        check("20nov", Ok("2026-11-20"));
        check("20th November 2025", Ok("2025-11-20"));
        check("1st of sept", Ok("2026-09-01"));
        check("Nov 20", Ok("2026-11-20"));
        check("nov. 3rd, 2027", Ok("2027-11-03"));
        check("20-nov-26", Ok("2026-11-20"));
        check("20.11.", Ok("2026-11-20"));
        check("20. 11. 2026", Ok("2026-11-20"));
        check("20. nov", Ok("2026-11-20"));
        check("11.12.", Ok("2026-12-11"));
        check("20/11", Ok("2026-11-20"));
        check("11/20/26", Ok("2026-11-20"));
        check("11/11", Ok("2026-11-11"));
        check("today", Ok("2026-11-20"));
        check("Yesterday", Ok("2026-11-19"));
        check("tomorrow", Ok("2026-11-21"));
    }

    #[test]
    fn without_a_year_it_is_the_nearest() {
        check("3 jan", Ok("2027-01-03"));
        check("3 june", Ok("2026-06-03"));
        check("19 may", Ok("2027-05-19"));
        check("29 feb", Err((Why::NoSuchDay, None)));
    }

    #[test]
    fn an_order_that_reads_two_ways_is_asked_about() {
        let day = |text| Day::parse(text).expect(text);
        let why = Why::DayOrMonthFirst { day_first: day("2026-12-11"), month_first: day("2026-11-12") };
        check("11/12", Err((why, None)));
        check("11-12-2026", Err((why, None)));
        check("11/12/26", Err((why, None)));
    }

    #[test]
    fn what_is_no_day_is_refused() {
        let century = Why::AnotherCentury { first: 1900, last: 2200 };
        check("", Err((Why::Empty, None)));
        check("someday", Err((Why::Unexpected { found: 's' }, Some(0))));
        check("20", Err((Why::Unfinished, Some(2))));
        check("20.", Err((Why::Unfinished, Some(3))));
        check("20 no", Err((Why::Unexpected { found: 'n' }, Some(3))));
        check("nov", Err((Why::Unfinished, Some(3))));
        check("30 feb 2026", Err((Why::NoSuchDay, None)));
        check("2026-13-01", Err((Why::NoSuchDay, None)));
        check("2026-11", Err((Why::Unfinished, Some(7))));
        check("20/11/202", Err((Why::Unfinished, Some(9))));
        check("1850-01-01", Err((century, None)));
        check("20 nov 9999", Err((century, None)));
        check("0026-11-20", Err((century, None)));
        check("-20 nov", Err((Why::Negative, Some(0))));
        check("1e30", Err((Why::Unexpected { found: 'e' }, Some(1))));
        check("99/99", Err((Why::NoSuchDay, None)));
        check("7/0", Err((Why::NoSuchDay, None)));
        check("123", Err((Why::NoSuchDay, Some(0))));
        check("2026-11-20 08:00", Err((Why::Unexpected { found: '0' }, Some(11))));
        check(&"20 nov ".repeat(99), Err((Why::TooLong { most: 60 }, Some(60))));
    }

    proptest! {
        #[test]
        fn a_day_written_can_be_typed_again(days in -25_567_i64..84_000) {
            let day = Day::from_1970(days);
            prop_assert_eq!(typed(&day.to_string(), today()), Ok(day));
            prop_assert_eq!(Day::parse(&day.to_string()), Ok(day));
            prop_assert_eq!(day.since_1970(), days);
        }

        #[test]
        fn no_text_makes_it_panic(text in "\\PC{0,70}") {
            let _ = (typed(&text, today()), Day::parse(&text));
        }

        #[test]
        fn no_keys_make_it_panic(text in "[0-9 ./a-z-]{0,14}") {
            let _ = (typed(&text, today()), Day::parse(&text));
        }
    }
}
