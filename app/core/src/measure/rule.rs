//! Marks of a steel rule lit beside a typed length: a quarter and an eighth are three eighths.
//!
//! What is lit stands in the text itself, as its last fraction; thirty-seconds are the finest.

/// Thirty-seconds of each mark, coarse to fine.
const MARKS: [u32; 5] = [16, 8, 4, 2, 1];

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
    use super::{lit, tapped};

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
    fn another_fraction_stays_as_typed() {
        check("2/3", 0, "2/3 1/2");
        assert_eq!(lit("19 5/3"), [false; 5]);
        check("19", 9, "19");
    }
}
