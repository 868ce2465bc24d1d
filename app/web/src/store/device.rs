//! What is small and of this device alone, and the one list of writes that could not be kept.
//!
//! Local storage is no safety net: browsers write it to the disk later than a strict transaction.
//! The list helps in one case only, a database connection that died in mid-session (WebKit), and
//! its lines are shown as not safe until they are in the database.

use gloo_storage::{LocalStorage, Storage};

use super::revisions::NewRow;

/// Where the lines wait that could not be kept: `[[id, line], …]`.
const NOT_SAFE: &str = "benchslate.not-safe";

/// A small thing that this device remembers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Small {
    /// Light or dark.
    Theme,
    /// When the journal was last saved as a file, and how many lines it had.
    BackedUp,
    /// That there is a journal here: the page then doesn't paint the first sheet before the program arrives.
    Begun,
    /// That the sample shop is open, in a database of its own.
    Sample,
    /// Which cautions were tapped away: their codes.
    Cautions,
    /// The stretch after which nothing dries, as was said last.
    NothingDries,
    /// The hand that holds the phone, where it isn't the right one.
    Hand,
}

impl Small {
    fn key(self) -> &'static str {
        match self {
            Self::Theme => "benchslate.theme",
            Self::BackedUp => "benchslate.backed-up",
            Self::Begun => "benchslate.begun",
            Self::Sample => "benchslate.sample",
            Self::Cautions => "benchslate.cautions-seen",
            Self::NothingDries => "benchslate.nothing-dries",
            Self::Hand => "benchslate.hand",
        }
    }
}

/// What is remembered, if anything is and the browser lets us look.
pub fn recall(what: Small) -> Option<String> {
    there().then(|| LocalStorage::get(what.key()).ok()).flatten()
}

/// Remembers it; quietly not, where the browser doesn't let us.
pub fn remember(what: Small, text: &str) {
    if there() {
        let _ = LocalStorage::set(what.key(), text);
    }
}

/// Forgets it.
pub fn forget(what: Small) {
    if there() {
        LocalStorage::delete(what.key());
    }
}

/// Puts lines aside that could not be kept. False: not even here.
pub(super) fn put_aside(rows: &[NewRow]) -> bool {
    let mut list = aside();
    list.extend(rows.iter().filter(|row| !list.contains(row)).cloned().collect::<Vec<_>>());
    write_aside(&list)
}

/// The lines put aside.
pub(super) fn aside() -> Vec<NewRow> {
    if !there() {
        return Vec::new();
    }
    let pairs: Vec<(String, String)> = LocalStorage::get(NOT_SAFE).unwrap_or_default();
    pairs.into_iter().map(|(id, line)| NewRow { id, line }).collect()
}

/// Takes lines off the list: they are kept now.
pub(super) fn no_longer_aside(rows: &[NewRow]) {
    let before = aside();
    if !before.is_empty() {
        let list: Vec<NewRow> = before.into_iter().filter(|row| !rows.contains(row)).collect();
        write_aside(&list);
    }
}

fn write_aside(list: &[NewRow]) -> bool {
    if !there() {
        return false;
    }
    if list.is_empty() {
        LocalStorage::delete(NOT_SAFE);
        return true;
    }
    let pairs: Vec<(&str, &str)> = list.iter().map(|row| (row.id.as_str(), row.line.as_str())).collect();
    LocalStorage::set(NOT_SAFE, pairs).is_ok()
}

/// gloo throws where the browser refuses local storage, so it is asked first.
fn there() -> bool {
    web_sys::window().is_some_and(|window| matches!(window.local_storage(), Ok(Some(_))))
}
