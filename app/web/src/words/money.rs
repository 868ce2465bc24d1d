//! Money: what the shop counts in.

/// Under the first amount, while the currency is only guessed.
pub fn guessed_currency(code: &str) -> String {
    let mut text = String::from("Counted in ");
    text.push_str(code);
    text.push_str(", going by where this phone is");
    text
}

/// Under the first amount, where no currency can be guessed.
pub fn which_currency() -> &'static str {
    "Choose the currency"
}

/// Beside the guess.
pub fn change_it() -> &'static str {
    "change it"
}

/// The error by an amount while there is no currency.
pub fn no_currency() -> &'static str {
    "In which currency? Choose it once, then keep this. Kept as typed."
}

/// A currency of another country without its amount.
pub fn amount_abroad() -> &'static str {
    "Type the amount too, as the statement shows it, or leave both empty."
}

/// An amount of another country without its currency.
pub fn currency_abroad() -> &'static str {
    "Type its currency by three letters, like EUR. What was charged in your own stays above, and is what counts."
}

/// A row: opens two more fields.
pub fn paid_abroad() -> &'static str {
    "Paid in another currency?"
}

/// Beside it.
pub fn two_more_fields() -> &'static str {
    "type both"
}

/// A field.
pub fn as_the_statement_shows() -> &'static str {
    "As the statement shows it"
}

/// A field.
pub fn its_currency() -> &'static str {
    "Its currency"
}

/// In it.
pub fn like_eur() -> &'static str {
    "EUR"
}

/// Under both.
pub fn both_are_kept() -> &'static str {
    "Both are kept. What was charged in your own currency stays above, and is what counts."
}

/// By the total: only the amount abroad was typed.
pub fn charged_too() -> &'static str {
    "Type what was charged in your own currency too: it is what counts."
}
