//! The form of a step: what it comes after, what it takes.

/// By a field: a time to dry, and nothing that dries.
pub fn after_what() -> &'static str {
    "Dries for so long after which step? Choose one above."
}

/// By a field.
pub fn after_itself() -> &'static str {
    "A step can\u{2019}t come after itself."
}

/// Over the steps that it comes after.
pub const fn comes_after() -> &'static str {
    "What it comes after"
}

/// The row that adds a step that it comes after.
pub const fn after_one_more() -> &'static str {
    "Comes after one more step"
}

/// By a field: a step that stands there already.
pub fn twice() -> &'static str {
    "It stands there already: once is enough."
}

/// Over what a step takes.
pub const fn takes() -> &'static str {
    "What it takes"
}

/// The row that adds what a step takes.
pub const fn takes_something() -> &'static str {
    "Takes clamps, a bench, a corner"
}

/// The same, where nothing has been counted yet: leads to where that is done.
pub fn nothing_counted() -> &'static str {
    "Takes clamps, a bench, a corner: count them first"
}

/// By a field: a count, and nothing that is counted.
pub fn takes_what() -> &'static str {
    "So many of what? Choose one above."
}

/// By a field: a step takes more than there are.
pub fn there_are(count: u32) -> String {
    match count {
        1 => "There is one.".to_owned(),
        _ => format!("There are {count}."),
    }
}

/// By a box: it can't be both.
pub fn in_one_go_or_not() -> &'static str {
    "In one go, or broken off for another: not both."
}

/// So many of something, and for how many hours after the step; empty: not after it.
pub fn takes_so_many(count: u32, name: &str, hours: &str) -> String {
    match hours {
        "" => format!("{count} of {name}"),
        _ => format!("{count} of {name}, {hours} h after it"),
    }
}

/// By the field: in one go, and slower than any free time is long.
pub fn no_window_holds_it(longest: &str) -> String {
    format!("in one go no free time holds that: the longest is {longest}")
}
