//! Reading typed text one character at a time, with the place kept for a refusal.
//!
//! Every parser of the room goes through this cursor, so that length, emptiness and places in the
//! text are treated once. Not here: what anything means.

use super::{Accepts, Refusal, Why, letters, limits};

/// A place in a typed text.
pub(crate) struct Cursor {
    characters: Vec<char>,
    at: usize,
    accepts: Accepts,
}

impl Cursor {
    /// Past the leading spaces of a text that is neither empty nor longer than a field looks at.
    pub(crate) fn new(text: &str, accepts: Accepts) -> Result<Cursor, Refusal> {
        let trimmed = text.trim_end();
        if trimmed.is_empty() {
            return Err(Refusal::whole(Why::Empty, accepts));
        }
        let most = limits::MOST_TYPED;
        let characters: Vec<char> = trimmed.chars().take(most.saturating_add(1)).collect();
        if characters.len() > most {
            return Err(Refusal::at(Why::TooLong { most }, accepts, most));
        }
        let mut cursor = Cursor { characters, at: 0, accepts };
        cursor.skip_spaces();
        Ok(cursor)
    }

    /// Where it is, in characters from the start of the text.
    pub(crate) fn place(&self) -> usize {
        self.at
    }

    /// Goes back to an earlier place.
    pub(crate) fn back_to(&mut self, place: usize) {
        self.at = place;
    }

    /// The next character.
    pub(crate) fn peek(&self) -> Option<char> {
        self.peek_after(0)
    }

    /// The character so many after the next.
    pub(crate) fn peek_after(&self, more: usize) -> Option<char> {
        self.characters.get(self.at.saturating_add(more)).copied()
    }

    /// Whether a sign stands between an earlier place and here.
    pub(crate) fn passed(&self, sign: char, from: usize) -> bool {
        self.characters.iter().take(self.at).skip(from).any(|it| *it == sign)
    }

    /// Whether a digit is next.
    pub(crate) fn at_digit(&self) -> bool {
        self.peek().is_some_and(|c| c.is_ascii_digit())
    }

    /// Nothing is left.
    pub(crate) fn is_done(&self) -> bool {
        self.at >= self.characters.len()
    }

    /// Takes the next character.
    pub(crate) fn step(&mut self) {
        self.at = self.at.saturating_add(1).min(self.characters.len());
    }

    /// Takes the next character if it is one of these.
    pub(crate) fn take_any(&mut self, of: &[char]) -> Option<char> {
        let found = self.peek().filter(|c| of.contains(c))?;
        self.step();
        Some(found)
    }

    /// Takes characters while they fit.
    pub(crate) fn take_while(&mut self, fits: impl Fn(char) -> bool) -> String {
        let from = self.at;
        while self.peek().is_some_and(&fits) {
            self.step();
        }
        self.characters.get(from..self.at).map(|run| run.iter().collect()).unwrap_or_default()
    }

    /// Takes ASCII digits.
    pub(crate) fn take_digits(&mut self) -> String {
        self.take_while(|c| c.is_ascii_digit())
    }

    /// Takes a word of letters, in lower case.
    pub(crate) fn take_word(&mut self) -> String {
        letters::small(&self.take_while(char::is_alphabetic))
    }

    /// Takes spaces of any kind; says whether there were any.
    pub(crate) fn skip_spaces(&mut self) -> bool {
        let from = self.at;
        while self.peek().is_some_and(char::is_whitespace) {
            self.step();
        }
        self.at > from
    }

    /// Refuses here.
    pub(crate) fn refuse(&self, why: Why) -> Refusal {
        self.refuse_at(why, self.at)
    }

    /// Refuses at a place.
    pub(crate) fn refuse_at(&self, why: Why, place: usize) -> Refusal {
        Refusal::at(why, self.accepts, place)
    }

    /// Refuses the next character, or the end of the text where there is none.
    pub(crate) fn refuse_next(&self) -> Refusal {
        self.refuse(self.peek().map_or(Why::Unfinished, |found| Why::Unexpected { found }))
    }

    /// Refuses the whole text.
    pub(crate) fn refuse_whole(&self, why: Why) -> Refusal {
        Refusal::whole(why, self.accepts)
    }

    /// Nothing may be left but spaces.
    pub(crate) fn finish(&mut self) -> Result<(), Refusal> {
        self.skip_spaces();
        if self.is_done() { Ok(()) } else { Err(self.refuse_next()) }
    }
}
