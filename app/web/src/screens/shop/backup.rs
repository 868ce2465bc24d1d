//! The journal saved as a file, and this device's memory of it.

use crate::{
    platform::{announce, download},
    screens::sample,
    shell::Desk,
    store::device::{self, Small},
    words::exchange as words,
};
use benchslate_core::{
    exchange::{
        jsonl::{self, FILE_NAME, MEDIA_TYPE},
        sample::SAVED_NAME,
    },
    measure::Instant,
};

/// The last backup that this device knows of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Last {
    /// When.
    pub at: Instant,
    /// How many lines were in it. The journal only grows, so the rest came since.
    pub lines: usize,
}

/// What this device remembers; none: it never saved one, or the browser has forgotten.
pub fn last() -> Option<Last> {
    // What is remembered is of the maker's own journal.
    let text = device::recall(Small::BackedUp).filter(|_| !sample::is_open())?;
    let (at, lines) = text.split_once(' ')?;
    Some(Last { at: Instant(at.parse().ok()?), lines: lines.parse().ok()? })
}

/// The day of it.
pub fn day(desk: Desk, last: Last) -> String {
    desk.read(|view| view.tongue.day_of(last.at))
}

/// Hands the whole journal to the reader as a file, every line as it was first written. False: the browser
/// would not.
pub fn save(desk: Desk) -> bool {
    let (file, lines) = desk.now_read(|view| (jsonl::write(view.journal), view.journal.len()));
    let name = if sample::is_open() { SAVED_NAME } else { FILE_NAME };
    if !download::save(name, MEDIA_TYPE, file.as_bytes()) {
        return false;
    }
    announce::say(&words::saved(name));
    if sample::is_open() {
        return true;
    }
    let mut text = desk.at_tap().0.to_string();
    text.push(' ');
    text.push_str(&lines.to_string());
    device::remember(Small::BackedUp, &text);
    true
}
