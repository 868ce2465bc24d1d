//! What is to be bought.

/// Title, and what leads there.
pub fn to_buy() -> &'static str {
    "To buy"
}

/// Beside it: how many lines stand.
pub fn lines(count: usize) -> Option<String> {
    match count {
        0 => None,
        1 => Some("1 line".to_owned()),
        more => Some(format!("{more} lines")),
    }
}

/// The keys of the sheet.
pub fn keys() -> &'static str {
    "To buy: keys"
}

/// Nothing stands on it.
pub fn nothing() -> &'static str {
    "Nothing stands on the list. What runs low and what a repeat will take goes on it in one tap; anything else is added by hand."
}

/// Over lines of one build.
pub fn for_build(title: &str) -> String {
    format!("For {title}")
}

/// Over lines of no build.
pub fn for_the_shop() -> &'static str {
    "For the shop"
}

/// Over what was bought.
pub fn bought() -> &'static str {
    "Bought"
}

/// In the last mark: ticked.
pub fn bought_kind() -> &'static str {
    "bought"
}

/// The key that ticks a line.
pub fn buy() -> &'static str {
    "Bought"
}

/// Under it: what happens without a price.
pub fn price_later() -> &'static str {
    "price now or later"
}

/// Over the price.
pub fn price_of(what: &str) -> String {
    format!("Price of {what}, as paid")
}

/// Puts a line back unticked.
pub fn not_yet() -> &'static str {
    "Not yet"
}

/// Puts on the list what is low and what open builds will take.
pub fn fill() -> &'static str {
    "Fill it"
}

/// Under it: how many lines that are.
pub fn missing(count: usize) -> String {
    match count {
        0 => "nothing is missing".to_owned(),
        1 => "1 is missing".to_owned(),
        more => format!("{more} are missing"),
    }
}

/// A line by hand.
pub fn add() -> &'static str {
    "Add a line"
}

/// In the last mark: lines that were put on it.
pub fn filled(first: &str, more: usize) -> String {
    if more == 0 { first.to_owned() } else { format!("{first} and {more} more") }
}

/// In the last mark: no price yet.
pub fn no_price_yet() -> &'static str {
    "no price yet: type it on the lot"
}

/// In the last mark: what was paid, and where it lies now.
pub fn paid(figure: &str) -> String {
    format!("paid {figure}; on the shelf")
}

/// A line of the journal that is ticked.
pub fn is_bought() -> &'static str {
    "bought"
}

/// Under the fields of a line.
pub fn what_a_line_does() -> &'static str {
    "The name of something that is kept already joins it. Ticked in the store it becomes a lot with what was paid."
}
