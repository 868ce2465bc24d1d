//! Cost cards: what stands on them, and the sheet on which they are chosen.

use benchslate_core::exchange::cards::About;

/// The row that leads here, and the head's note.
pub fn title() -> &'static str {
    "Cost cards"
}

/// Under that row.
pub fn what_kind() -> &'static str {
    "to lay over the film"
}

/// What stands past the lower edge.
pub fn below() -> &'static str {
    "what to leave out"
}

/// The hand, read aloud.
pub fn keys() -> &'static str {
    "The card"
}

/// The preview, read aloud.
pub fn preview(about: About) -> String {
    let mut text = String::from("The card as it will be: ");
    text.push_str(which(about));
    text
}

/// The set, read aloud.
pub fn which_card() -> &'static str {
    "Which card"
}

/// The set, read aloud.
pub fn which_shape() -> &'static str {
    "Shape"
}

/// The set, read aloud.
pub fn which_ground() -> &'static str {
    "Ground"
}

/// On the key of a card.
pub fn which(about: About) -> &'static str {
    match about {
        About::Kinds => "true cost",
        About::Salvage => "salvage",
        About::Hours => "hours",
        About::Item => "one item",
    }
}

/// On the keys of the shapes.
pub fn shapes() -> [&'static str; 2] {
    ["16:9", "9:16"]
}

/// On the keys of the grounds.
pub fn grounds() -> [&'static str; 3] {
    ["film", "slate", "clear"]
}

/// Over the ticks.
pub fn on_it() -> &'static str {
    "On the card"
}

/// A tick.
pub fn tick_title() -> &'static str {
    "title"
}

/// A tick.
pub fn tick_build() -> &'static str {
    "build"
}

/// A tick.
pub fn tick_amounts() -> &'static str {
    "amounts"
}

/// A tick.
pub fn tick_hours() -> &'static str {
    "hours"
}

/// A tick.
pub fn tick_currency() -> &'static str {
    "currency"
}

/// A tick.
pub fn tick_per_item() -> &'static str {
    "per item"
}

/// The key.
pub fn save_svg() -> &'static str {
    "Save SVG"
}

/// The key.
pub fn save_png() -> &'static str {
    "Save PNG"
}

/// The key.
pub fn share() -> &'static str {
    "Share"
}

/// Before anything is saved.
pub fn says_what_is_ticked() -> &'static str {
    "Nothing stands on it but what is ticked."
}

/// While the letters are on their way.
pub fn waits() -> &'static str {
    "The lettering is on its way."
}

/// They did not arrive.
pub fn no_lettering() -> &'static str {
    "The lettering did not arrive. With a signal, open this sheet once more: then it is kept."
}

/// No picture came of it.
pub fn no_png() -> &'static str {
    "This browser made no PNG of it. Save SVG holds the same."
}

/// In place of a card that the build has no figures for.
pub fn none_yet(about: About) -> &'static str {
    match about {
        About::Kinds => "Nothing has cost anything yet.",
        About::Salvage => "No salvage drawn that has a price new.",
        About::Hours => "No hours yet.",
        About::Item => "No good item made yet.",
    }
}

/// On the card.
pub fn card_title(about: About, dearer: bool) -> &'static str {
    match (about, dearer) {
        (About::Kinds, _) => "What it truly cost",
        (About::Salvage, false) => "What the salvage saved",
        (About::Salvage, true) => "Salvage, dearer than new by",
        (About::Hours, _) => "Where the hours went",
        (About::Item, _) => "What one of them cost",
    }
}

/// On the card: so many stages together.
pub fn others(count: usize) -> String {
    format!("{count} more")
}

/// On the card.
pub fn instead() -> &'static str {
    "Bought new"
}

/// On the card.
pub fn took() -> &'static str {
    "Money and drives"
}

/// On the card.
pub fn own_time() -> &'static str {
    "Own time"
}

/// On the card.
pub fn saved() -> &'static str {
    "Saved"
}

/// On the card.
pub fn dearer() -> &'static str {
    "Dearer than new"
}

/// On the card.
pub fn made(count: &str) -> String {
    format!("{count} made")
}

/// On the card.
pub fn each(count: &str, figure: &str) -> String {
    format!("{figure} each, {count} made")
}

/// In the file name.
pub fn file_name(whose: &str, about: &str, shape: &str, end: &str) -> String {
    format!("{whose}-{about}-{shape}.{end}")
}
