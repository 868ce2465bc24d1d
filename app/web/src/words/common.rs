//! Words that every screen needs.

use benchslate_core::journal::kinds::Side;

/// The five places of the title block.
pub fn places() -> [&'static str; 5] {
    ["Bench", "Builds", "Stock", "Plan", "Shop"]
}

/// The name of the way round.
pub fn places_name() -> &'static str {
    "Places"
}

/// A build's own sheets.
pub fn build_sheets() -> [&'static str; 4] {
    ["Journal", "Cost", "Time", "Film"]
}

/// Read aloud before a build's own sheets.
pub fn build_sheets_name(title: &str) -> String {
    format!("Sheets of {title}")
}

/// The Bench cell while a clock runs, read aloud.
pub fn bench_running(stage: &str, hours: &str) -> String {
    format!("Bench, {stage}, {hours}")
}

/// Two clocks in the Bench cell.
pub fn running(count: usize) -> String {
    format!("{count} running")
}

/// Beside digits that are hours.
pub fn hours_unit() -> &'static str {
    "h"
}

/// What it is for.
pub fn side(side: Side) -> &'static str {
    match side {
        Side::Piece => "piece",
        Side::Film => "film",
        Side::Both => "both",
    }
}

/// Leave a form; what was typed stays.
pub fn leave() -> &'static str {
    "Leave"
}

/// The last mark, read aloud.
pub fn last_mark() -> &'static str {
    "Last mark"
}

/// States of the last mark.
pub fn kept() -> &'static str {
    "kept"
}

/// On its way to the disk.
pub fn being_kept() -> &'static str {
    "being kept"
}

/// The write failed.
pub fn not_safe() -> &'static str {
    "not safe"
}

/// It was taken back.
pub fn taken_back() -> &'static str {
    "taken back"
}

/// The key of the last mark.
pub fn undo() -> &'static str {
    "Undo"
}

/// The key of the last mark after Undo.
pub fn put_back() -> &'static str {
    "Put back"
}

/// The shop as something that work is for.
pub fn the_shop() -> &'static str {
    "The shop"
}

/// None of the choices.
pub fn none() -> &'static str {
    "none"
}

/// The window's title.
pub fn window_title(sheet: &str) -> String {
    format!("{sheet} · Benchslate")
}

/// Whose; the maker's own, until they have a name.
pub fn whose(name: &str) -> String {
    if name == super::builds::me() {
        "your".to_owned()
    } else if name.ends_with('s') {
        format!("{name}\u{2019}")
    } else {
        format!("{name}\u{2019}s")
    }
}

/// Who, inside a sentence: `No rate for Tobin`.
pub fn whom(name: &str) -> &str {
    if name == super::builds::me() { "you" } else { name }
}
