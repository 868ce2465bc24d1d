//! The shelf as books: by which formula it is drawn, counts, what the shop lost, what lay there on a day.

use benchslate_core::{
    costing::{Formula, Why},
    journal::kinds::ShelfState,
};

/// A formula.
pub fn formula(formula: Formula) -> &'static str {
    match formula {
        Formula::MovingAverage => "moving average",
        Formula::FirstIn => "first in, first out",
    }
}

/// Title, and the row that leads there.
pub fn drawn_by_formula() -> &'static str {
    "Stock is drawn by"
}

/// The keys of the sheet.
pub fn formula_keys() -> &'static str {
    "Stock formula: keys"
}

/// Over the day.
pub fn from_day() -> &'static str {
    "From"
}

/// What happens on that day, and what never does.
pub fn what_a_change_does() -> &'static str {
    "What lies there that morning goes on at what it stands at. What was drawn before stays as it is, and so do builds that are closed. Lots drawn by name are not in it."
}

/// Over the effect.
pub fn what_it_comes_to() -> &'static str {
    "What it comes to today"
}

/// What all that lies there cost, or all that lies in open builds.
pub fn for_books(in_builds: bool) -> &'static str {
    if in_builds { under_way() } else { "On the shelf" }
}

/// What lies in open builds.
pub fn under_way() -> &'static str {
    "Work under way"
}

/// At the seam: what stands further down.
pub fn worth_below() -> &'static str {
    "worth, work under way"
}

/// Under their sum.
pub fn under_way_in_all() -> &'static str {
    "in open builds"
}

/// Of a batch: so much has not left.
pub fn so_many_left(left: &str, all: &str) -> String {
    format!("{left} of {all} items")
}

/// Under a build's row: which of its figures it is.
pub fn used_up() -> &'static str {
    "used up"
}

/// The same by the other formula.
pub fn else_it_is(what: Option<&str>, formula: &str, figure: &str) -> String {
    match what {
        Some(what) => format!("{what}; {figure} by {formula}"),
        None => format!("{figure} by {formula}"),
    }
}

/// Nothing that is drawn so far costs anything else.
pub fn moves_nothing() -> &'static str {
    "No figure of today moves: nothing was drawn since that day that the two see differently."
}

/// It is that already.
pub fn that_already(formula: &str) -> String {
    format!("From that day on it is {formula} already.")
}

/// Keep a choice from a day on.
pub fn keep_formula() -> &'static str {
    "Keep it"
}

/// In the last mark: `first in, first out, from 26 Nov`.
pub fn formula_from(formula: &str, day: &str) -> String {
    format!("stock: {formula}, from {day}")
}

/// What the shop lost of its stock.
pub fn losses() -> &'static str {
    "Lost from stock"
}

/// Why the shop bears it.
pub fn why(why: Why) -> &'static str {
    match why {
        Why::Counted => "Count differences",
        Why::ThrownOut => "Thrown out",
        Why::Given => "Given away",
        Why::Closed => "After builds were closed",
        Why::NothingUsable => "Nothing was usable",
    }
}

/// What a look at the shelf is called in the journal.
pub fn look(state: ShelfState) -> &'static str {
    match state {
        ShelfState::Empty => "empty",
        ShelfState::Counted => "counted",
        ShelfState::ThrownOut => "thrown out",
        ShelfState::Given => "given away",
    }
}

/// Over what was found, or done.
pub fn what_happened() -> &'static str {
    "What happened to it"
}

/// Title of the walk along the shelf.
pub fn count() -> &'static str {
    "Count"
}

/// Beside the title: how many are typed.
pub fn counted_so_far(typed: usize) -> Option<String> {
    (typed > 0).then(|| format!("{typed} typed"))
}

/// The keys of the sheet.
pub fn count_keys() -> &'static str {
    "Count: keys"
}

/// Over a field: the name, and what the books say.
pub fn by_the_books(name: &str, left: &str) -> String {
    format!("{name}, {left} by the books")
}

/// After what was counted: what is missing, or too much.
pub fn differs(by: &str) -> String {
    format!("differs {by}")
}

/// After what was counted: it is what the books say.
pub fn as_the_books_say() -> &'static str {
    "as by the books"
}

/// Keeps what was counted.
pub fn keep_count(typed: usize) -> String {
    match typed {
        0 | 1 => "Keep the count".to_owned(),
        many => format!("Keep {many} counts"),
    }
}

/// Nothing was typed.
pub fn count_one() -> &'static str {
    "Type how much lies there, one or several. Nought is an answer."
}

/// Under the fields.
pub fn what_a_count_does() -> &'static str {
    "A difference goes to the shop\u{2019}s count differences, never into a build. One at a time or all together. Salvaged timber: count what is sorted."
}

/// There is nothing to count.
pub fn nothing_to_count() -> &'static str {
    "Nothing is kept in stock yet."
}

/// In the last mark: `wood glue, 3`, and others.
pub fn counted_and_more(first: &str, more: usize) -> String {
    if more == 0 { first.to_owned() } else { format!("{first} and {more} more") }
}

/// Under the last mark: what all differences came to.
pub fn differences_come_to(figure: &str) -> String {
    format!("differences {figure}")
}

/// Under the last mark: no difference.
pub fn no_difference() -> &'static str {
    "as by the books"
}

/// The key to thrown out and given away.
pub fn gone() -> &'static str {
    "Gone"
}

/// Under it.
pub fn thrown_or_given() -> &'static str {
    "spoiled, given"
}

/// What one year came to.
pub fn lost_in(year: i32) -> String {
    format!("Lost in {year}")
}

/// Nothing was lost.
pub fn nothing_lost() -> &'static str {
    "Nothing was lost from stock: no count differs, nothing was thrown out or given away."
}

/// Under the losses.
pub fn who_bears_losses() -> &'static str {
    "The shop bears these; they are in no build. Below zero: more was there than the books said."
}

/// The sheet keys.
pub fn losses_keys() -> &'static str {
    "Lost from stock: keys"
}

/// Title of the shelf as of a day.
pub fn held_title() -> &'static str {
    "What is on the shelf"
}

/// Over the day.
pub fn at_the_end_of() -> &'static str {
    "At the end of"
}

/// Under a row: quantity and what one cost.
pub fn so_many_at(many: &str, unit_cost: Option<&str>) -> String {
    match unit_cost {
        Some(unit_cost) => format!("{many} at {unit_cost}"),
        None => many.to_owned(),
    }
}

/// A quantity that nobody knows.
pub fn some() -> &'static str {
    "how much is not known"
}

/// Under the total.
pub fn for_the_books() -> &'static str {
    "For the books: what was paid, and paid hours in it. Own hours, wear and goods supplied count nothing here. Tap a line for its entries."
}

/// Beside a day\u{2019}s field that can\u{2019}t be read, or lies ahead.
pub fn day_ahead() -> &'static str {
    "That day is not over yet: this is as of now."
}

/// Nothing lay there.
pub fn nothing_lay_there() -> &'static str {
    "Nothing lay on the shelf at the end of that day."
}

/// The keys of the sheet.
pub fn held_keys() -> &'static str {
    "On the shelf: keys"
}

/// The total.
pub fn worth() -> &'static str {
    "Worth"
}

/// Beside the row that leads to the shelf of a day.
pub fn on_any_day() -> &'static str {
    "on any day, for the books"
}
