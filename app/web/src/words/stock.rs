//! Stock: what is on the shelf, what comes in, what is used.

pub use super::sorting::*;

use super::{Tongue, units};
use benchslate_core::{
    journal::kinds::{Origin, Side, Use},
    measure::{Dec, Quantity, Unit},
};

/// `4 discs`, `1/4 tin`, `19 3/8 in`.
pub fn so_much(tongue: &Tongue, quantity: Dec, unit: Unit, word: Option<&str>) -> String {
    units::amount_short(tongue, Quantity::from_decimal(quantity.0).unwrap_or_default(), unit, word)
}

/// `4 discs, 2.84`.
pub fn used_for(amount: &str, cost: &str) -> String {
    format!("{amount}, {cost}")
}

/// What a draw left.
pub fn left_on_shelf(left: &str) -> String {
    format!("{left} left on the shelf")
}

/// `walnut, 7.39 left`.
pub fn left_of(name: &str, left: &str) -> String {
    format!("{name}, {left} left")
}

/// What a mark calls a draw.
pub fn used() -> &'static str {
    "used"
}

/// The head of the shelf.
pub fn shelf() -> &'static str {
    "Stock on the shelf"
}

/// Beside it: `7 kinds, 492.80`.
pub fn kinds(count: usize, value: Option<&str>) -> String {
    let kinds = if count == 1 { "1 kind".to_owned() } else { format!("{count} kinds") };
    value.map_or(kinds.clone(), |value| format!("{kinds}, {value}"))
}

/// The keys of the shelf, read aloud.
pub fn shelf_keys() -> &'static str {
    "Stock keys"
}

/// The field that finds.
pub fn find() -> &'static str {
    "find in stock"
}

/// Nothing on the shelf fits what was typed.
pub fn nothing_found(text: &str) -> String {
    format!("Nothing on the shelf is called “{text}”.")
}

/// An empty shelf.
pub fn empty_shelf() -> &'static str {
    "The shelf is empty"
}

/// What goes there.
pub fn what_goes_here() -> &'static str {
    "Timber, fittings, glue, oil, abrasives: what comes in is a lot, with what it cost. What a build uses is drawn from it."
}

/// Adds a lot.
pub fn add_a_lot() -> &'static str {
    "Add a lot"
}

/// Under it.
pub fn salvaged_or_bought() -> &'static str {
    "salvaged, bought, offcut"
}

/// Sorts a lot.
pub fn sort() -> &'static str {
    "Sort"
}

/// Uses stock.
pub fn use_stock() -> &'static str {
    "Use stock"
}

/// What stands on the long-break line of the shelf.
pub fn more_rows(count: usize) -> String {
    if count == 1 { "1 more on the shelf".to_owned() } else { format!("{count} on the shelf in all") }
}

/// `43 bd ft, sorted`; `7 sorted, 35 bd ft to come`; `12 discs, running low`.
pub fn on_the_shelf(
    left: Option<String>,
    parts: Option<(String, String)>,
    salvaged: bool,
    low: bool,
) -> String {
    let mut text = match (left, parts) {
        (_, Some((sorted, to_come))) if sorted == "0" => format!("{to_come} to come, none sorted"),
        (_, Some((sorted, to_come))) => format!("{sorted} sorted, {to_come} to come"),
        (Some(left), None) if salvaged => format!("{left}, sorted"),
        (Some(left), None) => left,
        (None, None) => "how much is not known yet: sort some of it".to_owned(),
    };
    if low {
        text.push_str(", running low");
    }
    text
}

/// In the place of a value, where a price is missing.
pub fn no_price() -> &'static str {
    "no price"
}

/// How it was come by.
pub fn origin(origin: Origin) -> &'static str {
    match origin {
        Origin::Salvaged => "salvaged",
        Origin::Bought => "bought",
        Origin::Supplied => "supplied",
        Origin::Offcut => "offcut",
    }
}

/// What it is for.
pub fn purpose(purpose: Use) -> &'static str {
    match purpose {
        Use::Timber => "timber",
        Use::Fitting => "fitting",
        Use::Consumable => "used up",
    }
}

/// Going into what bears it.
pub fn into(title: &str) -> String {
    format!("into {title}")
}

/// On the key that opens the set of sides, and after what an offered draw costs.
pub fn for_side(side: Side) -> &'static str {
    match side {
        Side::Piece => "for the piece",
        Side::Film => "for the film",
        Side::Both => "for both",
    }
}

/// The key, read aloud.
pub fn side_key(side: Side) -> String {
    format!("{}: change", for_side(side))
}

/// The set that it opens, read aloud.
pub fn what_for() -> &'static str {
    "What it is for"
}

