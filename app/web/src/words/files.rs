//! Tables for a spreadsheet.

use super::Tongue;
use benchslate_core::exchange::tables::Of;

/// The head, and the row that leads here.
pub fn title() -> &'static str {
    "Files for a spreadsheet"
}

/// Under that row.
pub fn what_kind() -> &'static str {
    "entries, cost lines, stock, tools, income"
}

/// The same, of one build.
pub fn what_kind_of_build() -> &'static str {
    "entries, cost lines, income"
}

/// What stands past the lower edge.
pub fn below() -> &'static str {
    "how they are written"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Save a file"
}

/// Over the keys.
pub fn tap_saves() -> &'static str {
    "A tap saves one."
}

/// What a table is called.
pub fn table(of: Of) -> &'static str {
    match of {
        Of::Entries => "Entries",
        Of::Cost => "Cost lines",
        Of::Stock => "Stock",
        Of::Tools => "Tools",
        Of::Income => "Income",
    }
}

/// On the key, under it.
pub fn ends_in() -> &'static str {
    ".csv"
}

/// What a row of it is.
pub fn a_row_is(of: Of) -> &'static str {
    match of {
        Of::Entries => "a row a line of the journal, struck ones too",
        Of::Cost => "a row a line of what a build truly cost",
        Of::Stock => "a row a lot or an item, also where none is left",
        Of::Tools => "a row a tool: hours, rate, what it is worth",
        Of::Income => "a row a payment, and what is still expected",
    }
}

/// How many.
pub fn rows(tongue: &Tongue, count: usize) -> String {
    let mut text = tongue.number(&count.to_string());
    text.push_str(if count == 1 { " row" } else { " rows" });
    text
}

/// At the head.
pub fn what_they_are() -> &'static str {
    "To look at, to sum, to hand on. They can't be brought in again: only a backup can."
}

/// At the foot.
pub fn how_written() -> &'static str {
    "Commas between fields, figures with a point, days as 2026-11-20; money in the shop's currency, which stands over each column. Words that a spreadsheet could run as a formula have an apostrophe before them."
}
