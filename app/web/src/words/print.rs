//! A build on one page of paper.

/// The row that leads here, and the head's note.
pub fn title() -> &'static str {
    "Print on one page"
}

/// Under that row.
pub fn what_kind() -> &'static str {
    "A4 or Letter"
}

/// The key.
pub fn print() -> &'static str {
    "Print"
}

/// What stands past the lower edge.
pub fn below() -> &'static str {
    "the rest of the page"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Print keys"
}

/// Under the title: since when, and how it stands.
pub fn begun(day: &str, stands: &str) -> String {
    format!("begun {day}, {stands}")
}

/// A group.
pub fn spent_and_used() -> &'static str {
    "Spent, used up"
}

/// A group.
pub fn sides() -> &'static str {
    "Piece and film"
}

/// A group.
pub fn hours() -> &'static str {
    "Hours by stage"
}

/// A group.
pub fn salvage() -> &'static str {
    "Salvage, own time at its rate"
}

/// A group.
pub fn used() -> &'static str {
    "What was used"
}

/// A group.
pub fn lacks() -> &'static str {
    "Not in it"
}

/// A row.
pub fn one_item(good: &str) -> String {
    format!("One good item, {good} made")
}

/// In place of the rows that there is no room for.
pub fn and_more(count: usize) -> String {
    format!("and {count} more")
}

/// At the foot.
pub fn no_tax_advice() -> &'static str {
    "These figures include own unpaid time; the books do not. Not tax advice."
}
