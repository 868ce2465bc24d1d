//! Money put right: expenses, drives.

use super::{DAY, How, Spec, Typed, dec, tick};
use crate::{
    screens::hours::{choices, fields::side_code},
    words::journal::Label,
};
use benchslate_core::journal::kinds::{Expense, Trip};

pub const EXPENSE: [Spec; 6] = [
    ("what", Label::What, How::Words),
    (DAY, Label::Day, How::Day),
    ("amount", Label::Amount, How::Number),
    ("tax", Label::Tax, How::Number),
    ("tax-back", Label::Back, How::Tick),
    ("bearer", Label::For, How::Bearer),
];

pub const TRIP: [Spec; 3] =
    [("km", Label::Km, How::Number), ("fee", Label::Fee, How::Number), (DAY, Label::Day, How::Day)];

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
    Expense {
        on: typed.on(before.on),
        what: typed.name("what", 80),
        amount: typed.must_money("amount"),
        tax: typed.money("tax"),
        tax_back: typed.ticked("tax-back"),
        bearer: typed.bearer("bearer").unwrap_or(before.bearer),
        side: typed.side(),
    }
}

pub fn fill_trip(it: &Trip) -> Vec<(&'static str, String)> {
    vec![("km", it.km.plain()), ("fee", dec(it.fee))]
}

pub fn trip(typed: &Typed, before: &Trip) -> Trip {
    Trip {
        on: typed.on(before.on),
        km: typed.must_money("km"),
        fee: typed.money("fee"),
        shares: before.shares.clone(),
    }
}
