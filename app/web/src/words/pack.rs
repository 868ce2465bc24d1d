//! The publishing pack: what goes under a film, and the sheet that it is put together on.

use benchslate_core::{costing::CostKind, exchange::pack::MadeOf};

/// The row or key that leads here, and the head's note.
pub fn title() -> &'static str {
    "Pack"
}

/// Under it.
pub fn what_kind() -> &'static str {
    "what goes under the film"
}

/// The head.
pub fn head() -> &'static str {
    "Publishing pack"
}

/// What stands past the lower edge.
pub fn below() -> &'static str {
    "what is in it"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Hand the pack on"
}

/// The text, read aloud.
pub fn the_text() -> &'static str {
    "The pack as it will be"
}

/// A heading under which materials stand.
pub fn heading(made_of: MadeOf) -> &'static str {
    match made_of {
        MadeOf::Salvaged => "Salvaged",
        MadeOf::Bought => "Bought",
        MadeOf::Supplied => "Supplied",
        MadeOf::Offcut => "Offcuts",
        MadeOf::Consumable => "Used up",
    }
}

/// A heading of the text.
pub fn tools() -> &'static str {
    "Tools"
}

/// A heading of the text.
pub fn chapters() -> &'static str {
    "Chapters"
}

/// A heading of the text.
pub fn cost() -> &'static str {
    "What it cost"
}

/// A line of it.
pub fn cost_line(kind: CostKind, figure: &str) -> String {
    format!("{}: {figure}", super::cost::kind(kind))
}

/// The last line of it.
pub fn in_all(figure: &str, currency: Option<&str>) -> String {
    match currency {
        Some(currency) => format!("True cost: {figure} {currency}"),
        None => format!("True cost: {figure}"),
    }
}

/// A line: what, how much, where to get it.
pub fn line(what: &str, amount: &str, link: Option<&str>) -> String {
    let mut text = super::journal::comma(what, amount);
    if let Some(link) = link {
        text.push_str(": ");
        text.push_str(link);
    }
    text
}

/// A sponsor pays.
pub fn paid(fee: Option<&str>, by: Option<&str>) -> String {
    let by = by.map(|by| format!(" by {by}")).unwrap_or_default();
    let fee = fee.map(|fee| format!(" ({fee})")).unwrap_or_default();
    format!("This film is paid for{by}{fee}.")
}

/// Material or a tool was given.
pub fn given(what: &str, by: Option<&str>) -> String {
    match by {
        Some(by) => format!("Given by {by}: {what}."),
        None => format!("Given, not bought: {what}."),
    }
}

/// A tool was lent.
pub fn lent(what: &str, by: Option<&str>) -> String {
    match by {
        Some(by) => format!("Lent by {by}: {what}."),
        None => format!("Lent: {what}."),
    }
}

/// Links pay.
pub fn affiliate() -> &'static str {
    "Links here may earn a share of what is bought through them."
}

/// Nothing is known to say.
pub fn nothing_in_it() -> &'static str {
    "Nothing goes under this film yet. What is drawn for the build, the tools at its stages and its chapters come here by themselves."
}

/// The ticks, read aloud.
pub fn what_is_in_it() -> &'static str {
    "What is in it"
}

/// A tick.
pub fn tick_costs() -> &'static str {
    "What it cost, by kind"
}

/// A tick.
pub fn tick_names() -> &'static str {
    "Who gave, lent and paid, by name"
}

/// A tick.
pub fn tick_fee() -> &'static str {
    "The sponsor\u{2019}s fee"
}

/// Over the keys, before one was tapped.
pub fn says_what_is_ticked() -> &'static str {
    "Names, fees and costs stay out unless ticked."
}

/// Key.
pub fn copy() -> &'static str {
    "Copy"
}

/// Under it.
pub fn as_text() -> &'static str {
    "as text"
}

/// Key.
pub fn share() -> &'static str {
    "Share"
}

/// Key.
pub fn save_text() -> &'static str {
    "Save"
}

/// Under it.
pub fn ends_in_txt() -> &'static str {
    ".txt"
}

/// Key.
pub fn save_chapters() -> &'static str {
    "Chapters"
}

/// Under it.
pub fn ends_in_vtt() -> &'static str {
    ".vtt"
}

/// It is on the clipboard.
pub fn copied() -> &'static str {
    "Copied."
}

/// It is not.
pub fn not_copied() -> &'static str {
    "This browser copies nothing. Save it, or mark the text and copy it by hand."
}

/// It went to nobody.
pub fn not_shared() -> &'static str {
    "This browser shares nothing. Copy or save it."
}

/// A pack's name, or a part's.
pub fn file_name(whose: &str, build: &str, what: &str, end: &str) -> String {
    format!("{whose}-{build}-{what}.{end}")
}

/// What must be said, and where.
pub fn say_so() -> &'static str {
    "Paid, given, lent, discounted, affiliate or family: say so at the start, in picture and in sound; rules differ by country, ask your own authority."
}

/// Goods.
pub fn in_kind() -> &'static str {
    "Goods in kind may count as income at their value."
}
