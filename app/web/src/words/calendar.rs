//! What stands in a calendar file.

/// What the calendar is called.
pub fn of_the_shop() -> &'static str {
    "Benchslate"
}

/// The same, of a build.
pub fn of_build(build: &str) -> String {
    format!("Benchslate, {build}")
}

/// A glue-up or a coat may be worked on.
pub fn dry(stage: &str) -> String {
    format!("Dry: {stage}")
}

/// Something is owed.
pub fn owed(what: &str) -> String {
    format!("Owed: {what}")
}

/// A piece is due.
pub fn piece_due(build: &str) -> String {
    format!("Due: {build}")
}

/// A film goes out.
pub fn goes_out(build: &str) -> String {
    format!("Film goes out: {build}")
}

/// Its cut must go out.
pub fn cut_out(build: &str) -> String {
    format!("Cut must go out: {build}")
}

/// The key.
pub fn calendar() -> &'static str {
    "Calendar"
}

/// Under it.
pub fn ends_in() -> &'static str {
    ".ics"
}

/// Nothing to save.
pub fn no_dates() -> &'static str {
    "Nothing has a date yet: nothing dries, nothing is owed, no piece is due, no film goes out, and no step is planned."
}

/// A tick.
pub fn reminders() -> &'static str {
    "Reminders in the calendar file"
}

/// Under it.
pub fn when_they_ring() -> &'static str {
    "when it is dry; at nine the day before a date"
}

/// The file's name.
pub fn file_name(whose: &str, build: Option<&str>) -> String {
    match build {
        Some(build) => format!("{whose}-{build}-dates.ics"),
        None => format!("{whose}-dates.ics"),
    }
}
