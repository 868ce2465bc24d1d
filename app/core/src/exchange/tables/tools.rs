//! Tools as a table: what each cost, how long it ran, what an hour of it costs and what it is worth by now.

use super::{Sources, Writer, names::code};
use crate::{exchange::csv::Cell, measure::Money};

pub(super) const HEAD: &[&str] = &[
    "name",
    "come_by",
    "since",
    "price_¤",
    "resale_¤",
    "life_hours",
    "hours_here",
    "hours_in_all",
    "wear_an_hour_¤",
    "upkeep_an_hour_¤",
    "power_an_hour_¤",
    "blade_an_hour_¤",
    "carried_¤",
    "book_value_¤",
    "gone",
];

pub(super) fn rows(from: Sources, to: Writer) -> Vec<Vec<Cell>> {
    let known = from.books.tools().iter().filter_map(|book| Some((book, from.shop.tools.get(&book.tool)?)));
    let rows = known.map(|(book, tool)| {
        let carried = book.carried.iter().fold(Money::ZERO, |sum, (_, _, money)| sum.plus(*money));
        vec![
            Cell::text(&tool.name),
            Cell::text(&code(tool.from)),
            Cell::plain(Some(tool.order.day)),
            to.money(tool.price),
            to.money(Some(tool.resale)),
            to.quantity(tool.life),
            to.quantity(Some(book.hours)),
            to.quantity(Some(book.hours_all)),
            to.rate(book.wear),
            to.rate(Some(book.upkeep)),
            to.rate(book.power),
            to.rate(book.blade),
            to.money(Some(carried)),
            to.money(book.book_value),
            Cell::plain(tool.gone),
        ]
    });
    rows.collect()
}
