//! Receipts: the total at the till, the lines in the evening; and by-products.

/// The head of the form.
pub fn title() -> &'static str {
    "Receipt now"
}

/// Beside it.
pub fn lines_later() -> &'static str {
    "lines later"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Receipt keys"
}

/// The field.
pub fn total() -> &'static str {
    "Total paid, tax in it"
}

/// A row: what bears it.
pub fn for_what() -> &'static str {
    "For"
}

/// Receipts beyond those that are named.
pub fn more_receipts(count: usize) -> String {
    if count == 1 { "1 more receipt waits".to_owned() } else { format!("{count} more receipts wait") }
}

/// Beside it.
pub fn in_all(count: usize) -> String {
    format!("{count} in all")
}

/// Under it.
pub fn at_work() -> &'static str {
    "last choice"
}

/// A row: where it was bought.
pub fn from() -> &'static str {
    "From"
}

/// Under it.
pub fn may_stay_empty() -> &'static str {
    "may be left"
}

/// In its place, while nothing is typed.
pub fn nobody() -> &'static str {
    "say where"
}

/// The field of it.
pub fn from_whom() -> &'static str {
    "From whom"
}

/// In it.
pub fn from_hint() -> &'static str {
    "hardware shop"
}

/// Over places that were typed before.
pub fn last_ones() -> &'static str {
    "The last ones"
}

/// Closes the choice.
pub fn so() -> &'static str {
    "So it is"
}

/// Under the key for a photo, once there is one.
pub fn again() -> &'static str {
    "again"
}

/// The filled key.
pub fn keep() -> &'static str {
    "Keep"
}

/// An error: neither total nor photo.
pub fn nothing_to_keep() -> &'static str {
    "How much was paid? Type the total, or take a photo of the receipt."
}

/// An error.
pub fn long_from() -> &'static str {
    "The name of the place is longer than a label: 80 letters fit. Kept as typed."
}

/// A mark, where no total was typed.
pub fn no_total() -> &'static str {
    "no total yet"
}

/// Over the choice of what bears it.
pub fn what_for() -> &'static str {
    "What was it bought for?"
}

/// No total, no line.
pub fn no_line_yet() -> &'static str {
    "no line yet"
}

/// The head of a receipt without a name.
pub fn receipt() -> &'static str {
    "Receipt"
}

/// A key: corrects it.
pub fn put_right() -> &'static str {
    "Correct"
}

/// Under it.
pub fn freight_tax() -> &'static str {
    "freight, tax"
}

/// A key: a line that never goes through the shelf.
pub fn straight_to() -> &'static str {
    "Paid directly"
}

/// Under it.
pub fn not_shelved() -> &'static str {
    "never shelved"
}

/// The filled key: a line that goes onto the shelf.
pub fn add_a_lot() -> &'static str {
    "Add a lot"
}

/// Under it.
pub fn onto_the_shelf() -> &'static str {
    "onto the shelf"
}

/// There is no such receipt.
pub fn not_there() -> &'static str {
    "No such receipt. It was struck out, or is on another device."
}

/// The lines say more than was paid.
pub fn too_much() -> &'static str {
    "Lines beyond the total"
}

/// What is left.
pub fn left_to_say() -> &'static str {
    "Still to be said"
}

/// Nothing is left.
pub fn all_said() -> &'static str {
    "All of it is said"
}

/// Neither total nor lines.
pub fn no_total_no_line() -> &'static str {
    "No total yet, and no line. Add what it bought; its total is one of the facts under Correct."
}

/// The list of lines.
pub fn lines() -> &'static str {
    "What it bought"
}

/// Over an empty list.
pub fn what_lines_are() -> &'static str {
    "A line is a lot that goes onto the shelf, or money paid directly. Until then it counts as paid directly."
}

/// A row of the sum.
pub fn freight() -> &'static str {
    "Freight"
}

/// A row of the sum.
pub fn discount() -> &'static str {
    "Discount"
}

/// A row of the sum.
pub fn tax() -> &'static str {
    "Tax"
}

/// A row of the sum: no cost.
pub fn tax_back() -> &'static str {
    "Tax that can be got back"
}

/// Under such a row.
pub fn shared_by_value() -> &'static str {
    "shared by value"
}

/// The total.
pub fn paid_in_all() -> &'static str {
    "Paid in all"
}

/// At the right of an offer.
pub fn keep_it_so() -> &'static str {
    "keep it so"
}

/// A mark.
pub fn mark_tax() -> &'static str {
    "its tax kept"
}

/// What stands further down.
pub fn more_below() -> &'static str {
    "its photo"
}

/// On the form of a line: leads back to its receipt.
pub fn line_of() -> &'static str {
    "A line of the receipt"
}

/// The head of the form of a by-product.
pub fn by_product() -> &'static str {
    "By-product"
}

/// A field.
pub fn what_came() -> &'static str {
    "What was it?"
}

/// In it.
pub fn what_came_hint() -> &'static str {
    "kindling, a window sold"
}

/// A field.
pub fn came_for_it() -> &'static str {
    "came for it"
}

/// Nothing there to lower.
pub fn nothing_to_lower() -> &'static str {
    "No lot or build yet: start a build or add a lot first."
}

/// Under the fields.
pub fn by_product_note() -> &'static str {
    "Kindling from nails and ends, a window out of a wall: what comes for it lowers what the rest cost."
}

/// The filled key.
pub fn keep_it() -> &'static str {
    "Keep it"
}

/// An error.
pub fn no_what() -> &'static str {
    "What was it? One word is enough: kindling."
}

/// An error.
pub fn no_amount() -> &'static str {
    "How much came for it? Type an amount as 20 or 12.50."
}

/// A key.
pub fn receipt_now() -> &'static str {
    "Receipt"
}

/// A row that leads to the form.
pub fn or_by_product() -> &'static str {
    "Money that came in for kindling or scrap"
}

/// At its right.
pub fn lowers_cost() -> &'static str {
    "lowers the cost"
}

/// A row that leads to the form.
pub fn or_receipt() -> &'static str {
    "A receipt with several things"
}

/// The key of a waiting receipt.
pub fn say_the_lines() -> &'static str {
    "Say what it bought"
}

/// A key of a receipt's entry.
pub fn its_lines() -> &'static str {
    "Its lines"
}

/// Under it.
pub fn what_it_bought() -> &'static str {
    "what it bought"
}

/// Under the total: that it counts at once, and the tax that is in it.
pub fn spent_at_once(tax: Option<&str>) -> String {
    match tax {
        Some(tax) => {
            format!("Stands in Spent at once. What it bought, and its {tax} of tax, when there is time.")
        }
        None => "Stands in Spent at once. What it bought, when there is time.".to_owned(),
    }
}

/// `47.20 of 82.00 still to be said`.
pub fn still_to_say(open: &str, total: &str) -> String {
    format!("{open} of {total} still to be said")
}

/// Under what is left: `of 82.00 paid`.
pub fn of_total(total: &str) -> String {
    format!("of {total} paid")
}

/// Why no photo came of a picture, as a sentence of the form.
pub fn no_photo(what: &str, todo: &str) -> String {
    format!("No photo: {what}; {todo}.")
}

/// The head of a receipt: `Receipt, hardware shop`.
pub fn receipt_from(from: &str) -> String {
    format!("Receipt, {from}")
}

/// An offer: `Tax in it at 13 %`.
pub fn tax_in_it(percent: &str) -> String {
    format!("Tax in it at {percent}")
}

/// A row: `Lowers the cost of gymnasium maple`.
pub fn lowers(title: &str) -> String {
    format!("Lowers the cost of {title}")
}
