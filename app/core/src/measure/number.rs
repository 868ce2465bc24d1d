//! Numbers as they are typed: `.` or `,` as the decimal mark, never a mark between thousands.
//!
//! `1,234` and `1.234` can be read in two ways, so they are asked about, with both readings.
//! Source: our own rule; which mark is which differs by country. Not here: units (`marks`),
//! hours (`duration`), signs of currency (the shop has one, and the field shows it).

use super::{Accepts, Dec, Fraction, Refusal, Why, fixed, limits, scan::Cursor};
use rust_decimal::Decimal;

/// Reads an amount of money at or above zero.
///
/// ```
/// # use benchslate_core::measure::{Why, number};
/// assert_eq!(number::amount("12,5").unwrap().to_string(), "12.5");
/// assert!(matches!(number::amount("1,234").unwrap_err().why, Why::GroupedOrDecimal { .. }));
/// assert!(matches!(number::amount("1e30").unwrap_err().why, Why::Exponent));
/// ```
///
/// # Errors
/// Text that is no plain number, below zero, above [`limits::MOST_UNITS`], or finer than
/// [`limits::MOST_DECIMALS`] digits after the point.
pub fn amount(text: &str) -> Result<Decimal, Refusal> {
    let mut cursor = Cursor::new(text, Accepts::Amount)?;
    refuse_minus(&cursor)?;
    let amount = plain(&mut cursor)?;
    cursor.finish()?;
    Ok(amount)
}

/// Reads an amount of money that may be below zero: a refund, a correction.
///
/// # Errors
/// As [`amount`], but for the sign.
pub fn signed_amount(text: &str) -> Result<Decimal, Refusal> {
    let mut cursor = Cursor::new(text, Accepts::Amount)?;
    let negative = cursor.take_any(MINUS).is_some();
    cursor.skip_spaces();
    let mut amount = plain(&mut cursor)?;
    cursor.finish()?;
    amount.set_sign_negative(negative && !amount.is_zero());
    Ok(amount)
}

/// Reads a share typed in hundredths, with or without its sign: `13` and `13 %` are 0.13.
///
/// # Errors
/// As [`amount`], or above [`limits::MOST_PERCENT`].
pub fn percent(text: &str) -> Result<Decimal, Refusal> {
    let mut cursor = Cursor::new(text, Accepts::Percent)?;
    refuse_minus(&cursor)?;
    let most = Decimal::from(limits::MOST_PERCENT);
    let percent = match plain(&mut cursor) {
        // `14.975`: read as thousands it would be no share at all, so the mark can only be the decimal mark.
        Err(Refusal { why: Why::GroupedOrDecimal { grouped, decimal }, .. }) if grouped > most => decimal,
        read => read?,
    };
    cursor.skip_spaces();
    cursor.take_any(&['%']);
    cursor.finish()?;
    if percent > most {
        return Err(cursor.refuse_whole(Why::TooLarge { most }));
    }
    let hundredth = percent.checked_div(Decimal::ONE_HUNDRED);
    hundredth.ok_or_else(|| cursor.refuse_whole(Why::TooLarge { most }))
}

/// Reads what part of a whole is expected: in hundredths as [`percent`], and a bare number above 0 and up to 1
/// as the part itself. `70`, `70 %` and `0.7` are 0.7; `0.7 %` is 0.007.
///
/// Nobody expects less than one of a hundred to be usable, and many say `0.7` for it: read as 0.7 % it would make
/// what is drawn a hundred times as dear. Not for tax or waste, where 1 of a hundred is usual.
///
/// # Errors
/// As [`percent`].
pub fn part(text: &str) -> Result<Decimal, Refusal> {
    let share = percent(text)?;
    let part = share.checked_mul(Decimal::ONE_HUNDRED).filter(|part| *part <= Decimal::ONE);
    let bare = !text.trim_end().ends_with('%');
    Ok(part.filter(|_| bare).unwrap_or(share).normalize())
}

/// A part as [`part`] reads it again: in hundredths, with the sign where a bare number would be the part itself.
pub fn part_typed(part: Dec) -> String {
    let mut text = part.hundredths();
    if part.0 <= Decimal::from_i128_with_scale(1, 2) {
        text.push_str(" %");
    }
    text
}

