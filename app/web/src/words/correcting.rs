//! Why a correction of an entry can't be kept as it was typed.

/// A field: the parts of a drive that the lot itself bears.
pub fn parts_of_this_lot() -> &'static str {
    "Parts for this lot"
}

/// The end does not lie after the start, by the field.
pub fn end_before_start(from: &str) -> String {
    format!(
        "That is not after {from}, when it began. Hours past midnight: type how long, on the day they began. Kept as typed."
    )
}

/// The start was put after the end that stands, by the field of the start.
pub fn stopped_before(end: &str) -> String {
    format!("It was stopped at {end}, before that. Say when it ended too. Kept as typed.")
}

/// A name is missing, by the field.
pub fn name_missing() -> &'static str {
    "No name yet. One word is enough."
}

/// Words are missing, by the field.
pub fn words_missing() -> &'static str {
    "Nothing written yet. A word is enough."
}

/// Too many signs, by the field.
pub fn too_long(most: usize) -> String {
    format!("Longer than this field: {most} letters fit. Kept as typed.")
}

/// A choice is missing, by the field.
pub fn not_chosen() -> &'static str {
    "Not chosen yet."
}

/// A share beyond the whole, by the field.
pub fn over_the_whole() -> &'static str {
    "More than all of it: 0 to 100 %. Kept as typed."
}

/// Not a single one, by the field.
pub fn one_at_least() -> &'static str {
    "One at least. Kept as typed."
}

/// More leave than are there, by the field.
pub fn so_many_here(here: u32) -> String {
    match here {
        0 => "None is here any more. Say first what was made. Kept as typed.".to_owned(),
        1 => "One is still here. Kept as typed.".to_owned(),
        _ => format!("{here} are still here. Kept as typed."),
    }
}

/// No part of a drive, by the field.
pub fn one_part_at_least() -> &'static str {
    "One part at least. Empty: it bears none. Kept as typed."
}

/// No bearer of a drive, by the first field.
pub fn nobody_bears_it() -> &'static str {
    "Somebody must bear it: one part for one of them at least."
}

/// Over the parts of a drive.
pub fn shared_in_parts() -> &'static str {
    "Shared in parts"
}

/// A field: how many of them.
pub fn parts_for(title: &str) -> String {
    format!("Parts for {title}")
}

/// In it while it is empty.
pub fn no_parts() -> &'static str {
    "bears none"
}

/// The choice of one more that bears some of it.
pub fn shared_with_more() -> &'static str {
    "Shared with one more"
}

/// It names something that was struck out.
pub fn names_gone() -> &'static str {
    "names something struck out since"
}

/// No share, or no hours, by the field.
pub fn more_than_none() -> &'static str {
    "More than 0. Kept as typed."
}

/// Neither expected nor received, by the field.
pub fn no_amount_yet() -> &'static str {
    "No amount yet: what is expected, or what arrived."
}

/// By the field of spoiled ones.
pub fn too_many_spoiled(most: usize) -> String {
    format!("{most} spoiled ones at most in one entry; write the rest in another. Kept as typed.")
}

/// A key of a tool's entry.
pub fn the_tool() -> &'static str {
    "The tool"
}

/// Under it.
pub fn worth_there() -> &'static str {
    "worth, rate"
}

/// A key of a monthly cost.
pub fn the_months() -> &'static str {
    "Months"
}

/// Under it.
pub fn borne_there() -> &'static str {
    "what hours bear"
}

/// A key of a build's entry.
pub fn the_money() -> &'static str {
    "Money"
}

/// Under it.
pub fn in_and_closing() -> &'static str {
    "pieces, closing"
}

/// In the mark of a corrected lot: `corrected; Hall bench 16.00 to 24.00`.
pub fn and_it_moves(corrected: &str, moves: &str) -> String {
    format!("{corrected}; {moves}")
}

/// A build that bears another sum now.
pub fn moves_to(build: &str, before: &str, after: &str) -> String {
    format!("{build} {before} to {after}")
}

/// A build that is closed.
pub fn closed_keeps(build: &str, cost: &str) -> String {
    format!("{build} is closed and keeps {cost}")
}

/// Those that are named, and how many more there are.
pub fn some_moved(named: &[String], more: usize) -> String {
    let named = named.join(", ");
    if more == 0 { named } else { format!("{named} and {more} more") }
}
