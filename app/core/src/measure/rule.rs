//! Marks of a steel rule lit beside a typed length: a quarter and an eighth are three eighths.
//!
//! What is lit stands in the text itself, as its last fraction; thirty-seconds are the finest to be tapped, sixty-fourths
//! the finest that a length is read to. Source: common practice of rules divided by halving.

/// Thirty-seconds of each mark, coarse to fine.
const MARKS: [u32; 5] = [16, 8, 4, 2, 1];

/// What can stand under the line of a length.
const UNDER: [&str; 6] = ["2", "4", "8", "16", "32", "64"];

/// Whether a rule has such marks: a half, a quarter, down to a sixty-fourth; a whole over one is one.
pub(crate) fn has(under: i128) -> bool {
    matches!(under, 1 | 2 | 4 | 8 | 16 | 32 | 64)
}

/// The text after a digit of a pad; none where it would make a fraction that no rule has: a half is not on its way to a
/// twenty-second.
pub fn goes_on(text: &str, digit: char) -> Option<String> {
    let mut more = text.to_owned();
    more.push(digit);
    match more.rsplit_once('/') {
        Some((_, under)) if under.chars().all(|it| it.is_ascii_digit()) => {
            UNDER.iter().any(|it| it.starts_with(under)).then_some(more)
        }
        Some(_) | None => Some(more),
    }
}

/// Which marks make up the fraction at the end of a text; none where it ends in no fraction of the rule.
pub fn lit(text: &str) -> [bool; 5] {
    let (_, parts) = split(text);
    MARKS.map(|mark| parts & mark != 0)
}

/// The text with one more mark lit, or put out.
pub fn tapped(text: &str, at: usize) -> String {
    let (before, parts) = split(text);
    let Some(mark) = MARKS.get(at) else { return text.to_owned() };
    let fraction = said(parts ^ mark);
    let joint = if before.is_empty() || fraction.is_empty() { "" } else { " " };
    [before, joint, &fraction].concat()
}

/// What stands before the last fraction, and that in thirty-seconds.
fn split(text: &str) -> (&str, u32) {
    let text = text.trim_end();
    let (before, last) = text.rsplit_once(' ').unwrap_or(("", text));
    let read = |last: &str| {
        let (over, under) = last.split_once('/')?;
        let (over, under): (u32, u32) = (over.parse().ok()?, under.parse().ok()?);
        let each = 32_u32.checked_div(under).filter(|each| each.checked_mul(under) == Some(32))?;
        over.checked_mul(each).filter(|parts| *parts < 32)
    };
    match read(last) {
        Some(parts) => (before.trim_end(), parts),
        None => (text, 0),
    }
}

/// `3/8` of 12 thirty-seconds.
fn said(parts: u32) -> String {
    if parts == 0 {
        return String::new();
    }
    let halved = parts.trailing_zeros();
    let over = parts.checked_shr(halved).unwrap_or(parts);
    let under = 32_u32.checked_shr(halved).unwrap_or(32);
    format!("{over}/{under}")
}

#[cfg(test)]
mod tests {
    use super::{goes_on, has, lit, tapped};

    #[track_caller]
    fn check(text: &str, at: usize, want: &str) {
        assert_eq!(tapped(text, at), want);
    }

    #[test]
    fn marks_add_and_are_put_out_again() {
        check("19", 1, "19 1/4");
        check("19 1/4", 2, "19 3/8");
        check("19 3/8", 1, "19 1/8");
        check("19 1/8", 2, "19");
        check("", 0, "1/2");
        check("6 ft 3", 4, "6 ft 3 1/32");
        assert_eq!(lit("19 3/8"), [false, true, true, false, false]);
        assert_eq!(lit("19"), [false; 5]);
    }

    #[test]
    fn a_finished_fraction_does_not_grow_into_one_that_no_rule_has() {
        let after = |text, digit| goes_on(text, digit);
        assert_eq!(after("4 1/2", '2'), None);
        assert_eq!(after("4 1/", '5'), None);
        assert_eq!(after("4 1/", '0'), None);
        assert_eq!(after("4 1/", '1').as_deref(), Some("4 1/1"));
        assert_eq!(after("4 1/1", '6').as_deref(), Some("4 1/16"));
        assert_eq!(after("4 1/3", '2').as_deref(), Some("4 1/32"));
        assert_eq!(after("4 1/2 ft ", '2').as_deref(), Some("4 1/2 ft 2"));
        assert_eq!(after("4", '2').as_deref(), Some("42"));
        assert!([1, 2, 4, 8, 16, 32, 64].into_iter().all(has) && ![0, 3, 6, 22, 128].into_iter().any(has));
    }

    #[test]
    fn another_fraction_stays_as_typed() {
        check("2/3", 0, "2/3 1/2");
        assert_eq!(lit("19 5/3"), [false; 5]);
        check("19", 9, "19");
    }
}
