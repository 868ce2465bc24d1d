//! A lot's sheet: what became of it, what it cost in its two pools, and whether it saved anything.
//!
//! Source: our own rule, DEVELOPERS.md § Salvage. Not here: how pools are spread (`stock::named_lot`).

mod across;
mod appraisal;
mod board;
mod chain;
mod cost;
mod expected;
mod history;
mod of_build;
mod saving;

pub use across::{Across, By, Group};
pub use appraisal::{Appraisal, Missing, Outcome, appraise};
pub use board::Board;
pub use chain::{Chain, Link, Reached};
pub use expected::Expected;
pub use history::{Offer, OfferFrom, Pile, TypedCase};
pub use of_build::{BuildSaving, OfLot};
pub use saving::Saving;
pub(crate) use saving::bought_instead_of;

use super::{Books, Parts, Path, Statement, UnitCost};
use crate::journal::{Id, kinds::Source};

/// The sheet of a lot that is drawn by name.
#[derive(Clone, Debug, PartialEq)]
pub struct LotBook {
    /// The lot.
    pub lot: Id,
    /// Gathered, good, culled, drawn, on the shelf, still to come.
    pub board: Board,
    /// From the yard to the piece.
    pub chain: Chain,
    /// Fetched and reclaimed, down to the lines.
    pub cost: Statement,
    /// All of it as a vector of parts.
    pub parts: Parts,
    /// What is still on the shelf, as a vector of parts.
    pub shelf: Parts,
    /// Of one unit now; none where it can't be said yet.
    pub unit_cost: Option<UnitCost>,
    /// Of one unit as if no build that drew from it had been closed.
    pub unit_of_all: Option<UnitCost>,
    /// Against the same thing new.
    pub saving: Saving,
    /// How far what is left stands above the same thing new; none: it doesn't, or nobody knows.
    pub above: Option<Statement>,
}

impl LotBook {
    /// The figures from a root down to the end of an address, the root first.
    pub fn open(&self, path: &Path) -> Option<Vec<&Statement>> {
        self.roots().into_iter().find_map(|root| path.walk(root))
    }

    /// Every figure that an address can begin with.
    pub fn roots(&self) -> Vec<&Statement> {
        let Saving { time_free, at_rate, paid_an_hour, .. } = &self.saving;
        let mut roots = vec![&self.cost, time_free, at_rate, paid_an_hour, &self.chain.cost];
        roots.extend(&self.above);
        roots
    }
}

impl Books {
    /// The sheet of a lot; none where it isn't there, or is pooled with others under an item.
    pub fn lot(&self, lot: Id) -> Option<LotBook> {
        let account = self.stock.lots.get(&lot)?;
        Some(LotBook {
            lot,
            board: board::board(self, account),
            chain: chain::chain(self, account),
            cost: cost::cost(self, account),
            parts: account.cost(),
            shelf: account.shelf(),
            unit_cost: self.unit_cost(Source::Lot(lot)),
            unit_of_all: account.unit_of_all(),
            saving: saving::saving(self, account),
            above: super::fetch::of_lot(account),
        })
    }

    /// A draw from a lot by itself, down to what it took of each line of that lot.
    pub fn draw(&self, entry: Id) -> Option<Statement> {
        cost::draw(self, entry)
    }
}
