//! Builds: the list, a new one.

/// The head of the form.
pub fn new_build() -> &'static str {
    "New build"
}

/// Its one field.
pub fn what_is_it() -> &'static str {
    "What is it?"
}

/// Under the field.
pub fn more_can_wait() -> &'static str {
    "Everything else can wait until there is a hand free."
}

/// The keys of the form, read aloud.
pub fn keys() -> &'static str {
    "Build keys"
}

/// Begins it.
pub fn start_it() -> &'static str {
    "Start it"
}

/// What a mark calls it.
pub fn build() -> &'static str {
    "build"
}

/// Whoever holds the phone, until there is a name.
pub fn me() -> &'static str {
    "Me"
}

/// Why a title can't be kept.
pub fn bad_title(title: &str) -> Option<&'static str> {
    if title.is_empty() {
        return Some("No name yet. One word is enough: tray, bench, shelf.");
    }
    (title.chars().count() > 80).then_some("Longer than a title: 80 letters fit. The rest is a note.")
}
