//! Stock: what is on the shelf, what comes in, what is used.

use super::Tongue;
use benchslate_core::measure::{Dec, Unit};

/// `4 discs`, `1/4 tin`, `19.375 in walnut`.
pub fn so_much_of(tongue: &Tongue, quantity: Dec, unit: Unit, word: Option<&str>, name: &str) -> String {
    let amount = tongue.number(&quantity.0.normalize().to_string());
    match word {
        Some(word) => format!("{amount} {word}"),
        None => format!("{amount} {} {name}", super::units::short(unit)).replace("  ", " "),
    }
}

/// `4 discs, 2.84`.
pub fn used_for(amount: &str, cost: &str) -> String {
    format!("{amount}, {cost}")
}

/// What a draw left.
pub fn left_on_shelf(left: &str) -> String {
    format!("{left} left on the shelf")
}

/// What a mark calls a draw.
pub fn used() -> &'static str {
    "used"
}
