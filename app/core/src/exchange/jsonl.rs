//! `journal.jsonl`: the whole journal as text, one revision a line, and the same text brought in again.
//!
//! UTF-8, lines in the order of their ids, each byte for byte as it was first written, a line feed after
//! each. Two devices that hold the same lines write the same file to the byte. Bringing in is set union:
//! the order of files changes nothing, a line that is here already counts once.
//!
//! A file that has passed through a mail program may open with a byte order mark, end its lines with a
//! carriage return and a line feed, and hold empty lines: all three are read over, the lines untouched.
//! Source of the form: JSON Lines, jsonlines.org (common practice); JSON as in RFC 8259.
//! Not here: photos, which are no lines; `backup` has both.

use crate::{
    journal::{Added, Body, Content, Id, Journal, LineFault, Revision, line, pen::Line},
    measure::limits,
};
use std::collections::BTreeSet;

/// What the file is called.
pub const FILE_NAME: &str = "journal.jsonl";
/// Its media type, by common practice; none is registered.
pub const MEDIA_TYPE: &str = "application/jsonl";

/// What a byte order mark is in UTF-8.
const MARK: char = '\u{feff}';
/// Stamps outside of these (milliseconds since 1970) come from a clock that was wrong: 2000 to 2100.
const LIKELY_MS: std::ops::Range<i64> = 946_684_800_000..4_102_444_800_000;

/// What a file would bring. Nothing has been taken from it yet.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Incoming {
    /// The lines that the journal doesn't have byte for byte, in the order of the file, each once.
    pub lines: Vec<Line>,
    /// How many of them carry an id that is new here.
    pub new: usize,
    /// How many lines of the file are here already, or stand in it twice.
    pub known: usize,
    /// How many carry an id that stands here, or earlier in the file, with other bytes.
    pub clashing: usize,
    /// Of the lines to take: written by a newer version. Kept whole, not counted.
    pub newer: usize,
    /// Of the lines to take: no body of their kind. Kept whole, not counted.
    pub unreadable: usize,
    /// Of the lines to take: written by a clock before 2000 or after 2100. Only their own entries suffer.
    pub wrong_clock: usize,
    /// Hashes of the photos that any line of the file names, known ones too.
    pub photos: BTreeSet<String>,
}

/// A file that brings nothing: where it is broken, and why.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Bad {
    /// The line, counted from 1; 0 where the whole file is meant.
    pub line: usize,
    /// What is wrong with it.
    pub why: BadFile,
}

/// Why a file is refused as a whole.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BadFile {
    /// More bytes than [`limits::MOST_FILE_BYTES`].
    TooLong {
        /// How many it has.
        bytes: usize,
    },
    /// More lines than [`limits::MOST_FILE_LINES`].
    TooManyLines,
    /// Bytes that are no UTF-8: no text, or text in another encoding.
    NotText,
    /// The line is no line of a journal.
    Line(LineFault),
    /// More than [`limits::MOST_LEVELS`] objects and arrays in each other.
    TooDeep {
        /// Where the first beyond them begins, counted from 1.
        column: usize,
    },
}

/// The file.
///
/// ```
/// # use benchslate_core::{exchange::jsonl, journal::Journal};
/// assert_eq!(jsonl::write(&Journal::default()), "");
/// ```
pub fn write(journal: &Journal) -> String {
    let room = journal.lines().map(|(_, line)| line.len().saturating_add(1)).fold(0, usize::saturating_add);
    let mut file = String::with_capacity(room);
    for (_, line) in journal.lines() {
        file.push_str(line);
        file.push('\n');
    }
    file
}

/// Looks through a file as it lies on the disk, beside what is here. Changes nothing.
///
/// # Errors
/// [`Bad`] at the first place that is broken.
pub fn check_bytes(journal: &Journal, file: &[u8]) -> Result<Incoming, Bad> {
    if file.len() > limits::MOST_FILE_BYTES {
        return Err(Bad { line: 0, why: BadFile::TooLong { bytes: file.len() } });
    }
    let text = std::str::from_utf8(file).map_err(|error| {
        let sound = file.get(..error.valid_up_to()).unwrap_or_default();
        Bad { line: lines_begun(sound), why: BadFile::NotText }
    })?;
    check(journal, text)
}