/// The chooser: what to use.
pub fn use_what() -> &'static str {
    "Use what?"
}

/// Beside it.
pub fn latest_first() -> &'static str {
    "latest first"
}

/// The chooser of what bears it.
pub fn into_what() -> &'static str {
    "Into what?"
}

/// Ways to say how much.
pub fn share_of(word: &str) -> String {
    format!("Share of {word}")
}

/// Read aloud before them.
pub fn how_said() -> &'static str {
    "Say how much by"
}

/// The cells of a size.
pub fn length() -> &'static str {
    "Length"
}

/// The cells of a size.
pub fn wide() -> &'static str {
    "Width"
}

/// The cells of a size.
pub fn thick() -> &'static str {
    "Thickness"
}

/// The cells of a size.
pub fn pieces() -> &'static str {
    "Pieces"
}

/// The way by what is coated.
pub fn area_and_coats() -> &'static str {
    "Area × coats"
}

/// Its cells, read aloud.
pub fn how_coated() -> &'static str {
    "What is coated"
}

/// Its cells.
pub fn area_of_one() -> &'static str {
    "Area of one"
}

/// The same.
pub fn coats() -> &'static str {
    "Coats"
}

/// Over the well of an area: typed as it is, or as two sides.
pub fn area_to_coat() -> &'static str {
    "Area of one, or length × width"
}

/// Over the well of coats.
pub fn how_many_coats() -> &'static str {
    "How many coats"
}

/// No area typed.
pub fn area_missing() -> &'static str {
    "No area yet: 0.19 m², or two sides, 600 × 320."
}

/// Beyond all limits.
pub fn area_too_large() -> &'static str {
    "Larger than any shop: check the area. Kept as typed."
}

/// `0.19 m² × 24 × 2 coats = 9.12 m²`.
pub fn coated(one: &str, pieces: u32, coats: u32, all: &str) -> String {
    let mut text = one.to_owned();
    if pieces != 1 {
        text.push_str(&format!(" × {pieces}"));
    }
    text.push_str(&if coats == 1 { " × 1 coat".to_owned() } else { format!(" × {coats} coats") });
    text.push_str(&format!(" = {all}"));
    text
}

/// `15 m² a tin`.
pub fn covers_each(area: &str, each: &str) -> String {
    format!("{area} {each}")
}

/// The working of a coating.
pub fn coated_by(coated: &str, covers: &str, on_top: &str) -> String {
    if on_top == "0" {
        format!("{coated} ÷ {covers}")
    } else {
        format!("{coated} ÷ {covers}, {on_top} % on top")
    }
}

/// A cell of a coating: what stays in the brush and the tin.
pub fn on_top() -> &'static str {
    "On top, %"
}

/// Over its well.
pub fn lost_on_top() -> &'static str {
    "Lost in brush and tin, % on top"
}

/// By the field.
pub fn more_than_all_on_top() -> &'static str {
    "Not more than 100 %."
}

/// A count.
pub fn count() -> &'static str {
    "Count"
}

/// Over the well.
pub fn length_of_one() -> &'static str {
    "Length of one piece"
}

/// Over the well.
pub fn width_of_one() -> &'static str {
    "Width of one piece"
}

/// Over the well.
pub fn thickness_of_one() -> &'static str {
    "Thickness of one piece"
}

/// Over the well.
pub fn how_many_pieces() -> &'static str {
    "How many alike"
}

/// Over the well: `How many discs`, `How much`.
pub fn how_many(word: &str) -> String {
    if word.is_empty() { "How many".to_owned() } else { format!("How many {word}") }
}

/// Over the well.
pub fn how_much() -> &'static str {
    "How much"
}

/// The working under a size: `19 3/8 × 2 1/4 × 2 in; 1 piece`.
pub fn size(length: &str, wide: &str, thick: Option<&str>, pieces: u32) -> String {
    let mut text = format!("{length} × {wide}");
    if let Some(thick) = thick {
        text.push_str(" × ");
        text.push_str(thick);
    }
    text.push_str("; ");
    text.push_str(&pieces.to_string());
    text.push_str(if pieces == 1 { " piece" } else { " pieces" });
    text
}

/// What a draw leaves.
pub fn leaves(left: &str) -> String {
    format!("leaves {left}")
}

/// What a draw leaves of timber that is not all sorted yet: what is expected of the rest is not on the shelf.
pub fn leaves_and_to_come(there: &str, to_come: &str) -> String {
    format!("leaves {there} sorted, {to_come} to come")
}

/// It leaves nothing.
pub fn empties_it() -> &'static str {
    "empties it"
}

