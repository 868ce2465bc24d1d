//! The journal out as a file and in from one.

use super::Tongue;
use crate::platform::download::Unread;
use benchslate_core::{
    exchange::jsonl::{Bad, BadFile},
    journal::LineFault,
};

/// Where the only copy is, and when there was last another.
pub fn only_here(backed_up: Option<&str>) -> String {
    let mut text = String::from("Only on this phone. ");
    match backed_up {
        Some(day) => {
            text.push_str("Backed up ");
            text.push_str(day);
            text.push('.');
        }
        None => text.push_str("Never backed up."),
    }
    text
}

/// The key.
pub fn bring_in() -> &'static str {
    "Bring in"
}

/// Under it.
pub fn a_file() -> &'static str {
    "a file"
}

/// The key.
pub fn back_up_now() -> &'static str {
    "Back up now"
}

/// Under it: how much is new since, and what is not in the file.
pub fn since_then(tongue: &Tongue, count: usize, ever: bool) -> String {
    let mut text = super::shop::lines(tongue, count);
    if ever {
        text.push_str(" since");
    }
    text.push_str("; no photos yet");
    text
}

/// Read aloud once the file is handed over.
pub fn saved(name: &str) -> String {
    let mut text = String::from("Saved as ");
    text.push_str(name);
    text
}

/// The browser gave no file.
pub fn not_saved() -> &'static str {
    "The browser would not save a file. Try again, or open this page in the browser itself."
}

/// The head.
pub fn title() -> &'static str {
    "Bring in a file"
}

/// The name of what is looked for.
pub fn from_where() -> &'static str {
    "journal.jsonl"
}

/// Before a file is chosen.
pub fn what_it_does() -> &'static str {
    "A journal.jsonl that this or another phone has saved. Its lines join those that are here: none is overwritten, none is lost, and bringing in the same file twice changes nothing."
}

/// And this too.
pub fn shown_first() -> &'static str {
    "What is in it is shown before anything is taken."
}

/// The field.
pub fn file() -> &'static str {
    "File"
}

/// The key while no file is chosen.
pub fn choose() -> &'static str {
    "Choose a file"
}

/// The key after one.
pub fn another() -> &'static str {
    "Another file"
}

/// Under way.
pub fn being_read() -> &'static str {
    "The file is being read."
}

/// Under way.
pub fn being_taken() -> &'static str {
    "Being taken in. It counts once all of it is kept."
}

/// Over what a file holds.
pub fn in_it() -> &'static str {
    "In this file"
}

/// Rows of what it holds.
pub fn new_lines() -> &'static str {
    "New here"
}

/// Lines that are here.
pub fn known_lines() -> &'static str {
    "Here already"
}

/// Same id, other bytes.
pub fn clashes() -> &'static str {
    "Clash with a line here"
}

/// What becomes of them.
pub fn clashes_how() -> &'static str {
    "one of the two is kept, the same on every phone; the other is put aside"
}

/// A later version's.
pub fn newer_lines() -> &'static str {
    "Written by a newer Benchslate"
}

/// What becomes of them.
pub fn newer_how() -> &'static str {
    "kept whole, not counted until this one is newer too"
}

/// Bodies that can't be read.
pub fn unreadable_lines() -> &'static str {
    "Can't be read as their kind says"
}

/// What becomes of them.
pub fn unreadable_how() -> &'static str {
    "kept whole, not counted"
}

/// Stamps out of this century.
pub fn wrong_clock() -> &'static str {
    "Written by a clock that was wrong"
}

/// What becomes of them.
pub fn wrong_clock_how() -> &'static str {
    "kept; only their own entries are touched by it"
}

/// Nothing that is not here.
pub fn nothing_new() -> &'static str {
    "Nothing new: every line of it is here already."
}

/// An empty file.
pub fn empty_file() -> &'static str {
    "The file is empty."
}

/// The filled key.
pub fn take_it() -> &'static str {
    "Take it"
}

/// The other one.
pub fn leave_it() -> &'static str {
    "Leave it"
}

/// It is kept.
pub fn taken(lines: &str) -> String {
    let mut text = String::from(lines);
    text.push_str(" brought in, and kept.");
    text
}

/// Lines put aside on the way.
pub fn taken_aside(count: usize) -> String {
    let mut text = count.to_string();
    text.push_str(if count == 1 { " line was put aside." } else { " lines were put aside." });
    text
}

/// To the sheet it was come from.
pub fn to_the_shop() -> &'static str {
    "To the shop"
}

/// The head of a file that is refused.
pub fn not_taken() -> &'static str {
    "Nothing was taken from this file"
}

/// Where it is broken, and why.
pub fn broken(tongue: &Tongue, bad: Bad) -> String {
    let why = why(tongue, bad.why);
    if bad.line == 0 {
        return why;
    }
    let mut text = String::from("Line ");
    text.push_str(&tongue.number(&bad.line.to_string()));
    if let Some(column) = column(bad.why) {
        text.push_str(", sign ");
        text.push_str(&tongue.number(&column.to_string()));
    }
    text.push_str(": ");
    text.push_str(&why);
    text
}

/// What stays so.
pub fn nothing_changed() -> &'static str {
    "What is here is as it was. Try the file as it was first saved; one line broken stops all of it."
}

/// The browser gave no bytes.
pub fn unread(tongue: &Tongue, unread: Unread) -> String {
    match unread {
        Unread::TooLong { bytes } => too_long(tongue, bytes as f64),
        Unread::Refused => "The browser could not read it: it was moved, or may not be read.".to_owned(),
    }
}

fn why(tongue: &Tongue, why: BadFile) -> String {
    match why {
        BadFile::TooLong { bytes } => return too_long(tongue, bytes as f64),
        BadFile::TooManyLines => "more lines than are taken from one file.",
        BadFile::NotText => "no text as Benchslate writes it. A photo, an archive, or another encoding?",
        BadFile::Line(LineFault::TooLong) => "longer than a line of a journal can be.",
        BadFile::Line(LineFault::NotJson { .. }) => "broken off, or no line of a journal.",
        BadFile::Line(LineFault::Envelope { .. }) => "a line of something else, or a part of it is missing.",
        BadFile::Line(LineFault::NoContent) => "it says neither what happened nor that it was struck out.",
    }
    .to_owned()
}

fn column(why: BadFile) -> Option<usize> {
    match why {
        BadFile::Line(LineFault::NotJson { column } | LineFault::Envelope { column }) => Some(column),
        BadFile::TooLong { .. }
        | BadFile::TooManyLines
        | BadFile::NotText
        | BadFile::Line(LineFault::TooLong | LineFault::NoContent) => None,
    }
}

fn too_long(tongue: &Tongue, bytes: f64) -> String {
    let mut text = super::shop::room(tongue, bytes);
    text.push_str(" is more than is taken from one file.");
    text
}