/// Reads a whole number of things.
///
/// # Errors
/// Text that is no whole number at or above zero, or above [`limits::MOST_THINGS`].
pub fn whole(text: &str) -> Result<u32, Refusal> {
    let mut cursor = Cursor::new(text, Accepts::Whole)?;
    refuse_minus(&cursor)?;
    let from = cursor.place();
    let number = plain(&mut cursor)?;
    cursor.finish()?;
    if !number.fract().is_zero() {
        return Err(cursor.refuse_at(Why::NotWhole, from));
    }
    let most = Decimal::from(limits::MOST_THINGS);
    let fits = u32::try_from(number).ok().filter(|n| *n <= limits::MOST_THINGS);
    fits.ok_or_else(|| cursor.refuse_whole(Why::TooLarge { most }))
}

/// The signs that are read as minus.
pub(crate) const MINUS: &[char] = &['-', '\u{2212}', '\u{2013}'];

/// Refuses a number below zero at its sign.
pub(crate) fn refuse_minus(cursor: &Cursor) -> Result<(), Refusal> {
    let minus = cursor.peek().is_some_and(|c| MINUS.contains(&c));
    if minus { Err(cursor.refuse(Why::Negative)) } else { Ok(()) }
}

/// Reads digits with one decimal mark at most, at the cursor.
pub(crate) fn plain(cursor: &mut Cursor) -> Result<Decimal, Refusal> {
    let from = cursor.place();
    let before = cursor.take_digits();
    let mark = cursor.take_any(&['.', ',']);
    let after = cursor.take_digits();
    if before.is_empty() && after.is_empty() {
        cursor.back_to(from);
        return Err(cursor.refuse_next());
    }
    if mark.is_some() && after.is_empty() {
        return Err(cursor.refuse(Why::Unfinished));
    }
    refuse_after(cursor)?;
    let value = value_of(&before, &after).map_err(|why| cursor.refuse_at(why, from))?;
    if mark.is_some() && after.len() == 3 && (1..=3).contains(&before.len()) && !before.starts_with('0') {
        let grouped = value_of(&format!("{before}{after}"), "").unwrap_or(value);
        return Err(cursor.refuse_at(Why::GroupedOrDecimal { grouped, decimal: value }, from));
    }
    Ok(value)
}

/// Reads a plain number, a fraction, or a whole number with a fraction beside it:
/// `22`, `1.2`, `5/8`, `23 3/4`, `23-3/4`, `23¾`.
pub(crate) fn mixed(cursor: &mut Cursor) -> Result<Fraction, Refusal> {
    if let Some(part) = take_vulgar(cursor) {
        return Ok(part);
    }
    if cursor.peek() == Some('/') {
        return Err(cursor.refuse(Why::NothingAboveLine));
    }
    let from = cursor.place();
    let value = plain(cursor)?;
    let first = fraction_of(value).ok_or_else(|| cursor.refuse_at(too_large(), from))?;
    if cursor.peek() == Some('/') {
        return under_line(cursor, value, from);
    }
    let after_whole = cursor.place();
    let Some(part) = beside_whole(cursor)? else {
        cursor.back_to(after_whole);
        return Ok(first);
    };
    if !value.fract().is_zero() || part.numerator() >= part.denominator() {
        return Err(cursor.refuse_at(Why::FractionOverOne, after_whole));
    }
    first.plus(part).ok_or_else(|| cursor.refuse_at(too_large(), from))
}

/// The refusal of a number above the limit of every field.
pub(crate) fn too_large() -> Why {
    Why::TooLarge { most: Decimal::from(limits::MOST_UNITS) }
}

/// A fraction after a whole number, past spaces or the hyphen that drawings use.
fn beside_whole(cursor: &mut Cursor) -> Result<Option<Fraction>, Refusal> {
    if let Some(part) = take_vulgar(cursor) {
        return Ok(Some(part));
    }
    let spaced = cursor.skip_spaces();
    if let Some(part) = take_vulgar(cursor) {
        return Ok(Some(part));
    }
    if !spaced && cursor.take_any(MINUS).is_none() {
        return Ok(None);
    }
    let from = cursor.place();
    let above = cursor.take_digits();
    if above.is_empty() || cursor.peek() != Some('/') {
        return Ok(None);
    }
    let value = value_of(&above, "").map_err(|why| cursor.refuse_at(why, from))?;
    under_line(cursor, value, from).map(Some)
}

