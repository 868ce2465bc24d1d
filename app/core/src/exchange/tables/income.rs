//! Money that comes in as a table: a row a payment; an income of which nothing came yet has one row with what is expected.
//!
//! `expected` stands in the first row of an income only, so that a column can be summed.

use super::{Sources, Writer, names::code};
use crate::{
    exchange::csv::Cell,
    journal::{
        Id,
        kinds::Bearer,
        shop::{Income, Received},
    },
};

pub(super) const HEAD: &[&str] = &[
    "kind",
    "side",
    "what",
    "for",
    "agreed",
    "due",
    "expected_¤",
    "received",
    "amount_¤",
    "tax_¤",
    "fee_¤",
    "net_¤",
    "still_open_¤",
    "settled",
];

pub(super) fn rows(from: Sources, to: Writer, build: Option<Id>) -> Vec<Vec<Cell>> {
    let mine = |it: &&Income| {
        build.is_none_or(|build| it.shares.iter().any(|(bearer, _)| *bearer == Bearer::Build(build)))
    };
    let mut rows = Vec::new();
    for income in from.shop.incomes.iter().filter(mine) {
        rows.push(row(to, income, income.received.first(), true));
        rows.extend(income.received.iter().skip(1).map(|payment| row(to, income, Some(payment), false)));
    }
    rows
}

fn row(to: Writer, income: &Income, payment: Option<&Received>, first: bool) -> Vec<Cell> {
    let shares = income.shares.iter().map(|(bearer, _)| *bearer);
    vec![
        Cell::text(&code(income.kind)),
        Cell::text(&code(income.side)),
        Cell::text(income.what.as_deref().unwrap_or_default()),
        Cell::text(&to.names.bearers(shares)),
        Cell::plain(Some(income.order.day)),
        Cell::plain(income.due),
        to.money(income.expected.filter(|_| first)),
        Cell::plain(payment.map(|it| it.on)),
        to.money(payment.map(|it| it.amount)),
        to.money(payment.map(|it| it.tax)),
        to.money(payment.map(|it| it.fee)),
        to.money(payment.map(Received::net)),
        to.money(income.open().filter(|_| first)),
        Cell::text(if income.settled { "yes" } else { "no" }),
    ]
}
