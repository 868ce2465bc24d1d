//! Notes, and what has no home yet.

/// The head of the form.
pub fn title() -> &'static str {
    "Note"
}

/// Its field.
pub fn text() -> &'static str {
    "What is it about?"
}

/// Where it goes.
pub fn home() -> &'static str {
    "Where it goes"
}

/// The choice without a home.
pub fn no_home() -> &'static str {
    "no home yet"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Note keys"
}

/// The filled key.
pub fn keep() -> &'static str {
    "Keep note"
}

/// The list.
pub fn homeless() -> &'static str {
    "No home yet"
}

/// How many wait.
pub fn waiting(count: usize) -> String {
    if count == 1 { "1 waits".to_owned() } else { format!("{count} wait") }
}

/// None waits.
pub fn none_waits() -> &'static str {
    "Everything has a home. What is taken down in a hurry, a note, a photo, a receipt, waits here until it gets one."
}

/// Homes for a note or photo, read aloud.
pub fn homes_of(note: &str) -> String {
    format!("A home for “{note}”")
}

/// Another home than those offered.
pub fn other() -> &'static str {
    "other"
}

/// Under it.
pub fn or_correct() -> &'static str {
    "or correct"
}

/// A mark: it has a home now.
pub fn mark_home(home: &str) -> String {
    format!("for {home}")
}

/// A key to a new note.
pub fn new_note() -> &'static str {
    "New note"
}

/// A note in a mark: its beginning.
pub fn beginning(text: &str) -> String {
    let mut beginning: String = text.chars().take(MOST_IN_MARK).collect();
    if beginning.len() < text.len() {
        let whole_words = beginning.rfind(' ').unwrap_or(beginning.len());
        beginning.truncate(beginning.get(..whole_words).unwrap_or_default().trim_end().len());
        beginning.push('…');
    }
    beginning
}

/// Letters of a note that a mark has room for in two lines: a third says what became of it.
const MOST_IN_MARK: usize = 26;
