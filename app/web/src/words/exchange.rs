//! The journal out as a file and in from one.

use super::Tongue;
use crate::platform::download::Unread;
use benchslate_core::{
    exchange::{
        backup::{At, Bad, Why},
        jsonl::{self, BadFile},
    },
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

/// Under it: how much is new since.
pub fn since_then(tongue: &Tongue, count: usize, ever: bool) -> String {
    let mut text = super::shop::lines(tongue, count);
    if ever {
        text.push_str(" since");
    }
    text
}

/// In place of where the only copy is, while a file is put together.
pub fn being_saved() -> &'static str {
    "Putting journal and photos into one file."
}

/// The key that stops long work.
pub fn stop() -> &'static str {
    "Stop"
}

/// Under it: `12 of 340 photos`; how many there are may not be known yet.
pub fn so_far(tongue: &Tongue, done: usize, all: usize) -> String {
    if all == 0 {
        return "the lines first".to_owned();
    }
    let mut text = tongue.number(&done.to_string());
    text.push_str(" of ");
    text.push_str(&photos(tongue, all));
    text
}

/// `1 photo`, `340 photos`.
pub fn photos(tongue: &Tongue, count: usize) -> String {
    let mut text = tongue.number(&count.to_string());
    text.push_str(if count == 1 { " photo" } else { " photos" });
    text
}

/// A file was saved, and not all is in it.
pub fn left_out(tongue: &Tongue, count: usize) -> String {
    let mut text = String::from("Saved without ");
    text.push_str(&photos(tongue, count));
    text.push_str(" that could not be put in.");
    text
}

/// With its photos it is more than one file holds.
pub fn backup_too_long() -> &'static str {
    "With its photos this is more than 4 GB, more than one file holds. The lines alone can be saved."
}

/// The key then.
pub fn without_photos() -> &'static str {
    "Back up the lines"
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
    "the ZIP of a backup, or journal.jsonl"
}

/// Before a file is chosen.
pub fn what_it_does() -> &'static str {
    "A backup that this or another phone has saved. Its lines and photos join those that are here: none is overwritten, none is lost, and bringing in the same file twice changes nothing."
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

/// Under the key that stops it: `photo 12 of 340`.
pub fn photo_of(tongue: &Tongue, done: usize, all: usize) -> Option<String> {
    if all == 0 {
        return None;
    }
    let mut text = String::from("photo ");
    text.push_str(&tongue.number(&done.to_string()));
    text.push_str(" of ");
    text.push_str(&tongue.number(&all.to_string()));
    Some(text)
}

/// It was stopped.
pub fn stopped() -> &'static str {
    "Stopped."
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

/// Photos that are not here yet.
pub fn new_photos() -> &'static str {
    "Photos, new here"
}

/// Photos that are.
pub fn known_photos() -> &'static str {
    "Photos, here already"
}

/// Photos that lines of the file name, and that are neither in it nor here.
pub fn missing_photos() -> &'static str {
    "Photos not in the file"
}

/// What becomes of them.
pub fn missing_how() -> &'static str {
    "their lines come; the pictures stay where they were taken"
}

/// Photos that no line names.
pub fn unnamed_photos() -> &'static str {
    "Photos that no line names"
}

/// What becomes of them.
pub fn unnamed_how() -> &'static str {
    "kept, and in the next backup"
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
    "Nothing new: every line and photo of it is here already."
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

/// `12 lines`, `12 lines and 3 photos`.
pub fn so_much(tongue: &Tongue, lines: usize, count: usize) -> String {
    let mut text = super::shop::lines(tongue, lines);
    if count > 0 {
        text.push_str(" and ");
        text.push_str(&photos(tongue, count));
    }
    text
}

/// It is kept.
pub fn taken(tongue: &Tongue, lines: usize, photos: usize) -> String {
    let mut text = so_much(tongue, lines, photos);
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
pub fn broken(tongue: &Tongue, bad: &Bad) -> String {
    let why = why(tongue, bad.why);
    match &bad.at {
        At::File => why,
        At::Part(name) => {
            let mut text = name.clone();
            text.push_str(": ");
            text.push_str(&why);
            text
        }
    }
}

fn why(tongue: &Tongue, why: Why) -> String {
    let number = |number: usize| tongue.number(&number.to_string());
    let text = match why {
        Why::NoArchive => "No whole ZIP: cut off on the way, or a file of another kind.",
        Why::CutOff => "It is cut off: more should stand in it.",
        Why::Damaged => "The list of what is in it can’t be read.",
        Why::TooLong { bytes } => return too_long(tongue, bytes as f64),
        Why::TooManyParts => "More parts than a backup has.",
        Why::StrangeName => {
            "no part of a backup. Only files saved by Benchslate are taken, as they were saved."
        }
        Why::Twice => "stands in it twice.",
        Why::Overlaps => "lies over another part of the file.",
        Why::Locked => "locked with a password.",
        Why::Packing => "packed in a way that is not taken.",
        Why::PackedTooFar => "would unpack to far more than it should.",
        Why::WrongSize => "is not as long as it says.",
        Why::WrongSum | Why::WrongHash => "damaged. Its bytes are not those that were saved.",
        Why::Missing => "is missing.",
        Why::NotListed => "is not in the manifest.",
        Why::NoManifest => "can’t be read as one.",
        Why::NotOurs => "of something else than a backup of Benchslate.",
        Why::Newer { .. } => "saved by a newer Benchslate. Take the newer version here, then bring it in.",
        Why::WrongCount { says, found } => {
            return ["should hold ", &number(says), ", and ", &number(found), " are there."].concat();
        }
        Why::Line(bad) => return line(tongue, bad),
        Why::NoPicture => "no picture of the kind that its name says.",
        Why::TooLarge(size) => {
            let pixels = super::photos::pixels(tongue, size.width, size.height);
            return [pixels.as_str(), " is too large for a phone."].concat();
        }
    };
    text.to_owned()
}

fn line(tongue: &Tongue, bad: jsonl::Bad) -> String {
    let why = line_why(tongue, bad.why);
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
    "What is here is as it was. Try the file as it was first saved; one part broken stops all of it."
}

/// The browser gave no bytes.
pub fn unread(tongue: &Tongue, unread: Unread) -> String {
    match unread {
        Unread::TooLong { bytes } => too_long(tongue, bytes as f64),
        Unread::Refused => "The browser could not read it: it was moved, or may not be read.".to_owned(),
    }
}

fn line_why(tongue: &Tongue, why: BadFile) -> String {
    match why {
        BadFile::TooLong { bytes } => return too_long(tongue, bytes as f64),
        BadFile::TooManyLines => "more lines than are taken from one file.",
        BadFile::NotText => "no text as Benchslate writes it. A photo, an archive, or another encoding?",
        BadFile::TooDeep { .. } => "more in itself than a line of a journal has.",
        BadFile::Line(LineFault::TooLong) => "longer than a line of a journal can be.",
        BadFile::Line(LineFault::NotJson { .. }) => "broken off, or no line of a journal.",
        BadFile::Line(LineFault::Envelope { .. }) => "a line of something else, or a part of it is missing.",
        BadFile::Line(LineFault::NoContent) => "it says neither what happened nor that it was struck out.",
    }
    .to_owned()
}

fn column(why: BadFile) -> Option<usize> {
    match why {
        BadFile::Line(LineFault::NotJson { column } | LineFault::Envelope { column })
        | BadFile::TooDeep { column } => Some(column),
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
