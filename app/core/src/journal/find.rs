//! Find as you type: which lines hold every word that was asked for. Pure text; what a line says is the
//! caller's.

use crate::measure::letters;

/// What is looked for: every word of it, in any order, as part of a word of the line.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Wanted {
    words: Vec<String>,
}

impl Wanted {
    /// Reads what was typed. Nothing typed finds everything.
    pub fn read(typed: &str) -> Wanted {
        Wanted { words: plain(typed).split_whitespace().map(str::to_owned).collect() }
    }

    /// Nothing is asked for.
    pub fn is_empty(&self) -> bool {
        self.words.is_empty()
    }

    /// Whether a line holds it. `line`: as [`plain`] gives it.
    pub fn finds(&self, line: &str) -> bool {
        self.words.iter().all(|word| line.contains(word.as_str()))
    }
}

/// Text as it is compared: lower case, and `4,30` as `4.30`, so that either decimal mark finds an amount.
pub fn plain(text: &str) -> String {
    let mut plain = String::with_capacity(text.len());
    let mut letters = text.chars().map(letters::smaller).peekable();
    let mut digit_before = false;
    while let Some(letter) = letters.next() {
        let digit_after = letters.peek().is_some_and(char::is_ascii_digit);
        let mark = letter == ',' && digit_before && digit_after;
        digit_before = letter.is_ascii_digit();
        plain.push(if mark { '.' } else { letter });
    }
    plain
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(typed: &str, line: &str, found: bool) {
        assert_eq!(Wanted::read(typed).finds(&plain(line)), found, "{typed} in {line}");
    }

    const GLUE: &str = "used wood glue, 1/4 bottle Sat 7 Nov 4.30";

    #[test]
    fn a_word_a_day_a_person_an_amount_finds_its_line() {
        check("glue", GLUE, true);
        check("GLUE sat", GLUE, true);
        check("7 nov glue", GLUE, true);
        check("4.30", GLUE, true);
        check("4,30", GLUE, true);
        check("Wren", "sand Wren Fri 20 Nov 1 h 55", true);
        check("1 h 55", "sand Wren Fri 20 Nov 1 h 55", true);
    }

    #[test]
    fn every_word_must_be_there() {
        check("glue sunday", GLUE, false);
        check("4.31", GLUE, false);
    }

    #[test]
    fn nothing_typed_finds_everything() {
        check("", GLUE, true);
        check("   ", GLUE, true);
        assert!(Wanted::read("  ").is_empty());
    }

    #[test]
    fn a_comma_between_words_stays_a_comma() {
        assert_eq!(plain("Wren, for the Film"), "wren, for the film");
        assert_eq!(plain("12,50 and 1,2"), "12.50 and 1.2");
    }
}