/// It is more than is left: recorded and flagged.
pub fn more_than_left() -> &'static str {
    "more than is left"
}

/// Parts of a tin's drawing.
pub fn used_up() -> &'static str {
    "used up"
}

/// Parts of a tin's drawing.
pub fn this_time() -> &'static str {
    "this time"
}

/// Parts of a tin's drawing.
pub fn left() -> &'static str {
    "left"
}

/// All of a tin.
pub fn whole(word: &str) -> String {
    format!("whole {word}")
}

/// `1/4 of a tin worth 58.00`.
pub fn worth(share: &str, whole: &str) -> String {
    format!("{share}, a whole one {whole}")
}

/// The cost can't be said.
pub fn cost_not_known() -> &'static str {
    "cost not known"
}

/// Use so much.
pub fn use_so_much(amount: &str) -> String {
    format!("Use {amount}")
}

/// The key while what is typed can't be used.
pub fn use_it() -> &'static str {
    "Use it"
}

/// Nothing chosen or typed yet.
pub fn say_how_much() -> &'static str {
    "Say how much: tap a level, or type it."
}

/// A size needs all its sides.
pub fn side_missing(side: &str) -> String {
    format!("{side} is missing: board measure needs length, width and thickness.")
}

/// Beside the field of another unit: what it is kept in.
pub fn unit_does_not_fit(unit: &str) -> String {
    format!("This stock is kept in {unit}, and what is typed can't be turned into it. Kept as typed.")
}

/// The keys of the use sheet, read aloud.
pub fn use_keys() -> &'static str {
    "Use keys"
}

/// Nothing to use yet.
pub fn nothing_to_use() -> &'static str {
    "Nothing to use yet: the shelf has no lot."
}

/// The pad.
pub fn pad_name() -> &'static str {
    "Number pad"
}

/// On the pad.
pub fn rub_out() -> &'static str {
    "rub out"
}

/// On the pad, read aloud.
pub fn point() -> &'static str {
    "point"
}

/// Read aloud for the sign between minutes and seconds.
pub fn colon() -> &'static str {
    "colon"
}

/// On the pad, read aloud. A second tap takes one more digit above the line.
pub fn over() -> &'static str {
    "over, again: one more digit above the line"
}

/// The steel rule, read aloud.
pub fn rule_name() -> &'static str {
    "Marks of the rule, lit ones add"
}

/// Its marks, read aloud.
pub fn rule_marks() -> [String; 5] {
    ["1/2", "1/4", "1/8", "1/16", "1/32"].map(|mark| format!("add {mark}"))
}

/// A mark or a title: came back.
pub fn came_back() -> &'static str {
    "came back"
}

/// The sheet of a return.
pub fn what_comes_back() -> &'static str {
    "Comes back"
}

/// What it comes back from: `of 20 bd ft drawn Fri 20 Nov`.
pub fn of_draw(amount: &str, day: &str) -> String {
    format!("of {amount}, {day}")
}

/// Keeps a return.
pub fn bring_back_it() -> &'static str {
    "Put it back"
}

/// Keeps a return of so much.
pub fn bring_back(amount: &str) -> String {
    format!("Put back {amount}")
}

/// What a return does.
pub fn return_says() -> &'static str {
    "It goes back to the same shelf at what it cost when it was drawn."
}

/// More comes back than was drawn.
pub fn more_than_drawn() -> &'static str {
    "more than was drawn: the rest is not counted"
}

/// The draw is not there.
pub fn no_such_draw() -> &'static str {
    "This draw is struck out or not there."
}

/// A key: the shelf was looked at and nothing is left.
pub fn marked_empty() -> &'static str {
    "It is empty"
}

/// Under it.
pub fn nothing_left() -> &'static str {
    "nothing left of it"
}

/// A mark: found empty.
pub fn found_empty() -> &'static str {
    "found empty"
}

/// The sheet of what has gone.
pub fn not_there() -> &'static str {
    "Not on this shelf: struck out, or never here."
}

/// A size beyond the limits.
pub fn too_large() -> &'static str {
    "Larger than any board: check the sides. Kept as typed."
}

/// On the key: `19 3/8 in`, `3 × 19 3/8 in`.
pub fn pieces_of(pieces: u32, length: &str) -> String {
    if pieces == 1 { length.to_owned() } else { format!("{pieces} × {length}") }
}

/// Nothing typed yet that comes back.
pub fn say_how_much_back() -> &'static str {
    "Say how much comes back. Nothing comes back unless it is measured."
}

/// `2 discs, sanding discs`.
pub fn came_back_of(amount: &str, name: &str) -> String {
    format!("{amount}, {name}")
}