/// The line of a fraction and what stands under it.
fn under_line(cursor: &mut Cursor, above: Decimal, from: usize) -> Result<Fraction, Refusal> {
    if !above.fract().is_zero() {
        return Err(cursor.refuse_next());
    }
    cursor.step();
    let place = cursor.place();
    let under = cursor.take_digits();
    if under.is_empty() {
        return Err(cursor.refuse(Why::NothingUnderLine));
    }
    let most = Why::TooLarge { most: Decimal::from(limits::MOST_UNDER_LINE) };
    let under = under.parse::<i128>().ok().filter(|under| *under <= i128::from(limits::MOST_UNDER_LINE));
    let under = under.ok_or_else(|| cursor.refuse_at(most, place))?;
    if under == 0 {
        return Err(cursor.refuse_at(Why::ZeroUnderLine, place));
    }
    if matches!(cursor.peek(), Some('/' | '.' | ',')) {
        return Err(cursor.refuse_next());
    }
    let whole = above.trunc().mantissa();
    Fraction::of(whole, under).ok_or_else(|| cursor.refuse_at(too_large(), from))
}

/// A fraction in one character.
fn take_vulgar(cursor: &mut Cursor) -> Option<Fraction> {
    let (above, under) = match cursor.peek()? {
        '½' => (1, 2),
        '¼' => (1, 4),
        '¾' => (3, 4),
        '⅓' => (1, 3),
        '⅔' => (2, 3),
        '⅛' => (1, 8),
        '⅜' => (3, 8),
        '⅝' => (5, 8),
        '⅞' => (7, 8),
        _ => return None,
    };
    cursor.step();
    Fraction::of(above, under)
}

/// What may not stand right after a number: another mark, thousands after a space, an exponent.
fn refuse_after(cursor: &mut Cursor) -> Result<(), Refusal> {
    let digit = |more| cursor.peek_after(more).is_some_and(|c: char| c.is_ascii_digit());
    match cursor.peek() {
        Some('.' | ',') => Err(cursor.refuse(Why::Grouping)),
        Some('e' | 'E') if digit(1) || matches!(cursor.peek_after(1), Some('+' | '-')) => {
            Err(cursor.refuse(Why::Exponent))
        }
        Some(space) if space.is_whitespace() && (1..=3).all(digit) => {
            let ends = !matches!(cursor.peek_after(4), Some('/' | '0'..='9'));
            if ends { Err(cursor.refuse(Why::Grouping)) } else { Ok(()) }
        }
        _ => Ok(()),
    }
}

fn value_of(before: &str, after: &str) -> Result<Decimal, Why> {
    if after.len() > limits::MOST_DECIMALS {
        return Err(Why::TooFine { most: limits::MOST_DECIMALS });
    }
    let digits = before.trim_start_matches('0');
    let whole = if digits.is_empty() { "0" } else { digits };
    let text = if after.is_empty() { whole.to_owned() } else { format!("{whole}.{after}") };
    let value = Decimal::from_str_exact(&text).map_err(|_| too_large())?;
    if value > Decimal::from(limits::MOST_UNITS) { Err(too_large()) } else { Ok(value) }
}

