//! Content lines of iCalendar: text escaped, long lines folded, days, moments and lengths of time written.
//!
//! Source: RFC 5545, sections 3.1 (folding), 3.3.4 (dates), 3.3.5 form 2 (UTC), 3.3.6 (durations), 3.3.11 (text).

use crate::measure::{Day, Instant, Offset, Seconds, instant::local};
use std::fmt::Write;

/// Octets in a line, its end not counted.
const MOST_OCTETS: usize = 75;

/// Adds `NAME:value` with its end, folded: no line is longer, and none splits a character.
pub(super) fn add(to: &mut String, name: &str, value: &str) {
    let mut room = MOST_OCTETS;
    for letter in name.chars().chain([':']).chain(value.chars()) {
        if letter.len_utf8() > room {
            to.push_str("\r\n ");
            room = MOST_OCTETS.saturating_sub(1);
        }
        to.push(letter);
        room = room.saturating_sub(letter.len_utf8());
    }
    to.push_str("\r\n");
}

/// Words as a value: the backslash first, then what parts a list, and line ends. Signs that no text holds are left out.
///
/// `Glue-up; clamp, then C:\jobs` is `Glue-up\; clamp\, then C:\\jobs`.
pub(super) fn text(words: &str) -> String {
    let mut value = String::with_capacity(words.len());
    let mut before = ' ';
    for letter in words.chars() {
        match letter {
            '\\' | ';' | ',' => value.extend(['\\', letter]),
            '\n' if before == '\r' => {}
            '\n' | '\r' => value.push_str("\\n"),
            '\t' => value.push(letter),
            _ if letter.is_control() => {}
            _ => value.push(letter),
        }
        before = letter;
    }
    value
}

/// `20261120`.
pub(super) fn day(day: Day) -> String {
    format!("{:04}{:02}{:02}", day.year(), day.month(), day.day_of_month())
}

/// `20261120T150000Z`.
pub(super) fn moment(at: Instant) -> String {
    let (on, time) = local(at, Offset(0));
    format!("{}T{:02}{:02}{:02}Z", day(on), time.hour(), time.minute(), time.second())
}

/// So long before: `-PT15M`, `-P1D`; no time is `PT0S`. Hours, minutes and seconds stand without a gap between them.
pub(super) fn before(length: Seconds) -> String {
    let seconds = length.0.max(0);
    let (days, rest) = (seconds / 86_400, seconds % 86_400);
    let (hours, minutes, left) = (rest / 3600, rest / 60 % 60, rest % 60);
    let mut text = String::from(if seconds == 0 { "PT0S" } else { "-P" });
    if days > 0 {
        let _ = write!(text, "{days}D");
    }
    if rest > 0 {
        text.push('T');
    }
    if hours > 0 {
        let _ = write!(text, "{hours}H");
    }
    if minutes > 0 || (hours > 0 && left > 0) {
        let _ = write!(text, "{minutes}M");
    }
    if left > 0 {
        let _ = write!(text, "{left}S");
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// As the standard unfolds: an end of line and one space or tab after it fall away.
    fn unfolded(folded: &str) -> String {
        folded.replace("\r\n ", "").replace("\r\n\t", "").trim_end_matches("\r\n").to_owned()
    }

    #[test]
    fn a_length_of_time_leaves_no_unit_out_between_two() {
        let check = |seconds, want: &str| assert_eq!(before(Seconds(seconds)), want, "{seconds}");
        check(900, "-PT15M");
        check(86_400, "-P1D");
        check(54_000, "-PT15H");
        check(3_605, "-PT1H0M5S");
        check(90_061, "-P1DT1H1M1S");
        check(0, "PT0S");
        check(-5, "PT0S");
    }

    #[test]
    fn days_and_moments_are_written_in_utc() {
        assert_eq!(day(Day::parse("2024-02-29").unwrap()), "20240229");
        assert_eq!(moment(Instant(1_795_186_800)), "20261120T150000Z");
    }

    proptest! {
        #[test]
        fn folding_and_unfolding_gives_the_text_back(words in "\\PC{0,200}") {
            let mut folded = String::new();
            add(&mut folded, "SUMMARY", &words);
            prop_assert!(folded.ends_with("\r\n"));
            for line in folded.trim_end_matches("\r\n").split("\r\n") {
                prop_assert!(line.len() <= MOST_OCTETS, "{}", line);
            }
            prop_assert_eq!(unfolded(&folded), format!("SUMMARY:{words}"));
        }

        #[test]
        fn no_words_end_a_line_or_a_value(words in any::<String>()) {
            let value = text(&words);
            prop_assert!(!value.contains(['\r', '\n']));
            let bare = value.replace("\\\\", "").replace("\\;", "").replace("\\,", "").replace("\\n", "");
            prop_assert!(!bare.contains([';', ',', '\\']), "{}", value);
        }
    }
}