/// As [`check_bytes`], of text.
///
/// # Errors
/// [`Bad`] at the first line that is broken.
pub fn check(journal: &Journal, text: &str) -> Result<Incoming, Bad> {
    let mut file = Counted { journal, incoming: Incoming::default(), seen: BTreeSet::new() };
    let mut count = 0_usize;
    let text = text.strip_prefix(MARK).unwrap_or(text);
    for (at, line) in text.split('\n').enumerate() {
        let number = at.saturating_add(1);
        let line = line.strip_suffix('\r').unwrap_or(line);
        if line.bytes().all(|byte| byte.is_ascii_whitespace()) {
            continue;
        }
        count = count.saturating_add(1);
        if count > limits::MOST_FILE_LINES {
            return Err(Bad { line: number, why: BadFile::TooManyLines });
        }
        let fault = |fault| Bad { line: number, why: BadFile::Line(fault) };
        let revision = line::read(line).map_err(fault)?;
        if let Some(column) = too_deep(line) {
            return Err(Bad { line: number, why: BadFile::TooDeep { column } });
        }
        file.count(line, &revision);
    }
    Ok(file.incoming)
}

impl Incoming {
    /// Nothing that the journal lacks.
    pub fn is_empty(&self) -> bool {
        self.lines.is_empty()
    }

    /// Takes the lines in: union. What lost a clash of bytes is handed back, to be put aside.
    pub fn merge_into(&self, journal: &mut Journal) -> Vec<Box<str>> {
        let aside = |line: &Line| match journal.add(&line.text) {
            Ok(Added::Clash { aside }) => Some(aside),
            // Read once already when it was counted.
            Ok(Added::New | Added::Known) | Err(_) => None,
        };
        self.lines.iter().filter_map(aside).collect()
    }
}

/// A file half counted.
struct Counted<'a> {
    journal: &'a Journal,
    incoming: Incoming,
    /// Every line met.
    seen: BTreeSet<(Id, &'a str)>,
}

impl<'a> Counted<'a> {
    fn count(&mut self, line: &'a str, revision: &Revision) {
        if let Content::Body(Body::Photo(photo)) = &revision.content {
            self.incoming.photos.insert(photo.hash.clone());
        }
        let id = revision.id;
        let of_id = |seen: &BTreeSet<(Id, &str)>| seen.range((id, "")..).next().is_some_and(|it| it.0 == id);
        let here = self.journal.line(id);
        let met = here.is_some() || of_id(&self.seen);
        let twice = !self.seen.insert((id, line));
        if twice || here == Some(line) {
            self.incoming.known = self.incoming.known.saturating_add(1);
            return;
        }
        let count = if met { &mut self.incoming.clashing } else { &mut self.incoming.new };
        *count = count.saturating_add(1);
        self.note(revision);
        self.incoming.lines.push(Line { id: revision.id, text: line.to_owned() });
    }

    fn note(&mut self, revision: &Revision) {
        let kind = match revision.content {
            Content::Newer => Some(&mut self.incoming.newer),
            Content::Unreadable => Some(&mut self.incoming.unreadable),
            Content::Body(_) | Content::Struck => None,
        };
        if let Some(count) = kind {
            *count = count.saturating_add(1);
        }
        if !LIKELY_MS.contains(&revision.stamp.ms) {
            self.incoming.wrong_clock = self.incoming.wrong_clock.saturating_add(1);
        }
    }
}

/// Where a line of JSON has one level more than is taken, counted from 1.
fn too_deep(line: &str) -> Option<usize> {
    let (mut depth, mut quoted, mut escaped) = (0_usize, false, false);
    for (at, byte) in line.bytes().enumerate() {
        match byte {
            _ if escaped => escaped = false,
            b'\\' if quoted => escaped = true,
            b'"' => quoted = !quoted,
            b'{' | b'[' if !quoted => depth = depth.saturating_add(1),
            b'}' | b']' if !quoted => depth = depth.saturating_sub(1),
            _ => {}
        }
        if depth > limits::MOST_LEVELS {
            return Some(at.saturating_add(1));
        }
    }
    None
}

/// The number of the line in which this text ends.
fn lines_begun(text: &[u8]) -> usize {
    text.iter().filter(|byte| **byte == b'\n').count().saturating_add(1)
}

#[cfg(test)]
mod tests;
