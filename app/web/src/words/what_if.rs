//! What if, and what to ask for a piece.

use benchslate_core::costing::{
    Ahead,
    what_if::{Knob, NotTaken},
};

/// The head.
pub fn title(build: &str) -> String {
    format!("What if, {build}")
}

/// Beside it: nothing is tried.
pub fn as_it_stands() -> &'static str {
    "as it stands"
}

/// Beside it: something is.
pub fn tried() -> &'static str {
    "tried, not kept"
}

/// An answer.
pub fn true_cost() -> &'static str {
    "True cost"
}

/// An answer.
pub fn one_piece() -> &'static str {
    "One piece"
}

/// An answer: of what is done and planned, or of what is known of it.
pub fn an_hour(ahead: Ahead) -> &'static str {
    match ahead {
        Ahead::Nothing | Ahead::Planned => "An hour earns once all is in",
        Ahead::Partly => "An hour earns, as far as planned",
        Ahead::Unplanned => "An hour earns, by the work so far",
    }
}

/// An answer.
pub fn saved() -> &'static str {
    "Salvage saved"
}

/// Under an answer that has moved.
pub fn stands(figure: &str) -> String {
    format!("stands at {figure}")
}

/// In the place of an answer.
pub fn nothing() -> &'static str {
    "nothing yet"
}

/// Likewise.
pub fn no_pieces() -> &'static str {
    "no pieces"
}

/// Likewise.
pub fn no_hours() -> &'static str {
    "no own hours"
}

/// Likewise.
pub fn nothing_salvaged() -> &'static str {
    "nothing salvaged"
}

/// Under the answers.
pub fn how() -> &'static str {
    "True cost is so far; an hour is with what is still expected and planned. Pieces: good ones from the same work. New: what new timber costs, against the noted price."
}

/// What a thumb moves.
pub fn knob(knob: Knob) -> &'static str {
    match knob {
        Knob::Rate => "My hour",
        Knob::Price => "A piece",
        Knob::Pieces => "Pieces",
        Knob::NewStock => "New",
    }
}

/// The set, read aloud.
pub fn what() -> &'static str {
    "What is tried"
}

/// Prices of new stock against what was noted.
pub fn of_noted(hundredths: u32) -> String {
    format!("{hundredths} % of the noted price")
}

/// A key.
pub fn put_back() -> &'static str {
    "Put back"
}

/// A key.
pub fn take_it() -> &'static str {
    "Take it"
}

/// Under it: a rate holds from the day on which it is taken.
pub fn is_written(rate: bool) -> &'static str {
    if rate { "my hour from today on" } else { "it is written into the journal" }
}

/// Why there is no such key.
pub fn not_taken(why: NotTaken) -> &'static str {
    match why {
        NotTaken::Whose => {
            "Not to be taken: my hour is one person\u{2019}s only where one alone works without pay."
        }
        NotTaken::Finished => "Not to be taken: some are finished, and they are as many as they are.",
        NotTaken::Bound => {
            "Not to be taken: what comes in for it is settled, shared with others or of a later day. Correct that income."
        }
        NotTaken::MoreIsIn => "Not to be taken: more than that came in already, or is expected elsewhere.",
    }
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Keys"
}

/// Of a mark.
pub fn kind() -> &'static str {
    "what if"
}

/// A mark.
pub fn marked() -> &'static str {
    "taken"
}

/// A row of the money sheet.
pub fn what_if() -> &'static str {
    "What if"
}

/// Under it.
pub fn what_if_note() -> &'static str {
    "another rate, price, number, or new stock"
}

/// A row of the money sheet.
pub fn what_to_ask() -> &'static str {
    "What to ask"
}

/// Under it.
pub fn what_to_ask_note() -> &'static str {
    "from a margin, a mark-up, or an hour\u{2019}s pay"
}

/// The head of the other sheet.
pub fn price_title(build: &str) -> String {
    format!("What to ask, {build}")
}

/// What stands past the lower edge.
pub fn price_below() -> &'static str {
    "the price, and what it means"
}

/// What the price goes by.
pub fn ways() -> [&'static str; 3] {
    ["margin", "mark-up", "an hour"]
}

/// The set, read aloud.
pub fn goes_by() -> &'static str {
    "What the price goes by"
}

/// The field of each way.
pub fn much(way: usize) -> &'static str {
    match way {
        0 => "Margin, of the price",
        1 => "Mark-up, on the cost",
        _ => "An hour is to earn",
    }
}

/// A field.
pub fn fee() -> &'static str {
    "Fee kept back"
}

/// A field.
pub fn tax() -> &'static str {
    "Tax on top"
}

/// Under one piece: of those finished.
pub fn of_good(pieces: u32) -> String {
    match pieces {
        1 => "the one finished, film apart".to_owned(),
        many => format!("of {many} good ones, film apart"),
    }
}

/// Under one piece: none is finished.
pub fn as_planned(pieces: u32, ahead: Ahead) -> String {
    let of = match ahead {
        Ahead::Planned => "so far and still to spend",
        Ahead::Partly => "so far and as far as planned",
        Ahead::Unplanned | Ahead::Nothing => "so far",
    };
    match pieces {
        1 => format!("{of}, film apart"),
        many => format!("{of}, over {many}, film apart"),
    }
}

/// Nothing can be said of one piece.
pub fn nothing_known() -> &'static str {
    "Nothing is known yet of what a piece costs: log hours, use stock, or plan its steps."
}

/// The answer.
pub fn to_ask() -> &'static str {
    "To ask for one"
}

/// Beside it.
pub fn before_tax() -> &'static str {
    "before tax"
}

/// A row.
pub fn with_tax() -> &'static str {
    "With tax"
}

/// A row.
pub fn fee_kept() -> &'static str {
    "Fee kept back"
}

/// A row.
pub fn left_over() -> &'static str {
    "Over its cost"
}

/// Under the fields.
pub fn price_note() -> &'static str {
    "Margin is of the price, mark-up is on the cost. The cost holds your own time at its rate."
}

/// No price: nothing is left of it for the cost.
pub fn nothing_left() -> &'static str {
    "Margin and fee together leave nothing of the price for the cost. Below 100 % in all."
}

/// No price: nobody worked without pay.
pub fn no_hours_to_pay() -> &'static str {
    "No own hours are in it, so an hour has no pay to go by."
}

/// No price.
pub fn too_large() -> &'static str {
    "Too large to work out."
}

/// By the field.
pub fn say_how_much() -> &'static str {
    "Say how much."
}

/// The key that keeps it.
pub fn expect_it() -> &'static str {
    "Expect that"
}

/// Of a mark.
pub fn kind_price() -> &'static str {
    "expected"
}

/// A mark.
pub fn marked_price(each: &str, pieces: u32) -> String {
    if pieces == 1 { each.to_owned() } else { format!("{pieces} at {each}") }
}
