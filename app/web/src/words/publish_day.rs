//! The publish date, and the list of what stands before it.

/// The head.
pub fn title() -> &'static str {
    "Dates that can\u{2019}t move"
}

/// A field.
pub fn piece_due() -> &'static str {
    "The piece is due"
}

/// A field.
pub fn goes_out() -> &'static str {
    "Film goes out"
}

/// A field.
pub fn film_length() -> &'static str {
    "Film planned, minutes"
}

/// Under them.
pub fn what_it_does() -> &'static str {
    "The plan holds the piece to its day, and its film to the cut that the publish date needs. From that the chain is counted back; from the length, what the edit will take. Either may stay empty. A day in the past can be kept; the plan then says that it is over."
}

/// By a field.
pub fn more_than_none() -> &'static str {
    "A film is longer than nothing. Leave it empty until its length is known."
}

/// Of a mark.
pub fn kind() -> &'static str {
    "publishing"
}

/// A mark.
pub fn marked(due: Option<&str>, out: Option<&str>) -> String {
    match (due, out) {
        (Some(due), Some(out)) => format!("due {due}, goes out {out}"),
        (Some(due), None) => format!("due {due}"),
        (None, Some(out)) => format!("goes out {out}"),
        (None, None) => "no date".to_owned(),
    }
}

/// The head of the list.
pub fn leads() -> &'static str {
    "Days before publishing"
}

/// Over the list.
pub fn how_it_counts() -> &'static str {
    "From the publish date back. Each: how many days before what stands above it. Empty: left out. Lock and publish take none."
}

/// What stands past the lower edge.
pub fn below() -> &'static str {
    "more of the list"
}

/// The choice beside the number, of a row.
pub fn which_days() -> &'static str {
    "Counted in"
}

/// A row, read aloud.
pub fn row(what: &str) -> String {
    format!("{what}: days")
}

/// The number of a row of the maker's own.
pub fn how_many() -> &'static str {
    "How many"
}

/// The field of a row of the maker's own.
pub fn own_words() -> &'static str {
    "What else"
}

/// A key.
pub fn common_list() -> &'static str {
    "The usual list"
}

/// Under it.
pub fn common_practice() -> &'static str {
    "common practice"
}

/// A mark.
pub fn marked_list(own: bool) -> &'static str {
    if own { "own list" } else { "the usual list" }
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Form keys"
}
