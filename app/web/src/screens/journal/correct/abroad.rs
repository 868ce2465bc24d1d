//! Money of another country, in a correction.

use super::{How, Spec, Typed};
use crate::{screens::abroad, words::journal::Label};
use benchslate_core::journal::kinds::Abroad;

pub const AMOUNT: Spec = (abroad::AMOUNT, Label::Abroad, How::Number);
pub const CURRENCY: Spec = (abroad::CURRENCY, Label::AbroadIn, How::Words);

pub fn fill(it: Option<&Abroad>) -> [(&'static str, String); 2] {
    let amount = it.map(|it| it.amount.plain()).unwrap_or_default();
    [(abroad::AMOUNT, amount), (abroad::CURRENCY, it.map(|it| it.currency.clone()).unwrap_or_default())]
}

/// Both or neither.
pub fn read(typed: &Typed) -> Option<Box<Abroad>> {
    abroad::read(typed.form)
}
