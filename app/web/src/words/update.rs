//! A newer version of the program.

/// The head of the offer.
pub fn title() -> &'static str {
    "A newer version"
}

/// What taking it means.
pub fn text() -> &'static str {
    "drafts, clock stay"
}

/// Not now.
pub fn later() -> &'static str {
    "Later"
}

/// Takes it.
pub fn take() -> &'static str {
    "Take it"
}
