//! Large and small letters, of the alphabets that a name is likely to be written in.
//!
//! The library knows every alphabet that has both, and its tables are as much to download as a screen. These are Latin
//! with its accents, Greek and Cyrillic; a letter of another alphabet stays as it is, so it is found as it was typed.

/// The whole text in small letters: for comparing, not for showing.
/// ```
/// # use benchslate_core::measure::letters::small;
/// assert_eq!(small("Élan NO. 4 Ясень"), "élan no. 4 ясень");
/// ```
pub fn small(text: &str) -> String {
    text.chars().map(smaller).collect()
}

/// The first letter large, the rest as it is.
pub fn capital(text: &str) -> String {
    first(text, larger)
}

/// The first letter small, the rest as it is.
pub fn uncapital(text: &str) -> String {
    first(text, smaller)
}

fn first(text: &str, of: fn(char) -> char) -> String {
    let mut rest = text.chars();
    rest.next().map(|first| std::iter::once(of(first)).chain(rest).collect()).unwrap_or_default()
}

/// The small letter of a large one.
pub fn smaller(letter: char) -> char {
    if letter.is_ascii() { letter.to_ascii_lowercase() } else { beyond(letter, false) }
}

/// The large letter of a small one, where that is one letter.
pub fn larger(letter: char) -> char {
    if letter.is_ascii() { letter.to_ascii_uppercase() } else { beyond(letter, true) }
}

/// Runs in which every large letter has its small one so much further on: first, last large letter, how far.
const APART: [(u32, u32, u32); 10] = [
    (0xC0, 0xD6, 32),
    (0xD8, 0xDE, 32),
    (0x386, 0x386, 38),
    (0x388, 0x38A, 37),
    (0x38C, 0x38C, 64),
    (0x38E, 0x38F, 63),
    (0x391, 0x3A1, 32),
    (0x3A3, 0x3AB, 32),
    (0x400, 0x40F, 80),
    (0x410, 0x42F, 32),
];

/// Runs in which they stand by turns: the first large letter, the last small one.
const BY_TURNS: [(u32, u32); 10] = [
    (0x100, 0x12F),
    (0x132, 0x137),
    (0x139, 0x148),
    (0x14A, 0x177),
    (0x179, 0x17E),
    (0x218, 0x21F),
    (0x460, 0x481),
    (0x48A, 0x4BF),
    (0x1E00, 0x1E95),
    (0x1EA0, 0x1EFF),
];

fn beyond(letter: char, large: bool) -> char {
    let code = u32::from(letter);
    let other = if code == 0x178 || code == 0xFF {
        // The one pair that stands apart from its row: Ÿ.
        if large { 0x178 } else { 0xFF }
    } else if let Some((from, _)) = BY_TURNS.iter().find(|(from, to)| (*from..=*to).contains(&code)) {
        let is_small = code.abs_diff(*from) % 2 == 1;
        match (is_small, large) {
            (true, true) => code.saturating_sub(1),
            (false, false) => code.saturating_add(1),
            _ => code,
        }
    } else {
        let run = APART.iter().find(|(from, to, by)| {
            let by = if large { *by } else { 0 };
            (from.saturating_add(by)..=to.saturating_add(by)).contains(&code)
        });
        match run {
            Some((_, _, by)) if large => code.saturating_sub(*by),
            Some((_, _, by)) => code.saturating_add(*by),
            None => code,
        }
    };
    char::from_u32(other).unwrap_or(letter)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Letters whose other letter the library gives as several, or as one of another row.
    fn alone(letter: char) -> bool {
        letter.to_lowercase().count() != 1 || letter.to_uppercase().count() != 1
    }

    fn library(letter: char, large: bool) -> char {
        let other = if large { letter.to_uppercase().next() } else { letter.to_lowercase().next() };
        other.unwrap_or(letter)
    }

    #[test]
    fn as_the_library_says_for_latin_greek_and_cyrillic() {
        let rows = [0..0x180, 0x218..0x220, 0x386..0x3CF, 0x400..0x4C0, 0x1E00..0x1E96, 0x1EA0..0x1F00];
        for letter in rows.into_iter().flatten().filter_map(char::from_u32).filter(|it| !alone(*it)) {
            // Dotless i, long s, micro and final sigma are the small letters of a row that is not their own.
            if !['ı', 'ſ', 'µ', 'ς', 'İ'].contains(&letter) {
                assert_eq!(larger(letter), library(letter, true), "{letter}");
            }
            assert_eq!(smaller(letter), library(letter, false), "{letter}");
        }
    }

    #[test]
    fn no_letter_anywhere_becomes_one_that_the_library_would_not_make_of_it() {
        for letter in (0..=0x10FFFF).filter_map(char::from_u32) {
            let (small, large) = (smaller(letter), larger(letter));
            assert!(small == letter || letter.to_lowercase().any(|it| it == small), "{letter}: {small}");
            assert!(large == letter || letter.to_uppercase().any(|it| it == large), "{letter}: {large}");
        }
    }

    #[test]
    fn only_the_first_letter_changes() {
        assert_eq!(capital("épicéa"), "Épicéa");
        assert_eq!(uncapital("A bd ft"), "a bd ft");
        assert_eq!(capital(""), "");
    }
}
