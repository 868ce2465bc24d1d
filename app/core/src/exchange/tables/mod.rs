//! The tables that leave the program: lines of the journal, lines of cost, stock, tools, income.
//!
//! Days and moments by ISO 8601, hours as plain decimals of an hour, money in the shop's currency, whose ISO code stands in
//! the name of each column that holds any. Names of columns and of kinds are codes of the format and never change.
//! Not here: how a table becomes text (`csv`).

mod cost;
mod entries;
mod income;
mod names;
mod stock;
mod tools;

use super::csv::{Cell, Table};
use crate::{
    costing::{Books, Hours},
    journal::{Id, Journal, Shop},
    measure::{Money, Quantity, Seconds, letters::small},
};
use names::Names;

/// One of the tables.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Of {
    /// A row an entry.
    Entries,
    /// A row a leaf of the true cost of every build.
    Cost,
    /// A row a lot or item.
    Stock,
    /// A row a tool.
    Tools,
    /// A row a payment, or an income of which nothing came yet.
    Income,
}

impl Of {
    /// Every table.
    pub const ALL: [Of; 5] = [Of::Entries, Of::Cost, Of::Stock, Of::Tools, Of::Income];

    /// Its name in a file name.
    pub fn code(self) -> &'static str {
        match self {
            Of::Entries => "entries",
            Of::Cost => "cost-lines",
            Of::Stock => "stock",
            Of::Tools => "tools",
            Of::Income => "income",
        }
    }

    /// What its file is called. `sample`: of the sample shop, never the name of the maker's own.
    pub fn file_name(self, build: Option<&str>, sample: bool) -> String {
        let whose = if sample { "sample" } else { "benchslate" };
        let build = build.map(|title| format!("-{}", file_word(title))).unwrap_or_default();
        format!("{whose}{build}-{}.csv", self.code())
    }
}

/// A title as part of a file name: letters and digits of any script, small, parted by hyphens; 40 of them at most.
pub fn file_word(title: &str) -> String {
    let plain: String = small(title).chars().map(|it| if it.is_alphanumeric() { it } else { ' ' }).collect();
    let word = plain.split_whitespace().collect::<Vec<_>>().join("-");
    let short: String = word.chars().take(40).collect();
    if short.is_empty() { "build".to_owned() } else { short.trim_end_matches('-').to_owned() }
}

/// What tables are read from.
#[derive(Clone, Copy)]
pub struct Sources<'a> {
    /// All lines.
    pub journal: &'a Journal,
    /// Present state.
    pub shop: &'a Shop,
    /// What everything came to.
    pub books: &'a Books,
}

/// A table of one build, or of the whole shop. Stock and tools are the shop's.
pub fn table(from: Sources, of: Of, build: Option<Id>) -> Table {
    let to = Writer { names: Names(from.shop), minor: from.shop.minor() };
    let (head, rows) = match of {
        Of::Entries => (entries::HEAD, entries::rows(from, to, build)),
        Of::Cost => (cost::HEAD, cost::rows(from, to, build)),
        Of::Stock => (stock::HEAD, stock::rows(from, to)),
        Of::Tools => (tools::HEAD, tools::rows(from, to)),
        Of::Income => (income::HEAD, income::rows(from, to, build)),
    };
    let currency = from.shop.currency().unwrap_or("XXX");
    let head = head.iter().map(|name| name.replace(MONEY, currency)).collect();
    Table { head, rows }
}

/// In the name of a column: the code of the currency. A shop without one has `XXX`, which is no currency (ISO 4217).
const MONEY: &str = "¤";

/// How values become cells.
#[derive(Clone, Copy)]
struct Writer<'a> {
    names: Names<'a>,
    minor: u8,
}

impl Writer<'_> {
    fn money(self, money: Option<Money>) -> Cell {
        Cell::plain(money.map(|it| it.shown(self.minor)))
    }

    /// Money of one unit or one hour, to the millionth.
    fn rate(self, money: Option<Money>) -> Cell {
        Cell::plain(money.map(|it| Quantity::from_micros(it.micros()).shown_trimmed()))
    }

    fn quantity(self, quantity: Option<Quantity>) -> Cell {
        Cell::plain(quantity.map(Quantity::shown_trimmed))
    }

    fn hours(self, seconds: Option<Seconds>) -> Cell {
        self.quantity(seconds.map(|it| Hours::of(it).in_hours()))
    }
}

#[cfg(test)]
mod tests;
