//! Money paid for one bearer directly.

/// The head of the form.
pub fn title() -> &'static str {
    "Paid directly"
}

/// Beside it: what bears it.
pub fn for_bearer(title: &str) -> String {
    format!("for {title}")
}

/// What it is not for.
pub fn what_goes_here() -> &'static str {
    "Hall hire, a memory card, sharpening: what goes to one build and never through the shelf."
}

/// A field.
pub fn what() -> &'static str {
    "What for"
}

/// In it.
pub fn what_hint() -> &'static str {
    "sharpening of planer knives"
}

/// A field.
pub fn paid() -> &'static str {
    "Paid"
}

/// A field.
pub fn tax() -> &'static str {
    "Tax on top"
}

/// The set of sides.
pub fn side() -> &'static str {
    "It is for the"
}

/// A row: changes what bears it.
pub fn borne_by(title: &str) -> String {
    format!("Borne by {title}")
}

/// Beside it.
pub fn change() -> &'static str {
    "change"
}

/// Over the choice of bearers.
pub fn who_bears_it() -> &'static str {
    "What bears it?"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Expense keys"
}

/// Keeps it.
pub fn keep() -> &'static str {
    "Keep it"
}

/// What a mark calls it.
pub fn kind() -> &'static str {
    "paid"
}

/// What was paid, with the tax in it: `67.80, hire of a drum sander`.
pub fn marked(figure: &str, what: &str) -> String {
    format!("{figure}, {what}")
}

/// An error.
pub fn no_what() -> &'static str {
    "What was it for? Two words are enough: hall hire."
}

/// An error.
pub fn long_what() -> &'static str {
    "Longer than a label: 120 letters fit, the rest is a note. Kept as typed."
}

/// An error.
pub fn no_amount() -> &'static str {
    "How much was paid? Type an amount as 12, 12.50 or 12,50."
}
