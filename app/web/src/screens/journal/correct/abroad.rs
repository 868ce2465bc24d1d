//! Money of another country: as the statement shows it, beside what was charged in the shop's currency.

use super::{How, Spec, Typed};
use crate::words::{journal::Label, money};
use benchslate_core::{
    journal::kinds::Abroad,
    measure::{Dec, currency, number},
};

pub const AMOUNT: Spec = ("abroad", Label::Abroad, How::Number);
pub const CURRENCY: Spec = ("abroad-currency", Label::AbroadIn, How::Words);

pub fn fill(it: Option<&Abroad>) -> [(&'static str, String); 2] {
    let amount = it.map(|it| it.amount.plain()).unwrap_or_default();
    [("abroad", amount), ("abroad-currency", it.map(|it| it.currency.clone()).unwrap_or_default())]
}

/// Both or neither.
pub fn read(typed: &Typed) -> Option<Box<Abroad>> {
    let amount = typed.form.read("abroad", number::amount).map(Dec);
    let code = typed.form.now("abroad-currency").trim().to_ascii_uppercase();
    let known = currency::codes().any(|it| it == code);
    match amount {
        None if code.is_empty() => None,
        None => {
            typed.form.wrong("abroad", money::amount_abroad().to_owned());
            None
        }
        Some(_) if !known => {
            typed.form.wrong("abroad-currency", money::currency_abroad().to_owned());
            None
        }
        Some(amount) => Some(Box::new(Abroad { amount, currency: code })),
    }
}
