//! A calendar file: what has a date, for the phone's own calendar.
//!
//! Each event keeps its name for good (its entry's id, and which of the entry's dates it is), so that a file taken in
//! again puts right what is there. `SEQUENCE` rises with every revision of the journal; where nothing was written but
//! the plan moved, the later `DTSTAMP` counts (RFC 5546, 2.1.5). Both are passed in. What has no date any more stays in
//! it as called off, `STATUS:CANCELLED`, without its alarm (`gone`). Moments are in UTC; the last day of
//! a whole-day event is the one before its `DTEND`, which is exclusive.
//! Source: RFC 5545; `NAME`: RFC 7986. Not here: words; which day it is; the schedule, which is handed in.

mod gone;
mod line;
mod of_shop;

pub use gone::{Of, gone};
pub use of_shop::{Dated, Planned, What, of_plan, of_shop, planned};

use crate::{
    journal::{Id, Journal},
    measure::{Day, Instant, Seconds},
};
use line::{add, text};

/// The type that it is saved under.
pub const MEDIA_TYPE: &str = "text/calendar";

/// When an event is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Span {
    /// From one moment to another.
    Moments {
        /// It begins.
        from: Instant,
        /// It is over.
        to: Instant,
    },
    /// A moment.
    Moment(Instant),
    /// Whole days, both counted in.
    Days {
        /// The first.
        first: Day,
        /// The last.
        last: Day,
    },
}

/// What an event is known by, in every file.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Uid {
    /// The entry.
    pub entry: Id,
    /// Which of its dates.
    pub date: DateOf,
}

/// Which of an entry's dates an event is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum DateOf {
    /// What it is about dries.
    Dry,
    /// It is owed, or due.
    Due,
    /// A build's film goes out.
    Publish,
    /// A build's cut must go out.
    Cut,
    /// Piece of work of a step, from 1.
    Piece(u32),
}

/// An event with its words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Event {
    /// Its name.
    pub uid: Uid,
    /// What it is called.
    pub title: String,
    /// More of it; may be empty.
    pub note: String,
    /// When.
    pub span: Span,
    /// A reminder so long before it begins.
    pub alarm: Option<Seconds>,
    /// It is off: it had a date in an earlier file.
    pub off: bool,
}

/// What stands for the whole file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Head<'a> {
    /// What the calendar is called.
    pub name: &'a str,
    /// When it was written.
    pub stamp: Instant,
    /// Rises with what was written ([`sequence`]).
    pub sequence: u32,
}

/// So many revisions stand behind the events of this journal: it only ever grows, on every phone.
pub fn sequence(journal: &Journal) -> u32 {
    u32::try_from(journal.len()).unwrap_or(u32::MAX)
}

/// The file.
pub fn file(head: &Head, events: &[Event]) -> String {
    let mut all = String::new();
    add(&mut all, "BEGIN", "VCALENDAR");
    add(&mut all, "VERSION", "2.0");
    add(&mut all, "PRODID", "-//Benchslate//Benchslate//EN");
    add(&mut all, "CALSCALE", "GREGORIAN");
    add(&mut all, "NAME", &text(head.name));
    for event in events {
        write(&mut all, head, event);
    }
    add(&mut all, "END", "VCALENDAR");
    all
}

fn write(all: &mut String, head: &Head, event: &Event) {
    add(all, "BEGIN", "VEVENT");
    add(all, "UID", &event.uid.text());
    add(all, "DTSTAMP", &line::moment(head.stamp));
    add(all, "SEQUENCE", &head.sequence.to_string());
    match event.span {
        Span::Moments { from, to } => {
            add(all, "DTSTART", &line::moment(from));
            // An end must lie after its start.
            if to > from {
                add(all, "DTEND", &line::moment(to));
            }
        }
        Span::Moment(at) => add(all, "DTSTART", &line::moment(at)),
        Span::Days { first, last } => {
            add(all, "DTSTART;VALUE=DATE", &line::day(first));
            add(all, "DTEND;VALUE=DATE", &line::day(last.max(first).succ()));
        }
    }
    if event.off {
        add(all, "STATUS", "CANCELLED");
    }
    add(all, "SUMMARY", &text(&event.title));
    if !event.note.is_empty() {
        add(all, "DESCRIPTION", &text(&event.note));
    }
    // Nobody is busy while something dries or is owed.
    let busy = !event.off && matches!(event.span, Span::Moments { .. });
    add(all, "TRANSP", if busy { "OPAQUE" } else { "TRANSPARENT" });
    if let Some(before) = event.alarm.filter(|_| !event.off) {
        add(all, "BEGIN", "VALARM");
        add(all, "ACTION", "DISPLAY");
        add(all, "TRIGGER", &line::before(before));
        add(all, "DESCRIPTION", &text(&event.title));
        add(all, "END", "VALARM");
    }
    add(all, "END", "VEVENT");
}

impl Uid {
    fn text(self) -> String {
        let entry = self.entry;
        match self.date {
            DateOf::Dry => format!("{entry}-dry@benchslate"),
            DateOf::Due => format!("{entry}-due@benchslate"),
            DateOf::Publish => format!("{entry}-publish@benchslate"),
            DateOf::Cut => format!("{entry}-cut@benchslate"),
            DateOf::Piece(number) => format!("{entry}-piece-{number}@benchslate"),
        }
    }
}

#[cfg(test)]
mod tests;
