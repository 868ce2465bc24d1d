//! The one place where the program reads the time, the zone and the reader's language.
//!
//! The table of offset changes is asked of the browser's `Intl` (ECMA-402, `longOffset`): steps of
//! 15 days, then bisection to the second. Compared with the IANA rules by the reference tests.

use std::cell::RefCell;

use js_sys::{Date, Function, Reflect};
use wasm_bindgen::JsValue;

use super::intl;

/// The table begins with this instant: 1 January 2015, UTC, in seconds since 1970.
const FIRST: i64 = 1_420_070_400;
/// And ends with this one: 1 January 2037.
const LAST: i64 = 2_114_380_800;
/// No zone changed its offset twice within this time in those years, in seconds.
const STEP: i64 = 15 * 86_400;

/// Now, in milliseconds since 1970, UTC.
pub fn now() -> i64 {
    Date::now() as i64
}

/// The name of the browser's time zone, such as `America/Toronto`; `UTC` where it doesn't say.
pub fn zone_name() -> String {
    let options = intl::date_time_format("en-US", &[])
        .and_then(|format| intl::method(&format, "resolvedOptions"))
        .and_then(|(format, method)| method.call0(&format).ok());
    let name = options.and_then(|it| Reflect::get(&it, &"timeZone".into()).ok()?.as_string());
    name.unwrap_or_else(|| "UTC".to_owned())
}

/// The reader's language tag, such as `en-CA`.
pub fn language() -> String {
    web_sys::window().and_then(|it| it.navigator().language()).unwrap_or_else(|| "en".to_owned())
}

/// Offsets of a zone from UTC in seconds east, each with the instant (seconds since 1970) from which
/// it holds: the first from the beginning of time, the last saying how far the table was asked. Nothing for a zone that the browser doesn't know.
pub fn offset_changes(zone: &str) -> Option<Vec<(i64, i32)>> {
    let format = intl::date_time_format("en-US", &[("timeZone", zone), ("timeZoneName", "longOffset")])?;
    let (format, text_of) = intl::getter(&format, "format")?;
    let faulty = RefCell::new(false);
    let table = changes(FIRST, LAST, |instant| {
        let offset = asked(&text_of, &format, instant);
        faulty.replace_with(|was| *was || offset.is_none());
        offset.unwrap_or_default()
    });
    (!faulty.into_inner()).then_some(table)
}

fn asked(text_of: &Function, format: &JsValue, instant: i64) -> Option<i32> {
    let date = JsValue::from_f64(instant as f64 * 1000.0);
    offset(&text_of.call1(format, &date).ok()?.as_string()?)
}

/// The offset in a text such as `11/20/2026, GMT-05:00`; `GMT` alone is 0.
fn offset(text: &str) -> Option<i32> {
    let rest = text.split_once("GMT")?.1;
    let Some(sign) = rest.chars().next() else { return Some(0) };
    let mut parts = rest.get(sign.len_utf8()..)?.split(':').map(str::parse::<i32>);
    let (hours, minutes) = (parts.next()?.ok()?, parts.next()?.ok()?);
    let seconds = parts.next().transpose().ok()?.unwrap_or_default();
    let size = hours * 3600 + minutes * 60 + seconds;
    match sign {
        '+' => Some(size),
        '-' | '\u{2212}' => Some(-size),
        _ => None,
    }
}

fn changes(first: i64, last: i64, mut offset_at: impl FnMut(i64) -> i32) -> Vec<(i64, i32)> {
    let mut was = offset_at(first);
    let mut table = vec![(i64::MIN, was)];
    let mut from = first;
    while from < last {
        let to = (from + STEP).min(last);
        let is = offset_at(to);
        if is != was {
            table.push((first_of(from, to, is, &mut offset_at), is));
            was = is;
        }
        from = to;
    }
    // The offset once more: core reads it as the end of what was asked.
    table.push((last, was));
    table
}

/// The first second in `(from, to]` with the offset that holds at `to`.
fn first_of(mut from: i64, mut to: i64, is: i32, offset_at: &mut impl FnMut(i64) -> i32) -> i64 {
    while to - from > 1 {
        let middle = from + (to - from) / 2;
        if offset_at(middle) == is {
            to = middle;
        } else {
            from = middle;
        }
    }
    to
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(text: &str, want: Option<i32>) {
        assert_eq!(offset(text), want, "{text}");
    }

    #[test]
    fn offsets_are_read_as_the_browser_writes_them() {
        check("11/20/2026, GMT-05:00", Some(-18_000));
        check("1/1/2015, GMT", Some(0));
        check("1/1/2015, GMT+05:45", Some(20_700));
        check("1/1/2015, GMT+10:30", Some(37_800));
        check("1/1/1900, GMT-00:44:30", Some(-2_670));
        check("1/1/2015, GMT\u{2212}03:30", Some(-12_600));
    }

    #[test]
    fn what_is_no_offset_is_not_taken_for_one() {
        for text in ["", "1/1/2015", "1/1/2015, EST", "GMT+", "GMT+5", "GMT*05:00", "GMT+05:xx"] {
            check(text, None);
        }
    }

    // Published: tz database, US rules since 2007 (second Sunday in March to first in November,
    // 02:00 local). 8 March 2026 07:00 UTC and 1 November 2026 06:00 UTC for an eastern zone.
    #[test]
    fn a_change_is_found_to_the_second() {
        let (spring, autumn) = (1_772_953_200, 1_793_512_800);
        let eastern = |at: i64| if (spring..autumn).contains(&at) { -14_400 } else { -18_000 };
        let table = changes(1_767_225_600, 1_798_761_600, eastern);
        assert_eq!(
            table,
            vec![(i64::MIN, -18_000), (spring, -14_400), (autumn, -18_000), (1_798_761_600, -18_000)]
        );
    }

    #[test]
    fn a_zone_that_never_changes_has_one_row() {
        assert_eq!(changes(FIRST, LAST, |_| 20_700), vec![(i64::MIN, 20_700), (LAST, 20_700)]);
    }
}
