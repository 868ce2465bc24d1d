//! A newer version of the program.

/// The head of the offer.
pub fn title() -> &'static str {
    "A newer Benchslate is here"
}

/// What taking it means.
pub fn text() -> &'static str {
    "What is typed and what is kept stay as they are. A running clock runs on."
}

/// Takes it.
pub fn take() -> &'static str {
    "Use the newer one"
}
