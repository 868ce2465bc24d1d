//! What is put on a build that is closed.

/// The question, read aloud.
pub fn name() -> &'static str {
    "Closed build"
}

/// What was found; `by_shop`: the shop could bear it instead.
pub fn closed(title: &str, day: &str, by_shop: bool) -> String {
    let shop = if by_shop { ", or does the shop bear it?" } else { "?" };
    format!("{title} was closed {day}. Open it again for this{shop}")
}

/// A key.
pub fn leave_it() -> &'static str {
    "Not now"
}

/// A key.
pub fn shop_bears() -> &'static str {
    "The shop"
}

/// Under it.
pub fn a_cost_of_the_year() -> &'static str {
    "bears it"
}

/// A key.
pub fn reopen() -> &'static str {
    "Reopen"
}
