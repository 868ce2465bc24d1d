//! The field of tax on top: one reading for every form that has it.

use crate::{
    shell::desk::View,
    words::{lots as words, refusal},
};
use benchslate_core::{journal::shop::tax_typed, measure::Dec};

/// Reads `9.43`, or `13 %` of an amount. None: nothing is typed.
///
/// # Errors
/// The sentence for its field.
pub fn read(view: &View, text: &str, amount: Option<Dec>) -> Result<Option<Dec>, String> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    let read = tax_typed(text, amount, view.tongue.minor());
    let tax = read.map_err(|refused| refusal::sentence(&refused))?;
    tax.map(Some).ok_or_else(|| words::tax_of_nothing().to_owned())
}
