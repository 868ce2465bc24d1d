//! What storage says when it can't: what stopped, what was found, what to do.

use crate::store::Failure;

/// The head of the message.
pub fn title(failure: Failure) -> &'static str {
    match failure {
        Failure::Missing => "This browser gives no storage",
        Failure::Full => "Not kept: this phone has no room left",
        Failure::Refused => "Not kept: the browser refused",
        Failure::Blocked => "Another window holds the journal",
        Failure::Gone => "Not safe yet: the journal was cut off",
        Failure::Newer { .. } => "Written by a newer Benchslate",
        Failure::Damaged { .. } => "The journal doesn't add up",
    }
}

/// What it means.
pub fn text(failure: Failure) -> &'static str {
    match failure {
        Failure::Missing => {
            "Nothing can be kept here: a private window, or a browser that is set to keep nothing. Nothing was lost."
        }
        Failure::Full | Failure::Refused => {
            "What you just wrote is held here, and lost if the app is closed. All before it is safe."
        }
        Failure::Blocked => "An older Benchslate is open in it, and this one waits. Nothing was touched.",
        Failure::Gone => {
            "The browser closed it in mid-session. What you just wrote is put aside and goes in when this page is loaded again. What is still there of the rest shows then."
        }
        Failure::Newer { .. } => "This page is older than the journal on this phone. Nothing was touched.",
        Failure::Damaged { .. } => {
            "What is there is not what was written: lines are missing, doubled or changed. All that can be read is on view."
        }
    }
}

/// What to do.
pub fn advice(failure: Failure) -> &'static str {
    match failure {
        Failure::Missing => "Open Benchslate in an ordinary window.",
        Failure::Full => "Save a backup, free room on the phone, and try again.",
        Failure::Refused => "Try again; if it stays so, save a backup and reload.",
        Failure::Blocked => "Close the other windows of Benchslate; it goes on by itself.",
        Failure::Gone | Failure::Newer { .. } => "Reload.",
        Failure::Damaged { .. } => {
            "Save a backup first. Then accept what is there, or bring in an older backup: what is missing comes back."
        }
    }
}

/// On every other sheet, in one line.
pub fn short(failure: Failure) -> &'static str {
    match failure {
        Failure::Missing => "No storage here: nothing is kept",
        Failure::Full => "Not kept: no room left",
        Failure::Refused => "Not kept: the browser refused",
        Failure::Blocked => "Waits for another window",
        Failure::Gone => "Not safe yet: reload",
        Failure::Newer { .. } => "Not kept: this page is too old",
        Failure::Damaged { .. } => "The journal doesn't add up",
    }
}

/// Beside it.
pub fn see() -> &'static str {
    "see"
}

/// How much lies here, over the drawing: `0.4 MB here, no room for more`.
pub fn room(used: &str) -> String {
    let mut text = String::from(used);
    text.push_str(" here, no room for more");
    text
}

/// Decides the act once more.
pub fn try_again() -> &'static str {
    "Try again"
}

/// Saves the journal as a file.
pub fn back_up() -> &'static str {
    "Back up"
}

/// Under it.
pub fn one_file() -> &'static str {
    "one file"
}

/// Reload the page.
pub fn reload() -> &'static str {
    "Reload"
}

/// Under it.
pub fn drafts_stay() -> &'static str {
    "drafts stay"
}

/// Damage that was looked at.
pub fn accept() -> &'static str {
    "Accept what is there"
}

/// The message, read aloud.
pub fn name() -> &'static str {
    "Storage"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Storage keys"
}