fn fraction_of(value: Decimal) -> Option<Fraction> {
    Fraction::of(value.mantissa(), fixed::power_of_ten(value.scale())?)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    type Said = Result<&'static str, (Why, Option<usize>)>;

    #[track_caller]
    fn check(text: &str, want: Said) {
        let got = amount(text).map(|value| value.to_string()).map_err(|refused| (refused.why, refused.at));
        assert_eq!(got, want.map(str::to_owned), "{text}");
    }

    #[track_caller]
    fn two_readings(text: &str, grouped: &str, decimal: &str) {
        let decimal_of = |text: &str| Decimal::from_str_exact(text).expect(text);
        let why = Why::GroupedOrDecimal { grouped: decimal_of(grouped), decimal: decimal_of(decimal) };
        assert_eq!(amount(text).map_err(|refused| refused.why), Err(why), "{text}");
    }

    #[test]
    fn either_mark_is_the_decimal_mark() {
        check("12", Ok("12"));
        check(" 12.50 ", Ok("12.50"));
        check("12,50", Ok("12.50"));
        check(".5", Ok("0.5"));
        check("0,125", Ok("0.125"));
        check("0007", Ok("7"));
        check("1234.567", Ok("1234.567"));
        check("1.2340", Ok("1.2340"));
        check("1000000000000", Ok("1000000000000"));
    }

    #[test]
    fn thousands_are_asked_about_or_refused() {
        two_readings("1,234", "1234", "1.234");
        two_readings("1.234", "1234", "1.234");
        two_readings("999,000", "999000", "999");
        check("1,234.50", Err((Why::Grouping, Some(5))));
        check("1.234.567", Err((Why::Grouping, Some(5))));
        check("1 234", Err((Why::Grouping, Some(1))));
        check("1\u{202f}234,50", Err((Why::Grouping, Some(1))));
    }

    #[test]
    fn nonsense_is_refused_where_it_stands() {
        check("", Err((Why::Empty, None)));
        check("   ", Err((Why::Empty, None)));
        check("twelve", Err((Why::Unexpected { found: 't' }, Some(0))));
        check("12 apples", Err((Why::Unexpected { found: 'a' }, Some(3))));
        check("$12", Err((Why::Unexpected { found: '$' }, Some(0))));
        check("12.", Err((Why::Unfinished, Some(3))));
        check(".", Err((Why::Unexpected { found: '.' }, Some(0))));
        check("-3", Err((Why::Negative, Some(0))));
        check("1e30", Err((Why::Exponent, Some(1))));
        check("NaN", Err((Why::Unexpected { found: 'N' }, Some(0))));
        check("١٢", Err((Why::Unexpected { found: '١' }, Some(0))));
        check("1000000000001", Err((too_large(), Some(0))));
        check(&"9".repeat(50), Err((too_large(), Some(0))));
        check("0.0000001", Err((Why::TooFine { most: 6 }, Some(0))));
        check(&"call me ".repeat(9_000), Err((Why::TooLong { most: 60 }, Some(60))));
    }

    #[test]
    fn a_refund_may_be_below_zero() {
        let signed = |text| signed_amount(text).map(|value| value.to_string()).ok();
        assert_eq!(signed("-12.50").as_deref(), Some("-12.50"));
        assert_eq!(signed("− 12,50").as_deref(), Some("-12.50"));
        assert_eq!(signed("-0").as_deref(), Some("0"));
        assert_eq!(signed("--1"), None);
    }

    #[test]
    fn a_share_is_typed_in_hundredths() {
        let share = |text| percent(text).map(|value| value.to_string()).ok();
        assert_eq!(share("13").as_deref(), Some("0.13"));
        assert_eq!(share("12,5 %").as_deref(), Some("0.125"));
        assert_eq!(share("14.975").as_deref(), Some("0.14975"));
        assert_eq!(share("9,975 %").as_deref(), Some("0.09975"));
        assert_eq!(share("1.000"), None);
        assert_eq!(share("13 %%"), None);
        assert_eq!(share("1001"), None);
    }

    #[test]
    fn a_part_is_typed_as_such_or_in_hundredths() {
        for (text, want) in [
            ("70", Some("0.7")),
            ("70 %", Some("0.7")),
            ("0.7", Some("0.7")),
            (",7", Some("0.7")),
            ("0,125", Some("0.125")),
            ("1", Some("1")),
            ("1.0", Some("1")),
            ("1 %", Some("0.01")),
            ("0.7 %", Some("0.007")),
            ("0.7%", Some("0.007")),
            ("1.5", Some("0.015")),
            ("100", Some("1")),
            ("0", Some("0")),
            ("120", Some("1.2")),
            ("-0.7", None),
            ("most", None),
            ("", None),
        ] {
            assert_eq!(part(text).map(|value| value.to_string()).ok().as_deref(), want, "{text}");
        }
    }

    #[test]
    fn a_part_that_is_shown_can_be_typed_again() {
        for text in ["0.7", "0.125", "1", "0.01", "0.007", "0.0101", "0"] {
            let stored = Dec::parse(text).unwrap();
            assert_eq!(part(&part_typed(stored)).ok(), Some(stored.0), "{text} as {}", part_typed(stored));
        }
    }

    #[test]
    fn things_come_whole() {
        assert_eq!(whole("12").ok(), Some(12));
        assert_eq!(whole("12.0").ok(), Some(12));
        assert_eq!(whole("12.5").map_err(|refused| refused.why), Err(Why::NotWhole));
        assert_eq!(whole("-1").map_err(|refused| refused.why), Err(Why::Negative));
        assert!(whole("9000000000").is_err());
    }

    proptest! {
        #[test]
        fn what_is_shown_can_be_typed_again(micros in 0_i128..10_i128.pow(18)) {
            let shown = Decimal::from_i128_with_scale(micros, 6);
            prop_assert_eq!(amount(&format!("{shown:.6}")).ok(), Some(shown));
        }

        #[test]
        fn no_text_makes_it_panic(text in "\\PC{0,70}") {
            let _ = (amount(&text), signed_amount(&text), percent(&text), whole(&text));
        }

        #[test]
        fn no_keys_of_the_pad_make_it_panic(text in "[0-9 .,/'\"e-]{0,20}") {
            let _ = (amount(&text), signed_amount(&text), percent(&text), whole(&text));
        }
    }
}
