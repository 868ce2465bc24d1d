//! What stands for the whole shop: tools, blades, tax, what came in, and each draw by itself.

use super::{BladeBook, Books, Flag, Parts, ToolBook};
use crate::{
    journal::{
        Id,
        kinds::{Bearer, Source},
    },
    measure::{Money, Quantity},
};

/// One draw, what came back taken off.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DrawnNet {
    /// The draw.
    pub entry: Id,
    /// From which account.
    pub source: Source,
    /// What stays drawn.
    pub quantity: Quantity,
    /// What it cost.
    pub parts: Parts,
}

impl Books {
    /// Every tool: its rate, its worth, what it has carried; by id.
    pub fn tools(&self) -> &[ToolBook] {
        &self.ledgers.tools.books
    }

    /// One tool.
    pub fn tool(&self, tool: Id) -> Option<&ToolBook> {
        self.tools().iter().find(|book| book.tool == tool)
    }

    /// Every blade, in the order in which they were fitted.
    pub fn blades(&self) -> &[BladeBook] {
        &self.ledgers.tools.blades
    }

    /// The draws of a bearer, in order.
    pub fn drawn_by(&self, bearer: Bearer) -> Vec<DrawnNet> {
        let bearing = self.ledgers.borne_by(bearer);
        let draws = self.stock.net(&bearing.draws).into_iter().map(|(row, parts)| DrawnNet {
            entry: row.entry(),
            source: row.account,
            quantity: row.net(),
            parts,
        });
        draws.collect()
    }

    /// Tax that came in with income, and tax to be got back, of everything.
    pub fn tax(&self) -> (Money, Money) {
        let collected = self.incomes.iter().fold(Money::ZERO, |sum, row| sum.plus(row.tax));
        let back = self.ledgers.expenses.iter().fold(Money::ZERO, |sum, row| sum.plus(row.tax_back));
        let lots = self.stock.lots.values().map(|lot| lot.facts.whole_tax_back());
        let pooled = self.shop.pooled_tax_back;
        (collected, lots.fold(back.plus(pooled), Money::plus))
    }

    /// What came in for everything, less tax in it and fees.
    pub fn net_of_all(&self) -> Money {
        self.incomes.iter().fold(Money::ZERO, |sum, row| sum.plus(row.net))
    }

    /// Everything that is odd about work and tools.
    pub fn flags(&self) -> Vec<Flag> {
        let labour = self.ledgers.labour.iter().flat_map(|row| row.flags());
        let tools = self.ledgers.tools.books.iter().flat_map(|book| book.flags.iter().copied());
        let handed = self.made.iter().filter_map(|(build, items)| items.flag(*build));
        labour.chain(tools).chain(handed).collect()
    }
}
