//! Money put right: expenses.

use super::{DAY, How, Spec, Typed, dec, tick};
use crate::{
    screens::hours::{choices, fields::side_code},
    words::journal::Label,
};
use benchslate_core::journal::kinds::Expense;

pub const EXPENSE: [Spec; 6] = [
    ("what", Label::What, How::Words),
    (DAY, Label::Day, How::Day),
    ("amount", Label::Amount, How::Money),
    ("tax", Label::Tax, How::Tax),
    ("tax-back", Label::Back, How::Tick),
    ("bearer", Label::For, How::Bearer),
];

pub fn fill_expense(it: &Expense) -> Vec<(&'static str, String)> {
    vec![
        ("what", it.what.clone()),
        ("amount", it.amount.plain()),
        ("tax", dec(it.tax)),
        ("tax-back", tick(it.tax_back)),
        ("bearer", choices::code(it.bearer)),
        ("side", side_code(it.side).to_owned()),
    ]
}

pub fn expense(typed: &Typed, before: &Expense) -> Expense {
    let amount = typed.must_money("amount");
    Expense {
        on: typed.on(before.on),
        what: typed.name("what", 80),
        amount,
        tax: typed.tax("tax", Some(amount)),
        tax_back: typed.ticked("tax-back"),
        bearer: typed.bearer("bearer").unwrap_or(before.bearer),
        side: typed.side(),
        ..before.clone()
    }
}
