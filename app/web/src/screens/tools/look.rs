//! What is read off the books about tools.

use crate::{shell::desk::View, words::tools as words};
use benchslate_core::{
    costing::Books,
    measure::{InOrder, Money, Quantity},
};

/// A rate an hour: three digits after the mark, one more than money has.
pub fn rate(view: &View, rate: Money) -> String {
    view.tongue.number(&rate.shown(view.tongue.minor().saturating_add(1)))
}

/// Hours of running: `133.5 h`.
pub fn hours(view: &View, hours: Quantity) -> String {
    words::hours(&view.tongue.quantity(hours))
}

/// What all of them are worth, as the shop's sheet says it.
pub fn worth(books: &Books, view: &View) -> String {
    view.tongue.money(books.tools_worth(view.shop))
}

/// The names of those that are there, the first four of them; none: no tool.
pub fn named(view: &View) -> Option<String> {
    let here = view.shop.tools.values().filter(|tool| tool.gone.is_none());
    let mut all: Vec<_> = here.map(|tool| (tool.order, tool.name.clone())).collect();
    all.order();
    let names: Vec<String> = all.into_iter().map(|it| it.1).collect();
    (!names.is_empty()).then(|| words::names(&names))
}
