//! What storage says when it can't: what stopped, what was found, what to do.

use crate::store::Failure;

/// The head of the message.
pub fn title(failure: Failure) -> &'static str {
    match failure {
        Failure::Missing => "This browser gives no storage",
        Failure::Full => "No room left",
        Failure::Refused => "The browser refused to keep it",
        Failure::Blocked => "Another window holds the journal",
        Failure::Gone => "The journal was taken away",
        Failure::Newer { .. } => "Written by a newer Benchslate",
        Failure::Damaged { .. } => "Something in the journal is damaged",
    }
}

/// What it means and what to do.
pub fn text(failure: Failure) -> &'static str {
    match failure {
        Failure::Missing => {
            "Nothing can be kept here: a private window, or a browser set to keep nothing. Open Benchslate in an ordinary window."
        }
        Failure::Full => {
            "The last act was not kept. What was kept before is safe. Make room on this phone, then do it again."
        }
        Failure::Refused => "The last act was not kept. What was kept before is safe. Reload, then do it again.",
        Failure::Blocked => "Close the other windows of Benchslate: an older one holds the journal open.",
        Failure::Gone => {
            "The connection to the journal was lost in mid-session. Reload this page; what was kept is kept."
        }
        Failure::Newer { .. } => {
            "This page is older than the journal on this phone. Nothing was touched. Reload to get the newer version."
        }
        Failure::Damaged { .. } => {
            "What was counted does not match what was written. Bring a copy to safety on the Shop sheet, then accept what is there."
        }
    }
}

/// Reload the page.
pub fn reload() -> &'static str {
    "Reload"
}

/// The message, read aloud.
pub fn name() -> &'static str {
    "Trouble with storage"
}
